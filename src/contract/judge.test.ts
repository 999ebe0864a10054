import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { findRule } from '../core/properties/rules.ts';
import { JudgeAnswer, JudgeInput, judgePoints, listRules, runJudge } from './judge.ts';
import { InputProblems } from './problem.ts';
import { Judgement } from './records.ts';

const held = [
  { min: 0, C: 70 },
  { min: 2, C: 70 },
];

function problems(input: unknown): string[] {
  try {
    runJudge(input);
  } catch (error) {
    if (error instanceof InputProblems)
      return error.problems.map((p) => `${p.path}: ${p.found}; ${p.allowed}`);
    throw error;
  }
  return [];
}

describe('runJudge', () => {
  test('answers every rule in the order asked, as its own schema says', () => {
    const ids = listRules().map((rule) => rule.id);
    const answer = runJudge({ log: held, rules: ids });
    expect(JudgeAnswer.parse(answer).map((verdict) => verdict.rule)).toEqual(ids);
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
  });
  test('keeps the keys that others build on', () => {
    const [verdict] = runJudge({ log: held, rules: ['gb-70c-2min'] });
    expect(verdict).toMatchObject({
      rule: 'gb-70c-2min',
      passes: true,
      value: 2,
      limit: 2,
      failedAtMin: null,
    });
    expect(verdict!.why).not.toBe('');
    expect(verdict!.source).toContain('Food Standards Agency');
  });
  test('holds what a stored judgement asks for', () => {
    const verdict = runJudge({ log: held, rules: ['gb-70c-2min'] })[0]!;
    const kept = Object.fromEntries(
      Object.keys(Judgement.shape).map((key) => [key, verdict[key as keyof typeof verdict]]),
    );
    expect(Judgement.parse(kept).decidingMin).toBe(2);
  });
  test('tells the moment a cooling limit was broken in minutes of the log', () => {
    const log = [
      { min: 10, C: 65 },
      { min: 20, C: 63 },
      { min: 140, C: 7 },
    ];
    const verdict = runJudge({ log, rules: ['gb-chill-90min-8c'], gapMin: 200 })[0]!;
    expect(verdict).toMatchObject({ passes: false, failedAtMin: 110, limit: 90, unit: 'min' });
    expect(verdict.value).toBeCloseTo(120 * (55 / 56), 9);
  });
  test('judges points in seconds alike', () => {
    const points = held.map(({ min, C }) => ({ s: min * 60, C }));
    expect(judgePoints(points, [findRule('gb-70c-2min')!])).toEqual(
      runJudge({ log: held, rules: ['gb-70c-2min'] }),
    );
  });
});

describe('runJudge refuses, naming the place', () => {
  const rules = ['gb-70c-2min'];
  test('an empty log, no rules, unknown keys', () => {
    expect(problems({ log: [], rules })[0]).toMatch(/^log: an empty list/);
    expect(problems({ log: held, rules: [] })[0]).toMatch(/^rules: an empty list/);
    expect(problems({ log: held, rules, gapmin: 5 })[0]).toMatch(/^gapmin: an unknown key/);
  });
  test('numbers that are none, or that no probe reads', () => {
    expect(problems({ log: [{ min: 0, C: Number.NaN }], rules })[0]).toMatch(/^log\[0\]\.C/);
    expect(problems({ log: [{ min: Number.POSITIVE_INFINITY, C: 4 }], rules })[0]).toMatch(/^log\[0\]\.min/);
    expect(problems({ log: [{ min: 0, C: 1e9 }], rules })[0]).toMatch(/^log\[0\]\.C: 1000000000/);
  });
  test('times out of order or twice, at most five of them', () => {
    const [a, b] = held as [(typeof held)[0], (typeof held)[0]];
    expect(problems({ log: [b, a], rules })).toEqual([
      'log[1].min: 0 min after 2 min; times that rise from reading to reading, none twice',
    ]);
    expect(problems({ log: [a, a], rules })[0]).toContain('a second time');
    const back = Array.from({ length: 100 }, (_, i) => ({ min: -i, C: 4 }));
    expect(problems({ log: back, rules }).length).toBe(5);
  });
  test('an unknown rule, with what was perhaps meant', () => {
    expect(problems({ log: held, rules: ['gb-70c-2mins'] })[0]).toContain('perhaps gb-70c-2min');
    expect(problems({ log: held, rules: ['us-poultry-chicken-12pct'] })[0]).toContain(
      'us-poultry-7log-chicken-12pct-fat',
    );
    expect(problems({ log: held, rules: ['__proto__'] })[0]).toContain('an unknown rule');
  });
  test('chilling that began before cooking ended', () => {
    expect(problems({ log: held, rules, cookEndMin: 2, chillStartMin: 1 })[0]).toMatch(/^chillStartMin/);
  });
});

test('the schema of the input can be published', () => {
  const schema = z.toJSONSchema(JudgeInput, { io: 'input' });
  expect(Object.keys(schema.properties ?? {})).toEqual([
    'log',
    'rules',
    'targets',
    'gapMin',
    'cookEndMin',
    'chillStartMin',
  ]);
});

describe('judge by targets', () => {
  const at = (C: number, min: number) => [
    { min: 0, C },
    { min, C },
  ];
  test('a target of one’s own is a model, at its edge', () => {
    const target = { referenceC: 70, zC: 7.5, min: 2 };
    const says = (min: number) => runJudge({ log: at(65, min), targets: [target], gapMin: 60 })[0]!;
    expect(says(9.29)).toMatchObject({ type: 'model', passes: true, source: 'Stated by the user.' });
    expect(says(9.28).passes).toBe(false);
    expect(JudgeAnswer.safeParse([says(9.29)]).success).toBe(true);
  });
  test('an organism is told in decades, between the temperatures it was measured at', () => {
    const targets = [{ organism: 'perfringens-beef', log10: 6 }];
    const [verdict] = runJudge({ log: at(60, 31.8), targets, gapMin: 60 });
    expect(verdict).toMatchObject({ passes: true, reduction: { capped: false, fromC: 55, toC: 62.5 } });
    expect(verdict?.reduction?.log10).toBeCloseTo(6, 6);
    expect(runJudge({ log: at(60, 31.7), targets, gapMin: 60 })[0]?.passes).toBe(false);
    expect(runJudge({ log: at(54, 900), targets, gapMin: 1000 })[0]).toMatchObject({
      verdict: 'not covered',
      reduction: { log10: 0 },
    });
  });
  test('stands after the rules, and an organism that is not known is refused', () => {
    const both = { rules: ['gb-70c-2min'], targets: [{ referenceC: 90, zC: 9, min: 10 }] };
    expect(runJudge({ log: at(72, 5), ...both }).map((v) => v.type)).toEqual(['guidance', 'model']);
    const wrong = { log: at(72, 5), targets: [{ organism: 'perfringens-beaf', log10: 6 }] };
    expect(problems(wrong)[0]).toMatch(/targets\[0\]\.organism.*perhaps perfringens-beef/);
  });
});
