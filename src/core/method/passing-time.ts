/** How long a stage must last for the coldest point to pass when it is lifted out at its end: by the target, and by rules of cooking. */
import { Contradiction } from '../errors.ts';
import { limits } from '../heat/check.ts';
import { cook } from '../heat/cook.ts';
import type { CookOptions, CookProblem, CookResult } from '../heat/types.ts';
import type { Rule } from '../properties/rule.ts';
import type { Cook } from './advice.ts';
import { foreseenCooking, leastPointsFor } from './foreseen-rules.ts';

export interface Passing {
  /** Index of the stage whose duration is wanted. */
  readonly stage: number;
  /** Rules that must pass as well as the target; of cooking and of the way up. Default none. */
  readonly rules?: readonly Rule[];
  /** How much warmer the core is taken to be than it is [K]: a probe that reads high by so much. Default 0. */
  readonly probeError?: number;
  /** Longest duration considered [s]; default 24 h. */
  readonly atMost?: number;
  readonly mode?: CookOptions['mode'];
  readonly cook?: Cook;
}

const day = 86_400;
/** How much further the lethality is driven each time a rule still wants more. */
const further = [1.5, 4, 16, 256, 4096];

/** Rules that speak of cooking; of the way up too. */
const ofCooking = (rule: Rule) =>
  rule.kind === 'lethality' || rule.kind === 'hold' || rule.kind === 'come-up';

/** The result up to a moment, as a probe that reads high by so much would correct it. */
function upTo(result: CookResult, end: number, error: number): CookResult {
  const { history, alsoLeast } = result;
  let n = 0;
  while (n < history.t.length && history.t[n] < end) n++;
  const cut = (column: Float64Array): Float64Array => {
    const out = column.slice(0, n + 1);
    if (n > 0 && n < column.length) {
      const s = (end - history.t[n - 1]) / (history.t[n] - history.t[n - 1]);
      out[n] = column[n - 1] + s * (column[n] - column[n - 1]);
    }
    return out;
  };
  const lowered = (column: Float64Array) => cut(column).map((C) => C - error);
  const t = cut(history.t);
  return {
    ...result,
    history: { ...history, t, coldSpot: lowered(history.coldSpot) },
    ...(alsoLeast === undefined ? {} : { alsoLeast: alsoLeast.map(lowered) }),
  };
}

/**
 * The problem, with every point looked for at which one of these rules may be least met [-].
 * @example judgedBy({ target: { reference: 70, z: 10, s: 120 } }, []).alsoLeast.length // → 1
 * Source: own-computation
 */
export function judgedBy(problem: CookProblem, rules: readonly Rule[]): CookProblem {
  return { ...problem, alsoLeast: leastPointsFor(rules, problem.target) };
}

/**
 * The programme cut off at the end of a stage that lasts until the coldest point has so much lethality [-].
 * Parameters: `stage` an index of its stages; `s` wanted lethality [s at the reference], > 0; `atMost` [s].
 * @example endedByLethality({ stages: [{ until: { kind: 'time', s: 60 } }] }, 0, 120, 600).stages[0].until.s // → 120
 * Source: own-computation
 */
export function endedByLethality(
  problem: CookProblem,
  stage: number,
  s: number,
  atMost: number,
): CookProblem {
  const stages = problem.stages
    .slice(0, stage + 1)
    .map((own, i) => (i === stage ? { ...own, until: { kind: 'lethality', s, atMost } as const } : own));
  return { ...problem, stages };
}

/**
 * Shortest duration of a stage with which the coldest point passes at the moment it ends [s]; Infinity where none does.
 * Equation: P(coldest point, end of the stage) ≥ P wanted · 10^(e/z), e the probe's error; and every rule holds on what the
 * coldest point has been through by then, less e. Nothing that comes after lifting out is counted.
 * Parameters: `asked` the programme; `passing.stage` an index of its stages; `passing.probeError` [K], −20 to 20; `passing.atMost` [s], default 86 400.
 * Assumptions: more time never makes a cook fail that passed, save by a limit on the way up, which time cannot mend.
 * Checked: equal to the end of a stage that ends by lethality; with a rule, the cook of that length holds by it and a shorter one does not.
 * @example passingTime(problem, { stage: 0 }) // 2247 s of steam
 * Source: own-computation
 */
export function passingTime(asked: CookProblem, passing: Passing): number {
  const { stage, probeError = 0, atMost = day, mode = 'fine' } = passing;
  const run = passing.cook ?? cook;
  const rules = (passing.rules ?? []).filter(ofCooking);
  const problem = rules.length === 0 ? asked : judgedBy(asked, rules);
  if (problem.stages[stage] === undefined)
    throw new Contradiction(
      'stage',
      `stage ${stage}`,
      `a stage of the programme, 0 to ${problem.stages.length - 1}`,
    );
  const wanted = Math.min(limits.lethality.high, problem.target.s * 10 ** (probeError / problem.target.z));
  const heated = (factor: number) =>
    run(
      endedByLethality(
        { ...problem, target: { ...problem.target, s: wanted } },
        stage,
        Math.min(limits.lethality.high, wanted * factor),
        atMost,
      ),
      { mode },
    );
  if (rules.length === 0) {
    const own = heated(1).stages[stage];
    return own.reached ? own.end - own.start : Number.POSITIVE_INFINITY;
  }
  // A rule counts less than the sum does and mostly wants a little more: the first run goes on that far, and tells both.
  let longer = heated(further[0]);
  const { start } = longer.stages[stage];
  const { reachedAt } = longer.lethality;
  if (reachedAt === null) return Number.POSITIVE_INFINITY;
  const byTarget = Math.max(0, reachedAt - start);
  const holds = (result: CookResult, duration: number) =>
    foreseenCooking(upTo(result, start + duration, probeError), rules).every((v) => v.passes === true);
  if (holds(longer, byTarget)) return byTarget;
  for (const [i, factor] of further.entries()) {
    if (i > 0) longer = heated(factor);
    const own = longer.stages[stage];
    const whole = own.end - own.start;
    if (!holds(longer, whole)) {
      if (!own.reached || lostOnTheWay(longer, rules)) return Number.POSITIVE_INFINITY;
      continue;
    }
    let short = byTarget;
    let long = whole;
    while (long - short > 0.25) {
      const middle = (short + long) / 2;
      if (holds(longer, middle)) long = middle;
      else short = middle;
    }
    return long;
  }
  return Number.POSITIVE_INFINITY;
}

/** A limit on the way up that is broken stays broken. */
function lostOnTheWay(result: CookResult, rules: readonly Rule[]): boolean {
  const up = rules.filter((rule) => rule.kind === 'come-up');
  return foreseenCooking(result, up).some((v) => v.passes === false);
}
