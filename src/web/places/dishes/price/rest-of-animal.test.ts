import { describe, expect, it } from 'vitest';
import type { CarcassBar } from '../../../../contract/yields.ts';
import { moneyShareOf } from './rest-of-animal.tsx';

const bar = (species: string, parts: [string, number | null][]): CarcassBar => ({
  species,
  from: 'breakdowns',
  breakdowns: 1,
  animals: 1,
  since: null,
  until: null,
  parts: parts.map(
    ([name, moneyPct]) => ({ name, partId: null, use: 'sold', sharePct: null, moneyPct }) as never,
  ),
  pricedBreakdowns: 1,
  costBy: null,
});

describe('moneyShareOf', () => {
  it('adds up a part that is cut in several places, of the right animal', () => {
    const bars = [
      bar('goose', [['neck', 4]]),
      bar('pigs', [
        ['Trotter', 2],
        ['trotter', 1],
        ['loin', 40],
      ]),
    ];
    expect(moneyShareOf(bars, { species: 'pig' }, 'trotter')).toBeCloseTo(0.03, 12);
  });
  it('is not known where no breakdown says, never nothing', () => {
    expect(moneyShareOf([bar('pig', [['trotter', null]])], { species: 'pig' }, 'trotter')).toBeNull();
    expect(moneyShareOf([], { species: 'pig' }, 'trotter')).toBeNull();
  });
});
