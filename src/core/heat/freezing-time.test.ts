import { describe, expect, test } from 'vitest';
import { OutOfRange } from '../errors.ts';
import { freezingTimePham, freezingTimePlank, meanFreezing } from './freezing-time.ts';

const plank = {
  shape: 'sphere',
  half: 0.035,
  h: 50,
  k: 1.2,
  density: 1000,
  latent: 250e3,
  freezing: -1.25,
  medium: -40,
} as const;
const pham = {
  shape: 'cylinder',
  half: 0.02,
  h: 30,
  k: 1.4,
  unfrozenDensity: 1050,
  unfrozenHeat: 3500,
  frozenDensity: 980,
  frozenHeat: 2000,
  latent: 220e3,
  start: 5,
  end: -18,
  medium: -35,
} as const;

describe('freezingTimePlank', () => {
  // A textbook's sphere of 70 mm, 0.72 h printed (from memory).
  test('sphere of 70 mm', () => {
    expect(Math.abs(freezingTimePlank(plank) / 2603.05 - 1)).toBeLessThan(1e-4);
    expect(Math.round(freezingTimePlank(plank) / 36)).toBe(72);
  });
  test('a slab takes three times, a cylinder one and a half times as long', () => {
    const sphere = freezingTimePlank(plank);
    expect(freezingTimePlank({ ...plank, shape: 'slab' }) / sphere).toBeCloseTo(3, 12);
    expect(freezingTimePlank({ ...plank, shape: 'cylinder' }) / sphere).toBeCloseTo(1.5, 12);
  });
  test('refuses a medium that does not freeze', () => {
    expect(() => freezingTimePlank({ ...plank, medium: -1 })).toThrow(/medium: found -1 °C/);
    expect(() => freezingTimePlank({ ...plank, h: 0 })).toThrow(/h: found 0 W/);
    expect(() => freezingTimePlank({ ...plank, freezing: 1 })).toThrow(OutOfRange);
  });
});

describe('freezingTimePham', () => {
  // Worked out from the published equations.
  test('cylinder of 40 mm', () => {
    expect(meanFreezing(-18, -35)).toBeCloseTo(-6.609, 12);
    expect(Math.abs(freezingTimePham(pham) / 3897.03 - 1)).toBeLessThan(1e-4);
  });
  test('where only ice is made it is Plank’s, twice the resistance inside included', () => {
    // Start at the mean freezing point, no heat below it: t = d/(E·h)·ρL/ΔT·(1 + Bi/2), which is Plank's equation.
    const mean = meanFreezing(-18, -35);
    const bare = freezingTimePham({ ...pham, start: mean + 1e-9, frozenHeat: 1e-9 });
    const { shape, half, h, k, frozenDensity, latent, medium } = pham;
    const own = freezingTimePlank({
      shape,
      half,
      h,
      k,
      density: frozenDensity,
      latent,
      freezing: mean,
      medium,
    });
    expect(bare / own).toBeCloseTo(1, 8);
  });
  test('longer from warmer, to colder, in milder air', () => {
    const t = freezingTimePham(pham);
    expect(freezingTimePham({ ...pham, start: 15 })).toBeGreaterThan(t);
    expect(freezingTimePham({ ...pham, end: -25 })).toBeGreaterThan(t);
    expect(freezingTimePham({ ...pham, medium: -25 })).toBeGreaterThan(t);
  });
  test('refuses what the fit does not cover', () => {
    expect(() => freezingTimePham({ ...pham, medium: -18 })).toThrow(/medium: found -18 °C/);
    expect(() => freezingTimePham({ ...pham, start: -10 })).toThrow(/start/);
    expect(() => freezingTimePham({ ...pham, end: -2 })).toThrow(/end: found -2 °C/);
    expect(() => freezingTimePham({ ...pham, k: Number.NaN })).toThrow(/k: found NaN W/);
  });
});
