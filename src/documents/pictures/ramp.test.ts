import { describe, expect, test } from 'vitest';
import { linearRgbOf, oklabDistance, rampColour, rampEntry, rampPath } from './ramp.ts';

describe('the temperature ramp', () => {
  test('lightness rises strictly from the cold end to the hot end', () => {
    for (let i = 1; i < rampPath.length; i++) expect(rampPath[i]![0]).toBeGreaterThan(rampPath[i - 1]![0]);
    expect(rampPath.at(-1)![0] - rampPath[0]![0]).toBeGreaterThan(0.6);
  });

  test('equal steps are equal perceived differences, within 2 % of their mean', () => {
    const steps = rampPath.slice(1).map((p, i) => oklabDistance(p, rampPath[i]!));
    const mean = steps.reduce((s, d) => s + d, 0) / steps.length;
    for (const d of steps) expect(Math.abs(d / mean - 1)).toBeLessThan(0.02);
  });

  test('every colour can be shown: inside sRGB', () => {
    for (const p of rampPath)
      for (const v of linearRgbOf(p)) {
        expect(v).toBeGreaterThan(-1e-3);
        expect(v).toBeLessThan(1 + 1e-3);
      }
  });

  test('OKLab white and black come out as white and black (Ottosson 2020)', () => {
    for (const v of linearRgbOf([1, 0, 0])) expect(v).toBeCloseTo(1, 3);
    for (const v of linearRgbOf([0, 0, 0])) expect(v).toBe(0);
  });

  test('beyond the ends and NaN are held, never thrown', () => {
    expect(rampColour(-3)).toBe(rampColour(0));
    expect(rampColour(7)).toBe(rampColour(1));
    expect(rampColour(Number.NaN)).toBe(rampColour(0));
    expect(rampEntry(0.5)).toBe(128);
    expect(rampColour(0.3)).toMatch(/^#[0-9a-f]{6}$/);
  });
});
