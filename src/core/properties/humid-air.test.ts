import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Contradiction, OutOfRange } from '../errors.ts';
import {
  checkAirPressure,
  checkVapour,
  dewPoint,
  humidityRatio,
  vapourPressure,
  wetBulb,
} from './humid-air.ts';
import { icePressure, pressureAtHeight, saturationPressure } from './saturation.ts';

const P = 101325;

describe('humidityRatio, vapourPressure, dewPoint', () => {
  test('humidityRatio is Dalton by hand', () => {
    expect(humidityRatio(20265, P)).toBeCloseTo(0.62198 / 4, 12);
    expect(humidityRatio(0, P)).toBe(0);
  });
  test('dewPoint undoes vapourPressure', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 250, noNaN: true }), (C) => {
        expect(Math.abs(dewPoint(vapourPressure(C, 1)) - C)).toBeLessThan(1e-6);
      }),
    );
  });
  test('below freezing the air is held to ice', () => {
    expect(vapourPressure(-20, 1)).toBe(icePressure(-20));
  });
  test('refuses frost, more vapour than air, and humidity above one', () => {
    expect(() => dewPoint(500)).toThrow(/frost/);
    expect(() => humidityRatio(P, P)).toThrow(OutOfRange);
    expect(() => vapourPressure(20, 1.01)).toThrow(OutOfRange);
    expect(() => checkAirPressure(1013)).toThrow(/pressure: found 1013 Pa/);
    expect(() => checkVapour(-1, P)).toThrow(OutOfRange);
  });
});

describe('wetBulb', () => {
  const vapours = [1200, 5000, 12350, 31200, 47400, 70200];
  // Worked out from the published psychrometric equation; 101.325 kPa.
  test.each([
    [100, [34.31, 42.88, 54.1, 71.05, 80.4, 90.1]],
    [120, [37.5, 45.15, 55.53, 71.71, 80.78, 90.27]],
    [150, [41.56, 48.15, 57.48, 72.63, 81.34, 90.52]],
    [180, [44.97, 50.76, 59.25, 73.5, 81.86, 90.76]],
    [200, [46.97, 52.33, 60.33, 74.05, 82.19, 90.91]],
    [230, [49.64, 54.47, 61.85, 74.83, 82.67, 91.13]],
  ])('oven at %d °C within 0.1 K', (C, wet) => {
    for (const [i, vapour] of vapours.entries())
      expect(Math.abs(wetBulb(C, vapour, P) - wet[i]!)).toBeLessThan(0.1);
  });
  // Tables of moist air (the first, from memory: 17.9) and values worked out from the equation.
  test.each([
    [25, 0.5, 17.889],
    [20, 0.5, 13.784],
    [60, 0.2, 34.921],
    [80, 0.5, 64.56],
  ])('%d °C at humidity %d', (C, relative, wet) => {
    expect(Math.abs(wetBulb(C, vapourPressure(C, relative), P) - wet)).toBeLessThan(0.01);
  });
  test('saturated air is its own wet bulb; drier, higher or hotter air is not', () => {
    expect(wetBulb(60, saturationPressure(60), P)).toBeCloseTo(60, 9);
    fc.assert(
      fc.property(
        fc.double({ min: 30, max: 95, noNaN: true }),
        fc.double({ min: 0.2, max: 0.99, noNaN: true }),
        (C, phi) => {
          const wet = wetBulb(C, vapourPressure(C, phi), P);
          expect(wet).toBeLessThan(C);
          expect(wet).toBeGreaterThan(dewPoint(vapourPressure(C, phi)));
          expect(wetBulb(C + 20, vapourPressure(C, phi), P)).toBeGreaterThan(wet);
        },
      ),
    );
    expect(wetBulb(150, 12350, pressureAtHeight(2000))).toBeLessThan(wetBulb(150, 12350, P));
  });
  test('refuses air that holds more than it can, and a wet bulb of ice', () => {
    expect(() => wetBulb(20, 5000, P)).toThrow(Contradiction);
    expect(() => wetBulb(5, 0, P)).toThrow(/ice would form/);
    expect(() => wetBulb(400, 0, P)).toThrow(OutOfRange);
  });
});
