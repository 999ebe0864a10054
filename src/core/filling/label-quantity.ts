/** The quantity of an ingredient that a label declares. */
import { OutOfRange } from '../errors.ts';

export interface DeclaredQuantity {
  /** Of the finished food [%]. */
  readonly pct: number;
  /** As it is written. */
  readonly text: string;
}

/**
 * Declared quantity of an ingredient, of the finished food [%].
 *
 *     q = 100·m/M, m as used, M of the finished food with its water lost and its fat taken up
 *
 * @param used weight of the ingredient as it was used [kg], 0 or more; of what evaporates, what is left
 * @param finished weight of the finished food [kg], above 0
 * Assumes one decimal in words, which no rule asks for; over 100 % it is written as grams to 100 g.
 * Checked: 300 g in a kilogram cooked down to 800 g 37.5 %; sultanas in a cake 25 %; fish in fried fingers 62.5 %.
 * @example declaredQuantity(0.3, 0.8).pct // → 37.5
 * @example declaredQuantity(0.12, 0.1).text // → '120 g per 100 g'
 * Source: eu-1169-2011-labels
 * Source: eu-quid-notice-2017
 */
export function declaredQuantity(used: number, finished: number): DeclaredQuantity {
  if (!(used >= 0) || !Number.isFinite(used)) throw new OutOfRange('used', `${used} kg`, '0 kg or more');
  if (!(finished > 0) || !Number.isFinite(finished))
    throw new OutOfRange('finished', `${finished} kg`, 'more than 0 kg');
  const pct = (100 * used) / finished;
  if (pct > 100 + 1e-9) return { pct, text: `${Math.round(pct)} g per 100 g` };
  return { pct, text: `${Number(pct.toFixed(1))} %` };
}
