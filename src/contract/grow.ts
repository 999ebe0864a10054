/** The contracts of `grow`, microbial growth along a temperature log, and of `limits`, whether an organism can grow at all. */
import { z } from 'zod';
import { growthAlong, growthUnderCeiling } from '../core/microbes/growth.ts';
import { checkGrowthLimits, type FactorLimit } from '../core/microbes/growth-limits.ts';
import { setFactor } from '../core/microbes/growth-rate.ts';
import {
  findGrowthOrganism,
  type GrowthOrganism,
  type GrowthSet,
  growthOrganisms,
} from '../core/properties/organisms-growth.ts';
import { growthLimits } from '../core/properties/organisms-growth-limits.ts';
import { type Basis, cite } from '../core/sources.ts';
import { growCautions, standing, stillAlive, stoppedBy } from './grow-cautions.ts';
import { type Complain, checkTimes, inSeconds, logPoints } from './log-points.ts';
import { nearNames } from './near-names.ts';
import { accept } from './problem.ts';
import { percent } from './quantities.ts';

const acidity = () => z.number().min(1).max(12);
const waterActivity = () => z.number().min(0.2).max(1);

const GrowFields = z.strictObject({
  organism: z.string().min(1).max(80),
  /** A published set of rates of this organism; the first of its sets where none is named. */
  set: z.string().min(1).max(80).optional(),
  pH: acidity(),
  waterActivity: waterActivity(),
  waterPhaseSaltPct: percent().optional(),
  /** In order of time, no time twice; straight lines between readings. */
  log: logPoints(2),
  startLog10: z.number().min(-6).max(12),
  /** Work before growth begins, ln units: at a steady rate, rate times lag. 0: no lag. */
  h0: z.number().min(0).max(50).optional(),
  maxLog10: z.number().min(-6).max(12).optional(),
});
type GrowFields = z.infer<typeof GrowFields>;

function organismNamed(id: string, complain: Complain): GrowthOrganism | undefined {
  const organism = findGrowthOrganism(id);
  if (organism !== undefined) return organism;
  const all = growthOrganisms.map((o) => o.id);
  const near = nearNames(id, all, 1);
  complain(
    ['organism'],
    `an unknown organism ${JSON.stringify(id)}`,
    `${near.length > 0 ? `perhaps ${near[0]}; ` : ''}one of ${all.join(', ')}`,
  );
  return undefined;
}

function setOf(organism: GrowthOrganism, id: string | undefined): GrowthSet | undefined {
  return id === undefined ? organism.sets[0] : organism.sets.find((set) => set.id === id);
}

function checkSet(input: GrowFields, complain: Complain): void {
  const organism = organismNamed(input.organism, complain);
  if (organism === undefined) return;
  if (organism.sets.length === 0) {
    const known = growthOrganisms.filter((o) => o.sets.length > 0).map((o) => o.id);
    complain(
      ['organism'],
      `${JSON.stringify(input.organism)}, whose rate of growth is not known here`,
      `one of ${known.join(', ')}; whether this one can grow at all is answered by limits`,
    );
    return;
  }
  const set = setOf(organism, input.set);
  if (set === undefined) {
    const ids = organism.sets.map((s) => JSON.stringify(s.id)).join(', ');
    complain(['set'], JSON.stringify(input.set), `one of ${ids} for ${organism.id}`);
    return;
  }
  const most = input.maxLog10 ?? set.maxLog10;
  if (input.startLog10 > most)
    complain(['startLog10'], `${input.startLog10}`, `at most ${most}, the most there can be (maxLog10)`);
}

export const GrowInput = GrowFields.superRefine((input, context) => {
  const complain: Complain = (path, found, allowed) =>
    context.addIssue({ code: 'custom', path, message: allowed, params: { found } });
  checkTimes(input.log, complain);
  checkSet(input, complain);
  checkEffect(input, complain);
});
export type GrowInput = z.infer<typeof GrowInput>;

