/** A piece through its cure, rinse and rest: salt by time and place. */
import { Contradiction } from '../errors.ts';
import { saturatedBrine } from '../properties/brine.ts';
import {
  type CurePiece,
  type CureStage,
  cellsOf,
  checkPiece,
  checkStage,
  equilibriumRatio,
  fleshDiffusivity,
  inside,
  meanWater,
  type Pace,
  surroundings,
  toRatio,
  toShare,
} from './cure-piece.ts';
import {
  type Cells,
  coreOf,
  type Detail,
  type Ratios,
  Salting,
  type Surroundings,
  saltIn,
} from './diffusion.ts';

export interface CureProblem {
  readonly piece: CurePiece;
  readonly stages: readonly CureStage[];
  /** Of the piece, at every temperature [m²/s]; else the published default by temperature. */
  readonly diffusivity?: number;
  /** Where diffusivities are the published defaults. */
  readonly pace?: Pace;
  /** Coarse while a hand moves: salt to about a hundredth of itself. */
  readonly detail?: Detail;
  /** Leave `to90` and `coreTo90` out (null): they take as long as all the rest. */
  readonly withoutNineTenths?: boolean;
}

/** Salt at a moment: mass fractions of the salted piece, and in its water phase. */
export interface SaltState {
  /** Since the start of the first stage [s]. */
  readonly t: number;
  readonly mean: number;
  readonly core: number;
  readonly surface: number;
  readonly meanWaterPhase: number;
  readonly coreWaterPhase: number;
  readonly surfaceWaterPhase: number;
  /** Of the bath, mass fraction; null where there is none. */
  readonly bath: number | null;
}

export interface CureStageResult {
  readonly end: SaltState;
  /** Where the stage would end if it went on for ever. */
  readonly equilibrium: { readonly salt: number; readonly waterPhase: number; readonly saltKg: number };
  /** From the stage's start until nine tenths of the way [s]: the whole piece, and its core; null where there is no way to go, or not within 20 years. */
  readonly to90: number | null;
  readonly coreTo90: number | null;
  /** Salt taken up in the stage, given off where negative [kg]. */
  readonly takenKg: number;
  /** Dry salt still on the piece at the end [kg]. */
  readonly undissolvedKg: number;
  /** Dry salt that was used up: when, from the stage's start [s]. */
  readonly usedUpAt: number | null;
  readonly diffusivity: number;
}

export interface CureResult {
  readonly stages: readonly CureStageResult[];
  readonly history: readonly SaltState[];
  /** At the end, from the surface inwards [m, mass fractions]. */
  readonly profile: readonly { readonly depth: number; readonly salt: number; readonly waterPhase: number }[];
  /** Depths of the frames' places, from the surface inwards to the core [m]. */
  readonly depths: readonly number[];
  /** Water-phase salt at those depths, one frame for each moment of the history [mass fractions]. */
  readonly frames: readonly (readonly number[])[];
  /**
   * Since the start of the first stage, the last going on for as long as it takes [s]: the core has gone nine tenths of
   * its way to where the last stage would end; null where there is no way to go, or not within 20 years.
   */
  readonly evenAt: number | null;
  /** Salt found in the end and salt put in, piece and media together: their difference as a share of what was put in, or of a microgram. */
  readonly balance: number;
}

/** Seconds until the mean and the core have gone nine tenths of the way from where they are to `end`. */
function nineTenths(cells: Cells, start: Ratios, around: Surroundings, end: number, water: number) {
  const places = [(u: Ratios) => saltIn(cells, u) / water, (u: Ratios) => coreOf(cells, u)];
  const goals = places.map((now) => {
    const from = now(start);
    const none = Math.abs(end - from) <= 1e-9 * Math.max(end, from, 1e-6);
    return none ? undefined : (u: Ratios) => (now(u) - from) / (end - from) - 0.9;
  });
  const asked = goals.filter((goal) => goal !== undefined);
  const when = new Salting(cells, start, around).until(asked);
  const [to90, coreTo90] = goals.map((goal) =>
    goal === undefined ? null : (when[asked.indexOf(goal)] ?? null),
  );
  return { to90: to90 ?? null, coreTo90: coreTo90 ?? null };
}

