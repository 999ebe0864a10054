/** Batches: made from a signed version, closed only when nothing stands in the way. */
import { and, asc, desc, eq, inArray } from 'drizzle-orm';
import type { BatchDraw } from '../contract/batch-draws.ts';
import type { BodyOf } from '../contract/operations.ts';
import type {
  Batch,
  BatchSummary,
  Decision,
  Judgement,
  ProbeLog,
  RecordedReading,
} from '../contract/records.ts';
import type { Method } from '../contract/steps.ts';
import { formatQuantity, type UnitSystem } from '../core/units.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { asLot } from './animals.ts';
import { type Actor, type App, change, kitchenOf, look } from './app.ts';
import { nextCode } from './batch-code.ts';
import { checkDraws, writeDraws } from './batch-draws.ts';
import { begunWith, drawsOf } from './batch-holds.ts';
import { type BatchRecords, outAndDecided, stateOf } from './batch-state.ts';
import { dayIn } from './civil-day.ts';
import { dishRow, nameOf, namesIn, versionRow } from './dishes.ts';
import { AppError, notFound } from './errors.ts';
import { partsOfLots, partsUsed, stopsOf, unlawful } from './law.ts';
import { blockedWhy } from './lot-rules.ts';
import { closingDigest, startDigest } from './record-digests.ts';

export type BatchRow = typeof t.batch.$inferSelect;

export async function batchRow(db: Db, kitchenId: string, batchId: string): Promise<BatchRow> {
  const [batch] = await db
    .select()
    .from(t.batch)
    .where(and(eq(t.batch.kitchenId, kitchenId), eq(t.batch.id, batchId)));
  if (batch === undefined) throw notFound('batch');
  return batch;
}

const logFields = {
  id: t.probeLog.id,
  batchId: t.probeLog.batchId,
  trialId: t.probeLog.trialId,
  dishId: t.probeLog.dishId,
  stepId: t.probeLog.stepId,
  name: t.probeLog.name,
  channel: t.probeLog.channel,
  startedAt: t.probeLog.startedAt,
  warnings: t.probeLog.warnings,
  sha256: t.probeLog.sha256,
  judgements: t.probeLog.judgements,
  importedAt: t.probeLog.importedAt,
  personId: t.probeLog.personId,
};

/** Probe logs as they cross the wire, in the order in which they came. */
export async function readLogs(db: Db, kitchenId: string, where: ReturnType<typeof eq>): Promise<ProbeLog[]> {
  const names = await namesIn(db, kitchenId);
  const rows = await db
    .select({ ...logFields, points: t.probeLog.points })
    .from(t.probeLog)
    .where(and(eq(t.probeLog.kitchenId, kitchenId), where))
    .orderBy(asc(t.probeLog.line));
  return rows.map(({ personId, ...row }) => ({
    ...row,
    points: row.points as ProbeLog['points'],
    startedAt: row.startedAt?.toISOString() ?? null,
    warnings: row.warnings as string[],
    judgements: row.judgements as Judgement[],
    importedAt: row.importedAt.toISOString(),
    importedBy: nameOf(names, personId),
  }));
}

/** What decides over several batches, without what is only shown. */
async function recordsOf(db: Db, batches: readonly BatchRow[]): Promise<Map<string, BatchRecords>> {
  const ids = batches.map((b) => b.id);
  const found = new Map<string, BatchRecords>();
  if (ids.length === 0) return found;
  const versions = await db
    .select({ id: t.version.id, method: t.version.method })
    .from(t.version)
    .where(inArray(t.version.id, [...new Set(batches.map((b) => b.versionId))]));
  const methods = new Map(versions.map((v) => [v.id, v.method as Method]));
  const readings = await db
    .select()
    .from(t.reading)
    .where(inArray(t.reading.batchId, ids))
    .orderBy(asc(t.reading.line));
  const decisions = await db
    .select()
    .from(t.decision)
    .where(inArray(t.decision.batchId, ids))
    .orderBy(asc(t.decision.line));
  const logs = await db
    .select(logFields)
    .from(t.probeLog)
    .where(inArray(t.probeLog.batchId, ids))
    .orderBy(asc(t.probeLog.line));
  for (const batch of batches)
    found.set(batch.id, {
      method: methods.get(batch.versionId) ?? [],
      readings: readings.filter((r) => r.batchId === batch.id),
      decisions: decisions.filter((d) => d.batchId === batch.id),
      logs: logs
        .filter((l) => l.batchId === batch.id)
        .map((l) => ({ ...l, judgements: l.judgements as Judgement[] })),
    });
  return found;
}

