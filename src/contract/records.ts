/** The records a kitchen keeps, as they cross the wire. Times are UTC instants; money is in minor units. */
import { z } from 'zod';
import { Agreement } from './agreement.ts';
import { BatchDraw } from './batch-draws.ts';
import { ProductClass } from './delivery.ts';
import { TableId } from './pantry.ts';
import { Composition, celsius, Id, Instant, Minor, Note, Text } from './quantities.ts';
import { Method } from './steps.ts';

export const Place = z.enum(['GB-ENG', 'GB-SCT', 'GB-WLS', 'GB-NIR', 'EU', 'US']);
export type Place = z.infer<typeof Place>;

export const Kitchen = z.strictObject({
  id: Id,
  name: Text(80),
  /** Invented data for looking round; never mixed with a kitchen's own. */
  demo: z.boolean(),
  place: Place,
  /** IANA time zone. */
  zone: Text(60),
  currency: z.string().length(3),
  units: z.enum(['metric', 'US']),
  createdAt: Instant,
});
export type Kitchen = z.infer<typeof Kitchen>;

export const Person = z.strictObject({
  id: Id,
  name: Text(80),
  role: z.enum(['head chef', 'cook', 'buyer', 'auditor']),
});
export type Person = z.infer<typeof Person>;

export const Supplier = z.strictObject({
  id: Id,
  name: Text(120),
  note: Note(),
  /** Whom to ask for, telephone, e-mail. */
  contact: Note(500),
  address: Note(500),
  /** Approval or registration number of the slaughterhouse, the farm or the game handling establishment. */
  approval: Note(80),
});
/** A supplier as it is added: what nobody has said is empty. */
export const SupplierInput = z.strictObject({
  ...Supplier.pick({ name: true, note: true }).shape,
  contact: Supplier.shape.contact.default(''),
  address: Supplier.shape.address.default(''),
  approval: Supplier.shape.approval.default(''),
});
export type SupplierInput = z.input<typeof SupplierInput>;
/** What a supplier's record is changed to; what is left out stays as it is. */
export const SupplierChange = Supplier.omit({ id: true }).partial();
export type Supplier = z.infer<typeof Supplier>;

/** A part of an animal as the kitchen names it. */
export const Part = z.strictObject({
  id: Id,
  species: Text(40),
  name: Text(80),
  /** Share of the dressed carcass by weight, where known [%]. */
  sharePct: z.number().min(0).max(100).nullable(),
  /** On the menu, used in stock or staff food, or thrown away. */
  use: z.enum(['menu', 'kitchen', 'thrown away']),
  /** Which temperature limits it comes under; null where nobody has said. */
  class: ProductClass.nullable(),
  /** How long it keeps once it is cut [days]. */
  lifeDays: z.number().positive().max(3_650).nullable(),
  /** What a kilogram would fetch. */
  valuePerKg: Minor.nullable(),
  /** The chef’s own share of the cost: any number, only the ratio counts. */
  costShare: z.number().min(0).max(1_000_000).nullable(),
  /** Lost of it before it is served, one after the other [%]; null where nobody has said. */
  trimPct: z.number().min(0).max(99).nullable(),
  cookingLossPct: z.number().min(0).max(99).nullable(),
  /** Work on a kilogram as it was cut [min]. */
  labourMinPerKg: z.number().min(0).max(1_000).nullable(),
  /** Row of the published table that it is reckoned by; 'none': none fits; null: nobody has chosen, it is guessed by its name. */
  tableId: TableId.nullable(),
});
/** A part as it is named: what nobody has said is not known. */
export const PartInput = z.strictObject({
  ...Part.pick({ species: true, name: true, sharePct: true, use: true }).shape,
  class: ProductClass.nullable().default(null),
  lifeDays: Part.shape.lifeDays.default(null),
  valuePerKg: Part.shape.valuePerKg.default(null),
  costShare: Part.shape.costShare.default(null),
  trimPct: Part.shape.trimPct.default(null),
  cookingLossPct: Part.shape.cookingLossPct.default(null),
  labourMinPerKg: Part.shape.labourMinPerKg.default(null),
  tableId: Part.shape.tableId.default(null),
});
/** What a part is changed to; what is left out stays as it is. */
export const PartChange = Part.omit({ id: true, species: true, name: true }).partial();
export type PartInput = z.input<typeof PartInput>;
export type Part = z.infer<typeof Part>;

