import type { DeliveryCheck } from '../../../../contract/delivery.ts';
import type { DeliveryPoint } from '../../../../contract/delivery-points.ts';
import { TextField } from '../../../parts/field.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import type { Mark } from './delivery-draft.ts';
import { metState } from './delivery-words.ts';

const words = ['met', 'not met', 'not looked at'] as const satisfies readonly DeliveryCheck['met'][];

export interface PointsViewProps {
  readonly points: readonly DeliveryPoint[];
  readonly checks: readonly DeliveryCheck[];
  readonly onMark: (point: DeliveryPoint, mark: Mark) => void;
}

/** The points one under another. Somebody looks and taps; what was weighed and measured decides for itself. */
export function PointsView({ points, checks, onMark }: PointsViewProps) {
  return (
    <ol className="points">
      {points.map((p) => {
        const check = checks.find((c) => c.point === p.point);
        const met = check?.met ?? 'not looked at';
        const found = check?.found ?? '';
        if (p.by === 'measured')
          return (
            <li key={p.point} className="point">
              <p className="point-asked">{p.asked}</p>
              <Verdict
                state={metState(met)}
                word={`${met.replace(/^./, (c) => c.toUpperCase())}${found === '' ? '' : `: ${found}`}`}
              />
            </li>
          );
        return (
          <li key={p.point} className="point">
            <fieldset>
              <legend className="point-asked">{p.asked}</legend>
              <div className="point-choices">
                {words.map((word) => (
                  <label key={word} className={`point-choice point-${word.replaceAll(' ', '-')}`}>
                    <input
                      type="radio"
                      name={p.point}
                      checked={met === word}
                      onChange={() => onMark(p, { met: word, found })}
                    />
                    <span>{word}</span>
                  </label>
                ))}
              </div>
            </fieldset>
            {met === 'not met' ? (
              <TextField
                label="What was found"
                value={found}
                onChange={(text) => onMark(p, { met, found: text })}
                maxLength={300}
              />
            ) : null}
          </li>
        );
      })}
    </ol>
  );
}
