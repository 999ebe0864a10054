/** What the spread of a medium's published coefficient does to a stage, in a cook's words. */
import type { PublishedRange } from '../../../../contract/media-range.ts';
import type { RangeMinutes } from '../../../../core/method/media-range.ts';
import { plainNumber } from '../../../../core/units.ts';

function difference(seconds: number): string {
  const minutes = Math.abs(seconds) / 60;
  if (minutes < 0.25) return 'no different';
  const said =
    minutes < 3 ? plainNumber(Math.round(minutes * 2) / 2, 1) : plainNumber(Math.round(minutes), 0);
  return `${said} min ${seconds > 0 ? 'longer' : 'shorter'}`;
}

/** One sentence; null where nothing is known of the stage as it stands. */
export function rangeWords({ low, usual, high }: RangeMinutes, range: PublishedRange): string | null {
  if (!Number.isFinite(usual)) return null;
  const at = (h: number, seconds: number) =>
    `at ${plainNumber(h, 0)}: ${Number.isFinite(seconds) ? difference(seconds - usual) : 'it never gets there'}`;
  const [a, b] = [at(range.low, low), at(range.high, high)];
  const settles =
    a.endsWith('no different') && b.endsWith('no different') ? '' : '. One probe log settles it';
  const first = a.charAt(0).toUpperCase() + a.slice(1);
  return `${first}; ${b}${settles}.`;
}
