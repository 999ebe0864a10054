/** The runs of the engine that `sure` asks for, one by one, so that any number of workers may do them in any order. */

import { Contradiction, OutOfRange } from '../core/errors.ts';
import { cook } from '../core/heat/cook.ts';
import { withHeating } from '../core/method/advice.ts';
import { passingTime } from '../core/method/passing-time.ts';
import { historyAt } from '../core/method/verdict.ts';
import type { Rule } from '../core/properties/rules.ts';
import { inInputTerms } from './cook.ts';
import { cookingRules } from './cooking-rules.ts';
import { InputProblems } from './problem.ts';
import { drawnProblem, type Study, studyOf } from './sure-input.ts';

export type SureTask =
  /** How long the stage must last for this piece [min]; Infinity where no time does. */
  | { readonly kind: 'time'; readonly values: readonly number[]; readonly mode: 'coarse' | 'fine' }
  /** Lethality at the coldest point when lifted out after so long, and by the end of the programme, coarse [min, min]. */
  | { readonly kind: 'lethality'; readonly values: readonly number[]; readonly min: number };

/** Does the tasks, in any order, and tells how many more are done whenever some are. */
export type RunTasks = (
  tasks: readonly SureTask[],
  onDone?: (more: number) => void,
) => Promise<readonly (readonly number[])[]>;

/** How many tasks, from one of them on, go to a worker at a time: so few that none waits long for another at the end. */
export const portionFrom = (tasks: readonly SureTask[], from: number): number =>
  tasks[from]?.kind === 'time' && tasks[from].mode === 'fine' ? 1 : 5;

/** What does the tasks of one study. Throws `InputProblems` for anything wrong with the input. */
export function taskRunner(input: unknown): (task: SureTask) => number[] {
  const study = studyOf(input);
  const rules = cookingRules(study.rules);
  return (task) => (task.kind === 'time' ? [timeFor(study, rules, task)] : lethalityFor(study, task));
}

function timeFor(
  study: Study,
  rules: readonly Rule[],
  { values, mode }: Extract<SureTask, { kind: 'time' }>,
): number {
  const drawn = study.draw(values);
  const { probeError, late } = drawn;
  const until = study.nominal.stages[study.stage]?.until ?? { min: 0 };
  const atMost = 'atMostMin' in until && until.atMostMin !== undefined ? until.atMostMin * 60 : 86_400;
  return possible(study, values, () => {
    const s = passingTime(drawnProblem(drawn), { stage: study.stage, rules, probeError, atMost, mode });
    return Math.max(0, s / 60 - late);
  });
}

function lethalityFor(study: Study, { values, min }: Extract<SureTask, { kind: 'lethality' }>): number[] {
  const drawn = study.draw(values);
  const { probeError, late } = drawn;
  return possible(study, values, () => {
    const problem = withHeating(drawnProblem(drawn), study.stage, Math.max(0, min + late) * 60);
    const result = cook(problem, { mode: 'coarse' });
    const { t, lethality } = result.history;
    const truly = 10 ** (-probeError / problem.target.z) / 60;
    const end = result.stages[study.stage]?.end ?? 0;
    return [historyAt(t, lethality, end) * truly, result.lethality.s * truly];
  });
}

/** Ends that are each possible may make a piece together that is not. */
function possible<T>(study: Study, values: readonly number[], work: () => T): T {
  try {
    return work();
  } catch (error) {
    const told =
      error instanceof InputProblems
        ? error.problems
        : error instanceof OutOfRange || error instanceof Contradiction
          ? [inInputTerms(error)]
          : null;
    if (told === null) throw error;
    const drawn = study.variables.map((v, i) => `${v.input} ${Number(values[i]?.toPrecision(5))}`).join(', ');
    throw new InputProblems(
      told.map((p) => ({
        ...p,
        found: `${p.found}, with ${drawn}: spreads that together make a cook that cannot be`,
      })),
    );
  }
}
