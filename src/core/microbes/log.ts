/** A measured temperature log: seconds and °C, in order of time, straight lines between readings. */
import { OutOfRange } from '../errors.ts';

export interface LogPoint {
  readonly s: number;
  readonly C: number;
}

export type Log = readonly LogPoint[];

/** A hair below a printed temperature is that temperature: °F turned into °C and back must not miss its own row [°C]. */
export const hair = 1e-9;

/** Refuses a log that is empty, out of order, has a time [s] twice, or holds a temperature [°C] that is none. */
export function checkLog(log: Log): void {
  if (log.length === 0) throw new OutOfRange('log', 'no readings', 'at least one reading');
  for (let i = 0; i < log.length; i++) {
    const point = log[i]!;
    if (!Number.isFinite(point.s)) throw new OutOfRange(`log[${i}].s`, `${point.s}`, 'a finite time [s]');
    if (!(point.C >= -90 && point.C <= 400))
      throw new OutOfRange(`log[${i}].C`, `${point.C} °C`, '−90 to 400 °C');
    const before = log[i - 1];
    if (before !== undefined && !(point.s > before.s))
      throw new OutOfRange(`log[${i}].s`, `${point.s} s after ${before.s} s`, 'times that rise, none twice');
  }
}

/** One straight stretch of a log. */
export interface Stretch {
  /** Index of the reading at its end. */
  readonly index: number;
  readonly s1: number;
  readonly s2: number;
  readonly C1: number;
  readonly C2: number;
  /** The readings are further apart than the longest gap that is read across. */
  readonly hole: boolean;
}

/** The straight stretches of a log [s, °C]; one longer than `gap` [s] is a hole. */
export function stretches(log: Log, gap: number): Stretch[] {
  const list: Stretch[] = [];
  for (let i = 1; i < log.length; i++) {
    const a = log[i - 1]!;
    const b = log[i]!;
    // A hair of slack: 0.1 + 0.2 minutes apart is 0.3, not a hole.
    list.push({ index: i, s1: a.s, s2: b.s, C1: a.C, C2: b.C, hole: b.s - a.s > gap * (1 + 1e-9) });
  }
  return list;
}

/** The moment a straight stretch passes a temperature that lies between its ends [s]. */
export function crossing(stretch: Stretch, C: number): number {
  const { s1, s2, C1, C2 } = stretch;
  if (C === C1) return s1;
  if (C === C2 || C1 === C2) return s2;
  return s1 + ((C - C1) / (C2 - C1)) * (s2 - s1);
}

/** Temperature at a moment, straight between readings, held before the first and after the last [°C]. */
export function temperatureAt(log: Log, s: number): number {
  let low = 0;
  let high = log.length - 1;
  if (s <= log[low]!.s) return log[low]!.C;
  if (s >= log[high]!.s) return log[high]!.C;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (log[middle]!.s <= s) low = middle;
    else high = middle;
  }
  const a = log[low]!;
  const b = log[high]!;
  return a.C + ((s - a.s) / (b.s - a.s)) * (b.C - a.C);
}

/** Index of the reading nearest to a moment [-]. */
export function nearest(log: Log, s: number): number {
  let best = 0;
  let low = 0;
  let high = log.length - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    if (Math.abs(log[middle]!.s - s) < Math.abs(log[best]!.s - s)) best = middle;
    if (log[middle]!.s < s) low = middle + 1;
    else high = middle - 1;
  }
  return best;
}

/** The longest time between two readings [s]. */
export function longestGap(log: Log): number {
  let longest = 0;
  for (let i = 1; i < log.length; i++) longest = Math.max(longest, log[i]!.s - log[i - 1]!.s);
  return longest;
}
