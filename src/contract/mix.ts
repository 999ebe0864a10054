/** `mix`: a filling as it is weighed, or as it is solved for: what is in it, what it costs, what it holds for a guest. */
import { z } from 'zod';
import { OutOfRange } from '../core/errors.ts';
import { type FoundAllergen, usAllergensOf } from '../core/filling/allergens.ts';
import {
  type Outcome,
  type PantryFood,
  type PantryRecipe,
  pantryOf,
  reckon,
} from '../core/filling/flatten.ts';
import {
  allergens as fourteen,
  type Nutrient,
  nutrients,
  type UsAllergen,
  usAllergens,
} from '../core/filling/food.ts';
import { labelOf } from '../core/filling/label.ts';
import { energyBasis, type Figure, nutritionOf, unknownIn } from '../core/filling/nutrition.ts';
import { findIngredient } from '../core/properties/ingredients/find.ts';
import { ingredientById } from '../core/properties/ingredients/table.ts';
import { saltWaterActivity, waterPhaseSalt } from '../core/salt/water-activity.ts';
import { type Basis, cite } from '../core/sources.ts';
import { GramsOrRange, type SolvedMix, SolveInput, solveMix } from './mix-solve.ts';
import { accept } from './problem.ts';
import { fraction, Text } from './quantities.ts';
import { refuse } from './refuse.ts';
import { loadSolver } from './solver.ts';

/** Mass fractions of the edible weight. Carbohydrate is without fibre; salt lies within ash. What is left out is not known. */
const MixComposition = z.strictObject({
  water: fraction(),
  protein: fraction(),
  fat: fraction(),
  carbohydrate: fraction(),
  fibre: fraction(),
  ash: fraction(),
  alcohol: fraction().optional(),
  saturates: fraction().optional(),
  sugars: fraction().optional(),
  salt: fraction().optional(),
});

const MixIngredient = z.strictObject({
  /** Row of the published table. */
  id: z.string().max(80).optional(),
  name: Text(120).optional(),
  composition: MixComposition.optional(),
  g: GramsOrRange,
  /** In any money: the answer's cost is in the same. */
  pricePerKg: z.number().min(0).max(1e9).optional(),
  /** Of a composition of one's own: what it holds. Absent: nobody has said. */
  allergens: z.array(z.enum(fourteen)).max(14).optional(),
  /** Weighed in steps of so much, where it is solved for. */
  stepG: z.number().positive().max(1e6).optional(),
});

export const MixInput = z.strictObject({
  name: Text(120).optional(),
  ingredients: z.array(MixIngredient).min(1, 'at least one ingredient').max(200),
  solve: SolveInput.optional(),
  /** Weight of the whole mix: what is weighed is brought to it, what is solved for is held to it. */
  totalG: z.number().positive().max(1e7).optional(),
  place: z.enum(['GB', 'EU', 'US']).default('GB'),
});
export type MixInput = z.infer<typeof MixInput>;

type Given = MixInput['ingredients'][number];

/** How far a stated composition may be from closing. */
const closes = 0.005;

function foodOf(given: Given, i: number): PantryFood {
  const path = `ingredients[${i}]`;
  if ((given.id === undefined) === (given.composition === undefined))
    refuse(path, given.id === undefined ? 'neither' : 'both', 'either id or composition');
  const costPerKg = given.pricePerKg ?? null;
  if (given.composition !== undefined) {
    const c = given.composition;
    const sum = c.water + c.protein + c.fat + c.carbohydrate + c.fibre + c.ash + (c.alcohol ?? 0);
    if (Math.abs(sum - 1) > closes)
      refuse(`${path}.composition`, `a sum of ${sum.toFixed(4)}`, `1 ± ${closes}`);
    const within = (part: 'saturates' | 'sugars' | 'salt', of: 'fat' | 'carbohydrate' | 'ash') => {
      if ((c[part] ?? 0) > c[of] + 1e-9)
        refuse(`${path}.composition.${part}`, String(c[part]), `at most ${of}, ${c[of]}`);
    };
    within('saturates', 'fat');
    within('sugars', 'carbohydrate');
    within('salt', 'ash');
    return {
      kind: 'food',
      id: String(i),
      name: given.name ?? `ingredient ${i + 1}`,
      nutrients: {
        ...c,
        saturates: c.saturates ?? null,
        sugars: c.sugars ?? null,
        salt: c.salt ?? null,
        alcohol: c.alcohol ?? 0,
      },
      allergens: given.allergens?.map((allergen) => ({ allergen })) ?? null,
      costPerKg,
    };
  }
  const row = ingredientById(given.id ?? '');
  if (row === undefined) {
    const near = findIngredient((given.id ?? '').replaceAll('-', ' '), 3).map((f) => f.row.id);
    refuse(
      `${path}.id`,
      JSON.stringify(given.id),
      near.length === 0
        ? 'the id of a row of the ingredient table'
        : `a row of the ingredient table; near it: ${near.join(', ')}`,
    );
  }
  const marks = given.allergens?.map((allergen) => ({ allergen })) ?? [];
  return {
    kind: 'food',
    id: String(i),
    name: given.name ?? row.name,
    nutrients: row.nutrients,
    // What is said here is added to what the row says; it takes nothing away.
    allergens: row.allergens === null ? (marks.length === 0 ? null : marks) : [...row.allergens, ...marks],
    costPerKg,
    label: {
      name: given.name ?? row.labelName,
      ...(row.notEaten === true ? { notEaten: true as const } : {}),
    },
  };
}

