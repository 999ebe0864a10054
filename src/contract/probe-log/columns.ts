/** Which column is the time, which are temperatures, and in which unit, from names, unit rows and the values themselves. */
import { type CellKind, type Decimal, holdsNothing, kindOf, readFigure } from './cells.ts';
import type { TemperatureUnit, TimeKind } from './types.ts';

export interface Row {
  readonly line: number;
  readonly cells: readonly string[];
}

/** The kind most cells of a column have, those that hold nothing apart. */
export function columnKinds(rows: readonly Row[], decimal: Decimal): CellKind[] {
  const width = rows.reduce((w, row) => Math.max(w, row.cells.length), 0);
  const step = Math.max(1, Math.floor(rows.length / 400));
  return Array.from({ length: width }, (_, column) => {
    const counts = new Map<CellKind, number>();
    for (let i = 0; i < rows.length; i += step) {
      const kind = kindOf(rows[i]!.cells[column] ?? '', decimal);
      if (kind !== 'nothing') counts.set(kind, (counts.get(kind) ?? 0) + 1);
    }
    return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? 'nothing';
  });
}

const celsius = /[°º˚]\s*C|deg\.?\s*C|celsius|centigrade|(?:^|[^A-Za-z])C(?:[^A-Za-z]|$)|[a-z]C$/;
const fahrenheit = /[°º˚]\s*F|deg\.?\s*F|fahrenheit|(?:^|[^A-Za-z])F(?:[^A-Za-z]|$)|[a-z]F$/;

/** Temperature unit that a name or a unit row states; null where it states none, or both. */
export function unitIn(text: string): TemperatureUnit | null {
  const c = celsius.test(text) || /celsius/i.test(text);
  const f = fahrenheit.test(text) || /fahrenheit/i.test(text);
  return c === f ? null : c ? 'C' : 'F';
}

const apart = (words: string) => new RegExp(`(?:^|[^a-z])(?:${words})(?:[^a-z]|$)`, 'i');
const secondsName = apart('s|secs?|seconds?|sek|sekunden?|seg|segundos?|secondes?|secondi');
const minutesName = apart('mins?|minutes?|minuten?|minutos?|minuti');
const hoursName = apart('h|hrs?|hours?|std|stunden?|heures?|horas?|ore');
const millisName = apart('ms|millis|milliseconds?');

/** Unit of elapsed time that a name states. */
export function timeUnitIn(name: string): 's' | 'min' | 'h' | null {
  const spaced = name.replace(/([a-z])([A-Z])/g, '$1 $2').replace(/_/g, ' ');
  if (millisName.test(spaced)) return null;
  if (minutesName.test(spaced)) return 'min';
  if (secondsName.test(spaced)) return 's';
  return hoursName.test(spaced) ? 'h' : null;
}

const timeName =
  /^\W*(?:elapsed|time|timestamp|date|datum|zeit|uhrzeit|temps|heure|tiempo|hora|fecha|duration|t\b|clock|when)/i;
