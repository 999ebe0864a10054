import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { WeighingInput } from '../../../contract/breakdown.ts';
import type { Reading } from '../../../contract/records.ts';
import {
  acknowledged,
  answerMeans,
  backOffMs,
  emptyOutbox,
  entryPrefix,
  joined,
  mostTogether,
  next,
  type Outbox,
  put,
  refused,
  tryAgain,
  unanswered,
} from './outbox.ts';
import { readShelf, type Shelf, writeShelf } from './outbox-storage.ts';

const uuid = (n: number) => `00000000-0000-7000-8000-${String(n).padStart(12, '0')}`;
const to = { kitchenId: uuid(1), batchId: uuid(2), personId: uuid(3), personName: 'Wren' };

const reading = (n: number, more: Partial<Reading> = {}): Reading => ({
  id: uuid(1_000 + n),
  stepId: uuid(4),
  askId: uuid(5),
  kind: 'temperature',
  value: n,
  note: '',
  at: '2030-11-02T10:00:00Z',
  corrects: null,
  ...more,
});

const withReadings = (count: number): Outbox =>
  Array.from({ length: count }, (_, n) => n).reduce(
    (box, n) => put(box, to, { kind: 'reading', reading: reading(n) }),
    emptyOutbox,
  );

class MapShelf implements Shelf {
  readonly map = new Map<string, string>();
  full = false;
  get length() {
    return this.map.size;
  }
  key(i: number) {
    return [...this.map.keys()][i] ?? null;
  }
  getItem(k: string) {
    return this.map.get(k) ?? null;
  }
  setItem(k: string, v: string) {
    if (this.full) throw new Error('QuotaExceededError');
    this.map.set(k, v);
  }
  removeItem(k: string) {
    this.map.delete(k);
  }
}

describe('put', () => {
  it('the same reading put in twice waits once', () => {
    const once = put(emptyOutbox, to, { kind: 'reading', reading: reading(1) });
    expect(put(once, to, { kind: 'reading', reading: reading(1) })).toBe(once);
  });
  it('the same id with another value is a fault, not an overwrite', () => {
    const once = put(emptyOutbox, to, { kind: 'reading', reading: reading(1) });
    expect(() => put(once, to, { kind: 'reading', reading: reading(1, { value: 99 }) })).toThrow(
      /other content/,
    );
  });
});

describe('next', () => {
  it('sends the oldest first and readings of one batch and one person together', () => {
    const box = withReadings(3);
    expect(next(box).map((e) => e.id)).toEqual([uuid(1_000), uuid(1_001), uuid(1_002)]);
  });
  it('never sends one person’s readings under another’s name', () => {
    const box = put(
      withReadings(1),
      { ...to, personId: uuid(9), personName: 'Ash' },
      { kind: 'reading', reading: reading(7) },
    );
    expect(next(box).map((e) => e.personName)).toEqual(['Wren']);
    expect(next(acknowledged(box, [uuid(1_000)])).map((e) => e.personName)).toEqual(['Ash']);
  });
  it('a decision keeps its place between readings', () => {
    const decision = {
      id: uuid(77),
      stepId: uuid(4),
      askId: uuid(5),
      what: 'held longer' as const,
      reason: 'four more minutes',
      at: '2030-11-02T10:01:00Z',
    };
    let box = put(withReadings(1), to, { kind: 'decision', decision });
    box = put(box, to, { kind: 'reading', reading: reading(5) });
    expect(next(box).map((e) => e.kind)).toEqual(['reading']);
    box = acknowledged(box, [uuid(1_000)]);
    expect(next(box).map((e) => e.kind)).toEqual(['decision']);
  });
  it(`takes at most ${mostTogether} at a time`, () => {
    expect(next(withReadings(mostTogether + 5))).toHaveLength(mostTogether);
  });
});

describe('weighings', () => {
  const weighing = (n: number, more: Partial<WeighingInput> = {}): WeighingInput => ({
    id: uuid(2_000 + n),
    node: 'breast',
    animal: null,
    grossGrams: n,
    tareGrams: 0,
    pieces: null,
    corrects: null,
    takenBack: false,
    at: '2030-11-02T10:00:00Z',
    ...more,
  });
  const weigh = (box: Outbox, n: number, more: Partial<WeighingInput> = {}) =>
    put(box, to, { kind: 'weighing', weighing: weighing(n, more) });

  it('go together and never with readings of the same id of record', () => {
    const box = put(weigh(weigh(emptyOutbox, 1), 2), to, { kind: 'reading', reading: reading(3) });
    expect(next(box).map((e) => e.kind)).toEqual(['weighing', 'weighing']);
  });
  it('one taken back waits while what it takes back is refused', () => {
    let box = weigh(weigh(emptyOutbox, 1), 2, { corrects: uuid(2_001), takenBack: true });
    box = refused(refused(box, [uuid(2_001), uuid(2_002)], 'no'), [uuid(2_001)], 'too heavy');
    expect(next(box)).toEqual([]);
    expect(next(tryAgain(box, uuid(2_001))).map((e) => e.id)).toEqual([uuid(2_001)]);
  });
  it('come back from the device as they were put there', () => {
    const shelf = new MapShelf();
    const box = weigh(emptyOutbox, 412, { tareGrams: 12, pieces: 2, animal: 3 });
    expect(writeShelf(shelf, [], box.entries)).toBe(true);
    expect(readShelf(shelf)).toEqual({ entries: box.entries, unreadable: 0 });
  });
});

