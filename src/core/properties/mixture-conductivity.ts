/** How the conductivities of components add up to that of a food: bounds and the models the literature compares. */
import { OutOfRange } from '../errors.ts';
import { type Composition, phases } from './food-components.ts';

/** Rules by which conductivities are put together. */
export const mixtureRules = ['levy', 'parallel', 'perpendicular', 'maxwell-eucken', 'kopelman'] as const;
export type MixtureRule = (typeof mixtureRules)[number];

/**
 * The rule used where none is asked for: of those compared on meat it met the measurements best (Pham and Willix 1989 on
 * lamb, offal and fat, within 10 %; Fricke and Becker 2001). On white chicken at 20 °C it is 0.6 % above what was measured, parallel 6 %.
 */
export const defaultRule: MixtureRule = 'levy';

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

/** A part of a food: volume in any unit, conductivity [W/(m K)], and whether it is water, frozen or not. */
export interface Phase {
  readonly volume: number;
  readonly k: number;
  readonly isWater: boolean;
}

/** Volume and conductivity of some phases lying side by side. */
function sideBySide(phases: readonly Phase[]): { volume: number; k: number } {
  let volume = 0;
  let sum = 0;
  for (const p of phases) {
    volume += p.volume;
    sum += p.volume * p.k;
  }
  return { volume, k: sum / volume };
}

/**
 * Conductivity of phases put together by a rule [W/(m K)].
 *
 *     parallel: Σ φ_i·k_i · perpendicular: 1/Σ(φ_i/k_i) · the others: water and ice as first phase, the rest as second, each as its φ-weighted mean
 *
 * @param phases at least one, of any volume above 0
 * @param rule how they are arranged
 * Assumes no air. Without ice it is the rule as published; ice, of which the publications make a phase of its own, is counted here with the water it
 * came from, so that nothing jumps where it begins. Checked through `conductivity` and `frozenConductivity`, with and without ice.
 * @example conductivityOfPhases([{ volume: 7, k: 0.6, isWater: true }, { volume: 3, k: 0.18, isWater: false }], 'levy') // → 0.434624
 * Source: levy-1981
 */
export function conductivityOfPhases(phases: readonly Phase[], rule: MixtureRule): number {
  const all = sideBySide(phases);
  if (rule === 'parallel') return all.k;
  if (rule === 'perpendicular') return all.volume / phases.reduce((sum, p) => sum + p.volume / p.k, 0);
  const water = sideBySide(phases.filter((p) => p.isWater));
  const rest = sideBySide(phases.filter((p) => !p.isWater));
  if (water.volume === 0 || rest.volume === 0) return all.k;
  if (rule === 'levy') return levy(water.k, rest.k, water.volume / all.volume);
  const phiRest = rest.volume / all.volume;
  return rule === 'kopelman' ? kopelman(water.k, rest.k, phiRest) : maxwellEucken(water.k, rest.k, phiRest);
}

/**
 * Conductivity of a food [W/(m K)].
 *
 *     parallel: Σ φ_i·k_i · perpendicular: 1/Σ(φ_i/k_i) · the others: water as first phase, the rest as its φ-weighted mean
 *
 * @param food mass fractions; used as they are
 * @param C temperature [°C], −40 to 150
 * @param rule how the components are arranged; Levy where none is given
 * Assumes no air and no ice. Levy is stated for meat, offal and fat as within 10 % of what was measured; parallel is the upper bound,
 * perpendicular the lower. Checked against white chicken as measured at 0 to 20 °C (within 1 % at 20 °C), and against three foods at three temperatures,
 * worked out from the handbook's functions.
 * @example conductivity({ water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 }, 65) // → 0.4708
 * Source: levy-1981
 * Source: pham-willix-1989
 * Source: fricke-becker-2001
 */
export function conductivity(food: Composition, C: number, rule: MixtureRule = defaultRule): number {
  return conductivityOfPhases(
    phases(food, C).map(({ phi, k, component }) => ({ volume: phi, k, isWater: component === 'water' })),
    rule,
  );
}
