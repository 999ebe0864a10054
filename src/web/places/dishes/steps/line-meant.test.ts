import { describe, expect, it } from 'vitest';
import { meatOf, weightMeant, without } from './line-meant.tsx';

describe('weightMeant', () => {
  it('follows the meat and the pieces', () => {
    const salt = { ingredient: 'salt', g: 1, amount: { by: 'pct of the meat' as const, pct: 1.8 } };
    expect(weightMeant(salt, 1000, null).g).toBe(18);
    const prune = { ingredient: 'prune', g: 1, amount: { by: 'per piece' as const, g: 12 } };
    expect(weightMeant(prune, 0, 6).g).toBe(72);
  });
  it('leaves the weight as it is where nothing says what to follow', () => {
    const salt = { ingredient: 'salt', g: 7, amount: { by: 'pct of the meat' as const, pct: 1.8 } };
    expect(weightMeant(salt, 0, null)).toEqual(salt);
    expect(weightMeant({ ingredient: 'x', g: 7 }, 100, 2)).toEqual({ ingredient: 'x', g: 7 });
  });
});

describe('meatOf', () => {
  it('weighs only what counts as meat', () => {
    expect(
      meatOf([
        { ingredient: 'hock', g: 900, meat: true },
        { ingredient: 'cream', g: 100 },
      ]),
    ).toBe(900);
    expect(without({ ingredient: 'a', g: 1, meat: true }, 'meat')).toEqual({ ingredient: 'a', g: 1 });
  });
});
