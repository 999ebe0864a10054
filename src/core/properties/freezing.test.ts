import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { breast, measuredFrozenChicken, printedFrozenHeats } from '../../../examples/freezing-problems.ts';
import { kept } from '../../../examples/kept.ts';
import { OutOfRange } from '../errors.ts';
import { density } from './food-components.ts';
import {
  apparentHeatChen,
  apparentHeatSchwartzberg,
  boundWater,
  enthalpy,
  frozenHeat,
  heatOfMelting,
  iceFraction,
  iceFractionChen,
  iceFractionTchigeov,
  solidsMolarMass,
} from './freezing.ts';
import { frozenConductivity, frozenDensity } from './freezing-mixture.ts';
import { freezingFoodNamed, freezingFoods } from './freezing-points.ts';
import { conductivity } from './mixture-conductivity.ts';

/** Worked out apart from the engine; with the handbook's table, whose rows are from memory. */
const python = kept('freezing-equations');
const chicken = freezingFoods.chicken.composition;
const beef = freezingFoods['beef carcass'].composition;
const pork = freezingFoods['pork shoulder, lean'].composition;
const temperature = fc.double({ min: -40, max: -3, noNaN: true });

describe('freezingFoods', () => {
  test('each heat of freezing is its water’s, within 1 kJ/kg', () => {
    for (const [name, f] of Object.entries(freezingFoods))
      expect(Math.abs((f.composition.water * heatOfMelting) / 1000 - f.latent), name).toBeLessThan(1);
  });
  test('fractions sum to one as printed, within a per cent', () => {
    for (const [name, { composition }] of Object.entries(freezingFoods))
      expect(Math.abs(Object.values(composition).reduce((a, b) => a + b, 0) - 1), name).toBeLessThan(0.01);
  });
  test('an unknown food is refused, naming the known', () => {
    expect(() => freezingFoodNamed('toString')).toThrow(/one of chicken/);
  });
});

describe('ice', () => {
  test('iceFraction of chicken at −5 and −20 °C', () => {
    expect(iceFraction(chicken, -2.8, -5)).toBeCloseTo(python('chicken ice -5'), 6);
    expect(iceFraction(chicken, -2.8, -20)).toBeCloseTo(python('chicken ice -20'), 6);
  });
  // The handbook's beef: 0.52 printed (from memory).
  test('iceFractionTchigeov of beef at −20 °C and pork at −40 °C', () => {
    const { x, extrapolated } = iceFractionTchigeov({ ...beef, water: 0.58 }, -1.7, -20);
    expect(Math.abs(x - python('beef ice -20 tchigeov'))).toBeLessThan(1e-6);
    expect(extrapolated).toBe(false);
    expect(Math.round(x * 100)).toBe(52);
    const outside = iceFractionTchigeov(pork, -2.2, -40);
    expect(Math.abs(outside.x / python('pork ice -40') - 1)).toBeLessThan(1e-5);
    expect(outside.extrapolated).toBe(true);
  });
  test('iceFractionChen is iceFraction with the food’s own molar mass, less with heavier solids', () => {
    fc.assert(
      fc.property(temperature, (C) => {
        expect(Math.abs(iceFractionChen(chicken, -2.8, C) - iceFraction(chicken, -2.8, C))).toBeLessThan(
          1e-12,
        );
      }),
    );
    const own = solidsMolarMass(chicken, -2.8);
    expect(iceFractionChen(chicken, -2.8, -20, 2 * own)).toBeCloseTo(iceFraction(chicken, -2.8, -20) / 2, 12);
    expect(() => iceFractionChen(chicken, -2.8, -20, own / 4)).toThrow(/no more ice than water/);
  });
  test('none at the first ice and above; more the colder, never more than can freeze', () => {
    for (const C of [-2.8, -1, 20]) {
      expect(iceFraction(chicken, -2.8, C)).toBe(0);
      expect(iceFractionChen(chicken, -2.8, C)).toBe(0);
      expect(iceFractionTchigeov(chicken, -2.8, C).x).toBe(0);
    }
    fc.assert(
      fc.property(temperature, (C) => {
        expect(iceFraction(chicken, -2.8, C)).toBeLessThan(chicken.water - boundWater(chicken));
        expect(iceFraction(chicken, -2.8, C - 1)).toBeGreaterThan(iceFraction(chicken, -2.8, C));
        expect(iceFractionTchigeov(beef, -1.7, C).x).toBeLessThan(beef.water);
      }),
    );
  });
  test('refuses what no author covers', () => {
    expect(() => iceFraction(chicken, -2.8, -46)).toThrow(/temperature/);
    expect(() => iceFraction(chicken, 0, -20)).toThrow(/first ice: found 0 °C/);
    expect(() => iceFraction({ ...chicken, water: 0.05 }, -2.8, -20)).toThrow(/protein binds/);
    expect(() => iceFractionTchigeov(chicken, -12, -20)).toThrow(OutOfRange);
  });
});

