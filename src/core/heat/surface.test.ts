import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { erfcx } from '../numerics/special.ts';
import { humidAirHeat, restingSurface, settlingWater } from '../properties/evaporation.ts';
import { wetBulb } from '../properties/humid-air.ts';
import { throughResistance } from '../properties/media.ts';
import { latentHeat, saturationPressure } from '../properties/saturation.ts';
import { checkProblem } from './check.ts';
import { cook } from './cook.ts';
import { restingAt, SurfaceLaw, surroundedBy } from './surface.ts';
import type { Body, CookProblem, Stage, Surface } from './types.ts';

const sea = 101_325;
const meat = { k: 0.48, rho: 1050, cp: 3500 };
const roll: Body = {
  shape: 'cylinder',
  diameter: 0.05,
  layers: [{ name: 'meat', material: { properties: meat } }],
};
const target = { reference: 70, z: 7.5, s: 120 };
const stageOf = (medium: number, h: number, surface: Surface | undefined, s: number): Stage => ({
  name: 'stage',
  medium,
  h,
  ...(surface === undefined ? {} : { surface }),
  until: { kind: 'time', s },
});
const run = (stage: Stage, body: Body = roll, start = 4) => cook({ body, start, stages: [stage], target });
const saturated: Surface = { vapour: { pressure: sea, relative: 1, activity: 1 } };

function lawAt(h: number, surface: Surface, medium: number, T: number) {
  const law = new SurfaceLaw(h, surface);
  law.surround(medium);
  law.at(T);
  return { q: law.q, fall: law.fall, settled: law.settled };
}

