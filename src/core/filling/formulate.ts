/** *Make it* cheaper, leaner, less salty, better bound: a mix by linear and mixed-integer programmes, and what each limit costs. */
import type { LinearProgramme, Row, Solve, SolveOptions } from '../numerics/linear-programme.ts';
import { type Clash, clashOf } from './formulate-clash.ts';
import {
  attained,
  type Built,
  build,
  type Choosable,
  type Clause,
  checkProblem,
  clausesOf,
  type Goal,
  type GoodRange,
  isKnown,
  type Limit,
  type MixProblem,
  type Quantity,
  type Side,
  spansOf,
} from './formulate-model.ts';

/** An ingredient that could not be used freely, because something of it is not known that a limit or goal asks for. */
export interface NotKnown {
  readonly ingredient: Choosable;
  readonly quantity: Quantity;
  /** 'left out', 'held' at its least weight, or 'fixed' anyway: counted the worst way. */
  readonly so: 'left out' | 'held' | 'fixed';
}

export interface LimitRead {
  readonly limit: Limit;
  /** What it came to, the least and the most where a part is not known; null where there is nothing under the line. */
  readonly value: { readonly least: number; readonly most: number } | null;
  /** What the first goal's value gains for each unit that this side of the limit is raised; 0 where it does not bind, null where there is no price. */
  readonly price: Readonly<Record<Side, number | null>>;
  readonly binds: Side | 'both' | null;
}

export interface BoundRead {
  readonly ingredient: Choosable;
  readonly binds: Side | 'both' | null;
  /** What the first goal's value gains for each kg that the bound is raised, or that is weighed in of what is not used. */
  readonly price: number | null;
}

export interface Found {
  readonly status: 'found';
  /** Weighed in, in the order of the ingredients [kg]. */
  readonly kg: readonly number[];
  /** Weight of the mix [kg]. */
  readonly mass: number;
  /** What each goal came to: kg, kJ or minor units of the whole mix, kg of weighed change, or how deep inside the ranges (1: in the middle of all; below 0: outside). */
  readonly values: readonly number[];
  readonly limits: readonly LimitRead[];
  readonly bounds: readonly BoundRead[];
  /** What the first goal's value gains for each kg more of the mix; null where there is no price. */
  readonly totalPrice: number | null;
  readonly notKnown: readonly NotKnown[];
  /** False where the time was over before nothing better was proved possible. */
  readonly proven: boolean;
  /** Prices are of the mix as if any weight could be weighed. */
  readonly pricesOfExactWeights: boolean;
}

export type Formulated =
  | Found
  | { readonly status: 'clash'; readonly clash: Clash; readonly notKnown: readonly NotKnown[] }
  /** A limit cannot be promised, because an ingredient that is fixed has no price. */
  | {
      readonly status: 'not known';
      readonly unpriced: readonly { readonly limit: Limit; readonly ingredient: Choosable }[];
    }
  /** Neither found nor shown impossible in the time there was. */
  | { readonly status: 'stopped' };

/** What a goal looks at. */
const quantitiesOf = (goal: Goal): Quantity[] =>
  goal.make === 'least'
    ? [goal.quantity]
    : goal.make === 'best bind'
      ? goal.ranges.map((r) => r.quantity)
      : [];

/** Holds or leaves out what cannot be used freely. */
function withoutUnknown(problem: MixProblem): { problem: MixProblem; notKnown: NotKnown[] } {
  const asked = [...problem.limits.map((l) => l.quantity), ...problem.goals.flatMap(quantitiesOf)];
  const notKnown: NotKnown[] = [];
  const ingredients = problem.ingredients.map((c) => {
    const quantity = asked.find((q) => {
      const { over, under } = spansOf(q, c);
      return !isKnown(over) || !isKnown(under);
    });
    if (quantity === undefined || c.high === 0) return c;
    const so = c.low === c.high ? 'fixed' : c.low > 0 ? 'held' : 'left out';
    notKnown.push({ ingredient: c, quantity, so });
    return so === 'fixed' ? c : { ...c, high: c.low };
  });
  return { problem: { ...problem, ingredients }, notKnown };
}

