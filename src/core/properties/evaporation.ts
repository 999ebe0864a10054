/**
 * What crosses a wet surface with the vapour: steam that condenses out of humid air on a cold piece, water that dries
 * off a hot one. Positive heat goes into the piece, positive mass settles on it.
 */
import { OutOfRange } from '../errors.ts';
import { bracketedRoot } from '../numerics/roots.ts';
import { checkVapour, humidityRatio } from './humid-air.ts';
import { latentHeat, saturationPressure, saturationTemperature } from './saturation.ts';

/** Ratio of heat's to vapour's diffusivity in air, and molar heats near 100 °C; from memory of handbooks. */
export const humidAirExchange = {
  /** Lewis number [-]. */
  lewis: 0.865,
  /** Molar heat of dry air [J/(kmol K)]. */
  airHeat: 29.1e3,
  /** Molar heat of steam [J/(kmol K)]. */
  steamHeat: 33.8e3,
  source: 'chilton-colburn-1934',
  confidence: 'memory',
} as const;

const molarMass = 18.0153;
const lewisFactor = humidAirExchange.lewis ** (2 / 3);

function checkCoefficient(h: number, path = 'h'): void {
  if (!(h > 0 && h <= 1000)) throw new OutOfRange(path, `${h} W/(m² K)`, 'more than 0 to 1000 W/(m² K)');
}

function checkAir(C: number): void {
  if (!(C >= -60 && C <= 350)) throw new OutOfRange('air', `${C} °C`, '-60 to 350 °C');
}

function checkActivity(activity: number): void {
  if (!(activity >= 0 && activity <= 1))
    throw new OutOfRange('water activity', String(activity), 'a fraction, 0 to 1');
}

/** Vapour pressure right at a wet surface [Pa]; a surface that boils is refused. */
function atSurface(surface: number, pressure: number, activity: number): number {
  const own = activity * saturationPressure(surface, 'surface');
  if (!(own < pressure))
    throw new OutOfRange(
      'surface',
      `${surface} °C`,
      `below boiling, ${saturationTemperature(pressure).toFixed(1)} °C at ${pressure} Pa`,
    );
  return own;
}

/** The stream of air over a surface. */
export interface Stream {
  /** Temperature of the air [°C]. */
  readonly air: number;
  /** Pressure of its vapour [Pa]. */
  readonly vapour: number;
  /** Pressure of the air with its vapour [Pa]. */
  readonly pressure: number;
  /** Surface coefficient of dry air at the same speed [W/(m² K)], above 0 to 1000. */
  readonly h: number;
}

/**
 * Water that settles on a surface out of humid air [kg/(m² s)]; negative where it dries.
 *
 *     N = h/(c·Le^⅔)·ln[(1 − p_s/P)/(1 − p_v/P)],  c the molar heat of the stream
 *
 * @param stream air at −60 to 350 °C with its vapour
 * @param surface temperature of the surface [°C], 0 to below boiling
 * @param activity of the water at the surface, 0–1
 * Assumes a film through which the vapour is blown by its own stream (Stefan), heat and vapour alike (Chilton and Colburn,
 * Le 0.865), and no air that gathers at the surface.
 * Checked with `humidAirHeat`; zero where the surface is at the dew point.
 * @example settlingWater({ air: 80, vapour: 47414.7, pressure: 101325, h: 15 }, 30) // → 0.00559
 * Source: chilton-colburn-1934
 */
export function settlingWater(stream: Stream, surface: number, activity = 1): number {
  const { air, vapour, pressure, h } = stream;
  checkAir(air);
  checkVapour(vapour, pressure);
  checkCoefficient(h);
  checkActivity(activity);
  const own = atSurface(surface, pressure, activity);
  const y = vapour / pressure;
  const molarHeat = (1 - y) * humidAirExchange.airHeat + y * humidAirExchange.steamHeat;
  const moles = (h / (molarHeat * lewisFactor)) * Math.log((1 - own / pressure) / (1 - y));
  return moles * molarMass;
}

