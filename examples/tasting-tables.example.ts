import { type DiscriminationTest, minimumCorrect, type Sides } from '../src/core/tasting/discrimination.ts';
import type { Example, Row } from './case.ts';

/** tasters: fewest right answers at each level; `-`: not even all right. */
const triangle = `3:3/3/-/- 4:4/4/-/- 5:4/4/5/- 6:5/5/6/- 7:5/5/6/7 8:5/6/7/8 9:6/6/7/8 10:6/7/8/9 11:7/7/8/10 12:7/8/9/10 13:8/8/9/11 14:8/9/10/11
15:8/9/10/12 16:9/9/11/12 17:9/10/11/13 18:10/10/12/13 19:10/11/12/14 20:10/11/13/14 21:11/12/13/15 22:11/12/14/15 23:12/12/14/16
24:12/13/15/16 25:12/13/15/17 26:13/14/15/17 27:13/14/16/18 28:14/15/16/18 29:14/15/17/19 30:14/15/17/19 31:15/16/18/20 32:15/16/18/20
33:15/17/18/21 34:16/17/19/21 35:16/17/19/22 36:17/18/20/22 42:19/20/22/25 48:21/22/25/27 54:23/25/27/30 60:26/27/30/33 66:28/29/32/35
72:30/32/34/38 78:32/34/37/40 84:35/36/39/43 90:37/38/42/45 96:39/41/44/48`;
const triangleBetween = `37:18/20 38:19/21 39:19/21 40:19/21 41:20/22 43:20/23 44:21/23 45:21/24 46:22/24 47:22/24 49:23/25 50:23/26 51:24/26 52:24/26 53:24/27
55:25/28 56:26/28 57:26/28 58:26/29 59:27/29`;
const duoTrio = `6:5/6/6/-/- 7:6/6/7/7/- 8:6/7/7/8/- 9:7/7/8/9/- 10:7/8/9/10/10 12:8/9/10/11/12 15:10/11/12/13/14 18:12/13/13/15/16 20:13/14/15/16/18
24:15/16/17/19/20 30:18/20/20/22/24 36:22/23/24/26/28 40:24/25/26/28/31 48:28/29/31/33/36 60:34/36/37/40/43 72:41/42/44/47/50 80:45/47/48/51/55 88:49/51/53/56/59`;
const pairedTwo = `6:6/- 7:7/- 8:8/8 9:8/9 10:9/10 12:10/11 15:12/13 18:14/15 20:15/17 24:18/19 25:18/20 30:21/23 36:25/27 40:27/29 48:32/34 50:33/35 60:39/41
100:61/64`;

interface Table {
  readonly test: DiscriminationTest;
  readonly sides: Sides;
  readonly levels: readonly number[];
  readonly cells: string;
  readonly source: string;
}

const tables: readonly Table[] = [
  { test: 'triangle', sides: 1, levels: [0.1, 0.05, 0.01, 0.001], cells: triangle, source: 'huss-1995' },
  { test: 'triangle', sides: 1, levels: [0.05, 0.01], cells: triangleBetween, source: 'own-computation' },
  {
    test: 'duo-trio',
    sides: 1,
    levels: [0.2, 0.1, 0.05, 0.01, 0.001],
    cells: duoTrio,
    source: 'iso-10399-table-a1',
  },
  { test: 'paired', sides: 2, levels: [0.05, 0.01], cells: pairedTwo, source: 'own-computation' },
];

function rowsOf({ test, sides, levels, cells, source }: Table): Row[] {
  return cells.split(/\s+/).flatMap((entry) => {
    const [tasters, values] = entry.split(':') as [string, string];
    const n = Number(tasters);
    return values.split('/').map((cell, i): Row => {
      const level = levels[i]!;
      return {
        quantity: `${test}${sides === 2 ? ', two sides' : ''}, ${n} tasters at ${100 * level} %${cell === '-' ? ' (not even all right: shown as 0)' : ''}`,
        source,
        confidence: source === 'own-computation' ? 'computed' : 'read',
        expected: cell === '-' ? 0 : Number(cell),
        ours: minimumCorrect(test, n, level, sides) ?? 0,
        tolerance: 0,
        unit: 'answers',
        why: 'a whole number',
      };
    });
  });
}

export const example: Example = {
  title: 'How many must be right',
  story: `Printed tables say how many of so many tasters must be right before a difference is called found. They follow from the binomial
distribution exactly, cell by cell. A table that goes in steps of six beyond 36 tasters is filled in between, and the paired test of two sides worked out,
apart from the engine; those cells are marked as computed.`,
  equation: 'fewest x with P(X ≥ x) ≤ α, X binomial(n, 1/3 or 1/2); two sides: 2·P(X ≥ x) ≤ α',
  sources: ['huss-1995', 'iso-10399-table-a1', 'iso-4120-2021'],
  run: () => tables.flatMap(rowsOf),
};
