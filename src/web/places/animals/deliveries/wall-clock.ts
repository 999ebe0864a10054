/** An instant as the kitchen's clock on the wall shows it, and back. Pure. */

/** `2026-11-19T09:05`, as a field for day and time holds it. */
export function onTheWall(instant: string, zone: string): string {
  const parts = new Intl.DateTimeFormat('en-CA', {
    timeZone: zone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).formatToParts(new Date(instant));
  const of = (type: string) => parts.find((p) => p.type === type)?.value ?? '';
  return `${of('year')}-${of('month')}-${of('day')}T${of('hour')}:${of('minute')}`;
}

/** The instant at which the wall shows it; null where it is no time, or an hour that the clocks skip. */
export function instantOf(wall: string, zone: string): string | null {
  const guess = /^\d{4}-\d\d-\d\dT\d\d:\d\d$/.test(wall) ? Date.parse(`${wall}:00Z`) : Number.NaN;
  if (Number.isNaN(guess)) return null;
  // A zone is never further than 14 h from universal time; try the offset there, then the one at the answer.
  let at = guess;
  for (let i = 0; i < 3; i++) {
    const shown = Date.parse(`${onTheWall(new Date(at).toISOString(), zone)}:00Z`);
    if (shown === guess) return new Date(at).toISOString();
    at += guess - shown;
  }
  return null;
}
