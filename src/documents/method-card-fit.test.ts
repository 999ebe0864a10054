import { expect, test } from 'vitest';
import { cut, droppable, fits, leftOffText, smallestType } from './method-card-fit.ts';

test('each way to set the card asks for no more room than the one before, so that halving finds the first that fits', () => {
  for (let i = 1; i < fits.length; i++) {
    const [before, after] = [fits[i - 1]!, fits[i]!];
    expect(after.size).toBeLessThanOrEqual(before.size);
    expect(after.howMost).toBeLessThanOrEqual(before.howMost);
    for (const gone of before.without) expect(after.without).toContain(gone);
    expect([after.size, after.howMost, after.without.size]).not.toEqual([
      before.size,
      before.howMost,
      before.without.size,
    ]);
  }
  expect(fits.at(-1)).toMatchObject({ size: smallestType, howMost: 0 });
  expect(fits.at(-1)!.without.size).toBe(droppable.length);
});

test('whatever is left off is named at the foot', () => {
  for (const fit of fits) {
    const text = leftOffText(fit);
    for (const { key, words } of droppable) expect(text.includes(words)).toBe(fit.without.has(key));
    expect(text.includes('marked …')).toBe(Number.isFinite(fit.howMost));
  }
});

test('cut ends at a word and says that it was cut', () => {
  expect(cut('short', 10)).toBe('short');
  expect(cut('one two three four', 9)).toBe('one two …');
  expect(cut('unbreakable'.repeat(5), 10)).toBe('unbreakabl …');
  expect(cut('anything', 0)).toBe('…');
});
