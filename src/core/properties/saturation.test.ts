import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { OutOfRange } from '../errors.ts';
import {
  boilingPointAtHeight,
  boilingWaterDensity,
  icePressure,
  latentHeat,
  pressureAtHeight,
  saturationPressure,
  saturationRange,
  saturationTemperature,
  steamDensity,
} from './saturation.ts';

describe('saturationPressure and saturationTemperature', () => {
  // The release's verification values, from memory: R7-97 tables 35 and 36.
  test.each([
    [300, 3.53658941e-3],
    [500, 2.63889776],
    [600, 12.3443146],
  ])('p(%d K) to nine figures', (K, MPa) => {
    expect(Math.abs(saturationPressure(K - 273.15) / 1e6 / MPa - 1)).toBeLessThan(2e-9);
  });
  test.each([
    [0.1, 372.755919],
    [1, 453.035632],
    [10, 584.149488],
  ])('T(%d MPa) to nine figures', (MPa, K) => {
    expect(Math.abs(saturationTemperature(MPa * 1e6) + 273.15 - K)).toBeLessThan(6e-7);
  });
  test('there and back', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 373.9, noNaN: true }), (C) => {
        expect(Math.abs(saturationTemperature(saturationPressure(C)) - C)).toBeLessThan(1e-6);
      }),
    );
  });
  // Worked out from the formulation for the temperatures of a kitchen.
  test.each([
    [5, 872.6],
    [20, 2339.2],
    [50, 12351.3],
    [65, 25041.1],
    [75, 38595.4],
    [80, 47414.7],
    [90, 70182.4],
    [100, 101418],
  ])('p(%d °C) = %d Pa', (C, Pa) => {
    expect(Math.abs(saturationPressure(C) - Pa)).toBeLessThan(C === 100 ? 0.6 : 0.06);
  });
  test('refuses what lies off the line, naming it', () => {
    for (const C of [-0.1, 374, Number.NaN]) expect(() => saturationPressure(C)).toThrow(OutOfRange);
    for (const Pa of [600, 23e6, Number.NaN]) expect(() => saturationTemperature(Pa)).toThrow(OutOfRange);
    expect(() => saturationPressure(-5, 'surface')).toThrow(/surface: found -5 °C, allowed 0 to 373.946 °C/);
  });
  test('its two ends agree', () => {
    expect(saturationPressure(0)).toBeCloseTo(saturationRange.lowPa, 2);
    expect(saturationPressure(saturationRange.highC) / saturationRange.highPa).toBeCloseTo(1, 5);
  });
});

describe('icePressure', () => {
  test('release R14-08 at 230 K, from memory', () => {
    expect(icePressure(230 - 273.15)).toBeCloseTo(8.94735, 5);
  });
  test('meets the water line at the triple point', () => {
    expect(icePressure(0.01) / saturationPressure(0.01)).toBeCloseTo(1, 4);
  });
  test('refuses what is not ice', () => {
    expect(() => icePressure(1)).toThrow(OutOfRange);
    expect(() => icePressure(-120)).toThrow(OutOfRange);
  });
});

describe('densities and latent heat', () => {
  // The release SR1-86 at 373.1243 K, from memory.
  test('boiling water and steam', () => {
    expect(Math.abs(boilingWaterDensity(99.9743) - 958.365)).toBeLessThan(6e-4);
    expect(Math.abs(steamDensity(99.9743) - 0.597586)).toBeLessThan(6e-7);
  });
  // Steam tables, from memory.
  test.each([
    [0, 2500.9],
    [20, 2453.5],
    [40, 2406],
    [60, 2357.7],
    [70, 2333],
    [80, 2308],
    [90, 2282.5],
    [100, 2256.4],
  ])('latent heat at %d °C = %d kJ/kg', (C, kJ) => {
    expect(Math.abs(latentHeat(C) / 1000 - kJ)).toBeLessThan(C === 0 ? 1.1 : 0.3);
  });
  test('steam for a kilogram of filling, and a kilogram dried away', () => {
    // 1 kg at 3490 J/(kg K) from 5 to 70 °C takes 0.06301 kWh, 0.1005 kg of steam; a kilogram evaporated 0.6268 kWh.
    expect((3490 * 65) / latentHeat(100)).toBeCloseTo(0.10054, 4);
    expect(latentHeat(100) / 3.6e6).toBeCloseTo(0.6268, 4);
  });
  test('latent heat falls all the way and refuses the critical point', () => {
    for (let C = 5; C <= 370; C += 5) expect(latentHeat(C)).toBeLessThan(latentHeat(C - 5));
    expect(() => latentHeat(373)).toThrow(OutOfRange);
  });
});

describe('pressureAtHeight and boilingPointAtHeight', () => {
  // The standard's equation and the formulation, worked out for whole heights.
  test.each([
    [0, 101.325, 99.974],
    [250, 98.358, 99.144],
    [500, 95.461, 98.312],
    [750, 92.634, 97.481],
    [1000, 89.875, 96.649],
    [1500, 84.556, 94.983],
    [2000, 79.495, 93.315],
    [2500, 74.683, 91.645],
    [3000, 70.109, 89.972],
    [4000, 61.64, 86.619],
  ])('%d m: %d kPa, water boils at %d °C', (m, kPa, C) => {
    expect(Math.abs(pressureAtHeight(m) / 1000 - kPa)).toBeLessThan(6e-4);
    expect(Math.abs(boilingPointAtHeight(m) - C)).toBeLessThan(0.002);
  });
  test('refuses heights without a kitchen', () => {
    for (const m of [-600, 12000, Number.NaN]) expect(() => pressureAtHeight(m)).toThrow(OutOfRange);
  });
});
