import { describe, expect, it } from 'vitest';
import type { Pantry } from '../../../../contract/pantry-answer.ts';
import { nutrients } from '../../../../core/filling/food.ts';
import { itemsFor, mixReckoned } from './mix-reckoned.ts';
import { scaledLines } from './mix-scale.tsx';

const id = (n: number) => `00000000-0000-7000-8000-${String(n).padStart(12, '0')}`;
const all = (x: Partial<Record<(typeof nutrients)[number], number>>) =>
  Object.fromEntries(nutrients.map((n) => [n, x[n] ?? 0])) as never;
const pantry = {
  day: '2026-11-25',
  ingredients: [
    {
      id: id(1),
      name: 'Cream',
      nutrients: all({ water: 0.6, fat: 0.36, protein: 0.02, carbohydrate: 0.015, ash: 0.005 }),
      allergens: [{ allergen: 'milk' }],
      costPerKg: 500,
      trimPct: 0,
    },
  ],
  parts: [
    {
      id: id(2),
      species: 'goose',
      name: 'liver',
      nutrients: all({ water: 0.72, protein: 0.16, fat: 0.05, carbohydrate: 0.06, ash: 0.01 }),
      allergens: [],
      costPerKg: null,
      costPerKgAsCut: null,
      onShelfG: 900,
    },
  ],
  dishes: [],
  rates: null,
  ratesHistory: [],
  risks: [],
} as unknown as Pantry;
const items = itemsFor(pantry, () => undefined);
const line = (n: number, g: number, kind: 'ingredient' | 'part') => ({
  ingredient: kind,
  g,
  of: { kind, id: id(n) },
});
const of = (lines: Parameters<typeof mixReckoned>[0]['lines']) =>
  mixReckoned({ name: 'Mix', lines }, pantry, items, () => undefined);

describe('mixReckoned', () => {
  it('reckons by the pantry as it stands: what is in it, what it costs, how an allergen comes in', () => {
    const got = of([line(1, 200, 'ingredient')]);
    expect(got.outcome.cost).toEqual({ known: 100, unknown: 0 });
    expect(got.per100?.nutrients.fat.value).toBeCloseTo(36, 9);
    expect(got.allergens.contains.map((f) => f.allergen)).toEqual(['milk']);
    expect(got.unpriced).toEqual([]);
  });

  it('names the part that nobody has priced, and asks about a line that says nothing', () => {
    const got = of([line(2, 100, 'part'), { ingredient: 'a pinch of something', g: 1 }]);
    expect(got.unpriced).toEqual(['part', 'a pinch of something']);
    expect(got.allergens.notSaid).toHaveLength(1);
    expect(got.per100?.closing.closes).toBe(false);
    expect(got.waterActivity).toBeNull();
  });

  it('lets the price on a line go before the pantry’s', () => {
    expect(of([{ ...line(1, 1000, 'ingredient'), pricePerKg: 300 }]).outcome.cost.known).toBe(300);
  });
});

describe('scaledLines', () => {
  it('knows what is on the shelf, and which lines are held like salt', () => {
    const [liver, salt] = scaledLines([line(2, 400, 'part'), { ingredient: 'Salt', g: 8 }], pantry);
    expect(liver).toMatchObject({ available: 0.9, salt: false });
    expect(salt).toMatchObject({ salt: true, available: undefined });
  });
});