const exact = (f: Figure): number | null => (f.atLeast ? null : f.value);
const round = (x: number | null, digits: number): number | null =>
  x === null ? null : Number(x.toFixed(digits));

const nutrientWords: Readonly<Record<Nutrient, string>> = {
  water: 'water',
  protein: 'protein',
  fat: 'fat',
  saturates: 'saturates',
  carbohydrate: 'carbohydrate',
  sugars: 'sugars',
  fibre: 'fibre',
  ash: 'ash',
  salt: 'salt',
  alcohol: 'alcohol',
};

/** Water activity by the salt alone, so that it is not told lower than it is. */
function activityOf(salt: number | null, water: number | null) {
  if (salt === null || water === null || !(water > 0)) return { phase: null, activity: null };
  const phase = waterPhaseSalt(salt, water);
  try {
    return { phase, activity: saltWaterActivity(phase) };
  } catch (error) {
    if (error instanceof OutOfRange) return { phase, activity: null };
    throw error;
  }
}

const allergenWords = (f: FoundAllergen) =>
  f.kinds.length === 0 ? f.allergen : `${f.allergen} (${f.kinds.join(', ')})`;

/** Runs `mix` from JSON to JSON. Throws `InputProblems` for anything wrong with the input, also where limits clash. */
export async function runMix(json: unknown) {
  const input = accept(MixInput, json);
  const foods = input.ingredients.map(foodOf);
  const solved = input.solve === undefined ? null : await solvedFor(input, foods);
  const grams = solved === null ? weighed(input) : [...solved.grams];
  const total = grams.reduce((a, b) => a + b, 0);
  if (!(total > 0)) refuse('ingredients', 'nothing weighed in', 'a weight of more than 0 g');
  const pantry = pantryOf(foods);
  const recipe: PantryRecipe = {
    kind: 'recipe',
    id: 'mix',
    name: input.name ?? 'the mix',
    lines: foods.map((food, i) => ({ of: food.id, name: food.name, mass: grams[i]! / 1000 })),
  };
  const outcome = reckon(recipe, pantry);
  const nutrition = nutritionOf(outcome);
  if (nutrition === null) throw new Error('a mix that weighs something has its nutrition');
  const per100 = (n: Nutrient) => exact(nutrition.nutrients[n]);
  const composition = Object.fromEntries(
    (['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash', 'alcohol'] as const).map((n) => {
      const value = per100(n);
      return [n, value === null ? null : round(value / 100, 6)];
    }),
  );
  const water = per100('water');
  const protein = per100('protein');
  const fat = per100('fat');
  const salt = per100('salt');
  const { phase, activity } = activityOf(salt, water);
  const ratio = (a: number | null, b: number | null) =>
    a === null || b === null || b === 0 ? null : round(a / b, 4);
  const label = labelOf({ recipe, pantry, place: input.place });
  const unknown = nutrients.flatMap((n) =>
    unknownIn(recipe, pantry, n).map((u) => ({ what: nutrientWords[n], of: u.path.join(' → ') })),
  );
  return {
    grams: grams.map((g) => round(g, 4)),
    totalG: round(total, 4),
    composition,
    closing: {
      sumPct: round(nutrition.closing.sum, 3),
      closes: nutrition.closing.closes,
    },
    energyKj: round(exact(nutrition.energyKj), 4),
    energyKcal: round(exact(nutrition.energyKcal), 4),
    nutritionPer100g: {
      energyKj: round(exact(nutrition.energyKj), 4),
      energyKcal: round(exact(nutrition.energyKcal), 4),
      ...Object.fromEntries(
        (['fat', 'saturates', 'carbohydrate', 'sugars', 'fibre', 'protein', 'salt', 'alcohol'] as const).map(
          (n) => [`${n}G`, round(per100(n), 4)],
        ),
      ),
    },
    /** Of each, what there is at the least where not all of it is known. */
    atLeastPer100g: Object.fromEntries(
      nutrients
        .filter((n) => nutrition.nutrients[n].atLeast)
        .map((n) => [`${n}G`, round(nutrition.nutrients[n].value, 4)]),
    ),
    costPerKg: costOf(outcome),
    saltPct: round(salt, 4),
    waterPhaseSaltPct: phase === null ? null : round(100 * phase, 4),
    waterActivity: round(activity, 4),
    waterToProtein: ratio(water, protein),
    fatToProtein: ratio(fat, protein),
    allergens: label.allergens.contains.map((f) => f.allergen),
    allergensUs: usOf(input, grams, label.allergens.contains),
    allergenRoutes: label.allergens.contains.map((f) => ({
      allergen: allergenWords(f),
      certain: f.certain,
      from: f.routes.map((r) => r.path.join(' → ')),
    })),
    allergensNotSaid: label.allergens.notSaid.map((path) => path.join(' → ')),
    ingredientList: label.ingredients.map((l) => l.name),
    ingredientText: label.runs,
    unknown,
    ...(solved === null
      ? {}
      : {
          solved: {
            minimised: solved.minimised,
            constraints: solved.constraints,
            notKnown: solved.notKnown,
            proven: solved.proven,
          },
        }),
    basis: basisOf(input).map((b) => ({ what: b.what, source: cite(b.source), confidence: b.confidence })),
    cautions: cautionsOf(label.allergens.notSaid.length > 0, unknown.length > 0),
  };
}

