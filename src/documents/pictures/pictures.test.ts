import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { cook } from '../../core/heat/cook.ts';
import type { Body, CookResult } from '../../core/heat/types.ts';
import { historyAt } from '../../core/method/verdict.ts';
import { curvesScene, spread, thinned } from './curves.ts';
import { cutThroughLayout, cutThroughScene, rampOf } from './cut-through.ts';
import { levelLines, locate, valueAt } from './cut-through-field.ts';
import { pieceScene } from './piece.ts';
import { placeOfPoint, pointsOfPlace, sectionOfBody, sectionOfMesh } from './piece-section.ts';
import type { Scene } from './scene.ts';
import { toSvg } from './svg.ts';

const composition = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };
const layers = [
  { name: 'skin', thickness: 0.003, material: { composition } },
  { name: 'filling', material: { composition } },
];
const bodies: readonly Body[] = [
  {
    shape: 'revolved',
    profile: [
      { at: 0, diameter: 0.04 },
      { at: 0.12, diameter: 0.056 },
      { at: 0.18, diameter: 0.05 },
    ],
    layers,
  },
  { shape: 'cylinder', diameter: 0.05, layers },
  { shape: 'sphere', diameter: 0.05, layers },
  { shape: 'slab', thickness: 0.04, layers },
  { shape: 'block', width: 0.08, height: 0.06, layers },
];
const target = { reference: 70, z: 7.5, s: 120 };
const results = new Map<string, CookResult>();

beforeAll(() => {
  for (const body of bodies)
    results.set(
      body.shape,
      cook(
        {
          body,
          start: 4,
          stages: [
            { name: 'steam', medium: 100, h: 1000, until: { kind: 'time', s: 1500 } },
            { name: 'ice water', medium: 1, h: 400, until: { kind: 'time', s: 1200 } },
          ],
          target,
        },
        { mode: 'coarse', frames: { count: 12 } },
      ),
    );
});

/** Every coordinate of a scene; text counts with its anchor point. */
function* coordinates(scene: Scene): Generator<readonly [number, number]> {
  for (const mark of scene.marks) {
    if ('points' in mark) yield* mark.points;
    else yield [mark.x, mark.y];
  }
}

function expectWithin(scene: Scene) {
  const all = [...coordinates(scene)];
  expect(all.length).toBeGreaterThan(10);
  const out = all.filter(
    ([x, y]) => !(x >= -0.01 && x <= scene.width + 0.01 && y >= -0.01 && y <= scene.height + 0.01),
  );
  expect(out).toEqual([]);
}

const words = (scene: Scene) => scene.marks.flatMap((m) => (m.kind === 'text' ? [m.text] : []));
const shapes = bodies.map((b) => b.shape);

describe.each(shapes)('cutThroughScene of a %s', (shape) => {
  test.each([320, 640, 1100])('has no NaN and stays in its box, %i wide, at every frame', (width) => {
    const result = results.get(shape)!;
    for (const frame of result.frames)
      expectWithin(cutThroughScene(result, frame, { width, needed: target.s, maxHeight: 260 }));
  });

  test('has its ruler in mm, its temperature scale, its ring and its table', () => {
    const result = results.get(shape)!;
    const scene = cutThroughScene(result, result.frames[4]!, { width: 700 });
    expect(words(scene).some((w) => / mm$/.test(w))).toBe(true);
    expect(words(scene).filter((w) => /^\d+°$/.test(w)).length).toBeGreaterThan(3);
    expect(words(scene).some((w) => /^coldest point \d+\.\d °C$/.test(w))).toBe(true);
    expect(scene.marks.filter((m) => m.kind === 'circle').length).toBeGreaterThanOrEqual(2);
    expect(scene.table!.rows.length).toBeGreaterThan(4);
    expect(scene.table!.rows.flat().join(' ')).not.toMatch(/NaN|undefined/);
    expect(() => toSvg(scene)).not.toThrow();
  });

  test('is to scale: as many picture units a millimetre along as across', () => {
    const { section, layout } = cutThroughLayout(results.get(shape)!.mesh, { width: 700 });
    const along = (layout.x(section.x1) - layout.x(section.x0)) / (section.x1 - section.x0);
    const across = (layout.y(-section.half) - layout.y(section.half)) / (2 * section.half);
    expect(along).toBeCloseTo(across, 9);
  });

  test('the section of the mesh is the section of the body', () => {
    const a = sectionOfBody(bodies.find((b) => b.shape === shape)!);
    const b = sectionOfMesh(results.get(shape)!.mesh);
    expect(b.half).toBeCloseTo(a.half, 6);
    expect(b.x1 - b.x0).toBeCloseTo(a.x1 - a.x0, 6);
    expect(b.interfaces).toHaveLength(a.interfaces.length);
  });

  test('a place and its point are one another’s inverse, and the field is found there', () => {
    const { mesh, coldSpot, frames, history } = results.get(shape)!;
    for (const point of pointsOfPlace(shape, coldSpot)) {
      const found = locate(mesh, placeOfPoint(shape, point));
      expect(found).not.toBeNull();
      // The coarse mesh and the engine's own reading of the spot differ by how they weigh the nodes round it.
      const wanted = historyAt(history.t, history.coldSpot, frames[3]!.t);
      expect(Math.abs(valueAt(frames[3]!.C, found!) - wanted)).toBeLessThan(1.5);
    }
    expect(locate(mesh, { at: 5, radius: 5, x: 5, y: 5 })).toBeNull();
  });

  test('US: ruler in inches, scale and label in °F', () => {
    const result = results.get(shape)!;
    const scene = cutThroughScene(result, result.frames[4]!, { width: 700, units: 'US' });
    expect(words(scene).some((w) => / in$/.test(w))).toBe(true);
    expect(words(scene).some((w) => /°F$/.test(w))).toBe(true);
  });
});

