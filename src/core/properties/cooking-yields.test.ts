import { describe, expect, it } from 'vitest';
import { sources } from '../sources.ts';
import { cookingYieldOf, cookingYields } from './cooking-yields.ts';

describe('the published cooking yields', () => {
  it('are shares of a weight, each with its source', () => {
    expect(cookingYields.length).toBeGreaterThan(80);
    for (const row of cookingYields) {
      expect(row.pct, row.part).toBeGreaterThan(40);
      expect(row.pct, row.part).toBeLessThan(100);
      expect(sources[row.source], row.source).toBeDefined();
    }
  });

  it('are those of the unit weights they were had from', () => {
    // Grams of raw and cooked edible part out of a pound ready to cook, food table of 2015.
    const pairs = [
      ['05139>05140', 287, 173],
      ['05146>05147', 320, 188],
      ['05006>05009', 276, 178],
      ['05123>05124', 271, 178],
      ['05193>05194', 105, 71],
    ] as const;
    for (const [rows, raw, cooked] of pairs) {
      const row = cookingYields.find((r) => r.rows === rows);
      expect(row?.pct, rows).toBe(Math.round((cooked / raw) * 100));
    }
  });
});

describe('cookingYieldOf', () => {
  it('takes the animal asked for first, and says when it borrows', () => {
    expect(cookingYieldOf('chicken', 'gizzards', 'simmered')).toMatchObject({ usual: 0.58, borrowed: false });
    const goose = cookingYieldOf('goose', 'gizzard', 'simmered');
    expect(goose).toMatchObject({ borrowed: true });
    expect(goose?.usual).toBeCloseTo((0.58 + 0.71) / 2, 10);
    expect(goose?.low).toBeLessThanOrEqual(0.58);
    expect(goose?.high).toBeGreaterThanOrEqual(0.71);
  });

  it('knows nothing of what no row is near to', () => {
    expect(cookingYieldOf('pig', 'trotter', 'simmered')).toBeNull();
    expect(cookingYieldOf('pig', 'ears', 'simmered')).toBeNull();
  });
});
