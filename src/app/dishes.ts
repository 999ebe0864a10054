/** Dishes and their versions: begun as an idea, saved as drafts, signed once (see `sign.ts`) and then never changed. */
import { and, asc, desc, eq, sql } from 'drizzle-orm';
import { v7 as uuid } from 'uuid';
import type { Agreement } from '../contract/agreement.ts';
import type { BodyOf } from '../contract/operations.ts';
import type { Dish, DishSummary, LawStatus, SignedEvidence, Version } from '../contract/records.ts';
import type { Method } from '../contract/steps.ts';
import { lawOf } from '../core/properties/parts-law.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, asKitchen, change, kitchenOf, look, type Writing } from './app.ts';
import { dayIn } from './civil-day.ts';
import { digest } from './digest.ts';
import { AppError, notFound } from './errors.ts';
import { agreementFor, lastAnswers, partsUsed } from './law.ts';
import { checkReferences } from './mix-references.ts';

type VersionRow = typeof t.version.$inferSelect;
type Names = ReadonlyMap<string, string>;

export async function namesIn(db: Db, kitchenId: string): Promise<Names> {
  const rows = await db
    .select({ id: t.person.id, name: t.person.name })
    .from(t.person)
    .where(eq(t.person.kitchenId, kitchenId));
  return new Map(rows.map((row) => [row.id, row.name]));
}

export const nameOf = (names: Names, id: string | null): string =>
  id === null ? '' : (names.get(id) ?? 'unknown');

const withoutMethod = (row: Omit<VersionRow, 'method'>, names: Names): Omit<Version, 'method'> => ({
  id: row.id,
  dishId: row.dishId,
  number: row.number,
  rev: row.rev,
  status: row.status as Version['status'],
  reason: row.reason,
  createdAt: row.createdAt.toISOString(),
  createdBy: nameOf(names, row.createdBy),
  signedAt: row.signedAt?.toISOString() ?? null,
  signedBy: row.signedBy === null ? null : nameOf(names, row.signedBy),
  evidence: row.evidence as SignedEvidence | null,
});

export const asVersion = (row: VersionRow, names: Names): Version => ({
  ...withoutMethod(row, names),
  method: row.method as Method,
});

const kindsOf = sql<string[]>`jsonb_path_query_array(${t.version.method}, '$[*].kind')`;

export const listDishes = (app: App, kitchenId: string): Promise<DishSummary[]> =>
  look(app, async (db) => {
    const { place, zone } = asKitchen(await kitchenOf(db, kitchenId));
    const dishes = await db
      .select()
      .from(t.dish)
      .where(eq(t.dish.kitchenId, kitchenId))
      .orderBy(asc(t.dish.createdAt), asc(t.dish.id));
    const versions = await db
      .select({
        dishId: t.version.dishId,
        number: t.version.number,
        status: t.version.status,
        kinds: kindsOf,
      })
      .from(t.version)
      .where(eq(t.version.kitchenId, kitchenId))
      .orderBy(asc(t.version.number));
    const answers = await lastAnswers(db, kitchenId);
    const today = dayIn(zone, app.now());
    return dishes.map((dish) => {
      const law = lawOf(dish.species, dish.part, place);
      const own = versions.filter((v) => v.dishId === dish.id);
      return summary(dish, own, law, agreementFor(answers, { ...dish, dishId: dish.id }, law.status, today));
    });
  });

function summary(
  dish: typeof t.dish.$inferSelect,
  versions: readonly { number: number; status: string; kinds: string[] }[],
  law: LawStatus,
  agreed: Agreement | null,
): DishSummary {
  return {
    id: dish.id,
    name: dish.name,
    species: dish.species,
    part: dish.part,
    stage: dish.stage as DishSummary['stage'],
    story: dish.story,
    versionCount: versions.length,
    signedVersion: versions.findLast((v) => v.status === 'signed')?.number ?? null,
    stepKinds: versions.at(-1)?.kinds ?? [],
    law,
    agreed,
    updatedAt: dish.updatedAt.toISOString(),
  };
}

export const getDish = (app: App, kitchenId: string, dishId: string): Promise<Dish> =>
  look(app, (db) => readDish(db, kitchenId, dishId, app.now()));

