import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { CookAnswer, CookInput, runCook, toProblem } from './cook.ts';
import { InputProblems } from './problem.ts';

// The example of the contract's own description.
const example = {
  body: {
    shape: 'revolved',
    lengthMm: 180,
    profile: [
      { atMm: 0, diameterMm: 40 },
      { atMm: 120, diameterMm: 56 },
      { atMm: 180, diameterMm: 50 },
    ],
    layers: [
      {
        name: 'skin',
        thicknessMm: 3,
        composition: { water: 0.6, protein: 0.15, fat: 0.24, carbohydrate: 0, fibre: 0, ash: 0.01 },
      },
      {
        name: 'filling',
        composition: { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 },
      },
    ],
  },
  startC: 4,
  stages: [
    { name: 'steam', mediumC: 100, hWm2K: 1000, until: { min: 40 } },
    { name: 'ice water', mediumC: 1, hWm2K: 400, until: { warmestC: 5 } },
  ],
  target: { referenceC: 70, zC: 7.5, min: 2 },
};

// biome-ignore lint/suspicious/noExplicitAny: a test bends a copy of the example into every wrong shape
type Loose = any;
const bent = (bend: (x: Loose) => void) => {
  const copy: Loose = structuredClone(example);
  bend(copy);
  return copy;
};
function problemsFor(input: unknown) {
  try {
    runCook(input);
  } catch (error) {
    if (error instanceof InputProblems) return error.problems;
    throw error;
  }
  return [];
}

describe('runCook', () => {
  const answer = runCook({ ...example, mode: 'coarse' });
  test('answers in the contract’s shape', () => {
    expect(() => CookAnswer.parse(JSON.parse(JSON.stringify(answer)))).not.toThrow();
    expect(answer.stages.map((s) => s.name)).toEqual(['steam', 'ice water']);
    expect(answer.stages[0]?.endMin).toBe(40);
    expect(answer.stages[1]?.reached).toBe(true);
    expect(answer.stages[1]?.warmestC as number).toBeLessThanOrEqual(5);
    expect(answer.lethality.passes).toBe(true);
    expect(answer.coldSpot).toHaveProperty('atMm');
    expect(answer.heatBalancePct).toBeLessThan(0.1);
  });
  test('every column of the history is as long as its times', () => {
    const { min, ...columns } = answer.history;
    for (const column of Object.values(columns)) expect(column?.length).toBe(min.length);
    expect(min[0]).toBe(0);
    expect(min.at(-1)).toBeCloseTo(answer.stages[1]?.endMin as number, 9);
  });
  test('slab and block give the cold spot from the middle, probes on the same times', () => {
    const { layers } = example.body;
    const common = { ...example, mode: 'coarse' };
    const slab = runCook({
      ...common,
      body: { shape: 'slab', thicknessMm: 40, layers },
      probes: [{ name: 'p', xMm: -5 }],
    });
    expect(slab.coldSpot).toEqual({ xMm: expect.any(Number), yMm: 0 });
    expect(slab.probes[0]?.C.length).toBe(slab.history.min.length);
    const block = runCook({
      ...common,
      body: { shape: 'block', widthMm: 80, heightMm: 60, layers },
      probes: [{ name: 'p', xMm: 0, yMm: -10 }],
    });
    expect(block.coldSpot).toHaveProperty('yMm');
    const sphere = runCook({
      ...common,
      body: { shape: 'sphere', diameterMm: 40, layers },
      probes: [{ name: 'p', radiusMm: 3 }],
    });
    expect(sphere.coldSpot).toHaveProperty('radiusMm');
  });
  test('a named medium fills in its coefficient and says so', () => {
    const named = runCook(
      bent((x) => {
        x.mode = 'coarse';
        x.stages = [{ name: 'steam', medium: 'steam', until: { min: 10 } }];
      }),
    );
    expect(named.basis.some((b) => /1000 W.*400 to 5000/.test(b.what))).toBe(true);
  });
  test('a wrap in series slows the middle', () => {
    const wrapped = runCook(
      bent((x) => {
        x.mode = 'coarse';
        for (const s of x.stages) s.resistanceM2KW = 0.002;
      }),
    );
    expect(wrapped.stages[0]?.coldSpotC as number).toBeLessThan((answer.stages[0]?.coldSpotC as number) - 2);
  });
  test('a stage may follow a log', () => {
    const logged = runCook(
      bent((x) => {
        x.mode = 'coarse';
        x.stages[0] = {
          name: 'steam',
          hWm2K: 1000,
          mediumLog: [
            { min: 0, C: 60 },
            { min: 5, C: 100 },
          ],
          until: { min: 40 },
        };
      }),
    );
    expect(logged.history.mediumC[0]).toBe(60);
    expect(logged.lethality.passes).toBe(true);
  });
});

