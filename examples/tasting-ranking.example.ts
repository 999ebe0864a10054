import { exactFriedman, friedman, friedmanCritical, rankDifference } from '../src/core/tasting/ranking.ts';
import type { Example, Row } from './case.ts';

/** Samples: assessors, critical value at 5 % and at 1 %. */
const criticals: Readonly<Record<number, string>> = {
  3: '3 6.0/-; 4 6.5/8.0; 5 6.4/8.4; 6 7.0/9.0; 7 7.143/8.857; 8 6.25/9.0; 9 6.222/9.556; 10 6.2/9.6; 11 6.545/9.455; 12 6.5/9.5; 13 6.615/9.385; 14 6.143/9.143; 15 6.4/8.933',
  4: '3 7.4/9.0; 4 7.8/9.6; 5 7.8/9.96; 6 7.6/10.2; 7 7.8/10.543; 8 7.65/10.5',
  5: '3 8.533/10.133; 4 8.8/11.2; 5 8.96/11.68',
};

const computed = (quantity: string, expected: number, ours: number, tolerance: number, unit = '-'): Row => ({
  quantity,
  source: 'own-computation',
  confidence: 'computed',
  expected,
  ours,
  tolerance,
  unit,
  why: 'the last digit of the figure',
});

function criticalRows(samples: number): Row[] {
  return criticals[samples]!.split('; ').flatMap((line) => {
    const [assessors, cells] = line.split(' ') as [string, string];
    return cells
      .split('/')
      .map((cell, i) =>
        computed(
          `${assessors} tasters, ${samples} samples at ${[5, 1][i]} %${cell === '-' ? ' (none comes up: shown as 0)' : ''}`,
          cell === '-' ? 0 : Number(cell),
          friedmanCritical(Number(assessors), samples, [0.05, 0.01][i]!) ?? 0,
          5.1e-4,
        ),
      );
  });
}

const plain = ['1234', '2134', '1324', '1243', '2134', '1234', '1243', '3124'].map((r) => [...r].map(Number));
const tied = [
  [1.5, 1.5, 3],
  [1, 2, 3],
  [1, 2.5, 2.5],
  [2, 1, 3],
  [1, 2, 3],
  [1, 3, 2],
];

export const example: Example = {
  title: 'Samples put in order',
  story: `Whether tasters agree on an order more than chance would. With few tasters the chi-square distribution is a poor stand-in, so every order is counted; the
critical values were counted apart from the engine by another program, and two tables are worked by hand, one with samples put equal. None was read in a publication.`,
  equation: 'F = 12/(j·p·(p + 1))·ΣR² − 3·j·(p + 1);  F′ = F/(1 − Σ(t³ − t)/(j·p·(p² − 1)))',
  sources: ['friedman-1937', 'iso-8587-2006'],
  run(): Row[] {
    const [first, second] = [friedman(plain), friedman(tied)];
    return [
      ...[3, 4, 5].flatMap(criticalRows),
      ...[12, 14, 24, 30].map((R, i) =>
        computed(`8 tasters, 4 samples: rank sum ${i + 1}`, R, first.sums[i]!, 0, 'ranks'),
      ),
      computed('8 tasters, 4 samples: F', 16.2, first.statistic ?? Number.NaN, 1e-9),
      computed(
        '8 tasters, 4 samples: least difference at 5 %',
        10.121,
        rankDifference(8, 4, 0.05),
        5.1e-4,
        'ranks',
      ),
      ...[7.5, 12, 16.5].map((R, i) =>
        computed(`with ties: rank sum ${i + 1}`, R, second.sums[i]!, 0, 'ranks'),
      ),
      computed('with ties: F', 6.75, second.plain, 1e-9),
      computed('with ties: E', 12, second.ties, 0),
      computed('with ties: F′', 7.363636, second.statistic ?? Number.NaN, 5.1e-7),
      computed(
        '3 tasters of one mind on 3 samples: chance',
        1 / 36,
        exactFriedman([
          [1, 2, 3],
          [1, 2, 3],
          [1, 2, 3],
        ]) ?? Number.NaN,
        1e-12,
      ),
    ];
  },
};
