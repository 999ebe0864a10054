import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Method } from '../../../../contract/steps.ts';
import { cook } from '../../../../core/heat/cook.ts';
import type { CookProblem, CookResult } from '../../../../core/heat/types.ts';
import { adviceFrom, heatingTime } from '../../../../core/method/advice.ts';
import { verdictOf } from '../../../../core/method/verdict.ts';
import { fromMixBefore, sumOf } from './composition.ts';
import { predictedRules } from './predicted-rules.ts';
import { type Chill, type Cook, errorsOf, faultWords, programmeWith, whereWords } from './programme.ts';
import { hadWords, moreWords, spareWords, verdictWords } from './verdict-words.ts';

const id = (n: number) => `01900000-0000-7000-8000-${String(n).padStart(12, '0')}`;
const common = (n: number, name: string) => ({ id: id(n), name, how: '', handsMin: 0, asks: [] });
const composition = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };
const cookStep = (min: number): Cook => ({
  kind: 'cook',
  ...common(2, 'steam'),
  body: { shape: 'cylinder', diameterMm: 50, layers: [{ name: 'meat', composition }] },
  startC: 4,
  stages: [{ name: 'steam', medium: 'steam', mediumC: 100, until: { min } }],
  target: { referenceC: 70, zC: 7.5, min: 2 },
  rules: ['gb-70c-2min'],
});
const chillStep: Chill = {
  kind: 'chill',
  ...common(3, 'ice'),
  stages: [{ name: 'ice water', medium: 'ice water', mediumC: 1, until: { warmestC: 5 } }],
  rules: ['gb-chill-90min-8c'],
};

interface Ran {
  readonly problem: CookProblem;
  readonly result: CookResult;
}
const runs = new Map<number, Ran>();
beforeAll(() => {
  for (const min of [5, 14, 40]) {
    const programme = programmeWith([cookStep(min), chillStep], cookStep(min));
    if (!programme.ok) throw new Error('the example must run');
    runs.set(min, { problem: programme.problem, result: cook(programme.problem, { mode: 'coarse' }) });
  }
});
const told = (min: number, coarse = false) => {
  const { problem, result } = runs.get(min)!;
  const verdict = verdictOf(problem, result, 1);
  const heating = heatingTime(problem, 0, { mode: 'coarse' });
  return verdictWords({
    verdict,
    problem,
    result,
    units: 'metric',
    advice: adviceFrom(heating, min * 60),
    coarse,
  });
};

