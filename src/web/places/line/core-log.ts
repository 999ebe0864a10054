/**
 * Core readings typed one by one are a probe log with few points. They are judged as they arrive by the same rules as a
 * file from a logger, and no reading is worth more than it shows.
 */
import { type RuleVerdict, runJudge } from '../../../contract/judge.ts';
import { rulesOfStep } from '../../../contract/step-rules.ts';
import type { Step } from '../../../contract/steps.ts';

/** Rules of the book that the core of a step is held to. */
export const rulesOf = (step: Step): readonly string[] =>
  step.kind === 'cook' || step.kind === 'chill' ? step.rules : rulesOfStep(step);

interface CoreLine {
  readonly kind: string;
  readonly value: number | null;
  readonly at: string;
}

export interface CoreReading {
  readonly min: number;
  readonly C: number;
  readonly at: string;
}

/** Which of two readings at the same moment counts: when heating or keeping hot the colder, when chilling or keeping cold the warmer. */
export type Cautious = 'colder' | 'warmer';

export const cautiousFor = (step: Step): Cautious =>
  step.kind === 'chill' || step.kind === 'keep' ? 'warmer' : 'colder';

/** Standing temperature readings as a log: minutes from the first, in order of time, no moment twice. */
export function seriesOf(lines: readonly CoreLine[], cautious: Cautious): CoreReading[] {
  const sorted = lines
    .filter((l) => l.kind === 'temperature' && l.value !== null)
    .map((l) => ({ ms: Date.parse(l.at), C: l.value as number, at: l.at }))
    .sort((a, b) => a.ms - b.ms);
  const start = sorted[0]?.ms ?? 0;
  const series: CoreReading[] = [];
  for (const r of sorted) {
    const min = (r.ms - start) / 60_000;
    const last = series.at(-1);
    if (last !== undefined && last.min === min) {
      const C = cautious === 'colder' ? Math.min(last.C, r.C) : Math.max(last.C, r.C);
      series[series.length - 1] = { min, C, at: r.at };
    } else series.push({ min, C: r.C, at: r.at });
  }
  return series;
}

export interface Judged {
  readonly verdicts: readonly RuleVerdict[];
  /** Why nothing was judged, where it was not. */
  readonly fault: string | null;
}

/** The readings so far by every rule of the step, by the code that the server judges with. */
export function judgeSeries(series: readonly CoreReading[], rules: readonly string[]): Judged {
  if (series.length === 0 || rules.length === 0) return { verdicts: [], fault: null };
  try {
    return {
      verdicts: runJudge({ log: series.map(({ min, C }) => ({ min, C })), rules: [...rules] }),
      fault: null,
    };
  } catch (error) {
    return { verdicts: [], fault: error instanceof Error ? error.message : String(error) };
  }
}

/** A limit that further readings cannot mend: it was broken at a known moment. */
export const isBroken = (verdict: RuleVerdict): boolean =>
  verdict.passes === false && verdict.failedAtMin !== null;

export const coreChannel = 'core';

/** The same log as text, as the server keeps it: one instant and one temperature a line. */
export function logText(series: readonly CoreReading[]): string {
  return [`time,${coreChannel} (°C)`, ...series.map((r) => `${r.at},${r.C}`)].join('\n').concat('\n');
}

const down = (x: number, digits: number): string =>
  (Math.floor(x * 10 ** digits + 1e-9) / 10 ** digits).toFixed(digits);
const up = (x: number, digits: number): string =>
  (Math.ceil(x * 10 ** digits - 1e-9) / 10 ** digits).toFixed(digits);

export interface LiveWord {
  readonly tone: 'holds' | 'not yet' | 'does not hold';
  /** The number that matters, or a word where there is none. */
  readonly big: string;
  readonly words: string;
}

/**
 * What one rule says of the readings so far. What has been had is rounded down and what is still wanted rounded up, so that
 * the screen never promises more than the log.
 * @param by the wall clock by which a running limit must be met, where there is one
 */
export function liveWord(
  verdict: RuleVerdict,
  lastC: number,
  temperature: (C: number) => string,
  by: string | null,
): LiveWord {
  if (isBroken(verdict)) return { tone: 'does not hold', big: 'Limit broken', words: verdict.why };
  if (verdict.passes === true) return { tone: 'holds', big: 'Holds', words: verdict.why };
  if (
    verdict.moreMin !== null &&
    verdict.value !== null &&
    verdict.limit !== null &&
    verdict.unit === 'min'
  ) {
    const more = up(verdict.moreMin, 1);
    const had = `has had ${down(verdict.value, 1)} of ${up(verdict.limit, 1)} min`;
    const words = `The core ${had}; at ${temperature(lastC)} it needs ${more} min more.`;
    return { tone: 'not yet', big: `${more} min more`, words };
  }
  return { tone: 'not yet', big: by === null ? 'Not yet' : `By ${by}`, words: verdict.why };
}

/** The moment at which a limb of a rule that has begun and not ended will have taken too long; null where there is none. */
export function deadlineOf(verdict: RuleVerdict, firstAt: string): string | null {
  const ends = verdict.parts
    .filter(
      (p) =>
        p.startMin !== null && p.endMin === null && p.limit !== null && p.unit === 'min' && p.passes !== true,
    )
    .map((p) => (p.startMin as number) + (p.limit as number));
  return ends.length === 0 ? null : new Date(Date.parse(firstAt) + Math.min(...ends) * 60_000).toISOString();
}
