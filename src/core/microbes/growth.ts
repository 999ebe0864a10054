/** Microbial growth along a temperature log: lag, growth and the most there can be, exact for any course of the rate. */
import { OutOfRange } from '../errors.ts';
import type { GrowthSet } from '../properties/organisms-growth.ts';
import { rateIntegral, setFactor } from './growth-rate.ts';
import { checkLog, type Log } from './log.ts';

/**
 * Growth once the rate has added up to a given integral, without a ceiling, ln units [-].
 *
 *     A = ln(1 + e^(−h0) (e^I − 1))
 *
 * @param integral ∫ µ dt, ln units, ≥ 0
 * @param h0 work before growth begins, ln units, ≥ 0: at a steady rate h0 = µ · lag
 * Assumes that the lag is worked off at the rate of growth, whatever the temperature does meanwhile: dq/dt = µ q, dln N/dt = µ q/(1 + q).
 * Checked against that pair of equations, solved step by step, to 1e-6.
 * @example growthAfter(7.96689, 5) / Math.LN10 // → 1.3102
 * Source: baranyi-roberts-1994
 */
export function growthAfter(integral: number, h0: number): number {
  if (!(integral >= 0)) throw new OutOfRange('integral', `${integral}`, '0 or more');
  if (!(h0 >= 0)) throw new OutOfRange('h0', `${h0}`, '0 or more');
  const ahead = integral - h0;
  if (ahead <= 0) return Math.log1p(Math.exp(-h0) * Math.expm1(integral));
  // The same with e^(I − h0) taken out, so that nothing overflows.
  return ahead + Math.log1p(Math.exp(-ahead) * -Math.expm1(-h0));
}

/**
 * Growth under a ceiling, ln units [-].
 *
 *     ln(N/N0) = A − ln(1 + (e^A − 1) N0/Nmax)
 *
 * @param free growth without a ceiling, ln units, ≥ 0
 * @param room ln(Nmax/N0), ln units, ≥ 0
 * Assumes the logistic brake (1 − N/Nmax); exact for any course of the rate, since A takes the place of time.
 * Checked against a table at a steady rate worked out independently (8 times, 1e-4 log) and against the equations solved step by step.
 * @example growthUnderCeiling(8, Math.log(1e6)) / Math.LN10 // → 3.4731
 * Source: baranyi-roberts-1994
 */
export function growthUnderCeiling(free: number, room: number): number {
  if (!(room >= 0)) throw new OutOfRange('room', `${room}`, '0 or more: the start is not above the most');
  if (free <= room) return free - Math.log1p(Math.expm1(free) * Math.exp(-room));
  return room - Math.log1p(Math.exp(room - free) - Math.exp(-free));
}

export interface GrowthCourse {
  /** Times on the log's clock [s] and temperature there [°C]. */
  readonly s: Float64Array;
  readonly C: Float64Array;
  /** log10 cfu/g at those times. */
  readonly log10: Float64Array;
  /** ∫ µ dt over the whole log, ln units. */
  readonly integral: number;
}

export interface GrowthConditions {
  readonly pH: number;
  readonly waterActivity: number;
  /** log10 cfu/g at the first reading. */
  readonly startLog10: number;
  /** Default: the set's. */
  readonly h0?: number;
  readonly maxLog10?: number;
  /** The food lies outside the limits of growth: nothing grows at any temperature. */
  readonly stopped?: boolean;
}

/** A stretch is cut into pieces that grow by no more than this, so that straight lines between the points of a course lose little. */
const piece = 0.25;
const mostPieces = 64;

/**
 * Growth along a whole log [log10 cfu/g].
 *
 *     I(t) = γ ∫ µ(T) dt;  A = ln(1 + e^(−h0) (e^I − 1));  ln(N/N0) = A − ln(1 + (e^A − 1) N0/Nmax)
 *
 * @param log seconds and °C, times rising
 * @param set a published set
 * @param conditions pH 0 to 14, water activity 0 to 1, start and most [log10 cfu/g], h0 ≥ 0
 * Assumes straight lines between readings, no death at any temperature, one lag that is not set back by cold or heat, no other flora.
 * Checked against published-rate integrals of three cooling profiles (0.1 %), for additivity over any splitting and against a step-by-step solution.
 * Source: baranyi-roberts-1994
 */
export function growthAlong(log: Log, set: GrowthSet, conditions: GrowthConditions): GrowthCourse {
  checkLog(log);
  const { pH, waterActivity, startLog10, h0 = set.h0, maxLog10 = set.maxLog10 } = conditions;
  if (!(startLog10 <= maxLog10))
    throw new OutOfRange('startLog10', `${startLog10} log10 cfu/g`, `at most ${maxLog10} log10 cfu/g`);
  const factor = conditions.stopped === true ? 0 : setFactor(set, pH, waterActivity);
  const room = (maxLog10 - startLog10) * Math.LN10;
  const end = (integral: number) =>
    startLog10 + growthUnderCeiling(growthAfter(integral, h0), room) / Math.LN10;
  const s: number[] = [log[0]!.s];
  const C: number[] = [log[0]!.C];
  const log10: number[] = [startLog10];
  let integral = 0;
  const visit = (moment: number, temperature: number) => {
    s.push(moment);
    C.push(temperature);
    log10.push(end(integral));
  };
  for (let i = 1; i < log.length; i++) {
    const a = log[i - 1]!;
    const b = log[i]!;
    const dt = b.s - a.s;
    const whole = factor * rateIntegral(set.temperature, dt, a.C, b.C);
    const pieces = Math.min(mostPieces, Math.max(1, Math.ceil(whole / piece)));
    const before = integral;
    for (let p = 1; p < pieces; p++) {
      const from = a.C + ((p - 1) / pieces) * (b.C - a.C);
      const to = a.C + (p / pieces) * (b.C - a.C);
      integral += factor * rateIntegral(set.temperature, dt / pieces, from, to);
      visit(a.s + (p / pieces) * dt, to);
    }
    integral = Math.max(integral, before + whole);
    visit(b.s, b.C);
  }
  return { s: Float64Array.from(s), C: Float64Array.from(C), log10: Float64Array.from(log10), integral };
}
