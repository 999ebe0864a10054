/** From a stage as it is written to what the engine's surface is in: medium, coefficient, pressure, vapour, radiation, ladled fat. */
import type { MediumTemperature, Radiator, Surface } from '../core/heat/types.ts';
import { ladledCoefficient, meatEffusivity } from '../core/properties/ladle.ts';
import {
  condensateFilm,
  foodEmissivity,
  ladledFat,
  type Medium,
  mediumNamed,
  temperatureOf,
  throughResistance,
} from '../core/properties/media.ts';
import { saturationTemperature } from '../core/properties/saturation.ts';
import { saltWaterActivity } from '../core/salt/water-activity.ts';
import { vapourOf } from './air.ts';
import type { StageInput } from './body.ts';
import { pressureOf } from './pressure.ts';
import { refuse } from './refuse.ts';
import { resistanceOf } from './wraps.ts';

/** What a stage's surface is in, as the engine takes it. */
export interface Surroundings {
  readonly medium: MediumTemperature;
  readonly h: number;
  readonly surface?: Surface;
}

/** Superheat that still counts as steam at its own pressure, for those who write 100 °C at sea level [K]. */
const asGood = 0.1;

/** Temperature at which water boils under a stage's pressure, with its salt [°C]. */
export function boilingOf(stage: StageInput, path = 'stage'): number {
  const activity = stage.brineSaltPct === undefined ? 1 : saltWaterActivity(stage.brineSaltPct / 100);
  return saturationTemperature(pressureOf(stage, path) / activity);
}

/** Is humid air, and not the table's one coefficient, what this stage is computed with? */
export function isHumid(stage: StageInput): boolean {
  return (
    stage.humidityPct !== undefined ||
    stage.dewPointC !== undefined ||
    stage.wetBulbC !== undefined ||
    (stage.medium === 'low-temperature steam' && stage.hWm2K === undefined)
  );
}

/** Is more than h·(medium − T) at work at the surface? */
export function hasLaw(stage: StageInput): boolean {
  return (
    isHumid(stage) || stage.fluxWm2 !== undefined || stage.radiantC !== undefined || stage.ladle !== undefined
  );
}

const seconds = (min: number) => min * 60;

function courseOf(stage: StageInput, named: Medium | undefined, path: string): MediumTemperature {
  const { medium, mediumC, mediumLog } = stage;
  if (mediumC !== undefined && mediumLog !== undefined)
    refuse(`${path}.mediumLog`, 'a log beside mediumC', 'either mediumC or mediumLog');
  const given = mediumC ?? mediumLog?.map((point) => ({ t: seconds(point.min), C: point.C }));
  const boils = named?.boils === true;
  if (stage.brineSaltPct !== undefined && medium !== 'boiling water')
    refuse(`${path}.brineSaltPct`, `salt in ${medium ?? 'a medium of your own'}`, 'salt in boiling water');
  const follows =
    stage.altitudeM !== undefined || stage.pressureKPa !== undefined || stage.brineSaltPct !== undefined;
  if (boils && follows) {
    const boiling = boilingOf(stage, path);
    for (const [where, C] of pointsOf(stage, path))
      if (C > boiling + asGood)
        refuse(
          where,
          `${medium} at ${C} °C`,
          `at most ${boiling.toFixed(1)} °C, where it boils under this pressure`,
        );
    if (given !== undefined) return given;
    return boiling;
  }
  if (given === undefined) {
    if (named?.usual !== undefined) return named.usual;
    if (named === undefined)
      refuse(`${path}.mediumC`, 'nothing', 'mediumC, mediumLog, or a medium that has a usual temperature');
    refuse(
      `${path}.mediumC`,
      'nothing',
      `a temperature: ${medium} may be ${named.coldest} to ${named.hottest} °C`,
    );
  }
  if (medium === 'low-temperature steam')
    for (const [where, C] of pointsOf(stage, path))
      if (C > boilingOf(stage, path))
        refuse(
          where,
          `${medium} at ${C} °C`,
          `at most ${boilingOf(stage, path).toFixed(1)} °C, where water boils under this pressure`,
        );
  if (medium !== undefined) for (const [where, C] of pointsOf(stage, path)) temperatureOf(medium, C, where);
  return given;
}

/** Every temperature that is given of a stage's medium, with its path. */
function pointsOf({ mediumC, mediumLog }: StageInput, path: string): (readonly [string, number])[] {
  if (mediumC !== undefined) return [[`${path}.mediumC`, mediumC]];
  return (mediumLog ?? []).map((point, i) => [`${path}.mediumLog[${i}].C`, point.C] as const);
}