const list = z.array(z.number());
const BasisAnswer = z.strictObject({
  what: z.string(),
  /** Key of the bibliography, and what stands under it. */
  source: z.string(),
  citation: z.string(),
  confidence: z.string(),
});

/** One factor of the food against the widest limits published. */
const FactorAnswer = z.strictObject({
  factor: z.enum(['C', 'pH', 'waterActivity', 'waterPhaseSaltPct']),
  value: z.number(),
  low: z.number().nullable(),
  high: z.number().nullable(),
  growthPossible: z.boolean(),
});

export const GrowAnswer = z.strictObject({
  organism: z.string(),
  name: z.string(),
  set: z.string(),
  setTitle: z.string(),
  h0: z.number(),
  maxLog10: z.number(),
  log10Increase: z.number(),
  /** The same had there been no lag (h0 0): the two together show how much rests on it. */
  log10IncreaseWithoutLag: z.number(),
  endLog10: z.number(),
  /** What pH and water activity do to the published rate: 1 leaves it, 0 stops growth. */
  rateFactor: z.number(),
  limits: z.array(FactorAnswer),
  history: z.strictObject({ min: list, C: list, log10: list }),
  basis: z.array(BasisAnswer),
  cautions: z.array(z.string()),
});
export type GrowAnswer = z.infer<typeof GrowAnswer>;

const asFactor = (limit: FactorLimit): z.infer<typeof FactorAnswer> => {
  const salt = limit.factor === 'waterPhaseSalt';
  const shown = (x: number | null) => (x === null ? null : salt ? x * 100 : x);
  return {
    factor: limit.factor === 'waterPhaseSalt' ? 'waterPhaseSaltPct' : limit.factor,
    value: salt ? limit.value * 100 : limit.value,
    low: shown(limit.low),
    high: shown(limit.high),
    growthPossible: limit.growthPossible,
  };
};

const cited = (basis: Basis) => ({ ...basis, citation: cite(basis.source) });

/** Between where the published rate ends and where growth is known to end, how fast is not known: refused, not shown as nothing. */
function checkEffect(input: GrowFields, complain: Complain): void {
  const organism = findGrowthOrganism(input.organism);
  const set = organism === undefined ? undefined : setOf(organism, input.set);
  if (organism === undefined || set?.effect === undefined) return;
  for (const key of ['pH', 'waterActivity'] as const) {
    const cardinal = set.effect[key];
    if (cardinal === undefined) continue;
    const { min, max } = cardinal;
    const value = input[key];
    const covered = value > min && (value < max || (key === 'waterActivity' && value === max));
    const limit = checkGrowthLimits(organism.id, { [key]: value })[0];
    if (covered || limit?.growthPossible !== true) continue;
    complain(
      [key],
      `${value}, where growth is possible but its rate is not known`,
      `more than ${min}${key === 'pH' ? ` and less than ${max}` : ''} for the rates of ${set.id}, or where none grows: below ${limit.low}${limit.high === null ? '' : ` or above ${limit.high}`}`,
    );
  }
}

/** The tables that a limit rests on, each once; sources of rates are named with the rates. */
function limitBasis(organism: GrowthOrganism, found: readonly FactorLimit[]): Basis[] {
  const used = new Set(found.flatMap((limit) => limit.sources));
  return growthLimits
    .filter((row) => row.organism === organism.id && used.has(row.source))
    .map(({ source, confidence }) => ({
      what: `limits of growth of ${organism.name}`,
      source,
      confidence,
    }));
}

