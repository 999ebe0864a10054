/** The medium's temperature over a stage: a number, or a log that is straight between its points and held after the last. */
import type { MediumTemperature } from './types.ts';

/** Corners of the course [s from the start of the stage; °C]; held before the first and after the last. */
export interface Course {
  readonly t: readonly number[];
  readonly C: readonly number[];
}

/**
 * The significant corners of a log [°C at s]: as few of its own points as keep every point within `tolerance` of the straight lines.
 *
 *     from an anchor, go on while the line to the next point passes every point between within ± tolerance
 *
 * @param medium a temperature [°C] or a log with rising times [s]
 * @param tolerance largest distance from the lines [K]
 * Assumes that what happens within the tolerance does not matter to the food: a logger that reads every second would
 * otherwise force a step every second. Checked by a property test over random logs.
 * @example courseOf(100, 0.05).C[0] // 100
 * Source: own-computation
 */
export function courseOf(medium: MediumTemperature, tolerance: number): Course {
  if (typeof medium === 'number') return { t: [0], C: [medium] };
  const t = [medium[0].t];
  const C = [medium[0].C];
  let anchor = 0;
  let low = Number.NEGATIVE_INFINITY;
  let high = Number.POSITIVE_INFINITY;
  for (let i = 1; i < medium.length; i++) {
    const dt = medium[i].t - medium[anchor].t;
    const slope = (medium[i].C - medium[anchor].C) / dt;
    if (i > anchor + 1 && (slope < low || slope > high)) {
      anchor = i - 1;
      t.push(medium[anchor].t);
      C.push(medium[anchor].C);
      low = Number.NEGATIVE_INFINITY;
      high = Number.POSITIVE_INFINITY;
    }
    const span = medium[i].t - medium[anchor].t;
    low = Math.max(low, (medium[i].C - tolerance - medium[anchor].C) / span);
    high = Math.min(high, (medium[i].C + tolerance - medium[anchor].C) / span);
  }
  if (medium.length > 1) {
    const end = medium[medium.length - 1];
    t.push(end.t);
    C.push(end.C);
  }
  return { t, C };
}

/**
 * The straight piece of a course that holds just after a time: temperature there [°C], slope, and when it ends.
 * @param course corners, rising in time
 * @param t time from the start of the stage [s]
 * @example pieceAt({ t: [0, 10], C: [20, 40] }, 5).C // 30
 * Source: own-computation
 */
export function pieceAt(course: Course, t: number): { C: number; slope: number; until: number } {
  const { t: ts, C } = course;
  const last = ts.length - 1;
  if (t < ts[0]) return { C: C[0], slope: 0, until: ts[0] };
  if (t >= ts[last]) return { C: C[last], slope: 0, until: Number.POSITIVE_INFINITY };
  let lo = 0;
  let hi = last;
  while (hi - lo > 1) {
    const mid = (lo + hi) >> 1;
    if (ts[mid] <= t) lo = mid;
    else hi = mid;
  }
  const slope = (C[hi] - C[lo]) / (ts[hi] - ts[lo]);
  return { C: C[lo] + slope * (t - ts[lo]), slope, until: ts[hi] };
}
