import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type KnownFood, readIngredients } from './ingredient-text.ts';

const read = (text: string, system: 'metric' | 'US' = 'metric', known: readonly KnownFood[] = []) =>
  readIngredients(text, { system, known });
const one = (text: string, system: 'metric' | 'US' = 'metric') => {
  const items = read(text, system);
  expect(items.map((item) => item.text)).toEqual([text]);
  return items[0]!;
};
const idOf = (text: string) => {
  const of = one(text).guess?.of;
  return of?.kind === 'table' ? of.id : null;
};

describe('readIngredients', () => {
  test('a line of a chef: weight, count, pinch, each with how it was had', () => {
    const [meat, whites, mace] = read('400 g goose meat, 3 egg whites, pinch of mace');
    expect(meat).toMatchObject({ g: 400, how: 'as written', sure: 'sure' });
    expect(meat!.guess!.of).toEqual({ kind: 'table', id: 'goose-meat-only-raw' });
    expect(whites).toMatchObject({ g: 99, how: '3 × 33 g, a large one, SR28 01124', sure: 'likely' });
    expect(mace).toMatchObject({ g: 0.3, how: 'about: a pinch: 0.3 g, common practice', sure: 'guess' });
  });

  test.each([
    ['1½ kg pork shoulder, diced', 1500],
    ['1,5 kg pork belly', 1500],
    ['1 1/2 kg pork belly', 1500],
    ['250g butter', 250],
    ['3 x 250 g duck breasts', 750],
    ['3 × 400 g tins of tomatoes', 1200],
    ['2 tins (400 g) chickpeas', 800],
    ['2 onions (about 300 g)', 300],
    ['2 onions (150 g each)', 300],
    ['goose meat: 400 g', 400],
    ['goose meat – 400 g', 400],
    ['salt, 10 g', 10],
    ['1 dozen quail eggs', 108],
    ['half a lemon', 29],
    ['two large carrots', 144],
    ['3 garlic cloves', 9],
    ['3 cloves of garlic', 9],
    ['3 sheets gelatine', 6],
    ['juice of 2 lemons', 90],
    ['½ tsp ground mace', 0.85],
  ])('%s is %d g', (text, g) => {
    const items = read(text);
    expect(items).toHaveLength(1);
    expect(items[0]!.g).toBeCloseTo(g, 6);
    expect(items[0]!.why).toBe('');
  });

  test('pounds and ounces by definition', () => {
    expect(one('1 lb 4 oz goose liver').g).toBeCloseTo(453.59237 * 1.25, 2);
  });

  test('volumes weigh what the food’s density says; cups and spoons are the kitchen’s country’s', () => {
    expect(one('200ml whole milk').g).toBeCloseTo(206.2, 1);
    expect(one('1 cup whole milk', 'US').g).toBeCloseTo(244, 0);
    expect(one('1 cup whole milk').g).toBeCloseTo(250 * 1.031, 1);
    expect(one('1 cup breadcrumbs', 'US')).toMatchObject({ g: 108, sure: 'likely' });
  });

  test('of what nothing says what it weighs, the weight is not known', () => {
    expect(one('500 ml pig’s blood')).toMatchObject({ g: null, sure: 'not understood' });
    expect(one('500 ml pig’s blood').why).toContain('write it in g');
    expect(one('1 handful whole milk').g).toBeNull();
  });

  test('a share of the meat is no weight', () => {
    expect(one('salt 18 g/kg')).toMatchObject({ g: null, pctOfMeat: 1.8, sure: 'sure' });
    expect(one('mace 0.5 g per kg').pctOfMeat).toBe(0.05);
    expect(one('back fat 30% of the meat').pctOfMeat).toBe(30);
  });

  test('a range is its middle, with both ends said, and a guess', () => {
    expect(one('2-3 egg whites')).toMatchObject({ g: 82.5, range: [66, 99], sure: 'guess' });
    expect(one('400 to 500 g pork belly')).toMatchObject({ g: 450, range: [400, 500] });
  });

  test('curing salt is never taken by its name alone', () => {
    for (const text of ['20 g curing salt', '20 g pink salt', '20 g nitrite salt'])
      expect(one(text)).toMatchObject({ sure: 'guess', why: expect.stringContaining('tenfold') });
  });

  test('what could be two numbers, or no food, or no amount, is handed back', () => {
    expect(one('1,200 g salt')).toMatchObject({ g: null, sure: 'not understood' });
    expect(one('1,200 g salt').why).toContain('1.200 or 1200');
    expect(one('100 g unobtainium')).toMatchObject({ guess: null, g: 100, sure: 'not understood' });
    expect(one('salt')).toMatchObject({ g: null, sure: 'not understood', why: 'no amount is said' });
    expect(read('salt and pepper to taste').map((item) => [item.text, item.guess?.name, item.g])).toEqual([
      ['salt', 'salt', null],
      ['and pepper to taste', 'black pepper, ground', null],
    ]);
  });

  test('a near name is a guess, with others beside it', () => {
    const item = one('100 g chiken livers');
    expect(item).toMatchObject({ sure: 'guess', guess: { of: { id: 'chicken-liver-raw' } } });
    expect(item.alternatives.length).toBeGreaterThan(0);
  });

  test('what stands behind the comma tells equals apart', () => {
    expect(idOf('200 g duck breast, roast')).toBe('duck-breast-with-skin-roast');
    expect(idOf('10 g thyme, dried')).toBe('thyme-dried');
    expect(one('100 g butter, cold and diced').note).toBe('cold and diced');
  });

  test('the kitchen’s own comes first, with its own piece and density', () => {
    const known: KnownFood[] = [
      { of: { kind: 'ingredient', id: '1' }, name: 'Egg white', pieceG: 35 },
      { of: { kind: 'part', id: '2' }, name: 'Goose neck skin' },
      { of: { kind: 'ingredient', id: '3' }, name: 'House brandy', densityKgM3: 950 },
    ];
    const items = read('3 egg whites; 400 g goose neck skin; 100 ml house brandy', 'metric', known);
    expect(items.map((item) => [item.guess!.of.kind, item.g])).toEqual([
      ['ingredient', 105],
      ['part', 400],
      ['ingredient', 95],
    ]);
  });

  test('a table from a spreadsheet: either order, bare numbers in the kitchen’s unit, its head handed back', () => {
    const items = read(
      'Ingredient\tWeight\nHock meat\t980\n1.5 kg\tBack fat\n\nCream\t2 x 105g\nFlour\t1,200',
    );
    expect(items.map((item) => item.g)).toEqual([null, null, 980, 1500, 210, null]);
    expect(read('Salt; 2', 'US')[0]!.g).toBeCloseTo(56.699, 3);
  });

  const letters = (text: string) => text.replaceAll(/[^\p{L}\p{N}]/gu, '');
  const kept = (text: string) => {
    expect(
      letters(
        read(text)
          .map((item) => item.text)
          .join(' '),
      ),
    ).toBe(letters(text));
  };

  test('nothing that was typed is dropped: lists', () => {
    const word = fc.constantFrom(
      ...'400 g,1½ kg,2-3,a pinch of,salt,goose meat,egg whites,(about 300 g),diced,and,to taste,200ml,1 lb 4 oz,18 g/kg,3 x,juice of,2 lemons,tin,%,half a,dozen,1/2,•,q.s.'.split(
        ',',
      ),
    );
    const joint = fc.constantFrom(' ', ', ', '; ', '\n', '\t', ',', ' - ', ': ');
    fc.assert(
      fc.property(fc.array(fc.tuple(word, joint), { maxLength: 14 }), (parts) => {
        kept(parts.flat().join(''));
      }),
      { numRuns: 150 },
    );
  });

  test('nothing that was typed is dropped: any text', () => {
    fc.assert(fc.property(fc.string({ maxLength: 80, unit: 'grapheme' }), kept), { numRuns: 150 });
  });
});
