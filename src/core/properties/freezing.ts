/**
 * A food that freezes: how much of its water is ice, what heat that takes. Fractions by mass, temperatures in °C; no ice
 * at or above the first ice's temperature. Every function refuses what is colder than its author's data.
 */
import { OutOfRange } from '../errors.ts';
import { type Composition, componentHeat } from './food-components.ts';

/** Heat of melting ice at 0 °C [J/kg], the handbook's. */
export const heatOfMelting = 333.6e3;

/** Melting point of ice [K], molar gas constant [J/(mol K)]. */
const T0 = 273.15;
const R = 8.314;

function checkWater(food: Composition): void {
  if (!(food.water > 0 && food.water <= 1))
    throw new OutOfRange('water', String(food.water), 'a fraction, above 0 to 1');
  if (!(food.protein >= 0 && food.protein <= 1))
    throw new OutOfRange('protein', String(food.protein), 'a fraction, 0 to 1');
  if (!(0.4 * food.protein < food.water))
    throw new OutOfRange(
      'water',
      String(food.water),
      `more than the ${0.4 * food.protein} that protein binds`,
    );
}

function checkFood(food: Composition, freezing: number): void {
  checkWater(food);
  if (!(freezing >= -10 && freezing <= -0.1))
    throw new OutOfRange('first ice', `${freezing} °C`, '-10 to -0.1 °C');
}

function checkCold(C: number, coldest: number, warmest = 150): void {
  if (!(C >= coldest && C <= warmest))
    throw new OutOfRange('temperature', `${C} °C`, `${coldest} to ${warmest} °C`);
}

/**
 * Water that protein holds and that does not freeze [-], by mass of the food.
 *
 *     x_b = 0.4·x_protein
 *
 * @param food mass fractions
 * Assumes that only protein binds water. Checked by hand.
 * @example boundWater({ water: 0.5821, protein: 0.1748, fat: 0.2349, carbohydrate: 0, fibre: 0, ash: 0.0082 }) // → 0.06992
 * Source: ashrae-refrigeration-properties
 */
export function boundWater(food: Composition): number {
  return 0.4 * food.protein;
}

/**
 * Ice by the freezing-point curve of an ideal solution [-], by mass of the food.
 *
 *     x_ice = (x_water − x_b)·(1 − t_f/t)
 *
 * @param food mass fractions
 * @param freezing first ice [°C], −10 to −0.1
 * @param C temperature [°C], −45 to 150; no ice from `freezing` up
 * Assumes an ideal solution whose bound water never freezes.
 * Checked against two values worked out for chicken, five figures.
 * @example iceFraction({ water: 0.6599, protein: 0.186, fat: 0.1506, carbohydrate: 0, fibre: 0, ash: 0.0079 }, -2.8, -20) // → 0.50353
 * Source: miles-1974
 */
export function iceFraction(food: Composition, freezing: number, C: number): number {
  checkFood(food, freezing);
  checkCold(C, -45);
  return C >= freezing ? 0 : (food.water - boundWater(food)) * (1 - freezing / C);
}

/**
 * Molar mass that the solids must act as for a food to freeze where it does [kg/mol].
 *
 *     M_s = x_s·R·T0²/[−(x_water − x_b)·L0·t_f]
 *
 * @param food mass fractions; solids are what is not water
 * @param freezing first ice [°C], −10 to −0.1
 * Assumes an ideal solution. Checked: with it `iceFractionChen` is `iceFraction`.
 * @example solidsMolarMass({ water: 0.5821, protein: 0.1748, fat: 0.2349, carbohydrate: 0, fibre: 0, ash: 0.0082 }, -1.7) // → 0.8925
 * Source: schwartzberg-1976
 */
export function solidsMolarMass(food: Composition, freezing: number): number {
  checkFood(food, freezing);
  return ((1 - food.water) * R * T0 * T0) / (-(food.water - boundWater(food)) * heatOfMelting * freezing);
}

