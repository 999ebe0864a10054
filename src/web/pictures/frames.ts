/** The field at any time, between the engine's snapshots. */
import type { CookResult, Frame } from '../../core/heat/types.ts';

/** The field at a time [s]: straight between the snapshots before and after it; held at the ends. */
export function frameAt(result: CookResult, t: number): Frame | null {
  const { frames } = result;
  const first = frames[0];
  const last = frames.at(-1);
  if (first === undefined || last === undefined) return null;
  if (t <= first.t) return first;
  if (t >= last.t) return last;
  let low = 0;
  let high = frames.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (frames[middle]!.t <= t) low = middle;
    else high = middle;
  }
  const a = frames[low]!;
  const b = frames[high]!;
  const w = b.t > a.t ? (t - a.t) / (b.t - a.t) : 1;
  const mix = (p: Float32Array, q: Float32Array) => {
    const out = new Float32Array(p.length);
    for (let i = 0; i < out.length; i++) out[i] = p[i]! + (q[i]! - p[i]!) * w;
    return out;
  };
  return { t, stage: b.stage, C: mix(a.C, b.C), lethality: mix(a.lethality, b.lethality) };
}

/** Index of the stage that is on at a time [s]; its last moment is still its own. */
export function stageAt(result: CookResult, t: number): number {
  const found = result.stages.findIndex((stage) => t <= stage.end + 1e-6 && stage.end > stage.start);
  return found < 0 ? result.stages.length - 1 : found;
}
