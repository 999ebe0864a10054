import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alcoholLeft } from './evaporation.ts';
import { leavesOf, type PantryFood, type PantryRecipe, pantryOf, pantryWith, reckon } from './flatten.ts';
import { type Nutrients, nutrients } from './food.ts';

const none = Object.fromEntries(nutrients.map((n) => [n, 0])) as unknown as Nutrients;
const food = (id: string, own: Partial<Nutrients>, costPerKg: number | null = 100): PantryFood => ({
  kind: 'food',
  id,
  name: id,
  nutrients: { ...none, ...own },
  allergens: [],
  costPerKg,
});
const recipe = (
  id: string,
  lines: PantryRecipe['lines'],
  outcome?: PantryRecipe['outcome'],
): PantryRecipe => ({
  kind: 'recipe',
  id,
  name: id,
  lines,
  outcome,
});
const water = food('water', { water: 1 }, 0);
const meat = food('meat', { water: 0.7, protein: 0.2, fat: 0.09, ash: 0.01 }, 800);
const brandy = food('brandy', { water: 0.66, alcohol: 0.34 }, 3000);
const mystery = { ...food('mystery', {}, null), nutrients: { ...none, fat: null, water: 0.5, protein: 0.2 } };

describe('reckon', () => {
  it('adds up weights, what is in them and what they cost, through a recipe in a recipe', () => {
    const base = recipe('base', [
      { of: 'meat', mass: 3 },
      { of: 'water', mass: 1 },
    ]);
    const pantry = pantryOf([water, meat, base]);
    const top = reckon(
      recipe('top', [
        { of: 'base', mass: 2 },
        { of: 'meat', mass: 1 },
      ]),
      pantry,
    );
    expect(top.mass).toBeCloseTo(3, 12);
    // 2 kg of base are 1.5 kg of meat and 0.5 kg of water.
    expect(top.nutrients.protein).toEqual({ known: expect.closeTo(0.5, 12) as number, unknown: 0 });
    expect(top.nutrients.water.known).toBeCloseTo(0.5 + 2.5 * 0.7, 12);
    expect(top.cost).toEqual({ known: expect.closeTo(2000, 9) as number, unknown: 0 });
  });

  it('says how much food there is of which a thing is not known', () => {
    const out = reckon(
      recipe('r', [
        { of: 'meat', mass: 1 },
        { of: 'mystery', mass: 0.5 },
        { of: 'nowhere', mass: 0.25 },
      ]),
      pantryOf([meat, mystery]),
    );
    expect(out.nutrients.fat).toEqual({ known: 0.09, unknown: 0.75 });
    expect(out.nutrients.protein.unknown).toBe(0.25);
    expect(out.cost).toEqual({ known: 800, unknown: 0.75 });
    expect(out.missing).toEqual(['nowhere']);
    expect(out.mass).toBe(1.75);
  });

  it('names what is missing at any depth', () => {
    const pantry = pantryOf([meat, recipe('base', [{ of: 'gone', mass: 1 }])]);
    expect(reckon(recipe('top', [{ of: 'base', mass: 1 }]), pantry).missing).toEqual(['gone']);
  });

  it('takes what the line itself says over the pantry', () => {
    const own = { ...none, water: 0.6, protein: 0.2, fat: 0.19, ash: 0.01 };
    const pantry = pantryOf([meat, recipe('base', [{ of: 'meat', mass: 1 }])]);
    for (const of of ['meat', 'base', 'not there']) {
      const out = reckon(recipe('r', [{ of, mass: 2, stated: { nutrients: own, costPerKg: 50 } }]), pantry);
      expect(out.nutrients.fat).toEqual({ known: 0.38, unknown: 0 });
      expect(out.cost).toEqual({ known: 100, unknown: 0 });
    }
  });

  it('refuses a circle and names its path', () => {
    const pantry = pantryOf([
      recipe('stock', [{ of: 'glaze', mass: 1 }]),
      recipe('glaze', [{ of: 'stock', mass: 1 }]),
    ]);
    expect(() => reckon(recipe('sauce', [{ of: 'stock', mass: 1 }]), pantry)).toThrow(
      'stock → glaze → stock',
    );
    expect(() => leavesOf(recipe('self', [{ of: 'self', mass: 1 }]), pantry)).toThrow('self → self');
  });

  it('refuses a circle by way of a recipe that is being changed', () => {
    const old = recipe('a', [{ of: 'meat', mass: 1 }]);
    const pantry = pantryOf([meat, old, recipe('b', [{ of: 'a', mass: 1 }])]);
    reckon(recipe('c', [{ of: 'b', mass: 1 }]), pantry);
    expect(() => reckon(recipe('a', [{ of: 'b', mass: 1 }]), pantry)).toThrow('a → b → a');
  });

  it('refuses a circle also where nothing is weighed in yet', () => {
    const pantry = pantryOf([recipe('a', [{ of: 'b', mass: 0 }]), recipe('b', [{ of: 'a', mass: 0 }])]);
    expect(() => reckon(recipe('c', [{ of: 'a', mass: 0 }]), pantry)).toThrow('a → b → a');
  });

  it('refuses a recipe into which nothing was weighed, where it is used', () => {
    const pantry = pantryOf([recipe('empty', [])]);
    expect(() => reckon(recipe('top', [{ of: 'empty', mass: 1 }]), pantry)).toThrow('top → empty');
    expect(reckon(recipe('empty', []), pantry).mass).toBe(0);
  });

  it('refuses weights that are none, naming line and recipe', () => {
    for (const mass of [-1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => reckon(recipe('r', [{ of: 'meat', name: 'hock', mass }]), pantryOf([meat]))).toThrow(
        'r, hock',
      );
  });
});

describe('cooking down', () => {
  const pantry = pantryOf([water, meat, brandy, mystery]);

  it('takes water and leaves the rest', () => {
    const out = reckon(recipe('r', [{ of: 'meat', mass: 1, reduced: { to: 0.5 } }]), pantry);
    expect(out.mass).toBe(0.5);
    expect(out.nutrients.water.known).toBeCloseTo(0.2, 12);
    expect(out.nutrients.fat.known).toBeCloseTo(0.09, 12);
    expect(out.cost.known).toBe(800);
  });

  it('refuses to boil away more than there is, and says what can be', () => {
    expect(() => reckon(recipe('jus', [{ of: 'meat', mass: 1, reduced: { to: 0.29 } }]), pantry)).toThrow(
      /jus → meat.*29 %.*only 70 %.*at least 30 %/,
    );
    expect(() => reckon(recipe('jus', [{ of: 'meat', mass: 1 }], { to: 0.2, by: 'water' }), pantry)).toThrow(
      'jus',
    );
  });

  it('takes alcohol by its treatment', () => {
    const out = reckon(
      recipe('r', [{ of: 'brandy', mass: 1, reduced: { to: 0.5, alcohol: 'simmered 30 min' } }]),
      pantry,
    );
    expect(out.nutrients.alcohol.known).toBeCloseTo(0.34 * 0.35, 12);
    expect(out.nutrients.water.known).toBeCloseTo(0.66 - (0.5 - 0.34 * 0.65), 12);
    expect(out.nutrients.water.known + out.nutrients.alcohol.known).toBeCloseTo(out.mass, 12);
  });

  it('does not know the alcohol where nobody said what was done to it', () => {
    const out = reckon(recipe('r', [{ of: 'brandy', mass: 1, reduced: { to: 0.5 } }]), pantry);
    expect(out.nutrients.alcohol).toEqual({ known: 0, unknown: 0.5 });
    expect(out.nutrients.water.unknown).toBe(0.5);
    expect(out.nutrients.fat).toEqual({ known: 0, unknown: 0 });
  });

  it('refuses less loss than the alcohol alone', () => {
    const line = { of: 'brandy', mass: 1, reduced: { to: 1, alcohol: 'flamed' } } as const;
    expect(() => reckon(recipe('r', [line]), pantry)).toThrow(/at most 91.5 %/);
  });

  it('knows only weight and cost where more than water left, unless what came out was measured', () => {
    const lines = [
      { of: 'meat', mass: 1 },
      { of: 'water', mass: 3 },
    ];
    const stock = reckon(recipe('stock', lines, { to: 0.5, by: 'not known' }), pantry);
    expect(stock.mass).toBe(2);
    expect(stock.nutrients.fat).toEqual({ known: 0, unknown: 2 });
    expect(stock.cost.known).toBe(800);
    const measured = { ...none, water: 0.97, protein: 0.03 };
    const known = reckon(
      recipe('stock', lines, { to: 0.5, by: 'not known', stated: { nutrients: measured } }),
      pantry,
    );
    expect(known.nutrients.protein).toEqual({ known: 0.06, unknown: 0 });
  });

  it('takes water up', () => {
    const out = reckon(recipe('r', [{ of: 'meat', mass: 1 }], { to: 2.5, by: 'water' }), pantry);
    expect(out.mass).toBe(2.5);
    expect(out.nutrients.water.known).toBeCloseTo(2.2, 12);
  });

  it('keeps "at least" true where water is not known', () => {
    const dry = { ...mystery, id: 'dry', nutrients: { ...mystery.nutrients, water: null } };
    const lines = [
      { of: 'dry', mass: 1 },
      { of: 'water', mass: 1 },
    ];
    const out = reckon(recipe('r', lines, { to: 0.4, by: 'water' }), pantryOf([water, dry]));
    expect(out.nutrients.water.known).toBe(0);
    expect(out.nutrients.water.unknown).toBeGreaterThan(0);
  });

  it('has the table of what stays', () => {
    expect(alcoholLeft('flamed')).toBe(0.75);
    expect(alcoholLeft('simmered 150 min')).toBe(0.05);
  });
});

describe('properties', () => {
  const foods = ['meat', 'water', 'brandy', 'mystery'];
  const line = (to: string[]) =>
    fc.record({ of: fc.constantFrom(...to), mass: fc.double({ min: 0.001, max: 5, noNaN: true }) });
  const kitchen = fc
    .tuple(
      fc.array(line(foods), { minLength: 1, maxLength: 5 }),
      fc.array(line([...foods, 'r0']), { minLength: 1, maxLength: 5 }),
      fc.array(line([...foods, 'r0', 'r1']), { minLength: 1, maxLength: 5 }),
      fc.array(line([...foods, 'r0', 'r1', 'r2']), { minLength: 1, maxLength: 6 }),
      fc.double({ min: 0.9, max: 2, noNaN: true }),
    )
    .map(([r0, r1, r2, top, to]) => ({
      pantry: pantryOf([
        water,
        meat,
        brandy,
        mystery,
        recipe('r0', r0),
        // Only water comes in or goes, of what surely is water enough.
        recipe('r1', [...r1, { of: 'water', mass: 60 }], { to, by: 'water', alcohol: 'flamed' }),
        recipe('r2', r2),
      ]),
      top: recipe('top', top),
    }));
  const close = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThan(1e-9 * (1 + Math.abs(b)));
  const same = (a: ReturnType<typeof reckon>, b: ReturnType<typeof reckon>, times = 1) => {
    close(a.mass, times * b.mass);
    close(a.cost.known, times * b.cost.known);
    close(a.cost.unknown, times * b.cost.unknown);
    for (const n of nutrients) {
      close(a.nutrients[n].known, times * b.nutrients[n].known);
      close(a.nutrients[n].unknown, times * b.nutrients[n].unknown);
    }
  };

  it('nested is the same as written out in foods, where nothing leaves', () => {
    fc.assert(
      fc.property(kitchen, ({ pantry, top }) => {
        const dry = pantryWith(
          pantry,
          [...pantry.items.values()].map((i) => (i.kind === 'recipe' ? recipe(i.id, i.lines) : i)),
        );
        const written = [...leavesOf(top, dry)].map(([of, mass]) => ({ of, mass }));
        same(reckon(recipe('flat', written), dry), reckon(top, dry));
      }),
    );
  });

  it('expands one level to the same', () => {
    fc.assert(
      fc.property(kitchen, ({ pantry, top }) => {
        const lines = top.lines.flatMap((l) => {
          const item = pantry.items.get(l.of);
          if (item?.kind !== 'recipe' || item.outcome !== undefined) return [l];
          const times = l.mass / reckon(item, pantry).mass;
          return item.lines.map((x) => ({ ...x, mass: x.mass * times }));
        });
        same(reckon(recipe('flat', lines), pantry), reckon(top, pantry));
      }),
    );
  });

  it('is linear in weight, and does not ask for an order or for how a line is split', () => {
    fc.assert(
      fc.property(kitchen, fc.double({ min: 0.01, max: 40, noNaN: true }), ({ pantry, top }, times) => {
        const whole = reckon(top, pantry);
        const scaled = top.lines.map((l) => ({ ...l, mass: l.mass * times }));
        same(reckon(recipe('s', scaled), pantry), whole, times);
        same(reckon(recipe('o', [...top.lines].reverse()), pantry), whole);
        const halves = top.lines.flatMap((l) => [l, l].map((x) => ({ ...x, mass: x.mass / 2 })));
        same(reckon(recipe('h', halves), pantry), whole);
      }),
    );
  });

  it('gives the same from a pantry that has reckoned before', () => {
    fc.assert(
      fc.property(kitchen, ({ pantry, top }) => {
        const first = reckon(top, pantry);
        same(reckon(top, pantry), first);
        same(reckon(top, pantryWith(pantry, [])), first);
      }),
    );
  });

  it('loses nothing but water and alcohol', () => {
    fc.assert(
      fc.property(kitchen, ({ pantry, top }) => {
        const leaves = leavesOf(top, pantry);
        for (const n of ['protein', 'ash'] as const) {
          let sum = 0;
          for (const [id, kg] of leaves) {
            const item = pantry.items.get(id);
            if (item?.kind === 'food') sum += kg * (item.nutrients[n] ?? 0);
          }
          close(reckon(top, pantry).nutrients[n].known, sum);
        }
      }),
    );
  });
});
