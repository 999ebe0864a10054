import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { near, set } from '../../../test/growth-sets.ts';
import { rateIntegral } from './growth-rate.ts';

const rc = set('clostridium-perfringens', 'roasted-chicken');

/** ∫ of the cardinal curve over temperature, by its antiderivative: a cubic over a line is a quadratic and a logarithm. */
function exactCardinal(C1: number, C2: number, min: number, opt: number, max: number): number {
  const slope = (opt - min) * (opt - min + 2 * (opt - max));
  const atZero = (opt - min) * (-(opt - min) * opt - (opt - max) * (opt + min));
  // (x − max)(x − min)² = x³ + p x² + q x + r; divide by slope·(x − root).
  const root = -atZero / slope;
  const p = -max - 2 * min;
  const q = min * min + 2 * min * max;
  const r = -max * min * min;
  const b = p + root;
  const c = q + root * b;
  const rest = r + root * c;
  const F = (x: number) =>
    (x ** 3 / 3 + (b * x ** 2) / 2 + c * x + rest * Math.log(Math.abs(x - root))) / slope;
  return F(C2) - F(C1);
}

const C = fc.double({ min: -5, max: 70, noNaN: true });

describe('rateIntegral', () => {
  test('is the antiderivative of the cardinal curve over straight stretches', () => {
    fc.assert(
      fc.property(C, C, (a, b) => {
        fc.pre(Math.abs(a - b) > 0.5);
        const { min, opt, max } = { min: 8.8, opt: 46.4, max: 51.5 };
        const inside = (x: number) => Math.min(max, Math.max(min, x));
        const exact = (6.06 * 7200 * exactCardinal(inside(a), inside(b), min, opt, max)) / (b - a) / 3600;
        expect(Math.abs(rateIntegral(rc.temperature, 7200, a, b) - exact)).toBeLessThan(1e-8);
      }),
    );
  });
  test('of three cooling limits', () => {
    const h = 3600;
    const sum = (...stretches: [number, number, number][]) =>
      stretches.reduce((total, [dt, a, b]) => total + rateIntegral(rc.temperature, dt * h, a, b), 0);
    near(
      [
        [sum([1.5, 54.4, 26.7], [5, 26.7, 4.4]), 7.96689],
        [sum([2, 57, 21], [4, 21, 5]), 6.98736],
        [sum([1.5, 63, 8]), 3.10859],
      ],
      0.001,
    );
  });
});
