/** The engine as a function of what is fitted: from a handful of coordinates to the temperatures a probe would have read. */
import { Contradiction, OutOfRange } from '../errors.ts';
import { cook } from '../heat/cook.ts';
import { radiusAt } from '../heat/mesh.ts';
import type { Body, CookResult, MediumTemperature, Place, Stage, Until } from '../heat/types.ts';

/**
 * What may be fitted: the surface coefficient of a stage; the conductivity of all layers by one factor, and so the
 * diffusivity; the outer size of the body by one factor; the probe's distance from the middle.
 */
export type FitParameter =
  | { readonly kind: 'h'; readonly stage: number }
  | { readonly kind: 'diffusivity' }
  | { readonly kind: 'radius' }
  | { readonly kind: 'probe' };

export interface FitProblem {
  readonly body: Body;
  readonly start: number;
  readonly stages: readonly Stage[];
  readonly place: Place;
  /** Readings of the probe: rising times [s] from the start of the first stage, temperatures [°C]. */
  readonly t: Float64Array;
  readonly C: Float64Array;
  readonly parameters: readonly FitParameter[];
}

/** One coordinate of the search. All but the probe's place are logarithms of a factor on what was given. */
export interface Coordinate {
  readonly parameter: FitParameter;
  readonly start: number;
  readonly low: number;
  readonly high: number;
  /** Half the distance over which a difference is taken. */
  readonly step: number;
  /** Value in SI: W/(m² K), factor, m, m. */
  readonly value: (x: number) => number;
}

/** Steps so short [K] that the choice of their lengths does not show in the slopes; a coarse mesh is off by more anyway. */
const stepTolerance = { fine: 0.006, coarse: 0.02 } as const;
const noTarget = { reference: 150, z: 1, s: 1 };
const least = 1e-3;
/** Largest surface coefficient that is looked for [W/(m² K)]: above what has been published for any kitchen's medium. */
export const highestH = 20_000;
const factors = { diffusivity: { low: 0.3, high: 3 }, radius: { low: 0.5, high: 2 } } as const;

/** Distance from the middle to the surface beside a place [m]: a radius, or half a thickness. */
export function reachOf(body: Body, place: Place): number {
  switch (body.shape) {
    case 'revolved':
      return radiusAt(body.profile, place.at ?? 0);
    case 'slab':
      return body.thickness / 2;
    case 'block':
      return Math.min(body.width, body.height) / 2;
    default:
      return body.diameter / 2;
  }
}

/** Distance of a place from the middle, along the way on which the probe may have been put wrong [m]. */
const offMiddle = (body: Body, place: Place): number =>
  Math.abs((body.shape === 'slab' || body.shape === 'block' ? place.x : place.radius) ?? 0);

const outerThickness = (body: Body): number =>
  body.layers.slice(0, -1).reduce((sum, layer) => sum + (layer.thickness ?? 0), 0);

const thinnest = (body: Body): number =>
  body.shape === 'revolved'
    ? Math.min(...body.profile.map((p) => p.diameter).filter((d) => d > 0)) / 2
    : reachOf(body, {});

function coordinateOf(problem: FitProblem, parameter: FitParameter, index: number): Coordinate {
  const { body, place, stages } = problem;
  const path = `fit[${index}]`;
  if (parameter.kind === 'h') {
    const stage = stages[parameter.stage];
    if (stage === undefined)
      throw new OutOfRange(
        path,
        `stage ${parameter.stage}`,
        `one of the ${stages.length} stages, counted from 0`,
      );
    const { h } = stage;
    return {
      parameter,
      start: 0,
      low: Math.log(Math.min(1, h / 2) / h),
      high: Math.log(Math.max(highestH, 2 * h) / h),
      step: 0.1,
      value: (x) => h * Math.exp(x),
    };
  }
  if (parameter.kind === 'diffusivity') {
    // Vapour, radiation and flux do not scale with a surface coefficient.
    const other = stages.findIndex((stage) => 'surface' in stage && stage.surface !== undefined);
    if (other >= 0)
      throw new Contradiction(
        path,
        `a diffusivity to fit where vapour, radiation or ladled fat crosses the surface (stages[${other}])`,
        'stages with a surface coefficient alone',
      );
    return {
      parameter,
      start: 0,
      low: Math.log(factors.diffusivity.low),
      high: Math.log(factors.diffusivity.high),
      step: 0.03,
      value: Math.exp,
    };
  }
  const reach = reachOf(body, place);
  const off = offMiddle(body, place);
  if (parameter.kind === 'radius') {
    const low = Math.max(
      factors.radius.low,
      (1.001 * off) / reach,
      outerThickness(body) > 0 ? (outerThickness(body) + 1e-3) / thinnest(body) : 0,
      least / reach,
    );
    if (low > 0.98)
      throw new Contradiction(
        path,
        `a size to fit, but the probe at ${off} m or the outer layers leave it no room`,
        'a probe further from the surface, or layers that leave something inside them',
      );
    return {
      parameter,
      start: 0,
      low: Math.log(low),
      high: Math.log(factors.radius.high),
      step: 0.03,
      value: (x) => reach * Math.exp(x),
    };
  }
  return { parameter, start: off / reach, low: 0, high: 0.98, step: 0.05, value: (x) => reach * x };
}

