/** How the growth rate depends on temperature, pH and water activity: the published forms, each by its authors' name. */
import { OutOfRange } from '../errors.ts';
import type { Cardinal } from '../properties/organisms-growth.ts';

function checkCardinal({ min, opt, max }: Cardinal): void {
  if (!(min < opt && opt < max))
    throw new OutOfRange('cardinal', `${min}, ${opt}, ${max}`, 'min < opt < max, all finite');
}

/** The curve shared by temperature (n = 2) and water activity: 1 at `opt`, 0 at and outside `min` and `max`. */
function cardinalCurve(x: number, { min, opt, max }: Cardinal): number {
  if (!(x > min && x < max)) return 0;
  const above = (x - max) * (x - min) ** 2;
  const below = (opt - min) * ((opt - min) * (x - opt) - (opt - max) * (opt + min - 2 * x));
  return above / below;
}

/**
 * Growth rate at a temperature as a fraction of the best, by cardinal temperatures (Rosso) [-].
 *
 *     γ = (T − Tmax)(T − Tmin)² / {(Topt − Tmin)[(Topt − Tmin)(T − Topt) − (Topt − Tmax)(Topt + Tmin − 2T)]}
 *
 * @param C temperature [°C]
 * @param cardinal lowest, best and highest temperature of growth [°C], in this order, the best above the middle of the other two
 * Assumes balanced growth, everything else as in the food measured; 0 at and outside the lowest and the highest.
 * Checked against values worked out independently for three organisms, 32 temperatures.
 * @example cardinalTemperature(10, { min: -1.72, opt: 37, max: 45.5 }) // → 0.13755
 * Source: rosso-1993
 */
export function cardinalTemperature(C: number, cardinal: Cardinal): number {
  checkCardinal(cardinal);
  // At and below the middle the curve has a pole between its ends.
  if (!(2 * cardinal.opt > cardinal.min + cardinal.max))
    throw new OutOfRange('cardinal.opt', `${cardinal.opt} °C`, 'above the middle of min and max');
  return cardinalCurve(C, cardinal);
}

/**
 * Growth rate at a pH as a fraction of the best, by cardinal pH (Rosso) [-].
 *
 *     γ = (pH − pHmin)(pH − pHmax) / [(pH − pHmin)(pH − pHmax) − (pH − pHopt)²]
 *
 * @param pH acidity, 0 to 14
 * @param cardinal lowest, best and highest pH of growth, in this order
 * Assumes that it acts by itself, whatever the acid; 0 at and outside the lowest and the highest.
 * Checked against values worked out independently for Listeria monocytogenes, 6 values.
 * @example cardinalPH(5.6, { min: 4.71, opt: 7.1, max: 9.61 }) // → 0.61333
 * Source: rosso-1995
 */
export function cardinalPH(pH: number, cardinal: Cardinal): number {
  checkCardinal(cardinal);
  const { min, opt, max } = cardinal;
  if (!(pH > min && pH < max)) return 0;
  const ends = (pH - min) * (pH - max);
  return ends / (ends - (pH - opt) ** 2);
}

/**
 * Growth rate at a water activity as a fraction of the best, by cardinal values [-].
 *
 *     γ = (a − 1)(a − amin)² / {(aopt − amin)[(aopt − amin)(a − aopt) − (aopt − 1)(aopt + amin − 2a)]}
 *
 * @param waterActivity 0 to 1
 * @param cardinal lowest and best water activity of growth, and 1
 * Assumes salt as the solute. From the best upwards it stays 1: pure water itself would come out as 0, and a food of
 * water activity 1 must not be shown as one where nothing grows.
 * Checked against values worked out independently for Listeria monocytogenes, 7 values.
 * @example cardinalWaterActivity(0.97, { min: 0.913, opt: 0.997, max: 1 }) // → 0.49209
 * Source: rosso-robinson-2001
 */
export function cardinalWaterActivity(waterActivity: number, cardinal: Cardinal): number {
  checkCardinal(cardinal);
  if (waterActivity >= cardinal.opt) return 1;
  return cardinalCurve(waterActivity, cardinal);
}

/**
 * Growth rate below the best temperature, by the square-root model [1/s].
 *
 *     √µ = b (T − Tmin)
 *
 * @param C temperature [°C], up to the best
 * @param b slope [1/(√s °C)]
 * @param min lowest temperature of growth [°C]
 * Assumes a temperature below the best: above it the rate would go on rising. 0 at and below the lowest.
 * Checked against the published growth of Listeria monocytogenes in cooked meats, 6 temperatures.
 * @example squareRootRate(10, 0.02, 0) // → 0.04
 * Source: ratkowsky-1982
 */
export function squareRootRate(C: number, b: number, min: number): number {
  return C > min ? (b * (C - min)) ** 2 : 0;
}

/**
 * Growth rate over the whole range of temperatures, by the extended square-root model [1/s].
 *
 *     √µ = b (T − Tmin)(1 − e^(c (T − Tmax)))
 *
 * @param C temperature [°C]
 * @param b slope [1/(√s °C)]
 * @param c bend at the hot end [1/°C]
 * @param min lowest, and `max` highest temperature of growth [°C]
 * Assumes balanced growth; 0 at and outside the two. The bracket is squared with the rest: not the form of `singleBracketRate`.
 * Checked by hand.
 * @example fullRangeSquareRootRate(30, 0.02, 0.3, 5, 45) // → 0.244476
 * Source: ratkowsky-1983
 */
export function fullRangeSquareRootRate(C: number, b: number, c: number, min: number, max: number): number {
  return C > min && C < max ? (b * (C - min) * (1 - Math.exp(c * (C - max)))) ** 2 : 0;
}

/**
 * Growth rate by the form published for cooked cured pork, whose bracket is not squared [1/s].
 *
 *     µ = A (T − Tmin)² (1 − e^(B (T − Tmax)))
 *
 * @param C temperature [°C]
 * @param A scale [1/(s °C²)]
 * @param B bend at the hot end [1/°C]
 * @param min lowest, and `max` highest temperature of growth [°C]
 * Assumes balanced growth; 0 at and outside the two.
 * Checked against values worked out independently for cooked cured pork, 9 temperatures.
 * @example singleBracketRate(35, 0.00243, 0.41, 13.5, 50.6) // → 1.12139
 * Source: juneja-huang-thippareddi-2006
 */
export function singleBracketRate(C: number, A: number, B: number, min: number, max: number): number {
  return C > min && C < max ? A * (C - min) ** 2 * -Math.expm1(B * (C - max)) : 0;
}
