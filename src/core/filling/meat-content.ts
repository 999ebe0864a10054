/** What of an animal's muscle may be called meat, and what is declared beside it as fat. */
import { OutOfRange } from '../errors.ts';
import { type MeatGroup, meatLimits } from './label-facts.ts';

export interface MeatContent {
  /** May be called meat [kg]. */
  readonly meat: number;
  /** Fat over the limit, declared as such [kg]. */
  readonly excessFat: number;
}

/**
 * Meat within its limit of fat, and the fat over it [kg].
 *
 *     meat = m·(1 − f)/(1 − limit) where f is over the limit, else m; excess = m − meat
 *
 * @param mass of all muscle of a group of animals together [kg], 0 or more
 * @param fat mass fraction of it, 0–1
 * @param group of animals: pig 30 %, birds and rabbits 15 %, other mammals 25 %
 * Assumes that what is cut off the calculation is fat alone; collagen has a limit of its own, which no composition here shows.
 * Checked: belly of 45 % fat is 78.57 g of meat and 21.43 g of fat in 100 g.
 * @example meatContent(100, 0.45, 'pig').meat // → 78.57
 * @example meatContent(1, 0.15, 'bird or rabbit').excessFat // → 0
 * Source: eu-1169-2011-labels
 */
export function meatContent(mass: number, fat: number, group: MeatGroup): MeatContent {
  if (!(mass >= 0) || !Number.isFinite(mass)) throw new OutOfRange('mass', `${mass} kg`, '0 kg or more');
  if (!(fat >= 0 && fat <= 1)) throw new OutOfRange('fat', String(fat), 'a mass fraction, 0 to 1');
  const limit = meatLimits[group].fat;
  const meat = fat <= limit ? mass : (mass * (1 - fat)) / (1 - limit);
  return { meat, excessFat: mass - meat };
}
