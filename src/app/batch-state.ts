/** What a batch still asks for, and what stops it from being closed as fit to serve. Pure: records in, sentences out. */
import { judgePoints } from '../contract/judge.ts';
import type { Judgement } from '../contract/records.ts';
import { measuresCore, rulesOfStep } from '../contract/step-rules.ts';
import type { Ask, Method, Step } from '../contract/steps.ts';
import { findRule } from '../core/properties/rules.ts';

export interface ReadingRecord {
  readonly id: string;
  readonly stepId: string;
  readonly askId: string;
  readonly kind: string;
  readonly value: number | null;
  readonly at: Date;
  readonly corrects: string | null;
  readonly recordedAt: Date;
  readonly holds: string;
}

export interface DecisionRecord {
  readonly stepId: string;
  readonly askId: string | null;
  readonly what: string;
  readonly reason: string;
  readonly recordedAt: Date;
}

export interface LogRecord {
  readonly stepId: string | null;
  readonly name: string;
  readonly judgements: readonly Judgement[];
  readonly importedAt: Date;
}

export interface BatchRecords {
  readonly method: Method;
  /** Readings and decisions in the order in which they were written down. */
  readonly readings: readonly ReadingRecord[];
  readonly decisions: readonly DecisionRecord[];
  readonly logs: readonly LogRecord[];
}

export interface BatchState {
  /** Asks without an answer. */
  readonly open: number;
  /** Readings that stand and are out of their limit. */
  readonly out: number;
  readonly blocking: readonly string[];
}

const units: Readonly<Record<string, string>> = {
  weight: ' g',
  temperature: ' °C',
  duration: ' min',
  count: '',
  tick: '',
};

/** Against the limits of the ask: a limit itself is inside. */
export function holdsOf(ask: Ask, value: number | null): 'in' | 'out' | 'no limit' {
  if (ask.kind === 'core log' || value === null || (ask.low === undefined && ask.high === undefined))
    return 'no limit';
  const inside = (ask.low === undefined || value >= ask.low) && (ask.high === undefined || value <= ask.high);
  return inside ? 'in' : 'out';
}

export function limitOf(ask: Ask): string {
  const unit = units[ask.kind] ?? '';
  if (ask.low !== undefined && ask.high !== undefined) return `${ask.low} to ${ask.high}${unit}`;
  if (ask.low !== undefined) return `at least ${ask.low}${unit}`;
  return ask.high === undefined ? 'no limit' : `at most ${ask.high}${unit}`;
}

export function stateOf(records: BatchRecords): BatchState {
  const corrected = new Set(records.readings.flatMap((r) => (r.corrects === null ? [] : [r.corrects])));
  const standing = records.readings.filter((r) => !corrected.has(r.id));
  const blocking: string[] = [];
  let open = 0;
  for (const step of records.method) {
    if (step.kind === 'cook' && !measuresCore(step)) blocking.push(...unmeasured(step, records.logs));
    for (const ask of step.asks) {
      const answers = standing.filter((r) => r.stepId === step.id && r.askId === ask.id);
      const logs = ask.kind === 'core log' ? records.logs.filter((log) => log.stepId === step.id) : [];
      if (answers.length === 0 && logs.length === 0) open++;
      blocking.push(
        ...(ask.kind === 'core log'
          ? coreLogBlocks(step, ask, answers, logs, records.decisions)
          : readingBlocks(step, ask, answers, records.decisions)),
      );
    }
  }
  blocking.push(...decisionBlocks(records));
  return { open, out: standing.filter((r) => r.holds === 'out').length, blocking };
}

const about = (decision: DecisionRecord, step: Step, ask: Ask) =>
  decision.stepId === step.id && (decision.askId === null || decision.askId === ask.id);

const decidedSince = (decisions: readonly DecisionRecord[], step: Step, ask: Ask, since: Date) =>
  decisions.some((d) => about(d, step, ask) && d.recordedAt >= since);

function readingBlocks(
  step: Step,
  ask: Ask,
  answers: readonly ReadingRecord[],
  decisions: readonly DecisionRecord[],
): string[] {
  if (ask.critical !== true) return [];
  if (answers.length === 0) return [`${step.name}: "${ask.label}" has not been recorded.`];
  return answers.flatMap((r) => {
    if (r.holds !== 'out') return [];
    const is = `${step.name}: "${ask.label}" is ${r.value}${units[ask.kind] ?? ''}, allowed ${limitOf(ask)}`;
    if (!decidedSince(decisions, step, ask, r.recordedAt)) return [`${is}; say what was done.`];
    // What was done about a temperature is shown by measuring it again; a decision alone makes nothing cold or hot.
    const since = answers.some((a) => a.holds === 'in' && a.recordedAt > r.recordedAt);
    return ask.kind === 'temperature' && !since
      ? [`${is}; something was done about it, but it has not been measured again within its limit.`]
      : [];
  });
}

