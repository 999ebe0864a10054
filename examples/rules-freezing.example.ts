import { judge } from '../src/core/microbes/judge.ts';
import { findRule } from '../src/core/properties/rules.ts';
import type { Example, Row } from './case.ts';

const hour = 3600;

/** The shortest time a log must stay at a temperature to meet a rule [h]. */
function shortest(id: string, C: number): number {
  const rule = findRule(id);
  if (rule === undefined) throw new RangeError(`no rule ${id}`);
  let low = 0;
  let high = 60 * 24 * hour;
  while (high - low > 1) {
    const s = (low + high) / 2;
    const kept = [
      { s: 0, C },
      { s, C },
    ];
    if (judge(kept, [rule], { gap: 1e9 })[0]?.passes) high = s;
    else low = s;
  }
  return high / hour;
}

export const example: Example = {
  title: 'Freezing against parasites, read as the tables are printed',
  story:
    'How long pork must be frozen against Trichinella, and fish that is eaten raw against worms: by the middle of the piece or by the air of the freezer. A temperature between two rows is read at the warmer of them, a thaw begins the time anew, and nothing warmer than the first row counts at all. None of it is accepted for wild boar, horse or game, and none of it kills bacteria.',
  equation: 'for some row: at or below T_row, without a break, for at least t_row',
  sources: ['eu-2015-1375', 'us-9cfr-318-10', 'eu-853-2004'],
  run(): Row[] {
    const found = { tolerance: 0.001, unit: 'h', why: 'a printed row, found by trying holds to a second' };
    const eu = { ...found, source: 'eu-2015-1375', confidence: 'memory' } as const;
    const us = { ...found, source: 'us-9cfr-318-10', confidence: 'secondary' } as const;
    const rows: Row[] = [];
    for (const [C, h] of [
      [-18, 106],
      [-21, 82],
      [-23.5, 63],
      [-26, 48],
      [-29, 35],
      [-32, 22],
      [-35, 8],
      [-37, 0.5],
    ] as const)
      rows.push({
        ...eu,
        quantity: `pork, its middle at ${C} °C`,
        expected: h,
        ours: shortest('eu-trichinella-freezing-middle', C),
      });
    for (const [C, h] of [
      [-17.8, 106],
      [-28.9, 35],
      [-37.2, 0.5],
    ] as const)
      rows.push({
        ...us,
        quantity: `pork in the United States, its middle at ${C} °C`,
        expected: h,
        ours: shortest('us-trichinella-freezing-middle', C),
      });
    for (const [id, words, d] of [
      ['eu-trichinella-freezing-to-15cm', 'up to 15 cm', 10],
      ['eu-trichinella-freezing-to-50cm', '15 to 50 cm', 20],
    ] as const)
      rows.push({
        ...eu,
        quantity: `pork ${words}, freezer at −25 °C: the row of −23 °C`,
        expected: d * 24,
        ours: shortest(id, -25),
      });
    for (const [C, h] of [
      [-20, 24],
      [-35, 15],
    ] as const)
      rows.push({
        ...found,
        source: 'eu-853-2004',
        confidence: 'memory',
        quantity: `fish eaten raw, all of it at ${C} °C`,
        expected: h,
        ours: shortest('eu-fish-parasites-freezing', C),
      });
    return rows;
  },
};
