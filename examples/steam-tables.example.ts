import { surroundingsOf } from '../src/contract/surroundings.ts';
import {
  boilingPointAtHeight,
  icePressure,
  latentHeat,
  pressureAtHeight,
  saturationPressure,
  saturationTemperature,
  steamDensity,
} from '../src/core/properties/saturation.ts';
import { waterViscosity } from '../src/core/properties/saturation-film.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const python = kept('steam');

export const example: Example = {
  title: 'Boiling, and the heat in steam',
  story: `At which temperature water boils in this kitchen, and how much heat a gram of steam carries. The releases of the international association
print values by which a program is to be checked; most were read in the tests of public programs that implement them. A table of steam was read
at a university. Heights go by the standard atmosphere: real air pressure moves the boiling point by half a degree with the weather.`,
  equation: 'p_sat(T), T_sat(p): IF97 region 4;  h_fg = T·Δv·dp/dT;  p = 101325·(1 − 2.25577e-5·h)^5.25588',
  sources: [
    'iapws-if97',
    'iapws-sr1-86',
    'iapws-r14-08',
    'iapws-sr6-08',
    'iso-2533-atmosphere',
    'salt-solubility-table',
  ],
  run() {
    const rows: Row[] = [];
    const row = (
      quantity: string,
      source: string,
      confidence: Row['confidence'],
      expected: number,
      ours: number,
      tolerance: number,
      unit: string,
      why: string,
    ) => rows.push({ quantity, source, confidence, expected, ours, tolerance, unit, why });
    const last = 'the last figure of the release';
    const if97 = (quantity: string, expected: number, ours: number, tolerance: number, unit: string) =>
      row(quantity, 'iapws-if97', 'secondary', expected, ours, tolerance, unit, last);
    if97('p_sat(300 K)', 3536.58941, saturationPressure(300 - 273.15), 6e-6, 'Pa');
    if97('p_sat(500 K)', 2638897.76, saturationPressure(500 - 273.15), 6e-3, 'Pa');
    if97('p_sat(600 K)', 12344314.6, saturationPressure(600 - 273.15), 6e-2, 'Pa');
    if97('T_sat(0.1 MPa)', 372.755919, saturationTemperature(1e5) + 273.15, 6e-7, 'K');
    if97('T_sat(1 MPa)', 453.035632, saturationTemperature(1e6) + 273.15, 6e-7, 'K');
    if97('T_sat(10 MPa)', 584.149488, saturationTemperature(1e7) + 273.15, 6e-7, 'K');
    row(
      'vapour over ice at 230 K',
      'iapws-r14-08',
      'secondary',
      8.94735,
      icePressure(230 - 273.15),
      6e-6,
      'Pa',
      last,
    );
    row('steam at 99.974 °C', 'iapws-sr1-86', 'memory', 0.597586, steamDensity(99.9743), 1e-6, 'kg/m³', last);
    row(
      'water’s viscosity at 25 °C',
      'iapws-sr6-08',
      'memory',
      889.996,
      waterViscosity(25) * 1e6,
      0.002,
      '1e-6 Pa s',
      'the release’s 298.15 K, to its last figure',
    );
    for (const [C, kJ] of [
      [5, 2489.1],
      [20, 2453.5],
      [40, 2406],
      [60, 2357.6],
      [70, 2333],
      [80, 2308],
      [90, 2282.5],
    ] as const)
      row(
        `latent heat at ${C} °C`,
        'ohio-steam-table',
        'secondary',
        kJ,
        latentHeat(C) / 1000,
        0.3,
        'kJ/kg',
        'printed to a tenth; the slope of the pressure is good to a few parts in ten thousand',
      );
    row(
      'latent heat at 100 °C',
      'iapws-sr1-86',
      'memory',
      2256.4,
      latentHeat(100) / 1000,
      0.3,
      'kJ/kg',
      'to a tenth; the slope of the pressure is good to a few parts in ten thousand',
    );
    for (const C of [5, 20, 50, 60, 65, 70, 72, 75, 80, 90, 100])
      row(
        `p_sat(${C} °C)`,
        'iapws-if97',
        'computed',
        python(`p_sat ${C} C`),
        saturationPressure(C),
        1e-7 * python(`p_sat ${C} C`),
        'Pa',
        'the same formulation, typed in twice',
      );
    for (const height of [0, 250, 500, 750, 1000, 1500, 2000, 2500, 3000, 4000]) {
      row(
        `air pressure at ${height} m`,
        'iso-2533-atmosphere',
        'memory',
        python(`pressure ${height} m`),
        pressureAtHeight(height),
        0.01,
        'Pa',
        'the same equation, typed in twice',
      );
      row(
        `water boils at ${height} m`,
        'iso-2533-atmosphere',
        'memory',
        python(`boils ${height} m`),
        boilingPointAtHeight(height),
        0.0005,
        '°C',
        'as the pressure',
      );
    }
    const brine = surroundingsOf(
      { name: 'brine', medium: 'boiling water', brineSaltPct: 26.4, until: { min: 1 } },
      'stage',
    ).medium;
    row(
      'brine of 26.4 % salt boils, beside saturated brine',
      'salt-solubility-table',
      'secondary',
      108.7,
      typeof brine === 'number' ? brine : Number.NaN,
      0.7,
      '°C',
      'ours has its water activity at 25 °C and holds 26.4 % salt; boiling it would hold 28.5 %. Cooler is slower, the safe side',
    );
    return rows;
  },
};
