import { humidAirHeat, restingSurface } from '../src/core/properties/evaporation.ts';
import { vapourPressure, wetBulb } from '../src/core/properties/humid-air.ts';
import { saturationPressure } from '../src/core/properties/saturation.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const python = kept('steam');
const sea = 101325;
const airs = [100, 120, 150, 180, 200, 230];
const vapours = [1200, 5000, 12350, 31200, 47400, 70200];
const saturated: readonly (readonly [air: number, surfaces: readonly number[]])[] = [
  [60, [10, 30, 50]],
  [80, [10, 30, 50, 70]],
  [85, [10, 30, 50, 70]],
  [90, [10, 30, 50, 70]],
  [95, [10, 30, 50, 70]],
  [98, [10, 30, 50, 70]],
];

export const example: Example = {
  title: 'Humid air on a wet surface',
  story: `Why an oven at 150 °C dries a roast at 57 °C, and why “steam at 85 °C”, which is steam with air in it, cooks like a bath and not like
an oven: where its vapour settles it brings twenty times the heat of the air alone. The handbook's balance for the wet bulb and the film with
Stefan's flow were worked out again in Python; Lewis number and molar heats are remembered, and handbooks differ by 3 % about them.`,
  equation: 'q = h·ΔT + N·h_fg,  N = h/(c·Le^⅔)·ln[(1 − p_s/P)/(1 − p_v/P)];  W_s(t*)·h_fg(t*) = …',
  sources: ['ashrae-fundamentals-psychrometrics', 'chilton-colburn-1934', 'own-computation'],
  run() {
    const rows: Row[] = [
      {
        quantity: 'wet bulb of a room, 25 °C at 50 %',
        source: 'ashrae-fundamentals-psychrometrics',
        confidence: 'memory',
        expected: 17.9,
        ours: wetBulb(25, vapourPressure(25, 0.5), sea),
        tolerance: 0.05,
        unit: '°C',
        why: 'tables of moist air, to a tenth',
      },
      {
        quantity: 'a wet surface in 150 °C, walls that do not radiate, against the wet bulb',
        source: 'own-computation',
        confidence: 'computed',
        expected: wetBulb(150, 12350, sea),
        ours: restingSurface({ air: 150, vapour: 12350, pressure: sea, h: 20, walls: 150, hRadiation: 0 }),
        tolerance: 1,
        unit: '°C',
        why: 'the balance with Lewis number 0.865 need not be the thermodynamic wet bulb, but lies beside it',
      },
    ];
    for (const C of airs)
      for (const Pa of vapours)
        rows.push({
          quantity: `wet bulb of air at ${C} °C with ${Pa / 1000} kPa of vapour`,
          source: 'ashrae-fundamentals-psychrometrics',
          confidence: 'memory',
          expected: python(`wet bulb ${C} C ${Pa} Pa`),
          ours: wetBulb(C, Pa, sea),
          tolerance: 0.02,
          unit: '°C',
          why: 'the same balance, solved twice',
        });
    for (const [C, relative] of [
      [20, 0.5],
      [60, 0.2],
      [80, 0.5],
    ] as const)
      rows.push({
        quantity: `wet bulb of air at ${C} °C, ${100 * relative} % humid`,
        source: 'ashrae-fundamentals-psychrometrics',
        confidence: 'memory',
        expected: python(`wet bulb ${C} C ${relative}`),
        ours: wetBulb(C, vapourPressure(C, relative), sea),
        tolerance: 0.02,
        unit: '°C',
        why: 'the same balance, solved twice',
      });
    const effective = (air: number, surface: number, relative: number) =>
      humidAirHeat({ air, vapour: relative * saturationPressure(air), pressure: sea, h: 15 }, surface) /
      (air - surface);
    const film = (quantity: string, expected: number, ours: number) =>
      rows.push({
        quantity,
        source: 'chilton-colburn-1934',
        confidence: 'memory',
        expected,
        ours,
        tolerance: 0.01 * expected,
        unit: 'W/(m² K)',
        why: 'another formula for the latent heat: one per cent',
      });
    for (const [air, surfaces] of saturated)
      for (const surface of surfaces)
        film(
          `saturated air at ${air} °C on ${surface} °C, 15 dry`,
          python(`saturated ${air} on ${surface}`),
          effective(air, surface, 1),
        );
    for (const surface of [10, 50])
      film(
        `air at 80 °C, half saturated, on ${surface} °C, 15 dry`,
        python(`80 at half on ${surface}`),
        effective(80, surface, 0.5),
      );
    return rows;
  },
};
