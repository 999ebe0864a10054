import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type RuleVerdict, runJudge } from '../../../contract/judge.ts';
import { coreChannel, deadlineOf, liveWord, logText, seriesOf } from './core-log.ts';
import type { Line } from './progress.ts';

const start = Date.parse('2030-11-02T10:00:00.000Z');
const at = (min: number) => new Date(start + min * 60_000).toISOString();
const line = (min: number, C: number): Line => ({
  id: `${min} ${C}`,
  stepId: 's',
  askId: 'a',
  kind: 'temperature',
  value: C,
  note: '',
  at: at(min),
  corrects: null,
  by: 'Wren',
  recordedAt: null,
  holds: 'no limit',
  sending: 'sent',
  refusal: null,
  correctedBy: null,
});
const heat = (C: number) => `${C} °C`;
const judged = (rule: string, readings: [number, number][]): RuleVerdict => {
  const log = seriesOf(
    readings.map(([min, C]) => line(min, C)),
    'colder',
  ).map(({ min, C }) => ({ min, C }));
  return runJudge({ log, rules: [rule] })[0] as RuleVerdict;
};

describe('seriesOf', () => {
  it('is in order of time, from the first, whatever order the lines came in', () => {
    expect(seriesOf([line(5, 60), line(0, 50), line(2.5, 55)], 'colder').map((r) => [r.min, r.C])).toEqual([
      [0, 50],
      [2.5, 55],
      [5, 60],
    ]);
  });
  it('of two readings at one moment the colder counts when cooking, the warmer when chilling', () => {
    const both = [line(0, 71), line(0, 69)];
    expect(seriesOf(both, 'colder').map((r) => r.C)).toEqual([69]);
    expect(seriesOf(both, 'warmer').map((r) => r.C)).toEqual([71]);
  });
  it('can always be judged: times strictly rise', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(50), fc.integer({ min: 0, max: 99 }))), (readings) => {
        const mins = seriesOf(
          readings.map(([m, C]) => line(m, C)),
          'colder',
        ).map((r) => r.min);
        expect(mins.every((m, i) => i === 0 || m > (mins[i - 1] as number))).toBe(true);
      }),
    );
  });
});

describe('logText', () => {
  it('writes each reading with its instant under the channel’s name', () => {
    const text = logText(seriesOf([line(0, 70.5), line(1, 71)], 'colder'));
    expect(text).toBe(`time,${coreChannel} (°C)\n${at(0)},70.5\n${at(1)},71\n`);
  });
});

describe('liveWord, on the rule of 70 °C for 2 minutes', () => {
  it('one minute at 70 °C has had 1.0 of 2.0 min and needs 1.0 more', () => {
    const word = liveWord(
      judged('gb-70c-2min', [
        [0, 70],
        [1, 70],
      ]),
      70,
      heat,
      null,
    );
    expect(word).toMatchObject({ tone: 'not yet', big: '1.0 min more' });
    expect(word.words).toContain('has had 1.0 of 2.0 min; at 70 °C it needs 1.0 min more');
  });
  it('two minutes at 70 °C holds', () => {
    expect(
      liveWord(
        judged('gb-70c-2min', [
          [0, 70],
          [2, 70],
        ]),
        70,
        heat,
        null,
      ),
    ).toMatchObject({ tone: 'holds', big: 'Holds' });
  });
  it('a core that is cold is never said to hold', () => {
    expect(
      liveWord(
        judged('gb-70c-2min', [
          [0, 20],
          [60, 30],
        ]),
        30,
        heat,
        null,
      ).tone,
    ).not.toBe('holds');
  });
  it('says that it holds exactly when the rule does, and never promises less than is needed', () => {
    const reading = fc.tuple(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 600, max: 760 }));
    fc.assert(
      fc.property(fc.array(reading, { minLength: 2, maxLength: 12 }), (steps) => {
        const readings = steps.map(([, tenths], i): [number, number] => [
          steps.slice(0, i + 1).reduce((sum, [gap]) => sum + gap, 0),
          tenths / 10,
        ]);
        const verdict = judged('gb-70c-2min', readings);
        const word = liveWord(verdict, readings.at(-1)?.[1] as number, heat, null);
        expect(word.tone === 'holds').toBe(verdict.passes === true);
        if (verdict.passes !== true && verdict.moreMin !== null)
          expect(Number.parseFloat(word.big)).toBeGreaterThanOrEqual(verdict.moreMin - 1e-9);
      }),
    );
  });
});

describe('deadlineOf, on chilling to 8 °C within 90 minutes', () => {
  it('is ninety minutes after the core passed 63 °C on its way down', () => {
    const verdict = judged('gb-chill-90min-8c', [
      [0, 73],
      [10, 63],
      [30, 40],
    ]);
    expect(verdict.passes).not.toBe(true);
    expect(deadlineOf(verdict, at(0))).toBe(at(100));
  });
  it('there is none once it is cold', () => {
    const verdict = judged('gb-chill-90min-8c', [
      [0, 73],
      [10, 63],
      [40, 30],
      [70, 12],
      [80, 7],
    ]);
    expect(verdict.passes).toBe(true);
    expect(deadlineOf(verdict, at(0))).toBeNull();
  });
});
