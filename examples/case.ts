/**
 * The shape of a narrated case: a question, the equation that answers it, where the expected numbers come from, and
 * the comparison with what the engine says. Every `*.example.ts` in this folder exports one as `example`.
 */

export interface Row {
  readonly quantity: string;
  /** Key of the bibliography, or `common-practice`, `own-computation`. */
  readonly source: string;
  /** The published value, or the lowest and highest that are allowed. */
  readonly expected: number | { readonly low: number; readonly high: number };
  readonly ours: number;
  /** Largest allowed |ours − expected|, in `unit`. For a range, how far outside it is still allowed. */
  readonly tolerance: number;
  readonly unit: string;
  /** Why the tolerance is what it is. */
  readonly why: string;
}

export interface Example {
  readonly title: string;
  /** What is asked and how it is answered, in prose. */
  readonly story: string;
  /** The governing equation, in plain text. */
  readonly equation: string;
  /** Keys of the bibliography. */
  readonly sources: readonly string[];
  /** A sentence for the reader when the case cannot run here (a missing outside tool); then `run` is not called. */
  readonly skipped?: () => string | undefined;
  run(): Row[] | Promise<Row[]>;
}

/** Distance from what was expected, in the row's unit; NaN counts as infinitely far. */
export function deviation(row: Row): number {
  const { expected, ours } = row;
  if (!Number.isFinite(ours)) return Number.POSITIVE_INFINITY;
  if (typeof expected === 'number')
    return Number.isFinite(expected) ? Math.abs(ours - expected) : Number.POSITIVE_INFINITY;
  return Math.max(0, expected.low - ours, ours - expected.high);
}

export function holds(row: Row): boolean {
  return deviation(row) <= row.tolerance;
}
