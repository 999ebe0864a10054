import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Judgement } from '../contract/records.ts';
import type { Ask, Method } from '../contract/steps.ts';
import {
  type DecisionRecord,
  holdsOf,
  type LogRecord,
  limitOf,
  outAndDecided,
  type ReadingRecord,
  stateOf,
} from './batch-state.ts';

const cold: Ask = { id: 'cold', kind: 'temperature', label: 'Cold room', low: -1, high: 3, critical: true };
const core: Ask = { id: 'core', kind: 'core log', label: 'Core', critical: true };
const method = [
  { kind: 'keep', id: 'keep', name: 'Keep', asks: [cold] },
  { kind: 'cook', id: 'cook', name: 'Steam', asks: [core], rules: ['gb-70c-2min'] },
] as unknown as Method;

const moment = (n: number) => new Date(Date.UTC(2026, 0, 1) + n * 1_000);
let made = 0;
const reading = (value: number, n: number, corrects: string | null = null): ReadingRecord => ({
  id: `r${++made}`,
  stepId: 'keep',
  askId: 'cold',
  kind: 'temperature',
  value,
  at: moment(n),
  corrects,
  recordedAt: moment(n),
  holds: holdsOf(cold, value),
});
const decision = (what: string, n: number, stepId = 'keep', askId: string | null = null): DecisionRecord => ({
  stepId,
  askId,
  what,
  reason: 'r',
  recordedAt: moment(n),
});
const log = (passes: boolean | null, n: number): LogRecord => ({
  stepId: 'cook',
  name: `log ${n}`,
  importedAt: moment(n),
  judgements: [{ rule: 'gb-70c-2min', title: '70 °C for 2 min', passes, why: 'w' } as Judgement],
});
const blocking = (readings: ReadingRecord[], decisions: DecisionRecord[] = [], logs = [log(true, 0)]) =>
  stateOf({ method, readings, decisions, logs }).blocking;

describe('holdsOf', () => {
  it('counts the limit itself as inside, and nothing beyond it, however little', () => {
    expect([-1, 3].map((v) => holdsOf(cold, v))).toEqual(['in', 'in']);
    expect([-1.0001, 3.0000001, 200].map((v) => holdsOf(cold, v))).toEqual(['out', 'out', 'out']);
    expect(holdsOf({ ...cold, low: undefined, high: undefined } as unknown as Ask, 9)).toBe('no limit');
    expect(limitOf(cold)).toBe('-1 to 3 °C');
  });

  it('holds nothing against limits that contradict one another', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true }), (v) => holdsOf({ ...cold, low: 5, high: 1 }, v) === 'out'),
    );
  });
});

