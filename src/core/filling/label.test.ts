import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PantryFood, type PantryItem, type PantryRecipe, pantryOf } from './flatten.ts';
import { type AllergenMark, allergens, type Nutrients, nutrients } from './food.ts';
import { labelOf } from './label.ts';
import type { LabelFacts } from './label-facts.ts';
import { declaredQuantity } from './label-quantity.ts';
import { emphasised } from './label-words.ts';
import { meatContent } from './meat-content.ts';

const none = Object.fromEntries(nutrients.map((n) => [n, 0])) as unknown as Nutrients;
const food = (
  id: string,
  own: Partial<Nutrients> = {},
  label: LabelFacts = {},
  marks: readonly AllergenMark[] | null = [],
): PantryFood => ({
  kind: 'food',
  id,
  name: id,
  nutrients: { ...none, ...own },
  allergens: marks,
  costPerKg: null,
  label,
});
const recipe = (id: string, lines: PantryRecipe['lines'], own: Partial<PantryRecipe> = {}): PantryRecipe => ({
  kind: 'recipe',
  id,
  name: id,
  lines,
  ...own,
});
const items: PantryItem[] = [
  food('water', { water: 1 }, { counts: 'water' }),
  food(
    'pork shoulder',
    { water: 0.65, protein: 0.18, fat: 0.16, ash: 0.01 },
    { meat: { word: 'pork', group: 'pig' } },
  ),
  food(
    'pork belly',
    { water: 0.44, protein: 0.1, fat: 0.45, ash: 0.01 },
    { meat: { word: 'pork', group: 'pig' } },
  ),
  food('pork liver', { water: 0.72 }),
  food('salt', { ash: 1, salt: 1 }),
  food('double cream', { fat: 0.48 }, {}, [{ allergen: 'milk' }]),
  food('breadcrumbs', {}, {}, [{ allergen: 'gluten', as: 'wheat' }]),
  food('wine', { water: 0.88, alcohol: 0.1 }, { counts: 'volatile' }, [{ allergen: 'sulphites' }]),
  food('string', {}, { notEaten: true }),
  food('blend', {}, {}, null),
];
const text = (question: Parameters<typeof labelOf>[0]) =>
  labelOf(question)
    .runs.map((r) => (r.emphasised ? r.text.toUpperCase() : r.text))
    .join('');
const of = (
  lines: PantryRecipe['lines'],
  more: Partial<Parameters<typeof labelOf>[0]> = {},
  extra: readonly PantryItem[] = [],
) => ({
  recipe: recipe('dish', lines),
  pantry: pantryOf([...items, ...extra]),
  place: 'GB' as const,
  ...more,
});

