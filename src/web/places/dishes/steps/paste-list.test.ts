import { describe, expect, it } from 'vitest';
import { readIngredients } from '../../../../contract/ingredient-text.ts';
import { isList } from './mix-line.tsx';
import { keyOf, linesTaken } from './paste-list.tsx';

const read = (text: string) => readIngredients(text, { system: 'metric', known: [] });

describe('linesTaken', () => {
  it('takes what has a weight, as it was chosen, and leaves what has none', () => {
    const items = read('400 g goose meat, 3 egg whites, a few olives, salt 18 g/kg');
    const lines = linesTaken(
      items,
      items.map((i) => (i.guess === null ? null : keyOf(i.guess.of))),
    );
    expect(lines[0]).toMatchObject({ g: 400, of: { kind: 'table' } });
    expect(lines[1]!.g).toBeGreaterThan(80);
    expect(lines.at(-1)).toMatchObject({ amount: { by: 'pct of the meat', pct: 1.8 } });
    expect(lines.some((l) => /olive/.test(l.ingredient))).toBe(false);
  });

  it('keeps only the name where what was offered is refused', () => {
    const items = read('400 g goose meat');
    const [line] = linesTaken(items, [null]);
    expect(line).toEqual({ ingredient: 'goose meat', g: 400 });
  });
});

describe('isList', () => {
  it('tells a list from a word', () => {
    expect(isList('goose meat')).toBe(false);
    expect(isList('pork shoulder, diced')).toBe(false);
    expect(isList('goose meat\t400\nsalt\t7')).toBe(true);
    expect(isList('400 g goose meat, 3 egg whites')).toBe(true);
  });
});
