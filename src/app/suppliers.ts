/** Who the animals come from: what is known of each, and what was written of it before. */
import { and, asc, desc, eq } from 'drizzle-orm';
import { v7 as uuid } from 'uuid';
import type { BodyOf, ResultOf } from '../contract/operations.ts';
import type { Supplier } from '../contract/records.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, change, kitchenOf, look } from './app.ts';
import { invalid, notFound } from './errors.ts';

const asSupplier = (row: typeof t.supplier.$inferSelect): Supplier => ({
  id: row.id,
  name: row.name,
  note: row.note,
  contact: row.contact,
  address: row.address,
  approval: row.approval,
});

export const listSuppliers = (app: App, kitchenId: string): Promise<Supplier[]> =>
  look(app, async (db) => {
    await kitchenOf(db, kitchenId);
    const rows = await db
      .select()
      .from(t.supplier)
      .where(eq(t.supplier.kitchenId, kitchenId))
      .orderBy(asc(t.supplier.name), asc(t.supplier.id));
    return rows.map(asSupplier);
  });

export const addSupplier = (app: App, actor: Actor, input: BodyOf<'addSupplier'>): Promise<Supplier> =>
  change(app, actor, async ({ tx, kitchen, now, tell }) => {
    const supplier: Supplier = {
      id: uuid(),
      name: input.name,
      note: input.note,
      contact: input.contact ?? '',
      address: input.address ?? '',
      approval: input.approval ?? '',
    };
    await tx.insert(t.supplier).values({ ...supplier, kitchenId: kitchen.id, createdAt: now });
    await tell({
      action: 'added',
      subject: 'supplier',
      subjectId: supplier.id,
      summary: `Supplier ${supplier.name} added.`,
    });
    return supplier;
  });

const fields: readonly { readonly key: Exclude<keyof Supplier, 'id'>; readonly word: string }[] = [
  { key: 'name', word: 'name' },
  { key: 'contact', word: 'contact' },
  { key: 'address', word: 'address' },
  { key: 'approval', word: 'approval number' },
  { key: 'note', word: 'note' },
];

const quoted = (text: string) => (text.trim() === '' ? 'nothing' : `“${text}”`);

/** Only what differs is changed; the journal's line says what it was and what it is now, in full. */
export const changeSupplier = (
  app: App,
  actor: Actor,
  supplierId: string,
  input: BodyOf<'changeSupplier'>,
): Promise<Supplier> =>
  change(app, actor, async ({ tx, kitchen, tell }) => {
    if (fields.every(({ key }) => input[key] === undefined))
      invalid('Nothing is to be changed.', [
        { path: '', found: 'nothing', allowed: 'at least one of name, contact, address, approval, note' },
      ]);
    const before = await supplierRow(tx, kitchen.id, supplierId);
    const changed = fields.filter(({ key }) => input[key] !== undefined && input[key] !== before[key]);
    // Sent twice, or nothing differs: what stands there stands.
    if (changed.length === 0) return asSupplier(before);
    const set = Object.fromEntries(changed.map(({ key }) => [key, input[key]]));
    const [after] = await tx.update(t.supplier).set(set).where(eq(t.supplier.id, supplierId)).returning();
    if (after === undefined) throw new Error('the supplier was not changed');
    await tell({
      action: 'changed',
      subject: 'supplier',
      subjectId: supplierId,
      summary: `Supplier ${before.name}: ${changed.map(({ key, word }) => `${word} was ${quoted(before[key])}, is ${quoted(after[key])}`).join('; ')}.`,
    });
    return asSupplier(after);
  });

async function supplierRow(db: Db, kitchenId: string, id: string) {
  const [row] = await db
    .select()
    .from(t.supplier)
    .where(and(eq(t.supplier.kitchenId, kitchenId), eq(t.supplier.id, id)));
  if (row === undefined) throw notFound('supplier');
  return row;
}

/** What the journal says of a supplier's own record, newest first; the last 200. */
export const supplierHistory = (
  app: App,
  kitchenId: string,
  supplierId: string,
): Promise<ResultOf<'supplierHistory'>> =>
  look(app, async (db) => {
    await supplierRow(db, kitchenId, supplierId);
    const rows = await db
      .select()
      .from(t.journal)
      .where(and(eq(t.journal.kitchenId, kitchenId), eq(t.journal.subjectId, supplierId)))
      .orderBy(desc(t.journal.seq))
      .limit(200);
    return rows.map((row) => ({
      seq: row.seq,
      at: row.at.toISOString(),
      by: row.byName,
      summary: row.summary,
    }));
  });
