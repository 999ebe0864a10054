/** The kitchen's own ingredients: added, changed one step at a time, priced by the pack, put away. */
import { and, asc, desc, eq, inArray } from 'drizzle-orm';
import { v7 as uuid } from 'uuid';
import type { BodyOf } from '../contract/operations.ts';
import type { IngredientInput, PantryIngredient } from '../contract/pantry.ts';
import type { Problem } from '../contract/problem.ts';
import type { Ingredient } from '../contract/records.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, change, kitchenOf, look, type Writing } from './app.ts';
import { dayIn } from './civil-day.ts';
import { digest } from './digest.ts';
import { namesIn } from './dishes.ts';
import { AppError, invalid, notFound } from './errors.ts';
import { changedWords, moneyIn } from './ingredient-words.ts';
import {
  asIngredient,
  type IngredientRow,
  type LookRow,
  nutrientsOver,
  type PriceRow,
} from './pantry-ingredient.ts';
import { tableHolds, tableRow } from './pantry-table.ts';
import { ingredientChangeDigest, ingredientPriceDigest } from './record-digests.ts';

/** All of them, or one. */
export async function readIngredients(
  db: Db,
  kitchenId: string,
  day: string,
  only?: string,
): Promise<PantryIngredient[]> {
  const rows = await db
    .select()
    .from(t.ingredient)
    .where(
      and(eq(t.ingredient.kitchenId, kitchenId), only === undefined ? undefined : eq(t.ingredient.id, only)),
    )
    .orderBy(asc(t.ingredient.name), asc(t.ingredient.id));
  const prices = await db
    .select()
    .from(t.ingredientPrice)
    .where(
      and(
        eq(t.ingredientPrice.kitchenId, kitchenId),
        only === undefined ? undefined : eq(t.ingredientPrice.ingredientId, only),
      ),
    );
  const looks = await db
    .selectDistinctOn([t.allergenLooked.ingredientId])
    .from(t.allergenLooked)
    .where(
      and(
        eq(t.allergenLooked.kitchenId, kitchenId),
        only === undefined ? undefined : eq(t.allergenLooked.ingredientId, only),
      ),
    )
    .orderBy(asc(t.allergenLooked.ingredientId), desc(t.allergenLooked.at), desc(t.allergenLooked.line));
  const names = await namesIn(db, kitchenId);
  const pricesOf = new Map<string, PriceRow[]>();
  for (const price of prices) {
    const own = pricesOf.get(price.ingredientId);
    if (own === undefined) pricesOf.set(price.ingredientId, [price]);
    else own.push(price);
  }
  const lookOf = new Map<string, LookRow>(looks.map((l) => [l.ingredientId, l]));
  return rows.map((row) => asIngredient(row, pricesOf.get(row.id) ?? [], lookOf.get(row.id), names, day));
}

export async function readIngredient(w: Writing, id: string): Promise<PantryIngredient> {
  const [found] = await readIngredients(w.tx, w.kitchen.id, dayIn(w.kitchen.zone, w.now), id);
  if (found === undefined) throw notFound('ingredient');
  return found;
}

const sixOf = ({ water, protein, fat, carbohydrate, fibre, ash }: PantryIngredient['nutrients']) =>
  water === null ||
  protein === null ||
  fat === null ||
  carbohydrate === null ||
  fibre === null ||
  ash === null
    ? null
    : { water, protein, fat, carbohydrate, fibre, ash };

export const listIngredients = (app: App, kitchenId: string): Promise<Ingredient[]> =>
  look(app, async (db) => {
    const { zone } = await kitchenOf(db, kitchenId);
    const all = await readIngredients(db, kitchenId, dayIn(zone, app.now()));
    return all
      .filter((i) => !i.putAway)
      .map(({ id, name, nutrients, source, costPerKg, allergens }) => ({
        id,
        name,
        composition: sixOf(nutrients),
        salt: nutrients.salt,
        source,
        pricePerKg: costPerKg === null ? null : Math.round(costPerKg),
        allergens: allergens === null ? null : [...new Set(allergens.map((a) => a.allergen))],
      }));
  });

