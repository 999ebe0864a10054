/**
 * The heavy work that a change waits for: the heat engine and the reading of probe logs. Whoever starts the program says
 * where it runs (a worker thread for a server); the tasks are plain data and so are their answers.
 */
import { inInputTerms, runCook } from '../contract/cook.ts';
import { type FitAnswer, runFit } from '../contract/fit.ts';
import { asRuleVerdict, judgePoints, runJudge } from '../contract/judge.ts';
import { chillStepOf, programmeOf } from '../contract/method-cook.ts';
import { reheatProblemOf } from '../contract/method-reheat.ts';
import type { HowRead } from '../contract/probe-log/types.ts';
import { readProbeLog } from '../contract/probe-log.ts';
import { InputProblems } from '../contract/problem.ts';
import type { Judgement } from '../contract/records.ts';
import { rulesOfStep } from '../contract/step-rules.ts';
import type { Method, StepOf } from '../contract/steps.ts';
import { Contradiction, OutOfRange } from '../core/errors.ts';
import { cook } from '../core/heat/cook.ts';
import { foreseenCooking, foreseenCooling, lessThanUsual } from '../core/method/foreseen-rules.ts';
import { foreseenReheat, type ReheatForeseen } from '../core/method/reheat.ts';
import { verdictOf } from '../core/method/verdict.ts';
import type { Verdict } from '../core/microbes/judge.ts';
import { findRule, type Rule } from '../core/properties/rules.ts';
import { AppError } from './errors.ts';

/** What the engine foresees for one cook step and the chilling that follows it. */
export interface Foreseen {
  readonly lethalityMin: number;
  /** What of it the coldest point has had by lifting out of the heat. */
  readonly lethalityAtLiftOutMin: number;
  readonly neededMin: number;
  readonly passes: boolean;
  /** Why the answer must not be relied on, whatever its number says (a frozen piece). */
  readonly doubts: readonly string[];
  /** The target is the kitchen's own and asks for less than 70 °C for 2 min. */
  readonly ownTarget: boolean;
  /** The six hours on the way up, whether the step names them or not. */
  readonly comeUp: Judgement | null;
  /** The highest temperature anywhere in the piece at any time. */
  readonly warmestC: number;
  /** The rules the cook step is held to, on the coldest point. */
  readonly cooking: readonly Judgement[];
  /** The rules the chill step names, on the warmest point. */
  readonly chilling: readonly Judgement[];
  /** Stages whose goal is not reached in their time. */
  readonly unreached: readonly { readonly name: string; readonly chilling: boolean }[];
  readonly basis: readonly string[];
}

/** What the engine foresees for a finish step with a programme. */
export interface Warmed {
  readonly word: ReheatForeseen['word'];
  readonly startC: number;
  /** The coldest point of the piece at lifting out. */
  readonly coldestC: number;
  /** The rules of reheating the step is held to, at the point that got least. */
  readonly rules: readonly Judgement[];
  readonly doubts: readonly string[];
  readonly unreached: readonly string[];
}

export interface LogRead {
  readonly how: HowRead;
  readonly points: { readonly s: number; readonly C: number }[];
  readonly startedAt: string | null;
  readonly warnings: string[];
  readonly judgements: Judgement[];
}

export type Task =
  | { readonly kind: 'foresee'; readonly method: Method; readonly cookStepId: string }
  | { readonly kind: 'warm'; readonly method: Method; readonly finishStepId: string }
  | {
      readonly kind: 'read log';
      readonly text: string;
      readonly channel: string;
      readonly correction: Readonly<Record<string, unknown>>;
      readonly rules: readonly string[];
    }
  | { readonly kind: 'cook'; readonly input: unknown }
  | { readonly kind: 'fit'; readonly input: unknown }
  | { readonly kind: 'judge'; readonly input: unknown };

export interface Engine {
  foresee(method: Method, cookStepId: string): Promise<Foreseen>;
  warm(method: Method, finishStepId: string): Promise<Warmed>;
  readLog(log: Omit<Extract<Task, { kind: 'read log' }>, 'kind'>): Promise<LogRead>;
  cook(input: unknown): Promise<unknown>;
  fit(input: unknown): Promise<FitAnswer>;
  judge(input: unknown): Promise<Judgement[]>;
}

/** The engine's verbs over whatever carries a task out. */
export const engineOver = (run: (task: Task) => Promise<unknown>): Engine => ({
  foresee: (method, cookStepId) => run({ kind: 'foresee', method, cookStepId }) as Promise<Foreseen>,
  warm: (method, finishStepId) => run({ kind: 'warm', method, finishStepId }) as Promise<Warmed>,
  readLog: (log) => run({ kind: 'read log', ...log }) as Promise<LogRead>,
  cook: (input) => run({ kind: 'cook', input }),
  fit: (input) => run({ kind: 'fit', input }) as Promise<FitAnswer>,
  judge: (input) => run({ kind: 'judge', input }) as Promise<Judgement[]>,
});

/** Carries a task out here and now. Throws `AppError` for an input that the engine refuses. */
export function perform(task: Task): unknown {
  try {
    switch (task.kind) {
      case 'foresee':
        return foresee(task.method, task.cookStepId);
      case 'warm':
        return warm(task.method, task.finishStepId);
      case 'read log':
        return readLog(task);
      case 'cook':
        return runCook(task.input);
      case 'fit':
        return runFit(task.input);
      case 'judge':
        return runJudge(task.input).map(asJudgement);
    }
  } catch (error) {
    throw refusal(error);
  }
}

