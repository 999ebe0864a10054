/** Salt in water: density, freezing, solubility and the salometer, from published tables with interpolation. */
import { OutOfRange } from '../errors.ts';
import type { Basis } from '../sources.ts';

/** Molar mass of sodium chloride [g/mol]. */
export const saltMolarMass = 58.4428;

/** Salt, % of the brine → density at 20 °C [kg/m³] and its fall per kelvin. The row of pure water is from memory. */
const densities: readonly (readonly [pct: number, rho20: number, slope: number])[] = [
  [0, 998.2, 0.2],
  [1, 1005.3, 0.22],
  [2, 1012.2, 0.24],
  [4, 1026.8, 0.28],
  [6, 1041.3, 0.31],
  [8, 1055.9, 0.34],
  [10, 1070.7, 0.37],
  [12, 1085.7, 0.39],
  [14, 1100.9, 0.42],
  [16, 1116.2, 0.44],
  [18, 1131.9, 0.47],
  [20, 1147.8, 0.49],
  [22, 1164.0, 0.51],
  [24, 1180.4, 0.53],
  [26, 1197.2, 0.55],
];

/** Salt, % of the brine → temperature at which ice begins to form [°C]. */
const freezing: readonly (readonly [pct: number, C: number])[] = [
  [0, 0],
  [1, -0.58],
  [2, -1.13],
  [3, -1.72],
  [4, -2.35],
  [5, -2.97],
  [6, -3.63],
  [7, -4.32],
  [8, -5.03],
  [9, -5.77],
  [15, -10.88],
  [16, -11.9],
  [17, -12.93],
  [18, -14.03],
  [19, -15.21],
  [20, -16.46],
  [21, -17.78],
  [22, -19.19],
  [23, -20.69],
  [23.3, -21.1],
];

/** Temperature [°C] → salt of a saturated brine, % of the brine. */
const solubility: readonly (readonly [C: number, pct: number])[] = [
  [-21.11, 23.31],
  [-17.78, 23.83],
  [-12.22, 24.7],
  [-6.67, 25.53],
  [0, 26.29],
  [0.1, 26.31],
  [4.44, 26.33],
  [10, 26.36],
  [15.56, 26.395],
  [21.11, 26.45],
  [37.78, 26.68],
  [51.67, 26.92],
  [65.56, 27.21],
  [79.44, 27.62],
  [100, 28.12],
  [108.7, 28.46],
];

/** Saturation at 60 °F, 100 on the salometer [% of the brine]. */
const fullScale = 26.395;

function between(rows: readonly (readonly number[])[], x: number, column: number): number {
  let i = 1;
  while (i < rows.length - 1 && rows[i]![0]! < x) i++;
  const [a, b] = [rows[i - 1]!, rows[i]!];
  return a[column]! + ((b[column]! - a[column]!) * (x - a[0]!)) / (b[0]! - a[0]!);
}

function within(name: string, x: number, low: number, high: number, unit: string): void {
  if (!(x >= low && x <= high)) throw new OutOfRange(name, `${x} ${unit}`, `${low} to ${high} ${unit}`);
}

/**
 * Density of brine [kg/m³].
 * Equation: ρ = ρ20(w) − A(w)(T − 20) − 0.0064·exp(−w/12)·(T − 20)², ρ20 and A straight between the table's rows.
 * Parameters: saltPct 0–26.4 % of the brine; celsius 0–30 °C.
 * Assumptions: the slope is published about 20 °C; how brine, like water, lies flatter towards 0 °C is a fit of ours to tabulated
 * volumes of 0 to 30 °C, which it leaves by 0.5 kg/m³ at most; pure water is from memory; from 26 to 26.4 % the last slope goes on.
 * Checked: against those volumes from 0.6 to 22.6 %, to a thousandth, and against the specific gravity at 60 °F of 20 to 90 degrees
 * of the salometer, to 0.002.
 * @example brineDensity(10, 20) // → 1070.7
 * Source: brine-density-table
 * Source: rogers-pitzer-1982
 */
export function brineDensity(saltPct: number, celsius: number): number {
  within('saltPct', saltPct, 0, 26.4, '%');
  within('celsius', celsius, 0, 30, '°C');
  const away = celsius - 20;
  const curve = 0.0064 * Math.exp(-saltPct / 12);
  return between(densities, saltPct, 1) - between(densities, saltPct, 2) * away - curve * away * away;
}

/**
 * Temperature at which ice begins to form in a brine [°C].
 * Equation: straight between the table's rows; from 9 to 15 %, where the table has none, a quartic through all of it:
 * −0.0117 − 0.537565 w − 0.0115493 w² + 1.59835e-4 w³ − 1.47352e-5 w⁴.
 * Parameters: saltPct 0–23.3 % of the brine; beyond it salt comes out before ice does.
 * Assumptions: plain salt. The quartic was fitted to the table and leaves it by 0.03 K at most.
 * Checked: −3.16 °C at 20 degrees of the salometer, −9.20 at 50.
 * @example brineFreezing(5) // → -2.97
 * Source: langes-handbook-5-13
 */
