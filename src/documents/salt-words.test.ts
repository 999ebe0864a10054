import { describe, expect, it } from 'vitest';
import { activityWords, cureFaultWords, neededWords, saltWords, spanWords } from './salt-words.ts';

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

describe('cureFaultWords', () => {
  it('speaks in millimetres and per cent', () => {
    expect(
      cureFaultWords({
        message: '',
        path: 'piece.skin.thickness',
        found: '0.02 m',
        allowed: '0.00001 to 0.0095 m',
      }),
    ).toBe('The skin: 20 mm. Allowed: 0.01 to 9.5 mm.');
    expect(
      cureFaultWords({
        message: '',
        path: 'stages[0].medium.salt',
        found: '0.27',
        allowed: '0 to 0.2633, saturation at 4 °C',
      }),
    ).toBe('The brine’s strength: 27 %. Allowed: 0 % to 26.33 %, saturation at 4 °C.');
    expect(cureFaultWords({ message: 'broken' })).toBe('broken');
  });
});
