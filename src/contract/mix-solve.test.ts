import { expect, test } from 'vitest';
import { nutrients } from '../core/filling/food.ts';
import { type Solvable, SolveInput, solveMix } from './mix-solve.ts';
import { accept, InputProblems } from './problem.ts';
import { loadSolver } from './solver.ts';

const solve = await loadSolver();
const food = (
  name: string,
  has: Record<string, number | null>,
  cost: number,
  g: Solvable['g'],
): Solvable => ({
  name,
  g,
  per: {
    mass: 1,
    cost: { known: cost, unknown: 0 },
    nutrients: Object.fromEntries(
      nutrients.map((n) => [
        n,
        has[n] === null ? { known: 0, unknown: 1 } : { known: has[n] ?? 0, unknown: 0 },
      ]),
    ) as Solvable['per']['nutrients'],
  },
});
const any = { low: 0, high: 1000 };
const lean = food('lean', { water: 0.74, protein: 0.2, fat: 0.05 }, 9, any);
const fat = food('fat', { water: 0.1, protein: 0.05, fat: 0.85 }, 2, any);
const ask = (input: unknown) => accept(SolveInput, input);
const problemsOf = (what: () => unknown) => {
  try {
    what();
  } catch (error) {
    if (error instanceof InputProblems) return error.problems;
    throw error;
  }
  throw new Error('not refused');
};

test('grams that hold the constraint at the least cost', () => {
  const answer = solveMix(
    [lean, fat],
    ask({ minimise: 'cost', constraints: { fatPct: { high: 25 } } }),
    1000,
    solve,
  );
  expect(answer.grams[0]).toBeCloseTo(750, 5);
  expect(answer.grams[1]).toBeCloseTo(250, 5);
  const [held] = answer.constraints;
  expect(held).toMatchObject({ constraint: 'fatPct', binds: 'high' });
  // A point of fat more is 1/80 kg of fat for lean: 7/80 a kilogram.
  expect(held!.pricePerUnit.high!).toBeCloseTo(-7 / 80, 6);
});

test('constraints that clash are named with what each would have to be', () => {
  const problems = problemsOf(() =>
    solveMix(
      [lean, fat],
      ask({ minimise: 'cost', constraints: { fatPct: { low: 40 }, proteinPct: { low: 15 } } }),
      1000,
      solve,
    ),
  );
  expect(problems.map((p) => p.path).sort()).toEqual([
    'solve.constraints.fatPct.low',
    'solve.constraints.proteinPct.low',
  ]);
  const byFat = problems.find((p) => p.path.includes('fatPct'))!;
  expect(byFat.found).toBe('40');
  // Protein 15 % leaves 2/3 lean: fat (2·5 + 85)/3.
  expect(byFat.allowed).toMatch(
    /^at most 31\.66.* with the others as they are \(it clashes with solve\.constraints\.proteinPct\.low\)/,
  );
});

test('weights that cannot come to the total', () => {
  const problems = problemsOf(() =>
    solveMix(
      [
        { ...lean, g: { low: 0, high: 300 } },
        { ...fat, g: 200 },
      ],
      ask({ minimise: 'cost' }),
      1000,
      solve,
    ),
  );
  expect(problems.map((p) => p.path)).toContain('totalG');
  expect(problems.map((p) => p.path)).toContain('ingredients[0].g.high');
});

test('an ingredient of which the fat is not known is left out where fat is asked for, and named', () => {
  const mystery = food('trimmings', { water: 0.6, protein: 0.1, fat: null }, 0.5, any);
  const answer = solveMix(
    [lean, fat, mystery],
    ask({ minimise: 'cost', constraints: { fatPct: { high: 25 } } }),
    1000,
    solve,
  );
  expect(answer.grams[2]).toBe(0);
  expect(answer.notKnown).toEqual([{ ingredient: 'trimmings', what: 'fat', so: 'left out' }]);
});

test('unknown keys, ranges upside down and a mix of nothing are refused', () => {
  expect(problemsOf(() => ask({ minimise: 'cost', constraints: { fat: { low: 1 } } }))[0]!.path).toBe(
    'constraints.fat',
  );
  expect(
    problemsOf(() => ask({ minimise: 'cost', constraints: { fatPct: { low: 9, high: 1 } } }))[0]!.path,
  ).toBe('constraints.fatPct');
  expect(problemsOf(() => solveMix([lean], ask({ minimise: 'cost' }), undefined, solve))[0]!.path).toBe(
    'totalG',
  );
});
