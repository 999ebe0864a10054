/** What heat takes from meat besides its germs: water that it no longer holds, and its red. */
import { OutOfRange } from '../errors.ts';

/**
 * Water that lean beef can hold, unsalted, when it has had time to settle [kg/kg].
 * Equation: c = 0.745 − 0.345 / (1 + 30 · exp(−0.25 · (T − 52 °C))).
 * Parameters: `C` 0 to 100 °C.
 * Assumptions: equilibrium; a cook is shorter, and loses less. Salt makes meat hold more: of a salted forcemeat this overstates the loss.
 * Checked: 0.58552 at 65 °C, 0.48624 at 70 °C, 0.40919 at 80 °C.
 * @example waterHeld(65) // → 0.58552
 * Source: van-der-sman-2007
 * Source: feyissa-2009
 */
export function waterHeld(C: number): number {
  return 0.745 - 0.345 / (1 + 30 * Math.exp(-0.25 * (C - 52)));
}

/**
 * Water that lean beef no longer holds, of what it held at 20 °C [kg/kg].
 * Equation: c(20 °C) − c(T), not below 0.
 * Parameters: `C` 0 to 100 °C, the hottest that the place has been.
 * Assumptions: all that is not held leaves, and none of it comes back: the most that can be lost, not what a cook loses.
 * Checked: nothing at 20 °C; rises with temperature.
 * @example waterLost(65) // → 0.1595
 * Source: van-der-sman-2007
 */
export function waterLost(C: number): number {
  return Math.max(0, waterHeld(20) - waterHeld(C));
}

/** Cooking yield of ground chicken breast from a bath of 90 °C, by temperature at its end and salt [% of raw]. */
const yields = {
  C: [70, 75, 80, 85],
  saltPct: [0, 1, 2, 3],
  pct: [
    [93.2, 98.1, 98.5, 98.5],
    [91.6, 97.6, 97.9, 98.8],
    [88.4, 96.8, 96.7, 98.1],
    [84.7, 95.3, 96.5, 96.2],
  ],
} as const;

/** Where a value lies in a rising list: the index below it and the share of the way to the next; at the ends, the end. */
function between(list: readonly number[], value: number): readonly [number, number] {
  const held = Math.min(list[list.length - 1], Math.max(list[0], value));
  let i = 0;
  while (i + 2 < list.length && list[i + 1] <= held) i++;
  return [i, (held - list[i]) / (list[i + 1] - list[i])];
}

/**
 * What ground meat loses in cooking, by its salt [kg/kg].
 * Equation: 1 − yield / 100, straight between the measured temperatures and salts.
 * Parameters: `C` the hottest that it has been; outside of 70 to 85 °C the nearer end is taken. `saltPct` 0 to 3 % of the raw weight.
 * Assumptions: chicken breast, ground, cooked in a bath of 90 °C; other forcemeats differ by what binds in them.
 * Checked: the measured rows themselves.
 * @example groundLoss(75, 0) // → 0.084
 * @example groundLoss(75, 2) // → 0.021
 * Source: bae-2018
 */
export function groundLoss(C: number, saltPct: number): number {
  if (!(saltPct >= 0 && saltPct <= 3)) throw new OutOfRange('saltPct', `${saltPct} %`, '0 to 3 %');
  const [i, s] = between(yields.C, C);
  const [j, r] = between(yields.saltPct, saltPct);
  const at = (row: number) => yields.pct[row][j] + r * (yields.pct[row][j + 1] - yields.pct[row][j]);
  return 1 - (at(i) + s * (at(i + 1) - at(i))) / 100;
}

/**
 * How fast the red of beef (its myoglobin) turns [1/s].
 * Equation: k = 7.98e43 · exp(−290 000 / (8.314 · T)) per minute, first order, T in K.
 * Parameters: `C` 50 to 80 °C, where it was measured.
 * Assumptions: beef; colour is no sign that poultry is done, and salt or storage may keep meat pink.
 * Checked: 0.126929 per minute at 65 °C.
 * @example myoglobinRate(65) * 60 // → 0.126929
 * Source: geileskey-1998
 */
export function myoglobinRate(C: number): number {
  return (7.98e43 * Math.exp(-290_000 / (8.314 * (C + 273.15)))) / 60;
}

/**
 * The red that is left after a course of temperatures [-], 1 to 0.
 * Equation: exp(−∫ k dt), the logarithm of k straight between the points.
 * Parameters: `t` rising times [s]; `C` of the same length.
 * Assumptions: those of `myoglobinRate`.
 * Checked: 7 % left after 21.0 min at 65 °C.
 * @example myoglobinLeft([0, 1257], [65, 65]) // → 0.07
 * Source: geileskey-1998
 */
export function myoglobinLeft(t: ArrayLike<number>, C: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 1; i < t.length; i++) {
    const a = myoglobinRate(C[i - 1]);
    const b = myoglobinRate(C[i]);
    const ratio = Math.log(b / a);
    sum += (t[i] - t[i - 1]) * (Math.abs(ratio) < 1e-6 ? (a + b) / 2 : (b - a) / ratio);
  }
  return Math.exp(-sum);
}
