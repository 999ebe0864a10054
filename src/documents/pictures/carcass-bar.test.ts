import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CarcassPart, carcassBarScene, carcassSegments, labelRows } from './carcass-bar.ts';

const part = fc.record({
  name: fc.string({ minLength: 1, maxLength: 30 }),
  sharePct: fc.option(fc.double({ min: 0, max: 60, noNaN: true }), { nil: null }),
  use: fc.constantFrom<CarcassPart['use']>('menu', 'kitchen', 'thrown away'),
});

describe('carcassBarScene', () => {
  it('is to scale: the remainder is shown, never spread over the parts', () => {
    const scene = carcassBarScene(
      'goose',
      [
        { name: 'neck', sharePct: 10, use: 'menu' },
        { name: 'legs', sharePct: 40, use: 'menu' },
        { name: 'feet', sharePct: 5, use: 'thrown away' },
        { name: 'blood', sharePct: null, use: 'kitchen' },
      ],
      { width: 1000 },
    );
    expect(scene.title).toBe('goose: 50 % on the menu, 5 % thrown away, 45 % not accounted for');
    expect(scene.table?.rows.map((r) => r.join(' '))).toEqual([
      'legs 40 % on the menu',
      'neck 10 % on the menu',
      'feet 5 % thrown away',
      'not accounted for 45 % not accounted for',
      'blood not known in stock and staff food',
    ]);
    const bars = scene.marks.flatMap((m) => (m.kind === 'polygon' ? [m] : [])).slice(3, 7);
    const widths = bars.map((b) => b.points[1]![0] - b.points[0]![0]);
    expect(widths.map(Math.round)).toEqual([400, 100, 50, 450]);
  });

  it('keeps every mark finite and inside, whatever the shares', () => {
    fc.assert(
      fc.property(fc.array(part, { maxLength: 25 }), fc.integer({ min: 320, max: 1200 }), (parts, width) => {
        const scene = carcassBarScene('pig', parts, { width });
        for (const mark of scene.marks) {
          const points = 'points' in mark ? mark.points : [[mark.x, mark.y] as const];
          for (const [x, y] of points) {
            expect(x).toBeGreaterThanOrEqual(-1e-6);
            expect(x).toBeLessThanOrEqual(width + 1e-6);
            expect(y).toBeGreaterThanOrEqual(0);
            expect(y).toBeLessThanOrEqual(scene.height);
          }
        }
        const { segments, total } = carcassSegments(parts);
        if (total > 0) expect(segments.reduce((s, x) => s + x.share, 0)).toBeGreaterThanOrEqual(99.49);
      }),
    );
  });
});

describe('labelRows', () => {
  it('lays no label over another', () => {
    const wanted = fc.array(
      fc.record({
        at: fc.double({ min: 0, max: 900, noNaN: true }),
        width: fc.double({ min: 5, max: 300, noNaN: true }),
      }),
      { maxLength: 30 },
    );
    fc.assert(
      fc.property(wanted, (list) => {
        const sorted = [...list].sort((a, b) => a.at - b.at);
        const rows = labelRows(sorted, 900);
        for (const [i, a] of rows.entries())
          for (const b of rows.slice(i + 1))
            if (a.row === b.row) expect(a.to <= b.from || b.to <= a.from).toBe(true);
      }),
    );
  });
});
