/** The rules that keeping, reheating and keeping hot are held to: those of the place first, each with what it asks and why it may not apply. */
import { useMemo } from 'react';
import { rulesAround } from '../../../../contract/step-rules.ts';
import type { StepOf } from '../../../../contract/steps.ts';
import type { RuleForFood } from '../../../../core/method/rules-for.ts';
import { cite } from '../../../../core/sources.ts';
import { confidenceWord } from '../../../parts/basis.tsx';
import { Button } from '../../../parts/button.tsx';
import { newId } from '../bench/new-step.ts';
import { asksWith, asksWithout } from './rule-asks.ts';
import type { StepForm } from './step-form.ts';
import './rules.css';

const typeWords = { statutory: 'law', guidance: 'guidance', model: 'a model, not a rule' } as const;

type Held = StepOf<'keep'> | StepOf<'finish'>;

export function StepRulesEditor({ kitchen, dish, method, step, set, readOnly }: StepForm<Held>) {
  const around = useMemo(
    () => rulesAround(step, method, { species: dish.species, part: dish.part, place: kitchen.place }),
    [step, method, dish.species, dish.part, kitchen.place],
  );
  const named = step.rules ?? [];
  const chosen = around.filter((r) => named.includes(r.rule.id));
  const rest = around.filter((r) => !named.includes(r.rule.id));
  const usual = rest.filter((r) => r.standing === 'held to');
  const also = rest.filter((r) => r.standing === 'may stand instead' || r.standing === 'one hazard');
  const elsewhere = rest.filter((r) => !usual.includes(r) && !also.includes(r));
  const take = ({ rule }: RuleForFood) =>
    set({ rules: [...named, rule.id], asks: asksWith(step.asks, rule, newId()) } as Partial<Held>, 'rules');
  const drop = ({ rule }: RuleForFood) =>
    set(
      {
        rules: named.filter((id) => id !== rule.id),
        asks: asksWithout(step.asks, rule),
      } as Partial<Held>,
      'rules',
    );
  const row = (entry: RuleForFood, act: 'take' | 'drop' | null) => (
    <li key={entry.rule.id} className="rule">
      <p>
        <strong>{entry.rule.title}</strong>{' '}
        <span className="quiet">
          {entry.rule.place}, {typeWords[entry.rule.type]}: {cite(entry.rule.source)} (
          {confidenceWord(entry.rule.confidence)})
        </span>
      </p>
      <p className="small">
        For {entry.rule.appliesTo}.{entry.why === '' ? '' : ` Here: ${entry.why}.`}
      </p>
      {readOnly || act === null ? null : act === 'take' ? (
        <Button onPress={() => take(entry)} label={`Hold it to ${entry.rule.title}`}>
          Hold it to this
        </Button>
      ) : (
        <Button onPress={() => drop(entry)} label={`Take out the rule ${entry.rule.title}`}>
          Take out
        </Button>
      )}
    </li>
  );
  return (
    <section className="stack step-rules" aria-label="Rules of the book">
      <h3>Held to</h3>
      {chosen.length === 0 ? (
        <p>Nothing yet: no limit is recorded against a rule at this step.</p>
      ) : (
        <ul className="rules">{chosen.map((entry) => row(entry, 'drop'))}</ul>
      )}
      {usual.length === 0 ? null : (
        <>
          <h4>Usual where you are</h4>
          <ul className="rules">{usual.map((entry) => row(entry, 'take'))}</ul>
        </>
      )}
      {also.length === 0 ? null : (
        <details className="fold">
          <summary>{also.length} more that may stand instead, or speak of one hazard</summary>
          <ul className="rules">{also.map((entry) => row(entry, 'take'))}</ul>
        </details>
      )}
      {elsewhere.length === 0 ? null : (
        <details className="fold">
          <summary>{elsewhere.length} of other places or other foods, and why</summary>
          <ul className="rules">{elsewhere.map((entry) => row(entry, null))}</ul>
        </details>
      )}
      <p className="small quiet">
        What you hold it to becomes a limit that is recorded with every batch. Which rule binds your kitchen
        is for your local authority to say.
      </p>
    </section>
  );
}
