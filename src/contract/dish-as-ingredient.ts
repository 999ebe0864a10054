/** What a method gives to other dishes: the lines of its mixes, what its trims take, and how much of the weight is left. */
import type { StepLoss } from './method-weights.ts';
import { methodWeights } from './method-weights.ts';
import type { PantryDish } from './pantry-answer.ts';
import type { Method, MixLine } from './steps.ts';

/** Steps by which a dish is served as itself; another dish takes it from the shelf before them, unless they say what they take. */
const serving: readonly StepLoss['kind'][] = ['finish', 'plate'];

export type MixOutcome = Pick<PantryDish, 'lines' | 'bought' | 'yieldPct' | 'lossNotSaid'>;

/** Null where nothing is weighed in. */
export function mixOutcome(
  dish: { readonly species: string; readonly part: string },
  method: Method,
): MixOutcome | null {
  const lines = method.flatMap((step): MixLine[] => (step.kind === 'mix' ? step.lines : []));
  if (!lines.some((line) => line.g > 0)) return null;
  const last = method.findLastIndex((step) => step.kind === 'mix');
  const after = new Set(
    method
      .slice(last + 1)
      .filter(
        (step) => !serving.includes(step.kind) || (step.kind === 'finish' && step.lossPct !== undefined),
      )
      .map((step) => step.id),
  );
  let left = 1;
  const lossNotSaid: string[] = [];
  for (const step of methodWeights(dish, method).losses) {
    if (!after.has(step.stepId) || step.kind === 'fill' || step.kind === 'trim') continue;
    if (step.loss === null) lossNotSaid.push(step.name);
    else left *= 1 - step.loss.usual;
  }
  return {
    lines,
    bought: method.flatMap((step) =>
      step.kind === 'trim' && step.weightG > 0
        ? [{ name: step.part, of: step.of ?? null, g: step.weightG }]
        : [],
    ),
    yieldPct: 100 * left,
    lossNotSaid,
  };
}
