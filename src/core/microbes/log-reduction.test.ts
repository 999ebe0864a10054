import { describe, expect, test } from 'vitest';
import { heatResistances } from '../properties/organisms-heat.ts';
import { logReduction, mostReductions } from './log-reduction.ts';

const held = (C: number, s: number) => [
  { s: 0, C },
  { s, C },
];

describe('logReduction', () => {
  test('one D at every published temperature is one decade', () => {
    for (const row of heatResistances)
      for (const { C, s } of row.D) expect(logReduction(held(C, s), row, 1e9).log10).toBeCloseTo(1, 9);
  });
  test('counts nothing below what was measured, and above it no more than there', () => {
    for (const row of heatResistances) {
      const [low, top] = [row.D[0]!, row.D.at(-1)!];
      expect(logReduction(held(low.C - 0.1, 1e6), row, 1e9).log10).toBe(0);
      expect(logReduction(held(top.C + 20, top.s), row, 1e9).log10).toBeCloseTo(1, 9);
    }
  });
  test('tells no more than twelve decades', () => {
    const row = heatResistances[0]!;
    expect(logReduction(held(62, 1e5), row, 1e9)).toMatchObject({ log10: mostReductions, capped: true });
  });
  test('across a hole the colder end counts', () => {
    const row = heatResistances[0]!;
    const log = [
      { s: 0, C: 20 },
      { s: 3600, C: 62 },
    ];
    expect(logReduction(log, row, 600).log10).toBe(0);
    expect(logReduction(log, row, 3600).log10).toBeGreaterThan(1);
  });
  test('refuses a gap that is none', () =>
    expect(() => logReduction(held(60, 1), heatResistances[0]!, 0)).toThrow(/more than 0 s/));
});