/**
 * The coordinates of a search [-].
 *
 *     ln(h/h₀), ln(k/k₀), ln(R/R₀), r/R₀
 *
 * @param problem body, stages, probe and what of them to fit
 * Assumes that what was given is within a factor of 3 (conductivity) or 2 (size) of the truth.
 * Throws `OutOfRange` or `Contradiction` for what cannot be fitted. Checked by a test. Source: own-assumption
 */
export const coordinatesOf = (problem: FitProblem): Coordinate[] =>
  problem.parameters.map((parameter, i) => coordinateOf(problem, parameter, i));

function resized(body: Body, factor: number): Body {
  switch (body.shape) {
    case 'revolved':
      return {
        ...body,
        profile: body.profile.map((p) => ({ at: p.at, diameter: p.diameter * factor })),
      };
    case 'slab':
      return { ...body, thickness: body.thickness * factor };
    case 'block':
      return { ...body, width: body.width * factor, height: body.height * factor };
    default:
      return { ...body, diameter: body.diameter * factor };
  }
}

const stretchedMedium = (medium: MediumTemperature, s: number): MediumTemperature =>
  typeof medium === 'number' ? medium : medium.map(({ t, C }) => ({ t: t * s, C }));

function stretchedUntil(until: Until, s: number): Until {
  if (until.kind === 'time') return { ...until, s: until.s * s };
  return until.atMost === undefined ? until : { ...until, atMost: until.atMost * s };
}

/**
 * A body that conducts `s` times as well behaves, minute by minute, as the given one does in `s` times the time behind a
 * surface that passes 1/s of the heat: so no property has to be touched, whatever it depends on.
 */
const stretched = (stage: Stage, s: number): Stage => ({
  ...stage,
  medium: stretchedMedium(stage.medium, s),
  h: stage.h / s,
  until: stretchedUntil(stage.until, s),
});

export interface ModelRun {
  /** At the times of the readings [°C]. */
  readonly C: Float64Array;
  /** When each stage ended [s]. */
  readonly ends: readonly number[];
  readonly result: CookResult;
}

/**
 * What the probe would have read [°C], with these coordinates.
 *
 *     k → s·k is the same as t → s·t, h → h/s
 *
 * @param problem what was given
 * @param coordinates of the search, and `x` their values
 * @param mode coarse mesh with tight steps, for differences; fine for the answer
 * Assumes what `cook` does. Checked by a test: stretched time against layers whose conductivity was multiplied.
 * Source: own-computation
 */
export function modelRun(
  problem: FitProblem,
  coordinates: readonly Coordinate[],
  x: readonly number[],
  mode: 'coarse' | 'fine',
): ModelRun {
  let { body, place } = problem;
  const stages = [...problem.stages];
  let s = 1;
  coordinates.forEach(({ parameter, value }, i) => {
    if (parameter.kind === 'h') stages[parameter.stage] = { ...stages[parameter.stage], h: value(x[i]) };
    else if (parameter.kind === 'diffusivity') s = value(x[i]);
    else if (parameter.kind === 'radius') body = resized(body, Math.exp(x[i]));
    else if (body.shape === 'slab' || body.shape === 'block') place = { ...place, x: value(x[i]) };
    else place = { ...place, radius: value(x[i]) };
  });
  const result = cook(
    {
      body,
      start: problem.start,
      stages: s === 1 ? stages : stages.map((stage) => stretched(stage, s)),
      target: noTarget,
      probes: [{ name: 'probe', place }],
    },
    { mode, at: problem.t.map((t) => t * s), tolerance: stepTolerance[mode] },
  );
  const [C] = result.readings ?? [];
  if (C === undefined) throw new Error('the run gave no readings');
  return { C, ends: result.stages.map((stage) => stage.end / s), result };
}
