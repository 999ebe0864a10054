/** Ingredients in words. */
import type { AllergenMarkInput, NutrientsInput } from '../../../../contract/pantry.ts';
import { nutrients } from '../../../../core/filling/food.ts';

/** Not said is never none. */
export function allergenWords(marks: readonly AllergenMarkInput[] | null): string {
  if (marks === null) return 'nobody has said: ask';
  if (marks.length === 0) return 'none named';
  return marks
    .map(
      (m) =>
        `${m.allergen}${m.as === undefined ? '' : ` (${m.as})`}${m.checkLabel === true ? ', if its label says so: look' : ''}`,
    )
    .join('; ');
}

export function notKnownOf(food: NutrientsInput): string {
  const missing = nutrients.filter((n) => food[n] === null);
  return missing.length === nutrients.length ? 'all of its composition' : missing.join(', ');
}