function coreLogBlocks(
  step: Step,
  ask: Ask,
  answers: readonly ReadingRecord[],
  logs: readonly LogRecord[],
  decisions: readonly DecisionRecord[],
): string[] {
  const rules = rulesOfStep(step);
  const blocks = logs
    .filter(
      (log) =>
        log.judgements.some((j) => j.passes === false) && !decidedSince(decisions, step, ask, log.importedAt),
    )
    .map(
      (log) =>
        `${step.name}: the log ${log.name} does not hold (${whyNot(log.judgements)}); say what was done.`,
    );
  // While food is cooked the core is always shown; elsewhere where the method calls it critical.
  if (step.kind !== 'cook' && ask.critical !== true) return blocks;
  const typed = judgeTyped(answers, rules);
  const all = [...logs.map((log) => log.judgements), ...(typed === null ? [] : [typed])];
  if (all.length === 0) return [...blocks, `${step.name}: there is no core log yet ("${ask.label}").`];
  if (rules.length === 0) return [...blocks, `${step.name}: the core log has no rule to be judged by.`];
  for (const rule of rules) {
    const verdicts = all.flatMap((judgements) => judgements.filter((j) => j.rule === rule));
    if (!verdicts.some((v) => v.passes === true))
      blocks.push(
        `${step.name}: no core log holds against ${verdicts.at(-1)?.title ?? rule}: ${verdicts.at(-1)?.why ?? 'not judged'}`,
      );
  }
  return blocks;
}

/** A version signed before the core had to be measured: only a log kept with the step shows that it was cooked. */
function unmeasured(step: Step, logs: readonly LogRecord[]): string[] {
  const judged = logs.filter((log) => log.stepId === step.id).flatMap((log) => log.judgements);
  return rulesOfStep(step)
    .filter((rule) => !judged.some((j) => j.rule === rule && j.passes === true))
    .map(
      (rule) =>
        `${step.name}: nothing measures the core, and no log kept with it holds against ${findRule(rule)?.title ?? rule}.`,
    );
}

/** What was out of its limit, or did not hold, although the batch may be closed: said wherever it is closed. */
export function outAndDecided(records: BatchRecords): string[] {
  const corrected = new Set(records.readings.flatMap((r) => (r.corrects === null ? [] : [r.corrects])));
  const said: string[] = [];
  for (const step of records.method)
    for (const ask of step.asks) {
      for (const r of records.readings)
        if (r.askId === ask.id && r.stepId === step.id && r.holds === 'out' && !corrected.has(r.id))
          said.push(
            `${step.name}: "${ask.label}" was ${r.value}${units[ask.kind] ?? ''}, allowed ${limitOf(ask)}`,
          );
    }
  for (const log of records.logs)
    if (log.judgements.some((j) => j.passes === false))
      said.push(`the log ${log.name} did not hold (${whyNot(log.judgements)})`);
  return said;
}

const whyNot = (judgements: readonly Judgement[]) =>
  judgements
    .filter((j) => j.passes === false)
    .map((j) => j.title)
    .join(', ');

/** Readings of the core typed one by one are a log too, once there are two. */
function judgeTyped(answers: readonly ReadingRecord[], rules: readonly string[]): Judgement[] | null {
  const ordered = answers.filter((r) => r.value !== null).sort((a, b) => a.at.getTime() - b.at.getTime());
  const first = ordered[0];
  if (first === undefined) return null;
  const points: { s: number; C: number }[] = [];
  for (const { at, value } of ordered) {
    const s = (at.getTime() - first.at.getTime()) / 1_000;
    const last = points.at(-1);
    // Two readings of one moment: the colder counts.
    if (last !== undefined && last.s === s) last.C = Math.min(last.C, value as number);
    else points.push({ s, C: value as number });
  }
  if (points.length < 2) return null;
  return judgePoints(
    points,
    rules.flatMap((id) => findRule(id) ?? []),
  );
}

/** Two decisions stand in the way by themselves: thrown away is for ever, kept back is until another is taken. */
function decisionBlocks({ method, decisions }: BatchRecords): string[] {
  const nameOf = (id: string) => method.find((step) => step.id === id)?.name ?? 'a step';
  return decisions.flatMap((d, i) => {
    if (d.what === 'discarded')
      return [
        `${nameOf(d.stepId)}: it was decided to discard (${d.reason}); it can only be closed as discarded.`,
      ];
    const later = decisions
      .slice(i + 1)
      .some((e) => e.stepId === d.stepId && (e.askId === null || e.askId === d.askId));
    return d.what === 'kept back to ask' && !later
      ? [`${nameOf(d.stepId)}: kept back to ask (${d.reason}); nobody has decided since.`]
      : [];
  });
}
