import { judge } from '../src/core/microbes/judge.ts';
import type { LethalityRule } from '../src/core/properties/rule.ts';
import { findRule } from '../src/core/properties/rules.ts';
import { poultryRows } from '../src/core/properties/rules-us.ts';
import type { Example, Row } from './case.ts';

const dwell = (bird: 'chicken' | 'turkey' | 'other', F: number, fat: number) =>
  poultryRows(bird, fat)[F - 136]?.s ?? Number.NaN;

/** The shortest whole number of seconds a log must hold a temperature to pass a rule. */
function shortest(id: string, C: number): number {
  const rule = findRule(id);
  if (rule === undefined) throw new RangeError(`no rule ${id}`);
  let low = 0;
  let high = 4 * 3600;
  while (high - low > 0.05) {
    const s = (low + high) / 2;
    const held = [
      { s: 0, C },
      { s, C },
    ];
    if (judge(held, [rule], { gap: 1e6 })[0]?.passes) high = s;
    else low = s;
  }
  return high;
}

function outcome(id: string, C: number, s: number) {
  const rule = findRule(id);
  if (rule === undefined) throw new RangeError(`no rule ${id}`);
  const held = [
    { s: 0, C },
    { s, C },
  ];
  return judge(held, [rule], { gap: 1e6 })[0]?.outcome;
}

export const example: Example = {
  title: 'Tables of holds, read at or below the measured temperature',
  story:
    'The American tables for cooked poultry are not straight in log time, so they are kept as printed and never replaced by a D and a z. A goose is neither chicken nor turkey: the longer of the two times counts, and with cream and skin in it the column for 12 % fat. 63.0 °C lies between two rows: the lower one is used. A row holds only if the core stays there without a break. The British table for 90 °C, 10 min follows z 9 °C below and z 10 °C above 90 °C.',
  equation: 'for some row: the core stays at or above T_row, without a break, for at least t_row',
  sources: ['fsis-appendix-a-2021', 'cfa-chilled-foods-2006', 'fda-hazards-guide'],
  run(): Row[] {
    const table = {
      source: 'fsis-appendix-a-2021',
      confidence: 'read' as const,
      tolerance: 0,
      unit: 's',
      why: 'a printed figure, taken over exactly',
    };
    const found = {
      source: 'fsis-appendix-a-2021',
      confidence: 'read' as const,
      tolerance: 0.1,
      unit: 's',
      why: 'found by trying holds to a twentieth of a second',
    };
    const rows: Row[] = [
      { ...table, quantity: 'chicken, 5 % fat, 150 °F', expected: 2.8 * 60, ours: dwell('chicken', 150, 5) },
      { ...table, quantity: 'turkey, 5 % fat, 150 °F', expected: 3.7 * 60, ours: dwell('turkey', 150, 5) },
      {
        ...table,
        quantity: 'chicken, 1 % fat, 160 °F: the shorter end of the range in the text',
        expected: 13.7,
        ours: dwell('chicken', 160, 1),
      },
      {
        ...table,
        quantity: 'turkey, 12 % fat, 160 °F: its longer end',
        expected: 26.9,
        ours: dwell('turkey', 160, 12),
      },
      { ...table, quantity: 'chicken, 12 % fat, 160 °F', expected: 16.9, ours: dwell('chicken', 160, 12) },
      {
        ...table,
        quantity: 'turkey, 12 % fat, 165 °F: at once',
        expected: 0,
        ours: dwell('turkey', 165, 12),
      },
      {
        ...table,
        quantity: 'chicken, 6 % fat, 162 °F: at once',
        expected: 0,
        ours: dwell('chicken', 162, 6),
      },
      { ...table, quantity: 'chicken, 7 % fat, 162 °F', expected: 9.6, ours: dwell('chicken', 162, 7) },
      {
        ...table,
        quantity: 'chicken, 12 % fat, an hour at 57.0 °C: below the lowest row, so not covered',
        unit: '1: not covered',
        expected: 1,
        ours: outcome('us-poultry-7log-chicken-12pct-fat', 57, 3600) === 'not covered' ? 1 : 0,
      },
      {
        ...found,
        quantity: 'goose, fat unknown, held at 60.0 °C',
        expected: 35 * 60,
        ours: shortest('us-poultry-7log-other-12pct-fat', 60),
      },
      {
        ...found,
        quantity: 'goose, fat unknown, held at 145 °F',
        expected: 13.8 * 60,
        ours: shortest('us-poultry-7log-other-12pct-fat', (145 - 32) / 1.8),
      },
      {
        ...found,
        quantity: 'chicken, 12 % fat, held at 63.0 °C: the row of 145 °F',
        expected: 13 * 60,
        ours: shortest('us-poultry-7log-chicken-12pct-fat', 63),
      },
      {
        ...found,
        quantity: 'beef, 6.5-log10, held at 54.4 °C',
        expected: 112 * 60,
        ours: shortest('us-meat-6.5log', 54.4),
      },
      {
        ...found,
        quantity: 'beef, 7-log10, held at 54.4 °C',
        expected: 121 * 60,
        ours: shortest('us-meat-7log', 54.4),
      },
      {
        ...found,
        quantity: 'beef, 5-log10, held at 54.4 °C',
        expected: 86 * 60,
        ours: shortest('us-meat-5log', 54.4),
      },
    ];
    const ninety = findRule('gb-90c-10min') as LethalityRule;
    if (ninety.rate.by !== 'table') throw new TypeError('gb-90c-10min: found no table');
    const worst = ninety.rate.rows.reduce((most, { C, s }) => {
      const fitted = ninety.s * 10 ** ((90 - C) / (C < 90 ? 9 : 10));
      return Math.max(most, Math.abs(fitted / s - 1) * 100);
    }, 0);
    for (const [C, min] of [
      [80, 129],
      [81, 100],
      [82, 77],
      [83, 60],
      [84, 46],
      [86, 28],
      [87, 22],
      [88, 17],
      [89, 13],
      [90, 10],
      [91, 7.9],
      [92, 6.3],
      [93, 5],
      [94, 4],
      [95, 3.2],
      [96, 2.5],
      [97, 2],
      [98, 1.6],
      [99, 1.3],
      [100, 1],
    ] as const)
      rows.push({
        quantity: `${C} °C held for as long as 90 °C for 10 min, British table`,
        source: 'cfa-chilled-foods-2006',
        confidence: 'secondary',
        expected: min * 60,
        ours: shortest('gb-90c-10min', C),
        tolerance: 0.1,
        unit: 's',
        why: 'a printed row, found by trying holds',
      });
    rows.push(
      {
        quantity: '85 °C held for as long as 90 °C for 10 min, British table',
        source: 'cfa-chilled-foods-2006',
        confidence: 'secondary',
        expected: 36 * 60,
        ours: shortest('gb-90c-10min', 85),
        tolerance: 0.1,
        unit: 's',
        why: 'a printed row, found by trying holds',
      },
      {
        quantity: 'largest distance of the British table from z 9 °C below and z 10 °C above 90 °C',
        source: 'cfa-chilled-foods-2006',
        confidence: 'secondary',
        expected: { low: 0, high: 3.5 },
        ours: worst,
        tolerance: 0,
        unit: '%',
        why: 'the table prints two figures',
      },
      {
        quantity: '85 °C held for as long as 90 °C for 10 min, American z 7 °C',
        source: 'fda-hazards-guide',
        confidence: 'memory',
        expected: 51.79 * 60,
        ours: shortest('us-90c-10min', 85),
        tolerance: 1,
        unit: 's',
        why: 'z 7 °C from memory of the guide; found by trying holds',
      },
    );
    return rows;
  },
};
