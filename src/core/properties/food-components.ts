/**
 * Thermal properties of food from its composition: the polynomials of Choi and Okos for each component, and the rules by
 * which components add up. Temperatures in °C, fractions by mass unless said otherwise.
 */
import { OutOfRange } from '../errors.ts';
import type { Confidence } from '../sources.ts';

/** Mass fractions of a food, 0–1, summing to 1 ± 0.005. */
export interface Composition {
  readonly water: number;
  readonly protein: number;
  readonly fat: number;
  readonly carbohydrate: number;
  readonly fibre: number;
  readonly ash: number;
}

export type Component = keyof Composition | 'ice';

/** a + b·T + c·T², T in °C. */
export type Quadratic = readonly [a: number, b: number, c: number];

/** One component's published functions, with where they hold and how they were had. */
export interface ComponentPassport {
  /** Conductivity [W/(m K)]. */
  readonly k: Quadratic;
  /** Density [kg/m³]. */
  readonly rho: Quadratic;
  /** Specific heat [kJ/(kg K)]; `cpBelow` where it differs below 0 °C. */
  readonly cp: Quadratic;
  readonly cpBelow?: Quadratic;
  /** Range of validity [°C]. */
  readonly low: number;
  readonly high: number;
  readonly source: string;
  readonly confidence: Confidence;
}

/** Range of the polynomials [°C]. Outside it the value at the nearer end is used and the answer says so. */
export const choiOkosRange = { low: -40, high: 150 } as const;

const common = { ...choiOkosRange, source: 'choi-okos-1986', confidence: 'secondary' } as const;

/**
 * Components as reprinted by ASHRAE. Two values differ between printings and are settled here: the slope of the
 * conductivity of fat is −2.7604e-4 (a copy with e-3 would give nearly none at 65 °C), and the specific heat of water
 * is 4.1762 (the first paper's 4.1289 is lower than measured water). Below 0 °C water here is unfrozen water.
 */
export const components: Readonly<Record<Component, ComponentPassport>> = {
  protein: {
    k: [0.17881, 1.1958e-3, -2.7178e-6],
    rho: [1329.9, -0.5184, 0],
    cp: [2.0082, 1.2089e-3, -1.3129e-6],
    ...common,
  },
  fat: {
    k: [0.18071, -2.7604e-4, -1.7749e-7],
    rho: [925.59, -0.41757, 0],
    cp: [1.9842, 1.4733e-3, -4.8008e-6],
    ...common,
  },
  carbohydrate: {
    k: [0.20141, 1.3874e-3, -4.3312e-6],
    rho: [1599.1, -0.31046, 0],
    cp: [1.5488, 1.9625e-3, -5.9399e-6],
    ...common,
  },
  fibre: {
    k: [0.18331, 1.2497e-3, -3.1683e-6],
    rho: [1311.5, -0.36589, 0],
    cp: [1.8459, 1.8306e-3, -4.6509e-6],
    ...common,
  },
  ash: {
    k: [0.32962, 1.4011e-3, -2.9069e-6],
    rho: [2423.8, -0.28063, 0],
    cp: [1.0926, 1.8896e-3, -3.6817e-6],
    ...common,
  },
  water: {
    k: [0.57109, 1.7625e-3, -6.7036e-6],
    rho: [997.18, 3.1439e-3, -3.7574e-3],
    cp: [4.1762, -9.0864e-5, 5.4731e-6],
    cpBelow: [4.0817, -5.3062e-3, 9.9516e-4],
    ...common,
  },
  ice: {
    k: [2.2196, -6.2489e-3, 1.0154e-4],
    rho: [916.89, -0.13071, 0],
    cp: [2.0623, 6.0769e-3, 0],
    ...common,
    high: 0,
  },
};

const names = ['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash'] as const;

const clamp = (C: number) => Math.min(choiOkosRange.high, Math.max(choiOkosRange.low, C));
const at = ([a, b, c]: Quadratic, C: number) => a + C * (b + C * c);

/**
 * Conductivity of one component [W/(m K)].
 *
 *     k = a + b·T + c·T²
 *
 * @param component name of the component
 * @param C temperature [°C], −40 to 150; beyond that the value at the nearer end
 * Assumes water unfrozen at any temperature.
 * Checked against the values of the handbook's functions at five temperatures.
 * @example componentConductivity('fat', 65) // 0.162018
 * Source: choi-okos-1986
 */
export function componentConductivity(component: Component, C: number): number {
  return at(components[component].k, clamp(C));
}

