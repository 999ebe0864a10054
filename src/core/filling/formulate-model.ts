/** A mix as a linear programme: what may go in, the limits that it is held to, and what is wanted of it. */
import { OutOfRange } from '../errors.ts';
import type { Column, Row } from '../numerics/linear-programme.ts';
import type { Amount } from './flatten.ts';
import type { Nutrient } from './food.ts';
import { energyFactors } from './nutrition.ts';

/** What a kilogram weighed in brings: what `reckon` gives for a line of 1 kg. */
export interface PerKilogram {
  /** What is left of it in the mix [kg/kg]: less than 1 where it is cooked down first. */
  readonly mass: number;
  /** [kg/kg weighed in] */
  readonly nutrients: Readonly<Record<Nutrient, Amount>>;
  /** [minor units/kg weighed in] */
  readonly cost: Amount;
}

export interface Choosable {
  readonly id: string;
  readonly name: string;
  readonly per: PerKilogram;
  /** Weighed in, at least and at most [kg]; the same: it is fixed. `high` may be Infinity. */
  readonly low: number;
  readonly high: number;
  /** Weighed in by the recipe as it is [kg]; 0 where it is new. */
  readonly now: number;
  /** Weighed in whole steps of the scale, pieces or packs of so much [kg]; absent: any weight. */
  readonly step?: number | undefined;
  /** Why its weight is not for the taking; it is then never said what else it could be. */
  readonly hard?: string | undefined;
  /** How much a gram of change of it counts, where the least change is wanted; absent: 1. */
  readonly weight?: number | undefined;
}

/** Something of a mix that can be held to a limit or made small: a sum over its ingredients, or one such sum by another. */
export type Quantity =
  /** Mass fraction of the mix. */
  | { readonly of: 'nutrient'; readonly nutrient: Nutrient }
  | { readonly of: 'ratio'; readonly over: Nutrient; readonly under: Nutrient }
  /** Salt in the water phase, salt/(salt + water). */
  | {
      readonly of: 'salt in the water';
      /** Of what is known alone, as if of the rest there were none. */
      readonly ofKnown?: true | undefined;
    }
  /** [kJ/kg] or [kcal/kg] of the mix, by the regulation's factors. */
  | { readonly of: 'energy'; readonly unit: 'kj' | 'kcal' }
  /** [minor units/kg] of the mix. */
  | { readonly of: 'cost' }
  /** Weighed in of these, as a share of what is weighed in of those; absent: of all. */
  | { readonly of: 'share'; readonly ids: readonly string[]; readonly among?: readonly string[] | undefined };

export interface Limit {
  readonly id: string;
  readonly name: string;
  readonly quantity: Quantity;
  readonly low?: number | undefined;
  readonly high?: number | undefined;
  /** Why it is not for the taking (safety, law). */
  readonly hard?: string | undefined;
}

/** A range that is known to be good: as far inside as can be is wanted of it. `scale`: how far inside counts as one, where it has one end only. */
export interface GoodRange {
  readonly name: string;
  readonly quantity: Quantity;
  readonly low?: number | undefined;
  readonly high?: number | undefined;
  readonly scale?: number | undefined;
}

export type Goal =
  | { readonly make: 'least'; readonly quantity: Exclude<Quantity, { of: 'share' }> }
  /** Least weighed change from the recipe as it is. */
  | { readonly make: 'least change' }
  /** Deepest inside the good ranges: the worst of them as good as can be. */
  | { readonly make: 'best bind'; readonly ranges: readonly GoodRange[] };

export interface MixProblem {
  readonly ingredients: readonly Choosable[];
  readonly limits: readonly Limit[];
  /** What the mix weighs in the end [kg], after what is cooked down. */
  readonly total: { readonly low: number; readonly high: number };
  /** One after the other: the next only decides between what is as good by those before it. */
  readonly goals: readonly Goal[];
}

/** Between what and what it lies: not one number, where a part of it is not known. */
interface Span {
  readonly least: number;
  readonly most: number;
}
const exactly = (v: number): Span => ({ least: v, most: v });
const spanOf = ({ known, unknown }: Amount): Span => ({ least: known, most: known + unknown });

/**
 * What a kilogram weighed in puts over and under the line of a quantity [kg, kJ, kcal or minor units in each kg].
 * Parameters: quantity, ingredient. Assumptions: what is not known lies between nothing and all of its weight.
 * Checked: by the mixes worked out by another program. Source: own-computation
 */
