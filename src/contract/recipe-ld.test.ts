import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readRecipe, recipeOf, recipesIn } from './recipe-ld.ts';
import { methodOfRecipe } from './recipe-method.ts';
import { Method } from './steps.ts';

const id = (n: number) => `0192f3a0-0000-7000-8000-${String(n).padStart(12, '0')}`;
const counter = () => {
  let n = 1;
  return () => id(n++);
};
const common = { how: '', handsMin: 10, asks: [] };
const mixOf = (lines: { ingredient: string; g: number }[]): Method[number] => ({
  kind: 'mix',
  id: id(1),
  name: 'Mix',
  ...common,
  lines,
  maxC: 12,
});
const finish: Method[number] = {
  kind: 'finish',
  id: id(2),
  name: 'Crisp',
  ...common,
  by: 'hot oven',
  mediumC: 200,
  min: 75,
};
const out = (method: Method) =>
  recipeOf({ name: 'Invented heart', story: '', method, allergens: ['milk'], notSaid: ['crumb'] });
const read = (recipe: object) => readRecipe(recipesIn([JSON.parse(JSON.stringify(recipe))])[0]!);
const laid = (recipe: object) =>
  methodOfRecipe(read(recipe), { system: 'metric', known: [], newId: counter() });

describe('a recipe in the open vocabulary', () => {
  test('has time, ingredients, steps and allergens, and leaves out what is not known', () => {
    const recipe = out([mixOf([{ ingredient: 'pork shoulder', g: 500 }]), finish]);
    expect(recipe).toMatchObject({
      '@context': 'https://schema.org',
      '@type': 'Recipe',
      totalTime: 'PT1H35M',
      recipeIngredient: ['500 g pork shoulder'],
    });
    expect(recipe.description).toContain('milk');
    expect(recipe.description).toContain('not known of: crumb');
    expect(recipe).not.toHaveProperty('recipeYield');
    const chill: Method[number] = {
      kind: 'chill',
      id: id(3),
      name: 'Chill',
      ...common,
      stages: [{ name: 'ice', mediumC: 1, until: { warmestC: 5, atMostMin: 240 } }],
      rules: [],
    };
    expect(out([finish, chill])).not.toHaveProperty('totalTime');
  });

  test('written and read again has the same name, ingredients and steps', () => {
    const word = fc.stringMatching(/^[a-z]{3,12}$/);
    const lines = fc.array(fc.record({ ingredient: word, g: fc.integer({ min: 1, max: 99_999 }) }), {
      maxLength: 8,
    });
    fc.assert(
      fc.property(lines, (some) => {
        const recipe = out([mixOf(some), finish]);
        const back = read(recipe);
        expect(back.name).toBe(recipe.name);
        expect(back.description).toBe(recipe.description);
        expect(back.ingredients).toEqual(some.map((l) => `${l.g} g ${l.ingredient}`));
        expect(back.steps.map((s) => s.name)).toEqual(['Mix', 'Crisp']);
        expect(back.left).toEqual([]);
      }),
    );
  });

  test('is found in lists and graphs, sections are opened, markup comes out of its words', () => {
    const recipe = {
      '@graph': [
        { '@type': 'WebPage' },
        {
          '@type': ['http://schema.org/Recipe', 'NewsArticle'],
          name: '<b>Heart</b><script>alert(1)</script> &amp; crumb\u0000',
          recipeIngredient: '1 kg pork shoulder',
          recipeInstructions: [
            { '@type': 'HowToSection', itemListElement: [{ '@type': 'HowToStep', text: 'Trim.' }, 'Roll.'] },
          ],
          author: { name: 'x' },
        },
      ],
    };
    const found = read(recipe);
    expect(found.name).toBe('Heart alert(1) & crumb');
    expect(found.steps.map((s) => s.text)).toEqual(['Trim.', 'Roll.']);
    expect(found.left).toEqual(['author']);
  });

  test('with the wrong types is refused where they stand', () => {
    const bad = (more: object) => () => read({ '@type': 'Recipe', name: 'Heart', ...more });
    expect(bad({ name: { a: 1 } })).toThrow(/name/);
    expect(bad({ name: undefined })).toThrow(/name of the recipe/);
    expect(bad({ recipeIngredient: ['salt', { a: 1 }] })).toThrow(/recipeIngredient\[1\]/);
    expect(bad({ recipeIngredient: Array(101).fill('1 g salt') })).toThrow(/at most 100/);
    expect(bad({ recipeInstructions: [true] })).toThrow(/recipeInstructions\[0\]/);
    expect(recipesIn([{ '@type': 'WebPage' }, null, 3])).toEqual([]);
  });

  test('is laid out without a made-up weight, and without a step that could seem safe', () => {
    const { method, said } = laid({
      '@type': 'Recipe',
      name: 'Heart',
      recipeIngredient: ['500 g pork shoulder', 'zzqx to taste'],
      recipeInstructions: ['Mix.', 'Roast until done.'],
    });
    expect(Method.parse(method)).toEqual(method);
    expect(method.map((s) => s.kind)).toEqual(['mix']);
    const [step] = method;
    expect(step?.kind === 'mix' && step.lines.map((l) => l.g)).toEqual([500]);
    expect(step?.how).toContain('zzqx to taste');
    expect(step?.how).toContain('2. Roast until done.');
    expect(said.join(' ')).toContain('No step of heat or cold');
  });

  test('with words of any length keeps them all', () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[a-z]{1,3000}$/), { maxLength: 6 }), (texts) => {
        const { method } = laid({ '@type': 'Recipe', name: 'H', recipeInstructions: texts });
        const all = method
          .map((s) => s.how)
          .join('')
          .replaceAll('\n', '');
        for (const text of texts) expect(all).toContain(text);
        expect(Method.safeParse(method).success).toBe(true);
      }),
      { numRuns: 30 },
    );
  });
});
