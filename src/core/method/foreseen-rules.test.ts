import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cook } from '../heat/cook.ts';
import type { CookProblem } from '../heat/types.ts';
import { findRule, type Rule } from '../properties/rules.ts';
import { foreseenCooking, leastPointsFor, lessThanUsual } from './foreseen-rules.ts';

const usual = [findRule('gb-70c-2min') as Rule];
const body: CookProblem['body'] = {
  shape: 'cylinder',
  diameter: 0.15,
  layers: [{ name: 'food', material: { properties: { k: 0.48, rho: 1050, cp: 3500 } } }],
};
const seared: CookProblem = {
  body,
  start: 60,
  stages: [
    { name: 'cool', medium: 5, h: 20, until: { kind: 'time', s: 7200 } },
    { name: 'sear', medium: 180, h: 300, until: { kind: 'time', s: 720 } },
  ],
  target: { reference: 50, z: 50, s: 60 },
};

describe('foreseenCooking', () => {
  it('looks for the coldest point by the rule’s own counting too, where the target is another', () => {
    const lax = cook(seared);
    expect(lax.lethality.passes).toBe(true);
    // By the lax target the surface got least, and by itself it would meet the rule.
    expect(foreseenCooking(lax, usual)[0]?.passes).toBe(true);
    const both = cook({ ...seared, alsoLeast: leastPointsFor([], seared.target) });
    expect(foreseenCooking(both, usual)[0]?.passes).toBe(false);
    const strict = cook({ ...seared, target: { reference: 70, z: 7.5, s: 120 } });
    expect(strict.lethality.passes).toBe(false);
    expect(both.alsoLeast?.map((C) => C.length)).toEqual([both.history.t.length]);
  });

  it('judges every rule at every point that was looked for, and says the worst', () => {
    const one = findRule('us-food-code-165f-stuffed') as Rule;
    const pair = [one, ...usual];
    const lax = cook(seared);
    const n = lax.history.t.length;
    const peaked = { ...lax, history: { ...lax.history, coldSpot: new Float64Array(n).fill(80) } };
    expect(foreseenCooking(peaked, pair).map((v) => v.passes)).toEqual([true, true]);
    // 73 °C for hours is worth many minutes at 70 °C and is never 165 °F.
    const flat = new Float64Array(n).fill(73);
    expect(foreseenCooking({ ...peaked, alsoLeast: [flat] }, pair).map((v) => v.passes)).toEqual([
      false,
      true,
    ]);
  });

  it('finds the point whose peak is lowest for a rule that asks for one temperature', () => {
    const one = findRule('us-food-code-165f-stuffed') as Rule;
    const peakOf = (C: Float64Array) => C.reduce((a, b) => Math.max(a, b));
    const own = cook({ ...seared, alsoLeast: leastPointsFor([one], seared.target) });
    const peaks = own.alsoLeast!.map(peakOf);
    expect(peaks).toHaveLength(2);
    expect(peaks[1]).toBeLessThanOrEqual(Math.min(peaks[0]!, peakOf(own.history.coldSpot)) + 0.05);
  });

  it('does not count below the lowest published temperature, though the sum reaches the target', () => {
    const slow = cook({
      body: { ...body, diameter: 0.03 },
      start: 5,
      stages: [{ name: 'bath', medium: 59, h: 1000, until: { kind: 'time', s: 5 * 3600 } }],
      target: { reference: 70, z: 7.5, s: 120 },
    });
    expect(slow.lethality.passes).toBe(true);
    expect(foreseenCooking(slow, usual)[0]?.passes).toBe(false);
  });
});

describe('lessThanUsual', () => {
  it('is what half the time, a lower reference or a lax z ask; never what asks for more', () => {
    expect(lessThanUsual({ reference: 50, z: 50, s: 60 })).toBe(true);
    expect(lessThanUsual({ reference: 70, z: 7.5, s: 119 })).toBe(true);
    expect(lessThanUsual({ reference: 69, z: 7.5, s: 120 })).toBe(true);
    for (const published of [
      { reference: 70, z: 7.5, s: 120 },
      { reference: 70, z: 6, s: 120 },
      { reference: 90, z: 9, s: 600 },
    ])
      expect(lessThanUsual(published)).toBe(false);
  });

  it('asks for no less than the usual at every temperature between, where it says so', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 40, max: 120, noNaN: true }),
        fc.double({ min: 3, max: 50, noNaN: true }),
        fc.double({ min: 1, max: 10_000, noNaN: true }),
        fc.double({ min: 60, max: 100, noNaN: true }),
        (reference, z, s, C) => {
          const own = s * 10 ** ((reference - C) / z);
          const asked = 120 * 10 ** ((70 - C) / 7.5);
          return lessThanUsual({ reference, z, s }) || own >= asked * (1 - 1e-6);
        },
      ),
    );
  });
});

describe('leastPointsFor', () => {
  it('looks once for each steepness: the z of a rule, of the line through a table, one degree for one temperature', () => {
    const target = { reference: 70, z: 7.5, s: 120 };
    const zs = (...ids: string[]) =>
      leastPointsFor(
        ids.map((id) => findRule(id) as Rule),
        target,
      ).map(({ z }) => Number(z.toFixed(2)));
    expect(zs('gb-70c-2min')).toEqual([]);
    expect(zs('gb-70c-2min-comminuted')).toEqual([6]);
    expect(zs('us-food-code-165f-stuffed')).toEqual([1]);
    const [table, top] = zs('us-poultry-7log-turkey-12pct-fat');
    // Over all rows that have a time; the published anchor rows alone give 5.97.
    expect(table).toBeCloseTo(5.91, 2);
    expect(top).toBe(1);
  });
});
