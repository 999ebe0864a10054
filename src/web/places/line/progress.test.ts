import { describe, expect, it } from 'vitest';
import type { Batch, Judgement, ProbeLog, RecordedReading } from '../../../contract/records.ts';
import type { Ask, Step } from '../../../contract/steps.ts';
import { emptyOutbox, put, refused } from './outbox.ts';
import { askState, holdsAgainst, progressOf, recordsOf, stepNow } from './progress.ts';

const id = (n: number) => `00000000-0000-7000-8000-${String(n).padStart(12, '0')}`;
const fridge: Ask = { id: id(1), kind: 'temperature', label: 'Fridge', high: 5, critical: true };
const weight: Ask = { id: id(2), kind: 'weight', label: 'Weight', low: 400, high: 500 };
const core: Ask = { id: id(3), kind: 'core log', label: 'Core', critical: true };
const common = { how: '', handsMin: 1 };
const keep: Step = {
  kind: 'keep',
  id: id(10),
  name: 'Keep',
  ...common,
  asks: [fridge],
  maxC: 5,
  days: 3,
  packed: 'vacuum-packed',
};
const trim: Step = {
  kind: 'trim',
  id: id(11),
  name: 'Trim',
  ...common,
  asks: [weight],
  part: 'foot',
  weightG: 450,
  yieldPct: 60,
};
const plate: Step = {
  kind: 'plate',
  id: id(12),
  name: 'Plate',
  ...common,
  asks: [],
  portionG: 120,
  portionsPerPiece: 2,
};
const chill: Step = {
  kind: 'chill',
  id: id(13),
  name: 'Chill',
  ...common,
  asks: [core],
  stages: [],
  rules: ['r0', 'r1'],
};

const base: Batch = {
  id: id(100),
  code: 'T-1',
  dishId: id(101),
  dishName: 'Trotter',
  versionId: id(102),
  versionNumber: 1,
  pieces: 2,
  startedAt: '2030-11-02T08:00:00Z',
  startedBy: 'Wren',
  status: 'open',
  closedAt: null,
  closedBy: null,
  open: 0,
  out: 0,
  method: [trim, chill, keep, plate],
  lots: [],
  draws: [],
  readings: [],
  decisions: [],
  logs: [],
  blocking: [],
  closingNote: null,
};

const read = (
  n: number,
  ask: Ask,
  step: Step,
  value: number,
  more: Partial<RecordedReading> = {},
): RecordedReading => ({
  id: id(n),
  stepId: step.id,
  askId: ask.id,
  kind: ask.kind === 'weight' ? 'weight' : 'temperature',
  value,
  note: '',
  at: `2030-11-02T09:${String(n % 60).padStart(2, '0')}:00Z`,
  corrects: null,
  by: 'Wren',
  recordedAt: '2030-11-02T10:00:00Z',
  holds: holdsAgainst(ask, value),
  ...more,
});

const judged = (passes: boolean | null, i: number): Judgement => ({
  rule: `r${i}`,
  title: 'R',
  type: 'guidance',
  place: 'GB',
  passes,
  value: null,
  limit: null,
  unit: 'min',
  failedAtMin: null,
  decidingMin: null,
  why: '',
  source: '',
});

const log = (passes: (boolean | null)[]): ProbeLog => ({
  id: id(300),
  batchId: base.id,
  trialId: null,
  dishId: base.dishId,
  stepId: chill.id,
  name: 'log',
  channel: 'core',
  points: [],
  startedAt: null,
  warnings: [],
  sha256: '',
  judgements: passes.map(judged),
  importedAt: '2030-11-02T11:00:00Z',
  importedBy: 'Wren',
});

const to = { kitchenId: id(50), batchId: base.id, personId: id(51), personName: 'Ash' };

describe('holdsAgainst', () => {
  it('the limit itself is in; beyond it is out; no number is never in', () => {
    expect(holdsAgainst(fridge, 5)).toBe('in');
    expect(holdsAgainst(fridge, 5.01)).toBe('out');
    expect(holdsAgainst(weight, 399.9)).toBe('out');
    expect(holdsAgainst(fridge, Number.NaN)).toBe('out');
    expect(holdsAgainst(fridge, null)).toBe('no limit');
    expect(holdsAgainst({}, 3)).toBe('no limit');
  });
});

