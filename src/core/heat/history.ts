/** Time series of a run, dense enough that straight lines between its points are as good as the run itself. */
import { fieldWithin, lethalityWithin, type StepRecord, type Weights } from './record.ts';
import { StepView } from './step-view.ts';
import type { History, Target } from './types.ts';

export interface SeriesOrder {
  readonly start: Float64Array;
  readonly medium0: number;
  readonly steps: readonly StepRecord[];
  /** Share of the body's volume at each node. */
  readonly share: Float64Array;
  readonly coldSpot: Weights;
  readonly surface: Weights;
  readonly probes: readonly Weights[];
  readonly target: Target;
  /** Most that a straight line may miss a column by [K]. */
  readonly tolerance: number;
  /** Of all nodes' temperatures [°C], where something freezes. */
  readonly ice?: ((T: ArrayLike<number>) => number) | undefined;
}

const fixedColumns = 5;

/**
 * History of a run: temperatures [°C], lethality [s at the reference] at times [s].
 *
 *     a step is halved until no column is further than the tolerance from the straight line, at its quarters
 *
 * @param order what to follow and how closely
 * Assumes the cubic between a step's ends. Checked by comparing with a run of a tighter tolerance. Source: own-computation
 */
export function historyOf(order: SeriesOrder): {
  history: History;
  probes: { C: Float64Array; lethality: Float64Array }[];
} {
  const { steps, share, coldSpot, surface, probes, target, tolerance } = order;
  const followed = [coldSpot, surface, ...probes];
  const columns = fixedColumns + probes.length;
  const n = share.length;
  const t: number[] = [0];
  const rows: number[][] = [];
  const ice = order.ice === undefined ? undefined : [order.ice(order.start)];
  const field = new Float64Array(ice === undefined ? 0 : n);
  const medium: number[] = [order.medium0];
  const heat: number[] = [0];
  let taken = 0;
  const lethality: number[][] = [0, ...probes.map(() => 0)].map(() => [0]);
  const totals = [0, ...probes.map(() => 0)];
  const places = [coldSpot, ...probes];
  const still: StepRecord = {
    t: 0,
    h: 1,
    stage: 0,
    T0: order.start,
    T1: order.start,
    d0: new Float32Array(n),
    d1: new Float32Array(n),
    supplied: 0,
    m0: order.medium0,
    m1: order.medium0,
  };
  rows.push(new StepView(steps[0] ?? still, share, followed).at(0));
  const strays = (view: StepView, a: number, b: number, ra: number[], rb: number[]): boolean => {
    for (const q of [0.5, 0.25, 0.75]) {
      const row = view.at(a + q * (b - a));
      for (let c = 0; c < columns; c++)
        if (Math.abs(row[c] - ra[c] - q * (rb[c] - ra[c])) > tolerance) return true;
    }
    return false;
  };
  for (const step of steps) {
    const ends: number[] = [];
    const view = new StepView(step, share, followed);
    const split = (a: number, b: number, ra: number[], rb: number[], depth: number): void => {
      if (depth < 8 && strays(view, a, b, ra, rb)) {
        const m = (a + b) / 2;
        const rm = view.at(m);
        split(a, m, ra, rm, depth + 1);
        split(m, b, rm, rb, depth + 1);
        return;
      }
      ends.push(b);
      rows.push(rb);
    };
    split(0, 1, view.at(0), view.at(1), 0);
    // Part of a step is summed at other points than the whole: by a hair it may come to more, which nothing that adds up does.
    const whole = places.map((place, q) => totals[q] + lethalityWithin(step, place, 1, target));
    for (const s of ends) {
      t.push(s === 1 ? step.t + step.h : step.t + s * step.h);
      medium.push(step.m0 + s * (step.m1 - step.m0));
      heat.push(taken + s * step.supplied);
      if (order.ice !== undefined) ice?.push(order.ice(s === 1 ? step.T1 : fieldWithin(step, s, field)));
      places.forEach((place, q) => {
        const before = lethality[q][lethality[q].length - 1];
        const now = s === 1 ? whole[q] : totals[q] + lethalityWithin(step, place, s, target);
        lethality[q].push(Math.max(before, Math.min(whole[q], now)));
      });
    }
    taken += step.supplied;
    places.forEach((_, q) => {
      totals[q] = lethality[q][lethality[q].length - 1];
    });
  }
  const column = (c: number) => Float64Array.from(rows, (row) => row[c]);
  return {
    history: {
      t: Float64Array.from(t),
      coldest: column(0),
      warmest: column(1),
      mean: column(2),
      coldSpot: column(3),
      surface: column(4),
      lethality: Float64Array.from(lethality[0]),
      medium: Float64Array.from(medium),
      heat: Float64Array.from(heat),
      ...(ice === undefined ? {} : { ice: Float64Array.from(ice) }),
    },
    probes: probes.map((_, q) => ({
      C: column(fixedColumns + q),
      lethality: Float64Array.from(lethality[q + 1]),
    })),
  };
}

/**
 * When a place first has a lethality [s], or null where it never has.
 * @param wanted lethality [s at the reference]
 * Exact within a step: bisection of the integral. Checked against the series of a cylinder. Source: bigelow-1921
 */
export function reachedAt(
  steps: readonly StepRecord[],
  place: Weights,
  wanted: number,
  target: Target,
): number | null {
  let total = 0;
  for (const step of steps) {
    const added = lethalityWithin(step, place, 1, target);
    if (total + added >= wanted) {
      let lo = 0;
      let hi = 1;
      for (let i = 0; i < 50; i++) {
        const mid = (lo + hi) / 2;
        if (total + lethalityWithin(step, place, mid, target) >= wanted) hi = mid;
        else lo = mid;
      }
      return step.t + hi * step.h;
    }
    total += added;
  }
  return null;
}

/** Total lethality at a place over a run [s at the reference]. */
export function lethalityAt(steps: readonly StepRecord[], place: Weights, target: Target): number {
  let total = 0;
  for (const step of steps) total += lethalityWithin(step, place, 1, target);
  return total;
}
