import { useState } from 'react';
import type { MixLine, StepOf } from '../../../../contract/steps.ts';
import { useOperation } from '../../../api.ts';
import { Button } from '../../../parts/button.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { say } from '../../../parts/toast.tsx';
import { lineIs } from './line-choices.ts';
import { meatOf, weightMeant } from './line-meant.tsx';
import { MakeIt } from './make-it.tsx';
import { MixForeseen } from './mix-foreseen.tsx';
import { MixLineRow } from './mix-line.tsx';
import { MixScale, piecesWritten } from './mix-scale.tsx';
import { PasteList } from './paste-list.tsx';
import type { StepForm } from './step-form.ts';
import { useTable } from './use-table.ts';
import './mix.css';

export function MixFields(form: StepForm<StepOf<'mix'>>) {
  const { kitchen, step, set, readOnly } = form;
  const ingredients = useOperation('ingredients', { params: { kitchenId: kitchen.id } });
  const pantry = useOperation('pantry', { params: { kitchenId: kitchen.id } });
  const table = useTable();
  const known = ingredients.data ?? [];
  const [pasted, setPasted] = useState<{ readonly text: string; readonly at: number } | null>(null);
  const [fresh, setFresh] = useState<number | null>(null);
  const pieces = piecesWritten(form.method, step);
  // A line that is so many per cent of the meat follows the meat.
  const put = (lines: readonly MixLine[], about: string) =>
    set(
      {
        lines: lines.map((l) =>
          l.amount?.by === 'pct of the meat' ? weightMeant(l, meatOf(lines), pieces) : l,
        ),
      },
      about,
    );
  const total = step.lines.reduce((sum, l) => sum + l.g, 0);

  const add = (after = step.lines.length - 1) => {
    const lines = [
      ...step.lines.slice(0, after + 1),
      { ingredient: 'new line', g: 0 },
      ...step.lines.slice(after + 1),
    ];
    put(lines, 'add line');
    setFresh(after + 1);
  };
  const take = (lines: readonly MixLine[], left: readonly string[], at: number) => {
    // A line that was only begun makes room for the list.
    const before = step.lines
      .slice(0, at)
      .concat(step.lines[at] === undefined || step.lines[at].g === 0 ? [] : [step.lines[at]]);
    put([...before, ...lines, ...step.lines.slice(at + 1)], 'paste');
    setPasted(null);
    say(
      left.length === 0
        ? `${lines.length} lines taken.`
        : `${lines.length} lines taken. Without a weight, so left: ${left.join(' · ')}`,
    );
  };
  return (
    <>
      <div className="mix">
        <div className="mix-head small quiet" aria-hidden="true">
          <span>Ingredient</span>
          <span>Weight</span>
          <span>Share</span>
          <span>Made of</span>
        </div>
        <ol className="mix-lines">
          {step.lines.map((line, i) => (
            <MixLineRow
              key={i}
              index={i}
              line={line}
              dishId={form.dish.id}
              is={pantry.data === undefined ? null : lineIs(line, pantry.data, (id) => table?.(id)?.name)}
              total={total}
              known={known}
              currency={kitchen.currency}
              readOnly={readOnly}
              meatG={meatOf(step.lines)}
              pieces={pieces}
              fresh={fresh === i}
              onChange={(next, about) =>
                put(
                  step.lines.map((l, j) => (j === i ? next : l)),
                  `line ${i} ${about}`,
                )
              }
              onRemove={() =>
                put(
                  step.lines.filter((_, j) => j !== i),
                  'remove line',
                )
              }
              onEnter={() => add(i)}
              onPaste={(text) => setPasted({ text, at: i })}
            />
          ))}
        </ol>
        {readOnly ? null : (
          <p className="row">
            <Button onPress={() => add()}>Add a line</Button>
            <Button onPress={() => setPasted({ text: '', at: step.lines.length })}>Paste a list…</Button>
            <span className="quiet small">Enter adds the next line.</span>
          </p>
        )}
      </div>
      <div className="fields">
        <NumberField
          label="Never warmer than"
          unit="°C"
          value={step.maxC}
          low={-5}
          high={40}
          readOnly={readOnly}
          onChange={(v) => v !== null && set({ maxC: v }, 'maxC')}
          hint="Cold, so that it binds: common practice, no source."
        />
      </div>
      {pasted === null ? null : (
        <PasteList
          start={pasted.text}
          units={kitchen.units}
          pantry={pantry.data}
          dishId={form.dish.id}
          onTake={(lines, left) => take(lines, left, pasted.at)}
          onClose={() => setPasted(null)}
        />
      )}
      <MakeIt {...form} />
      <MixScale {...form} />
      <MixForeseen {...form} />
    </>
  );
}
