import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heatResistances } from '../properties/organisms-heat.ts';
import type { HoldRule } from '../properties/rule.ts';
import { findRule } from '../properties/rules.ts';
import { lethalRate, rateAt, rateByTable, rateByZ, withFloor } from './lethal-rate.ts';
import {
  cumulativeLethality,
  decimalReductionTime,
  equivalentTime,
  fitZ,
  impliedZ,
  lethalityReachedAt,
  momentWithin,
  processLethality,
  segmentLethality,
  stretchLethality,
} from './lethality.ts';
import type { Log } from './log.ts';

const at70 = (z: number) => ({ reference: 70, z });
const log = (...points: [min: number, C: number][]): Log => points.map(([min, C]) => ({ s: min * 60, C }));
const held = (C: number, min: number) => log([0, C], [min, C]);
const P = (points: Log, z = 7.5) => processLethality(points, at70(z)) / 60;
/** Relative difference. */
const off = (ours: number, expected: number) => Math.abs(ours / expected - 1);

/** A core log of a stuffed neck, twelve readings, made up. */
const neck = log(
  [0, 5],
  [10, 25],
  [20, 45],
  [30, 58],
  [35, 62],
  [40, 65],
  [45, 67],
  [50, 68],
  [55, 66],
  [60, 60],
  [70, 45],
  [80, 30],
);

describe('processLethality', () => {
  test('of the printed equivalents of 70 °C, 2 min, each at least 2 min', () => {
    const expected: [number, number, number][] = [
      [60, 45, 2.0887],
      [65, 10, 2.1544],
      [75, 0.5, 2.3208],
      [80, 0.1, 2.1544],
    ];
    for (const [C, min, value] of expected) expect(off(P(held(C, min)), value)).toBeLessThan(1e-3);
  });
  test('of 63 °C for 20 min and 64 °C for 15 min: enough by z 7.5, not by z 6', () => {
    expect(off(P(held(63, 20)), 2.33183)).toBeLessThan(1e-4);
    expect(off(P(held(63, 20), 6), 1.36258)).toBeLessThan(1e-4);
    expect(off(P(held(64, 15)), 2.37734)).toBeLessThan(1e-4);
    expect(off(P(held(64, 15), 6), 1.5)).toBeLessThan(1e-4);
  });
  test('of straight ramps is exact', () => {
    expect(P(log([0, 60], [10, 70]))).toBeCloseTo(3.106022, 5);
    expect(P(log([0, 20], [30, 70]))).toBeCloseTo(1.954325, 5);
  });
  test('of a twelve-point core log at three z', () => {
    expect(P(neck)).toBeCloseTo(7.62246, 4);
    expect(P(neck, 6)).toBeCloseTo(5.68442, 4);
    expect(P(neck, 10)).toBeCloseTo(10.58906, 4);
  });
  test('lies below the trapezium on the same log, by the amount worked out independently', () => {
    const trapezium = (z: number) =>
      neck.slice(1).reduce((sum, b, i) => {
        const a = neck[i]!;
        return sum + (((lethalRate(a.C, at70(z)) + lethalRate(b.C, at70(z))) / 2) * (b.s - a.s)) / 60;
      }, 0);
    expect(trapezium(7.5)).toBeCloseTo(8.2126, 4);
    expect(trapezium(6)).toBeCloseTo(6.18308, 4);
    expect(P(neck)).toBeLessThan(trapezium(7.5));
  });
  test('refuses logs and references that are none', () => {
    expect(() => processLethality([], at70(7.5))).toThrow(/no readings/);
    expect(() => processLethality(log([1, 60], [1, 61]), at70(7.5))).toThrow(/log\[1\]\.s/);
    expect(() => processLethality(log([2, 60], [1, 61]), at70(7.5))).toThrow(/times that rise/);
    expect(() => processLethality([{ s: 0, C: Number.NaN }], at70(7.5))).toThrow(/log\[0\]\.C/);
    expect(() => processLethality(neck, at70(0))).toThrow(/1 to 60/);
  });
});