/**
 * Heat that humid air brings to a surface, its condensing vapour included [W/m²].
 *
 *     q = h·(T_a − T_s) + N·h_fg(T_s)
 *
 * @param stream air at −60 to 350 °C with its vapour
 * @param surface temperature of the surface [°C], 0 to below boiling
 * @param activity of the water at the surface, 0–1
 * Assumes what `settlingWater` does; no radiation; the vapour's own sensible heat left out. An effective coefficient
 * q/(T_a − T_s) has a meaning only while the air is saturated or the surface below the dew point.
 * Checked against 23 effective coefficients of saturated air from 60 to 98 °C, within 1 %.
 * @example humidAirHeat({ air: 80, vapour: 47414.7, pressure: 101325, h: 15 }, 30) / 50 // → 286.8
 * Source: chilton-colburn-1934
 */
export function humidAirHeat(stream: Stream, surface: number, activity = 1): number {
  const settled = settlingWater(stream, surface, activity);
  return stream.h * (stream.air - surface) + settled * latentHeat(surface, 'surface');
}

/** A stream, and walls that radiate. */
export interface OvenAir extends Stream {
  /** Temperature of the walls [°C]. */
  readonly walls: number;
  /** Coefficient of radiation [W/(m² K)], 0 to 1000; see `radiationCoefficient`. */
  readonly hRadiation: number;
}

/**
 * Heat into a surface that dries in an oven [W/m²].
 *
 *     q = h·(T_a − T_s) + h_r·(T_w − T_s) − k_Y·h_fg(T_s)·(a_w·Y_sat(T_s) − Y_a),
 *     k_Y = h/(c_s·Le^⅔),  c_s = 1006 + 1860·Y_a
 *
 * @param oven air at −60 to 350 °C with its vapour, and walls
 * @param surface temperature of the surface [°C], 0 to below boiling
 * @param activity of the water at the surface, 0–1: 1 wet, less as it dries
 * Assumes little vapour beside the air (Lewis); with much of it `humidAirHeat` is the better. Where the surface can no
 * longer be fed with water the activity must fall: that is not in here.
 * Checked term by term by hand; see `restingSurface`.
 * @example dryingSurfaceHeat({ air: 150, vapour: 12350, pressure: 101325, h: 20, walls: 150, hRadiation: 0 }, 57.48) // → -185
 * Source: incropera-dewitt
 */
export function dryingSurfaceHeat(oven: OvenAir, surface: number, activity = 1): number {
  const { air, vapour, pressure, h, walls, hRadiation } = oven;
  checkAir(air);
  if (!(walls >= -100 && walls <= 1500)) throw new OutOfRange('walls', `${walls} °C`, '-100 to 1500 °C');
  if (!(hRadiation >= 0 && hRadiation <= 1000))
    throw new OutOfRange('hRadiation', `${hRadiation} W/(m² K)`, '0 to 1000 W/(m² K)');
  checkCoefficient(h);
  checkActivity(activity);
  const Ya = humidityRatio(vapour, pressure);
  const Ys = humidityRatio(atSurface(surface, pressure, activity), pressure);
  const kY = h / ((1006 + 1860 * Ya) * lewisFactor);
  return h * (air - surface) + hRadiation * (walls - surface) - kY * latentHeat(surface) * (Ys - Ya);
}

/**
 * Temperature at which a drying surface rests, taking up no more heat [°C].
 *
 *     q(T_s) = 0 of `dryingSurfaceHeat`
 *
 * @param oven air at −60 to 350 °C with its vapour, and walls
 * @param activity of the water at the surface, above 0 to 1
 * Assumes the piece behind the surface takes none of the heat. It refuses where even a surface at the boiling point would
 * still warm, or one at 0 °C still cool.
 * Checked: within 1 °C of the thermodynamic wet bulb where walls do not radiate (one case, air of 150 °C), above it where
 * they do, higher where the surface is drier.
 * @example restingSurface({ air: 150, vapour: 12350, pressure: 101325, h: 20, walls: 150, hRadiation: 10 }) // → 59.4
 * Source: incropera-dewitt
 */
export function restingSurface(oven: OvenAir, activity = 1): number {
  if (!(activity > 0)) throw new OutOfRange('water activity', String(activity), 'more than 0, to 1');
  const top = Math.min(370, saturationTemperature(oven.pressure)) - 1e-6;
  const found = bracketedRoot((C) => dryingSurfaceHeat(oven, C, activity), 0, top, 1e-9);
  if (found.status !== 'converged')
    throw new OutOfRange(
      'air',
      `${oven.air} °C with ${oven.vapour} Pa of vapour`,
      'air in which a wet surface rests between 0 °C and boiling',
    );
  return found.x;
}
