import {
  type Component,
  type Composition,
  componentConductivity,
  componentDensity,
  componentHeat,
  density,
  normalised,
  specificHeat,
} from '../src/core/properties/food-components.ts';
import { frozenHeat, heatOfMelting } from '../src/core/properties/freezing.ts';
import { firstIce } from '../src/core/properties/freezing-food.ts';
import { ingredientById } from '../src/core/properties/ingredients/table.ts';
import { conductivity } from '../src/core/properties/mixture-conductivity.ts';
import type { Example, Row } from './case.ts';

const mix = (water: number, protein: number, fat: number, carbohydrate: number, ash: number): Composition => {
  const sum = water + protein + fat + carbohydrate + ash;
  return normalised({
    water: water / sum,
    protein: protein / sum,
    fat: fat / sum,
    carbohydrate: carbohydrate / sum,
    fibre: 0,
    ash: ash / sum,
  });
};
/** Lean as 77 % water, 22 % protein, 1 % ash; what water is missing is fat. An assumption, said in the story. */
const ofWater = (water: number) => {
  const lean = water / 0.77;
  return mix(water, 0.22 * lean, 1 - lean, 0, 0.01 * lean);
};
const breast = mix(74.26, 22.054, 2.568, 0, 1.117);
const mousse = mix(67.833, 12.884, 16.253, 1.204, 1.826);

/** Diffusivity of the components as the paper prints it, a + b·T + c·T² [m²/s], and where it is looked at [°C]. */
const diffusivities: readonly (readonly [Component, number, number, number, number, number?])[] = [
  ['protein', 6.8714e-8, 4.7578e-10, -1.4646e-12, 20],
  ['fat', 9.8777e-8, -1.2569e-11, -3.8286e-14, 65, -1.0246],
  ['carbohydrate', 8.0842e-8, 5.3052e-10, -2.3218e-12, 20],
  ['fibre', 7.3976e-8, 5.1902e-10, -2.2202e-12, 20],
  ['ash', 1.2461e-7, 3.7321e-10, -1.2244e-12, 20],
  ['water', 1.3168e-7, 6.2477e-10, -2.4022e-12, 20],
  ['ice', 1.1756e-6, -6.0833e-9, 9.5037e-11, -20],
];

/** Of the handbook's table, as remembered: composition in per cent, specific heat frozen, heat of freezing [kJ/kg], first ice [°C]; `by` where frozen it differs. */
const handbook: readonly (readonly [string, Composition, number, number, number | null, number?])[] = [
  ['chicken', mix(65.99, 18.6, 15.06, 0, 0.79), 3.62, 220, -2.8, -1.47],
  ['duck', mix(48.5, 11.49, 39.34, 0, 0.68), 2.45, 162, null, -0.395],
  ['turkey', mix(70.4, 20.42, 8.02, 0, 0.88), 2.28, 235, null],
  ['pork shoulder, lean', mix(72.63, 19.55, 7.14, 0, 1.02), 2.2, 243, -2.2],
  ['pork carcass', mix(49.83, 13.91, 35.07, 0, 0.72), 2.33, 166, null, -0.235],
  ['pork belly', mix(36.74, 9.34, 53.01, 0, 0.49), 2.37, 123, null, -0.337],
  ['pork backfat', mix(7.69, 2.92, 88.69, 0, 0.7), 2.98, 26, null, -1.028],
  ['ham, cured, lean', mix(68.26, 22.32, 5.71, 0.05, 3.66), 2.22, 228, null],
  ['lamb, lean', mix(73.42, 20.29, 5.25, 0, 1.06), 2.14, 245, -1.9],
  ['lamb leg, lean', mix(74.11, 20.56, 4.51, 0, 1.07), 2.14, 248, null],
  ['beef carcass', mix(58.21, 17.48, 22.55, 0, 0.82), 2.24, 194, -1.7],
  ['beef liver', mix(68.99, 20, 3.85, 5.82, 1.34), 2.16, 230, -1.7],
  ['veal, lean', mix(75.91, 20.2, 2.87, 0, 1.08), 2.09, 254, null],
  ['cod', mix(81.22, 17.81, 0.67, 0, 1.16), 2.14, 271, -2.2],
  ['egg white', mix(87.81, 10.52, 0, 1.03, 0.64), 1.81, 293, -0.6, 0.186],
  ['whole egg', mix(75.33, 12.49, 10.02, 1.22, 0.94), 1.95, 252, -0.6],
  ['egg yolk', mix(48.81, 16.76, 30.87, 1.78, 1.77), 2.25, 163, -0.6],
  ['cream, heavy', mix(57.71, 2.05, 37, 2.79, 0.45), 2.32, 193, null, -0.442],
];

