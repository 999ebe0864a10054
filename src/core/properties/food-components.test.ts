import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Component,
  type Composition,
  componentConductivity,
  componentDensity,
  componentHeat,
  components,
  density,
  normalised,
  phases,
  specificHeat,
} from './food-components.ts';

// Values of the published functions (Choi & Okos 1986 as reprinted by ASHRAE), worked out apart from this program.
const published: [number, Component, number | undefined, number | undefined, number | undefined][] = [
  [-20, 'water', 0.533159, 995.614, undefined],
  [-20, 'protein', 0.153807, 1340.268, 1.983497],
  [-20, 'fat', 0.18616, 933.941, 1.952814],
  [-20, 'ash', 0.300435, undefined, undefined],
  [-20, 'ice', 2.385194, undefined, undefined],
  [5, 'water', 0.579735, 997.102, 4.175883],
  [5, 'protein', 0.184721, 1327.308, 2.014212],
  [5, 'fat', 0.179325, 923.502, 1.991446],
  [5, 'ash', 0.336553, undefined, 1.10196],
  [20, 'water', 0.603659, 995.74, 4.176572],
  [20, 'protein', 0.201639, 1319.532, 2.031853],
  [20, 'fat', 0.175118, 917.239, 2.011746],
  [20, 'carbohydrate', undefined, undefined, 1.585674],
  [65, 'water', 0.65733, 981.509, 4.193418],
  [65, 'protein', 0.245054, 1296.204, 2.081231],
  [65, 'fat', 0.162018, 898.448, 2.059681],
  [65, 'ash', 0.40841, undefined, undefined],
  [100, 'water', 0.680304, 959.92, 4.221845],
  [100, 'protein', 0.271212, 1278.06, 2.115961],
  [100, 'fat', 0.151331, 883.833, 2.083522],
];

describe('components', () => {
  test.each(published)('at %s °C: %s', (C, name, k, rho, cp) => {
    if (k !== undefined) expect(componentConductivity(name, C)).toBeCloseTo(k, 6);
    if (rho !== undefined) expect(Math.abs(componentDensity(name, C) - rho)).toBeLessThan(1e-3);
    if (cp !== undefined) expect(componentHeat(name, C) / 1000).toBeCloseTo(cp, 5);
  });

  test('conductivity of fat keeps its right slope: nearly nothing at 65 °C would be the known misprint', () => {
    expect(componentConductivity('fat', 65)).toBeCloseTo(0.162018, 6);
    expect(componentConductivity('fat', 65)).toBeGreaterThan(0.15);
  });

  test('beyond −40 to 150 °C the value at the nearer end is used', () => {
    for (const name of Object.keys(components) as Component[]) {
      expect(componentConductivity(name, 400)).toBe(componentConductivity(name, 150));
      expect(componentHeat(name, -90)).toBe(componentHeat(name, -40));
    }
  });
});

const none = { carbohydrate: 0, fibre: 0 };
const foods: Record<string, Composition> = {
  breast: normalised({ ...none, water: 0.7426, protein: 0.22054, fat: 0.02568, ash: 0.01117 }),
  skin: normalised({ ...none, water: 0.54052, protein: 0.13289, fat: 0.3225, ash: 0.00409 }),
  mousse: normalised({
    water: 0.67833,
    protein: 0.12884,
    fat: 0.16253,
    carbohydrate: 0.01204,
    fibre: 0,
    ash: 0.01826,
  }),
};

describe('mixtures', () => {
  test.each([
    ['breast', 5, 1060.06, 3.6087],
    ['breast', 65, 1041.7, 3.6393],
    ['skin', 5, 1006.932, 3.17158],
    ['skin', 65, 986.31, 3.2124],
    ['mousse', 5, 1032.59, 3.4547],
    ['mousse', 65, 1013.553, 3.48925],
  ])('%s at %s °C: density and specific heat', (name, C, rho, cp) => {
    const food = foods[name] as Composition;
    expect(Math.abs(density(food, C) - rho)).toBeLessThan(0.01);
    expect(Math.abs(specificHeat(food, C) / 1000 - cp)).toBeLessThan(1e-4);
  });

  test('the handbook’s lamb at 5 °C has 3.59 kJ/(kg K), and 150 kg of it give up 5386 kJ over 10 K', () => {
    const lamb = { ...none, water: 0.7342, protein: 0.2029, fat: 0.0525, ash: 0.0106 };
    expect(specificHeat(lamb, 5)).toBeCloseTo(3590.848, 2);
    expect((150 * 10 * specificHeat(lamb, 5)) / 1000).toBeCloseTo(5386.3, 0);
  });

  test('the handbook’s pork shoulder with ice at −40 °C: density', () => {
    const ice = 0.671537;
    const parts: [Component, number][] = [
      ['water', 0.7263 - ice],
      ['ice', ice],
      ['protein', 0.1955],
      ['fat', 0.0714],
      ['ash', 0.0102],
    ];
    const volume = parts.reduce((sum, [name, x]) => sum + x / componentDensity(name, -40), 0);
    expect(1 / volume).toBeCloseTo(991.846, 1);
    const phi = parts.map(([name, x]) => x / componentDensity(name, -40) / volume);
    const k = parts.map(([name]) => componentConductivity(name, -40));
    expect(phi.reduce((s, p, i) => s + p * (k[i] as number), 0)).toBeCloseTo(1.96169, 4);
    expect(1 / phi.reduce((s, p, i) => s + p / (k[i] as number), 0)).toBeCloseTo(0.518662, 4);
  });

  test('volume fractions sum to one', () => {
    for (const food of Object.values(foods))
      expect(phases(food, 40).reduce((sum, p) => sum + p.phi, 0)).toBeCloseTo(1, 12);
  });
});

describe('normalised', () => {
  const whole = { water: 0.7, protein: 0.2, fat: 0.1, carbohydrate: 0, fibre: 0, ash: 0 };
  test.each([
    [{ ...whole, ash: 0.006 }, 'sum to 1.006'],
    [{ ...whole, water: 0.694 }, 'sum to 0.994'],
    [{ ...whole, fat: -0.1 }, '.fat'],
    [{ ...whole, fat: 1.1 }, '.fat'],
    [{ ...whole, water: Number.NaN }, '.water'],
  ])('refuses %o', (food, why) => {
    expect(() => normalised(food)).toThrow(why);
  });
  test('gives a sum of one for what is within 0.005 of it', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.005, max: 0.005, noNaN: true }), (d) => {
        const food = normalised({ ...whole, water: 0.7 + d });
        expect(Object.values(food).reduce((s: number, x: number) => s + x, 0)).toBeCloseTo(1, 12);
      }),
    );
  });
});
