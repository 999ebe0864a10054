/** Judges how long the core spent between two temperatures on its way up. */
import type { ComeUp, ComeUpRule } from '../properties/rule.ts';
import { rounding } from './lethality.ts';
import { crossing, type Log, longestGap, stretches } from './log.ts';
import { degrees, span, type Verdict, verdict } from './verdict.ts';

/**
 * Time between the two temperatures until the upper one is first reached [s], whether going up or down; `failedAt` is the moment
 * at which the limit ran out. A stretch that crosses into the range counts from the crossing.
 */
export function timeOnTheWayUp(log: Log, limit: ComeUp) {
  let spent = 0;
  let failedAt: number | null = null;
  if (log[0]!.C >= limit.highC) return { s: 0, failedAt, reachedAt: log[0]!.s };
  for (const stretch of stretches(log, Number.POSITIVE_INFINITY)) {
    const { s1, s2, C1, C2 } = stretch;
    const top = C2 >= limit.highC;
    const start = C1 < limit.lowC && C2 > limit.lowC ? crossing(stretch, limit.lowC) : s1;
    const end = top ? crossing(stretch, limit.highC) : C2 < limit.lowC ? crossing(stretch, limit.lowC) : s2;
    const inside = Math.max(C1, C2) > limit.lowC ? Math.max(0, end - start) : 0;
    if (failedAt === null && spent + inside > limit.s * (1 + rounding)) failedAt = start + (limit.s - spent);
    spent += inside;
    if (top) return { s: spent, failedAt, reachedAt: end };
  }
  return { s: spent, failedAt, reachedAt: null };
}

/**
 * Verdict on the time spent between two temperatures until the upper one is first reached [s].
 * Undecided where the log begins above the lower temperature or ends below the upper, unless the limit is broken already.
 */
export function judgeComeUp(rule: ComeUpRule, log: Log, gap: number): Verdict {
  const { s: spent, failedAt, reachedAt } = timeOnTheWayUp(log, rule);
  const range = `between ${degrees(rule.lowC)} and ${degrees(rule.highC)}`;
  const first = log[0]!;
  const cautions =
    longestGap(log) > gap ? ['Readings far apart: straight lines were drawn between them.'] : [];
  const common = { value: spent, limit: rule.s, cautions };
  if (failedAt !== null)
    return verdict(rule, log, {
      ...common,
      outcome: 'does not hold',
      failedAt,
      decidingAt: failedAt,
      why: `The core spent ${span(spent, 'up')} ${range}; ${span(rule.s, 'down')} are allowed.`,
    });
  if (first.C > rule.lowC)
    return verdict(rule, log, {
      ...common,
      outcome: 'undecided',
      decidingAt: first.s,
      why: `The log begins at ${degrees(first.C)}, above ${degrees(rule.lowC)}: the time before it is not in it. In the log itself ${span(spent, 'up')} ${range}.`,
    });
  if (reachedAt === null)
    return verdict(rule, log, {
      ...common,
      outcome: 'undecided',
      decidingAt: log.at(-1)!.s,
      why: `${degrees(rule.highC)} is not reached yet; ${span(rule.s - spent, 'down')} are left.`,
    });
  return verdict(rule, log, {
    ...common,
    outcome: 'holds',
    decidingAt: reachedAt,
    why: `The core spent ${span(spent, 'up')} ${range}; ${span(rule.s, 'down')} are allowed.`,
  });
}
