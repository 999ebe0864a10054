/** A dish's method as weights: what each step takes from them, on what that rests, and what the batch as written comes to. */
import { type MethodWeights, type Spread, type WeightStep, weightsThrough } from '../core/method/weights.ts';
import { groundLoss } from '../core/properties/cook-loss.ts';
import { type CookedBy, cookingYieldOf } from '../core/properties/cooking-yields.ts';
import type { Basis } from '../core/sources.ts';
import type { StageInput } from './body.ts';
import type { Method, Step, StepOf } from './steps.ts';
import { animalOf } from './tree-edit.ts';

export interface StepLoss {
  readonly stepId: string;
  readonly name: string;
  readonly kind: Step['kind'];
  /** Share of what goes in, negative where the step adds; null where nobody knows. */
  readonly loss: Spread | null;
  /** In words: "as weighed here", "pig heart, braised: 73 % is left". */
  readonly why: string;
  readonly basis: Basis;
  readonly into: Spread;
  readonly out: Spread;
  readonly known: boolean;
}

export interface DishWeights extends MethodWeights {
  readonly losses: readonly StepLoss[];
  /** What does not add up in the method, in words. */
  readonly remarks: readonly string[];
}

interface Reckoned {
  readonly loss: Spread | null;
  readonly why: string;
  readonly basis: Basis;
}

const practice = (what: string): Basis => ({
  what,
  source: 'common-practice',
  confidence: 'common practice',
});
const guess = (low: number, usual: number, high: number, why: string): Reckoned => ({
  loss: { low, usual, high },
  why: `${why}: common practice, no source; weigh it once`,
  basis: practice(why),
});

const text = (stage: StageInput) => `${stage.medium ?? ''} ${stage.name}`.toLowerCase();

/** How a part is cooked, as the tables of yields have it. */
export function cookedBy(stages: readonly StageInput[]): CookedBy {
  const all = stages.map(text).join(' ');
  if (/grill|radiant/.test(all)) return 'grilled';
  if (/oven|roast|dry air/.test(all)) return 'roasted';
  return 'simmered';
}

/** Loss of a cook step: of a forcemeat by its salt, of a whole part by the published yields. */
function cookLossOf(
  step: StepOf<'cook'>,
  species: string,
  part: string,
  mixedBefore: boolean,
  saltPct: number,
) {
  if (mixedBefore) {
    const salt = Math.min(3, Math.max(0, saltPct));
    return {
      loss: { low: groundLoss(70, salt), usual: groundLoss(75, salt), high: groundLoss(85, salt) },
      why: `a forcemeat with ${salt.toFixed(1)} % salt, brought to 70 to 85 °C (measured on ground chicken breast)`,
      basis: { what: 'loss of ground meat by its salt', source: 'bae-2018', confidence: 'read' },
    } as const satisfies Reckoned;
  }
  const by = cookedBy(step.stages);
  const found = cookingYieldOf(animalOf(species), part, by);
  if (found === null)
    return {
      loss: null,
      why: `no published yield of ${part} of ${species}, ${by}: weigh it in and out once`,
      basis: practice('not known'),
    } as const satisfies Reckoned;
  const [first] = found.rows;
  return {
    loss: { low: 1 - found.high, usual: 1 - found.usual, high: 1 - found.low },
    why: `${found.rows.map((r) => `${r.species} ${r.part}, ${r.by}: ${r.pct} % is left`).join('; ')}${found.borrowed ? ' (another animal)' : ''}`,
    basis: {
      what: 'cooking yield',
      source: first!.source,
      confidence: first!.confidence,
    },
  } as const satisfies Reckoned;
}

function reckon(
  step: Step,
  method: Method,
  { species, part, saltPct }: { species: string; part: string; saltPct: number },
): Reckoned | null {
  const before = method.slice(0, method.indexOf(step));
  if (step.lossPct !== undefined) {
    const x = step.lossPct / 100;
    return {
      loss: { low: x, usual: x, high: x },
      why: 'as weighed here',
      basis: { what: 'weighed by the kitchen', source: 'user-input', confidence: 'read' },
    };
  }
  switch (step.kind) {
    case 'cure':
      return step.by === 'dry cure'
        ? guess(-step.saltPct / 100, 0, 0.03, 'dry salt goes in and draws water out')
        : guess(-0.08, -0.03, 0.01, 'a piece in brine takes some of it up');
    case 'rinse and dry':
      return guess(-0.02, 0, 0.03, 'rinsing wets, drying takes it off again');
    case 'cook':
      return cookLossOf(
        step,
        species,
        part,
        before.some((s) => s.kind === 'mix'),
        saltPct,
      );
    case 'chill':
      return guess(0, 0.005, 0.02, 'open in moving air a piece dries, covered or in water hardly');
    case 'keep':
      return guess(0, 0.005, 0.02, 'drip in the box');
    case 'finish':
      return guess(0.02, 0.06, 0.12, 'crisping and frying drive water and fat off');
    case 'plate':
      return guess(0, 0.02, 0.05, 'ends and crumbs of slicing');
    default:
      return null;
  }
}

