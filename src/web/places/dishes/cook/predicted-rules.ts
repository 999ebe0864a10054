/** The step's rules of the book, judged on what the engine predicts. A prediction is no measurement, and is never called one. */
import { asRuleVerdict, type RuleVerdict } from '../../../../contract/judge.ts';
import type { CookResult } from '../../../../core/heat/types.ts';
import { foreseenCooking, foreseenCooling } from '../../../../core/method/foreseen-rules.ts';
import { findRule, type Rule } from '../../../../core/properties/rules.ts';

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
  const cookEnd = result.stages[heatingStage]?.end;
  const chillStart = result.stages[cookStages - 1]?.end;
  const clock = {
    ...(cookEnd === undefined ? {} : { cookEnd }),
    ...(chillStart === undefined || cookEnd === undefined
      ? {}
      : { chillStart: Math.max(cookEnd, chillStart) }),
  };
  const said = [
    ...foreseenCooking(
      result,
      rules.filter((r) => r.kind !== 'cooling'),
    ),
    ...foreseenCooling(
      result,
      rules.filter((r) => r.kind === 'cooling'),
      clock,
    ),
  ].map(asRuleVerdict);
  // The judge speaks of the log it is given; here there is none, only what is foreseen.
  return said.map((v) => ({ ...v, why: v.why.replaceAll('into the log', 'into the cook') }));
}
