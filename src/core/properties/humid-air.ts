/** Air and the vapour in it. Pressures in Pa; the vapour pressure says how much is in it whatever the temperature. */
import { Contradiction, OutOfRange } from '../errors.ts';
import { bracketedRoot } from '../numerics/roots.ts';
import { icePressure, saturationPressure, saturationRange, saturationTemperature } from './saturation.ts';

/** Mass of a mole of water over that of dry air [-]. */
const waterToAir = 0.62198;

/** Pressures of air that a kitchen, an aeroplane or a pressure cooker has [Pa]. */
export function checkAirPressure(Pa: number, path = 'pressure'): void {
  if (!(Pa >= 20e3 && Pa <= 400e3)) throw new OutOfRange(path, `${Pa} Pa`, '20 000 to 400 000 Pa');
}

/** Refuses a vapour pressure that air of this pressure cannot hold [Pa]. */
export function checkVapour(vapour: number, pressure: number, path = 'vapour pressure'): void {
  checkAirPressure(pressure);
  if (!(vapour >= 0 && vapour < pressure))
    throw new OutOfRange(path, `${vapour} Pa`, `0 to less than the pressure of the air, ${pressure} Pa`);
}

/**
 * Water in the air for each kilogram of dry air [kg/kg].
 *
 *     Y = 0.62198·p_v/(P − p_v)
 *
 * @param vapour pressure of the vapour [Pa], 0 to less than that of the air
 * @param pressure of the air [Pa], 20 000 to 400 000
 * Assumes ideal gases.
 * Checked by hand.
 * @example humidityRatio(2339.2, 101325) // → 0.014698
 * Source: ashrae-fundamentals-psychrometrics
 */
export function humidityRatio(vapour: number, pressure: number): number {
  checkVapour(vapour, pressure);
  return (waterToAir * vapour) / (pressure - vapour);
}

/**
 * Pressure of the vapour in air that is partly saturated [Pa].
 *
 *     p_v = φ·p_sat(T), over ice below 0 °C
 *
 * @param C temperature of the air [°C], −100 to 373.946
 * @param relative humidity, 0–1
 * Assumes humidity given against what the air could hold at its own pressure of saturation: above 100 °C that is more
 * than the atmosphere, and no oven's “100 %” is meant so.
 * Checked by hand.
 * @example vapourPressure(25, 0.5) // → 1584.9
 * Source: ashrae-fundamentals-psychrometrics
 */
export function vapourPressure(C: number, relative: number): number {
  if (!(relative >= 0 && relative <= 1))
    throw new OutOfRange('relative humidity', String(relative), 'a fraction, 0 to 1');
  return relative * (C < 0 ? icePressure(C) : saturationPressure(C));
}

/**
 * Temperature at which the air's vapour begins to condense [°C].
 *
 *     T_dew = T_sat(p_v)
 *
 * @param vapour pressure of the vapour [Pa], 611.213 to 22.064e6; drier air has frost, not dew, and is refused
 * Checked by going there and back.
 * @example dewPoint(12351.3) // → 50.0
 * Source: iapws-if97
 */
export function dewPoint(vapour: number): number {
  if (!(vapour >= saturationRange.lowPa))
    throw new OutOfRange(
      'vapour pressure',
      `${vapour} Pa`,
      `${saturationRange.lowPa} Pa or more: below, frost forms`,
    );
  return saturationTemperature(vapour, 'vapour pressure');
}

/**
 * Thermodynamic wet bulb: the temperature to which air cools water that saturates it [°C].
 *
 *     Y·(2501 + 1.86·T − 4.186·T_w) = (2501 − 2.326·T_w)·Y_sat(T_w) − 1.006·(T − T_w)   [kJ/kg]
 *
 * @param C temperature of the air [°C], 0 to 350
 * @param vapour pressure of the vapour [Pa], 0 up to what the air can hold
 * @param pressure of the air [Pa], 20 000 to 400 000
 * Assumes no radiation and a wet bulb above 0 °C; where ice would form it refuses.
 * Checked against tables of moist air at room temperature (from memory) and 36 worked values from 100 to 230 °C.
 * @example wetBulb(150, 12350, 101325) // → 57.48
 * Source: ashrae-fundamentals-psychrometrics
 */
export function wetBulb(C: number, vapour: number, pressure: number): number {
  if (!(C >= 0 && C <= 350)) throw new OutOfRange('air', `${C} °C`, '0 to 350 °C');
  checkVapour(vapour, pressure);
  const boiling = saturationTemperature(pressure);
  if (C < boiling && vapour > saturationPressure(C) * (1 + 1e-9))
    throw new Contradiction(
      'vapour pressure',
      `${vapour} Pa in air of ${C} °C`,
      `it holds at most ${saturationPressure(C).toFixed(0)} Pa`,
    );
  const Y = humidityRatio(vapour, pressure);
  const lack = (w: number) => {
    const saturated = humidityRatio(saturationPressure(w), pressure);
    return Y * (2501 + 1.86 * C - 4.186 * w) - (2501 - 2.326 * w) * saturated + 1.006 * (C - w);
  };
  const top = Math.min(C, boiling - 1e-6);
  if (lack(0) < 0)
    throw new OutOfRange(
      'air',
      `${C} °C with ${vapour} Pa of vapour`,
      'air whose wet bulb is above 0 °C: here ice would form',
    );
  // Saturated air: its own wet bulb, which rounding may put a hair's breadth outside the bracket.
  if (lack(top) >= 0) return top;
  return bracketedRoot(lack, 0, top, 1e-10).x;
}

/**
 * Pressure of the vapour in air of which the wet bulb is known [Pa].
 *
 *     Y = [(2501 − 2.326·T_w)·Y_sat(T_w) − 1.006·(T − T_w)]/(2501 + 1.86·T − 4.186·T_w),  p_v = P·Y/(0.62198 + Y)
 *
 * @param C temperature of the air [°C], 0 to 350
 * @param wet bulb [°C], 0 up to the air's temperature and below boiling
 * @param pressure of the air [Pa], 20 000 to 400 000
 * Assumes what `wetBulb` does; a wet bulb lower than that of air without any vapour is refused.
 * Checked by going there and back.
 * @example vapourOfWetBulb(150, 57.48, 101325) / 1000 // → 12.35
 * Source: ashrae-fundamentals-psychrometrics
 */
export function vapourOfWetBulb(C: number, wet: number, pressure: number): number {
  if (!(C >= 0 && C <= 350)) throw new OutOfRange('air', `${C} °C`, '0 to 350 °C');
  checkAirPressure(pressure);
  const boiling = saturationTemperature(pressure);
  if (!(wet >= 0 && wet <= C && wet < boiling))
    throw new OutOfRange(
      'wet bulb',
      `${wet} °C in air of ${C} °C`,
      `0 °C to the air's own, below boiling (${boiling.toFixed(1)} °C)`,
    );
  const saturated = humidityRatio(saturationPressure(wet), pressure);
  const Y = ((2501 - 2.326 * wet) * saturated - 1.006 * (C - wet)) / (2501 + 1.86 * C - 4.186 * wet);
  if (!(Y >= 0))
    throw new OutOfRange(
      'wet bulb',
      `${wet} °C in air of ${C} °C`,
      `${wetBulb(C, 0, pressure).toFixed(1)} °C or more: that of air without vapour`,
    );
  return (pressure * Y) / (waterToAir + Y);
}
