import { describe, expect, test } from 'vitest';
import { chillStepOf, cookStepOf, programmeOf, wrapResistance } from './method-cook.ts';
import { InputProblems } from './problem.ts';
import { Method, type Step } from './steps.ts';

const id = (n: number) => `01900000-0000-7000-8000-${String(n).padStart(12, '0')}`;
const common = (n: number, name: string) => ({ id: id(n), name, how: '', handsMin: 0, asks: [] });
const composition = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };

const wrap = (n: number): Step => ({
  kind: 'wrap',
  ...common(n, 'film'),
  material: 'film',
  layers: 10,
  micrometres: 10,
  kWmK: 0.3,
});
const cook: Step = {
  kind: 'cook',
  ...common(2, 'steam'),
  body: { shape: 'cylinder', diameterMm: 50, layers: [{ name: 'meat', composition }] },
  startC: 4,
  stages: [
    { name: 'steam', mediumC: 100, hWm2K: 1000, until: { min: 30 } },
    { name: 'rest', medium: 'still air', until: { min: 5 } },
  ],
  target: { referenceC: 70, zC: 7.5, min: 2 },
  rules: ['gb-70c-2min'],
};
const chill: Step = {
  kind: 'chill',
  ...common(3, 'ice'),
  stages: [{ name: 'ice water', mediumC: 1, hWm2K: 200, until: { warmestC: 5 } }],
  rules: [],
};
const keep: Step = { kind: 'keep', ...common(4, 'keep'), maxC: 3, days: 3, packed: 'open or covered' };

describe('programmeOf', () => {
  test('joins the cook step and the chill after it, in SI, target from the cook step', () => {
    const { problem, cookStages } = programmeOf([cook, chill, keep], cook.id);
    expect(cookStages).toBe(2);
    expect(problem.stages.map((s) => s.name)).toEqual(['steam', 'rest', 'ice water']);
    expect(problem.stages[0]).toMatchObject({ medium: 100, h: 1000, until: { kind: 'time', s: 1800 } });
    expect(problem.target).toEqual({ reference: 70, z: 7.5, s: 120 });
    expect(problem.body).toMatchObject({ shape: 'cylinder', diameter: 0.05 });
  });

  test('a wrap before the cook stands in series with every coefficient; the published 1000 → 750', () => {
    const { problem } = programmeOf([wrap(1), cook, chill], cook.id);
    expect(problem.stages[0]!.h).toBeCloseTo(750, 6);
    expect(problem.stages[2]!.h).toBeCloseTo(1 / (1 / 200 + 1e-4 / 0.3), 6);
    expect(wrapResistance(wrap(1) as Extract<Step, { kind: 'wrap' }>)).toBeCloseTo(3.333e-4, 7);
  });

  test('a wrap between cook and chill counts for the chill alone', () => {
    const { problem } = programmeOf([cook, wrap(1), chill], cook.id);
    expect(problem.stages[0]!.h).toBe(1000);
    expect(problem.stages[2]!.h).toBeLessThan(200);
  });

  test('a stage’s own resistance and the wrap add up', () => {
    const stages = [{ ...cook.stages[0]!, resistanceM2KW: 1e-3 }];
    const { problem } = programmeOf([wrap(1), { ...cook, stages }], cook.id);
    expect(problem.stages[0]!.h).toBeCloseTo(1 / (1e-3 + 1e-3 + 1e-4 / 0.3), 6);
  });

  test('a chill after keeping, or after another cook, is not this cook’s', () => {
    expect(programmeOf([cook, keep, chill], cook.id).problem.stages).toHaveLength(2);
    const second: Step = { ...cook, id: id(9) };
    expect(chillStepOf([cook, second, chill], cook.id)).toBeUndefined();
    expect(cookStepOf([cook, second, chill], chill.id)?.id).toBe(second.id);
    expect(cookStepOf([chill, cook], chill.id)).toBeUndefined();
  });

  test('what cannot be run is refused by path: unknown step, no stages, 400 °C steam, a skin thicker than the radius', () => {
    const problemsOf = (method: Method, stepId = cook.id) => {
      try {
        programmeOf(method, stepId);
      } catch (error) {
        if (error instanceof InputProblems) return error.problems.map((p) => p.path);
        throw error;
      }
      return [];
    };
    expect(problemsOf([chill], chill.id)).toEqual(['cookStepId']);
    expect(problemsOf([{ ...cook, stages: [] }])).toEqual(['stages']);
    const hot = { name: 'steam', medium: 'steam', mediumC: 200, until: { min: 3 } };
    expect(problemsOf([{ ...cook, stages: [hot] }])).toEqual(['stages[0].mediumC']);
    expect(problemsOf([cook, { ...chill, stages: [hot] }])).toEqual(['stages[2].mediumC']);
    const layers = [
      { name: 'skin', thicknessMm: 30, composition },
      { name: 'meat', composition },
    ];
    const [path] = problemsOf([{ ...cook, body: { shape: 'cylinder', diameterMm: 50, layers } }]);
    expect(path).toMatch(/^body\.layers/);
  });

  test('the example method is one the contract accepts', () => {
    expect(Method.parse([wrap(1), cook, chill, keep])).toHaveLength(4);
  });
});
