/** Days of the kitchen’s own calendar, as `2026-11-25`; pure. */
export const dayIn = (zone: string, at: Date): string =>
  new Intl.DateTimeFormat('en-CA', {
    timeZone: zone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  }).format(at);

const utc = (day: string): number => Date.parse(`${day}T00:00:00Z`);

/** Whole days from one day to another; below zero when it lies before. */
export const daysBetween = (from: string, to: string): number =>
  Math.round((utc(to) - utc(from)) / 86_400_000);

export const plusDays = (day: string, days: number): string =>
  new Date(utc(day) + days * 86_400_000).toISOString().slice(0, 10);

/** The same day of a later month; the last of that month where it has no such day. */
export function plusMonths(day: string, months: number): string {
  const at = new Date(utc(day));
  const date = at.getUTCDate();
  at.setUTCDate(1);
  at.setUTCMonth(at.getUTCMonth() + months);
  const last = new Date(Date.UTC(at.getUTCFullYear(), at.getUTCMonth() + 1, 0)).getUTCDate();
  at.setUTCDate(Math.min(date, last));
  return at.toISOString().slice(0, 10);
}

/** `Thu 27 Nov 2026` */
export const dayText = (day: string): string =>
  new Intl.DateTimeFormat('en-GB', {
    timeZone: 'UTC',
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    year: 'numeric',
  }).format(new Date(utc(day)));
