import { describe, expect, test } from 'vitest';
import type { ReheatForeseen } from '../core/method/reheat.ts';
import { warmedOnCard } from './warmed-on-card.ts';

const seen: ReheatForeseen = {
  word: 'holds',
  rules: [],
  heatingStage: 0,
  liftOut: 1800,
  coldest: 74.96,
  wanted: 75,
  thawed: 600,
  doubts: [],
  notReached: [],
};
const on = (over: Partial<ReheatForeseen>) =>
  warmedOnCard({ stepId: '', startC: -18, minutes: [], seen: { ...seen, ...over } }, 'metric');

describe('warmedOnCard', () => {
  test('only what holds is herb; the rest is rust', () => {
    expect((['holds', 'short', 'unknown', 'not asked'] as const).map((word) => on({ word }).colour)).toEqual([
      'herb',
      'rust',
      'rust',
      'rust',
    ]);
  });

  test('prints the temperature rounded down, what was wanted, and when the ice has gone', () => {
    const { text } = on({ word: 'short' });
    expect(text).toMatch(/74\.9/);
    expect(text).toMatch(/75/);
    expect(text).toContain('The ice has gone after 10');
  });
});
