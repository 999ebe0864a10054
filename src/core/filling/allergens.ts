/** Which allergens come with a recipe, through recipes to any depth, and by which way each came. */
import { Contradiction } from '../errors.ts';
import type { Pantry, PantryRecipe } from './flatten.ts';
import {
  type Allergen,
  type AllergenMarks,
  allergens as fourteen,
  type UsAllergen,
  usAllergens,
} from './food.ts';

/** How one allergen comes in: names from the line of the recipe down to what holds it, ['panade', 'cream']. */
export interface Route {
  readonly path: readonly string[];
  /** The kind, where it is said: wheat, hazelnut. */
  readonly as?: string | undefined;
  /** The label of what was bought decides; counted as there until somebody has looked. */
  readonly checkLabel: boolean;
}

export interface FoundAllergen {
  readonly allergen: Allergen;
  /** Some route is certain; else every one waits for a look at a label. */
  readonly certain: boolean;
  /** Kinds that were named, in alphabetical order. */
  readonly kinds: readonly string[];
  /** A route by which it comes without its kind being said. */
  readonly kindNotSaid: boolean;
  readonly routes: readonly Route[];
  /** More ways than are listed. */
  readonly more: number;
}

/** A risk that the kitchen has declared for what it makes: flour in the air, one fryer for all. */
export interface DeclaredRisk {
  readonly allergen: Allergen;
  readonly why: string;
}

export interface AllergensFound {
  /** In the order of the law's list. */
  readonly contains: readonly FoundAllergen[];
  /** Ways to foods of which nobody has said what they hold: ask. Never none. */
  readonly notSaid: readonly (readonly string[])[];
  readonly notSaidMore: number;
  /** Declared for the kitchen and not contained anyhow. */
  readonly mayContain: readonly DeclaredRisk[];
}

/** Ways listed for each allergen; more are counted. */
const most = 24;

interface Found {
  readonly routes: Map<
    Allergen,
    { list: Route[]; more: number; certain: boolean; kinds: Set<string>; blank: boolean }
  >;
  readonly asks: (readonly string[])[];
  asksMore: number;
}

const kept = new WeakMap<Pantry, Map<PantryRecipe, Found>>();

function mark(found: Found, marks: AllergenMarks | undefined, path: readonly string[]): void {
  for (const { allergen, as, checkLabel } of marks ?? [])
    route(found, allergen, { path, as, checkLabel: checkLabel === true });
}

function route(found: Found, allergen: Allergen, one: Route, times = 1): void {
  const at = found.routes.get(allergen) ?? {
    list: [],
    more: 0,
    certain: false,
    kinds: new Set(),
    blank: false,
  };
  found.routes.set(allergen, at);
  at.certain ||= !one.checkLabel;
  if (one.as === undefined) at.blank = true;
  else at.kinds.add(one.as);
  if (at.list.length < most) at.list.push(one);
  else at.more += times;
}

function ask(found: Found, path: readonly string[]): void {
  if (found.asks.length < most) found.asks.push(path);
  else found.asksMore += 1;
}

function foundIn(recipe: PantryRecipe, pantry: Pantry, trail: readonly PantryRecipe[]): Found {
  const memo = kept.get(pantry) ?? new Map<PantryRecipe, Found>();
  kept.set(pantry, memo);
  const before = memo.get(recipe);
  if (before !== undefined) return before;
  if (trail.some((r) => r.id === recipe.id))
    throw new Contradiction(
      [...trail, recipe].map((r) => r.name).join(' → '),
      'goes round in a circle',
      'nothing is made of itself',
    );
  const found: Found = { routes: new Map(), asks: [], asksMore: 0 };
  for (const line of recipe.lines) {
    if (!(line.mass > 0)) continue;
    const item = pantry.items.get(line.of);
    const name = line.name ?? item?.name ?? line.of;
    const stated = line.stated?.allergens;
    mark(found, stated, [name]);
    if (item?.kind === 'recipe') {
      const below = foundIn(item, pantry, [...trail, recipe]);
      for (const [allergen, { list, more, certain, kinds, blank }] of below.routes) {
        for (const one of list) route(found, allergen, { ...one, path: [name, ...one.path] });
        const at = found.routes.get(allergen)!;
        at.more += more;
        at.certain ||= certain;
        at.blank ||= blank;
        for (const kind of kinds) at.kinds.add(kind);
      }
      for (const path of below.asks) ask(found, [name, ...path]);
      found.asksMore += below.asksMore;
    } else if (item === undefined || item.allergens === null) {
      if (stated === undefined || stated === null) ask(found, [name]);
    } else mark(found, item.allergens, [name]);
  }
  mark(found, recipe.outcome?.stated?.allergens, []);
  memo.set(recipe, found);
  return found;
}

