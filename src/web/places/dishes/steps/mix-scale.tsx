/** The mix for another number of pieces, another weight, or as much as the scarcest part allows; in steps that the scale can show. */
import { useMemo, useState } from 'react';
import { isCuringSalt } from '../../../../contract/make-it.ts';
import type { Pantry } from '../../../../contract/pantry-answer.ts';
import { lineOf } from '../../../../contract/pantry-reckon.ts';
import type { Method, MixLine, StepOf } from '../../../../contract/steps.ts';
import { piecesFrom } from '../../../../core/filling/casing.ts';
import { type ScaledLine, type ScaleTo, scaleMix } from '../../../../core/filling/scale.ts';
import { saltTolerance, weighed } from '../../../../core/filling/weighing.ts';
import { formatQuantity, plainNumber } from '../../../../core/units.ts';
import { useOperation } from '../../../api.ts';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { ScrollAcross } from '../../../parts/scroll-across.tsx';
import { say } from '../../../parts/toast.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import type { StepForm } from './step-form.ts';

type By = 'pieces' | 'batch' | 'scarcest';

const isSalt = (line: MixLine) => /^(sea |fine |table )?salt\b/i.test(line.ingredient) || isCuringSalt(line);

/** What there is of a line's part on the shelf [kg]; undefined where it is no part. */
function onShelf(line: MixLine, pantry: Pantry | undefined): number | undefined {
  const of = lineOf(line);
  if (of?.kind !== 'part') return undefined;
  const part = pantry?.parts.find((p) => p.id === of.id);
  return part === undefined ? undefined : part.onShelfG / 1000;
}

export function scaledLines(lines: readonly MixLine[], pantry: Pantry | undefined): ScaledLine[] {
  return lines.map((line) => ({
    name: line.ingredient,
    mass: line.g / 1000,
    salt: isSalt(line),
    available: onShelf(line, pantry),
    ...(line.meat === true ? { meat: true } : {}),
    ...(line.amount === undefined
      ? {}
      : {
          amount:
            line.amount.by === 'per piece'
              ? { by: 'per piece' as const, mass: line.amount.g / 1000 }
              : { by: 'of the meat' as const, share: line.amount.pct / 100 },
        }),
  }));
}

/** Pieces that the mix as written makes, by the fill step after it; null where none says. */
export function piecesWritten(method: Method, step: Pick<StepOf<'mix'>, 'id' | 'lines'>): number | null {
  const total = step.lines.reduce((sum, l) => sum + l.g, 0);
  const fill = method.slice(method.findIndex((s) => s.id === step.id)).find((s) => s.kind === 'fill');
  if (fill?.kind !== 'fill' || fill.gramsPerPiece <= 0 || total === 0) return null;
  return fill.pieces ?? piecesFrom(total / 1000, fill.gramsPerPiece / 1000).pieces;
}