describe('stateOf', () => {
  it('is open to closing when everything critical was recorded, inside, and the core log holds', () => {
    expect(stateOf({ method, readings: [reading(2, 1)], decisions: [], logs: [log(true, 2)] })).toEqual({
      open: 0,
      out: 0,
      blocking: [],
    });
  });

  it('blocks without a reading, without a core log, with one that fails or is undecided', () => {
    expect(blocking([])).toEqual(['Keep: "Cold room" has not been recorded.']);
    expect(blocking([reading(2, 1)], [], [])).toEqual(['Steam: there is no core log yet ("Core").']);
    expect(blocking([reading(2, 1)], [], [log(false, 1)])).toHaveLength(2);
    expect(blocking([reading(2, 1)], [], [log(null, 1)])).toHaveLength(1);
    expect(
      blocking([reading(2, 1)], [decision('cooked again', 2, 'cook')], [log(false, 1), log(true, 3)]),
    ).toEqual([]);
    expect(blocking([reading(2, 1)], [], [log(false, 1), log(true, 3)])).toHaveLength(1);
  });

  it('takes a decision only for what was known when it was taken', () => {
    expect(blocking([reading(9, 5)], [decision('chilled faster', 4)])).toHaveLength(1);
    expect(blocking([reading(9, 5), reading(2, 6)], [decision('chilled faster', 5)])).toEqual([]);
    expect(blocking([reading(9, 5)], [decision('chilled faster', 6, 'cook')])).toHaveLength(1);
    expect(blocking([reading(9, 5)], [decision('chilled faster', 6, 'keep', 'other')])).toHaveLength(1);
  });

  it('wants a temperature that was out measured again, whatever was decided', () => {
    const again = /not been measured again/;
    expect(blocking([reading(9, 5)], [decision('chilled faster', 5)])).toEqual([
      expect.stringMatching(again),
    ]);
    expect(blocking([reading(2, 4), reading(9, 5)], [decision('chilled faster', 6)])).toHaveLength(1);
    expect(blocking([reading(9, 5), reading(8, 7)], [decision('chilled faster', 8)])).toHaveLength(2);
  });

  it('takes no decision about a log that was taken before the log came', () => {
    const logs = [log(false, 5), log(true, 6)];
    expect(blocking([reading(2, 1)], [decision('cooked again', 4, 'cook')], logs)).toHaveLength(1);
    expect(blocking([reading(2, 1)], [decision('cooked again', 5, 'cook')], logs)).toEqual([]);
  });

  it('never lets through a cook that nothing measured', () => {
    const bare = [{ kind: 'cook', id: 'cook', name: 'Steam', asks: [], rules: [] }] as unknown as Method;
    const state = (logs: LogRecord[]) => stateOf({ method: bare, readings: [], decisions: [], logs });
    expect(state([]).blocking).toEqual([expect.stringMatching(/Steam: nothing measures the core/)]);
    expect(state([log(null, 1)]).blocking).toHaveLength(1);
    expect(state([log(true, 1)]).blocking).toEqual([]);
  });

  it('says what was out although it was decided on', () => {
    const records = {
      method,
      readings: [reading(9, 5), reading(2, 6)],
      decisions: [decision('chilled faster', 5)],
      logs: [log(false, 1), log(true, 2)],
    };
    expect(outAndDecided(records)).toEqual([
      'Keep: "Cold room" was 9 °C, allowed -1 to 3 °C',
      'the log log 1 did not hold (70 °C for 2 min)',
    ]);
    const slip = reading(20, 1);
    expect(outAndDecided({ ...records, readings: [slip, reading(2, 2, slip.id)], logs: [] })).toEqual([]);
  });

  it('lets a corrected line rest and its correction stand', () => {
    const slip = reading(20, 1);
    expect(blocking([slip, reading(2, 2, slip.id)])).toEqual([]);
    const right = reading(2, 1);
    expect(blocking([right, reading(20, 2, right.id)])).toHaveLength(1);
  });

  it('never lets through a critical reading out of limit on which nobody decided, whatever else is there', () => {
    const value = fc.integer({ min: -5, max: 10 });
    const decisions = fc.array(
      fc.tuple(
        fc.constantFrom('held longer', 'cooked again', 'discarded', 'kept back to ask'),
        fc.integer({ min: 0, max: 49 }),
      ),
    );
    fc.assert(
      fc.property(fc.array(value), decisions, fc.constantFrom(true, false, null), (values, taken, passes) => {
        const readings = [...values.map((v, i) => reading(v, i)), reading(4, 50)];
        const found = blocking(
          readings,
          taken.map(([what, n]) => decision(what, n)),
          [log(passes, 0)],
        );
        return found.some((why) => why.includes('is 4 °C'));
      }),
    );
  });

  it('never lets through what was discarded, nor what is kept back until somebody decides', () => {
    expect(blocking([reading(2, 1)], [decision('discarded', 2), decision('cooked again', 3)])).toHaveLength(
      1,
    );
    expect(blocking([reading(2, 1)], [decision('kept back to ask', 2)])).toHaveLength(1);
    expect(
      blocking([reading(2, 1)], [decision('kept back to ask', 2), decision('held longer', 3, 'cook')]),
    ).toHaveLength(1);
    expect(blocking([reading(2, 1)], [decision('kept back to ask', 2), decision('held longer', 3)])).toEqual(
      [],
    );
  });

  it('reads typed core temperatures as a log, the colder of two at one moment', () => {
    const at = (n: number, C: number): ReadingRecord => ({
      ...reading(C, n * 60),
      stepId: 'cook',
      askId: 'core',
      holds: 'no limit',
    });
    expect(blocking([reading(2, 1), at(0, 71), at(2, 71)], [], [])).toEqual([]);
    expect(blocking([reading(2, 1), at(0, 71), at(1, 71)], [], [])).toHaveLength(1);
    expect(blocking([reading(2, 1), at(0, 71), at(2, 71), at(0, 60)], [], [])).toHaveLength(1);
    expect(blocking([reading(2, 1), at(0, 90)], [], [])).toHaveLength(1);
  });
});
