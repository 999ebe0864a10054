/** The engine against exact solutions. Tolerance 0.1 K after the first minute, as the answers are printed to a tenth. */
import { describe, expect, test } from 'vitest';
import { cook } from './cook.ts';
import { finiteCylinder, theta } from './series.ts';
import { layeredCylinder, stagedCylinder } from './series-composite.ts';
import type { Body, CookOptions, Layer, Place, Stage } from './types.ts';

const food = { k: 0.48, rho: 1050, cp: 3500 };
const alpha = food.k / food.rho / food.cp;
const R = 0.02;
const layers: Layer[] = [{ name: 'food', material: { properties: food } }];
const target = { reference: 70, z: 7.5, s: 120 };

interface Shape {
  readonly body: Body;
  readonly places: readonly Place[];
  /** θ at a place and time for a Biot number on R. */
  readonly exact: (Bi: number, t: number, place: Place) => number;
}
const simple = (shape: 'slab' | 'cylinder' | 'sphere'): Shape => ({
  body: shape === 'slab' ? { shape, thickness: 2 * R, layers } : { shape, diameter: 2 * R, layers },
  places: [0, R / 2, R].map((d) => (shape === 'slab' ? { x: d } : { radius: d })),
  exact: (Bi, t, p) => theta(shape, Bi, (alpha * t) / R ** 2, (p.x ?? p.radius ?? 0) / R),
});
const tall = 0.035;
const half = 0.05;
const shapes: Record<string, Shape> = {
  slab: simple('slab'),
  cylinder: simple('cylinder'),
  sphere: simple('sphere'),
  block: {
    body: { shape: 'block', width: 2 * R, height: 2 * tall, layers },
    places: [
      { x: 0, y: 0 },
      { x: R, y: 0 },
      { x: 0, y: -tall },
      { x: -R / 2, y: tall / 2 },
      { x: R, y: tall },
    ],
    exact: (Bi, t, p) =>
      theta('slab', Bi, (alpha * t) / R ** 2, Math.abs(p.x ?? 0) / R) *
      theta('slab', (Bi * tall) / R, (alpha * t) / tall ** 2, Math.abs(p.y ?? 0) / tall),
  },
  'finite cylinder': {
    body: {
      shape: 'revolved',
      profile: [
        { at: 0, diameter: 2 * R },
        { at: 2 * half, diameter: 2 * R },
      ],
      layers,
    },
    places: [
      { at: half, radius: 0 },
      { at: half, radius: R },
      { at: half / 2, radius: R / 2 },
      { at: 0, radius: 0 },
      { at: 2 * half, radius: R },
      { at: 0.003, radius: 0.005 },
    ],
    exact: (Bi, t, p) =>
      finiteCylinder(
        R,
        half,
        (Bi * food.k) / R,
        food.k,
        alpha,
        t,
        p.radius ?? 0,
        Math.abs((p.at ?? 0) - half),
      ),
  },
};

/** Straight lines between the points of a history, as any reader of it draws them. */
function lineAt(t: Float64Array, y: Float64Array, when: number): number {
  let i = 0;
  while (i + 2 < t.length && (t[i + 1] as number) <= when) i++;
  const [t0, t1, y0, y1] = [t[i], t[i + 1], y[i], y[i + 1]] as [number, number, number, number];
  return y0 + ((when - t0) / (t1 - t0)) * (y1 - y0);
}

function run(body: Body, places: readonly Place[], stages: Stage[], options: CookOptions = {}) {
  const probes = places.map((place, i) => ({ name: String(i), place }));
  return cook({ body, start: 5, stages, target, probes }, options);
}
const heat = (h: number, s: number): Stage => ({ name: 'heat', medium: 100, h, until: { kind: 'time', s } });

