/** The contract of `judge`: a measured log against named rules of the book. */
import { z } from 'zod';
import { defaultGap, type JudgeOptions, judge, type Part, type Verdict } from '../core/microbes/judge.ts';
import { findRule, type Rule, rules } from '../core/properties/rules.ts';
import { cite } from '../core/sources.ts';
import { checkTargets, JudgeTarget, ReductionAnswer, reductionBy, targetRule } from './judge-targets.ts';
import { type Complain, checkTimes, inSeconds, logPoints } from './log-points.ts';
import { nearNames } from './near-names.ts';
import { accept } from './problem.ts';

const JudgeFields = z.strictObject({
  /** In order of time, no time twice; straight lines between readings. */
  log: logPoints(1),
  /** Ids of the rule book, see `listRules`; may be left out where there are targets. */
  rules: z.array(z.string().min(1).max(80)).max(100).optional(),
  /** Targets of one's own, or decades of an organism: a model's word beside the rules. */
  targets: z.array(JudgeTarget).max(20).optional(),
  /** Two readings further apart than this are a hole in the log; default 10 for cooking, 60 for cooling and keeping. */
  gapMin: z.number().positive().max(1_440).optional(),
  /** When cooking ended and when chilling began, on the log's own clock; some cooling rules ask for both. */
  cookEndMin: z.number().min(-1_000_000).max(10_000_000).optional(),
  chillStartMin: z.number().min(-1_000_000).max(10_000_000).optional(),
});

type JudgeFields = z.infer<typeof JudgeFields>;

function checkRules(input: JudgeFields, complain: Complain): void {
  if ((input.rules ?? []).length + (input.targets ?? []).length === 0)
    complain(['rules'], 'an empty list', 'at least one rule of the book, or a target');
  input.rules?.forEach((id, i) => {
    if (findRule(id) !== undefined) return;
    const near = nearNames(
      id,
      rules.map((rule) => rule.id),
    );
    const hint = near.length > 0 ? `perhaps ${near.join(', ')}` : 'see the list of rules';
    complain(['rules', i], `an unknown rule ${JSON.stringify(id)}`, `a rule of the book: ${hint}`);
  });
}

function checkChilling({ cookEndMin, chillStartMin }: JudgeFields, complain: Complain): void {
  if (cookEndMin !== undefined && chillStartMin !== undefined && chillStartMin < cookEndMin)
    complain(
      ['chillStartMin'],
      `${chillStartMin} min, before the end of cooking`,
      `${cookEndMin} min (cookEndMin) or later`,
    );
}

export const JudgeInput = JudgeFields.superRefine((input, context) => {
  const complain: Complain = (path, found, allowed) =>
    context.addIssue({ code: 'custom', path, message: allowed, params: { found } });
  checkTimes(input.log, complain);
  checkRules(input, complain);
  checkTargets(input.targets ?? [], complain);
  checkChilling(input, complain);
});
export type JudgeInput = z.infer<typeof JudgeInput>;

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
  unit: z.enum(['min', '°C']),
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
      unit: z.enum(['min', '°C']),
      passes: z.boolean().nullable(),
      startMin: Minutes,
      endMin: Minutes,
    }),
  ),
  /** Information by a model, never the verdict. */
  model: z.strictObject({ what: z.string(), pct: z.number() }).nullable(),
  /** Of an organism's target: how far it is brought down. */
  reduction: ReductionAnswer.optional(),
  source: z.string(),
  sourceKey: z.string(),
  confidence: z.string(),
});
export type RuleVerdict = z.infer<typeof RuleVerdict>;

export const JudgeAnswer = z.array(RuleVerdict);
export type JudgeAnswer = z.infer<typeof JudgeAnswer>;

const minutes = (s: number | null) => (s === null ? null : s / 60);
/** Seconds as minutes; a temperature as it is. */
const shown = (value: number | null, unit: 's' | '°C') => (unit === 's' ? minutes(value) : value);
const unitShown = (unit: 's' | '°C') => (unit === 's' ? 'min' : unit);