/**
 * Ice by Chen's equation [-], by mass of the food.
 *
 *     x_ice = x_s·R·T0²·(t_f − t)/(M_s·L0·t_f·t)
 *
 * @param food mass fractions; solids are what is not water
 * @param freezing first ice [°C], −10 to −0.1
 * @param C temperature [°C], −45 to 150; no ice from `freezing` up
 * @param molarMass what the solids act as [kg/mol]; that of the food's own first ice where none is given
 * Assumes an ideal solution. The comparison of 2001 found it the best of the ice fractions.
 * Checked against `iceFraction` with the food's own molar mass.
 * @example iceFractionChen({ water: 0.5821, protein: 0.1748, fat: 0.2349, carbohydrate: 0, fibre: 0, ash: 0.0082 }, -1.7, -20) // → 0.46864
 * Source: chen-1985
 * Source: fricke-becker-2001
 */
export function iceFractionChen(
  food: Composition,
  freezing: number,
  C: number,
  molarMass = solidsMolarMass(food, freezing),
): number {
  checkFood(food, freezing);
  checkCold(C, -45);
  if (!(molarMass > 0))
    throw new OutOfRange('molar mass of the solids', `${molarMass} kg/mol`, 'more than 0 kg/mol');
  if (C >= freezing) return 0;
  const ice = ((1 - food.water) * R * T0 * T0 * (freezing - C)) / (molarMass * heatOfMelting * freezing * C);
  if (!(ice <= food.water))
    throw new OutOfRange(
      'molar mass of the solids',
      `${molarMass} kg/mol`,
      'one that leaves no more ice than water',
    );
  return ice;
}

/**
 * Ice by Tchigeov's equation, as `x` [-], by mass of the food; `extrapolated` where its first ice is not of his range.
 *
 *     x_ice = 1.105·x_water/[1 + 0.7138/ln(t_f − t + 1)]
 *
 * @param food mass fractions
 * @param freezing first ice [°C], his −2 to −0.4; beyond that, to −10 and −0.1, marked
 * @param C temperature [°C], −45 to 150; no ice from `freezing` up
 * Assumes a food of ordinary meat's kind: it knows nothing of bound water.
 * Checked against the handbook's beef, 0.52 of it ice at −20 °C, and its pork at −40 °C.
 * @example iceFractionTchigeov({ water: 0.58, protein: 0.175, fat: 0.237, carbohydrate: 0, fibre: 0, ash: 0.008 }, -1.7, -20).x // → 0.516380
 * Source: tchigeov-1979
 */
export function iceFractionTchigeov(
  food: Composition,
  freezing: number,
  C: number,
): { readonly x: number; readonly extrapolated: boolean } {
  checkFood(food, freezing);
  checkCold(C, -45);
  const extrapolated = freezing < -2 || freezing > -0.4;
  if (C >= freezing) return { x: 0, extrapolated };
  const x = (1.105 * food.water) / (1 + 0.7138 / Math.log(freezing - C + 1));
  if (!(x <= food.water))
    throw new OutOfRange('temperature', `${C} °C`, 'one that leaves no more ice than water');
  return { x, extrapolated };
}

/**
 * Heat in a food counted from −40 °C [J/kg].
 *
 *     frozen: (t + 40)·[1550 + 1260·x_s + (x_water − x_b)·L0·t_f/(40·t)]
 *     above t_f: H(t_f) + (t − t_f)·(4190 − 2300·x_s − 628·x_s³)
 *
 * @param food mass fractions; solids are what is not water
 * @param freezing first ice [°C], −10 to −0.1
 * @param C temperature [°C], −40 to 150
 * Assumes an ideal solution; no melting of fat, no denaturing. The comparison of 2001 found it the best of the enthalpies.
 * Checked against the handbook's beef carcass from 10 to −20 °C, and against the integral of `apparentHeatChen`.
 * @example enthalpy({ water: 0.5821, protein: 0.1748, fat: 0.2349, carbohydrate: 0, fibre: 0, ash: 0.0082 }, -1.7, -20) / 1000 // → 48.7928
 * Source: chen-1985
 * Source: fricke-becker-2001
 */
export function enthalpy(food: Composition, freezing: number, C: number): number {
  checkFood(food, freezing);
  checkCold(C, -40);
  const solids = 1 - food.water;
  const freezable = (food.water - boundWater(food)) * heatOfMelting;
  const frozen = (t: number) => (t + 40) * (1550 + 1260 * solids + (freezable * freezing) / (40 * t));
  if (C <= freezing) return frozen(C);
  return frozen(freezing) + (C - freezing) * (4190 - 2300 * solids - 628 * solids ** 3);
}

