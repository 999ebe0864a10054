/** How long until an organism has grown by so much at one temperature: the arithmetic of keeping cold. */
import { OutOfRange } from '../errors.ts';
import type { GrowthSet } from '../properties/organisms-growth.ts';
import { growthRateAt, setFactor } from './growth-rate.ts';

/**
 * Integral of the rate that a wanted growth asks for, ln units [-].
 *
 *     I = ln(1 + e^h0 (10^Δ − 1))
 *
 * @param log10Increase wanted growth [log10], ≥ 0
 * @param h0 work before growth begins, ln units, ≥ 0
 * Assumes that the most there can be is far away.
 * Checked by growing for that long again.
 * @example integralFor(2, 0) // → 4.60517
 * Source: baranyi-roberts-1994
 */
export function integralFor(log10Increase: number, h0: number): number {
  if (!(log10Increase >= 0)) throw new OutOfRange('log10Increase', `${log10Increase}`, '0 or more');
  if (!(h0 >= 0)) throw new OutOfRange('h0', `${h0}`, '0 or more');
  const more = Math.expm1(log10Increase * Math.LN10);
  if (more === 0) return 0;
  const work = h0 + Math.log(more);
  return work > 30 ? work : Math.log1p(Math.exp(work));
}

/**
 * Time at one temperature until an organism has grown by so much [s]; null where it does not grow.
 *
 *     t = I/(γ µ(T))
 *
 * @param set a published set
 * @param C temperature [°C]
 * @param food pH 0 to 14 and water activity 0 to 1
 * @param log10Increase wanted growth [log10], ≥ 0
 * @param h0 work before growth begins, default the set's
 * Assumes one temperature throughout, and that the most there can be is far away.
 * Checked against the published growth of Listeria monocytogenes in cooked meats: 1 to 100 cfu/g in 7.09 days at 5 °C, 3.21 days at 8 °C.
 * Source: fda-fsis-listeria-2003
 */
export function timeToGrow(
  set: GrowthSet,
  C: number,
  food: { readonly pH: number; readonly waterActivity: number },
  log10Increase: number,
  h0 = set.h0,
): number | null {
  const integral = integralFor(log10Increase, h0);
  if (integral === 0) return 0;
  const rate = setFactor(set, food.pH, food.waterActivity) * growthRateAt(set.temperature, C);
  return rate > 0 ? integral / rate : null;
}
