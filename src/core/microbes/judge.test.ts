import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findRule, rules } from '../properties/rules.ts';
import { type JudgeOptions, judge, type Verdict } from './judge.ts';
import type { Log } from './log.ts';

type Pair = [min: number, C: number];
/** Steps of time and temperature as a log. */
function timed(steps: readonly { dt: number; C: number }[]): Log {
  let s = 0;
  return steps.map(({ dt, C }) => {
    s += dt;
    return { s, C };
  });
}

const log = (...points: Pair[]): Log => points.map(([min, C]) => ({ s: min * 60, C }));
const held = (C: number, min: number) => log([0, C], [min, C]);
const by = (id: string, points: Log, options: JudgeOptions = {}): Verdict => {
  const rule = findRule(id);
  if (rule === undefined) throw new Error(`no rule ${id}`);
  return judge(points, [rule], options)[0]!;
};
const outcome = (id: string, points: Log, options?: JudgeOptions) => by(id, points, options).outcome;
/** T(t) = low + (high − low)·e^(−k·t), read every minute. */
const newton = (low: number, high: number, perHour: number, hours: number): Log =>
  Array.from({ length: hours * 60 + 1 }, (_, i) => ({
    s: i * 60,
    C: low + (high - low) * Math.exp((-perHour * i) / 60),
  }));

describe('judge by 70 °C for 2 minutes', () => {
  const neck = log(
    [0, 5],
    [10, 25],
    [20, 45],
    [30, 58],
    [35, 62],
    [40, 65],
    [45, 67],
    [50, 68],
    [55, 66],
    [60, 60],
    [70, 45],
    [80, 30],
  );
  test('a core log that reaches it between 40 and 45 min', () => {
    const verdict = by('gb-70c-2min', neck);
    expect(verdict.passes).toBe(true);
    expect(verdict.value! / 60).toBeCloseTo(7.62246, 4);
    expect(verdict.deciding!.s / 60).toBeGreaterThan(40);
    expect(verdict.deciding!.s / 60).toBeLessThan(45);
    expect(neck[verdict.deciding!.index]!.s / 60).toBe(45);
  });
  test('63 °C for 20 min and 64 °C for 15 min hold, but not for minced meat', () => {
    for (const points of [held(63, 20), held(64, 15)]) {
      expect(outcome('gb-70c-2min', points, { gap: 3600 })).toBe('holds');
      expect(outcome('gb-70c-2min-comminuted', points, { gap: 3600 })).toBe('does not hold');
    }
  });
  test('the printed pairs hold, and a second less at the reference does not', () => {
    const pairs: Pair[] = [
      [45, 60],
      [10, 65],
      [2, 70],
      [0.5, 75],
      [0.1, 80],
    ];
    for (const [min, C] of pairs) {
      expect(outcome('gb-70c-2min', held(C, min), { gap: 3600 })).toBe('holds');
      expect(outcome('gb-70c-2min-printed-pairs', held(C, min), { gap: 3600 })).toBe('holds');
      expect(outcome('gb-70c-2min-printed-pairs', held(C, min - 1 / 60), { gap: 3600 })).toBe(
        'does not hold',
      );
    }
    expect(outcome('gb-70c-2min', held(70, 119 / 60))).toBe('does not hold');
  });
  test('says how much longer at the last temperature would do', () => {
    const verdict = by('gb-70c-2min', held(70, 1));
    expect([verdict.passes, verdict.value, verdict.more]).toEqual([false, 60, 60]);
    expect(by('gb-70c-2min', held(65, 5)).more! / 60).toBeCloseTo(9.2832 - 5, 3);
    expect(by('gb-70c-2min', log([0, 70], [1, 70], [2, 20])).more).toBeNull();
  });
  test('time below 60 °C never adds up to a pass', () => {
    const verdict = by('gb-70c-2min', held(57, 240), { gap: 1e6 });
    expect(verdict.outcome).toBe('not covered');
    expect(verdict.passes).toBe(false);
    const mixed = by('gb-70c-2min', log([0, 62], [1, 62], [2, 57], [300, 57]), { gap: 1e6 });
    expect(mixed.passes).toBe(false);
    expect(mixed.value!).toBeLessThan(120);
    expect(mixed.why).toContain('does not count');
  });
  test('two minutes in tenths are two minutes', () => {
    const tenths = Array.from({ length: 1201 }, (_, i) => ({ s: i * 0.1, C: 70 }));
    expect(outcome('gb-70c-2min', tenths)).toBe('holds');
  });
  test('across a hole the colder end counts', () => {
    const hole = log([0, 60], [30, 80], [30.05, 60]);
    expect(by('gb-70c-2min', hole, { gap: 3600 }).passes).toBe(true);
    const verdict = by('gb-70c-2min', hole);
    expect(verdict.passes).toBe(false);
    expect(verdict.cautions[0]).toContain('hole');
  });
  test('one reading proves nothing', () =>
    expect(outcome('gb-70c-2min', log([0, 90]))).toBe('does not hold'));
});

