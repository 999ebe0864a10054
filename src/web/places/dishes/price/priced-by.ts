/** Prices for a dish's lines out of the pantry as it stands today. */
import type { PricedBy } from '../../../../contract/dish-price.ts';
import type { DishNumbers, Pantry } from '../../../../contract/pantry-answer.ts';
import { boughtPerKg, boughtPrices, lineOf } from '../../../../contract/pantry-reckon.ts';

/** What a line says of itself goes first; then what it points at; of the published table no price is known. */
export function pricedBy(species: string, pantry: Pantry, numbers: readonly DishNumbers[]): PricedBy {
  const prices = boughtPrices(pantry);
  const ingredients = new Map(pantry.ingredients.map((i) => [i.id, i.costPerKg]));
  const parts = new Map(pantry.parts.map((p) => [p.id, p.costPerKg]));
  const dishes = new Map(numbers.map((d) => [d.dishId, d.costPerKg]));
  return {
    lineCostPerKg: (line) => {
      if (line.pricePerKg !== undefined) return line.pricePerKg;
      const of = lineOf(line);
      if (of === null || of.kind === 'table') return null;
      const from = of.kind === 'ingredient' ? ingredients : of.kind === 'part' ? parts : dishes;
      return from.get(of.id) ?? null;
    },
    trimCostPerKg: (step) =>
      boughtPerKg(prices, { species }, { of: step.of ?? null, name: step.part, g: step.weightG }),
  };
}
