import type { Kitchen, SignedEvidence } from '../../../../contract/records.ts';
import { formatQuantity, plainNumber } from '../../../../core/units.ts';
import { Verdict } from '../../../parts/verdict.tsx';

/** Past a thousand minutes the figure says no more than that. */
const worth = (min: number) => (min > 1_000 ? 'more than 1000' : plainNumber(min, 1));

/** What the engine said when the version was signed. */
export function Evidence({
  evidence,
  kitchen,
}: {
  readonly evidence: SignedEvidence;
  readonly kitchen: Kitchen;
}) {
  const degrees = (C: number) => formatQuantity(C, 'temperature', kitchen.units);
  return (
    <div className="stack">
      {evidence.verdicts.map((v) => (
        <Verdict
          key={v.stepId}
          state={v.passes ? 'holds' : 'does not hold'}
          word={`${v.stepName}: ${v.passes ? 'holds' : 'does not hold'}`}
        >
          <p>
            The coldest point gets the worth of {worth(v.lethalityMin)} min at {degrees(v.referenceC)} (z{' '}
            {plainNumber(v.zC, 1)} °C); {plainNumber(v.neededMin, 1)} min are needed. As computed when it was
            signed, by {evidence.engine}.
          </p>
        </Verdict>
      ))}
      {evidence.cautions.length === 0 ? null : (
        <ul className="measure small">
          {evidence.cautions.map((c) => (
            <li key={c}>{c}</li>
          ))}
        </ul>
      )}
    </div>
  );
}
