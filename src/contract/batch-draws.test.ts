import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inOrderOfUse, offerDraws } from './batch-draws.ts';

const lot = (id: string, more: Partial<Parameters<typeof inOrderOfUse>[0][number]> = {}) => ({
  id,
  leftGrams: 1_000,
  useBy: '2026-11-30',
  standing: 'ok' as const,
  arrivedAt: '2026-11-20T09:00:00.000Z',
  blocked: null,
  byProduct: false,
  ...more,
});

it('what runs out first goes first, then what came first; what nobody has dated comes last', () => {
  const lots = [
    lot('undated', { useBy: null, standing: 'not known' }),
    lot('late'),
    lot('today', { useBy: '2026-11-25', standing: 'last day' }),
    lot('late, older', { arrivedAt: '2026-11-19T09:00:00.000Z' }),
  ];
  expect(inOrderOfUse(lots).map((l) => l.id)).toEqual(['today', 'late, older', 'late', 'undated']);
});

it('never offers what is past, a by-product, blocked, undated or empty, and says what is short', () => {
  const lots = [
    lot('past', { useBy: '2026-11-01', standing: 'past' }),
    lot('by-product', { byProduct: true }),
    lot('frozen', { blocked: 'Lot frozen is frozen: thaw it first.' }),
    lot('undated', { useBy: null, standing: 'not known' }),
    lot('empty', { leftGrams: 0 }),
    lot('good', { leftGrams: 700 }),
  ];
  expect(offerDraws(lots, 1_200)).toEqual({ draws: [{ lotId: 'good', grams: 700 }], shortGrams: 500 });
  expect(offerDraws(lots, 0)).toEqual({ draws: [], shortGrams: 0 });
});

it('what is offered and what is short are what was wanted, and no lot gives more than it has', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 1, max: 5_000 }), { maxLength: 8 }),
      fc.integer({ min: 0, max: 20_000 }),
      (lefts, wanted) => {
        const lots = lefts.map((leftGrams, i) => lot(String(i), { leftGrams }));
        const offer = offerDraws(lots, wanted);
        const sum = offer.draws.reduce((a, d) => a + d.grams, 0);
        expect(sum + offer.shortGrams).toBe(wanted);
        for (const d of offer.draws) expect(d.grams).toBeLessThanOrEqual(lefts[Number(d.lotId)] as number);
      },
    ),
  );
});
