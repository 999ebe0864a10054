/** The contract of `keep`: how long a food may be kept, by the earliest rule that applies. */
import { Temporal } from 'temporal-polyfill';
import { z } from 'zod';
import { type Keeping, type Life, type LifeLimit, lifeOf, longerBy } from '../core/method/keeping.ts';
import { findGrowthOrganism } from '../core/properties/organisms-growth.ts';
import { controllingFactors, noListeria } from '../core/properties/rules-life.ts';
import { type Basis, cite } from '../core/sources.ts';
import { type Complain, checkTimes, inSeconds, logPoints } from './log-points.ts';
import { accept } from './problem.ts';
import { percent } from './quantities.ts';

const sets = findGrowthOrganism('listeria-monocytogenes')?.sets ?? [];
const setIds = sets.map((set) => set.id) as [string, ...string[]];

const KeepFields = z.strictObject({
  place: z.enum(['GB-ENG', 'GB-SCT', 'GB-WLS', 'GB-NIR', 'EU', 'US']),
  /** Cooked, or ready to eat as it is. */
  ready: z.boolean(),
  /** Absent: not known, which counts as without air. */
  packed: z.enum(['air', 'vacuum', 'gas']).optional(),
  /** Never kept warmer than this. */
  keptC: z.number().min(-60).max(60),
  /** As measured, of every part. Absent: not known, which counts as the best for growth. */
  pH: z.number().min(1).max(12).optional(),
  waterActivity: z.number().min(0.2).max(1).optional(),
  waterPhaseSaltPct: percent().max(26).optional(),
  /** 90 °C for 10 min or its equal was shown in the pack, in every part. */
  heatedInPack: z.boolean().optional(),
  scheme: z.enum(['cook-chill', 'sealed at once and kept at 1 °C']).optional(),
  /** Which published mean rate of Listeria monocytogenes; the fastest of them where none is named. */
  like: z.enum(setIds).optional(),
  startLog10: z.number().min(-6).max(8).optional(),
  limitLog10: z.number().min(-6).max(8).optional(),
  /** Work before growth begins, ln units. 0, the default: no lag. */
  h0: z.number().min(0).max(50).optional(),
  /** What was logged since it was made. */
  log: logPoints(2).optional(),
  /** Days spent frozen at −18 °C or below since it was made: they do not count. */
  frozenDays: z.number().min(0).max(3_650).optional(),
  madeOn: z.iso.date().optional(),
});

export const KeepInput = KeepFields.superRefine((input, context) => {
  const complain: Complain = (path, found, allowed) =>
    context.addIssue({ code: 'custom', path, message: allowed, params: { found } });
  if (input.log !== undefined) checkTimes(input.log, complain);
  const { startLog10 = usualStart, limitLog10 = usualLimit } = input;
  if (startLog10 >= limitLog10)
    complain(['startLog10'], `${startLog10}`, `less than ${limitLog10} (limitLog10)`);
});
export type KeepInput = z.infer<typeof KeepInput>;

/** One Listeria a gram at the start, a hundred at the end [log10 cfu/g]. */
const usualStart = 0;
const usualLimit = 2;

const LimitAnswer = z.strictObject({
  id: z.string(),
  title: z.string(),
  place: z.string(),
  /** Law, an authority's advice, or a model: three different things. */
  type: z.enum(['statutory', 'guidance', 'model']),
  /** Days of 24 hours from making; null: it does not limit this food. */
  days: z.number().nullable(),
  why: z.string(),
  source: z.string(),
  citation: z.string(),
  confidence: z.string(),
  cautions: z.array(z.string()),
});
export type KeepLimit = z.infer<typeof LimitAnswer>;

const BasisAnswer = z.strictObject({
  what: z.string(),
  source: z.string(),
  citation: z.string(),
  confidence: z.string(),
});

export const KeepAnswer = z.strictObject({
  /** Whole days, that of making being the first; null: not known or not limited, see `word`. */
  days: z.number().nullable(),
  word: z.enum(['days', 'not limited by these rules', 'not known']),
  /** The last day on which it may be used, where `madeOn` is stated. */
  useBy: z.string().nullable(),
  /** Id of the limit that decides. */
  deciding: z.string().nullable(),
  why: z.string(),
  /** Every limit looked at, the earliest first. */
  limits: z.array(LimitAnswer),
  /** What, each by itself, would lengthen it. */
  longer: z.array(z.strictObject({ what: z.string(), days: z.number(), deciding: z.string().nullable() })),
  /** What was not known and counted as the worst. */
  assumed: z.array(z.string()),
  basis: z.array(BasisAnswer),
  cautions: z.array(z.string()),
});
export type KeepAnswer = z.infer<typeof KeepAnswer>;

