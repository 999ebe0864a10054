/** Bodies that no series describes: tapered, layered, pointed; held to symmetry, conservation and their own refined limit. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { specificHeat } from '../properties/food-components.ts';
import { cook } from './cook.ts';
import { theta } from './series.ts';
import type { Body, CookOptions, CookProblem, CookResult, Layer, Stage } from './types.ts';

const skin = { water: 0.6, protein: 0.15, fat: 0.24, carbohydrate: 0, fibre: 0, ash: 0.01 };
const filling = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };
const target = { reference: 70, z: 7.5, s: 120 };
const twoLayers: Layer[] = [
  { name: 'skin', thickness: 0.003, material: { composition: skin } },
  { name: 'filling', material: { composition: filling } },
];
const tapered: Body = {
  shape: 'revolved',
  profile: [
    { at: 0, diameter: 0.04 },
    { at: 0.115, diameter: 0.056 },
    { at: 0.17, diameter: 0.05 },
  ],
  layers: twoLayers,
};
const time = (name: string, medium: number, h: number, s: number): Stage => ({
  name,
  medium,
  h,
  until: { kind: 'time', s },
});
const staged: CookProblem = {
  body: tapered,
  start: 4,
  stages: [time('steam', 100, 1000, 2400), time('ice water', 1, 400, 1800)],
  target,
  probes: [
    { name: 'middle', place: { at: 0.11, radius: 0 } },
    { name: 'interface', place: { at: 0.11, radius: 0.0247 } },
    { name: 'thin end', place: { at: 0.02, radius: 0.01 } },
    { name: 'thick end', place: { at: 0.16, radius: 0.01 } },
  ],
};
const lineAt = (r: CookResult, y: Float64Array, when: number): number => {
  const { t } = r.history;
  let i = 0;
  while (i + 2 < t.length && (t[i + 1] as number) <= when) i++;
  const [t0, t1, y0, y1] = [t[i], t[i + 1], y[i], y[i + 1]] as [number, number, number, number];
  return y0 + ((when - t0) / (t1 - t0)) * (y1 - y0);
};

describe('a tapered body in two layers, steamed and chilled', () => {
  const fine = cook(staged);
  const limit = cook(staged, { refine: 2.5, tolerance: 0.003 });
  /** Not within a minute of a jump of the medium. */
  const times = Array.from({ length: 138 }, (_, i) => 60 + 30 * i).filter((t) => t <= 2400 || t >= 2460);

  test('probes, coldest, mean and surface within 0.1 K of the refined limit', () => {
    for (const t of times) {
      fine.probes.forEach((probe, q) => {
        expect(
          Math.abs(lineAt(fine, probe.C, t) - lineAt(limit, limit.probes[q]?.C as Float64Array, t)),
        ).toBeLessThan(0.1);
      });
      for (const column of ['coldest', 'mean', 'surface'] as const)
        expect(
          Math.abs(lineAt(fine, fine.history[column], t) - lineAt(limit, limit.history[column], t)),
          `${column} at ${t}`,
        ).toBeLessThan(0.12);
    }
  });
  test('the cold spot, its lethality and when it is safe', () => {
    expect(Math.abs((fine.coldSpot.at as number) - (limit.coldSpot.at as number))).toBeLessThan(5e-4);
    expect(Math.abs((fine.coldSpot.radius as number) - (limit.coldSpot.radius as number))).toBeLessThan(5e-4);
    expect(Math.abs(fine.lethality.s / limit.lethality.s - 1)).toBeLessThan(0.03);
    expect(
      Math.abs((fine.lethality.reachedAt as number) - (limit.lethality.reachedAt as number)),
    ).toBeLessThan(5);
  });
  test('heat stored is heat supplied, to a hundredth of a per cent', () => {
    expect(fine.heatBalancePct).toBeLessThan(0.01);
  });
  test('the same twice, to the last digit', () => {
    const again = cook(staged);
    expect(again.history.coldSpot).toEqual(fine.history.coldSpot);
    expect(again.lethality).toEqual(fine.lethality);
  });
  test('no temperature leaves what start and media span', () => {
    for (const value of fine.history.coldest) expect(value).toBeGreaterThan(1 - 0.02);
    for (const value of fine.history.warmest) expect(value).toBeLessThan(100 + 0.02);
  });
  test('coarse agrees with fine to a degree at the middle', () => {
    const coarse = cook(staged, { mode: 'coarse' });
    for (const t of times)
      expect(
        Math.abs(
          lineAt(coarse, coarse.probes[0]?.C as Float64Array, t) -
            lineAt(fine, fine.probes[0]?.C as Float64Array, t),
        ),
      ).toBeLessThan(1);
  });
  test('straight lines between the points of the history lose less than 0.05 K', () => {
    const dense = cook(staged, { tolerance: 0.001 });
    for (let t = 61; t < 4200; t += 17) {
      if (t > 2400 && t < 2460) continue;
      for (const column of ['coldest', 'warmest', 'mean'] as const)
        expect(
          Math.abs(lineAt(fine, fine.history[column], t) - lineAt(dense, dense.history[column], t)),
        ).toBeLessThan(0.05);
    }
  });
  test('mass is density times volume, within what the taper’s straight sides give exactly', () => {
    // Frusta of the profile, by the two foods' densities at 4 °C.
    const frustum = (L: number, a: number, b: number) => (Math.PI * L * (a * a + a * b + b * b)) / 3;
    const volume = (inset: number) =>
      frustum(0.115, 0.02 - inset, 0.028 - inset) + frustum(0.055, 0.028 - inset, 0.025 - inset);
    const inner = volume(0.003);
    const outer = volume(0) - inner;
    expect(fine.mass).toBeGreaterThan(990 * (inner + outer));
    expect(fine.mass).toBeLessThan(1070 * (inner + outer));
    const uniform: Layer[] = [{ name: 'x', material: { properties: { k: 0.5, rho: 1000, cp: 3500 } } }];
    const mass = cook({ ...staged, body: { ...tapered, layers: uniform } as Body }, { mode: 'coarse' }).mass;
    expect(mass).toBeCloseTo(1000 * volume(0), 9);
  });
});

