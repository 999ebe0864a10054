import { describe, expect, test } from 'vitest';
import { machineTrendScene } from './machine-trend.ts';
import { residualsScene } from './residuals.ts';
import type { Mark, Scene } from './scene.ts';

const dots = (scene: Scene) => scene.marks.flatMap((m) => (m.kind === 'circle' ? [m] : []));
const inside = (scene: Scene) =>
  scene.marks.every((m: Mark) =>
    m.kind === 'text'
      ? m.x >= 0 && m.x <= scene.width && m.y >= 0 && m.y <= scene.height
      : m.kind === 'circle'
        ? m.x >= 0 && m.x <= scene.width && m.y >= 0 && m.y <= scene.height
        : m.points.every(([x, y]) => x >= 0 && x <= scene.width && y >= 0 && y <= scene.height),
  );

describe('residualsScene', () => {
  const residuals = {
    min: [0, 10, 20, 30],
    K: [0.2, -0.4, 0, 0.9],
    sd: 0.3,
    stageEndsMin: [15, 40],
  };

  test('has a dot a reading, above the line where more was measured than computed', () => {
    const scene = residualsScene(residuals, { width: 400 });
    expect(dots(scene)).toHaveLength(4);
    const [a, b, c] = dots(scene);
    expect(a!.y).toBeLessThan(c!.y);
    expect(b!.y).toBeGreaterThan(c!.y);
    expect(inside(scene)).toBe(true);
  });

  test('says the same as a table, in the kitchen’s units', () => {
    const { table } = residualsScene(residuals, { width: 400, units: 'US' });
    expect(table!.rows[1]).toEqual(['10.0', '−0.72']);
  });

  test('stands in the narrowest column and with no scatter at all', () => {
    const flat = { ...residuals, K: [0, 0, 0, 0], sd: 0 };
    for (const width of [120, 390]) expect(inside(residualsScene(flat, { width }))).toBe(true);
  });
});

describe('machineTrendScene', () => {
  const point = (more: object = {}) => ({
    day: '3 Nov 2026',
    value: 400,
    low95: 380,
    high95: 430,
    highOpen: false,
    ...more,
  });

  test('a value known on one side only has no dot, but an arrow and words', () => {
    const scene = machineTrendScene([point(), point({ low95: 900, high95: 20_000, highOpen: true })], {
      width: 400,
    });
    expect(dots(scene)).toHaveLength(1);
    expect(scene.table!.rows[1]).toEqual(['3 Nov 2026', 'not known above', 'at least 900']);
    expect(inside(scene)).toBe(true);
  });

  test('many fits stay inside, and not every day is written', () => {
    const scene = machineTrendScene(
      Array.from({ length: 40 }, () => point()),
      { width: 390 },
    );
    expect(inside(scene)).toBe(true);
    expect(scene.marks.filter((m) => m.kind === 'text' && m.text === '3 Nov 2026').length).toBeLessThan(8);
  });
});
