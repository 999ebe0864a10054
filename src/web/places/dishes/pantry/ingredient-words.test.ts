import { describe, expect, it } from 'vitest';
import { nutrients } from '../../../../core/filling/food.ts';
import { allergenWords, notKnownOf } from './ingredient-words.ts';

describe('allergenWords', () => {
  it('tells not said from none, and what a label decides', () => {
    expect(allergenWords(null)).toBe('nobody has said: ask');
    expect(allergenWords([])).toBe('none named');
    expect(allergenWords([{ allergen: 'gluten', as: 'wheat', checkLabel: true }])).toBe(
      'gluten (wheat), if its label says so: look',
    );
  });
});

describe('notKnownOf', () => {
  it('names what is missing', () => {
    const all = Object.fromEntries(nutrients.map((n) => [n, 0.1])) as never as Record<string, number | null>;
    expect(notKnownOf(all as never)).toBe('');
    expect(notKnownOf({ ...all, salt: null } as never)).toBe('salt');
    expect(notKnownOf(Object.fromEntries(nutrients.map((n) => [n, null])) as never)).toBe(
      'all of its composition',
    );
  });
});
