/**
 * Water and its vapour side by side: at which pressure water boils, how much heat its vapour carries, and what the
 * height of a kitchen does to both.
 */
import { OutOfRange } from '../errors.ts';
import type { Confidence } from '../sources.ts';

const zeroC = 273.15;

/** Ends of the saturation line that the industrial formulation covers: [°C] and [Pa], ice point to critical point. */
export const saturationRange = {
  lowC: 0,
  highC: 373.946,
  lowPa: 611.213,
  highPa: 22.064e6,
  source: 'iapws-if97',
  confidence: 'memory' as Confidence,
} as const;

/** Coefficients n1 … n10 of the saturation line; the release's own six check values come out to its nine figures. */
const n = [
  0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5, -0.32325550322333e7,
  0.1491510861353e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
] as const;

/** The standard's sea-level pressure [Pa]. */
export const seaLevelPressure = 101325;

function check(C: number, path: string): void {
  if (!(C >= saturationRange.lowC && C <= saturationRange.highC))
    throw new OutOfRange(path, `${C} °C`, `${saturationRange.lowC} to ${saturationRange.highC} °C`);
}

/**
 * Pressure at which water and its vapour rest side by side [Pa].
 *
 *     p = 1 MPa·[2c/(−b + √(b² − 4ac))]⁴,  ϑ = T + n9/(T − n10),
 *     a = ϑ² + n1·ϑ + n2,  b = n3·ϑ² + n4·ϑ + n5,  c = n6·ϑ² + n7·ϑ + n8
 *
 * @param C temperature [°C], 0 to 373.946; below freezing see `icePressure`
 * @param path what to call it in an error
 * Assumes pure water under a flat surface.
 * Checked against the three pressures of the release, nine figures; the coefficients agree with copies of it.
 * @example saturationPressure(300 - 273.15) / 1e6 // → 3.53658941e-3
 * Source: iapws-if97
 */
export function saturationPressure(C: number, path = 'temperature'): number {
  check(C, path);
  const T = C + zeroC;
  const v = T + n[8] / (T - n[9]);
  const a = v * v + n[0] * v + n[1];
  const b = n[2] * v * v + n[3] * v + n[4];
  const c = n[5] * v * v + n[6] * v + n[7];
  return 1e6 * ((2 * c) / (-b + Math.sqrt(b * b - 4 * a * c))) ** 4;
}

/**
 * Temperature at which water boils under a pressure [°C].
 *
 *     T = ½{n10 + D − √[(n10 + D)² − 4(n9 + n10·D)]},  D = 2g/(−f − √(f² − 4eg)),  β = (p/1 MPa)^¼,
 *     e = β² + n3·β + n6,  f = n1·β² + n4·β + n7,  g = n2·β² + n5·β + n8
 *
 * @param Pa pressure [Pa], 611.213 to 22.064e6
 * @param path what to call it in an error
 * Assumes pure water: what is dissolved in it makes it boil higher.
 * Checked against the three temperatures of the release, nine figures, and by going there and back.
 * @example saturationTemperature(101325) // → 99.974
 * Source: iapws-if97
 */
export function saturationTemperature(Pa: number, path = 'pressure'): number {
  if (!(Pa >= saturationRange.lowPa && Pa <= saturationRange.highPa))
    throw new OutOfRange(path, `${Pa} Pa`, `${saturationRange.lowPa} to ${saturationRange.highPa} Pa`);
  const beta = (Pa / 1e6) ** 0.25;
  const e = beta * beta + n[2] * beta + n[5];
  const f = n[0] * beta * beta + n[3] * beta + n[6];
  const g = n[1] * beta * beta + n[4] * beta + n[7];
  const D = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  return (n[9] + D - Math.sqrt((n[9] + D) ** 2 - 4 * (n[8] + n[9] * D))) / 2 - zeroC;
}

/**
 * Pressure of vapour over ice [Pa].
 *
 *     ln(p/p_t) = (T_t/T)·Σ a_i·(T/T_t)^b_i,  T_t = 273.16 K, p_t = 611.657 Pa
 *
 * @param C temperature [°C], −100 to 0.01
 * @param path what to call it in an error
 * Assumes plain ice, not ice in a food.
 * Checked against the release's value at 230 K (from memory) and at the triple point.
 * @example icePressure(230 - 273.15) // → 8.94735
 * Source: iapws-r14-08
 */
