import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inverseNormal } from './inverse-normal.ts';
import { leastSquares } from './least-squares.ts';
import { randomFrom } from './random.ts';
import { sobol, sobolDimensions } from './sobol.ts';

describe('sobol', () => {
  // The authors' own list of first points (their order by Gray code gives the same set; here the order is the index's).
  test('begins with the published points', () => {
    const points = sobol(8, 5);
    expect(points.map((p) => [...p])).toEqual([
      [0, 0, 0, 0, 0],
      [0.5, 0.5, 0.5, 0.5, 0.5],
      [0.25, 0.75, 0.75, 0.75, 0.25],
      [0.75, 0.25, 0.25, 0.25, 0.75],
      [0.125, 0.625, 0.375, 0.125, 0.125],
      [0.625, 0.125, 0.875, 0.625, 0.625],
      [0.375, 0.375, 0.625, 0.875, 0.375],
      [0.875, 0.875, 0.125, 0.375, 0.875],
    ]);
  });

  test('the 64th point of 21 dimensions is that of an independent program with the same direction numbers', () => {
    // scipy.stats.qmc.Sobol(21, scramble=False), the point of index 63 in the order of the index.
    const point = sobol(64, sobolDimensions)[63] ?? new Float64Array(0);
    expect(Math.round([...point].reduce((sum, u, d) => sum + u * 64 * (d + 1), 0))).toBe(7191);
  });

  test.each([undefined, 1, 2, 77])('seed %s: every dyadic interval of 256 points holds one point', (seed) => {
    const points = sobol(256, sobolDimensions, seed);
    for (let d = 0; d < sobolDimensions; d++)
      expect(new Set(points.map((p) => Math.floor((p[d] ?? 0) * 256))).size).toBe(256);
    // The first two dimensions are a (0, m, 2)-net: sixteen by sixteen boxes, one point in each.
    const boxes = points.map((p) => Math.floor((p[0] ?? 0) * 16) * 16 + Math.floor((p[1] ?? 0) * 16));
    expect(new Set(boxes).size).toBe(256);
  });

  test('scrambled points are within (0, 1), differ by seed and not by run', () => {
    const a = sobol(500, 4, 5);
    expect(a).toEqual(sobol(500, 4, 5));
    expect(a).not.toEqual(sobol(500, 4, 6));
    for (const p of a) for (const u of p) expect(u > 0 && u < 1).toBe(true);
  });

  test('refuses more dimensions than the table has', () => {
    expect(() => sobol(4, sobolDimensions + 1)).toThrow(/1 to 21/);
  });
});

describe('inverseNormal', () => {
  test.each([
    [1e-12, -7.034483825301131],
    [1e-6, -4.753424308822899],
    [0.001, -3.090232306167813],
    [0.02425, -1.972961051311885],
    [0.1, -1.2815515655446004],
    [0.5, 0],
    [0.975, 1.959963984540054],
  ])('of %d is %d', (p, x) => {
    expect(Math.abs(inverseNormal(p) - x)).toBeLessThan(4e-15);
  });

  test('is odd about the middle, and nothing outside of 0 to 1', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 0.5, noNaN: true }), (p) => {
        expect(Math.abs(inverseNormal(p) + inverseNormal(1 - p))).toBeLessThan(1e-6);
      }),
    );
    expect(inverseNormal(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(inverseNormal(1.1)).toBeNaN();
  });
});

describe('randomFrom', () => {
  test('mean, variance and neighbours of a hundred thousand numbers are those of chance', () => {
    const random = randomFrom(12);
    const list = Array.from({ length: 100_000 }, random);
    const mean = list.reduce((a, b) => a + b, 0) / list.length;
    expect(Math.abs(mean - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 12 / list.length));
    const variance = list.reduce((s, v) => s + (v - mean) ** 2, 0) / list.length;
    expect(Math.abs(variance - 1 / 12)).toBeLessThan(0.001);
    let serial = 0;
    for (let i = 1; i < list.length; i++) serial += ((list[i] ?? 0) - mean) * ((list[i - 1] ?? 0) - mean);
    expect(Math.abs(serial / list.length / variance)).toBeLessThan(4 / Math.sqrt(list.length));
    expect(randomFrom(12)()).toBe(list[0]);
    expect(randomFrom(13)()).not.toBe(list[0]);
  });
});

describe('leastSquares', () => {
  test('gives back the coefficients of a polynomial', () => {
    const rows = Array.from({ length: 20 }, (_, i) => [1, i, i * i]);
    const x = leastSquares(
      rows,
      rows.map(([a = 0, b = 0, c = 0]) => 3 * a - 2 * b + 0.5 * c),
    );
    expect([...x].map((v) => Number(v.toFixed(9)))).toEqual([3, -2, 0.5]);
  });

  test('what is left stands at right angles to every column', () => {
    const random = randomFrom(3);
    const rows = Array.from({ length: 40 }, () => [1, random(), random(), random()]);
    const y = rows.map(() => random());
    const x = leastSquares(rows, y);
    const left = rows.map((row, i) => (y[i] ?? 0) - row.reduce((s, v, c) => s + v * (x[c] ?? 0), 0));
    for (let c = 0; c < 4; c++)
      expect(Math.abs(left.reduce((s, r, i) => s + r * (rows[i]?.[c] ?? 0), 0))).toBeLessThan(1e-12);
  });

  test('a column that the others already hold gets nothing', () => {
    const rows = Array.from({ length: 9 }, (_, i) => [1, i, 2 * i]);
    const x = leastSquares(
      rows,
      rows.map(([, b = 0]) => 4 * b),
    );
    expect(x[2]).toBe(0);
    expect(x[1]).toBeCloseTo(4, 9);
  });
});
