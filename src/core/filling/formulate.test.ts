import { describe, expect, test } from 'vitest';
import { keptMixes } from '../../../examples/formulate-problems.ts';
import { loadSolver } from '../../contract/solver.ts';
import { nutrients } from './food.ts';
import { formulate } from './formulate.ts';
import {
  build,
  type Choosable,
  type Clause,
  clausesOf,
  type Limit,
  type MixProblem,
} from './formulate-model.ts';

const solve = await loadSolver();

const food = (
  id: string,
  known: Partial<Record<(typeof nutrients)[number], number | null>>,
  pricePerKg: number | null,
  over: Partial<Choosable> = {},
): Choosable => ({
  id,
  name: id,
  per: {
    mass: 1,
    nutrients: Object.fromEntries(
      nutrients.map((n) => [
        n,
        known[n] === null ? { known: 0, unknown: 1 } : { known: known[n] ?? 0, unknown: 0 },
      ]),
    ) as Choosable['per']['nutrients'],
    cost: pricePerKg === null ? { known: 0, unknown: 1 } : { known: pricePerKg, unknown: 0 },
  },
  low: 0,
  high: Infinity,
  now: 0,
  ...over,
});
const lean = food('lean', { water: 0.72, protein: 0.21, fat: 0.06, salt: 0.002 }, 900, { now: 0.6 });
const fat = food('back fat', { water: 0.08, protein: 0.03, fat: 0.88 }, 200, { now: 0.3 });
const water = food('ice', { water: 1 }, 0, { now: 0.08 });
const salt = food('salt', { salt: 1 }, 60, { now: 0.02 });
const limit = (
  id: string,
  quantity: Limit['quantity'],
  low?: number,
  high?: number,
  hard?: string,
): Limit => ({
  id,
  name: id,
  quantity,
  low,
  high,
  hard,
});
const fatLimit = (high: number) => limit('fat', { of: 'nutrient', nutrient: 'fat' }, undefined, high);
const saltLimit = limit('salt', { of: 'nutrient', nutrient: 'salt' }, 0.018, 0.02);
const ratio = limit('water to protein', { of: 'ratio', over: 'water', under: 'protein' }, undefined, 5);
const cheapest = { make: 'least', quantity: { of: 'cost' } } as const;
const mix = (over: Partial<MixProblem> = {}): MixProblem => ({
  ingredients: [lean, fat, water, salt],
  limits: [fatLimit(0.3), saltLimit, ratio],
  total: { low: 1, high: 1 },
  goals: [cheapest],
  ...over,
});
const found = (problem: MixProblem) => {
  const answer = formulate(problem, solve);
  if (answer.status !== 'found') throw new Error(answer.status);
  return answer;
};