describe('the list', () => {
  it('stands in descending weight, what is weighed twice once', () => {
    expect(
      text(
        of([
          { of: 'salt', mass: 0.01 },
          { of: 'pork liver', mass: 0.2 },
          { of: 'breadcrumbs', mass: 0.205 },
          { of: 'salt', mass: 0.25 },
        ]),
      ),
    ).toBe('salt, breadcrumbs (WHEAT), pork liver');
  });

  it('puts a recipe as a compound ingredient with its own list, or spreads it out', () => {
    const panade = recipe('panade', [
      { of: 'double cream', mass: 1 },
      { of: 'breadcrumbs', mass: 2 },
      { of: 'salt', mass: 0.1 },
    ]);
    const lines = [
      { of: 'pork liver', mass: 1 },
      { of: 'panade', mass: 0.62 },
      { of: 'salt', mass: 0.3 },
    ];
    expect(text(of(lines, {}, [panade]))).toBe(
      'pork liver, panade (breadcrumbs (WHEAT), double cream (MILK), salt), salt',
    );
    expect(text(of(lines, {}, [{ ...panade, label: { spreadOut: true } }]))).toBe(
      'pork liver, breadcrumbs (WHEAT), salt, double cream (MILK)',
    );
  });

  it('counts water by what is left of it in the finished food', () => {
    const lines = [
      { of: 'water', mass: 0.5 },
      { of: 'pork liver', mass: 0.4 },
      { of: 'salt', mass: 0.1 },
    ];
    expect(text(of(lines))).toBe('water, pork liver, salt');
    expect(text(of(lines, { finished: 0.7 }))).toBe('pork liver, water, salt');
    expect(text(of(lines, { finished: 0.45 }))).toBe('pork liver, salt');
    const water = labelOf(of(lines, { finished: 0.7 })).ingredients.find((i) => i.name === 'water');
    expect(water?.mass).toBeCloseTo(0.2, 12);
  });

  it('counts what evaporates by what is left, and says so where nobody knows', () => {
    const line = { of: 'wine', mass: 0.5 };
    const liver = { of: 'pork liver', mass: 0.3 };
    expect(text(of([{ ...line, reduced: { to: 0.4, alcohol: 'simmered 30 min' } }, liver]))).toBe(
      'pork liver, wine (SULPHITES)',
    );
    const poured = labelOf(of([line, liver]));
    expect(poured.ingredients[0]?.name).toBe('wine');
    expect(poured.decisions.some((d) => d.rule === 'water' && d.what.includes('wine'))).toBe(true);
  });

  it('takes muscle of one animal together and declares the fat over its limit', () => {
    const label = labelOf(
      of([
        { of: 'pork belly', mass: 1, declared: true },
        { of: 'salt', mass: 0.02 },
      ]),
    );
    expect(label.ingredients.map((i) => [i.name, Number(i.mass.toFixed(4))])).toEqual([
      ['pork', 0.7857],
      ['pork fat', 0.2143],
      ['salt', 0.02],
    ]);
    expect(label.ingredients[0]?.quantity?.text).toBe('77 %');
    // Lean and fat together stay within: 0.305 of 1 is over, so some is fat; with more lean nothing is.
    const lean = labelOf(
      of([
        { of: 'pork belly', mass: 1 },
        { of: 'pork shoulder', mass: 2 },
      ]),
    );
    expect(lean.ingredients.map((i) => i.name)).toEqual(['pork']);
    expect(lean.decisions.some((d) => d.what.includes('Connective tissue'))).toBe(true);
  });

  it('does not standardise what is not known, and says so', () => {
    const odd = {
      ...food('boar', {}, { meat: { word: 'wild boar', group: 'pig' } }),
      nutrients: { ...none, fat: null },
    };
    const label = labelOf(of([{ of: 'boar', mass: 1 }], {}, [odd]));
    expect(label.ingredients.map((i) => i.name)).toEqual(['wild boar']);
    expect(label.decisions.some((d) => d.what.includes('fat of the wild boar is not known'))).toBe(true);
  });

  it('leaves out what is not eaten', () => {
    expect(
      text(
        of([
          { of: 'salt', mass: 1 },
          { of: 'string', mass: 2 },
        ]),
      ),
    ).toBe('salt');
  });

  it('has the list of what was bought ready, with its allergens', () => {
    const chorizo = food('chorizo', {}, { madeOf: 'pork, paprika, skimmed milk powder, soya protein' }, [
      { allergen: 'milk' },
      { allergen: 'soybeans' },
      { allergen: 'mustard' },
    ]);
    expect(text(of([{ of: 'chorizo', mass: 1 }], {}, [chorizo]))).toBe(
      'chorizo (pork, paprika, skimmed MILK powder, SOYA protein (MUSTARD))',
    );
  });

  it('may leave out the brackets of a seasoning under 2 %, never its allergens', () => {
    const spice = recipe(
      'spice blend',
      [
        { of: 'salt', mass: 1 },
        { of: 'celery seed', mass: 1 },
      ],
      { label: { seasoning: true } },
    );
    const extra = [spice, food('celery seed', {}, {}, [{ allergen: 'celery' }])];
    const lines = [
      { of: 'pork liver', mass: 1 },
      { of: 'spice blend', mass: 0.01 },
    ];
    expect(text(of(lines, {}, extra))).toBe('pork liver, spice blend (CELERY seed, salt)');
    expect(text(of(lines, { short: true }, extra))).toBe('pork liver, spice blend (CELERY seed)');
    const more = [lines[0]!, { of: 'spice blend', mass: 0.1 }];
    expect(text(of(more, { short: true }, extra))).toBe('pork liver, spice blend (CELERY seed, salt)');
  });

  it('is not complete while nobody has said what something holds', () => {
    const label = labelOf(of([{ of: 'blend', mass: 1 }]));
    expect(label.complete).toBe(false);
    expect(label.decisions.some((d) => d.what.includes('which allergens are in blend'))).toBe(true);
    expect(labelOf(of([{ of: 'nowhere', mass: 1 }])).complete).toBe(false);
    expect(labelOf(of([{ of: 'salt', mass: 1 }])).complete).toBe(true);
  });

  it('says when added water has to stand in the name', () => {
    const said = (water: number) =>
      labelOf(
        of([
          { of: 'pork shoulder', mass: 1 - water },
          { of: 'water', mass: water },
        ]),
      ).decisions.some((d) => d.rule === 'addedWater');
    expect([said(0.05), said(0.06)]).toEqual([false, true]);
  });

  it('has the nine apart in the US, and no European meat there', () => {
    const label = labelOf(
      of(
        [
          { of: 'pork belly', mass: 1, declared: true },
          { of: 'double cream', mass: 0.2 },
        ],
        { place: 'US' },
      ),
    );
    expect(label.contains).toEqual(['milk']);
    expect(label.ingredients.map((i) => i.name)).toEqual(['pork belly', 'double cream']);
    expect(label.ingredients[0]?.quantity).toBeNull();
    expect(label.runs).toEqual([{ text: 'pork belly, double cream', emphasised: false }]);
  });

  it('keeps all of the weight, in an order that never rises', () => {
    const ids = items.filter((i) => !['water', 'string', 'wine'].includes(i.id)).map((i) => i.id);
    fc.assert(
      fc.property(
        fc.array(
          fc.record({ of: fc.constantFrom(...ids), mass: fc.double({ min: 0.001, max: 3, noNaN: true }) }),
          {
            minLength: 1,
            maxLength: 9,
          },
        ),
        (lines) => {
          const { ingredients, finished } = labelOf(of(lines));
          expect(ingredients.reduce((s, i) => s + i.mass, 0)).toBeCloseTo(finished, 9);
          for (let i = 1; i < ingredients.length; i += 1)
            expect(ingredients[i]!.mass).toBeLessThanOrEqual(ingredients[i - 1]!.mass);
        },
      ),
    );
  });
});