function partAnswer(part: Part): RuleVerdict['parts'][number] {
  return {
    what: part.what,
    value: shown(part.value, part.unit),
    limit: shown(part.limit, part.unit),
    unit: unitShown(part.unit),
    passes: part.passes,
    startMin: minutes(part.start),
    endMin: minutes(part.end),
  };
}

function answer(verdict: Verdict): RuleVerdict {
  const { rule, deciding } = verdict;
  return {
    rule: rule.id,
    title: rule.title,
    place: rule.place,
    appliesTo: rule.appliesTo,
    type: rule.type,
    passes: verdict.passes,
    verdict: verdict.outcome,
    value: shown(verdict.value, verdict.unit),
    limit: shown(verdict.limit, verdict.unit),
    unit: unitShown(verdict.unit),
    failedAtMin: minutes(verdict.failedAt),
    decidingMin: minutes(deciding?.s ?? null),
    decidingIndex: deciding?.index ?? null,
    decidingC: deciding?.C ?? null,
    moreMin: minutes(verdict.more),
    why: verdict.why,
    cautions: [...verdict.cautions],
    parts: verdict.parts.map(partAnswer),
    model: verdict.model,
    source: cite(rule.source),
    sourceKey: rule.source,
    confidence: rule.confidence,
  };
}

/** A verdict of the core in the contract's terms. */
export const asRuleVerdict = answer;

/** Judges points in seconds, as a probe log gives them, by rules of the book. */
export function judgePoints(
  points: readonly { readonly s: number; readonly C: number }[],
  chosen: readonly Rule[],
  options: JudgeOptions = {},
): JudgeAnswer {
  return judge(points, chosen, options).map(answer);
}

/** Judges a log as the contract states it. Throws `InputProblems` for an input that it does not allow. */
export function runJudge(input: unknown): JudgeAnswer {
  const { log, rules: ids = [], targets = [], gapMin, cookEndMin, chillStartMin } = accept(JudgeInput, input);
  const options: JudgeOptions = {
    ...(gapMin === undefined ? {} : { gap: gapMin * 60 }),
    ...(cookEndMin === undefined ? {} : { cookEnd: cookEndMin * 60 }),
    ...(chillStartMin === undefined ? {} : { chillStart: chillStartMin * 60 }),
  };
  const points = inSeconds(log);
  const book = judgePoints(
    points,
    ids.flatMap((id) => findRule(id) ?? []),
    options,
  );
  const own = judgePoints(points, targets.map(targetRule), options).map((verdict, i) => {
    const reduction = reductionBy(targets[i]!, points, options.gap ?? defaultGap.cooking);
    return reduction === undefined ? verdict : { ...verdict, reduction };
  });
  return [...book, ...own];
}

export const RuleEntry = z.strictObject({
  id: z.string(),
  title: z.string(),
  place: z.string(),
  appliesTo: z.string(),
  type: z.enum(['statutory', 'guidance', 'model']),
  kind: z.enum(['lethality', 'hold', 'cooling', 'keep', 'come-up', 'freeze']),
  /** Where it is in force (empty: everywhere), at which steps, and whether one is held to it there. */
  places: z.array(z.string()),
  steps: z.array(z.string()),
  role: z.enum(['usual', 'instead', 'beside']),
  cautions: z.array(z.string()),
  source: z.string(),
  sourceKey: z.string(),
  confidence: z.string(),
});
export type RuleEntry = z.infer<typeof RuleEntry>;

/** The rule book as a list for choosing from. */
export function listRules(): RuleEntry[] {
  return rules.map(({ id, title, place, appliesTo, type, kind, scope, cautions, source, confidence }) => ({
    id,
    title,
    place,
    appliesTo,
    type,
    kind,
    places: [...scope.places],
    steps: [...scope.steps],
    role: scope.role,
    cautions: [...cautions],
    source: cite(source),
    sourceKey: source,
    confidence,
  }));
}