describe('the line inside which it is not done', () => {
  test('parts the nodes that have had the lethality from those that have not', () => {
    const { mesh, frames } = results.get('revolved')!;
    const frame = frames.find((f) => f.lethality.some((P) => P > 120) && f.lethality.some((P) => P < 120))!;
    const log = Float64Array.from(frame.lethality, (P) => Math.log(Math.max(P, 1e-9)));
    const lines = levelLines(mesh, log, Math.log(120));
    expect(lines.length).toBeGreaterThan(0);
    expect(lines.length).toBeLessThan(6);
    for (const [x, y] of lines.flat()) {
      const found = locate(mesh, { at: x / 1000, radius: Math.max(0, y / 1000) });
      if (found !== null) expect(valueAt(log, found)).toBeCloseTo(Math.log(120), 3);
    }
  });

  test('no line where nothing or everything has had it', () => {
    const { mesh, frames } = results.get('block')!;
    expect(levelLines(mesh, frames[0]!.lethality, 120)).toHaveLength(0);
  });
});

describe('curvesScene', () => {
  test.each(shapes)('of a %s has no NaN, stays in its box and names every line where it ends', (shape) => {
    const result = results.get(shape)!;
    const measured = [
      {
        name: 'probe',
        points: [
          { s: 0, C: 5 },
          { s: 900, C: 66 },
          { s: 9000, C: 3 },
        ],
        decidingS: 900,
      },
    ];
    for (const width of [340, 900]) {
      const scene = curvesScene(result, { width, target, measured });
      expectWithin(scene);
      for (const name of [
        'coldest point',
        'surface',
        'mean',
        'medium',
        'probe',
        'needs 2 min',
        'has had',
        'this reading decides',
      ])
        expect(words(scene)).toContain(name);
      expect(scene.table!.rows).toHaveLength(result.stages.length);
    }
  });

  test('spread keeps labels apart and in order, whatever is wanted (property)', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -50, max: 250, noNaN: true }), { minLength: 1, maxLength: 7 }),
        (wanted) => {
          const at = spread(wanted, 14, 0, 200);
          const sorted = [...at].sort((a, b) => a - b);
          return (
            sorted.every((v, i) => i === 0 || v - sorted[i - 1]! >= 14 - 1e-9) && sorted.at(-1)! <= 200 + 1e-9
          );
        },
      ),
    );
  });

  test('thinned keeps ends and loses no more than it may', () => {
    const points = Array.from({ length: 500 }, (_, i) => [i, 40 * Math.sin(i / 40)] as const);
    const kept = thinned(points, 0.15);
    expect(kept.length).toBeLessThan(150);
    expect(kept[0]).toEqual(points[0]);
    expect(kept.at(-1)).toEqual(points.at(-1));
    for (const [x, y] of points) {
      const after = kept.findIndex((p) => p[0] >= x);
      const b = kept[after]!;
      const a = kept[Math.max(0, after - 1)]!;
      const on = b[0] > a[0] ? a[1] + ((b[1] - a[1]) * (x - a[0])) / (b[0] - a[0]) : b[1];
      expect(Math.abs(on - y)).toBeLessThan(0.16);
    }
  });
});

describe('pieceScene', () => {
  test.each(bodies.map((b) => [b.shape, b] as const))('%s: in its box, with its ruler', (_, body) => {
    for (const width of [280, 700]) {
      const scene = pieceScene(body, { width, ghost: true, maxHeight: 220 });
      expectWithin(scene);
      expect(words(scene).some((w) => / mm$/.test(w))).toBe(true);
    }
  });
});

describe('rampOf', () => {
  test('spans all that happened, in whole tens', () => {
    const ramp = rampOf(results.get('sphere')!);
    expect(ramp.low % 10).toBe(0);
    expect(ramp.high).toBe(100);
    expect(ramp.low).toBeLessThanOrEqual(4);
  });
});
