import { dbinom, qbeta, qnorm } from 'lib-r-math.js';
import { describe, expect, test } from 'vitest';
import { exactShare } from '../core/tasting/binomial.ts';
import { chanceOfAnswers } from '../core/tasting/discrimination.ts';
import { dPrimeOf } from '../core/tasting/thurstone.ts';
import { InputProblems } from './problem.ts';
import { type CountedAnswer, type DesignAnswer, type RankedAnswer, runTaste } from './taste.ts';

const refusal = (input: unknown): string => {
  try {
    runTaste(input);
  } catch (error) {
    if (error instanceof InputProblems) return error.message;
    throw error;
  }
  return 'not refused';
};
const rows = ['1234', '2134', '1324', '1243', '2134', '1234', '1243', '3124'].map((r) => [...r].map(Number));

describe('runTaste', () => {
  test('agrees with a statistics library to 1e-9', () => {
    for (const n of [3, 12, 60, 400])
      for (const x of [1, Math.ceil(n / 2), n - 1]) {
        // Its single terms added up: its cumulative binomial is itself out by up to 8e-5 for 400 answers (against SciPy).
        let sum = 0;
        for (let i = n; i >= x; i--) sum += dbinom(i, n, 1 / 3);
        expect(Math.abs(chanceOfAnswers('triangle', n, x) - sum)).toBeLessThan(1e-9);
        // The library's own quantile of beta is out by up to 3e-8; SciPy's stand below.
        const { low, high } = exactShare(n, x, 0.95);
        expect(Math.abs(low - qbeta(0.025, x, n - x + 1))).toBeLessThan(1e-7);
        expect(Math.abs(high - qbeta(0.975, x + 1, n - x))).toBeLessThan(1e-7);
      }
    const scipy: [number, number, number][] = [
      [3, 1, 0.9057006759497539],
      [3, 2, 0.9915962413403874],
      [12, 1, 0.38479616515094406],
      [12, 6, 0.7890553617607033],
      [400, 399, 0.9999367074830952],
    ];
    for (const [n, x, high] of scipy) expect(exactShare(n, x, 0.95).high).toBeCloseTo(high, 11);
    for (const pc of [0.55, 0.8, 0.95])
      expect(Math.abs(dPrimeOf('paired', pc)! - Math.SQRT2 * qnorm(pc))).toBeLessThan(1e-8);
  });
  test('a difference found: p, fewest right, distance, and what may not be said of it', () => {
    const answer = runTaste({ test: 'triangle', assessors: 24, correct: 13 }) as CountedAnswer;
    expect(answer).toMatchObject({ significantAt05: true, minimumCorrect: 13, sided: 1 });
    expect(answer.p).toBeCloseTo(0.028441, 6);
    expect(answer.dPrimeLow95).toBeLessThan(answer.dPrime!);
    expect(answer.dPrimeHigh95).toBeGreaterThan(answer.dPrime!);
    expect(answer.concluded.join()).toMatch(/A difference was found/);
    expect(answer.notConcluded.join()).toMatch(/Not that guests would notice/);
    expect(answer.cautions.join()).toMatch(/allergens/);
  });
  test('none found is not said to be none: the share this panel misses half the time stands beside it', () => {
    const answer = runTaste({ test: 'triangle', assessors: 12, correct: 5 }) as CountedAnswer;
    expect(answer.significantAt05).toBe(false);
    expect(answer.notConcluded[0]).toMatch(
      /not the same as no difference: with 12 tasters one that 43 % .* half the time/,
    );
    const two = runTaste({ test: 'paired', assessors: 5, correct: 5 }) as CountedAnswer;
    expect(two).toMatchObject({ minimumCorrect: null, significantAt05: false });
    expect(two.notConcluded[0]).toMatch(/no answer whatever/);
  });
  test('a paired test is of two sides unless said, and then it does not matter which of the two was counted', () => {
    const [a, b] = [10, 2].map(
      (correct) => runTaste({ test: 'paired', assessors: 12, correct }) as CountedAnswer,
    );
    expect(a?.p).toBeCloseTo(0.038574, 6);
    expect(b?.p).toBe(a?.p);
    expect(
      (runTaste({ test: 'paired', assessors: 12, correct: 2, sided: 1 }) as CountedAnswer).p,
    ).toBeGreaterThan(0.99);
  });
  test('a panel for a wanted power: first, steady, and a whole number of orders', () => {
    const answer = runTaste({
      test: 'triangle',
      design: { alpha: 0.05, beta: 0.05, pd: 0.3 },
    }) as DesignAnswer;
    expect(answer).toMatchObject({ assessors: 66, assessorsSteady: 73, assessorsBalanced: 78 });
    expect(answer.power).toBeGreaterThanOrEqual(0.95);
  });
  test('ranking: exact where it can be counted, chi-square beside it, pairs only where the whole differs', () => {
    const answer = runTaste({
      test: 'ranking',
      samples: ['A', 'B', 'C', 'D'],
      rows,
      expected: ['A', 'B', 'C', 'D'],
    }) as RankedAnswer;
    expect(answer.statistic).toBeCloseTo(16.2, 10);
    expect(answer.pChiSquare).toBeCloseTo(0.0010317868098302, 11);
    expect(answer.exact).toBe(true);
    expect(answer.trend?.p).toBeLessThan(0.001);
    expect(answer.pairs.filter((q) => q.differs05).map((q) => q.between.join(''))).toEqual([
      'AC',
      'AD',
      'BD',
    ]);
    const alike = runTaste({
      test: 'ranking',
      samples: ['A', 'B'],
      rows: [
        [1.5, 1.5],
        [1.5, 1.5],
      ],
    }) as RankedAnswer;
    expect(alike).toMatchObject({ statistic: null, p: 1, significantAt05: false });
  });
  test('what cannot be is refused where it stands', () => {
    expect(refusal({ test: 'triangle', assessors: 12, correct: 13 })).toMatch(
      /^correct: found 13, allowed at most 12/,
    );
    expect(refusal({ test: 'triangle', assessors: 12, correct: 3, sided: 2 })).toMatch(/^sided/);
    expect(refusal({ test: 'triangle', assessors: 12, correct: 3, panel: 1 })).toMatch(
      /^panel: found an unknown key/,
    );
    expect(
      refusal({
        test: 'ranking',
        samples: ['A', 'B'],
        rows: [
          [1, 2],
          [1, 1],
        ],
      }),
    ).toMatch(/^rows\[1\]/);
    expect(
      refusal({
        test: 'ranking',
        samples: ['A', 'B', 'C'],
        rows: [
          [1, 2],
          [1, 2],
        ],
      }),
    ).toMatch(/^rows\[0\]/);
    expect(
      refusal({
        test: 'ranking',
        samples: ['A', 'A'],
        rows: [
          [1, 2],
          [1, 2],
        ],
      }),
    ).toMatch(/^samples\[1\]/);
  });
});
