/** Whether a cutter gets better at it, and whether two cutters, or two suppliers, differ: shares by their log-odds. */
import { Contradiction, OutOfRange } from '../errors.ts';
import type { StudentQuantile } from './yield-estimate.ts';

const two = 0.975;

export interface YieldTrend {
  readonly weighings: number;
  /** Log-odds at the first animal, and what each doubling of the number cut adds to it. */
  readonly first: number;
  readonly perDoubling: number;
  readonly low: number;
  readonly high: number;
  /** `not shown`: the interval holds zero. That is no proof that there is none. */
  readonly verdict: 'rising' | 'falling' | 'not shown';
}

/**
 * Learning curve of a cutter: change of a part's log-odds for each doubling of the animals cut [-].
 * Equation: z = a + b log2 k, least squares; b ± t(0.975, n − 2) s/√Σ(log2 k − mean)².
 * @param cuts in any order: `animal`, counted from 1 over all that this cutter has cut, and the part's log-odds
 * @param t Student's quantile
 * Assumes the animals stay alike, so that what changes is the hand; three weighings at least, of different animals.
 * Checked: against a statistics library on kept numbers; an exact curve comes back.
 * @example learningTrend([{ animal: 1, z: 0 }, { animal: 2, z: 0.1 }, { animal: 4, z: 0.2 }], () => 12.7).perDoubling // → 0.1
 * Source: wright-1936
 */
export function learningTrend(
  cuts: readonly { readonly animal: number; readonly z: number }[],
  t: StudentQuantile,
): YieldTrend {
  if (cuts.length < 3) throw new Contradiction('cuts', `${cuts.length} weighings`, 'at least three');
  const points = cuts.map(({ animal, z }, i) => {
    if (!(animal >= 1)) throw new OutOfRange(`cuts[${i}].animal`, `${animal}`, '1 or more');
    if (!Number.isFinite(z)) throw new OutOfRange(`cuts[${i}].z`, `${z}`, 'a finite number');
    return { x: Math.log2(animal), z };
  });
  const n = points.length;
  const meanX = points.reduce((sum, p) => sum + p.x, 0) / n;
  const meanZ = points.reduce((sum, p) => sum + p.z, 0) / n;
  const sxx = points.reduce((sum, p) => sum + (p.x - meanX) ** 2, 0);
  if (!(sxx > 1e-12)) throw new Contradiction('cuts', 'all of the same animal', 'different animals');
  const slope = points.reduce((sum, p) => sum + (p.x - meanX) * (p.z - meanZ), 0) / sxx;
  const first = meanZ - slope * meanX;
  const squares = points.reduce((sum, p) => sum + (p.z - first - slope * p.x) ** 2, 0);
  const half = t(two, n - 2) * Math.sqrt(squares / (n - 2) / sxx);
  const [low, high] = [slope - half, slope + half];
  return {
    weighings: n,
    first,
    perDoubling: slope,
    low,
    high,
    verdict: low > 0 ? 'rising' : high < 0 ? 'falling' : 'not shown',
  };
}

export interface YieldDifference {
  /** Log-odds of the first group less the second's: e to this is the ratio of their odds. */
  readonly difference: number;
  readonly low: number;
  readonly high: number;
  readonly degrees: number;
  readonly verdict: 'first more' | 'second more' | 'not shown';
}

/**
 * Difference of two groups, two cutters or two suppliers, in a part's log-odds [-].
 * Equation: d = z̄₁ − z̄₂; v_i = s_i²/n_i; d ± t(0.975, ν) √(v₁ + v₂); ν = (v₁ + v₂)²/(v₁²/(n₁ − 1) + v₂²/(n₂ − 1)).
 * @param first log-odds of the first group's weighings, two at least
 * @param second log-odds of the second's
 * @param t Student's quantile, also between whole degrees
 * Assumes normal scatter in each, of a spread of its own. Looked at part by part, one in twenty will seem to differ.
 * Checked: against a statistics library on kept numbers.
 * @example yieldDifference([1, 2, 3], [1, 2, 3], () => 2.7764).difference // → 0
 * Source: welch-1947
 */
export function yieldDifference(
  first: readonly number[],
  second: readonly number[],
  t: StudentQuantile,
): YieldDifference {
  const of = (values: readonly number[], name: string) => {
    const n = values.length;
    if (n < 2) throw new Contradiction(name, `${n} weighings`, 'at least two');
    const mean = values.reduce((sum, z) => sum + z, 0) / n;
    return { n, mean, v: values.reduce((sum, z) => sum + (z - mean) ** 2, 0) / (n - 1) / n };
  };
  const a = of(first, 'first');
  const b = of(second, 'second');
  const v = a.v + b.v;
  const difference = a.mean - b.mean;
  if (!(v > 0)) throw new Contradiction('first, second', 'no scatter in either', 'weighings that differ');
  const degrees = v ** 2 / (a.v ** 2 / (a.n - 1) + b.v ** 2 / (b.n - 1));
  const half = t(two, degrees) * Math.sqrt(v);
  const [low, high] = [difference - half, difference + half];
  return {
    difference,
    low,
    high,
    degrees,
    verdict: low > 0 ? 'first more' : high < 0 ? 'second more' : 'not shown',
  };
}
