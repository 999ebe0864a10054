/** Which limits cannot hold together: the fewest of them, and what each would have to become. */
import type { LinearProgramme, Row, Solve, Solved } from '../numerics/linear-programme.ts';
import {
  attained,
  build,
  type Choosable,
  type Clause,
  clausesOf,
  coefficient,
  isHard,
  type MixProblem,
} from './formulate-model.ts';

export interface ClashMember {
  readonly clause: Clause;
  /** Not for the taking: safety, law. */
  readonly hard: boolean;
  /**
   * What it would have to be for all to hold, with every other one as it is [as the limit]; null where it alone does not help.
   * Of steps 0: any weight.
   */
  readonly alone: number | null;
}

export interface Clash {
  /** Without any one of these the others of them can hold. That anything at all is made is taken as given, and is none of them. */
  readonly members: readonly ClashMember[];
  /** That this was tried: together impossible, and possible without each one. */
  readonly verified: boolean;
  /** The least that all limits for the taking would have to give, together; null where that does not help either. */
  readonly together: readonly { readonly clause: Clause; readonly becomes: number }[] | null;
}

/** The ones that a chef chose himself come first: they are what is kept when the fewest are looked for. */
const rank = (c: Clause): number =>
  c.kind === 'limit' && c.limit.hard === undefined
    ? 0
    : c.kind === 'total'
      ? 1
      : c.kind === 'bound' && c.ingredient.hard === undefined
        ? 2
        : c.kind === 'steps'
          ? 4
          : 3;

const programme = ({
  columns,
  rows,
}: {
  columns: LinearProgramme['columns'];
  rows: LinearProgramme['rows'];
}) => ({
  columns,
  rows,
});

/**
 * The fewest limits that clash, and what would make it possible [as each limit].
 * Equation: quick explanation by halves (a minimal infeasible subset), then for each member the best of its quantity with all
 * others held; a quotient by Dinkelbach's iteration.
 * Parameters: a problem that is infeasible, the solver, whether already without steps of the scale.
 * Assumptions: minimal, not the smallest of all minimal sets; other sets may clash as well, then no member helps alone.
 * Checked: dropping any one makes the set feasible, by property; what is said to be needed is enough and no less is.
 * Source: own-computation
 */
export function clashOf(problem: MixProblem, solve: Solve, inSteps: boolean): Clash {
  const all = clausesOf(problem)
    .filter((c) => inSteps || c.kind !== 'steps')
    .sort((a, b) => rank(a) - rank(b));
  const impossible = (clauses: readonly Clause[]): boolean =>
    solve(programme(build(problem, clauses))).status === 'infeasible';
  const found = explain([], [], all, impossible);
  const verified =
    impossible(found) &&
    found.every((c) => {
      const without = found.filter((o) => o !== c);
      const { status } = solve(programme(build(problem, without)));
      return status === 'optimal' || status === 'unbounded';
    });
  const held = clausesOf(problem);
  const members = found
    .map((clause) => ({ clause, hard: isHard(clause), alone: needed(problem, held, clause, solve) }))
    .filter((m) => !(m.clause.kind === 'total' && m.alone !== null && m.alone <= 1e-9 * problem.total.low));
  const helped = members.some((m) => m.alone !== null && !m.hard);
  return { members, verified, together: helped ? null : together(problem, all, solve) };
}

/** A minimal part of `candidates` that is impossible together with `held`. */
function explain(
  held: readonly Clause[],
  added: readonly Clause[],
  candidates: readonly Clause[],
  impossible: (c: readonly Clause[]) => boolean,
): Clause[] {
  if (added.length > 0 && impossible(held)) return [];
  if (candidates.length <= 1) return [...candidates];
  const half = candidates.length >> 1;
  const first = candidates.slice(0, half);
  const second = candidates.slice(half);
  const fromSecond = explain([...held, ...first], first, second, impossible);
  const fromFirst = explain([...held, ...fromSecond], fromSecond, first, impossible);
  return [...fromFirst, ...fromSecond];
}

const kilograms = (unit: readonly number[], x: readonly number[]) => unit.map((u, j) => u * x[j]!);
const weights = (solved: Solved): readonly number[] | null =>
  solved.status === 'optimal' || solved.status === 'stopped' ? solved.x : null;

/** Clauses are made anew each time they are asked for. */
const same = (a: Clause, b: Clause): boolean =>
  a.kind === b.kind &&
  (a as { side?: string }).side === (b as { side?: string }).side &&
  (a.kind !== 'limit' || a.limit === (b as typeof a).limit) &&
  ((a.kind !== 'bound' && a.kind !== 'steps') || a.ingredient === (b as typeof a).ingredient);

