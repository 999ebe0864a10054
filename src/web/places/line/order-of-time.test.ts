import { describe, expect, it } from 'vitest';
import type { BatchSummary } from '../../../contract/records.ts';
import { inOrderOfTime } from './order-of-time.ts';

const batch = (code: string, startedAt: string, closedAt: string | null): BatchSummary => ({
  id: code,
  code,
  dishId: 'd',
  dishName: 'Trotter',
  versionId: 'v',
  versionNumber: 1,
  pieces: 1,
  startedAt,
  startedBy: 'Wren',
  status: closedAt === null ? 'open' : 'closed',
  closedAt,
  closedBy: null,
  open: 0,
  out: 0,
});
const codes = (list: readonly BatchSummary[]) => list.map((b) => b.code);

describe('inOrderOfTime', () => {
  const now = new Date('2030-07-02T20:00:00Z');
  it('open batches stand first however old; the day is the kitchen’s own, not the clock’s at Greenwich', () => {
    const batches = [
      batch('closed today', '2030-07-02T09:00:00Z', '2030-07-02T15:00:00Z'),
      batch('open', '2030-07-02T08:00:00Z', null),
      batch('left open', '2030-06-29T08:00:00Z', null),
      batch('closed after midnight', '2030-07-01T20:00:00Z', '2030-07-01T23:30:00Z'),
      batch('old', '2030-06-20T09:00:00Z', '2030-06-20T15:00:00Z'),
    ];
    const london = inOrderOfTime(batches, 'Europe/London', now);
    expect(codes(london.open)).toEqual(['left open', 'open']);
    expect(codes(london.closedToday)).toEqual(['closed after midnight', 'closed today']);
    expect(codes(london.earlier)).toEqual(['old']);
    expect(codes(inOrderOfTime(batches, 'America/New_York', now).earlier)).toEqual([
      'closed after midnight',
      'old',
    ]);
  });
});
