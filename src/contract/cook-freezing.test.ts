/** What the headless cook says of freezing: keys, refusals, basis. */
import { describe, expect, test } from 'vitest';
import { runCook } from './cook.ts';
import { InputProblems } from './problem.ts';

const composition = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };
const input = {
  body: { shape: 'cylinder', diameterMm: 40, layers: [{ name: 'filling', composition }] },
  startC: 3,
  stages: [{ name: 'freezer', mediumC: -30, hWm2K: 25, until: { warmestC: -18 } }],
  target: { referenceC: 70, zC: 7.5, min: 2 },
};
const layer = (more: object) => ({
  ...input,
  body: { ...input.body, layers: [{ name: 'filling', composition, ...more }] },
});
const problemsOf = (bad: unknown) => {
  try {
    runCook(bad);
  } catch (error) {
    if (error instanceof InputProblems) return error.problems;
    throw error;
  }
  return [];
};

describe('cook through freezing', () => {
  const answer = runCook(input);
  test('says how much of the water is ice, at the end and on the times of the history', () => {
    const { history, stages } = answer;
    expect(stages[0]?.reached).toBe(true);
    expect(stages[0]?.icePct).toBeGreaterThan(75);
    expect(history.icePct?.length).toBe(history.min.length);
    expect(history.icePct?.[0]).toBe(0);
    expect(history.icePct?.at(-1)).toBeCloseTo(stages[0]?.icePct ?? 0, 6);
    expect(answer.heatBalancePct).toBeLessThan(0.01);
  });
  test('has no such keys where nothing can freeze', () => {
    const warm = runCook({
      ...input,
      stages: [{ name: 'chill', mediumC: 2, hWm2K: 25, until: { min: 30 } }],
    });
    expect(warm.history.icePct).toBeUndefined();
    expect(warm.stages[0]).not.toHaveProperty('icePct');
  });
  test('a first ice that is given is taken, and changes the time', () => {
    const lower = runCook(layer({ freezingPointC: -4 }));
    expect(lower.basis.map((b) => b.what)).toContain('first ice of filling at -4.0 °C, as given');
    expect(lower.stages[0]?.endMin).not.toBeCloseTo(answer.stages[0]?.endMin ?? 0, 1);
  });
  test('a first ice of the table is taken by the food’s name, and said', () => {
    const as = runCook(layer({ freezesAs: 'egg white' }));
    expect(as.basis.map((b) => b.what).join()).toContain(
      'first ice of filling at -0.6 °C, that of egg white',
    );
    expect(problemsOf(layer({ freezesAs: 'unicorn' }))[0]?.path).toBe('body.layers[0].freezesAs');
    expect(problemsOf(layer({ freezesAs: 'cod', freezingPointC: -2 }))[0]?.path).toBe(
      'body.layers[0].freezesAs',
    );
  });
  test('a first ice out of range, or beside constant properties, is refused by its path', () => {
    expect(problemsOf(layer({ freezingPointC: -20 }))[0]?.path).toBe('body.layers[0].freezingPointC');
    const constant = { kWmK: 0.5, rhoKgM3: 1050, cpJkgK: 3500 };
    const both = layer({ composition: undefined, properties: constant, freezingPointC: -2 });
    expect(problemsOf(both)[0]?.path).toBe('body.layers[0].freezingPointC');
  });
});