const standing = [
  'These are rules and a model of two hazards, not proof that this food keeps: tests of your own food, made by a laboratory, are what a life rests on.',
  'It holds only if it was cooked, chilled and packed as stated, and is never kept warmer.',
  'A life never makes food safe that was left warm, or smells or looks wrong.',
  'Advice, not a licence: your local authority and qualified people decide.',
];

function keepingOf(input: KeepInput): Keeping {
  const fastest = sets.reduce((a, b) => (rateOf(b) > rateOf(a) ? b : a));
  const set = sets.find((s) => s.id === input.like) ?? fastest;
  const { packed, waterPhaseSaltPct: salt } = input;
  return {
    place: input.place,
    ready: input.ready,
    packed: packed === undefined ? null : packed === 'air' ? 'air' : 'without air',
    keptC: input.keptC,
    pH: input.pH ?? null,
    waterActivity: input.waterActivity ?? null,
    waterPhaseSalt: salt === undefined ? null : salt / 100,
    heat90: input.heatedInPack ?? false,
    scheme: input.scheme ?? null,
    listeria: {
      set,
      startLog10: input.startLog10 ?? usualStart,
      limitLog10: input.limitLog10 ?? usualLimit,
      h0: input.h0 ?? set.h0,
    },
    ...(input.log === undefined ? {} : { before: inSeconds(input.log) }),
  };
}

const rateOf = (set: (typeof sets)[number]) =>
  set.temperature.form === 'square root' ? set.temperature.rate : 0;

const asLimit = (limit: LifeLimit): KeepLimit => ({
  ...limit,
  citation: cite(limit.source),
  cautions: [...limit.cautions],
});

const cited = (basis: Basis) => ({ ...basis, citation: cite(basis.source) });

function basisOf(keeping: Keeping, life: Life): Basis[] {
  if (life.limits.length === 0) return [];
  const { set, startLog10 } = keeping.listeria;
  return [
    ...set.basis,
    ...(set.effect?.basis ?? []),
    {
      what: `${startLog10} log10 cfu/g of Listeria monocytogenes at the start`,
      source: 'own-assumption',
      confidence: 'assumption',
    },
    {
      what: `factors that lift the ten days: pH ${controllingFactors.pH.toFixed(1)}, ${100 * controllingFactors.waterPhaseSalt} % salt in the water, water activity ${controllingFactors.waterActivity}, 90 °C for 10 min`,
      source: controllingFactors.source,
      confidence: 'secondary',
    },
    {
      what: `no growth of Listeria monocytogenes at pH ${noListeria.pH}, at water activity ${noListeria.waterActivity}, or at pH ${noListeria.both.pH.toFixed(1)} with ${noListeria.both.waterActivity}`,
      source: noListeria.source,
      confidence: 'memory',
    },
  ];
}

/** The last day of use: the day of making is the first, days spent frozen are added. */
function lastDay({ madeOn, frozenDays = 0 }: KeepInput, days: number | null): string | null {
  if (madeOn === undefined || days === null || days < 1) return null;
  return Temporal.PlainDate.from(madeOn)
    .add({ days: days - 1 + Math.floor(frozenDays) })
    .toString();
}

/** How long a food may be kept, as the contract states it. Throws `InputProblems` for an input that it does not allow. */
export function runKeep(raw: unknown): KeepAnswer {
  const input = accept(KeepInput, raw);
  const keeping = keepingOf(input);
  const life = lifeOf(keeping);
  return {
    days: life.days,
    word: life.word,
    useBy: lastDay(input, life.days),
    deciding: life.deciding?.id ?? null,
    why: life.why,
    limits: life.limits.map(asLimit),
    longer: longerBy(keeping).map(({ what, life: then }) => ({
      what,
      days: then.days ?? 0,
      deciding: then.deciding?.id ?? null,
    })),
    assumed: [...life.assumed],
    basis: basisOf(keeping, life).map(cited),
    cautions: [
      ...(life.days !== null && life.days < 1
        ? ['It may not be kept at all: less than a day is left by the rule that decides.']
        : []),
      ...(life.deciding?.cautions ?? []),
      ...standing,
    ],
  };
}