/** What a kilogram adds to what is made least; the worst way, and what has no price is left out of the sum. */
const adds = (quantity: Quantity) => (c: Choosable) => {
  const { over } = spansOf(quantity, c);
  return Number.isFinite(over.most) ? over.most : over.least;
};

type Extend = (built: Built) => { columns: LinearProgramme['columns']; rows: Row[]; cost: readonly number[] };

/** What a goal adds to the programme; `cost` is over all of its columns. */
function extension(problem: MixProblem, goal: Exclude<Goal, { make: 'best bind' }>): Extend {
  if (goal.make === 'least') {
    const cost = adds(goal.quantity);
    return ({ unit }) => ({
      columns: [],
      rows: [],
      cost: problem.ingredients.map((c, j) => cost(c) * unit[j]!),
    });
  }
  return ({ columns, unit }) => {
    const extra = problem.ingredients.flatMap((c) => [
      { name: `${c.name} more`, cost: 0, low: 0, high: Infinity },
      { name: `${c.name} less`, cost: 0, low: 0, high: Infinity },
    ]);
    return {
      columns: extra,
      rows: problem.ingredients.map((c, j) => ({
        name: `change of ${c.name}`,
        low: c.now,
        high: c.now,
        terms: [
          [j, unit[j]!],
          [columns.length + 2 * j, -1],
          [columns.length + 2 * j + 1, 1],
        ],
      })),
      cost: [...columns.map(() => 0), ...problem.ingredients.flatMap((c) => [c.weight ?? 1, c.weight ?? 1])],
    };
  };
}

/** The ranges as limits, so far inside. */
const inside = (ranges: readonly GoodRange[], depth: number): Limit[] =>
  ranges.map((r, i) => {
    const scale = r.low !== undefined && r.high !== undefined ? (r.high - r.low) / 2 : (r.scale ?? 0);
    return {
      id: `good range ${i}`,
      name: r.name,
      quantity: r.quantity,
      ...(r.low === undefined ? {} : { low: r.low + depth * scale }),
      ...(r.high === undefined ? {} : { high: r.high - depth * scale }),
    };
  });

interface Stage {
  readonly x: readonly number[];
  readonly built: Built;
  readonly value: number;
  readonly proven: boolean;
  readonly rowPrices: readonly number[] | null;
  readonly columnPrices: readonly number[] | null;
}

/** Slack left to a goal that is done, so that the next has something to choose from. */
const keep = (value: number) => value + 1e-7 * Math.abs(value) + 1e-9;

/** One goal after the other, with or without the steps of the scale. */
class Sequence {
  private problem: MixProblem;
  private readonly held: { extend: Extend; most: number }[] = [];

  constructor(
    problem: MixProblem,
    private readonly solve: Solve,
    private readonly inSteps: boolean,
    private readonly options: SolveOptions,
  ) {
    this.problem = problem;
  }

  private clauses(problem: MixProblem): Clause[] {
    return clausesOf(problem).filter((c) => this.inSteps || c.kind !== 'steps');
  }

  /** null: impossible. 'stopped': out of time with nothing found. */
  run(goal: Goal | null, problem = this.problem): Stage | null | 'stopped' {
    const built = build(problem, this.clauses(problem));
    const columns = [...built.columns];
    const rows = [...built.rows];
    const add = (extend: Extend): readonly (readonly [number, number])[] => {
      const { columns: more, rows: held, cost } = extend({ ...built, columns });
      columns.push(...more);
      rows.push(...held);
      return cost.flatMap((a, j) => (a === 0 ? [] : [[j, a] as const]));
    };
    for (const { extend, most } of this.held)
      rows.push({ name: 'goal before', low: -Infinity, terms: add(extend), high: most });
    if (goal !== null && goal.make !== 'best bind')
      for (const [j, a] of add(extension(problem, goal))) columns[j] = { ...columns[j]!, cost: a };
    const solved = this.solve({ columns, rows }, this.options);
    if (solved.status === 'infeasible') return null;
    if (solved.status === 'unbounded')
      throw new RangeError('a goal without end: a weight or a price below zero');
    if (solved.x === null || solved.value === null) return 'stopped';
    const optimal = solved.status === 'optimal';
    return {
      x: solved.x,
      built,
      value: solved.value,
      proven: optimal,
      rowPrices: optimal ? solved.rowPrices : null,
      columnPrices: optimal ? solved.columnPrices : null,
    };
  }

