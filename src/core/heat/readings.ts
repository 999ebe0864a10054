/** What a probe would have read at given times, from the run's own dense output. */
import { hermite } from '../numerics/hermite.ts';
import { type StepRecord, valueAt, type Weights } from './record.ts';

/**
 * Temperatures at a place at given times [°C].
 *
 *     T(t) = the cubic of the step that holds t
 *
 * @param steps of a run, in order
 * @param place weights of its nodes
 * @param times rising [s]; before the first step the start, after the last step its end
 * @param start temperature before anything happened [°C]
 * Assumes nothing beyond the run. Checked against the history of the same run. Source: own-computation
 */
export function readingsAt(
  steps: readonly StepRecord[],
  place: Weights,
  times: ArrayLike<number>,
  start: number,
): Float64Array {
  const C = new Float64Array(times.length).fill(start);
  let i = 0;
  for (let q = 0; q < times.length && steps.length > 0; q++) {
    while (i + 1 < steps.length && times[q] >= steps[i + 1].t) i++;
    const { t, h, T0, T1, d0, d1 } = steps[i];
    const s = Math.min(1, Math.max(0, (times[q] - t) / h));
    C[q] = hermite(s, h, valueAt(T0, place), valueAt(T1, place), valueAt(d0, place), valueAt(d1, place));
  }
  return C;
}