const indexName =
  /^\W*(?:#|no\.?|nr\.?|num(?:ber)?|index|idx|id|record|row|sample|reading|point|n|scan)\W*$/i;
const otherName =
  /humid|\brh\b|r\.h\.|%|batt|volt|\bv\b|\bmv\b|press|\bbar\b|co2|door|light|lux|signal|rssi|\bppm\b|weight|mass|\bkg\b|setpoint|set point|alarm|speed|rpm|power|watt/i;
const temperatureName = /temp|core|probe|°|kern|fühler|sonde|noyau|cœur|sonda/i;

export function namesIndex(name: string): boolean {
  return indexName.test(name);
}
export function namesSomethingElse(name: string): boolean {
  return otherName.test(name) && !(temperatureName.test(name) && unitIn(name) !== null);
}

export const namesElapsed = (name: string): boolean =>
  /elapsed|duration|since|dauer|ecoul|écoul|durée|transcurrido|run\s*time|mm:ss|timer/i.test(name);

/** A name without the unit that stands behind it. */
export function plainName(name: string, column: number): string {
  const plain = name
    .replace(/[[(]\s*(?:°|º|˚|deg\.?|Â°|\uFFFD)?\s*(?:[CF]|celsius|fahrenheit)\s*[\])]/i, '')
    .replace(/[\s_,/-]*(?:in\s+)?(?:°|º|˚|deg\.?\s*|Â°|\uFFFD)\s*[CF]\s*$/i, '')
    .replace(/([a-z])[CF]$/, '$1')
    .replace(/[\s_/,-]+[CF]$/, '')
    .replace(/^["'\s]+|["'\s]+$/g, '');
  return plain === '' || /^[CF]$/.test(plain) ? `channel ${column + 1}` : plain;
}

export interface TimeColumns {
  readonly time: number | null;
  readonly date: number | null;
}

/** Finds the time: date and time in one cell; date beside clock; clock; else a number that rises or is named so. */
export function findTime(
  kinds: readonly CellKind[],
  names: readonly string[],
  rows: readonly Row[],
  decimal: Decimal,
): TimeColumns {
  const both = kinds.indexOf('date and time');
  if (both >= 0) return { time: both, date: null };
  const clock = kinds.indexOf('clock');
  const date = kinds.indexOf('date');
  if (clock >= 0) return { time: clock, date: date >= 0 ? date : null };
  const numbers = kinds.flatMap((kind, i) => (kind === 'number' ? [i] : []));
  const named = numbers.filter(
    (i) => !namesIndex(names[i] ?? '') && isTimeName(names[i] ?? '') && unitIn(names[i] ?? '') === null,
  );
  const timed = named.find((i) => steady(rows, i, decimal)) ?? named[0];
  if (timed !== undefined) return { time: timed, date: null };
  if (numbers.length < 2) return { time: null, date: null };
  const rising = numbers.filter((i) => couldBeTime(names[i] ?? '') && steady(rows, i, decimal));
  return { time: rising[0] ?? null, date: null };
}

/** A name that speaks neither of a temperature nor of a row number. */
function couldBeTime(name: string): boolean {
  return !namesIndex(name) && !temperatureName.test(name) && unitIn(name) === null && !otherName.test(name);
}

function isTimeName(name: string): boolean {
  return timeName.test(name) ? !/^\W*temp(?:erature)?\b/i.test(name) : timeUnitIn(name) !== null;
}

/** Does a column run one way, up or down, in at least nine steps of ten? */
function steady(rows: readonly Row[], column: number, decimal: Decimal): boolean {
  let up = 0;
  let down = 0;
  let before: number | null = null;
  for (const row of rows) {
    const value = readFigure(row.cells[column] ?? '', decimal)?.value ?? null;
    if (value === null) continue;
    if (before !== null) {
      if (value > before) up++;
      else if (value < before) down++;
    }
    before = value;
  }
  const steps = Math.max(1, rows.length - 1);
  return Math.max(up, down) / steps >= 0.9;
}

/** Kind of a numeric time column: what its name or unit row says, or seconds since 1970 by their size; null: ask. */
export function numericTimeKind(
  name: string,
  unitCell: string,
  rows: readonly Row[],
  column: number,
  decimal: Decimal,
): TimeKind | null {
  const first = rows
    .map((row) => readFigure(row.cells[column] ?? '', decimal)?.value)
    .find((v) => v !== undefined);
  if (first !== undefined && first >= 1e12 && first < 1e13) return 'unix ms';
  if (first !== undefined && first >= 1e9 && first < 1e10) return 'unix';
  return timeUnitIn(unitCell) ?? timeUnitIn(name);
}

/** Is a row made of units only, such as "s; °C; °C"? */
export function isUnitRow(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell !== '');
  const unit =
    /^[[(]?\s*(?:°|º|˚|deg\.?)?\s*(?:C|F|celsius|fahrenheit|s|sec|seconds?|min|minutes?|h|hrs?|hours?|hh:mm(?::ss)?|h:mm:ss|mm:ss|dd[./]mm[./]yy(?:yy)?|yyyy-mm-dd.*|%|%rh|v|-)\s*[\])]?$/i;
  return (
    filled.length > 0 && filled.every((cell) => unit.test(cell)) && filled.some((cell) => !holdsNothing(cell))
  );
}
