/** When stages end, what logs do, how a run is stopped. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Cancelled, cook } from './cook.ts';
import { courseOf, pieceAt } from './medium.ts';
import type { CookProblem, Layer, Stage, Until } from './types.ts';

const food = { k: 0.48, rho: 1050, cp: 3500 };
const layers: Layer[] = [{ name: 'food', material: { properties: food } }];
const target = { reference: 70, z: 7.5, s: 120 };
const cylinder: CookProblem['body'] = { shape: 'cylinder', diameter: 0.04, layers };
const stage = (medium: Stage['medium'], h: number, until: Until, name = 'stage'): Stage => ({
  name,
  medium,
  h,
  until,
});
const run = (stages: Stage[], more: Partial<CookProblem> = {}) =>
  cook({ body: cylinder, start: 5, stages, target, ...more });

describe('a stage ends', () => {
  test('when the coldest point has got there: 901 s for 70 °C in a 40 mm cylinder in steam (series)', () => {
    const r = run([stage(100, 1000, { kind: 'coldest', C: 70 })]);
    expect(r.stages[0]?.reached).toBe(true);
    expect(Math.abs((r.stages[0]?.end as number) - 901)).toBeLessThan(2);
    expect(r.stages[0]?.coldest as number).toBeGreaterThanOrEqual(70);
    expect(r.stages[0]?.coldest as number).toBeLessThan(70.01);
  });
  test('when the warmest point has', () => {
    const r = run([stage(1, 400, { kind: 'warmest', C: 5 })], { start: 80 });
    expect(r.stages[0]?.warmest as number).toBeLessThanOrEqual(5);
    expect(r.stages[0]?.warmest as number).toBeGreaterThan(4.99);
  });
  test('when the point that has got least has its lethality, and then it passes', () => {
    const r = run([stage(85, 500, { kind: 'lethality', s: 120 })]);
    expect(r.stages[0]?.reached).toBe(true);
    expect(r.lethality.s).toBeGreaterThanOrEqual(120);
    expect(r.lethality.s).toBeLessThan(120.1);
    expect(r.lethality.passes).toBe(true);
    expect(r.lethality.reachedAt as number).toBeLessThanOrEqual(r.stages[0]?.end as number);
  });
  test('in a body of revolution too, where the cold spot lies between nodes', () => {
    const body: CookProblem['body'] = {
      shape: 'revolved',
      profile: [
        { at: 0, diameter: 0.03 },
        { at: 0.07, diameter: 0.045 },
        { at: 0.1, diameter: 0.04 },
      ],
      layers,
    };
    const r = run([stage(100, 800, { kind: 'lethality', s: 120 }), stage(20, 10, { kind: 'time', s: 60 })], {
      body,
    });
    expect(r.lethality.passes).toBe(true);
    expect(r.stages[0]?.reached).toBe(true);
  });
  test('whatever the clock says when a log begins: no corner of it holds the run up', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 1e6, noNaN: true, noDefaultInfinity: true }),
        fc.array(fc.constantFrom(1e-6, 0.006, 0.3, 7, 60.1), { minLength: 1, maxLength: 5 }),
        (before, gaps) => {
          let t = 0;
          const log = [{ t: 0, C: 20 }];
          for (const [i, gap] of gaps.entries()) {
            t += gap;
            log.push({ t, C: i % 2 === 0 ? 90 : 30 });
          }
          let calls = 0;
          const stages = [
            stage(20, 10, { kind: 'time', s: before }),
            stage(log, 100, { kind: 'time', s: t + 60 }),
          ];
          const problem = { body: cylinder, start: 5, stages, target };
          const r = cook(problem, { mode: 'coarse', onProgress: () => ++calls < 5000 });
          expect(r.stages[1]?.end as number).toBeCloseTo(before + t + 60, 6);
        },
      ),
      { numRuns: 60, seed: 3 },
    );
  });
  test('at once, without length, where its condition already holds', () => {
    const r = run([
      stage(100, 500, { kind: 'time', s: 600 }),
      stage(100, 500, { kind: 'coldest', C: 10 }),
      stage(1, 500, { kind: 'warmest', C: 99.9 }),
      stage(1, 500, { kind: 'time', s: 0 }),
      stage(1, 300, { kind: 'time', s: 300 }),
    ]);
    for (const i of [1, 2, 3]) {
      expect(r.stages[i]?.reached).toBe(true);
      expect(r.stages[i]?.end).toBe(r.stages[i]?.start);
    }
    expect(r.history.t.at(-1)).toBe(900);
  });
  test('all of it without length: the answer is the start', () => {
    const r = run([stage(100, 500, { kind: 'time', s: 0 })]);
    expect([...r.history.coldSpot]).toEqual([5]);
    expect(r.lethality).toEqual({ s: 0, reachedAt: null, passes: false });
    expect(r.heatBalancePct).toBe(0);
  });
  test('at its bound where the condition never comes: an answer, not an error', () => {
    const r = run([
      stage(60, 500, { kind: 'coldest', C: 70, atMost: 3000 }),
      stage(60, 500, { kind: 'lethality', s: 1e6, atMost: 100 }),
    ]);
    expect(r.stages.map((s) => s.reached)).toEqual([false, false]);
    expect(r.stages[0]?.end).toBe(3000);
    expect(r.stages[1]?.end).toBe(3100);
  });
  test('after a day where no bound is given, in few steps', () => {
    const r = run([stage(60, 500, { kind: 'coldest', C: 60.5 })]);
    expect(r.stages[0]?.end).toBe(86_400);
    expect(r.steps).toBeLessThan(80);
  });
  test('before its bound for any target within reach, never having missed it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 6, max: 94, noNaN: true }),
        fc.double({ min: 30, max: 3000, noNaN: true }),
        (C, h) => {
          const r = run([stage(95, h, { kind: 'coldest', C })]);
          const end = r.stages[0];
          expect(end?.reached).toBe(true);
          expect(end?.coldest as number).toBeGreaterThanOrEqual(C);
          expect(end?.coldest as number).toBeLessThan(C + 0.02);
        },
      ),
      { numRuns: 30 },
    );
  });
});

describe('a log of the medium', () => {
  test('that stays flat is the constant', () => {
    const constant = run([stage(90, 500, { kind: 'time', s: 1200 })]);
    const flat = run([
      stage(
        [0, 60, 500].map((t) => ({ t, C: 90 })),
        500,
        { kind: 'time', s: 1200 },
      ),
    ]);
    expect(flat.history.coldSpot.at(-1)).toBeCloseTo(constant.history.coldSpot.at(-1) as number, 3);
  });
  test('that climbs slowly is followed with the lag of a ramp: (R²/8α)(1 + 2k/hR)·slope at the axis', () => {
    const slope = 0.01;
    const r = run([
      stage(
        [
          { t: 0, C: 5 },
          { t: 9000, C: 5 + 9000 * slope },
        ],
        400,
        { kind: 'time', s: 9000 },
      ),
    ]);
    const alpha = food.k / food.rho / food.cp;
    // Quasi-steady: T = T_surface − slope(R² − r²)/4α, and h(T_m − T_s) = ρ·cp·slope·R/2.
    const lag = (slope * 0.02 ** 2) / (4 * alpha) + (slope * 0.02 * food.rho * food.cp) / (2 * 400);
    expect(r.history.medium.at(-1)).toBeCloseTo(95, 9);
    expect(95 - (r.history.coldSpot.at(-1) as number)).toBeCloseTo(lag, 1);
  });
  test('is held before its first point and after its last', () => {
    const r = run([stage([{ t: 300, C: 80 }], 500, { kind: 'time', s: 900 })]);
    const c = run([stage(80, 500, { kind: 'time', s: 900 })]);
    expect(r.history.coldSpot.at(-1)).toBeCloseTo(c.history.coldSpot.at(-1) as number, 3);
  });
  test('read every second does not force a step every second', () => {
    const log = Array.from({ length: 3600 }, (_, t) => ({
      t,
      C: 95 - 75 * Math.exp(-t / 200) + 0.04 * Math.sin(t * 12.9898),
    }));
    const r = run([stage(log, 500, { kind: 'time', s: 3599 })]);
    expect(r.steps).toBeLessThan(400);
    const smooth = run([
      stage(
        log.filter((_, t) => t % 5 === 0).map(({ t }) => ({ t, C: 95 - 75 * Math.exp(-t / 200) })),
        500,
        { kind: 'time', s: 3599 },
      ),
    ]);
    expect(
      Math.abs((r.history.coldSpot.at(-1) as number) - (smooth.history.coldSpot.at(-1) as number)),
    ).toBeLessThan(0.06);
  });
});

test('courseOf keeps every point within its tolerance, on some of its own points', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -20, max: 120, noNaN: true }), { minLength: 1, maxLength: 60 }),
      fc.double({ min: 0.01, max: 5, noNaN: true }),
      (values, tolerance) => {
        const log = values.map((C, i) => ({ t: i * 3 + 1, C }));
        const course = courseOf(log, tolerance);
        for (const { t, C } of log)
          expect(Math.abs(pieceAt(course, t).C - C)).toBeLessThanOrEqual(tolerance + 1e-9);
        expect(course.t.length).toBeLessThanOrEqual(log.length);
        expect(course.t.every((t, i) => log.some((p) => p.t === t && p.C === course.C[i]))).toBe(true);
      },
    ),
  );
});

describe('a caller may watch and stop', () => {
  const problem: CookProblem = {
    body: cylinder,
    start: 5,
    stages: [stage(100, 500, { kind: 'time', s: 3600 })],
    target,
  };
  test('progress rises to the end', () => {
    const seen: number[] = [];
    cook(problem, {
      onProgress: (t) => {
        seen.push(t);
        return undefined;
      },
    });
    expect(seen.at(-1)).toBe(3600);
    expect([...seen].sort((a, b) => a - b)).toEqual(seen);
  });
  test('false stops it', () => {
    expect(() => cook(problem, { onProgress: (t) => t < 100 })).toThrow(Cancelled);
  });
});

describe('basis', () => {
  const composed: Layer[] = [
    {
      name: 'filling',
      material: {
        composition: { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 },
      },
    },
  ];
  const what = (medium: number, start = 5) =>
    run([stage(medium, 300, { kind: 'time', s: 3600 })], {
      start,
      body: { shape: 'sphere', diameter: 0.03, layers: composed },
    })
      .basis.map((b) => b.what)
      .join('\n');
  test('says by which model a food freezes, and nothing of ice where it does not', () => {
    expect(what(-20)).toMatch(/first ice of filling at -2.2 °C, from its composition/);
    expect(what(-20)).toContain('apparent heat of Schwartzberg');
    expect(what(-20)).not.toContain('NOT VALID');
    expect(what(2)).not.toContain('first ice');
  });
  test('constant properties know no ice, which is said as soon as food may freeze', () => {
    const constant = (medium: number) =>
      run([stage(medium, 300, { kind: 'time', s: 3600 })])
        .basis.map((b) => b.what)
        .join('\n');
    expect(constant(-20)).toContain('NOT VALID below');
    expect(constant(2)).not.toContain('NOT VALID');
  });
  test('says extrapolated outside the range of the properties', () => {
    expect(what(180)).toContain('extrapolated');
    expect(what(100)).not.toContain('extrapolated');
  });
  test('every entry names a source of the bibliography and how it was had', async () => {
    const { sources } = await import('../sources.ts');
    for (const b of run([stage(100, 300, { kind: 'time', s: 60 })]).basis)
      expect(Object.hasOwn(sources, b.source)).toBe(true);
  });
});
