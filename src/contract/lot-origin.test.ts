import { describe, expect, it } from 'vitest';
import { lawOf } from '../core/properties/parts-law.ts';
import { jointOrigin, provenBy, unprovenOrigins } from './lot-origin.ts';

const irish = { bornIn: 'Ireland', raisedIn: 'Ireland', bse: 'negligible' } as const;
const unknown = { bornIn: null, raisedIn: null, bse: null } as const;

describe('provenBy', () => {
  const law = (...lots: Parameters<typeof provenBy>[0]) =>
    lawOf('cattle', 'backbone', 'EU', provenBy(lots)).status;
  it('the backbone of an old cow stays risk material unless every lot is of negligible standing', () => {
    expect(law({ ageMonthsAtMost: 48, bse: null })).toBe('prohibited');
    expect(law({ ageMonthsAtMost: 48, bse: 'controlled' })).toBe('prohibited');
    expect(law({ ageMonthsAtMost: 48, bse: 'negligible' })).not.toBe('prohibited');
    expect(law({ ageMonthsAtMost: 48, bse: 'negligible' }, { ageMonthsAtMost: 20, bse: null })).toBe(
      'prohibited',
    );
  });
  it('no lot proves nothing', () => {
    expect(provenBy([])).toEqual({ ageMonths: null, negligible: false });
  });
});

describe('jointOrigin', () => {
  it('keeps what is the same and the worst standing', () => {
    expect(jointOrigin([irish, irish])).toEqual(irish);
    expect(jointOrigin([irish, { ...irish, bornIn: 'France', bse: 'controlled' }])).toEqual({
      bornIn: null,
      raisedIn: 'Ireland',
      bse: 'controlled',
    });
    expect(jointOrigin([irish, unknown])).toEqual(unknown);
    expect(jointOrigin([])).toEqual(unknown);
  });
});

describe('unprovenOrigins', () => {
  it('a negligible standing asks for both countries', () => {
    expect(unprovenOrigins([{ origin: irish }, {}, { origin: unknown }])).toEqual([]);
    expect(unprovenOrigins([{}, { origin: { ...irish, raisedIn: null } }]).map((p) => p.path)).toEqual([
      'lines[1].origin.raisedIn',
    ]);
  });
});