export async function ingredientRow(db: Db, kitchenId: string, id: string): Promise<IngredientRow> {
  const [row] = await db
    .select()
    .from(t.ingredient)
    .where(and(eq(t.ingredient.kitchenId, kitchenId), eq(t.ingredient.id, id)));
  if (row === undefined) throw notFound('ingredient');
  return row;
}

/** What a change of an ingredient keeps: all of it as it then was. */
export const stateOf = (row: IngredientRow): object => {
  const { id: _i, kitchenId: _k, createdAt: _c, rev: _r, putAwayAt, ...rest } = row;
  return { ...rest, putAway: putAwayAt !== null };
};

async function keepChange({ tx, person, now }: Writing, row: IngredientRow, reason: string) {
  const kept = {
    id: uuid(),
    kitchenId: row.kitchenId,
    ingredientId: row.id,
    rev: row.rev,
    became: stateOf(row),
    reason,
    personId: person.id,
    recordedAt: now,
  };
  await tx.insert(t.ingredientChange).values(kept);
  return { table: 'ingredient_change', id: kept.id, sha256: ingredientChangeDigest(kept) } as const;
}

/** Fractions that cannot be true together, by name. */
function checkFood(input: Pick<IngredientInput, 'tableId' | 'nutrients'>, at: string): void {
  const problems: Problem[] = [];
  if (input.tableId !== null && !tableHolds(input.tableId))
    problems.push({
      path: `${at}tableId`,
      found: input.tableId,
      allowed: 'the id of a row of the published table, or null',
    });
  const row = input.tableId === null ? undefined : tableRow(input.tableId);
  const n = nutrientsOver(row, input.nutrients);
  // What was published is taken as it stands, also where its analyses, each made by itself, come to a little over the whole.
  const own = Object.values(input.nutrients).some((x) => x !== undefined);
  const most = row === undefined ? 1.005 : 1.02;
  const main = ['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash', 'alcohol'] as const;
  const sum = main.reduce((total, k) => total + (n[k] ?? 0), 0);
  if (own && sum > most)
    problems.push({
      path: `${at}nutrients`,
      found: `${main.join(', ')} sum to ${sum.toFixed(3)}`,
      allowed: `at most ${most}: they are fractions of one weight`,
    });
  for (const [within, whole] of [
    ['saturates', 'fat'],
    ['sugars', 'carbohydrate'],
    ['salt', 'ash'],
  ] as const) {
    const [a, b] = [n[within], n[whole]];
    if (own && a !== null && b !== null && a > b + 0.005)
      problems.push({
        path: `${at}nutrients.${within}`,
        found: String(a),
        allowed: `at most the ${whole}, ${b}, of which it is a part`,
      });
  }
  if (problems.length > 0) invalid('The ingredient does not hold together.', problems);
}

async function nameIsFree(db: Db, kitchenId: string, name: string): Promise<void> {
  const [same] = await db
    .select()
    .from(t.ingredient)
    .where(and(eq(t.ingredient.kitchenId, kitchenId), eq(t.ingredient.name, name)));
  if (same !== undefined)
    throw new AppError(
      'conflict',
      `This kitchen already has an ingredient ${name}${same.putAwayAt === null ? '' : ', which was put away; take it out again'}.`,
    );
}

