/** A piece through its cure, rinse and rest: salt by time and place. */
import { Contradiction, OutOfRange } from '../errors.ts';
import {
  brineFreezing,
  muscleDiffusivity,
  saltDiffusivity,
  saturatedBrine,
  skinDiffusivity,
} from '../properties/brine.ts';
import {
  type Cells,
  coreOf,
  layCells,
  type Ratios,
  Salting,
  type Surroundings,
  saltIn,
} from './diffusion.ts';
import type { SaltShape } from './series.ts';

export interface CurePiece {
  readonly shape: SaltShape;
  /** Thickness of the slab or diameter [m]. */
  readonly size: number;
  /** Slab: faces that salt can enter by. */
  readonly exposedFaces: 1 | 2;
  /** [kg] */
  readonly mass: number;
  /** Mass fractions of the piece before the cure; of what lies under the skin where there is one. */
  readonly water: number;
  readonly salt: number;
  /** A layer outside that slows the salt [m, mass fraction, m²/s at 5 °C]. */
  readonly skin?: { readonly thickness: number; readonly water: number; readonly diffusivity?: number };
}

export type CureMedium =
  | { readonly kind: 'bath'; readonly mass: number; readonly salt: number }
  | { readonly kind: 'kept'; readonly salt: number }
  | { readonly kind: 'dry'; readonly salt: number }
  | { readonly kind: 'rest' };

export interface CureStage {
  readonly medium: CureMedium;
  /** [°C] */
  readonly temperature: number;
  /** [s] */
  readonly time: number;
}

export interface CureProblem {
  readonly piece: CurePiece;
  readonly stages: readonly CureStage[];
  /** Of the piece, at every temperature [m²/s]; else the published default by temperature. */
  readonly diffusivity?: number;
  /** Where diffusivities are the published defaults: the usual, or the lowest of their range. */
  readonly pace?: 'usual' | 'slowest';
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
  /** Salt found in the end and salt put in, piece and media together: their difference as a share of what was put in, or of a microgram. */
  readonly balance: number;
}

const inside = (path: string, x: number, low: number, high: number, unit = '') => {
  if (!(x >= low && x <= high)) throw new OutOfRange(path, `${x}${unit}`, `${low} to ${high}${unit}`);
};

const toRatio = (w: number) => w / (1 - w);
const toShare = (u: number) => u / (1 + u);

function checkPiece(piece: CurePiece): void {
  inside('piece.size', piece.size, 1e-4, 2, ' m');
  inside('piece.mass', piece.mass, 1e-6, 1e4, ' kg');
  inside('piece.water', piece.water, 0.02, 1);
  inside('piece.salt', piece.salt, 0, 0.3);
  if (piece.water + piece.salt > 1)
    throw new Contradiction(
      'piece.water',
      `${piece.water} water and ${piece.salt} salt`,
      'together at most 1',
    );
  const { skin } = piece;
  if (skin === undefined) return;
  inside('piece.skin.water', skin.water, 0.02, 1);
  if (skin.diffusivity !== undefined)
    inside('piece.skin.diffusivity', skin.diffusivity, 1e-15, 2e-9, ' m²/s');
  const room = piece.shape === 'slab' && piece.exposedFaces === 1 ? piece.size : piece.size / 2;
  inside('piece.skin.thickness', skin.thickness, 1e-5, room * 0.95, ' m');
}

function checkStage({ medium, temperature, time }: CureStage, path: string): void {
  inside(`${path}.temperature`, temperature, muscleDiffusivity.coldest, muscleDiffusivity.hottest, ' °C');
  inside(`${path}.time`, time, 1, 366 * 86_400, ' s');
  if (medium.kind === 'dry') inside(`${path}.medium.salt`, medium.salt, 0, 1e4, ' kg');
  if (medium.kind !== 'bath' && medium.kind !== 'kept') return;
  if (medium.kind === 'bath') inside(`${path}.medium.mass`, medium.mass, 1e-6, 1e6, ' kg');
  const most = saturatedBrine(temperature) / 100;
  if (!(medium.salt >= 0 && medium.salt <= most))
    throw new OutOfRange(
      `${path}.medium.salt`,
      String(medium.salt),
      `0 to ${most.toFixed(4)}, saturation at ${temperature} °C`,
    );
  if (temperature < 0 && medium.salt < 0.233 && brineFreezing(medium.salt * 100) > temperature)
    throw new Contradiction(
      `${path}.temperature`,
      `${temperature} °C`,
      `such a brine freezes at ${brineFreezing(medium.salt * 100).toFixed(2)} °C`,
    );
}

