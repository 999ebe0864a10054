/** What a probe log is once read, how it was read, and what the reader asks. Shared by web, server and command line. */
import type { Problem } from '../problem.ts';

export type Delimiter = ',' | ';' | '\t' | '|' | ' ';

export type TemperatureUnit = 'C' | 'F';

/**
 * How the time column is understood.
 * - `s`, `min`, `h`: elapsed, as a number; `elapsed clock`: elapsed as hh:mm:ss (or mm:ss, see `twoParts`)
 * - `time of day`: a clock without a date; midnight is passed when it jumps back by more than half a day
 * - `instant`: date, time and offset (ISO 8601 with Z or ±hh:mm); `unix`: seconds since 1970, `unix ms`: milliseconds
 * - `local`: date and time on the wall clock of `zone`
 */
export type TimeKind =
  | 's'
  | 'min'
  | 'h'
  | 'elapsed clock'
  | 'time of day'
  | 'instant'
  | 'unix'
  | 'unix ms'
  | 'local';

export interface ChannelColumn {
  /** Column, counted from 0. */
  readonly column: number;
  readonly name: string;
  /** null: the file does not say and its values could be either; nothing is read until somebody says. */
  readonly unit: TemperatureUnit | null;
}

/** Every choice the reader made. Any of them can be handed back, changed, as a correction. */
export interface HowRead {
  readonly delimiter: Delimiter;
  readonly decimal: '.' | ',';
  /** Line number (from 1) of the names, null where there are none. */
  readonly headerLine: number | null;
  /** Line number (from 1) of the first row of data. */
  readonly firstDataLine: number;
  /** Column (from 0) that holds the time, or date and time; null where there is none and `everyS` is used. */
  readonly timeColumn: number | null;
  /** Column of the date where date and time stand apart, else null. */
  readonly dateColumn: number | null;
  /** null: a number whose unit the file does not say; nothing is read until somebody says. */
  readonly time: TimeKind | null;
  /** What "12:30" means: hours and minutes, or minutes and seconds. Null where no such value occurs. */
  readonly twoParts: 'hh:mm' | 'mm:ss' | null;
  /** Order of day, month and year in a written date; null where no date is written. */
  readonly dateOrder: 'ymd' | 'dmy' | 'mdy' | null;
  /** IANA zone in which local date-times are read; null where they are not local. */
  readonly zone: string | null;
  /** Interval between readings [s] where the file has no time column; only ever set by a correction. */
  readonly everyS: number | null;
  readonly channels: readonly ChannelColumn[];
  /** The unit all channels share, 'mixed', or null where it could not be told. As a correction it sets every channel. */
  readonly unit: TemperatureUnit | 'mixed' | null;
  /** A file written newest first is turned round. */
  readonly reversed: boolean;
}

export interface Reading {
  /** Seconds since the first reading of the file. */
  readonly s: number;
  readonly C: number;
}

export interface Channel {
  readonly name: string;
  readonly points: readonly Reading[];
  /** Instant of s = 0 (ISO 8601, UTC); absent where the file gives elapsed time only. */
  readonly start?: string;
  /** Cells of this channel that held no temperature and were left out. */
  readonly dropped: number;
  /** Longest time between two readings [s]. */
  readonly longestGapS: number;
}

/** Something the reader did or noticed. `line` counts from 1; null concerns the whole file. */
export interface Warning {
  readonly line: number | null;
  readonly what: string;
}

/** A choice that could be wrong and that the user should see first, with what else it could be. */
export interface Question {
  readonly field: 'unit' | 'time' | 'twoParts' | 'dateOrder' | 'zone' | 'timeColumn' | 'everyS' | 'decimal';
  readonly why: string;
  readonly options: readonly string[];
  /** True: nothing can be read until it is answered. False: a choice was made and is only shown. */
  readonly needed: boolean;
}

export interface ProbeLog {
  /** null where the text is no log at all. */
  readonly how: HowRead | null;
  readonly channels: readonly Channel[];
  readonly warnings: readonly Warning[];
  readonly questions: readonly Question[];
  /** Not empty: the file was refused, and `channels` is empty. */
  readonly problems: readonly Problem[];
}

/** What the caller may say; everything left out is found from the text. */
export type Correction = { readonly [K in keyof HowRead]?: HowRead[K] | undefined };

export interface Limits {
  readonly maxBytes: number;
  readonly maxPoints: number;
}
