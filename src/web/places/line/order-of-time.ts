import type { BatchSummary } from '../../../contract/records.ts';
import { day } from './clock.ts';

/** Today's batches: open ones first, each group in order of time; what was closed on other days lies folded below. */
export function inOrderOfTime(batches: readonly BatchSummary[], zone: string, now: Date) {
  const sorted = [...batches].sort((a, b) => Date.parse(a.startedAt) - Date.parse(b.startedAt));
  const today = (b: BatchSummary) => {
    const when = b.closedAt ?? b.startedAt;
    return day(when, zone) === day(now, zone) || day(b.startedAt, zone) === day(now, zone);
  };
  return {
    open: sorted.filter((b) => b.status === 'open'),
    closedToday: sorted.filter((b) => b.status !== 'open' && today(b)),
    earlier: sorted.filter((b) => b.status !== 'open' && !today(b)).reverse(),
  };
}
