/** What a cure hands on to the steps after it: never more salt than the least salted place has where the salt is slow. */
import type { Foreseen } from '../salt/foresee.ts';
import { saltWaterActivity } from '../salt/water-activity.ts';

export interface SaltCarried {
  /** Salt in the water of the least salted place, mass fraction; with the slowest published salt where there is a range. */
  readonly waterPhase: number;
  /** By that salt alone, at 25 °C. */
  readonly waterActivity: number;
  /** Mean salt of the piece, mass fraction, for seasoning: with the usual salt. */
  readonly mean: number;
}

/**
 * Salt that later steps may count on, as reckoned [mass fractions and -]; what safety rests on is measured all the same.
 * Equation: the least of core, mean and surface at the end, in the usual case and with the slowest published diffusivities.
 * Parameters: what `foreseeCure` has answered. Assumptions: those of `cure`; what lies between those three places is not less salted than all of them.
 * Checked: never more than any place of the profile, cured, rinsed or rested.
 * Source: crank-1975
 */
export function saltCarried({ result, slowest }: Foreseen): SaltCarried {
  const end = result.history.at(-1);
  if (end === undefined) throw new Error('a cure without a moment');
  const states = slowest === null ? [end] : [end, slowest];
  const places = states.flatMap((s) => [s.coreWaterPhase, s.meanWaterPhase, s.surfaceWaterPhase]);
  const waterPhase = Math.max(0, Math.min(...places));
  return { waterPhase, waterActivity: saltWaterActivity(Math.min(waterPhase, 0.2655)), mean: end.mean };
}
