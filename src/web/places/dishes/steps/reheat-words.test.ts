import { describe, expect, test } from 'vitest';
import type { ReheatForeseen } from '../../../../core/method/reheat.ts';
import { reheatWords } from './reheat-words.ts';
import { warmestCourse } from './warming.ts';

const seen = (over: Partial<ReheatForeseen> = {}): ReheatForeseen => ({
  word: 'holds',
  rules: [],
  heatingStage: 0,
  liftOut: 1800,
  coldest: 82.97,
  wanted: null,
  thawed: null,
  doubts: [],
  notReached: [],
  ...over,
});

describe('reheatWords', () => {
  test('only what holds is drawn as holding', () => {
    const states = (['holds', 'short', 'unknown', 'not asked'] as const).map(
      (word) => reheatWords(seen({ word }), 3, 'metric').state,
    );
    expect(states).toEqual(['holds', 'does not hold', 'unknown', 'unknown']);
  });

  test('a temperature is rounded down, a core that is wanted is said, and frozen is never left out', () => {
    const words = reheatWords(seen({ word: 'short', wanted: 83 }), -18, 'metric').why.join(' ');
    expect(words).toContain('82.9');
    expect(words).toContain('83');
    expect(words).toContain('frozen');
  });
});

describe('warmestCourse', () => {
  test('begins when it is no longer frozen and ends at lifting out', () => {
    const history = {
      t: Float64Array.of(0, 600, 1200, 1800, 2400),
      warmest: Float64Array.of(-18, -1, 20, 80, 70),
    } as unknown as Parameters<typeof warmestCourse>[0]['history'];
    expect(warmestCourse({ history }, 1800)).toEqual([
      { min: 0, C: -1 },
      { min: 10, C: 20 },
      { min: 20, C: 80 },
    ]);
  });
});
