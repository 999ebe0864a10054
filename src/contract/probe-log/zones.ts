/** Wall-clock times of a zone into instants, through the hours that a change of clock repeats or skips. */
import { Temporal } from 'temporal-polyfill';

export interface LocalTime {
  readonly line: number;
  readonly year: number;
  readonly month: number;
  readonly day: number;
  /** Seconds since midnight on the wall clock. */
  readonly seconds: number;
}

export function isZone(zone: string): boolean {
  try {
    new Temporal.PlainDate(2026, 1, 1).toZonedDateTime(zone);
    return true;
  } catch {
    return false;
  }
}

/** Days since 1970 of a calendar day; NaN where there is no such day. */
export function dayNumber(year: number, month: number, day: number): number {
  const ms = Date.UTC(year, month - 1, day);
  const back = new Date(ms);
  return back.getUTCMonth() === month - 1 && back.getUTCDate() === day ? ms / 86_400_000 : Number.NaN;
}

/** Seconds since 1970 as if the wall clock were UTC. */
export function asIfUtc(t: LocalTime): number {
  return dayNumber(t.year, t.month, t.day) * 86_400 + t.seconds;
}

export interface Told {
  readonly line: number;
  readonly what: string;
}

/** Offsets from UTC [s] that a wall-clock minute can have: one, two in a repeated hour, none in a skipped one. */
function offsetsAt(zone: string, wall: number): { earlier: number; later: number } {
  const date = new Date(wall * 1000);
  const plain = new Temporal.PlainDateTime(
    date.getUTCFullYear(),
    date.getUTCMonth() + 1,
    date.getUTCDate(),
    date.getUTCHours(),
    date.getUTCMinutes(),
  );
  const offset = (disambiguation: 'earlier' | 'later') =>
    plain.toZonedDateTime(zone, { disambiguation }).offsetNanoseconds / 1e9;
  return { earlier: offset('earlier'), later: offset('later') };
}

/**
 * Instants [s since 1970] of wall-clock times of one zone, in the order of the file. In a repeated hour the first pass is taken
 * until the clock jumps back; a time in a skipped hour shows that the clock was not put forward, and the file is then read by the
 * offset it began with.
 */
export function instantsOf(times: readonly LocalTime[], zone: string): { instants: number[]; told: Told[] } {
  const told: Told[] = [];
  const cache = new Map<number, { earlier: number; later: number }>();
  const lookUp = (wall: number) => {
    // Clocks change on whole quarters of an hour.
    const key = Math.floor(wall / 900);
    let found = cache.get(key);
    if (found === undefined) {
      found = offsetsAt(zone, key * 900);
      cache.set(key, found);
    }
    return found;
  };
  const instants: number[] = [];
  let before = Number.NEGATIVE_INFINITY;
  let wallBefore = Number.NEGATIVE_INFINITY;
  let second = false;
  let repeated = false;
  for (const time of times) {
    const wall = asIfUtc(time);
    const { earlier, later } = lookUp(wall);
    if (earlier < later)
      return notPutForward(times, zone, lookUp(asIfUtc(times[0]!)).earlier, time.line, told);
    if (earlier === later) second = false;
    else {
      if (!second && wall < wallBefore && wallBefore - wall <= earlier - later) {
        second = true;
        told.push({
          line: time.line,
          what: `the clocks of ${zone} go back here: the hour is read a second time`,
        });
      }
      repeated = true;
    }
    const instant = wall - (second ? later : earlier);
    if (
      instant - before > 3600 &&
      repeated &&
      earlier === later &&
      !told.some((t) => t.what.includes('second time'))
    )
      told.push({
        line: time.line,
        what: `the clocks of ${zone} went back just before, and the file shows that hour once only: an hour without readings is counted. If the logger’s clock is never changed, give its fixed offset instead of the zone`,
      });
    if (earlier === later) repeated = false;
    instants.push(instant);
    before = instant;
    wallBefore = wall;
  }
  return { instants, told };
}

function notPutForward(
  times: readonly LocalTime[],
  zone: string,
  offset: number,
  line: number,
  told: Told[],
) {
  told.push({
    line,
    what: `this time does not exist in ${zone} (the clocks go forward): the logger’s clock was not changed, and the whole file is read by the offset it began with`,
  });
  return { instants: times.map((time) => asIfUtc(time) - offset), told };
}
