import { Contradiction, OutOfRange } from '../errors.ts';
import { inverseNormal } from '../numerics/inverse-normal.ts';

/** Chance of a chi-square with so many degrees of freedom above x; handed in by the caller. */
export type ChiSquareUpper = (x: number, freedom: number) => number;

export interface RankTotals {
  readonly assessors: number;
  readonly samples: number;
  readonly sums: readonly number[];
  /** Friedman's statistic as if there were no ties. */
  readonly plain: number;
  /** Σ (t³ − t) over every group of t equal ranks of every assessor. */
  readonly ties: number;
  /** With ties allowed for; null where every assessor put all samples equal. */
  readonly statistic: number | null;
}

/**
 * Values put in ranks, the lowest 1, equal ones sharing the mean of their places [rank].
 *
 * rank = number below + (number equal + 1)/2
 *
 * `values` finite, any number. Checked: ranks of n values add up to n(n + 1)/2.
 * @example ranksOf([7, 5, 7])[0] // → 2.5
 * Source: friedman-1937
 */
export function ranksOf(values: readonly number[]): number[] {
  return values.map((v) => {
    const below = values.filter((w) => w < v).length;
    const equal = values.filter((w) => w === v).length;
    return below + (equal + 1) / 2;
  });
}

function checkRows(rows: readonly (readonly number[])[]): void {
  const width = rows[0]?.length ?? 0;
  if (rows.length < 2) throw new OutOfRange('rows', `${rows.length}`, 'at least 2 assessors');
  if (width < 2) throw new OutOfRange('rows[0]', `${width} samples`, 'at least 2 samples');
  rows.forEach((row, i) => {
    if (row.length !== width)
      throw new Contradiction(`rows[${i}]`, `${row.length} ranks`, `${width}, one a sample`);
    const proper = ranksOf(row);
    if (row.some((r, k) => r !== proper[k]))
      throw new Contradiction(
        `rows[${i}]`,
        `[${row.join(', ')}], which are not ranks`,
        `1 to ${width}; samples put equal share the mean of their places, here [${proper.join(', ')}]`,
      );
  });
}

const tiesOf = (row: readonly number[]): number =>
  [...new Set(row)].reduce((sum, r) => {
    const t = row.filter((q) => q === r).length;
    return sum + t ** 3 - t;
  }, 0);

/**
 * Rank sums and Friedman's statistic, ties allowed for [-].
 *
 * F = 12/(j·p·(p + 1))·ΣR² − 3·j·(p + 1);  F′ = F/(1 − E/(j·p·(p² − 1))), E = Σ(t³ − t)
 *
 * `rows`: at least 2 assessors j, each with the ranks of at least 2 samples p. Every assessor ranks every sample once.
 * Checked: two worked cases, one with ties, in the examples.
 * @example friedman([[1.5,1.5,3],[1,2,3],[1,2.5,2.5],[2,1,3],[1,2,3],[1,3,2]]).statistic // → 7.363636
 * Source: friedman-1937
 */
export function friedman(rows: readonly (readonly number[])[]): RankTotals {
  checkRows(rows);
  const [j, p] = [rows.length, rows[0]!.length];
  const sums = Array.from({ length: p }, (_, k) => rows.reduce((sum, row) => sum + row[k]!, 0));
  const plain = (12 / (j * p * (p + 1))) * sums.reduce((s, r) => s + r * r, 0) - 3 * j * (p + 1);
  const ties = rows.reduce((sum, row) => sum + tiesOf(row), 0);
  const left = 1 - ties / (j * p * (p * p - 1));
  return { assessors: j, samples: p, sums, plain, ties, statistic: left <= 1e-12 ? null : plain / left };
}

/** Every different order of some numbers. */
function orders(values: readonly number[]): number[][] {
  if (values.length <= 1) return [[...values]];
  return [...new Set(values)].flatMap((first) => {
    const rest = [...values];
    rest.splice(rest.indexOf(first), 1);
    return orders(rest).map((order) => [first, ...order]);
  });
}

/** Additions after which the exact distribution is given up for the approximation. */
const mostWork = 1_500_000;
const mostSamples = 6;

/**
 * Chance of every sum of squared rank sums (of doubled ranks) if every order were equally likely; null where the table is too large.
 * All orders of a row being alike likely, only the sorted sums matter.
 */
function squaredSums(rows: readonly (readonly number[])[]): Map<number, number> | null {
  const p = rows[0]!.length;
  if (p > mostSamples) return null;
  const base = 2 * rows.length * p + 1;
  const key = (sums: readonly number[]) => sums.reduce((k, s) => k * base + s, 0);
  if (base ** p > Number.MAX_SAFE_INTEGER) return null;
  const choices = new Map<string, number[][]>();
  let states = new Map<number, { sums: number[]; chance: number }>([
    [0, { sums: Array<number>(p).fill(0), chance: 1 }],
  ]);
  let work = 0;
  for (const row of rows) {
    const doubled = row.map((r) => 2 * r).sort((a, b) => a - b);
    const name = doubled.join();
    const all = choices.get(name) ?? orders(doubled);
    choices.set(name, all);
    work += states.size * all.length;
    if (work > mostWork) return null;
    const next: typeof states = new Map();
    for (const { sums, chance } of states.values())
      for (const order of all) {
        const reached = sums.map((s, k) => s + order[k]!).sort((a, b) => a - b);
        const at = key(reached);
        const known = next.get(at);
        if (known === undefined) next.set(at, { sums: reached, chance: chance / all.length });
        else known.chance += chance / all.length;
      }
    states = next;
  }
  const squares = new Map<number, number>();
  for (const { sums, chance } of states.values()) {
    const square = sums.reduce((s, r) => s + r * r, 0);
    squares.set(square, (squares.get(square) ?? 0) + chance);
  }
  return squares;
}

