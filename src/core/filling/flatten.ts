/**
 * From a recipe whose lines may be recipes themselves, to any depth, down to foods: weights, what is in it, what it costs.
 * What is not known is carried along as a weight of food of which it is not known, so that a sum is "at least", never a total.
 */
import { Contradiction, OutOfRange } from '../errors.ts';
import { type AlcoholTreatment, alcoholLeft } from './evaporation.ts';
import { type AllergenMarks, type Nutrient, type Nutrients, nutrients as names } from './food.ts';
import type { LabelFacts } from './label-facts.ts';

/** A food as the pantry has it. */
export interface PantryFood {
  readonly kind: 'food';
  readonly id: string;
  readonly name: string;
  readonly nutrients: Nutrients;
  readonly allergens: AllergenMarks;
  /** Of what is weighed in [minor units/kg]; null: not known. */
  readonly costPerKg: number | null;
  /** What a list of ingredients has to know of it besides. */
  readonly label?: LabelFacts | undefined;
}

/** What a line or a recipe says of itself, over what it is made of; allergens are only ever added. */
export interface Stated {
  readonly nutrients?: Nutrients | undefined;
  /** [minor units/kg] of the weight as weighed in. */
  readonly costPerKg?: number | undefined;
  readonly allergens?: AllergenMarks | undefined;
}

export interface RecipeLine {
  /** Id of a food or recipe of the pantry. */
  readonly of: string;
  /** What the line calls it, where it calls it otherwise: for messages. */
  readonly name?: string | undefined;
  /** Weighed in, before it is cooked down [kg]. */
  readonly mass: number;
  /** Cooked down before it goes in: share of its weight that is left, above 0 to 1. */
  readonly reduced?: { readonly to: number; readonly alcohol?: AlcoholTreatment | undefined } | undefined;
  readonly stated?: Stated | undefined;
  /** Its quantity is declared on a label. */
  readonly declared?: true | undefined;
}

export interface PantryRecipe {
  readonly kind: 'recipe';
  readonly id: string;
  readonly name: string;
  readonly lines: readonly RecipeLine[];
  /** What comes of the lines by the rest of the method; absent: all of their weight, as they are. */
  readonly outcome?: RecipeOutcome | undefined;
  /** What it costs besides its lines: a part bought for it and weighed in under another name, or not at all; of what has no price the weight. */
  readonly besides?: Amount | undefined;
  readonly label?: LabelFacts | undefined;
}

export interface RecipeOutcome {
  /** Weight that comes of a unit of weight of the lines (after they were cooked down), above 0 to 20. */
  readonly to: number;
  /**
   * What the difference is made of. 'water': steam that leaves, or water taken up. 'not known': bones strained off, fat
   * poured off; then what is in it is not known either, unless it is stated.
   */
  readonly by: 'water' | 'not known';
  /** What the method did to the alcohol; absent: not known, where there was any. */
  readonly alcohol?: AlcoholTreatment | undefined;
  readonly stated?: Stated | undefined;
}

export type PantryItem = PantryFood | PantryRecipe;

/** Everything that a line can point at. Do not change its items: open another one. */
export interface Pantry {
  readonly items: ReadonlyMap<string, PantryItem>;
  /** What was reckoned already, by id. */
  readonly reckoned: Map<string, Outcome>;
  readonly expanded: Map<string, ReadonlyMap<string, number>>;
}

/** A sum of which a part may not be known. */
export interface Amount {
  /** Of the parts where it is known: all of it only where `unknown` is 0, else the least there is. */
  readonly known: number;
  /** Weight of the food of which it is not known [kg]. */
  readonly unknown: number;
}

export interface Outcome {
  /** Weight of the lines as weighed in [kg]. */
  readonly weighedIn: number;
  /** Weight of what comes of them [kg]. */
  readonly mass: number;
  /** Weights [kg], salt within ash, saturates within fat, sugars within carbohydrate. */
  readonly nutrients: Readonly<Record<Nutrient, Amount>>;
  /** [minor units] */
  readonly cost: Amount;
  /** Ids that lines point at, at any depth, and that the pantry does not have: nothing is known of these. */
  readonly missing: readonly string[];
}

