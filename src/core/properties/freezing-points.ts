/** At which temperature the first ice forms in a food. */
import { OutOfRange } from '../errors.ts';
import type { Confidence } from '../sources.ts';
import type { Composition } from './food-components.ts';

export interface FreezingFood {
  readonly composition: Composition;
  /** First ice [°C]. */
  readonly freezing: number;
  /** Heat of freezing all its water as the handbook rounds it [kJ/kg]. */
  readonly latent: number;
  readonly source: string;
  readonly confidence: Confidence;
}

const food = (
  water: number,
  protein: number,
  fat: number,
  carbohydrate: number,
  ash: number,
  freezing: number,
  latent: number,
): FreezingFood => ({
  composition: {
    water: water / 100,
    protein: protein / 100,
    fat: fat / 100,
    carbohydrate: carbohydrate / 100,
    fibre: 0,
    ash: ash / 100,
  },
  freezing,
  latent,
  source: 'ashrae-refrigeration-properties',
  confidence: 'memory',
});

/**
 * Foods whose first ice the handbook's table gives, raw and unsalted; its rows are from memory. Salt, sugar and drying
 * lower the point: a brined piece freezes later than these.
 */
export const freezingFoods = {
  chicken: food(65.99, 18.6, 15.06, 0, 0.79, -2.8, 220),
  'pork shoulder, lean': food(72.63, 19.55, 7.14, 0, 1.02, -2.2, 243),
  'lamb, lean': food(73.42, 20.29, 5.25, 0, 1.06, -1.9, 245),
  'beef carcass': food(58.21, 17.48, 22.55, 0, 0.82, -1.7, 194),
  'beef liver': food(68.99, 20, 3.85, 5.82, 1.34, -1.7, 230),
  cod: food(81.22, 17.81, 0.67, 0, 1.16, -2.2, 271),
  'egg white': food(87.81, 10.52, 0, 1.03, 0.64, -0.6, 293),
  'whole egg': food(75.33, 12.49, 10.02, 1.22, 0.94, -0.6, 252),
  'egg yolk': food(48.81, 16.76, 30.87, 1.78, 1.77, -0.6, 163),
} as const satisfies Record<string, FreezingFood>;

/**
 * A food of the table by its name; its first ice is at `freezing` [°C].
 * Throws `OutOfRange` for an unknown name, naming those that are known.
 * @param name as in `freezingFoods`
 * @param path what to call it in an error
 * Assumes the food raw and unsalted. Checked: the handbook's heat of freezing is its water's, within 1 kJ/kg.
 * @example freezingFoodNamed('beef carcass').freezing // → -1.7
 * Source: ashrae-refrigeration-properties
 */
export function freezingFoodNamed(name: string, path = 'food'): FreezingFood {
  if (!Object.hasOwn(freezingFoods, name))
    throw new OutOfRange(path, JSON.stringify(name), `one of ${Object.keys(freezingFoods).join(', ')}`);
  return freezingFoods[name as keyof typeof freezingFoods];
}
