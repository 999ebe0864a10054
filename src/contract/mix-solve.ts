/** The `solve` of a mix: weights found so that every constraint holds. Percent and grams here, fractions and kilograms in the engine. */
import { z } from 'zod';
import { formulate } from '../core/filling/formulate.ts';
import type { ClashMember } from '../core/filling/formulate-clash.ts';
import type {
  Choosable,
  Clause,
  Goal,
  Limit,
  PerKilogram,
  Quantity,
} from '../core/filling/formulate-model.ts';
import type { Solve } from '../core/numerics/linear-programme.ts';
import { InputProblems, type Problem } from './problem.ts';
import { refuse } from './refuse.ts';

const range = (most: number) =>
  z
    .strictObject({
      low: z.number().min(0).max(most).optional(),
      high: z.number().min(0).max(most).optional(),
    })
    .refine((r) => r.low === undefined || r.high === undefined || r.low <= r.high, 'low at most high')
    .optional();

/** What can be held to a range, and how it is told to the engine. */
export const constrained = {
  fatPct: { quantity: { of: 'nutrient', nutrient: 'fat' }, per: 100 },
  saturatesPct: { quantity: { of: 'nutrient', nutrient: 'saturates' }, per: 100 },
  proteinPct: { quantity: { of: 'nutrient', nutrient: 'protein' }, per: 100 },
  waterPct: { quantity: { of: 'nutrient', nutrient: 'water' }, per: 100 },
  carbohydratePct: { quantity: { of: 'nutrient', nutrient: 'carbohydrate' }, per: 100 },
  sugarsPct: { quantity: { of: 'nutrient', nutrient: 'sugars' }, per: 100 },
  fibrePct: { quantity: { of: 'nutrient', nutrient: 'fibre' }, per: 100 },
  alcoholPct: { quantity: { of: 'nutrient', nutrient: 'alcohol' }, per: 100 },
  saltPct: { quantity: { of: 'nutrient', nutrient: 'salt' }, per: 100 },
  waterPhaseSaltPct: { quantity: { of: 'salt in the water' }, per: 100 },
  waterToProtein: { quantity: { of: 'ratio', over: 'water', under: 'protein' }, per: 1 },
  fatToProtein: { quantity: { of: 'ratio', over: 'fat', under: 'protein' }, per: 1 },
  /** Per 100 g. */
  energyKj: { quantity: { of: 'energy', unit: 'kj' }, per: 0.1 },
  energyKcal: { quantity: { of: 'energy', unit: 'kcal' }, per: 0.1 },
  /** In the money that the ingredients' prices are in. */
  costPerKg: { quantity: { of: 'cost' }, per: 1 },
} as const satisfies Record<string, { quantity: Quantity; per: number }>;
export type Constrained = keyof typeof constrained;

const most: Partial<Record<Constrained, number>> = {
  waterToProtein: 1_000,
  fatToProtein: 1_000,
  energyKj: 4_000,
  energyKcal: 1_000,
  costPerKg: 1e9,
};
const constraintShape = Object.fromEntries(
  Object.keys(constrained).map((k) => [k, range(most[k as Constrained] ?? 100)]),
) as Record<Constrained, ReturnType<typeof range>>;

/** A weight, or between what and what it may be chosen. */
export const GramsOrRange = z.union([
  z.number().min(0).max(1e7),
  z
    .strictObject({ low: z.number().min(0).max(1e7), high: z.number().min(0).max(1e7) })
    .refine((r) => r.low <= r.high, 'low at most high'),
]);
export type GramsOrRange = z.infer<typeof GramsOrRange>;

export const SolveInput = z.strictObject({
  minimise: z.enum(['cost', 'fat', 'salt', 'energy']),
  constraints: z.strictObject(constraintShape).default({}),
  /** Shares of what is weighed in, by the ingredients' places in the list, counted from 0. */
  shares: z
    .array(
      z.strictObject({
        of: z.array(z.int().min(0)).min(1),
        among: z.array(z.int().min(0)).min(1).optional(),
        lowPct: z.number().min(0).max(100).optional(),
        highPct: z.number().min(0).max(100).optional(),
      }),
    )
    .max(50)
    .default([]),
});
export type SolveInput = z.infer<typeof SolveInput>;

export interface Solvable {
  readonly name: string;
  readonly per: PerKilogram;
  readonly g: GramsOrRange;
  /** Weighed in steps of so much. */
  readonly stepG?: number | undefined;
}

