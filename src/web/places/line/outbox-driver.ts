/** The outbox at work: one for the device. Sends in order, waits longer after each silence, and never forgets. */
import { useSyncExternalStore } from 'react';
import { call, keyOf, queryClient, Refusal } from '../../api.ts';
import {
  type Addressed,
  acknowledged,
  answerMeans,
  backOffMs,
  type Entry,
  emptyOutbox,
  entryPrefix,
  joined,
  next,
  type Outbox,
  type Outgoing,
  put,
  refused,
  tryAgain,
  unanswered,
} from './outbox.ts';
import { putAside, readShelf, writeShelf } from './outbox-storage.ts';

export interface OutboxState {
  readonly entries: readonly Entry[];
  readonly sending: boolean;
  /** Why the last try brought no answer; null when the last one did. */
  readonly silence: string | null;
  /** False: this device refuses to store what is typed, so it lives only as long as this page. */
  readonly storable: boolean;
  /** Entries on this device that could not be read; left where they are. */
  readonly unreadable: number;
}

const patienceMs = 20_000;

let box: Outbox = emptyOutbox;
let state: OutboxState = { entries: [], sending: false, silence: null, storable: true, unreadable: 0 };
let timer: ReturnType<typeof setTimeout> | undefined;
/** Put in by this window: where the device stores nothing, they live here alone. */
const mine = new Set<string>();
const listeners = new Set<() => void>();

function tell(change: Partial<OutboxState>): void {
  state = { ...state, ...change };
  for (const listener of listeners) listener();
}

function commit(after: Outbox): void {
  let storable = false;
  try {
    storable = writeShelf(localStorage, box.entries, after.entries);
  } catch {
    storable = false;
  }
  box = after;
  tell({ entries: box.entries, storable });
}

function reread(): void {
  try {
    const stored = readShelf(localStorage);
    // What another window has taken out was sent; only what this device could not store is ours alone.
    box = joined(box, stored.entries, state.storable ? new Set() : mine);
    tell({ entries: box.entries, unreadable: stored.unreadable });
  } catch {
    tell({ storable: false });
  }
}

/** The record as the server holds it now, where its answer says so. */
async function post(group: readonly Entry[]): Promise<{ ids: string[]; record: object | null }> {
  const first = group[0] as Entry;
  if (first.kind === 'weighing') {
    const weighings = group.flatMap((e) => (e.kind === 'weighing' ? [e.weighing] : []));
    const record = await call('weigh', {
      params: { kitchenId: first.kitchenId, breakdownId: first.batchId },
      as: first.personId,
      signal: AbortSignal.timeout(patienceMs),
      body: { weighings },
    });
    return { ids: weighings.map((w) => w.id), record };
  }
  const to = {
    params: { kitchenId: first.kitchenId, batchId: first.batchId },
    as: first.personId,
    signal: AbortSignal.timeout(patienceMs),
  };
  if (first.kind === 'reading') {
    const readings = group.flatMap((e) => (e.kind === 'reading' ? [e.reading] : []));
    const answer = await call('record', { ...to, body: { readings } });
    return { ids: answer.recorded, record: answer.batch };
  }
  if (first.kind === 'decision') {
    return { ids: [first.id], record: await call('decide', { ...to, body: first.decision }) };
  }
  const { id, dishId, stepId, name, text, channel, rules } = first.log;
  const whose = { id, dishId, stepId, batchId: first.batchId, trialId: null };
  await call('importLog', {
    ...to,
    params: { kitchenId: first.kitchenId },
    body: { ...whose, name, text, channel, correction: {}, rules: [...rules] },
  });
  return { ids: [id], record: null };
}

const wordsOf = (refusal: Refusal): string =>
  [refusal.message, ...refusal.problems.map((p) => `${p.path}: found ${p.found}, allowed ${p.allowed}`)].join(
    ' ',
  );

async function pump(): Promise<void> {
  clearTimeout(timer);
  const group = next(box);
  if (state.sending || group.length === 0) return;
  const ids = group.map((e) => e.id);
  const first = group[0] as Entry;
  const { kitchenId, batchId } = first;
  const weighed = first.kind === 'weighing';
  const queryKey = weighed
    ? keyOf('breakdown', { params: { kitchenId, breakdownId: batchId } })
    : keyOf('batch', { params: { kitchenId, batchId } });
  tell({ sending: true });
  try {
    const answer = await post(group);
    await queryClient.cancelQueries({ queryKey });
    if (answer.record !== null) queryClient.setQueryData(queryKey, answer.record);
    // A log is shown from the batch: it leaves the box when the batch that holds it has been read.
    else await queryClient.refetchQueries({ queryKey });
    const written = new Set(answer.ids);
    const silent = ids.filter((id) => !written.has(id));
    commit(unanswered(acknowledged(box, answer.ids), silent));
    tell({ sending: false, silence: null });
    void queryClient.invalidateQueries({ queryKey: [weighed ? 'breakdowns' : 'batches'] });
  } catch (error) {
    if (error instanceof Refusal && answerMeans(error.status) === 'refused') {
      commit(refused(box, ids, wordsOf(error)));
      tell({ sending: false, silence: null });
    } else {
      commit(unanswered(box, ids));
      tell({ sending: false, silence: error instanceof Error ? error.message : String(error) });
    }
  }
  schedule();
}

function schedule(): void {
  clearTimeout(timer);
  const first = next(box)[0];
  if (first === undefined) return;
  timer = setTimeout(() => void pump(), backOffMs(state.silence === null ? 0 : first.tries, Math.random()));
}

/** Keeps it on this device, then sends it. What is returned is not an acknowledgement. */
export function keepAndSend(to: Addressed, what: Outgoing): void {
  const after = put(box, to, what);
  const entry = after.entries.at(-1);
  if (entry !== undefined) mine.add(entry.id);
  commit(after);
  void pump();
}

export function sendAgain(id: string): void {
  commit(tryAgain(box, id));
  void pump();
}

/** A refused entry leaves the queue for a place of its own on this device; it is not deleted. */
export function putAway(entry: Entry): void {
  if (!putAside(localStorage, entry)) return;
  mine.delete(entry.id);
  commit(acknowledged(box, [entry.id]));
}

export const sendNow = (): void => void pump();

export function useOutbox(): OutboxState {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => state,
  );
}

if (typeof window !== 'undefined') {
  reread();
  window.addEventListener('storage', (event) => {
    if (event.key === null || event.key.startsWith(entryPrefix)) reread();
  });
  window.addEventListener('online', sendNow);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') sendNow();
  });
  schedule();
}
