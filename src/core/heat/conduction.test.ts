/** The scheme itself: patch tests, symmetry of its flows, volumes and areas, tables of properties. */
import { describe, expect, test } from 'vitest';
import { density, specificHeat } from '../properties/food-components.ts';
import { conductivity } from '../properties/mixture-conductivity.ts';
import { Conduction } from './conduction.ts';
import { gradedLines } from './grading.ts';
import { materialOf, stride, tableRange } from './material.ts';
import { fineMesh, meshOf } from './mesh.ts';
import { weightsAt } from './place.ts';
import { cubicLethality, valueAt } from './record.ts';
import type { Body, Layer } from './types.ts';

const plain: Layer[] = [{ name: 'x', material: { properties: { k: 0.5, rho: 1000, cp: 3500 } } }];
const frustum: Body = {
  shape: 'revolved',
  profile: [
    { at: 0, diameter: 0.04 },
    { at: 0.1, diameter: 0.06 },
  ],
  layers: plain,
};
const layered: Body = {
  shape: 'block',
  width: 0.08,
  height: 0.06,
  layers: [
    { name: 'mould', thickness: 0.002, material: { properties: { k: 15, rho: 7800, cp: 500 } } },
    { name: 'fat', thickness: 0.005, material: { properties: { k: 0.2, rho: 900, cp: 2500 } } },
    { name: 'meat', material: { properties: { k: 0.5, rho: 1050, cp: 3500 } } },
  ],
};
const conductionOf = (body: Body, refine = 1) =>
  new Conduction(
    meshOf(body, { ...fineMesh, refine }),
    body.layers.map((l) => materialOf(l, { lowest: 4, highest: 100, start: 4 })),
  );

describe('patch test', () => {
  test('an even temperature flows nowhere', () => {
    for (const body of [frustum, layered]) {
      const c = conductionOf(body);
      const T = new Float64Array(c.n).fill(37);
      const F = new Float64Array(c.n);
      c.h = 500;
      c.medium = { C: 37, slope: 0, from: 0 };
      c.evaluate(T, 0, new Float64Array(c.n), F);
      for (const f of F) expect(Math.abs(f)).toBeLessThan(1e-12);
    }
  });
  test('a temperature straight in x and y flows through a rectangular mesh without loss, to rounding', () => {
    const c = conductionOf({ shape: 'block', width: 0.08, height: 0.06, layers: plain });
    const { x, y, nu, nv } = c.mesh;
    const T = Float64Array.from(x, (v, i) => 20 + 300 * v - 200 * (y[i] as number));
    const F = new Float64Array(c.n);
    c.evaluate(T, 0, new Float64Array(c.n), F);
    for (let j = 1; j + 1 < nv; j++)
      for (let i = 1; i + 1 < nu; i++) expect(Math.abs(F[j * nu + i] as number)).toBeLessThan(1e-11);
  });
  test('along the axis of a straight cylinder too', () => {
    const c = conductionOf({
      ...frustum,
      profile: frustum.profile.map((p) => ({ ...p, diameter: 0.05 })),
    } as Body);
    const { x, nu, nv } = c.mesh;
    const T = Float64Array.from(x, (v) => 20 + 300 * v);
    const F = new Float64Array(c.n);
    c.evaluate(T, 0, new Float64Array(c.n), F);
    for (let j = 1; j + 1 < nv; j++)
      for (let i = 0; i < nu; i++) expect(Math.abs(F[j * nu + i] as number)).toBeLessThan(1e-11);
  });
  test('on a tapered mesh what is lost falls with the square of the spacing', () => {
    const lost = [1, 2, 4].map((refine) => {
      const c = conductionOf(frustum, refine);
      const { x, nu, nv } = c.mesh;
      const T = Float64Array.from(x, (v) => 20 + 300 * v);
      const F = new Float64Array(c.n);
      c.evaluate(T, 0, new Float64Array(c.n), F);
      // Rate of temperature change that the false flow would make, mean over the inside [K/s].
      let sum = 0;
      let volume = 0;
      for (let j = 1; j + 1 < nv; j++)
        for (let i = 0; i + 1 < nu; i++) {
          sum += Math.abs(F[j * nu + i] as number) / 3.5e6;
          volume += c.volume[j * nu + i] as number;
        }
      return sum / volume;
    }) as [number, number, number];
    expect(Math.log2(lost[1] / lost[2])).toBeGreaterThan(1.5);
    // Against the rate at which a body like this truly changes, some 0.05 K/s, it is nothing.
    expect(lost[0]).toBeLessThan(0.002);
  });
});

