import { qt } from 'lib-r-math.js';
import { centreOf, logOdds, shareOfOdds } from '../src/core/carcass/log-ratio.ts';
import {
  animalsForPrecision,
  meanShare,
  type ShareEstimate,
  shareEstimate,
} from '../src/core/carcass/yield-estimate.ts';
import { outliersOf } from '../src/core/carcass/yield-outliers.ts';
import { learningTrend, yieldDifference } from '../src/core/carcass/yield-trend.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const legs = [0.212, 0.205, 0.231, 0.218, 0.199, 0.224];
const necks = [0.052, 0.061, 0.047, 0.055];
const cutterA = [0.412, 0.405, 0.42, 0.409, 0.417];
const cutterB = [0.398, 0.401, 0.391, 0.404];
const learning = [
  [1, 0.38],
  [2, 0.391],
  [3, 0.389],
  [5, 0.402],
  [8, 0.399],
  [13, 0.411],
] as const;
const slip = [0.21, 0.22, 0.2, 0.215, 0.208, 0.45];

const t = (p: number, df: number) => qt(p, df);
const odds = (shares: readonly number[]) => shares.map((x) => logOdds(x, 1e-4));
const seen = (shares: readonly number[]) => shares.map((share) => ({ share }));

export const example: Example = {
  title: 'How sure a yield is, beside a statistics library',
  story:
    'Six legs and four necks, weighed (the weights are invented: this is about the arithmetic and says nothing of any animal). The plain mean with its interval, the centre by log-odds with its own and the next animal’s, a published figure that counts as so many animals, two cutters held against one another, one cutter’s learning, a slip of the scale. The other side is a script that computes the same by a statistics library; the published figure’s weight it adds up on a grid from the likelihoods, without the formula that the engine uses.',
  equation: 'x̄ ± t s/√n;  z = ln(x/(1 − x));  m ± t s/√N;  next animal m ± t s √(1 + 1/N)',
  sources: ['aitchison-1986', 'gelman-bda-2013', 'welch-1947', 'wright-1936', 'iglewicz-hoaglin-1993'],
  run(): Row[] {
    const theirs = kept('carcass');
    const rows: Row[] = [];
    const compare = (
      id: string,
      ours: number | null | undefined,
      source: string,
      tolerance = 1e-9,
      why = 'the same formula in another program',
    ) =>
      rows.push({
        quantity: id,
        source,
        expected: theirs(id),
        ours: ours ?? Number.NaN,
        tolerance,
        unit: '-',
        why,
        confidence: 'computed',
      });
    for (const [p, df] of [
      [0.975, 1],
      [0.975, 4],
      [0.975, 7.3],
      [0.975, 30],
      [0.975, 999],
    ] as const)
      compare(`t ${p} ${df}`, t(p, df), 'own-computation', 1e-7, 'two libraries of distributions');
    for (const [name, shares] of [
      ['legs', legs],
      ['necks', necks],
    ] as const) {
      const { mean, sd, low, high } = meanShare(seen(shares), t);
      const e = shareEstimate(seen(shares), t);
      for (const [key, value] of Object.entries({ mean, sd, low, high }))
        compare(`${name} ${key}`, value, 'own-computation');
      compare(`${name} centre`, e.centre, 'aitchison-1986');
      compare(`${name} centre low`, e.low, 'aitchison-1986');
      compare(`${name} centre high`, e.high, 'aitchison-1986');
      compare(`${name} next low`, e.nextLow, 'aitchison-1986');
      compare(`${name} next high`, e.nextHigh, 'aitchison-1986');
      for (const r of [0.05, 0.1])
        compare(`${name} animals ${r}`, animalsForPrecision(mean, sd ?? 0, r, t), 'own-computation', 0);
    }
    const withPrior = (name: string, e: ShareEstimate) => {
      const why = 'a grid that is good to the fourth decimal';
      for (const [key, value] of [
        ['low', e.low],
        ['centre', e.centre],
        ['high', e.high],
        ['next low', e.nextLow],
        ['next high', e.nextHigh],
      ] as const)
        compare(`prior ${name} ${key}`, value, 'gelman-bda-2013', 1e-4, why);
    };
    withPrior('with spread', shareEstimate(seen(necks), t, { share: 0.06, sd: 0.006, animals: 6 }));
    withPrior('without spread', shareEstimate(seen(necks), t, { share: 0.06, animals: 5 }));
    const difference = yieldDifference(odds(cutterA), odds(cutterB), t);
    compare('welch low', difference.low, 'welch-1947');
    compare('welch high', difference.high, 'welch-1947');
    compare('welch degrees', difference.degrees, 'welch-1947');
    const trend = learningTrend(
      learning.map(([animal, x]) => ({ animal, z: logOdds(x, 1e-4) })),
      t,
    );
    compare('learning slope', trend.perDoubling, 'wright-1936');
    compare('learning low', trend.low, 'wright-1936');
    compare('learning high', trend.high, 'wright-1936');
    compare('slip score', outliersOf(odds(slip))[0]?.score, 'iglewicz-hoaglin-1993', 1e-6);
    const centre = centreOf([
      [0.2, 0.3, 0.5],
      [0.25, 0.28, 0.47],
      [0.18, 0.35, 0.47],
    ]);
    centre.forEach((share, i) => {
      compare(`centre of three ${i}`, share, 'aitchison-1986');
    });
    compare('legs centre', shareOfOdds(odds(legs).reduce((a, b) => a + b, 0) / legs.length), 'egozcue-2003');
    return rows;
  },
};
