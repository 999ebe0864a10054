/**
 * Shares of a whole, treated by their ratios. Parts of an animal sum to 100 %: more leg is less of something else, and a
 * share is never below nothing. Logarithms of ratios know both; plain means and standard deviations know neither.
 */
import { Contradiction, OutOfRange } from '../errors.ts';

/**
 * Shares that sum to 1, in the same ratios [-].
 * Equation: C(x)_i = x_i / Σ x.
 * @param parts weights or shares, ≥ 0, not all 0
 * Assumes nothing.
 * Checked: by properties (sums to 1, does not know the unit of weight).
 * @example closed([1, 3])[1] // → 0.75
 * Source: aitchison-1986
 */
export function closed(parts: readonly number[]): number[] {
  const sum = parts.reduce((total, x, i) => {
    if (!(x >= 0 && x < Number.POSITIVE_INFINITY))
      throw new OutOfRange(`parts[${i}]`, `${x}`, '0 or more, finite');
    return total + x;
  }, 0);
  if (!(sum > 0)) throw new Contradiction('parts', 'nothing at all', 'at least one part above 0');
  return parts.map((x) => x / sum);
}

/** A zero stands for this much of the least that the scale would have shown: the common choice. */
const ofLeast = 0.65;

/**
 * Shares without zeros, the rest in their old ratios [-].
 * Equation: r_i = δ where x_i = 0, else x_i (1 − Σ δ); δ = 0.65 of the least share that would have been seen.
 * @param shares closed shares, 0 to 1
 * @param least the least share that the scales would have shown, above 0, small beside 1
 * Assumes that a zero is a weight too small to be seen, not a part that the animal lacks: such animals are another kind and
 * belong in a group of their own.
 * Checked: sums to 1; ratios between what was not zero stay.
 * @example zerosReplaced([0, 0.25, 0.75], 0.002)[0] // → 0.0013
 * Source: martin-fernandez-2003
 */
export function zerosReplaced(shares: readonly number[], least: number): number[] {
  const zeros = shares.filter((x) => x === 0).length;
  const delta = ofLeast * least;
  if (!(least > 0 && zeros * delta < 0.5))
    throw new OutOfRange('least', `${least}`, 'above 0, and small beside the whole');
  return shares.map((x) => (x === 0 ? delta : x * (1 - zeros * delta)));
}

/**
 * Centred log-ratios of shares [-].
 * Equation: clr(x)_i = ln x_i − mean ln x.
 * @param shares above 0; the unit does not matter
 * Assumes no zeros.
 * Checked: sums to 0; the inverse gives the shares back.
 * @example centredLogRatios([0.1, 0.2, 0.7])[2] // → 1.0662
 * Source: aitchison-1986
 */
export function centredLogRatios(shares: readonly number[]): number[] {
  const logs = shares.map((x, i) => {
    if (!(x > 0)) throw new OutOfRange(`shares[${i}]`, `${x}`, 'above 0');
    return Math.log(x);
  });
  const mean = logs.reduce((sum, x) => sum + x, 0) / logs.length;
  return logs.map((x) => x - mean);
}

/**
 * The middle animal: shares whose ratios are the geometric means of the animals' ratios [-].
 * Equation: centre = C(exp(mean over animals of clr(x))).
 * @param animals closed shares without zeros, the same parts in the same order
 * Assumes that every animal counts alike.
 * Checked: sums to 1; the same for a subset of the parts, closed again (which plain means are not); by hand.
 * @example centreOf([[0.2, 0.8], [0.4, 0.6]])[0] // → 0.28990
 * Source: aitchison-1986
 */
export function centreOf(animals: readonly (readonly number[])[]): number[] {
  const [first] = animals;
  if (first === undefined) throw new Contradiction('animals', 'none', 'at least one animal');
  const sums = first.map(() => 0);
  animals.forEach((animal, index) => {
    if (animal.length !== first.length)
      throw new Contradiction(`animals[${index}]`, `${animal.length} parts`, `${first.length}, as the first`);
    centredLogRatios(animal).forEach((x, i) => {
      sums[i] = sums[i]! + x;
    });
  });
  return closed(sums.map((sum) => Math.exp(sum / animals.length)));
}

/**
 * Log-odds of one part against the rest of the animal [-].
 * Equation: z = ln(x/(1 − x)), which is √2 times the isometric log-ratio of the two; 0 and 1 stand for 0.65 `least` inside.
 * @param share 0 to 1
 * @param least the least share that the scales would have shown, above 0, small beside 1
 * Assumes that everything else is taken as one part.
 * Checked: the inverse gives the share back; rises with the share.
 * @example logOdds(0.25, 1e-4) // → -1.0986
 * Source: egozcue-2003
 */
export function logOdds(share: number, least: number): number {
  if (!(share >= 0 && share <= 1)) throw new OutOfRange('share', `${share}`, '0 to 1');
  const delta = ofLeast * least;
  if (!(delta > 0 && delta < 0.25)) throw new OutOfRange('least', `${least}`, 'above 0, small beside 1');
  const inside = Math.min(1 - delta, Math.max(delta, share));
  return Math.log(inside / (1 - inside));
}

/**
 * The share that log-odds stand for [-].
 * Equation: x = 1/(1 + e^(−z)).
 * @param z log-odds, any
 * Assumes nothing.
 * Checked: undoes `logOdds`.
 * @example shareOfOdds(-1.0986123) // → 0.25
 * Source: own-computation
 */
export function shareOfOdds(z: number): number {
  return 1 / (1 + Math.exp(-z));
}
