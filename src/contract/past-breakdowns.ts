/** Breakdowns of before, out of a spreadsheet: a row an animal (or some together), a column a part. Pure; nothing is kept here. */
import Papa from 'papaparse';
import { parseQuantity } from '../core/units.ts';
import type { TreeNode } from './breakdown.ts';

type PartRole = Exclude<TreeNode['becomes'], 'step'>;
export type ColumnRole = 'date' | 'animals' | 'whole' | 'leave out' | PartRole;
export type WeightUnit = 'g' | 'kg' | 'lb' | 'oz';
export type DayOrder = 'day first' | 'month first' | 'year first';

export interface PastColumn {
  readonly name: string;
  readonly role: ColumnRole;
  /** Written in the header: `neck (kg)`. */
  readonly unit: WeightUnit | null;
}

export interface PastTable {
  readonly columns: readonly PastColumn[];
  /** Each with the line of the text on which it stands, the header being line 1. */
  readonly rows: readonly { readonly line: number; readonly cells: readonly string[] }[];
  readonly unit: WeightUnit;
  readonly order: DayOrder;
}

export interface LineProblem {
  readonly line: number;
  readonly column: string;
  readonly found: string;
  readonly allowed: string;
}

export interface PastRow {
  readonly line: number;
  readonly at: string;
  readonly animals: number;
  readonly inGrams: number;
  readonly parts: readonly { readonly name: string; readonly grams: number; readonly becomes: PartRole }[];
}

const unitIn = /[([]\s*(g|gr|grams?|kg|kilos?|lbs?|pounds?|oz|ounces?)\s*[)\]]|\b(kg|lbs?|oz)\s*$/i;

function unitOf(header: string): WeightUnit | null {
  const found = unitIn.exec(header);
  const word = (found?.[1] ?? found?.[2] ?? '').toLowerCase();
  if (word === '') return null;
  if (/^k/.test(word)) return 'kg';
  if (/^(l|p)/.test(word)) return 'lb';
  return /^o/.test(word) ? 'oz' : 'g';
}

const nameOf = (header: string): string => header.replace(unitIn, '').replace(/\s+/g, ' ').trim();

/** What a column is, by its header. Only a guess: it is shown and can be changed. */
export function guessRole(header: string): ColumnRole {
  const name = nameOf(header).toLowerCase();
  if (/^(date|day|when|cut on|killed|slaughtered)\b/.test(name)) return 'date';
  if (/^(animals|birds|head count|count|number|no\.?|n|how many)$/.test(name)) return 'animals';
  if (
    /^(whole|dressed|carcass|carcase|in|total in|weight in|dressed weight|hot weight|cold weight|whole weight)\b/.test(
      name,
    )
  )
    return 'whole';
  if (
    /^(note|notes|remark|remarks|supplier|cutter|cut by|tag|lot|id|price|cost|total|total out|used|loss|yield)\b/.test(
      name,
    )
  )
    return 'leave out';
  if (name === '' || /%/.test(header)) return 'leave out';
  if (/\bdrip\b/.test(name)) return 'drip';
  if (/\b(bin|waste|trim(mings)?|rubbish)\b/.test(name)) return 'bin';
  if (/^bones?$/.test(name)) return 'bone';
  if (/\b(feathers|guts?|gut contents|hair)\b/.test(name)) return 'by-product';
  return 'part';
}

const isPart = (role: ColumnRole): role is PartRole =>
  !['date', 'animals', 'whole', 'leave out'].includes(role);

/** Reads what was pasted, and guesses. Null where there is no header and no row. */
export function readPast(text: string): PastTable | null {
  const parsed = Papa.parse<string[]>(text.trim(), { skipEmptyLines: false });
  const [header, ...rest] = parsed.data;
  if (header === undefined || rest.length === 0) return null;
  const columns = header.map((h): PastColumn => {
    const role = guessRole(h);
    return { name: nameOf(h), role, unit: unitOf(h) };
  });
  const rows = rest.flatMap((cells, i) =>
    cells.every((c) => c.trim() === '') ? [] : [{ line: i + 2, cells: cells.map((c) => c.trim()) }],
  );
  if (rows.length === 0) return null;
  const whole = columns.findIndex((c) => c.role === 'whole');
  const weights = rows.flatMap((r) => {
    const n = Number((r.cells[whole] ?? '').replace(',', '.'));
    return Number.isFinite(n) && n > 0 ? [n] : [];
  });
  const middle = weights.sort((a, b) => a - b)[weights.length >> 1] ?? 0;
  const date = columns.findIndex((c) => c.role === 'date');
  const days = rows.map((r) => r.cells[date] ?? '');
  const monthFirst = days.some((d) => Number(/^\d{1,2}[./-](\d{1,2})[./-]\d{2,4}$/.exec(d)?.[1] ?? 0) > 12);
  return {
    columns,
    rows,
    unit: middle >= 300 ? 'g' : 'kg',
    order: days.every((d) => /^\d{4}-/.test(d)) ? 'year first' : monthFirst ? 'month first' : 'day first',
  };
}