/**
 * Chance of rank sums as far apart as these if the samples did not differ, exactly, ties as they fell [-]; null where the table is too
 * large for it (more than 6 samples, or too many assessors).
 *
 * P(ΣR² ≥ observed) over all orders of every assessor, each equally likely
 *
 * `rows` as for `friedman`. Checked: critical values of 24 sizes of table; all orders of small tables counted one by one.
 * @example exactFriedman([[1,2,3],[1,2,3],[1,2,3]]) // → 0.02778
 * Source: friedman-1937
 */
export function exactFriedman(rows: readonly (readonly number[])[]): number | null {
  const { sums } = friedman(rows);
  const observed = sums.reduce((s, r) => s + (2 * r) ** 2, 0);
  const squares = squaredSums(rows);
  if (squares === null) return null;
  let chance = 0;
  for (const [square, c] of squares) if (square >= observed - 1e-6) chance += c;
  return Math.min(1, chance);
}

/**
 * Smallest value of Friedman's statistic that can come up and comes by chance no more often than alpha, without ties [-]; null where
 * none does.
 *
 * min F with P(F' ≥ F) ≤ α
 *
 * `assessors` at least 2; `samples` 2 to 6; `alpha` over 0 to under 1. Checked: the table in the examples.
 * @example friedmanCritical(6, 3, 0.05) // → 7
 * Source: friedman-1937
 */
export function friedmanCritical(assessors: number, samples: number, alpha: number): number | null {
  const row = Array.from({ length: samples }, (_, k) => k + 1);
  const squares = squaredSums(Array.from({ length: assessors }, () => row));
  if (squares === null)
    throw new OutOfRange('assessors', `${assessors} of ${samples} samples`, 'a table small enough to count');
  let [chance, least]: [number, number | null] = [0, null];
  for (const [square, c] of [...squares].sort(([a], [b]) => b - a)) {
    chance += c;
    if (chance > alpha + 1e-12) break;
    least = square;
  }
  if (least === null) return null;
  return (12 / (assessors * samples * (samples + 1))) * (least / 4) - 3 * assessors * (samples + 1);
}

/**
 * Least difference of two rank sums that counts at alpha, once the ranking as a whole differs [ranks].
 *
 * LSD = z(α/2)·√(j·p·(p + 1)/6)
 *
 * `assessors` 2 up, `samples` 2 up, `alpha` over 0 to under 1. Each pair is held to alpha by itself: with many pairs some differ by
 * chance. Checked: 8 assessors, 4 samples: 10.121.
 * @example rankDifference(8, 4, 0.05) // → 10.121
 * Source: iso-8587-2006
 */
export function rankDifference(assessors: number, samples: number, alpha: number): number {
  return inverseNormal(1 - alpha / 2) * Math.sqrt((assessors * samples * (samples + 1)) / 6);
}

export interface PageResult {
  readonly L: number;
  readonly p: number;
}

/**
 * Page's L for an order that was expected before the tasting, and its exact one-sided chance [-]; null above 7 samples.
 *
 * L = Σ i·Rᵢ, samples in the expected order (lowest rank first); P(L′ ≥ L) by convolution over the assessors
 *
 * `rows` as for `friedman`, columns in the expected order. Checked: all orders of small tables counted one by one.
 * @example pageTrend([[1,2,3],[1,2,3]]).p // → 0.02778
 * Source: page-1963
 */
export function pageTrend(rows: readonly (readonly number[])[]): PageResult | null {
  checkRows(rows);
  const p = rows[0]!.length;
  if (p > 7) return null;
  const weigh = (row: readonly number[]) => row.reduce((s, r, k) => s + (k + 1) * 2 * r, 0);
  const observed = rows.reduce((s, row) => s + weigh(row), 0);
  const known = new Map<string, Map<number, number>>();
  let chances = new Map<number, number>([[0, 1]]);
  for (const row of rows) {
    const sorted = [...row].sort((a, b) => a - b);
    const name = sorted.join();
    let one = known.get(name);
    if (one === undefined) {
      const all = orders(sorted);
      one = new Map();
      for (const order of all) one.set(weigh(order), (one.get(weigh(order)) ?? 0) + 1 / all.length);
      known.set(name, one);
    }
    const next = new Map<number, number>();
    for (const [a, ca] of chances)
      for (const [b, cb] of one) next.set(a + b, (next.get(a + b) ?? 0) + ca * cb);
    chances = next;
  }
  let chance = 0;
  for (const [L, c] of chances) if (L >= observed - 1e-6) chance += c;
  return { L: observed / 2, p: Math.min(1, chance) };
}