export function icePressure(C: number, path = 'temperature'): number {
  if (!(C >= -100 && C <= 0.01)) throw new OutOfRange(path, `${C} °C`, '-100 to 0.01 °C');
  const theta = (C + zeroC) / 273.16;
  const sum =
    -0.212144006e2 * theta ** 0.333333333e-2 +
    0.273203819e2 * theta ** 0.120666667e1 -
    0.61059813e1 * theta ** 0.170333333e1;
  return 611.657 * Math.exp(sum / theta);
}

const critical = { K: 647.096, rho: 322 } as const;

/**
 * Density of water as it boils [kg/m³].
 *
 *     ρ/322 = 1 + Σ b_i·τ^(…),  τ = 1 − T/647.096 K
 *
 * @param C temperature [°C], 0 to 373.946
 * Assumes pure water at its saturation pressure.
 * Checked against the release's 958.365 at 373.1243 K (from memory); the coefficients agree with copies of it.
 * @example boilingWaterDensity(99.9743) // → 958.365
 * Source: iapws-sr1-86
 */
export function boilingWaterDensity(C: number): number {
  check(C, 'temperature');
  const t = Math.cbrt(Math.max(0, 1 - (C + zeroC) / critical.K));
  const sum =
    1.99274064 * t +
    1.09965342 * t ** 2 -
    0.510839303 * t ** 5 -
    1.75493479 * t ** 16 -
    45.5170352 * t ** 43 -
    6.7469445e5 * t ** 110;
  return critical.rho * (1 + sum);
}

/**
 * Density of dry saturated steam [kg/m³].
 *
 *     ln(ρ/322) = Σ c_i·τ^(…),  τ = 1 − T/647.096 K
 *
 * @param C temperature [°C], 0 to 373.946
 * Assumes steam without air.
 * Checked against the release's 0.597586 at 373.1243 K (from memory); the coefficients agree with copies of it.
 * @example steamDensity(99.9743) // → 0.59759
 * Source: iapws-sr1-86
 */
export function steamDensity(C: number): number {
  check(C, 'temperature');
  const t = Math.max(0, 1 - (C + zeroC) / critical.K) ** (1 / 6);
  const sum =
    -2.0315024 * t ** 2 -
    2.6830294 * t ** 4 -
    5.38626492 * t ** 8 -
    17.2991605 * t ** 18 -
    44.7586581 * t ** 37 -
    63.9201063 * t ** 71;
  return critical.rho * Math.exp(sum);
}

/**
 * Heat that vapour gives up when it condenses [J/kg].
 *
 *     h_fg = T·(1/ρ_steam − 1/ρ_water)·dp/dT
 *
 * @param C temperature [°C], 0 to 370
 * @param path what to call it in an error
 * Assumes pure water at its saturation pressure; the slope dp/dT is taken over a hundredth of a degree.
 * Checked against the steam tables from 0 to 100 °C, from memory: within 1.1 kJ/kg at 0 °C, 0.3 from 20 °C up.
 * @example latentHeat(100) / 1000 // → 2256.58
 * Source: iapws-sr1-86
 */
export function latentHeat(C: number, path = 'temperature'): number {
  if (!(C >= saturationRange.lowC && C <= 370)) throw new OutOfRange(path, `${C} °C`, '0 to 370 °C');
  const low = Math.max(saturationRange.lowC, C - 0.005);
  const slope = (saturationPressure(low + 0.01) - saturationPressure(low)) / 0.01;
  return (C + zeroC) * (1 / steamDensity(C) - 1 / boilingWaterDensity(C)) * slope;
}

/**
 * Pressure of the standard atmosphere [Pa].
 *
 *     p = 101325·(1 − 2.25577e-5·h)^5.25588
 *
 * @param height above the sea [m], −500 to 11 000
 * Assumes the standard atmosphere: the weather moves it by some 3 %, which moves the boiling point by about 1 °C.
 * Checked against the standard's values from 0 to 4000 m.
 * @example pressureAtHeight(1500) / 1000 // → 84.556
 * Source: iso-2533-atmosphere
 */
export function pressureAtHeight(height: number): number {
  if (!(height >= -500 && height <= 11000))
    throw new OutOfRange('height', `${height} m`, '-500 to 11 000 m above the sea');
  return seaLevelPressure * (1 - 2.25577e-5 * height) ** 5.25588;
}

/**
 * Temperature at which water boils in an open pan [°C].
 *
 *     T = T_sat(p(h))
 *
 * @param height above the sea [m], −500 to 11 000
 * Assumes the standard atmosphere and pure water.
 * Checked against the saturation temperatures of the standard's pressures, 0 to 4000 m.
 * @example boilingPointAtHeight(1500) // → 94.983
 * Source: iso-2533-atmosphere
 */
export function boilingPointAtHeight(height: number): number {
  return saturationTemperature(pressureAtHeight(height));
}
