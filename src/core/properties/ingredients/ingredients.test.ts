import { describe, expect, test } from 'vitest';
import { sources } from '../../sources.ts';
import { allergens } from '../food.ts';
import { closureOf } from './closure.ts';
import { ingredientById, ingredients } from './table.ts';

const published = ingredients.filter((row) => row.had === 'published');
const failing = (bad: (row: (typeof ingredients)[number]) => boolean) =>
  ingredients.filter(bad).map((row) => row.id);

describe('the table of ingredients', () => {
  test('holds at least 300 published rows, each of its own number', () => {
    expect(published.length).toBeGreaterThanOrEqual(300);
    expect(new Set(published.map((row) => row.row)).size).toBe(published.length);
  });

  test('has no id twice and no two names alike', () => {
    expect(new Set(ingredients.map((row) => row.id)).size).toBe(ingredients.length);
    const plain = (name: string) => name.toLowerCase().replaceAll(/[^a-z0-9]/g, '');
    expect(new Set(ingredients.map((row) => plain(row.name))).size).toBe(ingredients.length);
    expect(failing((row) => !/^[a-z0-9-]{2,80}$/.test(row.id))).toEqual([]);
  });

  test('every row says where it is from', () => {
    expect(failing((row) => !Object.hasOwn(sources, row.source))).toEqual([]);
    expect(failing((row) => row.had === 'published' && !/^\d{5}$/.test(row.row ?? ''))).toEqual([]);
    expect(failing((row) => row.had === 'derived' && row.equation === null)).toEqual([]);
    expect(failing((row) => row.had === 'stand-in' && !row.note.includes('stands in'))).toEqual([]);
    expect(
      failing((row) => row.had === 'none' && Object.values(row.nutrients).some((v) => v !== null)),
    ).toEqual([]);
  });

  test('closes to 1 ± 0.005, or says why not, and never strays by more than 0.06', () => {
    const open = failing((row) => {
      const { sum, why } = closureOf(row);
      return row.had !== 'none' && Math.abs(sum - 1) > 0.005 && why === null;
    });
    expect(open).toEqual([]);
    expect(
      failing(
        (row) =>
          row.had !== 'none' && row.id !== 'bicarbonate-of-soda' && Math.abs(closureOf(row).sum - 1) > 0.06,
      ),
    ).toEqual([]);
  });

  test('saturates lie within fat and sugars within carbohydrate', () => {
    expect(
      failing((row) => (row.nutrients.saturates ?? 0) > (row.nutrients.fat ?? Number.POSITIVE_INFINITY)),
    ).toEqual([]);
    // Sugars are measured, carbohydrate is what is left: they differ by up to 1 g in 100 g (lactose counted as monohydrate).
    expect(
      failing(
        ({ nutrients: n }) =>
          n.sugars !== null && n.carbohydrate !== null && n.sugars > n.carbohydrate + 0.01,
      ),
    ).toEqual([]);
  });

  test('salt lies within ash, but for rows that are at odds with themselves as published', () => {
    expect(
      failing(({ nutrients: n }) => n.salt !== null && n.ash !== null && n.salt > n.ash + 0.0015),
    ).toEqual([
      'chicken-feet-boiled', // no ash published
      'salt-pork-raw', // sodium of one analysis, ash of another
      'brawn-bought',
      'bicarbonate-of-soda', // sodium that is no chloride
      'worcestershire-sauce',
      'cooking-wine-salted',
      'lardo', // salt pork stands in
      'guanciale',
      'sodium-citrate',
    ]);
  });

  test('energy lies within 10 % (or 8 kcal) of 4, 9, 4, 2 and 7 kcal/g', () => {
    const apart = published.filter((row) => {
      const { protein, fat, carbohydrate, fibre, alcohol } = row.nutrients;
      if (row.energy === null || carbohydrate === null) return false;
      const kcal = 100 * (4 * protein! + 9 * fat! + 4 * carbohydrate + 2 * (fibre ?? 0) + 7 * (alcohol ?? 0));
      return Math.abs(kcal - row.energy.kcal) > Math.max(8, row.energy.kcal / 10);
    });
    expect(apart.map((row) => row.id)).toEqual([
      // Half of it is minerals whose carbon dioxide counts as carbohydrate by difference.
      'baking-powder',
      // Specific factors: protein of mushrooms 2.62, of vegetables 2.44; citric acid 2.47 in place of 4.
      'shiitake-dried',
      'peas-raw',
      'orange-zest',
      'lemon-peeled-raw',
      'lemon-juice',
      // Dry leaves and seeds: protein, fat and carbohydrate by factors below the general ones, fibre counted differently.
      'tarragon-dried',
      'chervil-dried',
      'bay-leaf-dried',
      'black-pepper-ground',
      'cayenne-pepper-ground',
      'paprika',
      'allspice-ground',
      'cloves-ground',
      'coriander-seed',
      'cumin-seed',
      'aniseed',
      'dill-seed',
      'celery-seed',
      'saffron',
      // Acetic acid gives 3 kcal/g and is in none of the columns.
      'cider-vinegar',
      'distilled-vinegar',
      'red-wine-vinegar',
      'balsamic-vinegar',
    ]);
  });

  test('what is missing is null, not nothing', () => {
    const chestnut = ingredientById('chestnuts-peeled-boiled')!;
    expect(chestnut.nutrients.fibre).toBeNull();
    expect(chestnut.nutrients.carbohydrate).toBeNull();
    expect(chestnut.carbohydrateWithFibre).toBe(0.2776);
    expect(ingredientById('wild-boar-lean-raw')!.nutrients.salt).toBeNull();
    expect(ingredientById('goose-liver-raw')!.nutrients.sugars).toBeNull();
    expect(ingredientById('goose-liver-raw')!.taken0).toContain('alcohol');
    expect(ingredientById('pigs-blood')!.nutrients.protein).toBeNull();
  });

  test('figures are the published ones: row 01124, white of egg', () => {
    const white = ingredientById('egg-white-raw')!;
    expect(white.row).toBe('01124');
    expect(white.nutrients).toMatchObject({ water: 0.8757, protein: 0.109, fat: 0.0017, salt: 0.00415 });
    expect(white.measures['each large']).toBe(33);
    expect(white.energy).toEqual({ kcal: 52, kJ: 218 });
    expect(ingredientById('onion-raw')!.nutrients.carbohydrate).toBeCloseTo(0.0934 - 0.017, 8);
  });

  test('duck skin by difference puts the whole bird together again', () => {
    const [whole, lean, skin] = [
      'duck-meat-with-skin-raw',
      'duck-meat-only-raw',
      'duck-skin-with-its-fat-raw',
    ].map((id) => ingredientById(id)!.nutrients);
    for (const key of ['water', 'protein', 'fat'] as const)
      expect((137 * lean![key]! + 150 * skin![key]!) / 287).toBeCloseTo(whole![key]!, 4);
  });

  test('only skeletal muscle is meat; heart, tongue, tail, trotter and skin stand as themselves', () => {
    const of = (id: string) => ingredientById(id)!;
    expect(of('pork-shoulder-lean-and-fat-raw')).toMatchObject({
      animal: { kind: 'muscle' },
      labelName: 'pork',
    });
    for (const id of ['pigs-heart-raw', 'pigs-tongue-raw', 'pigs-tail-raw', 'pigs-trotter-raw', 'oxtail-raw'])
      expect(of(id).animal!.kind).toBe('named as itself');
    expect(of('pigs-heart-raw').labelName).toBe('pig’s heart');
    expect(of('goose-neck-skin-raw').animal!.kind).toBe('skin');
  });

  test('allergens: every one of the fourteen has a row, kinds are named, labels decide where they vary', () => {
    const named = new Set(ingredients.flatMap((row) => (row.allergens ?? []).map((mark) => mark.allergen)));
    expect([...named].sort()).toEqual([...allergens].sort());
    for (const row of ingredients)
      for (const mark of row.allergens ?? [])
        if (mark.allergen === 'nuts') expect([row.id, mark.as]).not.toEqual([row.id, undefined]);
    expect(ingredientById('pearl-barley-raw')!.allergens).toEqual([{ allergen: 'gluten', as: 'barley' }]);
    expect(ingredientById('pine-nuts')).toMatchObject({ allergens: [], usOnly: ['tree nuts'] });
    expect(ingredientById('madeira')!.allergens).toEqual([{ allergen: 'sulphites', checkLabel: true }]);
  });

  test('measures and densities are weights', () => {
    expect(failing((row) => Object.values(row.measures).some((g) => !(g > 0 && g < 10_000)))).toEqual([]);
    expect(
      failing((row) => row.densityKgM3 !== null && !(row.densityKgM3 > 700 && row.densityKgM3 < 1500)),
    ).toEqual([]);
    expect(ingredientById('whole-milk')!.densityKgM3).toBe(1031);
  });
});