describe('heat', () => {
  // The handbook's beef carcass, 150 kg from 10 to −20 °C: 34 740 kJ printed (from memory).
  test('enthalpy of beef at −20, at its first ice, at 10 °C', () => {
    expect(Math.abs(enthalpy(beef, -1.7, -20) / 1000 - python('beef heat -20'))).toBeLessThan(1e-4);
    expect(Math.abs(enthalpy(beef, -1.7, -1.7) / 1000 - python('beef heat -1.7'))).toBeLessThan(1e-4);
    expect(Math.abs(enthalpy(beef, -1.7, 10) / 1000 - python('beef heat 10'))).toBeLessThan(1e-4);
    const removed = 150 * (enthalpy(beef, -1.7, 10) - enthalpy(beef, -1.7, -20));
    expect(Math.abs(removed / 1000 - python('beef 150 kg 10 to -20'))).toBeLessThan(1);
  });
  test('enthalpy and apparent heats of chicken', () => {
    expect(Math.abs(enthalpy(chicken, -2.8, -20) / 1000 - python('chicken heat -20'))).toBeLessThan(1e-4);
    expect(Math.abs(enthalpy(chicken, -2.8, -2.8) / 1000 - python('chicken heat -2.8'))).toBeLessThan(1e-4);
    expect(Math.abs(enthalpy(chicken, -2.8, 20) / 1000 - python('chicken heat 20'))).toBeLessThan(1e-4);
    expect(Math.abs(apparentHeatChen(chicken, -2.8, -5) / 1000 - python('chicken apparent -5'))).toBeLessThan(
      1e-4,
    );
    expect(
      Math.abs(apparentHeatChen(chicken, -2.8, -20) / 1000 - python('chicken apparent -20')),
    ).toBeLessThan(1e-4);
  });
  test('apparentHeatChen is the slope of enthalpy on both sides of the first ice', () => {
    fc.assert(
      fc.property(fc.double({ min: -39, max: 60, noNaN: true }), (C) => {
        fc.pre(Math.abs(C + 2.8) > 0.01);
        const slope = (enthalpy(chicken, -2.8, C + 1e-4) - enthalpy(chicken, -2.8, C - 1e-4)) / 2e-4;
        expect(Math.abs(slope / apparentHeatChen(chicken, -2.8, C) - 1)).toBeLessThan(1e-4);
      }),
    );
  });
  test('enthalpy is nothing at −40 °C and does not jump at the first ice', () => {
    expect(enthalpy(chicken, -2.8, -40)).toBe(0);
    expect(enthalpy(chicken, -2.8, -2.8 + 1e-9)).toBeCloseTo(enthalpy(chicken, -2.8, -2.8), 3);
    expect(() => enthalpy(chicken, -2.8, -41)).toThrow(OutOfRange);
  });
  test('apparentHeatSchwartzberg is Chen’s with Chen’s heat of the frozen food', () => {
    const c = 1550 + 1260 * (1 - chicken.water);
    for (const C of [-3, -5, -20, -40])
      expect(apparentHeatSchwartzberg(chicken, -2.8, C, c)).toBeCloseTo(
        apparentHeatChen(chicken, -2.8, C),
        6,
      );
    expect(() => apparentHeatSchwartzberg(chicken, -2.8, 0)).toThrow(/temperature/);
  });
  test('frozenHeat: pure ice as tabulated, meats within 6 % of the handbook’s', () => {
    const ice = { water: 1, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 };
    expect(frozenHeat(ice, -20)).toBeCloseTo(1940.762, 3);
    for (const [name, kJ] of Object.entries(printedFrozenHeats)) {
      const ours = frozenHeat(freezingFoodNamed(name).composition, -40) / 1000;
      expect(Math.abs(ours / kJ - 1), name).toBeLessThan(0.06);
    }
  });
});

describe('frozenDensity and frozenConductivity', () => {
  // The handbook's pork shoulder at −40 °C, fractions as printed (from memory) without making them sum to one.
  test('pork at −40 °C', () => {
    expect(
      Math.abs(frozenDensity(pork, python('pork ice -40'), -40) / python('pork density -40') - 1),
    ).toBeLessThan(1e-4);
    expect(
      Math.abs(
        frozenConductivity(pork, python('pork ice -40'), -40, 'parallel') / python('pork parallel -40') - 1,
      ),
    ).toBeLessThan(1e-4);
    expect(
      Math.abs(
        frozenConductivity(pork, python('pork ice -40'), -40, 'perpendicular') /
          python('pork perpendicular -40') -
          1,
      ),
    ).toBeLessThan(1e-4);
  });
  test.each([-10, -20, -30, -40])('Levy on white chicken at %d °C within 3 % of what was measured', (C) => {
    const ours = frozenConductivity(breast, iceFraction(breast, -2, C), C);
    expect(Math.abs(ours / measuredFrozenChicken(C) - 1)).toBeLessThan(0.03);
  });
  test('Levy lies between the bounds; without ice the unfrozen food is left', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), (share) => {
        const k = (rule: 'levy' | 'parallel' | 'perpendicular') =>
          frozenConductivity(pork, share * pork.water, -20, rule);
        expect(k('levy')).toBeGreaterThan(k('perpendicular'));
        expect(k('levy')).toBeLessThan(k('parallel'));
      }),
    );
    expect(frozenDensity(pork, 0, -1)).toBeCloseTo(density(pork, -1), 9);
    expect(frozenConductivity(pork, 0, -1, 'parallel')).toBeCloseTo(conductivity(pork, -1, 'parallel'), 12);
  });
  test('pure ice is ice', () => {
    const ice = { water: 1, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 };
    expect(frozenConductivity(ice, 1, -20)).toBeCloseTo(2.385194, 6);
  });
  test('refuses more ice than water, and thaw', () => {
    expect(() => frozenDensity(pork, 0.8, -20)).toThrow(/ice: found 0.8/);
    expect(() => frozenConductivity(pork, 0.1, 5)).toThrow(/temperature/);
    expect(() => frozenDensity({ ...pork, fat: Number.NaN }, 0.5, -20)).toThrow(/fat: found NaN/);
    expect(() => frozenHeat({ ...pork, protein: 2 }, -20)).toThrow(/protein/);
  });
});
