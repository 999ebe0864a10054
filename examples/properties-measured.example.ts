import { type Composition, density, specificHeat } from '../src/core/properties/food-components.ts';
import { frozenHeat, heatOfMelting } from '../src/core/properties/freezing.ts';
import { freezingFoodNamed } from '../src/core/properties/freezing-points.ts';
import { conductivity } from '../src/core/properties/mixture-conductivity.ts';
import type { Example, Row } from './case.ts';

/** Lean without fat as 77 % water, 22 % protein, 1 % ash; what water is missing is fat. An assumption, said in the story. */
function ofWater(water: number): Composition {
  const lean = Math.min(1, water / 0.77);
  return {
    water,
    protein: 0.22 * lean,
    fat: 1 - lean,
    carbohydrate: 0,
    fibre: 0,
    ash: lean - water - 0.22 * lean,
  };
}
const mix = (water: number, protein: number, fat: number, carbohydrate: number, ash: number): Composition => {
  const sum = water + protein + fat + carbohydrate + ash;
  return {
    water: water / sum,
    protein: protein / sum,
    fat: fat / sum,
    carbohydrate: carbohydrate / sum,
    fibre: 0,
    ash: ash / sum,
  };
};
const breast = mix(0.7426, 0.22054, 0.02568, 0, 0.01117);
const mousse = mix(0.67833, 0.12884, 0.16253, 0.01204, 0.01826);

/** Water %, between [°C], measured [kJ/(kg K)]; with `by` where ours lies outside a twentieth. */
const measuredHeats: readonly (readonly [string, number, number, number, number, number?])[] = [
  ['lean beef', 0.745, 0, 10, 3.6],
  ['lean beef', 0.72, 0, 100, 3.43],
  ['fatty beef', 0.51, 0, 100, 2.89, 0.24],
  ['veal', 0.63, 0, 100, 3.22, 0.17],
  ['lean pork', 0.733, 0, 18, 3.52],
  ['lean pork', 0.57, 0, 100, 3.06, 0.2],
  ['fatty pork', 0.39, 0, 100, 2.6, 0.28],
  ['pork', 0.768, 0, 30, 3.81],
];

/** Specific heats above freezing in the handbook's table [kJ/(kg K)], its composition in per cent: both as remembered. */
const handbookHeats: readonly (readonly [string, Composition, number, number?])[] = [
  ['duck', mix(48.5, 11.49, 39.34, 0, 0.68), 3.06],
  ['turkey', mix(70.4, 20.42, 8.02, 0, 0.88), 3.53],
  ['pork shoulder, lean', mix(72.63, 19.55, 7.14, 0, 1.02), 3.59],
  ['pork carcass', mix(49.83, 13.91, 35.07, 0, 0.72), 3.08],
  ['pork belly', mix(36.74, 9.34, 53.01, 0, 0.49), 2.8],
  ['pork backfat', mix(7.69, 2.92, 88.69, 0, 0.7), 2.17],
  ['ham, cured, lean', mix(68.26, 22.32, 5.71, 0.05, 3.66), 3.47],
  ['lamb, lean', mix(73.42, 20.29, 5.25, 0, 1.06), 3.6],
  ['lamb leg, lean', mix(74.11, 20.56, 4.51, 0, 1.07), 3.62],
  ['beef carcass', mix(58.21, 17.48, 22.55, 0, 0.82), 3.25],
  ['beef liver', mix(68.99, 20, 3.85, 5.82, 1.34), 3.47],
  ['veal, lean', mix(75.91, 20.2, 2.87, 0, 1.08), 3.65],
  ['cod', mix(81.22, 17.81, 0.67, 0, 1.16), 3.78],
  ['egg white', mix(87.81, 10.52, 0, 1.03, 0.64), 3.91],
  ['egg yolk', mix(48.81, 16.76, 30.87, 1.78, 1.77), 3.05],
  ['cream, heavy', mix(57.71, 2.05, 37, 2.79, 0.45), 3.25],
  ['chicken', mix(65.99, 18.6, 15.06, 0, 0.79), 4.34, -0.93],
];

