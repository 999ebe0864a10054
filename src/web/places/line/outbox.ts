/**
 * What has been typed and not yet been acknowledged. An entry keeps the id it was given when the thumb left the key, so
 * that sending it twice writes it once; it leaves the box only when the server has said that it is on disk.
 * Pure: the clock, the storage and the network are handed in.
 */
import type { WeighingInput } from '../../../contract/breakdown.ts';
import type { Decision, Reading } from '../../../contract/records.ts';

/** A core log made on this device from readings typed one by one; the server reads the text again for itself. */
export interface TypedLog {
  readonly id: string;
  readonly dishId: string;
  readonly stepId: string;
  readonly name: string;
  readonly text: string;
  readonly channel: string;
  readonly rules: readonly string[];
}

export type Outgoing =
  | { readonly kind: 'reading'; readonly reading: Reading }
  | { readonly kind: 'decision'; readonly decision: Omit<Decision, 'by'> }
  | { readonly kind: 'log'; readonly log: TypedLog }
  | { readonly kind: 'weighing'; readonly weighing: WeighingInput };

export type Entry = Outgoing & {
  readonly id: string;
  readonly kitchenId: string;
  /** The batch it belongs to; of a weighing, the breakdown. */
  readonly batchId: string;
  /** Who typed it: sent under this name even if somebody else holds the phone by then. */
  readonly personId: string;
  readonly personName: string;
  /** Place in the queue; later entries may rest on earlier ones (a correction, a decision). */
  readonly order: number;
  readonly tries: number;
  /** It was among several that the server refused together: goes by itself, so that the bad one is found. */
  readonly alone: boolean;
  /** The server looked at it and said no: kept and shown, sent again only when somebody says so. */
  readonly refused: string | null;
};

/** One key of the device's storage for each entry. */
export const entryPrefix = 'fq.outbox.';

export interface Outbox {
  readonly entries: readonly Entry[];
}

export const emptyOutbox: Outbox = { entries: [] };

export function idOf(what: Outgoing): string {
  if (what.kind === 'reading') return what.reading.id;
  if (what.kind === 'weighing') return what.weighing.id;
  return what.kind === 'decision' ? what.decision.id : what.log.id;
}

const sameContent = (a: Outgoing, b: Outgoing): boolean =>
  JSON.stringify(contentOf(a)) === JSON.stringify(contentOf(b));

function contentOf(what: Outgoing): unknown {
  if (what.kind === 'reading') return ['reading', what.reading];
  if (what.kind === 'weighing') return ['weighing', what.weighing];
  return what.kind === 'decision' ? ['decision', what.decision] : ['log', what.log];
}

const inOrder = (entries: readonly Entry[]): Entry[] =>
  [...entries].sort((a, b) => a.order - b.order || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));

export interface Addressed {
  readonly kitchenId: string;
  readonly batchId: string;
  readonly personId: string;
  readonly personName: string;
}

/** Puts something at the end of the queue. The same id again changes nothing; the same id with other content is a fault. */
export function put(box: Outbox, to: Addressed, what: Outgoing): Outbox {
  const id = idOf(what);
  const there = box.entries.find((e) => e.id === id);
  if (there !== undefined) {
    if (sameContent(there, what)) return box;
    throw new TypeError(
      `outbox: ${id} is already waiting with other content; a correction needs an id of its own`,
    );
  }
  const order = box.entries.reduce((most, e) => Math.max(most, e.order), 0) + 1;
  const { kitchenId, batchId, personId, personName } = to;
  const entry: Entry = {
    ...what,
    id,
    kitchenId,
    batchId,
    personId,
    personName,
    order,
    tries: 0,
    alone: false,
    refused: null,
  };
  return { entries: [...box.entries, entry] };
}

/** Readings go together, and so do weighings, up to this many in one request; everything else goes alone. */
export const mostTogether = 100;

