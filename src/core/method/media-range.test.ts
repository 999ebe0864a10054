import { describe, expect, test } from 'vitest';
import { cook } from '../heat/cook.ts';
import type { CookProblem, Stage } from '../heat/types.ts';
import { mediaRange } from './media-range.ts';

const steam: Stage = { name: 'steam', medium: 100, h: 1000, until: { kind: 'time', s: 1800 } };
const ice: Stage = { name: 'ice', medium: 1, h: 200, until: { kind: 'warmest', C: 5 } };
const problem: CookProblem = {
  body: {
    shape: 'cylinder',
    diameter: 0.05,
    layers: [{ name: 'meat', material: { properties: { k: 0.48, rho: 1050, cp: 3500 } } }],
  },
  start: 4,
  stages: [steam, ice],
  target: { reference: 70, z: 7.5, s: 120 },
};
const at = (stage: Stage, h: number) => ({ ...stage, h });

describe('mediaRange', () => {
  const ranges = [
    { stage: 0, low: at(steam, 400), high: at(steam, 5000) },
    { stage: 1, low: at(ice, 100), high: at(ice, 500) },
  ];
  const found = mediaRange(problem, 0, ranges);

  test('a lower coefficient takes longer, a higher one less, the stage as it stands lies between', () => {
    expect(found.map((r) => r.stage)).toEqual([0, 1]);
    for (const { low, usual, high } of found) {
      expect(low).toBeGreaterThan(usual);
      expect(usual).toBeGreaterThan(high);
    }
  });

  test('the minutes of the stage that cooks are those with which it holds, and not a moment less', () => {
    const [heating] = found;
    const holds = (s: number) =>
      cook(
        { ...problem, stages: [{ ...at(steam, 400), until: { kind: 'time', s } }, ice] },
        { mode: 'coarse' },
      ).lethality.passes;
    expect(holds(heating!.low)).toBe(true);
    expect(holds(heating!.low - 4)).toBe(false);
  });

  test('of a stage that ends by a condition: its own run with that coefficient', () => {
    const alone = cook({ ...problem, stages: [steam, at(ice, 500)] }, { mode: 'coarse' }).stages[1]!;
    expect(found[1]!.high).toBeCloseTo(alone.end - alone.start, 6);
  });

  test('what never gets there is not a number; a stage of a set time that does not cook is left out', () => {
    const never: Stage = { ...ice, until: { kind: 'warmest', C: 5, atMost: 600 } };
    const rest: Stage = { name: 'rest', medium: 20, h: 10, until: { kind: 'time', s: 300 } };
    const rows = mediaRange({ ...problem, stages: [steam, rest, never] }, 0, [
      { stage: 1, low: at(rest, 5), high: at(rest, 15) },
      { stage: 2, low: at(never, 100), high: at(never, 500) },
    ]);
    expect(rows).toEqual([{ stage: 2, low: Number.NaN, usual: Number.NaN, high: Number.NaN }]);
  });
});
