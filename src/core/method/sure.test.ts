import { describe, expect, test } from 'vitest';
import { randomFrom } from '../numerics/random.ts';
import { sobol } from '../numerics/sobol.ts';
import { quantileOf, type SureOrder, sureTime, upperShare, type Varying, worstOf } from './sure.ts';
import { answerAt, leftOut, sharesOf, standardOf, surfaceOf } from './sure-surface.ts';

/** A lumped plate: t = (ρ c D / 4 h) · ln((T_m − T_0)/(T_m − 70)), D, T_0 of the piece, h, T_m of the batch. Exact, and cheap. */
const inputs: readonly Varying[] = [
  { kind: 'normal', shared: false },
  { kind: 'uniform', shared: false },
  { kind: 'uniform', shared: true },
  { kind: 'normal', shared: true },
];
const exact = (x: ArrayLike<number>): number => {
  const D = 0.05 + 0.003 * (x[0] ?? 0);
  const T0 = 5 + 3 * (x[1] ?? 0);
  const h = 800 + 300 * (x[2] ?? 0);
  const Tm = 98 + 1.5 * (x[3] ?? 0);
  return ((1050 * 3500 * D) / (4 * h)) * Math.log((Tm - T0) / (Tm - 70));
};
const points = sobol(512, 4, 1).map((u) =>
  Float64Array.from(inputs, (v, i) => standardOf(v.kind, u[i] ?? 0)),
);
const order = (over: Partial<SureOrder> = {}): SureOrder => ({
  inputs,
  points,
  lnTimes: points.map((x) => Math.log(exact(x))),
  pieces: 24,
  confidence: 0.95,
  seed: 1,
  ...over,
});

/** Plain drawing, batch by batch, by another generator and another way to normal numbers. */
function drawnWorst(pieces: number, batches: number): number[] {
  const random = randomFrom(4711);
  const normal = () => {
    for (;;) {
      const z = Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
      if (Math.abs(z) <= 4) return z;
    }
  };
  return Array.from({ length: batches }, () => {
    const h = 2 * random() - 1;
    const Tm = normal();
    let worst = 0;
    for (let p = 0; p < pieces; p++) worst = Math.max(worst, exact([normal(), 2 * random() - 1, h, Tm]));
    return worst;
  }).sort((a, b) => a - b);
}

describe('sureTime', () => {
  test.each([
    [1, 0.9],
    [1, 0.99],
    [24, 0.95],
    [24, 0.99],
  ])('worst of %d at %d agrees with 100 000 plain draws', (pieces, confidence) => {
    const estimate = sureTime(order({ pieces, confidence }));
    const brute = quantileOf(drawnWorst(pieces, 100_000), confidence);
    const off = Math.abs(Math.exp(estimate.lnTime) / brute - 1);
    expect(off).toBeLessThan(3 * estimate.error + 0.002);
    expect(estimate.error).toBeLessThan(0.01);
  });

  test('what every piece by itself would need is never less than what the batch does', () => {
    const estimate = sureTime(order());
    expect(estimate.lnIndependent).toBeGreaterThan(estimate.lnTime - 2 * estimate.error);
  });

  test('more pieces and more confidence are never less', () => {
    let before = 0;
    for (const pieces of [1, 2, 5, 24, 100]) {
      const now = sureTime(order({ pieces })).lnTime;
      expect(now).toBeGreaterThan(before);
      before = now;
    }
    before = 0;
    for (const confidence of [0.5, 0.8, 0.95, 0.99, 0.999]) {
      const now = sureTime(order({ confidence })).lnTime;
      expect(now).toBeGreaterThan(before);
      before = now;
    }
  });

  test('pieces that differ in nothing are as one', () => {
    const same = inputs.map((v) => ({ ...v, shared: true }));
    const one = sureTime(order({ inputs: same, pieces: 1 }));
    const fifty = sureTime(order({ inputs: same, pieces: 50 }));
    expect(Math.abs(one.lnTime - fifty.lnTime)).toBeLessThan(3 * Math.hypot(one.error, fifty.error) + 1e-9);
  });

  test('a piece that no time makes pass takes the confidence away', () => {
    const lnTimes = order().lnTimes.map((y, i) => (i % 16 === 3 ? Number.POSITIVE_INFINITY : y));
    const estimate = sureTime(order({ lnTimes, pieces: 24 }));
    expect(estimate.never).toBeCloseTo(1 / 16, 9);
    expect(estimate.lnTime).toBe(Number.POSITIVE_INFINITY);
    const single = sureTime(order({ lnTimes, pieces: 1, confidence: 0.8 }));
    expect(single.lnTime).toBeGreaterThan(sureTime(order({ pieces: 1, confidence: 0.8 })).lnTime);
    expect(Number.isFinite(single.lnTime)).toBe(true);
  });

  test('the same question has the same answer', () => {
    expect(sureTime(order())).toEqual(sureTime(order()));
    expect(sureTime(order({ seed: 2 })).lnTime).not.toBe(sureTime(order()).lnTime);
  });
});

