/** Judges a log by a freezing table: for some row at or below its temperature, without a break, for its time. */
import type { FreezeRule, TimeAtTemperature } from '../properties/rule.ts';
import { spellsAtOrAbove } from './judge-hold.ts';
import { rounding } from './lethality.ts';
import { type Log, stretches } from './log.ts';
import { degrees, type Part, span, type Verdict, verdict } from './verdict.ts';

/** A freezing log is judged by the judge of holds, upside down: at or below −18 °C is at or above 18 °C of cold. */
const upsideDown = (log: Log): Log => log.map(({ s, C }) => ({ s, C: -C }));

/** Days and hours, rounded so that nothing flatters. */
function longSpan(s: number, round: 'up' | 'down'): string {
  if (s < 48 * 3600) return span(s, round);
  const way = round === 'up' ? Math.ceil : Math.floor;
  return `${way((s / 86_400) * 10 * (round === 'up' ? 1 - 1e-9 : 1 + 1e-9)) / 10} days`;
}

/**
 * Verdict on freezing: for some row the temperature stays at or below T_row, without a break, for at least t_row [s].
 * Through a hole in the log the warmer end counts. No adding up over rows: none is published.
 * Checked on printed rows held for exactly their time and a minute less, and on a thaw in between.
 */
export function judgeFreeze(rule: FreezeRule, log: Log, gap: number): Verdict {
  const cold = upsideDown(log);
  const list = stretches(cold, gap);
  const coldest = log.reduce((a, b) => (b.C < a.C ? b : a));
  const last = log.at(-1)!;
  const rows = rule.rows.map((row) => ({ row, ...heldAt(row, cold, list) }));
  const parts: Part[] = rows.map(({ row, longest, start, end }) => ({
    what: `at or below ${degrees(row.C)}`,
    value: longest,
    limit: row.s,
    unit: 's',
    passes: longest >= row.s * (1 - rounding),
    start,
    end,
  }));
  const cautions = [`The temperature must be that of ${rule.of}.`];
  const done = rows.find(({ row, longest }) => longest >= row.s * (1 - rounding));
  if (done !== undefined)
    return verdict(rule, log, {
      outcome: 'holds',
      parts,
      cautions,
      value: done.longest,
      limit: done.row.s,
      decidingAt: (done.start ?? log[0]!.s) + done.row.s,
      why: `At or below ${degrees(done.row.C)} for ${longSpan(done.longest, 'down')} without a break; ${longSpan(done.row.s, 'up')} are asked.`,
    });
  const first = rows[0]!;
  if (coldest.C > first.row.C)
    return verdict(rule, log, {
      outcome: 'not covered',
      parts,
      cautions,
      value: coldest.C,
      limit: first.row.C,
      unit: '°C',
      decidingAt: coldest.s,
      why: `Not covered: the coldest reading, ${degrees(coldest.C)}, lies above the warmest row, ${degrees(first.row.C)}.`,
    });
  const best = rows.reduce((a, b) => (b.longest / b.row.s > a.longest / a.row.s ? b : a));
  const running = rows
    .filter(({ row, end }) => last.C <= row.C && end === last.s)
    .map(({ row, longest }) => row.s - longest);
  const more = running.length === 0 ? null : Math.min(...running);
  return verdict(rule, log, {
    outcome: 'does not hold',
    parts,
    cautions,
    value: best.longest,
    limit: best.row.s,
    decidingAt: last.s,
    more,
    why: `At or below ${degrees(best.row.C)} for ${longSpan(best.longest, 'down')} without a break; ${longSpan(best.row.s, 'up')} are asked.${more === null ? '' : ` ${longSpan(more, 'up')} more at ${degrees(last.C)} would do.`}`,
  });
}

interface Held {
  readonly longest: number;
  readonly start: number | null;
  readonly end: number | null;
}

/** The longest unbroken spell at or below a row's temperature [s]; of equals the last, which may still be running. */
function heldAt(row: TimeAtTemperature, cold: Log, list: ReturnType<typeof stretches>): Held {
  return spellsAtOrAbove(cold, list, -row.C).reduce<Held>(
    (best, { start, end }) => (end - start >= best.longest ? { longest: end - start, start, end } : best),
    { longest: 0, start: null, end: null },
  );
}
