/** From a finish step as it is being edited to what the engine is asked, or what stands in the way. */
import { stageRanges } from '../../../../contract/media-range.ts';
import { reheatInputOf, reheatProblemOf } from '../../../../contract/method-reheat.ts';
import { InputProblems, type Problem } from '../../../../contract/problem.ts';
import type { Method } from '../../../../contract/steps.ts';
import type { CookResult } from '../../../../core/heat/types.ts';
import type { Asked } from '../cook/use-cooking.ts';

export type Warming =
  | (Extract<Asked, { ok: true }> & {
      readonly stages: ReturnType<typeof reheatInputOf>['stages'];
    })
  | { readonly ok: false; readonly faults: readonly Problem[] };

export function warmingOf(method: Method, stepId: string): Warming {
  try {
    const problem = reheatProblemOf(method, stepId);
    const { stages } = reheatInputOf(method, stepId);
    return {
      ok: true,
      problem,
      stages,
      cookStages: stages.length,
      ranges: stageRanges(stages, problem),
      key: JSON.stringify(problem),
    };
  } catch (error) {
    if (!(error instanceof InputProblems)) throw error;
    return { ok: false, faults: error.problems };
  }
}

/** Where the piece is warmest, from when something may grow until it is lifted out: rising minutes. */
export function warmestCourse(
  { history: { t, warmest } }: Pick<CookResult, 'history'>,
  liftOutS: number,
): { min: number; C: number }[] {
  const points: { min: number; C: number }[] = [];
  for (let i = 0; i < t.length; i++) {
    const min = (t[i] ?? 0) / 60;
    const C = warmest[i] ?? Number.NaN;
    if ((t[i] ?? 0) > liftOutS + 1e-6) break;
    if (points.length === 0 && C < -2) continue;
    if (min > (points.at(-1)?.min ?? -1)) points.push({ min, C });
  }
  const [first] = points;
  return first === undefined ? [] : points.map((p) => ({ min: p.min - first.min, C: p.C }));
}
