/** Ingredients of the demo kitchen. Each rests on a row of the published table; packs and prices are invented. */
import type { DemoIngredient } from '../src/app/demo-shape.ts';
import type { Composition } from '../src/contract/quantities.ts';
import type { MixLine } from '../src/contract/steps.ts';
import type { Ingredient } from '../src/core/properties/ingredients/ingredient.ts';
import { ingredientById } from '../src/core/properties/ingredients/table.ts';
import { rounded } from './composition.ts';

function rowOf(tableId: string): Ingredient {
  const row = ingredientById(tableId);
  if (row === undefined) throw new RangeError(`the table of ingredients has no row ${tableId}`);
  return row;
}

/** `why`: what the row is used in place of, where that is another thing. */
const unpriced = (
  name: string,
  tableId: string,
  why = '',
): DemoIngredient & { readonly tableId: string } => ({
  name,
  tableId: rowOf(tableId).id,
  source: why,
});

/** A pack of so many grams for so many pence. */
const food = (name: string, tableId: string, price: number, packG: number, why = '') => ({
  ...unpriced(name, tableId, why),
  price: { packG, price, note: 'Invented.' },
});

export const ingredients: readonly (DemoIngredient & { readonly tableId: string })[] = [
  // Pig.
  food('Trotter skin, softened', 'pigs-trotter-skin-softened', 150, 1000),
  food('Hock meat', 'pork-hock-raw', 420, 1000),
  food('Pig’s ear', 'pigs-ear-raw', 220, 1000),
  food('Pig’s head meat', 'pigs-head-meat-raw', 260, 1000),
  food('Pig’s tongue', 'pigs-tongue-raw', 380, 1000),
  food('Simmered trotter, picked', 'pigs-trotter-simmered', 150, 1000),
  food('Back fat', 'pork-back-fat-raw', 240, 1000),
  food('Pig’s blood', 'pigs-blood', 180, 1000),
  // Goose.
  food('Goose neck skin', 'turkey-skin-raw', 300, 1000, 'turkey skin stands for goose neck skin'),
  food('Goose meat', 'goose-meat-only-raw', 1450, 1000),
  food('Goose liver', 'goose-liver-raw', 900, 1000),
  food('Goose gizzard', 'goose-gizzard-raw', 480, 1000),
  food('Goose fat', 'goose-fat-rendered', 700, 1000),
  // Lamb.
  food('Lamb’s heart', 'lambs-heart-raw', 520, 1000),
  food('Minced lamb', 'lamb-mince-raw', 880, 1000),
  // What binds, carries and seasons.
  food('Egg white', 'egg-white-raw', 650, 1000),
  food('Whipping cream, 36 % fat', 'whipping-cream-36-fat', 2600, 5000),
  food('Chestnuts, steamed and peeled', 'chestnuts-peeled-boiled', 640, 400),
  food('Onion', 'onion-raw', 650, 5000),
  food('Shallot', 'shallot-raw', 380, 1000),
  food('Carrot', 'carrot-raw', 600, 5000),
  food('Leek', 'leek-raw', 240, 1000),
  food('Celery', 'celery-raw', 126, 600),
  food('Parsley', 'parsley-fresh', 110, 100),
  food('Garlic', 'garlic-raw', 155, 250),
  food('Pinhead oats', 'pinhead-oatmeal', 950, 5000),
  food('White breadcrumbs', 'white-bread', 260, 1000),
  food('Prunes, stoned', 'prunes', 900, 1000),
  food('Apple brandy', 'apple-brandy', 1862, 665),
  food('Cider vinegar', 'cider-vinegar', 1616, 5050),
  food('Salt', 'salt', 150, 2500),
  food('Sugar', 'white-sugar', 550, 5000),
  food('Black pepper', 'black-pepper-ground', 950, 500),
  food('Thyme, dried', 'thyme-dried', 240, 100),
  food('Sage, rubbed', 'sage-dried', 260, 100),
  food('Allspice, ground', 'allspice-ground', 575, 250),
  food('Juniper berries', 'juniper-berries', 800, 250),
  unpriced(
    'Strained stock',
    'chicken-stock',
    'published chicken stock stands for the strained goose stock; its bones are in its cost',
  ),
];

/** The six components that the engine of the cook knows, of the row; null where nothing is published. */
function sixOf({ nutrients: n, carbohydrateWithFibre }: Ingredient): Composition | null {
  if (n.water === null || n.protein === null || n.fat === null || n.ash === null) return null;
  const carbohydrate = n.carbohydrate ?? carbohydrateWithFibre;
  if (carbohydrate === null) return null;
  return rounded({
    // The engine knows no alcohol: it is counted as water.
    water: n.water + (n.alcohol ?? 0),
    protein: n.protein,
    fat: n.fat,
    carbohydrate,
    fibre: n.fibre ?? 0,
    ash: n.ash,
  });
}

/** The ingredient of that name; a typing mistake in the demo must not pass. */
export function ingredient(name: string): {
  readonly composition: Composition | null;
  readonly row: Ingredient;
} {
  const found = ingredients.find((row) => row.name === name);
  if (found === undefined) throw new RangeError(`the demo kitchen has no ingredient ${JSON.stringify(name)}`);
  const row = rowOf(found.tableId);
  return { composition: sixOf(row), row };
}

/** A line of a mix by weight, with what its row says of it; its price is the pantry's. */
export function line(name: string, g: number): MixLine {
  const { composition, row } = ingredient(name);
  return {
    ingredient: name,
    g,
    ...(composition === null ? {} : { composition }),
    ...(row.nutrients.salt === null ? {} : { salt: row.nutrients.salt }),
    ...(row.allergens === null
      ? {}
      : { allergens: row.allergens.filter((a) => a.checkLabel !== true).map((a) => a.allergen) }),
  };
}
