import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  breakEven,
  type CostLine,
  costPerPortion,
  dearerBy,
  marginAt,
  netOf,
  priceFor,
  restMustEarn,
} from './price.ts';

const exactly = (x: number) => ({ low: x, usual: x, high: x });
const money = fc.double({ min: 0, max: 1e6, noNaN: true });
const amount = fc.tuple(money, money, money).map((three) => {
  const [low, usual, high] = [...three].sort((a, b) => a - b);
  return { low: low!, usual: usual!, high: high! };
});
const line = fc.record({
  name: fc.string(),
  kind: fc.constantFrom('part', 'ingredient', 'hands', 'energy', 'packaging', 'overhead'),
  cost: fc.option(amount),
}) as fc.Arbitrary<CostLine>;

describe('costPerPortion', () => {
  it('adds up by hand, and names what has no cost', () => {
    const got = costPerPortion(
      [
        { name: 'trotters', kind: 'part', cost: { low: 600, usual: 630, high: 720 } },
        { name: 'hock', kind: 'ingredient', cost: exactly(410) },
        { name: 'hands', kind: 'hands', cost: { low: 2000, usual: 2400, high: 2900 } },
        { name: 'film', kind: 'packaging', cost: null },
      ],
      exactly(12),
    );
    expect(got.total.usual).toBe(3440);
    expect(got.perPortion.usual).toBeCloseTo(286.6667, 3);
    expect(got.perPortion.high).toBeCloseTo(286.6667 + Math.hypot(90, 500) / 12, 3);
    expect(got.perPortion.low).toBeCloseTo(286.6667 - Math.hypot(30, 400) / 12, 3);
    expect(got.byKind.hands).toBe(200);
    expect(got.missing).toEqual(['film']);
  });

  it('is linear: twice the batch for twice the portions costs the same a portion', () => {
    fc.assert(
      fc.property(fc.array(line, { maxLength: 8 }), fc.integer({ min: 1, max: 200 }), (lines, n) => {
        const twice = (a: number) => 2 * a;
        const one = costPerPortion(lines, exactly(n));
        const two = costPerPortion(
          lines.map((l) => ({
            ...l,
            cost:
              l.cost === null
                ? null
                : { low: twice(l.cost.low), usual: twice(l.cost.usual), high: twice(l.cost.high) },
          })),
          exactly(2 * n),
        );
        for (const end of ['low', 'usual', 'high'] as const)
          expect(two.perPortion[end]).toBeCloseTo(one.perPortion[end], 6);
        expect(one.perPortion.low).toBeLessThanOrEqual(one.perPortion.usual + 1e-9);
        expect(one.perPortion.usual).toBeLessThanOrEqual(one.perPortion.high + 1e-9);
      }),
    );
  });

  it('is dearer when fewer portions may come of it', () => {
    const lines: CostLine[] = [{ name: 'all', kind: 'part', cost: exactly(1000) }];
    expect(costPerPortion(lines, { low: 8, usual: 10, high: 10 }).perPortion).toEqual({
      low: 100,
      usual: 100,
      high: 125,
    });
    expect(() => costPerPortion(lines, exactly(0))).toThrow(/portions/);
  });
});

describe('prices', () => {
  const rules = fc.record({
    margin: fc.double({ min: 0, max: 0.9, noNaN: true }),
    vat: fc.double({ min: 0, max: 0.3, noNaN: true }),
    includesVat: fc.boolean(),
    step: fc.integer({ min: 1, max: 500 }),
  });

  it('leave the wanted margin, and a step less does not', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e5, noNaN: true }), rules, (cost, r) => {
        const price = priceFor(cost, r);
        expect(price % r.step).toBe(0);
        expect(marginAt(price, cost, r)).toBeGreaterThanOrEqual(r.margin - 1e-9);
        if (price > r.step) expect(marginAt(price - r.step, cost, r)).toBeLessThan(r.margin + 1e-9);
      }),
    );
  });

  it('pay for the fixed costs from the break-even on, and not before', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1e6, noNaN: true }),
        fc.double({ min: 1, max: 1e4, noNaN: true }),
        fc.double({ min: 0, max: 1e4, noNaN: true }),
        (fixed, net, cost) => {
          const n = breakEven(fixed, net, cost);
          if (n === null) expect(net - cost).toBeLessThanOrEqual(1e-9);
          else {
            expect(n * (net - cost)).toBeGreaterThanOrEqual(fixed * (1 - 1e-6));
            expect((n - 1) * (net - cost)).toBeLessThan(fixed * (1 + 1e-6));
          }
        },
      ),
    );
  });

  it('are nothing that a rest of the animal must earn once the dish pays for all of it', () => {
    expect(restMustEarn(4200, 0.7, 20_000)).toBe(0);
    expect(restMustEarn(4200, 0.7, 0)).toBeCloseTo(14_000, 9);
    expect(dearerBy(600, -0.5, 12)).toBe(-25);
    expect(netOf(1000, { margin: 0, vat: 0.2, includesVat: false, step: 1 })).toBe(1000);
    expect(() => priceFor(100, { margin: 1, vat: 0, includesVat: true, step: 1 })).toThrow(/margin/);
  });
});