const goals: Record<SolveInput['minimise'], Goal> = {
  cost: { make: 'least', quantity: { of: 'cost' } },
  fat: { make: 'least', quantity: { of: 'nutrient', nutrient: 'fat' } },
  salt: { make: 'least', quantity: { of: 'nutrient', nutrient: 'salt' } },
  energy: { make: 'least', quantity: { of: 'energy', unit: 'kj' } },
};

const lowOf = (g: GramsOrRange) => (typeof g === 'number' ? g : g.low) / 1000;
const highOf = (g: GramsOrRange) => (typeof g === 'number' ? g : g.high) / 1000;

function limitsOf(input: SolveInput, count: number): Limit[] {
  const scaled = (v: number | undefined, per: number) => (v === undefined ? undefined : v / per);
  const fromKeys = (Object.keys(constrained) as Constrained[]).flatMap((key): Limit[] => {
    const asked = input.constraints[key];
    if (asked === undefined) return [];
    const { quantity, per } = constrained[key];
    return [
      {
        id: `constraints.${key}`,
        name: key,
        quantity,
        low: scaled(asked.low, per),
        high: scaled(asked.high, per),
      },
    ];
  });
  const shares = input.shares.map((s, i): Limit => {
    const ids = (places: readonly number[], key: string) =>
      places.map((p) => {
        if (p >= count)
          refuse(`solve.shares[${i}].${key}`, String(p), `0 to ${count - 1}: a place in the list`);
        return String(p);
      });
    return {
      id: `shares[${i}]`,
      name: `shares[${i}]`,
      quantity: {
        of: 'share',
        ids: ids(s.of, 'of'),
        among: s.among === undefined ? undefined : ids(s.among, 'among'),
      },
      low: scaled(s.lowPct, 100),
      high: scaled(s.highPct, 100),
    };
  });
  return [...fromKeys, ...shares];
}

const perOf = (limit: Limit): number =>
  limit.quantity.of === 'share' ? 100 : constrained[limit.name as Constrained].per;

/** Rounded to the side that still holds. */
const shown = (value: number, side: 'low' | 'high'): string => {
  const digits = 10 ** Math.max(0, 3 - Math.floor(Math.log10(Math.max(Math.abs(value), 1e-6))));
  return String((side === 'low' ? Math.floor(value * digits) : Math.ceil(value * digits)) / digits);
};

function pathOf(clause: Clause, places: ReadonlyMap<string, number>): string {
  if (clause.kind === 'limit')
    return `solve.${clause.limit.id}.${clause.limit.quantity.of === 'share' ? `${clause.side}Pct` : clause.side}`;
  if (clause.kind === 'total') return 'totalG';
  const at = `ingredients[${places.get(clause.ingredient.id) ?? 0}]`;
  if (clause.kind === 'steps') return `${at}.stepG`;
  return clause.ingredient.low === clause.ingredient.high ? `${at}.g` : `${at}.g.${clause.side}`;
}

function problemOf(
  member: ClashMember,
  others: readonly string[],
  places: ReadonlyMap<string, number>,
  totalG: number,
): Problem {
  const { clause, alone } = member;
  const value = (v: number) =>
    clause.kind === 'limit' ? v * perOf(clause.limit) : clause.kind === 'steps' ? v : v * 1000;
  const found =
    clause.kind === 'limit'
      ? value(clause.limit[clause.side]!)
      : clause.kind === 'total'
        ? totalG
        : clause.kind === 'steps'
          ? (clause.ingredient.step ?? 0) * 1000
          : value(clause.ingredient[clause.side]);
  const side = clause.kind === 'steps' ? 'low' : clause.side;
  const clashes = others.length === 0 ? '' : ` (it clashes with ${others.join(', ')})`;
  const allowed =
    alone === null
      ? 'nothing alone that would help: more than one of these has to give'
      : clause.kind === 'steps'
        ? 'any weight'
        : `${side === 'low' ? 'at most' : 'at least'} ${shown(value(alone), side)}, with the others as they are`;
  return {
    path: pathOf(clause, places),
    found: String(Number(found.toPrecision(6))),
    allowed: `${allowed}${clashes}`,
  };
}

