import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runMix } from './mix.ts';
import { InputProblems } from './problem.ts';

const lean = { water: 0.74, protein: 0.2, fat: 0.05, carbohydrate: 0, fibre: 0, ash: 0.01, salt: 0.001 };
const back = { water: 0.1, protein: 0.05, fat: 0.845, carbohydrate: 0, fibre: 0, ash: 0.005, salt: 0.0005 };
const problemsOf = async (input: unknown) => {
  try {
    await runMix(input);
  } catch (error) {
    if (error instanceof InputProblems) return error.problems;
    throw error;
  }
  throw new Error('not refused');
};

describe('runMix', () => {
  it('weighs by hand: composition, energy by the regulation’s factors, salt in the water, cost', async () => {
    const got = await runMix({
      ingredients: [
        { name: 'lean', composition: lean, g: 750, pricePerKg: 9 },
        { name: 'fat', composition: back, g: 250, pricePerKg: 2 },
      ],
    });
    expect(got.composition).toMatchObject({ water: 0.58, protein: 0.1625, fat: 0.24875, ash: 0.00875 });
    expect(got.energyKj).toBeCloseTo(37 * 24.875 + 17 * 16.25, 6);
    expect(got.energyKcal).toBeCloseTo(9 * 24.875 + 4 * 16.25, 6);
    expect(got.saltPct).toBeCloseTo(0.0875, 10);
    expect(got.waterPhaseSaltPct).toBeCloseTo((100 * 0.0875) / (58 + 0.0875), 3);
    expect(got.waterToProtein).toBeCloseTo(58 / 16.25, 3);
    expect(got.fatToProtein).toBeCloseTo(24.875 / 16.25, 3);
    expect(got.costPerKg).toBeCloseTo(7.25, 10);
    expect(got.closing).toEqual({ sumPct: 100, closes: true });
    expect(got.ingredientList).toEqual(['lean', 'fat']);
  });

  it('says what is not known, and makes no total of it', async () => {
    const { salt: _, ...unsalted } = lean;
    const got = await runMix({ ingredients: [{ name: 'lean', composition: unsalted, g: 100 }] });
    expect(got).toMatchObject({
      saltPct: null,
      waterPhaseSaltPct: null,
      waterActivity: null,
      costPerKg: null,
    });
    expect(got.unknown).toContainEqual({ what: 'salt', of: 'lean' });
    expect(got.allergensNotSaid).toEqual(['lean']);
    expect(got.cautions[0]).toMatch(/Not said is not none/);
  });

  it('adds what is stated to what a row of the table holds, and takes nothing away', async () => {
    const got = await runMix({
      ingredients: [
        { id: 'egg-white-raw', g: 100, allergens: [] },
        { id: 'goose-liver-raw', g: 200, allergens: ['milk'] },
      ],
    });
    expect(got.allergens).toEqual(['eggs', 'milk']);
    expect(got.allergensUs).toEqual(['milk', 'eggs']);
    expect(got.ingredientList[0]).toBe('goose liver');
    expect(got.ingredientText.filter((r) => r.emphasised).map((r) => r.text.toLowerCase())).toContain('egg');
  });

  it('counts what only the US counts, and only of what is weighed in', async () => {
    const { ingredients } = await import('../core/properties/ingredients/table.ts');
    const row = ingredients.find((r) => r.usOnly.length > 0);
    expect(row).toBeDefined();
    const of = (g: number) =>
      runMix({
        ingredients: [
          { id: row!.id, g },
          { id: 'salt', g: 10 },
        ],
      });
    expect((await of(100)).allergensUs).toEqual(expect.arrayContaining([...row!.usOnly]));
    expect((await of(0)).allergensUs).toEqual([]);
  });

  it('finds the cheapest weights within the limits, and says which clash where there are none', async () => {
    const ask = (constraints: object) => ({
      ingredients: [
        { name: 'lean', composition: lean, g: { low: 0, high: 1000 }, pricePerKg: 9 },
        { name: 'fat', composition: back, g: { low: 0, high: 1000 }, pricePerKg: 2 },
      ],
      solve: { minimise: 'cost', constraints },
      totalG: 1000,
    });
    const got = await runMix(ask({ fatPct: { high: 24.875 } }));
    expect(got.grams[0]).toBeCloseTo(750, 3);
    expect(got.costPerKg).toBeCloseTo(7.25, 4);
    const problems = await problemsOf(ask({ fatPct: { low: 60 }, proteinPct: { low: 15 } }));
    expect(problems.map((p) => p.path)).toEqual(
      expect.arrayContaining(['solve.constraints.fatPct.low', 'solve.constraints.proteinPct.low']),
    );
  });

  it('is the same mix at any weight', async () => {
    await fc.assert(
      fc.asyncProperty(fc.double({ min: 0.01, max: 100, noNaN: true }), async (k) => {
        const of = (f: number) =>
          runMix({
            ingredients: [
              { name: 'lean', composition: lean, g: 700 * f, pricePerKg: 9 },
              { id: 'egg-white-raw', g: 300 * f, pricePerKg: 3 },
            ],
          });
        const [one, many] = await Promise.all([of(1), of(k)]);
        expect(many.composition).toEqual(one.composition);
        expect(many.energyKj).toBe(one.energyKj);
        expect(many.costPerKg).toBeCloseTo(one.costPerKg!, 5);
      }),
      { numRuns: 30 },
    );
  });

  it('refuses what cannot be meant, naming where', async () => {
    const one = (given: object) => ({ ingredients: [{ g: 100, ...given }] });
    expect((await problemsOf(one({ id: 'goose-livr-raw' })))[0]).toMatchObject({
      path: 'ingredients[0].id',
      allowed: expect.stringContaining('goose-liver-raw'),
    });
    expect((await problemsOf(one({ composition: { ...lean, fat: 0.5 } })))[0]?.path).toBe(
      'ingredients[0].composition',
    );
    expect((await problemsOf(one({ composition: { ...lean, salt: 0.5 } })))[0]?.path).toBe(
      'ingredients[0].composition.salt',
    );
    expect((await problemsOf(one({})))[0]).toMatchObject({ path: 'ingredients[0]', found: 'neither' });
    expect((await problemsOf(one({ id: 'salt', g: 0 })))[0]?.path).toBe('ingredients');
    expect((await problemsOf(one({ id: 'salt', g: { low: 0, high: 2 } })))[0]?.path).toBe('ingredients[0].g');
    expect((await problemsOf({ ...one({ id: 'salt' }), totlaG: 3 }))[0]?.path).toBe('totlaG');
  });
});
