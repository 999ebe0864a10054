import { describe, expect, it } from 'vitest';
import {
  brineDensity,
  brineFreezing,
  brineGravity,
  salometerOfSalt,
  saltDiffusivity,
  saltOfSalometer,
  saturatedBrine,
} from './brine.ts';

describe('salometer at 60 °F', () => {
  it.each([
    [5, 1.32, 1.0095, -0.74],
    [20, 5.279, 1.0383, -3.16],
    [30, 7.919, 1.0578, -4.97],
    [40, 10.558, 1.0776, -6.97],
    [50, 13.198, 1.0977, -9.2],
    [60, 15.837, 1.1181, -11.71],
    [70, 18.477, 1.1389, -14.6],
    [80, 21.116, 1.1602, -17.94],
  ])('%f degrees', (degrees, pct, gravity, C) => {
    expect(Math.abs(saltOfSalometer(degrees) - pct)).toBeLessThan(1e-3);
    expect(salometerOfSalt(saltOfSalometer(degrees))).toBeCloseTo(degrees, 12);
    expect(Math.abs(brineGravity(pct) - gravity)).toBeLessThan(0.002);
    expect(Math.abs(brineFreezing(pct) - C)).toBeLessThan(0.05);
  });
});

describe('brine tables', () => {
  it('fall in freezing point and rise in density without a step', () => {
    for (let w = 0; w < 23.2; w += 0.05) {
      expect(brineFreezing(w + 0.05)).toBeLessThan(brineFreezing(w));
      expect(brineDensity(w + 0.05, 10)).toBeGreaterThan(brineDensity(w, 10));
    }
  });
  it('saturation', () => {
    expect(saturatedBrine(0)).toBeCloseTo(26.29, 9);
    expect(saturatedBrine(25)).toBeGreaterThan(26.45);
  });
  it('diffusivity by temperature', () => {
    expect(saltDiffusivity(5)).toBeCloseTo(2.5e-10, 18);
    expect(Math.abs(saltDiffusivity(0) - 2.051e-10)).toBeLessThan(1e-13);
    expect(Math.abs(saltDiffusivity(20) - 4.347e-10)).toBeLessThan(1e-13);
  });
  it.each([
    ['saltPct', () => brineDensity(27, 10)],
    ['celsius', () => brineDensity(10, 60)],
    ['saltPct', () => brineFreezing(24)],
    ['celsius', () => saltDiffusivity(60)],
    ['degrees', () => saltOfSalometer(101)],
  ])('refuse %s beyond the table', (name, run) => {
    expect(run).toThrow(name);
  });
});
