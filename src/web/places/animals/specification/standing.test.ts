import { describe, expect, test } from 'vitest';
import type { Specification, SpecificationVersion } from '../../../../contract/specification.ts';
import { openSpecification } from '../../../../contract/specification-starts.ts';
import { offeredFor, standingOf } from './standing.ts';

const version = (
  number: number,
  status: 'draft' | 'sent',
  answer?: 'agreed' | 'agreed with changes' | 'declined',
): SpecificationVersion => ({
  id: `v${number}`,
  specificationId: 's',
  number,
  rev: 0,
  status,
  reason: '',
  content: openSpecification,
  createdAt: '2026-11-01T08:00:00Z',
  createdBy: 'Ida Quill',
  sentAt: null,
  sentBy: null,
  answers:
    answer === undefined
      ? []
      : [
          {
            id: 'a',
            answer,
            saidBy: 'the farmer (invented)',
            note: '',
            at: '2026-11-02T08:00:00Z',
            by: 'Ida Quill',
          },
        ],
});
const of = (
  versions: SpecificationVersion[],
  inForce: number | null,
  endedAt: string | null = null,
): Specification => ({
  id: 's',
  supplierId: 'one',
  supplierName: 'One (invented)',
  species: 'goose',
  name: 'Necks',
  createdAt: '2026-11-01T08:00:00Z',
  versions,
  inForce,
  endedAt,
});

describe('standingOf', () => {
  test.each([
    [of([version(1, 'draft')], null), 'not sent yet'],
    [of([version(1, 'sent')], null), 'waits for an answer'],
    [of([version(1, 'sent', 'declined')], null), 'declined'],
    [of([version(1, 'sent', 'agreed')], 1), 'in force'],
    [of([version(1, 'sent', 'agreed'), version(2, 'draft')], 1), 'in force'],
    [of([version(1, 'sent', 'agreed'), version(2, 'sent')], 1), 'asked again, the old one in force'],
    [
      of([version(1, 'sent', 'agreed'), version(2, 'sent', 'declined')], 1),
      'asked again, the old one in force',
    ],
    [of([version(1, 'sent', 'agreed')], 1, '2026-11-20T08:00:00Z'), 'ended'],
  ])('%#', (specification, word) => {
    expect(standingOf(specification).word).toBe(word);
  });
});

describe('offeredFor', () => {
  test('the agreed version before a newer one that nobody answered', () => {
    const s = of([version(1, 'sent', 'agreed'), version(2, 'sent')], 1);
    expect(offeredFor([s], 'one').map((o) => o.version.number)).toEqual([1]);
  });
  test('the last one sent where none was agreed; never a draft, never one that ended, never another’s', () => {
    expect(offeredFor([of([version(1, 'sent')], null)], 'one').map((o) => o.version.number)).toEqual([1]);
    expect(offeredFor([of([version(1, 'draft')], null)], 'one')).toEqual([]);
    expect(offeredFor([of([version(1, 'sent', 'agreed')], 1, '2026-11-20T08:00:00Z')], 'one')).toEqual([]);
    expect(offeredFor([of([version(1, 'sent', 'agreed')], 1)], 'two')).toEqual([]);
  });
});