describe('recordsOf', () => {
  it('lays what waits over what is kept, held against the same limits, and says so', () => {
    const { id: rid, ...rest } = read(7, fridge, keep, 9);
    const box = put(emptyOutbox, to, {
      kind: 'reading',
      reading: {
        id: rid,
        stepId: rest.stepId,
        askId: rest.askId,
        kind: rest.kind,
        value: 9,
        note: '',
        at: rest.at,
        corrects: null,
      },
    });
    const records = recordsOf({ ...base, readings: [read(6, weight, trim, 450)] }, box.entries);
    expect(records.lines.map((l) => [l.sending, l.holds, l.by])).toEqual([
      ['sent', 'in', 'Wren'],
      ['not sent yet', 'out', 'Ash'],
    ]);
  });
  it('a line that the server has already is shown once', () => {
    const kept = read(7, fridge, keep, 4);
    const { by: _by, recordedAt: _at, holds: _holds, ...reading } = kept;
    const box = put(emptyOutbox, to, { kind: 'reading', reading });
    expect(recordsOf({ ...base, readings: [kept] }, box.entries).lines).toHaveLength(1);
  });
  it('a correction leaves the old line there and takes its place; a refused correction does not', () => {
    const wrong = read(7, fridge, keep, 41);
    const {
      by: _by,
      recordedAt: _at,
      holds: _holds,
      ...right
    } = read(8, fridge, keep, 4, { corrects: wrong.id });
    const box = put(emptyOutbox, to, { kind: 'reading', reading: right });
    const batch = { ...base, readings: [wrong] };
    const records = recordsOf(batch, box.entries);
    expect(records.lines.map((l) => l.correctedBy)).toEqual([right.id, null]);
    expect(askState(records, keep, fridge)).toBe('in');
    expect(askState(recordsOf(batch, refused(box, [right.id], 'no').entries), keep, fridge)).toBe('decide');
  });
});

describe('askState', () => {
  it('out of a critical limit asks for a decision, and a later reading that is in does not hide it', () => {
    const readings = [read(7, fridge, keep, 9), read(8, fridge, keep, 4)];
    expect(askState(recordsOf({ ...base, readings }, []), keep, fridge)).toBe('decide');
  });
  it('a decision settles what came before it, not what comes after', () => {
    const decision = {
      id: id(70),
      stepId: keep.id,
      askId: fridge.id,
      what: 'chilled faster' as const,
      reason: 'x',
      by: 'Wren',
    };
    const batch = (at: string, readings: RecordedReading[]) =>
      recordsOf({ ...base, readings, decisions: [{ ...decision, at }] }, []);
    expect(askState(batch('2030-11-02T09:30:00Z', [read(7, fridge, keep, 9)]), keep, fridge)).toBe('decided');
    expect(askState(batch('2030-11-02T09:05:00Z', [read(7, fridge, keep, 9)]), keep, fridge)).toBe('decide');
  });
  it('out of a limit that is not critical is out, and stops nothing', () => {
    expect(askState(recordsOf({ ...base, readings: [read(7, weight, trim, 20)] }, []), trim, weight)).toBe(
      'out',
    );
  });
  it('a core log is in only when every rule passes; a rule that could not decide is never fine', () => {
    const state = (passes: (boolean | null)[]) =>
      askState(recordsOf({ ...base, logs: [log(passes)] }, []), chill, core);
    expect(state([true, true])).toBe('in');
    expect(state([true, false])).toBe('decide');
    expect(state([true, null])).toBe('undecided');
    expect(state([true])).toBe('undecided');
    expect(state([])).toBe('undecided');
  });
  it('core readings typed one by one are judged by the step’s own rule', () => {
    const real: Step = { ...chill, rules: ['gb-chill-90min-8c'] };
    const typed = (readings: [number, number][]) => {
      const lines = readings.map(([min, C], i) =>
        read(i + 1, core, real, C, {
          holds: 'no limit',
          at: new Date(Date.parse('2030-11-02T09:00:00Z') + min * 60_000).toISOString(),
        }),
      );
      return askState(recordsOf({ ...base, readings: lines }, []), real, core);
    };
    expect(
      typed([
        [0, 70],
        [10, 60],
        [40, 30],
      ]),
    ).toBe('going on');
    expect(
      typed([
        [0, 70],
        [10, 60],
        [40, 30],
        [70, 12],
        [85, 7],
      ]),
    ).toBe('in');
    expect(
      typed([
        [0, 70],
        [10, 60],
        [60, 30],
        [110, 20],
      ]),
    ).toBe('decide');
  });
  it('core readings without a judged log are going on, not done', () => {
    const readings = [read(7, core, chill, 80, { holds: 'no limit' })];
    expect(askState(recordsOf({ ...base, readings }, []), chill, core)).toBe('going on');
  });
});

describe('progressOf and stepNow', () => {
  it('opens at the first step with something left to record', () => {
    const p = progressOf(base.method, recordsOf({ ...base, readings: [read(7, weight, trim, 450)] }, []));
    expect(p.map((s) => s.state)).toEqual(['done', 'to do', 'to do', 'nothing to record']);
    expect(stepNow(p)).toBe(1);
  });
  it('a step with something out of its limit is never plainly done', () => {
    const p = progressOf(base.method, recordsOf({ ...base, readings: [read(7, weight, trim, 20)] }, []));
    expect(p[0]?.state).toBe('recorded, out');
  });
  it('a decision that is wanted comes before anything else', () => {
    const p = progressOf(base.method, recordsOf({ ...base, readings: [read(7, fridge, keep, 9)] }, []));
    expect(stepNow(p)).toBe(2);
  });
});
