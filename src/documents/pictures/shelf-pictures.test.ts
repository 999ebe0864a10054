import { describe, expect, test } from 'vitest';
import { lotTraceScene } from './lot-trace.ts';
import type { Mark } from './scene.ts';
import { shelfDaysScene } from './shelf-days.ts';

const texts = (marks: readonly Mark[]) => marks.flatMap((m) => (m.kind === 'text' ? [m] : []));

describe('shelfDaysScene', () => {
  const lots = [
    { grams: 1_000, daysLeft: -1, frozen: false },
    { grams: 2_000, daysLeft: 0, frozen: false },
    { grams: 4_000, daysLeft: 6, frozen: false },
    { grams: 500, daysLeft: null, frozen: false },
    { grams: 700, daysLeft: 90, frozen: true },
    { grams: 300, daysLeft: -3, frozen: true },
  ];
  test('every gram stands in exactly one column', () => {
    const scene = shelfDaysScene(lots, { width: 800, units: 'metric' });
    const counted = scene.table?.rows.reduce((sum, row) => sum + Number(row[1]), 0);
    expect(counted).toBe(lots.length);
    expect(scene.table?.rows[0]).toEqual(['past', '2', '1.3 kg']);
  });
  test('what is not known is outlined, never filled', () => {
    const scene = shelfDaysScene([lots[3]!], { width: 800, units: 'metric' });
    const bar = scene.marks.find((m) => m.kind === 'polygon');
    expect(bar).toBeDefined();
    expect(bar && 'fill' in bar ? bar.fill : undefined).toBeUndefined();
  });
  test('bars are as high as their weight', () => {
    const heights = shelfDaysScene(lots, { width: 800, units: 'metric' })
      .marks.filter((m) => m.kind === 'polygon')
      .map((m) => ('points' in m ? m.points[0]![1] - m.points[1]![1] : 0));
    expect(heights[2]! / heights[1]!).toBeCloseTo(2, 9);
  });
});

describe('lotTraceScene', () => {
  const many = Array.from({ length: 20 }, (_, i) => ({ code: `C-${i}`, what: 'neck of a goose' }));
  const scene = lotTraceScene(
    {
      from: 'a farm (invented)',
      above: [
        { code: 'NEAR', what: 'carcass' },
        { code: 'FAR', what: 'animal' },
      ],
      here: { code: 'ME', what: 'necks' },
      below: many,
      batches: [{ code: '261125-1', what: 'Necks' }],
    },
    { width: 360 },
  );
  test('from the animal down: the furthest stands highest', () => {
    const y = (code: string) => texts(scene.marks).find((m) => m.text.includes(code))?.y ?? Number.NaN;
    expect(y('FAR')).toBeLessThan(y('NEAR'));
    expect(y('NEAR')).toBeLessThan(y('ME'));
    expect(y('ME')).toBeLessThan(y('C-0'));
    expect(y('C-0')).toBeLessThan(y('261125-1'));
  });
  test('many are cut short in the picture and say so', () => {
    expect(texts(scene.marks).some((m) => m.text === 'and 12 more')).toBe(true);
    expect(scene.title).toContain('20 cut from it');
  });
});
