import type { Ingredient } from '../../../../contract/records.ts';
import type { MixLine } from '../../../../contract/steps.ts';

/** A line that takes over what the kitchen knows of an ingredient by that name. */
export function lineFor(name: string, g: number, known: readonly Ingredient[]): MixLine {
  const found = known.find((i) => i.name.toLowerCase() === name.trim().toLowerCase());
  if (found === undefined) return { ingredient: name, g };
  return {
    ingredient: found.name,
    ingredientId: found.id,
    g,
    ...(found.composition === null ? {} : { composition: found.composition }),
    ...(found.salt === null ? {} : { salt: found.salt }),
    ...(found.pricePerKg === null ? {} : { pricePerKg: found.pricePerKg }),
    allergens: found.allergens,
  };
}
