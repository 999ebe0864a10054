import { describe, expect, it } from 'vitest';
import { energyPaid, latentHeatOf, sensibleHeat } from './energy.ts';

const water = { water: 1, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 };
const mousse = { water: 0.7, protein: 0.14, fat: 0.14, carbohydrate: 0.01, fibre: 0, ash: 0.01 };

describe('energy', () => {
  it('counts the way down as it counts the way up', () => {
    expect(sensibleHeat(2, mousse, 70, 5)).toBe(sensibleHeat(2, mousse, 5, 70));
    expect(sensibleHeat(2, mousse, 70, 5)).toBeCloseTo(2 * sensibleHeat(1, mousse, 5, 70), 6);
  });

  it('adds up over parts of the way to within the rule of the quadrature', () => {
    const whole = sensibleHeat(1, mousse, 5, 95);
    const parts = sensibleHeat(1, mousse, 5, 50) + sensibleHeat(1, mousse, 50, 95);
    expect(Math.abs(parts / whole - 1)).toBeLessThan(1e-9);
  });

  it('takes less of fat than of water, and more to drive water off than to boil it', () => {
    expect(sensibleHeat(1, { ...water, water: 0, fat: 1 }, 5, 70)).toBeLessThan(
      sensibleHeat(1, water, 5, 70),
    );
    expect(latentHeatOf(1, 100)).toBeGreaterThan(5 * sensibleHeat(1, water, 10, 100));
  });

  it('refuses what it does not reckon: freezing, no efficiency', () => {
    expect(() => sensibleHeat(1, mousse, -5, 70)).toThrow(/fromC/);
    expect(() => energyPaid(1e6, 0)).toThrow(/efficiency/);
  });
});
