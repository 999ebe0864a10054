/** The published range of a stage's medium, and what it means in minutes. */
import type { CookProblem, CookResult } from '../core/heat/types.ts';
import { mediaRange, type RangeMinutes, type StageRange } from '../core/method/media-range.ts';
import { heatingStageOf } from '../core/method/verdict.ts';
import { mediumNamed } from '../core/properties/media.ts';
import type { StageInput } from './body.ts';
import { hasLaw, surroundingsOf } from './surroundings.ts';

/** The range of the coefficient that a stage takes from the table [W/(m² K)], and where it is from. */
export interface PublishedRange {
  readonly low: number;
  readonly usual: number;
  readonly high: number;
  readonly source: string;
  /** Of the dry air alone: its vapour and its radiation are computed. */
  readonly dry: boolean;
}

/** The published range of a stage's medium; none where the coefficient is the kitchen's own. */
export function publishedRange(stage: StageInput): PublishedRange | undefined {
  if (stage.medium === undefined || stage.hWm2K !== undefined) return undefined;
  const named = mediumNamed(stage.medium);
  const law = hasLaw(stage);
  const table = law ? named.dry : named;
  if (table === undefined) return undefined;
  const { low, h, high, source } = table;
  return { low, usual: h, high, source, dry: law };
}

/** The stages at both ends of their media's ranges, as the engine takes them. */
export function stageRanges(stages: readonly StageInput[], problem: CookProblem): StageRange[] {
  return stages.flatMap((stage, i): StageRange[] => {
    const range = publishedRange(stage);
    const own = problem.stages[i];
    if (range === undefined || own === undefined) return [];
    const at = (h: number) => ({ ...own, ...surroundingsOf(stage, `stages[${i}]`, h) });
    return [{ stage: i, low: at(range.low), high: at(range.high) }];
  });
}

const min = (s: number) => (Number.isFinite(s) ? s / 60 : null);

/** A row of the answer to a range: coefficients, and the minutes that a stage takes with them (null where it never gets there). */
function rowOf(stage: StageInput, { stage: index, low, usual, high }: RangeMinutes) {
  const range = publishedRange(stage);
  return {
    stage: index,
    name: stage.name,
    medium: stage.medium ?? '',
    lowWm2K: range?.low ?? Number.NaN,
    usualWm2K: range?.usual ?? Number.NaN,
    highWm2K: range?.high ?? Number.NaN,
    lowMin: min(low),
    usualMin: min(usual),
    highMin: min(high),
    source: range?.source ?? '',
  };
}

/** What the published ranges of a programme's media mean in minutes, by coarse runs. */
export function mediaRangesOf(stages: readonly StageInput[], problem: CookProblem, result: CookResult) {
  const heating = heatingStageOf(problem, result, stages.length);
  return mediaRange(problem, heating, stageRanges(stages, problem)).flatMap((row) => {
    const stage = stages[row.stage];
    return stage === undefined ? [] : [rowOf(stage, row)];
  });
}
