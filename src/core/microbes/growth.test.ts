import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findGrowthOrganism, type GrowthSet, growthOrganisms } from '../properties/organisms-growth.ts';
import {
  cardinalPH,
  cardinalTemperature,
  cardinalWaterActivity,
  fullRangeSquareRootRate,
} from './cardinal.ts';
import { growthAfter, growthAlong, growthUnderCeiling } from './growth.ts';
import { checkGrowthLimits } from './growth-limits.ts';
import { foodFactor, formCorners, growthRateAt, rateIntegral, setFactor } from './growth-rate.ts';
import { integralFor, timeToGrow } from './shelf-life.ts';

const set = (organism: string, id: string): GrowthSet => {
  const found = findGrowthOrganism(organism)?.sets.find((s) => s.id === id);
  if (found === undefined) throw new RangeError(`no set ${id}`);
  return found;
};
const rc = set('clostridium-perfringens', 'roasted-chicken');
const bb = set('clostridium-perfringens', 'braised-beef');
const cured = set('clostridium-perfringens', 'cured-pork');
const deli = set('listeria-monocytogenes', 'deli-meat');
const everySet = growthOrganisms.flatMap((o) => o.sets);
const mild = { pH: 6.2, waterActivity: 0.97 };

/** Expected values, each within a relative tolerance. */
function near(pairs: readonly (readonly [ours: number, expected: number])[], relative: number, floor = 0) {
  for (const [ours, expected] of pairs)
    expect(Math.abs(ours - expected), `${ours} for ${expected}`).toBeLessThanOrEqual(
      Math.max(floor, relative * Math.abs(expected)),
    );
}
const hourly = (s: GrowthSet, C: number) => growthRateAt(s.temperature, C) * 3600;

describe('rates by temperature', () => {
  test('Clostridium perfringens in roasted chicken', () => {
    const C = [10, 15, 20, 25, 30, 35, 40, 45, 46.4, 48, 50, 51];
    const mu = [0.0081, 0.2149, 0.6959, 1.4405, 2.4292, 3.6211, 4.9146, 5.9657, 6.06, 5.86, 4.4068, 2.1836];
    near(
      C.map((t, i) => [hourly(rc, t), mu[i]!]),
      0.002,
      1e-4,
    );
  });
  test('Clostridium perfringens in braised beef', () => {
    const C = [12, 20, 30, 40, 43.5, 48];
    const mu = [0.0271, 0.8295, 3.0274, 5.3463, 5.64, 4.8581];
    near(
      C.map((t, i) => [hourly(bb, t), mu[i]!]),
      0.002,
      1e-4,
    );
  });
  test('Clostridium perfringens in cured pork', () => {
    const C = [15, 20, 25, 30, 35, 40, 45, 48, 50];
    const mu = [0.00547, 0.10267, 0.32136, 0.66143, 1.12139, 1.68435, 2.16846, 1.89625, 0.706];
    near(
      C.map((t, i) => [hourly(cured, t), mu[i]!]),
      0.001,
      5e-6,
    );
  });
  test('Listeria monocytogenes in cooked meats: log10 a day and doubling time', () => {
    const C = [2, 4, 5, 7, 8, 10];
    const daily = [0.0747, 0.1981, 0.282, 0.4941, 0.6222, 0.9229];
    const doubling = [96.8, 36.5, 25.6, 14.6, 11.6, 7.8];
    near(
      C.map((t, i) => [(hourly(deli, t) * 24) / Math.LN10, daily[i]!]),
      0.002,
    );
    near(
      C.map((t, i) => [Math.LN2 / hourly(deli, t), doubling[i]!]),
      0.002,
      0.05,
    );
  });
  test('Listeria monocytogenes and Salmonella as a fraction of the best', () => {
    const l = { min: -1.72, opt: 37, max: 45.5 };
    const lC = [2, 4, 5, 8, 10, 20, 37, 43];
    const lg = [0.01427, 0.03353, 0.04612, 0.09541, 0.13755, 0.44488, 1, 0.64952];
    near(
      lC.map((t, i) => [cardinalTemperature(t, l), lg[i]!]),
      0.001,
    );
    const s = { min: 5.2, opt: 38, max: 46.2 };
    const sC = [8, 10, 15, 20, 30, 43];
    const sg = [0.012, 0.03492, 0.14138, 0.31013, 0.75912, 0.74561];
    near(
      sC.map((t, i) => [cardinalTemperature(t, s), sg[i]!]),
      0.002,
    );
  });
  test('Salmonella in chicken: doubles in 20 min at 37 °C, in 17 h at 8 °C', () => {
    // 0.0019 · 33.65² · (1 − e^(0.29 · −11.01)) by hand.
    expect(hourly(set('salmonella', 'chicken'), 37)).toBeCloseTo(2.0631, 3);
    near([[(Math.LN2 / hourly(set('salmonella', 'chicken'), 37)) * 60, 20.2]], 0.01);
    near([[Math.LN2 / hourly(set('salmonella', 'chicken'), 8), 16.9]], 0.01);
  });
  test('nothing grows at or outside the lowest and the highest temperature, of any set', () => {
    for (const { temperature } of everySet) {
      const corners = formCorners(temperature);
      for (const C of [corners[0]! - 30, corners[0]!, corners.at(-1)!, corners.at(-1)! + 40])
        expect(growthRateAt(temperature, C)).toBe(0);
      expect(growthRateAt(temperature, (corners[0]! + corners.at(-1)!) / 2)).toBeGreaterThan(0);
    }
  });
  test('a joined form has no step at its joint', () => {
    for (const { temperature } of everySet)
      for (const corner of formCorners(temperature))
        expect(growthRateAt(temperature, corner - 1e-7) * 3600).toBeCloseTo(
          growthRateAt(temperature, corner + 1e-7) * 3600,
          4,
        );
  });
  test('colder never grows more below the best temperature', () => {
    for (const { temperature } of everySet) {
      let best = formCorners(temperature)[0]!;
      for (let C = best; C < formCorners(temperature).at(-1)!; C += 0.1)
        if (growthRateAt(temperature, C) > growthRateAt(temperature, best)) best = C;
      for (let C = formCorners(temperature)[0]!; C < best; C += 0.1)
        expect(growthRateAt(temperature, C)).toBeLessThanOrEqual(growthRateAt(temperature, C + 0.1) + 1e-15);
      expect(best).toBeGreaterThan(35);
    }
  });
  test('the two square-root forms are kept apart: the bracket is squared in one of them', () => {
    expect(fullRangeSquareRootRate(30, 0.02, 0.3, 5, 45)).toBeCloseTo(
      (0.02 * 25 * (1 - Math.exp(-4.5))) ** 2,
      12,
    );
    expect(fullRangeSquareRootRate(45, 0.02, 0.3, 5, 45)).toBe(0);
  });
});