/**
 * Salt in a piece through cure, rinse and rest, by time and place [mass fractions and kg].
 * Equation: ∂u/∂t = ∇·(D ∇u), u salt per water; at the surface the strength of the bath, W_b du_b/dt = −flow, saturation
 * while dry salt lies there, or no flow. Finite volumes, 120 to a layer; in time TR-BDF2.
 * Parameters: size 0.0001–2 m, water 0.02–1, salt 0–0.3, temperature −1 to 25 °C, stages of 1 s to 366 days, baths up to saturation.
 * Assumptions: the water stays where it is (meat swells in weak brine and shrinks in strong); a stirred bath; no resistance at
 * the surface; dry salt makes its brine at once; ends of cylinders and edges of slabs take nothing up; what dry salt
 * is left at the end of a stage is brushed off.
 * Checked: against the series of all shapes in endless and limited baths, erfc at the start, and the balance of mass.
 * Source: crank-1975
 */
export function cure(problem: CureProblem): CureResult {
  const { piece, stages } = problem;
  checkPiece(piece);
  stages.forEach((stage, i) => void checkStage(stage, `stages[${i}]`));
  if (problem.diffusivity !== undefined) inside('diffusivity', problem.diffusivity, 1e-13, 2e-9, ' m²/s');
  const xw = meanWater(piece);
  const water = piece.mass * xw;
  const put0 = piece.mass * piece.salt;
  const u0 = put0 / water;
  if (u0 > toRatio(saturatedBrine(0) / 100))
    throw new Contradiction(
      'piece.salt',
      `${piece.salt} salt in ${piece.water} water`,
      'no more salt than its water dissolves, 0.357 of the water',
    );
  /** Salt of the salted piece where its ratio is u, for a place of so much water. */
  const share = (u: number, x: number) => (u * x) / (1 - u0 * x + u * x);

  let t = 0;
  let put = put0;
  let found = put0;
  let u: Ratios | undefined;
  let cells: Cells | undefined;
  const history: SaltState[] = [];
  const frames: number[][] = [];
  const results: CureStageResult[] = [];
  const core0 = u0;
  let last: { cells: Cells; start: Ratios; around: Surroundings; end: number; began: number } | undefined;
  for (const [i, { medium, temperature, time }] of stages.entries()) {
    const D = fleshDiffusivity(temperature, problem.pace, problem.diffusivity);
    cells = cellsOf(piece, D, temperature, problem.pace, problem.detail);
    const here = cells;
    const n = here.water.length;
    const start: Ratios = u ?? new Float64Array(n + 1).fill(u0);
    const around = surroundings(medium, temperature);
    if (around.kind === 'dry' && Math.max(...start.subarray(0, n)) > around.ratio)
      throw new Contradiction(`stages[${i}].medium`, 'dry salt on a piece that is saturated', 'no more salt');
    const before = saltIn(here, start);
    const run = new Salting(here, start, around);
    const state = (): SaltState => {
      const mean = saltIn(here, run.u) / water;
      const [core, surface] = [coreOf(here, run.u), run.surface()];
      return {
        t: t + run.t,
        mean: share(mean, xw),
        core: share(core, piece.water),
        surface: share(surface, piece.skin?.water ?? piece.water),
        meanWaterPhase: toShare(mean),
        coreWaterPhase: toShare(core),
        surfaceWaterPhase: toShare(surface),
        bath: around.kind === 'bath' || around.kind === 'kept' ? toShare(run.u[n]!) : null,
      };
    };
    const keep = () => {
      history.push(state());
      frames.push(frameOf(here, run.u, run.surface()));
    };
    keep();
    let usedUpAt: number | null = null;
    let kept = 0;
    while (run.t < time) {
      const had = run.stock;
      run.next(time);
      if (had > 0 && run.stock === 0) usedUpAt = run.t;
      if (run.t >= time || usedUpAt === run.t || (run.t > 1e-4 * time && run.t > 1.04 * kept)) {
        keep();
        kept = run.t;
      }
    }
    const after = saltIn(here, run.u);
    const end = equilibriumRatio(around, water, before);
    last = { cells: here, start, around, end, began: t };
    results.push({
      end: state(),
      equilibrium: { salt: share(end, xw), waterPhase: toShare(end), saltKg: end * water },
      ...(problem.withoutNineTenths === true
        ? { to90: null, coreTo90: null }
        : nineTenths(here, start, around, end, water)),
      takenKg: after - before,
      undissolvedKg: run.stock,
      usedUpAt,
      diffusivity: D,
    });
    if (around.kind === 'bath') {
      put += around.waterKg * around.ratio;
      found += around.waterKg * run.u[n]!;
    } else if (around.kind === 'dry') {
      put += around.stockKg;
      found += run.stock;
    } else if (around.kind === 'kept') put += after - before;
    found += after - before;
    u = run.u;
    t += time;
  }
  return {
    stages: results,
    history,
    ...profileOf(piece, cells, history.at(-1), frames.at(-1), share),
    frames,
    evenAt: last === undefined ? null : evenAt(last, core0, history),
    balance: (found - put) / Math.max(put, 1e-9),
  };
}

