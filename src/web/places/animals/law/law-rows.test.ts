import { describe, expect, test } from 'vitest';
import { partsLaw } from '../../../../core/properties/parts-law.ts';
import { animalsIn, answerFor, partText, rowsFor } from './law-rows.ts';

const all = { place: 'GB-ENG', animal: '', asked: '', status: '' } as const;

describe('rowsFor', () => {
  test('one place reads one book only, and nothing of it is left out', () => {
    expect(rowsFor(all)).toEqual(partsLaw.filter((r) => r.books.includes('GB')));
    expect(rowsFor({ ...all, place: 'US' }).every((r) => r.books.includes('US'))).toBe(true);
  });
  test('a kitchen’s own word for the animal finds the table’s', () => {
    const found = rowsFor({ ...all, asked: 'goose head' });
    expect(found.length).toBeGreaterThan(0);
    expect(found.every((r) => r.species.startsWith('poultry') && partText(r).includes('head'))).toBe(true);
  });
  test('by status', () => {
    const found = rowsFor({ ...all, status: 'prohibited' });
    expect(found.length).toBeGreaterThan(0);
    expect(found.every((r) => r.status === 'prohibited')).toBe(true);
  });
});

test('animalsIn names each animal once', () => {
  const animals = animalsIn('GB-ENG');
  expect(animals).toContain('pig');
  expect(new Set(animals).size).toBe(animals.length);
});

describe('answerFor', () => {
  test('what is in no row is not known, never fine', () => {
    expect(answerFor('dragon', 'liver', 'GB-ENG')?.status).toBe('not known: ask');
    expect(answerFor('goose', 'pygostyle gland', 'EU')?.status).toBe('not known: ask');
  });
  test('nothing is answered before both are named', () => {
    expect(answerFor('goose', ' ', 'GB-ENG')).toBeNull();
  });
});
