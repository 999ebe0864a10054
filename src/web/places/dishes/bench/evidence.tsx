import type { Kitchen, SignedEvidence } from '../../../../contract/records.ts';
import { lessThanUsual } from '../../../../core/method/foreseen-rules.ts';
import { restsOn } from '../../../../core/method/verdict.ts';
import { formatQuantity, plainNumber } from '../../../../core/units.ts';
import { worth } from '../../../../documents/format.ts';
import { Verdict, type VerdictState } from '../../../parts/verdict.tsx';
import { holdsWord } from '../cook/verdict-words.ts';
import { agreedWords } from '../stage-words.ts';

type Signed = SignedEvidence['verdicts'][number];

/** The same words as over the cut-through. What it rested on was not always kept: then no more is claimed than was. */
function told(v: Signed): { state: VerdictState; word: string } {
  if (!v.passes) return { state: 'does not hold', word: 'Does not hold' };
  if (v.lethalityAtLiftOutMin === undefined) return { state: 'not yet', word: 'Holds by the end of it all' };
  const rests = restsOn(v.lethalityAtLiftOutMin, v.neededMin, v.zC);
  return { state: rests === 'lift-out' ? 'holds' : 'not yet', word: holdsWord[rests] };
}

/** What the engine said when the version was signed. */
export function Evidence({
  evidence,
  kitchen,
}: {
  readonly evidence: SignedEvidence;
  readonly kitchen: Kitchen;
}) {
  const apart = (z: number) =>
    kitchen.units === 'US' ? `${plainNumber(z * 1.8, 1)} °F` : `${plainNumber(z, 1)} °C`;
  const degrees = (C: number) => formatQuantity(C, 'temperature', kitchen.units);
  return (
    <div className="stack">
      {evidence.verdicts.map((v) => (
        <Verdict
          key={v.stepId}
          state={told(v).state}
          word={`${v.stepName}: ${told(v).word.charAt(0).toLowerCase()}${told(v).word.slice(1)}`}
        >
          <p>
            The coldest point gets the worth of {worth(v.lethalityMin, v.neededMin)} at{' '}
            {degrees(v.referenceC)}
            {v.lethalityAtLiftOutMin === undefined
              ? ''
              : `, ${worth(v.lethalityAtLiftOutMin, v.neededMin)} of it by lifting out`}
            ; it needs {plainNumber(v.neededMin, 1)} min (z {apart(v.zC)}). As computed when it was signed, by{' '}
            {evidence.engine}.
          </p>
          {lessThanUsual({ reference: v.referenceC, z: v.zC, s: v.neededMin * 60 }) ? (
            <p>
              <strong>The target is the kitchen’s own, and less than 70 °C for 2 min.</strong>
            </p>
          ) : null}
        </Verdict>
      ))}
      {(evidence.agreements ?? []).map((a) => (
        <Verdict
          key={`${a.species} ${a.part}`}
          state={a.answer === 'agreed' ? 'holds' : 'not yet'}
          word={`${a.part} of ${a.species}: signed by the authority’s word`}
        >
          <p>
            {agreedWords(a)} The sources said when it was signed: {a.status}.
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