test.each([
  [4, 95],
  [75, 2],
])(
  'by the kilogram a piece of food takes ∫ cp dT from %s to %s °C: none of its mass is lost on the way',
  (from, to) => {
    const food = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };
    const { history, mass } = cook({
      body: { shape: 'sphere', diameter: 0.03, layers: [{ name: 'food', material: { composition: food } }] },
      start: from,
      stages: [{ name: 'through', medium: to, h: 1000, until: { kind: 'time', s: 7200 } }],
      target: { reference: 70, z: 7.5, s: 120 },
    });
    const middle = (from + to) / 2;
    // Simpson's rule is exact for the components' quadratics.
    const perKilogram =
      ((to - from) / 6) *
      (specificHeat(food, from) + 4 * specificHeat(food, middle) + specificHeat(food, to));
    expect((history.heat.at(-1) as number) / mass / perKilogram).toBeCloseTo(1, 4);
  },
);

test('observed order of convergence in space is at least 1.8', () => {
  // At a profile point on the axis: a node of every mesh, so that nothing is interpolated.
  const probes = [{ name: 'middle', place: { at: 0.115, radius: 0 } }];
  const middle = [1, 2, 4].map((refine) => {
    const problem = { ...staged, probes, stages: [time('steam', 100, 1000, 900)] };
    return cook(problem, { mode: 'coarse', refine, tolerance: 0.002 }).probes[0]?.C.at(-1) as number;
  }) as [number, number, number];
  const order = Math.log2(Math.abs(middle[1] - middle[0]) / Math.abs(middle[2] - middle[1]));
  expect(order).toBeGreaterThan(1.8);
});

test('a bend of the side is resolved: what happens at it does not hang on the mesh', () => {
  const probes = [0.025, 0.0265, 0.028].map((radius) => ({
    name: String(radius),
    place: { at: 0.115, radius },
  }));
  const problem = { ...staged, probes, stages: [time('steam', 100, 1000, 300)] };
  const fine = cook(problem);
  const limit = cook(problem, { refine: 2.5, tolerance: 0.005 });
  fine.probes.forEach((probe, q) => {
    for (const t of [60, 120, 300])
      expect(
        Math.abs(lineAt(fine, probe.C, t) - lineAt(limit, limit.probes[q]?.C as Float64Array, t)),
      ).toBeLessThan(0.15);
  });
});

describe('a sphere as a body of revolution', () => {
  const R = 0.03;
  const food = { k: 0.48, rho: 1050, cp: 3500 };
  const layers: Layer[] = [{ name: 'food', material: { properties: food } }];
  const points = 80;
  const profile = Array.from({ length: points + 1 }, (_, i) => {
    const at = R * (1 - Math.cos((Math.PI * i) / points));
    return { at, diameter: i === 0 || i === points ? 0 : 2 * Math.sqrt(Math.max(0, R * R - (at - R) ** 2)) };
  });
  test.each([1, 10])('agrees with the series at Bi %s within 0.25 K', (Bi) => {
    const h = (Bi * food.k) / R;
    const result = cook({
      body: { shape: 'revolved', profile, layers },
      start: 5,
      stages: [time('heat', 100, h, 2400)],
      target,
      probes: [0, R / 2].map((radius, i) => ({ name: String(i), place: { at: R, radius } })),
    });
    const alpha = food.k / food.rho / food.cp;
    for (let t = 60; t <= 2400; t += 60)
      [0, 0.5].forEach((x, q) => {
        const exact = 100 - 95 * theta('sphere', Bi, (alpha * t) / R ** 2, x);
        expect(Math.abs(lineAt(result, result.probes[q]?.C as Float64Array, t) - exact)).toBeLessThan(0.25);
      });
    expect(result.coldSpot.at).toBeCloseTo(R, 3);
  });
});