export function brineFreezing(saltPct: number): number {
  within('saltPct', saltPct, 0, 23.3, '%');
  const w = saltPct;
  if (w > 9 && w < 15)
    return -0.0117 - 0.537565 * w - 0.0115493 * w ** 2 + 1.59835e-4 * w ** 3 - 1.47352e-5 * w ** 4;
  return between(freezing, w, 1);
}

/**
 * Salt of a saturated brine [% of the brine].
 * Equation: straight between the table's rows. Parameters: celsius −21.1 to 108.7 °C.
 * Assumptions: plain salt, at rest with its crystals. Checked: 26.395 % at 15.56 °C, full scale of the salometer.
 * @example saturatedBrine(15.56) // → 26.395
 * Source: salt-solubility-table
 */
export function saturatedBrine(celsius: number): number {
  within('celsius', celsius, -21.11, 108.7, '°C');
  return between(solubility, celsius, 1);
}

/**
 * Salt of a brine that reads so many degrees on a salometer of 60 °F [% of the brine].
 * Equation: w = 26.395 °S/100. Parameters: degrees 0–100, read at 15.6 °C.
 * Assumptions: 100 degrees are saturation at 60 °F; instruments for canning (25 % = 100) and for 38 °F exist and read otherwise.
 * Checked: 20 degrees are 5.279 %.
 * @example saltOfSalometer(20) // → 5.279
 * Source: salt-solubility-table
 */
export function saltOfSalometer(degrees: number): number {
  within('degrees', degrees, 0, 100, '° salometer');
  return (fullScale * degrees) / 100;
}

/**
 * Degrees that a brine reads on a salometer of 60 °F [-].
 * Equation: °S = 100 w/26.395. Parameters: saltPct 0–26.395 % of the brine. Assumptions and check: as the other way.
 * @example salometerOfSalt(5.279) // → 20.00
 * Source: salt-solubility-table
 */
export function salometerOfSalt(saltPct: number): number {
  within('saltPct', saltPct, 0, fullScale, '%');
  return (100 * saltPct) / fullScale;
}

/**
 * Specific gravity of brine against water, both at 60 °F [-].
 * Equation: ρ(w, 15.56 °C)/ρ(0, 15.56 °C). Parameters: saltPct 0–26.4 % of the brine. Assumptions: as for the density.
 * Checked: 1.0383 at 20 degrees of the salometer, 1.1389 at 70.
 * @example brineGravity(5.279) // → 1.038
 * Source: brine-density-table
 */
export function brineGravity(saltPct: number): number {
  return brineDensity(saltPct, 15.56) / brineDensity(0, 15.56);
}

/** Diffusion of salt in muscle: what is used where nobody has said. */
export const muscleDiffusivity = {
  at5C: 2.5e-10,
  low: 1.5e-10,
  high: 4e-10,
  energy: 25_000,
  coldest: -1,
  hottest: 25,
};
/** Skin with its fat. */
export const skinDiffusivity = { at5C: 1e-11, low: 1e-12, high: 1e-10 };

/**
 * Effective diffusivity of salt in muscle or farce [m²/s].
 * Equation: D = 2.5e-10 exp(−E/R (1/T − 1/278.15)), E 25 kJ/mol.
 * Parameters: celsius −1 to 25 °C.
 * Assumptions: across the fibre; 1.5e-10 to 4e-10 at 5 °C; pork loin in 50 to 280 g/L brine was measured at (1.90 ± 0.28)e-10 at 5 °C.
 * D at 5 °C and E (20 to 30 kJ/mol) are from memory of several papers.
 * Checked: 2.051e-10 at 0 °C, 4.347e-10 at 20 °C.
 * @example saltDiffusivity(10) // → 3.026e-10
 * Source: from-memory
 * Source: pork-salting-2015
 */
export function saltDiffusivity(celsius: number): number {
  const { at5C, energy, coldest, hottest } = muscleDiffusivity;
  within('celsius', celsius, coldest, hottest, '°C');
  return at5C * Math.exp((-energy / 8.314462618) * (1 / (celsius + 273.15) - 1 / 278.15));
}

/** What the diffusivities rest on. */
export const diffusivityBasis: readonly Basis[] = [
  {
    what: 'diffusivity of salt in muscle 2.5e-10 m²/s at 5 °C (1.5e-10 to 4e-10), 25 kJ/mol (20 to 30): hours may be 0.6 to 1.7 times as many',
    source: 'from-memory',
    confidence: 'memory',
  },
  {
    what: 'for comparison: pork loin at 5 °C (1.90 ± 0.28)e-10 m²/s, whatever the strength of the brine',
    source: 'pork-salting-2015',
    confidence: 'read',
  },
];
export const skinBasis: Basis = {
  what: 'diffusivity of salt in skin with its fat 1e-11 m²/s at 5 °C (1e-12 to 1e-10): no measurement on poultry skin was found, fish skin with fat was 1e-14 to 1e-12; hours are a guess to a factor of ten',
  source: 'fish-skin-salt-1992',
  confidence: 'assumption',
};
