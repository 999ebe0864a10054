/** What it comes to, in words: holds or not, by how much, what the shape costs; or what stands in the way of knowing. */
import { memo } from 'react';
import { useUnits } from '../../../kitchen.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { faultWords, type Programme, whereWords } from './programme.ts';
import type { Cooking } from './use-cooking.ts';
import { shapeWords, verdictWords } from './verdict-words.ts';

export interface VerdictPanelProps {
  readonly programme: Programme;
  readonly cooking: Cooking;
}

export const VerdictPanel = memo(function VerdictPanel({ programme, cooking }: VerdictPanelProps) {
  return (
    <div className="cook-verdict" aria-live="polite">
      <Words programme={programme} cooking={cooking} />
    </div>
  );
});

function Words({ programme, cooking }: VerdictPanelProps) {
  const units = useUnits();
  if (!programme.ok)
    return (
      <Verdict state="unknown" word="Cannot be worked out yet" size="large">
        <ul className="cook-why">
          {programme.faults.map((fault) => (
            <li key={`${fault.path} ${fault.found}`}>
              <strong>
                {fault.step === 'chill' && programme.cook !== undefined && fault.path !== 'method'
                  ? 'Chill step, '
                  : ''}
                {whereWords(fault.path)}
              </strong>
              : {faultWords(fault)}.
            </li>
          ))}
        </ul>
      </Verdict>
    );
  if (cooking.failure !== null)
    return (
      <Verdict state="unknown" word="Not known: the engine stopped" size="large">
        {cooking.failure}
      </Verdict>
    );
  const { cooked, advised, current, progressMin, settling } = cooking;
  const working =
    progressMin === null
      ? 'Working it out…'
      : `Working it out: ${Math.round(progressMin)} min of the programme done`;
  if (cooked === null || !current) return <p className="quiet">{working}</p>;
  const told = verdictWords({
    verdict: cooked.verdict,
    problem: cooked.problem,
    result: cooked.result,
    units,
    advice: advised?.advice ?? null,
    coarse: cooked.mode === 'coarse',
  });
  const stage = cooked.problem.stages[cooked.verdict.heatingStage]?.name ?? 'the heat';
  return (
    <>
      <Verdict state={told.state} word={told.word} size="large">
        {told.why.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </Verdict>
      <p className="small quiet">{settling ? working : 'Predicted, not measured.'}</p>
      {shapeWords(advised?.cost ?? null, stage, units).map((line) => (
        <p key={line}>{line}</p>
      ))}
    </>
  );
}
