/**
 * Salt on its way into a piece: finite volumes that conserve salt to rounding. The unknown is salt per water [kg/kg],
 * which is equally strong on both sides of a surface or of a boundary between layers; the water stays where it is.
 */
import { bracketedRoot } from '../numerics/roots.ts';
import { solveTridiagonal } from '../numerics/tridiagonal.ts';
import type { SaltShape } from './series.ts';

export interface SaltLayer {
  /** [m], from the outside in; the innermost layer fills the rest and names none. */
  readonly thickness?: number;
  /** Water, mass fraction. */
  readonly water: number;
  /** [m²/s] */
  readonly diffusivity: number;
}

/** What touches the surface. `ratio` is salt per water [kg/kg]. */
export type Surroundings =
  | { readonly kind: 'bath'; readonly waterKg: number; readonly ratio: number }
  | { readonly kind: 'kept'; readonly ratio: number }
  | { readonly kind: 'dry'; readonly stockKg: number; readonly ratio: number }
  | { readonly kind: 'rest' };

export interface Cells {
  /** Distance of the cells' middles from the core or closed face [m]. */
  readonly middle: Float64Array;
  readonly outer: number;
  /** Water in each cell [kg]. */
  readonly water: Float64Array;
  /** From cell i to the next, the last to the surface itself [kg water/s]. */
  readonly conductance: Float64Array;
  /** A step in time, as a share of the time so far. */
  readonly growth: number;
}

/** How finely space and time are cut: cells to a layer, and each step as a share of the time so far. */
export type Detail = 'fine' | 'coarse';
const details = { fine: { cells: 120, growth: 0.03 }, coarse: { cells: 40, growth: 0.1 } } as const;

/**
 * Cells of a piece, finest under the outer side of each layer; water [kg], conductances [kg/s].
 * Equation: G = s A/(Δ₁/(D₁ x₁) + Δ₂/(D₂ x₂)) between two middles, s so that the cells' water is `waterKg`.
 * Parameters: extent, radius or way from core or closed face to the surface [m] > 0; water [kg] > 0; layers from the outside in.
 * Assumptions: the layers are equally dense. Checked: through the series of every shape.
 * Source: own-computation
 */
export function layCells(
  shape: SaltShape,
  extent: number,
  waterKg: number,
  layers: readonly SaltLayer[],
  detail: Detail = 'fine',
): Cells {
  const cellsPerLayer = details[detail].cells;
  const power = shape === 'slab' ? 1 : shape === 'cylinder' ? 2 : 3;
  const faces: number[] = [];
  const of: SaltLayer[] = [];
  let outside = extent;
  for (const layer of layers) {
    const thick = layer.thickness ?? outside;
    for (let j = 0; j < cellsPerLayer; j++) {
      faces.push(outside - thick * (j / cellsPerLayer) ** 2);
      of.push(layer);
    }
    outside -= thick;
  }
  faces.push(0);
  faces.reverse();
  of.reverse();
  const n = of.length;
  const middle = new Float64Array(n);
  const water = new Float64Array(n);
  const conductance = new Float64Array(n);
  let total = 0;
  for (let i = 0; i < n; i++) {
    middle[i] = (faces[i]! + faces[i + 1]!) / 2;
    water[i] = (faces[i + 1]! ** power - faces[i]! ** power) * of[i]!.water;
    total += water[i];
  }
  const scale = waterKg / total;
  for (let i = 0; i < n; i++) {
    water[i] *= scale;
    const face = faces[i + 1]!;
    const here = (face - middle[i]) / (of[i]!.diffusivity * of[i]!.water);
    const there = i === n - 1 ? 0 : (middle[i + 1] - face) / (of[i + 1]!.diffusivity * of[i + 1]!.water);
    conductance[i] = (scale * power * face ** (power - 1)) / (here + there);
  }
  return { middle, outer: extent, water, conductance, growth: details[detail].growth };
}

/** Salt per water in every cell, and last in what touches the surface. */
export type Ratios = Float64Array;

/** Salt in the piece [kg]. */
export const saltIn = (cells: Cells, u: Ratios): number =>
  cells.water.reduce((sum, w, i) => sum + w * u[i], 0);

// TR-BDF2: both halves share one matrix.
const gamma = 2 - Math.SQRT2;
const half = gamma / 2;
const mid = 1 / (gamma * (2 - gamma));

/** Marches a piece in one unchanging kind of surroundings. */
class March {
  private readonly capacity: Float64Array;
  private readonly flow: Float64Array;
  private readonly held: boolean;
  private readonly lower: Float64Array;
  private readonly diagonal: Float64Array;
  private readonly upper: Float64Array;
  private readonly scratch: Float64Array;
  /** Whether anything touches the surface. */
  readonly open: boolean;
  /** A step that is short against the quickest cell [s]. */
  readonly first: number;

  constructor(cells: Cells, around: Surroundings) {
    const n = cells.water.length;
    this.held = around.kind !== 'bath';
    this.open = around.kind !== 'rest';
    this.capacity = new Float64Array(n + 1);
    this.capacity.set(cells.water);
    this.capacity[n] = around.kind === 'bath' ? around.waterKg : 1;
    this.flow = cells.conductance.slice();
    if (around.kind === 'rest') this.flow[n - 1] = 0;
    this.lower = new Float64Array(n + 1);
    this.diagonal = new Float64Array(n + 1);
    this.upper = new Float64Array(n + 1);
    this.scratch = new Float64Array(n + 1);
    let quickest = Number.POSITIVE_INFINITY;
    for (let i = 0; i <= n; i++) {
      const out = (i > 0 ? this.flow[i - 1] : 0) + (i < n ? this.flow[i] : 0);
      if (out > 0 && !(i === n && this.held)) quickest = Math.min(quickest, this.capacity[i] / out);
    }
    this.first = quickest / 2;
  }