async function summaries(db: Db, kitchenId: string, batches: readonly BatchRow[]) {
  const names = await namesIn(db, kitchenId);
  const records = await recordsOf(db, batches);
  const dishes = await db
    .select({ versionId: t.version.id, number: t.version.number, dishId: t.dish.id, dishName: t.dish.name })
    .from(t.version)
    .innerJoin(t.dish, eq(t.dish.id, t.version.dishId))
    .where(eq(t.version.kitchenId, kitchenId));
  return batches.map((batch) => {
    const dish = dishes.find((d) => d.versionId === batch.versionId);
    const record = records.get(batch.id);
    if (dish === undefined || record === undefined) throw new Error(`batch ${batch.id} has no version`);
    const state = stateOf(record);
    const summary: BatchSummary = {
      id: batch.id,
      code: batch.code,
      dishId: dish.dishId,
      dishName: dish.dishName,
      versionId: batch.versionId,
      versionNumber: dish.number,
      pieces: batch.pieces,
      startedAt: batch.startedAt.toISOString(),
      startedBy: nameOf(names, batch.startedBy),
      status: batch.status as BatchSummary['status'],
      closedAt: batch.closedAt?.toISOString() ?? null,
      closedBy: batch.closedBy === null ? null : nameOf(names, batch.closedBy),
      open: state.open,
      out: state.out,
    };
    return { summary, state, record };
  });
}

/** The newest first; the last 500. */
export const listBatches = (app: App, kitchenId: string): Promise<BatchSummary[]> =>
  look(app, async (db) => {
    await kitchenOf(db, kitchenId);
    const rows = await db
      .select()
      .from(t.batch)
      .where(eq(t.batch.kitchenId, kitchenId))
      .orderBy(desc(t.batch.startedAt), desc(t.batch.id))
      .limit(500);
    return (await summaries(db, kitchenId, rows)).map((b) => b.summary);
  });

export const getBatch = (app: App, kitchenId: string, batchId: string): Promise<Batch> =>
  look(app, async (db) => readBatch(db, await batchRow(db, kitchenId, batchId)));

export async function readBatch(db: Db, batch: BatchRow): Promise<Batch> {
  const [one] = await summaries(db, batch.kitchenId, [batch]);
  if (one === undefined) throw notFound('batch');
  const names = await namesIn(db, batch.kitchenId);
  const lots = await db
    .select({ lot: t.lot })
    .from(t.batchLot)
    .innerJoin(t.lot, eq(t.lot.id, t.batchLot.lotId))
    .where(eq(t.batchLot.batchId, batch.id))
    .orderBy(asc(t.lot.code));
  const readings = await db
    .select()
    .from(t.reading)
    .where(eq(t.reading.batchId, batch.id))
    .orderBy(asc(t.reading.line));
  const decisions = await db
    .select()
    .from(t.decision)
    .where(eq(t.decision.batchId, batch.id))
    .orderBy(asc(t.decision.line));
  return {
    ...one.summary,
    method: one.record.method,
    lots: lots.map(({ lot }) => asLot(lot)),
    readings: readings.map((r) => asReading(r, nameOf(names, r.personId))),
    decisions: decisions.map((d) => asDecision(d, nameOf(names, d.personId))),
    draws: (await drawsOf(db, { batchId: batch.id })).map(({ lotId, grams }) => ({ lotId, grams })),
    logs: await readLogs(db, batch.kitchenId, eq(t.probeLog.batchId, batch.id)),
    blocking: batch.status === 'open' ? [...one.state.blocking] : [],
    closingNote: batch.closingNote,
  };
}

