/** Kitchens and who works in them. */
import { asc, eq, isNull } from 'drizzle-orm';
import { v7 as uuid } from 'uuid';
import type { BodyOf } from '../contract/operations.ts';
import type { Kitchen, Person } from '../contract/records.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, asKitchen, change, kitchenOf, look, transact } from './app.ts';
import { AppError } from './errors.ts';
import { writeLine } from './journal-line.ts';

/** Kitchens in use; those put away are kept but no longer shown. */
export const listKitchens = (app: App): Promise<Kitchen[]> =>
  look(app, async (db) =>
    (
      await db.select().from(t.kitchen).where(isNull(t.kitchen.putAwayAt)).orderBy(asc(t.kitchen.createdAt))
    ).map(asKitchen),
  );

export async function createKitchen(
  app: App,
  input: BodyOf<'createKitchen'>,
  demo = false,
): Promise<{ kitchen: Kitchen; person: Person }> {
  checkZone(input.zone);
  const now = app.now();
  const work = async (tx: Db) => {
    const [kitchen] = await tx
      .insert(t.kitchen)
      .values({
        id: uuid(),
        name: input.name,
        demo,
        place: input.place,
        zone: input.zone,
        currency: input.currency,
        units: input.units,
        createdAt: now,
      })
      .returning();
    if (kitchen === undefined) throw new Error('the kitchen was not written');
    const person: Person = { id: uuid(), name: input.person, role: 'head chef' };
    await tx.insert(t.person).values({ ...person, kitchenId: kitchen.id, createdAt: now });
    await writeLine(
      tx,
      { kitchenId: kitchen.id, person, at: now },
      {
        action: 'set up',
        subject: 'kitchen',
        subjectId: kitchen.id,
        summary: `Kitchen ${kitchen.name} set up.`,
      },
    );
    return { kitchen: asKitchen(kitchen), person };
  };
  return app.within === undefined ? transact(app.store, work) : work(app.within);
}

function checkZone(zone: string): void {
  try {
    new Intl.DateTimeFormat('en', { timeZone: zone });
  } catch {
    throw new AppError('invalid', `There is no time zone ${JSON.stringify(zone)}.`, [
      { path: 'zone', found: JSON.stringify(zone), allowed: 'an IANA time zone, e.g. "Europe/London"' },
    ]);
  }
}

export const listPeople = (app: App, kitchenId: string): Promise<Person[]> =>
  look(app, async (db) => {
    await kitchenOf(db, kitchenId);
    const rows = await db
      .select({ id: t.person.id, name: t.person.name, role: t.person.role })
      .from(t.person)
      .where(eq(t.person.kitchenId, kitchenId))
      .orderBy(asc(t.person.createdAt), asc(t.person.id));
    return rows as Person[];
  });

export const addPerson = (app: App, actor: Actor, input: BodyOf<'addPerson'>): Promise<Person> =>
  change(app, actor, async ({ tx, kitchen, now, tell }) => {
    const person: Person = { id: uuid(), name: input.name, role: input.role };
    await tx.insert(t.person).values({ ...person, kitchenId: kitchen.id, createdAt: now });
    await tell({
      action: 'added',
      subject: 'person',
      subjectId: person.id,
      summary: `${person.name}, ${person.role}, added.`,
    });
    return person;
  });