export function spansOf(quantity: Quantity, c: Choosable): { readonly over: Span; readonly under: Span } {
  const { per } = c;
  switch (quantity.of) {
    case 'nutrient':
      return { over: spanOf(per.nutrients[quantity.nutrient]), under: exactly(per.mass) };
    case 'ratio':
      return { over: spanOf(per.nutrients[quantity.over]), under: spanOf(per.nutrients[quantity.under]) };
    case 'salt in the water': {
      const span = quantity.ofKnown === true ? ({ known }: Amount) => exactly(known) : spanOf;
      const salt = span(per.nutrients.salt);
      const water = span(per.nutrients.water);
      return {
        over: salt,
        under: { least: salt.least + water.least, most: salt.most + water.most },
      };
    }
    case 'energy': {
      let least = 0;
      let most = 0;
      for (const [n, factor] of Object.entries(energyFactors)) {
        const span = spanOf(per.nutrients[n as keyof typeof energyFactors]);
        least += 1000 * factor[quantity.unit] * span.least;
        most += 1000 * factor[quantity.unit] * span.most;
      }
      return { over: { least, most }, under: exactly(per.mass) };
    }
    case 'cost':
      return {
        over: { least: per.cost.known, most: per.cost.unknown > 0 ? Infinity : per.cost.known },
        under: exactly(per.mass),
      };
    case 'share':
      return {
        over: exactly(quantity.ids.includes(c.id) ? 1 : 0),
        under: exactly(quantity.among === undefined || quantity.among.includes(c.id) ? 1 : 0),
      };
  }
}

/** Smaller than this a part that is not known is the rounding of sums. */
const trifle = 1e-12;
export const isKnown = ({ least, most }: Span) => most - least <= trifle * (1 + Math.abs(least));

export type Side = 'low' | 'high';

/**
 * Coefficient of an ingredient in a limit's row [as the quantity's upper sum, in each kg], so that Σ coefficient·x is ≥ 0
 * ('low') or ≤ 0 ('high').
 * Equation: over − limit·under. Parameters: quantity, ingredient, the limit's value, its side. Assumptions: the worst way where a
 * part is not known. Checked: by the mixes worked out by another program. Source: own-computation
 */
export function coefficient(quantity: Quantity, c: Choosable, limit: number, side: Side): number {
  const { over, under } = spansOf(quantity, c);
  return side === 'low'
    ? over.least - limit * (limit >= 0 ? under.most : under.least)
    : over.most - limit * (limit >= 0 ? under.least : under.most);
}

/** One side of one limit, one bound of one ingredient, one side of the total, the steps of one ingredient: what can clash, and be let go. */
export type Clause =
  | { readonly kind: 'limit'; readonly limit: Limit; readonly side: Side }
  | { readonly kind: 'bound'; readonly ingredient: Choosable; readonly side: Side }
  | { readonly kind: 'total'; readonly side: Side }
  | { readonly kind: 'steps'; readonly ingredient: Choosable };

export const isHard = (clause: Clause): boolean =>
  (clause.kind === 'limit' && clause.limit.hard !== undefined) ||
  (clause.kind === 'bound' && clause.ingredient.hard !== undefined);

/** Every clause of a problem, without those that ask nothing [-]. Source: own-computation */
export function clausesOf(problem: MixProblem): Clause[] {
  const { ingredients, limits, total } = problem;
  return [
    ...limits.flatMap((limit): Clause[] => [
      ...(limit.low === undefined ? [] : [{ kind: 'limit' as const, limit, side: 'low' as const }]),
      ...(limit.high === undefined ? [] : [{ kind: 'limit' as const, limit, side: 'high' as const }]),
    ]),
    ...ingredients.flatMap((ingredient): Clause[] => [
      ...(ingredient.low > 0 ? [{ kind: 'bound' as const, ingredient, side: 'low' as const }] : []),
      ...(ingredient.high < Infinity ? [{ kind: 'bound' as const, ingredient, side: 'high' as const }] : []),
      ...(ingredient.step === undefined ? [] : [{ kind: 'steps' as const, ingredient }]),
    ]),
    ...(total.low > 0 ? [{ kind: 'total' as const, side: 'low' as const }] : []),
    ...(total.high < Infinity ? [{ kind: 'total' as const, side: 'high' as const }] : []),
  ];
}

/** A programme in the making: a column an ingredient (in steps where it has steps, else in kg), a row a clause. */
export interface Built {
  readonly columns: Column[];
  readonly rows: Row[];
  /** Weight of one unit of an ingredient's column [kg]. */
  readonly unit: readonly number[];
  /** Row of a clause; bounds and steps have none. */
  readonly rowOf: ReadonlyMap<Clause, number>;
}

/**
 * The programme of some clauses [columns in kg, or in steps]. `cost` says what a kilogram of an ingredient adds to what is
 * minimised; without it nothing is. Source: own-computation
 */
