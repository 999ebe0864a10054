/** Finds how a log is written, by what it says of itself and what its values look like. */
import type { Problem } from '../problem.ts';
import { type CellKind, kindOf, readDayAndClock } from './cells.ts';
import { likelyUnit } from './channels.ts';
import {
  findTime,
  isUnitRow,
  namesIndex,
  namesSomethingElse,
  numericTimeKind,
  plainName,
  type Row,
  unitIn,
} from './columns.ts';
import { cellsOf, type Dialect, type Line, looksLikeData } from './lines.ts';
import { ask, clockKind, findDateOrder, findTwoParts } from './times.ts';
import type {
  ChannelColumn,
  Correction,
  HowRead,
  Question,
  TemperatureUnit,
  TimeKind,
  Warning,
} from './types.ts';

export interface Table {
  readonly rows: readonly Row[];
  readonly headerLine: number | null;
  readonly names: readonly string[];
  /** Cells of a row of units under the names. */
  readonly units: readonly string[];
  /** Text of the lines above the readings. */
  readonly preamble: string;
}

/** Splits the lines into what stands above the readings, names, units, and the readings. */
export function findRows(
  lines: readonly Line[],
  comments: readonly Line[],
  dialect: Dialect,
  endsInBreak: boolean,
  correction: Correction,
  warn: (warning: Warning) => void,
): Table | Problem {
  const split = lines.map((line) => ({ line: line.number, cells: cellsOf(line.text, dialect.delimiter) }));
  const isData = (row: Row) =>
    looksLikeData(row.cells.map((cell) => kindOf(cell, dialect.decimal))) &&
    !(row.cells.length === 1 && dialect.width > 1);
  let first = split.findIndex(
    (row, i) =>
      isData(row) &&
      (row.cells.length >= dialect.width || i + 1 === split.length || follows(split, i, isData)),
  );
  if (correction.firstDataLine !== undefined)
    first = split.findIndex((row) => row.line >= correction.firstDataLine!);
  if (first < 0)
    return { path: 'firstDataLine', found: 'no reading there', allowed: 'the line of the first reading' };

  const head = findHead(split, comments, first, dialect, correction);
  const { headerLine, names, units } = head;
  for (const row of split.slice(0, first))
    if (headerLine !== null && row.line > headerLine && row.line !== head.unitLine)
      warn({ line: row.line, what: `no reading in “${row.cells.join(' ').slice(0, 40)}”, left out` });

  const rows: Row[] = [];
  for (let i = first; i < split.length; i++) {
    const row = split[i]!;
    if (isData(row)) rows.push(row);
    else warn({ line: row.line, what: `no reading in “${row.cells.join(' ').slice(0, 40)}”, left out` });
  }
  const cut = endsInBreak ? null : cutShort(rows, dialect);
  if (cut !== null) {
    rows.pop();
    warn({ line: cut.line, what: 'the last line is cut short: left out' });
  }
  const widest = rows.reduce((w, row) => Math.max(w, row.cells.length), 0);
  if (dialect.delimiter === ',' && names.length >= 2 && dialect.width > names.length)
    return {
      path: 'decimal',
      found: `${names.length} names over rows of ${dialect.width} cells (line ${rows[0]?.line ?? 0}); decimal commas between commas?`,
      allowed: 'another delimiter (semicolon, tab), decimal points, or numbers in quotation marks',
    };
  const preamble = [
    ...split.slice(0, first).map((row) => row.cells.join(' ')),
    ...comments.map((c) => c.text),
  ].join('\n');
  const pad = (cells: readonly string[]) => Array.from({ length: widest }, (_, i) => cells[i] ?? '');
  return { rows, headerLine, names: names.length === 0 ? [] : pad(names), units: pad(units), preamble };
}

function follows(split: readonly Row[], i: number, isData: (row: Row) => boolean): boolean {
  return split.slice(i + 1, i + 4).filter(isData).length >= 2;
}

interface Head {
  readonly headerLine: number | null;
  readonly unitLine: number | null;
  readonly names: readonly string[];
  readonly units: readonly string[];
}

/** Names, and the row of units under them where there is one, among the last lines above the readings. */
function findHead(
  split: readonly Row[],
  comments: readonly Line[],
  first: number,
  dialect: Dialect,
  correction: Correction,
): Head {
  const none: Head = { headerLine: null, unitLine: null, names: [], units: [] };
  if (correction.headerLine === null) return none;
  if (correction.headerLine !== undefined) {
    const at = split.findIndex((row) => row.line === correction.headerLine);
    const noted = comments.find((c) => c.number === correction.headerLine);
    if (at < 0) return noted === undefined ? none : { ...none, ...named(noted, dialect) };
    const under = split[at + 1];
    const hasUnits = under !== undefined && at + 1 < first && isUnitRow(under.cells);
    return headOf(split[at]!, hasUnits ? under : null);
  }
  const near = split.slice(Math.max(0, first - 6), first).reverse();
  const unitRow = near.find((row) => isUnitRow(row.cells)) ?? null;
  const over = near.filter((row) => row !== unitRow && (unitRow === null || row.line < unitRow.line));
  const row =
    over.find((r) => areNames(r.cells, dialect, true)) ?? over.find((r) => areNames(r.cells, dialect, false));
  if (row !== undefined) return headOf(row, unitRow);
  if (unitRow !== null) return headOf(unitRow, unitRow);
  const firstLine = split[first]?.line ?? 0;
  const noted = comments.filter((c) => c.number < firstLine).at(-1);
  if (noted === undefined) return none;
  const head = named(noted, dialect);
  return head.names.length === dialect.width && areNames(head.names, dialect, false)
    ? { ...none, ...head }
    : none;
}

