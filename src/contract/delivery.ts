/** What came, checked point by point against what was asked, and what was decided. */
import { z } from 'zod';
import { LotOrigin } from './lot-origin.ts';
import { celsius, Id, Instant, Minor, Note, Text } from './quantities.ts';

/** Temperature limits differ by what it is. */
export const ProductClass = z.enum([
  'poultry',
  'red meat',
  'offal',
  'blood',
  'large game',
  'small game',
  'rabbit',
  'fish',
  'fat and bone',
]);
export type ProductClass = z.infer<typeof ProductClass>;

export const CivilDate = z.iso.date();

/** One thing that came: becomes one lot when it is accepted. */
export const DeliveryLine = z.strictObject({
  id: Id,
  kind: z.enum(['whole', 'part', 'other']),
  what: Text(120),
  species: Text(40).nullable(),
  partId: Id.nullable(),
  class: ProductClass.nullable(),
  count: z.int().min(1).max(100_000).nullable(),
  grams: z.number().positive().max(10_000_000),
  /** Measured between two pieces, or in the core [°C]. */
  arrivalC: celsius(-60, 60).nullable(),
  /** Said again because it was doubted: the temperature is meant as typed. */
  arrivalCMeant: z.boolean(),
  frozen: z.boolean(),
  /** The kitchen's code for the lot. */
  code: Text(60),
  /** The supplier's lot or batch, and the animals' tags, as on the label. */
  tradeLot: Text(80).nullable(),
  tags: z.array(Text(60)).max(2_000),
  ageMonthsAtMost: z.number().min(0).max(600).nullable(),
  /** Left out, or null: the papers say nothing of it. */
  origin: LotOrigin.nullable().optional(),
  slaughteredOn: CivilDate.nullable(),
  useBy: CivilDate.nullable(),
  cost: Minor.nullable(),
  /** This line alone is refused: nothing of it comes in. */
  refused: z.boolean(),
  note: Note(500),
});
export type DeliveryLine = z.infer<typeof DeliveryLine>;

export const DeliveryCheck = z.strictObject({
  /** The point's key in the specification, e.g. `arrivesAtMostC`, `refusedIf[2]`. */
  point: Text(80),
  asked: Text(700),
  met: z.enum(['met', 'not met', 'not looked at']),
  found: Note(300),
});
export type DeliveryCheck = z.infer<typeof DeliveryCheck>;

export const DeliveryInput = z.strictObject({
  id: Id,
  supplierId: Id,
  /** The version in force; null where nothing was ever agreed with this supplier for it. */
  specificationVersionId: Id.nullable(),
  arrivedAt: Instant,
  documents: Note(1_000),
  lines: z.array(DeliveryLine).min(1).max(200),
  checks: z.array(DeliveryCheck).max(100),
  decision: z.enum(['accepted', 'accepted with deviation', 'refused']),
  reason: Note(1_000),
});
export type DeliveryInput = z.infer<typeof DeliveryInput>;

export const Delivery = z.strictObject({
  ...DeliveryInput.shape,
  supplierName: z.string(),
  specificationName: z.string().nullable(),
  specificationNumber: z.int().nullable(),
  pointsMet: z.int(),
  pointsAsked: z.int(),
  warmestC: z.number().nullable(),
  grams: z.number(),
  cost: Minor.nullable(),
  lotIds: z.array(Id),
  /** The lots it made, by the code on the label. */
  lots: z.array(z.strictObject({ id: Id, code: z.string() })),
  photos: z.array(Id),
  recordedAt: Instant,
  by: z.string(),
});
export type Delivery = z.infer<typeof Delivery>;

export const DeliverySummary = Delivery.omit({
  lines: true,
  checks: true,
  lotIds: true,
  lots: true,
  photos: true,
});
export type DeliverySummary = z.infer<typeof DeliverySummary>;

/** A supplier over time: a row a delivery, oldest first. */
export const SupplierTrend = z.strictObject({
  supplierId: Id,
  deliveries: z.array(
    z.strictObject({
      deliveryId: Id,
      arrivedAt: Instant,
      decision: DeliveryInput.shape.decision,
      pointsMet: z.int(),
      pointsAsked: z.int(),
      warmestC: z.number().nullable(),
      grams: z.number(),
      costPerKg: z.number().nullable(),
      /** Of what was broken down of it: per cent that became parts that are used. */
      usedPct: z.number().nullable(),
    }),
  ),
});
export type SupplierTrend = z.infer<typeof SupplierTrend>;

export const PhotoInput = z.strictObject({
  id: Id,
  subject: z.enum(['delivery', 'lot', 'specification']),
  subjectId: Id,
  mime: z.enum(['image/jpeg', 'image/png', 'image/webp']),
  /** Made small on the device: at most 2 MB. */
  base64: z.base64().max(2_700_000),
  caption: Note(200),
  takenAt: Instant,
});
export type PhotoInput = z.infer<typeof PhotoInput>;
