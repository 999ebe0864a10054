/** A layer's properties as the solver reads them: tables over temperature, with the heat content as the exact integral of cp, its density held. */

import {
  type Composition,
  choiOkosRange,
  density,
  normalised,
  specificHeat,
} from '../properties/food-components.ts';
import { canFreeze, type FreezingFood, firstIce, freezingFood } from '../properties/freezing-food.ts';
import { frozenDensity } from '../properties/freezing-mixture.ts';
import { freezingFoodNamed } from '../properties/freezing-points.ts';
import { conductivity, defaultRule, type MixtureRule } from '../properties/mixture-conductivity.ts';
import type { Layer } from './types.ts';

/** Start and end of the tables [°C] and their step [K]; beyond them the last step is continued. */
export const tableRange = { low: -90, high: 310, step: 0.5 } as const;
/** Numbers a table step holds: k, dk/dT, ρcp, dρcp/dT, u at its start. */
export const stride = 5;

/** What a programme can bring a layer to [°C], and where it begins. */
export interface Span {
  readonly lowest: number;
  readonly highest: number;
  readonly start: number;
}

export interface Material {
  readonly name: string;
  /** Start of the table [°C], its step [K] and how many there are. */
  readonly low: number;
  readonly step: number;
  readonly cells: number;
  /** `stride` numbers a step: k [W/(m K)] and slope, ρ·cp [J/(m³ K)] and slope, u = ∫ρ·cp dT [J/m³]. */
  readonly table: Float64Array;
  /** Density [kg/m³]: that of the start, held, so that the body keeps both its mass and its size. */
  readonly rho: number;
  readonly composed: boolean;
  /** Set where the table follows the layer through its freezing. */
  readonly freezing?: FreezingFood;
}

/** What is looked up in a table: k [W/(m K)] and ρ·cp [J/(m³ K)] at a temperature, and, where known in closed form, ∫ρ·cp dT [J/m³]. */
interface Curves {
  readonly k: (C: number) => number;
  readonly c: (C: number) => number;
  readonly between?: (C0: number, C1: number) => number | undefined;
}

function tabulated(low: number, step: number, cells: number, { k, c, between }: Curves): Float64Array {
  const table = new Float64Array(cells * stride);
  let u = 0;
  let k0 = k(low);
  let c0 = c(low);
  for (let i = 0; i < cells; i++) {
    const C = low + (i + 1) * step;
    const k1 = k(C);
    const c1 = c(C);
    const exact = between?.(low + i * step, C);
    table[i * stride] = k0;
    table[i * stride + 1] = (k1 - k0) / step;
    table[i * stride + 2] = c0;
    // Where the integral is known the slope is such that u is met to the last digit at the step's end.
    table[i * stride + 3] = exact === undefined ? (c1 - c0) / step : (2 * (exact / step - c0)) / step;
    table[i * stride + 4] = u;
    u += exact ?? ((c0 + c1) / 2) * step;
    k0 = k1;
    c0 = c1;
  }
  return table;
}

const plainCells = Math.round((tableRange.high - tableRange.low) / tableRange.step);

/**
 * The first ice that a layer is computed with [°C]: given, of a food of the table, or from its composition; none where it has no water that could freeze.
 * @param layer with a composition; constant properties have none
 * Source: pham-1996
 */
export function freezingPointOf(layer: Layer, path = 'layer'): number | undefined {
  if (!('composition' in layer.material)) return undefined;
  const food = normalised(layer.material.composition);
  if (!(food.water > 0)) return undefined;
  const point =
    layer.freezing ??
    (layer.freezesAs === undefined
      ? firstIce(food)
      : freezingFoodNamed(layer.freezesAs, `${path}.freezesAs`).freezing);
  return canFreeze(food, point) ? point : undefined;
}

/**
 * The rule by which a composed layer's conductivity is put together [-]: its own, or Levy's.
 * @param layer with a composition
 * Source: levy-1981
 */
export function ruleOf(layer: Layer): MixtureRule {
  return layer.conductivityBy ?? defaultRule;
}

/**
 * The tables of a layer's material; heat content in [J/m³] above the table's start.
 *
 *     u(T) = ρ_start·∫ cp dT, piecewise quadratic: the exact integral of the piecewise straight cp; through freezing ρ_start·∫c_a dT in closed form
 *
 * @param layer with a composition (fractions summing to 1 ± 0.005, normalised here) or constant properties
 * @param span what the programme can bring it to, and where it begins; a composed layer that it takes below its first ice freezes
 * @param path what to call the layer in an error
 * Assumes the layer keeps its volume, its composition and its mass: the mesh is not drawn again as the piece swells by heat (3 to 4 % from 4 to
 * 100 °C) or by ice, so that its density is that of the start throughout. Checked against the polynomials (conductivity within
 * 1e-6 of itself between table points), by differentiating u, and against the closed form of the heat through freezing.
 * Source: choi-okos-1986
 * Source: schwartzberg-1981
 */
