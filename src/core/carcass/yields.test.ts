import fc from 'fast-check';
import { qt } from 'lib-r-math.js';
import { describe, expect, test } from 'vitest';
import { Contradiction, OutOfRange } from '../errors.ts';
import { centredLogRatios, centreOf, closed, logOdds, shareOfOdds, zerosReplaced } from './log-ratio.ts';
import { animalsForPrecision, meanShare, type StudentQuantile, shareEstimate } from './yield-estimate.ts';
import { fewestForOutliers, outliersOf } from './yield-outliers.ts';
import { learningTrend, yieldDifference } from './yield-trend.ts';

const t: StudentQuantile = (p, df) => qt(p, df);
const weights = fc.array(fc.double({ min: 1e-3, max: 1e3, noNaN: true }), { minLength: 2, maxLength: 8 });
const share = fc.double({ min: 0.01, max: 0.9, noNaN: true });
const of = (shares: readonly number[]) => shares.map((x) => ({ share: x }));

/** Even numbers from a seed (a published multiplier), and normal ones from two of them. */
function chance(seed: number) {
  let state = seed;
  const even = () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  return () => Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even());
}

describe('log-ratios', () => {
  test('know nothing of the unit, sum to 0 and come back', () => {
    fc.assert(
      fc.property(weights, fc.double({ min: 0.01, max: 100, noNaN: true }), (x, unit) => {
        const clr = centredLogRatios(x);
        expect(clr.reduce((a, b) => a + b, 0)).toBeCloseTo(0, 9);
        centredLogRatios(x.map((w) => w * unit)).forEach((z, i) => {
          expect(z).toBeCloseTo(clr[i]!, 9);
        });
        closed(clr.map(Math.exp)).forEach((s, i) => {
          expect(s).toBeCloseTo(closed(x)[i]!, 12);
        });
      }),
    );
  });
  test('the middle animal of a subset is the subset of the middle animal', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(share, share, share, share), { minLength: 1, maxLength: 9 }),
        (animals) => {
          const whole = centreOf(animals.map((a) => closed(a)));
          expect(whole.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
          const subset = centreOf(animals.map(([a, b]) => closed([a, b])));
          expect(subset[0]).toBeCloseTo(closed(whole.slice(0, 2))[0]!, 10);
        },
      ),
    );
  });
  test('a zero is replaced by 0.65 of the least seen, the other ratios stay', () => {
    const r = zerosReplaced([0, 0.2, 0.8], 0.001);
    expect(r[0]).toBeCloseTo(0.00065, 12);
    expect(r.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
    expect(r[2]! / r[1]!).toBeCloseTo(4, 12);
    expect(() => zerosReplaced([0, 1], 0)).toThrow(OutOfRange);
  });
  test('log-odds come back and take 0 and 1', () => {
    fc.assert(
      fc.property(share, (x) => {
        expect(shareOfOdds(logOdds(x, 1e-4))).toBeCloseTo(x, 12);
      }),
    );
    expect(shareOfOdds(logOdds(0, 1e-3))).toBeCloseTo(0.00065, 12);
    expect(shareOfOdds(logOdds(1, 1e-3))).toBeCloseTo(0.99935, 12);
    expect(() => logOdds(1.01, 1e-3)).toThrow(OutOfRange);
    expect(() => closed([0, 0])).toThrow(Contradiction);
  });
});

