/** The whole pantry as it stands today, read at one moment. */
import { asc, desc, eq, sql } from 'drizzle-orm';
import { mixOutcome } from '../contract/dish-as-ingredient.ts';
import type { Pantry, PantryDish } from '../contract/pantry-answer.ts';
import type { Method } from '../contract/steps.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type App, kitchenOf, look } from './app.ts';
import { dayIn } from './civil-day.ts';
import { readIngredients } from './ingredients.ts';
import { ratesOn, readRates } from './kitchen-rates.ts';
import { readRisks } from './labels-and-risks.ts';
import { readParts } from './pantry-parts.ts';

export interface CountedVersion {
  readonly dishId: string;
  readonly name: string;
  readonly species: string;
  readonly part: string;
  readonly versionId: string;
  readonly number: number;
  readonly signed: boolean;
  readonly method: Method;
}

/** Of every dish the version that counts: the newest signed one; where none is signed, the newest. */
export async function countedVersions(db: Db, kitchenId: string): Promise<CountedVersion[]> {
  const dishes = await db
    .select()
    .from(t.dish)
    .where(eq(t.dish.kitchenId, kitchenId))
    .orderBy(asc(t.dish.createdAt), asc(t.dish.id));
  const versions = await db
    .selectDistinctOn([t.version.dishId], {
      id: t.version.id,
      dishId: t.version.dishId,
      number: t.version.number,
      status: t.version.status,
      method: t.version.method,
    })
    .from(t.version)
    .where(eq(t.version.kitchenId, kitchenId))
    .orderBy(asc(t.version.dishId), desc(sql`${t.version.status} = 'signed'`), desc(t.version.number));
  const of = new Map(versions.map((v) => [v.dishId, v]));
  return dishes.flatMap(({ id, name, species, part }) => {
    const v = of.get(id);
    if (v === undefined) return [];
    const signed = v.status === 'signed';
    return [
      {
        dishId: id,
        name,
        species,
        part,
        versionId: v.id,
        number: v.number,
        signed,
        method: v.method as Method,
      },
    ];
  });
}

export const asPantryDish = ({ dishId, method, ...v }: CountedVersion): PantryDish | null => {
  const outcome = mixOutcome(v, method);
  return outcome === null ? null : { id: dishId, ...v, ...outcome };
};

export const pantry = (app: App, kitchenId: string): Promise<Pantry> =>
  look(app, async (db) => {
    const day = dayIn((await kitchenOf(db, kitchenId)).zone, app.now());
    const ratesHistory = await readRates(db, kitchenId);
    return {
      day,
      ingredients: await readIngredients(db, kitchenId, day),
      parts: await readParts(db, kitchenId, day),
      dishes: (await countedVersions(db, kitchenId)).flatMap((v) => asPantryDish(v) ?? []),
      rates: ratesOn(ratesHistory, day),
      ratesHistory,
      risks: await readRisks(db, kitchenId),
    };
  });
