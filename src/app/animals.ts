/** What comes in: parts and lots. */
import { and, asc, desc, eq } from 'drizzle-orm';
import { v7 as uuid } from 'uuid';
import type { BodyOf } from '../contract/operations.ts';
import type { Lot, Part } from '../contract/records.ts';
import { formatQuantity, type UnitSystem } from '../core/units.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, change, kitchenOf, look } from './app.ts';
import { AppError, invalid, notFound } from './errors.ts';
import { tableHolds } from './pantry-table.ts';

export { addSupplier, listSuppliers } from './suppliers.ts';

const asPart = (row: typeof t.part.$inferSelect): Part => ({
  id: row.id,
  species: row.species,
  name: row.name,
  sharePct: row.sharePct,
  use: row.use as Part['use'],
  class: row.class as Part['class'],
  lifeDays: row.lifeDays,
  valuePerKg: row.valuePerKg,
  costShare: row.costShare,
  trimPct: row.trimPct,
  cookingLossPct: row.cookingLossPct,
  labourMinPerKg: row.labourMinPerKg,
  tableId: row.tableId,
});

export const listParts = (app: App, kitchenId: string): Promise<Part[]> =>
  look(app, async (db) => {
    await kitchenOf(db, kitchenId);
    const rows = await db
      .select()
      .from(t.part)
      .where(eq(t.part.kitchenId, kitchenId))
      .orderBy(asc(t.part.species), asc(t.part.createdAt), asc(t.part.id));
    return rows.map(asPart);
  });

export const addPart = (app: App, actor: Actor, input: BodyOf<'addPart'>): Promise<Part> =>
  change(app, actor, async ({ tx, kitchen, now, tell }) => {
    const [same] = await tx
      .select({ id: t.part.id })
      .from(t.part)
      .where(
        and(eq(t.part.kitchenId, kitchen.id), eq(t.part.species, input.species), eq(t.part.name, input.name)),
      );
    if (same !== undefined)
      throw new AppError('conflict', `This kitchen already has a ${input.name} of ${input.species}.`);
    checkRow(input.tableId);
    const part: Part = {
      id: uuid(),
      ...input,
      class: input.class ?? null,
      lifeDays: input.lifeDays ?? null,
      valuePerKg: input.valuePerKg ?? null,
      costShare: input.costShare ?? null,
      trimPct: input.trimPct ?? null,
      cookingLossPct: input.cookingLossPct ?? null,
      labourMinPerKg: input.labourMinPerKg ?? null,
      tableId: input.tableId ?? null,
    };
    await tx.insert(t.part).values({ ...part, kitchenId: kitchen.id, createdAt: now });
    await tell({
      action: 'added',
      subject: 'part',
      subjectId: part.id,
      summary: `Part ${part.name} of ${part.species} added.`,
    });
    return part;
  });

function checkRow(id: string | null | undefined): void {
  if (id === null || id === undefined || id === 'none' || tableHolds(id)) return;
  invalid('There is no such row in the published table.', [
    { path: 'tableId', found: id, allowed: 'the id of a row, "none" where none fits, or null' },
  ]);
}

