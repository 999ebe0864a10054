import { findYieldStudy, yieldRow } from '../src/core/properties/yields.ts';
import type { Example, Row } from './case.ts';

const pct = (study: string, part: string) => yieldRow(study, part)?.pct ?? Number.NaN;
/** Sum of the rows that stand by themselves. */
function total(id: string, without = ''): number {
  const rows = findYieldStudy(id)?.rows ?? [];
  return rows
    .filter((r) => r.of === undefined && r.within === undefined && r.part !== without)
    .reduce((sum, r) => sum + r.pct, 0);
}

const row = (
  quantity: string,
  source: string,
  expected: number,
  ours: number,
  tolerance: number,
  why: string,
  unit = '%',
): Row => ({ quantity, source, expected, ours, tolerance, unit, why, confidence: 'read' });

const summed = 'a sum of figures printed to two decimals';
const rounded = 'shares rounded to a tenth';

export const example: Example = {
  title: 'Do the published yields close?',
  story:
    'A table that was copied wrong does not close. The fifth quarters of pig, lamb and steer are added up and held against the printed totals (the steer’s is two hundredths out in print); the broiler’s parts are worked out from boneless grams and share of bone, and close; a goose’s six cuts leave one and a half per cent that the study does not name. Meat to bone is worked out from tissues.',
  equation: 'Σ parts = whole;  part with bone = boneless/(1 − bone)',
  sources: [
    'ahdb-pork-yield-guide',
    'ahdb-lamb-yield-guide',
    'ahdb-beef-yield-guide',
    'usda-sr28-2015',
    'geese-india-2013',
    'fies-2020-turkey',
    'npb-2016-cutout',
    'kuzelov-2011-rabbit',
  ],
  run(): Row[] {
    const raw = findYieldStudy('us-broiler-cuts')?.rows.filter((r) => r.raw !== undefined) ?? [];
    const worked = raw
      .filter((r) => r.within === undefined)
      .reduce(
        (sum, r) =>
          sum + (r.raw ?? []).reduce((s, p) => s + ((p.sign ?? 1) * p.gPerLb) / (1 - p.bone), 0) / 4.5359237,
        0,
      );
    return [
      row(
        'pig, fifth quarter of live',
        'ahdb-pork-yield-guide',
        29.73,
        total('ahdb-pig', 'carcass'),
        0.005,
        summed,
      ),
      row(
        'lamb, fifth quarter of live',
        'ahdb-lamb-yield-guide',
        52.56,
        total('ahdb-lamb', 'carcass'),
        0.005,
        summed,
      ),
      {
        ...row(
          'steer, fifth quarter of live',
          'ahdb-beef-yield-guide',
          47.0,
          total('ahdb-beef', 'carcass'),
          0.005,
          summed,
        ),
        differs: { by: 0.02, why: 'the printed rows sum to 47.02, the printed total is 47.00' },
      },
      row('broiler, parts from grams and bone', 'usda-sr28-2015', 100, worked, 0.1, 'grams rounded to one'),
      row('broiler, rounded parts', 'usda-sr28-2015', 100, total('us-broiler-cuts'), 0.05, rounded),
      row('turkey, cuts of the carcass', 'fies-2020-turkey', 100, total('turkey-9kg'), 0.05, summed),
      row('pig, American cuts of the carcass', 'npb-2016-cutout', 100, total('us-pig-cuts'), 0.05, rounded),
      row(
        'rabbit, cuts of the carcass with head',
        'kuzelov-2011-rabbit',
        100,
        total('rabbit-male'),
        0.05,
        summed,
      ),
      row(
        'goose, six cuts of the dressed weight',
        'geese-india-2013',
        98.5,
        total('goose-india-dressed'),
        0.05,
        rounded,
      ),
      ...(
        [
          ['broiler', 'us-broiler-tissues', 1.52],
          ['stewing hen', 'us-stewing-hen', 1.67],
          ['duck', 'us-duck', 1.23],
          ['goose', 'us-goose', 2.47],
        ] as const
      ).map(([name, id, ratio]) => ({
        ...row(
          `${name}, meat to bone`,
          'usda-sr28-2015',
          ratio,
          pct(id, 'meat') / pct(id, 'bone'),
          0.01,
          'a ratio of shares rounded to a tenth',
          '-',
        ),
        confidence: 'computed' as const,
      })),
    ];
  },
};
