import { describe, expect, it } from 'vitest';
import type { Ingredient } from '../../../../contract/records.ts';
import { lineFor, renamed } from './known-line.ts';

const meat = { water: 0.7, protein: 0.2, fat: 0.09, carbohydrate: 0, fibre: 0, ash: 0.01 };
const known: Ingredient[] = [
  {
    id: '00000000-0000-4000-8000-000000000001',
    name: 'Hock meat',
    composition: meat,
    salt: 0.002,
    source: 'somebody',
    pricePerKg: 420,
    allergens: [],
  },
];

describe('lineFor', () => {
  it('takes over what the kitchen knows, by name', () => {
    expect(lineFor('hock MEAT', 980, known)).toMatchObject({
      ingredient: 'Hock meat',
      g: 980,
      composition: meat,
      pricePerKg: 420,
    });
  });
  it('knows what is one substance, and nothing of anything else', () => {
    expect(lineFor('Salt', 20, known)).toMatchObject({ salt: 1, composition: { ash: 1 } });
    expect(lineFor('Mystery', 20, known)).toEqual({ ingredient: 'Mystery', g: 20 });
  });
});

describe('renamed', () => {
  it('never leaves one ingredient’s figures with another’s name', () => {
    const line = lineFor('Hock meat', 980, known);
    expect(renamed(line, 'Hock meatx', known)).toEqual({ ingredient: 'Hock meatx', g: 980 });
    expect(renamed(lineFor('Salt', 20, known), 'Salty caramel', known)).toEqual({
      ingredient: 'Salty caramel',
      g: 20,
    });
  });
  it('keeps what was typed by hand while the name is put right', () => {
    const own = { ingredient: 'Blood', g: 500, composition: meat };
    expect(renamed(own, 'Pig’s blood', known)).toEqual({ ...own, ingredient: 'Pig’s blood' });
  });
});
