/**
 * Where a batch stands: the server's records with what is still waiting on this device laid over them, step by step.
 * What blocks closing is the server's word (`batch.blocking`); this only says what to do next and what to shout about.
 */
import type { Batch, Decision, Judgement, ProbeLog, RecordedReading } from '../../../contract/records.ts';
import type { Ask, Step } from '../../../contract/steps.ts';
import { cautiousFor, isBroken, judgeSeries, rulesOf, seriesOf } from './core-log.ts';
import type { Entry } from './outbox.ts';

export type Holds = RecordedReading['holds'];

/** Against the limits of the step: a value at the limit is in. A tick or a note has no limit to break. */
export function holdsAgainst(ask: Pick<Ask, 'low' | 'high'>, value: number | null): Holds {
  if (value === null || (ask.low === undefined && ask.high === undefined)) return 'no limit';
  if (!Number.isFinite(value)) return 'out';
  if (ask.low !== undefined && value < ask.low) return 'out';
  return ask.high !== undefined && value > ask.high ? 'out' : 'in';
}

/** One line of the record as the screen shows it. */
export interface Line extends Omit<RecordedReading, 'recordedAt'> {
  /** null: not acknowledged yet. */
  readonly recordedAt: string | null;
  readonly sending: 'sent' | 'not sent yet' | 'refused';
  readonly refusal: string | null;
  /** The line that took this one's place, if any: the old one stays, struck through. */
  readonly correctedBy: string | null;
}

export interface Ruling extends Decision {
  readonly sending: Line['sending'];
  readonly refusal: string | null;
}

export interface Records {
  readonly lines: readonly Line[];
  readonly rulings: readonly Ruling[];
  readonly logs: readonly ProbeLog[];
  /** Steps for which a log typed here is still waiting to be sent. */
  readonly logsWaiting: readonly { readonly stepId: string; readonly refusal: string | null }[];
}

const sendingOf = (e: Entry): Line['sending'] => (e.refused === null ? 'not sent yet' : 'refused');

export function recordsOf(batch: Batch, waiting: readonly Entry[]): Records {
  const asks = new Map(batch.method.flatMap((s) => s.asks.map((a) => [a.id, a] as const)));
  const here = waiting.filter((e) => e.batchId === batch.id);
  const known = new Set([...batch.readings.map((r) => r.id), ...batch.decisions.map((d) => d.id)]);
  const lines: Omit<Line, 'correctedBy'>[] = batch.readings.map((r) => ({
    ...r,
    sending: 'sent',
    refusal: null,
  }));
  const rulings: Ruling[] = batch.decisions.map((d) => ({ ...d, sending: 'sent', refusal: null }));
  const logsWaiting: { stepId: string; refusal: string | null }[] = [];
  for (const e of here) {
    if (known.has(e.id)) continue;
    const how = { sending: sendingOf(e), refusal: e.refused } as const;
    if (e.kind === 'reading') {
      const ask = asks.get(e.reading.askId);
      const holds = ask === undefined ? 'no limit' : holdsOf(ask, e.reading.value);
      lines.push({ ...e.reading, by: e.personName, recordedAt: null, holds, ...how });
    } else if (e.kind === 'decision') rulings.push({ ...e.decision, by: e.personName, ...how });
    else if (e.kind === 'log' && !batch.logs.some((l) => l.id === e.id))
      logsWaiting.push({ stepId: e.log.stepId, refusal: e.refused });
  }
  // A correction that the server has refused has not corrected anything.
  const correctedBy = new Map(
    lines
      .filter((l) => l.corrects !== null && l.sending !== 'refused')
      .map((l) => [l.corrects, l.id] as const),
  );
  const byTime = (a: { at: string }, b: { at: string }) => Date.parse(a.at) - Date.parse(b.at);
  return {
    lines: lines.map((l) => ({ ...l, correctedBy: correctedBy.get(l.id) ?? null })).sort(byTime),
    rulings: rulings.sort(byTime),
    logs: [...batch.logs].sort((a, b) => Date.parse(a.importedAt) - Date.parse(b.importedAt)),
    logsWaiting,
  };
}

/** A single core reading is on its way to its limit, not out of it: the whole log is what is judged. */
const holdsOf = (ask: Ask, value: number | null): Holds =>
  ask.kind === 'core log' ? 'no limit' : holdsAgainst(ask, value);

