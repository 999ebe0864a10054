import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { theta } from '../core/heat/series.ts';
import { type FitAnswer, runFit, FitAnswer as Schema } from './fit.ts';
import { InputProblems } from './problem.ts';

const food = { kWmK: 0.48, rhoKgM3: 1050, cpJkgK: 3500 };
const alpha = food.kWmK / food.rhoKgM3 / food.cpJkgK;
const layers = [{ name: 'food', properties: food }];

/** Standard normal deviates from a seed. */
function normal(seed: number): () => number {
  let state = (seed * 2_654_435_761 + 12_345) >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let x = Math.imul(state ^ (state >>> 15), state | 1);
    x ^= x + Math.imul(x ^ (x >>> 7), x | 61);
    return (((x ^ (x >>> 14)) >>> 0) + 0.5) / 4_294_967_296;
  };
  return () => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());
}

interface Made {
  readonly h: number;
  readonly diameterMm: number;
  readonly radiusMm: number;
  readonly minutes: number;
  readonly count: number;
  readonly conducts?: number;
}

/** A log worked out from the exact series of a cylinder, apart from the engine. */
function seriesLog({ h, diameterMm, radiusMm, minutes, count, conducts = 1 }: Made) {
  const R = diameterMm / 2000;
  const Bi = (h * R) / (food.kWmK * conducts);
  return Array.from({ length: count }, (_, i) => {
    const min = ((i + 1) * minutes) / count;
    const Fo = (alpha * conducts * min * 60) / R ** 2;
    return { min, C: 95 - 90 * theta('cylinder', Bi, Fo, radiusMm / (diameterMm / 2)) };
  });
}

const input = (log: { min: number; C: number }[], made: Made, fit: string[], more: object = {}) => ({
  body: { shape: 'cylinder', diameterMm: made.diameterMm, layers },
  startC: 5,
  stages: [{ name: 'steam', mediumC: 95, hWm2K: 500, until: { min: made.minutes } }],
  probe: { radiusMm: made.radiusMm },
  log,
  fit,
  ...more,
});

const noisy = (log: { min: number; C: number }[], seed: number, sd: number, drift = 0) => {
  const gauss = normal(seed);
  let e = gauss();
  return log.map(({ min, C }) => {
    e = drift * e + Math.sqrt(1 - drift ** 2) * gauss();
    return { min, C: C + sd * e };
  });
};

const holds = (answer: FitAnswer, name: string, truth: number) => {
  const value = answer.fitted[name]!;
  return value.low95 <= truth && truth <= value.high95;
};

const refusal = (raw: unknown): string[] => {
  try {
    runFit(raw);
  } catch (error) {
    if (error instanceof InputProblems)
      return error.problems.map((p) => `${p.path}: ${p.found}; ${p.allowed}`);
    throw error;
  }
  return [];
};

const usual: Made = { h: 150, diameterMm: 50, radiusMm: 0, minutes: 60, count: 60 };