/** What a solved mix says besides its weights. */
export interface SolvedMix {
  /** In the order of the ingredients. */
  readonly grams: readonly number[];
  readonly minimised: SolveInput['minimise'];
  /** Each constraint: what it came to, and what a unit more of its limit adds to what is minimised in a kilogram of the mix. */
  readonly constraints: readonly {
    readonly constraint: string;
    readonly value: number | null;
    readonly binds: 'low' | 'high' | 'both' | null;
    readonly pricePerUnit: { readonly low: number | null; readonly high: number | null };
  }[];
  /** Names of ingredients that could not be used freely, and what is not known of them. */
  readonly notKnown: readonly { readonly ingredient: string; readonly what: string; readonly so: string }[];
  readonly proven: boolean;
}

const quantityWords = (q: Quantity): string =>
  q.of === 'nutrient'
    ? q.nutrient
    : q.of === 'ratio'
      ? `${q.over} or ${q.under}`
      : q.of === 'cost'
        ? 'its price'
        : q.of === 'energy'
          ? 'its energy'
          : q.of === 'salt in the water'
            ? 'its salt or water'
            : 'its weight';

/**
 * Finds the weights, or refuses naming which constraints clash and what each would have to be. `totalG` absent: between the
 * sum of the lows and the sum of the highs, and no less than what has to be weighed in.
 */
export function solveMix(
  ingredients: readonly Solvable[],
  input: SolveInput,
  totalG: number | undefined,
  solve: Solve,
): SolvedMix {
  const choosable = ingredients.map(
    ({ name, per, g, stepG }, i): Choosable => ({
      id: String(i),
      name,
      per,
      low: lowOf(g),
      high: highOf(g),
      now: lowOf(g),
      step: stepG === undefined ? undefined : stepG / 1000,
    }),
  );
  const least = choosable.reduce((s, c) => s + c.low * c.per.mass, 0);
  if (totalG === undefined && !(least > 0))
    refuse(
      'totalG',
      'nothing, and no ingredient that has to be weighed in',
      'the weight of the mix in grams: the cheapest mix is none at all',
    );
  const total =
    totalG === undefined ? { low: least, high: Infinity } : { low: totalG / 1000, high: totalG / 1000 };
  if (!(total.low > 0)) refuse('totalG', String(totalG), 'more than 0');
  const limits = limitsOf(input, ingredients.length);
  const answer = formulate(
    {
      ingredients: choosable,
      limits,
      total: { low: total.low, high: Math.min(total.high, 9e6) },
      goals: [goals[input.minimise]],
    },
    solve,
  );
  const places = new Map(choosable.map((c, i) => [c.id, i]));
  if (answer.status === 'clash') {
    const { members } = answer.clash;
    const left = answer.notKnown.filter((n) => n.so === 'left out');
    const problems = members.map((m) =>
      problemOf(
        m,
        members.filter((o) => o !== m).map((o) => pathOf(o.clause, places)),
        places,
        total.low * 1000,
      ),
    );
    const unknown = left.map(
      (n): Problem => ({
        path: `ingredients[${places.get(n.ingredient.id)}]`,
        found: `${n.ingredient.name}, of which ${quantityWords(n.quantity)} is not known`,
        allowed: 'known figures where a constraint asks for them: it was left out',
      }),
    );
    throw new InputProblems([...problems, ...unknown]);
  }
  if (answer.status === 'not known')
    throw new InputProblems(
      answer.unpriced.map(({ ingredient }) => ({
        path: `ingredients[${places.get(ingredient.id)}].pricePerKg`,
        found: 'nothing',
        allowed: 'a price: solve.constraints.costPerKg cannot be promised without it',
      })),
    );
  if (answer.status === 'stopped') throw new Error('the solver ran out of time before it found any mix');
  return {
    grams: answer.kg.map((kg) => kg * 1000),
    minimised: input.minimise,
    constraints: answer.limits.map(({ limit, value, binds, price }) => {
      const per = perOf(limit);
      const one = (p: number | null) => (p === null ? null : p / answer.mass / per);
      return {
        constraint: limit.name,
        value: value === null ? null : per * (binds === 'high' ? value.most : value.least),
        binds,
        pricePerUnit: { low: one(price.low), high: one(price.high) },
      };
    }),
    notKnown: answer.notKnown.map(({ ingredient, quantity, so }) => ({
      ingredient: ingredient.name,
      what: quantityWords(quantity),
      so,
    })),
    proven: answer.proven,
  };
}
