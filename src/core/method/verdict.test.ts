import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cook } from '../heat/cook.ts';
import type { Body, CookProblem, CookResult } from '../heat/types.ts';
import type { MixtureRule } from '../properties/mixture-conductivity.ts';
import { heatingStageOf, historyAt, mediumAtEnd, restsOn, verdictOf } from './verdict.ts';

const meat = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };
const sphere: Body = {
  shape: 'sphere',
  diameter: 0.05,
  layers: [{ name: 'meat', material: { composition: meat } }],
};
const problemOf = (steamS: number, over: Partial<CookProblem> = {}): CookProblem => ({
  body: sphere,
  start: 4,
  stages: [
    { name: 'steam', medium: 100, h: 1000, until: { kind: 'time', s: steamS } },
    { name: 'rest', medium: 20, h: 10, until: { kind: 'time', s: 300 } },
    { name: 'ice water', medium: 1, h: 400, until: { kind: 'warmest', C: 8 } },
  ],
  target: { reference: 70, z: 7.5, s: 120 },
  ...over,
});
const run = (problem: CookProblem) => cook(problem, { mode: 'coarse' });

describe('verdictOf', () => {
  test('short cooking is short, long cooking holds, at the same point and by the engine’s own lethality', () => {
    const shortOf = problemOf(300);
    const short = verdictOf(shortOf, run(shortOf), 2);
    expect(short.word).toBe('short');
    expect(short.reachedAt).toBeNull();
    const longOf = problemOf(1500);
    const result = run(longOf);
    const long = verdictOf(longOf, result, 2);
    expect(long.word).toBe('holds');
    expect(long.got).toBe(result.lethality.s);
    expect(long.restsOn).toBe('lift-out');
    expect(long.margin).toBeCloseTo(result.lethality.s / 120, 9);
    expect(long.coldSpot.radius).toBeCloseTo(0, 3);
  });

  test('what would hold is unknown where it was doubted beforehand; what is short stays short', () => {
    const doubts = [{ what: 'computed as if nothing dried off', source: 'own-assumption' }];
    const doubted = problemOf(1500, { doubts });
    const verdict = verdictOf(doubted, run(doubted), 2);
    expect(verdict.word).toBe('unknown');
    expect(verdict.doubts).toEqual(doubts);
    const short = problemOf(300, { doubts });
    expect(verdictOf(short, run(short), 2).word).toBe('short');
  });

  test('by a rule that conducts better than meat was measured to, nothing holds; by one that does not, it may', () => {
    const by = (conductivityBy: MixtureRule) => {
      const problem = problemOf(1500, {
        body: { ...sphere, layers: sphere.layers.map((l) => ({ ...l, conductivityBy })) },
      });
      return verdictOf(problem, run(problem), 2);
    };
    for (const quick of ['parallel', 'maxwell-eucken', 'kopelman'] as const) {
      expect(by(quick).word).toBe('unknown');
      expect(by(quick).doubts[0]?.what).toMatch(/^meat conducts by .* comparison only/);
    }
    for (const rule of ['levy', 'perpendicular'] as const) expect(by(rule).word).toBe('holds');
  });

  test('a stage under a grill in cool air is the one that heats', () => {
    const grilled = problemOf(300, {
      stages: [
        { name: 'steam', medium: 100, h: 1000, until: { kind: 'time', s: 300 } },
        { name: 'grill', medium: 25, h: 8, surface: { flux: 4000 }, until: { kind: 'time', s: 60 } },
        { name: 'ice water', medium: 1, h: 400, until: { kind: 'warmest', C: 8 } },
      ],
    });
    expect(heatingStageOf(grilled, run(grilled), 2)).toBe(1);
  });

  test('between them lies one that holds only by its carry-over, and it is said so', () => {
    let found = false;
    for (let s = 500; s <= 900 && !found; s += 15) {
      const problem = problemOf(s);
      const verdict = verdictOf(problem, run(problem), 2);
      if (verdict.word !== 'holds' || verdict.holdsAtLiftOut) continue;
      found = true;
      expect(verdict.carryOverShare).toBeGreaterThan(0);
      expect(verdict.gotAtLiftOut).toBeLessThan(verdict.needed);
      expect(verdict.restsOn).toBe('after');
      expect(verdict.peak.t).toBeGreaterThan(verdict.liftOut);
      expect(verdict.coreAtLiftOut).toBeLessThan(verdict.peak.C);
    }
    expect(found).toBe(true);
  });

  test('never holds while the lethality is less than wanted (property)', () => {
    const problem = problemOf(800);
    const result = run(problem);
    fc.assert(
      fc.property(
        fc.oneof(fc.double({ min: 0, max: 1e6, noNaN: true }), fc.constant(Number.NaN)),
        fc.double({ min: 1, max: 1e5, noNaN: true }),
        fc.constantFrom(0, 0.5, 3, Number.NaN),
        (got, needed, heatBalancePct) => {
          const given: CookResult = {
            ...result,
            heatBalancePct,
            lethality: { s: got, reachedAt: got >= needed ? 100 : null, passes: true },
          };
          const verdict = verdictOf({ ...problem, target: { ...problem.target, s: needed } }, given, 2);
          if (verdict.word !== 'holds') return true;
          return got >= needed && heatBalancePct < 1;
        },
      ),
      { numRuns: 300 },
    );
  });

  test('a result whose heat does not balance is unknown, not fine', () => {
    const problem = problemOf(1500);
    const result = { ...run(problem), heatBalancePct: 4 };
    const verdict = verdictOf(problem, result, 2);
    expect(verdict.word).toBe('unknown');
    expect(verdict.doubts[0]!.what).toMatch(/did not close/);
  });

  test('started frozen it needs longer; with constant properties, which know no ice, it is unknown', () => {
    const thawed = problemOf(1500, {});
    const frozen = problemOf(1500, { start: -10 });
    const [before, after] = [verdictOf(thawed, run(thawed), 2), verdictOf(frozen, run(frozen), 2)];
    expect(after.doubts).toEqual([]);
    expect(after.got).toBeLessThan(before.got);
    const constant = {
      ...frozen,
      body: {
        ...frozen.body,
        layers: [{ name: 'meat', material: { properties: { k: 0.5, rho: 1050, cp: 3500 } } }],
      },
    };
    expect(verdictOf(constant, run(constant), 2).word).toBe('unknown');
    const chilledHard = {
      ...constant,
      start: 5,
      stages: [
        { name: 'steam', medium: 100, h: 1000, until: { kind: 'time', s: 1500 } as const },
        { name: 'blast', medium: -30, h: 40, until: { kind: 'time', s: 5400 } as const },
      ],
    };
    const result = run(chilledHard);
    expect(Math.min(...result.history.coldest)).toBeLessThan(-0.5);
    expect(verdictOf(chilledHard, result, 1).word).toBe('holds');
  });

  test('a stage whose condition was not met is named', () => {
    const problem = problemOf(600, {
      stages: [{ name: 'bath', medium: 60, h: 300, until: { kind: 'coldest', C: 65, atMost: 1200 } }],
    });
    expect(verdictOf(problem, run(problem), 1).notReached).toEqual(['bath']);
  });
});

