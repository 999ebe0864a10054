import { OutOfRange } from '../errors.ts';
import { inverseNormal } from '../numerics/inverse-normal.ts';
import { binomialUpper, checkCounts, exactShare, mostAssessors } from './binomial.ts';

/** The three ways of asking whether two samples differ, each with one right answer. */
export type DiscriminationTest = 'triangle' | 'duo-trio' | 'paired';
export type Sides = 1 | 2;

/** What guessing alone gives. */
export const chanceOf: Readonly<Record<DiscriminationTest, number>> = {
  triangle: 1 / 3,
  'duo-trio': 1 / 2,
  paired: 1 / 2,
};

/**
 * Chance that guessing alone gives an answer as far from chance as this one [-].
 *
 * one side: P(X ≥ x), X binomial(n, p0); two sides: min(1, 2·P(X ≥ max(x, n − x)))
 *
 * `assessors` 1 to 5000; `correct` 0 to all. p0: triangle 1/3, duo-trio and paired 1/2. Two sides for the paired test only, where
 * it was not said before the tasting which of the two would be chosen. One answer from each assessor.
 * Checked: published tables of the triangle and the duo-trio cell by cell (examples).
 * @example chanceOfAnswers('paired', 12, 10, 2) // → 0.038574
 * Source: iso-4120-2021
 */
export function chanceOfAnswers(
  test: DiscriminationTest,
  assessors: number,
  correct: number,
  sides: Sides = 1,
): number {
  checkCounts(assessors, correct);
  if (sides === 1) return binomialUpper(assessors, correct, chanceOf[test]);
  if (test !== 'paired') throw new OutOfRange('sides', '2', '1 for a test with one right answer');
  return Math.min(1, 2 * binomialUpper(assessors, Math.max(correct, assessors - correct), chanceOf[test]));
}

/**
 * Fewest right answers that guessing gives no more often than alpha [answers]; null where not even all right would do.
 *
 * min x with P(X ≥ x) ≤ α (two sides: 2·P(X ≥ x) ≤ α)
 *
 * `assessors` 1 to 5000; `alpha` over 0 to under 1. Checked: every cell of the tables in the examples.
 * @example minimumCorrect('triangle', 24, 0.05) // → 13
 * @example minimumCorrect('triangle', 4, 0.01) // → null
 * Source: iso-4120-2021
 */
export function minimumCorrect(
  test: DiscriminationTest,
  assessors: number,
  alpha: number,
  sides: Sides = 1,
): number | null {
  checkCounts(assessors, 0);
  if (!(alpha > 0 && alpha < 1)) throw new OutOfRange('alpha', String(alpha), 'more than 0, less than 1');
  const chance = (x: number) => chanceOfAnswers(test, assessors, x, sides);
  if (chance(assessors) > alpha) return null;
  // The chance falls with every further right answer from the middle on.
  let [enough, short] = [assessors, sides === 2 ? Math.ceil(assessors / 2) - 1 : -1];
  while (enough - short > 1) {
    const middle = Math.floor((enough + short) / 2);
    if (chance(middle) <= alpha) enough = middle;
    else short = middle;
  }
  return enough;
}

/** Share of the tasters who really tell the samples apart, the rest guessing. Below 0 where fewer were right than guessing gives. */
export interface Discriminators {
  readonly pd: number;
  /** One-sided 95 % limits each, by the normal approximation as the standard prints it. */
  readonly low: number;
  readonly high: number;
  /** One-sided 95 % limits each, exact. */
  readonly exactLow: number;
  readonly exactHigh: number;
}

/**
 * Share of tasters who tell the samples apart, with one-sided 95 % limits [-].
 *
 * pd = (pc − p0)/(1 − p0);  limits pd ± z·√(pc·(1 − pc)/n)/(1 − p0); exact ones from the exact limits of pc
 *
 * `assessors` 1 to 5000; `correct` 0 to all. Assumes that a taster either tells or guesses. The normal limits are poor under
 * about 20 tasters, and none at all where all or none were right: use the exact ones.
 * Checked: 24 of 60 right gives 0.10, −0.0560, 0.2560.
 * @example discriminators('triangle', 60, 24).high // → 0.2560
 * Source: iso-4120-2021
 */
