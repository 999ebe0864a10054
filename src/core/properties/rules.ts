/** The rule book: every rule a log can be judged by, by its id. */
import type { Rule } from './rule.ts';
import { freezingRules } from './rules-freezing.ts';
import { gbRules } from './rules-gb.ts';
import { otherRules } from './rules-other.ts';
import { usCookingRules } from './rules-us.ts';
import { usCoolingRules } from './rules-us-cooling.ts';

export type { Rule } from './rule.ts';

export const rules: readonly Rule[] = [
  ...gbRules,
  ...usCookingRules,
  ...usCoolingRules,
  ...otherRules,
  ...freezingRules,
];

const byId = new Map(rules.map((rule) => [rule.id, rule]));

/** The rule of an id, or undefined [-]. */
export function findRule(id: string): Rule | undefined {
  return byId.get(id);
}
