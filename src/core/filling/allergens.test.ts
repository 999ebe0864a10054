import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allergensOf, routeWords, usAllergensOf } from './allergens.ts';
import { type PantryFood, type PantryRecipe, pantryOf } from './flatten.ts';
import { type AllergenMarks, allergens, type Nutrients, nutrients } from './food.ts';

const none = Object.fromEntries(nutrients.map((n) => [n, 0])) as unknown as Nutrients;
const food = (id: string, marks: AllergenMarks): PantryFood => ({
  kind: 'food',
  id,
  name: id,
  nutrients: none,
  allergens: marks,
  costPerKg: null,
});
const recipe = (id: string, lines: PantryRecipe['lines']): PantryRecipe => ({
  kind: 'recipe',
  id,
  name: id,
  lines,
});
const cream = food('cream', [{ allergen: 'milk' }]);
const crumbs = food('crumbs', [{ allergen: 'gluten', as: 'wheat' }]);
const sausage = food('sausage', [{ allergen: 'mustard', checkLabel: true }]);
const unasked = food('spice mix', null);

describe('allergensOf', () => {
  const panade = recipe('panade', [
    { of: 'cream', mass: 1 },
    { of: 'crumbs', mass: 1 },
  ]);
  const pantry = pantryOf([cream, crumbs, sausage, unasked, panade]);

  it('names the way by which each came', () => {
    const found = allergensOf(recipe('pie', [{ of: 'panade', mass: 1 }]), pantry);
    expect(found.contains.map((c) => c.allergen)).toEqual(['gluten', 'milk']);
    expect(found.contains.map((c) => routeWords(c.routes[0]!.path))).toEqual([
      'crumbs in panade',
      'cream in panade',
    ]);
    expect(found.contains[0]?.kinds).toEqual(['wheat']);
  });

  it('keeps what a label decides until somebody has looked', () => {
    const one = allergensOf(recipe('r', [{ of: 'sausage', mass: 1 }]), pantry);
    expect(one.contains).toMatchObject([{ allergen: 'mustard', certain: false }]);
    const sure = allergensOf(
      recipe('r', [
        { of: 'sausage', mass: 1 },
        { of: 'cream', mass: 1, stated: { allergens: [{ allergen: 'mustard' }] } },
      ]),
      pantry,
    );
    expect(sure.contains.find((c) => c.allergen === 'mustard')?.certain).toBe(true);
  });

  it('asks where nobody has said, and where the pantry has nothing', () => {
    const found = allergensOf(
      recipe('r', [
        { of: 'spice mix', mass: 1 },
        { of: 'gone', name: 'mace', mass: 1 },
      ]),
      pantry,
    );
    expect(found.notSaid).toEqual([['spice mix'], ['mace']]);
    expect(found.contains).toEqual([]);
  });

  it('only ever adds what a line says', () => {
    const found = allergensOf(recipe('r', [{ of: 'cream', mass: 1, stated: { allergens: [] } }]), pantry);
    expect(found.contains.map((c) => c.allergen)).toEqual(['milk']);
  });

  it('keeps declared risks apart, and drops those that are in it anyhow', () => {
    const risks = [
      { allergen: 'milk', why: 'one fryer' },
      { allergen: 'nuts', why: 'pastry next door' },
    ] as const;
    const found = allergensOf(recipe('r', [{ of: 'cream', mass: 1 }]), pantry, risks);
    expect(found.mayContain).toEqual([risks[1]]);
    const unsure = allergensOf(recipe('r', [{ of: 'sausage', mass: 1 }]), pantry, [
      { allergen: 'mustard', why: 'dust' },
    ]);
    expect(unsure.mayContain).toHaveLength(1);
  });

  it('brings nothing of what weighs nothing', () => {
    const found = allergensOf(recipe('r', [{ of: 'cream', mass: 0 }]), pantry);
    expect(found).toMatchObject({ contains: [], notSaid: [] });
  });

  it('lists ways up to a limit and counts the rest', () => {
    const wide = recipe(
      'wide',
      Array.from({ length: 30 }, () => ({ of: 'cream', mass: 1 })),
    );
    const found = allergensOf(recipe('top', [{ of: 'wide', mass: 1 }]), pantryOf([cream, wide]));
    expect(found.contains[0]?.routes).toHaveLength(24);
    expect(found.contains[0]?.more).toBe(6);
  });

  it('refuses a circle', () => {
    const a = recipe('a', [{ of: 'b', mass: 1 }]);
    const b = recipe('b', [{ of: 'a', mass: 1 }]);
    expect(() => allergensOf(a, pantryOf([a, b]))).toThrow('a → b → a');
  });

  it('is the union of the foods at the bottom, over any nesting', () => {
    const line = (to: string[]) => fc.record({ of: fc.constantFrom(...to), mass: fc.constantFrom(0, 1, 2) });
    const ids = ['f0', 'f1', 'f2', 'f3'];
    fc.assert(
      fc.property(
        fc.array(fc.option(fc.uniqueArray(fc.constantFrom(...allergens), { maxLength: 3 })), {
          minLength: 4,
          maxLength: 4,
        }),
        fc.array(line(ids), { minLength: 1, maxLength: 4 }),
        fc.array(line([...ids, 'r0']), { minLength: 1, maxLength: 4 }),
        fc.array(line([...ids, 'r0', 'r1']), { minLength: 1, maxLength: 5 }),
        (held, r0, r1, top) => {
          const foods = ids.map((id, i) => food(id, held[i]?.map((allergen) => ({ allergen })) ?? null));
          const all = new Map([...foods, recipe('r0', r0), recipe('r1', r1)].map((i) => [i.id, i] as const));
          const reached = new Set<string>();
          const walk = (lines: PantryRecipe['lines']): void => {
            for (const l of lines) {
              if (l.mass === 0) continue;
              const item = all.get(l.of)!;
              if (item.kind === 'recipe') walk(item.lines);
              else reached.add(l.of);
            }
          };
          walk(top);
          const found = allergensOf(recipe('top', top), pantryOf(all.values()));
          const wanted = new Set(
            foods
              .filter((f) => reached.has(f.id))
              .flatMap((f) => f.allergens ?? [])
              .map((m) => m.allergen),
          );
          expect(new Set(found.contains.map((c) => c.allergen))).toEqual(wanted);
          const blank = foods.filter((f) => f.allergens === null && reached.has(f.id)).map((f) => f.id);
          expect(new Set(found.notSaid.map((p) => p.at(-1)))).toEqual(new Set(blank));
        },
      ),
    );
  });
});

describe('usAllergensOf', () => {
  const found = (marks: AllergenMarks) =>
    usAllergensOf(allergensOf(recipe('r', [{ of: 'x', mass: 1 }]), pantryOf([food('x', marks)])).contains);
  it('has the nine, wheat for the cereal that is not named', () => {
    expect(found([{ allergen: 'gluten' }])).toEqual(['wheat']);
    expect(found([{ allergen: 'gluten', as: 'durum wheat' }])).toEqual(['wheat']);
    expect(found([{ allergen: 'gluten', as: 'barley' }])).toEqual([]);
    expect(found(allergens.map((allergen) => ({ allergen })))).toEqual([
      'milk',
      'eggs',
      'fish',
      'crustacean shellfish',
      'tree nuts',
      'wheat',
      'peanuts',
      'soybeans',
      'sesame',
    ]);
    expect(
      found(
        (['celery', 'mustard', 'lupin', 'molluscs', 'sulphites'] as const).map((allergen) => ({ allergen })),
      ),
    ).toEqual([]);
  });
});
