import { describe, expect, it } from 'vitest';
import type { Pantry } from '../../../../contract/pantry-answer.ts';
import { chosen, lineChoices, lineIs, ownFiguresGone } from './line-choices.ts';

const id = (n: number) => `00000000-0000-7000-8000-${String(n).padStart(12, '0')}`;
const pantry = {
  ingredients: [
    { id: id(1), name: 'Goose fat', costPerKg: 900, putAway: false },
    { id: id(2), name: 'Old goose stock', costPerKg: null, putAway: true },
  ],
  parts: [{ id: id(3), species: 'goose', name: 'neck skin', costPerKg: null, onShelfG: 700 }],
  dishes: [
    { id: id(4), name: 'Goose forcemeat', signed: false },
    { id: id(5), name: 'Stuffed goose neck', signed: true },
  ],
} as unknown as Pantry;
const rows = [{ id: 'goose-liver-raw', name: 'goose liver, raw' }];

describe('lineChoices', () => {
  it('groups what a name may mean, leaves out what is put away and the dish itself', () => {
    const groups = lineChoices('goose', pantry, rows, id(5));
    expect(groups.map((g) => g.choices.map((c) => c.name))).toEqual([
      ['Goose fat'],
      ['goose, neck skin'],
      ['Goose forcemeat'],
      ['goose liver, raw'],
    ]);
    expect(groups[1]!.choices[0]).toMatchObject({ onShelfG: 700, costPerKg: null });
  });
  it('asks for every word, and has no empty group', () => {
    expect(lineChoices('neck goose', pantry, [], id(5)).map((g) => g.title)).toEqual(['Parts of animals']);
  });
});

describe('lineIs', () => {
  it('says what a line is, also by the older field, and nothing of what is gone', () => {
    const of = (line: Parameters<typeof lineIs>[0]) => lineIs(line, pantry, () => undefined);
    expect(of({ ingredientId: id(1) })).toBe('Goose fat');
    expect(of({ of: { kind: 'dish', id: id(4) } })).toBe('Goose forcemeat, a dish that nobody has signed');
    expect(of({ of: { kind: 'part', id: id(9) } })).toBeNull();
    expect(of({})).toBeNull();
  });
});

describe('chosen', () => {
  const meat = { water: 0.7, protein: 0.2, fat: 0.09, carbohydrate: 0, fibre: 0, ash: 0.01 };
  const choice = { of: { kind: 'part' as const, id: id(3) }, name: 'goose, neck skin' };
  it('leaves the figures of what the line was, and keeps how much and how it was meant', () => {
    const line = { ingredient: 'Pork', ingredientId: id(1), g: 400, meat: true as const, composition: meat };
    expect(chosen({ ...line, pricePerKg: 5, allergens: ['milk'] }, choice)).toEqual({
      ingredient: 'goose, neck skin',
      of: choice.of,
      g: 400,
      meat: true,
    });
  });
  it('never drops an allergen that somebody put on a line of its own', () => {
    expect(chosen({ ingredient: 'x', g: 1, allergens: ['egg'] }, choice).allergens).toEqual(['egg']);
  });
});

describe('ownFiguresGone', () => {
  it('takes off figures and price, and no allergen', () => {
    const line = { ingredient: 'x', g: 1, of: { kind: 'part' as const, id: id(3) }, allergens: ['egg'] };
    expect(ownFiguresGone({ ...line, salt: 0.1, pricePerKg: 3 })).toEqual(line);
  });
});
