/** One lot between the animal it came from and what was made of it, from the top down. */
import type { Mark, Scene } from './scene.ts';
import { fitText } from './text-fit.ts';

export interface TraceNode {
  readonly code: string;
  readonly what: string;
}

export interface Trace {
  readonly from: string | null;
  /** Nearest first. */
  readonly above: readonly TraceNode[];
  readonly here: TraceNode;
  readonly below: readonly TraceNode[];
  readonly batches: readonly TraceNode[];
}

interface Row extends TraceNode {
  readonly kind: 'from' | 'above' | 'here' | 'below' | 'batch' | 'more';
}

const most = 8;
const kindWords: Readonly<Record<Row['kind'], string>> = {
  from: 'supplied by',
  above: 'cut from',
  here: 'this lot',
  below: 'cut into',
  batch: 'used in batch',
  more: '',
};

function shortened(nodes: readonly TraceNode[], kind: Row['kind']): Row[] {
  const rows = nodes.slice(0, most).map((n) => ({ ...n, kind }));
  return nodes.length <= most
    ? rows
    : [...rows, { kind: 'more', code: `and ${nodes.length - most} more`, what: '' }];
}

export function lotTraceScene(trace: Trace, options: { readonly width: number }): Scene {
  const { width } = options;
  const rows: Row[] = [
    ...(trace.from === null ? [] : [{ kind: 'from' as const, code: trace.from, what: '' }]),
    ...shortened(trace.above, 'above').reverse(),
    { ...trace.here, kind: 'here' },
    ...shortened(trace.below, 'below'),
    ...shortened(trace.batches, 'batch'),
  ];
  const [pitch, x] = [34, 18];
  const y = (i: number) => 20 + i * pitch;
  const here = rows.findIndex((r) => r.kind === 'here');
  const marks: Mark[] = [];
  if (here > 0)
    marks.push({
      kind: 'polyline',
      points: [
        [x, y(0)],
        [x, y(here)],
      ],
      stroke: { ink: 'faded', width: 1.5 },
    });
  rows.forEach((_, i) => {
    // What comes out of the lot hangs on it one by one; it is not a chain.
    const out = i > here;
    const at = out ? x + 26 : x;
    if (out)
      marks.push({
        kind: 'polyline',
        points: [
          [x, y(here)],
          [x, y(i)],
          [at, y(i)],
        ],
        stroke: { ink: 'faded', width: 1.5 },
      });
  });
  rows.forEach((row, i) => {
    const at = i > here ? x + 26 : x;
    if (row.kind === 'batch')
      marks.push({
        kind: 'polygon',
        points: [
          [at - 6, y(i) - 6],
          [at + 6, y(i) - 6],
          [at + 6, y(i) + 6],
          [at - 6, y(i) + 6],
        ],
        fill: 'paper',
        stroke: { ink: 'ink', width: 1.8 },
      });
    else if (row.kind !== 'more')
      marks.push({
        kind: 'circle',
        x: at,
        y: y(i),
        r: row.kind === 'here' ? 8 : 6,
        fill: row.kind === 'here' ? 'oxblood' : 'paper',
        stroke: { ink: row.kind === 'here' ? 'oxblood' : 'ink', width: 1.8 },
      });
    const said = [kindWords[row.kind], row.code].filter((w) => w !== '').join(' ');
    const text = row.what === '' ? said : `${said}: ${row.what}`;
    marks.push({
      kind: 'text',
      x: at + 18,
      y: y(i) + 5,
      text: fitText(text, width - at - 24, 15, 1)[0] ?? '',
      size: 15,
      ink: row.kind === 'more' ? 'faded' : 'ink',
      weight: row.kind === 'here' ? 'strong' : 'regular',
    });
  });
  return {
    width,
    height: y(rows.length - 1) + 22,
    title: `Lot ${trace.here.code}: ${trace.above.length} lots above it, ${trace.below.length} cut from it, ${trace.batches.length} batches made with it.`,
    marks,
    table: {
      head: ['', 'Which', 'What'],
      rows: rows.map((r) => [kindWords[r.kind], r.code, r.what]),
    },
  };
}