/** Every fourth cell from the surface inwards, and the core. */
const placesOf = (cells: Cells): number[] => {
  const places: number[] = [];
  for (let i = cells.water.length - 1; i > 0; i -= 4) places.push(i);
  return places;
};

const frameOf = (cells: Cells, u: Ratios, surface: number): number[] =>
  [surface, ...placesOf(cells).map((i) => u[i]!), coreOf(cells, u)].map(toShare);

function profileOf(
  piece: CurePiece,
  cells: Cells | undefined,
  end: SaltState | undefined,
  frame: readonly number[] | undefined,
  share: (u: number, x: number) => number,
): Pick<CureResult, 'profile' | 'depths'> {
  if (cells === undefined || end === undefined || frame === undefined) return { profile: [], depths: [] };
  const { outer } = cells;
  const depths = [0, ...placesOf(cells).map((i) => outer - cells.middle[i]!), outer];
  const profile = depths.map((depth, i) => {
    const waterPhase = frame[i]!;
    const x = piece.skin !== undefined && depth < piece.skin.thickness ? piece.skin.water : piece.water;
    const salt = depth === outer ? end.core : depth === 0 ? end.surface : share(toRatio(waterPhase), x);
    return { depth, salt, waterPhase };
  });
  return { profile, depths };
}

/** When the core has gone nine tenths of its whole way, the last stage going on. */
function evenAt(
  last: { cells: Cells; start: Ratios; around: Surroundings; end: number; began: number },
  core0: number,
  history: readonly SaltState[],
): number | null {
  const way = last.end - core0;
  if (Math.abs(way) <= 1e-9 * Math.max(last.end, core0, 1e-6)) return null;
  const gone = (core: number) => (core - core0) / way - 0.9;
  const earlier = history.findIndex(
    (state, i) => i > 0 && state.t <= last.began && gone(toRatio(state.coreWaterPhase)) >= 0,
  );
  if (earlier > 0) {
    const [a, b] = [history[earlier - 1]!, history[earlier]!];
    const [ga, gb] = [gone(toRatio(a.coreWaterPhase)), gone(toRatio(b.coreWaterPhase))];
    return gb > ga ? a.t + ((b.t - a.t) * -ga) / (gb - ga) : b.t;
  }
  const run = new Salting(last.cells, last.start, last.around);
  const [when] = run.until([(u) => gone(coreOf(last.cells, u))]);
  return when == null ? null : last.began + when;
}