const asReading = (r: typeof t.reading.$inferSelect, by: string): RecordedReading => ({
  id: r.id,
  stepId: r.stepId,
  askId: r.askId,
  kind: r.kind as RecordedReading['kind'],
  value: r.value,
  note: r.note,
  at: r.at.toISOString(),
  corrects: r.corrects,
  by,
  recordedAt: r.recordedAt.toISOString(),
  holds: r.holds as RecordedReading['holds'],
});

const asDecision = (d: typeof t.decision.$inferSelect, by: string): Decision => ({
  id: d.id,
  stepId: d.stepId,
  askId: d.askId,
  what: d.what as Decision['what'],
  reason: d.reason,
  at: d.at.toISOString(),
  by,
});

export const startBatch = (app: App, actor: Actor, input: BodyOf<'startBatch'>): Promise<Batch> =>
  change(app, actor, async (w) => {
    const { tx, kitchen, person, now, tell } = w;
    const draws = input.draws ?? [];
    const lotIds = [...new Set([...input.lotIds, ...draws.map((d) => d.lotId)])];
    const [before] = await tx.select().from(t.batch).where(eq(t.batch.id, input.id));
    if (before !== undefined) return sameBatch(tx, kitchen.id, before, input, lotIds);
    const version = await versionRow(tx, kitchen.id, input.versionId);
    if (version.status !== 'signed')
      throw new AppError(
        'conflict',
        `Version ${version.number} is a draft: a batch is made from a signed version. Sign it first.`,
      );
    const lots =
      lotIds.length === 0
        ? []
        : await tx
            .select()
            .from(t.lot)
            .where(and(eq(t.lot.kitchenId, kitchen.id), inArray(t.lot.id, lotIds)));
    const named = [
      ...input.lotIds.map((id, i) => ({ id, path: `lotIds[${i}]` })),
      ...draws.map(({ lotId }, i) => ({ id: lotId, path: `draws[${i}].lotId` })),
    ];
    for (const { id, path } of named)
      if (!lots.some((lot) => lot.id === id))
        throw new AppError('invalid', 'The batch names a lot that this kitchen does not have.', [
          { path, found: id, allowed: 'the id of a lot of this kitchen' },
        ]);
    const today = dayIn(kitchen.zone, now);
    for (const { id, path } of named) {
      const lot = lots.find((l) => l.id === id);
      const blocked = lot === undefined ? null : blockedWhy(lot, today);
      if (blocked !== null)
        throw new AppError('blocked', `The batch cannot be made of this: ${blocked}`, [
          { path, found: blocked, allowed: 'a lot that may be used' },
        ]);
    }
    checkDraws(draws, lots);
    await checkLaw(tx, kitchen, version, lots, today);
    const code = await nextCode(tx, kitchen, now);
    const row = {
      id: input.id,
      kitchenId: kitchen.id,
      versionId: version.id,
      code,
      pieces: input.pieces,
      startedAt: now,
      startedBy: person.id,
      status: 'open',
    };
    const [batch] = await tx.insert(t.batch).values(row).returning();
    if (batch === undefined) throw new Error('the batch was not written');
    if (lots.length > 0)
      await tx
        .insert(t.batchLot)
        .values(lots.map((lot) => ({ kitchenId: kitchen.id, batchId: batch.id, lotId: lot.id })));
    const moves = await writeDraws(w, batch, draws, lots);
    const made = await readBatch(tx, batch);
    await tell({
      action: 'started',
      subject: 'batch',
      subjectId: batch.id,
      records: [{ table: 'batch_start', id: batch.id, sha256: startDigest(batch, lotIds) }, ...moves],
      summary: `Batch ${code}: ${input.pieces} × ${made.dishName}, version ${version.number}${lots.length > 0 ? `, lots ${lots.map((l) => lotWords(l, draws, kitchen.units as UnitSystem)).join(', ')}` : ''}.`,
    });
    return made;
  });

const lotWords = (lot: typeof t.lot.$inferSelect, draws: readonly BatchDraw[], units: UnitSystem): string => {
  const grams = draws.find((d) => d.lotId === lot.id)?.grams;
  return grams === undefined ? lot.code : `${lot.code} (${formatQuantity(grams, 'mass', units)})`;
};