/**
 * A pantry to reckon with [-]: what is reckoned once is kept, so that a recipe used by a thousand is added up once.
 * Parameters: items, each id once. Assumptions: items are not changed afterwards. Checked: the property that keeping makes
 * no difference.
 * @example pantryOf([]).items.size // → 0
 * Source: own-computation
 */
export function pantryOf(items: Iterable<PantryItem>): Pantry {
  const map = new Map<string, PantryItem>();
  for (const item of items) {
    if (map.has(item.id))
      throw new Contradiction(item.name, `two things of the id ${item.id}`, 'each id once');
    map.set(item.id, item);
  }
  return { items: map, reckoned: new Map(), expanded: new Map() };
}

/**
 * The same pantry with some things put in, or in the place of those of their id [-]: a recipe as it is being changed.
 * Parameters: items, each id once. Assumptions: nothing reckoned is kept, because what uses them changes with them.
 * Checked: the circle by way of a recipe that is being changed.
 * @example pantryWith(pantryOf([]), [{ kind: 'recipe', id: 'r', name: 'r', lines: [] }]).items.size // → 1
 * Source: own-computation
 */
export function pantryWith(pantry: Pantry, items: Iterable<PantryItem>): Pantry {
  return pantryOf(new Map([...pantry.items, ...[...items].map((i) => [i.id, i] as const)]).values());
}

/** The pantry in which a recipe is what its id says. */
function holding(pantry: Pantry, recipe: PantryRecipe): Pantry {
  return pantry.items.get(recipe.id) === recipe ? pantry : pantryWith(pantry, [recipe]);
}

const at = Object.fromEntries(names.map((n, i) => [n, i])) as Readonly<Record<Nutrient, number>>;
const each = <T>(value: (n: Nutrient, i: number) => T) =>
  Object.fromEntries(names.map((n, i) => [n, value(n, i)])) as Record<Nutrient, T>;

/** Sums that are still being made. */
class Sums {
  mass = 0;
  cost = 0;
  unpriced = 0;
  readonly known: number[] = names.map(() => 0);
  readonly unknown: number[] = names.map(() => 0);

  /** Adds a weight of a food. */
  addFood(mass: number, food: Nutrients): void {
    this.mass += mass;
    names.forEach((n, i) => {
      const x = food[n];
      if (x === null) this.unknown[i]! += mass;
      else this.known[i]! += mass * x;
    });
  }

  /** Adds so many times another sum's weight and nutrients; its cost is the caller's. */
  add(other: Sums, times: number): void {
    this.mass += times * other.mass;
    for (let i = 0; i < names.length; i += 1) {
      this.known[i]! += times * other.known[i]!;
      this.unknown[i]! += times * other.unknown[i]!;
    }
  }

  addOutcome(other: Outcome, times: number): void {
    this.mass += times * other.mass;
    names.forEach((n, i) => {
      this.known[i]! += times * other.nutrients[n].known;
      this.unknown[i]! += times * other.nutrients[n].unknown;
    });
  }

  /** Nothing but its weight is known any more. */
  forget(): void {
    this.known.fill(0);
    this.unknown.fill(this.mass);
  }

  /** Down or up to another weight by water, and by the alcohol that left. `path` names it in an error. `mayTakeUp`: water may have come in as well. */
  bring(mass: number, alcohol: AlcoholTreatment | undefined, path: string, mayTakeUp: boolean): void {
    const lost = this.mass - mass;
    const spirit = this.known[at.alcohol]!;
    const mayHold = spirit > 0 || this.unknown[at.alcohol]! > 0;
    const gone = alcohol === undefined ? 0 : spirit * (1 - alcoholLeft(alcohol));
    const slack = 1e-9 * this.mass;
    if (!mayTakeUp && gone > lost + slack)
      throw new Contradiction(
        path,
        `${percent(mass / this.mass)} of its weight is to be left, though the alcohol alone that leaves is ${percent(gone / this.mass)} of it`,
        `at most ${percent(1 - gone / this.mass)}`,
      );
    const water = lost - gone;
    const allKnown = this.unknown[at.water] === 0 && !(mayHold && alcohol === undefined);
    if (allKnown && water > this.known[at.water]! + slack)
      throw new Contradiction(
        path,
        `${percent(mass / this.mass)} of its weight is to be left, though only ${percent((this.known[at.water]! + gone) / this.mass)} of it can boil away`,
        `at least ${percent(1 - (this.known[at.water]! + gone) / this.mass)}`,
      );
    const left = mass / this.mass;
    names.forEach((_, i) => {
      this.unknown[i]! *= left;
    });
    this.known[at.water] = Math.max(0, this.known[at.water]! - water);
    this.known[at.alcohol] = spirit - gone;
    if (mayHold && alcohol === undefined && lost !== 0) {
      this.known[at.alcohol] = 0;
      this.unknown[at.alcohol] = mass;
      this.unknown[at.water] = mass;
    }
    this.mass = mass;
  }
}

