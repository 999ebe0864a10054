import { describe, expect, test } from 'vitest';
import type { ShelfLot } from '../../../../contract/shelf.ts';
import { daysBetween, plusDays, plusMonths } from './civil.ts';
import { ageWords, dishesFor, movesFor, standingWords, wantedLots } from './shelf-words.ts';

const today = '2026-11-25';
const lot = (more: Partial<ShelfLot> = {}): ShelfLot => ({
  id: '0199f000-0000-7000-8000-000000000001',
  code: 'G-1',
  kind: 'part',
  what: 'Goose necks',
  species: 'Goose',
  partId: null,
  partName: 'neck',
  class: 'poultry',
  supplierId: null,
  supplierName: 'Marsh (invented)',
  count: 6,
  grams: 1_200,
  leftGrams: 1_000,
  arrivedAt: '2026-11-23T08:00:00.000Z',
  arrivalC: 3,
  useBy: '2026-11-27',
  standing: 'ok',
  frozenAt: null,
  thawedAt: null,
  byProduct: false,
  ageMonthsAtMost: null,
  bse: null,
  blocked: null,
  cost: null,
  costPerKg: null,
  parentIds: [],
  note: '',
  ...more,
});

describe('standingWords', () => {
  test('only a lot within its days is drawn as holding', () => {
    expect(standingWords(lot(), today)).toMatchObject({ state: 'holds', word: 'Within its days' });
    expect(standingWords(lot(), today).why).toContain('2 days left');
    for (const more of [
      { standing: 'not known' as const, useBy: null },
      { standing: 'past' as const, useBy: '2026-11-24' },
      { standing: 'last day' as const, useBy: today },
      { frozenAt: '2026-11-24T10:00:00.000Z' },
      { byProduct: true },
    ])
      expect(standingWords(lot(more), today).state).not.toBe('holds');
  });

  test('a by-product is said before its day, and what is past before the freezer', () => {
    expect(standingWords(lot({ byProduct: true, standing: 'past' }), today).word).toBe('By-product');
    const frozen = lot({ frozenAt: '2026-06-01T10:00:00.000Z', standing: 'past', useBy: '2026-11-24' });
    expect(standingWords(frozen, today).word).toBe('Past its last day');
  });
});

describe('movesFor', () => {
  test('a lot that may be used is drawn, frozen once, never thawed before', () => {
    expect(movesFor(lot())).toContain('drawn');
    expect(movesFor(lot())).not.toContain('thawed');
    expect(movesFor(lot({ thawedAt: '2026-11-24T10:00:00.000Z' }))).not.toContain('frozen');
  });

  test('what is past is neither drawn nor frozen nor thawed', () => {
    const past = movesFor(lot({ standing: 'past', blocked: 'past' }));
    for (const what of ['drawn', 'frozen', 'thawed']) expect(past).not.toContain(what);
    expect(past).toContain('thrown away');
  });

  test('a by-product is only thrown away', () => {
    expect(movesFor(lot({ byProduct: true, blocked: 'by-product' }))).toEqual(['thrown away']);
  });
});

describe('wantedLots', () => {
  const lots = [lot(), lot({ code: 'P-7', what: 'Trotters', species: 'pig', partName: 'trotter' })];
  const all = { asked: '', species: '', part: '', standing: '' } as const;
  test('every word must occur, whatever its case', () => {
    expect(wantedLots(lots, { ...all, asked: 'NECK marsh' }).map((l) => l.code)).toEqual(['G-1']);
    expect(wantedLots(lots, { ...all, asked: 'neck trotter' })).toEqual([]);
  });
  test('by animal, part and standing', () => {
    expect(wantedLots(lots, { ...all, species: 'pig' }).map((l) => l.code)).toEqual(['P-7']);
    expect(wantedLots(lots, { ...all, part: 'neck' }).map((l) => l.code)).toEqual(['G-1']);
    expect(wantedLots(lots, { ...all, standing: 'past' })).toEqual([]);
  });
});

test('dishesFor finds the dishes of the same animal and part, and none that is retired', () => {
  const dish = { id: 'a', name: 'Neck', species: 'goose', part: 'Neck', stage: 'signed' };
  const others = [
    { ...dish, id: 'b', part: 'liver' },
    { ...dish, id: 'c', stage: 'retired' },
  ];
  expect(dishesFor(lot(), [dish, ...others]).map((d) => d.id)).toEqual(['a']);
});

test('days: ages and months over the end of a month', () => {
  expect(ageWords('2026-11-24', today)).toBe('came yesterday');
  expect(daysBetween('2026-03-28', '2026-03-30')).toBe(2);
  expect(plusDays('2026-12-31', 1)).toBe('2027-01-01');
  expect(plusMonths('2026-11-30', 3)).toBe('2027-02-28');
  expect(plusMonths('2026-11-25', 1)).toBe('2026-12-25');
});
