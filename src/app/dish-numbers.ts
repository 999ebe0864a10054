/** What every dish comes to, read and reckoned when it is asked: a price that changed shows everywhere at once. */
import { numbersOf } from '../contract/dish-numbers.ts';
import type { DishNumbers } from '../contract/pantry-answer.ts';
import { type App, kitchenOf, look } from './app.ts';
import { dayIn } from './civil-day.ts';
import { countedDishes } from './counted-dishes.ts';
import { readIngredients } from './ingredients.ts';
import { readParts } from './pantry-parts.ts';
import { tableFood } from './pantry-table.ts';

export const dishNumbers = (app: App, kitchenId: string): Promise<DishNumbers[]> =>
  look(app, async (db) => {
    const day = dayIn((await kitchenOf(db, kitchenId)).zone, app.now());
    const ingredients = await readIngredients(db, kitchenId, day);
    const parts = await readParts(db, kitchenId, day);
    const dishes = await countedDishes(app, db, kitchenId);
    return numbersOf({ ingredients, parts, dishes: dishes.flatMap((d) => d.mix ?? []) }, dishes, tableFood);
  });