function needed(stage: StageInput, named: Medium | undefined, path: string): void {
  const radiant = stage.fluxWm2 !== undefined || stage.radiantC !== undefined;
  if (named?.needs === 'radiation' && !radiant)
    refuse(
      `${path}.fluxWm2`,
      'nothing',
      'the radiant heat absorbed [W/m²], or radiantC: the temperature of what glows',
    );
  if (named?.needs === 'ladle' && stage.ladle === undefined)
    refuse(`${path}.ladle`, 'nothing', 'the fat: fatC, and how long it is ladled (onS of everyS)');
  if (stage.fluxWm2 !== undefined && stage.radiantC !== undefined)
    refuse(`${path}.radiantC`, 'a source beside fluxWm2', 'either fluxWm2 or radiantC');
  if ((stage.radiantShare !== undefined) !== (stage.radiantC !== undefined))
    refuse(
      `${path}.${stage.radiantC === undefined ? 'radiantC' : 'radiantShare'}`,
      'nothing',
      'radiantC and radiantShare together: how hot it glows, and how much of it the piece exchanges',
    );
  for (const key of ['emissivity', 'wallC'] as const)
    if (stage[key] !== undefined && !hasLaw(stage))
      refuse(
        `${path}.${key}`,
        String(stage[key]),
        'only beside a humidity, fluxWm2, radiantC or ladle: otherwise hWm2K has the radiation in it',
      );
  if (stage.surfaceWaterActivity !== undefined && !isHumid(stage))
    refuse(
      `${path}.surfaceWaterActivity`,
      String(stage.surfaceWaterActivity),
      'only beside humidityPct, dewPointC or wetBulbC',
    );
  if (stage.ladle !== undefined && stage.ladle.onS > stage.ladle.everyS)
    refuse(`${path}.ladle.onS`, `${stage.ladle.onS} s`, `at most everyS, ${stage.ladle.everyS} s`);
}

function radiatorsOf(stage: StageInput): Radiator[] {
  const emissivity = stage.emissivity ?? foodEmissivity.value;
  const { radiantC, radiantShare, wallC } = stage;
  const walls = { ...(wallC === undefined ? {} : { C: wallC }), emissivity };
  if (radiantC === undefined || radiantShare === undefined) return [walls];
  // What sees the source does not see the walls.
  const share = Math.min(emissivity, radiantShare);
  return [
    { C: radiantC, emissivity: share },
    { ...walls, emissivity: emissivity - share },
  ];
}

/**
 * Medium, coefficient and surface of a stage, from its numbers or from the table of media. `own` takes the place of the table's coefficient.
 * Throws `InputProblems` or `OutOfRange` where they contradict one another.
 */
export function surroundingsOf(stage: StageInput, path: string, own?: number): Surroundings {
  const named = stage.medium === undefined ? undefined : mediumNamed(stage.medium, `${path}.medium`);
  const law = hasLaw(stage);
  pressureOf(stage, path);
  needed(stage, named, path);
  const h = own ?? stage.hWm2K ?? (law ? named?.dry?.h : named?.h);
  if (h === undefined) {
    if (named === undefined)
      refuse(`${path}.hWm2K`, 'nothing', 'a surface coefficient, or a medium from the table');
    refuse(
      `${path}.medium`,
      `${stage.medium} with humidity, radiation or ladled fat`,
      'a medium that is air: an oven, a grill, a fridge, low-temperature steam',
    );
  }
  const medium = courseOf(stage, named, path);
  const resistance = resistanceOf(stage, path);
  if (!law) return { medium, h: throughResistance(h, resistance) };
  if (named !== undefined && named.dry === undefined)
    refuse(
      `${path}.medium`,
      `${stage.medium} with humidity, radiation or ladled fat`,
      'a medium that is air: an oven, a grill, a fridge, low-temperature steam',
    );
  const vapour = isHumid(stage) ? vapourOf(stage, medium, path) : undefined;
  const { ladle, fluxWm2 } = stage;
  return {
    medium,
    h,
    surface: {
      ...(resistance === 0 ? {} : { resistance }),
      ...(vapour === undefined ? {} : { vapour: { ...vapour, condensate: condensateFilm.h } }),
      radiators: radiatorsOf(stage),
      ...(fluxWm2 === undefined ? {} : { flux: fluxWm2 }),
      ...(ladle === undefined
        ? {}
        : {
            ladle: {
              C: ladle.fatC,
              h: ladledCoefficient(ladle.hWm2K ?? ladledFat.h, ladle.onS, ladle.everyS, meatEffusivity.value),
              share: ladle.onS / ladle.everyS,
            },
          }),
    },
  };
}
