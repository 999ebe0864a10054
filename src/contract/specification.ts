/** What is asked of a supplier in writing, what they answered, and the points a delivery is checked on. */
import { z } from 'zod';
import { celsius, Id, Instant, Note, Text } from './quantities.ts';

const grams = z.number().positive().max(10_000_000);
const clock = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'a time of day, e.g. 07:30');

/** A line drawn on the picture of the piece: where it is cut, how long, how wide. */
export const DimensionInput = z
  .strictObject({
    name: Text(60),
    lowMm: z.number().min(1).max(3_000).nullable(),
    highMm: z.number().min(1).max(3_000).nullable(),
  })
  .refine((d) => d.lowMm !== null || d.highMm !== null, { message: 'at least one of lowMm and highMm' })
  .refine((d) => d.lowMm === null || d.highMm === null || d.lowMm <= d.highMm, {
    message: 'lowMm no more than highMm',
  });

export const SpecificationContent = z.strictObject({
  /** `whole animal`, or the part by the name the trade uses. */
  what: Text(80),
  /** Age or class as the trade says it (hogget, spent hen, over 24 weeks), and the oldest in months where it matters. */
  ageClass: Note(120),
  ageMonthsAtMost: z.number().positive().max(600).nullable(),
  breedOrSystem: Note(120),
  /** Weight of an animal, or of a piece where a part is bought [g]. */
  pieceGrams: z.strictObject({ low: grams.nullable(), high: grams.nullable() }),
  stunning: Note(300),
  bleeding: Note(300),
  /** How the skin is treated, in the order it is done. */
  skin: z
    .array(
      z.enum([
        'dry plucked',
        'scalded',
        'wax plucked',
        'singed',
        'shaved',
        'scraped',
        'skinned',
        'left on, not treated',
      ]),
    )
    .max(6),
  head: z.enum(['on', 'off', 'off, sent with it', 'not asked']),
  feet: z.enum(['on', 'off', 'off, sent with it', 'not asked']),
  drawn: z.enum(['drawn', 'undrawn', 'drawn, offal sent with it', 'not asked']),
  cut: Note(600),
  dimensions: z.array(DimensionInput).max(12),
  blood: z.enum(['not wanted', 'kept for us', 'not asked']),
  bloodHow: Note(300),
  chilledToC: celsius(-40, 15).nullable(),
  chilledWithinHours: z.number().positive().max(240).nullable(),
  packed: Note(300),
  /** What must stand on label or paper. */
  labelled: z.array(Text(120)).max(20),
  documents: z.array(Text(120)).max(20),
  /** 0 Monday … 6 Sunday. */
  days: z.array(z.int().min(0).max(6)).max(7),
  from: clock.nullable(),
  until: clock.nullable(),
  arrivesAtMostC: celsius(-40, 15).nullable(),
  /** Never taken: one thing a line. */
  refusedIf: z.array(Text(200)).max(30),
  note: Note(2_000),
});
export type SpecificationContent = z.infer<typeof SpecificationContent>;

export const SpecificationAnswer = z.strictObject({
  id: Id,
  answer: z.enum(['agreed', 'agreed with changes', 'declined']),
  /** Who at the supplier said it. */
  saidBy: Text(120),
  note: Note(1_000),
  at: Instant,
  by: z.string(),
});
export type SpecificationAnswer = z.infer<typeof SpecificationAnswer>;

export const SpecificationVersion = z.strictObject({
  id: Id,
  specificationId: Id,
  number: z.int().min(1),
  rev: z.int().min(0),
  status: z.enum(['draft', 'sent']),
  reason: Note(500),
  content: SpecificationContent,
  createdAt: Instant,
  createdBy: z.string(),
  sentAt: Instant.nullable(),
  sentBy: z.string().nullable(),
  answers: z.array(SpecificationAnswer),
});
export type SpecificationVersion = z.infer<typeof SpecificationVersion>;

export const Specification = z.strictObject({
  id: Id,
  supplierId: Id,
  supplierName: z.string(),
  species: Text(40),
  name: Text(120),
  createdAt: Instant,
  endedAt: Instant.nullable(),
  /** The newest version that was sent and last answered `agreed` or `agreed with changes`. */
  inForce: z.int().nullable(),
  versions: z.array(SpecificationVersion),
});
export type Specification = z.infer<typeof Specification>;
