import { describe, expect, test } from 'vitest';
import { Contradiction, OutOfRange } from '../errors.ts';
import { coolingLag, coolingOf, coolingSlope, coolingTime } from './precooling.ts';
import { theta } from './series.ts';

const poly = (c: readonly number[], x: number) => c.reduceRight((sum, a) => sum * x + a, 0);
/** Lacroix and Castaigne's fits of the first eigenvalue in ln Bi, 0.1 < Bi ≤ 100, as read in a handbook. */
const fits = {
  slab: [0.860972, 0.312133, 0.007986, -0.016192, -0.00119, 0.000581],
  cylinder: [1.257493, 0.487941, 0.025322, -0.026568, -0.002888, 0.001078],
} as const;

describe('coolingSlope and coolingLag', () => {
  test.each([
    ['slab', 0.933203, 1.2732],
    ['cylinder', 0.398152, 1.602],
    ['sphere', 0.233301, 2],
  ] as const)('%s at Bi ∞: f·α/L² %d, j %d', (shape, f, j) => {
    expect(Math.abs(coolingSlope(shape, 1e6) - f)).toBeLessThan(3e-6);
    expect(Math.abs(coolingLag(shape, 1e6) - j)).toBeLessThan(5e-5);
  });
  test.each(['slab', 'cylinder'] as const)('published fits for the %s', (shape) => {
    for (const Bi of [0.5, 1, 2, 5])
      expect(
        Math.abs(Math.LN10 / poly(fits[shape], Math.log(Bi)) ** 2 / coolingSlope(shape, Bi) - 1),
      ).toBeLessThan(0.004);
    // At Bi 20 the fit itself is out: the exact root is kept.
    const fitted = Math.LN10 / poly(fits[shape], Math.log(20)) ** 2;
    expect(Math.abs(fitted / coolingSlope(shape, 20) - 1)).toBeLessThan(0.03);
  });
});

describe('coolingOf and coolingTime', () => {
  test('short cylinder of 40 × 120 mm at Bi ∞', () => {
    const { f, j } = coolingOf(
      [
        { shape: 'cylinder', half: 0.02 },
        { shape: 'slab', half: 0.06 },
      ],
      1e6,
      0.48,
      1.3061224e-7,
    );
    expect(Math.abs(f / 1164.15 - 1)).toBeLessThan(1e-4);
    expect(Math.abs(j / 2.0397 - 1)).toBeLessThan(1e-4);
  });
  // Textbook problems; the one-term answers worked out exactly.
  test.each([
    ['egg of 50 mm', 0.025, 1200, 0.627, 0.151e-6, [5, 95, 70], 862.65],
    ['egg of 55 mm', 0.0275, 1400, 0.6, 0.14e-6, [8, 97, 70], 17.741 * 60],
    ['apple of 60 mm', 0.03, 50, 0.355, 0.355 / 820 / 3600, [15, 2, 3], 3777.7],
  ] as const)('%s', (_, half, h, k, alpha, [start, medium, end], s) => {
    const cooling = coolingOf([{ shape: 'sphere', half }], h, k, alpha);
    expect(Math.abs(coolingTime(cooling, start, medium, end) / s - 1)).toBeLessThan(1e-5);
  });
  test('near the whole series once the first while is over', () => {
    for (const shape of ['slab', 'cylinder', 'sphere'] as const) {
      const half = 0.02;
      const cooling = coolingOf([{ shape, half }], 120, 0.48, 1.3e-7);
      const t = coolingTime(cooling, 100, 0, 20);
      expect(Math.abs(theta(shape, (120 * half) / 0.48, (1.3e-7 * t) / half ** 2, 0) - 0.2)).toBeLessThan(
        1e-3,
      );
    }
  });
  test('refuses bodies that cannot be cut from simple shapes', () => {
    const sphere = { shape: 'sphere', half: 0.02 } as const;
    const cylinder = { shape: 'cylinder', half: 0.02 } as const;
    const slab = { shape: 'slab', half: 0.02 } as const;
    for (const wrong of [
      [],
      [sphere, slab],
      [cylinder, cylinder],
      [cylinder, slab, slab],
      [slab, slab, slab, slab],
    ])
      expect(() => coolingOf(wrong, 100, 0.48, 1.3e-7)).toThrow(Contradiction);
    expect(() => coolingOf([slab], 0, 0.48, 1.3e-7)).toThrow(OutOfRange);
    expect(() => coolingOf([{ ...slab, half: 0 }], 100, 0.48, 1.3e-7)).toThrow(/half/);
  });
  test('refuses the first while, and an end beyond the medium', () => {
    const cooling = { f: 1000, j: 1.6 };
    expect(() => coolingTime(cooling, 5, 100, 20)).toThrow(/0.84 of the way still to go/);
    expect(() => coolingTime(cooling, 5, 100, 101)).toThrow(OutOfRange);
    expect(() => coolingTime(cooling, 5, 5, 5)).toThrow(OutOfRange);
  });
});