  /** Reaches a goal, and holds it from then on. */
  reach(goal: Goal): Stage | null | 'stopped' {
    if (goal.make === 'best bind') return this.deepest(goal.ranges);
    const stage = this.run(goal);
    if (stage !== null && stage !== 'stopped')
      this.held.push({ extend: extension(this.problem, goal), most: keep(stage.value) });
    return stage;
  }

  private deepest(ranges: readonly GoodRange[]): Stage | null | 'stopped' {
    const before = this.problem;
    const at = (depth: number) => ({ ...before, limits: [...before.limits, ...inside(ranges, depth)] });
    const tried = (depth: number) => {
      const stage = this.run(null, at(depth));
      return stage === 'stopped' ? null : stage;
    };
    const free = this.run(null);
    if (free === null || free === 'stopped') return free;
    let high = 1;
    let best = tried(1);
    let low = 1;
    if (best === null) {
      low = 0;
      for (best = tried(0); best === null && low > -1e6; best = tried(low)) {
        high = low;
        low = 2 * low - 1;
      }
      if (best === null) return { ...free, value: -Infinity };
      for (let turn = 0; turn < (this.inSteps ? 14 : 30) && high - low > 1e-9; turn += 1) {
        const middle = (low + high) / 2;
        const stage = tried(middle);
        if (stage === null) high = middle;
        else {
          low = middle;
          best = stage;
        }
      }
    }
    // A hair less, so that the next goal is not caught between two roundings.
    this.problem = at(low - 1e-7 * (1 + Math.abs(low)));
    return { ...best, value: low, rowPrices: null, columnPrices: null };
  }
}

/** A limit's price from its row's: the row is over − limit·under, so a unit of the limit is worth what lies under the line. */
function priceOf(clause: Clause, stage: Stage, problem: MixProblem): number | null {
  if (stage.rowPrices === null || clause.kind !== 'limit') return null;
  const row = stage.built.rowOf.get(clause);
  if (row === undefined) return null;
  let under = 0;
  problem.ingredients.forEach((c, j) => {
    const span = spansOf(clause.limit.quantity, c).under;
    const value = clause.limit[clause.side]!;
    under += (clause.side === 'low') === value >= 0 ? span.most * stage.x[j]! : span.least * stage.x[j]!;
  });
  return stage.rowPrices[row]! * under;
}

const sideOf = (low: boolean, high: boolean): Side | 'both' | null =>
  low && high ? 'both' : low ? 'low' : high ? 'high' : null;
const near = (a: number, b: number) => Math.abs(a - b) <= 1e-6 * (1e-3 + Math.abs(b));

/**
 * Formulates a mix: what to weigh in [kg] so that every limit holds and the goals are reached one after the other, what each
 * limit costs, or which limits clash.
 *
 *     min Σ c·x,  l ≤ x ≤ u,  L ≤ Σ a·x / Σ b·x ≤ H as Σ (a − L·b)·x ≥ 0,  Σ m·x within the total;  dV/dL = y·Σ b·x
 *
 * @param problem ingredients with what a kilogram brings, limits, total above 0 kg, goals in their order
 * @param solve the solver: minimises, gives the rows' prices of a programme without whole numbers
 * @param options gap and seconds of each search in whole numbers
 * Assumes that a mix is the sum of its parts. Of what is not known: an ingredient that a limit or goal asks about is left out, or
 * held at its least weight; one that is fixed is counted the worst way. A sum is made least of the whole mix, so that of one
 * whose weight is not fixed less is made. In steps, prices are of the mix as if any weight could be weighed. The deepest place
 * inside the good ranges is found by halving, to 1e-9 (in steps to 1e-4).
 * Checked: against an independent solver on kept random problems, prices against differences, clashes by dropping each.
 * Source: own-computation
 */
