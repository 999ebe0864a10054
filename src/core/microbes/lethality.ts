/** Process lethality of a temperature log, integrated exactly along its straight lines. */
import { OutOfRange } from '../errors.ts';
import {
  checkReference,
  lethalRate,
  type RateCurve,
  type Reference,
  rateAt,
  rateByZ,
} from './lethal-rate.ts';
import { checkLog, type Log, type Stretch } from './log.ts';

/** (e^x − 1)/x without loss near 0. */
const growth = (x: number): number => (x === 0 ? 1 : Math.expm1(x) / x);

/**
 * Lethality of one straight-line stretch [s at the reference].
 *
 *     P = Δt · L(T1) · (e^x − 1)/x,  x = ln10 · (T2 − T1)/z;  the same as Δt · z/ln10 · (L(T2) − L(T1))/(T2 − T1)
 *
 * @param dt length of the stretch [s], ≥ 0
 * @param C1 temperature at its start [°C]
 * @param C2 temperature at its end [°C]
 * @param target reference temperature [°C], −40 to 200, and z [°C], 1 to 60
 * Assumes a straight line between the two temperatures. The trapezium of L over the ends is never less: L is convex, so it errs
 * towards calling a cook safe, and is not used anywhere.
 * Checked by hand on a ramp 60 → 70 °C in 10 min (3.106022 min) and against the trapezium over random stretches.
 * @example segmentLethality(600, 60, 70, { reference: 70, z: 7.5 }) / 60 // → 3.1060
 * Source: bigelow-1921
 */
export function segmentLethality(dt: number, C1: number, C2: number, target: Reference): number {
  if (!(dt >= 0)) throw new OutOfRange('dt', `${dt} s`, '0 s or more');
  return dt * lethalRate(C1, target) * growth((Math.LN10 * (C2 - C1)) / target.z);
}

/** Lethality of a stretch under any rate curve, split where the curve has its corners [s at the reference]. */
export function stretchLethality(curve: RateCurve, dt: number, C1: number, C2: number): number {
  if (C1 === C2) return dt * rateAt(curve, C1);
  const low = Math.min(C1, C2);
  const high = Math.max(C1, C2);
  let sum = 0;
  for (const piece of curve) {
    if (piece.from >= high) break;
    if (piece.rate === 0 || piece.to <= low) continue;
    const a = Math.max(low, piece.from);
    const b = Math.min(high, piece.to);
    const part = (dt * (b - a)) / (high - low);
    sum += part * piece.rate * 10 ** ((a - piece.at) / piece.z) * growth((Math.LN10 * (b - a)) / piece.z);
  }
  return sum;
}

/**
 * Process lethality (pasteurisation value) of a whole log [s at the reference].
 *
 *     P = ∫ 10^((T(t) − T_ref)/z) dt, exactly along the straight lines between readings
 *
 * @param log seconds and °C, times rising
 * @param target reference temperature [°C], −40 to 200, and z [°C], 1 to 60
 * Assumes log-linear death, and that the log is of the point that got least.
 * Checked against a twelve-point core log worked out independently (7.62246 min) and for additivity over any splitting.
 * @example processLethality([{ s: 0, C: 65 }, { s: 600, C: 65 }], { reference: 70, z: 7.5 }) / 60 // → 2.1544
 * Source: bigelow-1921
 */
export function processLethality(log: Log, target: Reference): number {
  return cumulativeLethality(log, target).at(-1) ?? 0;
}

/** Lethality so far at every reading [s at the reference]; the first is 0. */
export function cumulativeLethality(log: Log, target: Reference): Float64Array {
  checkReference(target);
  checkLog(log);
  const sums = new Float64Array(log.length);
  for (let i = 1; i < log.length; i++) {
    const a = log[i - 1]!;
    const b = log[i]!;
    sums[i] = sums[i - 1]! + segmentLethality(b.s - a.s, a.C, b.C, target);
  }
  return sums;
}

/** Lethality is compared with a rounding allowance of a billionth, so that two minutes summed in tenths are two minutes. */
export const rounding = 1e-9;

/**
 * The moment a wanted lethality is first reached, exact within a stretch [s on the log's clock]; null where it never is.
 *
 *     f = ln(1 + p·x/(Δt·L(T1)))/x of the stretch, p what was still missing at its start
 *
 * @param log seconds and °C, times rising
 * @param target reference temperature [°C], −40 to 200, and z [°C], 1 to 60
 * @param wanted lethality [s at the reference], ≥ 0
 * Assumes straight lines between readings.
 * Checked by integrating the log up to the moment found: gives the wanted lethality again.
 * @example lethalityReachedAt([{ s: 0, C: 70 }, { s: 300, C: 70 }], { reference: 70, z: 7.5 }, 120) // → 120
 * Source: bigelow-1921
 */
export function lethalityReachedAt(log: Log, target: Reference, wanted: number): number | null {
  checkLog(log);
  if (!(wanted >= 0)) throw new OutOfRange('wanted', `${wanted} s`, '0 s or more');
  const curve = rateByZ(target.reference, target.z);
  let sum = 0;
  if (wanted === 0) return log[0]!.s;
  for (let i = 1; i < log.length; i++) {
    const a = log[i - 1]!;
    const b = log[i]!;
    const gained = stretchLethality(curve, b.s - a.s, a.C, b.C);
    if (sum + gained >= wanted * (1 - rounding))
      return momentWithin({ index: i, s1: a.s, s2: b.s, C1: a.C, C2: b.C, hole: false }, curve, wanted - sum);
    sum += gained;
  }
  return null;
}

