/** What every dish comes to by today's prices and labels: reckoned once through all of them, however deep they go. */

import { Contradiction, OutOfRange } from '../core/errors.ts';
import { type AllergensFound, allergensOf } from '../core/filling/allergens.ts';
import { pantryOf, reckon } from '../core/filling/flatten.ts';
import type { Nutrients } from '../core/properties/food.ts';
import type { DishNumbers, Pantry, PantryDish } from './pantry-answer.ts';
import {
  type BoughtPrices,
  boughtPerKg,
  boughtPrices,
  itemId,
  itemsOf,
  lineOf,
  type TableFood,
  wordsNotUnderstood,
} from './pantry-reckon.ts';
import type { MixLine } from './steps.ts';

/** A dish with what its whole method makes of it, as itself. */
export interface WholeDish {
  readonly dishId: string;
  readonly name: string;
  readonly versionId: string;
  readonly number: number;
  readonly signed: boolean;
  /** What it gives to others, or would; null where nothing is weighed in. */
  readonly mix: PantryDish | null;
  /** What its trims take where it has no mix. */
  readonly bought: PantryDish['bought'];
  readonly species: string;
  /** At the end of its method [g]; null where a loss is not known. */
  readonly weightG: number | null;
  readonly portions: number | null;
}

/** What is to be said of a dish besides sums and allergens, gathered from the bottom up. */
interface Said {
  /** Words on lines that are none of the fourteen: to be asked. */
  readonly notUnderstood: Set<string>;
  readonly priceNotSaid: Set<string>;
  readonly compositionNotSaid: Set<string>;
  readonly putAway: Set<string>;
}

const empty = (): Said => ({
  notUnderstood: new Set(),
  priceNotSaid: new Set(),
  compositionNotSaid: new Set(),
  putAway: new Set(),
});

const closing = ['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash', 'salt'] as const;
const known = (food: Nutrients) => closing.every((n) => food[n] !== null);

type Leaf = Pantry['ingredients'][number] | Pantry['parts'][number];

class Gathering {
  readonly #leaves = new Map<string, Leaf>();
  readonly #dishes = new Map<string, PantryDish>();
  readonly #kept = new Map<string, Said>();
  readonly #tableFood: TableFood;
  readonly #prices: BoughtPrices;

  constructor(held: Pick<Pantry, 'ingredients' | 'parts' | 'dishes'>, tableFood: TableFood) {
    for (const i of held.ingredients) this.#leaves.set(itemId({ kind: 'ingredient', id: i.id }), i);
    for (const p of held.parts) this.#leaves.set(itemId({ kind: 'part', id: p.id }), p);
    for (const d of held.dishes) this.#dishes.set(itemId({ kind: 'dish', id: d.id }), d);
    this.#tableFood = tableFood;
    this.#prices = boughtPrices(held);
  }

  /** A ring of dishes is refused by the sums; here it is only not walked twice. */
  of(dish: PantryDish): Said {
    const kept = this.#kept.get(dish.id);
    if (kept !== undefined) return kept;
    const said = empty();
    this.#kept.set(dish.id, said);
    for (const line of dish.lines) if (line.g > 0) this.#line(said, line);
    this.bought(said, dish.species, dish.bought);
    return said;
  }

