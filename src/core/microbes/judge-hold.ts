/**
 * Judges a log by a table of holds. No rule is published for adding up times at different rows, so none is added: for some
 * row the core must stay at or above its temperature, without a break, for its time.
 */
import type { ComeUp, HoldRule, TimeAtTemperature } from '../properties/rule.ts';
import { timeOnTheWayUp } from './judge-come-up.ts';
import { rateByTable } from './lethal-rate.ts';
import { rounding, stretchLethality } from './lethality.ts';
import { crossing, hair, type Log, type Stretch, stretches } from './log.ts';
import { degrees, type Part, span, type Verdict, verdict } from './verdict.ts';

interface Spell {
  readonly start: number;
  readonly end: number;
}

/** Unbroken spells at or above a temperature [s on the log's clock]. In a hole the core counts as at its colder end throughout. */
export function spellsAtOrAbove(log: Log, list: readonly Stretch[], C: number): Spell[] {
  const spells: { start: number; end: number }[] = [];
  const level = C - hair;
  let open: { start: number; end: number } | null = null;
  const first = log[0]!;
  if (first.C >= level) open = { start: first.s, end: first.s };
  for (const stretch of list) {
    const { s1, s2, C1, C2, hole } = stretch;
    const in1 = C1 >= level;
    const in2 = C2 >= level;
    if (in1 && in2) {
      open ??= { start: s1, end: s1 };
      open.end = s2;
      continue;
    }
    if (in1 && open) {
      open.end = hole ? s1 : crossing(stretch, C);
      spells.push(open);
      open = null;
    } else if (in2) {
      const start = hole ? s2 : crossing(stretch, C);
      open = { start, end: s2 };
    }
  }
  if (open) spells.push(open);
  return spells;
}

interface RowResult {
  readonly row: TimeAtTemperature;
  readonly longest: Spell | null;
  readonly doneAt: number | null;
  /** What the spell that is still running at the end of the log lacks [s]; null where none is running. */
  readonly lacks: number | null;
}

function judgeRow(row: TimeAtTemperature, log: Log, list: readonly Stretch[]): RowResult {
  const spells = spellsAtOrAbove(log, list, row.C);
  const enough = spells.find((spell) => spell.end - spell.start >= row.s * (1 - rounding));
  const longest = spells.reduce<Spell | null>(
    (best, spell) => (best === null || spell.end - spell.start > best.end - best.start ? spell : best),
    null,
  );
  const last = log.at(-1)!;
  const running = spells.at(-1);
  const lacks =
    last.C >= row.C - hair && running !== undefined
      ? Math.max(0, row.s - (running.end - running.start))
      : null;
  return {
    row,
    longest: enough ?? longest,
    doneAt: enough === undefined ? null : Math.min(enough.start + row.s, enough.end),
    lacks,
  };
}

/**
 * Verdict on a table of holds: for some row the core stays at or above T_row, without a break, for at least t_row [s].
 * Stricter than adding up over rows, for which no rule is published; the sum is given as a model only.
 * Checked on printed rows held for exactly their time, and a twentieth of a second less.
 */
export function judgeHold(rule: HoldRule, log: Log, gap: number): Verdict {
  const list = stretches(log, gap);
  const hottest = log.reduce((a, b) => (b.C > a.C ? b : a));
  // Rows the log never reaches have no spell.
  const results = rule.rows.filter((row) => row.C - hair <= hottest.C).map((row) => judgeRow(row, log, list));
  const parts = results.filter((r) => r.longest !== null).map(asPart);
  const model = modelShare(rule, list);
  const cautions: string[] = [];
  const lowest = rule.rows[0]!;
  if (list.some((s) => s.hole && Math.max(s.C1, s.C2) >= lowest.C - hair))
    cautions.push(
      `Readings more than ${span(gap, 'down')} apart: between them the core counts as cold as the colder one.`,
    );
  if (rule.comeUp && log[0]!.C > rule.comeUp.lowC)
    cautions.push(
      `The log begins at ${degrees(log[0]!.C)}: the table also asks that no more than ${span(rule.comeUp.s, 'down')} were spent between ${degrees(rule.comeUp.lowC)} and ${degrees(rule.comeUp.highC)} on the way up, and that is not all in it.`,
    );
  const done = results
    .filter((r) => r.doneAt !== null)
    .sort((a, b) => a.doneAt! - b.doneAt! || a.row.C - b.row.C)[0];
  const common = { parts, model, cautions };

  if (done === undefined) return notHeld(rule, log, results, hottest, common);
  const doneAt = done.doneAt!;
  const broken = brokenCondition(rule, log, doneAt);
  const shown = shownOf(done, hottest.C);
  if (broken !== null)
    return verdict(rule, log, {
      ...common,
      ...shown,
      outcome: broken.failed ? 'does not hold' : 'undecided',
      decidingAt: broken.at,
      failedAt: broken.failed ? broken.at : null,
      why: `${heldText(done)}, but ${broken.what}.`,
    });
  return verdict(rule, log, {
    ...common,
    ...shown,
    outcome: 'holds',
    decidingAt: doneAt,
    why: `${heldText(done)}.`,
  });
}

