/** Lots in the house: what is left of each and until when, what was done with it, where it came from and went. */
import { and, asc, eq, gt, inArray, sql } from 'drizzle-orm';
import { v7 as uuid } from 'uuid';
import type { ProductClass } from '../contract/delivery.ts';
import type { LotMove, LotMoveInput, ShelfLot, ShelfLotDetail } from '../contract/shelf.ts';
import { formatQuantity, type UnitSystem } from '../core/units.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, change, kitchenOf, look, type Writing } from './app.ts';
import { batchOfMove, drawsOf } from './batch-holds.ts';
import { dayIn } from './civil-day.ts';
import { nameOf, namesIn } from './dishes.ts';
import { notFound } from './errors.ts';
import { blockedWhy, movedTo } from './lot-rules.ts';
import { lotMoveDigest } from './record-digests.ts';

type LotRow = typeof t.lot.$inferSelect;
type MoveRow = typeof t.lotMove.$inferInsert;

const standingOf = (lot: LotRow, today: string): ShelfLot['standing'] => {
  if (lot.useBy === null) return 'not known';
  if (lot.useBy < today) return 'past';
  return lot.useBy === today ? 'last day' : 'ok';
};

async function asShelf(
  db: Db,
  kitchenId: string,
  rows: readonly LotRow[],
  today: string,
): Promise<ShelfLot[]> {
  const ids = rows.map((r) => r.id);
  const parents =
    ids.length === 0
      ? []
      : await db
          .select({ lotId: t.lotParent.lotId, parentId: t.lotParent.parentId })
          .from(t.lotParent)
          .where(inArray(t.lotParent.lotId, ids));
  const parentsOf = new Map<string, string[]>();
  for (const p of parents) parentsOf.set(p.lotId, [...(parentsOf.get(p.lotId) ?? []), p.parentId]);
  const parts = new Map(
    (await db.select().from(t.part).where(eq(t.part.kitchenId, kitchenId))).map((p) => [p.id, p]),
  );
  const suppliers = new Map(
    (await db.select().from(t.supplier).where(eq(t.supplier.kitchenId, kitchenId))).map((s) => [
      s.id,
      s.name,
    ]),
  );
  return rows.map((lot) => {
    const part = lot.partId === null ? undefined : parts.get(lot.partId);
    return {
      id: lot.id,
      code: lot.code,
      kind: lot.kind as ShelfLot['kind'],
      what: lot.what,
      species: lot.species ?? part?.species ?? null,
      partId: lot.partId,
      partName: part?.name ?? null,
      class: (part?.class ?? null) as ProductClass | null,
      supplierId: lot.supplierId,
      supplierName: lot.supplierId === null ? null : (suppliers.get(lot.supplierId) ?? null),
      count: lot.count,
      grams: lot.grams,
      leftGrams: lot.leftGrams,
      arrivedAt: lot.arrivedAt.toISOString(),
      arrivalC: lot.arrivalC,
      useBy: lot.useBy,
      standing: standingOf(lot, today),
      frozenAt: lot.frozenAt?.toISOString() ?? null,
      thawedAt: lot.thawedAt?.toISOString() ?? null,
      byProduct: lot.byProductAt !== null,
      ageMonthsAtMost: lot.ageMonthsAtMost,
      bse: lot.bse as ShelfLot['bse'],
      blocked: blockedWhy(lot, today),
      cost: lot.cost,
      costPerKg: lot.cost === null || lot.grams <= 0 ? null : lot.cost / (lot.grams / 1000),
      parentIds: parentsOf.get(lot.id) ?? [],
      note: lot.note,
    };
  });
}

/** What is left in the house; what runs out first stands first, and what is food no more stands last. */
export const listShelf = (app: App, kitchenId: string): Promise<ShelfLot[]> =>
  look(app, async (db) => {
    const kitchen = await kitchenOf(db, kitchenId);
    const rows = await db
      .select()
      .from(t.lot)
      .where(and(eq(t.lot.kitchenId, kitchenId), gt(t.lot.leftGrams, 0)))
      .orderBy(
        sql`${t.lot.byProductAt} IS NOT NULL`,
        sql`${t.lot.useBy} ASC NULLS LAST`,
        asc(t.lot.arrivedAt),
        asc(t.lot.id),
      )
      .limit(2_000);
    return asShelf(db, kitchenId, rows, dayIn(kitchen.zone, app.now()));
  });

