/** What a change of medium, of its vapour or of its pressure makes of a stage: only the keys that the new one has are kept. */
import type { StageInput, UntilInput } from '../../../../contract/body.ts';
import { isWrapped } from '../../../../contract/wraps.ts';
import { type Medium, type MediumName, media } from '../../../../core/properties/media.ts';

/** A medium of one's own, by its surface coefficient. */
export const OWN = 'own';

export const namedMedium = ({ medium }: StageInput): Medium | undefined =>
  medium !== undefined && Object.hasOwn(media, medium) ? media[medium as MediumName] : undefined;

/** Is it air, of which something can be said beside its temperature? */
export const isAir = (stage: StageInput): boolean => {
  const named = namedMedium(stage);
  return named === undefined || named.dry !== undefined;
};

/** What every medium has. */
function plain({
  name,
  medium,
  mediumC,
  mediumLog,
  resistanceM2KW,
  wraps,
  altitudeM,
  until,
}: StageInput): StageInput {
  return {
    name,
    until,
    ...(medium === undefined ? {} : { medium }),
    ...(mediumC === undefined ? {} : { mediumC }),
    ...(mediumLog === undefined ? {} : { mediumLog }),
    ...(resistanceM2KW === undefined ? {} : { resistanceM2KW }),
    ...(wraps === undefined ? {} : { wraps }),
    ...(altitudeM === undefined ? {} : { altitudeM }),
  };
}

/** The stage in another medium, at its own temperature where that fits, else at the medium's. */
export function withMedium(stage: StageInput, name: string): StageInput {
  const before = namedMedium(stage);
  const { medium: _, mediumLog: __, ...kept } = plain(stage);
  if (name === OWN) return { ...kept, hWm2K: stage.hWm2K ?? before?.h ?? 100, mediumC: stage.mediumC ?? 100 };
  const next: Medium = media[name as MediumName];
  // Beside what glows or is ladled the air is a kitchen's, whatever came before.
  const fits =
    next.needs === undefined &&
    stage.mediumC !== undefined &&
    stage.mediumC >= next.coldest &&
    stage.mediumC <= next.hottest;
  const mediumC = fits ? stage.mediumC : (next.usual ?? Math.round((next.coldest + next.hottest) / 2));
  const moved = {
    ...kept,
    name: stage.name === stage.medium || stage.name === '' ? name : stage.name,
    medium: name,
    ...(mediumC === undefined ? {} : { mediumC }),
    ...(next.needs === 'radiation' ? { fluxWm2: 5000 } : {}),
    ...(next.needs === 'ladle' ? { ladle: { fatC: 180, onS: 4, everyS: 10 } } : {}),
  };
  return next.boils === true && stage.altitudeM !== undefined ? following(moved) : moved;
}

/** How the vapour in the air is told. */
export type Measure = 'none' | 'humidityPct' | 'dewPointC' | 'wetBulbC';

export const measureOf = (stage: StageInput): Measure =>
  stage.humidityPct !== undefined
    ? 'humidityPct'
    : stage.dewPointC !== undefined
      ? 'dewPointC'
      : stage.wetBulbC !== undefined
        ? 'wetBulbC'
        : 'none';

/** The stage with its vapour told another way, beginning with a figure that its air can have. */
export function withMeasure(stage: StageInput, measure: Measure): StageInput {
  const { humidityPct: _, dewPointC: __, wetBulbC: ___, surfaceWaterActivity, ...rest } = stage;
  if (measure === 'none') return rest;
  const below = Math.min(60, Math.max(0, Math.round((stage.mediumC ?? 60) / 2)));
  const kept = { ...rest, ...(surfaceWaterActivity === undefined ? {} : { surfaceWaterActivity }) };
  return measure === 'humidityPct'
    ? { ...kept, humidityPct: 50 }
    : measure === 'dewPointC'
      ? { ...kept, dewPointC: below }
      : { ...kept, wetBulbC: Math.max(below, 20) };
}

/** What the surface does as it dries. */
export type Wetness = 'wet' | 'drier' | 'wrapped';

export const wetnessOf = (stage: StageInput): Wetness =>
  isWrapped(stage) ? 'wrapped' : stage.surfaceWaterActivity === undefined ? 'wet' : 'drier';

export function withWetness(stage: StageInput, wetness: Wetness): StageInput {
  const { wrapped: _, surfaceWaterActivity: __, ...rest } = stage;
  return wetness === 'wrapped'
    ? { ...rest, wrapped: true }
    : wetness === 'drier'
      ? { ...rest, surfaceWaterActivity: 0.9 }
      : rest;
}

/** What boils, at the temperature that its pressure gives it. */
function following({ mediumC: _, ...rest }: StageInput): StageInput {
  return rest;
}

/** Under which pressure it boils or is: the kitchen's height, or a closed vessel's. */
export type Place = 'height' | 'vessel';

export const placeOf = (stage: StageInput): Place => (stage.pressureKPa === undefined ? 'height' : 'vessel');

/** A height, a pressure or neither; what boils then follows it. */
export function underPressure(
  stage: StageInput,
  by: { readonly altitudeM?: number; readonly pressureKPa?: number },
): StageInput {
  const { altitudeM: _, pressureKPa: __, ...rest } = stage;
  const moved = { ...rest, ...by };
  if (namedMedium(stage)?.boils !== true) return moved;
  return by.altitudeM === undefined && by.pressureKPa === undefined
    ? { ...moved, mediumC: moved.mediumC ?? namedMedium(stage)?.usual ?? 100 }
    : following(moved);
}

/** A grill by the heat that is absorbed, or by what glows. */
export function glowing(stage: StageInput, by: 'flux' | 'source'): StageInput {
  const { fluxWm2: _, radiantC: __, radiantShare: ___, ...rest } = stage;
  return by === 'flux' ? { ...rest, fluxWm2: 5000 } : { ...rest, radiantC: 500, radiantShare: 0.2 };
}

/** The stage with a key changed, or without it where there is nothing. */
export function put<K extends keyof StageInput>(
  stage: StageInput,
  key: K,
  value: StageInput[K] | null,
): StageInput {
  if (value !== null) return { ...stage, [key]: value };
  const { [key]: _, ...rest } = stage;
  return rest as StageInput;
}

export type UntilKind = 'min' | 'coldestC' | 'warmestC' | 'lethalityMin';

export const untilKind = (until: UntilInput): UntilKind =>
  'min' in until
    ? 'min'
    : 'coldestC' in until
      ? 'coldestC'
      : 'warmestC' in until
        ? 'warmestC'
        : 'lethalityMin';

export function untilOf(kind: UntilKind, value: number): UntilInput {
  switch (kind) {
    case 'min':
      return { min: value };
    case 'coldestC':
      return { coldestC: value };
    case 'warmestC':
      return { warmestC: value };
    case 'lethalityMin':
      return { lethalityMin: value };
  }
}

export const untilValue = (until: UntilInput): number =>
  'min' in until
    ? until.min
    : 'coldestC' in until
      ? until.coldestC
      : 'warmestC' in until
        ? until.warmestC
        : until.lethalityMin;