describe('declaredQuantity', () => {
  it.each([
    [0.3, 0.8, '37.5 %'],
    [0.2, 0.8, '25 %'],
    [0.07, 0.112, '62.5 %'],
    [0.12, 0.1, '120 g per 100 g'],
    [0.1, 0.1, '100 %'],
  ])('%d of %d → %s', (used, finished, words) => expect(declaredQuantity(used, finished).text).toBe(words));
  it('refuses a finished food that weighs nothing', () => {
    expect(() => declaredQuantity(1, 0)).toThrow('finished');
  });
});

describe('meatContent', () => {
  it('leaves exactly the limit of fat in what is called meat', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.31, max: 0.99, noNaN: true }), (fat) => {
        const { meat, excessFat } = meatContent(1, fat, 'pig');
        expect((fat - excessFat) / meat).toBeCloseTo(0.3, 9);
        expect(meat + excessFat).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('emphasised', () => {
  const upper = (name: string, marks: AllergenMark[]) =>
    emphasised(name, marks)
      .map((r) => (r.emphasised ? r.text.toUpperCase() : r.text))
      .join('');
  it('finds the word in the name, or adds it', () => {
    expect(upper('skimmed milk powder', [{ allergen: 'milk' }])).toBe('skimmed MILK powder');
    expect(
      upper('brioche', [{ allergen: 'milk' }, { allergen: 'eggs' }, { allergen: 'gluten', as: 'wheat' }]),
    ).toBe('brioche (MILK, EGG, WHEAT)');
    expect(upper('oat bran', [{ allergen: 'gluten', as: 'wheat' }])).toBe('oat bran (WHEAT)');
    expect(upper('hazelnut praline', [{ allergen: 'nuts', as: 'hazelnut' }])).toBe('HAZELNUT praline');
    expect(upper('celeriac', [{ allergen: 'celery' }])).toBe('CELERIAC');
  });
  it('leaves no allergen without an emphasised word, and no word of the name out', () => {
    const name = fc.constantFrom(
      'cream',
      'milk bread',
      'egg and milk pasta',
      'fishfinger',
      'nutmeg',
      'buttermilk',
    );
    const marks = fc.uniqueArray(fc.constantFrom(...allergens), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(name, marks, (n, list) => {
        const runs = emphasised(
          n,
          list.map((allergen) => ({ allergen })),
        );
        const strong = runs.filter((r) => r.emphasised).length;
        expect(strong).toBeGreaterThanOrEqual(list.length);
        expect(
          runs
            .map((r) => r.text)
            .join('')
            .startsWith(n),
        ).toBe(true);
      }),
    );
  });
});
