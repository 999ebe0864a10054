/**
 * Judges cooling: from the first fall through the upper temperature to the first fall through the lower. Reheating above the
 * upper one starts a new attempt; an attempt that had already overrun stays a failure.
 */
import type { CoolingLimb, CoolingRule } from '../properties/rule.ts';
import { rounding } from './lethality.ts';
import { crossing, type Log, type Stretch, stretches, temperatureAt } from './log.ts';
import { degrees, type Found, type JudgeOptions, type Part, span, type Verdict, verdict } from './verdict.ts';

/**
 * A wobble of less than this above the upper temperature does not restart the clock [°C]: of the size of a kitchen probe's
 * own error; an assumption, on the strict side (the earlier start counts).
 */
export const wobble = 1;

/** A fall through a temperature; in a hole it lies anywhere between the two readings. */
interface Fall {
  readonly s: number;
  readonly earliest: number;
  readonly latest: number;
}

const exactly = (s: number): Fall => ({ s, earliest: s, latest: s });

function fallIn(stretch: Stretch, C: number): Fall {
  const s = crossing(stretch, C);
  const inside = stretch.hole && s > stretch.s1 && s < stretch.s2;
  return inside ? { s, earliest: stretch.s1, latest: stretch.s2 } : exactly(s);
}

interface Attempt {
  readonly from: Fall;
  /** Indices into the stretches: where it began, and where it ends (exclusive). */
  readonly first: number;
  readonly end: number;
  readonly endS: number;
  readonly reheated: boolean;
}

/** Every time the core fell through the top temperature and what followed, up to the next real rise above it. */
function attemptsOf(log: Log, list: readonly Stretch[], top: number): Attempt[] {
  const attempts: Attempt[] = [];
  let hot = log[0]!.C >= top;
  let open: { from: Fall; first: number } | null = null;
  list.forEach((stretch, i) => {
    if (open !== null && stretch.C2 >= top + wobble) {
      attempts.push({ ...open, end: i, endS: crossing(stretch, top), reheated: true });
      open = null;
      hot = true;
    } else if (open === null && hot && stretch.C2 < top) {
      open = { from: fallIn(stretch, top), first: i };
      hot = false;
    } else if (open === null && stretch.C2 >= top) hot = true;
  });
  const last = log.at(-1)!;
  if (open !== null)
    attempts.push({
      ...(open as { from: Fall; first: number }),
      end: list.length,
      endS: last.s,
      reheated: false,
    });
  return attempts;
}

/** The first fall through a temperature at or after a moment, within some stretches. */
function firstFall(
  list: readonly Stretch[],
  first: number,
  end: number,
  C: number,
  after: number,
): Fall | null {
  for (let i = first; i < end; i++) {
    const stretch = list[i]!;
    if (stretch.C1 <= C && stretch.s1 >= after) return exactly(stretch.s1);
    if (!(stretch.C1 > C && stretch.C2 <= C)) continue;
    const fall = fallIn(stretch, C);
    if (fall.s >= after) return fall;
  }
  return null;
}

interface LimbResult {
  readonly part: Part;
  readonly failedAt: number | null;
  /** Passing hangs on what happened in a hole. */
  readonly unsure: boolean;
}

function limbWhat(limb: CoolingLimb): string {
  return limb.s === null
    ? `on to ${degrees(limb.toC)}`
    : `${degrees(limb.fromC)} to ${degrees(limb.toC)} within ${span(limb.s, 'down')}`;
}

function judgeLimb(limb: CoolingLimb, from: Fall | null, to: Fall | null, endS: number): LimbResult {
  const base = { what: limbWhat(limb), limit: limb.s, unit: 's' as const };
  if (from === null)
    return {
      part: { ...base, value: null, passes: null, start: null, end: null },
      failedAt: null,
      unsure: false,
    };
  const value = (to?.s ?? endS) - from.s;
  const span = { start: from.s, end: to?.s ?? null, value };
  if (limb.s === null)
    return { part: { ...base, ...span, passes: to === null ? null : true }, failedAt: null, unsure: false };
  const limit = limb.s * (1 + rounding);
  if (value > limit)
    return { part: { ...base, ...span, passes: false }, failedAt: from.s + limb.s, unsure: false };
  if (to === null) {
    const unsure = endS - from.earliest > limit;
    return { part: { ...base, ...span, passes: null }, failedAt: null, unsure };
  }
  const unsure = to.latest - from.earliest > limit;
  return { part: { ...base, ...span, passes: unsure ? null : true }, failedAt: null, unsure };
}

function judgeAttempt(
  rule: CoolingRule,
  list: readonly Stretch[],
  attempt: Attempt,
  top: number,
): LimbResult[] {
  return rule.limbs.map((limb) => {
    const from =
      limb.fromC === top
        ? attempt.from
        : firstFall(list, attempt.first, attempt.end, limb.fromC, attempt.from.s);
    const to = from === null ? null : firstFall(list, attempt.first, attempt.end, limb.toC, from.s);
    return judgeLimb(limb, from, to, attempt.endS);
  });
}