describe('judge by 90 °C for 10 minutes', () => {
  test('each printed row holds as printed, and not a hundredth less', () => {
    const rule = findRule('gb-90c-10min')!;
    if (rule.kind !== 'lethality' || rule.rate.by !== 'table') throw new Error('the table is gone');
    expect(rule.rate.rows.length).toBe(21);
    for (const { C, s } of rule.rate.rows) {
      expect(outcome(rule.id, held(C, s / 60), { gap: 1e6 })).toBe('holds');
      expect(outcome(rule.id, held(C, (0.99 * s) / 60), { gap: 1e6 })).toBe('does not hold');
      // z 9 °C below and 10 °C above 90 °C, which the table is known to follow.
      expect(Math.abs((600 * 10 ** ((90 - C) / (C < 90 ? 9 : 10))) / s - 1)).toBeLessThan(0.035);
    }
  });
  test('79 °C is not covered; 80 °C is held in doubt', () => {
    expect(outcome('gb-90c-10min', held(79, 600), { gap: 1e6 })).toBe('not covered');
    expect(by('gb-90c-10min', held(80, 130), { gap: 1e6 }).cautions[0]).toContain('below 85 °C');
  });
  test('the American z 7 °C asks 51.79 min at 85 °C', () => {
    expect(outcome('us-90c-10min', held(85, 51.8), { gap: 1e6 })).toBe('holds');
    expect(outcome('us-90c-10min', held(85, 51.7), { gap: 1e6 })).toBe('does not hold');
  });
});

