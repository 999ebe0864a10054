/** Nutrition of what is weighed in, per 100 g and per portion: what is known of it in whole, and what is "at least". */
import { OutOfRange } from '../errors.ts';
import type { Outcome, Pantry, PantryRecipe } from './flatten.ts';
import { type Nutrient, type Nutrients, nutrients as names } from './food.ts';

/**
 * Energy of a gram, by the regulation's own factors: kJ and kcal are two sums, neither is converted from the other.
 * Polyols 10/2.4, salatrims 25/6, organic acids 13/3 and erythritol 0/0 stand there too; no food here says how much it holds.
 */
export const energyFactors = {
  carbohydrate: { kj: 17, kcal: 4 },
  protein: { kj: 17, kcal: 4 },
  fat: { kj: 37, kcal: 9 },
  fibre: { kj: 8, kcal: 2 },
  alcohol: { kj: 29, kcal: 7 },
} as const satisfies Partial<Record<Nutrient, { kj: number; kcal: number }>>;

/** The general factors [kcal/g], for total carbohydrate, in which fibre counts in full. */
export const usEnergyFactors = { carbohydrate: 4, fibre: 4, protein: 4, fat: 9, alcohol: 7 } as const;

export const energyBasis = [
  {
    what: 'energy of a gram, kJ and kcal summed apart',
    source: 'eu-1169-2011-labels',
    confidence: 'secondary',
  },
] as const;

/** An amount, and whether there may be more of it. */
export interface Figure {
  readonly value: number;
  /** Of some part nobody knows: `value` is the least there is, and no total. */
  readonly atLeast: boolean;
}

export interface Nutrition {
  /** [g in so many grams of food] */
  readonly nutrients: Readonly<Record<Nutrient, Figure>>;
  readonly energyKj: Figure;
  readonly energyKcal: Figure;
  /** By the general factors. */
  readonly usKcal: Figure;
  readonly closing: Closing;
}

export interface Closing {
  /** Water, protein, fat, carbohydrate, fibre, ash and alcohol together [g in 100 g]. */
  readonly sum: number;
  /** Comes to 100 g ± 0.5 g, and all seven are known. */
  readonly closes: boolean;
  /** Those of the seven of which a part is not known. */
  readonly unknown: readonly Nutrient[];
}

const parts = ['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash', 'alcohol'] as const;

/** Largest gap at which a composition still closes [g in 100 g]: the sum of published figures that were each rounded. */
export const closingGap = 0.5;

const sumOver = (
  factors: Readonly<Partial<Record<Nutrient, number>>>,
  of: Readonly<Record<Nutrient, Figure>>,
): Figure => {
  let value = 0;
  let atLeast = false;
  for (const n of names) {
    const factor = factors[n];
    if (factor === undefined) continue;
    value += factor * of[n].value;
    atLeast ||= of[n].atLeast;
  }
  return { value, atLeast };
};

const only = (unit: 'kj' | 'kcal') =>
  Object.fromEntries(Object.entries(energyFactors).map(([n, f]) => [n, f[unit]])) as Record<
    keyof typeof energyFactors,
    number
  >;
const kjOf = only('kj');
const kcalOf = only('kcal');

/**
 * Nutrition in a weight of what comes of a recipe [g, kJ, kcal]; null where it weighs nothing.
 *
 *     x = X/M·m;  E = Σ factor·x, for kJ and for kcal apart
 *
 * @param outcome what `reckon` gave: a yield in it makes this per weight as sold
 * @param grams of the food, above 0: 100, or a portion
 * Assumes that fibre gives 8 kJ and 2 kcal, and that acids and polyols, which no food here states, give nothing.
 * A sum of which a part is not known is marked `atLeast`.
 * Checked: the regulation's factors on a case worked by hand (833.3 kJ, 199.8 kcal), and published foods in the examples.
 * @example nutritionOf({ weighedIn: 0, mass: 0, nutrients: {}, cost: {}, missing: [] }) // → null
 * Source: eu-1169-2011-labels
 * Source: cfr-21-101-9
 */
