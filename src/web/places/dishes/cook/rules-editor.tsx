/** The rules of the book that the step is held to, and what the prediction says of each. */
import { memo } from 'react';
import { listRules, type RuleVerdict } from '../../../../contract/judge.ts';
import type { Place } from '../../../../contract/records.ts';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { Verdict } from '../../../parts/verdict.tsx';

export interface RulesEditorProps {
  readonly rules: readonly string[];
  readonly kind: 'cook' | 'chill';
  readonly place: Place;
  /** Empty while there is no prediction of the current input. */
  readonly predicted: readonly RuleVerdict[];
  readonly onChange: (rules: string[]) => void;
  readonly readOnly: boolean;
}

const book = listRules();

/** Rules of the kitchen's own place first. */
function offered(kind: 'cook' | 'chill', place: Place) {
  const home = place === 'US' ? /^us-/ : /^(gb|scotland|england|eu)-/;
  return book
    .filter((rule) =>
      kind === 'chill' ? rule.kind === 'cooling' : rule.kind !== 'cooling' && rule.kind !== 'keep',
    )
    .sort((a, b) => Number(home.test(b.id)) - Number(home.test(a.id)));
}

const typeWords = { statutory: 'law', guidance: 'guidance', model: 'a model, not a rule' } as const;

export const RulesEditor = memo(function RulesEditor({
  rules,
  kind,
  place,
  predicted,
  onChange,
  readOnly,
}: RulesEditorProps) {
  const choices = offered(kind, place).filter((rule) => !rules.includes(rule.id));
  return (
    <section className="stack" aria-labelledby="rules-heading">
      <h3 id="rules-heading">Held to</h3>
      {rules.length === 0 ? <p>No rule of the book yet.</p> : null}
      <ul className="rules">
        {rules.map((id) => {
          const rule = book.find((r) => r.id === id);
          const said = predicted.find((p) => p.rule === id);
          return (
            <li key={id} className="rule">
              <p>
                <strong>{rule?.title ?? id}</strong>{' '}
                {rule === undefined ? (
                  <span className="field-error">not in the rule book: it will never be judged as held</span>
                ) : (
                  <span className="quiet">
                    {rule.place}, {typeWords[rule.type]}: {rule.source}
                  </span>
                )}
              </p>
              {said === undefined ? null : (
                <Verdict
                  state={
                    said.passes === true ? 'neutral' : said.passes === false ? 'does not hold' : 'unknown'
                  }
                  word={
                    said.passes === true
                      ? 'Would hold, as predicted'
                      : said.passes === false
                        ? 'Would not hold'
                        : 'Cannot be told from this programme'
                  }
                >
                  {said.why}
                </Verdict>
              )}
              {readOnly ? null : (
                <Button
                  onPress={() => onChange(rules.filter((r) => r !== id))}
                  label={`Take out the rule ${rule?.title ?? id}`}
                >
                  Take out
                </Button>
              )}
            </li>
          );
        })}
      </ul>
      {readOnly || rules.length >= 8 ? null : (
        <Choice
          label="Add a rule"
          value=""
          options={choices.map((rule) => ({ value: rule.id, label: `${rule.title} (${rule.place})` }))}
          onChange={(id: string) => id !== '' && onChange([...rules, id])}
          hint="Which of them binds your kitchen is for your local authority to say."
        />
      )}
    </section>
  );
});
