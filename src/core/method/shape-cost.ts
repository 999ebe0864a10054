/** What the shape costs: the minutes an even piece would save, and the minutes that each millimetre of bulge takes. */
import type { Body, CookProblem, Place } from '../heat/types.ts';
import { type AdviceOptions, finish, type HeatingTime, heatingTimeSearch } from './advice.ts';
import { bulged, evenShape } from './even-shape.ts';

export interface ShapeCost {
  /** The even piece's diameter [m] and its shortest heating; null where the piece is even, or is not a body of revolution. */
  readonly even: { readonly diameter: number; readonly heating: HeatingTime; readonly saves: number } | null;
  /** Heating time that one more metre of thickness at the cold spot costs [s/m]; null where it cannot be told. */
  readonly perMetre: number | null;
}

/**
 * The search behind `shapeCost` [s, s/m], one engine run at a time; `heating` is the shortest heating of the body as it stands.
 * Source: own-computation
 */
export function* shapeCostSearch(
  problem: CookProblem,
  heatingStage: number,
  heating: HeatingTime,
  coldSpot: Place,
  options: AdviceOptions = {},
): Generator<number, ShapeCost> {
  if (heating.status !== 'found') return { even: null, perMetre: null };
  const search = (body: Body) =>
    heatingTimeSearch({ ...problem, body }, heatingStage, {
      tolerance: 1.5,
      ...options,
      guess: heating.duration,
    });
  const body = evenShape(problem.body);
  let even: ShapeCost['even'] = null;
  if (body !== null) {
    const found = yield* search(body);
    if (found.status === 'found')
      even = {
        diameter: body.profile[0].diameter,
        heating: found,
        saves: heating.duration - found.duration,
      };
  }
  const delta = 0.003;
  const thicker = yield* search(bulged(problem.body, delta, coldSpot));
  const perMetre = thicker.status === 'found' ? (thicker.duration - heating.duration) / delta : null;
  return { even, perMetre };
}

/**
 * What an even shape would save, and what a bulge costs [s, s/m].
 * Equation: saves = t(body) − t(even); per metre = (t(bulged by 3 mm) − t(body)) / 3 mm, t the shortest heating.
 * Parameters: `heating` of the body as it stands (from `heatingTime`, the same mode); `coldSpot` from the result.
 * Assumptions: those of `evenShape` and `bulged`.
 * Checked: a tapered piece saves time when evened out; minutes per millimetre are positive and near those of t ∝ D².
 * @example shapeCost(problem, 0, heatingTime(problem, 0), result.coldSpot).perMetre // about 1e5 s/m: 1.7 min a millimetre
 * Source: own-computation
 */
export function shapeCost(
  problem: CookProblem,
  heatingStage: number,
  heating: HeatingTime,
  coldSpot: Place,
  options: AdviceOptions = {},
): ShapeCost {
  return finish(shapeCostSearch(problem, heatingStage, heating, coldSpot, options));
}
