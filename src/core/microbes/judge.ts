/** The rule book's judge: a measured log against named rules. Statute, guidance and model stay apart in every verdict. */

import { OutOfRange } from '../errors.ts';
import type { Rule } from '../properties/rule.ts';
import { judgeComeUp } from './judge-come-up.ts';
import { judgeCooling } from './judge-cooling.ts';
import { judgeFreeze } from './judge-freeze.ts';
import { judgeHold } from './judge-hold.ts';
import { judgeKeep } from './judge-keep.ts';
import { judgeLethality } from './judge-lethality.ts';
import { checkLog, type Log } from './log.ts';
import type { JudgeOptions, Verdict } from './verdict.ts';

export type { JudgeOptions, Outcome, Part, Verdict } from './verdict.ts';

/**
 * Readings further apart than this are a hole [s]. An assumption: while food cooks somebody or something looks at least every
 * ten minutes; while it cools or is kept, at least every hour.
 */
export const defaultGap = { cooking: 600, cooling: 3600 } as const;

/**
 * Judges one log by each rule (verdicts in the order of the rules).
 *
 * Lethality: ∫ L dt along straight lines; only time at or above the lowest published temperature counts. Tables: one row held
 * without a break. Cooling: first fall through the upper to first fall through the lower temperature.
 * @param log seconds and °C of the point that got least (cooling: of the warmest point), times rising
 * @param rules from the rule book
 * @param options gap [s] > 0; end of cooking and start of chilling on the log's clock [s]
 * Assumes that the probe was where it matters and read right. Across a hole the colder end counts for lethality; a cooling limb
 * whose verdict hangs on a hole is undecided. What cannot be decided is never passed.
 * Checked against a twelve-point core log and a Newton cooling curve worked out independently, and that a log which is colder at
 * every moment never passes a cooking rule that the warmer one fails.
 * @example judge([{ s: 0, C: 70 }, { s: 120, C: 70 }], []).length // → 0
 * Source: bigelow-1921
 */
export function judge(log: Log, rules: readonly Rule[], options: JudgeOptions = {}): Verdict[] {
  checkLog(log);
  if (options.gap !== undefined && !(options.gap > 0))
    throw new OutOfRange('gap', `${options.gap} s`, 'more than 0 s');
  return rules.map((rule) => judgeOne(log, rule, options));
}

function judgeOne(log: Log, rule: Rule, options: JudgeOptions): Verdict {
  const cooking = options.gap ?? defaultGap.cooking;
  const cooling = options.gap ?? defaultGap.cooling;
  switch (rule.kind) {
    case 'lethality':
      return judgeLethality(rule, log, cooking);
    case 'hold':
      return judgeHold(rule, log, cooking);
    case 'cooling':
      return judgeCooling(rule, log, cooling, options);
    case 'keep':
      return judgeKeep(rule, log, cooling);
    case 'come-up':
      return judgeComeUp(rule, log, cooling);
    case 'freeze':
      return judgeFreeze(rule, log, cooling);
  }
}