/**
 * Allergens of a recipe with the ways by which they came [-], in the order of Annex II.
 * Parameters: recipe and pantry as for `reckon`; risks the kitchen has declared. Equation: the union over all lines at any depth,
 * of what the pantry says and of what a line adds; nothing that a line says takes anything away.
 * Assumptions: what weighs nothing brings nothing; no process takes an allergen out. Where nobody has said what a food holds, and
 * its line neither, it is asked about.
 * Checked: by properties over random nesting: the union is what the foods at the bottom hold.
 * @example allergensOf({ kind: 'recipe', id: 'r', name: 'r', lines: [{ of: 'x', mass: 1 }] }, { items: new Map(), reckoned: new Map(), expanded: new Map() }).notSaid.length // → 1
 * Source: eu-1169-2011-labels
 */
export function allergensOf(
  recipe: PantryRecipe,
  pantry: Pantry,
  risks: readonly DeclaredRisk[] = [],
): AllergensFound {
  const found = foundIn(recipe, pantry, []);
  const contains = fourteen.flatMap((allergen): FoundAllergen[] => {
    const at = found.routes.get(allergen);
    if (at === undefined) return [];
    return [
      {
        allergen,
        certain: at.certain,
        kinds: [...at.kinds].sort(),
        kindNotSaid: at.blank,
        routes: [...at.list],
        more: at.more,
      },
    ];
  });
  const there = new Set(contains.filter((c) => c.certain).map((c) => c.allergen));
  return {
    contains,
    notSaid: [...found.asks],
    notSaidMore: found.asksMore,
    mayContain: risks.filter((r) => !there.has(r.allergen)),
  };
}

/**
 * A way in words, from what holds it outward [-]: "cream in panade".
 * Parameters: path as in a route. Assumptions, checked: by hand.
 * @example routeWords(['panade', 'cream']) // → 'cream in panade'
 * Source: own-computation
 */
export function routeWords(path: readonly string[]): string {
  return [...path].reverse().join(' in ');
}

const direct: Readonly<Partial<Record<Allergen, UsAllergen>>> = {
  milk: 'milk',
  eggs: 'eggs',
  fish: 'fish',
  crustaceans: 'crustacean shellfish',
  nuts: 'tree nuts',
  peanuts: 'peanuts',
  soybeans: 'soybeans',
  sesame: 'sesame',
};
const wheats = /\b(wheat|spelt|khorasan|durum|emmer|einkorn|semolina|triticale|kamut)\b/i;

/**
 * The nine of the US among allergens that were found, in the order of the statute [-].
 * Parameters: what `allergensOf` gave. Assumptions: cereals whose kind nobody has said count as wheat; barley, rye and oats are
 * none of the nine, and celery, mustard, lupin, molluscs and sulphites neither (sulphites have a rule of their own). What only the
 * US counts as a nut is not found here. Checked: row by row.
 * @example usAllergensOf([{ allergen: 'nuts', certain: true, kinds: [], kindNotSaid: true, routes: [], more: 0 }])[0] // → 'tree nuts'
 * Source: fdca-201-qq
 */
export function usAllergensOf(contains: readonly FoundAllergen[]): UsAllergen[] {
  const nine = new Set<UsAllergen>();
  for (const { allergen, kinds, kindNotSaid } of contains) {
    const same = direct[allergen];
    if (same !== undefined) nine.add(same);
    if (allergen === 'gluten' && (kindNotSaid || kinds.some((k) => wheats.test(k)))) nine.add('wheat');
  }
  return usAllergens.filter((a) => nine.has(a));
}
