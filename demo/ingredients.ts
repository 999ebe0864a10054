/** Ingredients of the demo kitchen. Compositions are published (see composition.ts); prices are invented. */

import type { DemoIngredient } from '../src/app/demo-shape.ts';
import type { Composition } from '../src/contract/quantities.ts';
import type { MixLine } from '../src/contract/steps.ts';
import type { Allergen } from '../src/core/filling/food.ts';
import { type Published, sr28 } from './composition.ts';

interface Row extends DemoIngredient {
  readonly composition: Composition | null;
  readonly salt: number | null;
  readonly pricePerKg: number;
  readonly words: readonly Allergen[];
}

/** Salt as a fraction of the weight, from the sodium that the same row publishes: NaCl holds 39.34 % sodium by weight. */
const saltOf = (sodiumMgPer100g: number) => Math.round((sodiumMgPer100g / 1e5 / 0.3934) * 1e5) / 1e5;

function food(
  name: string,
  published: Published,
  sodiumMgPer100g: number | null,
  pricePerKg: number,
  words: readonly Allergen[] = [],
): Row {
  const salt = sodiumMgPer100g === null ? null : saltOf(sodiumMgPer100g);
  return {
    name,
    composition: published.composition,
    salt,
    pricePerKg,
    words,
    nutrients: { ...published.composition, ...(salt === null ? {} : { salt }) },
    source: published.source,
    allergens: words.map((allergen) => ({ allergen })),
    price: { packG: 1_000, price: pricePerKg },
  };
}

function unknown(name: string, why: string, pricePerKg: number, words: readonly Allergen[] = []): Row {
  return {
    name,
    composition: null,
    salt: null,
    pricePerKg,
    words,
    source: why,
    allergens: words.map((allergen) => ({ allergen })),
    price: { packG: 1_000, price: pricePerKg },
  };
}

