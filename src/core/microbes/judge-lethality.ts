/** Judges a log by a process lethality: is the time at the reference temperature, or its equal, reached? */
import type { LethalityRule } from '../properties/rule.ts';
import { type RateCurve, rateAt, rateByTable, rateByZ, withFloor } from './lethal-rate.ts';
import { momentWithin, rounding, stretchLethality } from './lethality.ts';
import { hair, type Log, type Stretch, stretches } from './log.ts';
import { degrees, span, type Verdict, verdict } from './verdict.ts';

/** The rate of a rule over temperature, without its floor [s at the reference per s]. */
export const curveOf = (rule: LethalityRule): RateCurve => {
  const { rate } = rule;
  return rate.by === 'z' ? rateByZ(rule.referenceC, rate.below, rate.above) : rateByTable(rate.rows, rule.s);
};

/**
 * Adds up lethality stretch by stretch. Across a hole in the log the lower of the two ends counts for its whole length:
 * nobody saw the core, and it may have been that cold all the while.
 */
function gather(list: readonly Stretch[], curve: RateCurve, wanted: number) {
  let sum = 0;
  let reachedAt: number | null = null;
  for (const stretch of list) {
    const lower = Math.min(stretch.C1, stretch.C2);
    const read = stretch.hole ? { ...stretch, C1: lower, C2: lower } : stretch;
    const gained = stretchLethality(curve, read.s2 - read.s1, read.C1, read.C2);
    if (reachedAt === null && gained > 0 && sum + gained >= wanted * (1 - rounding))
      reachedAt = momentWithin(read, curve, wanted - sum);
    sum += gained;
  }
  return { sum, reachedAt };
}

/**
 * Verdict on a process lethality [s at the reference].
 *
 *     ∫ L dt ≥ t_ref, over the time at or above the lowest published temperature
 *
 * `value` is the plain integral along straight lines, or what may be counted of it where that changes the verdict.
 * Checked against logs worked out independently.
 */
export function judgeLethality(rule: LethalityRule, log: Log, gap: number): Verdict {
  const list = stretches(log, gap);
  const whole = curveOf(rule);
  const counting = withFloor(whole, rule.floorC - hair);
  const plain = list.reduce((sum, s) => sum + stretchLethality(whole, s.s2 - s.s1, s.C1, s.C2), 0);
  const { sum: counted, reachedAt } = gather(list, counting, rule.s);
  const holes = list.filter((s) => s.hole && Math.max(s.C1, s.C2) >= rule.floorC).length;
  const last = log.at(-1)!;
  const at = `${degrees(rule.referenceC)}`;
  const limit = rule.s;
  const holds = reachedAt !== null;
  const cautions: string[] = [];
  if (holes > 0)
    cautions.push(
      `${holes === 1 ? 'One hole' : `${holes} holes`} of more than ${span(gap, 'down')} between readings: the colder end was counted for the whole of it.`,
    );
  if (holds && rule.doubtfulBelow) {
    const sure = gather(list, withFloor(whole, rule.doubtfulBelow.C - hair), rule.s).sum;
    if (sure < limit * (1 - rounding)) cautions.push(`The lethality was ${rule.doubtfulBelow.why}.`);
  }
  if (holds) {
    return verdict(rule, log, {
      outcome: 'holds',
      value: plain,
      limit,
      decidingAt: reachedAt,
      cautions,
      parts: [part(at, counted, limit, true, log[0]!.s, reachedAt)],
      why: `Worth ${ampleOr(counted, limit)} at ${at}; ${span(limit, 'up')} are asked. Reached ${span(reachedAt - log[0]!.s, 'up')} into the log.`,
    });
  }

  const missing = limit - counted;
  const rate = rateAt(counting, last.C);
  const more = rate > 0 ? missing / rate : null;
  const tooCold = log.every((p) => p.C < rule.floorC - hair);
  const next =
    more === null
      ? `At ${degrees(last.C)} no time is enough: nothing is published below ${degrees(rule.floorC)}.`
      : `${span(more, 'up')} more at ${degrees(last.C)} would do.`;
  const overlooked =
    plain >= limit * (1 - rounding)
      ? ` The straight sum would be ${span(plain, 'down')}, but ${whatIsNotCounted(list, rule, holes)}.`
      : '';
  return verdict(rule, log, {
    outcome: tooCold ? 'not covered' : 'does not hold',
    // Where what may not be counted would change the verdict, what may be counted is shown against the limit.
    value: plain >= limit * (1 - rounding) ? counted : plain,
    limit,
    decidingAt: last.s,
    more,
    cautions,
    parts: [part(at, counted, limit, false, log[0]!.s, last.s)],
    why: tooCold
      ? `Not covered: the core has not reached ${degrees(rule.floorC)}, and nothing is published below it.`
      : `Worth ${span(counted, 'down')} at ${at}; ${span(limit, 'up')} are asked. ${next}${overlooked}`,
  });
}

/** No precise figure far beyond what is asked: a hundred minutes, or as many hundreds as there are tens asked. */
function ampleOr(counted: number, limit: number): string {
  const ample = 6000 * Math.max(1, Math.ceil(limit / 600));
  return counted > ample ? `over ${ample / 60} min` : span(counted, 'down');
}

function whatIsNotCounted(list: readonly Stretch[], rule: LethalityRule, holes: number): string {
  const cold = list.some((s) => Math.min(s.C1, s.C2) < rule.floorC && s.s2 > s.s1);
  const reasons: string[] = [];
  if (cold) reasons.push(`time below ${degrees(rule.floorC)} does not count`);
  if (holes > 0) reasons.push('across a hole the colder end counts');
  return reasons.join(' and ');
}

const part = (
  at: string,
  value: number,
  limit: number,
  passes: boolean,
  start: number,
  end: number | null,
) => ({ what: `counted time worth at ${at}`, value, limit, unit: 's' as const, passes, start, end });