async function readDish(db: Db, kitchenId: string, dishId: string, now: Date): Promise<Dish> {
  const kitchen = await kitchenOf(db, kitchenId);
  const dish = await dishRow(db, kitchenId, dishId);
  const names = await namesIn(db, kitchenId);
  const rows = await db
    .select()
    .from(t.version)
    .where(eq(t.version.dishId, dish.id))
    .orderBy(asc(t.version.number));
  const newest = rows.at(-1);
  if (newest === undefined) throw new Error(`dish ${dish.id} has no version`);
  const kinds = rows.map((row) => ({ ...row, kinds: (row.method as Method).map((step) => step.kind) }));
  const used = await partsUsed(db, kitchen, dish, newest.method as Method, dayIn(kitchen.zone, now));
  const own = used[0];
  if (own === undefined) throw new Error(`dish ${dish.id} has no part`);
  return {
    ...summary(dish, kinds, own.law, own.agreed),
    partsUsed: used,
    versions: rows.map((row) => withoutMethod(row, names)),
    current: asVersion(newest, names),
  };
}

export async function dishRow(
  db: Db,
  kitchenId: string,
  dishId: string,
): Promise<typeof t.dish.$inferSelect> {
  const [dish] = await db
    .select()
    .from(t.dish)
    .where(and(eq(t.dish.kitchenId, kitchenId), eq(t.dish.id, dishId)));
  if (dish === undefined) throw notFound('dish');
  return dish;
}

export async function versionRow(db: Db, kitchenId: string, versionId: string): Promise<VersionRow> {
  const [version] = await db
    .select()
    .from(t.version)
    .where(and(eq(t.version.kitchenId, kitchenId), eq(t.version.id, versionId)));
  if (version === undefined) throw notFound('version');
  return version;
}

export const getVersion = (app: App, kitchenId: string, versionId: string): Promise<Version> =>
  look(app, async (db) =>
    asVersion(await versionRow(db, kitchenId, versionId), await namesIn(db, kitchenId)),
  );

export const addDish = (app: App, actor: Actor, input: BodyOf<'addDish'>): Promise<Dish> =>
  change(app, actor, (w) => layDish(w, input, 'The first draft.', 'begun'));

/** A new dish with one draft. */
export async function layDish(
  w: Writing,
  input: BodyOf<'addDish'>,
  reason: string,
  how: 'begun' | 'brought in',
): Promise<Dish> {
  checkIds(input.method);
  const id = uuid();
  await checkReferences(w.tx, w.kitchen.id, { id, name: input.name }, input.method);
  await w.tx.insert(t.dish).values({
    id,
    kitchenId: w.kitchen.id,
    name: input.name,
    species: input.species,
    part: input.part,
    story: input.story,
    stage: 'idea',
    createdAt: w.now,
    updatedAt: w.now,
  });
  await begin(w, id, 1, reason, input.method, {
    action: 'began',
    subject: 'dish',
    subjectId: id,
    summary: `Dish ${input.name} ${how}: ${input.part} of ${input.species}.`,
  });
  return readDish(w.tx, w.kitchen.id, id, w.now);
}

/** A draft with its first save. */
async function begin(
  { tx, kitchen, person, now, tell }: Writing,
  dishId: string,
  number: number,
  reason: string,
  method: Method,
  told: { action: string; subject: string; subjectId: string; summary: string },
): Promise<string> {
  const id = uuid();
  await tx.insert(t.version).values({
    id,
    kitchenId: kitchen.id,
    dishId,
    number,
    rev: 0,
    status: 'draft',
    reason,
    method,
    createdAt: now,
    createdBy: person.id,
    savedAt: now,
    savedBy: person.id,
  });
  await keepSave(tx, {
    kitchenId: kitchen.id,
    versionId: id,
    rev: 0,
    method,
    savedAt: now,
    savedBy: person.id,
  });
  await tell({ ...told, records: [saveRecord(id, 0, method)] });
  return id;
}

const keepSave = (tx: Db, row: typeof t.versionSave.$inferInsert) => tx.insert(t.versionSave).values(row);
const saveRecord = (versionId: string, rev: number, method: Method) =>
  ({ table: 'version_save', id: `${versionId}/${rev}`, sha256: digest(method) }) as const;