const percent = (x: number) => `${Number((100 * x).toPrecision(3))} %`;

function weightOf(line: RecipeLine, recipe: PantryRecipe, index: number): number {
  const path = () => `${recipe.name}, ${line.name ?? `line ${index + 1}`}`;
  if (!(line.mass >= 0 && line.mass < 1e9)) throw new OutOfRange(path(), `${line.mass} kg`, '0 kg or more');
  if (line.reduced !== undefined && !(line.reduced.to > 0 && line.reduced.to <= 1))
    throw new OutOfRange(path(), `cooked down to ${percent(line.reduced.to)}`, 'more than 0 to 100 %');
  return line.mass;
}

function circle(trail: readonly PantryRecipe[], recipe: PantryRecipe): Contradiction {
  const from = trail.findIndex((r) => r.id === recipe.id);
  const path = [...trail.slice(from), recipe].map((r) => r.name).join(' → ');
  return new Contradiction(path, 'goes round in a circle', 'nothing is made of itself');
}

/** How often a recipe's whole outcome goes into a weight of it. */
function timesOf(mass: number, outcome: Outcome, name: string): number {
  if (mass === 0) return 0;
  if (!(outcome.mass > 0))
    throw new Contradiction(name, 'nothing is weighed into it', 'a recipe that weighs something');
  return mass / outcome.mass;
}

function reckonedItem(recipe: PantryRecipe, pantry: Pantry, trail: readonly PantryRecipe[]): Outcome {
  const kept = pantry.reckoned.get(recipe.id);
  if (kept !== undefined) return kept;
  if (trail.some((r) => r.id === recipe.id)) throw circle(trail, recipe);
  const here = [...trail, recipe];
  const sums = new Sums();
  const missing = new Set<string>();
  let weighedIn = 0;
  recipe.lines.forEach((line, index) => {
    const mass = weightOf(line, recipe, index);
    const item = pantry.items.get(line.of);
    const below = item?.kind === 'recipe' ? reckonedItem(item, pantry, here) : undefined;
    if (item === undefined) missing.add(line.of);
    for (const id of below?.missing ?? []) missing.add(id);
    if (mass === 0) return;
    weighedIn += mass;
    const stated = line.stated;
    const times = below === undefined ? 0 : timesOf(mass, below, `${recipe.name} → ${item?.name}`);

    const perKg = stated?.costPerKg ?? (item?.kind === 'food' ? item.costPerKg : null);
    if (perKg !== null && perKg !== undefined) sums.cost += mass * perKg;
    else if (below !== undefined) {
      sums.cost += times * below.cost.known;
      sums.unpriced += times * below.cost.unknown;
    } else sums.unpriced += mass;

    const own = line.reduced === undefined ? sums : new Sums();
    const food = stated?.nutrients ?? (item?.kind === 'food' ? item.nutrients : undefined);
    if (food !== undefined) own.addFood(mass, food);
    else if (below !== undefined) own.addOutcome(below, times);
    else own.addFood(mass, nothingKnown);
    if (line.reduced !== undefined) {
      own.bring(
        mass * line.reduced.to,
        line.reduced.alcohol,
        `${recipe.name} → ${line.name ?? item?.name ?? line.of}`,
        false,
      );
      sums.add(own, 1);
    }
  });
  sums.cost += recipe.besides?.known ?? 0;
  sums.unpriced += recipe.besides?.unknown ?? 0;
  finish(sums, recipe);
  const outcome: Outcome = {
    weighedIn,
    mass: sums.mass,
    nutrients: each((_, i) => ({ known: sums.known[i]!, unknown: sums.unknown[i]! })),
    cost: { known: sums.cost, unknown: sums.unpriced },
    missing: [...missing],
  };
  pantry.reckoned.set(recipe.id, outcome);
  return outcome;
}

