/** The time column into seconds: elapsed, clock, instants, or wall-clock times of a zone. */
import { clockSeconds, type Day, readClock, readDay, readDayAndClock, readFigure } from './cells.ts';
import { namesElapsed, type Row } from './columns.ts';
import type { HowRead, Question, TimeKind, Warning } from './types.ts';
import { asIfUtc, instantsOf, isZone, type LocalTime } from './zones.ts';

/** Seconds of every row, NaN where its time cannot be read; `instant`: they count from 1970. */
export interface TimesRead {
  readonly seconds: number[];
  readonly absolute: boolean;
}

export type DateOrder = 'ymd' | 'dmy' | 'mdy';

interface Chosen<T> {
  readonly value: T | null;
  readonly question?: Question;
}

/** Year, month and day in an order; null where there is no such day. */
export function calendarDay(day: Day, order: DateOrder): { year: number; month: number; day: number } | null {
  const [a, b, c] = day.parts;
  const year = day.yearFirst ? a : c;
  let month: number;
  let date: number;
  if (day.yearFirst) [month, date] = [b, c];
  else if (day.monthWord !== null) [month, date] = day.monthWord === 0 ? [a, b] : [b, a];
  else [month, date] = order === 'mdy' ? [a, b] : [b, a];
  if (month < 1 || month > 12 || date < 1 || date > 31) return null;
  return { year: year < 100 ? 2000 + year : year, month, day: date };
}

function dayCell(row: Row, how: Pick<HowRead, 'timeColumn' | 'dateColumn'>): Day | null {
  const cell = row.cells[how.dateColumn ?? how.timeColumn ?? 0] ?? '';
  return how.dateColumn === null ? (readDayAndClock(cell)?.day ?? null) : readDay(cell);
}

/** Order of day and month: from the file where a day above 12 tells, else from what makes the shorter log, and then shown. */
export function findDateOrder(
  rows: readonly Row[],
  how: Pick<HowRead, 'timeColumn' | 'dateColumn'>,
): Chosen<DateOrder> {
  let firstAbove = false;
  let secondAbove = false;
  let dots = false;
  let plain = false;
  let halves = false;
  const seen = new Map<string, Day>();
  for (const row of rows) {
    const day = dayCell(row, how);
    if (day === null) continue;
    halves ||= /[ap]\.?m\.?\s*$/i.test(row.cells[how.timeColumn ?? 0] ?? '');
    if (day.yearFirst) continue;
    if (day.monthWord !== null) return { value: day.monthWord === 0 ? 'mdy' : 'dmy' };
    plain = true;
    dots ||= day.dots;
    firstAbove ||= day.parts[0] > 12;
    secondAbove ||= day.parts[1] > 12;
    seen.set(day.parts.join('/'), day);
  }
  if (!plain) return { value: 'ymd' };
  if (firstAbove && secondAbove)
    return {
      value: null,
      question: ask('dateOrder', 'some dates have a day above 12 first, others second', ['dmy', 'mdy'], true),
    };
  if (firstAbove || secondAbove) return { value: firstAbove ? 'dmy' : 'mdy' };
  const spread = (order: DateOrder) => {
    const days = [...seen.values()].map((day) => {
      const d = calendarDay(day, order);
      return d === null ? 0 : Date.UTC(d.year, d.month - 1, d.day) / 86_400_000;
    });
    return Math.max(...days) - Math.min(...days);
  };
  const [asDmy, asMdy] = [spread('dmy'), spread('mdy')];
  const value = asDmy === asMdy ? (halves && !dots ? 'mdy' : 'dmy') : asDmy < asMdy ? 'dmy' : 'mdy';
  const example = [...seen.keys()][0] ?? '';
  if (dots && value === 'dmy') return { value };
  return {
    value,
    question: ask(
      'dateOrder',
      `${example} could be day first or month first; ${value === 'dmy' ? 'day' : 'month'} first was taken`,
      ['dmy', 'mdy'],
      false,
    ),
  };
}

export function ask(
  field: Question['field'],
  why: string,
  options: readonly string[],
  needed: boolean,
): Question {
  return { field, why, options, needed };
}

/** Is a column of clocks elapsed time, or the time of day? */
export function clockKind(rows: readonly Row[], column: number, name: string): TimeKind {
  if (namesElapsed(name)) return 'elapsed clock';
  const clocks = rows.map((row) => readClock(row.cells[column] ?? '')).filter((c) => c !== null);
  const zero = clocks.some((c) => c.parts.every((part) => (part ?? 0) === 0) && c.half === null);
  if (clocks.some((c) => c.half !== null)) return 'time of day';
  if (clocks.some((c) => c.parts[0] > 23)) return 'elapsed clock';
  const first = clocks[0];
  return zero && first !== undefined && first.parts[0] === 0 ? 'elapsed clock' : 'time of day';
}

