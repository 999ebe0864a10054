import { OutOfRange } from '../errors.ts';
import { bracketedRoot } from '../numerics/roots.ts';

/** More tasters than this no tasting has. */
export const mostAssessors = 5000;

const logFactorials: number[] = [0];
function logFactorial(n: number): number {
  for (let i = logFactorials.length; i <= n; i++)
    logFactorials.push((logFactorials[i - 1] as number) + Math.log(i));
  return logFactorials[n] as number;
}

/**
 * Refuses counts that no tasting has [-].
 *
 * `assessors` whole, 1 to 5000; `correct` whole, 0 to all.
 * Source: own-assumption
 */
export function checkCounts(assessors: number, correct: number): void {
  if (!Number.isInteger(assessors) || assessors < 1 || assessors > mostAssessors)
    throw new OutOfRange('assessors', String(assessors), `a whole number from 1 to ${mostAssessors}`);
  if (!Number.isInteger(correct) || correct < 0 || correct > assessors)
    throw new OutOfRange('correct', String(correct), `a whole number from 0 to ${assessors}, the assessors`);
}

/**
 * Chance of at least so many right answers [-].
 *
 * P(X ≥ k) = Σ C(n, i)·pⁱ·(1 − p)ⁿ⁻ⁱ, i = k … n
 *
 * `n` answers 0 to 5000; `k` right ones; `p` chance of one right answer 0 to 1. Each answer stands alone: one assessor, one answer.
 * Checked: the terms of a statistics library added up, to 1e-9; two sides of one tail add to 1.
 * @example binomialUpper(12, 8, 1 / 3) // → 0.018758
 * Source: own-computation
 */
export function binomialUpper(n: number, k: number, p: number): number {
  if (k <= 0) return 1;
  if (k > n || p <= 0) return 0;
  if (p >= 1) return 1;
  const [right, wrong] = [Math.log(p), Math.log1p(-p)];
  const top = logFactorial(n);
  let sum = 0;
  for (let i = k; i <= n; i++) {
    const term = Math.exp(top - logFactorial(i) - logFactorial(n - i) + i * right + (n - i) * wrong);
    sum += term;
    // Past the most likely number the terms only fall.
    if (i > n * p + 1 && term < 1e-18 * sum) break;
  }
  return Math.min(1, sum);
}

/**
 * Exact two-sided limits of a share of right answers [-].
 *
 * low: P(X ≥ x | p) = (1 − c)/2;  high: P(X ≤ x | p) = (1 − c)/2
 *
 * `n` 1 to 5000; `x` 0 to n; `confidence` 0 to 1. Limits never too narrow, and for few tasters wider than need be.
 * Checked: the quantiles of the beta distribution of SciPy to 1e-11; of another library to 1e-7, which is as near as that one is.
 * @example exactShare(24, 13, 0.95).low // → 0.3282
 * Source: clopper-pearson-1934
 */
export function exactShare(n: number, x: number, confidence: number): { low: number; high: number } {
  checkCounts(n, x);
  const tail = (1 - confidence) / 2;
  const low = x === 0 ? 0 : bracketedRoot((p) => binomialUpper(n, x, p) - tail, 0, 1, 1e-13).x;
  const high = x === n ? 1 : bracketedRoot((p) => binomialUpper(n, x + 1, p) - (1 - tail), 0, 1, 1e-13).x;
  return { low, high };
}
