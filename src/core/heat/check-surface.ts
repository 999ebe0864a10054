/** What cannot be true of a stage's surface is refused here. */
import { Contradiction, OutOfRange } from '../errors.ts';
import { saturationPressure } from '../properties/saturation.ts';
import type { MediumTemperature, Stage, Vapour } from './types.ts';

function within(value: number, low: number, high: number, unit: string, path: string): void {
  if (!(value >= low && value <= high))
    throw new OutOfRange(path, `${value}${unit}`, `${low} to ${high}${unit}`);
}

const coldestOf = (medium: MediumTemperature) =>
  typeof medium === 'number' ? medium : Math.min(...medium.map((point) => point.C));

function checkVapour(vapour: Vapour, stage: Stage, path: string): void {
  const { pressure, relative, partial, activity, condensate } = vapour;
  within(pressure, 20e3, 400e3, ' Pa', `${path}.pressure`);
  within(activity, 0, 1, '', `${path}.activity`);
  within(stage.h, 0, 1000, ' W/(m² K)', `${path.replace(/\.surface\.vapour$/, '')}.h`);
  if (condensate !== undefined) within(condensate, 100, 20_000, ' W/(m² K)', `${path}.condensate`);
  if ((relative === undefined) === (partial === undefined))
    throw new Contradiction(
      path,
      relative === undefined ? 'no humidity' : 'two humidities',
      'either a relative humidity or the pressure of the vapour',
    );
  if (relative !== undefined) within(relative, 0, 1, '', `${path}.relative`);
  if (partial === undefined) return;
  within(partial, 0, pressure, ' Pa', `${path}.partial`);
  const coldest = coldestOf(stage.medium);
  const holds = coldest > 0 && coldest < 300 ? saturationPressure(coldest) : undefined;
  if (holds !== undefined && partial > holds * (1 + 1e-6))
    throw new Contradiction(
      `${path}.partial`,
      `${partial.toFixed(0)} Pa of vapour in air of ${coldest} °C`,
      `at most what it holds, ${holds.toFixed(0)} Pa`,
    );
}

/**
 * Refuses a surface that cannot be [SI units, °C].
 * @param stage with a surface
 * @param path of the stage, for errors
 * Throws `OutOfRange` or `Contradiction`. Checked by a test for every limit. Source: own-assumption
 */
export function checkSurface(stage: Stage, path: string): void {
  const { surface } = stage;
  if (surface === undefined) return;
  const here = `${path}.surface`;
  if (surface.resistance !== undefined) within(surface.resistance, 0, 1, ' m² K/W', `${here}.resistance`);
  if (surface.vapour !== undefined) checkVapour(surface.vapour, stage, `${here}.vapour`);
  for (const [i, { C, emissivity }] of (surface.radiators ?? []).entries()) {
    if (C !== undefined) within(C, -100, 1500, ' °C', `${here}.radiators[${i}].C`);
    within(emissivity, 0, 1, '', `${here}.radiators[${i}].emissivity`);
  }
  if (surface.flux !== undefined) within(surface.flux, 0, 100e3, ' W/m²', `${here}.flux`);
  if (surface.ladle !== undefined) {
    within(surface.ladle.C, 0, 300, ' °C', `${here}.ladle.C`);
    within(surface.ladle.h, 1, 5000, ' W/(m² K)', `${here}.ladle.h`);
    within(surface.ladle.share, 0, 1, '', `${here}.ladle.share`);
  }
}
