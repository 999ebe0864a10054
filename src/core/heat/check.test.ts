import { describe, expect, test } from 'vitest';
import { Contradiction, OutOfRange } from '../errors.ts';
import { checkProblem } from './check.ts';
import { cook } from './cook.ts';
import type { Body, CookProblem, Layer, Stage } from './types.ts';

const food: Layer = { name: 'filling', material: { properties: { k: 0.5, rho: 1050, cp: 3500 } } };
const skin: Layer = { ...food, name: 'skin', thickness: 0.003 };
const steam: Stage = { name: 'steam', medium: 100, h: 1000, until: { kind: 'time', s: 600 } };
const revolved: Extract<Body, { shape: 'revolved' }> = {
  shape: 'revolved',
  profile: [
    { at: 0, diameter: 0.04 },
    { at: 0.1, diameter: 0.05 },
  ],
  layers: [skin, food],
};
const sound: CookProblem = {
  body: revolved,
  start: 4,
  stages: [steam],
  target: { reference: 70, z: 7.5, s: 120 },
};
const body = (b: Body): CookProblem => ({ ...sound, body: b });
const stage = (s: Partial<Stage>): CookProblem => ({ ...sound, stages: [{ ...steam, ...s }] });
const profile = (...points: [number, number][]): CookProblem =>
  body({ ...revolved, profile: points.map(([at, diameter]) => ({ at, diameter })) });

test('a sound problem passes', () => {
  expect(() => checkProblem(sound)).not.toThrow();
});

describe('what cannot be is refused, with its place and what is allowed', () => {
  test.each<[string, CookProblem, string, string]>([
    ['one profile point', profile([0, 0.04]), 'body.profile', '2 to 400'],
    [
      'profile reversed',
      profile([0, 0.04], [0.1, 0.05], [0.05, 0.04]),
      'body.profile[2].at',
      'more than the point before',
    ],
    [
      'profile point twice',
      profile([0, 0.04], [0, 0.05]),
      'body.profile[1].at',
      'more than the point before',
    ],
    ['profile not from 0', profile([0.01, 0.04], [0.1, 0.05]), 'body.profile[0].at', '0 m at the first'],
    [
      'a waist of nothing',
      profile([0, 0.04], [0.05, 0], [0.1, 0.04]),
      'body.profile[1].diameter',
      'more than 0 m',
    ],
    ['a negative diameter', profile([0, -0.04], [0.1, 0.04]), 'body.profile[0].diameter', '0 m to 2 m'],
    [
      'a diameter that is no number',
      profile([0, Number.NaN], [0.1, 0.04]),
      'body.profile[0].diameter',
      '2 m',
    ],
    ['a million metres', profile([0, 0.04], [1e6, 0.04]), 'body.profile[1].at', '2 m'],
    [
      'nothing as wide as a millimetre',
      profile([0, 0.0001], [0.1, 0.0001]),
      'body.profile',
      'at least 0.001 m',
    ],
    [
      'a skin thicker than the end',
      profile([0, 0.005], [0.1, 0.05]),
      'body.layers',
      'leave something inside',
    ],
    ['a point under a skin', profile([0, 0], [0.1, 0.05]), 'body.layers', 'leave something inside'],
    [
      'a sphere of half a millimetre',
      body({ shape: 'sphere', diameter: 5e-4, layers: [food] }),
      'body.diameter',
      '0.001 m',
    ],
    [
      'a block without height',
      body({ shape: 'block', width: 0.1, height: 0, layers: [food] }),
      'body.height',
      '0.001 m',
    ],
    [
      'a slab thinner than its skin',
      body({ shape: 'slab', thickness: 0.006, layers: [skin, food] }),
      'body.layers',
      'leave',
    ],
    ['no layers', body({ ...revolved, layers: [] }), 'body.layers', '1 to 4'],
    ['five layers', body({ ...revolved, layers: [skin, skin, skin, skin, food] }), 'body.layers', '1 to 4'],
    [
      'an outer layer without thickness',
      body({ ...revolved, layers: [food, food] }),
      'body.layers[0].thickness',
      'every layer but',
    ],
    [
      'an inner layer with one',
      body({ ...revolved, layers: [skin] }),
      'body.layers[0].thickness',
      'fills what is left',
    ],
    [
      'a layer of no thickness',
      body({ ...revolved, layers: [{ ...skin, thickness: 0 }, food] }),
      'body.layers[0].thickness',
      '0.00001 m',
    ],
    [
      'a conductivity of nothing',
      body({ ...revolved, layers: [{ name: 'x', material: { properties: { k: 0, rho: 1000, cp: 3500 } } }] }),
      'body.layers[0].properties.k',
      '0.01',
    ],
    [
      'fractions that do not sum',
      body({
        ...revolved,
        layers: [
          {
            name: 'x',
            material: {
              composition: { water: 0.7, protein: 0.2, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 },
            },
          },
        ],
      }),
      'body.layers[0].composition',
      '1 ± 0.005',
    ],
    ['a start of −50 °C', { ...sound, start: -50 }, 'start', '-40 °C to 150 °C'],
    ['no stages', { ...sound, stages: [] }, 'stages', '1 to 100'],
    ['h of nothing', stage({ h: 0 }), 'stages[0].h', 'more than 0'],
    ['h that is no number', stage({ h: Number.NaN }), 'stages[0].h', '100000'],
    ['h of a million', stage({ h: 1e6 }), 'stages[0].h', '100000'],
    ['a medium of 400 °C', stage({ medium: 400 }), 'stages[0].medium', '300 °C'],
    ['an empty log', stage({ medium: [] }), 'stages[0].medium', '1 to'],
    [
      'a log with a time twice',
      stage({
        medium: [
          { t: 0, C: 5 },
          { t: 60, C: 90 },
          { t: 60, C: 91 },
        ],
      }),
      'stages[0].medium[2].t',
      'more than the point before, 60 s',
    ],
    [
      'a log that starts before its stage',
      stage({ medium: [{ t: -1, C: 5 }] }),
      'stages[0].medium[0].t',
      '0 s or more',
    ],
    ['a log that is no number', stage({ medium: [{ t: 0, C: Number.NaN }] }), 'stages[0].medium[0].C', '°C'],
    [
      'endless time',
      stage({ until: { kind: 'time', s: Number.POSITIVE_INFINITY } }),
      'stages[0].until.s',
      ' s',
    ],
    ['negative time', stage({ until: { kind: 'time', s: -1 } }), 'stages[0].until.s', '0 s'],
    [
      'a bound of a year',
      stage({ until: { kind: 'coldest', C: 70, atMost: 3.2e7 } }),
      'stages[0].until.atMost',
      '0 s',
    ],
    ['z of nothing', { ...sound, target: { ...sound.target, z: 0 } }, 'target.z', '1 °C'],
    ['a target of nothing', { ...sound, target: { ...sound.target, s: 0 } }, 'target.s', 'more than 0'],
    [
      'a reference of 900 °C',
      { ...sound, target: { ...sound.target, reference: 900 } },
      'target.reference',
      '150 °C',
    ],
    [
      'a probe in the air',
      { ...sound, probes: [{ name: 'p', place: { at: 0.05, radius: 0.03 } }] },
      'probes[0].place.radius',
      'inside the body',
    ],
    [
      'a probe before the end',
      { ...sound, probes: [{ name: 'p', place: { at: -0.01, radius: 0 } }] },
      'probes[0].place.at',
      'inside the body',
    ],
  ])('%s', (_, problem, path, allowed) => {
    let thrown: unknown;
    try {
      cook(problem, { mode: 'coarse' });
    } catch (error) {
      thrown = error;
    }
    expect(thrown instanceof OutOfRange || thrown instanceof Contradiction, String(thrown)).toBe(true);
    const refused = thrown as OutOfRange;
    expect(refused.path).toBe(path);
    expect(refused.allowed.replace('1e-5', '0.00001')).toContain(allowed);
    expect(refused.found).not.toBe('');
  });
});

