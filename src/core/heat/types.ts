/**
 * What the heat engine takes and gives. SI units; temperatures in degrees Celsius (their differences are kelvin),
 * because every published correlation the engine rests on is stated in degrees Celsius.
 */
import type { Composition } from '../properties/food-components.ts';
import type { MixtureRule } from '../properties/mixture-conductivity.ts';
import type { Basis, Confidence } from '../sources.ts';

export type { Basis, Composition, Confidence };

/** Constant thermal properties: conductivity [W/(m K)], density [kg/m³], specific heat [J/(kg K)]. */
export interface ConstantProperties {
  readonly k: number;
  readonly rho: number;
  readonly cp: number;
}

/** One layer of a body, from the outside in. The last layer fills what is left and has no thickness [m]. */
export interface Layer {
  readonly name: string;
  readonly thickness?: number;
  readonly material: { readonly composition: Composition } | { readonly properties: ConstantProperties };
  /** First ice [°C]; from the composition where it is not given. Constant properties do not freeze. */
  readonly freezing?: number;
  /** Instead of it, a food of the table of first ices by its name. */
  readonly freezesAs?: string;
  /** How the conductivities of its components are put together; Levy where it is not said. Constant properties have none. */
  readonly conductivityBy?: MixtureRule;
  /** What its conductivity is multiplied by, where it is asked what an error of the rule would do; 1 where it is not said. */
  readonly conducts?: number;
}

export interface ProfilePoint {
  /** Distance along the axis [m]. */
  readonly at: number;
  /** Outer diameter there [m]. */
  readonly diameter: number;
}

export type Body =
  /** Body of revolution about a straight axis; straight between profile points; both end faces exposed; layers are tubes. */
  | {
      readonly shape: 'revolved';
      readonly profile: readonly ProfilePoint[];
      readonly layers: readonly Layer[];
    }
  /** Infinite cylinder. */
  | { readonly shape: 'cylinder'; readonly diameter: number; readonly layers: readonly Layer[] }
  | { readonly shape: 'sphere'; readonly diameter: number; readonly layers: readonly Layer[] }
  /** Infinite plate, both faces exposed; layers are symmetric about the mid-plane. */
  | { readonly shape: 'slab'; readonly thickness: number; readonly layers: readonly Layer[] }
  /** Long bar of rectangular section, all four faces exposed; layers are concentric rectangles. */
  | {
      readonly shape: 'block';
      readonly width: number;
      readonly height: number;
      readonly layers: readonly Layer[];
    };

/** Temperature of the medium: constant [°C] or a log, straight between its points, held after the last. */
export type MediumTemperature = number | readonly { readonly t: number; readonly C: number }[];

/** When a stage ends. Seconds and °C; `atMost` [s] bounds a search (default 86 400). */
export type Until =
  | { readonly kind: 'time'; readonly s: number }
  | { readonly kind: 'coldest'; readonly C: number; readonly atMost?: number }
  | { readonly kind: 'warmest'; readonly C: number; readonly atMost?: number }
  | { readonly kind: 'lethality'; readonly s: number; readonly atMost?: number };

/** The vapour in the air of a stage, and what the surface does with it. */
export interface Vapour {
  /** Pressure of the air with its vapour [Pa]. */
  readonly pressure: number;
  /** How much of it is vapour: a fraction of what the air could hold at its temperature (at most all of it), or its pressure [Pa]. */
  readonly relative?: number;
  readonly partial?: number;
  /** Water activity of the surface as it dries, 0–1: 1 wet, 0 where nothing can leave it, as under a wrap. */
  readonly activity: number;
  /** Coefficient of the film of condensate that runs off it [W/(m² K)]; none: no resistance but the air's. */
  readonly condensate?: number;
}

/** A grey surface that the piece sees: walls at the medium's temperature, or a source at its own [°C]. */
export interface Radiator {
  readonly C?: number;
  /** Of the exchange, 0–1: emissivities and view together. */
  readonly emissivity: number;
}

/** What crosses the surface beside h·(medium − T). */
export interface Surface {
  /** Between the outer face and the food: film, mould wall [m² K/W]. */
  readonly resistance?: number;
  readonly vapour?: Vapour;
  readonly radiators?: readonly Radiator[];
  /** Radiant heat that is absorbed [W/m²]. */
  readonly flux?: number;
  /** Fat ladled over it: temperature [°C], coefficient under it [W/(m² K)], share of the time, 0–1. */
  readonly ladle?: { readonly C: number; readonly h: number; readonly share: number };
}

export interface Stage {
  readonly name: string;
  readonly medium: MediumTemperature;
  /**
   * Surface heat-transfer coefficient [W/(m² K)], film and mould resistances already folded in. With a `surface` it is that
   * of dry air alone, and resistances stand there.
   */
  readonly h: number;
  readonly surface?: Surface;
  readonly until: Until;
}

/** Reference for lethality: P = ∫ 10^((T − reference)/z) dt. */
export interface Target {
  readonly reference: number;
  readonly z: number;
  /** Wanted process lethality [s at the reference temperature]. */
  readonly s: number;
}

/** A place in the body. Revolved: axial distance and radius. Cylinder, sphere: radius. Slab: x. Block: x, y from the middle. All [m]. */
export interface Place {
  readonly at?: number;
  readonly radius?: number;
  readonly x?: number;
  readonly y?: number;
}

