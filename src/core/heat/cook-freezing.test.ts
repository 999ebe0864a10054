/** Freezing, thawing and cooking from frozen: the account, the ends, the ice, the mesh and the limits. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { normalised } from '../properties/food-components.ts';
import { firstIce, freezingFood } from '../properties/freezing-food.ts';
import { freezingFoods } from '../properties/freezing-points.ts';
import { cook } from './cook.ts';
import { materialOf, stride } from './material.ts';
import type { Body, Layer, Stage, Until } from './types.ts';

const lamb = freezingFoods['lamb, lean'];
const layer: Layer = { name: 'lamb', material: { composition: lamb.composition }, freezing: lamb.freezing };
const target = { reference: 70, z: 7.5, s: 120 };
const roll: Body = { shape: 'cylinder', diameter: 0.04, layers: [layer] };
const stage = (medium: number, h: number, until: Until): Stage => ({ name: 's', medium, h, until });
const to = (C: number, kind: 'warmest' | 'coldest'): Until => ({ kind, C, atMost: 3 * 86_400 });
const run = (body: Body, start: number, stages: Stage[], options = {}) =>
  cook({ body, start, stages, target }, options);

describe('the table of a food that freezes', () => {
  const material = materialOf(layer, { lowest: -35, highest: 5, start: 5 });
  const { table, low, step, cells } = material;
  const value = (i: number, column: number) => table[i * stride + column] as number;
  test('holds the heat content of the closed form at every line below the first ice', () => {
    const food = freezingFood(normalised(lamb.composition), lamb.freezing);
    for (let i = 0; low + i * step < lamb.freezing - step / 2; i += 25)
      expect(value(i, 4) / material.rho).toBeCloseTo(food.heatBetween(low, low + i * step), 3);
  });
  test('has no gap in the heat content and its first ice on a line', () => {
    for (let i = 0; i + 1 < cells; i++) {
      const end = value(i, 4) + step * (value(i, 2) + (step / 2) * value(i, 3));
      expect(Math.abs(end - value(i + 1, 4))).toBeLessThan(1e-6 * Math.abs(end) + 1);
    }
    const line = (lamb.freezing - low) / step;
    expect(Math.abs(line - Math.round(line))).toBeLessThan(1e-9);
  });
  test('is the usual one where the programme stays above the first ice', () => {
    const usual = materialOf(layer, { lowest: 4, highest: 100, start: 5 });
    expect(materialOf(layer, { lowest: -1.8, highest: 100, start: 5 }).table).toEqual(usual.table);
    expect(usual.freezing).toBeUndefined();
  });
  test('a piece that starts frozen has the density of frozen meat throughout', () => {
    const frozen = materialOf(layer, { lowest: -20, highest: 5, start: -20 });
    expect(frozen.rho / material.rho).toBeGreaterThan(0.92);
    expect(frozen.rho / material.rho).toBeLessThan(0.96);
  });
});

describe('freezing', () => {
  const frozen = run(roll, 5, [stage(-35, 30, to(-18, 'warmest'))]);
  test('ends where it should, with its account closed', () => {
    expect(frozen.stages[0]?.reached).toBe(true);
    expect(frozen.stages[0]?.warmest).toBeCloseTo(-18, 2);
    expect(frozen.heatBalancePct).toBeLessThan(0.01);
  });
  test('ice comes from none to what is left when bound water is not counted, and never melts on the way', () => {
    const { ice = [] } = frozen.history;
    expect(ice.length).toBe(frozen.history.t.length);
    expect(ice[0]).toBe(0);
    for (let i = 1; i < ice.length; i++)
      expect(ice[i] as number).toBeGreaterThanOrEqual((ice[i - 1] as number) - 1e-3);
    const most = 1 - (0.4 * lamb.composition.protein) / lamb.composition.water;
    expect(frozen.stages[0]?.ice).toBeGreaterThan(0.88 * most);
    expect(frozen.stages[0]?.ice).toBeLessThan(most);
  });
  test('the middle stays at the first ice for a while', () => {
    const { warmest, t } = frozen.history;
    let plateau = 0;
    for (let i = 1; i < t.length; i++)
      if ((warmest[i] as number) < -1.7 && (warmest[i] as number) > -2.1)
        plateau += (t[i] as number) - (t[i - 1] as number);
    expect(plateau / (t.at(-1) as number)).toBeGreaterThan(0.3);
  });
  test('a mesh twice as fine and a tenth of the tolerance change the time by less than half a per cent', () => {
    const finer = run(roll, 5, [stage(-35, 30, to(-18, 'warmest'))], { refine: 2, tolerance: 0.002 });
    expect(Math.abs((finer.stages[0]?.end ?? 0) / (frozen.stages[0]?.end ?? 1) - 1)).toBeLessThan(0.005);
  });
  test('behind a steep front the time converges at first order or better as the mesh is refined', () => {
    const ends = [0.25, 0.5, 1].map(
      (refine) =>
        run(roll, 5, [stage(-35, 300, to(-18, 'warmest'))], { refine, tolerance: 0.001 }).stages[0]?.end ??
        Number.NaN,
    );
    const [coarse = Number.NaN, middle = Number.NaN, fine = Number.NaN] = ends;
    expect(Math.log2((coarse - middle) / (middle - fine))).toBeGreaterThan(1);
    expect(Math.abs(middle - fine) / fine).toBeLessThan(0.002);
  });
  test('thawing takes longer than freezing under the same difference: ice conducts better than meat', () => {
    const thaw = run(roll, -10, [stage(18, 500, to(0, 'coldest'))]);
    const freeze = run(roll, 0, [stage(-22, 500, to(-10, 'warmest'))]);
    expect(thaw.stages[0]?.reached).toBe(true);
    expect(thaw.heatBalancePct).toBeLessThan(0.05);
    expect(thaw.stages[0]?.end ?? 0).toBeGreaterThan(freeze.stages[0]?.end ?? 0);
  });
  test('cooked from frozen it needs longer than thawed, and cooks to the end', () => {
    const cold = run(roll, -18, [stage(100, 1000, to(70, 'coldest'))]);
    const thawed = run(roll, 3, [stage(100, 1000, to(70, 'coldest'))]);
    expect(cold.stages[0]?.reached).toBe(true);
    expect(cold.stages[0]?.end ?? 0).toBeGreaterThan(1.2 * (thawed.stages[0]?.end ?? 0));
    expect(cold.stages[0]?.ice).toBe(0);
  });
  test('without a first ice given it is that of the composition', () => {
    const own: Layer = { name: 'lamb', material: { composition: lamb.composition } };
    const body: Body = { ...roll, layers: [own] };
    const r = run(body, 5, [stage(-35, 30, { kind: 'time', s: 1800 })]);
    expect(r.basis.map((b) => b.what).join()).toContain(
      `first ice of lamb at ${firstIce(lamb.composition).toFixed(1)} °C`,
    );
  });
});

const programme = fc.record({
  shape: fc.constantFrom('slab', 'cylinder', 'sphere'),
  size: fc.double({ min: 0.01, max: 0.2, noNaN: true }),
  water: fc.double({ min: 0.3, max: 0.83, noNaN: true }),
  start: fc.double({ min: -25, max: 40, noNaN: true }),
  stages: fc.array(
    fc.record({
      medium: fc.double({ min: -40, max: 100, noNaN: true }),
      h: fc.double({ min: 5, max: 1000, noNaN: true }),
      s: fc.double({ min: 600, max: 20_000, noNaN: true }),
    }),
    { minLength: 1, maxLength: 3 },
  ),
});

describe('any programme through the first ice', () => {
  test('closes its account to 0.1 %, stays within its surroundings and has a share of ice between 0 and 1', () => {
    fc.assert(
      fc.property(programme, ({ shape, size, water, start, stages }) => {
        const composition = {
          water,
          protein: 0.15,
          fat: 0.84 - water,
          carbohydrate: 0,
          fibre: 0,
          ash: 0.01,
        };
        const layers: Layer[] = [{ name: 'x', material: { composition }, freezing: -1.5 }];
        const body: Body =
          shape === 'slab'
            ? { shape, thickness: size, layers }
            : { shape: shape as 'cylinder', diameter: size, layers };
        const r = run(body, start, [
          stage(-20, 50, { kind: 'time', s: 600 }),
          ...stages.map(({ medium, h, s }) => stage(medium, h, { kind: 'time', s })),
        ]);
        expect(r.heatBalancePct).toBeLessThan(0.1);
        const low = Math.min(start, -20, ...stages.map((s) => s.medium));
        const high = Math.max(start, -20, ...stages.map((s) => s.medium));
        for (const end of r.stages) {
          expect(end.coldest).toBeGreaterThan(low - 0.1);
          expect(end.warmest).toBeLessThan(high + 0.1);
          expect(end.ice).toBeGreaterThanOrEqual(0);
          expect(end.ice).toBeLessThan(1);
        }
      }),
      { numRuns: 40 },
    );
  });
});