/** The nine of the US: what the fourteen come to there, and what only the US counts of the rows that were weighed in. */
function usOf(input: MixInput, grams: readonly number[], contains: readonly FoundAllergen[]): UsAllergen[] {
  const only = input.ingredients.flatMap(({ id }, i) =>
    id === undefined || !((grams[i] ?? 0) > 0) ? [] : (ingredientById(id)?.usOnly ?? []),
  );
  const found = new Set<UsAllergen>([...usAllergensOf(contains), ...only]);
  return usAllergens.filter((a) => found.has(a));
}

/** Weights as given, brought to the total that is wanted. */
function weighed(input: MixInput): number[] {
  const given = input.ingredients.map(({ g }, i) => {
    if (typeof g === 'number') return g;
    return refuse(
      `ingredients[${i}].g`,
      JSON.stringify(g),
      'a weight; from low to high only where solve says what to look for',
    );
  });
  const sum = given.reduce((a, b) => a + b, 0);
  if (input.totalG === undefined || !(sum > 0)) return given;
  const { totalG } = input;
  return given.map((g) => (g * totalG) / sum);
}

async function solvedFor(input: MixInput, foods: readonly PantryFood[]): Promise<SolvedMix> {
  const { solve } = input;
  if (solve === undefined) throw new Error('nothing to solve for');
  const pantry = pantryOf(foods);
  const solvable = foods.map((food, i) => ({
    name: food.name,
    g: input.ingredients[i]!.g,
    stepG: input.ingredients[i]!.stepG,
    per: reckon(
      { kind: 'recipe', id: `per ${i}`, name: food.name, lines: [{ of: food.id, mass: 1 }] },
      pantry,
    ),
  }));
  return solveMix(solvable, solve, input.totalG, await loadSolver());
}

const costOf = (outcome: Outcome): number | null =>
  outcome.cost.unknown > 1e-12 * outcome.mass || !(outcome.mass > 0)
    ? null
    : round(outcome.cost.known / outcome.mass, 6);

function basisOf(input: MixInput): Basis[] {
  const rows = new Map<string, Basis>();
  for (const { id } of input.ingredients) {
    const row = id === undefined ? undefined : ingredientById(id);
    if (row === undefined) continue;
    rows.set(`${row.source} ${row.confidence}`, {
      what: 'composition of foods by their id',
      source: row.source,
      confidence: row.confidence,
    });
  }
  if (input.ingredients.some((i) => i.composition !== undefined))
    rows.set('stated', { what: 'composition as stated', source: 'user-input', confidence: 'read' });
  return [
    ...rows.values(),
    ...energyBasis,
    {
      what: 'water activity, of the salt alone: sugars and the rest would make it lower',
      source: 'pitzer-mayorga-1973',
      confidence: 'secondary',
    },
  ];
}

const cautionsOf = (notSaid: boolean, unknown: boolean): string[] => [
  ...(notSaid
    ? ['Nobody has said which allergens some of it holds. Not said is not none: ask, and look at the label.']
    : []),
  ...(unknown ? ['What is not known is left out of no total: a figure that is null was not reckoned.'] : []),
  'Allergens come from a published table and from what was stated; the label of what was bought decides. Equipment and hands may add others.',
  'Advice, not a licence: the local authority and qualified people stand above it.',
];