export interface CookProblem {
  readonly body: Body;
  readonly start: number;
  readonly stages: readonly Stage[];
  readonly target: Target;
  readonly probes?: readonly { readonly name: string; readonly place: Place }[];
  /** By which the least treated point is looked for again, once for each: another z may point to another place. */
  readonly alsoLeast?: readonly Pick<Target, 'reference' | 'z'>[];
  /** What is known beforehand to take from the answer its standing: the engine computes all the same, a verdict does not hold. */
  readonly doubts?: readonly { readonly what: string; readonly source: string }[];
}

export interface CookOptions {
  /** `coarse` answers a slider at once; `fine` is the answer that is kept, printed and judged. Default `fine`. */
  readonly mode?: 'coarse' | 'fine';
  /** Multiplies the number of mesh intervals in each direction (grid-refinement studies). Default 1. */
  readonly refine?: number;
  /** Overrides the tolerance of the time integrator [K per step]. */
  readonly tolerance?: number;
  /** Ask for field snapshots for pictures; `count` at most, always including stage ends. Default none. */
  readonly frames?: { readonly count: number };
  /** Times [s], rising, at which the probes are read to the run's own accuracy, not between points of the history. */
  readonly at?: ArrayLike<number>;
  /** Called now and then with the simulated time [s]; return false to stop (the run then throws Cancelled). */
  readonly onProgress?: (simulated: number) => boolean | undefined;
}

export interface StageResult {
  readonly name: string;
  readonly start: number;
  readonly end: number;
  readonly reached: boolean;
  /** At the stage's end [°C]. */
  readonly coldest: number;
  readonly warmest: number;
  readonly surface: number;
  readonly mean: number;
  readonly coldSpot: number;
  /** How much of the water of what freezes is ice [-]; only where the programme can freeze a layer. */
  readonly ice?: number;
  /** Water that dried off and that settled on it during the stage [kg, as the mass]; only where vapour is exchanged. */
  readonly water?: Water;
}

export interface Water {
  readonly lost: number;
  readonly settled: number;
}

/** Time series; every array has the length of `t` [s]; temperatures [°C]; lethality [s at the reference]. */
export interface History {
  readonly t: Float64Array;
  readonly coldest: Float64Array;
  readonly warmest: Float64Array;
  /** Surface beside the cold spot. */
  readonly surface: Float64Array;
  readonly mean: Float64Array;
  readonly coldSpot: Float64Array;
  /** Lethality at the cold spot. */
  readonly lethality: Float64Array;
  readonly medium: Float64Array;
  /** Heat that has come in through the surface since the start [J, as the mass]; even within a step. */
  readonly heat: Float64Array;
  /** How much of the water of what freezes is ice [-]; only where the programme can freeze a layer. */
  readonly ice?: Float64Array;
}

/**
 * The mesh as pictures see it. Revolved: `x` is the axial distance, `y` the radius (≥ 0, mirror it for a section).
 * Cylinder, sphere, slab: `nv` = 1, `x` is the distance from the middle. Block: a quarter, from the middle.
 * Node (i, j), i along the first direction (0 ≤ i < nu), j along the second (0 ≤ j < nv), has index j·nu + i.
 * Revolved: u is radial (axis → surface), v is axial.
 */
export interface FieldMesh {
  readonly shape: Body['shape'];
  readonly nu: number;
  readonly nv: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** u-indices of the layer interfaces, from the inside out, excluding axis and surface. */
  readonly interfaces: readonly number[];
}

export interface Frame {
  readonly t: number;
  readonly stage: number;
  readonly C: Float32Array;
  /** Lethality so far at every node [s at the reference]. */
  readonly lethality: Float32Array;
}

export interface CookResult {
  /** The point that has received least lethality by the end of the stages, searched over the whole body. */
  readonly coldSpot: Place & { readonly node: number };
  readonly stages: readonly StageResult[];
  readonly lethality: { readonly s: number; readonly reachedAt: number | null; readonly passes: boolean };
  readonly history: History;
  /** Temperatures [°C], on the times of the history, of the points that got least by each of the problem's `alsoLeast`, in its order. */
  readonly alsoLeast?: readonly Float64Array[];
  /** |stored − supplied| / supplied [%]; what one stage supplies and another takes away counts twice below the line. */
  readonly heatBalancePct: number;
  readonly probes: readonly {
    readonly name: string;
    readonly C: Float64Array;
    readonly lethality: Float64Array;
  }[];
  /** Every probe's temperatures [°C] at the times of `at`, where it was given. */
  readonly readings?: readonly Float64Array[];
  readonly mesh: FieldMesh;
  readonly frames: readonly Frame[];
  /** Mass of the body [kg] (per metre for cylinder and block, per m² for slab). */
  readonly mass: number;
  /** Water in it [kg, as the mass]; of constant properties nobody knows, so that all of their mass is counted. */
  readonly water: number;
  /** Surface that is exposed [m², as the mass]. */
  readonly area: number;
  readonly steps: number;
  /** Sources used and limits met, e.g. a correlation outside its range. */
  readonly basis: readonly Basis[];
}
