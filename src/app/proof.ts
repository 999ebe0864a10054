/** The journal: read, and checked line by line with the records it tells of. */
import { and, asc, desc, eq, gt, inArray, isNotNull, lt, sql } from 'drizzle-orm';
import type { ResultOf } from '../contract/operations.ts';
import type { JournalLine } from '../contract/records.ts';
import type { Method } from '../contract/steps.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type App, kitchenOf, look } from './app.ts';
import { digest } from './digest.ts';
import { ingredientsAsKept } from './ingredients.ts';
import { type Entry, firstHash, hashOf, type RecordTable } from './journal-line.ts';
import {
  allergenLookedDigest,
  authorityAnswerDigest,
  authorityRequestDigest,
  breakdownDigest,
  closingDigest,
  decisionDigest,
  declaredRiskDigest,
  declaredRiskEndDigest,
  deliveryDigest,
  ingredientChangeDigest,
  ingredientPriceDigest,
  kitchenRatesDigest,
  lotMoveDigest,
  machineFitDigest,
  photoDigest,
  probeLogDigest,
  readingDigest,
  signatureDigest,
  specificationAnswerDigest,
  specificationVersionDigest,
  startDigest,
  weighingDigest,
} from './record-digests.ts';

type Row = typeof t.journal.$inferSelect;
type Told = NonNullable<Entry['records']>[number];

const asLine = (row: Row): JournalLine => ({
  seq: row.seq,
  at: row.at.toISOString(),
  by: row.byName,
  action: row.action,
  subject: row.subject,
  subjectId: row.subjectId,
  summary: row.summary,
  hash: row.hash,
});

export const readJournal = (
  app: App,
  kitchenId: string,
  { before, limit = 100 }: { before?: number | undefined; limit?: number | undefined },
): Promise<JournalLine[]> =>
  look(app, async (db) => {
    await kitchenOf(db, kitchenId);
    const rows = await db
      .select()
      .from(t.journal)
      .where(
        and(eq(t.journal.kitchenId, kitchenId), before === undefined ? undefined : lt(t.journal.seq, before)),
      )
      .orderBy(desc(t.journal.seq))
      .limit(limit);
    return rows.map(asLine);
  });

const page = 500;

/** Walks the chain from its first line; the line that does not hold is the first at fault, or the first that is missing. */
export const checkJournal = (app: App, kitchenId: string): Promise<ResultOf<'checkJournal'>> =>
  look(app, async (db) => {
    await kitchenOf(db, kitchenId);
    const checkedAt = app.now().toISOString();
    const seen = new Map<RecordTable, number>();
    let prevHash = firstHash;
    let lines = 0;
    for (;;) {
      const rows = await db
        .select()
        .from(t.journal)
        .where(and(eq(t.journal.kitchenId, kitchenId), gt(t.journal.seq, lines)))
        .orderBy(asc(t.journal.seq))
        .limit(page);
      if (rows.length === 0) break;
      const prints = await fingerprints(db, rows.flatMap(recordsOf));
      for (const row of rows) {
        const { hash, ...line } = row;
        const records = recordsOf(row);
        const holds =
          row.seq === lines + 1 &&
          row.prevHash === prevHash &&
          hash === hashOf(line) &&
          records.every((record) => prints.get(`${record.table} ${record.id}`) === record.sha256);
        if (!holds) return { lines: row.seq, holds: false, brokenAt: lines + 1, checkedAt };
        for (const { table } of records) seen.set(table, (seen.get(table) ?? 0) + 1);
        prevHash = hash;
        lines = row.seq;
      }
    }
    // A record that no line tells of was slipped in, or the lines that told of it were cut off.
    const untold = await anyUntold(db, kitchenId, seen);
    return { lines, holds: !untold, brokenAt: untold ? lines + 1 : null, checkedAt };
  });

const recordsOf = (row: Row): readonly Told[] => (row.details as { records?: Told[] }).records ?? [];

