/**
 * Heating and cooling by Ball's f and j: after a first while the centre nears the medium tenfold in every f seconds. One
 * term of the series; the engine solves the rest.
 */
import { Contradiction, OutOfRange } from '../errors.ts';
import { coefficient, eigenvalue, type Simple } from './series.ts';

export interface Cooling {
  /** Time in which what is left shrinks to a tenth [s]. */
  readonly f: number;
  /** Lag at the centre [-]. */
  readonly j: number;
}

/**
 * Lag j at the centre of a simple shape [-].
 *
 *     j = C1, the first coefficient of the series
 *
 * @param shape slab, cylinder or sphere
 * @param Bi Biot number, 0.0001 to 1 000 000
 * Assumes constant properties and a uniform start.
 * Checked against the published limits 1.2732, 1.6020 and 2.
 * @example coolingLag('cylinder', 1e6) // → 1.6020
 * Source: ball-1923
 */
export function coolingLag(shape: Simple, Bi: number): number {
  return coefficient(shape, eigenvalue(shape, Bi, 0));
}

/**
 * Slope f of a simple shape as f·α/L² [-].
 *
 *     f·α/L² = ln 10/ζ1²
 *
 * @param shape slab, cylinder or sphere
 * @param Bi Biot number, 0.0001 to 1 000 000
 * Assumes constant properties.
 * Checked against the published limits 0.9332, 0.3982 and 0.2333, and between them against published fits, within 3 %.
 * @example coolingSlope('cylinder', 1e6) // → 0.39815
 * Source: ball-1923
 * Source: lacroix-castaigne-1987
 */
export function coolingSlope(shape: Simple, Bi: number): number {
  return Math.LN10 / eigenvalue(shape, Bi, 0) ** 2;
}

/** A direction from the middle of a body: a round one by its radius, a flat one by its half thickness [m]. */
export interface Direction {
  readonly shape: Simple;
  readonly half: number;
}

/**
 * f [s] and j [-] at the centre of a body made of simple shapes: a cylinder and a slab make a short cylinder, three slabs a
 * brick.
 *
 *     1/f = Σ 1/f_i,  j = Π j_i
 *
 * @param directions one for a simple shape, two or three for what they cut out together; a sphere alone
 * @param h surface coefficient [W/(m² K)], > 0
 * @param k conductivity [W/(m K)], > 0
 * @param alpha diffusivity [m²/s], > 0
 * Assumes constant properties and the same medium all round.
 * Checked against a short cylinder of 40 × 120 mm, and textbook bodies.
 * @example coolingOf([{ shape: 'cylinder', half: 0.02 }, { shape: 'slab', half: 0.06 }], 1e6, 0.48, 1.3061224e-7).f // → 1164.2
 * Source: ball-1923
 */
export function coolingOf(directions: readonly Direction[], h: number, k: number, alpha: number): Cooling {
  for (const [path, value, unit] of [
    ['h', h, 'W/(m² K)'],
    ['k', k, 'W/(m K)'],
    ['alpha', alpha, 'm²/s'],
  ] as const)
    if (!(value > 0 && Number.isFinite(value)))
      throw new OutOfRange(path, `${value} ${unit}`, `more than 0 ${unit}`);
  const flat = directions.filter((d) => d.shape === 'slab').length;
  const round = directions.length - flat;
  if (
    directions.length < 1 ||
    flat > 3 ||
    round > 1 ||
    (round === 1 && flat > 1) ||
    hasSphereAndMore(directions)
  )
    throw new Contradiction(
      'directions',
      directions.map((d) => d.shape).join(' and ') || 'none',
      'one to three slabs, a cylinder with at most one slab, or a sphere',
    );
  let inverse = 0;
  let j = 1;
  for (const { shape, half } of directions) {
    if (!(half > 0 && half < 10)) throw new OutOfRange('half', `${half} m`, '0 to 10 m');
    const Bi = (h * half) / k;
    inverse += alpha / (half * half * coolingSlope(shape, Bi));
    j *= coolingLag(shape, Bi);
  }
  return { f: 1 / inverse, j };
}

const hasSphereAndMore = (directions: readonly Direction[]) =>
  directions.length > 1 && directions.some((d) => d.shape === 'sphere');

/**
 * Time in which the centre gets from one temperature to another [s].
 *
 *     t = f·log10[j·(t_i − t_m)/(t − t_m)]
 *
 * @param cooling f and j of the body
 * @param start uniform temperature at the start [°C]
 * @param medium temperature round it [°C]
 * @param end temperature the centre shall reach [°C], between start and medium
 * Assumes the first while over: it refuses where what is left is more than 0.7 of the start, where one term no longer holds.
 * Checked against exact solutions of an egg, an apple and a ham.
 * @example coolingTime({ f: 1164.15, j: 2.0397 }, 5, 100, 70) // → 943.16
 * Source: ball-1923
 */
export function coolingTime(cooling: Cooling, start: number, medium: number, end: number): number {
  const left = (end - medium) / (start - medium);
  if (!(left > 0 && left <= 0.7))
    throw new OutOfRange(
      'end',
      `${end} °C, ${Number.isFinite(left) ? left.toFixed(2) : left} of the way still to go`,
      `between start ${start} °C and medium ${medium} °C, with 0.7 or less of the way still to go`,
    );
  return cooling.f * Math.log10(cooling.j / left);
}
