/**
 * One food through its freezing: first ice, ice, apparent heat and conductivity at any temperature, as a computation in
 * steps wants them. Schwartzberg's form over the heats of Choi and Okos' components, conductivity by the layer's rule, ice with its water.
 */
import { OutOfRange } from '../errors.ts';
import type { Composition } from './food-components.ts';
import { boundWater, frozenHeat, heatOfMelting } from './freezing.ts';
import { frozenConductivity } from './freezing-mixture.ts';
import { defaultRule, type MixtureRule } from './mixture-conductivity.ts';

/** First ice that the forms are used for [°C]. */
export const firstIceRange = { low: -10, high: -0.1 } as const;

/**
 * First ice of a food from its composition [°C].
 *
 *     t_f = −4.66·x_other/x_water − 46.4·x_ash/x_water
 *
 * @param food mass fractions; `other` is taken as protein, carbohydrate and fibre (the quotation does not say), salt as ash
 * Assumes a food of meat's kind, raw, cooked or cured; fat does not count. Its author reports times and loads within 10 %.
 * Checked against the handbook's meats and cod (from memory), within 1 K; egg yolk it misses by 3 K. Give a measured point
 * where the answer hangs on it.
 * @example firstIce({ water: 0.7342, protein: 0.2029, fat: 0.0525, carbohydrate: 0, fibre: 0, ash: 0.0106 }) // → -1.958
 * Source: pham-1996
 */
export function firstIce(food: Composition): number {
  if (!(food.water > 0)) throw new OutOfRange('water', String(food.water), 'a fraction, above 0 to 1');
  return -(4.66 * (food.protein + food.carbohydrate + food.fibre) + 46.4 * food.ash) / food.water;
}

/**
 * Whether a food has water that can freeze, at a first ice the forms are used for [-].
 * @param food mass fractions
 * @param freezing first ice [°C]
 * Source: ashrae-refrigeration-properties
 */
export function canFreeze(food: Composition, freezing: number): boolean {
  return food.water > boundWater(food) && freezing >= firstIceRange.low && freezing <= firstIceRange.high;
}

const within = (C: number) => Math.min(0, Math.max(-40, C));

export interface FreezingFood {
  /** First ice [°C]. */
  readonly freezing: number;
  /** Mass of water in a kilogram of food. */
  readonly water: number;
  /** Mass of ice in a kilogram of food [-], 0 from the first ice up. */
  ice(C: number): number;
  /** Heat to warm a kilogram by a degree at or below the first ice, melting ice included [J/(kg K)]. */
  apparentHeat(C: number): number;
  /** Heat from one temperature to a higher one, both at or below the first ice [J/kg]. */
  heatBetween(C0: number, C1: number): number;
  /** Conductivity at or below the first ice [W/(m K)]. */
  conductivity(C: number): number;
}

/**
 * A food through its freezing: ice [-], heats [J/(kg K), J/kg], conductivity [W/(m K)].
 *
 *     x_ice = (x_water − x_b)(1 − t_f/t);  c_a = c_f(t) + (x_water − x_b)·L0·(−t_f)/t²;  ∫c_a dt in closed form
 *
 * @param food mass fractions that sum to one
 * @param freezing first ice [°C], −10 to −0.1
 * @param rule of conductivity; Levy where none is given
 * Assumes an ideal solution whose bound water (0.4 of the protein) never freezes, constant heat of melting at 0 °C (the heats of water and ice
 * make up the rest), and no undercooling. Below −40 °C the components' functions are held, the ice goes on.
 * Checked against Chen's enthalpy for the handbook's meats and by differentiating.
 * @example freezingFood({ water: 0.5821, protein: 0.1748, fat: 0.2349, carbohydrate: 0, fibre: 0, ash: 0.0082 }, -1.7).ice(-20) // → 0.46864
 * Source: schwartzberg-1981
 * Source: miles-1974
 * Source: levy-1981
 */
export function freezingFood(
  food: Composition,
  freezing: number,
  rule: MixtureRule = defaultRule,
): FreezingFood {
  if (!canFreeze(food, freezing))
    throw new OutOfRange(
      'first ice',
      `${freezing} °C, ${food.water} water`,
      '-10 to -0.1 °C and more water than protein binds',
    );
  const free = food.water - boundWater(food);
  const latent = free * heatOfMelting;
  const ice = (C: number) => (C >= freezing ? 0 : free * (1 - freezing / C));
  const frozen = (C: number) => frozenHeat(food, within(C));
  return {
    freezing,
    water: food.water,
    ice,
    apparentHeat: (C) => frozen(C) - (latent * freezing) / (C * C),
    heatBetween: (C0, C1) =>
      // Simpson's rule is exact for the components' quadratics; the ice in closed form.
      ((C1 - C0) / 6) * (frozen(C0) + 4 * frozen((C0 + C1) / 2) + frozen(C1)) +
      heatOfMelting * (ice(C0) - ice(C1)),
    conductivity: (C) => frozenConductivity(food, ice(C), within(C), rule),
  };
}
