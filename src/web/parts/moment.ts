/** Instants as a kitchen reads them, on its own wall clock. */
export function moment(instant: string, zone: string): string {
  return new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    day: 'numeric',
    month: 'short',
    year: 'numeric',
    hour: '2-digit',
    minute: '2-digit',
  }).format(new Date(instant));
}

/** The day of an instant on the kitchen's calendar. */
export function dayOf(instant: string, zone: string): string {
  return new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    day: 'numeric',
    month: 'short',
    year: 'numeric',
  }).format(new Date(instant));
}

/** A message in which any instant is written as this device's own clock shows it. */
export function withClock(message: string): string {
  return message.replace(/\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d+)?)?Z/g, (instant) =>
    moment(instant, Intl.DateTimeFormat().resolvedOptions().timeZone),
  );
}
