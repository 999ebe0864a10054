/** From a finish step to what the engine runs: its own portion or the piece that was cooked, from the cold or the freezer, through its stages. */
import type { CookProblem } from '../core/heat/types.ts';
import { leastPointsFor } from '../core/method/foreseen-rules.ts';
import { findRule } from '../core/properties/rules.ts';
import type { BodyInput, StageInput, TargetInput } from './body.ts';
import { toProblem } from './cook.ts';
import { behind, resistanceOf } from './method-cook.ts';
import { InputProblems, type Problem } from './problem.ts';
import { rulesOfStep } from './step-rules.ts';
import type { FinishStep, Method, Step, StepOf } from './steps.ts';

/** By which the least warmed point is looked for besides what each rule asks; reheating has no target of its own. */
const counted: TargetInput = { referenceC: 70, zC: 7.5, min: 2 };

/** Something the finish step takes over from a step before it. */
export interface TakenOver<T> {
  readonly value: T;
  /** The step it comes from; null where the finish step says it itself. */
  readonly from: Step | null;
}

/** The steps between the last cook and this finish, the cook first; none where nothing is cooked before it. */
function sinceCooked(method: Method, stepId: string): readonly Step[] {
  const before = method.slice(
    0,
    Math.max(
      0,
      method.findIndex((s) => s.id === stepId),
    ),
  );
  const cooked = before.findLastIndex((s) => s.kind === 'cook');
  return cooked < 0 ? [] : before.slice(cooked);
}

/** How cold it goes in: as said, or as the last keep step since the cook keeps it. */
export function reheatStartOf(method: Method, step: FinishStep): TakenOver<number> | null {
  if (step.startC !== undefined) return { value: step.startC, from: null };
  const kept = sinceCooked(method, step.id).findLast((s) => s.kind === 'keep');
  return kept?.kind === 'keep' ? { value: kept.maxC, from: kept } : null;
}

/** What is warmed: the portion as said, or the piece as it was cooked. */
export function reheatBodyOf(method: Method, step: FinishStep): TakenOver<BodyInput> | null {
  if (step.body !== undefined) return { value: step.body, from: null };
  const [cooked] = sinceCooked(method, step.id);
  return cooked?.kind === 'cook' ? { value: cooked.body, from: cooked } : null;
}

/** The programme as the headless `cook` command would be given it. Throws `InputProblems` where something is missing. */
export function reheatInputOf(method: Method, finishStepId: string) {
  const step = method.find((s): s is StepOf<'finish'> => s.id === finishStepId && s.kind === 'finish');
  if (step === undefined)
    throw new InputProblems([
      {
        path: 'finishStepId',
        found: JSON.stringify(finishStepId),
        allowed: 'the id of a finish step of this method',
      },
    ]);
  const start = reheatStartOf(method, step);
  const body = reheatBodyOf(method, step);
  const stages = step.stages ?? [];
  const missing = (path: string, allowed: string): Problem => ({ path, found: 'nothing', allowed });
  const problems = [
    ...(stages.length > 0
      ? []
      : [missing('stages', 'at least one stage: a medium, its temperature and how long')]),
    ...(start !== null
      ? []
      : [missing('startC', 'how cold it goes in, or a keep step between cook and finish')]),
    ...(body !== null ? [] : [missing('body', 'the portion that is warmed, or a cook step before it')]),
  ];
  if (problems.length > 0 || start === null || body === null) throw new InputProblems(problems);
  // What it was packed in after the cook is still on it; what it was cooked in is taken to be off.
  const wrapped: StageInput[] = behind(stages, resistanceOf(sinceCooked(method, step.id)));
  return { body: body.value, startC: start.value, stages: wrapped, target: counted };
}

/** The problem the engine solves for a finish step, with a least point for each way in which its rules count. */
export function reheatProblemOf(method: Method, finishStepId: string): CookProblem {
  const problem = toProblem(reheatInputOf(method, finishStepId));
  const step = method.find((s) => s.id === finishStepId);
  const rules = (step === undefined ? [] : rulesOfStep(step)).flatMap((id) => findRule(id) ?? []);
  const alsoLeast = leastPointsFor(rules, problem.target);
  return alsoLeast.length === 0 ? problem : { ...problem, alsoLeast };
}
