import { describe, expect, it } from 'vitest';
import {
  osmoticCoefficient,
  saltWaterActivity,
  sugarWaterActivity,
  togetherActivity,
  waterPhaseSalt,
} from './water-activity.ts';

const ofMolality = (m: number) => saltWaterActivity((m * 0.0584428) / (1 + m * 0.0584428));

describe('saltWaterActivity', () => {
  it.each([
    [0.9, 0.9948],
    [1, 0.9943],
    [2, 0.9885],
    [3.5, 0.9796],
    [5, 0.9702],
    [8, 0.95],
    [10, 0.9351],
    [15, 0.8923],
    [20, 0.8394],
    [24, 0.788],
    [26.4, 0.7527],
  ])('%f %% of the water phase', (pct, expected) => {
    expect(Math.abs(saltWaterActivity(pct / 100) - expected)).toBeLessThan(1e-4);
  });

  it.each([
    [0.1, 0.9966],
    [0.5, 0.9835],
    [1, 0.9668],
    [2, 0.9315],
    [3, 0.8931],
    [4, 0.8515],
    [5, 0.8068],
    [6, 0.7594],
  ])('%f mol/kg', (m, expected) => {
    expect(Math.abs(ofMolality(m) - expected)).toBeLessThan(1e-3);
  });

  it('published osmotic coefficients of Robinson and Stokes, activities at 6 mol/kg and saturation', () => {
    expect(Math.abs(osmoticCoefficient(1) - 0.9355)).toBeLessThan(1e-3);
    expect(Math.abs(osmoticCoefficient(6) - 1.2706)).toBeLessThan(3e-3);
    expect(Math.abs(ofMolality(6) - 0.76)).toBeLessThan(1e-3);
    expect(Math.abs(saltWaterActivity(0.264) - 0.753)).toBeLessThan(1e-3);
  });

  it('refuses beyond saturation and below nothing', () => {
    expect(() => saltWaterActivity(0.27)).toThrow('waterPhaseSalt');
    expect(() => saltWaterActivity(-0.01)).toThrow('waterPhaseSalt');
    expect(() => saltWaterActivity(Number.NaN)).toThrow('waterPhaseSalt');
  });
});

describe('salt and moisture of a product', () => {
  it.each([
    [0.018, 0.7, 2.507, 0.9855],
    [0.025, 0.65, 3.7037, 0.9783],
    [0.03, 0.6, 4.7619, 0.9717],
    [60, 1750, 3.3149, 0.9807],
  ])('%f salt in %f water', (salt, water, pct, activity) => {
    const w = waterPhaseSalt(salt, water);
    expect(Math.abs(w * 100 - pct)).toBeLessThan(1e-3);
    expect(Math.abs(saltWaterActivity(w) - activity)).toBeLessThan(1e-3);
  });
});

describe('further solutes', () => {
  it('multiply', () => {
    expect(togetherActivity([])).toBe(1);
    expect(togetherActivity([0.97, sugarWaterActivity('sucrose', 0)])).toBe(0.97);
    expect(() => togetherActivity([1.2])).toThrow('activities[0]');
  });
  it('more sugar, less activity; refused where the equation does not hold', () => {
    expect(sugarWaterActivity('glucose', 0.3)).toBeLessThan(sugarWaterActivity('glucose', 0.1));
    expect(() => sugarWaterActivity('glucose', 1.5)).toThrow('perWater');
  });
});
