import { describe, expect, test } from 'vitest';
import { cook } from '../heat/cook.ts';
import type { Body } from '../heat/types.ts';
import { hottestOf, meansOver } from './hottest-field.ts';

const layers = [{ name: 'meat', material: { properties: { k: 0.48, rho: 1050, cp: 3500 } } }];
const meshOf = (body: Body) =>
  cook({
    body,
    start: 5,
    stages: [{ name: 'bath', medium: 80, h: 500, until: { kind: 'time', s: 60 } }],
    target: { reference: 70, z: 7.5, s: 120 },
  }).mesh;

describe('meansOver', () => {
  // The share of a body that lies further than x from its middle plane, axis or centre.
  test.each([
    [{ shape: 'slab', thickness: 0.04, layers } as const, 0.5],
    [{ shape: 'cylinder', diameter: 0.04, layers } as const, 0.75],
    [{ shape: 'sphere', diameter: 0.04, layers } as const, 0.875],
  ])('the outer half of %j', (body, share) => {
    const mesh = meshOf(body);
    const [outer] = meansOver(mesh, mesh.x, [(x) => (x > 0.01 ? 1 : 0)]);
    expect(Math.abs((outer ?? 0) - share)).toBeLessThan(0.01);
  });

  test('a cone: the share of it outside of half its radius, and its mean distance along', () => {
    const profile = [
      { at: 0, diameter: 0.04 },
      { at: 0.1, diameter: 0.06 },
    ];
    const mesh = meshOf({ shape: 'revolved', profile, layers });
    const radiusAt = (x: number) => 0.02 + 0.1 * x;
    const relative = Float64Array.from(mesh.x, (x, i) => (mesh.y[i] ?? 0) / radiusAt(x));
    const [outer] = meansOver(mesh, relative, [(r) => (r > 0.5 ? 1 : 0)]);
    expect(Math.abs((outer ?? 0) - 0.75)).toBeLessThan(0.01);
    const [along] = meansOver(mesh, mesh.x, [(x) => x]);
    // ∫ x R² dx / ∫ R² dx with R = 0.02 + 0.1 x over 0.1.
    const n = 1000;
    let a = 0;
    let b = 0;
    for (let i = 0; i < n; i++) {
      const x = ((i + 0.5) / n) * 0.1;
      a += x * radiusAt(x) ** 2;
      b += radiusAt(x) ** 2;
    }
    expect((along ?? 0) / (a / b)).toBeCloseTo(1, 3);
  });
});

test('hottestOf: each node’s own highest', () => {
  const frame = (C: number[]) => ({
    t: 0,
    stage: 0,
    C: Float32Array.from(C),
    lethality: new Float32Array(C.length),
  });
  expect([...hottestOf({ frames: [frame([4, 9, 1]), frame([6, 3, 1])] })]).toEqual([6, 9, 1]);
});
