import { describe, expect, it } from 'vitest';
import { weightFallScene } from './weight-fall.ts';

const columns = [
  { name: 'Trim', low: 1, usual: 1, high: 1, known: true },
  { name: 'Steam', low: 0.7, usual: 0.8, high: 0.9, known: true },
  { name: 'Crisp', low: 0.7, usual: 0.8, high: 0.9, known: false },
];

describe('weightFallScene', () => {
  it('draws every column to one scale', () => {
    const scene = weightFallScene(columns, { width: 300, units: 'metric' });
    const solid = scene.marks.flatMap((m) => (m.kind === 'polygon' && m.fill === 'slate' ? [m] : []));
    const high = (m: (typeof solid)[number]) => m.points[2]![1] - m.points[0]![1];
    expect(high(solid[1]!) / high(solid[0]!)).toBeCloseTo(0.7, 9);
    expect(scene.title).toMatch(/Steam 800 g/);
  });

  it('dashes what is too much because a loss is not known', () => {
    const scene = weightFallScene(columns, { width: 300, units: 'metric' });
    const dashed = scene.marks.filter((m) => m.kind === 'polygon' && m.stroke?.dash !== undefined);
    expect(dashed).toHaveLength(1);
  });

  it('keeps within its frame', () => {
    const scene = weightFallScene(columns, { width: 300, units: 'metric' });
    for (const m of scene.marks)
      for (const [x, y] of m.kind === 'polygon' || m.kind === 'polyline' ? m.points : []) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(scene.width);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(scene.height);
      }
  });
});