const egg = mix(75.33, 12.49, 10.02, 1.22, 0.94);
/** Older tables, by water alone: [food, composition, source, specific heat above and below, heat of freezing, and by how much ours differ]. */
interface Older {
  readonly food: string;
  readonly of: Composition;
  readonly source: string;
  readonly above?: readonly [number, number];
  readonly below?: readonly [number, number];
  readonly latent?: readonly [number, number?];
}
const older: readonly Older[] = [
  {
    food: 'beef, 75 % water',
    of: ofWater(0.75),
    source: 'earle-unit-operations',
    above: [3.22, 0.41],
    below: [1.67, 0.522],
    latent: [255],
  },
  {
    food: 'lamb, 70 % water',
    of: ofWater(0.7),
    source: 'earle-unit-operations',
    below: [1.67, 0.504],
    latent: [276, -42.5],
  },
  {
    food: 'pork, 60 % water',
    of: ofWater(0.6),
    source: 'earle-unit-operations',
    below: [1.59, 0.547],
    latent: [197],
  },
  {
    food: 'eggs',
    of: egg,
    source: 'earle-unit-operations',
    above: [3.2, 0.39],
    below: [1.67, 0.368],
    latent: [276, -24.7],
  },
  {
    food: 'poultry, 74 % water',
    of: ofWater(0.74),
    source: 'geankoplis',
    below: [1.55, 0.639],
  },
  { food: 'pork, 60 % water', of: ofWater(0.6), source: 'geankoplis', below: [1.34, 0.797] },
];

const differing = (by: number | undefined, why: string) => (by === undefined ? {} : { differs: { by, why } });
const solids =
  'the older table reckons solids at 0.84 kJ/(kg K) and less; protein and fat take some 2. More heat is slower to heat, to cool and to freeze';

