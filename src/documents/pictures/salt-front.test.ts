import { describe, expect, it } from 'vitest';
import { cure } from '../../core/salt/cure.ts';
import type { CurePiece } from '../../core/salt/cure-piece.ts';
import { hoursText, saltAt, saltFrontScene } from './salt-front.ts';
import { toSvg } from './svg.ts';

const piece: CurePiece = { shape: 'slab', size: 0.03, exposedFaces: 2, mass: 1, water: 0.7, salt: 0 };
const bath = { kind: 'bath', mass: 2, salt: 0.06 } as const;
const cured = cure({
  piece,
  stages: [
    { medium: bath, temperature: 4, time: 12 * 3600 },
    { medium: { kind: 'rest' }, temperature: 4, time: 12 * 3600 },
  ],
});

describe('saltAt', () => {
  it('is the engine’s own moment where there is one, and between two of them between', () => {
    const i = 60;
    const [a, b] = [cured.history[i]!, cured.history[i + 1]!];
    expect(saltAt(cured, b.t)?.mean).toBeCloseTo(b.meanWaterPhase, 12);
    const half = saltAt(cured, (a.t + b.t) / 2);
    expect(half?.waterPhase.at(-1)).toBeCloseTo((a.coreWaterPhase + b.coreWaterPhase) / 2, 12);
    expect(saltAt(cured, 1e9)?.mean).toBe(cured.history.at(-1)?.meanWaterPhase);
  });

  it('in the rest there is no bath', () => {
    expect(saltAt(cured, 6 * 3600)?.bath).toBeGreaterThan(0.03);
    expect(saltAt(cured, 13 * 3600)?.bath).toBeNull();
  });
});

describe('saltFrontScene', () => {
  it('says surface, mean and middle; mirrored it stands as high on the left as on the right', () => {
    const scene = saltFrontScene(cured, piece, { width: 600, time: 6 * 3600 });
    expect(scene.title).toContain('after 6 h');
    const front = scene.marks.find((m) => m.kind === 'polyline' && m.stroke?.width === 2.4);
    const points = front?.kind === 'polyline' ? front.points : [];
    expect(points[0]?.[1]).toBeCloseTo(points.at(-1)?.[1] ?? Number.NaN, 9);
    expect(points.every(([x, y]) => Number.isFinite(x) && Number.isFinite(y) && x > 0 && x < 600)).toBe(true);
    const depths = scene.table?.rows.map(([depth]) => Number.parseFloat(depth ?? '')) ?? [];
    expect(depths).toHaveLength(9);
    expect(depths.every((d, i) => i === 0 || d > (depths[i - 1] ?? 0))).toBe(true);
    expect(toSvg(scene)).toContain('<svg');
  });

  it('one scale for all hours', () => {
    const labels = (time: number) =>
      saltFrontScene(cured, piece, { width: 600, time })
        .marks.flatMap((m) => (m.kind === 'text' && m.anchor === 'end' ? [m.text] : []))
        .join(' ');
    expect(labels(600)).toBe(labels(12 * 3600));
  });

  it('dry salt, skin and one face fit in the drawing', () => {
    const under: CurePiece = { ...piece, exposedFaces: 1, skin: { thickness: 0.003, water: 0.5 } };
    const dry = cure({
      piece: under,
      stages: [{ medium: { kind: 'dry', salt: 0.018 }, temperature: 4, time: 3600 }],
    });
    const scene = saltFrontScene(dry, under, { width: 340, time: 1800, units: 'US' });
    for (const mark of scene.marks)
      if (mark.kind === 'polygon' || mark.kind === 'polyline')
        for (const [x, y] of mark.points) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(340);
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y).toBeLessThanOrEqual(scene.height);
        }
    expect(scene.marks.some((m) => m.kind === 'text' && m.text.includes('at the surface'))).toBe(true);
  });
});

describe('hoursText', () => {
  it.each([
    [0, '0 min'],
    [5400, '90 min'],
    [4.5 * 3600, '4.5 h'],
    [31 * 3600, '31 h'],
    [7 * 86400, '7 days'],
  ])('%d s', (s, words) => {
    expect(hoursText(s)).toBe(words);
  });
});