describe('worstOf', () => {
  test('the greatest of n uniform numbers has the distribution x^n', () => {
    const surface = {
      kinds: ['uniform'] as const,
      terms: [[[0, 1]] as const],
      mean: 0,
      coefficients: [1 / Math.sqrt(3)],
    };
    const drawn = worstOf({
      surface,
      inputs: [{ kind: 'uniform', shared: false }],
      pieces: 10,
      batches: 20_000,
      seed: 3,
    });
    const sorted = drawn.map((w) => (w.y + 1) / 2).sort((a, b) => a - b);
    for (const p of [0.1, 0.5, 0.9, 0.99]) expect(quantileOf(sorted, p)).toBeCloseTo(p ** 0.1, 2);
  });

  test('batch by batch, more pieces are never better', () => {
    const { surface } = sureTime(order());
    const few = worstOf({ surface, inputs, pieces: 5, batches: 300, seed: 9 });
    const many = worstOf({ surface, inputs, pieces: 20, batches: 300, seed: 9 });
    few.forEach((w, i) => {
      expect(many[i]?.y).toBeGreaterThanOrEqual(w.y);
    });
  });
});

describe('surfaceOf', () => {
  test('gives back a polynomial of its own kind, and says that it misses nothing', () => {
    const truth = surfaceOf(['normal', 'uniform'], [[0, 0]], [1]);
    const own = {
      ...truth,
      terms: [
        [[0, 1]],
        [[0, 2]],
        [
          [0, 1],
          [1, 1],
        ],
        [[1, 3]],
      ] as const,
      mean: 2,
      coefficients: [1, 0.3, -0.2, 0.1],
    };
    const xs = sobol(128, 2, 4).map((u) => [
      standardOf('normal', u[0] ?? 0),
      standardOf('uniform', u[1] ?? 0),
    ]);
    const y = xs.map((x) => answerAt(own, x));
    const fitted = surfaceOf(['normal', 'uniform'], xs, y);
    for (const x of [
      [1, 0.2],
      [-2, -0.9],
    ])
      expect(answerAt(fitted, x)).toBeCloseTo(answerAt(own, x), 9);
    expect(leftOut(['normal', 'uniform'], xs, y).error).toBeLessThan(1e-9);
  });

  test('noise is told as what it is', () => {
    const random = randomFrom(8);
    const xs = sobol(256, 2, 4).map((u) => [2 * (u[0] ?? 0) - 1, 2 * (u[1] ?? 0) - 1]);
    const y = xs.map((x) => (x[0] ?? 0) + (random() - 0.5) * 0.2);
    expect(leftOut(['uniform', 'uniform'], xs, y).error).toBeGreaterThan(0.9 * (0.2 / Math.sqrt(12)));
  });

  test('shares of a product of two: known in closed form', () => {
    // y = a + b + 2ab on [−1, 1]²: variances 1/3, 1/3, 4/9; total of each (1/3 + 4/9) / (10/9) = 0.7.
    const xs = sobol(128, 2, 4).map((u) => [2 * (u[0] ?? 0) - 1, 2 * (u[1] ?? 0) - 1]);
    const shares = sharesOf(
      surfaceOf(
        ['uniform', 'uniform'],
        xs,
        xs.map(([a = 0, b = 0]) => a + b + 2 * a * b),
      ),
    );
    for (const s of shares) {
      expect(s.first).toBeCloseTo(0.3, 9);
      expect(s.total).toBeCloseTo(0.7, 9);
    }
  });
});

test('upperShare: nothing seen is nothing; a few seen may be more', () => {
  expect(upperShare(0, 100)).toBe(0);
  expect(upperShare(5, 100)).toBeGreaterThan(0.08);
  expect(upperShare(5, 100)).toBeLessThan(0.12);
});
