/** How the conductivities of components add up to that of a food: bounds and the models the literature compares. */
import { OutOfRange } from '../errors.ts';
import { type Composition, phases } from './food-components.ts';

export type MixtureRule = 'parallel' | 'perpendicular' | 'maxwell-eucken' | 'levy' | 'kopelman';

/**
 * The rule used where none is asked for. Volume-fraction parallel is the one most widely used with Choi and Okos'
 * components, so that answers can be compared; it is the upper bound. Comparisons on meat (Pham & Willix 1989; Fricke &
 * Becker 2001) prefer Levy, 4–12 % lower for lean to fatty foods, which cooks slower: a fitted probe log settles it.
 */
export const defaultRule: MixtureRule = 'parallel';

const fraction = (x: number, path: string) => {
  if (!(x >= 0 && x <= 1)) throw new OutOfRange(path, String(x), 'a volume fraction, 0 to 1');
};
const positive = (x: number, path: string) => {
  if (!(x > 0 && Number.isFinite(x))) throw new OutOfRange(path, `${x} W/(m K)`, 'more than 0 W/(m K)');
};

/**
 * Conductivity of two phases by Maxwell's equation as Eucken wrote it [W/(m K)].
 *
 *     k = kc·[2kc + kd − 2φd(kc − kd)]/[2kc + kd + φd(kc − kd)]
 *
 * @param kc continuous phase [W/(m K)], > 0
 * @param kd dispersed phase [W/(m K)], > 0
 * @param phiD volume fraction of the dispersed phase, 0–1
 * Assumes spheres far apart.
 * Checked at the limits and by hand.
 * @example maxwellEucken(0.6, 0.18, 0.3) // 0.449402
 * Source: eucken-1940
 */
export function maxwellEucken(kc: number, kd: number, phiD: number): number {
  positive(kc, 'kc');
  positive(kd, 'kd');
  fraction(phiD, 'phiD');
  return (kc * (2 * kc + kd - 2 * phiD * (kc - kd))) / (2 * kc + kd + phiD * (kc - kd));
}

/**
 * Conductivity of two phases by Levy's symmetric form of Maxwell's equation [W/(m K)].
 *
 *     k = k2·[2 + Λ + 2(Λ − 1)F]/[2 + Λ − (Λ − 1)F],  Λ = k1/k2,  σ = (Λ − 1)²/[(Λ + 1)² + Λ/2],
 *     F = ½{(2/σ − 1 + 2φ1) − √[(2/σ − 1 + 2φ1)² − 8φ1/σ]}
 *
 * @param k1 first phase [W/(m K)], > 0
 * @param k2 second phase [W/(m K)], > 0
 * @param phi1 volume fraction of the first phase, 0–1
 * Assumes two phases, neither of them preferred as the continuous one.
 * Checked at the limits φ1 = 0 and 1, and by hand.
 * @example levy(0.6, 0.18, 0.7) // 0.434624
 * Source: levy-1981
 */
export function levy(k1: number, k2: number, phi1: number): number {
  positive(k1, 'k1');
  positive(k2, 'k2');
  fraction(phi1, 'phi1');
  if (k1 === k2) return k1;
  const ratio = k1 / k2;
  const sigma = (ratio - 1) ** 2 / ((ratio + 1) ** 2 + ratio / 2);
  const s = 2 / sigma - 1 + 2 * phi1;
  const F = (s - Math.sqrt(s * s - (8 * phi1) / sigma)) / 2;
  return (k2 * (2 + ratio + 2 * (ratio - 1) * F)) / (2 + ratio - (ratio - 1) * F);
}

/**
 * Conductivity of two phases by Kopelman's isotropic model for comparable conductivities [W/(m K)].
 *
 *     k = kc·(1 − Q)/(1 − Q(1 − L)),  L³ = φd,  Q = L²·(1 − kd/kc)
 *
 * @param kc continuous phase [W/(m K)], > 0
 * @param kd dispersed phase [W/(m K)], > 0
 * @param phiD volume fraction of the dispersed phase, 0–1
 * Assumes the dispersed phase in cubes.
 * Checked at the limits and by hand.
 * @example kopelman(0.6, 0.18, 0.3) // 0.459422
 * Source: kopelman-1966
 */
export function kopelman(kc: number, kd: number, phiD: number): number {
  positive(kc, 'kc');
  positive(kd, 'kd');
  fraction(phiD, 'phiD');
  const L = Math.cbrt(phiD);
  const Q = L * L * (1 - kd / kc);
  return (kc * (1 - Q)) / (1 - Q * (1 - L));
}

/**
 * Conductivity of a food [W/(m K)].
 *
 *     parallel: Σ φ_i·k_i · perpendicular: 1/Σ(φ_i/k_i) · the others: water as first phase, the rest as its φ-weighted mean
 *
 * @param food mass fractions; used as they are
 * @param C temperature [°C], −40 to 150
 * @param rule how the components are arranged; parallel where none is given
 * Assumes no air and no ice. Checked against three foods at three temperatures, worked out from the handbook's functions;
 * parallel is above, perpendicular below every other rule.
 * @example conductivity({ water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 }, 65) // 0.514
 * Source: ashrae-refrigeration-properties
 */
export function conductivity(food: Composition, C: number, rule: MixtureRule = defaultRule): number {
  const parts = phases(food, C);
  if (rule === 'parallel') return parts.reduce((sum, p) => sum + p.phi * p.k, 0);
  if (rule === 'perpendicular') return 1 / parts.reduce((sum, p) => sum + p.phi / p.k, 0);
  const water = parts.find((p) => p.component === 'water');
  const rest = parts.filter((p) => p.component !== 'water');
  const phiRest = rest.reduce((sum, p) => sum + p.phi, 0);
  if (water === undefined || phiRest === 0) return parts.reduce((sum, p) => sum + p.phi * p.k, 0);
  const kRest = rest.reduce((sum, p) => sum + p.phi * p.k, 0) / phiRest;
  if (rule === 'levy') return levy(water.k, kRest, 1 - phiRest);
  return rule === 'kopelman' ? kopelman(water.k, kRest, phiRest) : maxwellEucken(water.k, kRest, phiRest);
}
