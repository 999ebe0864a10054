import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findIngredient } from './find.ts';
import { ingredients } from './table.ts';

const first = (text: string) => findIngredient(text)[0]?.row.id;

describe('findIngredient', () => {
  test('every row is found first by its own name', () => {
    for (const row of ingredients) expect(first(row.name)).toBe(row.id);
  });

  test('every other name finds its row among the first three', () => {
    for (const row of ingredients)
      for (const other of row.also)
        expect(
          findIngredient(other, 8)
            .filter((hit) => hit.score >= 0.98)
            .map((hit) => hit.row.id),
        ).toContain(row.id);
  });

  test.each([
    ['egg whites', 'egg-white-raw'],
    ['eggplants', 'aubergine-raw'],
    ['aubergine', 'aubergine-raw'],
    ['cilantro', 'coriander-leaf-fresh'],
    ['heavy cream', 'whipping-cream-36-fat'],
    ['double cream', 'double-cream-48-fat'],
    ['scallions', 'spring-onion-raw'],
    ['rutabaga', 'swede-raw'],
    ['cornstarch', 'cornflour'],
    ['arugula', 'rocket-raw'],
    ['pigs’ ears', 'pigs-ear-raw'],
    ['Goose livers', 'goose-liver-raw'],
    ['GRUYERE', 'gruyere-cheese'],
    ['cognac', 'brandy'],
    ['bay leaves', 'bay-leaf-dried'],
    ['ground lamb', 'lamb-mince-raw'],
    ['prawn', 'prawns-raw-shelled'],
    ['ham hock', 'pork-hock-raw'],
    ['fatback', 'pork-back-fat-raw'],
    ['crépine', 'caul-fat'],
  ])('%s is %s', (text, id) => {
    expect(first(text)).toBe(id);
  });

  test.each([
    ['chiken livers', 'chicken-liver-raw'],
    ['shallott', 'shallot-raw'],
    ['parsely', 'parsley-fresh'],
    ['gose fat', 'goose-fat-rendered'],
    ['tarrag', 'tarragon-dried'],
  ])('a slip or a beginning: %s', (text, id) => {
    expect(findIngredient(text, 4).map((hit) => hit.row.id)).toContain(id);
    expect(findIngredient(text)[0]!.score).toBeLessThan(0.96);
  });

  test('raw comes before cooked, the published before what stands in', () => {
    expect(first('duck liver')).toBe('duck-liver-raw');
    expect(first('pigs trotter')).toBe('pigs-trotter-raw');
    expect(first('chicken')).toBe('chicken-meat-with-skin-raw');
  });

  test('what is nothing in the table is not found', () => {
    for (const text of ['', '   ', 'the of', 'unicorn', '12 3/4', 'zzzz'])
      expect(findIngredient(text).filter((hit) => hit.score > 0.9)).toEqual([]);
    expect(findIngredient('unicorn')).toEqual([]);
  });

  test('any text has an answer, in order and within what was asked', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), fc.integer({ min: 1, max: 12 }), (text, most) => {
        const hits = findIngredient(text, most);
        expect(hits.length).toBeLessThanOrEqual(most);
        for (const [i, hit] of hits.entries()) {
          expect(hit.score).toBeGreaterThanOrEqual(0.3);
          expect(hit.score).toBeLessThanOrEqual(1);
          if (i > 0) expect(hit.score).toBeLessThanOrEqual(hits[i - 1]!.score);
        }
      }),
    );
  });
});
