import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { costOf, mixtureOf, type WeighedLine } from './composition.ts';

const water = { water: 1, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 };
const fat = { ...water, water: 0, fat: 1 };
const salt = { ...water, water: 0, ash: 1 };
const breast = { water: 0.7426, protein: 0.22054, fat: 0.02568, carbohydrate: 0, fibre: 0, ash: 0.01117 };

describe('mixtureOf', () => {
  it('weighs the compositions', () => {
    const mix = mixtureOf([
      { mass: 3, composition: water, salt: 0 },
      { mass: 1, composition: fat, salt: 0 },
    ]);
    expect(mix.composition).toMatchObject({ water: 0.75, fat: 0.25 });
    expect(mix.mass).toBe(4);
    expect(mix.missing).toEqual([]);
  });

  it('gives salt in the water phase only where everything is known', () => {
    const lines: WeighedLine[] = [
      { mass: 0.96, composition: water, salt: 0 },
      { mass: 0.04, composition: salt, salt: 1 },
    ];
    expect(mixtureOf(lines).waterPhaseSalt).toBeCloseTo(0.04, 12);
    expect(mixtureOf([...lines, { mass: 0.01, composition: water }]).waterPhaseSalt).toBeNull();
    expect(mixtureOf([...lines, { mass: 0.01, salt: 0 }]).waterPhaseSalt).toBeNull();
  });

  it('names what is missing and never counts it as nothing', () => {
    const mix = mixtureOf([{ mass: 1, composition: breast, salt: 0 }, { mass: 0.5 }, { mass: 0 }]);
    expect(mix.missing).toEqual([1]);
    expect(mix.saltMissing).toEqual([1]);
    expect(mix.known).toBe(1);
    expect(mix.mass).toBe(1.5);
    expect(mixtureOf([{ mass: 1 }]).composition).toBeNull();
    expect(mixtureOf([]).composition).toBeNull();
  });

  it('refuses a composition that does not sum to one, naming the line', () => {
    expect(() => mixtureOf([{ mass: 1, composition: { ...water, fat: 0.2 } }])).toThrow(
      'lines[0].composition',
    );
  });

  it('does not depend on the order or on how a line is split', () => {
    const part = fc.record({
      mass: fc.double({ min: 0.001, max: 5, noNaN: true }),
      w: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(part, { minLength: 1, maxLength: 8 }),
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        (parts, cut) => {
          const lines = parts.map(({ mass, w }) => ({
            mass,
            composition: { ...water, water: w, fat: 1 - w },
            salt: 0.01,
          }));
          const first = lines[0]!;
          const split = [
            { ...first, mass: first.mass * cut },
            ...lines.slice(1).reverse(),
            { ...first, mass: first.mass * (1 - cut) },
          ];
          const a = mixtureOf(lines);
          const b = mixtureOf(split);
          expect(b.composition!.water).toBeCloseTo(a.composition!.water, 9);
          expect(b.salt).toBeCloseTo(a.salt, 9);
          expect(Object.values(a.composition!).reduce((s, x) => s + x, 0)).toBeCloseTo(1, 9);
        },
      ),
    );
  });
});

describe('costOf', () => {
  it('adds what is priced and names what is not', () => {
    expect(
      costOf([{ mass: 0.5, pricePerKg: 800 }, { mass: 2, pricePerKg: 150 }, { mass: 0.1 }, { mass: 0 }]),
    ).toEqual({
      cost: 700,
      missing: [2],
    });
  });
});