describe('runFit', () => {
  test('without noise it gives back what a log from the exact series was made with', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 30, max: 200, noNaN: true }),
        fc.double({ min: 30, max: 70, noNaN: true }),
        fc.double({ min: 0.85, max: 1.2, noNaN: true }),
        (h, diameterMm, conducts) => {
          // As long as the piece takes, so that the log has both the climb and its end.
          const minutes = 60 * (diameterMm / 50) ** 2;
          const made = { h, diameterMm, radiusMm: 0, minutes, count: 90, conducts };
          const { fitted } = runFit(input(seriesLog(made), made, ['hWm2K', 'diffusivity']));
          expect(Math.abs(fitted.hWm2K!.value / h - 1)).toBeLessThan(0.005);
          expect(Math.abs(fitted.diffusivity!.value / (alpha * conducts) - 1)).toBeLessThan(0.005);
        },
      ),
      { numRuns: 12, seed: 4 },
    );
  });

  test('a true size is found to half a per cent from a log of another piece than was drawn', () => {
    const made = { ...usual, diameterMm: 47 };
    const { fitted } = runFit(input(seriesLog(made), { ...made, diameterMm: 50 }, ['radiusMm', 'hWm2K']));
    expect(fitted.radiusMm!.value).toBeGreaterThan(23.5 * 0.995);
    expect(fitted.radiusMm!.value).toBeLessThan(23.5 * 1.005);
  });

  const seeds = Array.from({ length: 200 }, (_, i) => i + 1);
  const coverage = (made: Made, fit: string[], truth: Record<string, number>, drift = 0) => {
    const log = seriesLog(made);
    const held = Object.fromEntries(fit.map((name) => [name, 0]));
    let unwidened = 0;
    for (const seed of seeds) {
      const answer = runFit(input(noisy(log, seed, 0.2, drift), made, fit));
      for (const name of fit) if (holds(answer, name, truth[name]!)) held[name]! += 1;
      const { value, low95, high95 } = answer.fitted[fit[0]!]!;
      const narrow = Math.sqrt(answer.effectiveReadings / answer.readings.used);
      const [low, high] = [value - (value - low95) * narrow, value + (high95 - value) * narrow];
      if (low <= truth[fit[0]!]! && truth[fit[0]!]! <= high) unwidened += 1;
    }
    return { held, unwidened };
  };
  const within = (held: Record<string, number>) => {
    for (const [name, count] of Object.entries(held)) {
      expect(count, name).toBeGreaterThanOrEqual(180);
      expect(count, name).toBeLessThanOrEqual(198);
    }
  };

  test('over 200 logs with white noise 90 to 99 in 100 intervals hold the truth: coefficient and diffusivity', () => {
    within(coverage(usual, ['hWm2K', 'diffusivity'], { hWm2K: 150, diffusivity: alpha }).held);
  }, 300_000);

  test('the same: coefficient and true radius', () => {
    within(coverage({ ...usual, h: 80 }, ['hWm2K', 'radiusMm'], { hWm2K: 80, radiusMm: 25 }).held);
  }, 300_000);

  test('with noise that drifts the intervals are widened, and would be far too narrow if they were not', () => {
    const made = { ...usual, count: 240 };
    const { held, unwidened } = coverage(made, ['hWm2K'], { hWm2K: 150 }, 0.8);
    expect(held.hWm2K).toBeGreaterThanOrEqual(176);
    expect(unwidened).toBeLessThan(150);
  }, 300_000);

  test('a coefficient so high that it no longer matters is known from below only', () => {
    const made = { ...usual, h: 8000, count: 240 };
    const answer = runFit(input(noisy(seriesLog(made), 5, 0.4), made, ['hWm2K', 'diffusivity']));
    const { hWm2K } = answer.fitted;
    expect(hWm2K).toMatchObject({ highOpen: true, lowOpen: false });
    expect(hWm2K!.low95).toBeGreaterThan(400);
    expect(hWm2K!.low95).toBeLessThan(8000);
    expect(hWm2K!.says).toMatch(/at least \d+ W/);
    expect(answer.warnings.join(' ')).toMatch(/only known from below/);
  });

  test('one probe in the middle of a cylinder cannot tell coefficient, diffusivity and size apart, and says what would', () => {
    const answer = runFit(
      input(noisy(seriesLog(usual), 3, 0.1), usual, ['hWm2K', 'diffusivity', 'radiusMm']),
    );
    for (const name of ['hWm2K', 'diffusivity', 'radiusMm'])
      expect(answer.fitted[name], name).toMatchObject({ told: false });
    expect(answer.warnings[0]).toMatch(/cannot tell the surface coefficient, the diffusivity and the size/);
    expect(answer.warnings[0]).toMatch(/measure the piece/);
    expect(holds(answer, 'hWm2K', 150)).toBe(true);
  });

  test('a log that has hardly begun does not tell what it has not seen', () => {
    const made = { ...usual, minutes: 4, count: 24 };
    const answer = runFit(input(noisy(seriesLog(made), 2, 0.2), made, ['hWm2K', 'diffusivity']));
    expect(Object.values(answer.fitted).some((v) => !v.told)).toBe(true);
    expect(answer.warnings.join(' ')).toMatch(/What would: /);
  });

  test('a log of another programme is not followed, and this is said', () => {
    const log = seriesLog(usual).map(({ min, C }) => ({ min, C: 60 + 0.2 * (C - 60) }));
    const answer = runFit(input(log, usual, ['hWm2K']));
    expect(answer.rmseC).toBeGreaterThan(1);
    expect(answer.warnings.join(' ')).toMatch(/does not follow this log/);
    expect(answer.warnings.join(' ')).toMatch(/residuals drift/);
    expect(answer.warnings.join(' ')).toMatch(/first reading/);
  });

  test('two stages have each their coefficient; what the log covers and is not fitted is named', () => {
    const stages = [
      { name: 'steam', mediumC: 95, hWm2K: 500, until: { min: 60 } },
      { name: 'ice', mediumC: 95, hWm2K: 150, until: { min: 60 } },
    ];
    const made = { ...usual, minutes: 120, count: 120 };
    const log = seriesLog(made);
    const both = runFit(input(log, made, ['hWm2K'], { stages, hStages: [0, 1] }));
    expect(Object.keys(both.fitted)).toEqual(['hWm2K', 'stages[1].hWm2K']);
    expect(both.fitted.hWm2K!.value).toBeCloseTo(150, 0);
    const one = runFit(input(log, made, ['hWm2K'], { stages }));
    expect(one.warnings.join(' ')).toMatch(/coefficient of ice was taken as given/);
  });

  test('readings outside the programme are left out, a long log is fitted by means, and both are said', () => {
    const made = { ...usual, count: 3_600 };
    const log = [{ min: -3, C: 20 }, ...noisy(seriesLog(made), 9, 0.3), { min: 70, C: 40 }];
    const answer = runFit(input(log, made, ['hWm2K']));
    expect(answer.readings).toEqual({ given: 3_602, outside: 2, used: 600, eachOf: 6 });
    expect(answer.residuals).toHaveLength(600);
    expect(holds(answer, 'hWm2K', 150)).toBe(true);
    expect(answer.warnings.join(' ')).toMatch(/means of 6 readings/);
    expect(answer.warnings.join(' ')).toMatch(/2 readings lie before/);
  });

  test('a film in series is not counted as the surface’s own coefficient', () => {
    const resistanceM2KW = 0.002;
    const made = { ...usual, h: 1 / (1 / 300 + resistanceM2KW) };
    const stages = [{ name: 'bath', mediumC: 95, hWm2K: 700, resistanceM2KW, until: { min: 60 } }];
    const { fitted } = runFit(input(seriesLog(made), made, ['hWm2K'], { stages }));
    expect(fitted.hWm2K!.value / 300).toBeCloseTo(1, 2);
    expect(fitted.hWm2K!.given).toBeCloseTo(700, 6);
  });

  test('the answer keeps to its schema, and its numbers to one another', () => {
    const answer = runFit(input(noisy(seriesLog(usual), 8, 0.2), usual, ['hWm2K', 'diffusivity', 'probeMm']));
    expect(Schema.parse(answer)).toEqual(answer);
    const mean = answer.residuals.reduce((s, r) => s + r * r, 0) / answer.residuals.length;
    expect(Math.sqrt(mean)).toBeCloseTo(answer.rmseC, 10);
    answer.residuals.forEach((r, i) => {
      expect(r).toBeCloseTo(answer.measuredC[i]! - answer.predictedC[i]!, 10);
    });
    expect(answer.cautions.join(' ')).toMatch(/local authority/);
    expect(
      runFit(input(noisy(seriesLog(usual), 8, 0.2), usual, ['hWm2K', 'diffusivity', 'probeMm'])),
    ).toEqual(answer);
  });

  test('refuses what cannot be fitted, in the input’s own terms', () => {
    const log = seriesLog(usual);
    const good = input(log, usual, ['hWm2K']);
    expect(refusal({ ...good, probe: { radiusMm: 30 } })[0]).toMatch(
      /^probe\.radiusMm: 30 mm; inside the body/,
    );
    expect(refusal({ ...good, probe: {} })[0]).toMatch(/^probe\.radiusMm: nothing/);
    expect(refusal({ ...good, fit: [] })[0]).toMatch(/^fit: an empty list/);
    expect(refusal({ ...good, fit: ['hWm2K', 'hWm2K'] })[0]).toMatch(/^fit\[1\]: "hWm2K" a second time/);
    expect(refusal({ ...good, fit: ['density'] })[0]).toMatch(/^fit\[0\]: "density"; one of "hWm2K"/);
    expect(refusal({ ...good, hStages: [3] })[0]).toMatch(/^hStages\[0\]: 3; 0 to 0/);
    expect(refusal({ ...good, fit: ['diffusivity'], hStages: [0] })[0]).toMatch(/^hStages: /);
    expect(refusal({ ...good, log: log.slice(0, 4).reverse() })[0]).toMatch(/^log\[1\]\.min: /);
    expect(refusal({ ...good, log: log.map((p) => ({ ...p, min: p.min + 100 })) })[0]).toMatch(
      /^log: 0 readings within the programme; at least 4/,
    );
    expect(refusal({ ...good, log: [{ min: 0, C: Number.NaN }] }).length).toBeGreaterThan(0);
    expect(refusal({ ...good, unknown: 1 })[0]).toMatch(/^unknown: an unknown key/);
    const stages = [{ name: 's', mediumC: 90, hWm2K: 5, until: { lethalityMin: 2 } }];
    expect(refusal({ ...good, stages })[0]).toMatch(/^stages\[0\]\.until: lethalityMin/);
  });

  test('stops when it is told to', () => {
    let calls = 0;
    const stop = () => {
      calls += 1;
      return calls < 5;
    };
    expect(() => runFit(input(seriesLog(usual), usual, ['hWm2K']), { onProgress: stop })).toThrow(/stopped/);
    expect(calls).toBe(5);
  });
});
