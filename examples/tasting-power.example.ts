import {
  assessorsFor,
  chanceOfAnswers,
  type DiscriminationTest,
  discriminators,
  powerOf,
  type Sides,
} from '../src/core/tasting/discrimination.ts';
import { dPrimeOf, shareCorrect } from '../src/core/tasting/thurstone.ts';
import type { Example, Row } from './case.ts';

const computed = (quantity: string, expected: number, ours: number, tolerance: number, unit = '-'): Row => ({
  quantity,
  source: 'own-computation',
  confidence: 'computed',
  expected,
  ours,
  tolerance,
  unit,
  why: tolerance === 0 ? 'a whole number' : 'the last digit of the figure',
});

const chances: readonly [DiscriminationTest, Sides, number, number, number][] = [
  ['triangle', 1, 12, 8, 0.018758],
  ['triangle', 1, 24, 13, 0.028441],
  ['triangle', 1, 24, 12, 0.067659],
  ['triangle', 1, 30, 15, 0.043482],
  ['triangle', 1, 36, 18, 0.028349],
  ['triangle', 1, 60, 27, 0.039692],
  ['duo-trio', 1, 12, 10, 0.019287],
  ['paired', 2, 12, 10, 0.038574],
  ['duo-trio', 1, 20, 15, 0.020695],
  ['paired', 2, 20, 15, 0.041389],
  ['duo-trio', 1, 30, 20, 0.049369],
  ['paired', 2, 30, 20, 0.098737],
];

const sharesAt: readonly [d: number, triangle: number, duoTrio: number, paired: number][] = [
  [0, 0.3333, 0.5, 0.5],
  [0.5, 0.3558, 0.5223, 0.6382],
  [1, 0.418, 0.5825, 0.7602],
  [1.5, 0.5065, 0.6635, 0.8556],
  [2, 0.6048, 0.7468, 0.9214],
  [2.5, 0.6993, 0.8196, 0.9615],
  [3, 0.7814, 0.8765, 0.9831],
];
const inverse: readonly [DiscriminationTest, number, number][] = [
  ['triangle', 0.4, 0.879],
  ['triangle', 0.5, 1.466],
  ['triangle', 0.6, 1.976],
  ['triangle', 0.7, 2.504],
  ['triangle', 0.8, 3.129],
  ['duo-trio', 0.6, 1.115],
  ['duo-trio', 0.7, 1.715],
  ['duo-trio', 0.8, 2.355],
];

/** Share of tellers: first and steady number at a power of 80, 90 and 95 %. */
const panels: Readonly<Record<'triangle' | 'duo-trio', string>> = {
  triangle: '0.5:16/16 20/22 23/29; 0.4:23/25 30/34 40/42; 0.3:40/42 53/57 66/73; 0.2:87/94 117/124 147/154',
  'duo-trio':
    '0.5:23/28 33/35 42/44; 0.4:37/42 53/58 67/69; 0.3:69/76 93/102 119/126; 0.2:158/169 213/224 268/281',
};
const powers: readonly [number, number, number][] = [
  [24, 0.5505, 0.9323],
  [30, 0.7091, 0.9812],
  [36, 0.7155, 0.9875],
  [48, 0.8821, 0.9991],
  [60, 0.9225, 0.9998],
];

function panelRows(test: 'triangle' | 'duo-trio'): Row[] {
  return panels[test].split('; ').flatMap((line) => {
    const [pd, cells] = line.split(':') as [string, string];
    return cells.split(' ').flatMap((cell, i) => {
      const beta = [0.2, 0.1, 0.05][i]!;
      const [first, steady] = cell.split('/').map(Number) as [number, number];
      const ours = assessorsFor(test, { alpha: 0.05, beta, pd: Number(pd) });
      const what = `${test}, ${100 * Number(pd)} % tell, power ${100 * (1 - beta)} %`;
      return [
        computed(`${what}: first`, first, ours.first, 0, 'tasters'),
        computed(`${what}: from here on`, steady, ours.steady, 0, 'tasters'),
      ];
    });
  });
}

export const example: Example = {
  title: 'How sure, how far apart, how many tasters',
  story: `The chance of an answer, the distance at which so many are right, and the tasters that a wanted power takes. All expected figures were worked out
apart from the engine by another program; none was read in a publication. Power is saw-toothed in the number of tasters: at 66 a triangle finds what 30 % can taste
95 times in 100, at 67 it may not, and only from 73 on does every larger panel do.`,
  equation: 'P(X ≥ x);  pc(d′);  fewest n with P(X ≥ x_min(n)) ≥ 1 − β, X binomial(n, p0 + pd·(1 − p0))',
  sources: ['ennis-1993', 'iso-4120-2021'],
  run(): Row[] {
    const told = discriminators('triangle', 60, 24);
    return [
      ...chances.map(([test, sides, n, x, p]) =>
        computed(
          `${test}, ${sides === 2 ? 'two sides, ' : ''}${x} of ${n}`,
          p,
          chanceOfAnswers(test, n, x, sides),
          5.1e-7,
        ),
      ),
      ...sharesAt.flatMap(([d, triangle, duoTrio, paired]) => [
        computed(`right answers at d′ ${d}, triangle`, triangle, shareCorrect('triangle', d), 5.1e-5),
        computed(`right answers at d′ ${d}, duo-trio`, duoTrio, shareCorrect('duo-trio', d), 5.1e-5),
        computed(`right answers at d′ ${d}, paired`, paired, shareCorrect('paired', d), 5.1e-5),
      ]),
      ...inverse.map(([test, pc, d]) =>
        computed(`d′ of ${100 * pc} % right, ${test}`, d, dPrimeOf(test, pc) ?? Number.NaN, 5.1e-4),
      ),
      ...powers.flatMap(([n, three, five]) => [
        computed(
          `triangle, ${n} tasters, 30 % tell: power`,
          three,
          powerOf('triangle', n, 0.3, 0.05),
          5.1e-5,
        ),
        computed(`triangle, ${n} tasters, 50 % tell: power`, five, powerOf('triangle', n, 0.5, 0.05), 5.1e-5),
      ]),
      ...panelRows('triangle'),
      ...panelRows('duo-trio'),
      computed('24 of 60 in a triangle: share of tellers', 0.1, told.pd, 1e-9),
      computed('24 of 60 in a triangle: lower limit', -0.056, told.low, 5.1e-5),
      computed('24 of 60 in a triangle: upper limit', 0.256, told.high, 5.1e-5),
    ];
  },
};
