import { describe, expect, test } from 'vitest';
import type { Agreement } from '../contract/agreement.ts';
import type { PartUsed } from '../contract/records.ts';
import { lawOnCard } from './law-on-card.ts';
import type { MethodCardData } from './method-card-data.ts';

const agreed: Agreement = {
  requestId: '0199f000-0000-7000-8000-000000000001',
  answer: 'agreed on conditions',
  authority: 'a council (invented)',
  saidBy: 'an officer (invented)',
  reference: 'R/1',
  conditions: 'singed clean',
  dated: '2026-11-19',
  until: '2027-11-19',
};
const law = {
  status: 'by-product by default: ask' as const,
  part: 'head',
  reason: 'Ask first.',
  citation: 'x',
  confidence: 'read',
};
const part = (more: Partial<PartUsed> = {}): PartUsed => ({
  species: 'goose',
  part: 'head',
  from: 'the dish itself',
  path: 'part',
  law,
  stops: true,
  agreed: null,
  ...more,
});
const card = (used: PartUsed[], agreements: Agreement[] = []) =>
  lawOnCard({
    dish: { law: used[0]!.law, agreed: used[0]!.agreed, partsUsed: used },
    version: {
      evidence: {
        agreements: agreements.map((a) => ({ species: 'goose', part: 'head', status: 'x', ...a })),
      },
    },
  } as unknown as Pick<MethodCardData, 'dish' | 'version'>);

describe('lawOnCard', () => {
  test('a stop stands on the card in capitals', () => {
    expect(card([part()])).toMatchObject({ holds: false });
    expect(card([part()]).text).toContain('BY-PRODUCT BY DEFAULT: ASK');
  });
  test('a lifted stop says by whose word, until when, on which conditions', () => {
    const { holds, text } = card([part({ agreed })]);
    expect(holds).toBe(true);
    for (const word of ['a council', 'an officer', 'R/1', '19 Nov 2027', 'singed clean', 'by-product'])
      expect(text).toContain(word);
  });
  test('an agreement that has ended is named, and does not hold', () => {
    const { holds, text } = card([part()], [agreed]);
    expect(holds).toBe(false);
    expect(text).toContain('does not stand now');
  });
  test('a stopped part of a step stops the card of a lawful dish', () => {
    const food = part({ law: { ...law, status: 'food' }, stops: false, part: 'neck' });
    expect(card([food, part({ path: 'method[0].part', from: 'step 1, Trim' })]).holds).toBe(false);
  });
});
