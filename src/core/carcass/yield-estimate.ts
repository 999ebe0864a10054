/**
 * What a part yields, from animals weighed: how much on average, how sure that is, and what the next animal may give. The
 * quantiles of Student's distribution are handed in.
 */
import { Contradiction, OutOfRange } from '../errors.ts';
import { logOdds, shareOfOdds } from './log-ratio.ts';

/** Quantile of Student's t with so many degrees of freedom, for a probability from below. */
export type StudentQuantile = (probability: number, degrees: number) => number;

/** A part's share of one animal, or of several that were cut and weighed together. */
export interface ShareObservation {
  /** Of the whole, 0 to 1. */
  readonly share: number;
  /** How many animals the weighing was of; 1 where nothing is said. */
  readonly animals?: number;
}

/** A published figure that counts as so many animals of one's own. */
export interface SharePrior {
  /** 0 to 1, both excluded. */
  readonly share: number;
  /** Standard deviation between animals, as a share; left out where nobody published it. */
  readonly sd?: number;
  /** The weight it is given, in animals, ≥ 1. */
  readonly animals: number;
}

export interface MeanEstimate {
  readonly animals: number;
  readonly mean: number;
  /** Between animals; null from one weighing. */
  readonly sd: number | null;
  /** 95 % interval of the mean; null from one weighing. */
  readonly low: number | null;
  readonly high: number | null;
}

const two = 0.975;

interface Moments {
  readonly animals: number;
  readonly weighings: number;
  readonly mean: number;
  /** Sum of squares about the mean, by animals. */
  readonly squares: number;
}

function moments(values: readonly { readonly z: number; readonly animals: number }[]): Moments {
  const animals = values.reduce((sum, v) => sum + v.animals, 0);
  const mean = values.reduce((sum, v) => sum + v.z * v.animals, 0) / animals;
  const squares = values.reduce((sum, v) => sum + v.animals * (v.z - mean) ** 2, 0);
  return { animals, weighings: values.length, mean, squares };
}

const counted = (observations: readonly ShareObservation[]) =>
  observations.map(({ share, animals = 1 }, i) => {
    if (!(share >= 0 && share <= 1)) throw new OutOfRange(`observations[${i}].share`, `${share}`, '0 to 1');
    if (!(Number.isInteger(animals) && animals >= 1 && animals <= 1e6))
      throw new OutOfRange(`observations[${i}].animals`, `${animals}`, 'a whole number, 1 to 1000000');
    return { share, animals };
  });

/**
 * Plain mean share of a part, with the 95 % interval of that mean [-].
 * Equation: x̄ = Σ a x / Σ a; s² = Σ a (x − x̄)²/(k − 1); x̄ ± t(0.975, k − 1) s/√Σ a, held inside 0 and 1.
 * @param observations shares 0 to 1 from k weighings, of a animals each
 * @param t Student's quantile
 * Assumes animals alike and drawn alike; a weighing of several animals together tells their mean. It is what buying
 * calls for: animals bought times this mean is what to expect. For what one animal may give see `shareEstimate`.
 * Checked: against a statistics library on kept numbers; nineteen of twenty intervals hold the truth (simulated).
 * @example meanShare([{ share: 0.2 }, { share: 0.24 }], () => 12.7062).mean // → 0.22
 * Source: own-computation
 */
export function meanShare(observations: readonly ShareObservation[], t: StudentQuantile): MeanEstimate {
  if (observations.length === 0) throw new Contradiction('observations', 'none', 'at least one weighing');
  const { animals, weighings, mean, squares } = moments(
    counted(observations).map((o) => ({ z: o.share, animals: o.animals })),
  );
  if (weighings < 2) return { animals, mean, sd: null, low: null, high: null };
  const sd = Math.sqrt(squares / (weighings - 1));
  const half = (t(two, weighings - 1) * sd) / Math.sqrt(animals);
  return { animals, mean, sd, low: Math.max(0, mean - half), high: Math.min(1, mean + half) };
}

export interface ShareEstimate {
  /** Animals weighed, without the published figure's. */
  readonly animals: number;
  /** What the published figure counted as; 0 without one. */
  readonly priorAnimals: number;
  /** The middle animal's share. */
  readonly centre: number;
  /** Between animals, of the log-odds: about the relative spread of a small part. Null where not known. */
  readonly sdLogOdds: number | null;
  /** 95 % interval of the centre. */
  readonly low: number | null;
  readonly high: number | null;
  /** Where the next animal falls, nineteen times of twenty. */
  readonly nextLow: number | null;
  readonly nextHigh: number | null;
  readonly degrees: number;
}

