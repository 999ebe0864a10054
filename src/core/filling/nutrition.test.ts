import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PantryFood, type PantryRecipe, pantryOf, reckon } from './flatten.ts';
import { type Nutrients, nutrients } from './food.ts';
import { energyOf, nutritionOf, unknownIn } from './nutrition.ts';
import { roundedEu, roundedUs } from './nutrition-rounding.ts';

const none = Object.fromEntries(nutrients.map((n) => [n, 0])) as unknown as Nutrients;
const food = (id: string, own: Partial<Nutrients>): PantryFood => ({
  kind: 'food',
  id,
  name: id,
  nutrients: { ...none, ...own },
  allergens: [],
  costPerKg: null,
});
const recipe = (lines: PantryRecipe['lines'], own: Partial<PantryRecipe> = {}): PantryRecipe => ({
  kind: 'recipe',
  id: 'r',
  name: 'r',
  lines,
  ...own,
});

describe('nutritionOf', () => {
  it('sums kJ and kcal by the regulation’s factors, each apart', () => {
    const dish = food('dish', {
      water: 0.652,
      protein: 0.186,
      fat: 0.124,
      carbohydrate: 0.031,
      fibre: 0.007,
    });
    const out = nutritionOf(reckon(recipe([{ of: 'dish', mass: 3 }]), pantryOf([dish])));
    expect(out?.energyKj).toEqual({ value: expect.closeTo(833.3, 9) as number, atLeast: false });
    expect(out?.energyKcal.value).toBeCloseTo(199.8, 9);
    expect(out?.usKcal.value).toBeCloseTo(4 * (18.6 + 3.1 + 0.7) + 9 * 12.4, 9);
    expect(out?.closing).toEqual({ sum: expect.closeTo(100, 9) as number, unknown: [], closes: true });
  });

  it('counts alcohol', () => {
    expect(energyOf({ ...none, alcohol: 0.334 }).kcal.value).toBeCloseTo(233.8, 9);
    expect(energyOf({ ...none, alcohol: 0.334 }).kj.value).toBeCloseTo(968.6, 9);
  });

  it('never makes a total of what is partly unknown', () => {
    const bread = { ...food('bread', {}), nutrients: { ...none, protein: 0.08, sugars: null, fibre: null } };
    const meat = food('meat', { water: 0.78, protein: 0.2, ash: 0.02 });
    const lines = [
      { of: 'bread', mass: 0.1 },
      { of: 'meat', mass: 0.9 },
    ];
    const out = nutritionOf(reckon(recipe(lines), pantryOf([bread, meat])));
    expect(out?.nutrients.protein).toEqual({ value: expect.closeTo(18.8, 9) as number, atLeast: false });
    expect(out?.nutrients.sugars.atLeast).toBe(true);
    expect(out?.energyKj.atLeast).toBe(true);
    expect(out?.closing.unknown).toEqual(['fibre']);
    expect(out?.closing.closes).toBe(false);
  });

  it('closes to half a gram and no further', () => {
    const closes = (water: number) =>
      nutritionOf(reckon(recipe([{ of: 'x', mass: 1 }]), pantryOf([food('x', { water })])))?.closing.closes;
    expect([0.9949, 0.995, 1, 1.005, 1.0051].map(closes)).toEqual([false, true, true, true, false]);
  });

  it('is per weight as sold where water left', () => {
    const meat = food('meat', { water: 0.7, protein: 0.2, fat: 0.1 });
    const out = nutritionOf(
      reckon(recipe([{ of: 'meat', mass: 1 }], { outcome: { to: 0.8, by: 'water' } }), pantryOf([meat])),
    );
    expect(out?.nutrients.protein.value).toBeCloseTo(25, 9);
    expect(out?.nutrients.water.value).toBeCloseTo(62.5, 9);
    expect(out?.closing.closes).toBe(true);
  });

  it('gives a portion in proportion, and nothing of nothing', () => {
    const fc1 = fc.double({ min: 1, max: 2000, noNaN: true });
    const pantry = pantryOf([food('meat', { water: 0.7, protein: 0.2, fat: 0.1 })]);
    const out = reckon(recipe([{ of: 'meat', mass: 2 }]), pantry);
    fc.assert(
      fc.property(fc1, (g) => {
        expect(nutritionOf(out, g)!.energyKj.value).toBeCloseTo(
          (nutritionOf(out)!.energyKj.value * g) / 100,
          6,
        );
        expect(nutritionOf(out, g)!.closing.sum).toBeCloseTo(100, 9);
      }),
    );
    expect(nutritionOf(reckon(recipe([]), pantry))).toBeNull();
    expect(() => nutritionOf(out, 0)).toThrow('grams');
  });
});

