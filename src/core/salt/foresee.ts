/** A cure looked ahead: the usual, what the published range of diffusivities makes of it, and the way to the salt that is wanted. */
import { type CureProblem, type CureResult, cure, type SaltState } from './cure.ts';
import type { CureMedium } from './cure-piece.ts';
import { saltForTarget, strengthForTime, timeToTarget } from './target.ts';

/** Usual and, where diffusivities are the published ones, with the quickest and the slowest of their range; null: never. */
export interface Span {
  readonly usual: number | null;
  readonly quickest: number | null;
  readonly slowest: number | null;
}

export interface Foreseen {
  readonly result: CureResult;
  /** Whether any diffusivity is a published default, so that there is a range. */
  readonly ranged: boolean;
  /** Ends of the programme with the quickest and slowest salt; null where there is no range. */
  readonly quickest: SaltState | null;
  readonly slowest: SaltState | null;
  /** Until the core has gone nine tenths of its way, since the start of the first stage [s]. */
  readonly even: Span;
  readonly wanted: Wanted | null;
}

export interface Wanted {
  /** Mass fraction of the salted piece. */
  readonly salt: number;
  /** In the first stage as it is, until the mean has it [s]. */
  readonly time: Span;
  /** And until the core has it [s]. */
  readonly coreTime: number | null;
  /** Strength that brings the mean there in the first stage's time; null: none does, or it is dry salt. */
  readonly strength: number | null;
  /** Strength (1 for dry salt) and salt to weigh out [kg] that end there however long the piece lies; null where none does, or the bath has no weight. */
  readonly atRest: { readonly strength: number; readonly saltKg: number } | null;
}

const paces = ['usual', 'quickest', 'slowest'] as const;

const refusal = (error: unknown): error is RangeError | TypeError =>
  error instanceof RangeError || error instanceof TypeError;

function wantedOf(problem: CureProblem, ranged: boolean, salt: number): Wanted {
  const [first] = problem.stages;
  if (first === undefined) throw new Error('a cure without a stage');
  const { medium, temperature, time } = first;
  const stage = {
    piece: problem.piece,
    temperature,
    ...(problem.diffusivity === undefined ? {} : { diffusivity: problem.diffusivity }),
    ...(problem.detail === undefined ? {} : { detail: problem.detail }),
  };
  const salted: CureMedium = medium;
  const until = (pace: (typeof paces)[number]) => timeToTarget({ ...stage, medium: salted, pace }, salt);
  const mass = medium.kind === 'bath' ? medium.mass : undefined;
  let atRest: Wanted['atRest'] = null;
  if (medium.kind === 'bath' || medium.kind === 'dry')
    try {
      atRest = saltForTarget(problem.piece, salt, mass);
    } catch (error) {
      // More than a saturated brine gives, or less than the piece has: there is none.
      if (!refusal(error)) throw error;
    }
  return {
    salt,
    time: {
      usual: until('usual'),
      quickest: ranged ? until('quickest') : null,
      slowest: ranged ? until('slowest') : null,
    },
    coreTime: timeToTarget({ ...stage, medium: salted }, salt, 'core'),
    strength:
      medium.kind === 'bath' || medium.kind === 'kept' ? strengthForTime(stage, mass, time, salt) : null,
    atRest,
  };
}

/**
 * A cure with its range, and the way to the salt wanted [s, kg and mass fractions].
 * Equation: `cure` with the usual, the lowest and the highest of the published diffusivities; `timeToTarget`, `strengthForTime`, `saltForTarget`.
 * Parameters: those of `cure`; `wanted` salt, mass fraction of the salted piece, 0–0.27.
 * Assumptions: those of `cure`. The range is that of the published diffusivities, no confidence interval.
 * Checked: the times of a plain piece stand to one another as the diffusivities do.
 * Source: crank-1975
 */
export function foreseeCure(problem: CureProblem, wanted?: number): Foreseen {
  const { skin } = problem.piece;
  const ranged = problem.diffusivity === undefined || (skin !== undefined && skin.diffusivity === undefined);
  const ends = { ...problem, withoutNineTenths: true };
  const result = cure(problem);
  const quick = ranged ? cure({ ...ends, pace: 'quickest' }) : null;
  const slow = ranged ? cure({ ...ends, pace: 'slowest' }) : null;
  return {
    result,
    ranged,
    quickest: quick?.history.at(-1) ?? null,
    slowest: slow?.history.at(-1) ?? null,
    even: {
      usual: result.evenAt,
      quickest: quick?.evenAt ?? null,
      slowest: slow?.evenAt ?? null,
    },
    wanted: wanted === undefined ? null : wantedOf(problem, ranged, wanted),
  };
}