describe('judge by a table of holds', () => {
  const duck = 'us-poultry-7log-other-12pct-fat';
  test('uses the row at or below: 63.0 °C is 145 °F, 13 min for chicken with 12 % fat', () => {
    const id = 'us-poultry-7log-chicken-12pct-fat';
    expect(by(id, held(63, 12.9), { gap: 1e6 })).toMatchObject({ passes: false, limit: 780 });
    expect(outcome(id, held(63, 13), { gap: 1e6 })).toBe('holds');
  });
  test('57 °C has no row: not covered, and no pass', () => {
    expect(by(duck, held(57, 1000), { gap: 1e6 })).toMatchObject({ outcome: 'not covered', passes: false });
  });
  test('takes printed °C and printed °F alike', () => {
    expect(outcome('us-meat-6.5log', held(54.4, 112), { gap: 1e6 })).toBe('holds');
    expect(outcome('us-meat-7log', held(54.4, 121), { gap: 1e6 })).toBe('holds');
    expect(outcome('us-meat-5log', held(54.4, 86), { gap: 1e6 })).toBe('holds');
    expect(outcome(duck, held((145 - 32) / 1.8, 13.8), { gap: 1e6 })).toBe('holds');
    expect(outcome(duck, held(60, 35), { gap: 1e6 })).toBe('holds');
    expect(outcome(duck, held(60, 34.9), { gap: 1e6 })).toBe('does not hold');
  });
  test('does not add up two holds with a break between', () => {
    const broken = log([0, 60], [20, 60], [21, 50], [22, 60], [41, 60]);
    const verdict = by(duck, broken, { gap: 1e6 });
    expect(verdict.passes).toBe(false);
    expect(verdict.value! / 60).toBeLessThan(21);
  });
  test('adds the model’s share only as a model', () => {
    const half = by(duck, held(60, 17.5), { gap: 1e6 });
    expect(half.passes).toBe(false);
    expect(half.model!.pct).toBeCloseTo(50, 6);
    expect(half.more! / 60).toBeCloseTo(17.5, 6);
  });
  test('a zero row holds the moment it is reached', () => {
    expect(outcome(duck, log([0, 20], [10, 73.9]))).toBe('holds');
    expect(outcome('us-food-code-165f-stuffed', log([0, 20], [10, (165 - 32) / 1.8]))).toBe('holds');
    expect(outcome('us-food-code-165f-stuffed', log([0, 20], [10, 73.8]))).toBe('does not hold');
    expect(outcome('scotland-reheat-82c', log([0, 20], [10, 81.9]))).toBe('does not hold');
    expect(outcome('scotland-reheat-82c', log([0, 20], [10, 82]))).toBe('holds');
  });
  test('is not met after more than 6 hours on the way up', () => {
    const slow = log([0, 5], [410, 54], [420, 75]);
    expect(by(duck, slow, { gap: 1e6 })).toMatchObject({ passes: false });
    expect(outcome('us-come-up-6h', slow, { gap: 1e6 })).toBe('does not hold');
    expect(outcome('us-come-up-6h', log([0, 5], [60, 75]), { gap: 1e6 })).toBe('holds');
    expect(outcome('us-come-up-6h', log([0, 30], [60, 75]), { gap: 1e6 })).toBe('undecided');
  });
  test('reheating must be done within 2 hours', () => {
    const id = 'us-food-code-reheat-165f';
    expect(outcome(id, log([0, 4], [60, 75], [61, 75]), { gap: 1e6 })).toBe('holds');
    expect(outcome(id, log([0, 4], [150, 75], [151, 75]), { gap: 1e6 })).toBe('does not hold');
    expect(outcome(id, log([0, 40], [60, 75], [61, 75]), { gap: 1e6 })).toBe('undecided');
  });
  test('a hole inside a hold counts as the colder end', () => {
    expect(outcome(duck, log([0, 60], [35, 60]))).toBe('holds');
    expect(outcome(duck, log([0, 60], [17, 59], [35, 60]))).toBe('does not hold');
    expect(outcome(duck, log([0, 58], [60, 66]))).toBe('does not hold');
  });
});

describe('judge cooling of a Newton curve from 75 °C towards 2 °C, 1.2 per hour', () => {
  const curve = newton(2, 75, 1.2, 5);
  const part = (id: string, i: number) => by(id, curve).parts[i]!;
  test('gb-chill-90min-8c: 115.96 min, does not hold, broken 90 min after the fall through 63 °C', () => {
    const verdict = by('gb-chill-90min-8c', curve);
    expect(verdict.outcome).toBe('does not hold');
    expect(Math.abs(verdict.value! / 60 - 115.96)).toBeLessThan(1);
    expect(Math.abs(verdict.failedAt! / 3600 - (0.1497 + 1.5))).toBeLessThan(0.01);
  });
  test('us-food-code-cooling: 0.8857 h and 2.4239 h, holds', () => {
    expect(outcome('us-food-code-cooling', curve)).toBe('holds');
    expect(Math.abs(part('us-food-code-cooling', 0).value! / 60 - 60 * 0.8857)).toBeLessThan(1);
    expect(Math.abs(part('us-food-code-cooling', 1).value! / 60 - 60 * 2.4239)).toBeLessThan(1);
  });
  test('us-plant-cooling-option-1: 0.6286 h and 1.9264 h, holds', () => {
    expect(outcome('us-plant-cooling-option-1', curve)).toBe('holds');
    expect(Math.abs(part('us-plant-cooling-option-1', 0).value! / 60 - 60 * 0.6286)).toBeLessThan(1);
    expect(Math.abs(part('us-plant-cooling-option-1', 1).value! / 60 - 60 * 1.9264)).toBeLessThan(1);
  });
  test('what is never reached is said, not guessed', () => {
    const verdict = by('gb-cook-chill-1989', newton(4, 75, 1.2, 12));
    expect(verdict.outcome).toBe('does not hold');
    expect(verdict.why).toContain('not reached');
    expect(Number.isFinite(verdict.value)).toBe(true);
  });
});

