/** The pressure that a stage is under. */
import { pressureAtHeight } from '../core/properties/saturation.ts';
import type { StageInput } from './body.ts';
import { refuse } from './refuse.ts';

/** Pressure of a stage [Pa]: as given, that of the kitchen's height, or that at sea level. */
export function pressureOf({ altitudeM, pressureKPa }: StageInput, path: string): number {
  if (altitudeM !== undefined && pressureKPa !== undefined)
    refuse(`${path}.pressureKPa`, 'a pressure beside altitudeM', 'either altitudeM or pressureKPa');
  return pressureKPa === undefined ? pressureAtHeight(altitudeM ?? 0) : 1000 * pressureKPa;
}
