import { describe, expect, test } from 'vitest';
import { cook } from '../heat/cook.ts';
import type { Body, CookProblem } from '../heat/types.ts';
import { adviceFrom, heatingTime, withHeating } from './advice.ts';
import { bulged, evenDiameter, evenShape, profileVolume } from './even-shape.ts';
import { shapeCost } from './shape-cost.ts';

const meat = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };
const skin = { water: 0.6, protein: 0.15, fat: 0.24, carbohydrate: 0, fibre: 0, ash: 0.01 };
const layers = [
  { name: 'skin', thickness: 0.003, material: { composition: skin } },
  { name: 'filling', material: { composition: meat } },
];
const tapered: Body = {
  shape: 'revolved',
  profile: [
    { at: 0, diameter: 0.04 },
    { at: 0.12, diameter: 0.056 },
    { at: 0.18, diameter: 0.05 },
  ],
  layers,
};
const problemOf = (body: Body, minutes: number, medium = 100): CookProblem => ({
  body,
  start: 4,
  stages: [
    { name: 'steam', medium, h: 1000, until: { kind: 'time', s: minutes * 60 } },
    { name: 'ice water', medium: 1, h: 400, until: { kind: 'warmest', C: 5 } },
  ],
  target: { reference: 70, z: 7.5, s: 120 },
});

describe('heatingTime', () => {
  test.each([
    ['tapered, from too little', problemOf(tapered, 8)],
    ['tapered, from too much', problemOf(tapered, 90)],
    ['slab', problemOf({ shape: 'slab', thickness: 0.03, layers: layers.slice(1) }, 10)],
    ['sphere', problemOf({ shape: 'sphere', diameter: 0.04, layers }, 10)],
  ])('reaches the target within 0.1 min, on the safe side: %s', (_, problem) => {
    const tolerance = 6;
    const found = heatingTime(problem, 0, { mode: 'coarse', tolerance });
    expect(found.status).toBe('found');
    const lethalityOf = (s: number) => cook(withHeating(problem, 0, s), { mode: 'coarse' }).lethality.s;
    expect(lethalityOf(found.duration)).toBeGreaterThanOrEqual(problem.target.s);
    expect(lethalityOf(found.duration - tolerance)).toBeLessThan(problem.target.s);
    expect(found.runs).toBeLessThan(16);
  });

  test('fine mode too', () => {
    const problem = problemOf(tapered, 20);
    const found = heatingTime(problem, 0, { tolerance: 6 });
    const lethalityOf = (s: number) => cook(withHeating(problem, 0, s)).lethality.s;
    expect(lethalityOf(found.duration)).toBeGreaterThanOrEqual(120);
    expect(lethalityOf(found.duration - 6)).toBeLessThan(120);
  });

  test('a medium that can never do it is told, not guessed', () => {
    const found = heatingTime(problemOf(tapered, 30, 45), 0, { mode: 'coarse', atMost: 7_200 });
    expect(found.status).toBe('never');
    expect(adviceFrom(found, 1_800).more).toBeNaN();
    expect(adviceFrom(found, 1_800).spare).toBe(0);
  });

  test('where a later stage does it alone no time is needed', () => {
    const problem: CookProblem = {
      ...problemOf(tapered, 1),
      stages: [
        { name: 'warm', medium: 60, h: 300, until: { kind: 'time', s: 600 } },
        { name: 'steam', medium: 100, h: 1000, until: { kind: 'time', s: 3600 } },
      ],
    };
    expect(heatingTime(problem, 0, { mode: 'coarse' }).status).toBe('no time needed');
  });
});

describe('adviceFrom', () => {
  test('what is wanting, or what could be spared, never both', () => {
    const heating = { status: 'found', duration: 1_500, lethality: 121, runs: 5 } as const;
    expect(adviceFrom(heating, 900)).toMatchObject({ more: 600, spare: 0 });
    expect(adviceFrom(heating, 1_800)).toMatchObject({ more: 0, spare: 300 });
  });
});

describe('the even piece', () => {
  test('profileVolume: cylinder, cone, and a frustum cut in two', () => {
    const cylinder = [0, 0.1].map((at) => ({ at, diameter: 0.1 }));
    expect(profileVolume(cylinder)).toBeCloseTo(Math.PI * 0.0025 * 0.1, 12);
    const cone = [
      { at: 0, diameter: 0 },
      { at: 0.3, diameter: 0.1 },
    ];
    expect(profileVolume(cone)).toBeCloseTo((Math.PI * 0.0025 * 0.3) / 3, 12);
    const whole = [
      { at: 0, diameter: 0.04 },
      { at: 0.2, diameter: 0.06 },
    ];
    expect(profileVolume([whole[0]!, { at: 0.1, diameter: 0.05 }, whole[1]!])).toBeCloseTo(
      profileVolume(whole),
      14,
    );
  });

  test('has the volume and the length of the piece; an even piece has none', () => {
    const even = evenShape(tapered)!;
    expect(profileVolume(even.profile)).toBeCloseTo(profileVolume(tapered.profile), 12);
    expect(even.profile.at(-1)!.at).toBe(0.18);
    expect(evenShape(even)).toBeNull();
    expect(evenShape({ shape: 'sphere', diameter: 0.05, layers })).toBeNull();
    expect(evenDiameter(even.profile)).toBeCloseTo(even.profile[0]!.diameter, 12);
  });

  test('bulged: nothing for nothing, thicker where it is coldest, untouched far away', () => {
    const place = { at: 0.12, radius: 0 };
    const same = bulged(tapered, 0, place);
    expect(profileVolume((same as typeof tapered).profile)).toBeCloseTo(profileVolume(tapered.profile), 12);
    const fat = bulged(tapered, 0.004, place) as typeof tapered;
    expect(fat.profile.find((p) => p.at === 0.12)!.diameter).toBeCloseTo(0.06, 9);
    expect(fat.profile[0]!.diameter).toBe(0.04);
    expect(bulged({ shape: 'block', width: 0.08, height: 0.06, layers }, 0.002, {})).toMatchObject({
      height: 0.062,
      width: 0.08,
    });
  });

  test('shapeCost: evening out saves time, a bulge costs some', () => {
    const problem = problemOf(tapered, 30);
    const result = cook(problem, { mode: 'coarse' });
    const heating = heatingTime(problem, 0, { mode: 'coarse', tolerance: 1 });
    const cost = shapeCost(problem, 0, heating, result.coldSpot, { mode: 'coarse' });
    expect(cost.even!.saves).toBeGreaterThan(60);
    expect(cost.perMetre!).toBeGreaterThan(0);
  });

  test('a millimetre on a sphere costs about what t ∝ D² says', () => {
    const problem = problemOf({ shape: 'sphere', diameter: 0.05, layers: layers.slice(1) }, 20);
    const heating = heatingTime(problem, 0, { tolerance: 0.5 });
    const { perMetre } = shapeCost(problem, 0, heating, { radius: 0 }, { tolerance: 0.5 });
    const byScaling = (2 * heating.duration) / 0.05;
    expect(perMetre! / byScaling).toBeGreaterThan(0.8);
    expect(perMetre! / byScaling).toBeLessThan(1.15);
  });
});
