/** How large and how many: against closed forms of thin pieces, which are at one temperature throughout. */
import { describe, expect, test } from 'vitest';
import { Contradiction, OutOfRange } from '../errors.ts';
import { checkProblem } from '../heat/check.ts';
import type { Body } from '../heat/types.ts';
import type { CoolingRule } from '../properties/rule.ts';
import { findRule } from '../properties/rules.ts';
import { bathTemperature, coupled, type Load, mostPieces } from './chill-load.ts';
import { type Chilling, checkChilling, chill, largestScale, scaledBody } from './chilling.ts';

const gb = findRule('gb-chill-90min-8c') as CoolingRule;
const limit = 90 * 60;
/** Conducts so well that it is at one temperature throughout. */
const metal = { k: 400, rho: 2000, cp: 3000 };
const thin: Body = {
  shape: 'sphere',
  diameter: 0.04,
  layers: [{ name: 'x', material: { properties: metal } }],
};
const meat: Body = {
  shape: 'cylinder',
  diameter: 0.05,
  layers: [{ name: 'x', material: { properties: { k: 0.48, rho: 1050, cp: 3500 } } }],
};
const of = (body: Body, medium: number, h: number): Chilling => ({
  body,
  start: 70,
  stage: { name: 'chill', medium, h },
  rules: [gb],
});
/** Time from 63 to 8 °C as the rule's first limb has it [s]. */
const limbOf = (chilled: ReturnType<typeof chill>) => chilled.verdicts[0]?.parts[0]?.value ?? Number.NaN;

describe('chill', () => {
  test('of a thin piece takes m·c/(h·A)·ln[(63 − T)/(8 − T)]', () => {
    const radius = 0.02;
    const wanted = ((metal.rho * metal.cp * radius) / 3 / 20) * Math.log(63 / 8);
    expect(limbOf(chill(of(thin, 0, 20), 'fine')) / wanted).toBeCloseTo(1, 3);
  });
  test('a start below the rule’s clock, and a medium that is not cold enough, are refused', () => {
    expect(() => checkChilling({ ...of(meat, 0, 20), start: 60 })).toThrow(OutOfRange);
    expect(() => checkChilling(of(meat, 8, 20))).toThrow(Contradiction);
    expect(() => checkChilling({ ...of(meat, 0, 20), rules: [] })).toThrow(OutOfRange);
  });
});

describe('largestScale', () => {
  test('where the surface decides goes as the time: a thin piece', () => {
    const chilling = of(thin, 0, 20);
    const scale = largestScale(chilling).scale ?? Number.NaN;
    expect(scale / (limit / limbOf(chill(chilling, 'fine')))).toBeGreaterThan(0.985);
    expect(scale / (limit / limbOf(chill(chilling, 'fine')))).toBeLessThan(1.001);
  });
  test('where the inside decides goes as the root of the time: a very good medium', () => {
    const chilling = of(meat, 0, 20_000);
    const scale = largestScale(chilling).scale ?? Number.NaN;
    const root = Math.sqrt(limit / limbOf(chill(chilling, 'fine')));
    expect(scale / root).toBeGreaterThan(0.985);
    expect(scale / root).toBeLessThan(1.001);
  });
  test('the piece it gives meets the rule, one larger by 2 % does not', () => {
    const chilling = of(meat, 2, 100);
    const { scale, chilled } = largestScale(chilling);
    expect(chilled?.meets).toBe(true);
    expect(chill({ ...chilling, body: scaledBody(meat, 1.02 * (scale ?? 0)) }, 'fine').meets).toBe(false);
  });
  test('none, where the medium would never do', () => {
    const slow = of({ ...meat, diameter: 0.5 }, 7.99, 3);
    expect(largestScale(slow).scale).toBeNull();
  });
  test('scales every shape with its layers', () => {
    const layers = [
      { ...thin.layers[0], name: 'skin', thickness: 0.002, material: { properties: metal } },
      ...meat.layers,
    ];
    const bodies: Body[] = [
      {
        shape: 'revolved',
        profile: [
          { at: 0, diameter: 0.04 },
          { at: 0.1, diameter: 0.05 },
        ],
        layers,
      },
      { shape: 'slab', thickness: 0.03, layers },
      { shape: 'block', width: 0.08, height: 0.05, layers },
      { shape: 'sphere', diameter: 0.05, layers },
    ];
    for (const body of bodies) {
      const twice = scaledBody(body, 2);
      expect(twice.layers[0]?.thickness).toBe(0.004);
      expect(scaledBody(twice, 0.5)).toEqual(body);
      expect(() =>
        checkProblem({
          body: twice,
          start: 70,
          stages: [{ name: 'x', medium: 1, h: 10, until: { kind: 'time', s: 1 } }],
          target: { reference: 70, z: 7.5, s: 1 },
        }),
      ).not.toThrow();
    }
  });
});

