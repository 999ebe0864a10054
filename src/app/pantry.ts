/** The whole pantry as it stands today, read at one moment. */
import type { Pantry } from '../contract/pantry-answer.ts';
import { type App, kitchenOf, look } from './app.ts';
import { dayIn } from './civil-day.ts';
import { countedDishes } from './counted-dishes.ts';
import { readIngredients } from './ingredients.ts';
import { ratesOn, readRates } from './kitchen-rates.ts';
import { readRisks } from './labels-and-risks.ts';
import { readParts } from './pantry-parts.ts';

export const pantry = (app: App, kitchenId: string): Promise<Pantry> =>
  look(app, async (db) => {
    const day = dayIn((await kitchenOf(db, kitchenId)).zone, app.now());
    const ratesHistory = await readRates(db, kitchenId);
    return {
      day,
      ingredients: await readIngredients(db, kitchenId, day),
      parts: await readParts(db, kitchenId, day),
      dishes: (await countedDishes(app, db, kitchenId)).flatMap((d) => d.mix ?? []),
      rates: ratesOn(ratesHistory, day),
      ratesHistory,
      risks: await readRisks(db, kitchenId),
    };
  });
