import { describe, expect, test } from 'vitest';
import { allergens, usAllergens } from '../food.ts';
import { allergensTold, allergenWords, usAllergenOf, usAllergensOfRow } from './allergen-words.ts';
import { ingredientById, ingredients } from './table.ts';

describe('the fourteen and the nine', () => {
  test('each of the nine is reached, five of the fourteen are none of them', () => {
    const reached = allergens.map((allergen) => usAllergenOf({ allergen }));
    expect([...new Set(reached.filter((a) => a !== null))].sort()).toEqual([...usAllergens].sort());
    expect(allergens.filter((allergen) => usAllergenOf({ allergen }) === null)).toEqual([
      'celery',
      'mustard',
      'sulphites',
      'lupin',
      'molluscs',
    ]);
  });

  test.each([
    ['wheat', 'wheat'],
    ['spelt', 'wheat'],
    ['Khorasan wheat', 'wheat'],
    ['rye', null],
    ['barley', null],
    ['oats', null],
    [undefined, 'wheat'],
  ])('gluten as %s is %s', (as, us) => {
    expect(usAllergenOf({ allergen: 'gluten', as })).toBe(us);
  });

  test('pine nuts count in the US alone, pearl barley there not', () => {
    const us = (id: string) => {
      const row = ingredientById(id)!;
      return usAllergensOfRow(row.allergens, row.usOnly);
    };
    expect(us('pine-nuts')).toEqual(['tree nuts']);
    expect(us('pearl-barley-raw')).toEqual([]);
    expect(us('soy-sauce')).toEqual(['wheat', 'soybeans']);
    expect(usAllergensOfRow(null, [])).toBeNull();
  });

  test('kinds in the table are the kinds of the annex', () => {
    const kinds = new Set(Object.values(allergenWords).flatMap((words) => words.kinds));
    for (const row of ingredients)
      for (const mark of row.allergens ?? [])
        if (mark.as !== undefined) expect([row.id, kinds.has(mark.as)]).toEqual([row.id, true]);
  });

  test('a name gives away what it gives away, and never as certain', () => {
    const told = (name: string) => allergensTold(name).map((m) => m.as ?? m.allergen);
    expect(told('Hazelnut butter')).toEqual(['milk', 'hazelnuts']);
    expect(told('Khorasan wheat flour')).toEqual(['Khorasan wheat']);
    expect(told('Brazil nuts')).toEqual(['Brazil nuts']);
    expect(told('pork shoulder')).toEqual([]);
    expect(allergensTold('double cream')).toEqual([{ allergen: 'milk', checkLabel: true }]);
  });

  test('the table marks whatever the names of its own rows give away, but for names that only sound so', () => {
    const unmarked = ingredients.flatMap((row) =>
      allergensTold(row.name.split(',')[0]!)
        .filter(({ allergen }) => !row.allergens?.some((mark) => mark.allergen === allergen))
        .map(({ allergen }) => `${row.id}: ${allergen}`),
    );
    expect(unmarked).toEqual([
      'rice-flour: gluten',
      'pine-nuts: nuts', // of the US only
      'oyster-mushrooms-raw: molluscs',
      'coconut-milk: milk',
      'lupin-flour: gluten',
    ]);
  });
});
