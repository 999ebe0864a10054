import { lethalRate } from '../src/core/microbes/lethal-rate.ts';
import { cumulativeLethality, lethalityReachedAt, processLethality } from '../src/core/microbes/lethality.ts';
import type { Example, Row } from './case.ts';

/** Core of a stuffed neck through cooking and cooling: made up for this case, minutes and °C. */
const log = [
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
].map(([min, C]) => ({ s: (min ?? 0) * 60, C: C ?? 0 }));

const at = (z: number) => ({ reference: 70, z });

/** The trapezium of the lethal rate over the readings [min], which some loggers print. */
function trapezium(z: number): number {
  return log.slice(1).reduce((sum, b, i) => {
    const a = log[i] ?? b;
    return sum + (((lethalRate(a.C, at(z)) + lethalRate(b.C, at(z))) / 2) * (b.s - a.s)) / 60;
  }, 0);
}

/** The same integral by many small steps along the straight lines [min], by another way than the closed form. */
function bySteps(z: number): number {
  let sum = 0;
  log.slice(1).forEach((b, i) => {
    const a = log[i] ?? b;
    const n = 2000;
    for (let k = 0; k < n; k++)
      sum += (lethalRate(a.C + ((k + 0.5) / n) * (b.C - a.C), at(z)) * (b.s - a.s)) / n / 60;
  });
  return sum;
}

export const example: Example = {
  title: 'Lethality of a core that never reaches 70 °C',
  story:
    'A core climbs to 68 °C and falls again. Read against 70 °C it looks unsafe; added up it is worth several minutes at 70 °C. The sum is taken exactly along the straight lines between readings: adding the rate at the readings by trapezia, as is often done, comes out higher, and that is the unsafe side.',
  equation: 'ΔP = Δt · z/ln10 · (L(T2) − L(T1))/(T2 − T1),  L = 10^((T − 70)/z)',
  sources: ['bigelow-1921', 'own-computation'],
  run(): Row[] {
    const exact = {
      source: 'own-computation',
      confidence: 'computed' as const,
      unit: 'min',
      why: 'both are the same integral; the steps are fine enough for six figures',
    };
    const rows: Row[] = [7.5, 6, 10].map((z) => ({
      ...exact,
      quantity: `worth at 70 °C, z ${z} °C: closed form against 22 000 small steps`,
      expected: bySteps(z),
      ours: processLethality(log, at(z)) / 60,
      tolerance: 1e-5,
    }));
    rows.push({
      ...exact,
      quantity: 'ramp 60 → 70 °C in 10 min, z 7.5 °C: 10 · 7.5/ln10 · (1 − 10^(−10/7.5))/10',
      expected: ((10 * 7.5) / Math.LN10 / 10) * (1 - 10 ** (-10 / 7.5)),
      ours:
        processLethality(
          [
            { s: 0, C: 60 },
            { s: 600, C: 70 },
          ],
          at(7.5),
        ) / 60,
      tolerance: 1e-9,
      why: 'the formula written out for one stretch',
    });
    const over = (trapezium(7.5) / (processLethality(log, at(7.5)) / 60) - 1) * 100;
    rows.push({
      quantity: 'by how much the trapezium over the readings is too high, z 7.5 °C',
      source: 'own-computation',
      confidence: 'computed' as const,
      expected: { low: 5, high: 10 },
      ours: over,
      tolerance: 0,
      unit: '%',
      why: 'readings 5 and 10 min apart; it must be above zero, since the rate is convex',
    });
    const when = lethalityReachedAt(log, at(7.5), 120) ?? Number.NaN;
    const sums = cumulativeLethality(log, at(7.5));
    rows.push({
      quantity: '2 min at 70 °C are reached between the readings at 40 and 45 min',
      source: 'own-computation',
      confidence: 'computed' as const,
      expected: { low: 40, high: 45 },
      ours: when / 60,
      tolerance: 0,
      unit: 'min',
      why: `at 40 min it is worth ${((sums[5] ?? 0) / 60).toFixed(2)} min, at 45 min ${((sums[6] ?? 0) / 60).toFixed(2)} min`,
    });
    return rows;
  },
};