/** Water of the whole piece, mass fraction, skin included by its share of the room. */
function meanWater(piece: CurePiece): number {
  const { skin, size, shape, exposedFaces } = piece;
  if (skin === undefined) return piece.water;
  const extent = shape === 'slab' && exposedFaces === 1 ? size : size / 2;
  const power = shape === 'slab' ? 1 : shape === 'cylinder' ? 2 : 3;
  const under = (1 - skin.thickness / extent) ** power;
  return under * piece.water + (1 - under) * skin.water;
}

function cellsOf(piece: CurePiece, D: number, temperature: number, pace: CureProblem['pace']): Cells {
  const { skin, size, shape, exposedFaces } = piece;
  const extent = shape === 'slab' && exposedFaces === 1 ? size : size / 2;
  const byTemperature = saltDiffusivity(temperature) / muscleDiffusivity.at5C;
  const layers = [
    ...(skin === undefined
      ? []
      : [
          {
            thickness: skin.thickness,
            water: skin.water,
            diffusivity:
              skin.diffusivity ??
              (pace === 'slowest' ? skinDiffusivity.low : skinDiffusivity.at5C) * byTemperature,
          },
        ]),
    { water: piece.water, diffusivity: D },
  ];
  return layCells(shape, extent, piece.mass * meanWater(piece), layers);
}

function surroundings(medium: CureMedium, temperature: number): Surroundings {
  switch (medium.kind) {
    case 'bath':
      return { kind: 'bath', waterKg: medium.mass * (1 - medium.salt), ratio: toRatio(medium.salt) };
    case 'kept':
      return { kind: 'kept', ratio: toRatio(medium.salt) };
    case 'dry':
      return { kind: 'dry', stockKg: medium.salt, ratio: toRatio(saturatedBrine(temperature) / 100) };
    case 'rest':
      return { kind: 'rest' };
  }
}

/** Salt per water when a stage has gone on for ever. */
function equilibriumRatio(around: Surroundings, water: number, salt: number): number {
  switch (around.kind) {
    case 'bath':
      return (salt + around.waterKg * around.ratio) / (water + around.waterKg);
    case 'kept':
      return around.ratio;
    case 'dry':
      return Math.max(salt / water, Math.min(around.ratio, (salt + around.stockKg) / water));
    case 'rest':
      return salt / water;
  }
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
  const results: CureStageResult[] = [];
  for (const [i, { medium, temperature, time }] of stages.entries()) {
    const slowness = problem.pace === 'slowest' ? muscleDiffusivity.low / muscleDiffusivity.at5C : 1;
    const D = problem.diffusivity ?? saltDiffusivity(temperature) * slowness;
    cells = cellsOf(piece, D, temperature, problem.pace);
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
    history.push(state());
    let usedUpAt: number | null = null;
    let last = 0;
    while (run.t < time) {
      const had = run.stock;
      run.next(time);
      if (had > 0 && run.stock === 0) usedUpAt = run.t;
      if (run.t >= time || usedUpAt === run.t || (run.t > 1e-4 * time && run.t > 1.04 * last)) {
        history.push(state());
        last = run.t;
      }
    }
    const after = saltIn(here, run.u);
    const end = equilibriumRatio(around, water, before);
    results.push({
      end: state(),
      equilibrium: { salt: share(end, xw), waterPhase: toShare(end), saltKg: end * water },
      ...nineTenths(here, start, around, end, water),
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
  const ended = history.at(-1);
  const profile =
    cells === undefined || u === undefined || ended === undefined
      ? []
      : profileOf(piece, cells, u, ended, share);
  return { stages: results, history, profile, balance: (found - put) / Math.max(put, 1e-9) };
}

/** About thirty places from the surface to the core. */
function profileOf(
  piece: CurePiece,
  cells: Cells,
  u: Ratios,
  end: SaltState,
  share: (u: number, x: number) => number,
): CureResult['profile'] {
  const rows = [{ depth: 0, salt: end.surface, waterPhase: end.surfaceWaterPhase }];
  for (let i = cells.water.length - 1; i > 0; i -= 4) {
    const depth = cells.outer - cells.middle[i]!;
    const x = piece.skin !== undefined && depth < piece.skin.thickness ? piece.skin.water : piece.water;
    rows.push({ depth, salt: share(u[i]!, x), waterPhase: toShare(u[i]!) });
  }
  rows.push({ depth: cells.outer, salt: end.core, waterPhase: end.coreWaterPhase });
  return rows;
}