/** The moment within a stretch at which it has added `missing` [s]; the stretch's end where it adds no more than that. */
export function momentWithin(stretch: Stretch, curve: RateCurve, missing: number): number {
  const { s1, s2, C1, C2 } = stretch;
  const dt = s2 - s1;
  if (missing <= 0) return s1;
  if (C1 === C2) {
    const rate = rateAt(curve, C1);
    return rate > 0 ? Math.min(s2, s1 + missing / rate) : s2;
  }
  const rising = C2 > C1;
  const pieces = rising ? curve : [...curve].reverse();
  let left = missing;
  for (const piece of pieces) {
    const enters = rising ? Math.max(C1, piece.from) : Math.min(C1, piece.to);
    const leaves = rising ? Math.min(C2, piece.to) : Math.max(C2, piece.from);
    const span = leaves - enters;
    if (rising ? !(span > 0) : !(span < 0)) continue;
    if (piece.rate === 0) continue;
    const part = (dt * span) / (C2 - C1);
    const x = (Math.LN10 * span) / piece.z;
    const full = part * piece.rate * 10 ** ((enters - piece.at) / piece.z);
    if (full * growth(x) >= left) {
      const f = x === 0 ? left / full : Math.log1p((left * x) / full) / x;
      const entered = s1 + (dt * (enters - C1)) / (C2 - C1);
      return Math.min(s2, entered + f * part);
    }
    left -= full * growth(x);
  }
  return s2;
}

/**
 * Time at one temperature that is worth a given time at the reference [s].
 *
 *     t(T) = t_ref · 10^((T_ref − T)/z)
 *
 * @param C temperature held [°C]
 * @param target reference temperature [°C], −40 to 200, and z [°C], 1 to 60
 * @param s time at the reference [s], ≥ 0
 * Assumes log-linear death; meaningless far from the temperatures z was measured at.
 * Checked against the z = 6 °C equivalents published for burgers (65 °C, 13.6 min; 75 °C, 18 s).
 * @example equivalentTime(65, { reference: 70, z: 6 }, 120) / 60 // → 13.626
 * Source: acmsf-burgers-2007
 */
export function equivalentTime(C: number, target: Reference, s: number): number {
  if (!(s >= 0)) throw new OutOfRange('s', `${s} s`, '0 s or more');
  return s / lethalRate(C, target);
}

/**
 * z that two equivalent times imply [°C].
 *
 *     z = (T2 − T1)/log10(t1/t2)
 *
 * @param a temperature [°C] and time [s] > 0
 * @param b another, with another temperature and another time
 * Assumes that both have the same effect.
 * Checked on published pairs: 60 °C, 45 min and 70 °C, 2 min give 7.395 °C.
 * @example impliedZ({ C: 60, s: 2700 }, { C: 70, s: 120 }) // → 7.395
 * Source: bigelow-1921
 */
export function impliedZ(
  a: { readonly C: number; readonly s: number },
  b: { readonly C: number; readonly s: number },
): number {
  if (!(a.s > 0 && b.s > 0)) throw new OutOfRange('s', `${a.s} s and ${b.s} s`, 'times above 0 s');
  if (a.C === b.C || a.s === b.s)
    throw new OutOfRange(
      'a, b',
      `${a.C} °C ${a.s} s and ${b.C} °C ${b.s} s`,
      'two temperatures and two times',
    );
  return (b.C - a.C) / Math.log10(a.s / b.s);
}

/**
 * Decimal reduction time at a temperature [s].
 *
 *     D(T) = D_ref · 10^((T_ref − T)/z)
 *
 * @param C temperature [°C]
 * @param target temperature at which D was measured [°C], and z [°C], 1 to 60
 * @param D decimal reduction time there [s], > 0
 * Assumes log-linear death.
 * Checked against the D-values of the equation it was fitted to: Listeria monocytogenes 150.2, 28.2 and 5.3 s at 60, 65 and 70 °C.
 * @example decimalReductionTime(65, { reference: 70, z: 6.8875 }, 5.305) // → 28.2
 * Source: mackey-bratchell-1989
 */
export function decimalReductionTime(C: number, target: Reference, D: number): number {
  if (!(D > 0)) throw new OutOfRange('D', `${D} s`, 'more than 0 s');
  return D / lethalRate(C, target);
}

/**
 * z and D by a least-squares line of log10 D on temperature [°C, s].
 *
 *     log10 D = a − T/z
 *
 * @param points temperatures [°C] and decimal reduction times [s] > 0, at least two temperatures
 * Assumes log-linear D; the line says nothing outside the temperatures measured.
 * Checked on Clostridium perfringens in beef (z 6.80 °C, D60 4.31 min) and Salmonella in broth (6.65 °C, 1.058 min).
 * @example fitZ([{ C: 55, s: 1296 }, { C: 60, s: 318 }]).z // → 8.194
 * Source: juneja-marmer-1998
 */
export function fitZ(points: readonly { readonly C: number; readonly s: number }[]): {
  readonly z: number;
  /** D of the fitted line at a temperature [s]. */
  readonly timeAt: (C: number) => number;
} {
  const n = points.length;
  if (n < 2 || points.some((p) => !(p.s > 0)))
    throw new OutOfRange('points', `${n} points`, 'at least two, with times above 0 s');
  const meanC = points.reduce((sum, p) => sum + p.C, 0) / n;
  const meanLog = points.reduce((sum, p) => sum + Math.log10(p.s), 0) / n;
  let spread = 0;
  let together = 0;
  for (const p of points) {
    spread += (p.C - meanC) ** 2;
    together += (p.C - meanC) * (Math.log10(p.s) - meanLog);
  }
  if (!(spread > 0 && together < 0))
    throw new OutOfRange(
      'points',
      'times that do not fall with temperature',
      'at least two temperatures, falling times',
    );
  const slope = together / spread;
  return { z: -1 / slope, timeAt: (C) => 10 ** (meanLog + slope * (C - meanC)) };
}
