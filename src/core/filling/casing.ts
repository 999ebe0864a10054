/** A casing as it is bought and filled: round from flat, fatter from too much, and how many pieces a batch makes. */
import { OutOfRange } from '../errors.ts';
import { type CasingPoint, capacityOf } from './capacity.ts';

/**
 * Diameter of a casing filled round, from its width lying flat [m].
 * Equation: 2 w = π d: the way round is twice the flat width. Parameters: flat width [m] > 0, at most 2.
 * Assumptions: filled round, not stretched. Checked: 50 mm flat are 31.8 mm round.
 * @example roundFromFlat(0.05) // → 0.03183
 * Source: own-computation
 */
export function roundFromFlat(flat: number): number {
  if (!(flat > 0 && flat <= 2)) throw new OutOfRange('flat', `${flat} m`, 'more than 0, at most 2 m');
  return (2 * flat) / Math.PI;
}

/**
 * Width lying flat of a casing that is round when filled [m].
 * Equation: w = π d/2. Parameters: diameter [m] > 0. Assumptions, check: as the other way.
 * @example flatFromRound(0.05) // → 0.07854
 * Source: own-computation
 */
export function flatFromRound(diameter: number): number {
  if (!(diameter > 0 && diameter <= 2))
    throw new OutOfRange('diameter', `${diameter} m`, 'more than 0, at most 2 m');
  return (Math.PI * diameter) / 2;
}

export interface Filled {
  /** How many times as thick inside as drawn [-]; 1 where the filling stays within the drawn shape. */
  readonly factor: number;
  /** Thicker where it is thickest [m]; 0 where it fits. */
  readonly bulge: number;
  /** Where along the axis [m]. */
  readonly at: number;
  /** The outside as it becomes. */
  readonly profile: readonly CasingPoint[];
  /** Room left once it has swollen, as a share of the room inside; negative where it is too full. */
  readonly room: number;
}

/**
 * The shape a casing takes when it holds so much filling, once the filling has swollen [m].
 * Equation: V = m(1 + s)/ρ against V_in; where V > V_in the inside widens by f = √(V/V_in), the length and the skin staying: d' = f(d − 2e) + 2e.
 * Parameters: profile of the drawn outside [m]; skin e [m] ≥ 0; mass [kg] ≥ 0; density [kg/m³] > 0; swelling s, of the volume, 0–1.
 * Assumptions: the casing gives way evenly and keeps its length; in truth it gives where it is weakest, or bursts.
 * Checked: the widened casing holds what was put in it, to 1e-9 of it.
 * Source: own-computation
 */
export function filledShape(casing: {
  readonly profile: readonly CasingPoint[];
  readonly skin: number;
  readonly mass: number;
  readonly density: number;
  readonly swelling: number;
}): Filled {
  const { profile, skin, mass, density, swelling } = casing;
  if (!(mass >= 0 && mass <= 1e4)) throw new OutOfRange('mass', `${mass} kg`, '0 to 10000 kg');
  if (!(swelling >= 0 && swelling <= 1)) throw new OutOfRange('swelling', String(swelling), '0 to 1');
  const { inner } = capacityOf({ profile, skin, density, headSpace: 0 });
  if (!(inner > 0)) throw new OutOfRange('skin', `${skin} m`, 'thin enough to leave room inside');
  const share = (mass * (1 + swelling)) / density / inner;
  const factor = Math.max(1, Math.sqrt(share));
  const widened =
    factor === 1
      ? profile
      : profile.map(({ at, diameter }) => ({ at, diameter: factor * (diameter - 2 * skin) + 2 * skin }));
  const thickest = profile.reduce((best, p, i) => (p.diameter > profile[best]!.diameter ? i : best), 0);
  return {
    factor,
    bulge: widened[thickest]!.diameter - profile[thickest]!.diameter,
    at: profile[thickest]!.at,
    profile: widened,
    room: 1 - share,
  };
}

export interface BatchPieces {
  readonly pieces: number;
  /** Filling left over [kg]. */
  readonly left: number;
  /** Still missing for one piece more [kg]. */
  readonly missing: number;
}

/**
 * Whole pieces from a batch of filling, and what is left of it [pieces and kg].
 * Equation: n = ⌊m/each⌋, left = m − n·each. Parameters: batch [kg] ≥ 0, each [kg] > 0.
 * Assumptions: nothing stays in the bowl. A batch a ten-millionth short of a piece is a piece. Checked: n·each + left = m.
 * @example piecesFrom(2.1, 0.335).pieces // → 6
 * Source: own-computation
 */
export function piecesFrom(batch: number, each: number): BatchPieces {
  if (!(batch >= 0 && batch <= 1e6)) throw new OutOfRange('batch', `${batch} kg`, '0 to 1e6 kg');
  if (!(each > 0 && each <= 1e4)) throw new OutOfRange('each', `${each} kg`, 'more than 0, at most 10000 kg');
  const pieces = Math.floor(batch / each + 1e-7);
  const left = Math.max(0, batch - pieces * each);
  return { pieces, left, missing: each - left };
}
