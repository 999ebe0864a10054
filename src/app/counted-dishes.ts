/** Of every dish the version that counts, as what it gives to others and as itself. */
import { asc, desc, eq, inArray, sql } from 'drizzle-orm';
import { type MixOutcome, mixOutcome } from '../contract/dish-as-ingredient.ts';
import type { WholeDish } from '../contract/dish-numbers.ts';
import { type DishWeights, methodWeights } from '../contract/method-weights.ts';
import type { Method } from '../contract/steps.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import type { App } from './app.ts';

interface Counted {
  readonly dishId: string;
  readonly name: string;
  readonly species: string;
  readonly part: string;
  readonly versionId: string;
  readonly number: number;
  readonly signed: boolean;
}

function wholeDish(v: Counted, method: Method): WholeDish {
  const mix = mixOutcome(v, method);
  const weights = methodWeights(v, method);
  const known = weights.losses.every((l) => l.known);
  const { dishId, name, species, part, versionId, number, signed } = v;
  return {
    dishId,
    name,
    versionId,
    number,
    signed,
    species,
    mix: mix === null ? null : { id: dishId, name, species, part, versionId, number, signed, ...mix },
    bought: method.flatMap((step) =>
      step.kind === 'trim' && step.weightG > 0
        ? [{ name: step.part, of: step.of ?? null, g: step.weightG }]
        : [],
    ),
    weightG: weightOf(mix, weights, known),
    portions: known && weights.portions !== null ? weights.portions.usual : null,
  };
}

/** In pieces, what the pieces weigh; else what comes of the mix: bones that stay in the sieve are no stock. Null: not known. */
function weightOf(mix: MixOutcome | null, weights: DishWeights, known: boolean): number | null {
  if (mix !== null && weights.pieces === null)
    return mix.lossNotSaid.length > 0
      ? null
      : (mix.yieldPct / 100) * mix.lines.reduce((sum, l) => sum + (l.g * (l.reduced?.toPct ?? 100)) / 100, 0);
  return known && weights.mass.usual > 0 ? 1000 * weights.mass.usual : null;
}

/**
 * A version as it was saved so many times, signed or not, has one method and never another: what was read of it is kept,
 * so that a price that changes does not read every method again. Prices are in none of it.
 */
const kept = new Map<string, WholeDish>();
const mostKept = 10_000;
const atOnce = 500;

/** The newest signed version; where none is signed, the newest. */
export async function countedDishes(app: App, db: Db, kitchenId: string): Promise<WholeDish[]> {
  const dishes = await db
    .select({ id: t.dish.id, name: t.dish.name, species: t.dish.species, part: t.dish.part })
    .from(t.dish)
    .where(eq(t.dish.kitchenId, kitchenId))
    .orderBy(asc(t.dish.createdAt), asc(t.dish.id));
  const versions = await db
    .selectDistinctOn([t.version.dishId], {
      id: t.version.id,
      dishId: t.version.dishId,
      number: t.version.number,
      rev: t.version.rev,
      status: t.version.status,
    })
    .from(t.version)
    .where(eq(t.version.kitchenId, kitchenId))
    .orderBy(asc(t.version.dishId), desc(sql`${t.version.status} = 'signed'`), desc(t.version.number));
  const of = new Map(versions.map((v) => [v.dishId, v]));
  const counted = dishes.flatMap(({ id, name, species, part }) => {
    const v = of.get(id);
    if (v === undefined) return [];
    const signed = v.status === 'signed';
    const dish: Counted = { dishId: id, name, species, part, versionId: v.id, number: v.number, signed };
    return [{ dish, key: JSON.stringify([v.id, v.rev, signed, name, species, part]) }];
  });
  // What is read inside a change may be taken back with it.
  const mayKeep = app.within === undefined;
  const missing = counted.filter((c) => !(mayKeep && kept.has(c.key)));
  const read = new Map<string, WholeDish>();
  for (let i = 0; i < missing.length; i += atOnce) {
    const some = missing.slice(i, i + atOnce);
    const ids = some.map((c) => c.dish.versionId);
    const rows = await db
      .select({ id: t.version.id, method: t.version.method })
      .from(t.version)
      .where(inArray(t.version.id, ids));
    const methods = new Map(rows.map((r) => [r.id, r.method as Method]));
    for (const { dish, key } of some) {
      const method = methods.get(dish.versionId);
      if (method !== undefined) read.set(key, wholeDish(dish, method));
    }
  }
  const answer = counted.flatMap(({ key }) => read.get(key) ?? kept.get(key) ?? []);
  if (mayKeep) {
    if (kept.size + read.size > mostKept) kept.clear();
    for (const [key, dish] of read) kept.set(key, dish);
  }
  return answer;
}