describe('formulate', () => {
  test('the cheapest mix holds every limit, and goes to where they bind', () => {
    const answer = found(mix());
    const [x1, x2, x3, x4] = answer.kg as [number, number, number, number];
    expect(x1 + x2 + x3 + x4).toBeCloseTo(1, 8);
    expect(0.06 * x1 + 0.88 * x2).toBeCloseTo(0.3, 8);
    expect((0.72 * x1 + 0.08 * x2 + x3) / (0.21 * x1 + 0.03 * x2)).toBeCloseTo(5, 7);
    expect(answer.limits.map((l) => l.binds)).toEqual(['high', 'high', 'high']);
  });

  test('what a limit costs is what the cost changes by when it is moved', () => {
    const step = 1e-4;
    const cost = (over: Partial<MixProblem>) => found(mix(over)).values[0]!;
    const { limits, totalPrice } = found(mix());
    const price = (id: string) => limits.find((l) => l.limit.id === id)!.price;
    const slope = (at: (h: number) => Partial<MixProblem>) => (cost(at(step)) - cost(at(-step))) / (2 * step);
    const fatSlope = slope((h) => ({ limits: [fatLimit(0.3 + h), saltLimit, ratio] }));
    expect(fatSlope).toBeLessThan(-100);
    expect(price('fat').high!).toBeCloseTo(fatSlope, 3);
    const ratioSlope = slope((h) => ({ limits: [fatLimit(0.3), saltLimit, { ...ratio, high: 5 + h }] }));
    expect(ratioSlope).toBeLessThan(0);
    expect(price('water to protein').high!).toBeCloseTo(ratioSlope, 3);
    const saltSlope = slope((h) => ({ limits: [fatLimit(0.3), { ...saltLimit, high: 0.02 + h }, ratio] }));
    expect(price('salt').high!).toBeCloseTo(saltSlope, 3);
    expect(price('salt').low).toBeCloseTo(0, 9);
    expect(totalPrice!).toBeCloseTo(
      slope((h) => ({ total: { low: 1 + h, high: 1 + h } })),
      3,
    );
  });

  test('in the kept random mixes too, wherever the price is the same on both sides', () => {
    let looked = 0;
    for (const problem of keptMixes().slice(0, 30)) {
      const answer = formulate(problem, solve);
      if (answer.status !== 'found') continue;
      problem.limits.forEach((l, i) => {
        for (const side of ['low', 'high'] as const) {
          const at = l[side];
          if (at === undefined) continue;
          const h = 1e-5 * at;
          const moved = (d: number) =>
            formulate({ ...problem, limits: problem.limits.with(i, { ...l, [side]: at + d }) }, solve);
          const [up, down] = [moved(h), moved(-h)];
          if (up.status !== 'found' || down.status !== 'found') continue;
          const [before, after] = [
            (answer.values[0]! - down.values[0]!) / h,
            (up.values[0]! - answer.values[0]!) / h,
          ];
          const size = 1e-4 * (1 + Math.abs(after));
          if (Math.abs(before - after) > size) continue;
          looked += 1;
          expect(Math.abs(answer.limits[i]!.price[side]! - after)).toBeLessThan(10 * size);
        }
      });
    }
    expect(looked).toBeGreaterThan(100);
  });

  test('one goal decides only between what is as good by the one before', () => {
    const twin = { ...lean, id: 'lean of another', name: 'lean of another', now: 0.1 };
    const first = found(mix({ ingredients: [lean, fat, water, salt, twin] }));
    const then = found(
      mix({ ingredients: [lean, fat, water, salt, twin], goals: [cheapest, { make: 'least change' }] }),
    );
    expect(then.values[0]).toBeCloseTo(first.values[0]!, 5);
    expect(then.kg[4]!).toBeCloseTo(0.1, 4);
  });

  test('least change leaves a recipe alone that holds its limits already', () => {
    const answer = found(mix({ limits: [fatLimit(0.4)], goals: [{ make: 'least change' }] }));
    expect(answer.kg.map((x) => Number(x.toFixed(6)))).toEqual([0.6, 0.3, 0.08, 0.02]);
  });

  test('best bind goes to the middle of what is known to be good, as far as the limits let it', () => {
    const ranges = [
      { name: 'fat', quantity: { of: 'nutrient', nutrient: 'fat' }, low: 0.2, high: 0.3 },
      { name: 'water to protein', quantity: ratio.quantity, low: 3.6, high: 5 },
    ] as const;
    const free = found(mix({ limits: [saltLimit], goals: [{ make: 'best bind', ranges }] }));
    expect(free.values[0]).toBeCloseTo(1, 6);
    const held = found(mix({ limits: [saltLimit, fatLimit(0.22)], goals: [{ make: 'best bind', ranges }] }));
    expect(held.values[0]).toBeCloseTo(0.4, 5);
    const out = found(mix({ limits: [saltLimit, fatLimit(0.15)], goals: [{ make: 'best bind', ranges }] }));
    expect(out.values[0]).toBeCloseTo(-1, 5);
  });

  test('steps of the scale and whole pieces', () => {
    const answer = found(
      mix({
        ingredients: [{ ...lean, step: 0.25 }, { ...fat, step: 0.01 }, water, { ...salt, step: 0.0005 }],
      }),
    );
    expect(answer.kg[0]! / 0.25).toBeCloseTo(Math.round(answer.kg[0]! / 0.25), 9);
    expect(answer.kg[1]! / 0.01).toBeCloseTo(Math.round(answer.kg[1]! / 0.01), 9);
    expect(answer.values[0]!).toBeGreaterThanOrEqual(found(mix()).values[0]! - 1e-6);
    expect(answer.pricesOfExactWeights).toBe(true);
  });
});

describe('what is not known', () => {
  test('is not used where a limit asks for it, by name', () => {
    const cheap = food('trimmings', { fat: null, water: 0.5, protein: 0.1 }, 10);
    const answer = found(mix({ ingredients: [lean, fat, water, salt, cheap] }));
    expect(answer.kg[4]).toBe(0);
    expect(answer.notKnown.map((n) => [n.ingredient.id, n.so])).toEqual([['trimmings', 'left out']]);
    const unasked = found(mix({ ingredients: [lean, fat, salt, cheap], limits: [saltLimit] }));
    expect(unasked.notKnown).toEqual([]);
    expect(unasked.kg[3]!).toBeGreaterThan(0);
  });
  test('is counted the worst way where it is fixed', () => {
    const pepper = food('pepper', { fat: null }, 10, { low: 0.05, high: 0.05 });
    const answer = found(mix({ ingredients: [lean, fat, water, salt, pepper] }));
    expect(answer.notKnown[0]?.so).toBe('fixed');
    const { value } = answer.limits[0]!;
    expect(value!.most).toBeCloseTo(0.3, 7);
    expect(value!.least).toBeCloseTo(0.25, 7);
  });
  test('without a price nothing is cheap, and a limit on cost with it cannot be promised', () => {
    const gift = food('gift', { water: 0.6, protein: 0.2 }, null);
    expect(found(mix({ ingredients: [lean, fat, water, salt, gift] })).kg[4]).toBe(0);
    const fixed = { ...gift, low: 0.1, high: 0.1 };
    const answer = formulate(
      mix({
        ingredients: [lean, fat, water, salt, fixed],
        limits: [limit('cost', { of: 'cost' }, undefined, 800)],
      }),
      solve,
    );
    expect(answer.status).toBe('not known');
  });
});

