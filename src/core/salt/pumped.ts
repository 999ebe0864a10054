/** Brine driven into a piece through needles: what it holds then, as if it had spread. */
import { OutOfRange } from '../errors.ts';
import type { CurePiece } from './cure-piece.ts';

/**
 * A piece after pumping, the brine taken as spread evenly [kg and mass fractions].
 * Equation: m = m₀(1 + p); water = (x_w + p(1 − w))/(1 + p); salt = (x_s + p w)/(1 + p).
 * Parameters: pumped p, weight of the brine that stays in to the green weight, 0–1; strength w, mass fraction of the brine 0–0.265.
 * Assumptions: nothing drips out; right after pumping the brine lies along the needles and the piece is uneven until it has spread; size as before.
 * Checked: salt and water are those of piece and brine together.
 * @example pumpedPiece({ shape: 'slab', size: 0.05, exposedFaces: 2, mass: 1, water: 0.75, salt: 0 }, 0.1, 0.2).salt // → 0.01818
 * Source: own-computation
 */
export function pumpedPiece(piece: CurePiece, pumped: number, strength: number): CurePiece {
  if (!(pumped >= 0 && pumped <= 1))
    throw new OutOfRange('pumped', String(pumped), '0 to 1 of the green weight');
  if (!(strength >= 0 && strength <= 0.265)) throw new OutOfRange('strength', String(strength), '0 to 0.265');
  const whole = 1 + pumped;
  return {
    ...piece,
    mass: piece.mass * whole,
    water: (piece.water + pumped * (1 - strength)) / whole,
    salt: (piece.salt + pumped * strength) / whole,
  };
}
