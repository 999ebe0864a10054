import type { Ingredient } from '../../../../contract/records.ts';
import type { MixLine } from '../../../../contract/steps.ts';

/** A line that takes over what the kitchen knows of an ingredient by that name. */
export function lineFor(name: string, g: number, known: readonly Ingredient[]): MixLine {
  const found = known.find((i) => i.name.toLowerCase() === name.trim().toLowerCase());
  if (found === undefined) return { ingredient: name, g, ...pure(name) };
  return {
    ingredient: found.name,
    ingredientId: found.id,
    g,
    ...(found.composition === null ? {} : { composition: found.composition }),
    ...(found.salt === null ? {} : { salt: found.salt }),
    ...(found.pricePerKg === null ? {} : { pricePerKg: found.pricePerKg }),
    ...(found.allergens === null ? {} : { allergens: found.allergens }),
  };
}

const nothing = { water: 0, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 };

/** What is one substance and nothing else needs no table. */
function pure(name: string): Partial<MixLine> {
  switch (name.trim().toLowerCase()) {
    case 'salt':
      return { composition: { ...nothing, ash: 1 }, salt: 1, allergens: [] };
    case 'water':
    case 'ice':
      return { composition: { ...nothing, water: 1 }, salt: 0, allergens: [] };
    case 'sugar':
      return { composition: { ...nothing, carbohydrate: 1 }, salt: 0, allergens: [] };
    default:
      return {};
  }
}

/** The name typed anew: what was known of another ingredient does not stay with it; what was typed by hand does. */
export function renamed(line: MixLine, name: string, known: readonly Ingredient[]): MixLine {
  const next = lineFor(name, line.g, known);
  const tookOver = line.ingredientId !== undefined || Object.keys(pure(line.ingredient)).length > 0;
  return tookOver || next.composition !== undefined || next.ingredientId !== undefined
    ? next
    : { ...line, ingredient: name };
}
