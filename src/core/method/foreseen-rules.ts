/** The rule book on what the engine foresees: cooking at the point that gets least, cooling at the one that stays warmest. */
import type { CookResult, Target } from '../heat/types.ts';
import { type JudgeOptions, judge, type Verdict } from '../microbes/judge.ts';
import { fitZ } from '../microbes/lethality.ts';
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

/** By which rules of cooking find their coldest point where they have no z of their own. */
const usual = { reference: 70, z: 7.5 } as const;

/** For a rule that asks for one temperature: so steep that the point with the lowest peak has least. */
const peak = 1;

/** How steeply a rule counts [°C for a tenfold change]; none for rules that are not about heat. */
function stepsOf(rule: Rule): readonly number[] {
  if (rule.kind === 'lethality')
    return rule.rate.by === 'z' ? [rule.rate.below, rule.rate.above] : [fitZ(rule.rate.rows).z];
  if (rule.kind !== 'hold') return [];
  const timed = rule.rows.filter((row) => row.s > 0);
  return timed.length > 1 && timed[0]!.s > timed.at(-1)!.s ? [fitZ(timed).z, peak] : [peak];
}

/**
 * By what else the least treated point must be looked for, so that every rule is judged where its own counting is least [°C].
 * Equation: z of the rule; of a table the z of the straight line through its rows; 1 °C where one temperature is asked for.
 * Parameters: `rules` of cooking; `target` of the cook, which is looked for anyway.
 * Assumptions: the reference does not move the least point; two z within a quarter of a degree find the same one.
 * Checked: 70 °C for 2 min by z 7.5 °C asks for nothing else, a table and a single temperature do.
 * @example leastPointsFor([], { reference: 70, z: 7.5, s: 120 }).length // → 0
 * @example leastPointsFor([], { reference: 70, z: 10, s: 120 })[0].z // → 7.5
 * Source: bigelow-1921
 */
export function leastPointsFor(
  rules: readonly Rule[],
  target: Target,
): readonly Pick<Target, 'reference' | 'z'>[] {
  const found: number[] = [target.z];
  for (const z of [usual.z, ...rules.flatMap(stepsOf)])
    if (!found.some((have) => Math.abs(have - z) < 0.25)) found.push(Math.min(60, Math.max(1, z)));
  return found.slice(1).map((z) => ({ reference: usual.reference, z }));
}

const worst: Readonly<Record<Verdict['outcome'], number>> = {
  holds: 0,
  undecided: 1,
  'not covered': 2,
  'does not hold': 3,
};

/** Of verdicts by one rule at several points: one that does not hold before one that does; of two that hold, the later one. */
function worse(a: Verdict, b: Verdict): Verdict {
  if (a.outcome !== b.outcome) return worst[b.outcome] > worst[a.outcome] ? b : a;
  return (b.deciding?.s ?? 0) > (a.deciding?.s ?? 0) ? b : a;
}

/**
 * Verdicts on a computed cook by rules of cooking [-], in the order of the rules.
 * Equation: the worst of the verdicts at the point that got least by the target and at those that got least by each of the
 * problem's `alsoLeast`: a lax z may make a well-cooked surface its least point, a table is least where its own steepness is.
 * Parameters: `result`; `rules` of cooking or of the way up.
 * Assumptions: a rule counts in its own way (from its lowest published temperature up, a hold without a break), so that a
 * sum that reaches the target may still not meet it.
 * Checked: a piece that was warm, cooled and seared does not hold by a target with z 50 °C.
 * @example foreseenCooking(result, []).length // 0
 * Source: bigelow-1921
 */
export function foreseenCooking(result: CookResult, rules: readonly Rule[]): Verdict[] {
  const { t, coldSpot } = result.history;
  return [coldSpot, ...(result.alsoLeast ?? [])]
    .map((C) => judge(series(t, C), rules, { gap }))
    .reduce((said, also) => said.map((verdict, i) => worse(verdict, also[i] ?? verdict)));
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
