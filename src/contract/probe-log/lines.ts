/** Text into lines and cells: delimiter, decimal mark, and where the readings begin. */
import Papa from 'papaparse';
import { type CellKind, type Decimal, kindOf } from './cells.ts';
import type { Delimiter } from './types.ts';

export interface Line {
  /** From 1. */
  readonly number: number;
  readonly text: string;
}

const comment = /^\s*(?:#|\/\/|%|!|--\s|\*\s)/;

/** Lines that are neither blank nor a comment; commented lines apart, as the names may stand in one. */
export function linesOf(text: string): { lines: Line[]; comments: Line[]; endsInBreak: boolean } {
  const lines: Line[] = [];
  const comments: Line[] = [];
  const all = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  const endsInBreak = all.length > 1 && all.at(-1)!.trim() === '';
  all.forEach((raw, i) => {
    const line = { number: i + 1, text: raw };
    if (raw.trim() === '') return;
    if (comment.test(raw)) comments.push(line);
    else lines.push(line);
  });
  return { lines, comments, endsInBreak };
}

/**
 * Cells of a line, trimmed; empty cells at its end are dropped. Between columns set apart by spaces, words of one name have one
 * space between them where columns have several.
 */
export function cellsOf(line: string, delimiter: Delimiter): string[] {
  // No logger writes a line this long: it stays whole, and so is no reading.
  if (line.length > 20_000) return [line];
  let cells: string[];
  if (delimiter === ' ') cells = line.trim().split(wordsApart(line) ? /\s{2,}/ : /\s+/);
  else if (line.includes('"')) cells = Papa.parse<string[]>(line.trim(), { delimiter }).data[0] ?? [];
  else cells = line.split(delimiter);
  const trimmed = cells.map((cell) => cell.trim());
  while (trimmed.length > 0 && trimmed.at(-1) === '') trimmed.pop();
  return trimmed;
}

/** Names of several words, set apart by more than one space. */
function wordsApart(line: string): boolean {
  return line.length < 1000 && /\S\s{2,}\S/.test(line.trim()) && /[a-z]{2,} [a-z]/i.test(line);
}

const delimiters: readonly Delimiter[] = ['\t', ';', '|', ',', ' '];
const decimals: readonly Decimal[] = ['.', ','];

export interface Dialect {
  readonly delimiter: Delimiter;
  readonly decimal: Decimal;
  /** Number of cells that rows of data have, empty ones at the end not counted. */
  readonly width: number;
  /** How many of the lines looked at are rows of data. */
  readonly rows: number;
}

const timeLike: readonly CellKind[] = ['date and time', 'date', 'clock', 'number'];

/** Does a row look like a reading: at least one number, and, unless it stands alone, one more number or time? */
export function looksLikeData(kinds: readonly CellKind[]): boolean {
  const numbers = kinds.filter((kind) => kind === 'number').length;
  const known = kinds.filter((kind) => timeLike.includes(kind)).length;
  const words = kinds.filter((kind) => kind === 'text').length;
  if (kinds.length === 1) return numbers === 1;
  if (known >= 2) return numbers >= 1 && words <= known;
  // A time whose probes all held nothing.
  return known === 1 && words === 0;
}

/** The delimiter and decimal mark under which most lines become rows of data of one width; null where none do. */
export function findDialect(
  lines: readonly Line[],
  fixed: { readonly delimiter?: Delimiter | undefined; readonly decimal?: Decimal | undefined },
): Dialect | null {
  const sample = lines.length <= 400 ? lines : [...lines.slice(0, 250), ...lines.slice(-150)];
  let best: (Dialect & { score: number }) | null = null;
  for (const delimiter of fixed.delimiter === undefined ? delimiters : [fixed.delimiter]) {
    const split = sample.map((line) => cellsOf(line.text, delimiter));
    for (const decimal of fixed.decimal === undefined ? decimals : [fixed.decimal]) {
      const widths = new Map<number, number>();
      let figures = 0;
      for (const cells of split) {
        const kinds = cells.map((cell) => kindOf(cell, decimal));
        if (!looksLikeData(kinds)) continue;
        widths.set(cells.length, (widths.get(cells.length) ?? 0) + 1);
        figures +=
          kinds.filter((kind) => kind !== 'text').length - kinds.filter((kind) => kind === 'text').length;
      }
      const usual = [...widths].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0];
      if (usual === undefined) continue;
      const total = [...widths.values()].reduce((a, b) => a + b, 0);
      // Rows first; then more columns that mean something; a single column only where nothing else fits.
      const score = total * (usual[0] === 1 ? 0.5 : 1) + figures / (1000 * sample.length);
      if (best === null || score > best.score + 1e-12)
        best = { delimiter, decimal, width: usual[0], rows: total, score };
    }
  }
  return best;
}