function dayOf(text: string, order: DayOrder): string | null {
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ].*)?$/.exec(text);
  const other = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{2}|\d{4})$/.exec(text);
  let [y, m, d] = [0, 0, 0];
  if (iso !== null) [y, m, d] = [Number(iso[1]), Number(iso[2]), Number(iso[3])];
  else if (other !== null) {
    const [a, b] = [Number(other[1]), Number(other[2])];
    y = Number(other[3]);
    if (y < 100) y += 2000;
    [m, d] = order === 'month first' ? [a, b] : [b, a];
  } else return null;
  const at = new Date(Date.UTC(y, m - 1, d, 12));
  const same = at.getUTCFullYear() === y && at.getUTCMonth() === m - 1 && at.getUTCDate() === d;
  return same && y >= 1950 ? at.toISOString() : null;
}

/** Grams of a cell; null where it is no weight. A unit written in the cell stands above the column's. */
function gramsOf(text: string, unit: WeightUnit): number | null {
  const decimal = /^\d+,\d+$/.test(text) ? text.replace(',', '.') : text.replace(/(?<=\d),(?=\d{3}\b)/g, '');
  const parsed = parseQuantity(decimal, 'mass', unit);
  if (!parsed.ok || parsed.value < 0) return null;
  return Number(parsed.value.toFixed(3));
}

/** How far the parts may outweigh the whole by the scales: a gram for each weighing. */
const scales = (parts: number) => parts + 1;

/** The rows as they would be kept, and every cell that cannot be. Nothing is kept while there is a problem. */
export function pastRows(table: PastTable, today: string): { rows: PastRow[]; problems: LineProblem[] } {
  const { columns, unit, order } = table;
  const problems: LineProblem[] = [];
  const at = (role: ColumnRole) => columns.findIndex((c) => c.role === role);
  const [date, animals, whole] = [at('date'), at('animals'), at('whole')];
  const missing = (column: string) =>
    problems.push({ line: 1, column, found: 'no such column', allowed: 'one column' });
  if (date === -1) missing('date');
  if (whole === -1) missing('weight of the whole');
  const parts = columns.flatMap((c, index) => (isPart(c.role) ? [{ ...c, role: c.role, index }] : []));
  if (parts.length === 0) missing('a part');
  for (const role of ['date', 'animals', 'whole'] as const)
    if (columns.filter((c) => c.role === role).length > 1)
      problems.push({ line: 1, column: role, found: 'two columns', allowed: 'one column' });
  const seen = new Set<string>();
  for (const p of parts) {
    if (p.name === '')
      problems.push({ line: 1, column: `column ${p.index + 1}`, found: 'no name', allowed: 'a name' });
    if (seen.has(p.name.toLowerCase()))
      problems.push({ line: 1, column: p.name, found: 'twice', allowed: 'each part once' });
    seen.add(p.name.toLowerCase());
  }
  if (problems.length > 0) return { rows: [], problems };
  const rows: PastRow[] = [];
  for (const { line, cells } of table.rows) {
    const before = problems.length;
    const cell = (i: number) => cells[i] ?? '';
    const wrong = (column: string, found: string, allowed: string) =>
      problems.push({ line, column, found: found === '' ? 'nothing' : found, allowed });
    const day = dayOf(cell(date), order);
    if (day === null) wrong('date', cell(date), 'a day, as 2026-11-25 or 25/11/2026');
    else if (day.slice(0, 10) > today) wrong('date', cell(date), `a day up to today, ${today}`);
    const count = animals === -1 || cell(animals) === '' ? 1 : Number(cell(animals));
    if (!Number.isInteger(count) || count < 1 || count > 10_000)
      wrong('animals', cell(animals), 'a whole number, 1 to 10000');
    const inGrams = gramsOf(cell(whole), columns[whole]?.unit ?? unit);
    if (inGrams === null || inGrams <= 0) wrong('weight of the whole', cell(whole), 'a weight above 0');
    const found = parts.flatMap(({ name, index, role, unit: own }) => {
      // An empty cell was not weighed; 0 says that there was none.
      if (cell(index) === '') return [];
      const grams = gramsOf(cell(index), own ?? unit);
      if (grams === null)
        wrong(name, cell(index), 'a weight, 0 for none, or nothing where it was not weighed');
      return grams === null ? [] : [{ name, grams, becomes: role }];
    });
    if (found.length === 0 && problems.length === before) wrong('parts', 'nothing', 'at least one weight');
    const sum = found.reduce((total, p) => total + p.grams, 0);
    if (inGrams !== null && sum > inGrams + scales(found.length))
      wrong(
        'parts',
        `${Math.round(sum)} g of parts`,
        `at most ${Math.round(inGrams)} g, what the whole weighed; is a unit another one?`,
      );
    if (problems.length === before && day !== null && inGrams !== null)
      rows.push({ line, at: day, animals: count, inGrams, parts: found });
  }
  return { rows: problems.length > 0 ? [] : rows, problems };
}
