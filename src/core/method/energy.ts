/** Energy that cooking and chilling take: heat in the food, water driven off, and what the machine is paid for it. */
import { OutOfRange } from '../errors.ts';
import { type Composition, specificHeat } from '../properties/food-components.ts';
import { latentHeat } from '../properties/saturation.ts';

const masses = (name: string, x: number) => {
  if (!(x >= 0 && x <= 1e5)) throw new OutOfRange(name, `${x} kg`, '0 to 100000 kg');
};

/**
 * Heat that goes into a food as it is warmed, or out of it as it is cooled [J]; always counted as positive.
 * Equation: Q = m c̄p |T₂ − T₁|, c̄p the mean of the specific heat of the composition over the way (Simpson).
 * Parameters: mass [kg] 0–1e5; composition, mass fractions; temperatures [°C] 0 to 150, no freezing between them.
 * Assumptions: the whole mass comes to the second temperature; heat of proteins unfolding (2–4 kJ/kg) is left out.
 * Checked: a kilogram of mousse with 3.49 kJ/(kg K) from 5 to 70 °C takes 0.063 kWh; a kilogram of water from 10 to 100 °C 0.105 kWh.
 * @example sensibleHeat(1, { water: 1, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 }, 10, 100) / 3.6e6 // → 0.105
 * Source: own-computation
 */
export function sensibleHeat(mass: number, food: Composition, fromC: number, toC: number): number {
  masses('mass', mass);
  for (const [name, C] of [
    ['fromC', fromC],
    ['toC', toC],
  ] as const)
    if (!(C >= 0 && C <= 150)) throw new OutOfRange(name, `${C} °C`, '0 to 150 °C');
  const middle = (fromC + toC) / 2;
  const cp = (specificHeat(food, fromC) + 4 * specificHeat(food, middle) + specificHeat(food, toC)) / 6;
  return mass * cp * Math.abs(toC - fromC);
}

/**
 * Heat that water takes with it when it is driven off [J].
 * Equation: Q = m h_fg(T).
 * Parameters: mass of water [kg] 0–1e5; temperature at which it leaves [°C] 0 to 200.
 * Assumptions: it leaves as vapour and does not condense on the food again.
 * Checked: a kilogram at 100 °C takes 0.6268 kWh.
 * @example latentHeatOf(1, 100) / 3.6e6 // → 0.6268
 * Source: own-computation
 */
export function latentHeatOf(mass: number, C: number): number {
  masses('mass', mass);
  return mass * latentHeat(C);
}

/**
 * Energy that is paid for so much heat [kWh].
 * Equation: E = Q / (η · 3.6e6).
 * Parameters: heat [J] ≥ 0; efficiency η, 0 to 6: what reaches the food of what is paid; of a chiller, heat moved for each unit paid for.
 * Assumptions: warming up the machine and standing idle are in the efficiency that the kitchen states.
 * Checked: 3.6 MJ at one half is 2 kWh.
 * @example energyPaid(3.6e6, 0.5) // → 2
 * Source: own-computation
 */
export function energyPaid(heat: number, efficiency: number): number {
  if (!(heat >= 0)) throw new OutOfRange('heat', `${heat} J`, '0 J or more');
  if (!(efficiency > 0 && efficiency <= 6))
    throw new OutOfRange('efficiency', String(efficiency), 'more than 0, at most 6');
  return heat / efficiency / 3.6e6;
}