describe('refusals name the path in the input, what was found and what is allowed', () => {
  test.each<[string, (x: Loose) => void, string, RegExp]>([
    [
      'unknown key',
      (x) => {
        x.bodyy = 1;
      },
      'bodyy',
      /keys of the contract/,
    ],
    [
      'unknown key inside',
      (x) => {
        x.stages[1].tempC = 1;
      },
      'stages[1].tempC',
      /keys of the contract/,
    ],
    [
      'profile reversed',
      (x) => {
        x.body.profile.reverse();
      },
      'body.profile[0].atMm',
      /0 mm at the first/,
    ],
    [
      'profile out of order',
      (x) => {
        x.body.profile[1].atMm = 200;
        x.body.lengthMm = 200;
      },
      'body.profile[2].atMm',
      /more than the point before, 200 mm/,
    ],
    [
      'a length that contradicts the profile',
      (x) => {
        x.body.lengthMm = 170;
      },
      'body.lengthMm',
      /180 mm/,
    ],
    [
      '1e9 mm',
      (x) => {
        x.body.profile[2].diameterMm = 1e9;
      },
      'body.profile[2].diameterMm',
      /at most 2000/,
    ],
    [
      '1e400',
      (x) => {
        x.startC = JSON.parse('1e400');
      },
      'startC',
      /finite/,
    ],
    [
      'a negative size',
      (x) => {
        x.body.profile[0].diameterMm = -1;
      },
      'body.profile[0].diameterMm',
      /at least 0/,
    ],
    [
      'a skin too thick',
      (x) => {
        x.body.layers[0].thicknessMm = 20;
      },
      'body.layers',
      /leave something inside/,
    ],
    [
      'fractions that do not sum',
      (x) => {
        x.body.layers[1].composition.water = 0.6;
      },
      'body.layers[1].composition',
      /1 ± 0.005/,
    ],
    [
      'no composition',
      (x) => {
        x.body.layers[1].composition = undefined;
      },
      'body.layers[1]',
      /composition or properties/,
    ],
    [
      'an empty log',
      (x) => {
        x.stages[0].mediumC = undefined;
        x.stages[0].mediumLog = [];
      },
      'stages[0].mediumLog',
      /at least 1/,
    ],
    [
      'an unsorted log',
      (x) => {
        x.stages[0].mediumC = undefined;
        x.stages[0].mediumLog = [
          { min: 2, C: 9 },
          { min: 1, C: 9 },
        ];
      },
      'stages[0].mediumLog[1].min',
      /before, 2 min/,
    ],
    [
      'log and number',
      (x) => {
        x.stages[0].mediumLog = [{ min: 2, C: 9 }];
      },
      'stages[0].mediumLog',
      /either/,
    ],
    [
      'neither log nor number',
      (x) => {
        x.stages[0].mediumC = undefined;
      },
      'stages[0].mediumC',
      /mediumLog/,
    ],
    [
      'two ends',
      (x) => {
        x.stages[0].until = { min: 3, coldestC: 60 };
      },
      'stages[0].until',
      /exactly one of/,
    ],
    [
      'no end',
      (x) => {
        x.stages[0].until = {};
      },
      'stages[0].until',
      /exactly one of/,
    ],
    [
      'a wrong end',
      (x) => {
        x.stages[0].until = { coldestC: 'hot' };
      },
      'stages[0].until.coldestC',
      /finite number/,
    ],
    [
      'no coefficient',
      (x) => {
        x.stages[0].hWm2K = undefined;
      },
      'stages[0].hWm2K',
      /surface coefficient/,
    ],
    [
      'an unknown medium',
      (x) => {
        x.stages[0].medium = 'stean';
      },
      'stages[0].medium',
      /steam, /,
    ],
    [
      'steam at 300 °C',
      (x) => {
        x.stages[0].medium = 'steam';
        x.stages[0].mediumC = 300;
      },
      'stages[0].mediumC',
      /90 to 125/,
    ],
    [
      'a water bath at 130 °C in a log',
      (x) => {
        x.stages[0] = { name: 'b', medium: 'water bath', mediumLog: [{ min: 0, C: 130 }], until: { min: 1 } };
      },
      'stages[0].mediumLog[0].C',
      /40 to 99/,
    ],
    [
      'a bath of no temperature',
      (x) => {
        x.stages[0] = { name: 'b', medium: 'water bath', until: { min: 1 } };
      },
      'stages[0].mediumC',
      /40 to 99/,
    ],
    [
      'an unknown shape',
      (x) => {
        x.body.shape = 'cube';
      },
      'body.shape',
      /"revolved", "cylinder"/,
    ],
    [
      'a probe outside',
      (x) => {
        x.probes = [{ name: 'p', atMm: 90, radiusMm: 40 }];
      },
      'probes[0].radiusMm',
      /0 mm to 26 mm/,
    ],
    [
      'a probe without a place',
      (x) => {
        x.probes = [{ name: 'p', atMm: 90 }];
      },
      'probes[0].radiusMm',
      /distance/,
    ],
  ])('%s', (_, bend, path, allowed) => {
    const problems = problemsFor(bent(bend));
    expect(problems.map((p) => p.path)).toContain(path);
    const problem = problems.find((p) => p.path === path);
    expect(problem?.allowed).toMatch(allowed);
    expect(problem?.found).not.toBe('');
  });
  test('all of a schema’s problems at once', () => {
    expect(
      problemsFor(
        bent((x) => {
          x.startC = 'cold';
          x.target.zC = 0;
          x.stages[0].hWm2K = -1;
        }),
      ).map((p) => p.path),
    ).toEqual(['startC', 'stages[0].hWm2K', 'target.zC']);
  });
  test.each([[null], [5], ['cook'], [[]], [{}]])('%o is refused', (input) => {
    expect(problemsFor(input).length).toBeGreaterThan(0);
  });
});

