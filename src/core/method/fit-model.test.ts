import { describe, expect, test } from 'vitest';
import type { Body, Layer } from '../heat/types.ts';
import { coordinatesOf, type FitParameter, type FitProblem, modelRun, reachOf } from './fit-model.ts';

const layered = (k: number): Layer[] => [
  { name: 'skin', thickness: 0.003, material: { properties: { k: 0.3 * k, rho: 1000, cp: 3000 } } },
  { name: 'food', material: { properties: { k: 0.5 * k, rho: 1050, cp: 3500 } } },
];
const body = (k = 1): Body => ({ shape: 'cylinder', diameter: 0.05, layers: layered(k) });
const t = Float64Array.from({ length: 40 }, (_, i) => 90 * i);
const problem = (more: Partial<FitProblem> = {}): FitProblem => ({
  body: body(),
  start: 4,
  stages: [
    {
      name: 'heat',
      medium: [
        { t: 0, C: 20 },
        { t: 600, C: 95 },
      ],
      h: 300,
      until: { kind: 'time', s: 1800 },
    },
    { name: 'cool', medium: 1, h: 150, until: { kind: 'time', s: 1800 } },
  ],
  place: { radius: 0.004 },
  t,
  C: t,
  parameters: [],
  ...more,
});
const furthest = (a: ArrayLike<number>, b: ArrayLike<number>) =>
  Array.from(a, (v, i) => Math.abs(v - b[i]!)).reduce((x, y) => Math.max(x, y), 0);
const run = (parameter: FitParameter, x: number, more: Partial<FitProblem> = {}) => {
  const asked = problem({ parameters: [parameter], ...more });
  return modelRun(asked, coordinatesOf(asked), [x], 'fine').C;
};

describe('modelRun', () => {
  test('stretched time is the same as layers that conduct better', () => {
    for (const s of [0.6, 1.7]) {
      const other = modelRun(problem({ body: body(s) }), [], [], 'fine').C;
      expect(furthest(run({ kind: 'diffusivity' }, Math.log(s)), other)).toBeLessThan(0.02);
    }
  });

  test('a factor on the size is the piece drawn so, the layers as thick as they were', () => {
    const other = modelRun(problem({ body: { ...body(), diameter: 0.06 } as Body }), [], [], 'fine').C;
    expect(furthest(run({ kind: 'radius' }, Math.log(1.2)), other)).toBeLessThan(1e-9);
  });

  test('the probe and one stage’s coefficient are moved, and nothing else', () => {
    expect(
      furthest(run({ kind: 'probe' }, 0.4), modelRun(problem({ place: { radius: 0.01 } }), [], [], 'fine').C),
    ).toBeLessThan(1e-9);
    const cooler = problem();
    const { stages } = cooler;
    const other = modelRun({ ...cooler, stages: [stages[0]!, { ...stages[1]!, h: 75 }] }, [], [], 'fine').C;
    expect(furthest(run({ kind: 'h', stage: 1 }, Math.log(0.5)), other)).toBeLessThan(1e-9);
  });
});

describe('coordinatesOf', () => {
  test('a piece is not shrunk past its probe or its layers', () => {
    const [radius] = coordinatesOf(problem({ parameters: [{ kind: 'radius' }], place: { radius: 0.02 } }));
    expect(radius!.value(radius!.low)).toBeGreaterThan(0.02);
    expect(() =>
      coordinatesOf(problem({ parameters: [{ kind: 'radius' }], place: { radius: 0.0249 } })),
    ).toThrow(/no room/);
  });

  test('refuses a stage that there is not, and a diffusivity where vapour crosses the surface', () => {
    expect(() => coordinatesOf(problem({ parameters: [{ kind: 'h', stage: 2 }] }))).toThrow(/2 stages/);
    const stages = problem().stages.map((stage) => ({ ...stage, surface: { flux: 100 } }));
    expect(() => coordinatesOf(problem({ parameters: [{ kind: 'diffusivity' }], stages }))).toThrow(/vapour/);
  });

  test('reachOf is a radius or half a thickness', () => {
    const layers = layered(1);
    const profile = [
      { at: 0, diameter: 0.04 },
      { at: 0.1, diameter: 0.06 },
    ];
    expect(reachOf({ shape: 'revolved', profile, layers }, { at: 0.05, radius: 0 })).toBeCloseTo(0.025, 12);
    expect(reachOf({ shape: 'slab', thickness: 0.03, layers }, {})).toBe(0.015);
    expect(reachOf({ shape: 'block', width: 0.08, height: 0.05, layers }, {})).toBe(0.025);
  });
});