test('a frustum end for end gives the mirrored answer', () => {
  const layers = twoLayers;
  const run = (profile: { at: number; diameter: number }[]) =>
    cook({ ...staged, probes: [], body: { shape: 'revolved', profile, layers } });
  const a = run([
    { at: 0, diameter: 0.03 },
    { at: 0.1, diameter: 0.06 },
  ]);
  const b = run([
    { at: 0, diameter: 0.06 },
    { at: 0.1, diameter: 0.03 },
  ]);
  expect(a.coldSpot.at).toBeCloseTo(0.1 - (b.coldSpot.at as number), 5);
  expect(Math.abs(a.lethality.s / b.lethality.s - 1)).toBeLessThan(1e-3);
  expect(a.coldSpot.at as number).toBeGreaterThan(0.05);
});

describe('the cold spot', () => {
  test('is in the middle of a heated even body', () => {
    const even: Body = {
      shape: 'revolved',
      profile: [
        { at: 0, diameter: 0.05 },
        { at: 0.12, diameter: 0.05 },
      ],
      layers: twoLayers,
    };
    const r = cook({ ...staged, probes: [], body: even, stages: [time('steam', 100, 1000, 1800)] });
    expect(r.coldSpot.at).toBeCloseTo(0.06, 4);
    expect(r.coldSpot.radius).toBe(0);
  });
  test('leaves the axis when the piece goes from the steam into ice: the axis stays warm longest', () => {
    const r = cook(staged);
    expect(r.coldSpot.radius as number).toBeGreaterThan(0.001);
    expect(r.coldSpot.radius as number).toBeLessThan(0.01);
  });
  test('is on the surface of a hot piece that is only chilled', () => {
    const r = cook({ ...staged, probes: [], start: 85, stages: [time('ice', 1, 400, 1800)] });
    expect(r.history.coldSpot.at(-1)).toBeLessThan(5);
    expect(r.coldSpot.radius as number).toBeGreaterThan(0.019);
  });
  test('is the deepest point where all points are alike', () => {
    const r = cook({ ...staged, probes: [], stages: [time('fridge', 4, 10, 600)] });
    expect(r.coldSpot.radius).toBe(0);
    expect(r.coldSpot.at as number).toBeGreaterThan(0.03);
    expect(r.coldSpot.at as number).toBeLessThan(0.145);
  });
});

test('frames: the start, the end of every stage, no more than asked for, lethality never falling', () => {
  const r = cook(staged, { mode: 'coarse', frames: { count: 12 } });
  expect(r.frames.length).toBeLessThanOrEqual(12);
  expect(r.frames.length).toBeGreaterThan(6);
  expect(r.frames[0]?.t).toBe(0);
  for (const stage of r.stages) expect(r.frames.some((f) => f.t === stage.end)).toBe(true);
  for (let i = 1; i < r.frames.length; i++) {
    const [a, b] = [r.frames[i - 1], r.frames[i]];
    expect(b?.t).toBeGreaterThan(a?.t as number);
    b?.lethality.forEach((P, n) => {
      expect(P).toBeGreaterThanOrEqual(a?.lethality[n] as number);
    });
  }
  expect(r.frames[0]?.C.length).toBe(r.mesh.nu * r.mesh.nv);
});

test('longer in the steam, or hotter steam, never lowers lethality; a thicker piece never raises it', () => {
  const coarse: CookOptions = { mode: 'coarse' };
  const lethality = (minutes: number, medium: number, scale: number) =>
    cook(
      {
        body: { shape: 'cylinder', diameter: 0.04 * scale, layers: twoLayers },
        start: 4,
        stages: [time('heat', medium, 800, 60 * minutes), time('ice', 1, 300, 1200)],
        target,
      },
      coarse,
    ).lethality.s;
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 60, noNaN: true }),
      fc.double({ min: 60, max: 99, noNaN: true }),
      fc.double({ min: 1, max: 1.5, noNaN: true }),
      fc.double({ min: 1.05, max: 1.5, noNaN: true }),
      (minutes, medium, scale, more) => {
        const base = lethality(minutes, medium, scale);
        expect(lethality(minutes * more, medium, scale)).toBeGreaterThanOrEqual(base * 0.999);
        expect(lethality(minutes, medium + 2 * more, scale)).toBeGreaterThanOrEqual(base * 0.999);
        expect(lethality(minutes, medium, scale * more)).toBeLessThanOrEqual(base * 1.001);
      },
    ),
    { numRuns: 25 },
  );
});