export function formulate(problem: MixProblem, solve: Solve, options: SolveOptions = {}): Formulated {
  checkProblem(problem);
  const { problem: usable, notKnown } = withoutUnknown(problem);
  const unpriced = usable.limits.flatMap((limit) =>
    limit.quantity.of === 'cost' && limit.high !== undefined
      ? usable.ingredients
          .filter((c) => c.low > 0 && c.per.cost.unknown > 0)
          .map((ingredient) => ({ limit, ingredient }))
      : [],
  );
  if (unpriced.length > 0) return { status: 'not known', unpriced };

  const exact = new Sequence(usable, solve, false, options);
  const first = exact.reach(usable.goals[0]!);
  if (first === 'stopped') return { status: 'stopped' };
  if (first === null) return { status: 'clash', clash: clashOf(usable, solve, false), notKnown };
  const inSteps = usable.ingredients.some((c) => c.step !== undefined);
  const sequence = inSteps ? new Sequence(usable, solve, true, options) : exact;
  const values: number[] = inSteps ? [] : [first.value];
  let last: Stage = first;
  let proven = first.proven;
  for (const goal of inSteps ? usable.goals : usable.goals.slice(1)) {
    const stage = sequence.reach(goal);
    if (stage === 'stopped') return { status: 'stopped' };
    if (stage === null) {
      if (values.length === 0 && inSteps)
        return { status: 'clash', clash: clashOf(usable, solve, true), notKnown };
      break;
    }
    values.push(stage.value);
    last = stage;
    proven &&= stage.proven;
  }
  return { ...reading(usable, first, last), values, notKnown, proven, pricesOfExactWeights: inSteps };
}

function reading(
  problem: MixProblem,
  first: Stage,
  last: Stage,
): Omit<Found, 'values' | 'notKnown' | 'proven' | 'pricesOfExactWeights'> {
  const kg = problem.ingredients.map((_, j) => last.built.unit[j]! * last.x[j]!);
  const clauseOf = (limit: Limit, side: Side) =>
    [...first.built.rowOf.keys()].find((c) => c.kind === 'limit' && c.limit === limit && c.side === side);
  const limits = problem.limits.map((limit): LimitRead => {
    const value = attained(limit.quantity, problem.ingredients, kg);
    const price = (side: Side) => {
      const clause = limit[side] === undefined ? undefined : clauseOf(limit, side);
      return clause === undefined ? 0 : priceOf(clause, first, problem);
    };
    return {
      limit,
      value,
      price: { low: price('low'), high: price('high') },
      binds: sideOf(
        value !== null && limit.low !== undefined && near(value.least, limit.low),
        value !== null && limit.high !== undefined && near(value.most, limit.high),
      ),
    };
  });
  const bounds = problem.ingredients.map(
    (ingredient, j): BoundRead => ({
      ingredient,
      binds: sideOf(
        near(kg[j]!, ingredient.low),
        ingredient.high < Infinity && near(kg[j]!, ingredient.high),
      ),
      price: first.columnPrices === null ? null : first.columnPrices[j]! / first.built.unit[j]!,
    }),
  );
  let totalPrice: number | null = null;
  for (const [clause, row] of first.built.rowOf)
    if (clause.kind === 'total' && first.rowPrices !== null)
      totalPrice = (totalPrice ?? 0) + first.rowPrices[row]!;
  return {
    status: 'found',
    kg,
    mass: problem.ingredients.reduce((s, c, j) => s + c.per.mass * kg[j]!, 0),
    limits,
    bounds,
    totalPrice,
  };
}
