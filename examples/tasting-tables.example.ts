import { type DiscriminationTest, minimumCorrect, type Sides } from '../src/core/tasting/discrimination.ts';
import type { Example, Row } from './case.ts';

/** tasters: fewest right answers at each level; `-`: not even all right. */
const triangle = `6:5/6 7:5/6 8:6/7 9:6/7 10:7/8 11:7/8 12:8/9 13:8/9 14:9/10 15:9/10 16:9/11 17:10/11 18:10/12 19:11/12 20:11/13 21:12/13 22:12/14
23:12/14 24:13/15 25:13/15 26:14/15 27:14/16 28:15/16 29:15/17 30:15/17 31:16/18 32:16/18 33:17/18 34:17/19 35:17/19 36:18/20 37:18/20 38:19/21 39:19/21
40:19/21 41:20/22 42:20/22 43:20/23 44:21/23 45:21/24 46:22/24 47:22/24 48:22/25 49:23/25 50:23/26 51:24/26 52:24/26 53:24/27 54:25/27 55:25/28 56:26/28
57:26/28 58:26/29 59:27/29 60:27/30`;
const triangleRare = '7:7 8:8 10:9 12:10 18:13 20:14 24:16 30:19 36:22 60:33 96:48';
const duoTrio = `6:5/6/6/-/- 7:6/6/7/7/- 8:6/7/7/8/- 9:7/7/8/9/- 10:7/8/9/10/10 12:8/9/10/11/12 15:10/11/12/13/14 18:12/13/13/15/16 20:13/14/15/16/18
24:15/16/17/19/20 30:18/20/20/22/24 36:22/23/24/26/28 40:24/25/26/28/31 48:28/29/31/33/36 60:34/36/37/40/43 72:41/42/44/47/50 80:45/47/48/51/55 88:49/51/53/56/59`;
const pairedTwo = `6:6/- 7:7/- 8:8/8 9:8/9 10:9/10 12:10/11 15:12/13 18:14/15 20:15/17 24:18/19 25:18/20 30:21/23 36:25/27 40:27/29 48:32/34 50:33/35 60:39/41
100:61/64`;

interface Table {
  readonly test: DiscriminationTest;
  readonly sides: Sides;
  readonly levels: readonly number[];
  readonly cells: string;
  /** Whether the printed table has this number of tasters. */
  readonly printed: (tasters: number) => boolean;
  readonly source: string;
}

const fao = (n: number) => n <= 36 || n % 6 === 0;
const tables: readonly Table[] = [
  { test: 'triangle', sides: 1, levels: [0.05, 0.01], cells: triangle, printed: fao, source: 'huss-1995' },
  { test: 'triangle', sides: 1, levels: [0.001], cells: triangleRare, printed: fao, source: 'huss-1995' },
  {
    test: 'duo-trio',
    sides: 1,
    levels: [0.2, 0.1, 0.05, 0.01, 0.001],
    cells: duoTrio,
    printed: () => true,
    source: 'iso-10399-table-a1',
  },
  {
    test: 'paired',
    sides: 2,
    levels: [0.05, 0.01],
    cells: pairedTwo,
    printed: () => false,
    source: 'own-computation',
  },
];

function rowsOf({ test, sides, levels, cells, printed, source }: Table): Row[] {
  return cells.split(/\s+/).flatMap((entry) => {
    const [tasters, values] = entry.split(':') as [string, string];
    const n = Number(tasters);
    return values.split('/').map((cell, i): Row => {
      const level = levels[i]!;
      const seen = printed(n);
      return {
        quantity: `${test}${sides === 2 ? ', two sides' : ''}, ${n} tasters at ${100 * level} %${cell === '-' ? ' (not even all right: shown as 0)' : ''}`,
        source: seen ? source : 'own-computation',
        confidence: seen ? 'read' : 'computed',
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