/**
 * What to send next: the oldest entry that nobody refused, with those of its kind that directly follow it for the same
 * batch or breakdown under the same name.
 */
export function next(box: Outbox): readonly Entry[] {
  const waiting = inOrder(box.entries).filter((e) => e.refused === null && !heldBack(box, e));
  const first = waiting[0];
  if (first === undefined) return [];
  if ((first.kind !== 'reading' && first.kind !== 'weighing') || first.alone) return [first];
  const together: Entry[] = [];
  for (const e of waiting) {
    const belongs =
      e.kind === first.kind &&
      !e.alone &&
      e.kitchenId === first.kitchenId &&
      e.batchId === first.batchId &&
      e.personId === first.personId;
    if (!belongs || together.length === mostTogether) break;
    together.push(e);
  }
  return together;
}

const correctedBy = (entry: Entry): string | null => {
  if (entry.kind === 'reading') return entry.reading.corrects;
  return entry.kind === 'weighing' ? entry.weighing.corrects : null;
};

/** A correction of a line that the server has refused has nothing to name: it waits until that is settled. */
function heldBack(box: Outbox, entry: Entry): boolean {
  const named = correctedBy(entry);
  if (named === null) return false;
  return box.entries.some((e) => e.id === named && e.refused !== null);
}

/** The server has them on disk. Only the ids it names leave the box. */
export function acknowledged(box: Outbox, ids: readonly string[]): Outbox {
  const gone = new Set(ids);
  return { entries: box.entries.filter((e) => !gone.has(e.id)) };
}

/** No answer, or an answer that says nothing about the content (server down, no signal): they stay where they are. */
export function unanswered(box: Outbox, ids: readonly string[]): Outbox {
  const tried = new Set(ids);
  return { entries: box.entries.map((e) => (tried.has(e.id) ? { ...e, tries: e.tries + 1 } : e)) };
}

/**
 * The server refused the content. Of several sent together it is not known which one it means: they then go one
 * by one. One that was sent alone is kept with the server's words.
 */
export function refused(box: Outbox, ids: readonly string[], why: string): Outbox {
  if (ids.length > 1) {
    const together = new Set(ids);
    return { entries: box.entries.map((e) => (together.has(e.id) ? { ...e, alone: true } : e)) };
  }
  const id = ids[0];
  return {
    entries: box.entries.map((e) => (e.id === id ? { ...e, tries: e.tries + 1, refused: why } : e)),
  };
}

/** Somebody asks for it to be tried again, unchanged and under the same id. */
export function tryAgain(box: Outbox, id: string): Outbox {
  return { entries: box.entries.map((e) => (e.id === id ? { ...e, refused: null } : e)) };
}

/** Joins what another window of the same device has put in or taken out: `stored` is the whole of what is stored now. */
export function joined(box: Outbox, stored: readonly Entry[], mine: ReadonlySet<string>): Outbox {
  const byId = new Map(stored.map((e) => [e.id, e]));
  for (const e of box.entries) if (!byId.has(e.id) && mine.has(e.id)) byId.set(e.id, e);
  return { entries: inOrder([...byId.values()]) };
}

/**
 * Wait before the next try [ms]: 1 s, doubling to 30 s, spread by ±25 % so that several phones don't knock together.
 * @param tries how often the oldest entry has been tried, from 0
 * @param chance 0 … 1
 */
export function backOffMs(tries: number, chance: number): number {
  if (tries <= 0) return 0;
  const base = Math.min(30_000, 1_000 * 2 ** Math.min(tries - 1, 10));
  return Math.round(base * (0.75 + 0.5 * Math.min(1, Math.max(0, chance))));
}

/** What an HTTP status says about the content that was sent. */
export function answerMeans(status: number): 'refused' | 'unanswered' {
  const passing = status === 401 || status === 403 || status === 408 || status === 425 || status === 429;
  return status >= 400 && status < 500 && !passing ? 'refused' : 'unanswered';
}
