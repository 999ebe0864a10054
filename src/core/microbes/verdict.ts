/** What a rule says about a log. SI: seconds and °C. */
import type { Rule } from '../properties/rule.ts';
import { type Log, nearest } from './log.ts';

export type Outcome = 'holds' | 'does not hold' | 'undecided' | 'not covered';

/** One limb or row that was looked at. */
export interface Part {
  readonly what: string;
  readonly value: number | null;
  readonly limit: number | null;
  readonly unit: 's' | '°C';
  readonly passes: boolean | null;
  readonly start: number | null;
  readonly end: number | null;
}

export interface Verdict {
  readonly rule: Rule;
  readonly outcome: Outcome;
  /** true only where the rule is met by this log; null where the log cannot decide it; `not covered` is false. */
  readonly passes: boolean | null;
  readonly value: number | null;
  readonly limit: number | null;
  readonly unit: 's' | '°C';
  readonly failedAt: number | null;
  /** The moment that decides [s on the log's clock], the reading nearest to it, and the temperature there. */
  readonly deciding: { readonly s: number; readonly index: number; readonly C: number } | null;
  /** More time at the last temperature that would do [s]. */
  readonly more: number | null;
  readonly why: string;
  readonly cautions: readonly string[];
  readonly parts: readonly Part[];
  readonly model: { readonly what: string; readonly pct: number } | null;
}

export interface JudgeOptions {
  /** Readings further apart than this are a hole in the log [s]. */
  readonly gap?: number;
  /** End of cooking and start of chilling on the log's clock [s]. */
  readonly cookEnd?: number;
  readonly chillStart?: number;
}

export type Found = Partial<Omit<Verdict, 'rule' | 'outcome' | 'why' | 'cautions' | 'deciding'>> & {
  readonly outcome: Outcome;
  readonly why: string;
  readonly decidingAt?: number | null;
  readonly cautions?: readonly string[];
};

const passesBy: Record<Outcome, boolean | null> = {
  holds: true,
  'does not hold': false,
  undecided: null,
  'not covered': false,
};

/** Completes what a judge found into a verdict [s, °C]: the reading that decides, and the rule's own cautions after the judge's. */
export function verdict(rule: Rule, log: Log, found: Found): Verdict {
  const { decidingAt = null, cautions = [], outcome, ...rest } = found;
  const index = decidingAt === null ? null : nearest(log, decidingAt);
  return {
    value: null,
    limit: null,
    unit: 's',
    failedAt: null,
    more: null,
    parts: [],
    model: null,
    ...rest,
    rule,
    outcome,
    passes: passesBy[outcome],
    deciding: decidingAt === null || index === null ? null : { s: decidingAt, index, C: log[index]!.C },
    cautions: [...cautions, ...rule.cautions],
  };
}

/**
 * A duration [s] in words, never rounded to the flattering side: what is missing or taken rounds up, what was reached rounds down.
 */
export function span(s: number, round: 'up' | 'down'): string {
  const way = round === 'up' ? Math.ceil : Math.floor;
  // A billionth of slack, so that 2 minutes summed in tenths are not called 2.1.
  const nudged = round === 'up' ? s * (1 - 1e-9) : s * (1 + 1e-9);
  if (s < 90) return `${tidy(way(nudged * 10) / 10)} s`;
  if (s < 6000) return `${tidy(way((nudged / 60) * 10) / 10)} min`;
  return `${tidy(way((nudged / 3600) * 100) / 100)} h`;
}

/** A temperature in words, to a tenth [°C]. */
export function degrees(C: number): string {
  return `${tidy(Math.round(C * 10) / 10)} °C`;
}

const tidy = (n: number): string => String(Number(n.toFixed(2)));