describe('flows', () => {
  test('through the inside sum to nothing: what leaves one cell enters another', () => {
    for (const body of [frustum, layered]) {
      const c = conductionOf(body);
      const T = Float64Array.from({ length: c.n }, (_, i) => 20 + 30 * Math.sin(i * 7.3));
      const F = new Float64Array(c.n);
      c.h = 0;
      c.evaluate(T, 0, new Float64Array(c.n), F);
      const total = F.reduce((s, f) => s + f, 0);
      const size = F.reduce((s, f) => s + Math.abs(f), 0);
      expect(Math.abs(total)).toBeLessThan(1e-12 * size);
    }
  });
  test('the factorised matrix is the derivative of the flows', () => {
    for (const body of [frustum, layered]) {
      const c = conductionOf(body);
      c.h = 300;
      c.medium = { C: 100, slope: 0, from: 0 };
      const T = Float64Array.from({ length: c.n }, (_, i) => 20 + 30 * Math.sin(i * 7.3));
      const d = Float64Array.from({ length: c.n }, (_, i) => Math.cos(i * 3.1));
      const tau = 5;
      const capacity = new Float64Array(c.n);
      const U = new Float64Array(c.n);
      const F0 = new Float64Array(c.n);
      const F1 = new Float64Array(c.n);
      expect(c.factorise(T, tau, capacity)).toBe(true);
      c.evaluate(T, 0, U, F0);
      c.evaluate(
        Float64Array.from(T, (v, i) => v + (d[i] as number)),
        0,
        U,
        F1,
      );
      // (C/τ − F') d, and then back by solving.
      const b = Float64Array.from(
        d,
        (v, i) => ((capacity[i] as number) * v) / tau - ((F1[i] as number) - (F0[i] as number)),
      );
      c.solve(b);
      b.forEach((v, i) => {
        expect(Math.abs(v - (d[i] as number))).toBeLessThan(1e-8);
      });
    }
  });
});

describe('geometry', () => {
  const sum = (x: Float64Array) => x.reduce((s, v) => s + v, 0);
  test('volumes and areas of a frustum are the formula’s', () => {
    const c = conductionOf(frustum);
    const [L, a, b] = [0.1, 0.02, 0.03];
    expect(sum(c.volume)).toBeCloseTo((Math.PI * L * (a * a + a * b + b * b)) / 3, 12);
    const slant = Math.hypot(L, b - a);
    expect(sum(c.area)).toBeCloseTo(Math.PI * (a + b) * slant + Math.PI * (a * a + b * b), 12);
  });
  test('of sphere, cylinder, slab and block', () => {
    const of = (body: Body) => {
      const c = conductionOf(body);
      return [sum(c.volume), sum(c.area)] as const;
    };
    expect(of({ shape: 'sphere', diameter: 0.04, layers: plain })[0]).toBeCloseTo(
      (4 / 3) * Math.PI * 0.02 ** 3,
      14,
    );
    expect(of({ shape: 'cylinder', diameter: 0.04, layers: plain })[1]).toBeCloseTo(2 * Math.PI * 0.02, 14);
    expect(of({ shape: 'slab', thickness: 0.04, layers: plain })).toEqual([expect.closeTo(0.04, 14), 2]);
    const block = of(layered);
    expect(block[0]).toBeCloseTo(0.08 * 0.06, 14);
    expect(block[1]).toBeCloseTo(2 * (0.08 + 0.06), 14);
  });
  test('layers take the volume that is theirs', () => {
    const [mould, fat, meat] = conductionOf(layered).volumeOf() as [number, number, number];
    expect(meat).toBeCloseTo(0.066 * 0.046, 14);
    expect(fat).toBeCloseTo(0.076 * 0.056 - 0.066 * 0.046, 14);
    expect(mould).toBeCloseTo(0.08 * 0.06 - 0.076 * 0.056, 14);
  });
  test('every profile point and every interface is a mesh line', () => {
    const profile = [0, 0.013, 0.05, 0.051, 0.1].map((at, i) => ({ at, diameter: 0.04 + 0.004 * i }));
    const layers: Layer[] = [{ ...(plain[0] as Layer), thickness: 0.0031 }, ...plain];
    const mesh = meshOf({ shape: 'revolved', profile, layers }, fineMesh);
    for (const { at } of profile) expect(mesh.x.includes(at)).toBe(true);
    const line = mesh.interfaces[0] as number;
    for (let j = 0; j < mesh.nv; j++)
      expect(
        (mesh.y[j * mesh.nu + mesh.nu - 1] as number) - (mesh.y[j * mesh.nu + line] as number),
      ).toBeCloseTo(0.0031, 12);
  });
});

