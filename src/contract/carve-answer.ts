/** What `carve` answers. Shares are % of the dressed weight; money is in the unit it came in. */
import { z } from 'zod';

const nullable = z.number().nullable();

const Interval = { low95: nullable, high95: nullable };

/** By log-ratio, with the published figure where one was asked for. */
const ByRatio = z.strictObject({
  /** The middle animal. */
  centrePct: z.number(),
  ...Interval,
  /** Where the next animal falls, nineteen times of twenty. */
  nextLow95: nullable,
  nextHigh95: nullable,
  /** The published figure, and the animals it counted as; null where there is none. */
  publishedPct: nullable,
  publishedAnimals: nullable,
  /** Whether it lies where one's own next animal falls; if not, it is of another cut, breed or age. Null: not known. */
  publishedFits: z.boolean().nullable(),
});

const PartAnswer = z.strictObject({
  part: z.string(),
  /** The part it was cut from, and its share of that in all; null: cut from the animal. */
  from: z.string().nullable(),
  pctOfFrom: nullable,
  /** Animals it was weighed in, and in how many weighings. */
  animals: z.number(),
  weighings: z.number(),
  kgTotal: z.number(),
  /** Plain mean over the animals: times the animals bought it is what to expect. Null from one animal: spread and interval. */
  meanPct: z.number(),
  sdPct: nullable,
  ...Interval,
  /** Animals in all, and still to come, until the mean is known to precisionPct of itself; null: not known yet, or over a million. */
  animalsForPrecision: nullable,
  moreAnimals: nullable,
  byRatio: ByRatio,
});
export type PartAnswer = z.infer<typeof PartAnswer>;

const ByPart = z.record(z.string(), z.number());

export const CarveAnswer = z.strictObject({
  species: z.string(),
  animals: z.number(),
  dressedKg: z.number(),
  /** Dressed of live weight; null where no live weight is given. */
  dressingPct: nullable,
  parts: z.array(PartAnswer),
  /** Of all dressed weight: what no part accounts for. */
  unaccountedPct: z.number(),
  unaccounted: z.array(z.strictObject({ animal: z.string(), kg: z.number(), pct: z.number() })),
  /** Parts that were cut on, over all animals. */
  cuts: z.array(
    z.strictObject({
      part: z.string(),
      inKg: z.number(),
      outKg: z.number(),
      unaccountedKg: z.number(),
      unaccountedPct: z.number(),
    }),
  ),
  /** The animal in the middle, by log-ratio, of those that list every part cut from the animal: sums to 100. Null where none does. */
  middleAnimal: z
    .strictObject({
      animals: z.number(),
      shares: z.array(z.strictObject({ part: z.string(), pct: z.number() })),
    })
    .nullable(),
  costTotal: z.number(),
  /** By three rules; null where nothing was given to go by, and for a part without weight. */
  costPerKg: z.strictObject({
    weight: z.record(z.string(), nullable),
    value: z.record(z.string(), nullable).nullable(),
    shares: z.record(z.string(), nullable).nullable(),
  }),
  /** The same in whole hundredths of the unit of money: by every rule they sum to the cost, exactly. Of what is not cut on. */
  costHundredths: z.strictObject({
    total: z.number(),
    weight: ByPart,
    value: ByPart.nullable(),
    shares: ByPart.nullable(),
  }),
  /** A kilogram that can be served, after trim and cooking and with its work; for the parts that finish names. */
  usable: z.array(
    z.strictObject({
      part: z.string(),
      kgTotal: z.number(),
      costPerKg: z.strictObject({ weight: z.number(), value: nullable, shares: nullable }),
      /** Of the cost, the work. */
      labourPerKg: z.number(),
    }),
  ),
  /** Weighings that lie apart from the others: looked at, never left out. */
  apart: z.array(
    z.strictObject({
      animal: z.string(),
      index: z.number(),
      part: z.string(),
      pct: z.number(),
      score: z.number(),
    }),
  ),
  /** The same part by supplier and by cutter, where they are named. */
  groups: z.array(
    z.strictObject({
      by: z.enum(['supplier', 'cutter']),
      name: z.string(),
      part: z.string(),
      animals: z.number(),
      meanPct: z.number(),
      sdPct: nullable,
      ...Interval,
      /** Against all others of the part, by log-ratio, in % of the dressed weight; null from less than two on either side. */
      againstRest: z
        .strictObject({
          low95: z.number(),
          high95: z.number(),
          verdict: z.enum(['more', 'less', 'not shown']),
        })
        .nullable(),
    }),
  ),
  /** Learning of a cutter: what each doubling of the animals cut adds to a part, in % of the dressed weight. */
  learning: z.array(
    z.strictObject({
      cutter: z.string(),
      part: z.string(),
      animals: z.number(),
      perDoublingPct: z.number(),
      low95: z.number(),
      high95: z.number(),
      verdict: z.enum(['rising', 'falling', 'not shown']),
    }),
  ),
  basis: z.array(
    z.strictObject({
      what: z.string(),
      source: z.string(),
      citation: z.string(),
      confidence: z.string(),
    }),
  ),
  cautions: z.array(z.string()),
});
export type CarveAnswer = z.infer<typeof CarveAnswer>;
