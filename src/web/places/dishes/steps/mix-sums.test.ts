import { describe, expect, it } from 'vitest';
import { mixSums } from './mix-sums.ts';

const meat = { water: 0.7, protein: 0.2, fat: 0.09, carbohydrate: 0, fibre: 0, ash: 0.01 };

describe('mixSums', () => {
  it('names what nobody has said instead of counting it as nothing', () => {
    const sums = mixSums([
      { ingredient: 'Hock', g: 1000, composition: meat, salt: 0.002, pricePerKg: 420, allergens: [] },
      { ingredient: 'Cream', g: 200, allergens: ['milk'] },
      { ingredient: 'Herb', g: 10 },
      { ingredient: 'Not used', g: 0 },
    ]);
    expect(sums.cost).toBe(420);
    expect(sums.unpriced).toEqual(['Cream', 'Herb']);
    expect(sums.unknown).toEqual(['Cream', 'Herb']);
    expect(sums.allergens).toEqual(['milk']);
    expect(sums.allergensUnknown).toEqual(['Herb']);
    expect(sums.mixture?.composition?.protein).toBeCloseTo(0.2, 12);
    expect(sums.mixture?.waterPhaseSalt).toBeNull();
  });
  it('says which line does not add up', () => {
    const sums = mixSums([{ ingredient: 'Hock', g: 100, composition: { ...meat, fat: 0.3 } }]);
    expect(sums.mixture).toBeNull();
    expect(sums.problem).toContain('Hock: found fractions that sum to 1.21');
  });
});
