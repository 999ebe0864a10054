/** Rules of the book that a computed cook can be held to, by their names. */
import { findRule, type Rule, rules } from '../core/properties/rules.ts';
import { nearNames } from './near-names.ts';
import { InputProblems } from './problem.ts';

const speaksOfCooking = (rule: Rule) =>
  rule.kind === 'lethality' || rule.kind === 'hold' || rule.kind === 'come-up';

/** The rules by their ids. Throws `InputProblems` for one that there is not, or that does not speak of cooking. */
export function cookingRules(ids: readonly string[], path = 'rules'): Rule[] {
  const names = rules.filter(speaksOfCooking).map((rule) => rule.id);
  const chosen: Rule[] = [];
  const problems = ids.flatMap((id, i) => {
    const rule = findRule(id);
    if (rule !== undefined && speaksOfCooking(rule)) {
      chosen.push(rule);
      return [];
    }
    const near = nearNames(id, names, 3);
    return [
      {
        path: `${path}[${i}]`,
        found: rule === undefined ? JSON.stringify(id) : `${JSON.stringify(id)}, a rule of ${rule.kind}`,
        allowed: `a rule of cooking${near.length > 0 ? `; perhaps ${near.join(', ')}` : ''} (fq rules lists them)`,
      },
    ];
  });
  if (problems.length > 0) throw new InputProblems(problems);
  return chosen;
}
