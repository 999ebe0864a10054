/** Water activity of salt and of other solutes in the water phase. */
import { OutOfRange } from '../errors.ts';
import { saltMolarMass } from '../properties/brine.ts';

/** Highest water-phase salt for which the activity is given, mass fraction: just past saturation at 25 °C. */
const mostWaterPhaseSalt = 0.2655;

const kgPerMolWater = 0.0180153;

/**
 * Salt in the water phase, salt/(salt + water) [mass fraction].
 * Parameters: salt and water, masses or shares in one unit, ≥ 0, not both 0.
 * Assumptions: all salt is dissolved in all of the water. Checked: 1.8 % salt in 70 % water are 2.5070 %.
 * @example waterPhaseSalt(0.025, 0.65) // → 0.037037
 * Source: own-computation
 */
export function waterPhaseSalt(salt: number, water: number): number {
  if (!(salt >= 0)) throw new OutOfRange('salt', String(salt), '0 or more');
  if (!(water > 0)) throw new OutOfRange('water', String(water), 'more than 0');
  return salt / (salt + water);
}

/**
 * Osmotic coefficient of sodium chloride in water at 25 °C [-].
 * Equation: φ = 1 − A√m/(1 + 1.2√m) + m(β⁰ + β¹ e^(−2√m)) + m² C; A 0.3915, β⁰ 0.0765, β¹ 0.2664, C 0.00127.
 * Parameters: molality 0–6.2 mol/kg water. Assumptions: 25 °C. Checked: φ(1) 0.9355 and φ(6) 1.2706 of Robinson and Stokes, to 0.003.
 * @example osmoticCoefficient(1) // → 0.9359
 * Source: pitzer-mayorga-1973
 */
export function osmoticCoefficient(molality: number): number {
  if (!(molality >= 0 && molality <= 6.2))
    throw new OutOfRange('molality', `${molality} mol/kg`, '0 to 6.2 mol/kg');
  const root = Math.sqrt(molality);
  return (
    1 -
    (0.3915 * root) / (1 + 1.2 * root) +
    molality * (0.0765 + 0.2664 * Math.exp(-2 * root)) +
    0.00127 * molality ** 2
  );
}

/**
 * Water activity of salt water at 25 °C [-].
 * Equation: ln a_w = −2 · 0.0180153 · m φ(m), m = w/(1 − w)/0.0584428.
 * Parameters: salt in the water phase, mass fraction 0–0.2655 (just past saturation); refused beyond.
 * Assumptions: sodium chloride alone, 25 °C; at 0 °C it differs by little. Good to 0.0007 up to 6 mol/kg.
 * Checked: 0.760 at 6 mol/kg and saturation 0.753, published.
 * @example saltWaterActivity(0.05) // → 0.9702
 * @example saltWaterActivity(0.2) // → 0.8394
 * Source: pitzer-mayorga-1973
 * Source: resnik-chirife-1988
 */
export function saltWaterActivity(waterPhase: number): number {
  if (!(waterPhase >= 0 && waterPhase <= mostWaterPhaseSalt))
    throw new OutOfRange('waterPhaseSalt', String(waterPhase), `0 to ${mostWaterPhaseSalt}`);
  const m = (waterPhase / (1 - waterPhase)) * (1000 / saltMolarMass);
  return Math.exp(-2 * kgPerMolWater * m * osmoticCoefficient(m));
}

/**
 * Water activity of several solutes in one water [-].
 * Equation: a_w = Π a_w,i, each as if alone in all of the water. Parameters: activities 0–1.
 * Assumptions: the solutes do not act on one another. Checked: by hand.
 * @example togetherActivity([0.98, 0.99]) // → 0.9702
 * Source: ross-1975
 */
export function togetherActivity(activities: readonly number[]): number {
  return activities.reduce((product, a, i) => {
    if (!(a > 0 && a <= 1)) throw new OutOfRange(`activities[${i}]`, String(a), 'more than 0, at most 1');
    return product * a;
  }, 1);
}

/** Norrish's constant and molar mass [g/mol]; for solutes that are no electrolytes. From memory. */
const solutes = { sucrose: { K: 6.47, M: 342.3 }, glucose: { K: 2.25, M: 180.16 } } as const;
export type Solute = keyof typeof solutes;

/**
 * Water activity of sugar water at 25 °C [-].
 * Equation: ln a_w = ln x_w − K x_s²; K 6.47 for sucrose, 2.25 for glucose.
 * Parameters: grams of sugar to a gram of water, 0–2 for sucrose, 0–1 for glucose.
 * Assumptions: not for salt. The constants are from memory. Checked: sucrose 2 mol/kg 0.958, from memory of tables.
 * @example sugarWaterActivity('sucrose', 0.6846) // → 0.958
 * Source: norrish-1966
 */
export function sugarWaterActivity(solute: Solute, perWater: number): number {
  const most = solute === 'sucrose' ? 2 : 1;
  if (!(perWater >= 0 && perWater <= most))
    throw new OutOfRange('perWater', `${perWater} g/g`, `0 to ${most} g/g`);
  const { K, M } = solutes[solute];
  const ns = perWater / M;
  const xs = ns / (ns + 1 / (1000 * kgPerMolWater));
  return (1 - xs) * Math.exp(-K * xs ** 2);
}