/** The lines of one ask that stand (not corrected, not refused), oldest first. */
export const standing = (records: Records, askId: string): Line[] =>
  records.lines.filter((l) => l.askId === askId && l.correctedBy === null && l.sending !== 'refused');

export type AskState = 'to do' | 'in' | 'recorded' | 'going on' | 'out' | 'decide' | 'decided' | 'undecided';

/** Of a log against all its rules: one that fails fails it; one that could not be decided leaves it undecided. */
export function logHolds(judgements: readonly Judgement[]): boolean | null {
  if (judgements.some((j) => j.passes === false)) return false;
  return judgements.length > 0 && judgements.every((j) => j.passes === true) ? true : null;
}

const ruledAfter = (records: Records, step: Step, ask: Ask, at: string): boolean =>
  records.rulings.some(
    (d) =>
      d.sending !== 'refused' &&
      d.stepId === step.id &&
      (d.askId === ask.id || d.askId === null) &&
      Date.parse(d.at) >= Date.parse(at),
  );

/** A core by all its logs: the kept ones, and the readings typed so far. Every rule must hold in one of them. */
function coreState(records: Records, step: Step, ask: Ask, stands: readonly Line[]): AskState {
  const rules = rulesOf(step);
  const logs = records.logs.filter((l) => l.stepId === step.id);
  const typed = judgeSeries(seriesOf(stands, cautiousFor(step)), rules).verdicts;
  const failed = logs.filter((l) => l.judgements.some((j) => j.passes === false));
  const open = failed.filter((l) => !ruledAfter(records, step, ask, l.importedAt));
  const broken = typed.some(isBroken);
  const lastAt = stands.at(-1)?.at;
  if (open.length > 0) return 'decide';
  if (broken && lastAt !== undefined && !ruledAfter(records, step, ask, lastAt)) return 'decide';
  const all = [...logs.map((l) => l.judgements), ...(stands.length > 1 ? [typed] : [])].flat();
  const holds = rules.length > 0 && rules.every((r) => all.some((j) => j.rule === r && j.passes === true));
  if (holds) return 'in';
  if (broken || failed.length > 0) return 'decided';
  if (logs.length > 0) return 'undecided';
  return stands.length > 0 || records.logsWaiting.some((l) => l.stepId === step.id) ? 'going on' : 'to do';
}

export function askState(records: Records, step: Step, ask: Ask): AskState {
  const stands = standing(records, ask.id);
  if (ask.kind === 'core log') return coreState(records, step, ask, stands);
  const out = stands.filter((l) => l.holds === 'out');
  const open = out.filter((l) => !ruledAfter(records, step, ask, l.at));
  if (open.length > 0) return ask.critical === true ? 'decide' : 'out';
  if (out.length > 0) return 'decided';
  const last = stands.at(-1);
  if (last === undefined) return 'to do';
  return last.holds === 'in' ? 'in' : 'recorded';
}

export type StepState =
  | 'nothing to record'
  | 'to do'
  | 'begun'
  | 'done'
  | 'recorded, out'
  | 'needs a decision';

export interface StepProgress {
  readonly step: Step;
  readonly state: StepState;
  readonly asks: readonly { readonly ask: Ask; readonly state: AskState }[];
  readonly left: number;
}

/** Decided or not, what was out of its limit is never drawn like what was in. */
const isOut = (s: AskState): boolean => s === 'out' || s === 'decided';

const answered = (s: AskState): boolean => s === 'in' || s === 'recorded' || s === 'decided' || s === 'out';

export function progressOf(method: readonly Step[], records: Records): StepProgress[] {
  return method.map((step) => {
    const asks = step.asks.map((ask) => ({ ask, state: askState(records, step, ask) }));
    const left = asks.filter((a) => !answered(a.state)).length;
    const begun = asks.some((a) => a.state !== 'to do');
    let state: StepState = 'to do';
    if (asks.length === 0) state = 'nothing to record';
    else if (asks.some((a) => a.state === 'decide')) state = 'needs a decision';
    else if (left === 0) state = asks.some((a) => isOut(a.state)) ? 'recorded, out' : 'done';
    else if (begun) state = 'begun';
    return { step, state, asks, left };
  });
}

/** The step to open first: one that needs a decision, else the first with something left to record, else the last. */
export function stepNow(progress: readonly StepProgress[]): number {
  const decide = progress.findIndex((p) => p.state === 'needs a decision');
  if (decide >= 0) return decide;
  const open = progress.findIndex((p) => p.left > 0);
  return open >= 0 ? open : Math.max(0, progress.length - 1);
}
