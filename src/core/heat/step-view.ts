/** One step looked at through the few things a history follows, so that asking about any moment of it is cheap. */
import { hermiteWeights } from '../numerics/hermite.ts';
import { type StepRecord, valueAt, type Weights } from './record.ts';

/** Ends of one cubic: values and slopes. */
type Ends = readonly [y0: number, y1: number, d0: number, d1: number];

export class StepView {
  private readonly step: StepRecord;
  /** Nodes that can be the coldest, or the warmest, at some moment of the step. */
  private readonly cold: number[] = [];
  private readonly warm: number[] = [];
  private readonly cubics: Ends[];

  constructor(step: StepRecord, share: Float64Array, followed: readonly Weights[]) {
    this.step = step;
    const { T0, T1, d0, d1, h } = step;
    const n = T0.length;
    // Below `least` and above `most` a node's cubic never goes.
    const least = new Float64Array(n);
    const most = new Float64Array(n);
    let lowest = Number.POSITIVE_INFINITY;
    let highest = Number.NEGATIVE_INFINITY;
    let m0 = 0;
    let m1 = 0;
    let e0 = 0;
    let e1 = 0;
    for (let i = 0; i < n; i++) {
      const y0 = T0[i];
      const y1 = T1[i];
      const rise = y1 - y0;
      // Most that a cubic leaves the straight line between its ends.
      const bow = (Math.abs(h * d0[i] - rise) + Math.abs(h * d1[i] - rise)) * (4 / 27);
      const low = rise < 0 ? y1 : y0;
      const high = rise < 0 ? y0 : y1;
      least[i] = low - bow;
      most[i] = high + bow;
      if (high + bow < lowest) lowest = high + bow;
      if (low - bow > highest) highest = low - bow;
      const w = share[i];
      m0 += w * y0;
      m1 += w * y1;
      e0 += w * d0[i];
      e1 += w * d1[i];
    }
    for (let i = 0; i < n; i++) {
      if (least[i] <= lowest) this.cold.push(i);
      if (most[i] >= highest) this.warm.push(i);
    }
    const at = (place: Weights): Ends => [
      valueAt(T0, place),
      valueAt(T1, place),
      valueAt(d0, place),
      valueAt(d1, place),
    ];
    this.cubics = [[m0, m1, e0, e1], ...followed.map(at)];
  }

  /** Coldest, warmest, mean, then what is followed [°C], at `s` from 0 to 1. */
  at(s: number): number[] {
    const { T0, T1, d0, d1, h } = this.step;
    const [a, b, c, d] = hermiteWeights(s, h);
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (const i of this.cold) {
      const T = a * T0[i] + b * T1[i] + c * d0[i] + d * d1[i];
      if (T < low) low = T;
    }
    for (const i of this.warm) {
      const T = a * T0[i] + b * T1[i] + c * d0[i] + d * d1[i];
      if (T > high) high = T;
    }
    const row = [low, high];
    // Between nodes a parabola may leave theirs by a hair, which no place does.
    for (const [y0, y1, e0, e1] of this.cubics)
      row.push(Math.min(high, Math.max(low, a * y0 + b * y1 + c * e0 + d * e1)));
    return row;
  }
}