  bought(said: Said, species: string, bought: PantryDish['bought']): void {
    for (const b of bought)
      if (boughtPerKg(this.#prices, { species }, b) === null) said.priceNotSaid.add(b.name);
  }

  #line(said: Said, line: MixLine): void {
    const of = lineOf(line);
    const name = line.ingredient;
    const free = line.carried === true || line.pricePerKg !== undefined;
    if (wordsNotUnderstood(line).length > 0) said.notUnderstood.add(name);
    const item = of === null ? undefined : itemId(of);
    const sub = item === undefined ? undefined : this.#dishes.get(item);
    if (sub !== undefined) {
      this.#under(said, this.of(sub), free, line.composition !== undefined);
      return;
    }
    const leaf = item === undefined ? undefined : this.#leaves.get(item);
    const row = of?.kind === 'table' ? this.#tableFood(of.id) : undefined;
    const food = leaf ?? row;
    if (!free && (food?.costPerKg ?? null) === null) said.priceNotSaid.add(name);
    const whole =
      line.composition !== undefined ? line.salt !== undefined : food !== undefined && known(food.nutrients);
    if (!whole) said.compositionNotSaid.add(name);
    if (leaf !== undefined && 'putAway' in leaf && leaf.putAway) said.putAway.add(name);
  }

  #under(said: Said, below: Said, priced: boolean, measured: boolean): void {
    const into = (from: ReadonlySet<string>, to: Set<string>) => {
      for (const x of from) to.add(x);
    };
    into(below.notUnderstood, said.notUnderstood);
    if (!priced) into(below.priceNotSaid, said.priceNotSaid);
    if (!measured) into(below.compositionNotSaid, said.compositionNotSaid);
    into(below.putAway, said.putAway);
  }
}

/** Ways by which an allergen comes in that are written out; the others are counted. */
const waysShown = 4;

/** Of every dish: sums by the engine, and what is to be said besides. */
export function numbersOf(
  held: Pick<Pantry, 'ingredients' | 'parts' | 'dishes'>,
  dishes: readonly WholeDish[],
  tableFood: TableFood,
): DishNumbers[] {
  const pantry = pantryOf(itemsOf(held, tableFood));
  const gathering = new Gathering(held, tableFood);
  const prices = boughtPrices(held);
  return dishes.map((dish): DishNumbers => {
    const { dishId, name, versionId, number, signed, weightG, portions } = dish;
    const said = dish.mix === null ? empty() : gathering.of(dish.mix);
    if (dish.mix === null) gathering.bought(said, dish.species, dish.bought);
    const problems: string[] = [];
    let atLeast = 0;
    let whole = true;
    let found: AllergensFound | null = null;
    const recipe = dish.mix === null ? undefined : pantry.items.get(itemId({ kind: 'dish', id: dishId }));
    if (recipe?.kind === 'recipe')
      try {
        const { cost } = reckon(recipe, pantry);
        atLeast = cost.known;
        whole = cost.unknown === 0;
        found = allergensOf(recipe, pantry);
      } catch (error) {
        if (!(error instanceof Contradiction || error instanceof OutOfRange)) throw error;
        problems.push(`${error.path}: ${error.found}; allowed is ${error.allowed}.`);
        whole = false;
      }
    else
      for (const b of dish.bought) {
        const perKg = boughtPerKg(prices, dish, b);
        if (perKg === null) whole = false;
        else atLeast += (perKg * b.g) / 1000;
      }
    const nothing = recipe === undefined && dish.bought.length === 0;
    const cost = whole && !nothing ? atLeast : null;
    const per = (n: number | null) => (cost === null || n === null || n <= 0 ? null : cost / n);
    return {
      dishId,
      name,
      versionId,
      number,
      signed,
      weightG,
      portions,
      cost,
      costPerKg: per(weightG === null ? null : weightG / 1000),
      costPerPortion: per(portions),
      atLeast,
      allergens: (found?.contains ?? []).map(({ allergen, certain, kinds, kindNotSaid, routes, more }) => ({
        allergen,
        certain,
        kinds: [...kinds],
        kindNotSaid,
        via: routes.slice(0, waysShown).map((r) => [...r.path]),
        moreWays: Math.max(0, routes.length - waysShown) + more,
      })),
      allergensNotSaid: [
        ...new Set([...(found?.notSaid ?? []).map((path) => path.at(-1) ?? name), ...said.notUnderstood]),
      ],
      allergensNotSaidMore: found?.notSaidMore ?? 0,
      priceNotSaid: [...said.priceNotSaid],
      compositionNotSaid: [...said.compositionNotSaid],
      putAway: [...said.putAway],
      problems,
    };
  });
}
