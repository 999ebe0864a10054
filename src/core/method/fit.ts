/** The kitchen's own coefficients from a probe's log: fitted, with how sure they are and what the log cannot tell. */
import { OutOfRange } from '../errors.ts';
import { Cancelled } from '../heat/cook.ts';
import type { Basis } from '../heat/types.ts';
import { profileSide, type Spread, spreadOf } from './fit-interval.ts';
import { type Coordinate, coordinatesOf, type FitParameter, type FitProblem, modelRun } from './fit-model.ts';
import { type Noise, noiseOf, ownError } from './fit-noise.ts';

export type { FitParameter, FitProblem };

export interface LeastSquaresOrder {
  readonly start: readonly number[];
  readonly low: readonly number[];
  readonly high: readonly number[];
  readonly y: Float64Array;
  readonly model: (x: readonly number[]) => Float64Array;
  /** For each coordinate the change of every reading. */
  readonly slopes: (x: readonly number[]) => readonly Float64Array[];
  /** A gain in the sum of squares that is not worth another step [K²]. */
  readonly enough: number;
}

/** What the fit is handed: a solver of least squares within bounds, and Student's quantile. */
export interface FitTools {
  readonly leastSquares: (order: LeastSquaresOrder) => { readonly x: number[]; readonly converged: boolean };
  readonly tQuantile: (p: number, freedom: number) => number;
}

export interface FitOptions {
  /** Standard deviation of a reading, where it is known [K]. */
  readonly noise?: number;
  /** Called with the runs of the engine so far and the share of the work done; false stops (then throws `Cancelled`). */
  readonly onProgress?: (runs: number, share: number) => boolean | undefined;
}

export interface FittedValue {
  readonly parameter: FitParameter;
  /** W/(m² K), factor on conductivity, m, m. */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** The log does not object as far as was looked: the end is the bound of the search, not of the value. */
  readonly lowOpen: boolean;
  readonly highOpen: boolean;
  /** The best fit itself lies at a bound of the search. */
  readonly atBound: boolean;
}

export interface FitResult {
  readonly fitted: readonly FittedValue[];
  /** Groups of fitted values, by their index, that this log cannot tell from one another; of one: cannot tell at all. */
  readonly confounded: readonly (readonly number[])[];
  readonly correlation: Spread['correlation'];
  readonly residuals: Float64Array;
  /** What the fitted model says the probe should have read [°C]. */
  readonly predicted: Float64Array;
  readonly rmse: number;
  readonly noise: Noise;
  readonly stageEnds: readonly number[];
  readonly converged: boolean;
  readonly runs: number;
  readonly basis: readonly Basis[];
}

/** A spread of this much along one direction (a standard deviation of a factor 1.5) is no knowledge of it. */
const untold = 0.4;
/** Slopes this near to one another differ by no more than the differences they were taken from. */
const indistinct = 3e-5;
const spare = 3;

const sumOfSquares = (a: ArrayLike<number>, b: ArrayLike<number>) => {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] - b[i]) ** 2;
  return sum;
};

/** The engine as it is asked by a search: a coarse mesh, corrected by what the fine one said where it was last asked. */
class Model {
  runs = 0;
  expected = 60;
  /** What the engine itself may be off [K]. */
  readonly own: number;
  private readonly mode: 'coarse' | 'fine';
  constructor(
    readonly problem: FitProblem,
    readonly coordinates: readonly Coordinate[],
    private readonly options: FitOptions,
  ) {
    const { shape } = problem.body;
    // In one direction the fine mesh costs next to nothing.
    const meshed = shape === 'revolved' || shape === 'block';
    this.mode = meshed ? 'coarse' : 'fine';
    this.own = meshed ? ownError.mesh : ownError.line;
  }

  private count(): void {
    this.runs++;
    // How many there will be is not known beforehand.
    const share = 1 - Math.exp((-2 * this.runs) / this.expected);
    if (this.options.onProgress?.(this.runs, share) === false) throw new Cancelled();
  }

  quick = (x: readonly number[]): Float64Array => {
    this.count();
    return modelRun(this.problem, this.coordinates, x, this.mode).C;
  };

  fine(x: readonly number[]) {
    this.count();
    return modelRun(this.problem, this.coordinates, x, 'fine');
  }