describe('unknownIn', () => {
  const salt = food('salt', { ash: 1 });
  const bread = { ...food('bread', {}), nutrients: { ...none, fat: null } };
  const panade: PantryRecipe = {
    kind: 'recipe',
    id: 'panade',
    name: 'panade',
    lines: [
      { of: 'bread', mass: 1 },
      { of: 'salt', mass: 1 },
    ],
  };
  it('names the way to what is not known', () => {
    const top = recipe([
      { of: 'panade', mass: 1 },
      { of: 'lost', name: 'mace', mass: 0.1 },
    ]);
    expect(unknownIn(top, pantryOf([salt, bread, panade]), 'fat')).toEqual([
      { id: 'bread', path: ['panade', 'bread'], mass: 0.5 },
      { id: 'lost', path: ['mace'], mass: 0.1 },
    ]);
  });
  it('does not look behind what is stated', () => {
    const top = recipe([{ of: 'panade', mass: 1, stated: { nutrients: none } }]);
    expect(unknownIn(top, pantryOf([salt, bread, panade]), 'fat')).toEqual([]);
    const strained = { ...panade, outcome: { to: 0.5, by: 'not known' as const } };
    expect(unknownIn(recipe([{ of: 'panade', mass: 1 }]), pantryOf([salt, bread, strained]), 'ash')).toEqual([
      { id: 'panade', path: ['panade'], mass: 1 },
    ]);
  });
});

describe('roundedEu', () => {
  const macro = 'fat, carbohydrate, sugars, protein, fibre';
  it.each([
    [macro, 12.4, '12'],
    [macro, 10, '10'],
    [macro, 9.96, '10'],
    [macro, 9.94, '9.9'],
    [macro, 3.14, '3.1'],
    [macro, 3.15, '3.2'],
    [macro, 0.51, '0.5'],
    [macro, 0.5, '<0.5'],
    [macro, 0, '0'],
    [macro, 18.5, '19'],
    ['saturates', 10, '10'],
    ['saturates', 9.99, '10'],
    ['saturates', 0.11, '0.1'],
    ['saturates', 0.1, '<0.1'],
    ['salt', 1.04, '1.0'],
    ['salt', 1, '1.0'],
    ['salt', 0.996, '1.0'],
    ['salt', 0.994, '0.99'],
    ['salt', 1.55, '1.6'],
    ['salt', 0.0126, '0.01'],
    ['salt', 0.0125, '<0.01'],
    ['energy', 833.3, '833'],
    ['energy', 199.8, '200'],
    ['energy', 0, '0'],
  ] as const)('%s %d → %s', (element, value, text) => expect(roundedEu(element, value).text).toBe(text));
  it('refuses what is no amount', () => {
    expect(() => roundedEu('salt', -0.1)).toThrow('salt');
    expect(() => roundedEu('salt', Number.NaN)).toThrow('salt');
  });
  it('never strays further than half of its step', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5001, max: 100, noNaN: true }), (x) => {
        expect(Math.abs(roundedEu(macro, x).value - x)).toBeLessThanOrEqual((x >= 10 ? 0.5 : 0.05) + 1e-9);
      }),
    );
  });
});

describe('roundedUs', () => {
  const grams = 'carbohydrate, fibre, sugars, protein';
  it.each([
    ['calories', 4.9, '0'],
    ['calories', 5, '5'],
    ['calories', 47, '45'],
    ['calories', 48, '50'],
    ['calories', 50, '50'],
    ['calories', 52, '50'],
    ['calories', 55, '60'],
    ['calories', 127, '130'],
    ['fat, saturated fat', 0.49, '0'],
    ['fat, saturated fat', 0.5, '0.5'],
    ['fat, saturated fat', 4.3, '4.5'],
    ['fat, saturated fat', 4.9, '5'],
    ['fat, saturated fat', 5.4, '5'],
    ['fat, saturated fat', 12.5, '13'],
    ['sodium', 4.9, '0'],
    ['sodium', 138, '140'],
    ['sodium', 143, '140'],
    ['sodium', 146, '150'],
    [grams, 0.49, '0'],
    [grams, 0.5, 'less than 1'],
    [grams, 0.99, 'less than 1'],
    [grams, 1, '1'],
    [grams, 12.5, '13'],
  ] as const)('%s %d → %s', (element, value, text) => expect(roundedUs(element, value).text).toBe(text));
});
