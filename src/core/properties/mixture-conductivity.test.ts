import { describe, expect, test } from 'vitest';
import { type Composition, normalised } from './food-components.ts';
import {
  conductivity,
  defaultRule,
  kopelman,
  levy,
  type MixtureRule,
  maxwellEucken,
} from './mixture-conductivity.ts';

const none = { carbohydrate: 0, fibre: 0 };
const breast = normalised({ ...none, water: 0.7426, protein: 0.22054, fat: 0.02568, ash: 0.01117 });
const skin = normalised({ ...none, water: 0.54052, protein: 0.13289, fat: 0.3225, ash: 0.00409 });
const mousse = normalised({
  water: 0.67833,
  protein: 0.12884,
  fat: 0.16253,
  carbohydrate: 0.01204,
  fibre: 0,
  ash: 0.01826,
});

test.each<[string, Composition, number, number, number, number, number]>([
  ['breast', breast, 5, 0.4972, 0.4009, 0.4793, 0.4692],
  ['breast', breast, 20, 0.5187, 0.4226, 0.5007, 0.4908],
  ['breast', breast, 65, 0.5683, 0.4722, 0.5503, 0.5414],
  ['skin', skin, 5, 0.3987, 0.2896, 0.3728, 0.3585],
  ['skin', skin, 20, 0.4115, 0.2922, 0.3835, 0.3675],
  ['skin', skin, 65, 0.4399, 0.2917, 0.407, 0.3864],
  ['mousse', mousse, 5, 0.4626, 0.3536, 0.4404, 0.4281],
  ['mousse', mousse, 20, 0.4802, 0.3625, 0.4567, 0.4433],
  ['mousse', mousse, 65, 0.5201, 0.3766, 0.4934, 0.4776],
])(
  '%s %#: each rule gives the value worked out from the published functions',
  (_, food, C, par, per, me, le) => {
    const got = (rule: MixtureRule) => conductivity(food, C, rule);
    expect(Math.abs(got('parallel') - par)).toBeLessThan(6e-5);
    expect(Math.abs(got('perpendicular') - per)).toBeLessThan(6e-5);
    expect(Math.abs(got('maxwell-eucken') - me)).toBeLessThan(6e-5);
    expect(Math.abs(got('levy') - le)).toBeLessThan(6e-5);
  },
);

describe('two phases', () => {
  test('worked examples', () => {
    expect(levy(0.6, 0.18, 0.7)).toBeCloseTo(0.434624, 6);
    expect(maxwellEucken(0.6, 0.18, 0.3)).toBeCloseTo(0.449402, 6);
    expect(kopelman(0.6, 0.18, 0.3)).toBeCloseTo(0.459422, 6);
  });
  test.each([0, 1])('pure phase %s', (phi) => {
    const k = phi === 1 ? 0.18 : 0.6;
    expect(levy(0.6, 0.18, 1 - phi)).toBeCloseTo(k, 12);
    expect(maxwellEucken(0.6, 0.18, phi)).toBeCloseTo(k, 12);
    expect(kopelman(0.6, 0.18, phi)).toBeCloseTo(k, 12);
  });
  test('refuses what is no fraction', () => {
    expect(() => levy(0.6, 0.18, 1.1)).toThrow('volume fraction');
    expect(() => kopelman(0, 0.18, 0.1)).toThrow('kc');
  });
});

test('the default is Levy; no rule exceeds parallel, perpendicular is below all', () => {
  expect(defaultRule).toBe('levy');
  for (const food of [breast, skin, mousse])
    for (const C of [0, 20, 65, 100]) {
      const all = (['levy', 'maxwell-eucken', 'kopelman'] as const).map((rule) =>
        conductivity(food, C, rule),
      );
      expect(conductivity(food, C)).toBe(conductivity(food, C, 'levy'));
      for (const k of all) {
        expect(k).toBeLessThanOrEqual(conductivity(food, C, 'parallel'));
        expect(k).toBeGreaterThanOrEqual(conductivity(food, C, 'perpendicular'));
      }
    }
});

test('the default agrees with white chicken meat as measured at 20 °C (Sweat, Haugh & Stadelman 1973: 0.488) within 1 %', () => {
  expect(Math.abs(conductivity(breast, 20) / 0.488 - 1)).toBeLessThan(0.01);
});

test('water alone has the conductivity of water', () => {
  const water = { water: 1, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 };
  for (const rule of ['parallel', 'perpendicular', 'levy', 'kopelman', 'maxwell-eucken'] as const)
    expect(conductivity(water, 20, rule)).toBeCloseTo(0.603659, 6);
});
