/** What every dish comes to, read and reckoned when it is asked: a price that changed shows everywhere at once. */
import { mixOutcome } from '../contract/dish-as-ingredient.ts';
import { numbersOf, type WholeDish } from '../contract/dish-numbers.ts';
import { methodWeights } from '../contract/method-weights.ts';
import type { DishNumbers } from '../contract/pantry-answer.ts';
import { type App, kitchenOf, look } from './app.ts';
import { dayIn } from './civil-day.ts';
import { readIngredients } from './ingredients.ts';
import { type CountedVersion, countedVersions } from './pantry.ts';
import { readParts } from './pantry-parts.ts';
import { tableFood } from './pantry-table.ts';

function wholeDish({ method, ...v }: CountedVersion): WholeDish {
  const mix = mixOutcome(v, method);
  const weights = methodWeights(v, method);
  const known = weights.losses.every((l) => l.known);
  return {
    dishId: v.dishId,
    name: v.name,
    versionId: v.versionId,
    number: v.number,
    signed: v.signed,
    species: v.species,
    mix: mix === null ? null : { id: v.dishId, ...v, ...mix },
    bought: method.flatMap((step) =>
      step.kind === 'trim' && step.weightG > 0
        ? [{ name: step.part, of: step.of ?? null, g: step.weightG }]
        : [],
    ),
    weightG: known && weights.mass.usual > 0 ? 1000 * weights.mass.usual : null,
    portions: known && weights.portions !== null ? weights.portions.usual : null,
  };
}

export const dishNumbers = (app: App, kitchenId: string): Promise<DishNumbers[]> =>
  look(app, async (db) => {
    const day = dayIn((await kitchenOf(db, kitchenId)).zone, app.now());
    const ingredients = await readIngredients(db, kitchenId, day);
    const parts = await readParts(db, kitchenId, day);
    const dishes = (await countedVersions(db, kitchenId)).map(wholeDish);
    return numbersOf({ ingredients, parts, dishes: dishes.flatMap((d) => d.mix ?? []) }, dishes, tableFood);
  });
