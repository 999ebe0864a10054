/** Days of the calendar as a kitchen lives them, in its own zone. */
import { Temporal } from 'temporal-polyfill';

/** The day in a zone at a moment: `2026-11-25`. */
export const dayIn = (zone: string, at: Date): string =>
  Temporal.Instant.fromEpochMilliseconds(at.getTime()).toZonedDateTimeISO(zone).toPlainDate().toString();

/** So many whole days later. */
export const plusDays = (day: string, days: number): string =>
  Temporal.PlainDate.from(day)
    .add({ days: Math.floor(days) })
    .toString();

/** The moment at which a day begins in a zone. */
export const beginOfDay = (zone: string, day: string): Date =>
  new Date(Temporal.PlainDate.from(day).toZonedDateTime(zone).epochMilliseconds);
