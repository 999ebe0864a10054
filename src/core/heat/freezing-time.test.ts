import { describe, expect, test } from 'vitest';
import { phamCylinder, plankSphere } from '../../../examples/freezing-problems.ts';
import { kept } from '../../../examples/kept.ts';
import { OutOfRange } from '../errors.ts';
import { freezingTimePham, freezingTimePlank, meanFreezing } from './freezing-time.ts';

/** Worked out apart from the engine. */
const python = kept('freezing-equations');
const [plank, pham] = [plankSphere, phamCylinder];

describe('freezingTimePlank', () => {
  // A textbook's sphere of 70 mm, 0.72 h printed (from memory).
  test('sphere of 70 mm', () => {
    expect(Math.abs(freezingTimePlank(plank) / python('plank sphere') - 1)).toBeLessThan(1e-4);
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
  test('cylinder of 40 mm', () => {
    expect(meanFreezing(-18, -35)).toBeCloseTo(python('pham mean freezing'), 12);
    expect(Math.abs(freezingTimePham(pham) / python('pham cylinder') - 1)).toBeLessThan(1e-4);
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
