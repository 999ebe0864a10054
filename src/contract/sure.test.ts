import { describe, expect, test } from 'vitest';
import { randomFrom } from '../core/numerics/random.ts';
import { runCook } from './cook.ts';
import { InputProblems } from './problem.ts';
import { oneAfterAnother, runSure } from './sure.ts';
import { studyOf } from './sure-input.ts';
import { type RunTasks, taskRunner } from './sure-tasks.ts';

const slab = (over: object = {}) => ({
  body: {
    shape: 'slab',
    thicknessMm: 40,
    layers: [{ name: 'meat', properties: { kWmK: 0.48, rhoKgM3: 1050, cpJkgK: 3500 } }],
  },
  startC: 5,
  stages: [
    { name: 'bath', mediumC: 88, hWm2K: 400, until: { min: 30 } },
    { name: 'ice water', mediumC: 1, hWm2K: 400, until: { warmestC: 8 } },
  ],
  target: { referenceC: 70, zC: 7.5, min: 2 },
  confidence: 0.95,
  ...over,
});
const varied = {
  body: { ...slab().body, thicknessMm: { mean: 40, sd: 1.5 } },
  startC: { low: 2, high: 8 },
  stages: [{ ...slab().stages[0], mediumC: { mean: 88, sd: 1 } }, slab().stages[1]],
};

const manyVary = {
  body: {
    shape: 'revolved',
    profile: Array.from({ length: 6 }, (_, i) => ({ atMm: 30 * i, diameterMm: { mean: 50, sd: 1 } })),
    layers: slab().body.layers,
  },
};

const problemsOf = (input: unknown) => {
  try {
    studyOf(input);
  } catch (error) {
    if (error instanceof InputProblems) return error.problems;
    throw error;
  }
  return [];
};

describe('runSure', () => {
  test('without a spread it is the cook’s own time, rounded up', async () => {
    const answer = await runSure(slab());
    const { confidence: _, ...cook } = slab();
    const own = runCook({
      ...cook,
      stages: [{ ...slab().stages[0], until: { lethalityMin: 2 } }],
    }).stages[0]?.endMin;
    expect(answer.nominalMin).toBe(own);
    expect(answer.minutesForConfidence).toBeGreaterThanOrEqual(own ?? Number.NaN);
    expect(answer.minutesForConfidence).toBeLessThan((own ?? Number.NaN) + 0.0101);
    expect(answer.sensitivity).toEqual([]);
  });

  test('agrees with plain drawing through the engine', async () => {
    const answer = await runSure(slab({ ...varied, samples: 256 }));
    const one = taskRunner(slab(varied));
    const random = randomFrom(99);
    const normal = () => Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
    const study = studyOf(slab(varied));
    expect(study.variables.map((v) => v.input)).toEqual(['body.thicknessMm', 'startC', 'stages[0].mediumC']);
    const times = Array.from(
      { length: 3_000 },
      () =>
        one({
          kind: 'time',
          values: [40 + 1.5 * normal(), 2 + 6 * random(), 88 + normal()],
          mode: 'coarse',
        })[0] ?? 0,
    ).sort((a, b) => a - b);
    const brute = times[Math.round(0.95 * times.length)] ?? 0;
    // Standard error of the 95th percentile of 3000 draws is about 0.5 %; coarse and fine differ by less.
    expect(Math.abs((answer.estimateMin ?? 0) / brute - 1)).toBeLessThan(0.02);
    expect(Math.abs(answer.time.piece.p50 / (times[1_500] ?? 0) - 1)).toBeLessThan(0.01);
  });

  test('more pieces, or more confidence, are never less', async () => {
    const minutes = async (over: object) =>
      (await runSure(slab({ ...varied, samples: 128, ...over }))).minutesForConfidence ?? Number.NaN;
    const [one, dozen, surer] = [
      await minutes({}),
      await minutes({ pieces: 12 }),
      await minutes({ pieces: 12, confidence: 0.99 }),
    ];
    expect(dozen).toBeGreaterThan(one);
    expect(surer).toBeGreaterThan(dozen);
  });

  test('the same for a seed, whoever does the runs and in whatever order', async () => {
    const input = slab({ ...varied, samples: 128, pieces: 6 });
    const backwards: RunTasks = async (tasks) => {
      const one = taskRunner(input);
      const answers = tasks.map((): readonly number[] => []);
      for (let i = tasks.length - 1; i >= 0; i--) {
        const task = tasks[i];
        if (task !== undefined) answers[i] = one(task);
      }
      return answers;
    };
    const plain = await runSure(input, { run: oneAfterAnother(input) });
    expect(await runSure(input, { run: backwards })).toEqual(plain);
    expect((await runSure({ ...input, seed: 2 })).estimateMin).not.toBe(plain.estimateMin);
  });

  test('a bath that may be too cold gives no time, and says so', async () => {
    const answer = await runSure(
      slab({
        stages: [{ ...slab().stages[0], mediumC: { low: 40, high: 80 } }],
        samples: 64,
        pieces: 6,
        rules: ['gb-70c-2min'],
      }),
    );
    expect(answer.minutesForConfidence).toBeNull();
    expect(answer.time.neverPct).toBeGreaterThan(30);
    expect(answer.why).toMatch(/No length of “bath”/);
  });

  test('what varies most matters most', async () => {
    const answer = await runSure(slab({ ...varied, samples: 128 }));
    expect(answer.sensitivity.map((s) => s.input)[0]).toBe('body.thicknessMm');
    expect(answer.sensitivity[0]?.minutesPerSd).toBeGreaterThan(0.3);
    const shares = answer.sensitivity.reduce((sum, s) => sum + s.firstOrder, 0);
    expect(shares).toBeGreaterThan(0.95);
    expect(shares).toBeLessThanOrEqual(1 + 1e-9);
  });

  test('a stage that is stopped too early or too late is part of it', async () => {
    const stage = { ...slab().stages[0], until: { min: { mean: 30, sd: 1 } } };
    const answer = await runSure(slab({ stages: [stage], samples: 64 }));
    expect((answer.estimateMin ?? 0) - (answer.nominalMin ?? 0)).toBeCloseTo(1.645, 1);
  });
});

