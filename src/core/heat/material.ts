/** A layer's properties as the solver reads them: tables over temperature, with the heat content as the exact integral of ρ·cp. */
import { choiOkosRange, density, normalised, specificHeat } from '../properties/food-components.ts';
import { conductivity } from '../properties/mixture-conductivity.ts';
import type { Layer } from './types.ts';

/** Start and end of the tables [°C] and their step [K]; beyond them the last step is continued. */
export const tableRange = { low: -90, high: 310, step: 0.5 } as const;
/** Numbers a table step holds: k, dk/dT, ρcp, dρcp/dT, u at its start. */
export const stride = 5;

export interface Material {
  readonly name: string;
  /** `stride` numbers a step: k [W/(m K)] and slope, ρ·cp [J/(m³ K)] and slope, u = ∫ρ·cp dT [J/m³]. */
  readonly table: Float64Array;
  /** Density [kg/m³] at a temperature [°C]. */
  readonly rho: (C: number) => number;
  readonly composed: boolean;
}

/**
 * The tables of a layer's material; heat content in [J/m³] above −90 °C.
 *
 *     u(T) = ∫ ρ·cp dT, piecewise quadratic: the exact integral of the piecewise straight ρ·cp
 *
 * @param layer with a composition (fractions summing to 1 ± 0.005, normalised here) or constant properties
 * @param path what to call the layer in an error
 * Assumes the layer keeps its volume and its composition, and water unfrozen. Checked against the polynomials (conductivity within
 * 1e-6 of itself between table points) and by differentiating u.
 * Source: choi-okos-1986
 */
export function materialOf(layer: Layer, path = 'layer'): Material {
  const { low, high, step } = tableRange;
  const n = Math.round((high - low) / step);
  // Where the properties of a temperature are looked up: beyond what the functions cover at the nearer end; constant ones anywhere.
  let within = (_C: number) => 0;
  let k: (C: number) => number;
  let rho: (C: number) => number;
  let cp: (C: number) => number;
  const composed = 'composition' in layer.material;
  if ('composition' in layer.material) {
    const food = normalised(layer.material.composition, `${path}.composition`);
    within = (C) => Math.min(choiOkosRange.high, Math.max(choiOkosRange.low, C));
    k = (C) => conductivity(food, within(C));
    rho = (C) => density(food, within(C));
    cp = (C) => specificHeat(food, within(C));
  } else {
    const constant = layer.material.properties;
    k = () => constant.k;
    rho = () => constant.rho;
    cp = () => constant.cp;
  }
  const table = new Float64Array(n * stride);
  let u = 0;
  let k0 = k(low);
  let c0 = rho(low) * cp(low);
  let at = within(low);
  for (let i = 0; i < n; i++) {
    const C = low + (i + 1) * step;
    const same = within(C) === at;
    const k1 = same ? k0 : k(C);
    const c1 = same ? c0 : rho(C) * cp(C);
    at = within(C);
    table[i * stride] = k0;
    table[i * stride + 1] = (k1 - k0) / step;
    table[i * stride + 2] = c0;
    table[i * stride + 3] = (c1 - c0) / step;
    table[i * stride + 4] = u;
    u += ((c0 + c1) / 2) * step;
    k0 = k1;
    c0 = c1;
  }
  return { name: layer.name, table, rho, composed };
}

/** The step of a table that holds a temperature, the first or last where it holds none. */
const last = Math.round((tableRange.high - tableRange.low) / tableRange.step) - 1;
const perDegree = 1 / tableRange.step;

/** Adds the heat capacity of a material at its nodes [J/K] to `C`: volume times ρ·cp. */
export function addCapacity(
  table: Float64Array,
  nodes: Int32Array,
  volumes: Float64Array,
  T: Float64Array,
  C: Float64Array,
): void {
  for (let q = 0; q < nodes.length; q++) {
    const i = nodes[q];
    const x = (T[i] - tableRange.low) * perDegree;
    const cell = Math.min(last, Math.max(0, x | 0));
    const at = cell * stride;
    C[i] += volumes[q] * (table[at + 2] + (x - cell) * tableRange.step * table[at + 3]);
  }
}