function headOf(row: Row, unitRow: Row | null): Head {
  return {
    headerLine: row.line,
    unitLine: unitRow?.line ?? null,
    names: row.cells,
    units: unitRow?.cells ?? [],
  };
}

/** Names in a commented line. */
function named(line: Line, dialect: Dialect) {
  const bare = line.text.replace(/^\s*(?:#|\/\/|%|!|--|\*)+\s*/, '');
  return { headerLine: line.number, names: cellsOf(bare, dialect.delimiter) };
}

/** Could these be names: words, about as many as the rows are wide; strictly: nothing but words. */
function areNames(cells: readonly string[], dialect: Dialect, strictly: boolean): boolean {
  if (cells.length < dialect.width - 2 || (dialect.width > 1 && cells.length < 2)) return false;
  if (dialect.delimiter === ' ' && cells.length !== dialect.width) return false;
  const kinds = cells.map((cell) => kindOf(cell, dialect.decimal));
  const words = kinds.filter((kind) => kind === 'text').length;
  return strictly ? words > 0 && kinds.every((kind) => kind === 'text' || kind === 'nothing') : words > 0;
}

/** The last row of a file that does not end in a line break: does it lack a cell, or end in the middle of a number? */
function cutShort(rows: readonly Row[], dialect: Dialect): Row | null {
  const last = rows.at(-1);
  if (last === undefined || rows.length < 3) return null;
  if (last.cells.length < dialect.width) return last;
  const end = last.cells.at(-1) ?? '';
  if (/\d[.,]$/.test(end)) return last;
  const places = (cell: string) => /[.,](\d+)\D*$/.exec(cell)?.[1]?.length ?? 0;
  const others = rows.slice(-50, -1).map((row) => places(row.cells.at(-1) ?? ''));
  const least = Math.min(...others);
  return places(end) < least ? last : null;
}

/** Every comma stands before exactly three digits. */
function couldBeThousands(rows: readonly Row[]): boolean {
  const withComma = rows.flatMap((row) => row.cells.filter((cell) => /\d,/.test(cell)));
  return withComma.length > 0 && withComma.every((cell) => /^[+-]?[1-9]\d{0,2}(?:,\d{3})+$/.test(cell));
}

interface HowFound {
  readonly how: HowRead;
  readonly questions: readonly Question[];
}

/** Every choice, each from the correction where it has one. */
export function findHow(
  table: Table,
  dialect: Dialect,
  kinds: readonly CellKind[],
  correction: Correction,
): HowFound {
  const questions: Question[] = [];
  const { rows, names, units } = table;
  if (
    correction.decimal === undefined &&
    dialect.delimiter === ',' &&
    dialect.decimal === ',' &&
    couldBeThousands(rows)
  )
    questions.push(ask('decimal', 'its commas could be decimal commas or thousands', [','], true));
  const { decimal } = dialect;
  const found = findTime(kinds, names, rows, decimal);
  const timeColumn = correction.timeColumn === undefined ? found.time : correction.timeColumn;
  const dateColumn = correction.dateColumn === undefined ? found.date : correction.dateColumn;
  const everyS = correction.everyS ?? null;
  if (timeColumn === null && everyS === null)
    questions.push(ask('everyS', 'the file has no column of times', ['seconds between readings'], true));
  const name = timeColumn === null ? '' : (names[timeColumn] ?? '');
  const time = correction.time ?? findKind(table, kinds, timeColumn, dateColumn, decimal, questions);
  const columns = { timeColumn, dateColumn };

  let twoParts = correction.twoParts ?? null;
  let dateOrder = correction.dateOrder ?? null;
  if (timeColumn !== null && (time === 'elapsed clock' || time === 'time of day') && twoParts === null) {
    const choice = findTwoParts(rows, timeColumn, `${name} ${units[timeColumn] ?? ''}`, time);
    twoParts = choice.value;
    if (choice.question) questions.push(choice.question);
  }
  const dated = time === 'local' || time === 'instant';
  if (dated && dateOrder === null) {
    const choice = findDateOrder(rows, columns);
    dateOrder = choice.value;
    if (choice.question) questions.push(choice.question);
  }
  const zone = time === 'local' ? (correction.zone ?? null) : null;
  if (time === 'local' && zone === null)
    questions.push(
      ask(
        'zone',
        'the times are a wall clock’s; without its zone an hour changed by summer time is not seen',
        ['an IANA zone, e.g. Europe/London'],
        false,
      ),
    );
  const channels = withUnits(table, kinds, columns, dialect, correction, questions);
  const said = new Set(channels.map((channel) => channel.unit));
  const [only] = [...said];
  return {
    how: {
      delimiter: dialect.delimiter,
      decimal,
      headerLine: table.headerLine,
      firstDataLine: rows[0]?.line ?? 0,
      timeColumn,
      dateColumn,
      time: timeColumn === null ? null : time,
      twoParts,
      dateOrder,
      zone,
      everyS: timeColumn === null ? everyS : null,
      channels,
      unit: said.size === 1 ? (only ?? null) : said.size === 0 || said.has(null) ? null : 'mixed',
      reversed: correction.reversed ?? false,
    },
    questions,
  };
}

function findKind(
  { rows, names, units }: Table,
  kinds: readonly CellKind[],
  column: number | null,
  dateColumn: number | null,
  decimal: '.' | ',',
  questions: Question[],
): TimeKind | null {
  if (column === null) return null;
  const name = `${names[column] ?? ''} ${units[column] ?? ''}`;
  if (kinds[column] === 'date and time') {
    const some = rows.slice(0, 50).map((row) => readDayAndClock(row.cells[column] ?? ''));
    return some.some((cell) => cell !== null && cell.offset !== null) ? 'instant' : 'local';
  }
  if (dateColumn !== null) return 'local';
  if (kinds[column] === 'clock') return clockKind(rows, column, name);
  const kind = numericTimeKind(names[column] ?? '', units[column] ?? '', rows, column, decimal);
  if (kind === null)
    questions.push(
      ask(
        'time',
        'the file does not say whether its times are seconds, minutes or hours',
        ['s', 'min', 'h'],
        true,
      ),
    );
  return kind;
}

function withUnits(
  table: Table,
  kinds: readonly CellKind[],
  { timeColumn, dateColumn }: { timeColumn: number | null; dateColumn: number | null },
  dialect: Dialect,
  correction: Correction,
  questions: Question[],
): readonly ChannelColumn[] {
  const forced = correction.unit === 'C' || correction.unit === 'F' ? correction.unit : null;
  const { rows, names, units, preamble } = table;
  const chosen: ChannelColumn[] = correction.channels
    ? [...correction.channels]
    : kinds.flatMap((kind, column) => {
        const name = names[column] ?? '';
        if (kind !== 'number' || column === timeColumn || column === dateColumn) return [];
        if (namesIndex(name) || namesSomethingElse(name) || countsRows(rows, column, name, timeColumn))
          return [];
        const unit = unitIn(units[column] ?? '') ?? unitIn(name) ?? cellUnit(rows, column);
        return [{ column, name: plainName(name, column), unit }];
      });
  const stated =
    /(?:unit|temp(?:erature)?)[^\n]{0,20}?[:=,;\s]\s*(?:°|º|deg\.?\s*)?([CF])(?:elsius|ahrenheit)?\b/i.exec(
      preamble,
    )?.[1];
  const whole = stated === undefined ? null : (stated.toUpperCase() as TemperatureUnit);
  const silent = chosen.filter((channel) => channel.unit === null).map((channel) => channel.column);
  let filled: TemperatureUnit | null = forced ?? whole;
  if (filled === null && silent.length > 0) {
    const others = new Set(chosen.flatMap((channel) => channel.unit ?? []));
    filled = others.size === 1 ? [...others][0]! : likelyUnit(rows, silent, dialect.decimal);
    const why = 'the file does not say whether its temperatures are °C or °F';
    if (filled === null) questions.push(ask('unit', why, ['C', 'F'], true));
    else
      questions.push(ask('unit', `${why}; by their size they were taken as °${filled}`, ['C', 'F'], false));
  }
  return chosen.map((channel) => ({ ...channel, unit: forced ?? channel.unit ?? filled }));
}

/** Unit written behind the numbers themselves. */
function cellUnit(rows: readonly Row[], column: number): TemperatureUnit | null {
  for (const row of rows.slice(0, 50)) {
    const match = /\d\s*(?:°|º|˚|deg\.?)?\s*([CF])$/i.exec(row.cells[column] ?? '');
    if (match !== null) return match[1]!.toUpperCase() as TemperatureUnit;
  }
  return null;
}

/** A nameless column that counts 1, 2, 3 … beside a column of times is the row number. */
function countsRows(rows: readonly Row[], column: number, name: string, timeColumn: number | null): boolean {
  if (name !== '' || timeColumn === null || timeColumn === column || rows.length < 5) return false;
  return rows.every((row, i) => Number(row.cells[column]) === Number(rows[0]!.cells[column]) + i);
}
