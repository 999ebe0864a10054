/** What a method card is printed from. The caller has read the records and run the engine; nothing is computed on paper. */
import type { Dish, Version } from '../contract/records.ts';
import type { CookProblem, CookResult } from '../core/heat/types.ts';
import type { ReheatForeseen } from '../core/method/reheat.ts';
import type { CuredStep } from './cure-on-card.ts';
import type { PrintedFor } from './typst.ts';

/** A cook step with the engine's fine answer; `result.frames` must hold the ends of the stages. */
export interface CookedStep {
  readonly stepId: string;
  readonly problem: CookProblem;
  readonly result: CookResult;
  /** How many of the stages are the cook step's own; the rest belong to the chill step that follows. */
  readonly cookStages: number;
}

/** A cook step that the engine could not run: printed as unknown, with the reason. */
export interface NotRun {
  readonly stepId: string;
  readonly why: string;
}

/** A finish step with a programme, and the engine's fine answer to it. */
export interface WarmedStep {
  readonly stepId: string;
  readonly startC: number;
  readonly seen: ReheatForeseen;
  /** Minutes of each stage as reckoned. */
  readonly minutes: readonly number[];
}

export interface MethodCardData extends PrintedFor {
  readonly dish: Pick<Dish, 'name' | 'species' | 'part' | 'story' | 'law'> &
    Partial<Pick<Dish, 'agreed' | 'partsUsed'>>;
  readonly version: Pick<
    Version,
    'number' | 'rev' | 'status' | 'reason' | 'method' | 'createdAt' | 'createdBy' | 'signedAt' | 'signedBy'
  > &
    Partial<Pick<Version, 'evidence'>>;
  /** One for each cook step of the method, in any order. */
  readonly cooks: readonly (CookedStep | NotRun)[];
  /** Cure steps whose piece is known, in any order. */
  readonly cures?: readonly CuredStep[];
  /** Finish steps with a programme, in any order. */
  readonly warmed?: readonly (WarmedStep | NotRun)[];
}