describe('SurfaceLaw', () => {
  // Effective coefficients of saturated air, 15 W/(m² K) dry, worked out apart from the published equations.
  test.each([
    [60, 10, 117],
    [60, 50, 226],
    [80, 30, 288],
    [80, 70, 601],
    [85, 50, 474],
    [90, 10, 349],
    [95, 70, 1228],
    [98, 30, 856],
  ])('saturated air of %s °C on a surface of %s °C: %s W/(m² K)', (air, T, h) => {
    expect(lawAt(15, saturated, air, T).q / (air - T)).toBeGreaterThan(0.99 * h);
    expect(lawAt(15, saturated, air, T).q / (air - T)).toBeLessThan(1.01 * h);
  });

  test('is the published functions, where they hold: heat and water, condensing and drying', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 250, noNaN: true }),
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        fc.double({ min: 1, max: 95, noNaN: true }),
        (air, relative, T) => {
          const vapour = relative * Math.min(sea, saturationPressure(air));
          const stream = { air, vapour, pressure: sea, h: 20 };
          const law = lawAt(20, { vapour: { pressure: sea, relative, activity: 1 } }, air, T);
          const own = humidAirHeat(stream, T);
          // The law looks pressures up, within 4e-6 of themselves: as if the surface were a ten-thousandth of a kelvin warmer.
          expect(Math.abs(law.q - own)).toBeLessThan(0.02 + 1e-5 * Math.abs(own) + 1.1e-4 * law.fall);
          expect(law.settled).toBeCloseTo(settlingWater(stream, T), 6);
        },
      ),
    );
  });

  test('a drying surface of less water activity neither dries nor takes vapour between its own pressure and that of water', () => {
    const half: Surface = { vapour: { pressure: sea, partial: 10_000, activity: 0.5 } };
    expect(saturationPressure(50)).toBeGreaterThan(10_000);
    expect(lawAt(15, half, 120, 50)).toEqual({ q: 15 * 70, fall: 15, settled: 0 });
    expect(lawAt(15, half, 120, 70).settled).toBeLessThan(0);
    expect(lawAt(15, half, 120, 40).settled).toBeGreaterThan(0);
  });

  const surfaces = fc.record(
    {
      resistance: fc.double({ min: 0, max: 0.02, noNaN: true }),
      vapour: fc.record({
        pressure: fc.constantFrom(70_000, sea, 170_000),
        relative: fc.double({ min: 0, max: 1, noNaN: true }),
        activity: fc.constantFrom(0, 0.5, 1),
        condensate: fc.constantFrom(2000, 5000),
      }),
      radiators: fc.constantFrom([{ emissivity: 0.9 }], [{ C: 800, emissivity: 0.4 }, { emissivity: 0.5 }]),
      flux: fc.double({ min: 0, max: 20_000, noNaN: true }),
      ladle: fc.record({
        C: fc.constant(180),
        h: fc.constant(300),
        share: fc.double({ min: 0, max: 1, noNaN: true }),
      }),
    },
    { requiredKeys: [] },
  ) as fc.Arbitrary<Surface>;

  test('takes up less as the surface warms, by its own slope', () => {
    fc.assert(
      fc.property(
        surfaces,
        fc.double({ min: 5, max: 250, noNaN: true }),
        fc.double({ min: -5, max: 140, noNaN: true }),
        (surface, medium, T) => {
          const here = lawAt(20, surface, medium, T);
          const step = 1e-3;
          const warmer = lawAt(20, surface, medium, T + step);
          expect(here.fall).toBeGreaterThanOrEqual(0);
          // What a kilogram of vapour carries shrinks as it warms, by a thousandth a degree.
          expect(warmer.q - here.q).toBeLessThanOrEqual(1e-3 * step * Math.abs(here.q) + 1e-6);
        },
      ),
      { numRuns: 300 },
    );
  });

  test('its slope is that of its heat', () => {
    for (const surface of [
      saturated,
      { ...saturated, resistance: 3e-4 },
      { vapour: { pressure: sea, relative: 1, activity: 1, condensate: 5000 }, resistance: 3e-4 },
      { radiators: [{ C: 700, emissivity: 0.5 }], flux: 2000, ladle: { C: 180, h: 300, share: 0.3 } },
    ] satisfies Surface[])
      for (const T of [12.34, 43.21, 66.67]) {
        const difference = (lawAt(15, surface, 85, T - 0.005).q - lawAt(15, surface, 85, T + 0.005).q) / 0.01;
        expect(lawAt(15, surface, 85, T).fall / difference).toBeCloseTo(1, 3);
      }
  });

  test('a resistance: the heat that leaves the outer face is what goes through it', () => {
    const bare = { vapour: { pressure: sea, relative: 0.8, activity: 1, condensate: 5000 } };
    const { q } = lawAt(15, { ...bare, resistance: 1e-3 }, 85, 30);
    expect(lawAt(15, bare, 85, 30 + 1e-3 * q).q).toBeCloseTo(q, 3);
  });

  test('read is at, to less than the coefficient a hundredth of a kelvin makes, also after the surroundings change', () => {
    const surface: Surface = {
      vapour: { pressure: sea, relative: 0.6, activity: 1, condensate: 5000 },
      radiators: [{ emissivity: 0.9 }],
      resistance: 3e-4,
    };
    const [steady, exact] = [new SurfaceLaw(15, surface, true), new SurfaceLaw(15, surface)];
    for (const medium of [85, 150])
      for (const T of [-4.33, 4, 20.04, 61.27, 99.9, 140]) {
        for (const law of [steady, exact]) law.surround(medium);
        steady.read(T);
        exact.at(T);
        expect(Math.abs(steady.q - exact.q)).toBeLessThan(0.01 * (exact.fall + 1));
        expect(Math.abs(steady.settled - exact.settled)).toBeLessThan(1e-5);
      }
  });

  test('at boiling and saturated it is steam: the film of condensate alone', () => {
    const boiling = 99.9743;
    const steam: Surface = { vapour: { pressure: sea, relative: 1, activity: 1, condensate: 5000 } };
    for (const T of [10, 60, 99])
      expect(lawAt(15, steam, boiling, T).q / (5015 * (boiling - T))).toBeCloseTo(1, 3);
  });
});