describe('estimates', () => {
  test('a prior made of real animals gives what those animals give', () => {
    fc.assert(
      fc.property(
        fc.array(share, { minLength: 1, maxLength: 8 }),
        fc.array(share, { minLength: 2, maxLength: 8 }),
        (own, theirs) => {
          const z = theirs.map((x) => logOdds(x, 1e-4));
          const mean = z.reduce((a, b) => a + b, 0) / z.length;
          const centre = shareOfOdds(mean);
          const sdZ = Math.sqrt(z.reduce((a, b) => a + (b - mean) ** 2, 0) / (z.length - 1));
          const sd = sdZ * centre * (1 - centre);
          fc.pre(sd < 0.99);
          const prior = { share: centre, sd, animals: z.length };
          const by = shareEstimate(of(own), t, prior);
          const all = shareEstimate(of([...own, ...theirs]), t);
          expect(by.degrees).toBe(all.degrees);
          for (const key of ['centre', 'low', 'high', 'nextLow', 'nextHigh'] as const)
            expect(by[key]).toBeCloseTo(all[key]!, 8);
        },
      ),
    );
  });
  test('a published figure alone: an interval only where its spread is known', () => {
    expect(shareEstimate([], t, { share: 0.05, animals: 12 })).toMatchObject({
      animals: 0,
      low: null,
      nextLow: null,
    });
    const known = shareEstimate([], t, { share: 0.05, sd: 0.005, animals: 12 });
    expect(known.centre).toBeCloseTo(0.05, 12);
    expect(known.degrees).toBe(11);
    expect(known.nextHigh! - known.nextLow!).toBeGreaterThan(known.high! - known.low!);
    // One weighing and a figure without spread: how far apart they lie is all that is known of spread.
    expect(shareEstimate(of([0.06]), t, { share: 0.05, animals: 5 }).degrees).toBe(1);
  });
  test('one weighing has no spread; nothing at all is refused', () => {
    expect(meanShare(of([0.2]), t)).toEqual({ animals: 1, mean: 0.2, sd: null, low: null, high: null });
    expect(shareEstimate(of([0.2]), t)).toMatchObject({ low: null, sdLogOdds: null });
    expect(() => meanShare([], t)).toThrow(Contradiction);
    expect(() => shareEstimate([], t)).toThrow(Contradiction);
    expect(() => meanShare(of([1.2]), t)).toThrow(/observations\[0\]\.share: found 1\.2/);
  });
  test('animals weighed together tell their mean with its weight', () => {
    const together = meanShare([{ share: 0.2, animals: 4 }, { share: 0.26 }], t);
    expect(together.mean).toBeCloseTo(0.212, 12);
    expect(together.animals).toBe(5);
    expect(together.sd).toBeCloseTo(Math.sqrt(4 * 0.012 ** 2 + 0.048 ** 2), 12);
  });
  test('nineteen of twenty intervals hold the truth', () => {
    const normal = chance(20_261);
    const runs = 4000;
    let mean = 0;
    let centre = 0;
    let next = 0;
    const truth = -1.5;
    const spread = 0.25;
    // The mean of a logistic-normal share, by adding up over the normal density.
    let trueMean = 0;
    let mass = 0;
    for (let u = -8; u <= 8; u += 0.001) {
      const density = Math.exp((-u * u) / 2);
      trueMean += density * shareOfOdds(truth + spread * u);
      mass += density;
    }
    trueMean /= mass;
    for (let run = 0; run < runs; run++) {
      const draw = () => shareOfOdds(truth + spread * normal());
      const seen = of([draw(), draw(), draw(), draw(), draw(), draw()]);
      const m = meanShare(seen, t);
      const e = shareEstimate(seen, t);
      if (m.low! <= trueMean && trueMean <= m.high!) mean++;
      if (e.low! <= shareOfOdds(truth) && shareOfOdds(truth) <= e.high!) centre++;
      const another = draw();
      if (e.nextLow! <= another && another <= e.nextHigh!) next++;
    }
    // Two standard errors of a count of 95 % in 4000 are 0.7 %; the plain mean is of a skew share.
    expect(Math.abs(centre / runs - 0.95)).toBeLessThan(0.01);
    expect(Math.abs(next / runs - 0.95)).toBeLessThan(0.01);
    expect(Math.abs(mean / runs - 0.95)).toBeLessThan(0.015);
  });
  test('animals for a precision: one fewer would not do', () => {
    const enough = (n: number, cv: number, r: number) => (t(0.975, n - 1) * cv) / Math.sqrt(n) <= r;
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        fc.double({ min: 0.01, max: 0.5, noNaN: true }),
        (cv, r) => {
          const n = animalsForPrecision(0.2, 0.2 * cv, r, t)!;
          expect(enough(n, cv, r * (1 + 1e-12))).toBe(true);
          if (n > 2) expect(enough(n - 1, cv, r * (1 - 1e-12))).toBe(false);
        },
      ),
      { numRuns: 60 },
    );
    expect(animalsForPrecision(0, 0.1, 0.05, t)).toBe(null);
    expect(animalsForPrecision(1e-6, 1, 0.001, t)).toBe(null);
    expect(() => animalsForPrecision(0.2, 0.1, 0, t)).toThrow(OutOfRange);
  });
});

describe('outliers, trends, differences', () => {
  test('a slip of the scale is told, whatever the unit; few or equal values are not', () => {
    const legs = [-1.2, -1.1, -1.25, -1.15, -1.18, 0.4];
    expect(outliersOf(legs).map((o) => o.index)).toEqual([5]);
    expect(outliersOf(legs.map((z) => 10 * z + 3)).map((o) => o.index)).toEqual([5]);
    expect(outliersOf(legs.slice(2).slice(0, fewestForOutliers - 1))).toEqual([]);
    expect(outliersOf([1, 1, 1, 1, 1, 1])).toEqual([]);
    expect(outliersOf([1, 1, 1, 1, 1, 1, 1, 1, 1, 9]).map((o) => o.index)).toEqual([9]);
    expect(() => outliersOf([Number.NaN])).toThrow(OutOfRange);
  });
  test('an exact learning curve comes back, rising; noise is not called a trend', () => {
    const curve = [1, 2, 3, 5, 8, 13].map((animal) => ({ animal, z: -1 + 0.05 * Math.log2(animal) }));
    const found = learningTrend(curve, t);
    expect([found.first, found.perDoubling]).toEqual([expect.closeTo(-1, 12), expect.closeTo(0.05, 12)]);
    expect(found.verdict).toBe('rising');
    const noise = [0.1, -0.1, 0.12, -0.09, 0.08].map((z, i) => ({ animal: i + 1, z }));
    expect(learningTrend(noise, t).verdict).toBe('not shown');
    expect(() => learningTrend(noise.slice(0, 2), t)).toThrow(Contradiction);
    expect(() =>
      learningTrend(
        noise.map((n) => ({ ...n, animal: 3 })),
        t,
      ),
    ).toThrow(Contradiction);
  });
  test('two cutters apart are told apart, and turned round by turning round', () => {
    const a = [-1, -1.02, -0.98, -1.01];
    const b = [-1.3, -1.28, -1.34];
    const d = yieldDifference(a, b, t);
    expect(d.verdict).toBe('first more');
    expect(yieldDifference(b, a, t)).toMatchObject({ verdict: 'second more', difference: -d.difference });
    expect(() => yieldDifference([1], b, t)).toThrow(Contradiction);
  });
});
