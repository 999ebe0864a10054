import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { symmetricEigen } from '../numerics/symmetric.ts';
import { profileSide, spreadOf } from './fit-interval.ts';
import { noiseOf } from './fit-noise.ts';

describe('symmetricEigen', () => {
  test('gives back the matrix, with vectors of length one', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 10, maxLength: 10 }),
        (v) => {
          const n = 4;
          const at = (i: number, j: number) =>
            v[(Math.max(i, j) * (Math.max(i, j) + 1)) / 2 + Math.min(i, j)]!;
          const A = Array.from({ length: n }, (_, i) => Array.from({ length: n }, (__, j) => at(i, j)));
          const { values, vectors } = symmetricEigen(A);
          for (let i = 0; i < n; i++)
            for (let j = 0; j < n; j++) {
              const sum = values.reduce((s, l, k) => s + l * vectors[k]![i]! * vectors[k]![j]!, 0);
              expect(Math.abs(sum - A[i]![j]!)).toBeLessThan(1e-9);
            }
          for (let k = 1; k < n; k++) expect(values[k]!).toBeGreaterThanOrEqual(values[k - 1]!);
        },
      ),
    );
  });
});

describe('spreadOf', () => {
  test('is the straight line’s own formula', () => {
    const t = Array.from({ length: 21 }, (_, i) => i - 10);
    const { sd, correlation } = spreadOf([t.map(() => 1), t], 0.09);
    const squares = t.reduce((s, v) => s + v * v, 0);
    expect(sd[0]).toBeCloseTo(0.3 / Math.sqrt(21), 10);
    expect(sd[1]).toBeCloseTo(0.3 / Math.sqrt(squares), 10);
    expect(correlation[0]![1]).toBeCloseTo(0, 10);
  });

  test('points at what says the same: equal slopes are not told apart', () => {
    const t = Array.from({ length: 20 }, (_, i) => 1 + i);
    const { alike, worst } = spreadOf([t, t.map((v) => 2 * v), t.map((v) => v * v)], 1);
    expect(alike.least).toBeLessThan(1e-9);
    expect(worst.sd).toBeGreaterThan(1e3);
    expect(alike.direction[2]).toBeLessThan(1e-3);
    expect(alike.direction[0]! / alike.direction[1]!).toBeCloseTo(2, 3);
  });

  test('says how far the others follow when one is held', () => {
    const a = [1, 0, 0];
    const b = [1, 1, 0];
    // Least squares of (x·a + y·b) with x held at 1: y = −½.
    expect(spreadOf([a, b], 1).drag(0, 1)).toBeCloseTo(-0.5, 12);
  });
});

describe('profileSide', () => {
  test('is exact for a parabola from any first guess', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 50, noNaN: true }), fc.boolean(), (first, up) => {
        const side = profileSide((x) => (x - 2) ** 2, 2, up ? 2 + first : 2 - first, up ? 100 : -100, 9);
        expect(Math.abs(Math.abs(side.x - 2) - 3)).toBeLessThan(0.1);
        expect(side.open).toBe(false);
      }),
    );
  });

  test('is open where the log never objects, and at a best fit that stands at the bound', () => {
    expect(profileSide((x) => 1 - 1 / (1 + x * x), 0, 1, 50, 4)).toEqual({ x: 50, open: true });
    expect(profileSide((x) => x * x, 3, 4, 3, 1)).toEqual({ x: 3, open: true });
    expect(profileSide((x) => x * x, 0, -1, 0, 1)).toEqual({ x: 0, open: true });
  });
});

describe('noiseOf', () => {
  test('white residuals count in full, drifting ones do not', () => {
    const drift = Float64Array.from({ length: 200 }, (_, i) => Math.sin(i / 12));
    const steady = Float64Array.from({ length: 200 }, (_, i) => (i % 2 === 0 ? 0.3 : -0.3));
    expect(noiseOf(steady, 1, 0.005)).toMatchObject({ autocorrelation: 0, effective: 200 });
    expect(noiseOf(drift, 1, 0.005).autocorrelation).toBeGreaterThan(0.98);
    expect(noiseOf(drift, 1, 0.005).effective).toBeLessThan(3);
  });

  test('a log without noise is still as uncertain as the engine', () => {
    expect(noiseOf(new Float64Array(100), 2, 0.005).variance).toBeCloseTo(100 * 0.005 ** 2, 12);
  });
});
