/** A linear or mixed-integer programme, and what a solver answers. The engine writes the one and reads the other; the solver is handed in. */
import { OutOfRange } from '../errors.ts';

export interface Column {
  readonly name: string;
  /** What a unit of it adds to what is minimised. */
  readonly cost: number;
  readonly low: number;
  /** `Infinity`: no limit. */
  readonly high: number;
  /** Whole numbers only. */
  readonly whole?: boolean | undefined;
}

export interface Row {
  readonly name: string;
  /** `-Infinity`: no limit. */
  readonly low: number;
  readonly high: number;
  /** Column and coefficient; each column at most once. */
  readonly terms: readonly (readonly [column: number, coefficient: number])[];
}

/** Minimise Σ cost·x, low ≤ x ≤ high, low ≤ Σ coefficient·x ≤ high. */
export interface LinearProgramme {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

export interface SolveOptions {
  /** Ends at this gap between the best found and the best possible, as a share of the value. Only where whole numbers are asked for. */
  readonly gap?: number | undefined;
  /** Ends after so long [s], with the best that was found. */
  readonly seconds?: number | undefined;
}

export type Solved =
  | {
      readonly status: 'optimal';
      readonly value: number;
      readonly x: readonly number[];
      /** What the value gains where the row's limit that binds goes up by one; null where whole numbers were asked for. */
      readonly rowPrices: readonly number[] | null;
      readonly columnPrices: readonly number[] | null;
    }
  | { readonly status: 'infeasible' }
  | { readonly status: 'unbounded' }
  /** Out of time. `x` is the best found, if any was found. */
  | { readonly status: 'stopped'; readonly value: number | null; readonly x: readonly number[] | null };

export type Solve = (programme: LinearProgramme, options?: SolveOptions) => Solved;

const limits = (path: string, low: number, high: number) => {
  if (Number.isNaN(low) || low === Infinity)
    throw new OutOfRange(`${path}.low`, String(low), 'a number, or -Infinity for no limit');
  if (Number.isNaN(high) || high === -Infinity)
    throw new OutOfRange(`${path}.high`, String(high), 'a number, or Infinity for no limit');
};

/**
 * Refuses a programme that a solver might take for another: what is not a number, a column that is not there or comes
 * twice in a row. Limits that cross are allowed: such a programme is infeasible.
 */
export function checkProgramme({ columns, rows }: LinearProgramme): void {
  columns.forEach((c, j) => {
    const path = `columns[${j}] (${c.name})`;
    if (!Number.isFinite(c.cost)) throw new OutOfRange(`${path}.cost`, String(c.cost), 'a finite number');
    limits(path, c.low, c.high);
  });
  rows.forEach((r, i) => {
    const path = `rows[${i}] (${r.name})`;
    limits(path, r.low, r.high);
    const seen = new Set<number>();
    for (const [j, a] of r.terms) {
      if (!(Number.isInteger(j) && j >= 0 && j < columns.length) || seen.has(j))
        throw new OutOfRange(
          `${path}.terms`,
          `column ${j}`,
          `each of the ${columns.length} columns at most once`,
        );
      seen.add(j);
      if (!Number.isFinite(a))
        throw new OutOfRange(`${path}.terms`, `${a} × ${columns[j]?.name}`, 'a finite number');
    }
  });
}
