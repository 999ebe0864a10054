/** What batches hold of their lots, by the lots' moves. */
import { and, eq, inArray, sql } from 'drizzle-orm';
import type { BatchDraw } from '../contract/batch-draws.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { AppError, notFound } from './errors.ts';

const signed = sql<number>`sum(CASE ${t.lotMove.what} WHEN 'drawn' THEN ${t.lotMove.grams} ELSE -${t.lotMove.grams} END)`;

/** What each batch holds of each lot: drawn, less what was put back [g]; only what is more than nothing. */
export async function drawsOf(
  db: Db,
  where: { readonly batchId: string } | { readonly lotId: string },
): Promise<(BatchDraw & { readonly batchId: string })[]> {
  const of = 'batchId' in where ? eq(t.lotMove.batchId, where.batchId) : eq(t.lotMove.lotId, where.lotId);
  const rows = await db
    .select({ batchId: t.lotMove.batchId, lotId: t.lotMove.lotId, grams: signed })
    .from(t.lotMove)
    .where(and(of, inArray(t.lotMove.what, ['drawn', 'put back']), sql`${t.lotMove.batchId} IS NOT NULL`))
    .groupBy(t.lotMove.batchId, t.lotMove.lotId);
  return rows.flatMap((r) =>
    r.batchId === null || Number(r.grams) <= 1e-9
      ? []
      : [{ batchId: r.batchId, lotId: r.lotId, grams: Number(r.grams) }],
  );
}

/** Was the batch begun with just these draws? What was put back since does not count. */
export async function begunWith(
  db: Db,
  batch: { id: string; startedAt: Date },
  draws: readonly BatchDraw[],
): Promise<boolean> {
  const rows = await db
    .select({ lotId: t.lotMove.lotId, grams: t.lotMove.grams })
    .from(t.lotMove)
    .where(
      and(
        eq(t.lotMove.batchId, batch.id),
        eq(t.lotMove.what, 'drawn'),
        eq(t.lotMove.recordedAt, batch.startedAt),
      ),
    );
  return (
    rows.length === draws.length &&
    draws.every((d) => rows.some((r) => r.lotId === d.lotId && r.grams === d.grams))
  );
}

/** The open batch that a lot's move is for, with what it holds of the lot [g]. */
export async function batchOfMove(
  db: Db,
  kitchenId: string,
  lotId: string,
  batchId: string,
): Promise<{ readonly code: string; readonly heldGrams: number }> {
  const [batch] = await db
    .select({ code: t.batch.code, status: t.batch.status })
    .from(t.batch)
    .where(and(eq(t.batch.kitchenId, kitchenId), eq(t.batch.id, batchId)));
  if (batch === undefined) throw notFound('batch');
  const [named] = await db
    .select({ lotId: t.batchLot.lotId })
    .from(t.batchLot)
    .where(and(eq(t.batchLot.batchId, batchId), eq(t.batchLot.lotId, lotId)));
  if (named === undefined)
    throw new AppError('conflict', `Batch ${batch.code} was not started out of this lot.`, [
      { path: 'batchId', found: batch.code, allowed: 'a batch that names this lot' },
    ]);
  if (batch.status !== 'open')
    throw new AppError(
      'frozen',
      `Batch ${batch.code} is ${batch.status}: what it took stays as it is written.`,
    );
  const held = (await drawsOf(db, { batchId })).find((d) => d.lotId === lotId);
  return { code: batch.code, heldGrams: held?.grams ?? 0 };
}
