import { describe, expect, test } from 'vitest';
import { cook } from '../../core/heat/cook.ts';
import type { Body } from '../../core/heat/types.ts';
import { locate, valueAt } from '../../documents/pictures/cut-through-field.ts';
import { placeOfPoint, sectionOfMesh } from '../../documents/pictures/piece-section.ts';
import { rampBytes, rampEntry } from '../../documents/pictures/ramp.ts';
import { frameAt, stageAt } from './frames.ts';
import { paint, rasterOf } from './raster.ts';

const composition = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };
const layers = [{ name: 'meat', material: { composition } }];
const bodies: Body[] = [
  {
    shape: 'revolved',
    profile: [
      { at: 0, diameter: 0.04 },
      { at: 0.1, diameter: 0.06 },
    ],
    layers,
  },
  { shape: 'cylinder', diameter: 0.05, layers },
  { shape: 'slab', thickness: 0.04, layers },
  { shape: 'block', width: 0.08, height: 0.06, layers },
];
const run = (body: Body) =>
  cook(
    {
      body,
      start: 4,
      stages: [
        { name: 'steam', medium: 100, h: 1000, until: { kind: 'time', s: 600 } },
        { name: 'rest', medium: 20, h: 10, until: { kind: 'time', s: 300 } },
      ],
      target: { reference: 70, z: 7.5, s: 120 },
    },
    { mode: 'coarse', frames: { count: 10 } },
  );

describe.each(bodies.map((b) => [b.shape, b] as const))('rasterOf a %s', (_, body) => {
  const result = run(body);
  const section = sectionOfMesh(result.mesh);
  const perMm = 2;
  const raster = rasterOf(result.mesh, section.x0, section.x1, section.half, perMm);
  const frame = frameAt(result, 400)!;
  const pixels = new Uint32Array(raster.width * raster.height);
  paint(raster, frame.C, 0, 100, pixels);

  test('every pixel inside shows the colour of the field there; outside stays clear', () => {
    let inside = 0;
    let wrong = 0;
    for (let row = 3; row < raster.height - 3; row += 3)
      for (let column = 3; column < raster.width - 3; column += 3) {
        const mmX = section.x0 + (column + 0.5) * ((section.x1 - section.x0) / raster.width);
        const mmY = section.half - (row + 0.5) * ((2 * section.half) / raster.height);
        const found = locate(result.mesh, placeOfPoint(result.mesh.shape, [mmX, mmY]));
        const pixel = pixels[row * raster.width + column]!;
        if (found === null) {
          const edge = locate(result.mesh, placeOfPoint(result.mesh.shape, [mmX, mmY * 0.97])) !== null;
          if (pixel !== 0 && !edge) wrong++;
          continue;
        }
        inside++;
        const entry = rampEntry(valueAt(frame.C, found) / 100);
        const near = [-2, -1, 0, 1, 2].some((d) => {
          const e = Math.min(255, Math.max(0, entry + d));
          return (pixel & 255) === rampBytes[3 * e]! && ((pixel >> 8) & 255) === rampBytes[3 * e + 1]!;
        });
        if (!near) wrong++;
      }
    expect(inside).toBeGreaterThan(200);
    expect(wrong / inside).toBeLessThan(0.01);
  });

  test('is symmetrical about the axis', () => {
    for (let column = 0; column < raster.width; column += 7)
      for (let row = 0; row < raster.height / 2; row += 5)
        expect(pixels[row * raster.width + column]).toBe(
          pixels[(raster.height - 1 - row) * raster.width + column],
        );
  });
});

describe('frameAt', () => {
  const result = run(bodies[1]!);
  test('at a snapshot its own field, between two their mean, held beyond the ends', () => {
    const [a, b] = [result.frames[2]!, result.frames[3]!];
    expect(frameAt(result, a.t)!.C[0]).toBeCloseTo(a.C[0]!, 5);
    expect(frameAt(result, (a.t + b.t) / 2)!.C[0]).toBeCloseTo((a.C[0]! + b.C[0]!) / 2, 4);
    expect(frameAt(result, -5)).toBe(result.frames[0]);
    expect(frameAt(result, 1e9)).toBe(result.frames.at(-1));
    expect(frameAt({ ...result, frames: [] }, 0)).toBeNull();
  });
  test('the last moment of a stage is still its own', () => {
    expect([0, 300, 600, 601, 900].map((t) => stageAt(result, t))).toEqual([0, 0, 0, 1, 1]);
  });
});