export const addIngredient = (
  app: App,
  actor: Actor,
  { price, ...given }: BodyOf<'addIngredient'>,
): Promise<PantryIngredient> =>
  change(app, actor, async (w) => {
    const { tx, kitchen, now, tell } = w;
    const input = {
      name: given.name,
      labelName: given.labelName ?? null,
      tableId: given.tableId ?? null,
      nutrients: given.nutrients ?? {},
      source: given.source ?? '',
      allergens: given.allergens ?? null,
      trimPct: given.trimPct ?? 0,
      densityKgM3: given.densityKgM3 ?? null,
      pieceG: given.pieceG ?? null,
      madeOf: given.madeOf ?? null,
      note: given.note ?? '',
    };
    checkFood(input, '');
    await nameIsFree(tx, kitchen.id, input.name);
    const row: IngredientRow = {
      ...input,
      id: uuid(),
      kitchenId: kitchen.id,
      createdAt: now,
      rev: 0,
      putAwayAt: null,
    };
    await tx.insert(t.ingredient).values(row);
    const records = [
      await keepChange(w, row, ''),
      ...(price === undefined ? [] : [await keepPrice(w, row.id, { ...price, id: uuid() }, 'price.')]),
    ];
    await tell({
      action: 'added',
      subject: 'ingredient',
      subjectId: row.id,
      summary: `Ingredient ${row.name} added.`,
      records,
    });
    return readIngredient(w, row.id);
  });

/** The ingredient that a change started from; refused when somebody changed it in between. */
async function unchanged(w: Writing, id: string, rev: number): Promise<IngredientRow> {
  const row = await ingredientRow(w.tx, w.kitchen.id, id);
  if (row.rev === rev) return row;
  const [last] = await w.tx
    .select({ at: t.ingredientChange.recordedAt, by: t.person.name })
    .from(t.ingredientChange)
    .innerJoin(t.person, eq(t.person.id, t.ingredientChange.personId))
    .where(and(eq(t.ingredientChange.ingredientId, id), eq(t.ingredientChange.rev, row.rev)));
  throw new AppError(
    'conflict',
    `${last?.by ?? 'Somebody'} changed ${row.name}${last === undefined ? '' : ` at ${last.at.toISOString()}`}, after you opened it; look at theirs before you change it.`,
    [{ path: 'rev', found: String(rev), allowed: String(row.rev) }],
  );
}

async function rewrite(w: Writing, before: IngredientRow, set: Partial<IngredientRow>, reason: string) {
  const [row] = await w.tx
    .update(t.ingredient)
    .set({ ...set, rev: before.rev + 1 })
    .where(eq(t.ingredient.id, before.id))
    .returning();
  if (row === undefined) throw new Error('the ingredient was not changed');
  return { row, record: await keepChange(w, row, reason) };
}

export const changeIngredient = (
  app: App,
  actor: Actor,
  ingredientId: string,
  input: BodyOf<'changeIngredient'>,
): Promise<PantryIngredient> =>
  change(app, actor, async (w) => {
    const before = await unchanged(w, ingredientId, input.rev);
    const set = Object.fromEntries(
      Object.entries(input.set).filter(([, value]) => value !== undefined),
    ) as Partial<IngredientRow>;
    if (Object.keys(set).length === 0)
      invalid('Nothing is to be changed.', [
        { path: 'set', found: 'nothing', allowed: 'at least one of the fields of an ingredient' },
      ]);
    const after = { ...before, ...set };
    checkFood({ tableId: after.tableId, nutrients: after.nutrients as IngredientInput['nutrients'] }, 'set.');
    if (after.name !== before.name) await nameIsFree(w.tx, w.kitchen.id, after.name);
    const { row, record } = await rewrite(w, before, set, input.reason ?? '');
    await w.tell({
      action: 'changed',
      subject: 'ingredient',
      subjectId: row.id,
      summary: `Ingredient ${before.name} changed: ${changedWords(before, row)}${input.reason ? `; ${input.reason}` : ''}.`,
      records: [record],
    });
    return readIngredient(w, row.id);
  });