export function nutritionOf(outcome: Outcome, grams = 100): Nutrition | null {
  if (!(grams > 0 && grams <= 1e6)) throw new OutOfRange('grams', `${grams} g`, 'more than 0 to 1e6 g');
  if (!(outcome.mass > 0)) return null;
  const figures = Object.fromEntries(
    names.map((n) => {
      const { known, unknown } = outcome.nutrients[n];
      return [n, { value: (known / outcome.mass) * grams, atLeast: unknown > 1e-12 * outcome.mass }];
    }),
  ) as Record<Nutrient, Figure>;
  return {
    nutrients: figures,
    energyKj: sumOver(kjOf, figures),
    energyKcal: sumOver(kcalOf, figures),
    usKcal: sumOver(usEnergyFactors, figures),
    closing: closingOf(figures, grams),
  };
}

function closingOf(figures: Readonly<Record<Nutrient, Figure>>, grams: number): Closing {
  const sum = (parts.reduce((s, n) => s + figures[n].value, 0) / grams) * 100;
  const unknown = parts.filter((n) => figures[n].atLeast);
  return { sum, unknown, closes: unknown.length === 0 && Math.abs(sum - 100) <= closingGap + 1e-9 };
}

/**
 * Energy of a food from its composition [kJ and kcal in 100 g].
 * Equation: E = Σ factor·x, each unit with its own factors. Parameters: mass fractions 0–1, null where not known.
 * Assumptions: as for `nutritionOf`. Checked: fat 28 g, protein 16 g in 100 g give 1308 kJ and 316 kcal.
 * @example energyOf({ water: 0.55, protein: 0.16, fat: 0.28, saturates: null, carbohydrate: 0, sugars: 0, fibre: 0, ash: 0.01, salt: null, alcohol: 0 }).kj.value // → 1308
 * Source: eu-1169-2011-labels
 */
export function energyOf(food: Nutrients): {
  readonly kj: Figure;
  readonly kcal: Figure;
  readonly usKcal: Figure;
} {
  const figures = Object.fromEntries(
    names.map((n) => [n, { value: 100 * (food[n] ?? 0), atLeast: food[n] === null }]),
  ) as Record<Nutrient, Figure>;
  return {
    kj: sumOver(kjOf, figures),
    kcal: sumOver(kcalOf, figures),
    usKcal: sumOver(usEnergyFactors, figures),
  };
}

/** A food of which something is not known, and the way to it from the top. */
export interface Unknown {
  readonly id: string;
  /** Names from the first line down to the food: ['panade', 'breadcrumbs']. */
  readonly path: readonly string[];
  /** Weighed in there [kg]. */
  readonly mass: number;
}

/**
 * Foods of a recipe of which a nutrient is not known, by the way each comes in [kg].
 * Parameters: recipe and pantry as for `reckon`, nutrient. Assumptions: what a line or a recipe states of itself is known and
 * not looked behind; a food that comes by two ways is named twice; a recipe of which nothing but weight is known after its
 * method is named itself. Checked: nested, stated, missing and strained by hand.
 * @example unknownIn({ kind: 'recipe', id: 'r', name: 'r', lines: [{ of: 'x', mass: 2 }] }, { items: new Map(), reckoned: new Map(), expanded: new Map() }, 'fat')[0].mass // → 2
 * Source: own-computation
 */
export function unknownIn(recipe: PantryRecipe, pantry: Pantry, nutrient: Nutrient): Unknown[] {
  const found: Unknown[] = [];
  const walk = (at: PantryRecipe, path: readonly string[], times: number, depth: number): void => {
    // A circle has no sums either; whoever asks for these has been told by `reckon`.
    if (depth > 64) return;
    for (const line of at.lines) {
      if (!(line.mass > 0)) continue;
      const item = pantry.items.get(line.of);
      const here = [...path, line.name ?? item?.name ?? line.of];
      const mass = times * line.mass;
      const stated = line.stated?.nutrients;
      if (stated !== undefined) {
        if (stated[nutrient] === null) found.push({ id: line.of, path: here, mass });
      } else if (item?.kind === 'recipe') {
        const after = item.outcome?.stated?.nutrients;
        const lost = after === undefined && item.outcome?.by === 'not known';
        if (lost || after?.[nutrient] === null) found.push({ id: line.of, path: here, mass });
        else if (after === undefined) {
          const weighed = item.lines.reduce((s, l) => s + l.mass * (l.reduced?.to ?? 1), 0);
          if (weighed > 0) walk(item, here, mass / (weighed * (item.outcome?.to ?? 1)), depth + 1);
        }
      } else if (item === undefined || item.nutrients[nutrient] === null)
        found.push({ id: line.of, path: here, mass });
    }
  };
  walk(recipe, [], 1, 0);
  return found;
}
