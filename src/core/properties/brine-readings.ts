/** One brine read every way a kitchen reads it: per cent, salometer, gravity, Baumé, density, grams to a litre, freezing. */
import { OutOfRange } from '../errors.ts';
import { bracketedRoot } from '../numerics/roots.ts';
import {
  brineDensity,
  brineFreezing,
  brineGravity,
  salometerOfSalt,
  saltOfSalometer,
  saturatedBrine,
} from './brine.ts';

/** Where ice and salt come out together: salt, % of the brine. */
const eutectic = 23.3;

export const brineScales = ['%', 'salometer', 'gravity', 'Baumé', 'density'] as const;
/** `density` is at 20 °C [kg/m³]; salometer, gravity and Baumé are at 60 °F. */
export type BrineScale = (typeof brineScales)[number];

export interface BrineReading {
  /** % of the brine. */
  readonly saltPct: number;
  /** Of an instrument for 60 °F. */
  readonly salometer: number;
  /** Against water, both at 60 °F. */
  readonly gravity: number;
  readonly baume: number;
  /** At 20 °C [kg/m³]. */
  readonly density: number;
  /** To a litre of brine at 60 °F, and to a kilogram of the water it is made with. */
  readonly gPerLitre: number;
  readonly gPerKgWater: number;
  /** At which something comes out of it on cooling [°C], and what. */
  readonly comesOutC: number;
  readonly comesOut: 'ice' | 'salt';
}

/** The salt at which a rising function of it comes to `wanted`. */
function saltWhere(f: (saltPct: number) => number, wanted: number, path: string, unit: string): number {
  const most = 26.395;
  const [low, high] = [f(0), f(most)];
  // What rounding leaves of the ends is the ends.
  const slack = 1e-9 * Math.abs(high);
  if (!(wanted >= low - slack && wanted <= high + slack))
    throw new OutOfRange(
      path,
      `${wanted}${unit}`,
      `${Number(low.toPrecision(6))} to ${Number(high.toPrecision(6))}${unit}`,
    );
  if (wanted <= low) return 0;
  if (wanted >= high) return most;
  return bracketedRoot((w) => f(w) - wanted, 0, most, 1e-10).x;
}

/**
 * Degrees Baumé of what is heavier than water, American scale [°Bé].
 * Equation: °Bé = 145 − 145/SG. Parameters: gravity against water at 60 °F, ≥ 1. Checked: 5.35 at 1.0383, as printed tables have it.
 * @example baumeOfGravity(1.0383) // → 5.35
 * Source: salt-solubility-table
 */
export function baumeOfGravity(gravity: number): number {
  if (!(gravity >= 1 && gravity < 2)) throw new OutOfRange('gravity', String(gravity), '1 to 2');
  return 145 - 145 / gravity;
}

/**
 * Salt of a brine from its density [% of the brine].
 * Equation: the inverse of `brineDensity`. Parameters: density [kg/m³] from that of water to that of saturated brine; celsius 0–30 °C.
 * Assumptions: plain salt, nothing else dissolved: sugar and nitrite weigh too. Checked: back and forth.
 * @example saltOfDensity(1070.7, 20) // → 10.00
 * Source: brine-density-table
 */
export function saltOfDensity(density: number, celsius: number): number {
  return saltWhere((w) => brineDensity(w, celsius), density, 'density', ' kg/m³');
}

/**
 * Salt of a brine from its specific gravity, both at 60 °F [% of the brine].
 * Equation: the inverse of `brineGravity`. Parameters: gravity 1 to 1.204. Assumptions: as for the density.
 * Checked: 1.0383 are 20 degrees of the salometer, 5.279 %.
 * @example saltOfGravity(1.0383) // → 5.27
 * Source: brine-density-table
 */
export function saltOfGravity(gravity: number): number {
  return saltWhere(brineGravity, gravity, 'gravity', '');
}

/**
 * Salt of a brine that begins to freeze at a temperature [% of the brine].
 * Equation: the inverse of `brineFreezing`. Parameters: celsius −21.1 to 0 °C.
 * Assumptions: plain salt; the weaker of the two brines, that which gives ice. Checked: back and forth.
 * @example saltOfFreezing(-2.97) // → 5.00
 * Source: langes-handbook-5-13
 */
export function saltOfFreezing(celsius: number): number {
  if (!(celsius >= -21.1 && celsius <= 0)) throw new OutOfRange('celsius', `${celsius} °C`, '-21.1 to 0 °C');
  if (celsius === 0) return 0;
  return bracketedRoot((w) => celsius - brineFreezing(w), 0, eutectic, 1e-10).x;
}

/**
 * Salt of a brine from what an instrument or a recipe says of it [% of the brine].
 * Parameters: scale; value on it: % 0–26.4, salometer 0–100, gravity 1–1.204, Baumé 0–24.6, density at 20 °C 998–1200 kg/m³.
 * Assumptions: as each scale's own function says. Checked: back and forth.
 * @example saltOnScale('salometer', 20) // → 5.279
 * @example saltOnScale('Baumé', 5.35) // → 5.27
 * Source: salt-solubility-table
 * Source: brine-density-table
 */
export function saltOnScale(scale: BrineScale, value: number): number {
  switch (scale) {
    case '%':
      if (!(value >= 0 && value <= 26.395)) throw new OutOfRange('%', `${value} %`, '0 to 26.395 %');
      return value;
    case 'salometer':
      return saltOfSalometer(value);
    case 'gravity':
      return saltOfGravity(value);
    case 'Baumé':
      return saltWhere((w) => baumeOfGravity(brineGravity(w)), value, 'Baumé', ' °Bé');
    case 'density':
      return saltOfDensity(value, 20);
  }
}

/**
 * A brine on every scale, and what comes out of it when it is cooled [%, °, kg/m³, g, °C].
 * Equation: those of density, gravity, salometer and freezing; past 23.3 % salt comes out where its solubility falls to the brine's.
 * Parameters: saltPct 0–26.395 % of the brine. Assumptions: plain salt.
 * Checked: the rows of 5 to 95 degrees of the salometer.
 * @example brineReading(5.279).comesOutC // → -3.15
 * Source: brine-density-table
 * Source: langes-handbook-5-13
 * Source: salt-solubility-table
 */
export function brineReading(saltPct: number): BrineReading {
  const salometer = salometerOfSalt(saltPct);
  const gravity = brineGravity(saltPct);
  const ice = saltPct <= eutectic;
  // The brine is saturated where the solubility, which rises with temperature, has fallen to its strength.
  const settles = () => bracketedRoot((C) => saturatedBrine(C) - saltPct, -21.11, 25, 1e-9).x;
  return {
    saltPct,
    salometer,
    gravity,
    baume: baumeOfGravity(gravity),
    density: brineDensity(saltPct, 20),
    gPerLitre: (brineDensity(saltPct, 15.56) * saltPct) / 100,
    gPerKgWater: (saltPct / (100 - saltPct)) * 1000,
    comesOutC: ice ? brineFreezing(saltPct) : settles(),
    comesOut: ice ? 'ice' : 'salt',
  };
}