describe('limits that clash', () => {
  const clash = (problem: MixProblem) => {
    const answer = formulate(problem, solve);
    if (answer.status !== 'clash') throw new Error(answer.status);
    return answer.clash;
  };
  const possible = (problem: MixProblem, clauses: readonly Clause[]) =>
    solve(build(problem, clauses)).status === 'optimal';

  test('are named, and what each would have to be', () => {
    const atLeast = limit('protein', { of: 'nutrient', nutrient: 'protein' }, 0.2);
    const problem = mix({
      limits: [limit('fat', { of: 'nutrient', nutrient: 'fat' }, 0.2), atLeast, saltLimit],
    });
    const { members, verified } = clash(problem);
    expect(verified).toBe(true);
    expect(
      members.map((m) => (m.clause.kind === 'limit' ? m.clause.limit.id : m.clause.kind)).sort(),
    ).toEqual(['fat', 'protein', 'total'].sort().slice(0, members.length));
    const needed = members.find((m) => m.clause.kind === 'limit' && m.clause.limit.id === 'fat')!.alone!;
    const enough = (low: number) =>
      formulate({ ...problem, limits: [{ ...problem.limits[0]!, low }, atLeast, saltLimit] }, solve).status;
    expect(enough(needed - 1e-6)).toBe('found');
    expect(enough(needed + 1e-4)).toBe('clash');
  });

  test('in the kept random mixes: together impossible, possible without any one', () => {
    let looked = 0;
    for (const problem of keptMixes()) {
      const answer = formulate(problem, solve);
      if (answer.status !== 'clash') continue;
      looked += 1;
      const total = clausesOf(problem).filter((c) => c.kind === 'total');
      const set = answer.clash.members.map((m) => m.clause).filter((c) => c.kind !== 'total');
      expect(answer.clash.verified).toBe(true);
      expect(possible(problem, [...set, ...total])).toBe(false);
      for (const c of set) expect(possible(problem, [...set.filter((o) => o !== c), ...total])).toBe(true);
      for (const { clause, alone } of answer.clash.members)
        if (alone !== null && clause.kind === 'limit') {
          const i = problem.limits.indexOf(clause.limit);
          const near = 1e-7 * (1 + Math.abs(alone));
          const eased = {
            ...clause.limit,
            [clause.side]: clause.side === 'low' ? alone - near : alone + near,
          };
          const again = formulate({ ...problem, limits: problem.limits.with(i, eased) }, solve);
          expect(again.status).toBe('found');
        }
    }
    expect(looked).toBe(10);
  });

  test('what is not for the taking is marked, and what all the others together would have to give is said', () => {
    const hard = limit(
      'salt of the keeping',
      { of: 'nutrient', nutrient: 'salt' },
      0.02,
      undefined,
      'keeping',
    );
    const low = limit('salt', { of: 'nutrient', nutrient: 'salt' }, undefined, 0.015);
    const { members } = clash(mix({ limits: [hard, low] }));
    expect(members.map((m) => m.hard)).toEqual([false, true]);
    expect(members[0]!.alone).toBeCloseTo(0.02, 8);
    const two = clash(
      mix({
        limits: [
          hard,
          low,
          limit('fat', { of: 'nutrient', nutrient: 'fat' }, 0.5),
          limit('protein', { of: 'nutrient', nutrient: 'protein' }, 0.2),
        ],
      }),
    );
    expect(two.members.every((m) => m.alone === null)).toBe(true);
    expect(two.together?.length).toBeGreaterThanOrEqual(2);
  });
});

test('a problem that is none is refused, with what and where', () => {
  expect(() => formulate(mix({ total: { low: 0, high: 1 } }), solve)).toThrow(/total/);
  expect(() => formulate(mix({ limits: [{ ...saltLimit, low: Number.NaN }] }), solve)).toThrow(/limits\[0\]/);
  expect(() => formulate(mix({ ingredients: [lean, lean] }), solve)).toThrow(/twice/);
});