/** Fingerprints of the records as they stand now. */
async function fingerprints(db: Db, records: readonly Told[]): Promise<Map<string, string>> {
  const prints = new Map<string, string>();
  const idsOf = (table: RecordTable) => records.filter((r) => r.table === table).map((r) => r.id);
  const each = async <R>(
    table: RecordTable,
    read: (ids: string[]) => Promise<R[]>,
    put: (row: R) => [string, string],
  ) => {
    const ids = [...new Set(idsOf(table))];
    for (let i = 0; i < ids.length; i += page)
      for (const row of await read(ids.slice(i, i + page))) {
        const [id, print] = put(row);
        prints.set(`${table} ${id}`, print);
      }
  };
  await each(
    'reading',
    (ids) => db.select().from(t.reading).where(inArray(t.reading.id, ids)),
    (r) => [r.id, readingDigest(r)],
  );
  await each(
    'decision',
    (ids) => db.select().from(t.decision).where(inArray(t.decision.id, ids)),
    (r) => [r.id, decisionDigest(r)],
  );
  await each(
    'probe_log',
    (ids) => db.select().from(t.probeLog).where(inArray(t.probeLog.id, ids)),
    (r) => [r.id, probeLogDigest(r)],
  );
  const plain = [
    ['delivery', t.delivery, deliveryDigest],
    ['weighing', t.weighing, weighingDigest],
    ['lot_move', t.lotMove, lotMoveDigest],
    ['breakdown', t.breakdown, breakdownDigest],
    ['specification_version', t.specificationVersion, specificationVersionDigest],
    ['specification_answer', t.specificationAnswer, specificationAnswerDigest],
    ['authority_request', t.authorityRequest, authorityRequestDigest],
    ['authority_answer', t.authorityAnswer, authorityAnswerDigest],
    ['photo', t.photo, photoDigest],
    ['machine_fit', t.machineFit, machineFitDigest],
    ['ingredient_change', t.ingredientChange, ingredientChangeDigest],
    ['ingredient_price', t.ingredientPrice, ingredientPriceDigest],
    ['allergen_looked', t.allergenLooked, allergenLookedDigest],
    ['declared_risk', t.declaredRisk, declaredRiskDigest],
    ['declared_risk_end', t.declaredRiskEnd, declaredRiskEndDigest],
    ['kitchen_rates', t.kitchenRates, kitchenRatesDigest],
  ] as const;
  for (const [name, table, print] of plain)
    await each(
      name,
      (ids) => db.select().from(table).where(inArray(table.id, ids)) as Promise<{ id: string }[]>,
      (r) => [r.id, (print as (row: unknown) => string)(r)],
    );
  await each(
    'signature',
    (ids) => db.select().from(t.version).where(inArray(t.version.id, ids)),
    (r) => [r.id, signatureDigest(r)],
  );
  const started = [...new Set(idsOf('batch_start'))];
  for (let i = 0; i < started.length; i += page) {
    const ids = started.slice(i, i + page);
    const lots = await db.select().from(t.batchLot).where(inArray(t.batchLot.batchId, ids));
    for (const row of await db.select().from(t.batch).where(inArray(t.batch.id, ids))) {
      const own = lots.filter((lot) => lot.batchId === row.id).map((lot) => lot.lotId);
      prints.set(`batch_start ${row.id}`, startDigest(row, own));
    }
  }
  await each(
    'batch_close',
    (ids) => db.select().from(t.batch).where(inArray(t.batch.id, ids)),
    (r) => [r.id, closingDigest(r)],
  );
  const saves = [...new Set(idsOf('version_save').map((id) => id.split('/')[0] as string))];
  if (saves.length > 0)
    for (const row of await db.select().from(t.versionSave).where(inArray(t.versionSave.versionId, saves)))
      prints.set(`version_save ${row.versionId}/${row.rev}`, digest(row.method as Method));
  return prints;
}

async function anyUntold(
  db: Db,
  kitchenId: string,
  seen: ReadonlyMap<RecordTable, number>,
): Promise<boolean> {
  const counted = {
    reading: t.reading,
    decision: t.decision,
    probe_log: t.probeLog,
    version_save: t.versionSave,
    delivery: t.delivery,
    weighing: t.weighing,
    lot_move: t.lotMove,
    specification_answer: t.specificationAnswer,
    authority_request: t.authorityRequest,
    authority_answer: t.authorityAnswer,
    photo: t.photo,
    machine_fit: t.machineFit,
    ingredient_change: t.ingredientChange,
    allergen_looked: t.allergenLooked,
    declared_risk: t.declaredRisk,
    declared_risk_end: t.declaredRiskEnd,
    kitchen_rates: t.kitchenRates,
  } as const;
  for (const [name, table] of Object.entries(counted)) {
    const [row] = await db
      .select({ n: sql<number>`count(*)::int` })
      .from(table)
      .where(eq(table.kitchenId, kitchenId));
    if ((row?.n ?? 0) !== (seen.get(name as RecordTable) ?? 0)) return true;
  }
  // Prices of before they were kept by the pack are nobody's, and no line tells of them.
  const [priced] = await db
    .select({ n: sql<number>`count(*)::int` })
    .from(t.ingredientPrice)
    .where(and(eq(t.ingredientPrice.kitchenId, kitchenId), isNotNull(t.ingredientPrice.personId)));
  if ((priced?.n ?? 0) !== (seen.get('ingredient_price') ?? 0)) return true;
  if (!(await ingredientsAsKept(db, kitchenId))) return true;
  const [batches] = await db
    .select({
      begun: sql<number>`count(*)::int`,
      shut: sql<number>`count(*) FILTER (WHERE status <> 'open')::int`,
    })
    .from(t.batch)
    .where(eq(t.batch.kitchenId, kitchenId));
  const [signed] = await db
    .select({ n: sql<number>`count(*)::int` })
    .from(t.version)
    .where(and(eq(t.version.kitchenId, kitchenId), eq(t.version.status, 'signed')));
  return (
    (batches?.begun ?? 0) !== (seen.get('batch_start') ?? 0) ||
    (batches?.shut ?? 0) !== (seen.get('batch_close') ?? 0) ||
    (signed?.n ?? 0) !== (seen.get('signature') ?? 0)
  );
}
