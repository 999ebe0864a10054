/** What a line is, chosen from all that the kitchen has and from the published table. */
import { useDeferredValue, useEffect, useMemo, useState } from 'react';
import type { MixLine } from '../../../../contract/steps.ts';
import { formatQuantity } from '../../../../core/units.ts';
import { useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Field } from '../../../parts/field.tsx';
import { money } from '../../../parts/money.ts';
import { Problem } from '../../../parts/problem.tsx';
import { say } from '../../../parts/toast.tsx';
import { chosen, type LineChoice, lineChoices, type TableRow } from './line-choices.ts';
import './line-of.css';

type Find = (text: string) => readonly TableRow[];

/** The table is a download of its own; null until it is here. */
function useFind(): Find | null {
  const [find, setFind] = useState<Find | null>(null);
  useEffect(() => {
    let here = true;
    void import('../../../../core/properties/ingredients/find.ts').then(({ findIngredient }) => {
      if (here) setFind(() => (text: string) => findIngredient(text, 8).map(({ row }) => row));
    });
    return () => {
      here = false;
    };
  }, []);
  return find;
}

export interface LineOfProps {
  readonly line: MixLine;
  readonly dishId: string;
  readonly onChange: (line: MixLine) => void;
}

export function LineOfChoice({ line, dishId, onChange }: LineOfProps) {
  const kitchen = useKitchen();
  const pantry = useOperation('pantry', { params: { kitchenId: kitchen.id } });
  const [text, setText] = useState(line.ingredient === 'new line' ? '' : line.ingredient);
  const find = useFind();
  const wanted = useDeferredValue(text);
  const groups = useMemo(
    () =>
      pantry.data === undefined || wanted.trim() === ''
        ? []
        : lineChoices(wanted, pantry.data, find === null ? [] : find(wanted), dishId),
    [pantry.data, wanted, find, dishId],
  );
  const take = (choice: LineChoice) => {
    onChange(chosen(line, choice));
    say(`${line.ingredient} is now ${choice.name}, by the pantry’s figures. Undo brings back what it was.`);
  };
  const besides = (c: LineChoice) =>
    [
      c.costPerKg === undefined
        ? ''
        : c.costPerKg === null
          ? 'no price'
          : `${money(Math.round(c.costPerKg), kitchen.currency)} a kg`,
      c.onShelfG === undefined ? '' : `${formatQuantity(c.onShelfG, 'mass', kitchen.units)} on the shelf`,
    ]
      .filter((x) => x !== '')
      .join(', ');
  return (
    <div className="line-of">
      <Field label="What it is" hint="The kitchen’s ingredients, parts, dishes, and the published table.">
        {(tie) => (
          <input
            {...tie}
            type="search"
            className="control"
            value={text}
            maxLength={200}
            onChange={(e) => setText(e.target.value)}
          />
        )}
      </Field>
      {pantry.error === null ? null : <Problem error={pantry.error} retry={() => pantry.refetch()} />}
      {pantry.error === null && (pantry.data === undefined || find === null) ? (
        <p className="quiet small">Reading the pantry and the table…</p>
      ) : wanted.trim() === '' ? (
        <p className="quiet small">Type what it is called.</p>
      ) : groups.length === 0 && pantry.data !== undefined ? (
        <p className="quiet small">
          Nothing is called that. Try fewer words, or say below what it is made of.
        </p>
      ) : (
        groups.map(({ title, choices }) => (
          <section key={title} aria-label={title}>
            <p className="small quiet">{title}</p>
            <ul>
              {choices.map((c) => (
                <li key={`${c.of.kind} ${c.of.id}`}>
                  <button
                    type="button"
                    aria-pressed={line.of?.kind === c.of.kind && line.of.id === c.of.id}
                    onClick={() => take(c)}
                  >
                    <span>{c.name}</span>
                    <span className="small quiet">{besides(c)}</span>
                  </button>
                </li>
              ))}
            </ul>
          </section>
        ))
      )}
    </div>
  );
}