export const changePart = (
  app: App,
  actor: Actor,
  partId: string,
  input: BodyOf<'changePart'>,
): Promise<Part> =>
  change(app, actor, async ({ tx, kitchen, tell }) => {
    // What is left out is left as it is; an update of nothing is none.
    const set = Object.fromEntries(Object.entries(input).filter(([, value]) => value !== undefined));
    if (Object.keys(set).length === 0)
      invalid('Nothing is to be changed.', [
        { path: '', found: 'nothing', allowed: 'at least one of the fields of a part' },
      ]);
    checkRow(input.tableId);
    const [row] = await tx
      .update(t.part)
      .set(set)
      .where(and(eq(t.part.kitchenId, kitchen.id), eq(t.part.id, partId)))
      .returning();
    if (row === undefined) throw notFound('part');
    const part = asPart(row);
    await tell({
      action: 'changed',
      subject: 'part',
      subjectId: partId,
      summary: `Part ${part.name} of ${part.species}: ${part.use}${part.lifeDays === null ? '' : `, keeps ${part.lifeDays} days`}${part.valuePerKg === null ? '' : `, worth ${part.valuePerKg / 100} a kg`}${part.trimPct === null ? '' : `, trim ${part.trimPct} %`}${part.cookingLossPct === null ? '' : `, cooking loss ${part.cookingLossPct} %`}${part.labourMinPerKg === null ? '' : `, ${part.labourMinPerKg} min work a kg`}${part.tableId === null ? '' : `, composition by ${part.tableId === 'none' ? 'no row of the table' : part.tableId}`}.`,
    });
    return part;
  });

export const asLot = (row: typeof t.lot.$inferSelect): Lot => ({
  id: row.id,
  code: row.code,
  supplierId: row.supplierId,
  partId: row.partId,
  what: row.what,
  grams: row.grams,
  arrivedAt: row.arrivedAt.toISOString(),
  arrivalC: row.arrivalC,
  note: row.note,
});

/** The newest first; the last 2,000. What is left in the house is on the shelf. */
export const listLots = (app: App, kitchenId: string): Promise<Lot[]> =>
  look(app, async (db) => {
    await kitchenOf(db, kitchenId);
    const rows = await db
      .select()
      .from(t.lot)
      .where(eq(t.lot.kitchenId, kitchenId))
      .orderBy(desc(t.lot.arrivedAt), desc(t.lot.id))
      .limit(2_000);
    return rows.map(asLot);
  });

export const addLot = (app: App, actor: Actor, input: BodyOf<'addLot'>): Promise<Lot> =>
  change(app, actor, async ({ tx, kitchen, now, tell }) => {
    const [same] = await tx
      .select({ id: t.lot.id })
      .from(t.lot)
      .where(and(eq(t.lot.kitchenId, kitchen.id), eq(t.lot.code, input.code)));
    if (same !== undefined)
      throw new AppError(
        'conflict',
        `There is already a lot ${input.code}: a lot's code is used once, or it could not be traced.`,
      );
    await mustHave(tx, t.supplier, kitchen.id, input.supplierId, 'supplierId', 'a supplier');
    await mustHave(tx, t.part, kitchen.id, input.partId, 'partId', 'a part');
    const row = {
      id: uuid(),
      ...input,
      arrivedAt: new Date(input.arrivedAt),
      kitchenId: kitchen.id,
      createdAt: now,
      kind: 'part',
      leftGrams: input.grams,
    };
    const [written] = await tx.insert(t.lot).values(row).returning();
    if (written === undefined) throw new Error('the lot was not written');
    const units = kitchen.units as UnitSystem;
    const warm =
      input.arrivalC === null ? '' : `, ${formatQuantity(input.arrivalC, 'temperature', units)} on arrival`;
    await tell({
      action: 'took in',
      subject: 'lot',
      subjectId: row.id,
      summary: `Lot ${input.code}: ${input.what}, ${formatQuantity(input.grams, 'mass', units)}${warm}.`,
    });
    return asLot(written);
  });

async function mustHave(
  tx: Parameters<Parameters<typeof look>[1]>[0],
  table: typeof t.supplier | typeof t.part,
  kitchenId: string,
  id: string | null,
  path: string,
  what: string,
): Promise<void> {
  if (id === null) return;
  const [row] = await tx
    .select({ id: table.id })
    .from(table)
    .where(and(eq(table.kitchenId, kitchenId), eq(table.id, id)));
  if (row === undefined)
    throw new AppError('invalid', `The lot names ${what} that this kitchen does not have.`, [
      { path, found: id, allowed: `the id of ${what} of this kitchen, or null` },
    ]);
}
