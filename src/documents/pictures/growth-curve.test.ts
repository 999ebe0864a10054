import { describe, expect, it } from 'vitest';
import { growthCurveScene } from './growth-curve.ts';

const line = { name: 'with lag', min: [0, 60, 120], increase: [0, 0.301, 1.2304], ink: 'oxblood' as const };
const options = { width: 520, title: 'growth', level: { at: 1, words: 'one log' } };

describe('growthCurveScene', () => {
  it('draws the course, the level across it, and rounds growth up', () => {
    const scene = growthCurveScene([line], options);
    const words = scene.marks.flatMap((m) => (m.kind === 'text' ? [m.text] : []));
    expect(words).toContain('one log');
    expect(words).toContain('with lag 1.24');
    expect(scene.table?.rows).toEqual([['with lag', '1.24', '120 min']]);
    const level = scene.marks.find((m) => m.kind === 'polyline' && m.stroke?.ink === 'rust');
    const course = scene.marks.find((m) => m.kind === 'polyline' && m.stroke?.ink === 'oxblood');
    const top = (m: typeof level) => Math.min(...(m && 'points' in m ? m.points.map((p) => p[1]) : []));
    expect(top(course)).toBeLessThan(top(level));
  });
  it('keeps every mark inside, narrow and wide, with no number that is none', () => {
    for (const width of [260, 640])
      for (const mark of growthCurveScene([line, { ...line, name: 'without', increase: [0, 0, 0] }], {
        ...options,
        width,
      }).marks) {
        const points = 'points' in mark ? mark.points : [[mark.x, mark.y] as const];
        for (const [x, y] of points) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(width);
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y).toBeLessThanOrEqual(220);
        }
      }
  });
});
