/** Money shared out in whole pennies: nothing is left over and nothing is made up. */
import { Contradiction, OutOfRange } from '../errors.ts';

/**
 * A whole amount shared out by weights in whole units, so that the parts sum to it exactly [minor units].
 * Equation: q_i = A w_i / Σ w; each gets ⌊q_i⌋, what is left goes one by one to the largest remainders, ties to the earlier.
 * @param amount whole minor units of money, also below zero
 * @param weights whole numbers ≥ 0; at least one above zero where there is something to share
 * @param path where the amount stands, for the error
 * Assumes nothing; computed in whole numbers of any length, so no rounding comes in.
 * Checked: sums exactly, each within one unit of its quota, never more for a smaller weight (10,000 random cases); a case
 * by hand.
 * @example shareOut(100, [1n, 1n, 1n])[0] // → 34
 * Source: own-computation (largest remainder)
 */
export function shareOut(amount: number, weights: readonly bigint[], path = 'amount'): number[] {
  if (!Number.isSafeInteger(amount)) throw new OutOfRange(path, `${amount}`, 'a whole number of minor units');
  const below = weights.findIndex((w) => w < 0n);
  if (below >= 0) throw new OutOfRange(`${path} › weight ${below}`, `${weights[below]}`, '0 or more');
  const sum = weights.reduce((total, w) => total + w, 0n);
  if (sum === 0n) {
    if (amount === 0) return weights.map(() => 0);
    throw new Contradiction(
      path,
      `${amount} to share out and nothing to carry it`,
      'a part that carries cost',
    );
  }
  const size = BigInt(Math.abs(amount));
  const quotas = weights.map((w, index) => ({ index, whole: (size * w) / sum, rest: (size * w) % sum }));
  const left = Number(size - quotas.reduce((total, q) => total + q.whole, 0n));
  const shares = quotas.map((q) => Number(q.whole));
  [...quotas]
    .sort((a, b) => (a.rest === b.rest ? a.index - b.index : a.rest > b.rest ? -1 : 1))
    .slice(0, left)
    .forEach(({ index }) => {
      shares[index] = shares[index]! + 1;
    });
  // `0 −` and not a sign, so that nothing is not shown as minus nothing.
  return amount < 0 ? shares.map((share) => 0 - share) : shares;
}
