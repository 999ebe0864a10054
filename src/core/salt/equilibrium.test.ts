import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cureEquilibrium } from './equilibrium.ts';

const water = 0.7576;

describe('cureEquilibrium', () => {
  // Balances worked out beforehand: brine per kg of meat, its strength; then salt in the water phase [%] and in the meat [g/kg].
  it.each([
    [1, 0.06, 3.4137, 26.777],
    [2, 0.06, 4.3516, 34.468],
    [2, 0.08, 5.8021, 46.665],
    [0.5, 0.1, 3.9758, 31.368],
    [3, 0.035, 2.7943, 21.778],
  ])('1 : %f at %f', (medium, mediumSalt, pct, grams) => {
    const rest = cureEquilibrium({ meat: 1, water, medium, mediumSalt });
    expect(rest.waterPhaseSalt * 100).toBeCloseTo(pct, 3);
    expect(rest.salt * 1000).toBeCloseTo(grams, 2);
  });

  it('gives salt as a share of the salted meat', () => {
    expect(cureEquilibrium({ meat: 1, water, medium: 1, mediumSalt: 0.06 }).saltOfSalted * 100).toBeCloseTo(
      2.6078,
      3,
    );
  });

  it('puts all of a dry cure into the meat', () => {
    const rest = cureEquilibrium({ meat: 2, water, medium: 0.05, mediumSalt: 1 });
    expect(rest.salt).toBeCloseTo(0.05, 12);
    expect(rest.waterPhaseSalt).toBeCloseTo(0.05 / (0.05 + 2 * water), 12);
  });

  it('keeps all the salt there was, and is never stronger than the stronger of the two', () => {
    const unit = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        unit(0.1, 10),
        unit(0.3, 0.9),
        unit(0, 20),
        unit(0, 0.26),
        unit(0, 0.05),
        (meat, w, medium, mediumSalt, saltBefore) => {
          const rest = cureEquilibrium({ meat, water: w, medium, mediumSalt, saltBefore });
          const inBrine = (rest.waterPhaseSalt / (1 - rest.waterPhaseSalt)) * medium * (1 - mediumSalt);
          expect(rest.salt + inBrine).toBeCloseTo(medium * mediumSalt + meat * saltBefore, 9);
          const meatPhase = saltBefore / (saltBefore + w);
          expect(rest.waterPhaseSalt).toBeLessThanOrEqual(Math.max(meatPhase, mediumSalt) + 1e-12);
        },
      ),
    );
  });

  it('refuses what cannot be, naming it', () => {
    expect(() => cureEquilibrium({ meat: 0, water, medium: 1, mediumSalt: 0.06 })).toThrow('meat');
    expect(() => cureEquilibrium({ meat: 1, water: 1.2, medium: 1, mediumSalt: 0.06 })).toThrow('water');
    expect(() => cureEquilibrium({ meat: 1, water: 0, medium: 1, mediumSalt: 1 })).toThrow('needs water');
  });
});
