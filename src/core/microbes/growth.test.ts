import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { near, set } from '../../../test/growth-sets.ts';
import { type GrowthSet, growthOrganisms } from '../properties/organisms-growth.ts';
import { growthAfter, growthAlong, growthUnderCeiling } from './growth.ts';
import { growthRateAt } from './growth-rate.ts';
import { integralFor } from './shelf-life.ts';

const rc = set('clostridium-perfringens', 'roasted-chicken');
const bb = set('clostridium-perfringens', 'braised-beef');
const cured = set('clostridium-perfringens', 'cured-pork');
const deli = set('listeria-monocytogenes', 'deli-meat');
const everySet = growthOrganisms.flatMap((o) => o.sets);
const mild = { pH: 6.2, waterActivity: 0.97 };

const C = fc.double({ min: -5, max: 70, noNaN: true });
const logs = fc
  .array(fc.tuple(fc.double({ min: 0.5, max: 90, noNaN: true }), C), { minLength: 2, maxLength: 12 })
  .map((rows) => {
    let s = 0;
    return rows.map(([min, c]) => {
      s += min * 60;
      return { s, C: c };
    });
  });

/** µ, q and N step by step: Dormand–Prince 5(4) with step control, nothing of the closed form in it. */
function stepByStep(mu: (s: number) => number, end: number, h0: number, start: number, most: number): number {
  const f = (t: number, [x, n]: readonly number[]) => {
    // x = ln q; n = ln N.
    const a = 1 / (1 + Math.exp(-x!));
    return [mu(t), mu(t) * a * (1 - Math.exp(n! - most * Math.LN10))];
  };
  const A = [
    [],
    [1 / 5],
    [3 / 40, 9 / 40],
    [44 / 45, -56 / 15, 32 / 9],
    [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
    [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
    [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
  ];
  const c = [0, 1 / 5, 3 / 10, 4 / 5, 8 / 9, 1, 1];
  const low = [5179 / 57600, 0, 7571 / 16695, 393 / 640, -92097 / 339200, 187 / 2100, 1 / 40];
  let y = [-Math.log(Math.expm1(h0)), start * Math.LN10];
  let t = 0;
  let h = end / 200;
  while (t < end * (1 - 1e-12)) {
    h = Math.min(h, end - t);
    const k: number[][] = [];
    let high = y;
    for (let i = 0; i < 7; i++) {
      high = y.map((v, j) => v + h * A[i]!.reduce((sum, a, m) => sum + a * k[m]![j]!, 0));
      k.push(f(t + c[i]! * h, high));
    }
    const error = Math.max(
      ...y.map((v, j) => Math.abs(high[j]! - v - h * low.reduce((sum, b, m) => sum + b * k[m]![j]!, 0))),
    );
    if (error < 1e-10) {
      t += h;
      y = high;
    }
    h *= Math.min(4, Math.max(0.2, 0.9 * (1e-10 / (error + 1e-30)) ** 0.2));
    h = Math.min(h, end / 50);
  }
  return y[1]! / Math.LN10;
}

const sampled = (T: (h: number) => number, hours: number, each = 60) =>
  Array.from({ length: Math.round((hours * 3600) / each) + 1 }, (_, i) => ({
    s: i * each,
    C: T((i * each) / 3600),
  }));
const exponential = (h: number) => 51 * (11 / 51) ** (h / 8);

describe('growthAlong', () => {
  const conditions = { ...mild, startLog10: 2, maxLog10: 8 };
  const end = (s: GrowthSet, h0: number, log = sampled(exponential, 8)) =>
    growthAlong(log, s, { ...conditions, h0 }).log10.at(-1)! - 2;

  test('at a steady rate: lag, growth and ceiling', () => {
    const t = [0, 1, 2, 3, 5, 10, 15, 20];
    const want = [3, 3.0908, 3.2706, 3.55424, 4.32118, 6.47319, 8.48674, 8.99344];
    t.forEach((hours, i) => {
      expect(3 + growthUnderCeiling(growthAfter(hours, 2), Math.log(1e6)) / Math.LN10).toBeCloseTo(
        want[i]!,
        4,
      );
    });
  });
  test('closed form for a cooling limit, by h0', () => {
    const want: [number, number][] = [
      [0, 3.46],
      [3, 2.16],
      [4, 1.7308],
      [5, 1.3102],
      [5.8, 0.988],
      [6, 0.9109],
      [7, 0.5598],
    ];
    for (const [h0, log10] of want)
      expect(Math.abs(growthAfter(7.96689, h0) / Math.LN10 - log10)).toBeLessThan(0.002);
  });
  test('the h0 at which a cooling limit gives just one log', () => {
    for (const [integral, h0] of [
      [7.96689, 5.769],
      [6.98736, 4.789],
      [3.10859, 0.866],
    ] as const)
      expect(integralFor(1, h0)).toBeCloseTo(integral, 2);
  });
  test('an exponential fall from 51 to 11 °C in 8 h', () => {
    near([[growthAlong(sampled(exponential, 8), cured, conditions).integral, 4.65474]], 0.002);
    for (const [h0, log10] of [
      [0, 2.0215],
      [3, 0.7911],
      [4, 0.4633],
      [5, 0.2308],
    ] as const)
      expect(Math.abs(end(cured, h0) - log10)).toBeLessThan(0.002);
    expect(Math.abs(end(rc, 5) - 4.7749)).toBeLessThan(0.005);
  });
  test('at any steady rate, lag and ceiling: the published explicit form and the equations step by step, to 1e-6', () => {
    const any = fc.record({
      mu: fc.double({ min: 0.01, max: 6, noNaN: true }),
      hours: fc.double({ min: 0.1, max: 40, noNaN: true }),
      h0: fc.double({ min: 0.01, max: 9, noNaN: true }),
      room: fc.double({ min: 0.5, max: 9, noNaN: true }),
    });
    fc.assert(
      fc.property(any, ({ mu, hours, h0, room }) => {
        const ours = growthUnderCeiling(growthAfter(mu * hours, h0), room * Math.LN10) / Math.LN10;
        const A = hours + Math.log(Math.exp(-mu * hours) + Math.exp(-h0) - Math.exp(-mu * hours - h0)) / mu;
        const explicit = mu * A - Math.log(1 + Math.expm1(mu * A) / 10 ** room);
        expect(Math.abs(ours - explicit / Math.LN10)).toBeLessThan(1e-6);
        const stepped = stepByStep(() => mu / 3600, hours * 3600, h0, 0, room);
        expect(Math.abs(ours - stepped)).toBeLessThan(1e-6);
      }),
      { numRuns: 300 },
    );
  });
  test('agrees with the equations solved step by step to 1e-6', () => {
    for (const [s, h0, most] of [
      [rc, 5, 8],
      [rc, 1, 4],
      [cured, 3, 8],
      [bb, 5.8, 8],
      [deli, 2, 8],
    ] as const) {
      // One straight stretch, so that the course of the rate is smooth for the stepper.
      const falling = (sec: number) => 44 - (30 * sec) / 36_000;
      const stepped = stepByStep((t) => growthRateAt(s.temperature, falling(t)), 36_000, h0, 2, most);
      const ours = growthAlong(
        [
          { s: 0, C: 44 },
          { s: 36_000, C: 14 },
        ],
        s,
        { ...mild, startLog10: 2, maxLog10: most, h0 },
      ).log10.at(-1)!;
      expect(Math.abs(ours - stepped)).toBeLessThan(1e-6);
    }
  });
  test('grows with time and never past the most there can be', () => {
    fc.assert(
      fc.property(
        logs,
        fc.constantFrom(...everySet),
        fc.double({ min: 0, max: 8, noNaN: true }),
        (log, s, h0) => {
          const { log10 } = growthAlong(log, s, { ...conditions, h0 });
          for (let i = 1; i < log10.length; i++)
            expect(log10[i]!).toBeGreaterThanOrEqual(log10[i - 1]! - 1e-12);
          expect(log10.at(-1)!).toBeLessThanOrEqual(8 + 1e-12);
        },
      ),
    );
  });
  test('is the same however the log is cut', () => {
    fc.assert(
      fc.property(
        logs,
        fc.constantFrom(...everySet),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (log, s, at) => {
          const cut = log.flatMap((b, i) => {
            const a = log[i - 1];
            if (a === undefined) return [b];
            return [{ s: a.s + at * (b.s - a.s), C: a.C + at * (b.C - a.C) }, b];
          });
          const one = growthAlong(log, s, conditions);
          const two = growthAlong(cut, s, conditions);
          expect(Math.abs(one.log10.at(-1)! - two.log10.at(-1)!)).toBeLessThan(1e-8);
        },
      ),
    );
  });
  test('a log colder throughout, below the best temperature, never grows more', () => {
    fc.assert(
      fc.property(
        logs,
        fc.constantFrom(...everySet),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (log, s, less) => {
          const below = log.map((p) => ({ s: p.s, C: Math.min(p.C, 37) }));
          const colder = below.map((p) => ({ s: p.s, C: p.C - less }));
          expect(growthAlong(colder, s, conditions).log10.at(-1)!).toBeLessThanOrEqual(
            growthAlong(below, s, conditions).log10.at(-1)! + 1e-9,
          );
        },
      ),
    );
  });
  test('more lag never grows more', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 900, noNaN: true }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        (I, h0) => {
          expect(growthAfter(I, h0 + 1)).toBeLessThanOrEqual(growthAfter(I, h0) + 1e-12);
          expect(growthAfter(I, 0)).toBeCloseTo(I, 9);
          expect(Number.isFinite(growthUnderCeiling(growthAfter(I, h0), 12))).toBe(true);
        },
      ),
    );
  });
  test('straight lines between the points of the course lose under 0.05 log', () => {
    const coarse = [
      { s: 0, C: 54 },
      { s: 5400, C: 27 },
      { s: 23_400, C: 4 },
    ];
    const course = growthAlong(coarse, rc, { ...conditions, h0: 3 });
    for (let i = 1; i < course.s.length; i++) {
      const middle = (course.s[i - 1]! + course.s[i]!) / 2;
      const C = (course.C[i - 1]! + course.C[i]!) / 2;
      const to = [...coarse.filter((p) => p.s < middle), { s: middle, C }];
      const exact = growthAlong(to, rc, { ...conditions, h0: 3 }).log10.at(-1)!;
      expect(Math.abs(exact - (course.log10[i - 1]! + course.log10[i]!) / 2)).toBeLessThan(0.05);
    }
  });
  test('refuses a start above the most there can be, and a log that is none', () => {
    expect(() => growthAlong(sampled(exponential, 1), rc, { ...mild, startLog10: 9 })).toThrow(/startLog10/);
    expect(() => growthAlong([], rc, conditions)).toThrow(/log/);
  });
});