/** An agreement may have ended since the signature, and a lot may be of another part than the dish. */
async function checkLaw(
  tx: Db,
  kitchen: { id: string; place: string },
  version: { dishId: string; method: unknown },
  lots: readonly (typeof t.lot.$inferSelect)[],
  today: string,
): Promise<void> {
  const dish = await dishRow(tx, kitchen.id, version.dishId);
  const own = await partsUsed(tx, kitchen, dish, version.method as Method, today);
  const named = own.filter((u) => u.path !== 'lots');
  const problems = stopsOf([...named, ...(await partsOfLots(tx, kitchen, dish, lots, today))], kitchen.place);
  if (problems.length > 0) throw unlawful(problems);
}

async function sameBatch(
  tx: Db,
  kitchenId: string,
  before: BatchRow,
  input: BodyOf<'startBatch'>,
  lotIds: readonly string[],
): Promise<Batch> {
  const lots = await tx
    .select({ id: t.batchLot.lotId })
    .from(t.batchLot)
    .where(eq(t.batchLot.batchId, before.id));
  const same =
    before.kitchenId === kitchenId &&
    before.versionId === input.versionId &&
    before.pieces === input.pieces &&
    lots.length === lotIds.length &&
    lots.every((lot) => lotIds.includes(lot.id)) &&
    (await begunWith(tx, before, input.draws ?? []));
  if (!same) throw new AppError('conflict', 'Another batch already has this id.');
  return readBatch(tx, before);
}

export const closeBatch = (
  app: App,
  actor: Actor,
  batchId: string,
  input: BodyOf<'closeBatch'>,
): Promise<Batch> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const row = await batchRow(tx, kitchen.id, batchId);
    const batch = await readBatch(tx, row);
    if (row.status !== 'open') {
      // Sent twice: the first one counted.
      if (row.status === input.as && row.closingNote === input.note && row.closedBy === person.id)
        return batch;
      throw new AppError('frozen', shut(batch));
    }
    if (input.as === 'closed' && batch.blocking.length > 0)
      throw new AppError(
        'blocked',
        `Batch ${batch.code} cannot be closed as fit to serve: ${batch.blocking.join(' ')}`,
        batch.blocking.map((why) => ({
          path: 'as',
          found: why,
          allowed: 'nothing that stands in the way, or "discarded"',
        })),
      );
    if (input.as === 'discarded' && input.note.trim() === '')
      throw new AppError('invalid', 'Say why the batch is discarded.', [
        { path: 'note', found: 'nothing', allowed: 'a reason' },
      ]);
    const outOf = outAndDecided((await recordsOf(tx, [row])).get(batchId) as BatchRecords);
    const [closed] = await tx
      .update(t.batch)
      .set({ status: input.as, closedAt: now, closedBy: person.id, closingNote: input.note })
      .where(eq(t.batch.id, batchId))
      .returning();
    if (closed === undefined) throw new Error('the batch was not closed');
    await tell({
      action: input.as === 'closed' ? 'closed' : 'discarded',
      subject: 'batch',
      subjectId: batchId,
      summary: `Batch ${batch.code} ${input.as === 'closed' ? `closed as fit to serve${withWhat(outOf)}` : 'discarded'}${input.note === '' ? '' : `: ${input.note.slice(0, 200)}`}`,
      records: [{ table: 'batch_close', id: batchId, sha256: closingDigest(closed) }],
    });
    return readBatch(tx, closed);
  });

/** What is out is never left out where it is closed. */
const withWhat = (said: readonly string[]): string =>
  said.length === 0
    ? ''
    : `, with ${said.length} out of limit and decided on (${said.slice(0, 3).join('; ')}${said.length > 3 ? '; …' : ''})`;

export const shut = (batch: Pick<BatchSummary, 'code' | 'status' | 'closedAt' | 'closedBy'>) =>
  `Batch ${batch.code} was ${batch.status} by ${batch.closedBy} at ${batch.closedAt} and takes no more records.`;
