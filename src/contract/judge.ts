/** The contract of `judge`: a measured log against named rules of the book. */
import { z } from 'zod';

/** One reading of the core: minutes from the start of the log, °C. */
export const JudgeReading = z.strictObject({
  min: z.number().min(-1_000_000).max(10_000_000),
  C: z.number().min(-80).max(400),
});

export const JudgeFields = z.strictObject({
  /** In order of time, no time twice; straight lines between readings. */
  log: z.array(JudgeReading).min(1).max(200_000),
  /** Ids of the rule book, see `listRules`. */
  rules: z.array(z.string().min(1).max(80)).min(1).max(100),
  /** Two readings further apart than this are a hole in the log; default 10 for cooking, 60 for cooling and keeping. */
  gapMin: z.number().positive().max(1_440).optional(),
  /** When cooking ended and when chilling began, on the log's own clock; some cooling rules ask for both. */
  cookEndMin: z.number().min(-1_000_000).max(10_000_000).optional(),
  chillStartMin: z.number().min(-1_000_000).max(10_000_000).optional(),
});

const Minutes = z.number().nullable();

/** One rule's word on one log. */
export const RuleVerdict = z.strictObject({
  rule: z.string(),
  title: z.string(),
  /** Where the rule is in force or was published for. */
  place: z.string(),
  /** What it applies to. */
  appliesTo: z.string(),
  /** Law, an authority's or the trade's advice, or a model: three different things. */
  type: z.enum(['statutory', 'guidance', 'model']),
  /** true only where the rule is met by this log; null where this log cannot decide it. */
  passes: z.boolean().nullable(),
  /** The same in a word; `not covered` (passes false): the rule says nothing about temperatures this low. */
  verdict: z.enum(['holds', 'does not hold', 'undecided', 'not covered']),
  /** What the log shows, against `limit`, both in `unit`. */
  value: z.number().nullable(),
  limit: z.number().nullable(),
  unit: z.enum(['min', 's', '°C']),
  failedAtMin: Minutes,
  /** The moment and the reading that decide. */
  decidingMin: Minutes,
  decidingIndex: z.int().nullable(),
  decidingC: z.number().nullable(),
  /** Lethality not there yet: minutes more at the last temperature that would do; null where none would, or none are needed. */
  moreMin: Minutes,
  why: z.string(),
  cautions: z.array(z.string()),
  /** The limbs or rows looked at, each with its own numbers. */
  parts: z.array(
    z.strictObject({
      what: z.string(),
      value: z.number().nullable(),
      limit: z.number().nullable(),
      unit: z.enum(['min', 's', '°C']),
      passes: z.boolean().nullable(),
      startMin: Minutes,
      endMin: Minutes,
    }),
  ),
  /** Information by a model, never the verdict. */
  model: z.strictObject({ what: z.string(), pct: z.number() }).nullable(),
  source: z.string(),
  sourceKey: z.string(),
  confidence: z.string(),
});
export type RuleVerdict = z.infer<typeof RuleVerdict>;

export const JudgeAnswer = z.array(RuleVerdict);
export type JudgeAnswer = z.infer<typeof JudgeAnswer>;
