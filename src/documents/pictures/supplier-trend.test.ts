import { describe, expect, test } from 'vitest';
import type { SupplierTrend } from '../../contract/delivery.ts';
import { mostShown, supplierTrendScene } from './supplier-trend.ts';

type Row = SupplierTrend['deliveries'][number];
const row = (i: number, more: Partial<Row> = {}): Row => ({
  deliveryId: `d${i}`,
  arrivedAt: new Date(Date.UTC(2026, 0, 1 + i)).toISOString(),
  decision: 'accepted',
  pointsMet: 9,
  pointsAsked: 10,
  warmestC: 3,
  grams: 10_000,
  costPerKg: 900,
  usedPct: 70,
  ...more,
});
const options = {
  width: 700,
  units: 'metric' as const,
  day: (instant: string) => instant.slice(0, 10),
  money: (minor: number) => `£${(minor / 100).toFixed(2)}`,
};

describe('supplierTrendScene', () => {
  test('stays inside its own frame at every width and any number of deliveries', () => {
    for (const width of [320, 640, 1000])
      for (const n of [1, 2, 7, 40]) {
        const scene = supplierTrendScene(
          Array.from({ length: n }, (_, i) => row(i, { warmestC: i % 3 === 0 ? null : i - 5 })),
          { ...options, width },
        );
        for (const mark of scene.marks) {
          const points: (readonly [number, number])[] =
            'points' in mark ? [...mark.points] : [[mark.x, mark.y]];
          for (const [x, y] of points) {
            expect(x).toBeGreaterThanOrEqual(0);
            expect(x).toBeLessThanOrEqual(scene.width);
            expect(y).toBeGreaterThanOrEqual(0);
            expect(y).toBeLessThanOrEqual(scene.height);
          }
        }
      }
  });

  test('what nobody measured is a gap, no nought: no line is drawn across it', () => {
    const lines = (warm: (number | null)[]) =>
      supplierTrendScene(
        warm.map((warmestC, i) => row(i, { warmestC, costPerKg: null, usedPct: null, pointsAsked: 0 })),
        options,
      ).marks.filter((m) => m.kind === 'polyline' && m.stroke?.ink === 'faded').length;
    expect(lines([2, 3, 4])).toBe(2);
    expect(lines([2, null, 4])).toBe(0);
  });

  test('the decisions are told apart by shape', () => {
    const kinds = (decision: Row['decision']) =>
      supplierTrendScene([row(0, { decision })], options)
        .marks.filter((m) => m.kind === 'circle' || m.kind === 'polygon')
        .map((m) => m.kind);
    expect(new Set(kinds('accepted'))).toEqual(new Set(['circle']));
    expect(new Set(kinds('accepted with deviation'))).toEqual(new Set(['polygon']));
    expect(kinds('refused')).toEqual([]);
  });

  test('the table holds every delivery, newest first, unknown in words', () => {
    const scene = supplierTrendScene(
      Array.from({ length: mostShown + 5 }, (_, i) =>
        row(i, i === 0 ? { costPerKg: null, usedPct: null } : {}),
      ),
      options,
    );
    expect(scene.table?.rows).toHaveLength(mostShown + 5);
    expect(scene.table?.rows.at(-1)).toContain('not known');
    expect(scene.table?.rows[0]?.[0]).toBe('2026-01-31');
    expect(scene.title).toContain(`the newest ${mostShown} are drawn`);
  });
});