describe('cumulativeLethality and lethalityReachedAt', () => {
  test('at the readings of the core log', () => {
    const sums = cumulativeLethality(neck, at70(7.5));
    const at = (min: number) => sums[neck.findIndex((p) => p.s === min * 60)]! / 60;
    expect(at(40)).toBeCloseTo(1.01343, 4);
    expect(at(45)).toBeCloseTo(2.50086, 4);
    expect(at(50)).toBeCloseTo(4.83078, 4);
    expect(at(60)).toBeCloseTo(7.52168, 4);
  });
  test('the moment found cuts the log where the sum is what was wanted', () => {
    const when = lethalityReachedAt(neck, at70(7.5), 120)!;
    expect(when).toBeGreaterThan(40 * 60);
    expect(when).toBeLessThan(45 * 60);
    const cut = neck.filter((p) => p.s < when);
    const a = cut.at(-1)!;
    const b = neck[cut.length]!;
    const there = { s: when, C: a.C + ((when - a.s) / (b.s - a.s)) * (b.C - a.C) };
    expect(P([...cut, there])).toBeCloseTo(2, 9);
  });
  test('null where it is never reached', () => {
    expect(lethalityReachedAt(neck, at70(7.5), 3600)).toBeNull();
  });
});

const reading = fc.record({
  dt: fc.double({ min: 0.1, max: 3600, noNaN: true }),
  C: fc.double({ min: -20, max: 110, noNaN: true }),
});
const anyLog = fc.array(reading, { minLength: 2, maxLength: 30 }).map((steps) => {
  let s = 0;
  return steps.map(({ dt, C }) => {
    s += dt;
    return { s, C };
  });
});
const anyZ = fc.double({ min: 4, max: 15, noNaN: true });

describe('process lethality of any log', () => {
  test('does not change when the log is cut anywhere', () => {
    fc.assert(
      fc.property(anyLog, anyZ, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (points, z, f) => {
        const i = Math.floor(f * (points.length - 1));
        const a = points[i]!;
        const b = points[i + 1]!;
        const between = { s: a.s + f * (b.s - a.s), C: a.C + f * (b.C - a.C) };
        if (!(between.s > a.s && between.s < b.s)) return;
        const cut = [...points.slice(0, i + 1), between, ...points.slice(i + 1)];
        expect(
          off(processLethality(cut, at70(z)) + 1e-12, processLethality(points, at70(z)) + 1e-12),
        ).toBeLessThan(1e-9);
      }),
    );
  });
  test('grows with temperature, and is never above the trapezium', () => {
    fc.assert(
      fc.property(anyLog, anyZ, fc.double({ min: 0, max: 20, noNaN: true }), (points, z, more) => {
        const sum = processLethality(points, at70(z));
        const hotter = processLethality(
          points.map((p) => ({ ...p, C: p.C + more })),
          at70(z),
        );
        expect(hotter).toBeGreaterThanOrEqual(sum * (1 - 1e-12));
        let trapezium = 0;
        points.slice(1).forEach((b, i) => {
          const a = points[i]!;
          trapezium += ((lethalRate(a.C, at70(z)) + lethalRate(b.C, at70(z))) / 2) * (b.s - a.s);
        });
        expect(sum).toBeLessThanOrEqual(trapezium * (1 + 1e-12));
      }),
    );
  });
  test('agrees with a fine midpoint sum of the rate, also for tables and two z', () => {
    const curves = [
      rateByZ(70, 6, 7.5),
      withFloor(rateByZ(70, 7.5), 60),
      rateByTable(
        [
          { C: 60, s: 2700 },
          { C: 65, s: 600 },
          { C: 70, s: 120 },
          { C: 80, s: 6 },
        ],
        120,
      ),
    ];
    const C = fc.double({ min: 40, max: 95, noNaN: true });
    fc.assert(
      fc.property(C, C, fc.constantFrom(...curves), (C1, C2, curve) => {
        const n = 4000;
        let sum = 0;
        for (let k = 0; k < n; k++) sum += rateAt(curve, C1 + ((k + 0.5) / n) * (C2 - C1)) / n;
        const exact = stretchLethality(curve, 1, C1, C2);
        // One midpoint may lie on the wrong side of the floor's or the table's edge.
        expect(Math.abs(exact - sum)).toBeLessThan(2e-3 * Math.max(exact, 0.05));
      }),
      { numRuns: 60 },
    );
  });
  test('momentWithin cuts a stretch where it has added what was missing', () => {
    const curve = withFloor(rateByZ(70, 6, 7.5), 60);
    const C = fc.double({ min: 50, max: 90, noNaN: true });
    fc.assert(
      fc.property(C, C, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (C1, C2, f) => {
        const whole = stretchLethality(curve, 100, C1, C2);
        fc.pre(whole > 1e-6);
        const at = momentWithin({ index: 1, s1: 0, s2: 100, C1, C2, hole: false }, curve, f * whole);
        const there = C1 + (at / 100) * (C2 - C1);
        expect(off(stretchLethality(curve, at, C1, there), f * whole)).toBeLessThan(1e-6);
      }),
    );
  });
});

