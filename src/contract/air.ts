/** The vapour in a stage's air, from whichever of its three measures is given. */
import { OutOfRange } from '../core/errors.ts';
import type { MediumTemperature, Vapour } from '../core/heat/types.ts';
import { vapourOfWetBulb, vapourPressure } from '../core/properties/humid-air.ts';
import { saturationTemperature } from '../core/properties/saturation.ts';
import type { StageInput } from './body.ts';
import { pressureOf } from './pressure.ts';
import { refuse } from './refuse.ts';
import { isWrapped } from './wraps.ts';

const measures = ['humidityPct', 'dewPointC', 'wetBulbC'] as const;

/** Coldest temperature of a stage's air [°C]. */
const coldestOf = (medium: MediumTemperature) =>
  typeof medium === 'number' ? medium : medium.reduce((least, { C }) => Math.min(least, C), Infinity);

/**
 * Vapour of a stage that has air [Pa, fractions]; low-temperature steam is saturated where nothing is said.
 * Throws `InputProblems` where two measures are given, or one that this air cannot have.
 */
export function vapourOf(
  stage: StageInput,
  medium: MediumTemperature,
  path: string,
): Omit<Vapour, 'condensate'> {
  const given = measures.filter((key) => stage[key] !== undefined);
  if (given.length > 1)
    refuse(
      `${path}.${given[1]}`,
      `${given[1]} beside ${given[0]}`,
      'one of humidityPct, dewPointC, wetBulbC: each says how much vapour there is',
    );
  const pressure = pressureOf(stage, path);
  const activity = isWrapped(stage) ? 0 : (stage.surfaceWaterActivity ?? 1);
  const { dewPointC, wetBulbC } = stage;
  if (dewPointC !== undefined) {
    const coldest = coldestOf(medium);
    const boiling = saturationTemperature(pressure);
    if (dewPointC > coldest || dewPointC >= boiling)
      refuse(
        `${path}.dewPointC`,
        `a dew point of ${dewPointC} °C in air of ${coldest} °C`,
        `at most the air's own temperature, and below boiling (${boiling.toFixed(1)} °C)`,
      );
    return { pressure, activity, partial: vapourPressure(dewPointC, 1) };
  }
  if (wetBulbC !== undefined) {
    if (typeof medium !== 'number')
      refuse(`${path}.wetBulbC`, 'one wet bulb beside a log', 'humidityPct or dewPointC, or one mediumC');
    try {
      return { pressure, activity, partial: vapourOfWetBulb(medium, wetBulbC, pressure) };
    } catch (error) {
      if (!(error instanceof OutOfRange)) throw error;
      refuse(`${path}.wetBulbC`, error.found, error.allowed);
    }
  }
  return { pressure, activity, relative: (stage.humidityPct ?? 100) / 100 };
}