/** What one clause would have to be with all others held; null where that is not enough. */
function needed(problem: MixProblem, all: readonly Clause[], clause: Clause, solve: Solve): number | null {
  const others = all.filter((c) => !same(c, clause));
  const best = (cost: (c: Choosable) => number): number[] | null => {
    const built = build(problem, others, cost);
    const x = weights(solve(programme(built)));
    return x === null ? null : kilograms(built.unit, x);
  };
  switch (clause.kind) {
    case 'steps':
      return best(() => 0) === null ? null : 0;
    case 'bound': {
      const j = problem.ingredients.indexOf(clause.ingredient);
      const sign = clause.side === 'low' ? -1 : 1;
      return best((c) => (c === clause.ingredient ? sign : 0))?.[j] ?? null;
    }
    case 'total': {
      const sign = clause.side === 'low' ? -1 : 1;
      const kg = best((c) => sign * c.per.mass);
      return kg === null ? null : problem.ingredients.reduce((s, c, j) => s + c.per.mass * kg[j]!, 0);
    }
    case 'limit': {
      const { limit, side } = clause;
      const sign = side === 'low' ? -1 : 1;
      let kg = best(() => 0);
      if (kg === null) return null;
      const worst = () => {
        const span = attained(limit.quantity, problem.ingredients, kg!);
        return span === null ? null : side === 'low' ? span.least : span.most;
      };
      let value = worst();
      for (let turn = 0; turn < 30 && value !== null && Number.isFinite(value); turn += 1) {
        const at = value;
        const next = best((c) => sign * coefficient(limit.quantity, c, at, side));
        if (next === null) break;
        kg = next;
        const now = worst();
        if (now === null || Math.abs(now - at) <= 1e-10 * (1 + Math.abs(at))) break;
        value = now;
      }
      return value !== null && Number.isFinite(value) ? value : null;
    }
  }
}

/** How much a clause's slack counts: as a share of what it asks for, by the weight of the mix. */
const slackCost = (problem: MixProblem, clause: Clause): number => {
  const size = problem.total.low;
  if (clause.kind === 'limit') {
    const value = Math.abs(clause.limit[clause.side]!);
    return 1 / (Math.max(value, 1e-3) * size);
  }
  return 1 / Math.max(clause.kind === 'bound' ? clause.ingredient[clause.side] : size, size / 100);
};

function together(problem: MixProblem, all: readonly Clause[], solve: Solve): Clash['together'] {
  const soft = all.filter((c) => !isHard(c) && c.kind !== 'steps' && !(c.kind === 'total'));
  const kept = all.filter((c) => c.kind !== 'steps' && !(soft.includes(c) && c.kind === 'bound'));
  const built = build(problem, kept);
  const columns = [...built.columns];
  const rows: Row[] = built.rows.map((r) => ({ ...r, terms: [...r.terms] }));
  for (const clause of soft) {
    const slack = columns.length;
    columns.push({ name: 'slack', cost: slackCost(problem, clause), low: 0, high: Infinity });
    const sign = clause.kind !== 'steps' && clause.side === 'low' ? 1 : -1;
    const row = built.rowOf.get(clause);
    if (row !== undefined) rows[row] = { ...rows[row]!, terms: [...rows[row]!.terms, [slack, sign]] };
    else if (clause.kind === 'bound') {
      const j = problem.ingredients.indexOf(clause.ingredient);
      rows.push({
        name: clause.ingredient.name,
        low: clause.side === 'low' ? clause.ingredient.low : -Infinity,
        high: clause.side === 'low' ? Infinity : clause.ingredient.high,
        terms: [
          [j, 1],
          [slack, sign],
        ],
      });
    }
  }
  const x = weights(solve({ columns, rows }));
  if (x === null) return null;
  const kg = kilograms(built.unit, x.slice(0, problem.ingredients.length));
  return soft.flatMap((clause, i): { clause: Clause; becomes: number }[] => {
    if (!(x[problem.ingredients.length + i]! > 1e-9 * problem.total.low)) return [];
    if (clause.kind === 'bound')
      return [{ clause, becomes: kg[problem.ingredients.indexOf(clause.ingredient)]! }];
    if (clause.kind !== 'limit') return [];
    const span = attained(clause.limit.quantity, problem.ingredients, kg);
    return span === null ? [] : [{ clause, becomes: clause.side === 'low' ? span.least : span.most }];
  });
}
