/** From the salt that is wanted back to the brine, the salt to weigh out, or the hours. */
import { Contradiction, OutOfRange } from '../errors.ts';
import { bracketedRoot } from '../numerics/roots.ts';
import { saturatedBrine } from '../properties/brine.ts';
import type { CureProblem } from './cure.ts';
import {
  type CureMedium,
  type CurePiece,
  cellsOf,
  checkPiece,
  checkStage,
  equilibriumRatio,
  fleshDiffusivity,
  meanWater,
  type Pace,
  surroundings,
} from './cure-piece.ts';
import { coreOf, type Ratios, Salting, saltIn } from './diffusion.ts';

/** Salt per water of a piece that is to hold so much salt, a mass fraction of the salted piece. */
function wantedRatio(piece: CurePiece, share: number): number {
  const x = meanWater(piece);
  const u0 = piece.salt / x;
  // share = u x/(1 − u0 x + u x), the other way round.
  return (share * (1 - u0 * x)) / (x * (1 - share));
}

const checkWanted = (wanted: number) => {
  if (!(wanted > 0 && wanted < 0.27))
    throw new OutOfRange('wanted', String(wanted), 'more than 0, at most 0.27');
};

export interface BrineWanted {
  /** Strength of the brine to make, mass fraction; for dry salt 1. */
  readonly strength: number;
  /** Salt to weigh out [kg]. */
  readonly saltKg: number;
}

/**
 * The brine, or the dry salt, that leaves a piece with the salt wanted when it has come to rest with it [mass fraction and kg].
 * Equation: S = u(W_piece + W_brine) − S₀ with u the wanted salt per water; brine of mass m: S = m w, W_brine = m − S.
 * Parameters: wanted, mass fraction of the salted piece, 0–0.27; `brineKg` the weight of the brine with its salt; none for dry salt.
 * Assumptions: those of `cureEquilibrium`; time enough. Checked: `cureEquilibrium` of what it gives is what was wanted, to 1e-12.
 * @example saltForTarget({ shape: 'slab', size: 0.04, exposedFaces: 2, mass: 1, water: 0.7576, salt: 0 }, 0.026078, 1).strength // → 0.0600
 * Source: own-computation
 */
export function saltForTarget(piece: CurePiece, wanted: number, brineKg?: number): BrineWanted {
  checkPiece(piece);
  checkWanted(wanted);
  const u = wantedRatio(piece, wanted);
  const water = piece.mass * meanWater(piece);
  const missing = u * water - piece.mass * piece.salt;
  if (missing < 0)
    throw new Contradiction(
      'wanted',
      `${wanted} wanted, the piece has more already`,
      'more salt than it has',
    );
  if (brineKg === undefined) return { strength: 1, saltKg: missing };
  const saltKg = (missing + u * brineKg) / (1 + u);
  const strength = saltKg / brineKg;
  const most = saturatedBrine(0) / 100;
  if (!(strength <= most))
    throw new OutOfRange(
      'wanted',
      `${wanted}, which asks for a brine of ${(strength * 100).toFixed(1)} %`,
      `at most a saturated one, ${(most * 100).toFixed(1)} %: more brine or less salt`,
    );
  return { strength, saltKg };
}

/**
 * Salt for meat and water salted as one, that leaves the meat with the salt wanted when all is even [kg].
 * Equation: S = u(W_piece + W) − S₀, u the wanted salt per water.
 * Parameters: wanted, mass fraction of the salted piece, 0–0.27; waterKg the water it lies in, ≥ 0.
 * Assumptions: those of `cureEquilibrium`; time enough. Checked: `cureEquilibrium` of it gives what was wanted, to 1e-12.
 * @example evenSalt({ shape: 'slab', size: 0.04, exposedFaces: 2, mass: 1, water: 0.75, salt: 0 }, 0.02, 1) // → 0.0476
 * Source: own-computation
 */
