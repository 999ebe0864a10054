/** What a batch takes out of its lots, and what to take first: what runs out first goes first. Pure. */
import { z } from 'zod';
import { Id } from './quantities.ts';
import type { ShelfLot } from './shelf.ts';

export const BatchDraw = z.strictObject({
  lotId: Id,
  /** [g] */
  grams: z.number().positive().max(10_000_000),
});
export type BatchDraw = z.infer<typeof BatchDraw>;

type Offered = Pick<
  ShelfLot,
  'id' | 'leftGrams' | 'useBy' | 'standing' | 'arrivedAt' | 'blocked' | 'byProduct'
>;

/** Lots that may be drawn on now, what runs out first standing first; a last day that nobody has written comes last. */
export function inOrderOfUse<L extends Offered>(lots: readonly L[]): L[] {
  const day = (l: L) => l.useBy ?? '9999-12-31';
  return lots
    .filter((l) => l.blocked === null && !l.byProduct && l.standing !== 'past' && l.leftGrams > 0)
    .sort(
      (a, b) =>
        day(a).localeCompare(day(b)) || a.arrivedAt.localeCompare(b.arrivedAt) || a.id.localeCompare(b.id),
    );
}

export interface DrawOffer {
  readonly draws: readonly BatchDraw[];
  /** What the lots do not have [g]. */
  readonly shortGrams: number;
}

/** So much of these lots, in the order of use, to whole grams; a lot whose last day is not known is never offered by itself. */
export function offerDraws(lots: readonly Offered[], wantedGrams: number): DrawOffer {
  let missing = Math.max(0, Math.round(wantedGrams));
  const draws: BatchDraw[] = [];
  for (const lot of inOrderOfUse(lots)) {
    if (missing <= 0) break;
    if (lot.useBy === null) continue;
    const grams = Math.min(missing, lot.leftGrams);
    draws.push({ lotId: lot.id, grams });
    missing = Math.max(0, missing - grams);
  }
  return { draws, shortGrams: missing };
}
