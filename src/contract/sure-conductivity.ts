/** `sure`: how far the conductivity of a food may be from what its composition says. */
import type { CookProblem } from '../core/heat/types.ts';
import { defaultRule } from '../core/properties/mixture-conductivity.ts';
import type { CookInput } from './cook.ts';
import { InputProblems } from './problem.ts';
import type { Spread } from './sure-spread.ts';

/** How far conductivities by Levy's rule were from those measured on lamb, offal and fat. */
const usualConductivity = { low: 0.9, high: 1.1 };
/** Beyond this it is another substance. */
export const conductivityLimits = { low: 0.3, high: 3 };

export const isComposed = (layer: CookInput['body']['layers'][number]) => layer.composition !== undefined;

/** The spread of conductivity: as given; by itself only where a layer's comes from its composition by the rule that was measured. */
export function conductivitySpread(
  { layers }: CookInput['body'],
  given: number | Spread | undefined,
): { spread: Spread; usual: boolean } {
  if (given === undefined) {
    const usual = layers.some((l) => isComposed(l) && (l.conductivityBy ?? defaultRule) === defaultRule);
    return { spread: usual ? usualConductivity : { mean: 1, sd: 0 }, usual };
  }
  const spread = typeof given === 'number' ? { mean: given, sd: 0 } : given;
  const still =
    'mean' in spread ? spread.mean === 1 && spread.sd === 0 : spread.low === 1 && spread.high === 1;
  if (!still && !layers.some(isComposed))
    throw new InputProblems([
      {
        path: 'conductivityFactor',
        found: JSON.stringify(given),
        allowed: '1, or a layer with a composition: of constant properties give kWmK itself a spread',
      },
    ]);
  return { spread, usual: false };
}

/** The problem with its composed layers conducting by a factor. */
export function conducting(problem: CookProblem, conducts: number): CookProblem {
  if (conducts === 1) return problem;
  const { body } = problem;
  const layers = body.layers.map((l) => ('composition' in l.material ? { ...l, conducts } : l));
  return { ...problem, body: { ...body, layers } };
}