export function evenSalt(piece: CurePiece, wanted: number, waterKg: number): number {
  checkPiece(piece);
  checkWanted(wanted);
  if (!(waterKg >= 0 && waterKg <= 1e6)) throw new OutOfRange('waterKg', `${waterKg} kg`, '0 to 1e6 kg');
  const salt =
    wantedRatio(piece, wanted) * (piece.mass * meanWater(piece) + waterKg) - piece.mass * piece.salt;
  return Math.max(0, salt);
}

export interface TargetStage {
  readonly piece: CurePiece;
  readonly medium: CureMedium;
  /** [°C] */
  readonly temperature: number;
  readonly diffusivity?: CureProblem['diffusivity'];
  readonly pace?: Pace;
  readonly detail?: CureProblem['detail'];
}

function begin({ piece, medium, temperature, diffusivity, pace, detail }: TargetStage) {
  const D = fleshDiffusivity(temperature, pace, diffusivity);
  const cells = cellsOf(piece, D, temperature, pace, detail);
  const n = cells.water.length;
  const water = piece.mass * meanWater(piece);
  const salt = piece.mass * piece.salt;
  const around = surroundings(medium, temperature);
  const run = new Salting(cells, new Float64Array(n + 1).fill(salt / water), around);
  return { run, cells, water, end: equilibriumRatio(around, water, salt) };
}

/**
 * How long until a piece holds the salt wanted [s]; null where it never will.
 * Equation: the march of `cure`, stopped where the mean, or the core, comes to the wanted salt per water.
 * Parameters: wanted, mass fraction of the salted piece (of the core: as if the whole were like it), 0–0.27; one unchanging stage.
 * Assumptions: those of `cure`. Checked: `cure` for that time gives what was wanted.
 * Source: crank-1975
 */
export function timeToTarget(
  stage: TargetStage,
  wanted: number,
  of: 'mean' | 'core' = 'mean',
): number | null {
  checkPiece(stage.piece);
  checkStage({ medium: stage.medium, temperature: stage.temperature, time: 1 }, 'stage');
  checkWanted(wanted);
  const u = wantedRatio(stage.piece, wanted);
  const { run, cells, water, end } = begin(stage);
  // What is approached for ever is never reached: a ten-thousandth short of it counts as there.
  if (end < u * (1 - 1e-4)) return null;
  const goal = Math.min(u, end * (1 - 1e-4));
  const now = (v: Ratios) => (of === 'mean' ? saltIn(cells, v) / water : coreOf(cells, v));
  const [when] = run.until([(v) => now(v) - goal]);
  return when ?? null;
}

/**
 * The strength of a brine that brings the mean of a piece to the salt wanted in a given time [mass fraction]; null where even a saturated one does not.
 * Equation: root over the strength of mean(strength, time) − wanted, the march of `cure`.
 * Parameters: brineKg, the weight of the brine, or undefined for one whose strength is kept; time [s]; wanted 0–0.27.
 * Assumptions: those of `cure`. Checked: `cure` with that strength gives what was wanted.
 * Source: crank-1975
 */
export function strengthForTime(
  stage: Omit<TargetStage, 'medium'>,
  brineKg: number | undefined,
  time: number,
  wanted: number,
): number | null {
  checkPiece(stage.piece);
  checkWanted(wanted);
  const u = wantedRatio(stage.piece, wanted);
  const after = (salt: number) => {
    const medium: CureMedium =
      brineKg === undefined ? { kind: 'kept', salt } : { kind: 'bath', mass: brineKg, salt };
    checkStage({ medium, temperature: stage.temperature, time }, 'stage');
    const { run, cells, water } = begin({ ...stage, medium });
    while (run.t < time) run.next(time);
    return saltIn(cells, run.u) / water - u;
  };
  const most = saturatedBrine(stage.temperature) / 100;
  // Weaker than this and below 0 °C the brine is ice.
  const least = stage.temperature < 0 ? Math.min(most, 0.02) : 0;
  if (after(most) < 0) return null;
  if (after(least) > 0) return least;
  const root = bracketedRoot(after, least, most, 1e-6);
  return root.status === 'converged' ? root.x : null;
}