describe('how far conductivity may be from what the composition says', () => {
  const composition = { water: 0.7, protein: 0.18, fat: 0.1, carbohydrate: 0.01, fibre: 0, ash: 0.01 };
  const composed = (over: object = {}) =>
    slab({ body: { ...slab().body, layers: [{ name: 'mix', composition }] }, samples: 64, ...over });
  const varying = (input: unknown) => studyOf(input).variables.map((v) => [v.input, v.shared]);
  const factor = ['conductivityFactor', true];

  test('is in it without being asked where a composition says it, the same for the whole batch, and not where it is given', () => {
    expect(varying(composed())).toEqual([factor]);
    expect(studyOf(composed()).variables[0]).toMatchObject({ kind: 'uniform', middle: 1 });
    expect(studyOf(composed()).variables[0]?.reach).toBeCloseTo(0.1, 12);
    expect(varying(slab({ samples: 64 }))).toEqual([]);
    expect(varying(composed({ conductivityFactor: 1 }))).toEqual([]);
    expect(varying(composed({ conductivityFactor: { mean: 0.95, sd: 0.02 } }))).toEqual([factor]);
    const perpendicular = [{ name: 'mix', composition, conductivityBy: 'perpendicular' }];
    expect(varying(composed({ body: { ...slab().body, layers: perpendicular } }))).toEqual([]);
  });

  test('asks for longer, is named in what matters, and the answer says where it comes from', async () => {
    const [sure, plain] = [await runSure(composed()), await runSure(composed({ conductivityFactor: 1 }))];
    expect(plain.minutesForConfidence).toBeLessThan((plain.nominalMin ?? 0) + 0.0101);
    // The middle of a thick slab follows its conductivity nearly in proportion: 0.91 of 0.9 to 1.1 is 0.91.
    const longer = (sure.estimateMin ?? 0) / (plain.nominalMin ?? 1);
    expect(longer).toBeGreaterThan(1.05);
    expect(longer).toBeLessThan(1 / 0.91);
    expect(sure.sensitivity[0]).toMatchObject({ input: 'conductivityFactor', shared: true });
    expect(sure.sensitivity[0]?.total).toBeGreaterThan(0.99);
    expect(sure.sensitivity[0]?.minutesPerSd).toBeLessThan(0);
    const said = sure.basis.find((b) => b.what.startsWith('conductivityFactor'));
    expect(said).toMatchObject({ source: 'pham-willix-1989', confidence: 'secondary' });
    expect(plain.basis.some((b) => /as their compositions say, with no spread/.test(b.what))).toBe(true);
  });

  test('a factor that a log was fitted to takes its place, and is the piece with that much more of everything', async () => {
    // Conductivity and coefficient times f, every time through f: the equation is the same, and the wanted lethality a time.
    const at = async (f: number) => {
      const stages = [{ ...slab().stages[0], hWm2K: 400 * f }];
      const target = { ...slab().target, min: 2 / f };
      return (await runSure(composed({ conductivityFactor: f, stages, target }))).nominalMin ?? Number.NaN;
    };
    const plain = await at(1);
    expect(((await at(1.2)) * 1.2) / plain).toBeCloseTo(1, 3);
    expect(((await at(0.8)) * 0.8) / plain).toBeCloseTo(1, 3);
  });

  test('a coefficient that was fitted beside it is said to have made up for some of it', async () => {
    const hFrom = { hWm2K: 400, text: 'fitted from a log' };
    const answer = await runSure(composed({ stages: [{ ...slab().stages[0], hFrom }] }));
    expect(answer.basis.some((b) => /made up for some of its error/.test(b.what))).toBe(true);
  });

  test('asks for no more samples by itself', () => {
    const stages = [{ ...slab().stages[0], mediumC: { mean: 88, sd: 1 }, hWm2K: { low: 300, high: 500 } }];
    const three = composed({ startC: { low: 2, high: 8 }, stages, samples: 16 });
    expect(varying(three)).toHaveLength(4);
  });

  test.each([
    [{ conductivityFactor: 5 }],
    [{ conductivityFactor: { mean: 1, sd: 0.5 } }],
    [{ conductivityFactor: 0.9, body: slab().body }],
  ])('%j is refused', (over) => {
    expect(problemsOf(composed(over))[0]?.path).toBe('conductivityFactor');
  });
});