export const ingredients: readonly Row[] = [
  // Pig.
  food(
    'Trotter skin, softened',
    sr28(
      '10173',
      { water: 62.85, protein: 21.94, fat: 16.05, carbohydrate: 0, ash: 0.66 },
      'simmered feet without bone stand for softened skin',
    ),
    73,
    150,
  ),
  food(
    'Hock meat',
    sr28(
      '10074',
      { water: 68.34, protein: 18.71, fat: 12.51, carbohydrate: 0, ash: 0.98 },
      'arm picnic stands for hock',
    ),
    84,
    420,
  ),
  food(
    'Pig’s ear',
    sr28('10100', { water: 61.25, protein: 22.45, fat: 15.1, carbohydrate: 0.6, ash: 0.6 }),
    191,
    220,
  ),
  food(
    'Pig’s head meat',
    sr28(
      '10074',
      { water: 68.34, protein: 18.71, fat: 12.51, carbohydrate: 0, ash: 0.98 },
      'arm picnic stands for lean head meat',
    ),
    84,
    260,
  ),
  food(
    'Pig’s tongue',
    sr28('10121', { water: 65.9, protein: 16.3, fat: 17.2, carbohydrate: 0, ash: 0.9 }),
    110,
    380,
  ),
  food(
    'Simmered trotter, picked',
    sr28('10173', { water: 62.85, protein: 21.94, fat: 16.05, carbohydrate: 0, ash: 0.66 }),
    73,
    150,
  ),
  food(
    'Back fat',
    sr28('10004', { water: 7.69, protein: 2.92, fat: 88.69, carbohydrate: 0, ash: 0.7 }),
    11,
    240,
  ),
  unknown('Pig’s blood', 'No published composition of fresh pig’s blood at hand.', 180),

  // Goose.
  food(
    'Goose neck skin',
    sr28(
      '05169',
      { water: 48.38, protein: 12.96, fat: 38.93, carbohydrate: 0.16, ash: 0.52 },
      'turkey skin stands for goose neck skin',
    ),
    62,
    300,
  ),
  food(
    'Goose meat',
    sr28('05148', { water: 68.3, protein: 22.75, fat: 7.13, carbohydrate: 0, ash: 1.1 }),
    87,
    1450,
  ),
  food(
    'Goose liver',
    sr28('05150', { water: 71.78, protein: 16.37, fat: 4.28, carbohydrate: 6.32, ash: 1.25 }),
    140,
    900,
  ),
  food(
    'Goose gizzard',
    sr28(
      '05173',
      { water: 77.47, protein: 18.8, fat: 3.37, carbohydrate: 0, ash: 0.93 },
      'turkey gizzard stands for goose gizzard',
    ),
    147,
    480,
  ),
  food('Goose fat', sr28('04576', { water: 0.2, protein: 0, fat: 99.8, carbohydrate: 0, ash: 0 }), 0, 700),

  // Lamb.
  food(
    'Lamb’s heart',
    sr28('17191', { water: 76.71, protein: 16.47, fat: 5.68, carbohydrate: 0.21, ash: 0.93 }),
    89,
    520,
  ),
  food(
    'Minced lamb',
    sr28('17224', { water: 59.47, protein: 16.56, fat: 23.41, carbohydrate: 0, ash: 0.87 }),
    59,
    880,
  ),

  // What binds, carries and seasons.
  food(
    'Egg white',
    sr28('01124', { water: 87.57, protein: 10.9, fat: 0.17, carbohydrate: 0.73, ash: 0.63 }),
    166,
    650,
    ['eggs'],
  ),
  food(
    'Whipping cream, 36 % fat',
    sr28('01053', { water: 57.81, protein: 2.84, fat: 36.08, carbohydrate: 2.74, ash: 0.53 }),
    27,
    520,
    ['milk'],
  ),
  food(
    'Chestnuts, steamed and peeled',
    sr28('12101', { water: 68.15, protein: 2, fat: 1.38, carbohydrate: 27.76, ash: 0.71 }),
    27,
    1600,
  ),
  food(
    'Onion',
    sr28('11282', { water: 89.11, protein: 1.1, fat: 0.1, carbohydrate: 9.34, fibre: 1.7, ash: 0.35 }),
    4,
    130,
  ),
  food(
    'Shallot',
    sr28('11677', { water: 79.8, protein: 2.5, fat: 0.1, carbohydrate: 16.8, fibre: 3.2, ash: 0.8 }),
    12,
    380,
  ),
  food(
    'Carrot',
    sr28('11124', { water: 88.29, protein: 0.93, fat: 0.24, carbohydrate: 9.58, fibre: 2.8, ash: 0.97 }),
    69,
    120,
  ),
  food(
    'Leek',
    sr28('11246', { water: 83, protein: 1.5, fat: 0.3, carbohydrate: 14.15, fibre: 1.8, ash: 1.05 }),
    20,
    240,
  ),
  food(
    'Celery',
    sr28('11143', { water: 95.43, protein: 0.69, fat: 0.17, carbohydrate: 2.97, fibre: 1.6, ash: 0.75 }),
    80,
    210,
    ['celery'],
  ),
  food(
    'Parsley',
    sr28('11297', { water: 87.71, protein: 2.97, fat: 0.79, carbohydrate: 6.33, fibre: 3.3, ash: 2.2 }),
    56,
    1100,
  ),
  food(
    'Garlic',
    sr28('11215', { water: 58.58, protein: 6.36, fat: 0.5, carbohydrate: 33.06, fibre: 2.1, ash: 1.5 }),
    17,
    620,
  ),
  food(
    'Pinhead oats',
    sr28(
      '08120',
      { water: 10.84, protein: 13.15, fat: 6.52, carbohydrate: 67.7, fibre: 10.1, ash: 1.77 },
      'rolled oats stand for pinhead',
    ),
    6,
    190,
    ['gluten'],
  ),
  food(
    'White breadcrumbs',
    sr28('18069', { water: 36.42, protein: 8.85, fat: 3.33, carbohydrate: 49.42, fibre: 2.7, ash: 1.98 }),
    490,
    260,
    ['gluten'],
  ),
  food(
    'Prunes, stoned',
    sr28('09291', { water: 30.92, protein: 2.18, fat: 0.38, carbohydrate: 63.88, fibre: 7.1, ash: 2.64 }),
    2,
    900,
  ),
  food(
    'Apple brandy',
    sr28(
      '14550',
      { water: 63.9, protein: 0, fat: 0, carbohydrate: 0.1, ash: 0, alcohol: 36 },
      '43 % spirits stand for apple brandy',
    ),
    1,
    2800,
  ),
  food(
    'Cider vinegar',
    sr28('02048', { water: 93.81, protein: 0, fat: 0, carbohydrate: 0.93, ash: 0.17 }),
    5,
    320,
  ),
  food('Salt', sr28('02047', { water: 0.2, protein: 0, fat: 0, carbohydrate: 0, ash: 99.8 }), 38758, 60),
  food('Sugar', sr28('19335', { water: 0.02, protein: 0, fat: 0, carbohydrate: 99.98, ash: 0.01 }), 1, 110),
  food(
    'Black pepper',
    sr28('02030', { water: 12.46, protein: 10.39, fat: 3.26, carbohydrate: 63.95, fibre: 25.3, ash: 4.49 }),
    20,
    1900,
  ),
  food(
    'Thyme, dried',
    sr28('02042', { water: 7.79, protein: 9.11, fat: 7.43, carbohydrate: 63.94, fibre: 37, ash: 11.74 }),
    55,
    2400,
  ),
  food(
    'Sage, rubbed',
    sr28('02038', { water: 7.96, protein: 10.63, fat: 12.75, carbohydrate: 60.73, fibre: 40.3, ash: 7.95 }),
    11,
    2600,
  ),
  food(
    'Allspice, ground',
    sr28('02001', { water: 8.46, protein: 6.09, fat: 8.69, carbohydrate: 72.12, fibre: 21.6, ash: 4.65 }),
    77,
    2300,
  ),
  unknown('Juniper berries', 'No published composition at hand; a few grams.', 3200),
];

/** The ingredient of that name; a typing mistake in the demo must not pass. */
export function ingredient(name: string): Row {
  const found = ingredients.find((row) => row.name === name);
  if (found === undefined) throw new RangeError(`the demo kitchen has no ingredient ${JSON.stringify(name)}`);
  return found;
}

/** A line of a mix by weight, with what the ingredient's own row says of it. */
export function line(name: string, g: number): MixLine {
  const row = ingredient(name);
  return {
    ingredient: name,
    g,
    ...(row.composition === null ? {} : { composition: row.composition }),
    ...(row.salt === null ? {} : { salt: row.salt }),
    pricePerKg: row.pricePerKg,
    allergens: [...row.words],
  };
}
