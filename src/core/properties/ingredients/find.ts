/** Finds rows of the table by what a chef calls them. */
import type { Had, Ingredient } from './ingredient.ts';
import { type FoundBy, indexNames, type Named, type NameIndex, searchNames } from './search.ts';
import { ingredients } from './table.ts';

export interface FoundIngredient {
  readonly row: Ingredient;
  /** 1: the very name; falling with what is missing and what is too much. */
  readonly score: number;
  readonly by: FoundBy;
}

interface Listed extends Named {
  readonly row: Ingredient;
}

const order: Record<Had, number> = {
  published: 0,
  derived: 1,
  'by definition': 2,
  'stand-in': 3,
  none: 4,
};
const cooked = /roast|stewed|simmered|braised|fried|grilled|boiled|bought|pickled|dried/;

let index: NameIndex<Listed> | null = null;
const listed = (): NameIndex<Listed> => {
  index ??= indexNames(
    ingredients.map((row, i) => ({
      id: row.id,
      name: row.name,
      also: row.also,
      rank: (cooked.test(row.name) ? 10_000 : 0) + order[row.had] * 100_000 + i,
      row,
    })),
  );
  return index;
};

/**
 * Rows of the table that a name may mean, likeliest first [score 0–1]; none where nothing is near.
 * Parameters: text as a chef types it; most, how many. Assumptions: raw is meant where nothing is said.
 * Checked: every name and other name of the table finds its row, in search.test.ts. Source: own-computation
 * @example findIngredient('egg whites')[0].row.id // → 'egg-white-raw'
 */
export function findIngredient(text: string, most = 8): FoundIngredient[] {
  return searchNames(listed(), text, most).map(({ item, score, by }) => ({ row: item.row, score, by }));
}