describe('judge cooling', () => {
  const id = 'us-food-code-cooling';
  test('exactly at the limits holds, a minute over does not', () => {
    expect(outcome(id, log([0, 57], [120, 21], [360, 5]), { gap: 1e6 })).toBe('holds');
    expect(outcome(id, log([0, 57], [121, 21], [360, 5]), { gap: 1e6 })).toBe('does not hold');
    expect(outcome(id, log([0, 57], [120, 21], [361, 5]), { gap: 1e6 })).toBe('does not hold');
  });
  test('the first limb broken is broken, however soon the second is met', () => {
    const verdict = by(id, log([0, 60], [180, 22], [200, 4]), { gap: 1e6 });
    expect(verdict.passes).toBe(false);
    expect(verdict.parts.map((p) => p.passes)).toEqual([false, true]);
  });
  test('a log that ends too early is undecided, and says what is left; ended too late, it has failed', () => {
    expect(by(id, log([0, 57], [60, 40]), { gap: 1e6 })).toMatchObject({
      passes: null,
      outcome: 'undecided',
    });
    expect(by(id, log([0, 57], [130, 30]), { gap: 1e6 })).toMatchObject({ passes: false, failedAt: 7200 });
  });
  test('not begun while hot; begun before the log when it starts cooler', () => {
    expect(outcome(id, log([0, 80], [60, 70]), { gap: 1e6 })).toBe('undecided');
    expect(by(id, log([0, 50], [60, 20], [200, 5]), { gap: 1e6 })).toMatchObject({ passes: null });
    expect(by(id, log([0, 50], [130, 30], [400, 5]), { gap: 1e6 })).toMatchObject({ passes: false });
  });
  test('reheating starts the clock again and is flagged, but mends nothing that was broken', () => {
    const soon = by(id, log([0, 60], [30, 40], [40, 70], [100, 20], [200, 4]), { gap: 1e6 });
    expect(soon.outcome).toBe('holds');
    expect(soon.cautions[0]).toContain('Reheated');
    expect(outcome(id, log([0, 60], [200, 40], [210, 70], [270, 20], [370, 4]), { gap: 1e6 })).toBe(
      'does not hold',
    );
  });
  test('two attempts that overran: the first is the one that is told', () => {
    const twice = by(id, log([0, 60], [200, 40], [210, 70], [500, 40], [600, 4]), { gap: 1e6 });
    expect(twice.outcome).toBe('does not hold');
    expect(twice.failedAt! / 60).toBeCloseTo(30 + 120, 6);
  });
  test('a wobble over the upper limit does not restart the clock', () => {
    const wobbly = log([0, 58], [2, 56.9], [30, 57.4], [32, 56], [140, 21], [200, 5]);
    expect(by(id, wobbly, { gap: 1e6 }).parts[0]!.start! / 60).toBeLessThan(2);
    expect(outcome(id, wobbly, { gap: 1e6 })).toBe('does not hold');
  });
  test('a hole that hides the moment that decides leaves it undecided', () => {
    const hidden = log([0, 60], [1, 58], [110, 25], [190, 10], [191, 9], [250, 4]);
    expect(outcome(id, hidden, { gap: 1e6 })).toBe('does not hold');
    const close = log([0, 60], [5, 56], [100, 30], [180, 8], [190, 4]);
    expect(by(id, close).parts[0]!.value! / 60).toBeLessThan(135);
    expect(outcome(id, log([0, 57], [100, 22], [180, 8], [190, 4]))).toBe('undecided');
    expect(outcome(id, log([0, 57], [100, 22], [110, 20], [180, 8], [190, 4]), { gap: 6000 })).toBe('holds');
  });
  test('rising again after it was cold is told', () => {
    const verdict = by(id, log([0, 57], [60, 20], [120, 4], [180, 15]), { gap: 1e6 });
    expect(verdict.outcome).toBe('holds');
    expect(verdict.cautions[0]).toContain('rose above 5 °C again');
  });
  test('cook-chill counts from the start of chilling, which must be said', () => {
    const points = log([0, 75], [20, 74], [60, 20], [100, 3]);
    const rule = 'gb-cook-chill-1989';
    expect(outcome(rule, points, { gap: 1e6 })).toBe('undecided');
    expect(outcome(rule, points, { gap: 1e6, cookEnd: 0, chillStart: 1200 })).toBe('holds');
    expect(outcome(rule, points, { gap: 1e6, cookEnd: 0, chillStart: 1860 })).toBe('does not hold');
    expect(
      outcome(rule, log([0, 75], [20, 74], [60, 20], [111, 3]), { gap: 1e6, cookEnd: 0, chillStart: 1200 }),
    ).toBe('does not hold');
  });
});