export async function lotRow(db: Db, kitchenId: string, lotId: string): Promise<LotRow> {
  const [row] = await db
    .select()
    .from(t.lot)
    .where(and(eq(t.lot.kitchenId, kitchenId), eq(t.lot.id, lotId)));
  if (row === undefined) throw notFound('lot');
  return row;
}

/** Lots above or below one in the trace, nearest first. */
async function kinOf(db: Db, lotId: string, up: boolean) {
  const [here, there] = up ? [sql`lot_id`, sql`parent_id`] : [sql`parent_id`, sql`lot_id`];
  const found = (await db.execute(sql`
    WITH RECURSIVE kin (id, depth) AS (
      SELECT ${there}, 1 FROM lot_parent WHERE ${here} = ${lotId}
      UNION SELECT p.${there}, kin.depth + 1 FROM lot_parent p JOIN kin ON p.${here} = kin.id WHERE kin.depth < 50
    )
    SELECT lot.id, lot.code, lot.what, min(kin.depth) AS depth FROM kin JOIN lot ON lot.id = kin.id
    GROUP BY lot.id, lot.code, lot.what ORDER BY depth, lot.code LIMIT 1000`)) as {
    rows: { id: string; code: string; what: string }[];
  };
  return found.rows.map(({ id, code, what }) => ({
    id,
    code,
    what,
  }));
}

export const getLot = (app: App, kitchenId: string, lotId: string): Promise<ShelfLotDetail> =>
  look(app, (db) => readLot(db, app, kitchenId, lotId));

async function readLot(db: Db, app: App, kitchenId: string, lotId: string): Promise<ShelfLotDetail> {
  const kitchen = await kitchenOf(db, kitchenId);
  const row = await lotRow(db, kitchenId, lotId);
  const names = await namesIn(db, kitchenId);
  const [shelf] = await asShelf(db, kitchenId, [row], dayIn(kitchen.zone, app.now()));
  if (shelf === undefined) throw notFound('lot');
  const moves = await db
    .select()
    .from(t.lotMove)
    .where(eq(t.lotMove.lotId, lotId))
    .orderBy(asc(t.lotMove.line));
  const tags = await db
    .select({ tag: t.animalTag.tag })
    .from(t.animalTag)
    .where(eq(t.animalTag.lotId, lotId))
    .orderBy(asc(t.animalTag.tag));
  const batches = await db
    .select({ id: t.batch.id, code: t.batch.code, dishName: t.dish.name, status: t.batch.status })
    .from(t.batchLot)
    .innerJoin(t.batch, eq(t.batch.id, t.batchLot.batchId))
    .innerJoin(t.version, eq(t.version.id, t.batch.versionId))
    .innerJoin(t.dish, eq(t.dish.id, t.version.dishId))
    .where(eq(t.batchLot.lotId, lotId))
    .orderBy(asc(t.batch.startedAt));
  const drawn = await drawsOf(db, { lotId });
  const dishes =
    shelf.species === null || shelf.partName === null
      ? []
      : await db
          .select({ id: t.dish.id, name: t.dish.name })
          .from(t.dish)
          .where(
            and(
              eq(t.dish.kitchenId, kitchenId),
              sql`lower(${t.dish.species}) = lower(${shelf.species})`,
              sql`lower(${t.dish.part}) = lower(${shelf.partName})`,
            ),
          )
          .orderBy(asc(t.dish.name));
  const photos = await db
    .select({ id: t.photo.id })
    .from(t.photo)
    .where(and(eq(t.photo.kitchenId, kitchenId), eq(t.photo.subjectId, lotId)))
    .orderBy(asc(t.photo.takenAt));
  return {
    ...shelf,
    tradeLot: row.tradeLot,
    tags: tags.map((x) => x.tag),
    slaughteredOn: row.slaughteredOn,
    bornIn: row.bornIn,
    raisedIn: row.raisedIn,
    deliveryId: row.deliveryId,
    moves: moves.map(
      (m): LotMove => ({
        id: m.id,
        what: m.what as LotMove['what'],
        grams: m.grams,
        useBy: m.useBy,
        reason: m.reason,
        at: m.at.toISOString(),
        leftGrams: m.leftGrams,
        batchId: m.batchId,
        breakdownId: m.breakdownId,
        by: nameOf(names, m.personId),
        recordedAt: m.recordedAt.toISOString(),
      }),
    ),
    ancestors: await kinOf(db, lotId, true),
    descendants: await kinOf(db, lotId, false),
    batches: batches.map(({ status, ...b }) => ({
      ...b,
      open: status === 'open',
      grams: drawn.find((d) => d.batchId === b.id)?.grams ?? null,
    })),
    dishes,
    photos: photos.map((p) => p.id),
  };
}

