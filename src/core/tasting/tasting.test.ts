import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { binomialUpper, exactShare } from './binomial.ts';
import { assessorsFor, chanceOfAnswers, minimumCorrect, powerOf, shareFound } from './discrimination.ts';
import { exactFriedman, friedman, pageTrend, ranksOf } from './ranking.ts';
import { distanceShown, dPrimeOf, shareCorrect } from './thurstone.ts';

const kinds = fc.constantFrom('triangle' as const, 'duo-trio' as const, 'paired' as const);
const counts = fc
  .integer({ min: 1, max: 150 })
  .chain((n) => fc.tuple(fc.constant(n), fc.integer({ min: 0, max: n })));

describe('answers counted', () => {
  test('binomialUpper: both sides of a count add to 1', () => {
    fc.assert(
      fc.property(counts, fc.double({ min: 0.01, max: 0.99, noNaN: true }), ([n, k], p) => {
        expect(binomialUpper(n, k, p) + binomialUpper(n, n - k + 1, 1 - p)).toBeCloseTo(1, 11);
      }),
    );
  });
  test('chanceOfAnswers falls with every further right answer; two sides see both ends alike', () => {
    fc.assert(
      fc.property(kinds, counts, (kind, [n, x]) => {
        if (x < n) expect(chanceOfAnswers(kind, n, x + 1)).toBeLessThan(chanceOfAnswers(kind, n, x) + 1e-15);
        expect(chanceOfAnswers('paired', n, x, 2)).toBe(chanceOfAnswers('paired', n, n - x, 2));
      }),
    );
  });
  test('minimumCorrect is enough and one fewer is not; none where all right are not enough', () => {
    fc.assert(
      fc.property(kinds, counts, fc.constantFrom(0.2, 0.05, 0.01, 0.001), (kind, [n], alpha) => {
        const x = minimumCorrect(kind, n, alpha);
        if (x === null) expect(chanceOfAnswers(kind, n, n)).toBeGreaterThan(alpha);
        else {
          expect(chanceOfAnswers(kind, n, x)).toBeLessThanOrEqual(alpha);
          expect(chanceOfAnswers(kind, n, x - 1)).toBeGreaterThan(alpha);
        }
      }),
    );
    expect(minimumCorrect('triangle', 3, 0.01)).toBeNull();
    expect(minimumCorrect('triangle', 4, 0.01)).toBeNull();
  });
  test('powerOf grows with the share of tellers, is alpha at most without any, and is saw-toothed in the tasters', () => {
    fc.assert(
      fc.property(kinds, counts, fc.double({ min: 0, max: 0.9, noNaN: true }), (kind, [n], pd) => {
        expect(powerOf(kind, n, pd + 0.1, 0.05)).toBeGreaterThanOrEqual(powerOf(kind, n, pd, 0.05) - 1e-12);
        expect(powerOf(kind, n, 0, 0.05)).toBeLessThanOrEqual(0.05 + 1e-12);
      }),
    );
    expect(powerOf('triangle', 67, 0.3, 0.05)).toBeLessThan(0.95);
    expect(assessorsFor('triangle', { alpha: 0.05, beta: 0.05, pd: 0.3 })).toEqual({ first: 66, steady: 73 });
  });
  test('shareFound is found as often as asked, and is null where nothing could be', () => {
    const pd = shareFound('duo-trio', 20, 0.05, 0.8)!;
    expect(powerOf('duo-trio', 20, pd, 0.05)).toBeCloseTo(0.8, 9);
    expect(shareFound('paired', 4, 0.05, 0.5, 2)).toBeNull();
  });
  test('exactShare holds the share, and its ends leave a tail each', () => {
    fc.assert(
      fc.property(counts, ([n, x]) => {
        const { low, high } = exactShare(n, x, 0.95);
        expect(low).toBeLessThanOrEqual(x / n);
        expect(high).toBeGreaterThanOrEqual(x / n);
        if (x > 0) expect(binomialUpper(n, x, low)).toBeCloseTo(0.025, 9);
        if (x < n) expect(1 - binomialUpper(n, x + 1, high)).toBeCloseTo(0.025, 9);
      }),
    );
  });
  test('dPrimeOf undoes shareCorrect; chance and below give 0, all right gives none', () => {
    fc.assert(
      fc.property(kinds, fc.double({ min: 0.05, max: 5, noNaN: true }), (kind, d) => {
        expect(dPrimeOf(kind, shareCorrect(kind, d))).toBeCloseTo(d, 6);
      }),
      { numRuns: 30 },
    );
    expect(dPrimeOf('triangle', 0.2)).toBe(0);
    expect(distanceShown('triangle', 10, 10)).toMatchObject({ dPrime: null, high: null });
  });
  test('counts that cannot be are refused by name', () => {
    expect(() => chanceOfAnswers('triangle', 12, 13)).toThrow(/correct: found 13/);
    expect(() => chanceOfAnswers('triangle', 1.5, 1)).toThrow(/assessors/);
    expect(() => chanceOfAnswers('triangle', 12, 3, 2)).toThrow(/sides/);
  });
});