export const putAwayIngredient = (
  app: App,
  actor: Actor,
  ingredientId: string,
  input: BodyOf<'putAwayIngredient'>,
): Promise<PantryIngredient> =>
  change(app, actor, async (w) => {
    const before = await unchanged(w, ingredientId, input.rev);
    if ((before.putAwayAt !== null) === input.away) return readIngredient(w, before.id);
    const { row, record } = await rewrite(w, before, { putAwayAt: input.away ? w.now : null }, input.reason);
    await w.tell({
      action: input.away ? 'put away' : 'took out',
      subject: 'ingredient',
      subjectId: row.id,
      summary: `Ingredient ${row.name} ${input.away ? 'put away' : 'taken out again'}${input.reason === '' ? '' : `: ${input.reason}`}.`,
      records: [record],
    });
    return readIngredient(w, row.id);
  });

async function keepPrice(w: Writing, ingredientId: string, input: BodyOf<'priceIngredient'>, at: string) {
  const { tx, kitchen, person, now } = w;
  const supplierId = input.supplierId ?? null;
  if (supplierId !== null) await supplierIsHere(w, supplierId, `${at}supplierId`);
  const row = {
    id: input.id,
    kitchenId: kitchen.id,
    ingredientId,
    packG: input.packG,
    price: input.price,
    supplierId,
    fromDay: input.from ?? dayIn(kitchen.zone, now),
    note: input.note ?? '',
    personId: person.id,
    recordedAt: now,
  };
  await tx.insert(t.ingredientPrice).values(row);
  return { table: 'ingredient_price', id: row.id, sha256: ingredientPriceDigest(row) } as const;
}

export async function supplierIsHere({ tx, kitchen }: Writing, id: string, path: string): Promise<void> {
  const [row] = await tx
    .select({ id: t.supplier.id })
    .from(t.supplier)
    .where(and(eq(t.supplier.kitchenId, kitchen.id), eq(t.supplier.id, id)));
  if (row === undefined)
    invalid('This kitchen has no such supplier.', [
      { path, found: id, allowed: 'the id of a supplier of this kitchen, or null' },
    ]);
}

export const priceIngredient = (
  app: App,
  actor: Actor,
  ingredientId: string,
  input: BodyOf<'priceIngredient'>,
): Promise<PantryIngredient> =>
  change(app, actor, async (w) => {
    const { tx, kitchen, now, tell } = w;
    const { name } = await ingredientRow(tx, kitchen.id, ingredientId);
    const [before] = await tx.select().from(t.ingredientPrice).where(eq(t.ingredientPrice.id, input.id));
    if (before !== undefined) {
      const same =
        before.kitchenId === kitchen.id &&
        before.ingredientId === ingredientId &&
        before.packG === input.packG &&
        before.price === input.price &&
        (input.from === undefined || before.fromDay === input.from);
      if (!same) throw new AppError('conflict', 'A different price was already kept under this id.');
      return readIngredient(w, ingredientId);
    }
    const record = await keepPrice(w, ingredientId, input, '');
    const from = input.from ?? dayIn(kitchen.zone, now);
    await tell({
      action: 'priced',
      subject: 'ingredient',
      subjectId: ingredientId,
      summary: `${name}: a pack of ${input.packG} g for ${moneyIn(kitchen.currency, input.price)}, from ${from}.`,
      records: [record],
    });
    return readIngredient(w, ingredientId);
  });

/** That nobody has changed an ingredient but by a change that is kept: its row is the last of its changes. */
export async function ingredientsAsKept(db: Db, kitchenId: string): Promise<boolean> {
  const last = await db
    .selectDistinctOn([t.ingredientChange.ingredientId], {
      id: t.ingredientChange.ingredientId,
      became: t.ingredientChange.became,
    })
    .from(t.ingredientChange)
    .where(eq(t.ingredientChange.kitchenId, kitchenId))
    .orderBy(asc(t.ingredientChange.ingredientId), desc(t.ingredientChange.rev));
  const became = new Map(last.map((l) => [l.id, digest(l.became)]));
  for (let i = 0; i < last.length; i += 500) {
    const ids = last.slice(i, i + 500).map((l) => l.id);
    for (const row of await db.select().from(t.ingredient).where(inArray(t.ingredient.id, ids)))
      if (digest(stateOf(row)) !== became.get(row.id)) return false;
  }
  return true;
}
