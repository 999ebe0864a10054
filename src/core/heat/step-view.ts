/** One step looked at through the few things a history follows, so that asking about any moment of it is cheap. */
import { hermite } from '../numerics/hermite.ts';
import { type StepRecord, valueAt, type Weights } from './record.ts';

/** Most that a cubic leaves the straight line between its ends. */
function bow(h: number, rise: number, d0: number, d1: number): number {
  return (Math.abs(h * d0 - rise) + Math.abs(h * d1 - rise)) * (4 / 27);
}

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
    let lowest = Number.POSITIVE_INFINITY;
    let highest = Number.NEGATIVE_INFINITY;
    for (let i = 0; i < n; i++) {
      const b = bow(h, T1[i] - T0[i], d0[i], d1[i]);
      lowest = Math.min(lowest, Math.max(T0[i], T1[i]) + b);
      highest = Math.max(highest, Math.min(T0[i], T1[i]) - b);
    }
    for (let i = 0; i < n; i++) {
      const b = bow(h, T1[i] - T0[i], d0[i], d1[i]);
      if (Math.min(T0[i], T1[i]) - b <= lowest) this.cold.push(i);
      if (Math.max(T0[i], T1[i]) + b >= highest) this.warm.push(i);
    }
    const mean = (field: ArrayLike<number>) => {
      let sum = 0;
      for (let i = 0; i < n; i++) sum += share[i] * field[i];
      return sum;
    };
    const ends = (of: (field: ArrayLike<number>) => number): Ends => [of(T0), of(T1), of(d0), of(d1)];
    this.cubics = [ends(mean), ...followed.map((place) => ends((field) => valueAt(field, place)))];
  }

  /** Coldest, warmest, mean, then what is followed [°C], at `s` from 0 to 1. */
  at(s: number): Float64Array {
    const { T0, T1, d0, d1, h } = this.step;
    const row = new Float64Array(2 + this.cubics.length);
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (const i of this.cold) low = Math.min(low, hermite(s, h, T0[i], T1[i], d0[i], d1[i]));
    for (const i of this.warm) high = Math.max(high, hermite(s, h, T0[i], T1[i], d0[i], d1[i]));
    row[0] = low;
    row[1] = high;
    this.cubics.forEach(([y0, y1, e0, e1], q) => {
      // Between nodes a parabola may leave theirs by a hair, which no place does.
      row[2 + q] = Math.min(high, Math.max(low, hermite(s, h, y0, y1, e0, e1)));
    });
    return row;
  }
}
