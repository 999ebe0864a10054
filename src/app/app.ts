/** What every subject of the program works with: the store, the engine, the clock; and how anything is written. */
import { eq } from 'drizzle-orm';
import type { Kitchen, Person } from '../contract/records.ts';
import type { Db, Store } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { databaseError, isWorthAnotherTry } from './database-errors.ts';
import type { Engine } from './engine.ts';
import { AppError } from './errors.ts';
import { type Entry, writeLine } from './journal-line.ts';

export interface App {
  readonly store: Store;
  readonly engine: Engine;
  readonly now: () => Date;
  /** This program's version, as kept with signed evidence. */
  readonly version: string;
  /** Set while several verbs are to succeed or fail together. */
  readonly within?: Db;
}

/** Who does something, in which kitchen. */
export interface Actor {
  readonly kitchenId: string;
  readonly personId: string;
}

export interface Writing {
  readonly tx: Db;
  readonly kitchen: typeof t.kitchen.$inferSelect;
  readonly person: Person;
  readonly now: Date;
  /** Writes the line in the journal that tells of this change; announced when the change is committed. */
  readonly tell: (entry: Entry) => Promise<void>;
}

/**
 * One change: all of it or nothing, with its line in the journal. Changes of one kitchen go one after another, so that
 * what a rule looked at is still so when the change is written.
 */
export async function change<T>(app: App, actor: Actor, work: (writing: Writing) => Promise<T>): Promise<T> {
  const once = async (tx: Db): Promise<T> => {
    const [kitchen] = await tx
      .select()
      .from(t.kitchen)
      .where(eq(t.kitchen.id, actor.kitchenId))
      .for('update');
    if (kitchen === undefined)
      throw new AppError('not_found', 'There is no kitchen of that id on this server.');
    if (kitchen.putAwayAt !== null)
      throw new AppError(
        'frozen',
        `The kitchen ${kitchen.name} was put away; open the one that took its place.`,
      );
    const person = await writerOf(tx, actor);
    const now = app.now();
    return work({
      tx,
      kitchen,
      person,
      now,
      tell: (entry) => writeLine(tx, { kitchenId: kitchen.id, person, at: now }, entry),
    });
  };
  return app.within === undefined ? transact(app.store, once) : once(app.within);
}

/** A transaction with everything written in it, tried again where the database asks for that. */
export async function transact<T>(store: Store, work: (tx: Db) => Promise<T>): Promise<T> {
  for (let attempt = 1; ; attempt++) {
    try {
      return await store.db.transaction((tx) => work(tx as unknown as Db));
    } catch (error) {
      if (attempt < 4 && isWorthAnotherTry(error)) continue;
      throw databaseError(error);
    }
  }
}

/** Several reads that see the same moment. */
export async function look<T>(app: App, work: (db: Db) => Promise<T>): Promise<T> {
  if (app.within !== undefined) return work(app.within);
  try {
    return await app.store.db.transaction((tx) => work(tx as unknown as Db), {
      isolationLevel: 'repeatable read',
      accessMode: 'read only',
    });
  } catch (error) {
    throw databaseError(error);
  }
}

export async function kitchenOf(db: Db, kitchenId: string): Promise<typeof t.kitchen.$inferSelect> {
  const [kitchen] = await db.select().from(t.kitchen).where(eq(t.kitchen.id, kitchenId));
  if (kitchen === undefined)
    throw new AppError('not_found', 'There is no kitchen of that id on this server.');
  return kitchen;
}

async function writerOf(tx: Db, actor: Actor): Promise<Person> {
  const [row] = await tx.select().from(t.person).where(eq(t.person.id, actor.personId));
  if (row === undefined || row.kitchenId !== actor.kitchenId)
    throw new AppError(
      'unsigned',
      'Nobody of this kitchen has that id: say who is writing (header X-Person).',
    );
  if (row.role === 'auditor')
    throw new AppError(
      'forbidden',
      `${row.name} is an auditor, who reads and does not write; choose somebody of the kitchen.`,
    );
  return { id: row.id, name: row.name, role: row.role as Person['role'] };
}

export const asKitchen = (row: typeof t.kitchen.$inferSelect): Kitchen => ({
  id: row.id,
  name: row.name,
  demo: row.demo,
  place: row.place as Kitchen['place'],
  zone: row.zone,
  currency: row.currency,
  units: row.units as Kitchen['units'],
  createdAt: row.createdAt.toISOString(),
});
