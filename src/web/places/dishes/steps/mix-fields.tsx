import { useState } from 'react';
import type { MixLine, StepOf } from '../../../../contract/steps.ts';
import { formatQuantity, plainNumber } from '../../../../core/units.ts';
import { useOperation } from '../../../api.ts';
import { Button } from '../../../parts/button.tsx';
import { money } from '../../../parts/money.ts';
import { NumberField } from '../../../parts/number-field.tsx';
import { say } from '../../../parts/toast.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { Foreseen } from './foreseen.tsx';
import { lineFor } from './known-line.ts';
import { MakeIt } from './make-it.tsx';
import { MixLineRow } from './mix-line.tsx';
import { type MixSums, mixSums } from './mix-sums.ts';
import { readPasted } from './pasted-lines.ts';
import type { StepForm } from './step-form.ts';
import './mix.css';

export function MixFields(form: StepForm<StepOf<'mix'>>) {
  const { kitchen, step, set, readOnly } = form;
  const ingredients = useOperation('ingredients', { params: { kitchenId: kitchen.id } });
  const known = ingredients.data ?? [];
  const [fresh, setFresh] = useState<number | null>(null);
  const put = (lines: readonly MixLine[], about: string) => set({ lines: [...lines] }, about);
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
  const paste = (text: string, at: number) => {
    const { lines, left } = readPasted(text, kitchen.units);
    if (lines.length === 0) {
      say('No line of what was pasted has a name and a weight.');
      return;
    }
    const made = lines.map((l) => lineFor(l.ingredient, l.g, known));
    const before = step.lines
      .slice(0, at)
      .concat(step.lines[at]?.g === 0 ? [] : step.lines.slice(at, at + 1));
    put([...before, ...made, ...step.lines.slice(at + 1)], 'paste');
    say(
      left.length === 0
        ? `${lines.length} lines pasted.`
        : `${lines.length} lines pasted. Not understood: ${left.join(' · ')}`,
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
              total={total}
              known={known}
              currency={kitchen.currency}
              readOnly={readOnly}
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
              onPaste={(text) => paste(text, i)}
            />
          ))}
        </ol>
        {readOnly ? null : (
          <p className="row">
            <Button onPress={() => add()}>Add a line</Button>
            <span className="quiet small">
              Enter adds the next; a table pasted from a spreadsheet becomes lines.
            </span>
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
      <MakeIt {...form} />
      <MixForeseen {...form} />
    </>
  );
}

const list = (names: readonly string[]) => names.join(', ');

function MixForeseen({ kitchen, step }: StepForm<StepOf<'mix'>>) {
  const sums = mixSums(step.lines);
  const { mixture } = sums;
  if (step.lines.every((l) => l.g === 0))
    return (
      <Foreseen>
        <p className="quiet">Weigh in the first line to see what the filling is made of and what it costs.</p>
      </Foreseen>
    );
  const pct = (x: number) => `${plainNumber(x * 100, 1)} %`;
  const complete = sums.unknown.length === 0;
  return (
    <Foreseen>
      {sums.problem === null ? null : (
        <Verdict state="unknown" word="The composition cannot be reckoned">
          {sums.problem}
        </Verdict>
      )}
      {mixture?.composition === null || mixture === null ? null : (
        <table>
          <caption>
            {complete
              ? `All ${formatQuantity(mixture.mass * 1000, 'mass', kitchen.units)}`
              : `Only of the ${formatQuantity(mixture.known * 1000, 'mass', kitchen.units)} that are known`}
          </caption>
          <tbody>
            {(['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash'] as const).map((c) => (
              <tr key={c}>
                <th scope="row">{c}</th>
                <td className="number">{pct(mixture.composition![c])}</td>
              </tr>
            ))}
            <tr>
              <th scope="row">water to protein</th>
              <td className="number">
                {mixture.composition.protein === 0
                  ? 'no protein'
                  : `${plainNumber(mixture.composition.water / mixture.composition.protein, 2)} : 1`}
              </td>
            </tr>
            <tr>
              <th scope="row">salt</th>
              <td className="number">
                {sums.saltUnknown.length === 0
                  ? pct(mixture.salt / mixture.mass)
                  : `at least ${pct(mixture.salt / mixture.mass)}`}
              </td>
            </tr>
            <tr>
              <th scope="row">salt in its water</th>
              <td className="number">
                {mixture.waterPhaseSalt === null ? 'not known' : pct(mixture.waterPhaseSalt)}
              </td>
            </tr>
          </tbody>
        </table>
      )}
      {complete ? null : (
        <Verdict state="unknown" word="Composition not known">
          <p>
            Of {list(sums.unknown)}.{' '}
            {mixture === null || mixture.known === 0
              ? 'Say what they are made of, or choose an ingredient that the kitchen knows.'
              : `The figures above leave ${sums.unknown.length === 1 ? 'it' : 'them'} out.`}
          </p>
        </Verdict>
      )}
      <Cost sums={sums} currency={kitchen.currency} />
      <p>
        Allergens: {sums.allergens.length === 0 ? 'none named' : list(sums.allergens)}.
        {sums.allergensUnknown.length === 0
          ? ''
          : ` Nobody has said for ${list(sums.allergensUnknown)}: ask.`}
      </p>
    </Foreseen>
  );
}

function Cost({ sums, currency }: { readonly sums: MixSums; readonly currency: string }) {
  const { cost, unpriced, mixture } = sums;
  if (cost === 0 && unpriced.length > 0)
    return <p>What it costs is not known: no price for {list(unpriced)}.</p>;
  const each =
    mixture === null || mixture.mass === 0 ? '' : `, ${money(cost / mixture.mass, currency)} a kilogram`;
  return (
    <p>
      Costs {unpriced.length === 0 ? '' : 'at least '}
      <strong>{money(cost, currency)}</strong>
      {each}.{unpriced.length === 0 ? '' : ` No price for ${list(unpriced)}.`}
    </p>
  );
}
