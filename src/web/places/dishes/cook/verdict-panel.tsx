/** What it comes to, in words: holds or not, by how much, what the shape costs; or what stands in the way of knowing. */
import { memo } from 'react';
import type { RuleVerdict } from '../../../../contract/judge.ts';
import { useUnits } from '../../../kitchen.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { temperatureWords, timeWords } from '../../../pictures/words.ts';
import { faultWords, type Programme, whereWords } from './programme.ts';
import type { Cooked, Cooking } from './use-cooking.ts';
import { shapeWords, verdictWords } from './verdict-words.ts';

export interface VerdictPanelProps {
  readonly programme: Programme;
  readonly cooking: Cooking;
  readonly kind: 'cook' | 'chill';
  /** What the step's rules say of the prediction. */
  readonly predicted: readonly RuleVerdict[];
}

export const VerdictPanel = memo(function VerdictPanel(props: VerdictPanelProps) {
  return (
    <div className="cook-verdict" aria-live="polite">
      <Words {...props} />
    </div>
  );
});

function Words({ programme, cooking, kind, predicted }: VerdictPanelProps) {
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
    unmet: kind === 'cook' ? predicted.filter((rule) => rule.passes !== true) : [],
  });
  const stage = cooked.problem.stages[cooked.verdict.heatingStage]?.name ?? 'the heat';
  return (
    <>
      {kind === 'chill' ? <ChillWords cooked={cooked} predicted={predicted} /> : null}
      <Verdict state={told.state} word={told.word} size={kind === 'chill' ? 'usual' : 'large'}>
        {told.why.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </Verdict>
      {shapeWords(advised?.cost ?? null, stage, units).map((line) => (
        <p key={line}>{line}</p>
      ))}
      <p className="small quiet">{settling ? working : 'Predicted, not measured.'}</p>
    </>
  );
}

/** A chill is for its own rules first; the cook it follows is said after them. */
function ChillWords({
  cooked,
  predicted,
}: {
  readonly cooked: Cooked;
  readonly predicted: readonly RuleVerdict[];
}) {
  const units = useUnits();
  const last = cooked.result.stages.at(-1);
  const warmest = last === undefined ? null : temperatureWords(last.warmest, units);
  return (
    <>
      {predicted.map((rule) => (
        <Verdict
          key={rule.rule}
          size="large"
          state={rule.passes === true ? 'holds' : rule.passes === false ? 'does not hold' : 'unknown'}
          word={
            rule.passes === true
              ? 'Chills in time'
              : rule.passes === false
                ? 'Chills too slowly'
                : 'Cannot be told'
          }
        >
          <p>{rule.title}.</p>
          <p>{rule.why}</p>
        </Verdict>
      ))}
      {predicted.length > 0 || cooked.mode === 'coarse' ? null : (
        <Verdict state="unknown" word="No cooling rule yet" size="large">
          Name the rule this chill is held to, below.
        </Verdict>
      )}
      {last === undefined ? null : (
        <p>
          After {timeWords(last.end)} in all the warmest point is at {warmest}
          {last.reached ? '' : `: “${last.name}” did not come to what ends it in the time it may take`}.
        </p>
      )}
      <h3>The cook before it</h3>
    </>
  );
}
