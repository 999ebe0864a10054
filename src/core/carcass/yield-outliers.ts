/** Weighings that do not fit the others: a slip of the scale, another cut, another animal. They are told, never dropped. */
import { OutOfRange } from '../errors.ts';

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** Fewer than this and nothing can be told apart. */
export const fewestForOutliers = 5;

/** Above this a value is told: the limit that was published with the rule. */
const limit = 3.5;

export interface Outlier {
  readonly index: number;
  /** How far off, in robust standard deviations; above zero: more than the others. */
  readonly score: number;
}

/**
 * Values that lie apart from the others [-].
 * Equation: M_i = 0.6745 (z_i − median)/MAD; told where |M_i| > 3.5. Where more than half are the same (MAD 0), the mean
 * deviation about the median stands in: M_i = (z_i − median)/(1.2533 mean|z − median|).
 * @param values log-odds of one part, one a weighing; fewer than five: none are told
 * Assumes that most weighings are of the same cut. It looks at each part by itself: an animal odd only in how its parts go
 * together is not seen. That wants more animals than a kitchen has.
 * Checked: by hand on the published example's rule; not moved by the size or the unit of the values (property).
 * @example outliersOf([1, 1.1, 0.9, 1.05, 3]).length // → 1
 * Source: iglewicz-hoaglin-1993
 */
export function outliersOf(values: readonly number[]): Outlier[] {
  values.forEach((z, i) => {
    if (!Number.isFinite(z)) throw new OutOfRange(`values[${i}]`, `${z}`, 'a finite number');
  });
  if (values.length < fewestForOutliers) return [];
  const middle = median(values);
  const off = values.map((z) => Math.abs(z - middle));
  const mad = median(off);
  // Log-odds of shares: differences this small are rounding.
  const rounding = 1e-9 * Math.max(1, Math.abs(middle));
  const scale = mad > rounding ? mad / 0.6745 : (1.2533 * off.reduce((sum, d) => sum + d, 0)) / values.length;
  if (!(scale > rounding)) return [];
  return values
    .map((z, index) => ({ index, score: (z - middle) / scale }))
    .filter(({ score }) => Math.abs(score) > limit);
}
