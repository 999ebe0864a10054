import type { Confidence } from '../src/core/sources.ts';

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
  /**
   * How the expected value was had. 'read': it stands in the source and was read there. 'secondary': read in copies of
   * it. 'memory': it, or a constant it is worked out from, is remembered. 'computed': worked out apart from the engine
   * from a published equation whose constants were read.
   */
  readonly confidence: Confidence;
  /**
   * Ours lies outside the tolerance, and it is known why: by how much (ours less expected), and the reason. `unsafe` where
   * trusting ours would be the mistake that hurts; the report puts these first.
   */
  readonly differs?: { readonly by: number; readonly why: string; readonly unsafe?: true };
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

/** Ours less what was expected (for a range: less its nearest end, 0 inside), in the row's unit. */
export function difference(row: Row): number {
  const { expected, ours } = row;
  if (typeof expected === 'number') return ours - expected;
  if (ours < expected.low) return ours - expected.low;
  return ours > expected.high ? ours - expected.high : 0 * ours;
}

/** How far ours is from what was expected, in the row's unit; NaN counts as infinitely far. */
export function deviation(row: Row): number {
  const off = Math.abs(difference(row));
  return Number.isFinite(off) ? off : Number.POSITIVE_INFINITY;
}

/**
 * A row holds within its tolerance; one that is known to differ holds where it differs by what it says, to a tenth of
 * that, and so fails when it starts to agree.
 */
export function holds(row: Row): boolean {
  if (row.differs === undefined) return deviation(row) <= row.tolerance;
  const { by } = row.differs;
  return deviation(row) > row.tolerance && Math.abs(difference(row) - by) <= 0.1 * Math.abs(by);
}