describe('judge keeping', () => {
  test('hot at 63 °C with one spell of less than 2 hours', () => {
    const id = 'gb-hot-hold-63c';
    expect(outcome(id, log([0, 65], [60, 64]), { gap: 1e6 })).toBe('holds');
    expect(outcome(id, log([0, 65], [60, 60], [100, 65]), { gap: 1e6 })).toBe('holds');
    expect(outcome(id, log([0, 65], [60, 60], [300, 65]), { gap: 1e6 })).toBe('does not hold');
    expect(outcome(id, log([0, 65], [10, 60], [20, 65], [30, 60], [40, 65]), { gap: 1e6 })).toBe(
      'does not hold',
    );
    expect(outcome(id, log([0, 65], [10, 60]), { gap: 1e6 })).toBe('undecided');
  });
  test('exactly 63 °C is 63 °C in England, and not above it in Scotland', () => {
    expect(outcome('gb-hot-hold-63c', held(63, 5))).toBe('holds');
    expect(outcome('scotland-hot-hold-63c', held(63, 5))).toBe('does not hold');
  });
  test('a hole is not vouched for', () => expect(outcome('us-cold-hold-5c', held(4, 600))).toBe('undecided'));
});

describe('judge by any cooking rule', () => {
  const cooking = rules.filter(
    (rule) => rule.kind === 'lethality' || (rule.kind === 'hold' && !rule.comeUp && !rule.within),
  );
  const steps = fc.array(
    fc.record({
      dt: fc.integer({ min: 10, max: 1500 }),
      C: fc.double({ min: 40, max: 95, noNaN: true }),
      less: fc.double({ min: 0, max: 12, noNaN: true }),
    }),
    { minLength: 2, maxLength: 12 },
  );
  test('never passes a log that is colder at every moment than one it fails', () => {
    fc.assert(
      fc.property(steps, fc.constantFrom(...cooking), (list, rule) => {
        let s = 0;
        const warm: { s: number; C: number }[] = [];
        const cold: { s: number; C: number }[] = [];
        for (const { dt, C, less } of list) {
          s += dt;
          warm.push({ s, C });
          cold.push({ s, C: C - less });
        }
        const [a, b] = [judge(warm, [rule])[0]!, judge(cold, [rule])[0]!];
        if (b.passes === true) expect(a.passes).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });
  test('more time at the last temperature, as much as it asked for, makes it pass', () => {
    fc.assert(
      fc.property(steps, fc.constantFrom(...cooking), (list, rule) => {
        const points = timed(list);
        const verdict = judge(points, [rule], { gap: 1e9 })[0]!;
        if (verdict.more === null) return;
        const last = points.at(-1)!;
        const longer = [...points, { s: last.s + verdict.more * (1 + 1e-9) + 1e-6, C: last.C }];
        expect(judge(longer, [rule], { gap: 1e9 })[0]!.passes).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('judge by every rule', () => {
  const steps = fc.array(
    fc.record({ dt: fc.integer({ min: 1, max: 9000 }), C: fc.integer({ min: -20, max: 100 }) }),
    { minLength: 1, maxLength: 12 },
  );
  test('gives finite numbers, a reason, and true only for what holds', () => {
    fc.assert(
      fc.property(steps, (list) => {
        const points = timed(list);
        for (const verdict of judge(points, rules)) {
          expect(verdict.passes === true).toBe(verdict.outcome === 'holds');
          expect(verdict.why.length).toBeGreaterThan(10);
          expect(verdict.why).not.toMatch(/NaN|Infinity|undefined|null/);
          for (const value of [verdict.value, verdict.limit, verdict.failedAt, verdict.more])
            expect(value === null || Number.isFinite(value)).toBe(true);
          if (verdict.outcome === 'does not hold' && verdict.rule.kind === 'cooling')
            expect(verdict.failedAt).not.toBeNull();
        }
      }),
      { numRuns: 300 },
    );
  });
  test('refuses a log that is none, and a gap that is none', () => {
    expect(() => judge([], rules)).toThrow(/no readings/);
    expect(() => judge(held(70, 2), rules, { gap: 0 })).toThrow(/more than 0 s/);
  });
});
