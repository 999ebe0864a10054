import { expect, test } from 'vitest';
import type { LinearProgramme } from '../core/numerics/linear-programme.ts';
import { loadSolver } from './solver.ts';

const solve = await loadSolver();
const two = (over: object = {}, low = 3.5): LinearProgramme => ({
  columns: [
    { name: 'a', cost: 1, low: 0, high: 10, ...over },
    { name: 'b', cost: 2, low: 0, high: 10 },
  ],
  rows: [
    {
      name: 'enough',
      low,
      high: Infinity,
      terms: [
        [0, 1],
        [1, 1],
      ],
    },
  ],
});

test('an answer with its prices; in whole numbers without', () => {
  expect(solve(two())).toEqual({
    status: 'optimal',
    value: 3.5,
    x: [3.5, 0],
    rowPrices: [1],
    columnPrices: [0, 1],
  });
  expect(solve(two({ whole: true, high: 3 }))).toMatchObject({
    status: 'optimal',
    value: 4,
    rowPrices: null,
  });
});

test('impossible and without end are answers', () => {
  expect(solve(two({}, 30)).status).toBe('infeasible');
  expect(solve(two({ low: 5, high: 4 })).status).toBe('infeasible');
  expect(solve(two({ low: 1.2, high: 1.8, whole: true })).status).toBe('infeasible');
  expect(solve(two({ cost: -1, high: Infinity })).status).toBe('unbounded');
  expect(solve({ columns: [], rows: [] }).status).toBe('optimal');
});

test('what is not a number, and a column that is not there, are refused before anything is solved', () => {
  expect(() => solve(two({ cost: Number.NaN }))).toThrow(/columns\[0\] \(a\)\.cost: found NaN/);
  expect(() => solve(two({}, Number.NaN))).toThrow(/rows\[0\]/);
  expect(() => solve({ ...two(), rows: [{ name: 'r', low: 0, high: 1, terms: [[2, 1]] }] })).toThrow(
    /column 2/,
  );
  expect(() =>
    solve({
      ...two(),
      rows: [
        {
          name: 'r',
          low: 0,
          high: 1,
          terms: [
            [0, 1],
            [0, 1],
          ],
        },
      ],
    }),
  ).toThrow(/at most once/);
});

test('the next problem is answered right after each of these', () => {
  for (const bad of [
    two({}, 30),
    two({ cost: -1, high: Infinity }),
    two({ whole: true, low: 0.2, high: 0.8 }),
  ]) {
    solve(bad);
    expect(solve(two())).toMatchObject({ status: 'optimal', value: 3.5 });
  }
});