export const example: Example = {
  title: 'Other people’s tables of meat',
  story: `What the paper of the components prints beside what it leads to; the rest of the handbook's table, as remembered; older tables and rules of
thumb by water alone, for which we take lean as 77 % water, 22 % protein, 1 % ash, and what is left as fat; a bird's skin worked out from the bird. Older tables
take far too little heat for the solids (lamb and pork above freezing, the same in all of them, stand among the measured meats), and two of their heats of freezing are more than all the water could give.`,
  equation:
    'a = k/(ρ·cp);  L = x_w·333.6 kJ/kg;  skin = (whole − s·lean)/(1 − s);  rules: cp = 4.19·w + 0.84·(1 − w), k = 0.55·w + 0.26·(1 − w)',
  sources: [
    'choi-okos-1986',
    'ashrae-refrigeration-properties',
    'earle-unit-operations',
    'geankoplis',
    'marcotte-2008',
    'chen-marks-murphy-1999',
    'usda-sr28',
    'pham-1996',
  ],
  run() {
    const rows: Row[] = [];
    for (const [name, a, b, c, C, by] of diffusivities) {
      const printed = 1e8 * (a + b * C + c * C * C);
      rows.push({
        quantity: `${name} at ${C} °C: diffusivity, by its own printed function`,
        source: 'choi-okos-1986',
        confidence: 'secondary',
        expected: printed,
        ours: (1e8 * componentConductivity(name, C)) / (componentDensity(name, C) * componentHeat(name, C)),
        tolerance: 0.035 * printed,
        unit: '1e-8 m²/s',
        why: 'four functions fitted apart from each other do not agree to better',
        ...differing(
          by,
          'the printed function for fat hardly falls, though its conductivity does and its heat rises: the engine never uses these functions, always k/(ρ·cp)',
        ),
      });
    }
    for (const [food, composition, frozen, latent, point, by] of handbook) {
      const base = { source: 'ashrae-refrigeration-properties', confidence: 'memory' } as const;
      rows.push({
        ...base,
        quantity: `${food}: heat of freezing all its water, handbook`,
        expected: latent,
        ours: (composition.water * heatOfMelting) / 1000,
        tolerance: 3,
        unit: 'kJ/kg',
        why: 'a hundredth: the handbook rounds the water and the heat of melting',
      });
      // Five of them stand among what freezes.
      if (!['pork shoulder, lean', 'lamb, lean', 'beef carcass', 'beef liver', 'cod'].includes(food))
        rows.push({
          ...base,
          quantity: `${food}: specific heat frozen, handbook`,
          expected: frozen,
          ours: frozenHeat(composition, -40) / 1000,
          tolerance: 0.1 * frozen,
          unit: 'kJ/(kg K)',
          why: 'a tenth: the handbook does not say at which temperature',
          ...differing(
            by,
            food === 'chicken'
              ? 'as remembered far more than the handbook’s own turkey: not credible for its composition'
              : food === 'egg white'
                ? 'ours counts its bound water as unfrozen, whose heat by the component’s function is three times that of ice at −40 °C'
                : 'why is not known: fat may still be setting in the handbook’s figure, which the component’s function does not have. Beside the heat of the ice it counts for little',
          ),
        });
      if (point !== null)
        rows.push({
          ...base,
          quantity: `${food}: first ice from its composition`,
          expected: point,
          ours: firstIce(composition),
          tolerance: 1,
          unit: '°C',
          why: 'a formula from water, ash and other solids; a kelvin',
          ...differing(
            food === 'egg yolk' ? -2.85 : undefined,
            'the yolk’s water is taken to carry all its solids; a food known by its name has the handbook’s point',
          ),
        });
    }
    for (const { food, of, source, above, below, latent } of older) {
      const base = { source, confidence: 'secondary' } as const;
      const where = source === 'geankoplis' ? 'textbook' : 'older table';
      if (above !== undefined)
        rows.push({
          ...base,
          quantity: `${food}: specific heat above freezing, ${where} after an old handbook`,
          expected: above[0],
          ours: specificHeat(of, 10) / 1000,
          tolerance: 0.05 * above[0],
          unit: 'kJ/(kg K)',
          why: 'its fat is our guess: a twentieth',
          ...differing(above[1], solids),
        });
      if (below !== undefined)
        rows.push({
          ...base,
          quantity: `${food}: specific heat frozen, ${where}`,
          expected: below[0],
          ours: frozenHeat(of, -40) / 1000,
          tolerance: 0.1 * below[0],
          unit: 'kJ/(kg K)',
          why: 'a tenth',
          ...differing(below[1], solids),
        });
      if (latent !== undefined)
        rows.push({
          ...base,
          quantity: `${food}: heat of freezing, ${where}`,
          expected: latent[0],
          ours: (of.water * heatOfMelting) / 1000,
          tolerance: 6,
          unit: 'kJ/kg',
          why: 'printed to some 2 %',
          ...differing(
            latent[1],
            'more than all of its water gives at 333.6 kJ/kg; the print cannot be right',
          ),
        });
    }
    for (const water of [0.6, 0.7, 0.75])
      rows.push({
        quantity: `meat of ${100 * water} % water: conductivity by the rule of thumb`,
        source: 'earle-unit-operations',
        confidence: 'secondary',
        expected: 0.55 * water + 0.26 * (1 - water),
        ours: conductivity(ofWater(water), 20),
        tolerance: 0.1 * (0.55 * water + 0.26 * (1 - water)),
        unit: 'W/(m K)',
        why: 'a rule for any food: a tenth',
      });
    rows.push(
      {
        quantity: 'meat of 75 % water: specific heat by the rule of thumb',
        source: 'earle-unit-operations',
        confidence: 'secondary',
        expected: 4.19 * 0.75 + 0.84 * 0.25,
        ours: specificHeat(ofWater(0.75), 10) / 1000,
        tolerance: 0.17,
        unit: 'kJ/(kg K)',
        why: 'a twentieth',
        differs: { by: 0.275, why: solids },
      },
      {
        quantity: 'how much less dense a mousse is at 80 than at 20 °C, its setting included',
        source: 'marcotte-2008',
        confidence: 'secondary',
        expected: 50,
        ours: density(mousse, 20) - density(mousse, 80),
        tolerance: 10,
        unit: 'kg/m³',
        why: 'printed as about',
        differs: {
          by: -26,
          why: 'the components swell by heat only, an emulsion also as it sets. A cook holds the density of the start, so that neither changes its mass',
        },
      },
      {
        quantity: 'chicken patty at 25 °C: specific heat (breast)',
        source: 'chen-marks-murphy-1999',
        confidence: 'secondary',
        expected: (3017.2 + 2.05 * 25 + 0.24 * 25 ** 2 + 0.002 * 25 ** 3) / 1000,
        ours: specificHeat(breast, 25) / 1000,
        tolerance: 0.16,
        unit: 'kJ/(kg K)',
        why: 'a twentieth',
        differs: {
          by: 0.366,
          why: 'the patties’ water is not given, and the equation, read in a description of the model, passes 4.4 by 60 °C with the heat of what sets in it. More heat is slower, which is the safe side of heating',
        },
      },
    );
    const skin = ingredientById('duck-skin-with-its-fat-raw')?.nutrients;
    // 137 g of meat in 287 g of meat with skin; rows 05139 and 05141.
    const share = 137 / 287;
    for (const [part, whole, lean] of [
      ['water', 48.5, 73.77],
      ['protein', 11.49, 18.28],
      ['fat', 39.34, 5.95],
    ] as const)
      rows.push({
        quantity: `duck skin with its fat, by difference: ${part}`,
        source: 'usda-sr28',
        confidence: 'computed',
        expected: (whole - share * lean) / (1 - share),
        ours: 100 * (skin?.[part] ?? Number.NaN),
        tolerance: 0.002,
        unit: '%',
        why: 'kept to a thousandth of a per cent',
      });
    return rows;
  },
};