describe('the verdict in words', () => {
  test('too short says how many minutes more, where, and how much it has had of what it needs', () => {
    const short = told(5);
    expect(short.state).toBe('does not hold');
    expect(short.word).toMatch(/^Steam: \d+(\.5)? min more$/);
    expect(short.why.join(' ')).toMatch(/coldest point, .* axis, has had .* of the 2 min at 70 °C it needs/);
  });

  test('long enough holds, and says what could be spared', () => {
    const long = told(40);
    expect(long.state).toBe('holds');
    expect(long.why.join(' ')).toMatch(
      /less of “steam” it would hold only with what comes after, and with nothing in hand/,
    );
  });

  test('what reaches the target but not the rule never holds; a target of one’s own is called that', () => {
    const { problem, result } = runs.get(40)!;
    const verdict = verdictOf(problem, result, 1);
    const base = { verdict, result, units: 'metric', advice: null, coarse: false } as const;
    const unmet = [{ title: '70 °C for 2 minutes', why: 'Worth 1 min at 70 °C.' }];
    const against = verdictWords({ ...base, problem, unmet });
    expect(against.state).toBe('does not hold');
    expect(against.word).toBe('Does not meet its rule');
    expect(against.why.join(' ')).toContain('Worth 1 min');
    const own = { ...problem, target: { reference: 50, z: 50, s: 60 } };
    expect(verdictWords({ ...base, problem: own }).why.join(' ')).toContain('your own, and less than 70 °C');
    expect(verdictWords({ ...base, problem }).why.join(' ')).not.toContain('your own');
  });

  test('a first estimate that is close is never called held', () => {
    const { problem, result } = runs.get(40)!;
    const verdict = verdictOf(problem, result, 1);
    const close = { ...verdict, got: 130, needed: 120, margin: 130 / 120 };
    const base = { problem, result, units: 'metric', advice: null } as const;
    expect(verdictWords({ ...base, verdict: close, coarse: true }).state).toBe('unknown');
    expect(verdictWords({ ...base, verdict: close, coarse: false }).state).toBe('holds');
  });

  test('a result in doubt is not known, never holds', () => {
    const { problem, result } = runs.get(40)!;
    const verdict = verdictOf(problem, { ...result, heatBalancePct: 5 }, 1);
    const words = verdictWords({ verdict, problem, result, units: 'metric', advice: null, coarse: false });
    expect(words.state).toBe('unknown');
    expect(words.word).toBe('Not known');
  });

  test('held only by its carry-over says so', () => {
    const { problem, result } = runs.get(14)!;
    const verdict = {
      ...verdictOf(problem, result, 1),
      word: 'holds',
      got: 200,
      gotAtLiftOut: 60,
      holdsAtLiftOut: false,
      restsOn: 'after',
    } as const;
    const words = verdictWords({ verdict, problem, result, units: 'metric', advice: null, coarse: false });
    expect(words.why.join(' ')).toMatch(
      /at lifting out alone would not: the carry-over after it adds 2\.3\smin/,
    );
    expect([words.state, words.word]).toEqual(['not yet', 'Holds only with what comes after']);
    const barely = { ...verdict, gotAtLiftOut: 125, holdsAtLiftOut: true, restsOn: 'barely' } as const;
    const just = verdictWords({
      verdict: barely,
      problem,
      result,
      units: 'metric',
      advice: null,
      coarse: false,
    });
    expect([just.state, just.word]).toEqual(['not yet', 'Only just holds']);
    expect(just.why.join(' ')).toMatch(/little in hand/);
    // Where nothing is in hand at lifting out, nothing is offered to be taken away either.
    const spared = verdictWords({
      verdict,
      problem,
      result,
      units: 'metric',
      advice: { ...adviceFrom(heatingTime(problem, 0, { mode: 'coarse' }), 900), spare: 300 },
      coarse: false,
    });
    expect(spared.why.join(' ')).not.toMatch(/less of/);
  });

  test('US kitchens read it in °F', () => {
    const { problem, result } = runs.get(40)!;
    const verdict = verdictOf(problem, result, 1);
    const words = verdictWords({
      verdict,
      problem,
      result,
      units: 'US',
      advice: null,
      coarse: false,
    }).why.join(' ');
    expect(words).toMatch(/158 °F/);
    expect(words).not.toMatch(/°C/);
  });

  test('nothing is rounded towards safety (property)', () => {
    const minutes = (text: string) => Number(/^([\d.]+)\smin$/.exec(text)?.[1]);
    fc.assert(
      fc.property(fc.double({ min: 1, max: 5_900, noNaN: true }), (s) => {
        expect(minutes(hadWords(s))).toBeLessThanOrEqual(s / 60 + 1e-9);
        expect(minutes(spareWords(s))).toBeLessThanOrEqual(s / 60 + 1e-6);
        expect(minutes(moreWords(s))).toBeGreaterThanOrEqual(s / 60 - 1e-6);
      }),
    );
    expect(hadWords(Number.NaN)).toBe('an unknown time');
  });
});