export const Lot = z.strictObject({
  id: Id,
  code: Text(60),
  supplierId: Id.nullable(),
  partId: Id.nullable(),
  what: Text(120),
  grams: z.number().positive().max(10_000_000),
  arrivedAt: Instant,
  arrivalC: celsius(-60, 60).nullable(),
  note: Note(),
});
export type Lot = z.infer<typeof Lot>;
/** A lot taken in by itself, without a delivery that was checked. */
export const LotInput = Lot.omit({ id: true });

/** An ingredient in the few words that a list of them needs; the pantry has all of it. */
export const Ingredient = z.strictObject({
  id: Id,
  name: Text(120),
  composition: Composition.nullable(),
  /** Salt within the ash, fraction of the weight. */
  salt: z.number().min(0).max(1).nullable(),
  /** Where the composition was published; empty when nobody has said. */
  source: z.string().max(400),
  pricePerKg: Minor.nullable(),
  /** Null: nobody has said. */
  allergens: z.array(z.string().max(60)).max(14).nullable(),
});
export type Ingredient = z.infer<typeof Ingredient>;

/** Whether the parts may be served where this kitchen is. */
export const LawStatus = z.strictObject({
  status: z.enum([
    'food',
    'food on conditions',
    'by-product by default: ask',
    'prohibited',
    'not known: ask',
  ]),
  part: z.string(),
  reason: z.string(),
  citation: z.string(),
  confidence: z.string(),
  /** The day the row was last checked; not kept with the oldest records, null where there is no row. */
  checked: z.string().nullable().optional(),
});
export type LawStatus = z.infer<typeof LawStatus>;

/** A part that a dish is made of, by its own name, a step's or a lot's, and whether it may be served. */
export const PartUsed = z.strictObject({
  species: z.string(),
  part: z.string(),
  /** Where it is named, in words. */
  from: z.string(),
  /** The same as a path: `part`, `method[2].part`, `lots`. */
  path: z.string(),
  law: LawStatus,
  /** Stops the signature and every batch while no agreement stands. */
  stops: z.boolean(),
  agreed: Agreement.nullable(),
});
export type PartUsed = z.infer<typeof PartUsed>;

export const DishSummary = z.strictObject({
  id: Id,
  name: Text(120),
  species: Text(40),
  part: Text(80),
  stage: z.enum(['idea', 'in trial', 'signed', 'retired']),
  story: Note(1_000),
  versionCount: z.int(),
  signedVersion: z.int().nullable(),
  stepKinds: z.array(z.string()),
  law: LawStatus,
  /** By whose word the stop on its part is lifted today; null where it stands, or where there is none. */
  agreed: Agreement.nullable(),
  updatedAt: Instant,
});
export type DishSummary = z.infer<typeof DishSummary>;

/** What was true of the cook when the version was signed: the engine's answer, kept. */
export const SignedEvidence = z.strictObject({
  engine: z.string(),
  verdicts: z.array(
    z.strictObject({
      stepId: Id,
      stepName: z.string(),
      lethalityMin: z.number(),
      /** By lifting out; versions signed before it was kept do not have it. */
      lethalityAtLiftOutMin: z.number().optional(),
      neededMin: z.number(),
      referenceC: z.number(),
      zC: z.number(),
      passes: z.boolean(),
      warmestC: z.number(),
    }),
  ),
  /** Finish steps with a programme; not kept where there was none. */
  reheats: z
    .array(
      z.strictObject({
        stepId: Id,
        stepName: z.string(),
        startC: z.number(),
        coldestC: z.number(),
        rules: z.array(
          z.strictObject({
            rule: z.string(),
            title: z.string(),
            passes: z.boolean().nullable(),
            why: z.string(),
          }),
        ),
      }),
    )
    .optional(),
  cautions: z.array(z.string()),
  /** By whose word a stop of the law was lifted; not kept where there was none. */
  agreements: z
    .array(z.strictObject({ species: z.string(), part: z.string(), status: z.string(), ...Agreement.shape }))
    .optional(),
});
export type SignedEvidence = z.infer<typeof SignedEvidence>;

export const Version = z.strictObject({
  id: Id,
  dishId: Id,
  number: z.int().min(1),
  /** Counts saves of a draft; a save names the count it started from, so that two hands don't overwrite one another. */
  rev: z.int().min(0),
  status: z.enum(['draft', 'signed']),
  reason: Note(500),
  method: Method,
  createdAt: Instant,
  createdBy: z.string(),
  signedAt: Instant.nullable(),
  signedBy: z.string().nullable(),
  evidence: SignedEvidence.nullable(),
});
export type Version = z.infer<typeof Version>;

export const Dish = z.strictObject({
  ...DishSummary.shape,
  versions: z.array(Version.omit({ method: true })),
  /** The newest version, with its method. */
  current: Version,
  /** Every part that it is made of: by its name, by the steps of its newest version, by the lots of its batches. */
  partsUsed: z.array(PartUsed),
});
export type Dish = z.infer<typeof Dish>;