/**
 * Centre of a part's share by log-ratio, its 95 % interval and the next animal's, with or without a published figure [-].
 * Equation: z = ln(x/(1 − x)); N = n + κ; m = (n z̄ + κ z₀)/N; S = Σ (z − z̄)² + (κ − 1) s₀² + n κ (z̄ − z₀)²/N;
 * ν = k + κ − 1; s² = S/ν; centre m ± t(0.975, ν) s/√N, next animal m ± t s √(1 + 1/N), turned back into shares.
 * Without a published spread its term falls away and ν = k.
 * @param observations shares 0 to 1, from k weighings of n animals in all; may be empty where there is a prior
 * @param t Student's quantile
 * @param prior a published share (0 to 1), its spread between animals where known, and its weight κ ≥ 1 in animals
 * @param least the least share the scales would have shown: what a zero is replaced by, times 0.65
 * Assumes log-odds that scatter normally between animals (the conjugate normal and inverse gamma prior: the published
 * figure acts as κ more animals with that mean and spread). s₀ = sd/(x(1 − x)), a small spread.
 * Checked: a prior made of real animals gives what those animals give; against a statistics library on kept numbers;
 * nineteen of twenty intervals hold the truth (simulated).
 * @example shareEstimate([{ share: 0.2 }, { share: 0.24 }], () => 12.7062).centre // → 0.21935
 * Source: gelman-bda-2013
 */
export function shareEstimate(
  observations: readonly ShareObservation[],
  t: StudentQuantile,
  prior?: SharePrior,
  least = 1e-4,
): ShareEstimate {
  if (observations.length === 0 && prior === undefined)
    throw new Contradiction('observations', 'none', 'at least one weighing, or a published figure');
  const own =
    observations.length === 0
      ? { animals: 0, weighings: 0, mean: 0, squares: 0 }
      : moments(counted(observations).map((o) => ({ z: logOdds(o.share, least), animals: o.animals })));
  const known = prior === undefined ? { weight: 0, mean: 0, squares: 0, degrees: 0 } : priorTerms(prior);
  const all = own.animals + known.weight;
  const mean = (own.animals * own.mean + known.weight * known.mean) / all;
  const squares =
    own.squares + known.squares + ((own.animals * known.weight) / all) * (own.mean - known.mean) ** 2;
  const degrees = own.weighings + known.degrees - 1;
  const result = {
    animals: own.animals,
    priorAnimals: known.weight,
    centre: shareOfOdds(mean),
    degrees: Math.max(0, degrees),
  };
  if (!(degrees > 0))
    return { ...result, sdLogOdds: null, low: null, high: null, nextLow: null, nextHigh: null };
  const sd = Math.sqrt(squares / degrees);
  const quantile = t(two, degrees);
  const at = (half: number) => shareOfOdds(mean + half);
  const half = (quantile * sd) / Math.sqrt(all);
  const next = quantile * sd * Math.sqrt(1 + 1 / all);
  return {
    ...result,
    sdLogOdds: sd,
    low: at(-half),
    high: at(half),
    nextLow: at(-next),
    nextHigh: at(next),
  };
}

function priorTerms({ share, sd, animals }: SharePrior) {
  if (!(share > 0 && share < 1))
    throw new OutOfRange('prior.share', `${share}`, 'more than 0 and less than 1');
  if (!(animals >= 1 && animals <= 1e6))
    throw new OutOfRange('prior.animals', `${animals}`, '1 to 1000000 animals');
  const mean = Math.log(share / (1 - share));
  // A mean without a spread is one number: it adds one degree of freedom, by how far it lies from one's own.
  if (sd === undefined) return { weight: animals, mean, squares: 0, degrees: 1 };
  if (!(sd >= 0 && sd < 1)) throw new OutOfRange('prior.sd', `${sd}`, '0 to less than 1');
  return {
    weight: animals,
    mean,
    squares: (animals - 1) * (sd / (share * (1 - share))) ** 2,
    degrees: animals,
  };
}

/** More animals than this is no plan for a kitchen: the answer is then null. */
const mostAnimals = 1_000_000;

/**
 * Animals to weigh, in all, until the mean is known to a wanted part of itself [-].
 * Equation: the least n ≥ 2 with t(0.975, n − 1) s/√n ≤ r x̄; null above 1,000,000 or where the mean is 0.
 * @param mean share, 0 to 1
 * @param sd between animals, ≥ 0
 * @param relative wanted half width of the 95 % interval as a part of the mean, above 0 (0.05: ± 5 % of it)
 * @param t Student's quantile
 * Assumes the spread seen so far stays: with few animals it may be out by half, so ask again as they come in.
 * Checked: one animal fewer would not do (property); against the textbook's iteration for s/x̄ = 0.1.
 * @example animalsForPrecision(0.2, 0, 0.05, () => 2) // → 2
 * Source: own-computation
 */
export function animalsForPrecision(
  mean: number,
  sd: number,
  relative: number,
  t: StudentQuantile,
): number | null {
  if (!(sd >= 0)) throw new OutOfRange('sd', `${sd}`, '0 or more');
  if (!(relative > 0)) throw new OutOfRange('relative', `${relative}`, 'more than 0');
  if (!(mean > 0)) return null;
  const enough = (n: number) => (t(two, n - 1) * sd) / Math.sqrt(n) <= relative * mean;
  let high = 2;
  while (!enough(high)) {
    if (high >= mostAnimals) return null;
    high = Math.min(mostAnimals, high * 2);
  }
  let low = Math.max(1, Math.floor(high / 2));
  if (low === 1) return 2;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (enough(middle)) high = middle;
    else low = middle;
  }
  return high;
}
