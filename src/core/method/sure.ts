/** From times that single pieces need to the time that the worst of a batch needs, with a stated confidence. */
import { randomFrom } from '../numerics/random.ts';
import { mixed } from '../numerics/sobol.ts';
import {
  answering,
  leftOut,
  type SpreadKind,
  type Surface,
  sharesOf,
  standardOf,
  surfaceOf,
} from './sure-surface.ts';

export interface Varying {
  readonly kind: SpreadKind;
  /** The same for every piece of a batch. */
  readonly shared: boolean;
}

export interface WorstOrder {
  readonly surface: Surface;
  readonly inputs: readonly Varying[];
  readonly pieces: number;
  readonly batches: number;
  readonly seed: number;
}

/** The worst piece of a batch: what it needs by the surface, and where in the standard coordinates it lies. */
export interface Worst {
  readonly y: number;
  readonly x: Float64Array;
}

/**
 * The worst piece of many drawn batches [the surface's unit], in the order they were drawn.
 * Equation: max over pieces of y(shared of the batch, own of the piece), every piece's own drawn afresh.
 * Parameters: `order.pieces`, `order.batches` ≥ 1; `order.seed` a whole number. Every batch has a generator of its own, its first
 * pieces the same however many there are, so that more pieces are never better.
 * Checked: against the exact distribution of the greatest of n; rises with the pieces, batch by batch.
 * @example worstOf({ surface: { kinds: [], terms: [], mean: 3, coefficients: [] }, inputs: [], pieces: 5, batches: 2, seed: 1 })[0].y // → 3
 * Source: own-computation
 */
export function worstOf({ surface, inputs, pieces, batches, seed }: WorstOrder): Worst[] {
  const d = inputs.length;
  const shared = inputs.flatMap((input, i) => (input.shared ? [i] : []));
  const own = inputs.flatMap((input, i) => (input.shared ? [] : [i]));
  const count = own.length === 0 ? 1 : pieces;
  const x = new Float64Array(d);
  const answer = answering(surface);
  return Array.from({ length: batches }, (_, b) => {
    const random = randomFrom(mixed(seed, b));
    for (const i of shared) x[i] = standardOf(inputs[i].kind, random());
    let y = Number.NEGATIVE_INFINITY;
    const at = new Float64Array(d);
    for (let p = 0; p < count; p++) {
      for (const i of own) x[i] = standardOf(inputs[i].kind, random());
      const now = answer(x);
      if (now > y) {
        y = now;
        at.set(x);
      }
    }
    return { y, x: at };
  });
}

/**
 * A quantile of values in rising order [their unit], straight between the order statistics.
 * Parameters: `p` 0 to 1.
 * @example quantileOf([1, 2, 3, 4, 5], 0.5) // → 3
 * Source: own-computation
 */
export function quantileOf(sorted: ArrayLike<number>, p: number): number {
  const at = p * (sorted.length - 1);
  const i = Math.min(sorted.length - 1, Math.floor(at));
  const next = sorted[Math.min(sorted.length - 1, i + 1)];
  return i === at || next === sorted[i] ? sorted[i] : sorted[i] + (at - i) * (next - sorted[i]);
}

/** The share that may be unseen behind `k` seen of `n` [-]: Wilson's upper limit, one-sided 95 %. */
export function upperShare(k: number, n: number): number {
  if (k === 0) return 0;
  const z = 1.6448536269514722;
  const p = k / n;
  return Math.min(
    1,
    (p + (z * z) / (2 * n) + z * Math.sqrt((p * (1 - p)) / n + (z * z) / (4 * n * n))) / (1 + (z * z) / n),
  );
}

export interface SureOrder {
  readonly inputs: readonly Varying[];
  /** Standard coordinates of every run, and ln of the time that it needs; Infinity where no time does. */
  readonly points: readonly ArrayLike<number>[];
  readonly lnTimes: readonly number[];
  readonly pieces: number;
  readonly confidence: number;
  readonly seed: number;
}

export interface Estimate {
  /** ln of the time for the confidence, by the surface; Infinity where no time gives it. */
  readonly lnTime: number;
  /** Standard error of it: from the drawing of batches, and from the fit of the surface. */
  readonly error: number;
  /** What the surface misses by at runs it has not seen, root mean square in ln time. */
  readonly surfaceError: number;
  /** ln time that no arrangement of the same pieces into batches exceeds: every piece by itself. From the runs alone. */
  readonly lnIndependent: number;
  readonly surface: Surface;
  /** ln times of single pieces and of the worst of a batch, rising. */
  readonly single: Float64Array;
  readonly worst: Float64Array;
  /** Worst pieces close to the answer, in the standard coordinates: where the fine engine is asked again. */
  readonly nearby: readonly Worst[];
  readonly sensitivity: readonly {
    readonly first: number;
    readonly firstError: number;
    readonly total: number;
    readonly totalError: number;
    /** Change of ln time from one standard deviation below the mean to one above, halved. */
    readonly perSd: number;
  }[];
  /** Share of the runs that no time would make pass. */
  readonly never: number;
}