describe('programmeWith', () => {
  test('puts the edited step in the place of the kept one, cook and chill alike', () => {
    const method: Method = [cookStep(5), chillStep];
    const edited = programmeWith(method, cookStep(9));
    expect(edited.ok && edited.problem.stages[0]!.until).toEqual({ kind: 'time', s: 540 });
    const chilled = programmeWith(method, {
      ...chillStep,
      stages: [{ ...chillStep.stages[0]!, mediumC: 3 }],
    });
    expect(chilled.ok && chilled.problem.stages[1]!.medium).toBe(3);
  });

  test('what is wrong is told at its field, of the step it belongs to', () => {
    const hot = { name: 'steam', medium: 'steam', mediumC: 200, until: { min: 3 } };
    const inCook = programmeWith([cookStep(5), chillStep], { ...cookStep(5), stages: [hot] });
    expect(errorsOf(inCook, 'cook')('stages[0].mediumC')).toMatch(/200.*Allowed/);
    expect(errorsOf(inCook, 'chill')('stages[0].mediumC')).toBeUndefined();
    const inChill = programmeWith([cookStep(5), chillStep], { ...chillStep, stages: [hot] });
    expect(errorsOf(inChill, 'chill')('stages[0].mediumC')).toMatch(/200/);
    expect(errorsOf(inChill, 'cook')('stages[0].mediumC')).toBeUndefined();
  });

  test('a chill with no cook before it says so', () => {
    const alone = programmeWith([chillStep], chillStep);
    expect(alone.ok).toBe(false);
    if (!alone.ok) expect(faultWords(alone.faults[0]!)).toMatch(/no cook step before/);
  });

  test('a bare number gets the unit of its field; shares are said in per cent', () => {
    const said = (path: string, found: string, allowed: string) => faultWords({ path, found, allowed });
    expect(said('stages[0].mediumC', '400', 'at most 300')).toBe('400 °C. Allowed: at most 300 °C');
    expect(said('stages[0].until.min', '-5', 'at least 0')).toBe('-5 min. Allowed: at least 0 min');
    expect(said('body.diameterMm', '"x"', 'a number')).toBe('"x". Allowed: a number');
    const composition = { water: 0.9, protein: 0.32, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 };
    const edited = cookStep(5);
    const body = { ...edited.body, layers: [{ name: 'meat', composition }] } as Cook['body'];
    const wrong = programmeWith([{ ...edited, body }], { ...edited, body });
    expect(wrong.ok || wrong.faults.map(faultWords)).toEqual([
      'together 122 %. Allowed: 100 %, give or take 0.5',
    ]);
  });

  test('places are said as the fields are named, counted from 1', () => {
    expect(whereWords('body.profile[2].diameterMm')).toBe('point 3, diameter');
    expect(whereWords('body.layers[0].thicknessMm')).toBe('layer 1, thickness');
    expect(whereWords('stages[1].mediumC')).toBe('stage 2, temperature');
    expect(whereWords('startC')).toBe('start temperature');
  });
});

describe('predictedRules', () => {
  test('cooking at the point that gets least, cooling at the one that stays warmest', () => {
    const { result } = runs.get(40)!;
    const said = predictedRules(result, ['gb-70c-2min', 'gb-chill-90min-8c'], 0, 1);
    expect(said.map((v) => [v.rule, v.passes])).toEqual([
      ['gb-70c-2min', true],
      ['gb-chill-90min-8c', true],
    ]);
    const short = predictedRules(runs.get(5)!.result, ['gb-70c-2min'], 0, 1);
    expect(short[0]!.passes).not.toBe(true);
  });

  test('an unknown rule is not judged as anything', () => {
    expect(predictedRules(runs.get(40)!.result, ['no-such-rule'], 0, 1)).toEqual([]);
  });
});

describe('composition', () => {
  test('sumOf says what is missing, as the engine asks it', () => {
    expect(sumOf(composition).ok).toBe(true);
    const short = sumOf({ ...composition, water: 0.6 });
    expect(short.ok).toBe(false);
    expect(short.words).toMatch(/94 %: 6 % is missing/);
    expect(sumOf({ ...composition, water: 0.7 }).words).toMatch(/4 % too much/);
    expect(sumOf({ ...composition, water: 0.665 }).ok).toBe(true);
  });

  test('fromMixBefore: by weight where every line says what it is, else it names who does not', () => {
    const water = { water: 1, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 };
    const mix = (lines: { ingredient: string; g: number; composition?: typeof water }[]) =>
      ({ kind: 'mix', ...common(1, 'forcemeat'), lines, maxC: 12 }) as Method[number];
    const known = fromMixBefore(
      [
        mix([
          { ingredient: 'meat', g: 300, composition },
          { ingredient: 'water', g: 100, composition: water },
        ]),
        cookStep(5),
      ],
      id(2),
    );
    expect(known.state === 'known' && known.composition.water).toBeCloseTo((0.66 * 3 + 1) / 4, 4);
    const part = fromMixBefore(
      [
        mix([
          { ingredient: 'meat', g: 300, composition },
          { ingredient: 'juniper', g: 3 },
        ]),
        cookStep(5),
      ],
      id(2),
    );
    expect(part).toMatchObject({ state: 'incomplete', missing: ['juniper'] });
    expect(fromMixBefore([cookStep(5)], id(2)).state).toBe('none');
  });
});

test('says how far the probe goes in to reach the coldest point', () => {
  expect(told(40).why.join(' ')).toMatch(/Put the probe there: 2[45] mm in from the side\./);
});