test('a skin that is too thick is told where along the axis', () => {
  expect(() => checkProblem(profile([0, 0.05], [0.06, 0.005], [0.1, 0.05]))).toThrow(
    /at 0\.06 m along the axis/,
  );
});

test('pointed ends of one layer are cut and cooked', () => {
  const r = cook(
    body({
      ...revolved,
      layers: [food],
      profile: [
        { at: 0, diameter: 0 },
        { at: 0.05, diameter: 0.05 },
        { at: 0.1, diameter: 0 },
      ],
    }),
    { mode: 'coarse' },
  );
  expect(r.coldSpot.at).toBeCloseTo(0.05, 3);
});

test('extremes of what is allowed are cooked, not crashed', () => {
  const film: Layer = { ...food, name: 'film', thickness: 1e-5 };
  const metal: Layer = {
    name: 'tin',
    thickness: 0.002,
    material: { properties: { k: 400, rho: 8900, cp: 385 } },
  };
  const extremes: CookProblem[] = [
    { ...body({ ...revolved, layers: [film, metal, skin, food] }), stages: [{ ...steam, h: 100_000 }] },
    {
      ...body({ shape: 'sphere', diameter: 0.001, layers: [food] }),
      stages: [{ ...steam, h: 100_000, medium: 300 }],
    },
    { ...body({ shape: 'slab', thickness: 2, layers: [food] }), stages: [{ ...steam, h: 1e-3 }] },
    { ...body({ shape: 'block', width: 2, height: 0.001, layers: [food] }) },
    { ...profile([0, 0.03], [2, 0.04]), start: 150, stages: [{ ...steam, medium: -80 }] },
    { ...profile([0, 2], [0.001, 2]) },
  ];
  for (const problem of extremes) {
    const r = cook(problem, { mode: 'coarse' });
    for (const column of [r.history.coldest, r.history.warmest, r.history.coldSpot])
      for (const C of column) {
        expect(C).toBeGreaterThan(-81);
        expect(C).toBeLessThan(301);
      }
  }
});
