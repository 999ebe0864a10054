/** The piece as the engine sees it: cut through, scrubbed through time. The last answer stays when the input is wrong, and says so. */
import { useMemo } from 'react';
import { historyAt } from '../../../../core/method/verdict.ts';
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
  const { t, ice: course } = result.history;
  const ice = course === undefined ? null : historyAt(t, course, time);
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
        {ice === null ? null : (
          <p className="quiet">
            {ice < 0.005 ? 'No ice in it then' : `${Math.round(100 * ice)} % of its water is ice then`}.
          </p>
        )}
      </div>
    </figure>
  );
}