const nothingKnown = each(() => null) as Nutrients;

/** What the rest of the method makes of the lines. */
function finish(sums: Sums, recipe: PantryRecipe): void {
  const { outcome } = recipe;
  if (outcome === undefined || sums.mass === 0) return;
  if (!(outcome.to > 0 && outcome.to <= 20))
    throw new OutOfRange(recipe.name, `a yield of ${percent(outcome.to)}`, 'more than 0 to 2000 %');
  const mass = sums.mass * outcome.to;
  const { stated } = outcome;
  if (stated?.nutrients !== undefined || outcome.by === 'not known') {
    sums.mass = mass;
    sums.forget();
    if (stated?.nutrients !== undefined) {
      sums.mass = 0;
      sums.unknown.fill(0);
      sums.addFood(mass, stated.nutrients);
    }
  } else sums.bring(mass, outcome.alcohol, recipe.name, true);
  if (stated?.costPerKg !== undefined) {
    sums.cost = mass * stated.costPerKg;
    sums.unpriced = 0;
  }
}

/**
 * What comes of a recipe: its weight, what is in it [kg] and what it costs [minor units], through recipes to any depth.
 *
 *     x = Σ m_j·x_j (a food) + Σ m_j/M_k·X_k (a recipe k that yields M_k and holds X_k), less the water and alcohol that leave
 *
 * @param recipe as it stands, also where it is not in the pantry yet; masses ≥ 0 kg
 * @param pantry what its lines point at
 * Assumes that only water, and alcohol by its treatment, leave in cooking down; that what is strained off or poured off is
 * said (`by: 'not known'`), and then nothing but weight and cost is known. Refuses a circle, naming its path, and boiling away
 * more than there is. What the pantry does not have is named in `missing` and nothing of it is known.
 * Checked by hand and by properties: nested equals written out, any order, linear in weight, nothing lost.
 * @example reckon({ kind: 'recipe', id: 'r', name: 'r', lines: [{ of: 'gone', mass: 2 }] }, pantryOf([])).nutrients.fat.unknown // → 2
 * Source: own-computation
 */
export function reckon(recipe: PantryRecipe, pantry: Pantry): Outcome {
  return reckonedItem(recipe, holding(pantry, recipe), []);
}

function expandedItem(
  recipe: PantryRecipe,
  pantry: Pantry,
  trail: readonly PantryRecipe[],
): ReadonlyMap<string, number> {
  const kept = pantry.expanded.get(recipe.id);
  if (kept !== undefined) return kept;
  if (trail.some((r) => r.id === recipe.id)) throw circle(trail, recipe);
  const here = [...trail, recipe];
  const leaves = new Map<string, number>();
  recipe.lines.forEach((line, index) => {
    const mass = weightOf(line, recipe, index);
    if (mass === 0) return;
    const item = pantry.items.get(line.of);
    if (item?.kind === 'recipe') {
      const times = timesOf(mass, reckonedItem(item, pantry, here), `${recipe.name} → ${item.name}`);
      for (const [id, kg] of expandedItem(item, pantry, here))
        leaves.set(id, (leaves.get(id) ?? 0) + times * kg);
    } else leaves.set(line.of, (leaves.get(line.of) ?? 0) + mass);
  });
  pantry.expanded.set(recipe.id, leaves);
  return leaves;
}

/**
 * The foods of a recipe as they are weighed in at the bottom of it all, by id [kg].
 * Equation: m_i = Σ_j m_j (lines that are i) + Σ_k m_k/M_k · m_i,k (lines that are a recipe k of yield M_k).
 * Parameters: recipe, pantry as for `reckon`. Assumptions: what was boiled or strained away was weighed in all the same.
 * Checked: by hand, and by the property that a recipe written out in its foods gives the same.
 * @example leavesOf({ kind: 'recipe', id: 'r', name: 'r', lines: [{ of: 'salt', mass: 2 }, { of: 'salt', mass: 1 }] }, pantryOf([])).get('salt') // → 3
 * Source: own-computation
 */
export function leavesOf(recipe: PantryRecipe, pantry: Pantry): ReadonlyMap<string, number> {
  return expandedItem(recipe, holding(pantry, recipe), []);
}