/** Writes a move and what is left after it; the caller has checked that it may be. */
export async function writeMove(
  { tx, kitchen, person, now }: Pick<Writing, 'tx' | 'kitchen' | 'person' | 'now'>,
  lot: LotRow,
  move: Pick<MoveRow, 'what' | 'grams' | 'leftGrams' | 'reason'> & Partial<MoveRow>,
  set: Partial<typeof t.lot.$inferInsert> = {},
) {
  const [row] = await tx
    .insert(t.lotMove)
    .values({
      id: uuid(),
      useBy: null,
      batchId: null,
      breakdownId: null,
      at: now,
      ...move,
      kitchenId: kitchen.id,
      lotId: lot.id,
      personId: person.id,
      recordedAt: now,
    })
    .returning();
  if (row === undefined) throw new Error('the move was not written');
  await tx
    .update(t.lot)
    .set({ ...set, leftGrams: move.leftGrams })
    .where(eq(t.lot.id, lot.id));
  return { table: 'lot_move', id: row.id, sha256: lotMoveDigest(row) } as const;
}

export const moveLot = (
  app: App,
  actor: Actor,
  lotId: string,
  input: LotMoveInput,
): Promise<ShelfLotDetail> =>
  change(app, actor, async (w) => {
    const { tx, kitchen, now, tell } = w;
    const [same] = await tx
      .select({ lotId: t.lotMove.lotId })
      .from(t.lotMove)
      .where(eq(t.lotMove.id, input.id));
    // Sent twice: the first one counted.
    if (same?.lotId === lotId) return readLot(tx, app, kitchen.id, lotId);
    const lot = await lotRow(tx, kitchen.id, lotId);
    const today = dayIn(kitchen.zone, now);
    const batchId = input.batchId ?? null;
    const batch = batchId === null ? null : await batchOfMove(tx, kitchen.id, lotId, batchId);
    const { leftGrams, set } = movedTo(lot, input, { today, now, batch });
    const record = await writeMove(
      w,
      lot,
      {
        id: input.id,
        what: input.what,
        grams: input.grams,
        leftGrams,
        useBy: input.useBy,
        batchId,
        reason: input.reason,
        at: new Date(input.at),
      },
      set,
    );
    const records: (typeof record)[] = [record];
    // What was made of it goes the same way.
    if (input.what === 'made a by-product')
      for (const child of await kinOf(tx, lotId, false)) {
        const row = await lotRow(tx, kitchen.id, child.id);
        if (row.byProductAt !== null) continue;
        records.push(
          await writeMove(
            w,
            row,
            {
              what: 'made a by-product',
              grams: null,
              leftGrams: row.leftGrams,
              reason: `Lot ${lot.code}, of which it was cut, was treated as a by-product.`,
            },
            { byProductAt: now },
          ),
        );
      }
    const units = kitchen.units as UnitSystem;
    await tell({
      action: input.what,
      subject: 'lot',
      subjectId: lotId,
      summary: `Lot ${lot.code}, ${lot.what}: ${input.what}${input.grams === null ? '' : ` ${formatQuantity(input.grams, 'mass', units)}`}, ${formatQuantity(leftGrams, 'mass', units)} left${input.useBy === null ? '' : `, last day ${input.useBy}`}${input.reason === '' ? '' : `: ${input.reason.slice(0, 200)}`}${records.length > 1 ? ` (and ${records.length - 1} lots made of it)` : ''}`,
      records,
    });
    return readLot(tx, app, kitchen.id, lotId);
  });
