/** The rule book on what the engine foresees: cooking at the point that gets least, cooling at the one that stays warmest. */
import type { CookResult, Target } from '../heat/types.ts';
import { type JudgeOptions, judge, type Verdict } from '../microbes/judge.ts';
import type { Rule } from '../properties/rule.ts';

/** Between the engine's own points the temperature is a straight line: they are no readings, and have no holes [s]. */
const gap = 86_400;

function series(t: Float64Array, C: Float64Array): { s: number; C: number }[] {
  const points: { s: number; C: number }[] = [];
  for (let i = 0; i < t.length; i++) {
    const before = points.at(-1);
    if (before === undefined || t[i] > before.s + 1e-6) points.push({ s: t[i], C: C[i] });
  }
  return points;
}

/**
 * Verdicts on a computed cook by rules of cooking [-], in the order of the rules.
 * Equation: the worse of the verdicts at the point that got least by the target, and at the one that got least by
 * 70 °C, z 7.5 °C, where the target is another: a lax z may make a well-cooked surface its least point.
 * Parameters: `result`; `rules` of cooking or of the way up.
 * Assumptions: a rule counts in its own way (from its lowest published temperature up, a hold without a break), so that a
 * sum that reaches the target may still not meet it.
 * Checked: a piece that was warm, cooled and seared does not hold by a target with z 50 °C.
 * @example foreseenCooking(result, []).length // 0
 * Source: bigelow-1921
 */
export function foreseenCooking(result: CookResult, rules: readonly Rule[]): Verdict[] {
  const { t, coldSpot } = result.history;
  const said = judge(series(t, coldSpot), rules, { gap });
  if (result.alsoLeast === undefined) return said;
  const also = judge(series(t, result.alsoLeast), rules, { gap });
  return said.map((verdict, i) => {
    const other = also[i] ?? verdict;
    return verdict.passes === true && other.passes !== true ? other : verdict;
  });
}

/**
 * Verdicts on a computed chill by rules of cooling [-], in the order of the rules, at the warmest point.
 * Equation: as the judge's, on the warmest temperature at every moment.
 * Parameters: `result`; `rules` of cooling; `cookEnd`, `chillStart` on the result's clock [s].
 * Assumptions: the warmest point at each moment is no one place, so the verdict is on the safe side.
 * Checked: by the judge's own tests.
 * @example foreseenCooling(result, [], { cookEnd: 2400, chillStart: 2400 }).length // 0
 * Source: own-computation
 */
export function foreseenCooling(
  result: CookResult,
  rules: readonly Rule[],
  clock: Pick<JudgeOptions, 'cookEnd' | 'chillStart'>,
): Verdict[] {
  return judge(series(result.history.t, result.history.warmest), rules, { gap, ...clock });
}

/** Published with their times, so that they are nobody's own: reference [°C], z [°C], time [s]. */
const published: readonly Target[] = [
  { reference: 70, z: 7.5, s: 120 },
  { reference: 70, z: 6, s: 120 },
  { reference: 90, z: 9, s: 600 },
];

/**
 * Is a target less than 70 °C for 2 min (z 7.5 °C) anywhere between 60 and 100 °C [-]?
 * Equation: s · 10^((reference − T)/z) < 120 s · 10^((70 °C − T)/7.5 °C) at 60 °C or at 100 °C.
 * Parameters: `target` with reference [°C], z [°C], > 0, and s [s], > 0.
 * Assumptions: log time is straight in temperature, so the two ends decide; published targets are no kitchen's own.
 * Checked: half the time is less; a stricter z with the same time is not, below its reference.
 * @example lessThanUsual({ reference: 70, z: 7.5, s: 60 }) // → true
 * @example lessThanUsual({ reference: 75, z: 7.5, s: 120 }) // → false
 * Source: fsa-cooking-safely
 */
export function lessThanUsual(target: Target): boolean {
  const { reference, z, s } = target;
  if (published.some((p) => p.reference === reference && p.z === z && p.s <= s * (1 + 1e-9))) return false;
  return [60, 100].some((C) => s * 10 ** ((reference - C) / z) < 120 * 10 ** ((70 - C) / 7.5) * (1 - 1e-9));
}