function notHeld(
  rule: HoldRule,
  log: Log,
  results: readonly RowResult[],
  hottest: { readonly s: number; readonly C: number },
  common: { parts: Part[]; model: Verdict['model']; cautions: string[] },
): Verdict {
  const last = log.at(-1)!;
  const lowest = rule.rows[0]!;
  const name = lowest.printed ?? degrees(lowest.C);
  if (hottest.C < lowest.C - hair && rule.rows.length === 1)
    return verdict(rule, log, {
      ...common,
      outcome: 'does not hold',
      value: hottest.C,
      limit: lowest.C,
      unit: '°C',
      decidingAt: hottest.s,
      why: `The hottest reading is ${degrees(Math.floor(hottest.C * 10) / 10)}; ${name} is asked.`,
    });
  if (hottest.C < lowest.C - hair)
    return verdict(rule, log, {
      ...common,
      outcome: 'not covered',
      value: hottest.C,
      limit: lowest.C,
      unit: '°C',
      decidingAt: hottest.s,
      why: `Not covered: the hottest reading, ${degrees(Math.floor(hottest.C * 10) / 10)}, lies below the lowest row, ${name}.`,
    });
  const waiting = results.filter((r) => r.lacks !== null).sort((a, b) => a.lacks! - b.lacks!)[0];
  const best = results
    .filter((r) => r.longest !== null && r.row.s > 0)
    .sort((a, b) => share(b) - share(a))[0];
  const close = waiting ?? best;
  const more = waiting?.lacks ?? null;
  const shown = close === undefined ? {} : shownOf(close, hottest.C);
  const next =
    more === null || waiting === undefined
      ? `At ${degrees(last.C)}, below the lowest row, no time is enough.`
      : `${span(more, 'up')} more at ${degrees(Math.floor(last.C * 10) / 10)} would do.`;
  return verdict(rule, log, {
    ...common,
    ...shown,
    outcome: 'does not hold',
    decidingAt: last.s,
    more,
    why: `${close === undefined ? 'No row is met' : heldText(close)}. ${next}`,
  });
}

const lengthOf = (spell: Spell | null) => (spell === null ? 0 : spell.end - spell.start);
const share = (r: RowResult) => lengthOf(r.longest) / r.row.s;

function shownOf(r: RowResult, hottest: number): Pick<Verdict, 'value' | 'limit' | 'unit'> {
  return r.row.s === 0
    ? { value: hottest, limit: r.row.C, unit: '°C' }
    : { value: lengthOf(r.longest), limit: r.row.s, unit: 's' };
}

function heldText(r: RowResult): string {
  const at = r.row.printed ?? degrees(r.row.C);
  if (r.row.s === 0) return `${at} was reached; that is enough at once`;
  return `Held at or above ${at} for ${span(lengthOf(r.longest), 'down')} without a break; ${span(r.row.s, 'up')} are asked`;
}

function asPart(r: RowResult): Part {
  return {
    what: `at or above ${r.row.printed ?? degrees(r.row.C)}`,
    value: lengthOf(r.longest),
    limit: r.row.s,
    unit: 's',
    passes: r.doneAt !== null,
    start: r.longest?.start ?? null,
    end: r.longest?.end ?? null,
  };
}

/** Come-up and time limits that go with a table; null where they are kept. */
function brokenCondition(rule: HoldRule, log: Log, doneAt: number) {
  if (rule.comeUp) {
    const slow = slowComeUp(rule.comeUp, log);
    if (slow !== null) return slow;
  }
  if (rule.within) return late(rule.within, log, doneAt);
  return null;
}

function slowComeUp(limit: ComeUp, log: Log) {
  const spent = timeOnTheWayUp(log, limit);
  if (spent.s <= limit.s * (1 + rounding)) return null;
  return {
    failed: true,
    at: spent.failedAt ?? log.at(-1)!.s,
    what: `the core spent ${span(spent.s, 'up')} between ${degrees(limit.lowC)} and ${degrees(limit.highC)} on the way up; the table may be used up to ${span(limit.s, 'down')}`,
  };
}

/** Time since the core last left a temperature upwards before the hold was complete. */
function late(limit: { readonly fromC: number; readonly s: number }, log: Log, doneAt: number) {
  let left: number | null = null;
  for (let i = 1; i < log.length; i++) {
    const a = log[i - 1]!;
    const b = log[i]!;
    if (a.s > doneAt) break;
    if (!(a.C <= limit.fromC && b.C > limit.fromC)) continue;
    const at = crossing({ index: i, s1: a.s, s2: b.s, C1: a.C, C2: b.C, hole: false }, limit.fromC);
    if (at <= doneAt) left = at;
  }
  const took = doneAt - (left ?? log[0]!.s);
  if (took > limit.s * (1 + rounding))
    return {
      failed: true,
      at: (left ?? log[0]!.s) + limit.s,
      what: `it took ${span(took, 'up')} from ${left === null ? 'the first reading' : degrees(limit.fromC)}; ${span(limit.s, 'down')} are allowed`,
    };
  if (left === null)
    return {
      failed: false,
      at: log[0]!.s,
      what: `the log begins above ${degrees(limit.fromC)}, so when reheating began is not in it`,
    };
  return null;
}

/** How much of the table's effect the whole log adds up to, straight in log time between rows: a model, never the verdict. */
function modelShare(rule: HoldRule, list: readonly Stretch[]): Verdict['model'] {
  const rows = rule.rows.filter((row, i, all) => row.s > 0 && (i === 0 || row.s < all[i - 1]!.s));
  if (rows.length < 2) return null;
  const curve = rateByTable(rows, 1);
  const whole = list.reduce((sum, s) => {
    const lower = Math.min(s.C1, s.C2);
    return sum + stretchLethality(curve, s.s2 - s.s1, s.hole ? lower : s.C1, s.hole ? lower : s.C2);
  }, 0);
  return {
    what: 'share of the table’s effect the whole log adds up to, by a straight line in log time between rows (a model; the rule itself does not add up)',
    pct: Math.min(100 * whole, 10_000),
  };
}