/** What stands in the bowl of a mix [kg]: its lines, those cooked down as they are left. */
const bowlKg = (step: StepOf<'mix'>, only: (line: StepOf<'mix'>['lines'][number]) => boolean) =>
  step.lines.reduce(
    (sum, line) => sum + (only(line) ? (line.g / 1000) * ((line.reduced?.toPct ?? 100) / 100) : 0),
    0,
  );

/**
 * Weights of a method. `saltPct`: salt of its mix, % of the weight, where it is known (1 where not).
 * A loss the step states as weighed here goes before what is reckoned.
 */
export function methodWeights(
  dish: { readonly species: string; readonly part: string },
  method: Method,
  saltPct = 1,
): DishWeights {
  const steps: WeightStep[] = [];
  const of: { step: Step; at: number; reckoned: Reckoned }[] = [];
  const push = (step: Step, made: WeightStep, reckoned: Reckoned) => {
    of.push({ step, at: steps.push(made) - 1, reckoned });
  };
  const stated = (what: string): Basis => ({ what, source: 'user-input', confidence: 'read' });
  const none = { low: 0, usual: 0, high: 0 };
  for (const step of method) {
    if (step.kind === 'trim') {
      const kept = step.yieldPct / 100;
      push(
        step,
        { kind: 'part', mass: step.weightG / 1000, kept },
        {
          loss: { low: 1 - kept, usual: 1 - kept, high: 1 - kept },
          why: `${step.yieldPct} % of ${step.part} is kept, as the method has it`,
          basis: stated('trim yield'),
        },
      );
    } else if (step.kind === 'mix')
      push(
        step,
        { kind: 'mix', mass: bowlKg(step, () => true), carried: bowlKg(step, (l) => l.carried === true) },
        { loss: none, why: 'as weighed in', basis: stated('lines of the mix') },
      );
    else if (step.kind === 'fill')
      push(
        step,
        { kind: 'fill', perPiece: step.gramsPerPiece / 1000, pieces: step.pieces },
        { loss: none, why: 'casing and filling together', basis: stated('grams per piece') },
      );
    else {
      const reckoned = reckon(step, method, { ...dish, saltPct });
      if (reckoned !== null) push(step, { kind: 'loss', loss: reckoned.loss }, reckoned);
      if (step.kind === 'plate')
        steps.push({
          kind: 'plate',
          portion: step.portionG / 1000,
          perPiece: step.portionsPerPiece,
        });
    }
  }
  const weights = weightsThrough(steps);
  const losses = of.map(({ step, at, reckoned }): StepLoss => {
    const { into, out, known } = weights.steps[at]!;
    return { stepId: step.id, name: step.name, kind: step.kind, ...reckoned, into, out, known };
  });
  return { ...weights, losses, remarks: remarksOf(weights, method) };
}

const g = (kg: number) => `${Math.round(kg * 1000)} g`;

function remarksOf(w: MethodWeights, method: Method): string[] {
  const remarks: string[] = [];
  if (w.overCarried > 0.0005)
    remarks.push(
      `A mix weighs in ${g(w.overCarried)} more of what was prepared than the steps before it can give.`,
    );
  if (w.leftCarried.usual > 0.0005)
    remarks.push(`${g(w.leftCarried.usual)} of what was prepared goes into no mix: find it a use.`);
  if (w.leftFilling > 0.0005) remarks.push(`${g(w.leftFilling)} of the filling is left over.`);
  const plate = method.findLast((s) => s.kind === 'plate');
  if (plate?.kind === 'plate' && w.pieces !== null && w.portion !== null && plate.portionG > 0) {
    const off = w.portion.usual * 1000 - plate.portionG;
    if (plate.portionG < w.portion.low * 1000 || plate.portionG > w.portion.high * 1000)
      remarks.push(
        `A portion is written as ${Math.round(plate.portionG)} g and comes to about ${g(w.portion.usual)}: ${Math.abs(Math.round(off))} g ${off > 0 ? 'more' : 'less'}.`,
      );
  }
  if (w.portions === null) remarks.push('No step says what a portion is: add how it is plated.');
  return remarks;
}