/** Was chilling begun soon enough after cooking? null where the rule does not ask. */
function startPart(rule: CoolingRule, { cookEnd, chillStart }: JudgeOptions): Part | null {
  if (rule.startWithin === undefined) return null;
  const what = `chilling begun within ${span(rule.startWithin, 'down')} of the end of cooking`;
  const base = {
    what,
    limit: rule.startWithin,
    unit: 's' as const,
    start: cookEnd ?? null,
    end: chillStart ?? null,
  };
  if (cookEnd === undefined || chillStart === undefined) return { ...base, value: null, passes: null };
  const value = chillStart - cookEnd;
  return { ...base, value, passes: value <= rule.startWithin * (1 + rounding) };
}

/**
 * Verdict on cooling, each limb with its own time [s].
 *
 *     Δt = t(first fall through the lower temperature) − t(first fall through the upper)
 *
 * Straight lines between readings; where a fall lies in a hole, the earliest start and the latest end must still keep the
 * limit, or the verdict is undecided. Checked on a Newton curve whose times are known in closed form.
 */
export function judgeCooling(rule: CoolingRule, log: Log, gap: number, options: JudgeOptions): Verdict {
  const list = stretches(log, gap);
  if (rule.fromChillStart) return verdict(rule, log, fromChillStart(rule, log, list, options));
  const top = Math.max(...rule.limbs.map((limb) => limb.fromC));
  const attempts = attemptsOf(log, list, top);
  const start = startPart(rule, options);
  if (attempts.length === 0) return verdict(rule, log, neverBegun(rule, log, list, top, start));

  const cautions: string[] = [];
  let failed: { results: LimbResult[]; at: number } | null = null;
  let results: LimbResult[] = [];
  for (const attempt of attempts) {
    results = judgeAttempt(rule, list, attempt, top);
    const at = results.reduce<number | null>((first, r) => earlier(first, r.failedAt), null);
    if (at !== null && failed === null) failed = { results, at };
    if (attempt.reheated)
      cautions.push(
        `Reheated above ${degrees(top)} at ${clock(log, attempt.endS)}: the clock was started again.`,
      );
  }
  const shown = failed?.results ?? results;
  cautions.push(...roseAgain(rule, log, results));
  return verdict(rule, log, { ...sumUp(log, shown, start, failed?.at ?? null), cautions });
}

function sumUp(log: Log, results: readonly LimbResult[], start: Part | null, failedAt: number | null): Found {
  const parts = [...results.map((r) => r.part), ...(start === null ? [] : [start])];
  const timed = parts.filter((p) => p.limit !== null && p.value !== null);
  const worst = timed.reduce<Part | null>((w, p) => (w === null || shareOf(p) > shareOf(w) ? p : w), null);
  const common = { parts, value: worst?.value ?? null, limit: worst?.limit ?? null };
  const last = log.at(-1)!;
  if (failedAt !== null || start?.passes === false) {
    const broken = parts.filter((p) => p.passes === false);
    const first = broken[0]!;
    const value = broken.reduce((w, p) => (shareOf(p) > shareOf(w) ? p : w), first);
    return {
      ...common,
      value: value.value,
      limit: value.limit,
      outcome: 'does not hold',
      failedAt: failedAt ?? (start?.start ?? 0) + (start?.limit ?? 0),
      decidingAt: failedAt ?? start?.end ?? last.s,
      why: broken.map(tell).join(' '),
    };
  }
  const open = parts.find((p) => p.passes === null);
  if (open !== undefined) {
    const unsure = results.some((r) => r.unsure);
    const missing =
      open === start
        ? 'The log’s temperatures hold, but say when cooking ended and when chilling began: the rule counts from there.'
        : unsure
          ? `${tell(open)} A hole between readings hides the moment that decides.`
          : open.value === null
            ? `Not yet at the start of “${open.what}” when the log ends.`
            : `Not reached when the log ends: ${open.what}; ${open.limit === null ? 'no time is stated for it' : `${span(open.limit - open.value, 'down')} are left`}.`;
    return { ...common, outcome: 'undecided', decidingAt: last.s, why: missing };
  }
  return {
    ...common,
    outcome: 'holds',
    decidingAt: worst?.end ?? last.s,
    why: parts.map(tell).join(' '),
  };
}

const shareOf = (p: Part): number => (p.value ?? 0) / (p.limit ?? Number.POSITIVE_INFINITY);
const earlier = (a: number | null, b: number | null) => (a === null ? b : b === null ? a : Math.min(a, b));

