/** The piece as the engine sees it: cut through, scrubbed through time. The last answer stays when the input is wrong, and says so. */
import { useMemo } from 'react';
import { rampOf } from '../../../../documents/pictures/cut-through.ts';
import { useUnits } from '../../../kitchen.tsx';
import { CutThroughView } from '../../../pictures/cut-through-view.tsx';
import { Scrubber } from '../../../pictures/scrubber.tsx';
import { useWidth } from '../../../pictures/use-width.ts';
import type { Cooked } from './use-cooking.ts';
import { referenceWords } from './verdict-words.ts';

export interface PicturePanelProps {
  readonly cooked: Cooked;
  readonly current: boolean;
  readonly time: number;
  readonly onTime: (s: number) => void;
}

export function PicturePanel({ cooked, current, time, onTime }: PicturePanelProps) {
  const [box, width] = useWidth<HTMLDivElement>();
  const units = useUnits();
  const { result, problem } = cooked;
  const { low, high } = rampOf(result);
  const ramp = useMemo(() => ({ low, high }), [low, high]);
  return (
    <figure className="cook-picture">
      {current ? null : (
        <figcaption className="cook-old">Not the current input: the last one that could be run</figcaption>
      )}
      <div className={current ? undefined : 'cook-old-drawn'}>
        <div ref={box}>
          {width < 100 ? null : (
            <CutThroughView
              result={result}
              time={time}
              width={width}
              maxHeight={Math.min(340, Math.max(150, width * 0.6))}
              ramp={ramp}
              units={units}
              needed={problem.target.s}
              reference={referenceWords(problem.target.reference, units)}
            />
          )}
        </div>
        <Scrubber result={result} time={time} onTime={onTime} />
      </div>
    </figure>
  );
}
