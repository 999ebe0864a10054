import { expect, test } from 'vitest';
import { cook } from './cook.ts';
import type { CookProblem } from './types.ts';

const problem: CookProblem = {
  body: {
    shape: 'cylinder',
    diameter: 0.05,
    layers: [{ name: 'food', material: { properties: { k: 0.5, rho: 1050, cp: 3500 } } }],
  },
  start: 5,
  stages: [
    { name: 'heat', medium: 90, h: 300, until: { kind: 'time', s: 1800 } },
    { name: 'cool', medium: 2, h: 200, until: { kind: 'time', s: 900 } },
  ],
  target: { reference: 70, z: 7.5, s: 120 },
  probes: [{ name: 'middle', place: { radius: 0 } }],
};

test('readings agree with the history where it has points, and hold before the start and after the end', () => {
  const { history, probes } = cook(problem);
  const { readings } = cook(problem, { at: [-60, ...history.t, 3600] });
  const C = readings?.[0];
  expect(C?.[0]).toBe(5);
  history.t.forEach((_, i) => {
    expect(Math.abs((C?.[i + 1] ?? Number.NaN) - (probes[0]?.C[i] ?? Number.NaN))).toBeLessThan(1e-6);
  });
  expect(C?.at(-1)).toBe(C?.at(-2));
});

test('a run that is not asked for readings gives none', () => {
  expect(cook(problem).readings).toBeUndefined();
});