  /** Differences over a step either side, or within the bounds. */
  slopes = (x: readonly number[]): Float64Array[] =>
    this.coordinates.map(({ step, low, high }, j) => {
      const at = (v: number) => this.quick(x.map((old, i) => (i === j ? v : old)));
      const b = Math.min(high, x[j] + step);
      const a = Math.max(low, x[j] - step);
      const up = at(b);
      const down = at(a);
      return up.map((C, i) => (C - down[i]) / (b - a));
    });
}

/** A first guess of the surface coefficients, over the whole range: a search that starts far off may end elsewhere. */
function firstGuess(model: Model, y: Float64Array): number[] {
  let best = model.coordinates.map((c) => c.start);
  const hs = model.coordinates.flatMap((c, i) => (c.parameter.kind === 'h' ? [i] : []));
  let least = sumOfSquares(model.quick(best), y);
  for (const j of hs)
    for (const factor of [1 / 27, 1 / 9, 1 / 3, 3, 9]) {
      const { low, high } = model.coordinates[j];
      const v = Math.log(factor);
      if (v <= low || v >= high) continue;
      const x = model.coordinates.map((c, i) => (i === j ? v : (best[i] ?? c.start)));
      const sum = sumOfSquares(model.quick(x), y);
      if (sum < least) {
        least = sum;
        best = x;
      }
    }
  return best;
}

function checkFit({ t, C, parameters }: FitProblem): void {
  if (parameters.length === 0) throw new OutOfRange('fit', 'nothing to fit', 'at least one value');
  if (C.length < parameters.length + spare)
    throw new OutOfRange(
      'log',
      `${C.length} readings within the programme`,
      `at least ${parameters.length + spare} to fit ${parameters.length}`,
    );
  if (t.length !== C.length) throw new OutOfRange('log', `${t.length} times`, `${C.length}, one a reading`);
}

/**
 * The values that make the engine follow a log best, with 95 % intervals [W/(m² K), -, m].
 *
 *     min Σ(C_i − T(t_i; x))²;  interval: least Σ with x_j held ≤ Σ_min + t²·(s²·(1 + ρ)/(1 − ρ) + n·own²)
 *
 * @param problem body, start, stages, probe, readings, and what of them to fit
 * @param tools solver of least squares and Student's quantile, handed in
 * @param options noise where known, progress
 * Assumes that everything which is not fitted is as given, one surface coefficient a stage, and readings scattered about the
 * engine evenly in time. Searched on a coarse mesh, corrected by the difference from the fine mesh at the answer until it stays.
 * Checked on logs made from the exact series with known coefficients, and by the share of 200 made-up logs whose intervals hold the truth.
 * Throws `OutOfRange` or `Contradiction` for what cannot be fitted, `Cancelled` when asked to stop.
 * Source: seber-wild-1989, bates-watts-1988
 */
export function fitLog(problem: FitProblem, tools: FitTools, options: FitOptions = {}): FitResult {
  checkFit(problem);
  const coordinates = coordinatesOf(problem);
  const model = new Model(problem, coordinates, options);
  const p = coordinates.length;
  model.expected = 25 + 30 * p;
  const low = coordinates.map((c) => c.low);
  const high = coordinates.map((c) => c.high);
  const { C } = problem;
  // Anything the engine refuses is refused before the search.
  const { basis: all } = model.fine(coordinates.map((c) => c.start)).result;
  const basis = all.filter(({ source }) => source !== 'bigelow-1921');
  let x = firstGuess(model, C);
  let defect = new Float64Array(C.length);
  let converged = false;
  let end = model.fine(x);
  let slopes: Float64Array[] | null = null;
  for (let round = 0; round < 4; round++) {
    const y = C.map((c, i) => c - defect[i]);
    // After the first search only the small difference of the meshes is left: the slopes at its end will do.
    const frozen = slopes;
    const found = tools.leastSquares({
      start: x,
      low,
      high,
      y,
      model: model.quick,
      slopes: frozen === null ? model.slopes : () => frozen,
      enough: 1e-8 * C.length,
    });
    const moved = Math.max(...found.x.map((v, i) => Math.abs(v - x[i])));
    x = found.x;
    converged = found.converged;
    end = model.fine(x);
    const quick = model.quick(x);
    defect = end.C.map((c, i) => c - quick[i]);
    if (frozen === null || moved > 0.05) slopes = model.slopes(x);
    if (round > 0 && moved < 2e-3) break;
    if (defect.every((d) => Math.abs(d) < 1e-9)) break;
  }
  const residuals = C.map((c, i) => c - end.C[i]);
  const noise = noiseOf(residuals, p, model.own, options.noise);
  slopes ??= model.slopes(x);
  const spread = spreadOf(slopes, noise.variance);
  const reach = tools.tQuantile(0.975, Math.max(1, noise.effective - p));
  const group =
    p > 1 && spread.alike.least < indistinct
      ? strong(spread.alike.direction)
      : spread.worst.sd > untold
        ? strong(spread.worst.direction)
        : [];
  const corrected = {
    y: C.map((c, i) => c - defect[i]),
    least: sumOfSquares(end.C, C),
    slopes,
    spread,
    allowed: reach ** 2 * noise.variance,
  };
  const fitted = coordinates.map((_, j) => {
    const together = group.length > 1 && group.includes(j);
    const around = together
      ? straight(coordinates[j], x[j], reach * spread.sd[j])
      : profiled(model, tools, corrected, x, j, reach * spread.sd[j]);
    return told(coordinates[j], x[j], around);
  });
  return {
    fitted,
    confounded: group.length > 0 ? [group] : [],
    correlation: spread.correlation,
    residuals,
    predicted: end.C,
    rmse: Math.sqrt(corrected.least / C.length),
    noise,
    stageEnds: end.ends,
    converged,
    runs: model.runs,
    basis,
  };
}