/** Specific heats above freezing of an older table [kJ/(kg K)], by water alone. */
const olderHeats: readonly (readonly [string, number, number, number?])[] = [
  ['poultry', 0.74, 3.31, 0.3],
  ['lamb', 0.7, 3.18, 0.34],
  ['pork', 0.6, 2.85, 0.45],
];

export const example: Example = {
  title: 'Meat as others measured it',
  story: `The components' functions were fitted to many foods. Here they are asked about meat that was measured: its conductivity, its specific
heat, and the specific heats that handbooks print. Where only the water of a measured meat is known, we take its lean as 77 % water, 22 %
protein, 1 % ash, and what is left as fat. Older handbook tables reckon all solids as 0.84 kJ/(kg K), a rule of 1892; protein and fat take
more than twice that, so those tables are too low by 9 to 16 %, which a textbook on meat says of them too.`,
  equation: 'cp = Σ x·cp(T);  k: Levy and parallel;  mean over a span of temperature where one was measured',
  sources: [
    'sweat-haugh-stadelman-1973',
    'chang-1998',
    'marcotte-2008',
    'james-james-2002',
    'ashrae-refrigeration-properties',
    'geankoplis',
  ],
  run() {
    const rows: Row[] = [];
    const over = (food: Composition, low: number, high: number) => {
      let sum = 0;
      for (let i = 0; i < 20; i++) sum += specificHeat(food, low + ((i + 0.5) / 20) * (high - low));
      return sum / 20_000;
    };
    for (const C of [0, 10, 20]) {
      const measured = 0.476 + 0.0006 * C;
      const base = {
        source: 'sweat-haugh-stadelman-1973',
        confidence: 'secondary',
        unit: 'W/(m K)',
      } as const;
      rows.push({
        ...base,
        quantity: `white chicken at ${C} °C: conductivity, Levy, the engine’s rule`,
        expected: measured,
        ours: conductivity(breast, C),
        tolerance: 0.02,
        why: 'measurements of meat scatter by a few per cent',
      });
    }
    rows.push(
      {
        quantity:
          'white chicken at 20 °C: conductivity, parallel (the upper bound, where a layer asks for it)',
        source: 'sweat-haugh-stadelman-1973',
        confidence: 'secondary',
        expected: 0.488,
        ours: conductivity(breast, 20, 'parallel'),
        tolerance: 0.02,
        unit: 'W/(m K)',
        why: 'measurements of meat scatter by a few per cent',
        differs: {
          by: 0.0307,
          why: 'an upper bound, 6 % above what was measured: a piece heats and cools quicker by it than on the bench. It is there to compare with what used it; by it no cook step holds',
          unsafe: true,
        },
      },
      {
        quantity: 'turkey breast, 0 to 80 °C: conductivity, Levy at 40 °C',
        source: 'chang-1998',
        confidence: 'secondary',
        expected: 0.464,
        ours: conductivity(breast, 40),
        tolerance: 0.023,
        unit: 'W/(m K)',
        why: 'a twentieth',
        differs: {
          by: 0.052,
          why: 'one figure for the whole roast, fitted to an oven; cooked and drying meat conducts less than raw, and the model of drying it belongs to is not ours',
          unsafe: true,
        },
      },
      {
        quantity: 'meat and poultry emulsions, 20 to 80 °C: conductivity of a mousse, Levy at 20 °C',
        source: 'marcotte-2008',
        confidence: 'read',
        expected: { low: 0.26, high: 0.48 },
        ours: conductivity(mousse, 20),
        tolerance: 0,
        unit: 'W/(m K)',
        why: 'the range of all emulsions measured',
      },
      {
        quantity: 'meat and poultry emulsions: density of a raw mousse at 20 °C',
        source: 'marcotte-2008',
        confidence: 'read',
        expected: { low: 970, high: 1070 },
        ours: density(mousse, 20),
        tolerance: 0,
        unit: 'kg/m³',
        why: 'from the least cooked to the most raw that were measured',
      },
      {
        quantity: 'meat and poultry emulsions: specific heat of a mousse at 80 °C',
        source: 'marcotte-2008',
        confidence: 'read',
        expected: 3.38,
        ours: specificHeat(mousse, 80) / 1000,
        tolerance: 0.17,
        unit: 'kJ/(kg K)',
        why: 'emulsions of another composition: a twentieth',
      },
      {
        quantity: 'meat and poultry emulsions: specific heat of a mousse at 30 °C',
        source: 'marcotte-2008',
        confidence: 'read',
        expected: 2.85,
        ours: specificHeat(mousse, 30) / 1000,
        tolerance: 0.17,
        unit: 'kJ/(kg K)',
        why: 'emulsions of another composition: a twentieth',
        differs: {
          by: 0.615,
          why: 'measured to rise by a fifth from 30 to 80 °C, which no component does; less heat in the cold would heat faster, so ours is the slower side',
        },
      },
    );
    for (const [name, water, low, high, kJ, by] of measuredHeats)
      rows.push({
        quantity: `${name}, ${(100 * water).toFixed(1)} % water, ${low} to ${high} °C: specific heat`,
        source: 'james-james-2002',
        confidence: 'secondary',
        expected: kJ,
        ours: over(ofWater(water), low, high),
        tolerance: 0.05 * kJ,
        unit: 'kJ/(kg K)',
        why: 'its fat is our guess and meats scatter: a twentieth',
        ...(by === undefined
          ? {}
          : {
              differs: {
                by,
                why: 'old measurements over the whole span up to boiling, fat not given; we do not know which is right, but ours takes more heat, and so heats and cools slower, which is the safe side of both',
              },
            }),
      });
    const cod = freezingFoodNamed('cod');
    const btu = { source: 'ashrae-refrigeration-properties', confidence: 'secondary' } as const;
    rows.push(
      {
        ...btu,
        quantity: 'cod: specific heat above freezing, 0.90 Btu/(lb °F) in a copy of the handbook',
        expected: 0.9 * 4.1868,
        ours: specificHeat(cod.composition, 5) / 1000,
        tolerance: 0.042,
        unit: 'kJ/(kg K)',
        why: 'the last printed figure, 0.01 Btu/(lb °F)',
      },
      {
        ...btu,
        quantity: 'cod: below freezing, 0.51 Btu/(lb °F)',
        expected: 0.51 * 4.1868,
        ours: frozenHeat(cod.composition, -40) / 1000,
        tolerance: 0.042,
        unit: 'kJ/(kg K)',
        why: 'the last printed figure, 0.01 Btu/(lb °F)',
      },
      {
        ...btu,
        quantity: 'cod: heat of freezing, 117 Btu/lb',
        expected: 117 * 2.326,
        ours: (cod.composition.water * heatOfMelting) / 1000,
        tolerance: 2.4,
        unit: 'kJ/kg',
        why: 'the last printed figure, 1 Btu/lb',
      },
      {
        ...btu,
        quantity: 'cod: first ice, 28.0 °F',
        expected: (28 - 32) / 1.8,
        ours: cod.freezing,
        tolerance: 0.06,
        unit: '°C',
        why: 'printed to a tenth, in either scale',
      },
    );
    for (const [name, food, kJ, by] of handbookHeats)
      rows.push({
        quantity: `${name}: specific heat above freezing, handbook`,
        source: 'ashrae-refrigeration-properties',
        confidence: 'memory',
        expected: kJ,
        ours: specificHeat(food, 5) / 1000,
        tolerance: 0.02 * kJ,
        unit: 'kJ/(kg K)',
        why: 'two hundredths: the handbook does not say at which temperature',
        ...(by === undefined
          ? {}
          : {
              differs: {
                by,
                why: 'more than water itself has: the handbook’s figure as remembered cannot be right for its own composition',
              },
            }),
      });
    for (const [name, water, kJ, by] of olderHeats)
      rows.push({
        quantity: `${name}, ${100 * water} % water: specific heat above freezing, older table`,
        source: 'geankoplis',
        confidence: 'secondary',
        expected: kJ,
        ours: specificHeat(ofWater(water), 10) / 1000,
        tolerance: 0.05 * kJ,
        unit: 'kJ/(kg K)',
        why: 'its fat is our guess: a twentieth',
        ...(by === undefined
          ? {}
          : {
              differs: {
                by,
                why: 'the older table reckons solids at 0.84 kJ/(kg K); protein and fat take some 2',
              },
            }),
      });
    return rows;
  },
};