export const saveVersion = (
  app: App,
  actor: Actor,
  versionId: string,
  input: BodyOf<'saveVersion'>,
): Promise<Version> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    checkIds(input.method);
    const version = await draft(tx, kitchen.id, versionId, input.rev);
    const dish = await dishRow(tx, kitchen.id, version.dishId);
    await checkReferences(tx, kitchen.id, dish, input.method);
    const rev = version.rev + 1;
    const [saved] = await tx
      .update(t.version)
      .set({ method: input.method, rev, savedAt: now, savedBy: person.id })
      .where(eq(t.version.id, version.id))
      .returning();
    if (saved === undefined) throw new Error('the draft was not saved');
    await keepSave(tx, {
      kitchenId: kitchen.id,
      versionId,
      rev,
      method: input.method,
      savedAt: now,
      savedBy: person.id,
    });
    await tx.update(t.dish).set({ updatedAt: now }).where(eq(t.dish.id, version.dishId));
    await tell({
      action: 'saved',
      subject: 'version',
      subjectId: version.id,
      summary: `${dish.name}, version ${version.number}, saved (${rev}).`,
      records: [saveRecord(version.id, rev, input.method)],
    });
    return asVersion(saved, await namesIn(tx, kitchen.id));
  });

/** The draft that an edit started from; refused when it is signed or was saved in between. */
export async function draft(db: Db, kitchenId: string, versionId: string, rev: number): Promise<VersionRow> {
  const version = await versionRow(db, kitchenId, versionId);
  const names = await namesIn(db, kitchenId);
  if (version.status === 'signed')
    throw new AppError(
      'frozen',
      `Version ${version.number} was signed by ${nameOf(names, version.signedBy)} at ${version.signedAt?.toISOString()} and does not change again; begin a new version.`,
    );
  if (version.rev !== rev)
    throw new AppError(
      'conflict',
      `${nameOf(names, version.savedBy)} saved this draft at ${version.savedAt.toISOString()}, after you opened it; look at theirs before you save yours.`,
      [{ path: 'rev', found: String(rev), allowed: String(version.rev) }],
    );
  return version;
}

export const newVersion = (
  app: App,
  actor: Actor,
  dishId: string,
  input: BodyOf<'newVersion'>,
): Promise<Version> =>
  change(app, actor, async (w) => {
    const { tx, kitchen, now } = w;
    const dish = await dishRow(tx, kitchen.id, dishId);
    const [newest] = await tx
      .select()
      .from(t.version)
      .where(eq(t.version.dishId, dish.id))
      .orderBy(desc(t.version.number))
      .limit(1);
    if (newest === undefined) throw new Error(`dish ${dish.id} has no version`);
    if (newest.status === 'draft')
      throw new AppError(
        'conflict',
        `Version ${newest.number} is still a draft: change that one, or sign it first.`,
      );
    const start = input.from === undefined ? newest : await versionRow(tx, kitchen.id, input.from);
    if (start.dishId !== dish.id)
      throw new AppError('conflict', `Version ${start.number} is of another dish than ${dish.name}.`);
    const from = start.id === newest.id ? '' : ` from version ${start.number}`;
    const id = await begin(w, dish.id, newest.number + 1, input.reason, start.method as Method, {
      action: 'began',
      subject: 'dish',
      subjectId: dish.id,
      summary: `${dish.name}, version ${newest.number + 1}, begun${from}: ${input.reason}`,
    });
    await tx.update(t.dish).set({ updatedAt: now }).where(eq(t.dish.id, dish.id));
    return asVersion(await versionRow(tx, kitchen.id, id), await namesIn(tx, kitchen.id));
  });

/** Steps and asks are found by their ids: no two of a method may share one. */
function checkIds(method: Method): void {
  const seen = new Map<string, string>();
  const see = (id: string, path: string) => {
    const before = seen.get(id);
    if (before !== undefined)
      throw new AppError('invalid', 'Two things in this method have the same id.', [
        { path, found: `the id of ${before}`, allowed: 'an id of its own' },
      ]);
    seen.set(id, path);
  };
  for (const [i, step] of method.entries()) {
    see(step.id, `method[${i}]`);
    for (const [j, ask] of step.asks.entries()) see(ask.id, `method[${i}].asks[${j}]`);
  }
}
