/**
 * Lethal rate: how many seconds at the reference temperature one second at another temperature is worth. A rate is a
 * curve made of pieces, each straight in log10 against temperature, so that its integral along a straight temperature is exact.
 */
import { OutOfRange } from '../errors.ts';

/** Reference temperature [°C] and temperature step for a tenfold change [°C]. */
export interface Reference {
  readonly reference: number;
  readonly z: number;
}

/** On from ≤ T < to the rate is `rate` · 10^((T − at)/z). `rate` 0: nothing counts there. `z` Infinity: flat. */
export interface RatePiece {
  readonly from: number;
  readonly to: number;
  readonly at: number;
  readonly rate: number;
  readonly z: number;
}

/** Pieces in order of temperature, without gaps, from −∞ to ∞. */
export type RateCurve = readonly RatePiece[];

const everywhere = { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY };

/** Refuses a reference outside −40 to 200 °C and a z outside 1 to 60 °C [-]. */
export function checkReference({ reference, z }: Reference): void {
  if (!(reference >= -40 && reference <= 200))
    throw new OutOfRange('reference', `${reference} °C`, '−40 to 200 °C');
  if (!(z >= 1 && z <= 60)) throw new OutOfRange('z', `${z} °C`, '1 to 60 °C');
}

/**
 * Lethal rate at one temperature [s at the reference per s].
 *
 *     L(T) = 10^((T − T_ref)/z)
 *
 * @param C temperature [°C], any finite value
 * @param target reference temperature [°C], −40 to 200, and z [°C], 1 to 60
 * Assumes log-linear death at a z that does not change with temperature.
 * Checked against the published 70 °C / 2 min equivalents and by hand.
 * @example lethalRate(65, { reference: 70, z: 7.5 }) // → 0.2154
 * Source: bigelow-1921
 */
export function lethalRate(C: number, target: Reference): number {
  checkReference(target);
  return 10 ** ((C - target.reference) / target.z);
}

/** Rate by one z [°C], or by one z below the reference and another above it [s at the reference per s]. */
export function rateByZ(reference: number, zBelow: number, zAbove = zBelow): RateCurve {
  checkReference({ reference, z: zBelow });
  checkReference({ reference, z: zAbove });
  if (zBelow === zAbove) return [{ ...everywhere, at: reference, rate: 1, z: zBelow }];
  return [
    { ...everywhere, to: reference, at: reference, rate: 1, z: zBelow },
    { ...everywhere, from: reference, at: reference, rate: 1, z: zAbove },
  ];
}

/**
 * Rate from published equivalents [s at the reference per s]: `s` at the reference over the row's time, straight in log10 between rows, nothing
 * below the lowest row, and flat above the highest (a hotter core is worth no more than the last row says).
 * Rows in order of temperature, with times above zero that fall.
 */
export function rateByTable(
  rows: readonly { readonly C: number; readonly s: number }[],
  s: number,
): RateCurve {
  const first = rows[0];
  const last = rows.at(-1);
  if (first === undefined || last === undefined)
    throw new OutOfRange('rows', 'an empty table', 'at least one row');
  const pieces: RatePiece[] = [
    { ...everywhere, to: first.C, at: first.C, rate: 0, z: Number.POSITIVE_INFINITY },
  ];
  for (let i = 1; i < rows.length; i++) {
    const low = rows[i - 1]!;
    const high = rows[i]!;
    if (!(high.C > low.C && high.s < low.s && high.s > 0))
      throw new OutOfRange(
        `rows[${i}]`,
        `${high.s} s at ${high.C} °C`,
        'rising temperatures, falling times above 0',
      );
    const z = (high.C - low.C) / Math.log10(low.s / high.s);
    pieces.push({ from: low.C, to: high.C, at: low.C, rate: s / low.s, z });
  }
  pieces.push({ ...everywhere, from: last.C, at: last.C, rate: s / last.s, z: Number.POSITIVE_INFINITY });
  return pieces;
}

/** The same rate [s at the reference per s], but nothing counts below a temperature [°C]. */
export function withFloor(curve: RateCurve, floor: number): RateCurve {
  const kept = curve
    .filter((piece) => piece.to > floor)
    .map((piece) => (piece.from < floor ? { ...piece, from: floor } : piece));
  return [{ ...everywhere, to: floor, at: floor, rate: 0, z: Number.POSITIVE_INFINITY }, ...kept];
}

/** Rate of a curve at one temperature [s at the reference per s]. */
export function rateAt(curve: RateCurve, C: number): number {
  for (const piece of curve) if (C < piece.to) return piece.rate * 10 ** ((C - piece.at) / piece.z);
  const last = curve.at(-1);
  return last === undefined ? 0 : last.rate * 10 ** ((C - last.at) / last.z);
}