describe.each(Object.entries(shapes))('%s', (_, { body, places, exact }) => {
  test.each([0.1, 1, 10, 100])('Bi %s: every probe within 0.1 K after the first minute', (Bi) => {
    const result = run(body, places, [heat((Bi * food.k) / R, 3600)]);
    places.forEach((place, q) => {
      const C = result.probes[q]?.C as Float64Array;
      let worst = 0;
      result.history.t.forEach((t, i) => {
        if (t >= 60) worst = Math.max(worst, Math.abs((C[i] as number) - (100 - 95 * exact(Bi, t, place))));
      });
      for (let t = 60; t <= 3600; t += 13)
        worst = Math.max(
          worst,
          Math.abs(lineAt(result.history.t, C, t) - (100 - 95 * exact(Bi, t, place))) - 0.03,
        );
      expect(worst).toBeLessThan(0.1);
    });
    expect(result.heatBalancePct).toBeLessThan(0.1);
  });

  test('lethality at the middle within 3 % of the integral of the series', () => {
    const Bi = 20;
    const result = run(body, places, [heat((Bi * food.k) / R, 2400)]);
    const middle = places[0] as Place;
    const rate = (t: number) => 10 ** ((95 * (1 - exact(Bi, t, middle)) + 5 - target.reference) / target.z);
    let P = 0;
    for (let t = 1; t < 2400; t++) P += (rate(t) + 4 * rate(t + 0.5) + rate(t + 1)) / 6;
    const ours = result.probes[0]?.lethality.at(-1) as number;
    expect(Math.abs(ours / P - 1)).toBeLessThan(0.03);
  });
});

test('coarse mode stays within 0.6 K at the middle of every shape', () => {
  for (const { body, places, exact } of Object.values(shapes)) {
    const result = run(body, places, [heat((10 * food.k) / R, 2400)], { mode: 'coarse' });
    const C = result.probes[0]?.C as Float64Array;
    for (let t = 120; t <= 2400; t += 60)
      expect(
        Math.abs(lineAt(result.history.t, C, t) - (100 - 95 * exact(10, t, places[0] as Place))),
      ).toBeLessThan(0.6);
  }
});

test('two layers, exact: within 0.1 K everywhere after the first minute', () => {
  const core = { k: 0.48, rho: 1020, cp: 3470 };
  const skin = { k: 0.36, rho: 1000, cp: 3190 };
  const r = [0, 0.01, 0.015, 0.0175];
  const body: Body = {
    shape: 'cylinder',
    diameter: 0.035,
    layers: [
      { name: 'skin', thickness: 0.0025, material: { properties: skin } },
      { name: 'core', material: { properties: core } },
    ],
  };
  const result = run(
    body,
    r.map((radius) => ({ radius })),
    [heat(1000, 1500)],
  );
  for (const t of [60, 120, 300, 600, 900, 1200, 1500]) {
    const exact = layeredCylinder(0.015, 0.0175, core, skin, 1000, 100, 5, t, r);
    exact.forEach((C, q) => {
      expect(Math.abs(lineAt(result.history.t, result.probes[q]?.C as Float64Array, t) - C)).toBeLessThan(
        0.1,
      );
    });
  }
});

test('stages, exact: steam, standing in air, ice water', () => {
  const exact = [
    { s: 900, medium: 100, h: 1000 },
    { s: 120, medium: 20, h: 10 },
    { s: 1200, medium: 0, h: 300 },
  ];
  const stages = exact.map(
    ({ s, medium, h }, i): Stage => ({ name: String(i), medium, h, until: { kind: 'time', s } }),
  );
  const result = run(
    { shape: 'cylinder', diameter: 0.04, layers },
    [0, 0.01, 0.02].map((radius) => ({ radius })),
    stages,
  );
  for (const t of [60, 300, 600, 900, 960, 1020, 1100, 1420, 1820, 2220]) {
    stagedCylinder(0.02, food, 5, exact, t, [0, 0.5, 1]).forEach((C, q) => {
      expect(Math.abs(lineAt(result.history.t, result.probes[q]?.C as Float64Array, t) - C)).toBeLessThan(
        0.1,
      );
    });
  }
  // Carry-over: the middle goes on rising by 5.8 K after it leaves the steam.
  expect((result.stages[1]?.coldSpot as number) - (result.stages[0]?.coldSpot as number)).toBeCloseTo(
    5.81,
    1,
  );
});
