/** The pantry as the engine reckons with it: every line resolved to a food or a recipe, what the line itself says put over it. */
import type { PantryFood, PantryItem, PantryRecipe, RecipeLine, Stated } from '../core/filling/flatten.ts';
import { type AllergenMark, allergens as fourteen, type Nutrients, nutrients } from '../core/filling/food.ts';
import type { LineOf } from './pantry.ts';
import type { Pantry, PantryDish } from './pantry-answer.ts';
import type { MixLine } from './steps.ts';

/** A row of the published table as a food; undefined where there is no such row. */
export type TableFood = (id: string) => PantryFood | undefined;

type Held = Pick<Pantry, 'ingredients' | 'parts' | 'dishes'>;

/** What a line points at; older methods name an ingredient of the kitchen's own in another place. */
export const lineOf = (line: Pick<MixLine, 'of' | 'ingredientId'>): LineOf | null =>
  line.of ?? (line.ingredientId === undefined ? null : { kind: 'ingredient', id: line.ingredientId });

export const itemId = (of: LineOf): string => `${of.kind}:${of.id}`;

const nothing = Object.fromEntries(nutrients.map((n) => [n, null])) as unknown as Nutrients;

/** What a line measured here, six components and salt: of the rest it says nothing. */
function measured(line: MixLine): Nutrients | undefined {
  if (line.composition === undefined) return undefined;
  return { ...nothing, ...line.composition, salt: line.salt ?? null };
}

/** Words on a line that are none of the fourteen: nobody can tell what they mean, so it is to be asked. */
export const wordsNotUnderstood = (line: Pick<MixLine, 'allergens'>): string[] =>
  (line.allergens ?? []).filter((word) => !fourteen.some((a) => a === word.trim().toLowerCase()));

const markOf = (word: string): AllergenMark[] => {
  const found = fourteen.find((a) => a === word.trim().toLowerCase());
  return found === undefined ? [] : [{ allergen: found }];
};

/** Allergens that a line adds to what it points at; undefined where it says nothing that is understood, which never says none. */
function added(line: MixLine): AllergenMark[] | undefined {
  const marks = (line.allergens ?? []).flatMap(markOf);
  return marks.length === 0 ? undefined : marks;
}

const ingredientFood = (i: Pantry['ingredients'][number]): PantryFood => ({
  kind: 'food',
  id: itemId({ kind: 'ingredient', id: i.id }),
  name: i.name,
  nutrients: i.nutrients,
  allergens: i.allergens,
  costPerKg: i.costPerKg,
});

const partFood = (p: Pantry['parts'][number]): PantryFood => ({
  kind: 'food',
  id: itemId({ kind: 'part', id: p.id }),
  name: `${p.species}, ${p.name}`,
  nutrients: p.nutrients,
  allergens: p.allergens,
  costPerKg: p.costPerKg,
});

/** What a kilogram costs as it is bought, before a trim step takes its share. */
export interface BoughtPrices {
  readonly ingredient: ReadonlyMap<string, number | null>;
  readonly part: ReadonlyMap<string, number | null>;
  /** By `species name`, lower case: of a trim step that names its part and points at nothing. */
  readonly named: ReadonlyMap<string, number | null>;
}

export const boughtPrices = ({ ingredients, parts }: Pick<Held, 'ingredients' | 'parts'>): BoughtPrices => ({
  ingredient: new Map(
    ingredients.map((i) => [i.id, i.costPerKg === null ? null : i.costPerKg * (1 - i.trimPct / 100)]),
  ),
  part: new Map(parts.map((p) => [p.id, p.costPerKgAsCut])),
  named: new Map(parts.map((p) => [`${p.species} ${p.name}`.toLowerCase(), p.costPerKgAsCut])),
});

/** Of one thing that a trim step takes; null where nobody has said. */
export function boughtPerKg(
  prices: BoughtPrices,
  dish: Pick<PantryDish, 'species'>,
  { of, name }: PantryDish['bought'][number],
): number | null {
  if (of === null) return prices.named.get(`${dish.species} ${name}`.toLowerCase()) ?? null;
  if (of.kind === 'ingredient' || of.kind === 'part') return prices[of.kind].get(of.id) ?? null;
  return null;
}

/** The lines of a recipe, and foods of its own for those that point at nothing. */
function linesOf(dish: PantryDish, id: string): OwnLines {
  const before = resolved.get(dish);
  if (before !== undefined) return before;
  const made = resolve(dish, id);
  resolved.set(dish, made);
  return made;
}

interface OwnLines {
  readonly lines: readonly RecipeLine[];
  readonly own: readonly PantryFood[];
}

/** No price of the pantry is in them: they are the same as long as the dish is. */
const resolved = new WeakMap<PantryDish, OwnLines>();

function resolve(dish: PantryDish, id: string): OwnLines {
  const own: PantryFood[] = [];
  const lines = dish.lines.map((line, index): RecipeLine => {
    const of = lineOf(line);
    const stated: Stated = {
      ...(of === null ? {} : { nutrients: measured(line), allergens: added(line) }),
      // What was prepared in the steps before is paid for where it was bought.
      ...(line.carried === true ? { costPerKg: 0 } : { costPerKg: line.pricePerKg }),
    };
    const mixed = {
      name: line.ingredient,
      mass: line.g / 1000,
      ...(line.reduced === undefined
        ? {}
        : { reduced: { to: line.reduced.toPct / 100, alcohol: line.reduced.alcohol } }),
      stated,
    };
    if (of !== null) return { of: itemId(of), ...mixed };
    const food = `${id} line ${index}`;
    own.push({
      kind: 'food',
      id: food,
      name: line.ingredient,
      nutrients: measured(line) ?? nothing,
      allergens:
        line.allergens === undefined || wordsNotUnderstood(line).length > 0
          ? null
          : line.allergens.flatMap(markOf),
      costPerKg: line.pricePerKg ?? null,
    });
    return { of: food, ...mixed };
  });
  return { lines, own };
}

/** A dish as a recipe, with the foods that only it knows. */
export function recipeOf(
  prices: BoughtPrices,
  dish: PantryDish,
): { recipe: PantryRecipe; own: readonly PantryFood[] } {
  const id = itemId({ kind: 'dish', id: dish.id });
  const { lines, own } = linesOf(dish, id);
  let known = 0;
  let unknown = 0;
  for (const bought of dish.bought) {
    const perKg = boughtPerKg(prices, dish, bought);
    if (perKg === null) unknown += bought.g / 1000;
    else known += (perKg * bought.g) / 1000;
  }
  const recipe: PantryRecipe = {
    kind: 'recipe',
    id,
    name: dish.name,
    lines,
    ...(dish.yieldPct === 100 ? {} : { outcome: { to: dish.yieldPct / 100, by: 'water' as const } }),
    ...(dish.bought.length === 0 ? {} : { besides: { known, unknown } }),
  };
  return { recipe, own };
}

/** Everything that a line can point at, of the published table only what is used. */
export function itemsOf(held: Held, tableFood: TableFood): PantryItem[] {
  const items: PantryItem[] = [...held.ingredients.map(ingredientFood), ...held.parts.map(partFood)];
  const rows = new Set<string>();
  const prices = boughtPrices(held);
  for (const dish of held.dishes) {
    const { recipe, own } = recipeOf(prices, dish);
    items.push(recipe, ...own);
    for (const line of dish.lines) if (line.of?.kind === 'table') rows.add(line.of.id);
  }
  for (const row of rows) {
    const food = tableFood(row);
    if (food !== undefined) items.push({ ...food, id: itemId({ kind: 'table', id: row }) });
  }
  return items;
}
