import { describe, expect, test } from 'vitest';
import { growthOrganisms } from '../properties/organisms-growth.ts';
import { checkGrowthLimits } from './growth-limits.ts';
import { growthRateAt, setFactor } from './growth-rate.ts';

describe('checkGrowthLimits', () => {
  const possible = (organism: string, place: Parameters<typeof checkGrowthLimits>[1]) =>
    checkGrowthLimits(organism, place).map((limit) => limit.growthPossible);
  test('takes the widest of the tables, ends included', () => {
    expect(possible('listeria-monocytogenes', { pH: 4.39 })).toEqual([true]);
    expect(possible('listeria-monocytogenes', { pH: 4.38 })).toEqual([false]);
    expect(possible('bacillus-cereus', { waterActivity: 0.92 })).toEqual([true]);
    expect(possible('bacillus-cereus', { waterActivity: 0.919 })).toEqual([false]);
    expect(possible('escherichia-coli', { C: 6.4, waterPhaseSalt: 0.066 })).toEqual([false, false]);
  });
  test('never denies growth at a temperature where a set has a rate', () => {
    for (const organism of growthOrganisms)
      for (const s of organism.sets)
        for (let C = -5; C < 60; C += 0.25)
          if (growthRateAt(s.temperature, C) > 0) expect(possible(organism.id, { C })).toEqual([true]);
  });
  test('never denies growth in a food where a set has a rate', () => {
    for (const organism of growthOrganisms)
      for (const s of organism.sets)
        for (let x = 0; x <= 1; x += 0.01) {
          const food = { pH: 3 + 7 * x, waterActivity: 0.85 + 0.15 * x };
          if (s.effect === undefined) continue;
          if (s.effect.pH !== undefined && setFactor(s, food.pH, s.effect.food.waterActivity) > 0)
            expect(possible(organism.id, { pH: food.pH })).toEqual([true]);
          if (setFactor(s, s.effect.food.pH, food.waterActivity) > 0)
            expect(possible(organism.id, { waterActivity: food.waterActivity })).toEqual([true]);
        }
  });
  test('says nothing of what was not stated', () => {
    expect(checkGrowthLimits('salmonella', {})).toEqual([]);
  });
});

describe('organisms known by their limits alone', () => {
  const can = (organism: string, place: Parameters<typeof checkGrowthLimits>[1]) =>
    checkGrowthLimits(organism, place).every((limit) => limit.growthPossible);
  test('stand at the edges that keeping cold rests on', () => {
    expect(can('clostridium-botulinum-non-proteolytic', { C: 3.3 })).toBe(true);
    expect(can('clostridium-botulinum-non-proteolytic', { C: 3 })).toBe(false);
    // The widest of two tables: 0.965, though guidance counts 0.97.
    expect(can('clostridium-botulinum-non-proteolytic', { waterActivity: 0.966 })).toBe(true);
    expect(can('clostridium-botulinum-non-proteolytic', { waterActivity: 0.964 })).toBe(false);
    expect(can('clostridium-botulinum-proteolytic', { C: 9.9 })).toBe(false);
    expect(can('yersinia-enterocolitica', { C: -1.3 })).toBe(true);
    expect(can('campylobacter', { C: 29 })).toBe(false);
    expect(can('shigella', { C: 6 })).toBe(false);
  });
});
