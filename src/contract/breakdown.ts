/** Cutting up by weighing: the tree, every weighing, what came out, what it cost. */
import { z } from 'zod';
import { CivilDate, ProductClass } from './delivery.ts';
import { Id, Instant, Minor, Note, Text } from './quantities.ts';

/** A place in a kitchen's tree. What it is decides what becomes of it when the breakdown is finished. */
export const TreeNode = z.strictObject({
  /** Unique in the tree, lower case: `side`, `side/leg`. */
  id: z.string().regex(/^[a-z0-9][a-z0-9 /-]{0,59}$/, 'lower-case letters, digits, spaces, / and -'),
  parent: z.string().max(60).nullable(),
  name: Text(80),
  /** `part`: a lot is made of it. `step`: cut further. `drip`, `bone`, `bin`, `by-product`: leaves the kitchen's food. `sold`: leaves for money. */
  becomes: z.enum(['step', 'part', 'bone', 'drip', 'bin', 'by-product', 'sold']),
  class: ProductClass.nullable(),
  use: z.enum(['menu', 'kitchen', 'thrown away']),
  /** Wanted pieces an animal, where it is counted (two legs). */
  piecesPerAnimal: z.number().positive().max(1_000).nullable(),
});
export type TreeNode = z.infer<typeof TreeNode>;

export const BreakdownTree = z.strictObject({
  id: Id,
  species: Text(40),
  name: Text(120),
  nodes: z.array(TreeNode).min(1).max(200),
  createdAt: Instant,
  createdBy: z.string(),
});
export type BreakdownTree = z.infer<typeof BreakdownTree>;

export const WeighingInput = z.strictObject({
  id: Id,
  node: z.string().min(1).max(60),
  /** Which of the animals, counted from 1; null: all of them together. */
  animal: z.int().min(1).max(10_000).nullable(),
  grossGrams: z.number().min(0).max(10_000_000),
  tareGrams: z.number().min(0).max(10_000_000),
  pieces: z.int().min(0).max(100_000).nullable(),
  /** The weighing this one takes the place of; the old line stays. */
  corrects: Id.nullable(),
  /** True: that weighing was a mistake and nothing takes its place. */
  takenBack: z.boolean(),
  at: Instant,
});
export type WeighingInput = z.infer<typeof WeighingInput>;

export const Weighing = z.strictObject({
  ...WeighingInput.shape,
  grams: z.number(),
  by: z.string(),
  recordedAt: Instant,
});
export type Weighing = z.infer<typeof Weighing>;

/** How the money paid is carried to the parts. */
export const CostBy = z.enum(['weight', 'value', 'shares']);
export type CostBy = z.infer<typeof CostBy>;

export const NodeOutcome = z.strictObject({
  node: z.string(),
  name: z.string(),
  becomes: TreeNode.shape.becomes,
  grams: z.number(),
  /** False: nobody weighed it, and 0 g says nothing. */
  weighed: z.boolean(),
  pieces: z.int().nullable(),
  /** Of what went in [%]. */
  pct: z.number(),
  /** What did not come out of a step that was cut further [g]; 0 for a leaf. */
  unaccountedGrams: z.number(),
  /** Below zero where what is sold brought more than was paid. */
  cost: z.int().nullable(),
  lotId: Id.nullable(),
});
export type NodeOutcome = z.infer<typeof NodeOutcome>;

export const BreakdownOutcome = z.strictObject({
  inGrams: z.number(),
  outGrams: z.number(),
  unaccountedGrams: z.number(),
  usedPct: z.number(),
  paid: Minor.nullable(),
  costBy: CostBy,
  nodes: z.array(NodeOutcome),
  /** What each animal gave, where they were weighed one by one; null where they were weighed together. */
  byAnimal: z
    .array(z.strictObject({ animal: z.int(), inGrams: z.number(), grams: z.record(z.string(), z.number()) }))
    .nullable(),
  warnings: z.array(z.string()),
});
export type BreakdownOutcome = z.infer<typeof BreakdownOutcome>;

/** What the parts would carry by one rule, before anything is decided. */
export const CostPreview = z.strictObject({
  by: CostBy,
  paid: Minor.nullable(),
  nodes: z.array(
    z.strictObject({
      node: z.string(),
      name: z.string(),
      grams: z.number(),
      cost: z.int().nullable(),
      /** [minor units/kg], before rounding; null where it weighs nothing. */
      perKg: z.number().nullable(),
    }),
  ),
  warnings: z.array(z.string()),
});
export type CostPreview = z.infer<typeof CostPreview>;

export const BreakdownSummary = z.strictObject({
  id: Id,
  species: Text(40),
  supplierId: Id.nullable(),
  supplierName: z.string().nullable(),
  origin: z.enum(['here', 'imported']),
  animals: z.int().min(1).max(10_000),
  status: z.enum(['open', 'finished', 'given up']),
  startedAt: Instant,
  startedBy: z.string(),
  cutter: z.string(),
  finishedAt: Instant.nullable(),
  inGrams: z.number(),
  unaccountedPct: z.number().nullable(),
  usedPct: z.number().nullable(),
});
export type BreakdownSummary = z.infer<typeof BreakdownSummary>;

export const Breakdown = z.strictObject({
  ...BreakdownSummary.shape,
  nodes: z.array(TreeNode),
  lots: z.array(
    z.strictObject({
      lotId: Id,
      code: z.string(),
      what: z.string(),
      grams: z.number(),
      cost: Minor.nullable(),
    }),
  ),
  /** The lots that were made of it; empty while it is open. */
  made: z.array(
    z.strictObject({
      lotId: Id,
      code: z.string(),
      what: z.string(),
      grams: z.number(),
      useBy: CivilDate.nullable(),
      cost: Minor.nullable(),
    }),
  ),
  weighings: z.array(Weighing),
  /** As it stands now, or as it was finished. */
  standing: BreakdownOutcome,
  /** Why it cannot be finished yet; empty when it can. */
  blocking: z.array(z.string()),
  note: Note(1_000),
});
export type Breakdown = z.infer<typeof Breakdown>;