describe('pH and water activity', () => {
  test('Listeria monocytogenes', () => {
    const p = { min: 4.71, opt: 7.1, max: 9.61 };
    near(
      [5, 5.6, 6, 6.5, 7.1, 8].map((v, i) => [
        cardinalPH(v, p),
        [0.23263, 0.61333, 0.79376, 0.93926, 1, 0.86736][i]!,
      ]),
      0.001,
    );
    const a = { min: 0.913, opt: 0.997, max: 1 };
    near(
      [0.92, 0.94, 0.96, 0.97, 0.98, 0.99, 0.997].map((v, i) => [
        cardinalWaterActivity(v, a),
        [0.00746, 0.11084, 0.33522, 0.49209, 0.67732, 0.8845, 1][i]!,
      ]),
      0.002,
    );
    expect([cardinalPH(4.71, p), cardinalPH(9.7, p), cardinalWaterActivity(0.913, a)]).toEqual([0, 0, 0]);
    expect(cardinalWaterActivity(1, a)).toBe(1);
  });
  test('leave the published rate as it is in the food it was published for', () => {
    for (const { effect } of everySet)
      if (effect !== undefined)
        expect(foodFactor(effect, effect.food.pH, effect.food.waterActivity)).toBeCloseTo(1, 12);
    expect(setFactor(rc, 5.8, 0.95)).toBe(1);
  });
});

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
const logs = fc
  .array(fc.tuple(fc.double({ min: 0.5, max: 90, noNaN: true }), C), { minLength: 2, maxLength: 12 })
  .map((rows) => {
    let s = 0;
    return rows.map(([min, c]) => {
      s += min * 60;
      return { s, C: c };
    });
  });

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

describe('checkGrowthLimits', () => {
  const possible = (organism: string, place: Parameters<typeof checkGrowthLimits>[1]) =>
    checkGrowthLimits(organism, place).map((limit) => limit.growthPossible);
  test('takes the widest of the tables, ends included', () => {
    expect(possible('listeria-monocytogenes', { pH: 4.39 })).toEqual([true]);
    expect(possible('listeria-monocytogenes', { pH: 4.38 })).toEqual([false]);
    expect(possible('bacillus-cereus', { waterActivity: 0.92 })).toEqual([true]);
    expect(possible('bacillus-cereus', { waterActivity: 0.919 })).toEqual([false]);
    expect(possible('escherichia-coli', { C: 6.4, waterPhaseSalt: 0.066 })).toEqual([false, false]);
  });
  test('never denies growth at a temperature where a set has a rate', () => {
    for (const organism of growthOrganisms)
      for (const s of organism.sets)
        for (let C = -5; C < 60; C += 0.25)
          if (growthRateAt(s.temperature, C) > 0) expect(possible(organism.id, { C })).toEqual([true]);
  });
  test('never denies growth in a food where a set has a rate', () => {
    for (const organism of growthOrganisms)
      for (const s of organism.sets)
        for (let x = 0; x <= 1; x += 0.01) {
          const food = { pH: 3 + 7 * x, waterActivity: 0.85 + 0.15 * x };
          if (s.effect === undefined) continue;
          if (s.effect.pH !== undefined && setFactor(s, food.pH, s.effect.food.waterActivity) > 0)
            expect(possible(organism.id, { pH: food.pH })).toEqual([true]);
          if (setFactor(s, s.effect.food.pH, food.waterActivity) > 0)
            expect(possible(organism.id, { waterActivity: food.waterActivity })).toEqual([true]);
        }
  });
  test('says nothing of what was not stated', () => {
    expect(checkGrowthLimits('salmonella', {})).toEqual([]);
  });
});
