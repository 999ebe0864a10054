/** What the spread of a medium's published coefficient means in minutes. */
import { cook as engine } from '../heat/cook.ts';
import type { CookProblem, Stage } from '../heat/types.ts';
import { type AdviceOptions, type Cook, finish, heatingTimeSearch } from './advice.ts';

/** A stage of the programme at the lowest and the highest coefficient that its medium is published with. */
export interface StageRange {
  /** Index of the stage. */
  readonly stage: number;
  readonly low: Stage;
  readonly high: Stage;
}

/** How long a stage takes at the low end, as it stands, and at the high end of its medium's range [s]; NaN where it never gets there. */
export interface RangeMinutes {
  readonly stage: number;
  readonly low: number;
  readonly usual: number;
  readonly high: number;
}

export interface RangeOptions extends Pick<AdviceOptions, 'mode' | 'tolerance'> {
  readonly cook?: Cook;
}

const withStage = (problem: CookProblem, at: number, stage: Stage): CookProblem => ({
  ...problem,
  stages: problem.stages.map((s, i) => (i === at ? stage : s)),
});

/**
 * The search behind `mediaRange` [s], one engine run at a time, so that a caller may stop between two runs. Source: own-computation
 */
export function* mediaRangeSearch(
  problem: CookProblem,
  heatingStage: number,
  ranges: readonly StageRange[],
  options: RangeOptions = {},
): Generator<number, RangeMinutes[]> {
  const run = options.cook ?? engine;
  const mode = options.mode ?? 'coarse';
  const found: RangeMinutes[] = [];
  let runs = 0;
  for (const { stage, low, high } of ranges) {
    const own = problem.stages[stage];
    const timed = own.until.kind === 'time';
    // A stage of a set time that is not the one that cooks has no minutes to be moved.
    if (timed && stage !== heatingStage) continue;
    let guess = own.until.kind === 'time' ? own.until.s : 0;
    const lasting: number[] = [];
    for (const as of [own, low, high]) {
      const changed = withStage(problem, stage, as);
      if (timed) {
        const search = heatingTimeSearch(changed, stage, {
          mode,
          tolerance: 3,
          ...options,
          guess,
          cook: run,
        });
        let step = search.next();
        for (; step.done !== true; step = search.next()) yield ++runs;
        lasting.push(step.value.duration);
        if (step.value.status === 'found') guess = step.value.duration;
      } else {
        const { start, end, reached } = run(changed, { mode }).stages[stage];
        yield ++runs;
        lasting.push(reached ? end - start : Number.NaN);
      }
    }
    found.push({ stage, usual: lasting[0], low: lasting[1], high: lasting[2] });
  }
  return found;
}

/**
 * How long stages take at the low and at the high end of their media's published range [s].
 *
 *     of the stage that cooks: its shortest heating that holds; of one that ends by a condition: until it is met
 *
 * @param problem the programme as it stands
 * @param heatingStage index of the stage that ends with lifting out
 * @param ranges stages at the ends of their range
 * @param options mode of the engine, default coarse: the differences are what is asked for
 * Assumes that one stage's coefficient is off at a time, and everywhere alike.
 * Checked: between the ends lies the usual, a lower coefficient takes longer, and the two ends are runs of their own.
 * Source: own-computation
 */
export function mediaRange(
  problem: CookProblem,
  heatingStage: number,
  ranges: readonly StageRange[],
  options: RangeOptions = {},
): RangeMinutes[] {
  return finish(mediaRangeSearch(problem, heatingStage, ranges, options));
}
