import { describe, expect, it } from 'vitest';
import { activityWords, neededWords, saltWords, spanWords } from './salt-words.ts';

describe('rounding never flatters', () => {
  it('salt down, activity and hours up', () => {
    expect(saltWords(0.03499)).toBe('3.49 %');
    expect(activityWords(0.0503)).toBe('0.971');
    expect(neededWords(10.01 * 3600)).toBe('11 h');
    expect(neededWords(3.01 * 3600)).toBe('3.1 h');
    expect(neededWords(61)).toBe('2 min');
    expect(neededWords(5 * 86_400)).toBe('5 days');
  });

  it('a span says usual, quickest and slowest, or never', () => {
    expect(spanWords({ usual: 31 * 3600, quickest: 20 * 3600, slowest: 52 * 3600 })).toBe(
      '31 h (20 h to 52 h)',
    );
    expect(spanWords({ usual: 31 * 3600, quickest: null, slowest: null })).toBe('31 h');
    expect(spanWords({ usual: null, quickest: null, slowest: null })).toBe('never, as it stands');
  });
});