export function build(
  problem: MixProblem,
  clauses: readonly Clause[],
  cost: (c: Choosable) => number = () => 0,
): Built {
  const held = new Set<string>();
  for (const c of clauses)
    if (c.kind === 'bound' || c.kind === 'steps')
      held.add(`${c.ingredient.id} ${c.kind === 'steps' ? 'steps' : c.side}`);
  const inSteps = (c: Choosable) => c.step !== undefined && held.has(`${c.id} steps`);
  const unit = problem.ingredients.map((c) => (inSteps(c) ? c.step! : 1));
  const columns = problem.ingredients.map((c, j): Column => {
    const u = unit[j]!;
    const whole = inSteps(c);
    const low = (held.has(`${c.id} low`) ? c.low : 0) / u;
    const high = (held.has(`${c.id} high`) ? c.high : Infinity) / u;
    return {
      name: c.name,
      cost: cost(c) * u,
      low: whole ? Math.ceil(low - 1e-9) : low,
      high: whole && high < Infinity ? Math.floor(high + 1e-9) : high,
      ...(whole ? { whole } : {}),
    };
  });
  const rows: Row[] = [];
  const rowOf = new Map<Clause, number>();
  const terms = (value: (c: Choosable) => number) =>
    problem.ingredients
      .map((c, j) => [j, value(c) * unit[j]!] as const)
      .filter(([j, a]) => a !== 0 && !(columns[j]!.high === 0 && columns[j]!.low === 0));
  for (const clause of clauses) {
    if (clause.kind === 'limit') {
      const { limit, side } = clause;
      rowOf.set(clause, rows.length);
      rows.push({
        name: `${limit.name} ${side}`,
        low: side === 'low' ? 0 : -Infinity,
        high: side === 'low' ? Infinity : 0,
        terms: terms((c) => coefficient(limit.quantity, c, limit[side]!, side)),
      });
    } else if (clause.kind === 'total') {
      rowOf.set(clause, rows.length);
      rows.push({
        name: `total ${clause.side}`,
        low: clause.side === 'low' ? problem.total.low : -Infinity,
        high: clause.side === 'low' ? Infinity : problem.total.high,
        terms: terms((c) => c.per.mass),
      });
    }
  }
  return { columns, rows, unit, rowOf };
}

/** Least and most that a quantity can be at these weights [as the quantity]; null where there is nothing under the line. Source: own-computation */
export function attained(
  quantity: Quantity,
  ingredients: readonly Choosable[],
  kg: readonly number[],
): Span | null {
  const over = { least: 0, most: 0 };
  const under = { least: 0, most: 0 };
  ingredients.forEach((c, j) => {
    const x = kg[j]!;
    if (x === 0) return;
    const s = spansOf(quantity, c);
    over.least += s.over.least * x;
    over.most += s.over.most * x;
    under.least += s.under.least * x;
    under.most += s.under.most * x;
  });
  if (!(under.most > 0)) return null;
  return { least: over.least / under.most, most: under.least > 0 ? over.most / under.least : Infinity };
}

/** Refuses what is not a problem [-]: numbers that are none, names that come twice, limits upside down. Source: own-computation */
export function checkProblem({ ingredients, limits, total, goals }: MixProblem): void {
  const wrong = (path: string, found: string, allowed: string): never => {
    throw new OutOfRange(path, found, allowed);
  };
  const ids = new Set<string>();
  ingredients.forEach((c, j) => {
    const path = `ingredients[${j}] (${c.name})`;
    if (ids.has(c.id)) wrong(path, `the id ${c.id} twice`, 'each id once');
    ids.add(c.id);
    if (!(c.low >= 0 && c.low < 1e7)) wrong(`${path}.low`, `${c.low} kg`, '0 to 1e7 kg');
    if (!(c.high >= c.low)) wrong(`${path}.high`, `${c.high} kg`, `at least its low, ${c.low} kg`);
    if (!(c.now >= 0 && c.now < 1e7)) wrong(`${path}.now`, `${c.now} kg`, '0 to 1e7 kg');
    if (c.step !== undefined && !(c.step > 0 && c.step < 1e6))
      wrong(`${path}.step`, `${c.step} kg`, 'above 0 kg');
    if (!(c.per.mass > 0)) wrong(`${path}.per.mass`, `${c.per.mass}`, 'above 0');
  });
  const range = (path: string, low: number | undefined, high: number | undefined) => {
    if (low !== undefined && !Number.isFinite(low)) wrong(`${path}.low`, String(low), 'a finite number');
    if (high !== undefined && !Number.isFinite(high)) wrong(`${path}.high`, String(high), 'a finite number');
    if (low !== undefined && high !== undefined && low > high)
      wrong(path, `low ${low} above high ${high}`, 'low at most high');
  };
  limits.forEach((l, i) => {
    range(`limits[${i}] (${l.name})`, l.low, l.high);
    if (l.quantity.of !== 'share') return;
    for (const id of [...l.quantity.ids, ...(l.quantity.among ?? [])])
      if (!ids.has(id)) wrong(`limits[${i}] (${l.name})`, `the ingredient ${id}`, 'one of the ingredients');
  });
  if (!(total.low > 0 && total.low <= total.high && total.high < 1e7))
    wrong('total', `${total.low} to ${total.high} kg`, 'above 0 to 1e7 kg, low at most high');
  if (goals.length === 0) wrong('goals', 'none', 'at least one');
  for (const g of goals) {
    if (g.make !== 'best bind') continue;
    if (g.ranges.length === 0) wrong('goals', 'no range to be inside of', 'at least one');
    for (const r of g.ranges) {
      range(`goals (${r.name})`, r.low, r.high);
      const one = r.low === undefined || r.high === undefined;
      if (r.low === undefined && r.high === undefined)
        wrong(`goals (${r.name})`, 'no end', 'low, high or both');
      if (one && !((r.scale ?? 0) > 0))
        wrong(`goals (${r.name}).scale`, String(r.scale), 'above 0 where a range has one end');
    }
  }
}
