/** What no conduction can do: leave the temperatures around it, lose heat, or gather lethality that the medium does not have. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cook } from './cook.ts';
import type { Body, CookProblem, Layer } from './types.ts';

const layers: Layer[] = [{ name: 'food', material: { properties: { k: 0.48, rho: 1050, cp: 3500 } } }];
const target = { reference: 70, z: 7.5, s: 120 };
const worth = (C: number, s: number) => s * 10 ** ((C - target.reference) / target.z);

const follow = (diameter: number, log: readonly (readonly [number, number])[], s: number) =>
  cook({
    body: { shape: 'cylinder', diameter, layers },
    start: 4,
    stages: [{ name: 'bath', medium: log.map(([t, C]) => ({ t, C })), h: 1000, until: { kind: 'time', s } }],
    target,
  });

describe('cook, where the medium turns a corner', () => {
  test.each([0.004, 0.01, 0.02, 0.04])(
    'stays under a bath that climbs to 58 °C and stops there, %d m thick',
    (d) => {
      const { history, lethality } = follow(
        d,
        [
          [0, 20],
          [300, 58],
        ],
        14_400,
      );
      expect(Math.max(...history.warmest)).toBeLessThan(58.1);
      expect(lethality.s).toBeLessThan(worth(58, 14_400));
    },
  );

  test('sums lethality within a quarter of a per cent of a run forty times finer, through steam and ice', () => {
    const problem: CookProblem = {
      body: {
        shape: 'cylinder',
        diameter: 0.09,
        layers: [
          {
            name: 'filling',
            material: {
              composition: {
                water: 0.66,
                protein: 0.15,
                fat: 0.16,
                carbohydrate: 0.015,
                fibre: 0,
                ash: 0.015,
              },
            },
          },
        ],
      },
      start: 4,
      stages: [
        { name: 'steam', medium: 100, h: 3000, until: { kind: 'time', s: 1200 } },
        { name: 'ice', medium: 1, h: 800, until: { kind: 'time', s: 3600 } },
      ],
      target,
    };
    const fine = cook(problem, { tolerance: 0.0005 }).lethality.s;
    expect(Math.abs(cook(problem).lethality.s / fine - 1)).toBeLessThan(0.0025);
  });

  test('counts no more than a day at the hottest is worth, after a steep climb', () => {
    const { history, lethality } = follow(
      0.02,
      [
        [0, 6],
        [5400, 60],
        [5460, 120],
      ],
      86_400,
    );
    expect(Math.max(...history.warmest)).toBeLessThan(120.3);
    expect(lethality.s).toBeLessThan(worth(120, 86_400 - 5400));
  });

  test('never leaves the temperatures around it, whatever the log does', () => {
    const corner = fc.tuple(
      fc.constantFrom(0.01, 1, 60, 1800),
      fc.double({ min: 0, max: 150, noNaN: true, noDefaultInfinity: true }),
    );
    const bodies: Body[] = [
      { shape: 'cylinder', diameter: 0.02, layers },
      { shape: 'sphere', diameter: 0.05, layers },
      { shape: 'slab', thickness: 0.005, layers },
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...bodies),
        fc.array(corner, { minLength: 1, maxLength: 6 }),
        fc.constantFrom(5, 300, 20_000),
        (body, corners, h) => {
          let t = 0;
          const medium = corners.map(([dt, C]) => {
            t += dt;
            return { t, C };
          });
          const { history, heatBalancePct } = cook({
            body,
            start: 20,
            stages: [{ name: 'log', medium, h, until: { kind: 'time', s: t + 7200 } }],
            target,
          });
          const low = Math.min(20, ...medium.map((p) => p.C));
          const high = Math.max(20, ...medium.map((p) => p.C));
          expect(Math.min(...history.coldest)).toBeGreaterThan(low - 0.3);
          expect(Math.max(...history.warmest)).toBeLessThan(high + 0.3);
          expect(heatBalancePct).toBeLessThan(0.1);
          for (let i = 1; i < history.t.length; i++) {
            expect(history.lethality[i] as number).toBeGreaterThanOrEqual(history.lethality[i - 1] as number);
            expect(history.coldSpot[i] as number).toBeGreaterThanOrEqual(history.coldest[i] as number);
            expect(history.coldSpot[i] as number).toBeLessThanOrEqual(history.warmest[i] as number);
          }
        },
      ),
      { numRuns: 40, seed: 7 },
    );
  }, 60_000);
});

describe('cook, at the edge of what can be computed', () => {
  const steep: CookProblem = {
    body: {
      shape: 'revolved',
      profile: [
        { at: 0, diameter: 0.27 },
        { at: 0.00014, diameter: 0.11 },
        { at: 0.002, diameter: 0.22 },
      ],
      layers,
    },
    start: 120,
    stages: [{ name: 'blast', medium: -80, h: 176, until: { kind: 'time', s: 8 } }],
    target,
  };

  test('refuses a shape whose mesh would answer colder than anything around it', () => {
    expect(() => cook(steep)).toThrow(/diameter changes less/);
  });

  test('follows a climb of milliseconds after a day, and lethality never falls by a hair', () => {
    const r = cook({
      body: { shape: 'slab', thickness: 0.02, layers },
      start: 60,
      stages: [
        { name: 'day', medium: 60, h: 400, until: { kind: 'time', s: 86_400 } },
        {
          name: 'log',
          medium: [
            { t: 0, C: 60 },
            { t: 0.006, C: 150 },
            { t: 60, C: 20 },
            { t: 60.006, C: 140 },
          ],
          h: 20_000,
          until: { kind: 'time', s: 3600 },
        },
      ],
      target: { reference: 70, z: 1, s: 120 },
    });
    const { lethality } = r.history;
    for (let i = 1; i < lethality.length; i++)
      expect(lethality[i] as number).toBeGreaterThanOrEqual(lethality[i - 1] as number);
    expect(lethality.at(-1)).toBe(r.lethality.s);
  });

  test('the cold spot, which lies between nodes, is never outside of the coldest and the warmest', () => {
    const r = cook({
      body: {
        shape: 'revolved',
        profile: [
          { at: 0, diameter: 0.0023 },
          { at: 0.026, diameter: 0.021 },
        ],
        layers,
      },
      start: 20,
      stages: [{ name: 'oven', medium: 180, h: 4000, until: { kind: 'time', s: 2600 } }],
      target,
    });
    const { coldest, coldSpot, warmest } = r.history;
    for (let i = 0; i < coldest.length; i++) {
      expect(coldSpot[i] as number).toBeGreaterThanOrEqual(coldest[i] as number);
      expect(coldSpot[i] as number).toBeLessThanOrEqual(warmest[i] as number);
    }
  });

  test('a hair short of the target does not pass, and the target itself does', () => {
    const run = (s: number) =>
      cook({
        body: { shape: 'cylinder', diameter: 0.03, layers },
        start: 4,
        stages: [{ name: 'bath', medium: 75, h: 500, until: { kind: 'time', s: 3000 } }],
        target: { ...target, s },
      }).lethality;
    const got = run(120).s;
    expect(run(got).passes).toBe(true);
    expect(run(got * 1.0001)).toMatchObject({ passes: false, reachedAt: null });
  });

  test('holds the account of an instant against what is stored', () => {
    const hot = cook({
      body: { shape: 'sphere', diameter: 0.5, layers },
      start: 150,
      stages: [{ name: 'bath', medium: 80, h: 500, until: { kind: 'lethality', s: 1e-6 } }],
      target: { reference: 70, z: 1, s: 120 },
    });
    expect(hot.heatBalancePct).toBeLessThan(0.1);
  });
});