  /** The state after `dt` [s]. */
  step(u: Ratios, dt: number): Ratios {
    const { capacity, flow, lower, diagonal, upper, held } = this;
    const n = u.length - 1;
    const d = half * dt;
    const next = new Float64Array(n + 1);
    for (let i = 0; i <= n; i++) {
      const below = i > 0 ? flow[i - 1] : 0;
      const above = i < n ? flow[i] : 0;
      const still = held && i === n;
      lower[i] = still ? 0 : -d * below;
      upper[i] = still ? 0 : -d * above;
      diagonal[i] = still ? 1 : capacity[i] + d * (below + above);
      next[i] = still
        ? u[i]
        : capacity[i] * u[i] +
          d * ((i > 0 ? below * (u[i - 1] - u[i]) : 0) + (i < n ? above * (u[i + 1] - u[i]) : 0));
    }
    solveTridiagonal(lower, diagonal, upper, next, this.scratch);
    for (let i = 0; i <= n; i++) {
      const blend = mid * next[i] - (mid - 1) * u[i];
      next[i] = held && i === n ? u[i] : capacity[i] * blend;
    }
    solveTridiagonal(lower, diagonal, upper, next, this.scratch);
    return next;
  }
}

const longest = 20 * 365.25 * 86_400;

/** One stretch of time in one kind of surroundings; dry salt that is used up leaves the piece at rest. */
export class Salting {
  /** Since the beginning of the stretch [s]. */
  t = 0;
  u: Ratios;
  /** Dry salt not dissolved yet [kg]. */
  stock: number;
  private march: March;
  private began = 0;
  private before: { t: number; u: Ratios; march: March };

  constructor(
    private readonly cells: Cells,
    start: Ratios,
    around: Surroundings,
  ) {
    const n = cells.water.length;
    const dry = around.kind === 'dry' && around.stockKg > 0;
    this.stock = dry ? around.stockKg : 0;
    this.march = new March(cells, around.kind === 'dry' && !dry ? { kind: 'rest' } : around);
    this.u = start.slice();
    this.u[n] = around.kind === 'rest' || (around.kind === 'dry' && !dry) ? start[n - 1] : around.ratio;
    this.before = { t: 0, u: this.u, march: this.march };
  }

  /** Strength at the surface itself: what touches it, or with nothing there the outermost cell. */
  surface(): number {
    return this.u[this.march.open ? this.cells.water.length : this.cells.water.length - 1]!;
  }

  /** One step, not beyond `end` [s]. */
  next(end = Number.POSITIVE_INFINITY): void {
    const natural = Math.max(this.march.first, this.cells.growth * (this.t - this.began));
    let dt = Math.min(natural, end - this.t);
    this.before = { t: this.t, u: this.u, march: this.march };
    let u = this.march.step(this.u, dt);
    if (this.stock > 0) {
      const held = saltIn(this.cells, this.u);
      let taken = saltIn(this.cells, u) - held;
      if (taken >= this.stock) {
        const { stock, march } = this;
        const left = (s: number) => saltIn(this.cells, march.step(this.u, s)) - held - stock;
        dt = bracketedRoot(left, 0, dt, dt * 1e-12).x;
        u = march.step(this.u, dt);
        taken = saltIn(this.cells, u) - held;
        // What rounding has left of the stock, so that none is lost.
        const last = u.length - 2;
        u[last] += (stock - taken) / this.cells.water[last];
        this.stock = 0;
        this.march = new March(this.cells, { kind: 'rest' });
        this.began = this.t + dt;
      } else this.stock -= taken;
    }
    this.u = u;
    this.t = end - this.t === dt ? end : this.t + dt;
  }

  /** When each of `goals` first rises to 0 [s from the beginning of the stretch]; null where it does not within 20 years. */
  until(goals: readonly ((u: Ratios) => number)[]): (number | null)[] {
    const when: (number | null)[] = goals.map((f) => (f(this.u) >= 0 ? 0 : null));
    while (when.includes(null) && this.t <= longest) {
      this.next();
      const { t, u, march } = this.before;
      const dt = this.t - t;
      goals.forEach((f, i) => {
        if (when[i] !== null || f(this.u) < 0) return;
        const inner = bracketedRoot((s) => f(march.step(u, s)), 0, dt, dt * 1e-9);
        when[i] = inner.status === 'converged' ? t + inner.x : this.t;
      });
    }
    return when;
  }
}

/**
 * Salt per water at the very middle or closed face, where the profile is level [kg/kg].
 * Equation: parabola without slope at 0 through the two innermost middles. Checked: against the series of the cylinder.
 * Source: own-computation
 */
export function coreOf(cells: Cells, u: Ratios): number {
  const a = cells.middle[0] ** 2;
  const b = cells.middle[1] ** 2;
  return Math.max(0, (u[0] * b - u[1] * a) / (b - a));
}