describe('restsOn', () => {
  test('the heat alone only with half a degree in hand; never while short at lifting out (property)', () => {
    const step = 2 * 10 ** (0.5 / 7.5);
    expect([1.999, 2, step - 1e-6, step, 400].map((got) => restsOn(got, 2, 7.5))).toEqual([
      'after',
      'barely',
      'barely',
      'lift-out',
      'lift-out',
    ]);
    const positive = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(
        fc.oneof(positive, fc.constant(Number.NaN)),
        positive,
        fc.double({ min: 4, max: 20, noNaN: true }),
        (got, needed, z) => {
          const rests = restsOn(got, needed, z);
          return got >= needed ? rests !== 'after' : rests === 'after';
        },
      ),
    );
  });
});

describe('heatingStageOf', () => {
  test('steam, rest, ice water: the steam', () => {
    const problem = problemOf(900);
    expect(heatingStageOf(problem, run(problem), 2)).toBe(0);
  });

  test('a hotter stage after a cooler one is the last that heats', () => {
    const problem = problemOf(0, {
      stages: [
        { name: 'bath', medium: 62, h: 300, until: { kind: 'time', s: 3000 } },
        { name: 'oven', medium: 180, h: 25, until: { kind: 'time', s: 300 } },
        { name: 'fridge', medium: 3, h: 9, until: { kind: 'time', s: 600 } },
      ],
    });
    expect(heatingStageOf(problem, run(problem), 2)).toBe(1);
  });
});

describe('reading histories and media', () => {
  test('historyAt: at a point its value, between two their mean, held beyond', () => {
    const t = Float64Array.of(0, 10, 30);
    const C = Float64Array.of(4, 8, 20);
    expect([-5, 0, 5, 10, 20, 30, 99].map((at) => historyAt(t, C, at))).toEqual([4, 4, 6, 8, 14, 20, 20]);
  });

  test('mediumAtEnd of a log: straight between points, held after the last', () => {
    const stage = {
      name: 'log',
      h: 10,
      until: { kind: 'time', s: 100 },
      medium: [
        { t: 0, C: 90 },
        { t: 100, C: 100 },
      ],
    } as const;
    expect([0, 50, 500].map((s) => mediumAtEnd(stage, s))).toEqual([90, 95, 100]);
  });
});
