import { describe, expect, it } from 'vitest';
import { lossWords, moneySpread } from './price-words.ts';

describe('lossWords', () => {
  it('never says nothing of what is not known', () => {
    expect(lossWords(null)).toBe('not known');
    expect(lossWords({ low: 0, usual: 0, high: 0 })).toBe('nothing');
  });
  it('says which way, and how sure', () => {
    expect(lossWords({ low: 0.27, usual: 0.27, high: 0.27 })).toBe('loses 27 %');
    expect(lossWords({ low: -0.03, usual: -0.03, high: -0.03 })).toBe('takes up 3 %');
    expect(lossWords({ low: -0.08, usual: -0.03, high: 0.01 })).toBe('+3 % (−1 % to +8 %)');
  });
});

describe('moneySpread', () => {
  it('leaves out a spread that is not worth a word', () => {
    expect(moneySpread({ low: 100, usual: 100, high: 100 }, 'GBP')).toBe('£1.00');
    expect(moneySpread({ low: 90, usual: 100, high: 130 }, 'GBP')).toBe('£1.00 (£0.90 to £1.30)');
  });
});