function tell(p: Part): string {
  if (p.value === null) return `${capital(p.what)}: not reached.`;
  if (p.end === null) return `${capital(p.what)}: not reached after ${span(p.value, 'up')}.`;
  return `${capital(p.what)}: took ${span(p.value, 'up')}.`;
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
const clock = (log: Log, s: number) => `${span(s - log[0]!.s, 'up')} into the log`;

/** After the last limb was met, did the core climb back above its end? */
function roseAgain(rule: CoolingRule, log: Log, results: readonly LimbResult[]): string[] {
  const lowest = Math.min(...rule.limbs.map((limb) => limb.toC));
  const reached = results.find((_, i) => rule.limbs[i]!.toC === lowest)?.part.end;
  if (reached === null || reached === undefined) return [];
  const later = log.find((p) => p.s > reached && p.C > lowest + wobble);
  return later === undefined
    ? []
    : [`It rose above ${degrees(lowest)} again, to ${degrees(later.C)}, ${clock(log, later.s)}.`];
}

/** No fall through the top temperature: still hot, or the log begins too late. */
function neverBegun(
  rule: CoolingRule,
  log: Log,
  list: readonly Stretch[],
  top: number,
  start: Part | null,
): Found {
  const first = log[0]!;
  const last = log.at(-1)!;
  const after = start === null ? [] : [start];
  if (last.C >= top || log.some((p) => p.C >= top))
    return {
      outcome: 'undecided',
      parts: after,
      decidingAt: last.s,
      why: `Not begun: the core has not fallen below ${degrees(top)} yet.`,
    };
  const results = rule.limbs.map((limb) => {
    const from =
      first.C <= limb.fromC && first.C > limb.toC
        ? exactly(first.s)
        : firstFall(list, 0, list.length, limb.fromC, first.s);
    const to = from === null ? null : firstFall(list, 0, list.length, limb.toC, from.s);
    const result = judgeLimb(limb, from, to, last.s);
    // Counted from the first reading, a limb can be shown to be broken but never to be kept.
    return result.part.passes === true && from?.s === first.s
      ? { ...result, part: { ...result.part, passes: null } }
      : result;
  });
  const failedAt = results.reduce<number | null>((f, r) => earlier(f, r.failedAt), null);
  if (failedAt !== null && first.C > Math.min(...rule.limbs.map((l) => l.toC))) {
    const found = sumUp(log, results, start, failedAt);
    return { ...found, why: `Even counted from the first reading, at ${degrees(first.C)}: ${found.why}` };
  }
  return {
    outcome: 'undecided',
    parts: [...results.map((r) => r.part), ...after],
    decidingAt: first.s,
    why: `The log never shows ${degrees(top)}, from where the time counts, so when the clock began is not in it.`,
  };
}

/** A limb that is timed from the start of chilling, as stated by the caller. */
function fromChillStart(rule: CoolingRule, log: Log, list: readonly Stretch[], options: JudgeOptions): Found {
  const limb = rule.limbs[0]!;
  const start = startPart(rule, options)!;
  const last = log.at(-1)!;
  const limit = limb.s ?? Number.POSITIVE_INFINITY;
  const what = `to ${degrees(limb.toC)} within ${span(limit, 'down')} of the start of chilling`;
  const { chillStart } = options;
  if (chillStart !== undefined) {
    if (chillStart < log[0]!.s || chillStart > last.s)
      return {
        outcome: 'undecided',
        parts: [start],
        decidingAt: last.s,
        why: 'The start of chilling that was given lies outside the log.',
      };
    const began = temperatureAt(log, chillStart);
    const to =
      began <= limb.toC ? exactly(chillStart) : firstFall(list, 0, list.length, limb.toC, chillStart);
    const result = judgeLimb(limb, exactly(chillStart), to, last.s);
    return sumUp(log, [{ ...result, part: { ...result.part, what } }], start, result.failedAt);
  }
  // Without it: from the fall through the cooking temperature, both times together are the most there can be.
  const whole = { fromC: limb.fromC, toC: limb.toC, s: limit + (rule.startWithin ?? 0) };
  const attempt = attemptsOf(log, list, limb.fromC).at(-1);
  if (attempt === undefined)
    return {
      outcome: 'undecided',
      parts: [start],
      decidingAt: last.s,
      why: `Say when cooking ended and when chilling began: the log shows no fall through ${degrees(limb.fromC)}.`,
    };
  const to = firstFall(list, attempt.first, attempt.end, limb.toC, attempt.from.s);
  const result = judgeLimb(whole, attempt.from, to, attempt.endS);
  const asked = { ...result, part: { ...result.part, passes: result.part.passes === false ? false : null } };
  const found = sumUp(log, [asked], start, result.failedAt);
  if (result.failedAt !== null || to === null) return found;
  return {
    ...found,
    why: `From ${degrees(limb.fromC)} to ${degrees(limb.toC)} took ${span(result.part.value ?? 0, 'up')}. Say when cooking ended and when chilling began: the rule counts from there.`,
  };
}
