import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { capacityOf } from './capacity.ts';
import { filledShape, flatFromRound, piecesFrom, roundFromFlat } from './casing.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const profile = [
  { at: 0, diameter: 0.04 },
  { at: 0.12, diameter: 0.056 },
  { at: 0.18, diameter: 0.05 },
];

describe('filledShape', () => {
  it('holds what was put in it once it has swollen', () => {
    fc.assert(
      fc.property(double(0, 0.008), double(0.01, 2), double(0, 0.5), (skin, mass, swelling) => {
        const filled = filledShape({ profile, skin, mass, density: 1040, swelling });
        const { inner } = capacityOf({ profile: filled.profile, skin, density: 1040, headSpace: 0 });
        const volume = (mass * (1 + swelling)) / 1040;
        if (filled.room >= 0) {
          expect(filled.factor).toBe(1);
          expect(filled.bulge).toBe(0);
          expect(inner).toBeGreaterThanOrEqual(volume * (1 - 1e-9));
        } else {
          expect(Math.abs(inner / volume - 1)).toBeLessThan(1e-9);
          expect(filled.bulge).toBeGreaterThan(0);
          expect(filled.at).toBe(0.12);
        }
      }),
    );
  });

  it.each([
    ['swelling', { swelling: 2 }],
    ['mass', { mass: -1 }],
    ['density', { density: 0 }],
    ['profile[0].diameter', { skin: 0.03 }],
  ])('refuses %s', (path, wrong) => {
    expect(() =>
      filledShape({ profile, skin: 0.001, mass: 0.3, density: 1040, swelling: 0, ...wrong }),
    ).toThrow(path);
  });
});

describe('a casing lying flat', () => {
  it('goes round and back', () => {
    fc.assert(
      fc.property(double(0.005, 0.5), (w) => {
        expect(flatFromRound(roundFromFlat(w))).toBeCloseTo(w, 12);
      }),
    );
    expect(() => roundFromFlat(0)).toThrow(RangeError);
  });
});

describe('piecesFrom', () => {
  it('loses nothing, and the rest is less than a piece', () => {
    fc.assert(
      fc.property(double(0, 50), double(0.02, 3), (batch, each) => {
        const { pieces, left, missing } = piecesFrom(batch, each);
        expect(pieces * each + left).toBeCloseTo(batch, 5);
        expect(left).toBeLessThan(each);
        expect(left + missing).toBeCloseTo(each, 12);
      }),
    );
    expect(piecesFrom(3 * 0.1, 0.1).pieces).toBe(3);
    expect(() => piecesFrom(1, 0)).toThrow(RangeError);
  });
});