/** Does "12:30" mean hours and minutes or minutes and seconds? */
export function findTwoParts(
  rows: readonly Row[],
  column: number,
  name: string,
  kind: TimeKind,
): Chosen<'hh:mm' | 'mm:ss'> {
  const clocks = rows.map((row) => readClock(row.cells[column] ?? '')).filter((c) => c !== null);
  if (!clocks.some((c) => c.parts[2] === null)) return { value: null };
  if (/mm:ss|m:ss|min.*sec/i.test(name)) return { value: 'mm:ss' };
  if (/hh?:mm|hours.*min/i.test(name) || kind !== 'elapsed clock') return { value: 'hh:mm' };
  const most = clocks.reduce((m, c) => Math.max(m, c.parts[0]), 0);
  if (most >= 48)
    return {
      value: 'mm:ss',
      question: ask(
        'twoParts',
        `the times run up to ${most}:…, so they were taken as minutes and seconds`,
        ['mm:ss', 'hh:mm'],
        false,
      ),
    };
  return {
    value: null,
    question: ask(
      'twoParts',
      'the file does not say whether its times are hours and minutes or minutes and seconds',
      ['hh:mm', 'mm:ss'],
      true,
    ),
  };
}

const day = 86_400;

/** Reads the time of every row by the choices made. Says what it met on the way. */
export function readTimes(rows: readonly Row[], how: HowRead, warn: (warning: Warning) => void): TimesRead {
  const { time, timeColumn } = how;
  if (timeColumn === null) {
    const every = how.everyS ?? Number.NaN;
    return { seconds: rows.map((_, i) => i * every), absolute: false };
  }
  const cell = (row: Row) => row.cells[timeColumn] ?? '';
  switch (time) {
    case 's':
    case 'min':
    case 'h':
    case 'unix':
    case 'unix ms': {
      const factor = { s: 1, min: 60, h: 3600, unix: 1, 'unix ms': 0.001 }[time];
      const seconds = rows.map((row) => (readFigure(cell(row), how.decimal)?.value ?? Number.NaN) * factor);
      return { seconds, absolute: time === 'unix' || time === 'unix ms' };
    }
    case 'elapsed clock':
    case 'time of day': {
      const seconds = rows.map((row) => {
        const clock = readClock(cell(row));
        return clock === null ? Number.NaN : (clockSeconds(clock, how.twoParts ?? 'hh:mm') ?? Number.NaN);
      });
      return {
        seconds: time === 'time of day' ? pastMidnight(rows, seconds, warn) : seconds,
        absolute: false,
      };
    }
    default:
      return datedTimes(rows, how, warn);
  }
}

/** A clock that jumps back by more than half a day has passed midnight; forward by as much, in a file written backwards. */
function pastMidnight(
  rows: readonly Row[],
  seconds: readonly number[],
  warn: (w: Warning) => void,
): number[] {
  const down = backwards(seconds);
  let shift = 0;
  let before = Number.NaN;
  return seconds.map((s, i) => {
    if (Number.isNaN(s)) return s;
    const passed = down ? s - before > day / 2 : before - s > day / 2;
    if (passed) {
      shift += down ? -day : day;
      warn({ line: rows[i]!.line, what: 'midnight is passed here' });
    }
    before = s;
    return s + shift;
  });
}

function backwards(seconds: readonly number[]): boolean {
  let down = 0;
  for (let i = 1; i < Math.min(seconds.length, 200); i++) if (seconds[i]! < seconds[i - 1]!) down++;
  return down > Math.min(seconds.length, 200) / 2;
}

function datedTimes(rows: readonly Row[], how: HowRead, warn: (warning: Warning) => void): TimesRead {
  const order = how.dateOrder ?? 'ymd';
  const local: (LocalTime | null)[] = [];
  const offsets: (number | null)[] = [];
  for (const row of rows) {
    const cell = row.cells[how.timeColumn ?? 0] ?? '';
    const both = how.dateColumn === null ? readDayAndClock(cell) : null;
    const written = both?.day ?? (how.dateColumn === null ? null : readDay(row.cells[how.dateColumn] ?? ''));
    const clock = both?.clock ?? (how.dateColumn === null ? null : readClock(cell));
    const date = written === null ? null : calendarDay(written, order);
    const seconds = clock === null ? null : clockSeconds(clock, 'hh:mm');
    local.push(date === null || seconds === null ? null : { line: row.line, ...date, seconds });
    offsets.push(both?.offset ?? null);
  }
  if (how.time === 'instant')
    return {
      seconds: local.map((t, i) => (t === null ? Number.NaN : asIfUtc(t) - (offsets[i] ?? Number.NaN))),
      absolute: true,
    };
  if (how.zone === null || !isZone(how.zone))
    return { seconds: local.map((t) => (t === null ? Number.NaN : asIfUtc(t))), absolute: false };
  const known = local.filter((t) => t !== null && Number.isFinite(asIfUtc(t))) as LocalTime[];
  const forward = known.length < 2 || asIfUtc(known.at(-1)!) >= asIfUtc(known[0]!);
  const { instants, told } = instantsOf(forward ? known : [...known].reverse(), how.zone);
  if (!forward) instants.reverse();
  for (const { line, what } of told) warn({ line, what });
  let next = 0;
  return {
    seconds: local.map((t) => (t !== null && Number.isFinite(asIfUtc(t)) ? instants[next++]! : Number.NaN)),
    absolute: true,
  };
}
