/** By which rule a layer conducts: what it is without being said, what another does, what the basis says, what is refused. */
import { describe, expect, test } from 'vitest';
import { runChill } from './chill.ts';
import { runCook } from './cook.ts';
import { runGentle } from './gentle.ts';
import { InputProblems } from './problem.ts';
import { studyOf } from './sure-input.ts';

const composition = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };
const input = (layer: object, startC = 4) => ({
  body: { shape: 'cylinder', diameterMm: 56, layers: [{ name: 'filling', composition, ...layer }] },
  startC,
  stages: [{ name: 'steam', mediumC: 100, hWm2K: 1000, until: { lethalityMin: 2 } }],
  target: { referenceC: 70, zC: 7.5, min: 2 },
});
const minutes = (layer: object, startC?: number) => runCook(input(layer, startC)).stages[0]?.endMin ?? 0;
const refused = (bad: unknown, run: (bad: unknown) => unknown = runCook): string[] => {
  try {
    run(bad);
  } catch (error) {
    if (error instanceof InputProblems) return error.problems.map((p) => p.path);
    throw error;
  }
  return [];
};

describe('the rule of a layer’s conductivity', () => {
  test.each([4, -18])('from %d °C: Levy where nothing is said; the bounds on either side of it', (startC) => {
    const levy = minutes({}, startC);
    expect(minutes({ conductivityBy: 'levy' }, startC)).toBe(levy);
    expect(minutes({ conductivityBy: 'parallel' }, startC)).toBeLessThan(0.96 * levy);
    expect(minutes({ conductivityBy: 'perpendicular' }, startC)).toBeGreaterThan(1.1 * levy);
    expect(minutes({ conductivityBy: 'kopelman' }, startC)).toBeLessThan(levy);
    expect(minutes({ conductivityBy: 'maxwell-eucken' }, startC)).toBeLessThan(levy);
  });
  test('the basis names rule, source and error, each rule with its layers', () => {
    const says = (layer: object) =>
      runCook(input(layer)).basis.filter((b) => b.what.startsWith('conductivity of'));
    expect(says({})).toHaveLength(1);
    expect(says({})[0]?.what).toMatch(/filling by Levy’s rule.*within 10 %/);
    expect(says({})[0]?.source).toBe('levy-1981');
    expect(says({ conductivityBy: 'parallel' })[0]?.what).toMatch(/parallel rule, as asked.*upper bound/);
  });
  test.each(['parallel', 'maxwell-eucken', 'kopelman'])(
    '%s, quicker than measured, has no verdict of its own and promises no minutes',
    (conductivityBy) => {
      const cook = input({ conductivityBy });
      const body = cook.body;
      const path = 'body.layers[0].conductivityBy';
      expect(runCook(cook).lethality.passes).toBe(false);
      expect(
        refused({ body, startC: 75, stage: { medium: 'ice water' }, rules: ['gb-chill-90min-8c'] }, runChill),
      ).toEqual([path]);
      const bath = { name: 'bath', mediumC: { low: 62, high: 98 }, hWm2K: 500, until: { min: 60 } };
      expect(refused({ ...cook, stages: [bath], atMostMin: 90 }, runGentle)).toEqual([path]);
      expect(refused({ ...cook, startC: { low: 2, high: 6 }, confidence: 0.95 }, studyOf)).toEqual([path]);
    },
  );
  test('an unknown rule, and a rule beside constant properties, are refused by their path', () => {
    const path = 'body.layers[0].conductivityBy';
    expect(refused(input({ conductivityBy: 'guess' }))).toEqual([path]);
    const properties = { kWmK: 0.5, rhoKgM3: 1050, cpJkgK: 3500 };
    expect(refused(input({ composition: undefined, properties, conductivityBy: 'levy' }))).toEqual([path]);
  });
});
