/** Times on the wall clock of the kitchen. */
export const clock = (at: string, zone: string, seconds = false): string =>
  new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    hour: '2-digit',
    minute: '2-digit',
    ...(seconds ? { second: '2-digit' } : {}),
    hourCycle: 'h23',
  }).format(new Date(at));

export const day = (at: string | Date, zone: string): string =>
  new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    year: 'numeric',
  }).format(new Date(at));

/** The clock alone today, with the day in front of it otherwise. */
export const moment = (at: string, zone: string, now: Date): string =>
  day(at, zone) === day(now, zone) ? clock(at, zone) : `${day(at, zone)}, ${clock(at, zone)}`;
