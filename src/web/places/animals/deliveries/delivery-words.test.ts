import { expect, test } from 'vitest';
import { countWords, decided, metState, pointsWords } from './delivery-words.ts';

const of = (
  decision: 'accepted' | 'accepted with deviation' | 'refused',
  met: number,
  asked: number,
  C: number | null = 3,
) => decided({ decision, pointsMet: met, pointsAsked: asked, warmestC: C });

test('only what was looked at and measured in full is shown as well', () => {
  expect(of('accepted', 9, 9).state).toBe('holds');
  expect(of('accepted', 8, 9)).toEqual({ word: 'Accepted, 1 point not looked at', state: 'unknown' });
  expect(of('accepted', 9, 9, null).state).toBe('unknown');
  expect(of('accepted', 0, 0).state).toBe('neutral');
  expect(of('accepted with deviation', 9, 9).state).toBe('not yet');
  expect(of('refused', 9, 9).state).toBe('does not hold');
});

test('words', () => {
  expect(metState('not looked at')).toBe('unknown');
  expect(pointsWords({ pointsMet: 0, pointsAsked: 0 })).toBe('nothing was asked in writing');
});

test('a count carries its word, in the singular for one', () => {
  expect(countWords('whole', 6)).toBe('6 animals');
  expect(countWords('whole', 1)).toBe('1 animal');
  expect(countWords('part', 12)).toBe('12 pieces');
  expect(countWords('other', 1)).toBe('1 piece');
});
