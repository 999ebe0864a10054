import { describe, expect, it } from 'vitest';
import { curingMethods, nitriteLimits, nitritePlaces, nitriteProducts } from '../properties/brine-nitrite.ts';
import { sources } from '../sources.ts';
import { ingoingNitrite, ionOf, judgeNitrite, saltOfIon } from './nitrite.ts';

const lb = 0.45359237;
const oz = lb / 16;

describe('ingoingNitrite', () => {
  it.each([
    ['a quarter of an ounce to 100 lb', { method: 'comminuted', nitrite: oz / 4, meat: 100 * lb }, 156.25],
    ['an ounce to 100 lb', { method: 'dry', nitrite: oz, meat: 100 * lb }, 625],
    [
      '2 lb in 1000 lb, pumped at 10 %',
      { method: 'pumped', nitrite: 2 * lb, pickle: 1000 * lb, uptake: 0.1 },
      200,
    ],
    ['the same picked up', { method: 'immersion pick-up', nitrite: 2, pickle: 1000, uptake: 0.1 }, 200],
    ['2.5 g of 6.25 % to a kilogram', { method: 'comminuted', nitrite: 0.0025 * 0.0625, meat: 1 }, 156.25],
    ['20 g of 0.6 % to a kilogram', { method: 'dry', nitrite: 0.02 * 0.006, meat: 1 }, 120],
    [
      '0.3 g in a kilogram of pickle with a kilogram of meat',
      { method: 'immersion to equilibrium', nitrite: 0.0003, pickle: 1, meat: 1 },
      150,
    ],
  ] as const)('%s', (_, cure, expected) => {
    expect(ingoingNitrite(cure)).toBeCloseTo(expected, 9);
  });

  it('refuses what is missing or cannot be', () => {
    expect(() => ingoingNitrite({ method: 'dry', nitrite: 0.001 })).toThrow('meat');
    expect(() => ingoingNitrite({ method: 'pumped', nitrite: 0.001, pickle: 1, uptake: 1.5 })).toThrow(
      'uptake',
    );
    expect(() => ingoingNitrite({ method: 'dry', nitrite: -1, meat: 1 })).toThrow('nitrite');
    expect(() => ingoingNitrite({ method: 'dry', nitrite: 1, meat: 0 })).toThrow('meat');
  });
});

describe('ions and salts', () => {
  it('published factors', () => {
    expect(ionOf('NaNO2', 1)).toBeCloseTo(0.67, 2);
    expect(ionOf('KNO2', 1)).toBeCloseTo(0.5406, 4);
    expect(ionOf('NaNO3', 1)).toBeCloseTo(0.73, 2);
    expect(ionOf('KNO3', 1)).toBeCloseTo(0.61, 2);
    expect(ionOf('NaNO2', 156.25)).toBeCloseTo(104.19, 2);
    expect(saltOfIon('NaNO2', 80)).toBeCloseTo(119.98, 2);
    expect(saltOfIon('NaNO2', 55)).toBeCloseTo(82.48, 2);
  });
});

describe('judgeNitrite', () => {
  it.each([
    [156.25, 'US', 'meat product', 'comminuted', 'at the limit'],
    [160, 'US', 'meat product', 'comminuted', 'over'],
    [625, 'US', 'meat product', 'dry', 'within'],
    [201, 'US', 'bacon', 'dry', 'over'],
    [120, 'US', 'bacon', 'pumped', 'within'],
    [120, 'EU', 'meat product', 'dry', 'at the limit'],
    [121, 'EU', 'meat product', 'dry', 'over'],
    [150, 'GB', 'meat product', 'immersion to equilibrium', 'within'],
    [101, 'GB', 'sterilised meat product', 'dry', 'over'],
    [0.1, 'GB', 'raw meat preparation', 'dry', 'over'],
    [1, 'GB', 'traditional cured product', 'dry', 'not known'],
    [1, 'US', 'bacon', 'comminuted', 'not known'],
  ] as const)('%f in %s, %s, %s: %s', (ppm, place, product, method, verdict) => {
    expect(judgeNitrite(ppm, place, product, method).verdict).toBe(verdict);
  });

  it('at most one row for a case, each with a source; ten times the limit is over everywhere', () => {
    for (const row of nitriteLimits) expect(Object.hasOwn(sources, row.source), row.source).toBe(true);
    for (const place of nitritePlaces)
      for (const product of nitriteProducts)
        for (const method of curingMethods) {
          const rows = nitriteLimits.filter(
            (r) => r.place === place && r.product === product && r.methods.includes(method),
          );
          expect(rows.length).toBeLessThanOrEqual(1);
          expect(['over', 'not known']).toContain(judgeNitrite(6250, place, product, method).verdict);
        }
  });
});