const parts = 8;
const spreadOf = (values: readonly number[]) => {
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  return Math.sqrt(values.reduce((s, v) => s + (v - mean) ** 2, 0) / Math.max(1, values.length - 1));
};

/**
 * The time with which the worst piece of a batch passes with a stated confidence [ln s].
 * Equation: the quantile, at the confidence, of max over pieces of ln t(shared, own), ln t by a polynomial fitted to the
 * runs; its standard error from replicates of the drawing and from surfaces that leave out one part of the runs each.
 * Parameters: `order.lnTimes` one per point; `order.confidence` 0.5 to 0.9999; `order.pieces` ≥ 1.
 * Assumptions: spreads are independent of one another; ln t is smooth in them (told by `surfaceError`). Where some runs never pass, the confidence asked of the
 * others is raised by the most that may be behind those seen.
 * Checked: against 100 000 plain draws of an exact time; no spread gives the one time there is; more pieces or confidence never less.
 * @example sureTime({ inputs: [], points: [[], [], []], lnTimes: [2, 2, 2], pieces: 4, confidence: 0.95, seed: 1 }).lnTime // → 2
 * Source: sudret-2008
 */
export function sureTime(order: SureOrder): Estimate {
  const { inputs, pieces, confidence, seed } = order;
  const kinds = inputs.map((input) => input.kind);
  const finite = order.lnTimes.flatMap((y, i) => (Number.isFinite(y) ? [i] : []));
  const points = finite.map((i) => order.points[i]);
  const y = finite.map((i) => order.lnTimes[i]);
  const never = 1 - finite.length / order.lnTimes.length;
  const surface = surfaceOf(kinds, points, y);
  const { surfaces, error: surfaceError } = leftOut(kinds, points, y, parts);
  const held = (1 - upperShare(order.lnTimes.length - finite.length, order.lnTimes.length)) ** pieces;
  const wanted = confidence / held;

  const batches = Math.max(2_000, Math.min(20_000, Math.round(1_000_000 / pieces / 100) * 100));
  const drawn = worstOf({ surface, inputs, pieces, batches, seed });
  const worst = Float64Array.from(drawn, (w) => w.y).sort();
  const one = worstOf({
    surface,
    inputs: inputs.map((i) => ({ ...i, shared: true })),
    pieces: 1,
    batches: 20_000,
    seed: mixed(seed, 7),
  });
  const single = Float64Array.from(one, (w) => w.y).sort();

  const lnTime = wanted < 1 ? quantileOf(worst, wanted) : Number.POSITIVE_INFINITY;
  const part = Math.floor(batches / 10);
  const replicates = Array.from({ length: 10 }, (_, r) =>
    quantileOf(
      Float64Array.from(drawn.slice(r * part, (r + 1) * part), (w) => w.y).sort(),
      Math.min(1, wanted),
    ),
  );
  // The same draws through each surface, so that what differs is the surface.
  const less = Math.min(batches, 2_000);
  const base = quantileOf(Float64Array.from(drawn.slice(0, less), (w) => w.y).sort(), Math.min(1, wanted));
  const moved = surfaces.map((s) => {
    const through = worstOf({ surface: s, inputs, pieces, batches: less, seed });
    return quantileOf(Float64Array.from(through, (w) => w.y).sort(), Math.min(1, wanted)) - base;
  });
  const jackknife = Math.sqrt(((parts - 1) / parts) * moved.reduce((s, v) => s + v * v, 0));
  const error = Math.hypot(spreadOf(replicates) / Math.sqrt(10), jackknife);

  const every = Float64Array.from(order.lnTimes).sort();
  const rank = confidence ** (1 / pieces) * every.length;
  const upper = Math.ceil(rank + 1.645 * Math.sqrt(Math.max(0, rank * (1 - rank / every.length)))) - 1;
  const nearby = [...drawn].sort((a, b) => Math.abs(a.y - lnTime) - Math.abs(b.y - lnTime)).slice(0, 24);

  const whole = sharesOf(surface);
  const partly = surfaces.map(sharesOf);
  const fault = (of: (s: { first: number; total: number }) => number, i: number) =>
    Math.sqrt(((parts - 1) / parts) * partly.reduce((s, p) => s + (of(p[i]) - of(whole[i])) ** 2, 0));
  const middle = new Float64Array(inputs.length);
  const answer = answering(surface);
  return {
    lnTime,
    error,
    surfaceError,
    lnIndependent: every[Math.min(every.length - 1, Math.max(0, upper))] ?? Number.NaN,
    surface,
    single,
    worst,
    nearby,
    never,
    sensitivity: inputs.map(({ kind }, i) => {
      const sd = kind === 'normal' ? 1 : 1 / Math.sqrt(3);
      const at = (x: number) => {
        const point = middle.slice();
        point[i] = x;
        return answer(point);
      };
      return {
        first: whole[i].first,
        firstError: fault((s) => s.first, i),
        total: whole[i].total,
        totalError: fault((s) => s.total, i),
        perSd: (at(sd) - at(-sd)) / 2,
      };
    }),
  };
}
