/** What a single cell of a log says: a number, perhaps with its unit, a clock, a date, or nothing. */
import type { TemperatureUnit } from './types.ts';

export type Decimal = '.' | ',';

/** No number, date or clock is longer than this; what is longer is not looked into. */
const longest = 64;

export interface Figure {
  readonly value: number;
  readonly unit: TemperatureUnit | null;
}

const figure = {
  '.': /^([+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?)\s*(?:°|º|˚|deg\.?)?\s*([CF])?$/i,
  ',': /^([+-]?(?:\d+(?:,\d*)?|,\d+)(?:e[+-]?\d+)?)\s*(?:°|º|˚|deg\.?)?\s*([CF])?$/i,
};

/** The number in a cell, with the unit written behind it; null where it is no number. */
export function readFigure(cell: string, decimal: Decimal): Figure | null {
  const match = figure[decimal].exec(cell.trim().replace(/^[−–]/, '-'));
  if (match === null) return null;
  // A number too large for any reading is still a number (and an impossible one), not a word.
  const value = Number(match[1]!.replace(',', '.'));
  const unit = match[2]?.toUpperCase();
  return { value, unit: unit === 'C' || unit === 'F' ? unit : null };
}

/** Words and marks that loggers write where they have no temperature. */
const nothing =
  /^(?:|-+|–+|—+|\*+|\?+|\.+|n\/?a|nan|none|null|nil|err(?:or)?\.?\s*\d*|fault|open|short|o\.?l|lo|hi|low|high|[+-]?inf(?:inity)?|#[a-z0-9/!?]+|no\s*(?:probe|data|sensor|value)|missing|disconnected|sensor|out\s*of\s*range|over(?:range|flow)?|under(?:range|flow)?)$/i;

export function holdsNothing(cell: string): boolean {
  return nothing.test(cell.trim());
}

const clockPattern = /^(\d{1,4}):(\d{2})(?::(\d{2})(?:[.,](\d{1,9}))?)?\s*(am|pm|a\.m\.|p\.m\.)?$/i;

export interface Clock {
  readonly parts: readonly [number, number, number | null];
  readonly fraction: number;
  readonly half: 'am' | 'pm' | null;
}

/** hh:mm, hh:mm:ss or mm:ss, with a fraction of a second and am or pm where they stand; null where it is no clock. */
export function readClock(cell: string): Clock | null {
  const match = clockPattern.exec(cell.trim());
  if (match === null) return null;
  const [, a, b, c, fraction, half] = match;
  if (Number(b) > 59 || (c !== undefined && Number(c) > 59)) return null;
  return {
    parts: [Number(a), Number(b), c === undefined ? null : Number(c)],
    fraction: fraction === undefined ? 0 : Number(`0.${fraction}`),
    half: half === undefined ? null : half.toLowerCase().startsWith('a') ? 'am' : 'pm',
  };
}

/** Seconds of a clock: hours first, or minutes first where it has two parts and they are minutes and seconds. */
export function clockSeconds({ parts, fraction, half }: Clock, twoParts: 'hh:mm' | 'mm:ss'): number | null {
  const [a, b, c] = parts;
  if (c === null && twoParts === 'mm:ss') return half === null ? a * 60 + b + fraction : null;
  if (half !== null && (a < 1 || a > 12)) return null;
  const hour = half === null ? a : (a % 12) + (half === 'pm' ? 12 : 0);
  return hour * 3600 + b * 60 + (c ?? 0) + fraction;
}

export interface Day {
  /** As written, left to right; a month written as a word has its number in `month`. */
  readonly parts: readonly [number, number, number];
  readonly yearFirst: boolean;
  /** Position (0–2) of a month written as a word, else null. */
  readonly monthWord: 0 | 1 | null;
  readonly dots: boolean;
}

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const numericDay = /^(\d{1,4})([-/.])(\d{1,2})\2(\d{1,4})$/;
const wordDay =
  /^(?:(\d{1,2})[-\s/.]+([a-z]{3})[a-z]*\.?|([a-z]{3})[a-z]*\.?[-\s]+(\d{1,2}))[-\s/,.]+(\d{2,4})$/i;

/** A written day; null where it is none. */
export function readDay(cell: string): Day | null {
  const text = cell.trim();
  const numeric = numericDay.exec(text);
  if (numeric !== null) {
    const [, a, mark, b, c] = numeric;
    const yearFirst = a!.length === 4;
    if (yearFirst ? c!.length > 2 : a!.length > 2 || (c!.length !== 2 && c!.length !== 4)) return null;
    return { parts: [Number(a), Number(b), Number(c)], yearFirst, monthWord: null, dots: mark === '.' };
  }
  const word = wordDay.exec(text);
  if (word === null) return null;
  const month = months.indexOf((word[2] ?? word[3] ?? '').toLowerCase()) + 1;
  if (month === 0) return null;
  const year = Number(word[5]);
  return word[2] !== undefined
    ? { parts: [Number(word[1]), month, year], yearFirst: false, monthWord: 1, dots: false }
    : { parts: [month, Number(word[4]), year], yearFirst: false, monthWord: 0, dots: false };
}

export interface DayAndClock {
  readonly day: Day;
  readonly clock: Clock;
  /** Offset from UTC [s]; null where none is written. */
  readonly offset: number | null;
}

const together =
  /^(\S+(?:[-\s][a-z]{3,9}\.?[-\s,]+\d{2,4}|\s\d{1,2},?\s\d{4})?|[a-z]{3,9}\.?\s\d{1,2},?\s\d{4})(?:\s*T\s*|,\s*|\s+)(\d{1,2}:\d{2}(?::\d{2}(?:[.,]\d+)?)?(?:\s*[ap]\.?m\.?)?)\s*(Z|UTC|GMT|[+-]\d{2}:?\d{2})?$/i;

/** Date and time in one cell, with or without an offset; null where it is none. */
export function readDayAndClock(cell: string): DayAndClock | null {
  const text = cell.trim();
  if (text.length > longest) return null;
  const iso =
    /^(\d{4}-\d{2}-\d{2})[T ](\d{2}:\d{2}(?::\d{2}(?:[.,]\d+)?)?)\s*(Z|[+-]\d{2}(?::?\d{2})?)?$/i.exec(text);
  const match = iso ?? together.exec(text);
  if (match === null) return null;
  const day = readDay(match[1]!);
  const clock = readClock(match[2]!);
  if (day === null || clock === null || clock.parts[0] > 24) return null;
  return { day, clock, offset: match[3] === undefined ? null : offsetSeconds(match[3]) };
}

function offsetSeconds(text: string): number {
  const match = /^([+-])(\d{2}):?(\d{2})?$/.exec(text);
  if (match === null) return 0;
  return (match[1] === '-' ? -1 : 1) * (Number(match[2]) * 3600 + Number(match[3] ?? 0) * 60);
}

export type CellKind = 'date and time' | 'date' | 'clock' | 'number' | 'nothing' | 'text';

export function kindOf(cell: string, decimal: Decimal): CellKind {
  if (cell.length > longest) return 'text';
  if (holdsNothing(cell)) return 'nothing';
  if (readFigure(cell, decimal) !== null) return 'number';
  if (readClock(cell) !== null) return 'clock';
  if (readDayAndClock(cell) !== null) return 'date and time';
  if (readDay(cell) !== null) return 'date';
  return 'text';
}