test('gradedLines: fixed places are lines, lines rise, refining keeps them', () => {
  const fixed = [0, 0.003, 0.028];
  const make = (refine: number) => gradedLines(fixed, [{ at: 0, size: 0.0005 }], 0.1, 0.002, refine, 3);
  const lines = make(1);
  for (const f of fixed) expect(lines).toContain(f);
  for (let i = 1; i < lines.length; i++) expect(lines[i] as number).toBeGreaterThan(lines[i - 1] as number);
  const twice = make(2);
  expect(twice.length - 1).toBe(2 * (lines.length - 1));
  lines.forEach((x, i) => {
    expect(Math.abs((twice[2 * i] as number) - x)).toBeLessThan(1e-9);
  });
});

describe('materialOf', () => {
  const food = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };
  const start = 4;
  const { table, rho } = materialOf(
    { name: 'x', material: { composition: food } },
    { lowest: start, highest: 100, start },
  );
  const at = (C: number) => {
    const cell = Math.floor((C - tableRange.low) / tableRange.step);
    const s = C - tableRange.low - cell * tableRange.step;
    const v = (i: number) => table[cell * stride + i] as number;
    return { k: v(0) + s * v(1), c: v(2) + s * v(3), u: v(4) + s * (v(2) + 0.5 * s * v(3)) };
  };
  test.each([-30.3, 3.3, 37.77, 72.1, 99.99, 140])(
    'at %s °C the table is the function, to a millionth',
    (C) => {
      expect(Math.abs(at(C).k / conductivity(food, C) - 1)).toBeLessThan(2e-6);
      expect(Math.abs(at(C).c / (density(food, start) * specificHeat(food, C)) - 1)).toBeLessThan(1e-5);
    },
  );
  test('density is that of the start: what a layer weighs does not change as it is heated', () => {
    expect(rho).toBe(density(food, start));
    const hot = materialOf(
      { name: 'x', material: { composition: food } },
      { lowest: 4, highest: 80, start: 80 },
    );
    expect(hot.rho).toBe(density(food, 80));
    expect(rho / hot.rho).toBeGreaterThan(1.02);
  });
  test('heat content is ρ·∫cp of that density (Simpson, 4 to 80 °C)', () => {
    let sum = 0;
    const n = 200;
    for (let i = 0; i <= n; i++) {
      const C = 4 + (76 * i) / n;
      sum += (i === 0 || i === n ? 1 : i % 2 === 1 ? 4 : 2) * specificHeat(food, C);
    }
    expect((at(80).u - at(4).u) / ((rho * sum * 76) / n / 3)).toBeCloseTo(1, 6);
  });
});

test('weightsAt reproduces what is quadratic, and is straight across an interface', () => {
  const mesh = meshOf({ shape: 'slab', thickness: 0.05, layers: plain }, fineMesh);
  const field = Float64Array.from(mesh.x, (x) => 3 - 40 * x * x);
  for (const x of [0, 0.0004, 0.011, -0.02, 0.025])
    expect(valueAt(field, weightsAt(mesh, { x }, 'p'))).toBeCloseTo(3 - 40 * x * x, 10);
  expect(() => weightsAt(mesh, { x: 0.0251 }, 'probes[0].place')).toThrow(
    /probes\[0\]\.place\.x: found 25.1 mm/,
  );
  const w = weightsAt(meshOf(frustum, fineMesh), { at: 0.03, radius: 0.01 }, 'p').w;
  expect(w.reduce((s, v) => s + v, 0)).toBeCloseTo(1, 12);
});

test('cubicLethality is the closed form on a straight line', () => {
  const target = { reference: 70, z: 7.5, s: 120 };
  for (const [a, b] of [
    [60, 70],
    [4, 99],
    [72, 71.9],
    [95, 30],
    [70, 73],
    [70, 70.9],
    [69.9, 66.3],
  ] as const) {
    const h = 600;
    const m = (b - a) / h;
    const exact = (target.z / Math.LN10 / m) * (10 ** ((b - 70) / 7.5) - 10 ** ((a - 70) / 7.5));
    expect(Math.abs(cubicLethality(h, a, b, m, m, 1, target) / exact - 1)).toBeLessThan(2e-6);
    const half = (target.z / Math.LN10 / m) * (10 ** (((a + b) / 2 - 70) / 7.5) - 10 ** ((a - 70) / 7.5));
    expect(Math.abs(cubicLethality(h, a, b, m, m, 0.5, target) / half - 1)).toBeLessThan(2e-6);
  }
});