describe('restingAt', () => {
  test('a wet surface rests at the wet bulb: 150 °C with 12.35 kPa of vapour, 57.48 °C', () => {
    const wet = (partial: number): Surface => ({ vapour: { pressure: sea, partial, activity: 1 } });
    const resting = restingAt({ h: 20, surface: wet(12_350) }, 150);
    expect(Math.abs(resting - 57.48)).toBeLessThan(0.5);
    // Published functions in one, Lewis's relation and the thermodynamic definition: they differ by less than 1.1 °C.
    for (const [C, partial] of [
      [100, 1200],
      [100, 47_400],
      [150, 31_200],
      [180, 5000],
      [200, 70_200],
    ] as const)
      expect(
        Math.abs(restingAt({ h: 20, surface: wet(partial) }, C) - wetBulb(C, partial, sea)),
      ).toBeLessThan(1.1);
  });
  test('warmer where walls radiate, as the resting surface of a drying oven', () => {
    const surface: Surface = {
      vapour: { pressure: sea, partial: 5000, activity: 1 },
      radiators: [{ emissivity: 0.9 }],
    };
    const resting = restingAt({ h: 20, surface }, 150);
    const kelvin = [resting + 273.15, 150 + 273.15] as const;
    const hRadiation = 0.9 * 5.670374e-8 * (kelvin[0] ** 2 + kelvin[1] ** 2) * (kelvin[0] + kelvin[1]);
    const oven = { air: 150, vapour: 5000, pressure: sea, h: 20, walls: 150, hRadiation };
    expect(Math.abs(resting - restingSurface(oven))).toBeLessThan(1);
  });
  test('a grill whose heat is lost to the air alone: T = T_a + q/h', () => {
    expect(restingAt({ h: 20, surface: { flux: 1000 } }, 30)).toBeCloseTo(80, 6);
  });
  test('saturated air: its own temperature', () => {
    expect(restingAt({ h: 15, surface: saturated }, 85)).toBeCloseTo(85, 6);
  });
});

