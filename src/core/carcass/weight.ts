/**
 * Weights of a breakdown as whole milligrams: the one place of the engine that counts instead of measuring, because a
 * balance that must close to the gram, and money that must close to the penny, cannot rest on rounded sums.
 */
import { OutOfRange } from '../errors.ts';

/** The heaviest that is weighed here: ten tonnes. */
const most = 1e10;

/**
 * A weight as whole milligrams, so that sums are exact [mg].
 * Equation: mg = 1000 g, where that is a whole number.
 * @param grams weight [g], 0 to 10,000,000, with at most three decimals
 * @param path where the weight stands, for the error
 * Assumes that a scale shows no more than a milligram; 0.1 g and 1 g scales are inside of that.
 * Checked: every number of up to three decimals comes back, a finer one is refused (property).
 * @example milligrams(0.3, 'grams') // → 300
 * Source: own-computation
 */
export function milligrams(grams: number, path: string): number {
  const mg = Math.round(grams * 1000);
  if (!(grams >= 0 && mg <= most)) throw new OutOfRange(path, `${grams} g`, '0 to 10000000 g');
  if (Math.abs(mg / 1000 - grams) > 1e-9 * Math.max(1, grams))
    throw new OutOfRange(path, `${grams} g`, 'at most three decimals (a milligram)');
  return mg;
}

/** A weight in words: grams, without decimals that it does not have. */
export const gramsText = (mg: number) => `${mg / 1000} g`;
