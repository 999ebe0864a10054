/** Fewer points for drawing. Never for judging. */
import type { Reading } from './types.ts';

/**
 * At most `most` points of the same shape: the log is cut into stretches of equal count and of each the lowest and the
 * highest reading are kept, in order, with the first and the last of all.
 */
export function thin(points: readonly Reading[], most: number): Reading[] {
  if (points.length <= most || points.length < 3) return [...points];
  const stretches = Math.max(1, Math.floor((most - 2) / 2));
  const kept: Reading[] = [points[0]!];
  const inner = points.length - 2;
  for (let k = 0; k < stretches; k++) {
    const from = 1 + Math.floor((k * inner) / stretches);
    const to = 1 + Math.floor(((k + 1) * inner) / stretches);
    let low = from;
    let high = from;
    for (let i = from; i < to; i++) {
      if (points[i]!.C < points[low]!.C) low = i;
      if (points[i]!.C > points[high]!.C) high = i;
    }
    if (from >= to) continue;
    kept.push(points[Math.min(low, high)]!);
    if (low !== high) kept.push(points[Math.max(low, high)]!);
  }
  kept.push(points.at(-1)!);
  return kept;
}
