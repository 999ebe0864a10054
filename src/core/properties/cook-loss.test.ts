import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { groundLoss, myoglobinLeft, myoglobinRate, waterHeld, waterLost } from './cook-loss.ts';

describe('waterHeld', () => {
  test.each([
    [20, 0.745],
    [52, 0.73387],
    [60, 0.67682],
    [65, 0.58552],
    [70, 0.48624],
    [80, 0.40919],
  ])('at %d °C is %d kg/kg', (C, held) => {
    expect(Math.abs(waterHeld(C) - held)).toBeLessThan(1e-5);
  });

  test('what is lost rises with temperature and is never negative', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -2, max: 100, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (C, more) => {
          expect(waterLost(C)).toBeGreaterThanOrEqual(0);
          expect(waterLost(C + more)).toBeGreaterThanOrEqual(waterLost(C));
        },
      ),
    );
  });
});

describe('groundLoss', () => {
  test.each([
    [70, 0, 93.2],
    [75, 2, 97.9],
    [85, 3, 96.2],
    [80, 1, 96.8],
  ])('at %d °C with %d %% salt the yield is %d %%', (C, salt, yieldPct) => {
    expect(100 * (1 - groundLoss(C, salt))).toBeCloseTo(yieldPct, 9);
  });

  test('beyond what was measured the nearer end is taken, and a salt beyond it is refused', () => {
    expect(groundLoss(60, 2)).toBe(groundLoss(70, 2));
    expect(groundLoss(95, 2)).toBe(groundLoss(85, 2));
    expect(() => groundLoss(75, 4)).toThrow(/0 to 3 %/);
  });
});

describe('myoglobinRate', () => {
  test.each([
    [55, 5.475e-3],
    [60, 0.026991],
    [63, 0.068711],
    [65, 0.126929],
    [70, 0.570578],
    [75, 2.45651],
  ])('at %d °C is %d per minute', (C, k) => {
    expect(Math.abs((60 * myoglobinRate(C)) / k - 1)).toBeLessThan(1e-4);
  });

  test.each([
    [60, 98.5],
    [65, 21],
    [70, 4.66],
    [75, 1.08],
  ])('at %d °C 7 %% of the red is left after %d min', (C, min) => {
    expect(myoglobinLeft([0, min * 60], [C, C])).toBeCloseTo(0.07, 2);
  });
});
