/** How sure a fitted value is: from the slope of the model, and by walking away from the best fit until the log objects. */
import { symmetricEigen } from '../numerics/symmetric.ts';

/** What the log leaves open about the fitted values, from the model's slopes at the best fit. */
export interface Spread {
  /** Standard deviation of each coordinate. */
  readonly sd: readonly number[];
  readonly correlation: readonly (readonly number[])[];
  /** Standard deviation along the direction that the log says least about, and how much each coordinate moves along it. */
  readonly worst: { readonly sd: number; readonly direction: readonly number[] };
  /** The same of the slopes' mere directions: how near they are to saying the same thing, 0 where they do. */
  readonly alike: { readonly least: number; readonly direction: readonly number[] };
  /** How far each coordinate moves with a unit of another, the log being followed best. */
  readonly drag: (from: number, to: number) => number;
}

/**
 * Spread of fitted coordinates [-].
 *
 *     V = s²·(JᵀJ)⁻¹
 *
 * @param slopes change of every reading [K] for one of each coordinate
 * @param variance of a reading [K²], widened for drift
 * Assumes the model straight over the spread. Checked against the straight line's own formula.
 * @example spreadOf([[1, 1, 1, 1]], 4).sd[0] // → 1
 * Source: seber-wild-1989
 */
export function spreadOf(slopes: readonly ArrayLike<number>[], variance: number): Spread {
  const dot = (a: ArrayLike<number>, b: ArrayLike<number>) => {
    let sum = 0;
    for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
    return sum;
  };
  const JJ = slopes.map((a) => slopes.map((b) => dot(a, b)));
  const { values, vectors } = symmetricEigen(JJ);
  const size = JJ.map((row, i) => Math.sqrt(row[i]) || 1);
  const directions = symmetricEigen(JJ.map((row, i) => row.map((v, j) => v / (size[i] * size[j]))));
  const most = Math.max(...values, 1e-12);
  const inverse = values.map((v) => 1 / Math.max(v, 1e-12 * most, 1e-12));
  const cov = slopes.map((_, i) =>
    slopes.map(
      (__, j) => variance * inverse.reduce((sum, q, k) => sum + q * vectors[k][i] * vectors[k][j], 0),
    ),
  );
  const sd = cov.map((row, i) => Math.sqrt(row[i]));
  return {
    sd,
    correlation: cov.map((row, i) => row.map((c, j) => (i === j ? 1 : c / (sd[i] * sd[j])))),
    worst: {
      sd: Math.sqrt(variance * inverse[0]),
      direction: vectors[0].map(Math.abs),
    },
    alike: { least: directions.values[0], direction: unit(directions.vectors[0].map((v, i) => v / size[i])) },
    drag: (from, to) => cov[to][from] / cov[from][from],
  };
}

const unit = (v: readonly number[]): number[] => {
  const length = Math.hypot(...v) || 1;
  return v.map((x) => Math.abs(x) / length);
};

export interface Side {
  readonly x: number;
  /** The log does not object up to the bound. */
  readonly open: boolean;
}

/**
 * Where a profile leaves its allowance on one side of the best fit [the coordinate's own unit].
 *
 *     √(excess(x)/allowed) = 1, which is nearly straight in x
 *
 * @param excess least sum of squares with the coordinate held at x, less the least of all [K²]
 * @param best the best fit's coordinate, `first` a first guess of the end, `bound` where the search stops
 * @param allowed what the excess may be [K²]
 * Assumes an excess that rises away from the best fit. Checked by a test: exact for a parabola.
 * @example profileSide((x) => x * x, 0, 1, 10, 9).x // → 3
 * Source: bates-watts-1988
 */
export function profileSide(
  excess: (x: number) => number,
  best: number,
  first: number,
  bound: number,
  allowed: number,
): Side {
  const up = first > best;
  const clamp = (x: number) => (up ? Math.min(bound, x) : Math.max(bound, x));
  let inside = best;
  let outside: number | null = null;
  let x = clamp(first);
  for (let tries = 0; tries < 12; tries++) {
    if (Math.abs(x - best) < 1e-9) return { x: bound, open: Math.abs(bound - best) < 1e-9 };
    const ratio = Math.sqrt(Math.max(0, excess(x)) / allowed);
    if (Math.abs(ratio - 1) < 0.03) return { x, open: false };
    if (ratio < 1) {
      inside = x;
      if (x === bound) return { x, open: true };
    } else outside = x;
    const next = clamp(best + (x - best) * Math.min(4, Math.max(0.2, 1 / Math.max(ratio, 1e-6))));
    const between =
      outside === null || (up ? next > inside && next < outside : next < inside && next > outside);
    x = between ? next : (inside + (outside ?? bound)) / 2;
  }
  return { x: outside ?? x, open: false };
}