const volume = (4 / 3) * Math.PI * 0.02 ** 3;
const area = 4 * Math.PI * 0.02 ** 2;
const store = metal.rho * metal.cp * volume;

describe('coupled', () => {
  test('under constant power a thin piece falls along a straight line, its air a fixed distance below', () => {
    const [pieces, W] = [100, 500];
    const load: Load = { chilling: of(thin, -30, 60), machine: { kind: 'power', W } };
    const found = coupled(load, pieces, 'fine');
    expect(found.settled).toBe(true);
    const wanted = (pieces * store * (63 - 8)) / W;
    expect(limbOf(found) / wanted).toBeCloseTo(1, 2);
    expect(found.peak).toBeCloseTo(70 - W / (pieces * 60 * area), 0);
  });
  test('power to spare leaves the air where it is set', () => {
    const load: Load = { chilling: of(thin, 0, 20), machine: { kind: 'power', W: 1e6 } };
    const found = coupled(load, 10, 'fine');
    expect(found.peak).toBe(0);
    expect(limbOf(found)).toBeCloseTo(limbOf(chill(load.chilling, 'fine')), 3);
  });
  test('a thin piece and water without ice come together exponentially', () => {
    const [pieces, water, h, waterC] = [40, 60, 200, 2];
    const load: Load = {
      chilling: of(thin, -1, h),
      machine: { kind: 'ice', ice: 0, water, waterC },
    };
    const found = coupled(load, pieces, 'fine');
    expect(found.settled).toBe(true);
    const all = pieces * store;
    const bath = water * 4190;
    const even = (all * 70 + bath * waterC) / (all + bath);
    const rate = pieces * h * area * (1 / all + 1 / bath);
    const falling = (C: number) => -Math.log((C - even) / (70 - even)) / rate;
    expect(limbOf(found) / (falling(8) - falling(63))).toBeCloseTo(1, 2);
  });
  test('what the pieces gave off is what melted the ice: the account of the bath', () => {
    const load: Load = {
      chilling: of(meat, 0.5, 200),
      machine: { kind: 'ice', ice: 4, water: 6, waterC: 8 },
      pieceMass: 1,
    };
    const found = coupled(load, 8, 'fine');
    expect(found.settled).toBe(true);
    const end = bathTemperature({ kind: 'ice', ice: 4, water: 6, waterC: 8 }, 8 * found.heat, 0.5);
    const done = found.result.stages[0]?.end ?? 0;
    const last = found.medium.filter((p) => p.t <= done).at(-1);
    expect(Math.abs((last?.C ?? 99) - end)).toBeLessThan(0.6);
  });
  test('what cannot be is refused', () => {
    const chilling = of(meat, 0, 20);
    expect(() => coupled({ chilling, machine: { kind: 'power', W: 0 } }, 1, 'coarse')).toThrow(OutOfRange);
    expect(() => coupled({ chilling, machine: { kind: 'power', W: 9 } }, 0.5, 'coarse')).toThrow(OutOfRange);
    const machine = { kind: 'ice', ice: 0, water: 0, waterC: 5 } as const;
    expect(() => coupled({ chilling, machine }, 1, 'coarse')).toThrow(OutOfRange);
  });
});

describe('mostPieces', () => {
  const load = (W: number): Load => ({
    chilling: of(meat, -2, 40),
    machine: { kind: 'power', W },
    pieceMass: 0.5,
  });
  test('so many hold, one more does not on the same mesh', () => {
    const found = mostPieces(load(400));
    expect(found.pieces).toBeGreaterThan(3);
    expect(found.load.meets).toBe(true);
    const more = coupled(load(400), Math.ceil(1.03 * found.pieces) + 1, 'fine');
    expect(more.meets).toBe(false);
  });
  test('twice the power takes twice the pieces', () => {
    const one = mostPieces(load(400)).pieces;
    const two = mostPieces(load(800)).pieces;
    expect(two / one).toBeGreaterThan(1.8);
    expect(two / one).toBeLessThan(2.2);
  });
  test('none, where not even one alone would do', () => {
    const thick: Load = { ...load(400), chilling: of({ ...meat, diameter: 0.2 }, -2, 10) };
    const found = mostPieces(thick);
    expect(found.pieces).toBe(0);
    expect(found.load.meets).toBe(false);
  });
});