/** Which coordinates make up a direction. */
const strong = (direction: readonly number[]): number[] =>
  direction.flatMap((share, i) => (share > 0.2 ? [i] : []));

interface Ends {
  readonly low: number;
  readonly high: number;
  readonly lowOpen: boolean;
  readonly highOpen: boolean;
}

/** By the slopes alone, within the bounds: for what the log leaves so open that walking would only find the bounds. */
function straight({ low, high }: Coordinate, x: number, half: number): Ends {
  return {
    low: Math.max(low, x - half),
    high: Math.min(high, x + half),
    lowOpen: x - half <= low,
    highOpen: x + half >= high,
  };
}

interface Corrected {
  readonly y: Float64Array;
  readonly least: number;
  readonly slopes: readonly Float64Array[];
  readonly spread: Spread;
  readonly allowed: number;
}

/** By walking: one coordinate held, the others fitted again, until the sum of squares has grown by what is allowed. */
function profiled(
  model: Model,
  tools: FitTools,
  at: Corrected,
  x: readonly number[],
  j: number,
  half: number,
): Ends {
  const { coordinates } = model;
  const { allowed } = at;
  const others = coordinates.flatMap((_, i) => (i === j ? [] : [i]));
  const excess = (held: number): number => {
    const whole = (part: readonly number[]) => {
      const full = [...x];
      full[j] = held;
      others.forEach((i, q) => {
        full[i] = part[q];
      });
      return full;
    };
    if (others.length === 0) return sumOfSquares(model.quick(whole([])), at.y) - at.least;
    const low = others.map((i) => coordinates[i].low);
    const high = others.map((i) => coordinates[i].high);
    const start = others.map((i, q) =>
      Math.min(high[q], Math.max(low[q], x[i] + (held - x[j]) * at.spread.drag(j, i))),
    );
    // Slopes are taken once: at the best fit where this is near it, else where the walk has come to.
    const slopes = Math.abs(held - x[j]) < 0.25 ? at.slopes : model.slopes(whole(start));
    const { x: part } = tools.leastSquares({
      start,
      low,
      high,
      y: at.y,
      model: (v) => model.quick(whole(v)),
      slopes: () => others.map((i) => slopes[i]),
      enough: 0.02 * allowed,
    });
    return sumOfSquares(model.quick(whole(part)), at.y) - at.least;
  };
  const { low, high } = coordinates[j];
  // A first step no longer than a factor of e: further off the slopes say nothing.
  const first = Math.min(half, 1);
  const down = profileSide(excess, x[j], x[j] - first, low, allowed);
  const up = profileSide(excess, x[j], x[j] + first, high, allowed);
  return { low: down.x, high: up.x, lowOpen: down.open, highOpen: up.open };
}

function told({ parameter, value, low, high }: Coordinate, x: number, ends: Ends): FittedValue {
  const edge = 1e-6 + 1e-3 * (high - low);
  return {
    parameter,
    value: value(x),
    low: value(ends.low),
    high: value(ends.high),
    lowOpen: ends.lowOpen,
    highOpen: ends.highOpen,
    atBound: parameter.kind === 'probe' ? x > high - edge : x < low + edge || x > high - edge,
  };
}
