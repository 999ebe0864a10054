import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dominates } from '../core/method/gentle.ts';
import { judge } from '../core/microbes/judge.ts';
import { runCook } from './cook.ts';
import { cookingRules } from './cooking-rules.ts';
import { type GentleAnswer, inSteps, runGentle } from './gentle.ts';
import { InputProblems } from './problem.ts';

const cylinder = (over: object = {}) => ({
  body: {
    shape: 'cylinder' as const,
    diameterMm: 60,
    layers: [{ name: 'forcemeat', properties: { kWmK: 0.48, rhoKgM3: 1050, cpJkgK: 3500 } }],
  },
  startC: 5,
  stages: [
    { name: 'bath', mediumC: { low: 62, high: 98 }, hWm2K: 500, until: { min: 60 } },
    { name: 'ice water', mediumC: 1, hWm2K: 400, until: { warmestC: 8 } },
  ],
  target: { referenceC: 70, zC: 7.5, min: 2 },
  atMostMin: 70,
  ...over,
});
const plain = (mediumC: number) => {
  const { atMostMin: _, ...rest } = cylinder();
  return { ...rest, stages: [{ ...rest.stages[0], mediumC }, rest.stages[1]] } as Parameters<
    typeof inSteps
  >[0];
};
const asProgramme = (p: GentleAnswer['front'][number]) => ({
  s: p.min,
  overcooked: p.overcookedPct,
  loss: p.meanLossPct,
});

/** Run again, cut off at lifting out, and held to target and rule. */
function passesAgain(steps: readonly { mediumC: number; min: number }[]): boolean {
  const programme = inSteps(plain(90), 0, steps);
  const answer = runCook({ ...programme, stages: programme.stages.slice(0, steps.length) });
  const { min, coldSpotC } = answer.history;
  const points = min.flatMap((m, i) =>
    i > 0 && m <= (min[i - 1] ?? 0) ? [] : [{ s: m * 60, C: coldSpotC[i] ?? 0 }],
  );
  return (
    answer.lethality.passes &&
    judge(points, cookingRules(['gb-70c-2min']), { gap: 86_400 }).every((v) => v.passes === true)
  );
}

describe('runGentle', () => {
  const answer = runGentle(cylinder());

  test('the front is one: none beats another, all in time, hotter is quicker', () => {
    expect(answer.front.length).toBeGreaterThan(5);
    for (const a of answer.front) {
      expect(a.min).toBeLessThanOrEqual(70);
      expect(answer.front.some((b) => dominates(asProgramme(b), asProgramme(a)))).toBe(false);
    }
    const minutes = answer.front.map((p) => p.min);
    expect([...minutes].sort((a, b) => b - a)).toEqual(minutes);
  });

  test('every programme passes when it is run again', () => {
    for (const p of answer.front) expect(passesAgain([p])).toBe(true);
    for (const p of answer.twoSteps) expect(passesAgain(p.steps)).toBe(true);
  });

  test('each is as short as it can be: a minute less does not pass', () => {
    for (const p of answer.front.slice(0, 3))
      expect(passesAgain([{ mediumC: p.mediumC, min: p.min - 1 }])).toBe(false);
  });

  test('no temperature of a grid of tenths beats the one recommended', () => {
    const best = answer.recommended;
    expect(best).not.toBeNull();
    if (best === null) return;
    // Anything cooler than the coolest that is quick enough is too slow; anything hotter is no gentler.
    for (const cooler of [0.1, 0.2, 0.5, 2])
      expect(passesAgain([{ mediumC: best.mediumC - cooler, min: 70 }])).toBe(false);
    for (const p of answer.front) {
      expect(p.overcookedPct).toBeGreaterThanOrEqual(best.overcookedPct);
      if (p.overcookedPct === best.overcookedPct)
        expect(p.meanLossPct).toBeGreaterThanOrEqual(best.meanLossPct);
    }
  });

  test('in a hurry, two temperatures overcook less than one', () => {
    const hurried = runGentle(cylinder({ atMostMin: 45 }));
    expect(hurried.recommendedTwoSteps).not.toBeNull();
    expect(hurried.recommendedTwoSteps?.overcookedPct).toBeLessThan(hurried.recommended?.overcookedPct ?? 0);
    expect(passesAgain(hurried.recommendedTwoSteps?.steps ?? [])).toBe(true);
  });

  test('what is lost is never more than the water that is in the piece', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 0.8, noNaN: true }), (water) => {
        const rest = 1 - water;
        const composition = { water, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 };
        const fat = { ...composition, fat: 0.9 * rest, protein: 0.1 * rest };
        const body = { ...cylinder().body, layers: [{ name: 'fat', composition: fat }] };
        const { front, twoSteps } = runGentle(cylinder({ body, atMostMin: 300, twoSteps: false }));
        expect(front.length).toBeGreaterThan(0);
        for (const p of [...front, ...twoSteps]) {
          expect(p.meanLossPct).toBeLessThanOrEqual(100 * water * (1 + 1e-9));
          expect(p.saltedLossPct).toBeLessThanOrEqual(100 * water * (1 + 1e-9));
        }
      }),
      { numRuns: 6 },
    );
  });

  test('too little time is an answer, and nothing is offered', () => {
    const none = runGentle(cylinder({ atMostMin: 10 }));
    expect(none.front).toEqual([]);
    expect(none.recommended).toBeNull();
    expect(none.why).toMatch(/cannot be done in 10 min/);
  });

  test('what passes the target but not the rule is not offered', () => {
    const input = cylinder({
      atMostMin: 600,
      stages: [{ ...cylinder().stages[0], mediumC: { low: 57, high: 59.5 } }],
      twoSteps: false,
    });
    expect(runGentle({ ...input, rules: [] }).front.length).toBeGreaterThan(0);
    expect(runGentle(input).front).toEqual([]);
  });
});

describe('its input', () => {
  test.each([
    [{ stages: [{ ...cylinder().stages[0], mediumC: 90 }] }, 'stages'],
    [{ stages: [cylinder().stages[0], { ...cylinder().stages[0], name: 'again' }] }, 'stages[1].mediumC'],
    [{ stages: [{ ...cylinder().stages[0], mediumC: { low: 90, high: 60 } }] }, 'stages[0].mediumC'],
    [{ atMostMin: undefined }, 'atMostMin'],
    [{ atMostMin: -3 }, 'atMostMin'],
    [{ rules: ['gb-chill-90min-8c'] }, 'rules[0]'],
    [{ gentleness: 3 }, 'gentleness'],
    [
      { stages: [{ name: 's', medium: 'steam', mediumC: { low: 60, high: 100 }, until: { min: 3 } }] },
      'stages[0].mediumC.low',
    ],
  ])('%j is refused at %s', (over, path) => {
    try {
      runGentle(cylinder(over));
    } catch (error) {
      expect(error).toBeInstanceOf(InputProblems);
      if (error instanceof InputProblems) expect(error.problems[0]?.path).toBe(path);
      return;
    }
    expect.unreachable('nothing was refused');
  });
});
