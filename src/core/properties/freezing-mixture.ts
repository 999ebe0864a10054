/** Density and conductivity of a food part of whose water is ice. */
import { OutOfRange } from '../errors.ts';
import { type Composition, componentConductivity, componentDensity } from './food-components.ts';
import { conductivityOfPhases, defaultRule, type MixtureRule, type Phase } from './mixture-conductivity.ts';

const solids = ['protein', 'fat', 'carbohydrate', 'fibre', 'ash'] as const;

/** Volume per kilogram of food [m³/kg] and conductivity [W/(m K)] of each phase: ice first, then unfrozen water. */
function phases(food: Composition, ice: number, C: number): Phase[] {
  if (!(C >= -40 && C <= 0)) throw new OutOfRange('temperature', `${C} °C`, '-40 to 0 °C');
  if (!(ice >= 0 && ice <= food.water))
    throw new OutOfRange('ice', String(ice), `a fraction, 0 to the food's water, ${food.water}`);
  for (const name of solids)
    if (!(food[name] >= 0 && food[name] <= 1))
      throw new OutOfRange(name, String(food[name]), 'a fraction, 0 to 1');
  const of = (name: 'ice' | 'water' | (typeof solids)[number], x: number) => ({
    volume: x / componentDensity(name, C),
    k: componentConductivity(name, C),
    isWater: name === 'ice' || name === 'water',
  });
  return [of('ice', ice), of('water', food.water - ice), ...solids.map((name) => of(name, food[name]))];
}

const total = (parts: readonly { volume: number }[]) => parts.reduce((sum, p) => sum + p.volume, 0);

/**
 * Density of a frozen or partly frozen food without pores [kg/m³].
 *
 *     rho = 1/Σ(x_i/rho_i), ice among the components
 *
 * @param food mass fractions, water frozen or not; used as they are, not normalised
 * @param ice mass of ice in a kilogram of food, 0 to its water
 * @param C temperature [°C], −40 to 0
 * Assumes no air and no crack. Checked against the handbook's pork shoulder at −40 °C.
 * @example frozenDensity({ water: 0.7263, protein: 0.1955, fat: 0.0714, carbohydrate: 0, fibre: 0, ash: 0.0102 }, 0.671537, -40) // → 991.846
 * Source: ashrae-refrigeration-properties
 */
export function frozenDensity(food: Composition, ice: number, C: number): number {
  return 1 / total(phases(food, ice, C));
}

/**
 * Conductivity of a frozen or partly frozen food [W/(m K)].
 *
 *     parallel: Σ φ_i·k_i · perpendicular: 1/Σ(φ_i/k_i) · Levy and the others: ice with unfrozen water as first phase, the rest as second
 *
 * @param food mass fractions, water frozen or not; used as they are, not normalised
 * @param ice mass of ice in a kilogram of food, 0 to its water
 * @param C temperature [°C], −40 to 0
 * @param rule how the phases are arranged; Levy's where none is given, the best of the comparison of 2001
 * Assumes no air. Where there is no ice it is the conductivity of the unfrozen food by the same rule. Levy is stated for meat as within 10 %, with ice as
 * a phase of its own; counting it with its water meets frozen chicken better (within 2.1 %, against 3 to 8.4 %) and jumps nowhere.
 * Checked against the handbook's pork shoulder at −40 °C, both bounds, and chicken as measured at −10 to −40 °C.
 * @example frozenConductivity({ water: 0.7263, protein: 0.1955, fat: 0.0714, carbohydrate: 0, fibre: 0, ash: 0.0102 }, 0.671537, -40, 'parallel') // → 1.9617
 * Source: levy-1981
 * Source: pham-willix-1989
 * Source: fricke-becker-2001
 * Source: sweat-haugh-stadelman-1973
 */
export function frozenConductivity(
  food: Composition,
  ice: number,
  C: number,
  rule: MixtureRule = defaultRule,
): number {
  return conductivityOfPhases(phases(food, ice, C), rule);
}
