/** What the engine foresees of warming through: the rules of reheating at the point that gets least, what is doubtful, when the ice has gone. */
import type { CookProblem, CookResult } from '../heat/types.ts';
import type { Verdict } from '../microbes/judge.ts';
import type { Rule } from '../properties/rule.ts';
import { foreseenCooking } from './foreseen-rules.ts';
import { type Doubt, heatingStageOf, verdictOf } from './verdict.ts';

export interface ReheatForeseen {
  /** `not asked`: no rule is named and no core temperature is wanted, so that nothing was judged. */
  readonly word: 'holds' | 'short' | 'unknown' | 'not asked';
  readonly rules: readonly Verdict[];
  /** Index of the stage after which it is lifted out of the heat, and when that is [s]. */
  readonly heatingStage: number;
  readonly liftOut: number;
  /** The coldest point of the whole piece at lifting out [°C]. */
  readonly coldest: number;
  /** Wanted there [°C]; null where nothing was. */
  readonly wanted: number | null;
  /** From when on there is no ice in it [s]; null where there never was, or still is. */
  readonly thawed: number | null;
  readonly doubts: readonly Doubt[];
  /** Stages whose goal was not reached in their time. */
  readonly notReached: readonly string[];
}

/** Less ice than this share of the water counts as none. */
const traceOfIce = 1e-3;

function thawedAt({ t, ice }: CookResult['history']): number | null {
  if (ice === undefined) return null;
  let last = -1;
  for (let i = 0; i < ice.length; i++) if (ice[i] > traceOfIce) last = i;
  return last < 0 || last === ice.length - 1 ? null : t[last + 1];
}

/** Below this a rule counts nothing at all, so that what never gets there has had nothing [°C]. */
function floorOf(rule: Rule): number | null {
  if (rule.kind === 'lethality') return rule.floorC;
  return rule.kind === 'hold' ? Math.min(...rule.rows.map((row) => row.C)) : null;
}

/**
 * Warming through, judged on what is computed [word; times s, temperatures °C].
 * Equation: holds ⇔ every rule holds at its own least point, and the coldest point at lifting out is at least as hot as wanted.
 * Parameters: `problem` and `result` of it; `rules` of reheating; `wanted` at the coldest point [°C], 0–100, or null.
 * Assumptions: those of the engine; a piece whose least point never comes to where a rule begins to count is short; what is in doubt, or what a rule does not cover or cannot decide, is unknown and never holds;
 * a stage that does not reach its goal is not short by itself, but its programme is not the one that was asked for: unknown.
 * Checked: a slab against its series; never `holds` where a rule does not, where the coldest is short, or where nothing is asked.
 * @example foreseenReheat(problem, result, [], null).word // 'not asked'
 * Source: own-computation
 */
export function foreseenReheat(
  problem: CookProblem,
  result: CookResult,
  rules: readonly Rule[],
  wanted: number | null,
): ReheatForeseen {
  const { doubts, notReached } = verdictOf(problem, result, problem.stages.length);
  const heatingStage = heatingStageOf(problem, result, problem.stages.length);
  const stage = result.stages[heatingStage];
  const coldest = stage?.coldest ?? Number.NaN;
  const said = foreseenCooking(result, rules);
  const peak = result.history.coldSpot.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const nothing = rules.some((rule) => peak < (floorOf(rule) ?? Number.NEGATIVE_INFINITY));
  const short =
    nothing || said.some((v) => v.outcome === 'does not hold') || (wanted !== null && !(coldest >= wanted));
  const open = doubts.length > 0 || notReached.length > 0 || said.some((v) => v.outcome !== 'holds');
  return {
    word: short ? 'short' : open ? 'unknown' : rules.length === 0 && wanted === null ? 'not asked' : 'holds',
    rules: said,
    heatingStage,
    liftOut: stage?.end ?? 0,
    coldest,
    wanted,
    thawed: thawedAt(result.history),
    doubts,
    notReached,
  };
}