describe('a body behind a surface law', () => {
  test('with nothing in the law it is the film case, resistance and all', () => {
    const film = run(stageOf(180, throughResistance(30, 2e-3), undefined, 1800));
    const law = run(stageOf(180, 30, { resistance: 2e-3 }, 1800));
    expect(law.stages[0]!.coldest).toBeCloseTo(film.stages[0]!.coldest, 6);
    expect(law.lethality.s / film.lethality.s).toBeCloseTo(1, 6);
  });

  test('wrapped in dry air: the film case exactly, and no water', () => {
    const dry: Surface = {
      resistance: 2e-3,
      vapour: { pressure: sea, relative: 0, activity: 0, condensate: 5000 },
    };
    const film = run(stageOf(180, throughResistance(30, 2e-3), undefined, 1800));
    const wrapped = run(stageOf(180, 30, dry, 1800));
    expect(wrapped.stages[0]!.coldest).toBeCloseTo(film.stages[0]!.coldest, 6);
    expect(wrapped.stages[0]!.water).toEqual({ lost: 0, settled: 0 });
  });

  test('saturated steam at boiling: as a film of that coefficient', () => {
    const boiling = 99.9743;
    const steam: Surface = { vapour: { pressure: sea, relative: 1, activity: 1, condensate: 5000 } };
    const a = run(stageOf(boiling, 15, steam, 900));
    const b = run(stageOf(boiling, 5015, undefined, 900));
    expect(Math.abs(a.stages[0]!.coldest - b.stages[0]!.coldest)).toBeLessThan(0.02);
  });

  test('a thin wet slice in a dry oven rests at its wet bulb, and what dries off carries all the heat that comes', () => {
    const slice: Body = { shape: 'slab', thickness: 0.004, layers: roll.layers };
    const surface: Surface = { vapour: { pressure: sea, partial: 2000, activity: 1 } };
    const warm = cook({
      body: slice,
      start: 20,
      stages: [stageOf(150, 20, surface, 1200), stageOf(150, 20, surface, 600)],
      target,
    });
    const resting = restingAt({ h: 20, surface }, 150);
    expect(warm.stages[0]!.surface).toBeCloseTo(resting, 2);
    expect(warm.stages[1]!.warmest).toBeCloseTo(resting, 3);
    const { lost, settled } = warm.stages[1]!.water!;
    expect(settled).toBe(0);
    // Per m² of slab: both faces.
    expect((lost * latentHeat(resting)) / (2 * 600 * 20 * (150 - resting))).toBeCloseTo(1, 4);
  });

  test('the account closes with condensation and drying in it: stored = convection + radiation + latent', () => {
    const surface: Surface = {
      vapour: { pressure: sea, relative: 0.5, activity: 1, condensate: 5000 },
      radiators: [{ emissivity: 0.9 }],
    };
    const slab: Body = { shape: 'slab', thickness: 0.03, layers: roll.layers };
    const { heatBalancePct, stages, history, mass } = run(stageOf(90, 15, surface, 2400), slab);
    expect(heatBalancePct).toBeLessThan(0.02);
    const { lost, settled } = stages[0]!.water!;
    expect(lost).toBeGreaterThan(0);
    expect(settled).toBeGreaterThan(0);
    // The same again from the history alone: convection and radiation by the trapezium, latent heat by the water.
    let sensible = 0;
    let latent = 0;
    const { t, surface: S } = history;
    for (let i = 1; i < t.length; i++)
      for (const [j, w] of [
        [i - 1, 0.5],
        [i, 0.5],
      ] as const) {
        const dt = w * (t[i]! - t[i - 1]!);
        sensible += 2 * dt * (15 * (90 - S[j]!) + 0.9 * 5.670374e-8 * (363.15 ** 4 - (S[j]! + 273.15) ** 4));
        const settles = lawAt(15, surface, 90, S[j]!).settled;
        latent += 2 * dt * settles * latentHeat(Math.max(0, S[j]!));
      }
    const stored = mass * meat.cp * (stages[0]!.mean - 4);
    expect((sensible + latent) / stored).toBeCloseTo(1, 1);
    expect(Math.abs(sensible + latent - stored)).toBeLessThan(0.02 * stored);
  });

  test.each(['coarse', 'fine'] as const)(
    'hours at rest in humid air cost nothing and dry no more than the air takes: %s',
    (mode) => {
      const slab: Body = { shape: 'slab', thickness: 0.02, layers: roll.layers };
      // So steep that a hundredth of a kelvin is hundreds of watts.
      const surface: Surface = { vapour: { pressure: sea, relative: 0.961, activity: 1, condensate: 5000 } };
      const stages = [stageOf(48.2, 858, surface, 1200), stageOf(48.2, 858, surface, 12_000)];
      const { heatBalancePct, stages: ends } = cook({ body: slab, start: 20, stages, target }, { mode });
      expect(heatBalancePct).toBeLessThan(mode === 'fine' ? 0.1 : 0.5);
      const resting = restingAt({ h: 858, surface }, 48.2);
      const dries = -lawAt(858, surface, 48.2, resting).settled * 2 * 12_000;
      expect(ends[1]!.water!.lost / dries).toBeCloseTo(1, 2);
      expect(ends[1]!.water!.settled).toBeLessThan(0.01 * dries);
    },
  );

  test('constant heat into a thick slab: the semi-infinite body of Carslaw and Jaeger', () => {
    const q = 5000;
    const slab: Body = { shape: 'slab', thickness: 0.1, layers: roll.layers };
    const depths = [0, 0.002, 0.005, 0.01];
    const { probes } = cook({
      body: slab,
      start: 10,
      // A medium that gives next to nothing: a ten-millionth of the flux.
      stages: [stageOf(10, 1e-6, { flux: q }, 120)],
      target,
      probes: depths.map((x, i) => ({ name: String(i), place: { x: 0.05 - x } })),
    });
    const alpha = meat.k / (meat.rho * meat.cp);
    depths.forEach((x, i) => {
      const root = Math.sqrt(alpha * 120);
      const rise =
        (2 * q * Math.sqrt((alpha * 120) / Math.PI) * Math.exp(-(x * x) / (4 * alpha * 120))) / meat.k -
        (q * x * erfcx(x / (2 * root)) * Math.exp(-(x * x) / (4 * root * root))) / meat.k;
      expect(Math.abs(probes[i]!.C.at(-1)! - 10 - rise)).toBeLessThan(0.05);
    });
  });

  test('never leaves what surrounds it, whatever the law', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.constantFrom(0, 0.7, 1),
        fc.double({ min: 10, max: 240, noNaN: true }),
        fc.double({ min: 0, max: 6000, noNaN: true }),
        (relative, activity, medium, flux) => {
          const stage = stageOf(
            medium,
            20,
            {
              vapour: { pressure: sea, relative, activity, condensate: 5000 },
              radiators: [{ emissivity: 0.9 }],
              flux,
            },
            600,
          );
          const problem: CookProblem = { body: roll, start: 4, stages: [stage], target };
          const { low, high } = surroundedBy(problem);
          const { coldest, warmest } = cook(problem, { mode: 'coarse' }).stages[0]!;
          expect(coldest).toBeGreaterThan(low - 0.5);
          expect(warmest).toBeLessThan(high + 0.5);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('a dry surface under a fierce grill burns: refused, with where it got to', () => {
    expect(() => run(stageOf(30, 8, { flux: 60_000 }, 600))).toThrow(/surface that reaches \d+ °C/);
  });
});

describe('what an answer says of its surface', () => {
  const meatOf = (water: number): Body => ({
    shape: 'cylinder',
    diameter: 0.05,
    layers: [
      {
        name: 'meat',
        material: {
          composition: { water, protein: 0.2, fat: 0.8 - water, carbohydrate: 0, fibre: 0, ash: 0 },
        },
      },
    ],
  });
  const said = (stage: Stage, body: Body) =>
    run(stage, body)
      .basis.map(({ what }) => what)
      .join('\n');
  test('what gets hotter than its water boils is said to, and only that', () => {
    expect(said(stageOf(180, 400, undefined, 600), meatOf(0.7))).toMatch(/its own water would boil/);
    expect(said(stageOf(95, 400, undefined, 600), meatOf(0.7))).not.toMatch(/would boil/);
    expect(said(stageOf(180, 400, undefined, 600), meatOf(0.05))).not.toMatch(/would boil/);
  });
  test('what dries is said by how much, and that a third of the weight is too much', () => {
    const oven: Surface = { vapour: { pressure: sea, partial: 1500, activity: 1 } };
    expect(said(stageOf(150, 20, oven, 1200), meatOf(0.7))).toMatch(/[\d.]+ % of the weight dries off/);
    expect(said(stageOf(230, 40, oven, 2700), meatOf(0.7))).toMatch(/NOT VALID: more than a third/);
    expect(said(stageOf(230, 40, oven, 7200), meatOf(0.7))).toMatch(/NOT VALID.*no more than 70 % in it/);
    expect(said(stageOf(95, 400, undefined, 600), meatOf(0.7))).toMatch(/no evaporation/);
  });
});

describe('what cannot be', () => {
  const vapour = { pressure: sea, relative: 0.5, activity: 1 };
  test.each<[string, number, number, Surface, RegExp]>([
    ['pressure', 80, 15, { vapour: { ...vapour, pressure: 500_000 } }, /vapour\.pressure/],
    ['humidity above one', 80, 15, { vapour: { ...vapour, relative: 1.1 } }, /vapour\.relative/],
    ['two humidities', 80, 15, { vapour: { ...vapour, partial: 100 } }, /two humidities/],
    ['no humidity', 80, 15, { vapour: { pressure: sea, activity: 1 } }, /no humidity/],
    [
      'more than the air holds',
      20,
      15,
      { vapour: { pressure: sea, partial: 5000, activity: 1 } },
      /at most what it holds/,
    ],
    ['activity', 80, 15, { vapour: { ...vapour, activity: 1.5 } }, /activity/],
    ['condensate', 80, 15, { vapour: { ...vapour, condensate: 1 } }, /condensate/],
    ['a coefficient of water beside vapour', 80, 4000, { vapour }, /\.h: /],
    ['resistance', 80, 15, { resistance: 2 }, /resistance/],
    ['emissivity', 80, 15, { radiators: [{ emissivity: 2 }] }, /emissivity/],
    ['source', 80, 15, { radiators: [{ C: 5000, emissivity: 0.5 }] }, /radiators\[0\]\.C/],
    ['flux', 80, 15, { flux: -1 }, /flux/],
    ['flux without end', 80, 15, { flux: Number.POSITIVE_INFINITY }, /flux/],
    ['ladled fat', 80, 15, { ladle: { C: 400, h: 300, share: 0.5 } }, /ladle\.C/],
    ['a share above one', 80, 15, { ladle: { C: 180, h: 300, share: 1.5 } }, /ladle\.share/],
  ])('%s is refused', (_, medium, h, surface, message) => {
    expect(() =>
      checkProblem({ body: roll, start: 4, stages: [stageOf(medium, h, surface, 60)], target }),
    ).toThrow(message);
  });
});