/**
 * Density of one component [kg/m³].
 *
 *     rho = a + b·T + c·T²
 *
 * @param component name of the component
 * @param C temperature [°C], −40 to 150; beyond that the value at the nearer end
 * Checked against the values of the handbook's functions at five temperatures.
 * @example componentDensity('protein', 65) // 1296.204
 * Source: choi-okos-1986
 */
export function componentDensity(component: Component, C: number): number {
  return at(components[component].rho, clamp(C));
}

/**
 * Specific heat of one component [J/(kg K)].
 *
 *     cp = 1000·(a + b·T + c·T²)
 *
 * @param component name of the component
 * @param C temperature [°C], −40 to 150; beyond that the value at the nearer end
 * Assumes water unfrozen; below 0 °C it follows the published function of unfrozen water.
 * Checked against the values of the handbook's functions at five temperatures.
 * @example componentHeat('carbohydrate', 20) // 1585.674
 * Source: choi-okos-1986
 */
export function componentHeat(component: Component, C: number): number {
  const passport = components[component];
  const T = clamp(C);
  return 1000 * at(T < 0 && passport.cpBelow ? passport.cpBelow : passport.cp, T);
}

/**
 * The same food with fractions that sum to one [-].
 * Throws `OutOfRange` when a fraction is not within 0–1 or when the sum is further from 1 than 0.005.
 * @param food mass fractions, each 0–1
 * @param path what to call it in an error
 * Checked by its sum.
 * @example normalised({ water: 0.7, protein: 0.2, fat: 0.1, carbohydrate: 0, fibre: 0, ash: 0.004 }).water // 0.69721
 * Source: choi-okos-1986
 */
export function normalised(food: Composition, path = 'composition'): Composition {
  let sum = 0;
  for (const name of names) {
    const x = food[name];
    if (!(x >= 0 && x <= 1)) throw new OutOfRange(`${path}.${name}`, String(x), 'a mass fraction, 0 to 1');
    sum += x;
  }
  if (!(Math.abs(sum - 1) <= 0.005 + 1e-12))
    throw new OutOfRange(path, `fractions that sum to ${Number(sum.toFixed(6))}`, 'a sum of 1 ± 0.005');
  return {
    water: food.water / sum,
    protein: food.protein / sum,
    fat: food.fat / sum,
    carbohydrate: food.carbohydrate / sum,
    fibre: food.fibre / sum,
    ash: food.ash / sum,
  };
}

/**
 * Density of a food without pores [kg/m³].
 *
 *     rho = 1/Σ(x_i/rho_i)
 *
 * @param food mass fractions; used as they are, not normalised
 * @param C temperature [°C], −40 to 150
 * Assumes no air: a filling beaten full of it is lighter.
 * Checked against the values of three foods worked out from the handbook's functions.
 * @example density({ water: 0.7342, protein: 0.2029, fat: 0.0525, carbohydrate: 0, fibre: 0, ash: 0.0104 }, 5) // 1052
 * Source: ashrae-refrigeration-properties
 */
export function density(food: Composition, C: number): number {
  let volume = 0;
  for (const name of names) if (food[name] !== 0) volume += food[name] / componentDensity(name, C);
  return 1 / volume;
}

/**
 * Specific heat of an unfrozen food [J/(kg K)].
 *
 *     cp = Σ x_i·cp_i
 *
 * @param food mass fractions; used as they are, not normalised
 * @param C temperature [°C], −40 to 150
 * Assumes no ice and no heat of melting fat or of denaturing protein.
 * Checked against the handbook's lamb at 5 °C, 3.59 kJ/(kg K).
 * @example specificHeat({ water: 0.7342, protein: 0.2029, fat: 0.0525, carbohydrate: 0, fibre: 0, ash: 0.0106 }, 5) // 3590.85
 * Source: ashrae-refrigeration-properties
 */
export function specificHeat(food: Composition, C: number): number {
  let cp = 0;
  for (const name of names) if (food[name] !== 0) cp += food[name] * componentHeat(name, C);
  return cp;
}

/** Volume fraction and conductivity [W/(m K)] of each component present at a temperature, in a fixed order, water first. */
export function phases(food: Composition, C: number): { phi: number; k: number; component: Component }[] {
  const rho = density(food, C);
  return names
    .filter((name) => food[name] !== 0)
    .map((component) => ({
      component,
      phi: (food[component] / componentDensity(component, C)) * rho,
      k: componentConductivity(component, C),
    }));
}
