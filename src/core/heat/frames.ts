/** Snapshots of a run for pictures. */
import type { StepRecord } from './record.ts';
import type { Frame } from './types.ts';

/**
 * At most `count` snapshots of temperature [°C] and lethality [s at the reference], the start and the ends of stages always among them.
 *
 *     ends of steps, spread so that about the same change of temperature lies between any two
 *
 * @param steps of a run that kept its lethality
 * @param start temperatures at the start [°C]
 * @param count most snapshots; more only where there are more stages
 * Checked by a test. Source: own-computation
 */
export function framesOf(steps: readonly StepRecord[], start: Float64Array, count: number): Frame[] {
  const change = steps.map((step) => {
    let sum = 0;
    for (let i = 0; i < start.length; i++) sum += Math.abs(step.T1[i] - step.T0[i]);
    // A long time without change still deserves a picture now and then.
    return sum / start.length + step.h / 600;
  });
  const forced = steps.map((step, i) => steps[i + 1]?.stage !== step.stage);
  const places = Math.max(1, count - 1 - forced.filter(Boolean).length);
  const total = change.reduce((sum, c) => sum + c, 0);
  const frames: Frame[] = [
    {
      t: 0,
      stage: steps[0]?.stage ?? 0,
      C: new Float32Array(start),
      lethality: new Float32Array(start.length),
    },
  ];
  let since = 0;
  steps.forEach((step, i) => {
    since += change[i];
    if (!forced[i] && since < total / (places + 1)) return;
    since = 0;
    frames.push({
      t: step.t + step.h,
      stage: step.stage,
      C: new Float32Array(step.T1),
      lethality: step.lethality ?? new Float32Array(start.length),
    });
  });
  return frames;
}
