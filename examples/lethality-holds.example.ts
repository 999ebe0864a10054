import { cumulativeLethality, equivalentTime, processLethality } from '../src/core/microbes/lethality.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const scipy = kept('microbes');
const at = (z: number) => ({ reference: 70, z });
const minutes = (points: readonly (readonly [number, number])[]) =>
  points.map(([min, C]) => ({ s: min * 60, C }));

/** Core of a stuffed neck through cooking and cooling: made up for this case. */
const neck = minutes([
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
]);

const holds = [
  [60, 45],
  [65, 10],
  [75, 0.5],
  [80, 0.1],
  [63, 20],
  [64, 15],
] as const;

export const example: Example = {
  title: 'Holds, ramps and a core log, added up by quadrature and by the closed form',
  story:
    'Eight times and courses of temperature, worth at 70 °C. The engine takes the integral exactly along straight lines; another program takes it by quadrature. 63 °C for 20 min is worth more than 2 min at 70 °C by z 7.5 °C and less by z 6 °C: which z is meant decides. A canning manual’s worked example is printed as a sum of lethal rates every 5 min, without the temperatures they came from: its two rows prove that 2.925 × 5 and 1.730 × 5 are minutes at 121.1 °C, worth as many here, and nothing of how rates are had from temperatures or added up between readings.',
  equation: 'P = ∫ 10^((T(t) − 70 °C)/z) dt',
  sources: ['bigelow-1921', 'acmsf-burgers-2007', 'warne-1988', 'own-computation'],
  run(): Row[] {
    const apart = {
      source: 'own-computation',
      unit: 'min',
      confidence: 'computed',
      why: 'quadrature to twelve figures of the same integral',
    } as const;
    const rows: Row[] = [];
    for (const [C, min] of holds)
      for (const z of [7.5, 6])
        rows.push({
          ...apart,
          quantity: `${C} °C for ${min} min, z ${z} °C`,
          expected: scipy(`hold ${C} ${min} ${z}`),
          ours:
            processLethality(
              minutes([
                [0, C],
                [min, C],
              ]),
              at(z),
            ) / 60,
          tolerance: 1e-9,
        });
    for (const [from, min] of [
      [60, 10],
      [20, 30],
    ] as const)
      rows.push({
        ...apart,
        quantity: `ramp ${from} to 70 °C in ${min} min, z 7.5 °C`,
        expected: scipy(`ramp ${from} ${min}`),
        ours:
          processLethality(
            minutes([
              [0, from],
              [min, 70],
            ]),
            at(7.5),
          ) / 60,
        tolerance: 1e-9,
      });
    for (const z of [7.5, 6, 10])
      rows.push({
        ...apart,
        quantity: `the whole core log, z ${z} °C`,
        expected: scipy(`neck ${z}`),
        ours: processLethality(neck, at(z)) / 60,
        tolerance: 1e-8,
      });
    const sums = cumulativeLethality(neck, at(7.5));
    for (const [upTo, i] of [
      [40, 5],
      [45, 6],
      [50, 7],
      [60, 9],
    ] as const)
      rows.push({
        ...apart,
        quantity: `the core log up to ${upTo} min, z 7.5 °C`,
        expected: scipy(`neck to ${upTo}`),
        ours: sums[i]! / 60,
        tolerance: 1e-8,
      });
    rows.push({
      quantity: '60 °C held for as long as 70 °C for 2 min, z 6 °C',
      source: 'acmsf-burgers-2007',
      confidence: 'secondary',
      expected: 93,
      ours: equivalentTime(60, at(6), 120) / 60,
      tolerance: 0.5,
      unit: 'min',
      why: 'printed to the minute',
    });
    for (const [what, sum, printed] of [
      ['the whole process', 2.925, 14.6],
      ['the heating alone', 1.73, 8.6],
    ] as const)
      rows.push({
        quantity: `a canning manual’s F0 of ${what}: a sum of rates of ${sum}, 5 min apart, held as that many minutes at 121.1 °C, z 10 °C`,
        source: 'warne-1988',
        confidence: 'secondary',
        expected: printed,
        ours:
          processLethality(
            minutes([
              [0, 121.1],
              [5 * sum, 121.1],
            ]),
            { reference: 121.1, z: 10 },
          ) / 60,
        tolerance: 0.0501,
        unit: 'min',
        why: 'printed to a tenth, the second cut off and not rounded (8.65)',
      });
    return rows;
  },
};
