/** Everything that was computed, step by step, kept so that any place can be asked about afterwards: the dense output. */
import { gauss2, gauss3, gauss4 } from '../numerics/gauss.ts';
import { hermite, hermiteWeights } from '../numerics/hermite.ts';
import type { Target } from './types.ts';

export interface StepRecord {
  /** Start and length [s]; the stage it belongs to. */
  readonly t: number;
  readonly h: number;
  readonly stage: number;
  /** Temperatures at its start and end [°C] and their slopes there [K/s]. */
  readonly T0: Float64Array;
  readonly T1: Float64Array;
  readonly d0: Float32Array;
  readonly d1: Float32Array;
  /** Heat that came in through the surface during it [J, as the mass]. */
  readonly supplied: number;
  /** Medium at its start and end [°C]. */
  readonly m0: number;
  readonly m1: number;
  /** Lethality at every node at its end [s at the reference]; kept where pictures are wanted. */
  readonly lethality?: Float32Array;
}

/** A place as a weighted sum of nodes. */
export interface Weights {
  readonly nodes: readonly number[];
  readonly w: readonly number[];
}

/** Value of a nodal field at a place, in the field's own unit [-]. */
export function valueAt(field: ArrayLike<number>, place: Weights): number {
  let sum = 0;
  for (let i = 0; i < place.nodes.length; i++) sum += place.w[i] * field[place.nodes[i]];
  return sum;
}

/** Temperatures of all nodes within a step [°C]. */
export function fieldWithin(step: StepRecord, s: number, out: Float64Array): Float64Array {
  const [a, b, c, d] = hermiteWeights(s, step.h);
  const { T0, T1, d0, d1 } = step;
  for (let i = 0; i < out.length; i++) out[i] = a * T0[i] + b * T1[i] + c * d0[i] + d * d1[i];
  return out;
}

/**
 * Lethality of part of a step whose temperature is a cubic [s at the reference].
 *
 *     P = ∫ 10^((T − T_ref)/z) dt, four Gauss points on every stretch that climbs no more than one z
 *
 * @param h length of the step [s]
 * @param y0 temperature at its start [°C], y1 at its end, d0 and d1 slopes there [K/s]
 * @param s part of the step, 0–1
 * @param target reference temperature and z
 * Assumes log-linear death. Checked against the closed form on straight lines (2e-6 of itself).
 * @example cubicLethality(600, 60, 70, 1 / 60, 1 / 60, 1, { reference: 70, z: 7.5, s: 120 }) / 60 // 3.10602
 * Source: bigelow-1921
 */
export function cubicLethality(
  h: number,
  y0: number,
  y1: number,
  d0: number,
  d1: number,
  s: number,
  target: Target,
): number {
  const rise = y1 - y0;
  const bend = (Math.abs(h * d0 - rise) + Math.abs(h * d1 - rise)) / 4;
  const { reference, z } = target;
  // Fifteen z below the reference nothing that counts can gather in a lifetime.
  if (Math.max(y0, y1) + bend < reference - 15 * z) return 0;
  const rate = Math.LN10 / z;
  const range = Math.abs(rise) + 2 * bend;
  if (range < z / 8) {
    // Over so short a climb two points are exact to two millionths.
    const a = Math.exp(rate * (hermite(s * gauss2.x[0], h, y0, y1, d0, d1) - reference));
    const b = Math.exp(rate * (hermite(s * gauss2.x[1], h, y0, y1, d0, d1) - reference));
    return 0.5 * (a + b) * s * h;
  }
  if (range < z / 2) {
    let sum = 0;
    for (let g = 0; g < 3; g++)
      sum += gauss3.w[g] * Math.exp(rate * (hermite(s * gauss3.x[g], h, y0, y1, d0, d1) - reference));
    return sum * s * h;
  }
  const pieces = Math.min(64, Math.ceil(range / z));
  let sum = 0;
  for (let p = 0; p < pieces; p++)
    for (let g = 0; g < 4; g++) {
      const x = (s * (p + gauss4.x[g])) / pieces;
      sum += gauss4.w[g] * Math.exp(rate * (hermite(x, h, y0, y1, d0, d1) - reference));
    }
  return (sum * s * h) / pieces;
}

/** Adds a step's lethality at every node [s at the reference] to `P`. */
export function addLethality(
  P: Float64Array,
  h: number,
  T0: Float64Array,
  T1: Float64Array,
  d0: ArrayLike<number>,
  d1: ArrayLike<number>,
  s: number,
  target: Target,
): void {
  for (let i = 0; i < P.length; i++) P[i] += cubicLethality(h, T0[i], T1[i], d0[i], d1[i], s, target);
}

/** Lethality that part of a step adds at a place [s at the reference]. */
export function lethalityWithin(step: StepRecord, place: Weights, s: number, target: Target): number {
  return cubicLethality(
    step.h,
    valueAt(step.T0, place),
    valueAt(step.T1, place),
    valueAt(step.d0, place),
    valueAt(step.d1, place),
    s,
    target,
  );
}
