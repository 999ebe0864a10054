/** A table pasted from a spreadsheet, read as names and weights. Pure. */
import type { UnitSystem } from '../../../../core/units.ts';
import { readNumber } from '../../../parts/quantity.ts';

export interface PastedLine {
  readonly ingredient: string;
  readonly g: number;
}

export interface Pasted {
  readonly lines: readonly PastedLine[];
  /** Rows that could not be read, word for word. */
  readonly left: readonly string[];
}

/** Whether a paste is a table rather than a word: more than one line, or a tab. */
export const isTable = (text: string): boolean => /\t|\n\s*\S/.test(text.trim());

const cellsOf = (row: string): string[] => {
  const by = row.includes('\t') ? '\t' : row.includes(';') ? ';' : /\s{2,}/.test(row.trim()) ? /\s{2,}/ : ',';
  return row.split(by).map((c) => c.trim());
};

/** Name and weight from each row, whichever comes first; what is not understood is handed back, never guessed. */
export function readPasted(text: string, system: UnitSystem): Pasted {
  const lines: PastedLine[] = [];
  const left: string[] = [];
  for (const row of text.split(/\r?\n/)) {
    if (row.trim() === '') continue;
    const cells = cellsOf(row).filter((c) => c !== '');
    const weights = cells.map((c) =>
      /\d/.test(c) ? readNumber(c, 'g', system, { low: 0, high: 1_000_000 }) : null,
    );
    const at = weights.findIndex((w) => w?.ok === true);
    const name = cells.find((_, i) => i !== at && weights[i] === null);
    const weight = weights[at];
    if (name === undefined || weight?.ok !== true) left.push(row.trim());
    else lines.push({ ingredient: name.slice(0, 200), g: weight.value });
  }
  return { lines, left };
}
