/** The table of ingredients: every row, in the order of its groups. Large: a screen loads it when it is asked for. */
import type { Nutrients } from '../food.ts';
import { nutrients as keys } from '../food.ts';
import type { Ingredient, MeatSpecies } from './ingredient.ts';
import { beef } from './published/beef.ts';
import { chicken } from './published/chicken.ts';
import { dairyEggs } from './published/dairy-eggs.ts';
import { drinks } from './published/drinks.ts';
import { fish } from './published/fish.ts';
import { fruit } from './published/fruit.ts';
import { game } from './published/game.ts';
import { gameBirds } from './published/game-birds.ts';
import { herbs } from './published/herbs.ts';
import { lamb } from './published/lamb.ts';
import { nutsPulses } from './published/nuts-pulses.ts';
import { oils } from './published/oils.ts';
import { pork } from './published/pork.ts';
import { seasonings } from './published/seasonings.ts';
import { spices } from './published/spices.ts';
import { starch } from './published/starch.ts';
import { sugarBaking } from './published/sugar-baking.ts';
import { turkey } from './published/turkey.ts';
import { vegetables } from './published/vegetables.ts';
import { waterfowl } from './published/waterfowl.ts';
import type { Group } from './rows.ts';
import { definedRows, publishedRows, standInRows, unknownRows } from './rows.ts';
import { defined, standIns, unknowns } from './unpublished.ts';

const groups: readonly (readonly [Group, string])[] = [
  [{ name: 'duck and goose', from: 'animal' }, waterfowl],
  [{ name: 'game birds and other small birds', from: 'animal' }, gameBirds],
  [{ name: 'chicken', from: 'animal' }, chicken],
  [{ name: 'turkey', from: 'animal' }, turkey],
  [{ name: 'pork', from: 'animal' }, pork],
  [{ name: 'lamb and mutton', from: 'animal' }, lamb],
  [{ name: 'beef and veal', from: 'animal' }, beef],
  [{ name: 'furred game and rabbit', from: 'animal' }, game],
  [{ name: 'fish and shellfish', from: 'animal' }, fish],
  [{ name: 'dairy and eggs', from: 'animal' }, dairyEggs],
  [{ name: 'flour, grain and bread', from: 'plant' }, starch],
  [{ name: 'sugar, setting and raising', from: 'plant' }, sugarBaking],
  [{ name: 'nuts, seeds and pulses', from: 'plant' }, nutsPulses],
  [{ name: 'vegetables and mushrooms', from: 'plant' }, vegetables],
  [{ name: 'fruit', from: 'plant' }, fruit],
  [{ name: 'herbs', from: 'plant' }, herbs],
  [{ name: 'spices', from: 'plant' }, spices],
  [{ name: 'salt, vinegar, mustard and sauces', from: 'plant', mayHoldAlcohol: true }, seasonings],
  [{ name: 'oils', from: 'plant' }, oils],
  [{ name: 'water, stock, wine and spirits', from: 'plant', mayHoldAlcohol: true }, drinks],
];

const published = groups.flatMap(([group, text]) => publishedRows(group, text));
const found = new Map<string, Ingredient>(published.map((row) => [row.id, row]));

function known(id: string): Ingredient {
  const row = found.get(id);
  if (row === undefined) throw new RangeError(`no row ${id} in the table of ingredients`);
  return row;
}

/**
 * What is left of a bird without its lean: skin = (whole − s·lean)/(1 − s), s being the lean in a part of the whole, from
 * the weights that the source gives for both. What comes out below nothing is nothing.
 */
function skinOf(
  species: MeatSpecies,
  wholeId: string,
  leanId: string,
  leanG: number,
  wholeG: number,
): Ingredient {
  const whole = known(wholeId);
  const lean = known(leanId);
  const s = leanG / wholeG;
  const left = (a: number, b: number) => Math.max(0, (a - s * b) / (1 - s));
  const rest = (a: number | null, b: number | null, digits: number) =>
    a === null || b === null ? null : Math.round(left(a, b) * digits) / digits;
  const nutrients = Object.fromEntries(
    keys.map((key) => [key, rest(whole.nutrients[key], lean.nutrients[key], 1e5)]),
  ) as unknown as Nutrients;
  const kcal = rest(whole.energy?.kcal ?? null, lean.energy?.kcal ?? null, 1);
  return {
    ...whole,
    id: `${species}-skin-with-its-fat-raw`,
    name: `${species} skin with its fat, raw`,
    also: [`${species} skin`, `skin of ${species}`],
    nutrients,
    carbohydrateWithFibre: nutrients.carbohydrate,
    taken0: [...new Set([...whole.taken0, ...lean.taken0])],
    energy: kcal === null ? null : { kcal, kJ: Math.round(kcal * 4.184) },
    refuse: null,
    had: 'derived',
    row: null,
    confidence: 'computed',
    equation: `(row ${whole.row} − ${s.toFixed(4)} · row ${lean.row}) / ${(1 - s).toFixed(4)}: ${leanG} g of meat in ${wholeG} g of meat with skin`,
    measures: {},
    animal: { species, kind: 'skin' },
    labelName: `${species} skin`,
    note: 'by difference: skin and the fat that comes off with it',
  };
}

const derived = [
  skinOf('duck', 'duck-meat-with-skin-raw', 'duck-meat-only-raw', 137, 287),
  skinOf('goose', 'goose-meat-with-skin-raw', 'goose-meat-only-raw', 185, 320),
];

/** Double cream: the same cream with less of what is not fat. */
function richer(): Ingredient {
  const cream = known('whipping-cream-36-fat');
  const fat = 0.48;
  const scale = (1 - fat) / (1 - cream.nutrients.fat!);
  const other = (value: number | null) => (value === null ? null : Math.round(value * scale * 1e5) / 1e5);
  const kcal = Math.round(100 * (fat * 8.79 + (other(0.0284)! * 4.27 + other(0.0274)! * 3.87)));
  return {
    ...cream,
    id: 'double-cream-48-fat',
    name: 'double cream, 48 % fat',
    labelName: 'double cream',
    also: ['double cream', 'thick cream'],
    nutrients: {
      ...(Object.fromEntries(keys.map((key) => [key, other(cream.nutrients[key])])) as unknown as Nutrients),
      fat,
      saturates: Math.round(((fat * cream.nutrients.saturates!) / cream.nutrients.fat!) * 1e5) / 1e5,
    },
    carbohydrateWithFibre: other(cream.carbohydrateWithFibre),
    energy: { kcal, kJ: Math.round(kcal * 4.184) },
    had: 'derived',
    row: null,
    confidence: 'computed',
    equation: `fat 0.48; everything else row ${cream.row} × (1 − 0.48)/(1 − ${cream.nutrients.fat})`,
    note: 'reckoned for 48 % fat, the least that double cream has in Britain (from memory); a carton says its own',
  };
}

for (const row of [...derived, richer()]) found.set(row.id, row);
for (const row of [
  ...standInRows('what another row stands in for', standIns, known),
  ...definedRows('pure substances', defined),
  ...unknownRows('without a published composition', unknowns),
])
  found.set(row.id, row);

/** Every row of the table. */
export const ingredients: readonly Ingredient[] = [...found.values()];

/**
 * A row of the table by its id, as mass fractions [kg/kg]; undefined where there is none.
 * @example ingredientById('goose-liver-raw').nutrients.protein // → 0.1637
 * Source: usda-sr28
 */
export const ingredientById = (id: string): Ingredient | undefined => found.get(id);
