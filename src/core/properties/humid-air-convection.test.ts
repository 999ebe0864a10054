import { describe, expect, test } from 'vitest';
import { OutOfRange } from '../errors.ts';
import {
  airProperties,
  forcedConvectionOnCylinder,
  freeConvectionOnCylinder,
  radiationCoefficient,
} from './humid-air-convection.ts';

const off = (ours: number, expected: number) => Math.abs(ours / expected - 1);

describe('airProperties', () => {
  test('the table at its own temperatures, its ends, and half way', () => {
    expect(airProperties(20)).toMatchObject({ k: 0.02514, Pr: 0.7309 });
    expect(airProperties(20).nu * 1e6).toBeCloseTo(15.16, 10);
    expect(airProperties(-50).k).toBe(0.01979);
    expect(airProperties(250).Pr).toBe(0.6946);
    expect(airProperties(110).k).toBeCloseTo((0.03095 + 0.03235) / 2, 12);
  });
  test('refuses beyond the table', () => {
    for (const C of [-51, 251, Number.NaN]) expect(() => airProperties(C)).toThrow(/film of air/);
  });
});

describe('convection and radiation on a cylinder of 40 mm', () => {
  // Worked out from the published equations with another table of air.
  test.each([
    [60, 20, 6.3],
    [70, 3, 7.28],
    [20, 3, 5.21],
    [5, 180, 8.81],
  ])('free, %d in %d °C: %d within 1.5 %', (surface, air, h) => {
    expect(off(freeConvectionOnCylinder(0.04, surface, air), h)).toBeLessThan(0.015);
  });
  test.each([
    [0.5, 11.8],
    [1, 16.9],
    [2, 24.4],
    [3, 30.3],
    [5, 40.2],
    [8, 52.6],
  ])('forced, %d m/s: %d within 1.5 %', (u, h) => {
    expect(off(forcedConvectionOnCylinder(0.04, u, 20), h)).toBeLessThan(0.015);
  });
  test.each([
    [60, 20, 6.29],
    [70, 3, 6.13],
    [5, 180, 10.55],
    [60, 180, 12.69],
  ])('radiation, %d to %d °C: %d', (surface, walls, h) => {
    expect(Math.abs(radiationCoefficient(surface, walls) - h)).toBeLessThan(0.006);
  });
  test('free convection is the same up or down, and does not vanish', () => {
    expect(freeConvectionOnCylinder(0.04, 10, 30)).toBe(freeConvectionOnCylinder(0.04, 30, 10));
    expect(freeConvectionOnCylinder(0.04, 20, 20)).toBeCloseTo((0.36 * 0.02514) / 0.04, 10);
  });
  test('refuses what the correlations do not cover', () => {
    expect(() => forcedConvectionOnCylinder(0.04, 0, 20)).toThrow(
      /speed: found 0 m\/s, allowed 0.00010 m\/s or more/,
    );
    expect(() => freeConvectionOnCylinder(0, 20, 30)).toThrow(OutOfRange);
    expect(() => forcedConvectionOnCylinder(3, 1, 20)).toThrow(OutOfRange);
    expect(() => radiationCoefficient(20, 2000)).toThrow(/walls/);
    expect(() => radiationCoefficient(20, 200, 0)).toThrow(/emissivity/);
  });
});
