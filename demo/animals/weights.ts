/** Invented weights: the shares of a tree with a spread that looks like hands and animals, the same at every laying. */
import type { Animal } from './trees.ts';

/** A number that is as good as random and always the same, mean 0, most within ±2. */
export function wobble(seed: number): number {
  let sum = 0;
  for (let i = 0; i < 4; i++) {
    let x = Math.imul(seed * 4 + i + 1, 0x9e3779b1) >>> 0;
    x = Math.imul(x ^ (x >>> 16), 0x85ebca6b) >>> 0;
    x = Math.imul(x ^ (x >>> 13), 0xc2b2ae35) >>> 0;
    sum += ((x ^ (x >>> 16)) >>> 0) / 2 ** 32;
  }
  return (sum - 2) * Math.sqrt(3);
}

/** What a hand makes of a part, against the tree's share: 1 is the share itself. */
export type Hand = (part: string) => number;

/** One animal, cut: every leaf that is weighed, in whole grams, never more than the animal. */
export function cutUp(
  animal: Animal,
  grams: number,
  seed: number,
  hand: Hand = () => 1,
): { readonly name: string; readonly grams: number }[] {
  const leaves = animal.cuts.filter(([, , becomes]) => becomes !== 'step' && becomes !== 'drip');
  const raw = leaves.map(([name, pct], i) => {
    // Small things vary more, in per cent of themselves.
    const spread = pct < 1 ? 0.09 : pct < 5 ? 0.06 : 0.025;
    return { name, pct: pct * hand(name) * Math.exp(spread * wobble(seed * 31 + i)) };
  });
  const sum = raw.reduce((total, r) => total + r.pct, 0);
  const out = 99.3 + 0.2 * Math.max(-2, Math.min(2, wobble(seed * 31 + 29)));
  return raw.map(({ name, pct }) => ({ name, grams: Math.floor((grams * pct * out) / sum / 100) }));
}

/** Whole weights of so many animals round a mean [g]. */
export const animalsOf = (count: number, mean: number, spread: number, seed: number): number[] =>
  Array.from({ length: count }, (_, i) => Math.round((mean + spread * wobble(seed * 101 + i)) / 5) * 5);

/** Learns: begins below the other hand and gets better with every doubling of what it has cut. */
export const learner =
  (k: number): Hand =>
  (part) =>
    part === 'neck skin' ? 0.7 + 0.085 * Math.log2(k) : part === 'breast' ? 0.95 + 0.01 * Math.log2(k) : 1;

export const steady: Hand = (part) => (part === 'neck skin' ? 1.07 : 1);