describe('studyOf', () => {
  test('says which spread leaves what the cook allows', () => {
    const [problem] = problemsOf(slab({ startC: { mean: 5, sd: 50 } }));
    expect(problem?.path).toBe('startC');
    expect(problem?.found).toMatch(/standard deviations below/);
  });

  test.each([
    [{ startC: { mean: 5, spread: 1 } }, 'startC'],
    [{ startC: { low: 8, high: 2 } }, 'startC'],
    [{ startC: { mean: 5, sd: -1 } }, 'startC.sd'],
    [{ confidence: 1 }, 'confidence'],
    [{ confidance: 0.9 }, 'confidance'],
    [{ shared: ['steam'] }, 'shared[0]'],
    [{ stage: 'oven' }, 'stage'],
    [{ samples: 10 }, 'samples'],
    [{ samples: 16, ...manyVary }, 'samples'],
  ])('%j is refused at %s', (over, path) => {
    const found = problemsOf(slab(over));
    expect(found.length).toBeGreaterThan(0);
    expect(found[0]?.path.startsWith(path)).toBe(true);
  });

  test('sizes and starts are each piece’s own, heat and mix the batch’s, unless it is said otherwise', () => {
    const shared = (over: object = {}) =>
      studyOf(slab({ ...varied, ...over }))
        .variables.filter((v) => v.shared)
        .map((v) => v.input);
    expect(shared()).toEqual(['stages[0].mediumC']);
    expect(shared({ shared: ['startC'] })).toEqual(['startC']);
    expect(shared({ shared: [] })).toEqual([]);
  });

  test('a mixture stays whole when one part of it is drawn', () => {
    const composition = {
      water: 0.66,
      protein: 0.15,
      fat: { mean: 0.16, sd: 0.02 },
      carbohydrate: 0.015,
      fibre: 0,
      ash: 0.015,
    };
    const study = studyOf(slab({ body: { ...slab().body, layers: [{ name: 'mix', composition }] } }));
    const drawn = study.draw([0.2]).cook.body.layers[0]?.composition;
    expect(drawn?.fat).toBe(0.2);
    expect(Object.values(drawn ?? {}).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  });

  test('steam in the open is drawn no hotter than it boils, under pressure no hotter than the table goes', () => {
    const drawn = (mean: number, value: number) => {
      const stage = { name: 'steam', medium: 'steam', mediumC: { mean, sd: 1 }, until: { min: 20 } };
      return studyOf(slab({ stages: [stage] })).draw([value]).cook.stages[0]?.mediumC;
    };
    expect(Math.abs((drawn(99.5, 102) ?? 0) - 100)).toBeLessThan(0.1);
    expect(drawn(99.5, 98)).toBe(98);
    expect(drawn(99.5, 60)).toBe(90);
    expect(drawn(120, 124)).toBe(120);
  });

  test('thicker grows every size of the piece', () => {
    const study = studyOf(slab({ thickerMm: { mean: 0, sd: 1 } }));
    expect(study.draw([2]).cook.body).toMatchObject({ thicknessMm: 42 });
  });
});