test('toProblem converts units', () => {
  const problem = toProblem(example);
  expect(problem.body.shape === 'revolved' && problem.body.profile[1]).toEqual({ at: 0.12, diameter: 0.056 });
  expect(problem.stages[0]?.until).toEqual({ kind: 'time', s: 2400 });
  expect(problem.target.s).toBe(120);
});

test('the schema can be published as JSON Schema', () => {
  const schema = z.toJSONSchema(CookInput) as {
    properties: Record<string, unknown>;
    additionalProperties: unknown;
  };
  expect(Object.keys(schema.properties)).toContain('stages');
  expect(schema.additionalProperties).toBe(false);
});

describe('what the engine itself calls not valid does not pass', () => {
  const plate = (startC: number, stage: object) =>
    runCook({
      body: {
        shape: 'slab',
        thicknessMm: 30,
        layers: [{ name: 'meat', properties: { kWmK: 0.5, rhoKgM3: 1000, cpJkgK: 3500 } }],
      },
      startC,
      stages: [{ name: 'heat', until: { min: 60 }, ...stage }],
      target: example.target,
      mode: 'coarse',
    }).lethality;
  test('frozen, with properties that know no ice', () => {
    const got = plate(-18, { mediumC: 100, hWm2K: 1000 });
    expect(got.min).toBeGreaterThan(2);
    expect(got).toMatchObject({ passes: false, verdict: 'unknown' });
    expect(got.doubts.join()).toMatch(/know no ice/);
  });
  test('an oven hot enough to dry it, of whose vapour nothing is said', () => {
    const got = plate(4, { medium: 'fan oven', mediumC: 180 });
    expect(got).toMatchObject({ passes: false, verdict: 'unknown' });
    expect(got.doubts.join()).toMatch(/as if nothing dried off/);
  });
  test('the same wrapped, and thawed in steam, does', () => {
    expect(plate(4, { medium: 'fan oven', mediumC: 180, wrapped: true })).toMatchObject({
      passes: true,
      verdict: 'holds',
      doubts: [],
    });
    expect(plate(4, { mediumC: 100, hWm2K: 1000 }).passes).toBe(true);
  });
});
