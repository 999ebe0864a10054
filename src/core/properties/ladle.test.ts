import { describe, expect, test } from 'vitest';
import { OutOfRange } from '../errors.ts';
import { ladledCoefficient } from './ladle.ts';

describe('ladledCoefficient', () => {
  test('without a pause nothing is taken away; the shorter the turn, the less', () => {
    expect(ladledCoefficient(300, 10, 10, 1330)).toBeCloseTo(300, 9);
    expect(ladledCoefficient(300, 1e-4, 3e-4, 1330)).toBeGreaterThan(299);
    const turns = [3, 10, 30, 60].map((every) => ladledCoefficient(300, 0.4 * every, every, 1330));
    expect(turns).toEqual([...turns].sort((a, b) => b - a));
  });
  test('a surface that takes up heat readily loses less of it', () => {
    expect(ladledCoefficient(300, 4, 10, 1330)).toBeGreaterThan(ladledCoefficient(300, 4, 10, 600));
  });
  test.each([
    [0, 4, 10, 1330],
    [300, 0, 10, 1330],
    [300, 12, 10, 1330],
    [300, 4, 10, Number.NaN],
  ])('h %s, %s s of %s, effusivity %s: refused', (h, on, every, e) => {
    expect(() => ladledCoefficient(h, on, every, e)).toThrow(OutOfRange);
  });
});
