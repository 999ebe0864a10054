/** The step's rules of the book, judged on what the engine predicts. A prediction is no measurement, and is never called one. */
import { judgePoints, type RuleVerdict } from '../../../../contract/judge.ts';
import type { CookResult } from '../../../../core/heat/types.ts';
import { findRule, type Rule } from '../../../../core/properties/rules.ts';

const series = (t: Float64Array, C: Float64Array) => {
  const points: { s: number; C: number }[] = [];
  for (let i = 0; i < t.length; i++) {
    const s = t[i]!;
    if (points.length === 0 || s > points.at(-1)!.s + 1e-6) points.push({ s, C: C[i]! });
  }
  return points;
};

/** Cooking is judged at the point that gets least, cooling at the one that stays warmest; keeping is not predicted. */
export function predictedRules(
  result: CookResult,
  ids: readonly string[],
  heatingStage: number,
  cookStages: number,
): RuleVerdict[] {
  const rules = ids.flatMap((id): Rule[] => {
    const rule = findRule(id);
    return rule === undefined || rule.kind === 'keep' ? [] : [rule];
  });
  if (rules.length === 0) return [];
  const { t, coldSpot, warmest } = result.history;
  const cooling = rules.filter((r) => r.kind === 'cooling');
  const cooking = rules.filter((r) => r.kind !== 'cooling');
  const cookEnd = result.stages[heatingStage]?.end;
  const chillStart = result.stages[cookStages - 1]?.end;
  const options = {
    gap: 86_400,
    ...(cookEnd === undefined ? {} : { cookEnd }),
    ...(chillStart === undefined || cookEnd === undefined
      ? {}
      : { chillStart: Math.max(cookEnd, chillStart) }),
  };
  const said: RuleVerdict[] = [
    ...(cooking.length === 0 ? [] : judgePoints(series(t, coldSpot), cooking, options)),
    ...(cooling.length === 0 ? [] : judgePoints(series(t, warmest), cooling, options)),
  ];
  // The judge speaks of the log it is given; here there is none, only what is foreseen.
  return said.map((v) => ({ ...v, why: v.why.replaceAll('into the log', 'into the cook') }));
}
