import { describe, expect, test } from 'vitest';
import { animalNamed, partOfLot, partsNamedBy } from './parts-named.ts';
import type { Method } from './steps.ts';

const id = '0199f000-0000-7000-8000-000000000001';
const base = { id, name: 'a step', how: '', handsMin: 1, asks: [] };
const trim = (part: string) =>
  ({ kind: 'trim', ...base, part, weightG: 100, yieldPct: 90 }) as Method[number];
const mix = (...ingredients: string[]) =>
  ({
    kind: 'mix',
    ...base,
    lines: ingredients.map((ingredient) => ({ ingredient, g: 10 })),
    maxC: 8,
  }) as Method[number];
const neck = { species: 'goose', part: 'neck' };
const stopped = (method: Method, dish = neck) =>
  partsNamedBy(dish, method, 'GB-ENG')
    .filter((p) => p.stops)
    .map((p) => `${p.species} ${p.part} ${p.path}`);

describe('partsNamedBy', () => {
  test('a lawful dish of lawful things is stopped by nothing', () => {
    expect(stopped([trim('neck'), mix('Salt', 'Onion', 'Juniper', 'Pig back fat')])).toEqual([]);
  });

  test('a head among other things is found, though the other things are not known', () => {
    expect(stopped([trim('heads, halved')])).toEqual(['goose heads method[0].part']);
    expect(stopped([mix('Salt', 'Duck heads, chopped')])).toEqual([
      'duck Duck heads method[0].lines[1].ingredient',
    ]);
  });

  test('the dish’s own part is stopped where it is not known; a step’s is not', () => {
    expect(stopped([], { species: 'goose', part: 'pygostyle gland' })).toHaveLength(1);
    expect(stopped([trim('pygostyle gland')])).toEqual([]);
  });

  test('where the table has one row for every part of an animal, salt is no part of it', () => {
    const named = partsNamedBy({ species: 'hare', part: 'leg' }, [mix('Salt')], 'US');
    expect(named.map((p) => p.path)).toEqual(['part']);
  });
});

test('animalNamed reads another animal’s name before a part', () => {
  expect(animalNamed('Pig’s lungs', 'goose')).toEqual({ animal: 'pig', named: true });
  expect(animalNamed('guinea fowl heads', 'goose')).toEqual({ animal: 'guinea fowl', named: true });
  expect(animalNamed('lungs', 'goose')).toEqual({ animal: 'goose', named: false });
});

test('a lot of a head of sheep is stopped at an age that nobody has shown', () => {
  expect(partOfLot('sheep', 'head', 'lot A', 'GB-ENG', { ageMonths: null }).stops).toBe(true);
  expect(partOfLot('sheep', 'head', 'lot A', 'GB-ENG', { ageMonths: 8 }).stops).toBe(false);
});
