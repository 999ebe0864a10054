import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { near, set } from '../../../test/growth-sets.ts';
import { growthAfter } from './growth.ts';
import { growthRateAt } from './growth-rate.ts';
import { timeToGrow } from './shelf-life.ts';

const rc = set('clostridium-perfringens', 'roasted-chicken');
const deli = set('listeria-monocytogenes', 'deli-meat');
const mild = { pH: 6.2, waterActivity: 0.97 };

describe('timeToGrow', () => {
  test('Listeria monocytogenes from 1 to 100 cfu/g in cooked meats, without lag', () => {
    const days = (C: number) => timeToGrow(deli, C, mild, 2)! / 86_400;
    near(
      [
        [days(5), 7.092],
        [days(8), 3.214],
      ],
      0.001,
    );
    expect(timeToGrow(deli, -2, mild, 2)).toBeNull();
    expect(timeToGrow(deli, -2, mild, 0)).toBe(0);
  });
  test('after that time it has grown by just so much', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 15, max: 44, noNaN: true }),
        fc.double({ min: 0.1, max: 4, noNaN: true }),
        fc.double({ min: 0, max: 8, noNaN: true }),
        (C, log10, h0) => {
          const t = timeToGrow(rc, C, mild, log10, h0)!;
          expect(growthAfter(growthRateAt(rc.temperature, C) * t, h0) / Math.LN10).toBeCloseTo(log10, 8);
        },
      ),
    );
  });
});