/** Every way to reorder every row, one by one. */
function everyTable(rows: readonly number[][]): number[][][] {
  const reorder = (row: number[]): number[][] =>
    row.length <= 1
      ? [row]
      : row.flatMap((r, i) => reorder(row.filter((_, k) => k !== i)).map((rest) => [r, ...rest]));
  return rows.reduce<number[][][]>(
    (tables, row) => tables.flatMap((table) => reorder(row).map((order) => [...table, order])),
    [[]],
  );
}
const rankRows = fc
  .integer({ min: 2, max: 3 })
  .chain((p) =>
    fc.array(fc.array(fc.integer({ min: 0, max: 3 }), { minLength: p, maxLength: p }), {
      minLength: 2,
      maxLength: 3,
    }),
  )
  .map((rows) => rows.map(ranksOf));

describe('samples ranked', () => {
  const spread = (rows: readonly number[][]) => friedman(rows).sums.reduce((s, r) => s + r * r, 0);
  const weighed = (rows: readonly number[][]) => friedman(rows).sums.reduce((s, r, i) => s + (i + 1) * r, 0);
  test('exactFriedman and pageTrend are what counting every order one by one gives, with ties too', () => {
    fc.assert(
      fc.property(rankRows, (rows) => {
        const all = everyTable(rows);
        const as = (f: (rows: readonly number[][]) => number) =>
          all.filter((table) => f(table) >= f(rows) - 1e-9).length / all.length;
        expect(exactFriedman(rows)).toBeCloseTo(as(spread), 10);
        expect(pageTrend(rows)?.p).toBeCloseTo(as(weighed), 10);
      }),
      { numRuns: 40 },
    );
  });
  test('friedman does not ask which sample stands where; all put equal has no statistic', () => {
    fc.assert(
      fc.property(rankRows, (rows) => {
        const turned = rows.map((row) => [...row].reverse());
        const [a, b] = [friedman(rows).statistic, friedman(turned).statistic];
        if (a === null) expect(b).toBeNull();
        else expect(b).toBeCloseTo(a, 10);
      }),
    );
    expect(
      friedman([
        [1.5, 1.5],
        [1.5, 1.5],
      ]).statistic,
    ).toBeNull();
  });
  test('rows that are not ranks are refused by place', () => {
    expect(() =>
      friedman([
        [1, 2, 3],
        [1, 1, 3],
      ]),
    ).toThrow(/rows\[1\].*1\.5, 1\.5, 3/);
    expect(() =>
      friedman([
        [1, 2, 3],
        [1, 2],
      ]),
    ).toThrow(/rows\[1\]/);
  });
  test('a table too large to count says so instead of taking for ever', () => {
    const row = [1, 2, 3, 4, 5, 6, 7];
    expect(exactFriedman([row, row])).toBeNull();
  });
});
