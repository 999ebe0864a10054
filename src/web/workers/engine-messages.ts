/** What the page and the engine's worker say to one another. */
import type { FitAnswer } from '../../contract/fit.ts';
import type { CookProblem, CookResult, Place } from '../../core/heat/types.ts';
import type { Advice } from '../../core/method/advice.ts';
import type { RangeMinutes, StageRange } from '../../core/method/media-range.ts';
import type { ShapeCost } from '../../core/method/shape-cost.ts';
import type { CureProblem } from '../../core/salt/cure.ts';
import type { Foreseen } from '../../core/salt/foresee.ts';

export type Question =
  | {
      readonly kind: 'fit';
      /** As the command `fit` takes it. */
      readonly input: unknown;
    }
  | {
      readonly kind: 'cook';
      readonly problem: CookProblem;
      readonly mode: 'coarse' | 'fine';
      readonly frames: number;
    }
  | {
      readonly kind: 'advise';
      readonly problem: CookProblem;
      readonly mode: 'coarse' | 'fine';
      readonly heatingStage: number;
      /** How long the heating stage lasts as it stands [s]. */
      readonly now: number;
      readonly coldSpot: Place;
    }
  | {
      readonly kind: 'ranges';
      readonly problem: CookProblem;
      readonly heatingStage: number;
      readonly ranges: readonly StageRange[];
    }
  | {
      readonly kind: 'cure';
      readonly problem: CureProblem;
      /** Mean salt that is wanted, mass fraction of the salted piece. */
      readonly wanted: number | undefined;
    };

export type AnswerTo<Q extends Question> = Q extends { kind: 'fit' }
  ? { readonly fit: FitAnswer; readonly ms: number }
  : Q extends { kind: 'cook' }
    ? { readonly result: CookResult; readonly ms: number }
    : Q extends { kind: 'cure' }
      ? { readonly foreseen: Foreseen; readonly ms: number }
      : Q extends { kind: 'ranges' }
        ? { readonly minutes: readonly RangeMinutes[]; readonly ms: number }
        : { readonly advice: Advice; readonly cost: ShapeCost | null; readonly ms: number };

/** An error of the engine as it crosses from the worker: which kind, and where, found, allowed where it says so. */
export interface EngineFault {
  readonly name: string;
  readonly message: string;
  readonly path?: string;
  readonly found?: string;
  readonly allowed?: string;
}

export type ToWorker =
  | { readonly id: number; readonly ask: Question }
  | { readonly id: number; readonly cancel: true };

export type FromWorker =
  | { readonly id: number; readonly progress: number }
  | { readonly id: number; readonly part: unknown }
  | { readonly id: number; readonly answer: unknown }
  | { readonly id: number; readonly fault: EngineFault }
  | { readonly id: number; readonly cancelled: true };

/** The buffers of a result, each once, to be handed over instead of copied. */
export function buffersOf(result: CookResult): ArrayBuffer[] {
  const buffers = new Set<ArrayBuffer>();
  const take = (array: Float64Array | Float32Array) => {
    if (array.buffer instanceof ArrayBuffer) buffers.add(array.buffer);
  };
  for (const column of Object.values(result.history)) take(column as Float64Array);
  take(result.mesh.x);
  take(result.mesh.y);
  for (const frame of result.frames) {
    take(frame.C);
    take(frame.lethality);
  }
  for (const probe of result.probes) {
    take(probe.C);
    take(probe.lethality);
  }
  return [...buffers];
}