describe('refused', () => {
  it('of several sent together none is condemned: they go one by one, then only the bad one is kept back', () => {
    const ids = [uuid(1_000), uuid(1_001), uuid(1_002)];
    let box = refused(withReadings(3), ids, 'no such step');
    expect(box.entries.every((e) => e.refused === null)).toBe(true);
    expect(next(box).map((e) => e.id)).toEqual([ids[0]]);
    box = refused(box, [ids[0]!], 'no such step');
    expect(next(box).map((e) => e.id)).toEqual([ids[1]]);
    expect(box.entries).toHaveLength(3);
    expect(box.entries.find((e) => e.id === ids[0])?.refused).toBe('no such step');
  });
  it('tried again, it goes under the id it always had', () => {
    const box = tryAgain(refused(withReadings(1), [uuid(1_000)], 'no'), uuid(1_000));
    expect(next(box).map((e) => e.id)).toEqual([uuid(1_000)]);
  });
  it('a correction of a refused reading waits for it', () => {
    let box = refused(withReadings(1), [uuid(1_000)], 'no');
    box = put(box, to, { kind: 'reading', reading: reading(8, { corrects: uuid(1_000) }) });
    expect(next(box)).toEqual([]);
    expect(next(tryAgain(box, uuid(1_000)))).toHaveLength(2);
  });
});

describe('backOffMs', () => {
  it('tries at once, then waits longer, never over 37.5 s', () => {
    expect(backOffMs(0, 0.5)).toBe(0);
    expect(backOffMs(1, 0.5)).toBe(1_000);
    expect(backOffMs(3, 0.5)).toBe(4_000);
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 10_000 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (n, chance) => {
          const wait = backOffMs(n, chance);
          expect(wait).toBeGreaterThanOrEqual(750);
          expect(wait).toBeLessThanOrEqual(37_500);
        },
      ),
    );
  });
});

describe('answerMeans', () => {
  it('a refusal of the content is told from a server that could not take it', () => {
    expect([400, 404, 409, 413, 422].map(answerMeans)).toEqual(Array(5).fill('refused'));
    expect([401, 403, 408, 429, 500, 502, 503].map(answerMeans)).toEqual(Array(7).fill('unanswered'));
  });
});

describe('the shelf', () => {
  it('survives a reload word for word', () => {
    const shelf = new MapShelf();
    const box = unanswered(withReadings(12), [uuid(1_000)]);
    expect(writeShelf(shelf, [], box.entries)).toBe(true);
    expect(readShelf(shelf).entries).toEqual(box.entries);
  });
  it('says so when the device refuses to keep it', () => {
    const shelf = new MapShelf();
    shelf.full = true;
    expect(writeShelf(shelf, [], withReadings(1).entries)).toBe(false);
  });
  it('leaves what it cannot read where it is', () => {
    const shelf = new MapShelf();
    shelf.map.set(`${entryPrefix}x`, '{"half":');
    shelf.map.set('theme', 'night');
    expect(readShelf(shelf)).toEqual({ entries: [], unreadable: 1 });
    expect(shelf.map.size).toBe(2);
  });
  it('two windows of one device lose nothing of each other’s', () => {
    const shelf = new MapShelf();
    const a = put(emptyOutbox, to, { kind: 'reading', reading: reading(1) });
    const b = put(emptyOutbox, to, { kind: 'reading', reading: reading(2) });
    writeShelf(shelf, [], a.entries);
    writeShelf(shelf, [], b.entries);
    const seen = joined(a, readShelf(shelf).entries, new Set());
    expect(seen.entries.map((e) => e.id).sort()).toEqual([uuid(1_001), uuid(1_002)]);
  });
});

/** A server that is often down, often acknowledges into the void, and refuses some; a phone that is often reloaded. */
describe('the whole way', () => {
  it('each reading is on disk exactly once, in order, under its first id, whatever happens between', () => {
    const happenings = fc.array(
      fc.oneof(
        fc.constant('type' as const),
        fc.constant('down' as const),
        fc.constant('answer lost' as const),
        fc.constant('works' as const),
        fc.constant('reload' as const),
      ),
      { maxLength: 80 },
    );
    fc.assert(
      fc.property(happenings, (events) => {
        const shelf = new MapShelf();
        const disk: string[] = [];
        let box = emptyOutbox;
        let typed = 0;
        const set = (after: Outbox) => {
          writeShelf(shelf, box.entries, after.entries);
          box = after;
        };
        const write = (ids: string[]) => {
          for (const id of ids) if (!disk.includes(id)) disk.push(id);
        };
        for (const event of [...events, ...Array(60).fill('works')]) {
          if (event === 'type') set(put(box, to, { kind: 'reading', reading: reading(typed++) }));
          else if (event === 'reload') box = { entries: readShelf(shelf).entries };
          else {
            const ids = next(box).map((e) => e.id);
            if (ids.length === 0) continue;
            if (event === 'answer lost') write(ids);
            if (event === 'works') {
              write(ids);
              set(acknowledged(box, ids));
            } else set(unanswered(box, ids));
          }
        }
        expect(disk).toEqual(Array.from({ length: typed }, (_, n) => uuid(1_000 + n)));
        expect(box.entries).toEqual([]);
        expect(shelf.length).toBe(0);
      }),
    );
  });
});
