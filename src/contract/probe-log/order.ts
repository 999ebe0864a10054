/** Puts readings in order of time: a file written backwards is turned, times given twice and stray ones are refused. */
import type { Row } from './columns.ts';
import type { Warning } from './types.ts';

export interface Timed {
  readonly row: Row;
  readonly s: number;
}

/** Does the file run from the newest reading to the oldest? */
export function runsBackwards(seconds: readonly number[]): boolean {
  let up = 0;
  let down = 0;
  let before = Number.NaN;
  for (const s of seconds) {
    if (Number.isNaN(s)) continue;
    if (s > before) up++;
    else if (s < before) down++;
    before = s;
  }
  return down > 1 && down > 9 * up;
}

/** Indices of a longest run of strictly rising times (patience sorting): what is not in it is out of order. */
function longestRising(times: readonly number[]): number[] {
  const tails: number[] = [];
  const before = new Int32Array(times.length).fill(-1);
  times.forEach((t, i) => {
    let low = 0;
    let high = tails.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (times[tails[middle]!]! < t) low = middle + 1;
      else high = middle;
    }
    before[i] = low > 0 ? tails[low - 1]! : -1;
    tails[low] = i;
  });
  const kept: number[] = [];
  for (let i = tails.at(-1) ?? -1; i >= 0; i = before[i]!) kept.push(i);
  return kept.reverse();
}

/** Keeps the first of several rows of one time, and the longest run of rising times; tells every row it refuses. */
export function inOrder(timed: readonly Timed[], warn: (warning: Warning) => void): Timed[] {
  const once: Timed[] = [];
  let twice = 0;
  for (const entry of timed) {
    const last = once.at(-1);
    if (last === undefined || last.s !== entry.s) {
      once.push(entry);
      continue;
    }
    twice++;
    const same = last.row.cells.join('\n') === entry.row.cells.join('\n');
    warn({
      line: entry.row.line,
      what: `the same time as line ${last.row.line}${same ? ', same reading' : ' with another reading'}: left out`,
    });
  }
  if (twice > timed.length / 3)
    warn({
      line: null,
      what: `${twice} of ${timed.length} rows repeat a time: the times seem to be written more coarsely than the readings were taken; only the first of each was kept`,
    });
  const kept = longestRising(once.map((entry) => entry.s));
  const keep = new Set(kept);
  once.forEach((entry, i) => {
    if (!keep.has(i))
      warn({ line: entry.row.line, what: 'its time does not follow the one before it: left out' });
  });
  return kept.map((i) => once[i]!);
}

/** Tells the places where readings are missing: ten times the usual interval, and over a minute. */
export function tellGaps(timed: readonly Timed[], warn: (warning: Warning) => void): void {
  if (timed.length < 4) return;
  const steps = timed.slice(1).map((entry, i) => entry.s - timed[i]!.s);
  const usual = [...steps].sort((a, b) => a - b)[Math.floor(steps.length / 2)]!;
  steps.forEach((step, i) => {
    if (step > Math.max(60, 10 * usual))
      warn({
        line: timed[i + 1]!.row.line,
        what: `no reading for ${duration(step)} before this one (usually every ${duration(usual)})`,
      });
  });
}

export function duration(s: number): string {
  if (s < 120) return `${Number(s.toFixed(1))} s`;
  if (s < 7200) return `${Number((s / 60).toFixed(1))} min`;
  return `${Number((s / 3600).toFixed(1))} h`;
}

/** Collects warnings; of one kind only the first few lines, then how many more. */
export function warningsFor(most = 8) {
  const list: Warning[] = [];
  const kinds = new Map<string, { count: number; at: number }>();
  const kindOf = (what: string) => what.replace(/[\d.,:"'“”-]+.*$/, '');
  return {
    warn(warning: Warning): void {
      if (warning.line === null) {
        list.push(warning);
        return;
      }
      const kind = kindOf(warning.what);
      const seen = kinds.get(kind) ?? { count: 0, at: warning.line };
      seen.count++;
      kinds.set(kind, seen);
      if (seen.count <= most) list.push(warning);
    },
    all(): Warning[] {
      const more: Warning[] = [];
      for (const [kind, { count }] of kinds)
        if (count > most)
          more.push({ line: null, what: `${count - most} more lines like this: ${kind.trim()} …` });
      return [...list, ...more];
    },
  };
}
