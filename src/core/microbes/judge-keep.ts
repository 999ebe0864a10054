/** Judges keeping, hot or cold: never on the wrong side of a temperature, save one short spell where the rule allows one. */
import type { KeepRule } from '../properties/rule.ts';
import { rounding } from './lethality.ts';
import { crossing, type Log, type Stretch, stretches } from './log.ts';
import { degrees, type Part, span, type Verdict, verdict } from './verdict.ts';

const sides = { 'at least': 'below', above: 'not above', 'at most': 'above' } as const;

function wrong(rule: KeepRule, C: number): boolean {
  if (rule.side === 'at most') return C > rule.C;
  return rule.side === 'above' ? C <= rule.C : C < rule.C;
}

interface Spell {
  start: number;
  end: number;
  worst: number;
}

/** Spells on the wrong side, a stretch being on it from the crossing on; through a hole with one end wrong, all of it. */
function wrongSpells(rule: KeepRule, log: Log, list: readonly Stretch[]): Spell[] {
  const worse = (a: number, b: number) => (rule.side === 'at most' ? Math.max(a, b) : Math.min(a, b));
  const spells: Spell[] = [];
  let open: Spell | null = wrong(rule, log[0]!.C)
    ? { start: log[0]!.s, end: log[0]!.s, worst: log[0]!.C }
    : null;
  for (const stretch of list) {
    const is = wrong(rule, stretch.C2);
    if (is) {
      open ??= {
        start: stretch.hole ? stretch.s1 : crossing(stretch, rule.C),
        end: stretch.s2,
        worst: stretch.C2,
      };
      open.end = stretch.s2;
      open.worst = worse(open.worst, stretch.C2);
    } else if (open !== null) {
      open.end = stretch.hole ? stretch.s2 : crossing(stretch, rule.C);
      spells.push(open);
      open = null;
    }
  }
  if (open !== null) spells.push(open);
  return spells;
}

/**
 * Verdict on keeping hot or cold [°C], with each spell on the wrong side [s].
 * A hole in the log is not vouched for: undecided, unless the rule is broken anyway.
 */
export function judgeKeep(rule: KeepRule, log: Log, gap: number): Verdict {
  const list = stretches(log, gap);
  const spells = wrongSpells(rule, log, list);
  const word = sides[rule.side];
  const last = log.at(-1)!;
  const hottest = log.reduce((a, b) => (b.C > a.C ? b : a));
  const coldest = log.reduce((a, b) => (b.C < a.C ? b : a));
  const extreme = rule.side === 'at most' ? hottest : coldest;
  const holes = list.filter((s) => s.hole).length;
  const parts: Part[] = spells.map((spell) => ({
    what: `${word} ${degrees(rule.C)}`,
    value: spell.end - spell.start,
    limit: rule.spell ?? 0,
    unit: 's',
    passes: rule.spell !== null && spell.end - spell.start < rule.spell,
    start: spell.start,
    end: spell.end,
  }));
  const cautions = [`Says something only about the ${span(last.s - log[0]!.s, 'down')} of this log.`];
  const common = { parts, cautions, value: extreme.C, limit: rule.C, unit: '°C' as const };
  const first = spells[0];
  if (first === undefined && holes > 0)
    return verdict(rule, log, {
      ...common,
      outcome: 'undecided',
      decidingAt: extreme.s,
      why: `Every reading is right, but ${holes === 1 ? 'one hole' : `${holes} holes`} of more than ${span(gap, 'down')} between them cannot be spoken for.`,
    });
  if (first === undefined)
    return verdict(rule, log, {
      ...common,
      outcome: 'holds',
      decidingAt: extreme.s,
      why: `The ${rule.side === 'at most' ? 'highest' : 'lowest'} reading is ${degrees(extreme.C)}.`,
    });
  const second = spells[1];
  const long = spells.find((s) => rule.spell === null || s.end - s.start >= rule.spell * (1 - rounding));
  if (long !== undefined || second !== undefined) {
    const longAt = long === undefined ? Number.POSITIVE_INFINITY : long.start + (rule.spell ?? 0);
    const failedAt = Math.min(longAt, second?.start ?? Number.POSITIVE_INFINITY);
    return verdict(rule, log, {
      ...common,
      outcome: 'does not hold',
      failedAt,
      decidingAt: failedAt,
      why: `${capital(word)} ${degrees(rule.C)} ${spells.length === 1 ? 'once' : `${spells.length} times`}, at worst ${degrees(extreme.C)}, for up to ${span(Math.max(...spells.map((s) => s.end - s.start)), 'up')}; ${rule.spell === null ? 'no spell is allowed' : `one spell of less than ${span(rule.spell, 'down')} is allowed`}.`,
    });
  }
  const running = wrong(rule, last.C);
  const took = `${capital(word)} ${degrees(rule.C)} once, for ${span(first.end - first.start, 'up')}`;
  if (running || holes > 0)
    return verdict(rule, log, {
      ...common,
      outcome: 'undecided',
      decidingAt: last.s,
      why: running
        ? `${took} and still so when the log ends; ${span(rule.spell! - (first.end - first.start), 'down')} are left.`
        : `${took}, but a hole between readings cannot be spoken for.`,
    });
  return verdict(rule, log, {
    ...common,
    outcome: 'holds',
    decidingAt: first.end,
    why: `${took}; one spell of less than ${span(rule.spell!, 'down')} is allowed.`,
  });
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