describe('equivalents', () => {
  test('equivalentTime with z 6: the committee’s 13.6 min at 65 °C and 18 s at 75 °C', () => {
    expect(off(equivalentTime(65, at70(6), 120) / 60, 13.626)).toBeLessThan(1e-3);
    expect(off(equivalentTime(75, at70(6), 120), 17.614)).toBeLessThan(1e-3);
    expect(off(equivalentTime(60, at70(6), 120) / 60, 92.832)).toBeLessThan(1e-3);
  });
  test('impliedZ of the printed pairs', () => {
    const ref = { C: 70, s: 120 };
    const pairs: [number, number, number][] = [
      [60, 2700, 7.395],
      [65, 600, 7.153],
      [75, 30, 8.305],
      [80, 6, 7.686],
    ];
    for (const [C, s, z] of pairs) expect(impliedZ({ C, s }, ref)).toBeCloseTo(z, 3);
  });
  test('impliedZ between rows for avian influenza virus', () => {
    const rows = [
      { C: 60, s: 507 },
      { C: 65, s: 42 },
      { C: 70, s: 3.5 },
      { C: 73.9, s: 0.51 },
    ];
    const z = rows.slice(1).map((row, i) => impliedZ(rows[i]!, row));
    const expected = [4.622, 4.633, 4.662];
    expect(Math.max(...expected.map((value, i) => off(z[i]!, value)))).toBeLessThan(1e-3);
  });
  test('decimalReductionTime of Listeria monocytogenes from its regression', () => {
    const ref = { reference: 60, z: 1 / 0.14519 };
    const D60 = 10 ** (10.888 - 0.14519 * 60);
    const expected: [number, number][] = [
      [60, 150.18],
      [65, 28.23],
      [70, 5.305],
    ];
    for (const [C, D] of expected) expect(off(decimalReductionTime(C, ref, D60), D)).toBeLessThan(1e-3);
  });
  test('fitZ of the measured D-values', () => {
    const fitOf = (organism: string, measuredIn: string) => {
      const found = heatResistances.find(
        (h) => h.organism.startsWith(organism) && h.measuredIn === measuredIn,
      )!;
      const fit = fitZ(found.D);
      return { z: fit.z, D60: fit.timeAt(60) / 60 };
    };
    const beef = fitOf('Clostridium perfringens', 'minced beef');
    expect(off(beef.z, 6.8)).toBeLessThan(5e-3);
    expect(off(beef.D60, 4.31)).toBeLessThan(5e-3);
    const broth = fitOf('Salmonella, eight', 'chicken broth');
    expect(off(broth.z, 6.65)).toBeLessThan(5e-3);
    expect(off(broth.D60, 1.058)).toBeLessThan(5e-3);
  });
  test('fitZ refuses what has no slope', () => {
    expect(() => fitZ([{ C: 60, s: 10 }])).toThrow();
    expect(() =>
      fitZ([
        { C: 60, s: 10 },
        { C: 65, s: 20 },
      ]),
    ).toThrow();
  });
  test('segmentLethality of no time is none', () => expect(segmentLethality(0, 60, 70, at70(7.5))).toBe(0));
});

test('the implied z of the tables is what a regression of the print gives', () => {
  const rowsOf = (id: string) => (findRule(id) as HoldRule).rows.filter((row) => row.s > 0);
  expect(off(fitZ(rowsOf('us-trichinella-heating').slice(0, 11)).z, 3.545)).toBeLessThan(1e-2);
  const expected: [string, number][] = [
    ['us-meat-7log', 5.59],
    ['us-poultry-7log-chicken-1pct-fat', 5.44],
    ['us-poultry-7log-chicken-12pct-fat', 5.33],
    ['us-poultry-7log-turkey-1pct-fat', 6.1],
    ['us-poultry-7log-turkey-12pct-fat', 5.97],
  ];
  // The figures were fitted to a choice of the rows, not to all of them.
  for (const [id, z] of expected) expect(off(fitZ(rowsOf(id)).z, z)).toBeLessThan(1.5e-2);
});
