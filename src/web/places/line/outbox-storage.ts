/**
 * The outbox on the device: one key for each entry, so that two windows of the same phone never overwrite one another.
 * Something stored that cannot be read is left where it is and counted, never deleted.
 */
import { z } from 'zod';
import { WeighingInput } from '../../../contract/breakdown.ts';
import { Decision, Reading } from '../../../contract/records.ts';
import { type Entry, entryPrefix } from './outbox.ts';

const envelope = {
  id: z.string(),
  kitchenId: z.string(),
  batchId: z.string(),
  personId: z.string(),
  personName: z.string(),
  order: z.number(),
  tries: z.number(),
  alone: z.boolean(),
  refused: z.string().nullable(),
};

const StoredEntry = z.discriminatedUnion('kind', [
  z.object({ ...envelope, kind: z.literal('reading'), reading: Reading }),
  z.object({ ...envelope, kind: z.literal('decision'), decision: Decision.omit({ by: true }) }),
  z.object({ ...envelope, kind: z.literal('weighing'), weighing: WeighingInput }),
  z.object({
    ...envelope,
    kind: z.literal('log'),
    log: z.object({
      id: z.string(),
      dishId: z.string(),
      stepId: z.string(),
      name: z.string(),
      text: z.string(),
      channel: z.string(),
      rules: z.array(z.string()),
    }),
  }),
]);

/** The part of the browser's storage that is used; in tests a map. */
export interface Shelf {
  readonly length: number;
  key(index: number): string | null;
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
  removeItem(key: string): void;
}

/** Everything on the shelf, and how many entries could not be read. */
export function readShelf(shelf: Shelf): { entries: Entry[]; unreadable: number } {
  const entries: Entry[] = [];
  let unreadable = 0;
  for (let i = 0; i < shelf.length; i++) {
    const key = shelf.key(i);
    if (key === null || !key.startsWith(entryPrefix)) continue;
    const entry = parseEntry(shelf.getItem(key));
    if (entry === null) unreadable += 1;
    else entries.push(entry);
  }
  entries.sort((a, b) => a.order - b.order);
  return { entries, unreadable };
}

export function parseEntry(text: string | null): Entry | null {
  if (text === null) return null;
  try {
    const parsed = StoredEntry.safeParse(JSON.parse(text));
    return parsed.success ? parsed.data : null;
  } catch {
    return null;
  }
}

/** Brings the shelf to where the box is. False: this device refuses to keep it (full, or storage is switched off). */
export function writeShelf(shelf: Shelf, before: readonly Entry[], after: readonly Entry[]): boolean {
  const was = new Map(before.map((e) => [e.id, e]));
  let kept = true;
  for (const e of after) {
    if (was.get(e.id) !== e) {
      try {
        shelf.setItem(entryPrefix + e.id, JSON.stringify(e));
      } catch {
        kept = false;
      }
    }
    was.delete(e.id);
  }
  for (const id of was.keys()) {
    try {
      shelf.removeItem(entryPrefix + id);
    } catch {
      kept = false;
    }
  }
  return kept;
}

export const asidePrefix = 'fq.put-away.';

/** Moves an entry out of the queue to where nothing sends it; false when the device would not take it. */
export function putAside(shelf: Shelf, entry: Entry): boolean {
  try {
    shelf.setItem(asidePrefix + entry.id, JSON.stringify(entry));
    return true;
  } catch {
    return false;
  }
}

export function readAside(shelf: Shelf): Entry[] {
  const found: Entry[] = [];
  for (let i = 0; i < shelf.length; i++) {
    const key = shelf.key(i);
    if (key?.startsWith(asidePrefix)) {
      const entry = parseEntry(shelf.getItem(key));
      if (entry !== null) found.push(entry);
    }
  }
  return found.sort((a, b) => a.order - b.order);
}