export function materialOf(layer: Layer, span: Span, path = 'layer'): Material {
  const { low, step } = tableRange;
  if (!('composition' in layer.material)) {
    const { k, rho, cp } = layer.material.properties;
    const table = tabulated(low, step, plainCells, { k: () => k, c: () => rho * cp });
    return { name: layer.name, low, step, cells: plainCells, table, rho, composed: false };
  }
  const food = normalised(layer.material.composition, `${path}.composition`);
  const rule = ruleOf(layer);
  const point = freezingPointOf(layer, path);
  const material =
    point !== undefined && span.lowest < point
      ? freezingMaterial(layer.name, food, point, rule, span)
      : plainMaterial(layer.name, food, rule, span.start);
  conductingBy(material.table, layer.conducts);
  return material;
}

/** Every conductivity of a table, and its slope, times a factor. */
function conductingBy(table: Float64Array, factor = 1): void {
  if (factor === 1) return;
  for (let i = 0; i < table.length; i += stride) {
    table[i] *= factor;
    table[i + 1] *= factor;
  }
}

/** Beyond what the functions cover they are looked up at the nearer end. */
const within = (C: number) => Math.min(choiOkosRange.high, Math.max(choiOkosRange.low, C));

function plainMaterial(name: string, food: Composition, rule: MixtureRule, start: number): Material {
  const { low, step } = tableRange;
  const rho = density(food, within(start));
  const table = tabulated(low, step, plainCells, {
    k: held((C) => conductivity(food, C, rule)),
    c: held((C) => rho * specificHeat(food, C)),
  });
  return { name, low, step, cells: plainCells, table, rho, composed: true };
}

/** A function that is not worked out again while `within` leaves its argument where it was. */
function held(f: (C: number) => number): (C: number) => number {
  let at = Number.NaN;
  let value = Number.NaN;
  return (C) => {
    const T = within(C);
    if (T !== at) {
      at = T;
      value = f(T);
    }
    return value;
  };
}

/** Steps of a table through freezing [K]: a fortieth of the first ice, but no more and no less than these. */
const finest = { low: 0.01, high: 0.05 };
/** How far a table goes beyond what the programme can bring [K]. */
const margin = 1;

function freezingMaterial(
  name: string,
  food: Composition,
  freezing: number,
  rule: MixtureRule,
  span: Span,
): Material {
  const ice = freezingFood(food, freezing, rule);
  const step = Math.min(finest.high, Math.max(finest.low, -freezing / 40));
  // The first ice is a line of the table: the jump of the heat lies between two steps.
  const below = Math.max(1, Math.ceil((freezing - span.lowest + margin) / step));
  const above = Math.max(1, Math.ceil((span.highest + margin - freezing) / step));
  const low = freezing - below * step;
  // A piece that is frozen at the start is lighter by its ice, and stays so.
  const rho =
    span.start < freezing
      ? frozenDensity(food, ice.ice(span.start), within(span.start))
      : density(food, within(span.start));
  const line = freezing + 1e-9;
  const frozen = below * step;
  const isFrozen = (C: number) => C - low < frozen - step / 2;
  const table = tabulated(low, step, below + above, {
    k: (C) => (C < line ? ice.conductivity(Math.min(C, freezing)) : conductivity(food, within(C), rule)),
    c: (C) => rho * (isFrozen(C) ? ice.apparentHeat(C) : specificHeat(food, within(C))),
    between: (C0, C1) => (isFrozen(C0) ? rho * ice.heatBetween(C0, Math.min(freezing, C1)) : undefined),
  });
  return { name, low, step, cells: below + above, table, rho, composed: true, freezing: ice };
}

/** Adds the heat capacity of a material at its nodes [J/K] to `C`: volume times ρ·cp. */
export function addCapacity(
  { table, low, step, cells }: Material,
  nodes: Int32Array,
  volumes: Float64Array,
  T: Float64Array,
  C: Float64Array,
): void {
  const perDegree = 1 / step;
  const last = cells - 1;
  for (let q = 0; q < nodes.length; q++) {
    const i = nodes[q];
    const x = (T[i] - low) * perDegree;
    const cell = Math.min(last, Math.max(0, x | 0));
    const at = cell * stride;
    C[i] += volumes[q] * (table[at + 2] + (x - cell) * step * table[at + 3]);
  }
}
