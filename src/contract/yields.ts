/** What whole animals really gave: by part, over the breakdowns of a kitchen. */
import { z } from 'zod';
import { CostBy, TreeNode } from './breakdown.ts';
import { CivilDate } from './delivery.ts';
import { Id, Instant, Text } from './quantities.ts';
import { Part } from './records.ts';

export const YieldsQuery = z.strictObject({
  species: Text(40),
  supplierId: Id.optional(),
  cutterId: Id.optional(),
  /** Days on the kitchen's calendar, both included. */
  from: CivilDate.optional(),
  until: CivilDate.optional(),
  /** How closely a mean is wanted, in % of itself; 5 where nothing is said. */
  precisionPct: z.coerce.number().min(0.1).max(100).optional(),
  /** As how many animals of one's own a published figure counts; not at all where nothing is said. */
  publishedAnimals: z.coerce.number().int().min(1).max(1_000).optional(),
  /** Asks for the single weighings of this part, for a picture. */
  part: Text(80).optional(),
});
export type YieldsQuery = z.infer<typeof YieldsQuery>;

const nullable = z.number().nullable();

const Published = z.strictObject({
  pct: z.number(),
  /** What is 100 % there: `dressed weight`, `live weight`, or another part. */
  of: z.string(),
  animals: z.string(),
  /** Animals measured, where the source says. */
  n: z.number().nullable(),
  source: z.string(),
  citation: z.string(),
  confidence: z.string(),
  /** As how many animals of one's own it is counted here; 0: shown only. */
  countedAs: z.number(),
  /** Whether it lies where one's own next animal would fall; null where that is not known. */
  fits: z.boolean().nullable(),
});

/** Shares are % of what went on the table. */
const YieldPart = z.strictObject({
  part: z.string(),
  becomes: TreeNode.shape.becomes,
  use: TreeNode.shape.use,
  animals: z.int(),
  weighings: z.int(),
  kgTotal: z.number(),
  meanPct: z.number(),
  sdPct: nullable,
  low95: nullable,
  high95: nullable,
  animalsForPrecision: nullable,
  moreAnimals: nullable,
  /** The middle animal by log-ratio, with the published figure where it is counted. */
  centrePct: z.number(),
  centreLow95: nullable,
  centreHigh95: nullable,
  nextLow95: nullable,
  nextHigh95: nullable,
  /** The piece it is cut from, and its share of that; null: from the animal. */
  from: z.string().nullable(),
  pctOfFrom: nullable,
  published: Published.nullable(),
  /** What a kilogram cost as it was carried, over the breakdowns that know it [minor units]. */
  costPerKg: nullable,
});
export type YieldPart = z.infer<typeof YieldPart>;

export const YieldsAnswer = z.strictObject({
  species: z.string(),
  breakdowns: z.int(),
  animals: z.int(),
  inKg: z.number(),
  unaccountedPct: nullable,
  precisionPct: z.number(),
  parts: z.array(YieldPart),
  apart: z.array(
    z.strictObject({
      breakdownId: Id,
      at: Instant,
      who: z.string(),
      part: z.string(),
      pct: z.number(),
      score: z.number(),
    }),
  ),
  groups: z.array(
    z.strictObject({
      by: z.enum(['supplier', 'cutter']),
      name: z.string(),
      part: z.string(),
      animals: z.int(),
      meanPct: z.number(),
      low95: nullable,
      high95: nullable,
      againstRest: z.enum(['more', 'less', 'not shown']).nullable(),
    }),
  ),
  learning: z.array(
    z.strictObject({
      cutter: z.string(),
      part: z.string(),
      animals: z.int(),
      perDoublingPct: z.number(),
      low95: z.number(),
      high95: z.number(),
      verdict: z.enum(['rising', 'falling', 'not shown']),
    }),
  ),
  /** Every weighing of the part that was asked for, oldest first; `count`: how many this cutter had cut by then. */
  weighings: z.array(
    z.strictObject({
      breakdownId: Id,
      at: Instant,
      cutter: z.string(),
      supplier: z.string().nullable(),
      count: z.number(),
      animals: z.int(),
      pct: z.number(),
    }),
  ),
  /** Breakdown by breakdown, oldest first. */
  used: z.array(
    z.strictObject({
      breakdownId: Id,
      at: Instant,
      animals: z.int(),
      usedPct: z.number(),
      unaccountedPct: z.number(),
    }),
  ),
  /** What is no dressed meat and was used all the same. */
  kept: z.strictObject({
    kg: z.number(),
    parts: z.array(z.string()),
    /** At what the kitchen says a kilogram is worth [minor units]; null where it says so of none of them. */
    worth: z.int().nullable(),
    /** Of these nobody has said what they are worth. */
    unpriced: z.array(z.string()),
    /** To one figure; null where no figure was published for the animal. */
    kgCO2e: nullable,
    perKg: nullable,
    meaning: z.string().nullable(),
  }),
  cautions: z.array(z.string()),
  basis: z.array(z.strictObject({ what: z.string(), source: z.string(), confidence: z.string() })),
});
export type YieldsAnswer = z.infer<typeof YieldsAnswer>;

/** An animal as one bar, from its latest breakdowns, or from the shares the kitchen has named. */
export const CarcassBar = z.strictObject({
  species: z.string(),
  from: z.enum(['breakdowns', 'named shares']),
  /** How many breakdowns and animals, and over which days; 0 and null for named shares. */
  breakdowns: z.int(),
  animals: z.int(),
  since: Instant.nullable(),
  until: Instant.nullable(),
  parts: z.array(
    z.strictObject({
      name: z.string(),
      partId: Id.nullable(),
      use: Part.shape.use,
      sharePct: z.number().nullable(),
      /** Of the money paid, as it was carried [%]; null where it is not known. */
      moneyPct: z.number().nullable(),
    }),
  ),
  /** Of the breakdowns, those of which it is known what was paid: the money is told by them. */
  pricedBreakdowns: z.int(),
  /** By which rule the money was carried; null where it is not known or not always the same. */
  costBy: CostBy.nullable(),
});
export type CarcassBar = z.infer<typeof CarcassBar>;
