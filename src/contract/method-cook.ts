/** From a dish's method to what the engine runs: a cook step, the wrap on it and the chill that follows, as one programme. */
import type { CookProblem } from '../core/heat/types.ts';
import { leastPointsFor } from '../core/method/foreseen-rules.ts';
import { findRule } from '../core/properties/rules.ts';
import type { StageInput } from './body.ts';
import { toProblem } from './cook.ts';
import { InputProblems } from './problem.ts';
import { rulesOfStep } from './step-rules.ts';
import type { Method, Step, StepOf } from './steps.ts';

/** Thermal resistance of a wrap [m² K/W]: layers × thickness / conductivity. */
export function wrapResistance(wrap: Pick<StepOf<'wrap'>, 'layers' | 'micrometres' | 'kWmK'>): number {
  return (wrap.layers * wrap.micrometres * 1e-6) / wrap.kWmK;
}

/** What the wraps among these steps put between medium and food [m² K/W]. */
export function resistanceOf(steps: readonly Step[]): number {
  return steps.reduce((sum, step) => sum + (step.kind === 'wrap' ? wrapResistance(step) : 0), 0);
}

/** The stages with a further resistance in series with their own: what is wrapped does not dry either. */
export function behind(stages: readonly StageInput[], resistance: number): StageInput[] {
  if (resistance === 0) return [...stages];
  return stages.map((stage) => ({
    ...stage,
    resistanceM2KW: (stage.resistanceM2KW ?? 0) + resistance,
    wrapped: true,
  }));
}

/** Steps after which what was cooked is no longer in the programme of that cook step. */
const ends = new Set<Step['kind']>(['cook', 'keep', 'finish', 'plate']);

/** The chill step that takes over from a cook step: the first after it, before the piece is kept, finished or cooked again. */
export function chillStepOf(method: Method, cookStepId: string): StepOf<'chill'> | undefined {
  const at = method.findIndex((step) => step.id === cookStepId && step.kind === 'cook');
  if (at < 0) return undefined;
  for (const step of method.slice(at + 1)) {
    if (step.kind === 'chill') return step;
    if (ends.has(step.kind)) return undefined;
  }
  return undefined;
}

/** The cook step that a chill step takes over from. */
export function cookStepOf(method: Method, chillStepId: string): StepOf<'cook'> | undefined {
  return method.find(
    (step): step is StepOf<'cook'> =>
      step.kind === 'cook' && chillStepOf(method, step.id)?.id === chillStepId,
  );
}

/** The programme as the headless `cook` command would be given it. */
export function programmeInputOf(method: Method, cookStepId: string) {
  const at = method.findIndex((step) => step.id === cookStepId);
  const cook = method[at];
  if (cook?.kind !== 'cook')
    throw new InputProblems([
      {
        path: 'cookStepId',
        found: JSON.stringify(cookStepId),
        allowed: 'the id of a cook step of this method',
      },
    ]);
  const chill = chillStepOf(method, cookStepId);
  const wrapped = resistanceOf(method.slice(0, at));
  const wrappedLater = chill === undefined ? 0 : resistanceOf(method.slice(at, method.indexOf(chill)));
  return {
    body: cook.body,
    startC: cook.startC,
    stages: [...behind(cook.stages, wrapped), ...behind(chill?.stages ?? [], wrapped + wrappedLater)],
    target: cook.target,
  };
}

/**
 * The problem the engine solves for a cook step: its body, start, stages and target, followed by the stages of the
 * chill step that takes over; the resistance of every wrap before them is in series with their surface coefficient.
 * The first `cookStages` stages are the cook step's own. Throws `InputProblems` where the method cannot be run;
 * `stages[i]` with i ≥ `cookStages` is the chill step's `stages[i − cookStages]`.
 */
export function programmeOf(
  method: Method,
  cookStepId: string,
): { problem: CookProblem; cookStages: number } {
  const input = programmeInputOf(method, cookStepId);
  const cook = method.find((step) => step.id === cookStepId) as StepOf<'cook'>;
  if (input.stages.length === 0)
    throw new InputProblems([
      {
        path: 'stages',
        found: 'an empty list',
        allowed: 'at least one stage: a medium, its temperature and how long',
      },
    ]);
  const problem = toProblem(input);
  // By the target the least treated point may be another than by what the rules count.
  const rules = rulesOfStep(cook).flatMap((id) => findRule(id) ?? []);
  const alsoLeast = leastPointsFor(rules, problem.target);
  return {
    problem: alsoLeast.length === 0 ? problem : { ...problem, alsoLeast },
    cookStages: cook.stages.length,
  };
}
