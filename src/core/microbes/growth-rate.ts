/** The growth rate of a published set at a temperature and in a food, and its integral along straight stretches of a log. */
import { gauss4 } from '../numerics/gauss.ts';
import type { FoodEffect, GrowthSet, TemperatureForm } from '../properties/organisms-growth.ts';
import {
  cardinalPH,
  cardinalTemperature,
  cardinalWaterActivity,
  singleBracketRate,
  squareRootRate,
} from './cardinal.ts';

/**
 * Growth rate of a published set at a temperature, in the food it was measured in [1/s].
 *
 *     dln N/dt = µ(T)
 *
 * @param form the set's temperature form and constants
 * @param C temperature [°C]
 * Assumes balanced growth; 0 at and outside the set's lowest and highest temperature.
 * Checked against values worked out independently for five sets, 35 temperatures.
 * @example growthRateAt({ form: 'cardinal', min: 8.8, opt: 46.4, max: 51.5, muOpt: 6.06 }, 30) // → 2.4292
 * Source: rosso-1993
 */
export function growthRateAt(form: TemperatureForm, C: number): number {
  switch (form.form) {
    case 'cardinal':
      return form.muOpt * cardinalTemperature(C, form);
    case 'single bracket':
      return singleBracketRate(C, form.A, form.B, form.min, form.max);
    case 'square root': {
      const { min, at, rate, cardinal } = form;
      const b = Math.sqrt(rate) / (at - min);
      if (C <= cardinal.opt) return squareRootRate(C, b, min);
      return squareRootRate(cardinal.opt, b, min) * cardinalTemperature(C, cardinal);
    }
  }
}

/** Temperatures at which a form changes its course [°C], rising: its ends, and its joint where it has one. */
export function formCorners(form: TemperatureForm): readonly number[] {
  return form.form === 'square root'
    ? [form.min, form.cardinal.opt, form.cardinal.max]
    : [form.min, form.max];
}

/**
 * Factor of the growth rate for a food, 1 in the food that the rate was published for [-].
 *
 *     γ(pH) γ(aw) / (γ(pH of that food) γ(aw of that food))
 *
 * @param effect cardinal pH and water activity, and the food of the rate
 * @param pH acidity, 0 to 14
 * @param waterActivity 0 to 1
 * Assumes that pH and water activity act each by itself (gamma concept): near the limits of growth that gives too much rather than too little.
 * Checked: 1 at the food of the rate, 0 outside the cardinal values, monotone towards the best.
 * @example foodFactor({ pH: { min: 4.71, opt: 7.1, max: 9.61 }, waterActivity: { min: 0.913, opt: 0.997, max: 1 }, food: { pH: 7.1, waterActivity: 0.997 }, basis: [] }, 5.6, 0.97) // → 0.3018
 * Source: zwietering-1996
 */
export function foodFactor(effect: FoodEffect, pH: number, waterActivity: number): number {
  const gamma = (p: number, a: number) =>
    (effect.pH === undefined ? 1 : cardinalPH(p, effect.pH)) * cardinalWaterActivity(a, effect.waterActivity);
  return gamma(pH, waterActivity) / gamma(effect.food.pH, effect.food.waterActivity);
}

/** Longest temperature difference that one four-point rule spans [°C]. */
const span = 1;

/**
 * Generations' worth of rate along one straight stretch of a log, ln units [-].
 *
 *     I = ∫ µ(T(t)) dt = Δt/(T2 − T1) · ∫ µ dT
 *
 * @param form the set's temperature form
 * @param dt length of the stretch [s], ≥ 0
 * @param C1 temperature at its start, and C2 at its end [°C]
 * Assumes a straight line between the two. Split where the form has its corners, then four-point Gauss over at most 1 °C.
 * Checked against the antiderivative of the cardinal curve to 1e-8 over random stretches.
 * @example rateIntegral({ form: 'cardinal', min: 8.8, opt: 46.4, max: 51.5, muOpt: 6.06 }, 1.5, 63, 8) // → 3.1086
 * Source: own-computation
 */
export function rateIntegral(form: TemperatureForm, dt: number, C1: number, C2: number): number {
  // So small a difference leaves no digits to divide by.
  if (Math.abs(C2 - C1) < 1e-6) return dt * growthRateAt(form, (C1 + C2) / 2);
  const low = Math.min(C1, C2);
  const high = Math.max(C1, C2);
  const corners = formCorners(form);
  let sum = 0;
  for (let i = 1; i < corners.length; i++) {
    const a = Math.max(low, corners[i - 1]!);
    const b = Math.min(high, corners[i]!);
    if (!(b > a)) continue;
    const pieces = Math.ceil((b - a) / span);
    const width = (b - a) / pieces;
    for (let p = 0; p < pieces; p++)
      for (let k = 0; k < 4; k++)
        sum += gauss4.w[k]! * width * growthRateAt(form, a + (p + gauss4.x[k]!) * width);
  }
  return (dt * sum) / (high - low);
}

/** The set's food factor, 1 where no effect has been published with its rate [-]. */
export function setFactor(set: GrowthSet, pH: number, waterActivity: number): number {
  return set.effect === undefined ? 1 : foodFactor(set.effect, pH, waterActivity);
}
