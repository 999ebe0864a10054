/** Whether what a row is made of adds up to its weight, and why not where it does not. */
import type { Ingredient } from './ingredient.ts';

export interface Closure {
  /** Water, protein, fat, carbohydrate with fibre, ash and alcohol together, as far as they are known [kg/kg]. */
  readonly sum: number;
  /** Why it is not 1 ± 0.005; null where it is, or where nothing is known. */
  readonly why: string | null;
}

const measuredApart =
  'flesh: water, protein, fat and ash were measured one by one, and carbohydrate is not what is left';
const reasons: readonly (readonly [RegExp, string])[] = [
  [/vinegar/, 'acetic acid is in none of them'],
  [/-pepper-ground$/, 'as published: about 5 % is in none of them'],
  [/^fresh-yeast$/, 'as published'],
  [/^bicarbonate-of-soda$/, 'it loses carbonic acid and water when it is burnt to ash'],
  [/skin-with-its-fat|neck-skin/, 'by difference of two rows that close differently'],
  [/^goats-cheese-soft$/, 'as published: no carbohydrate by difference'],
];

/**
 * What a row adds up to [kg/kg], and why it does not close where it does not.
 * Equation: sum = water + protein + fat + carbohydrate with fibre + ash + alcohol. Parameters: a row of the table.
 * Assumptions: what is not known counts as nothing here, so `why` is null only where the sum is near 1 or all is unknown.
 * Checked: every row closes or has its reason, in ingredients.test.ts. Source: usda-sr28
 */
export function closureOf(row: Ingredient): Closure {
  const { water, protein, fat, ash, alcohol } = row.nutrients;
  const carbohydrate = row.carbohydrateWithFibre;
  const parts = [water, protein, fat, carbohydrate, ash, alcohol];
  const sum = Math.round(parts.reduce<number>((all, value) => all + (value ?? 0), 0) * 1e6) / 1e6;
  if (parts.every((value) => value === null) || Math.abs(sum - 1) <= 0.005) return { sum, why: null };
  const named = reasons.find(([of]) => of.test(row.id))?.[1];
  const flesh = row.animal !== null || row.group === 'fish and shellfish';
  return { sum, why: named ?? (flesh && (carbohydrate ?? 1) < 0.02 ? measuredApart : null) };
}
