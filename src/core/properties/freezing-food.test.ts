import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { OutOfRange } from '../errors.ts';
import type { Composition } from './food-components.ts';
import { apparentHeatSchwartzberg, enthalpy, frozenHeat, iceFraction } from './freezing.ts';
import { canFreeze, firstIce, freezingFood } from './freezing-food.ts';
import { freezingFoods } from './freezing-points.ts';
import { conductivity, mixtureRules } from './mixture-conductivity.ts';

const lamb = freezingFoods['lamb, lean'];

const foods = fc
  .record({
    water: fc.double({ min: 0.3, max: 0.9, noNaN: true }),
    protein: fc.double({ min: 0, max: 0.9, noNaN: true }),
    ash: fc.double({ min: 0, max: 0.3, noNaN: true }),
    freezing: fc.double({ min: -6, max: -0.3, noNaN: true }),
  })
  .map(({ water, protein, ash, freezing }) => {
    const x = { water, protein: (1 - water) * protein * 0.7, ash: (1 - water) * ash * 0.3 };
    const composition: Composition = {
      ...x,
      fat: 1 - x.water - x.protein - x.ash,
      carbohydrate: 0,
      fibre: 0,
    };
    return { composition, freezing };
  });

describe('firstIce', () => {
  test('lies within 1 K of the handbook’s meats, fish and white of egg, as remembered; yolk freezes 3 K higher', () => {
    const { 'egg yolk': yolk, 'whole egg': egg, ...others } = freezingFoods;
    for (const food of Object.values(others))
      expect(Math.abs(firstIce(food.composition) - food.freezing)).toBeLessThan(1);
    for (const food of [yolk, egg]) expect(firstIce(food.composition)).toBeLessThan(food.freezing);
    expect(Math.abs(firstIce(yolk.composition) - yolk.freezing)).toBeGreaterThan(2.5);
  });
  test('falls with salt, by more than with protein', () => {
    const plain = { water: 0.72, protein: 0.2, fat: 0.07, carbohydrate: 0, fibre: 0, ash: 0.01 };
    const salted = { ...plain, fat: 0.05, ash: 0.03 };
    const lean = { ...plain, fat: 0.05, protein: 0.22 };
    expect(firstIce(salted)).toBeLessThan(firstIce(lean) - 1);
    expect(firstIce(lean)).toBeLessThan(firstIce(plain));
  });
  test('of something without water is refused', () => {
    expect(() => firstIce({ water: 0, protein: 0, fat: 1, carbohydrate: 0, fibre: 0, ash: 0 })).toThrow(
      OutOfRange,
    );
  });
});

describe('freezingFood', () => {
  test('its ice is that of the freezing-point curve', () => {
    const food = freezingFood(lamb.composition, lamb.freezing);
    for (const C of [-2, -3, -10, -40])
      expect(food.ice(C)).toBeCloseTo(iceFraction(lamb.composition, lamb.freezing, C), 12);
    expect(food.ice(lamb.freezing)).toBe(0);
    expect(food.ice(20)).toBe(0);
  });
  test('its apparent heat is Schwartzberg’s with the frozen heat of the same temperature', () => {
    const food = freezingFood(lamb.composition, lamb.freezing);
    for (const C of [-2, -5, -30])
      expect(food.apparentHeat(C)).toBeCloseTo(
        apparentHeatSchwartzberg(lamb.composition, lamb.freezing, C, frozenHeat(lamb.composition, C)),
        6,
      );
  });
  test('heat between two temperatures is the integral of the apparent heat', () => {
    fc.assert(
      fc.property(foods, fc.double({ min: 0.1, max: 1, noNaN: true }), ({ composition, freezing }, part) => {
        const food = freezingFood(composition, freezing);
        const C1 = freezing;
        const C0 = freezing - part * (40 + freezing);
        // The peak is even in 1/t: strips of even width there.
        const strips = 4000;
        let sum = 0;
        for (let i = 0; i < strips; i++) {
          const at = (q: number) => 1 / (1 / C0 + ((1 / C1 - 1 / C0) * q) / strips);
          const a = at(i);
          const b = at(i + 1);
          sum +=
            ((b - a) / 6) *
            (food.apparentHeat(a) + 4 * food.apparentHeat((a + b) / 2) + food.apparentHeat(b));
        }
        expect(Math.abs(sum / food.heatBetween(C0, C1) - 1)).toBeLessThan(1e-6);
      }),
      { numRuns: 30 },
    );
  });
  test('from −20 to 10 °C it takes as much as by Chen, within 4 % for the handbook’s beef and lamb', () => {
    // Chen rounds the frozen heat to 1550 + 1260·x_s, which is up to a sixth less than the components’.
    for (const { composition, freezing } of [freezingFoods['beef carcass'], lamb]) {
      const chen = enthalpy(composition, freezing, freezing) - enthalpy(composition, freezing, -20);
      const ours = freezingFood(composition, freezing).heatBetween(-20, freezing);
      expect(Math.abs(ours / chen - 1)).toBeLessThan(0.04);
    }
  });
  test('conducts at the first ice as unfrozen, and better with ice', () => {
    fc.assert(
      fc.property(foods, ({ composition, freezing }) => {
        for (const rule of mixtureRules) {
          const by = freezingFood(composition, freezing, rule).conductivity;
          expect(by(freezing)).toBeCloseTo(conductivity(composition, freezing, rule), 9);
          // Nor is there a jump just below it.
          expect(Math.abs(by(freezing - 1e-6) / by(freezing) - 1)).toBeLessThan(1e-4);
        }
        const food = freezingFood(composition, freezing);
        let before = food.conductivity(freezing);
        // Far below, fat and protein may conduct a little worse again.
        for (const below of [0.2, 0.5, 1, 3]) {
          const k = food.conductivity(freezing - below);
          expect(k).toBeGreaterThan(before);
          before = k;
        }
      }),
    );
  });
  test('refuses a food whose protein binds all its water, and a first ice out of range', () => {
    const dry = { water: 0.2, protein: 0.6, fat: 0.2, carbohydrate: 0, fibre: 0, ash: 0 };
    expect(canFreeze(dry, -2)).toBe(false);
    expect(() => freezingFood(dry, -2)).toThrow(OutOfRange);
    expect(() => freezingFood(lamb.composition, -12)).toThrow(OutOfRange);
  });
});