/** An input that the engine cannot take is the caller's to mend; everything else is a fault. */
function refusal(error: unknown): unknown {
  if (error instanceof InputProblems)
    return new AppError('invalid', 'The engine cannot work with this.', error.problems, error);
  if (error instanceof OutOfRange || error instanceof Contradiction)
    return new AppError('invalid', 'The engine cannot work with this.', [inInputTerms(error)], error);
  return error;
}

function foresee(method: Method, cookStepId: string): Foreseen {
  const step = method.find((s) => s.id === cookStepId) as StepOf<'cook'>;
  const { problem, cookStages } = programmeOf(method, cookStepId);
  const result = cook(problem, { mode: 'fine' });
  const chill = chillStepOf(method, cookStepId);
  const lifted = result.stages[cookStages - 1]?.end ?? 0;
  const verdict = verdictOf(problem, result, cookStages);
  return {
    lethalityMin: result.lethality.s / 60,
    lethalityAtLiftOutMin: verdict.gotAtLiftOut / 60,
    neededMin: problem.target.s / 60,
    passes: result.lethality.passes,
    warmestC: result.history.warmest.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY),
    doubts: verdict.doubts.map((d) => d.what),
    ownTarget: lessThanUsual(problem.target),
    cooking: foreseenCooking(result, rulesOf(rulesOfStep(step))).map(told),
    comeUp: foreseenCooking(result, rulesOf(['us-come-up-6h'])).map(told)[0] ?? null,
    chilling:
      chill === undefined || chill.rules.length === 0
        ? []
        : foreseenCooling(result, rulesOf(chill.rules), { cookEnd: lifted, chillStart: lifted }).map(told),
    unreached: result.stages.flatMap((stage, i) =>
      stage.reached ? [] : [{ name: stage.name, chilling: i >= cookStages }],
    ),
    basis: result.basis.map((b) => b.what),
  };
}

function warm(method: Method, finishStepId: string): Warmed {
  const problem = reheatProblemOf(method, finishStepId);
  const step = method.find((s) => s.id === finishStepId) as StepOf<'finish'>;
  const result = cook(problem, { mode: 'fine' });
  const seen = foreseenReheat(problem, result, rulesOf(rulesOfStep(step)), step.coreC ?? null);
  return {
    word: seen.word,
    startC: problem.start,
    coldestC: seen.coldest,
    rules: seen.rules.map(told),
    doubts: seen.doubts.map((d) => d.what),
    unreached: seen.notReached,
  };
}

function rulesOf(ids: readonly string[]): Rule[] {
  return ids.map((id) => {
    const rule = findRule(id);
    if (rule === undefined)
      throw new InputProblems([
        { path: 'rules', found: JSON.stringify(id), allowed: 'the id of a rule of the book' },
      ]);
    return rule;
  });
}

function readLog(task: Extract<Task, { kind: 'read log' }>): LogRead {
  const rules = rulesOf(task.rules);
  const log = readProbeLog(task.text, task.correction);
  if (log.problems.length > 0 || log.how === null)
    throw new AppError('invalid', 'This file was not read as a probe log.', log.problems);
  const open = log.questions.filter((q) => q.needed);
  if (open.length > 0)
    throw new AppError(
      'invalid',
      'The file can be read in more than one way; say which.',
      open.map((q) => ({
        path: `correction.${q.field}`,
        found: 'nothing',
        allowed: `${q.options.join(' or ')}: ${q.why}`,
      })),
    );
  const channel = log.channels.find((c) => c.name === task.channel);
  if (channel === undefined)
    throw new AppError('invalid', 'The log has no such channel.', [
      {
        path: 'channel',
        found: JSON.stringify(task.channel),
        allowed: log.channels.map((c) => JSON.stringify(c.name)).join(' or '),
      },
    ]);
  const first = channel.points[0]?.s ?? 0;
  const points = channel.points.map(({ s, C }) => ({ s: s - first, C }));
  if (points.length === 0)
    throw new AppError('invalid', 'The channel holds no temperature.', [
      { path: 'channel', found: JSON.stringify(task.channel), allowed: 'a channel with readings' },
    ]);
  return {
    how: log.how,
    points,
    startedAt:
      channel.start === undefined ? null : new Date(Date.parse(channel.start) + first * 1_000).toISOString(),
    warnings: log.warnings.map((w) => (w.line === null ? w.what : `line ${w.line}: ${w.what}`)),
    judgements: judgePoints(points, rules).map(asJudgement),
  };
}

const told = (verdict: Verdict): Judgement => asJudgement(asRuleVerdict(verdict));

/** The part of a verdict that is kept with a record. */
export const asJudgement = (v: ReturnType<typeof judgePoints>[number]): Judgement => ({
  rule: v.rule,
  title: v.title,
  type: v.type,
  place: v.place,
  passes: v.passes,
  value: v.value,
  limit: v.limit,
  unit: v.unit,
  failedAtMin: v.failedAtMin,
  decidingMin: v.decidingMin,
  why: v.why,
  source: v.source,
});
