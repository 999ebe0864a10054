/** What a batch takes out of its lots when it is started. */
import type { BatchDraw } from '../contract/batch-draws.ts';
import type * as t from '../store/tables.ts';
import type { Writing } from './app.ts';
import { invalid } from './errors.ts';
import { writeMove } from './shelf.ts';

type LotRow = typeof t.lot.$inferSelect;

/** Every lot once, and none for more than it has; the caller has checked that each may be used. */
export function checkDraws(draws: readonly BatchDraw[], lots: readonly LotRow[]): void {
  for (const [i, { lotId, grams }] of draws.entries()) {
    const lot = lots.find((l) => l.id === lotId);
    if (draws.findIndex((d) => d.lotId === lotId) !== i)
      invalid('A lot is drawn on twice.', [
        {
          path: `draws[${i}].lotId`,
          found: lot?.code ?? lotId,
          allowed: 'each lot once, with all that is taken of it',
        },
      ]);
    if (lot !== undefined && grams > lot.leftGrams + 1e-9)
      invalid(`There is not that much of lot ${lot.code}.`, [
        { path: `draws[${i}].grams`, found: `${grams} g`, allowed: `at most ${lot.leftGrams} g` },
      ]);
  }
}

export async function writeDraws(
  w: Writing,
  batch: { readonly id: string; readonly code: string },
  draws: readonly BatchDraw[],
  lots: readonly LotRow[],
) {
  const records: Awaited<ReturnType<typeof writeMove>>[] = [];
  for (const { lotId, grams } of draws) {
    const lot = lots.find((l) => l.id === lotId);
    if (lot === undefined) throw new Error(`lot ${lotId} is drawn on and not named`);
    records.push(
      await writeMove(w, lot, {
        what: 'drawn',
        grams,
        leftGrams: Math.max(0, lot.leftGrams - grams),
        batchId: batch.id,
        reason: `Batch ${batch.code}.`,
      }),
    );
  }
  return records;
}