/**
 * Heat to warm a food by a degree, melting ice included [J/(kg K)].
 *
 *     frozen: 1550 + 1260·x_s − (x_water − x_b)·L0·t_f/t² · above t_f: 4190 − 2300·x_s − 628·x_s³
 *
 * @param food mass fractions; solids are what is not water
 * @param freezing first ice [°C], −10 to −0.1
 * @param C temperature [°C], −45 to 150
 * Assumes an ideal solution. It jumps at the first ice: a computation in steps does better with `enthalpy`.
 * Checked against two values worked out for chicken, and as the slope of `enthalpy`.
 * @example apparentHeatChen({ water: 0.6599, protein: 0.186, fat: 0.1506, carbohydrate: 0, fibre: 0, ash: 0.0079 }, -2.8, -20) // → 3345.79
 * Source: chen-1985
 */
export function apparentHeatChen(food: Composition, freezing: number, C: number): number {
  checkFood(food, freezing);
  checkCold(C, -45);
  const solids = 1 - food.water;
  if (C > freezing) return 4190 - 2300 * solids - 628 * solids ** 3;
  return 1550 + 1260 * solids - ((food.water - boundWater(food)) * heatOfMelting * freezing) / (C * C);
}

/**
 * Specific heat of a food whose freezable water is all ice [J/(kg K)].
 *
 *     c_f = Σ x_i·cp_i, with x_water − x_b as ice and x_b as unfrozen water
 *
 * @param food mass fractions; used as they are
 * @param C temperature [°C], −40 to 0
 * Assumes bound water with the heat of unfrozen water. Checked
 * against the handbook's meats below freezing (from memory), within 6 %; Chen's 1550 + 1260·x_s is lower, by up to 17 % for cod.
 * @example frozenHeat({ water: 0.5821, protein: 0.1748, fat: 0.2349, carbohydrate: 0, fibre: 0, ash: 0.0082 }, -20) // → 2129
 * Source: choi-okos-1986
 */
export function frozenHeat(food: Composition, C: number): number {
  checkCold(C, -40, 0);
  checkWater(food);
  const bound = boundWater(food);
  let sum = (food.water - bound) * componentHeat('ice', C) + bound * componentHeat('water', C);
  for (const name of ['protein', 'fat', 'carbohydrate', 'fibre', 'ash'] as const)
    sum += food[name] * componentHeat(name, C);
  return sum;
}

/**
 * Heat to warm a frozen food by a degree, melting ice included [J/(kg K)].
 *
 *     c_a = c_f + (x_water − x_b)·L0·(t0 − t_f)/(t0 − t)²,  t0 = 0 °C
 *
 * @param food mass fractions
 * @param freezing first ice [°C], −10 to −0.1
 * @param C temperature [°C], −40 to `freezing`
 * @param fullyFrozen specific heat c_f of the food all frozen [J/(kg K)]; `frozenHeat` at −40 °C where none is given
 * Assumes an ideal solution. The author's later, simpler form (from memory); the comparison of 2001 found his first the best
 * of the apparent heats.
 * Checked: with Chen's c_f it is `apparentHeatChen`.
 * @example apparentHeatSchwartzberg({ water: 0.6599, protein: 0.186, fat: 0.1506, carbohydrate: 0, fibre: 0, ash: 0.0079 }, -2.8, -5, 1978.526) // → 23854.7
 * Source: schwartzberg-1981
 * Source: fricke-becker-2001
 */
export function apparentHeatSchwartzberg(
  food: Composition,
  freezing: number,
  C: number,
  fullyFrozen = frozenHeat(food, -40),
): number {
  checkFood(food, freezing);
  checkCold(C, -40, freezing);
  if (!(fullyFrozen > 0))
    throw new OutOfRange('fully frozen heat', `${fullyFrozen} J/(kg K)`, 'more than 0 J/(kg K)');
  return fullyFrozen + ((food.water - boundWater(food)) * heatOfMelting * -freezing) / (C * C);
}
