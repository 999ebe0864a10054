/** Lots in the house: what is left, until when, what was done with them. */
import { z } from 'zod';
import { CivilDate, ProductClass } from './delivery.ts';
import { BseStanding } from './lot-origin.ts';
import { Id, Instant, Minor, Note, Text } from './quantities.ts';

export const LotMoveInput = z.strictObject({
  id: Id,
  what: z.enum([
    'drawn',
    'put back',
    'frozen',
    'thawed',
    'thrown away',
    'made a by-product',
    'weighed again',
    'use-by shortened',
  ]),
  /** Drawn or thrown away: how much went. Put back: how much a batch did not use. Weighed again: what is left by the scales [g]. */
  grams: z.number().min(0).max(10_000_000).nullable(),
  /** Frozen, thawed, use-by shortened: the new last day. */
  useBy: CivilDate.nullable(),
  reason: Note(500),
  at: Instant,
  /** Drawn: more for an open batch of this lot. Put back: the batch that gives it back. */
  batchId: Id.nullable().optional(),
});
export type LotMoveInput = z.infer<typeof LotMoveInput>;

export const LotMove = z.strictObject({
  ...LotMoveInput.shape,
  what: z.enum([...LotMoveInput.shape.what.options, 'broken down']),
  leftGrams: z.number(),
  batchId: Id.nullable(),
  breakdownId: Id.nullable(),
  by: z.string(),
  recordedAt: Instant,
});
export type LotMove = z.infer<typeof LotMove>;

export const ShelfLot = z.strictObject({
  id: Id,
  code: Text(60),
  kind: z.enum(['whole', 'part', 'other']),
  what: Text(120),
  species: z.string().nullable(),
  partId: Id.nullable(),
  partName: z.string().nullable(),
  class: ProductClass.nullable(),
  supplierId: Id.nullable(),
  supplierName: z.string().nullable(),
  count: z.int().nullable(),
  grams: z.number(),
  leftGrams: z.number(),
  arrivedAt: Instant,
  arrivalC: z.number().nullable(),
  useBy: CivilDate.nullable(),
  /** `ok`, `last day`, `past`, `not known`: by the kitchen's own calendar day. */
  standing: z.enum(['ok', 'last day', 'past', 'not known']),
  frozenAt: Instant.nullable(),
  thawedAt: Instant.nullable(),
  byProduct: z.boolean(),
  /** The most the animal may be old, as its papers say; null where they do not. */
  ageMonthsAtMost: z.number().nullable(),
  /** The standing for BSE of where it was born and raised; null: nobody has shown it. */
  bse: BseStanding.nullable(),
  /** Why nothing may be drawn of it; null when it may. */
  blocked: z.string().nullable(),
  cost: Minor.nullable(),
  costPerKg: z.number().nullable(),
  parentIds: z.array(Id),
  note: Note(),
});
export type ShelfLot = z.infer<typeof ShelfLot>;

export const ShelfLotDetail = z.strictObject({
  ...ShelfLot.shape,
  tradeLot: z.string().nullable(),
  tags: z.array(z.string()),
  slaughteredOn: CivilDate.nullable(),
  bornIn: z.string().nullable(),
  raisedIn: z.string().nullable(),
  deliveryId: Id.nullable(),
  moves: z.array(LotMove),
  /** Up to the animal and down to what was made of it, nearest first. */
  ancestors: z.array(z.strictObject({ id: Id, code: z.string(), what: z.string() })),
  descendants: z.array(z.strictObject({ id: Id, code: z.string(), what: z.string() })),
  batches: z.array(
    z.strictObject({
      id: Id,
      code: z.string(),
      dishName: z.string(),
      /** Whether it still is open, and may draw more or give back. */
      open: z.boolean(),
      /** What it holds of this lot [g]; null where its weight was not written. */
      grams: z.number().nullable(),
    }),
  ),
  /** Dishes whose part this is. */
  dishes: z.array(z.strictObject({ id: Id, name: z.string() })),
  photos: z.array(Id),
});
export type ShelfLotDetail = z.infer<typeof ShelfLotDetail>;