export function MixScale({ kitchen, method, step, set, readOnly }: StepForm<StepOf<'mix'>>) {
  const [open, setOpen] = useState(false);
  const [by, setBy] = useState<By>('pieces');
  const [pieces, setPieces] = useState<number | null>(null);
  const [grams, setGrams] = useState<number | null>(null);
  const pantry = useOperation('pantry', { params: { kitchenId: kitchen.id } });
  const total = step.lines.reduce((sum, l) => sum + l.g, 0);
  const written = piecesWritten(method, step);
  const answer = useMemo(() => {
    const to: ScaleTo | null =
      by === 'scarcest'
        ? { by }
        : by === 'batch'
          ? grams === null || grams <= 0
            ? null
            : { by, mass: grams / 1000 }
          : pieces === null || pieces <= 0 || written === null || written === 0
            ? null
            : { by, pieces };
    if (to === null) return null;
    try {
      const lines = scaledLines(step.lines, pantry.data);
      const scaled = scaleMix(lines, to, written === 0 ? null : written);
      const shown = weighed(
        lines.map((l, i) => ({
          name: l.name,
          mass: scaled.masses[i]!,
          salt: l.salt,
          available: l.available,
        })),
        (step.scaleStepG ?? 1) / 1000,
        (step.fineScaleStepG ?? step.scaleStepG ?? 1) / 1000,
      );
      return { scaled, shown };
    } catch (error) {
      if (error instanceof RangeError || error instanceof Error) return error.message;
      throw error;
    }
  }, [by, grams, pieces, written, step.lines, step.scaleStepG, step.fineScaleStepG, pantry.data]);
  if (readOnly || total === 0) return null;
  if (!open)
    return (
      <p>
        <Button onPress={() => setOpen(true)}>Make more or less of it…</Button>
      </p>
    );
  const mass = (kg: number) => formatQuantity(kg * 1000, 'mass', kitchen.units);
  const write = () => {
    if (answer === null || typeof answer === 'string') return;
    set(
      {
        lines: step.lines.map((l, i) => ({
          ...l,
          g: Number((answer.shown.lines[i]!.mass * 1000).toFixed(6)),
        })),
      },
      `scale ${Date.now()}`,
    );
    setOpen(false);
    say(`The mix is written for ${mass(answer.shown.total)}. Undo brings back what it was.`);
  };
  return (
    <section className="stack" aria-label="More or less of it">
      <div className="fields">
        <Choice
          label="Make it for"
          value={by}
          options={[
            { value: 'pieces', label: 'so many pieces' },
            { value: 'batch', label: 'a weight' },
            { value: 'scarcest', label: 'what is on the shelf' },
          ]}
          onChange={setBy}
        />
        {by === 'pieces' ? (
          <NumberField
            label={`Pieces${written === null ? '' : ` (written for ${written})`}`}
            unit=""
            value={pieces}
            low={1}
            high={10_000}
            whole
            optional
            onChange={setPieces}
            hint={written === null ? 'A fill step says how much goes into one piece.' : undefined}
          />
        ) : by === 'batch' ? (
          <NumberField
            label={`Weight (written for ${mass(total / 1000)})`}
            unit="g"
            value={grams}
            low={1}
            high={1_000_000}
            optional
            onChange={setGrams}
          />
        ) : null}
        <NumberField
          label="The scale shows steps of"
          unit="g"
          value={step.scaleStepG ?? 1}
          low={0.01}
          high={100}
          onChange={(v) => v !== null && set({ scaleStepG: v }, 'scaleStepG')}
        />
        <NumberField
          label="For salt, steps of"
          unit="g"
          value={step.fineScaleStepG ?? step.scaleStepG ?? 1}
          low={0.001}
          high={10}
          onChange={(v) => v !== null && set({ fineScaleStepG: v }, 'fineScaleStepG')}
          hint={`Salt and curing salt are held within ${saltTolerance * 100} %.`}
        />
      </div>
      {answer === null ? (
        <p className="quiet">Say how much is wanted.</p>
      ) : typeof answer === 'string' ? (
        <Verdict state="unknown" word="It cannot be scaled so">
          <p>{answer}</p>
        </Verdict>
      ) : (
        <>
          <ScrollAcross label="The mix as it would be weighed">
            <table>
              <caption className="unseen">The mix as it would be weighed</caption>
              <thead>
                <tr>
                  <th scope="col">Ingredient</th>
                  <th scope="col" className="number">
                    written
                  </th>
                  <th scope="col" className="number">
                    weigh in
                  </th>
                </tr>
              </thead>
              <tbody>
                {step.lines.map((line, i) => (
                  <tr key={`${line.ingredient} ${i}`}>
                    <th scope="row">
                      {line.ingredient}
                      {answer.scaled.scarcest === i ? ' (allows no more)' : ''}
                    </th>
                    <td className="number">{mass(line.g / 1000)}</td>
                    <td className="number">
                      {plainNumber(answer.shown.lines[i]!.mass * 1000, 2)} g
                      {answer.shown.lines[i]!.weighable ? '' : ': not on this scale'}
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </ScrollAcross>
          {answer.shown.problems.length === 0 ? null : (
            <Verdict state="does not hold" word="The scale cannot show it">
              <ul>
                {answer.shown.problems.map((p) => (
                  <li key={p}>{p}</li>
                ))}
              </ul>
            </Verdict>
          )}
          <div className="row">
            <Button kind="strong" onPress={write}>
              Write it so
            </Button>
            <Button kind="quiet" onPress={() => setOpen(false)}>
              Leave it as it is
            </Button>
          </div>
        </>
      )}
    </section>
  );
}