export function discriminators(test: DiscriminationTest, assessors: number, correct: number): Discriminators {
  checkCounts(assessors, correct);
  const p0 = chanceOf[test];
  const pc = correct / assessors;
  const told = (p: number) => (p - p0) / (1 - p0);
  const margin = (inverseNormal(0.95) * Math.sqrt((pc * (1 - pc)) / assessors)) / (1 - p0);
  const exact = exactShare(assessors, correct, 0.9);
  return {
    pd: told(pc),
    low: told(pc) - margin,
    high: told(pc) + margin,
    exactLow: told(exact.low),
    exactHigh: told(exact.high),
  };
}

/**
 * Chance that a tasting finds a difference which is there [-].
 *
 * P(X ≥ x_min), X binomial(n, p0 + pd·(1 − p0)); two sides: also P(X ≤ n − x_min)
 *
 * `assessors` 1 to 5000; `pd` share who tell the samples apart 0 to 1; `alpha` over 0 to under 1. It is saw-toothed: one taster more
 * can lower it, because the fewest right answers go up by whole numbers.
 * Checked: triangle, pd 0.3, 30 tasters: 0.7091.
 * @example powerOf('triangle', 30, 0.3, 0.05) // → 0.7091
 * Source: own-computation
 */
export function powerOf(
  test: DiscriminationTest,
  assessors: number,
  pd: number,
  alpha: number,
  sides: Sides = 1,
): number {
  if (!(pd >= 0 && pd <= 1)) throw new OutOfRange('pd', String(pd), '0 to 1');
  const least = minimumCorrect(test, assessors, alpha, sides);
  if (least === null) return 0;
  const p = chanceOf[test] + pd * (1 - chanceOf[test]);
  const found = binomialUpper(assessors, least, p);
  return sides === 1 ? found : found + binomialUpper(assessors, least, 1 - p);
}

/** How many further sizes of a panel are looked at before power is said to stay. */
const lookAhead = 60;

export interface PanelSize {
  /** The fewest with which the power is reached. */
  readonly first: number;
  /** From here on it is reached with every larger number, as far as was looked. */
  readonly steady: number;
}

/**
 * Tasters needed so that a difference is found as often as is asked [assessors]: the first number that does, and the number from
 * which every larger one does (60 further ones looked at), since power is saw-toothed.
 *
 * first n with P(X ≥ x_min(n, α)) ≥ 1 − β, X binomial(n, p0 + pd·(1 − p0))
 *
 * `alpha`, `beta` over 0 to under 1; `pd` over 0 to 1. Checked: 24 pairs of figures in the examples.
 * @example assessorsFor('triangle', { alpha: 0.05, beta: 0.05, pd: 0.3 }).first // → 66
 * Source: iso-4120-2021
 */
export function assessorsFor(
  test: DiscriminationTest,
  { alpha, beta, pd }: { readonly alpha: number; readonly beta: number; readonly pd: number },
  sides: Sides = 1,
): PanelSize {
  if (!(beta > 0 && beta < 1)) throw new OutOfRange('beta', String(beta), 'more than 0, less than 1');
  let [first, steady] = [0, 0];
  for (let n = 1; n <= mostAssessors; n++) {
    if (powerOf(test, n, pd, alpha, sides) < 1 - beta) {
      steady = 0;
      continue;
    }
    if (first === 0) first = n;
    if (steady === 0) steady = n;
    if (n - steady >= lookAhead) return { first, steady };
  }
  throw new OutOfRange(
    'pd',
    `${pd}, which would need more than ${mostAssessors} tasters`,
    'a larger share, or larger alpha or beta',
  );
}

/**
 * The share of tellers that this panel finds with a given chance [-]; null where no share is.
 *
 * pd with power(n, pd, α) = wanted
 *
 * `assessors` 1 to 5000, `alpha` and `power` over 0 to under 1. Checked: its power is the one asked for.
 * @example shareFound('triangle', 12, 0.05, 0.5) // → 0.4322
 * Source: own-computation
 */
export function shareFound(
  test: DiscriminationTest,
  assessors: number,
  alpha: number,
  power: number,
  sides: Sides = 1,
): number | null {
  const found = (pd: number) => powerOf(test, assessors, pd, alpha, sides);
  if (found(1) < power) return null;
  let [low, high] = [0, 1];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (found(middle) >= power) high = middle;
    else low = middle;
  }
  return high;
}