/** Growth along a log as the contract states it. Throws `InputProblems` for an input that it does not allow. */
export function runGrow(raw: unknown): GrowAnswer {
  const input = accept(GrowInput, raw);
  const organism = findGrowthOrganism(input.organism)!;
  const set = setOf(organism, input.set)!;
  const found = checkGrowthLimits(organism.id, {
    pH: input.pH,
    waterActivity: input.waterActivity,
    ...(input.waterPhaseSaltPct === undefined ? {} : { waterPhaseSalt: input.waterPhaseSaltPct / 100 }),
  });
  const stopped = stoppedBy(found).length > 0;
  const { h0 = set.h0, maxLog10 = set.maxLog10 } = input;
  const course = growthAlong(inSeconds(input.log), set, {
    pH: input.pH,
    waterActivity: input.waterActivity,
    startLog10: input.startLog10,
    stopped,
    h0,
    maxLog10,
  });
  const endLog10 = course.log10.at(-1) ?? input.startLog10;
  const basis: Basis[] = [
    ...set.basis,
    ...(set.effect?.basis ?? []),
    input.h0 === undefined
      ? set.h0Basis
      : { what: `h0 ${input.h0}`, source: 'user-input', confidence: 'assumption' },
    {
      what: 'lag, growth and ceiling, exact along the straight lines of the log',
      source: 'baranyi-roberts-1994',
      confidence: 'memory',
    },
    { what: `${input.startLog10} log10 cfu/g at the start`, source: 'user-input', confidence: 'assumption' },
    ...limitBasis(organism, found),
  ];
  return {
    organism: organism.id,
    name: organism.name,
    set: set.id,
    setTitle: set.title,
    h0,
    maxLog10,
    log10Increase: endLog10 - input.startLog10,
    log10IncreaseWithoutLag:
      growthUnderCeiling(course.integral, (maxLog10 - input.startLog10) * Math.LN10) / Math.LN10,
    endLog10,
    rateFactor: stopped ? 0 : setFactor(set, input.pH, input.waterActivity),
    limits: found.map(asFactor),
    history: {
      min: Array.from(course.s, (s) => s / 60),
      C: [...course.C],
      log10: [...course.log10],
    },
    basis: basis.map(cited),
    cautions: growCautions({ organism: organism.id, log: input.log, h0, maxLog10 }, set, found, endLog10),
  };
}

const LimitsFields = z.strictObject({
  organism: z.string().min(1).max(80),
  C: z.number().min(-80).max(400).optional(),
  pH: acidity().optional(),
  waterActivity: waterActivity().optional(),
  waterPhaseSaltPct: percent().optional(),
});

export const LimitsInput = LimitsFields.superRefine((input, context) => {
  const complain: Complain = (path, found, allowed) =>
    context.addIssue({ code: 'custom', path, message: allowed, params: { found } });
  organismNamed(input.organism, complain);
  if (Object.keys(input).length < 2)
    complain([], 'an organism alone', 'also one or more of C, pH, waterActivity, waterPhaseSaltPct');
});
export type LimitsInput = z.infer<typeof LimitsInput>;

export const LimitsAnswer = z.strictObject({
  organism: z.string(),
  name: z.string(),
  /** false: one stated factor stops growth by itself, by every table looked at. true says nothing of how fast. */
  growthPossible: z.boolean(),
  limits: z.array(FactorAnswer),
  basis: z.array(BasisAnswer),
  cautions: z.array(z.string()),
});
export type LimitsAnswer = z.infer<typeof LimitsAnswer>;

/** Whether an organism can grow at all. Throws `InputProblems` for an input that is not allowed. */
export function runLimits(raw: unknown): LimitsAnswer {
  const { organism: id, C, pH, waterActivity: aw, waterPhaseSaltPct } = accept(LimitsInput, raw);
  const organism = findGrowthOrganism(id)!;
  const found = checkGrowthLimits(id, {
    ...(C === undefined ? {} : { C }),
    ...(pH === undefined ? {} : { pH }),
    ...(aw === undefined ? {} : { waterActivity: aw }),
    ...(waterPhaseSaltPct === undefined ? {} : { waterPhaseSalt: waterPhaseSaltPct / 100 }),
  });
  const rates = organism.sets.flatMap((set) => set.basis.slice(0, 1));
  return {
    organism: id,
    name: organism.name,
    growthPossible: stoppedBy(found).length === 0,
    limits: found.map(asFactor),
    basis: [...limitBasis(organism, found), ...(C === undefined ? [] : rates)].map(cited),
    cautions: [stillAlive, ...standing],
  };
}
