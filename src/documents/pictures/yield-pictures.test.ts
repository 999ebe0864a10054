import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BalancePiece, balanceBarScene, balanceWords } from './balance-bar.ts';
import { carcassBarScene } from './carcass-bar.ts';
import type { Scene } from './scene.ts';
import { shareDotsScene } from './share-dots.ts';
import { yieldIntervalsScene } from './yield-intervals.ts';

function inside(scene: Scene): void {
  for (const mark of scene.marks) {
    const points = 'points' in mark ? mark.points : [[mark.x, mark.y] as const];
    for (const [x, y] of points) {
      expect(x).toBeGreaterThanOrEqual(-8);
      expect(x).toBeLessThanOrEqual(scene.width + 8);
      expect(y).toBeGreaterThanOrEqual(-1e-6);
      expect(y).toBeLessThanOrEqual(scene.height + 1e-6);
    }
  }
}
const wide = (mark: Scene['marks'][number]) =>
  mark.kind === 'polygon' ? mark.points[1]![0] - mark.points[0]![0] : 0;

describe('balanceBarScene', () => {
  it('is to scale, and what is missing is a segment of its own at the end', () => {
    const scene = balanceBarScene(
      10_000,
      [
        { kind: 'parts', grams: 4_000 },
        { kind: 'parts', grams: 2_000 },
        { kind: 'drip', grams: 1_000 },
        { kind: 'unaccounted', grams: 3_000 },
      ],
      { width: 1_000, units: 'metric' },
    );
    expect(scene.marks.slice(0, 3).map(wide).map(Math.round)).toEqual([600, 100, 300]);
    expect(scene.table?.rows.map((r) => r.join(' '))).toEqual([
      'parts 6 kg 60 %',
      'drip 1 kg 10 %',
      'not accounted for 3 kg 30 %',
    ]);
  });
  it('keeps inside whatever is weighed, and says so in words', () => {
    const piece = fc.record({
      kind: fc.constantFrom<BalancePiece['kind']>(
        'parts',
        'sold',
        'drip',
        'bone',
        'bin',
        'by-product',
        'unaccounted',
      ),
      grams: fc.double({ min: 0, max: 1e6, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(piece, { maxLength: 20 }),
        fc.integer({ min: 0, max: 1_000_000 }),
        (pieces, into) => {
          inside(balanceBarScene(into, pieces, { width: 358, units: 'metric' }));
          expect(balanceWords(into, pieces, 'US')).not.toMatch(/NaN|undefined/);
        },
      ),
    );
  });
});

describe('carcassBarScene by money', () => {
  const parts = [
    { name: 'legs', sharePct: 40, use: 'menu', moneyPct: 30 },
    { name: 'breast', sharePct: 20, use: 'menu', moneyPct: 70 },
    { name: 'feet', sharePct: 5, use: 'thrown away', moneyPct: 0 },
  ] as const;
  it('draws what each part carries of the money under its weight', () => {
    const scene = carcassBarScene('goose', parts, { width: 1_000 });
    const bars = scene.marks.filter((m) => m.kind === 'polygon' && m.points[2]![1] - m.points[1]![1] === 22);
    expect(bars.map(wide).map(Math.round)).toEqual([700, 300]);
    expect(scene.table?.head).toContain('Share of the money');
    inside(scene);
  });
  it('has no such bar where nobody knows what was paid', () => {
    const scene = carcassBarScene(
      'goose',
      parts.map((p) => ({ ...p, moneyPct: null })),
      { width: 1_000 },
    );
    expect(scene.table?.head).not.toContain('Share of the money');
    expect(scene.height).toBeLessThan(carcassBarScene('goose', parts, { width: 1_000 }).height);
  });
});

describe('yieldIntervalsScene', () => {
  const pct = fc.double({ min: 0, max: 100, noNaN: true });
  const maybe = fc.option(pct, { nil: null });
  it('keeps every mark inside, whatever is known', () => {
    const row = fc.record({
      part: fc.string({ minLength: 1, maxLength: 80 }),
      meanPct: pct,
      low95: maybe,
      high95: maybe,
      nextLow95: maybe,
      nextHigh95: maybe,
      publishedPct: maybe,
      animals: fc.nat({ max: 2_000 }),
    });
    fc.assert(
      fc.property(fc.array(row, { maxLength: 30 }), fc.constantFrom(320, 358, 1_000), (rows, width) => {
        const scene = yieldIntervalsScene(rows, { width });
        inside(scene);
        expect(scene.table?.rows).toHaveLength(rows.length);
      }),
    );
  });
  it('does not draw an interval that is not known, and says so', () => {
    const one = {
      part: 'neck',
      meanPct: 4,
      low95: null,
      high95: null,
      nextLow95: null,
      nextHigh95: null,
      publishedPct: null,
      animals: 1,
    };
    const scene = yieldIntervalsScene([one], { width: 800 });
    expect(scene.marks.filter((m) => m.kind === 'polyline' && m.stroke?.width === 5)).toEqual([]);
    expect(scene.table?.rows[0]).toContain('not known yet');
  });
});

describe('shareDotsScene', () => {
  it('keeps every mark inside, one dot or many, one hand or several', () => {
    const dot = fc.record({
      x: fc.double({ min: 0, max: 2e12, noNaN: true }),
      pct: fc.double({ min: 0, max: 100, noNaN: true }),
      series: fc.constantFrom('Ida', 'Maud', 'Somebody with a very long name indeed'),
      what: fc.constant('a day'),
    });
    fc.assert(
      fc.property(
        fc.array(dot, { minLength: 1, maxLength: 30 }),
        fc.constantFrom(320, 900),
        (dots, width) => {
          const scene = shareDotsScene(dots, {
            width,
            title: 't',
            ends: ['a', 'b'],
            what: 'Day',
            joined: true,
          });
          for (const mark of scene.marks)
            if ('points' in mark) for (const [x, y] of mark.points) expect(Number.isFinite(x + y)).toBe(true);
          expect(scene.table?.rows).toHaveLength(dots.length);
        },
      ),
    );
  });
});