export const Trial = z.strictObject({
  id: Id,
  dishId: Id,
  versionId: Id,
  versionNumber: z.int(),
  name: Text(120),
  expect: Note(1_000),
  startedAt: Instant,
  startedBy: z.string(),
  conclusion: Note(2_000).nullable(),
  closedAt: Instant.nullable(),
});
export type Trial = z.infer<typeof Trial>;

export const Reading = z.strictObject({
  /** Made by the device that recorded it: the same reading sent twice is one reading. */
  id: Id,
  stepId: Id,
  askId: Id,
  kind: z.enum(['weight', 'temperature', 'duration', 'count', 'tick', 'note']),
  /** g, °C, min, pieces; 1 for a tick; null for a note. */
  value: z.number().min(-1e9).max(1e9).nullable(),
  note: Note(1_000),
  /** When it was measured, by the recording device. */
  at: Instant,
  /** The reading this one corrects; the old line stays. */
  corrects: Id.nullable(),
});
export type Reading = z.infer<typeof Reading>;

export const RecordedReading = z.strictObject({
  ...Reading.shape,
  by: z.string(),
  recordedAt: Instant,
  /** Against the limits of the version that is being made: 'in', 'out', or 'no limit'. */
  holds: z.enum(['in', 'out', 'no limit']),
});
export type RecordedReading = z.infer<typeof RecordedReading>;

/** One rule's word on one log. `passes` null: undecided, said why. */
export const Judgement = z.strictObject({
  rule: z.string(),
  title: z.string(),
  type: z.enum(['statutory', 'guidance', 'model']),
  place: z.string(),
  passes: z.boolean().nullable(),
  value: z.number().nullable(),
  limit: z.number().nullable(),
  unit: z.string(),
  failedAtMin: z.number().nullable(),
  decidingMin: z.number().nullable(),
  why: z.string(),
  source: z.string(),
});
export type Judgement = z.infer<typeof Judgement>;

export const ProbePoint = z.strictObject({ s: z.number(), C: z.number() });

export const ProbeLog = z.strictObject({
  id: Id,
  batchId: Id.nullable(),
  trialId: Id.nullable(),
  dishId: Id.nullable(),
  stepId: Id.nullable(),
  name: Text(200),
  channel: Text(120),
  /** Seconds from the first point. */
  points: z.array(ProbePoint),
  startedAt: Instant.nullable(),
  warnings: z.array(z.string()),
  sha256: z.string(),
  judgements: z.array(Judgement),
  importedAt: Instant,
  importedBy: z.string(),
});
export type ProbeLog = z.infer<typeof ProbeLog>;

/** Out of limit: what was decided, by whom, why. */
export const Decision = z.strictObject({
  id: Id,
  stepId: Id,
  askId: Id.nullable(),
  what: z.enum([
    'held longer',
    'cooked again',
    'chilled faster',
    'portioned smaller',
    'discarded',
    'kept back to ask',
  ]),
  reason: Text(1_000),
  at: Instant,
  by: z.string(),
});
export type Decision = z.infer<typeof Decision>;

export const BatchSummary = z.strictObject({
  id: Id,
  code: Text(60),
  dishId: Id,
  dishName: z.string(),
  versionId: Id,
  versionNumber: z.int(),
  pieces: z.int().min(1).max(10_000),
  startedAt: Instant,
  startedBy: z.string(),
  status: z.enum(['open', 'closed', 'discarded']),
  closedAt: Instant.nullable(),
  closedBy: z.string().nullable(),
  open: z.int(),
  out: z.int(),
});
export type BatchSummary = z.infer<typeof BatchSummary>;

export const Batch = z.strictObject({
  ...BatchSummary.shape,
  method: Method,
  lots: z.array(Lot),
  /** What it holds of its lots by their moves: drawn, less what was put back. */
  draws: z.array(BatchDraw),
  readings: z.array(RecordedReading),
  decisions: z.array(Decision),
  logs: z.array(ProbeLog),
  /** Why it cannot be closed as fit to serve yet; empty when it can. */
  blocking: z.array(z.string()),
  closingNote: Note(1_000).nullable(),
});
export type Batch = z.infer<typeof Batch>;

export const JournalLine = z.strictObject({
  seq: z.int(),
  at: Instant,
  by: z.string(),
  action: z.string(),
  subject: z.string(),
  subjectId: z.string(),
  summary: z.string(),
  hash: z.string(),
});
export type JournalLine = z.infer<typeof JournalLine>;
