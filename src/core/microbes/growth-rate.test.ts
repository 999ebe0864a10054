import { describe, expect, test } from 'vitest';
import { near, set } from '../../../test/growth-sets.ts';
import { type GrowthSet, growthOrganisms } from '../properties/organisms-growth.ts';
import {
  cardinalPH,
  cardinalTemperature,
  cardinalWaterActivity,
  fullRangeSquareRootRate,
} from './cardinal.ts';
import { foodFactor, formCorners, growthRateAt, setFactor } from './growth-rate.ts';

const rc = set('clostridium-perfringens', 'roasted-chicken');
const bb = set('clostridium-perfringens', 'braised-beef');
const cured = set('clostridium-perfringens', 'cured-pork');
const deli = set('listeria-monocytogenes', 'deli-meat');
const everySet = growthOrganisms.flatMap((o) => o.sets);
const hourly = (s: GrowthSet, C: number) => growthRateAt(s.temperature, C) * 3600;

describe('rates by temperature', () => {
  test('Clostridium perfringens in roasted chicken', () => {
    const C = [10, 15, 20, 25, 30, 35, 40, 45, 46.4, 48, 50, 51];
    const mu = [0.0081, 0.2149, 0.6959, 1.4405, 2.4292, 3.6211, 4.9146, 5.9657, 6.06, 5.86, 4.4068, 2.1836];
    near(
      C.map((t, i) => [hourly(rc, t), mu[i]!]),
      0.002,
      1e-4,
    );
  });
  test('Clostridium perfringens in braised beef', () => {
    const C = [12, 20, 30, 40, 43.5, 48];
    const mu = [0.0271, 0.8295, 3.0274, 5.3463, 5.64, 4.8581];
    near(
      C.map((t, i) => [hourly(bb, t), mu[i]!]),
      0.002,
      1e-4,
    );
  });
  test('Clostridium perfringens in cured pork', () => {
    const C = [15, 20, 25, 30, 35, 40, 45, 48, 50];
    const mu = [0.00547, 0.10267, 0.32136, 0.66143, 1.12139, 1.68435, 2.16846, 1.89625, 0.706];
    near(
      C.map((t, i) => [hourly(cured, t), mu[i]!]),
      0.001,
      5e-6,
    );
  });
  test('Listeria monocytogenes in cooked meats: log10 a day and doubling time', () => {
    const C = [2, 4, 5, 7, 8, 10];
    const daily = [0.0747, 0.1981, 0.282, 0.4941, 0.6222, 0.9229];
    const doubling = [96.8, 36.5, 25.6, 14.6, 11.6, 7.8];
    near(
      C.map((t, i) => [(hourly(deli, t) * 24) / Math.LN10, daily[i]!]),
      0.002,
    );
    near(
      C.map((t, i) => [Math.LN2 / hourly(deli, t), doubling[i]!]),
      0.002,
      0.05,
    );
  });
  test('Listeria monocytogenes and Salmonella as a fraction of the best', () => {
    const l = { min: -1.72, opt: 37, max: 45.5 };
    const lC = [2, 4, 5, 8, 10, 20, 37, 43];
    const lg = [0.01427, 0.03353, 0.04612, 0.09541, 0.13755, 0.44488, 1, 0.64952];
    near(
      lC.map((t, i) => [cardinalTemperature(t, l), lg[i]!]),
      0.001,
    );
    const s = { min: 5.2, opt: 38, max: 46.2 };
    const sC = [8, 10, 15, 20, 30, 43];
    const sg = [0.012, 0.03492, 0.14138, 0.31013, 0.75912, 0.74561];
    near(
      sC.map((t, i) => [cardinalTemperature(t, s), sg[i]!]),
      0.002,
    );
  });
  test('Salmonella in chicken: doubles in 20 min at 37 °C, in 17 h at 8 °C', () => {
    // 0.0019 · 33.65² · (1 − e^(0.29 · −11.01)) by hand.
    expect(hourly(set('salmonella', 'chicken'), 37)).toBeCloseTo(2.0631, 3);
    near([[(Math.LN2 / hourly(set('salmonella', 'chicken'), 37)) * 60, 20.2]], 0.01);
    near([[Math.LN2 / hourly(set('salmonella', 'chicken'), 8), 16.9]], 0.01);
  });
  test('nothing grows at or outside the lowest and the highest temperature, of any set', () => {
    for (const { temperature } of everySet) {
      const corners = formCorners(temperature);
      for (const C of [corners[0]! - 30, corners[0]!, corners.at(-1)!, corners.at(-1)! + 40])
        expect(growthRateAt(temperature, C)).toBe(0);
      expect(growthRateAt(temperature, (corners[0]! + corners.at(-1)!) / 2)).toBeGreaterThan(0);
    }
  });
  test('a joined form has no step at its joint', () => {
    for (const { temperature } of everySet)
      for (const corner of formCorners(temperature))
        expect(growthRateAt(temperature, corner - 1e-7) * 3600).toBeCloseTo(
          growthRateAt(temperature, corner + 1e-7) * 3600,
          4,
        );
  });
  test('colder never grows more below the best temperature', () => {
    for (const { temperature } of everySet) {
      let best = formCorners(temperature)[0]!;
      for (let C = best; C < formCorners(temperature).at(-1)!; C += 0.1)
        if (growthRateAt(temperature, C) > growthRateAt(temperature, best)) best = C;
      for (let C = formCorners(temperature)[0]!; C < best; C += 0.1)
        expect(growthRateAt(temperature, C)).toBeLessThanOrEqual(growthRateAt(temperature, C + 0.1) + 1e-15);
      expect(best).toBeGreaterThan(35);
    }
  });
  test('the two square-root forms are kept apart: the bracket is squared in one of them', () => {
    expect(fullRangeSquareRootRate(30, 0.02, 0.3, 5, 45)).toBeCloseTo(
      (0.02 * 25 * (1 - Math.exp(-4.5))) ** 2,
      12,
    );
    expect(fullRangeSquareRootRate(45, 0.02, 0.3, 5, 45)).toBe(0);
  });
});

describe('pH and water activity', () => {
  test('Listeria monocytogenes', () => {
    const p = { min: 4.71, opt: 7.1, max: 9.61 };
    near(
      [5, 5.6, 6, 6.5, 7.1, 8].map((v, i) => [
        cardinalPH(v, p),
        [0.23263, 0.61333, 0.79376, 0.93926, 1, 0.86736][i]!,
      ]),
      0.001,
    );
    const a = { min: 0.913, opt: 0.997, max: 1 };
    near(
      [0.92, 0.94, 0.96, 0.97, 0.98, 0.99, 0.997].map((v, i) => [
        cardinalWaterActivity(v, a),
        [0.00746, 0.11084, 0.33522, 0.49209, 0.67732, 0.8845, 1][i]!,
      ]),
      0.002,
    );
    expect([cardinalPH(4.71, p), cardinalPH(9.7, p), cardinalWaterActivity(0.913, a)]).toEqual([0, 0, 0]);
    expect(cardinalWaterActivity(1, a)).toBe(1);
  });
  test('leave the published rate as it is in the food it was published for', () => {
    for (const { effect } of everySet)
      if (effect !== undefined)
        expect(foodFactor(effect, effect.food.pH, effect.food.waterActivity)).toBeCloseTo(1, 12);
    expect(setFactor(rc, 5.8, 0.95)).toBe(1);
  });
});
