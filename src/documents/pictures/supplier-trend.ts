/** A supplier over time: small pictures one beside another, a mark a delivery, the newest at the right. */
import type { SupplierTrend } from '../../contract/delivery.ts';
import { formatQuantity, inUnit, plainNumber, type UnitSystem, usualUnit } from '../../core/units.ts';
import { niceStep } from './piece-layout.ts';
import type { Ink, Mark, Scene } from './scene.ts';

type Row = SupplierTrend['deliveries'][number];

export interface SupplierTrendOptions {
  readonly width: number;
  readonly units: UnitSystem;
  /** The day as it is written under the marks and in the table. */
  readonly day: (instant: string) => string;
  /** Money for one kilogram, from minor units. */
  readonly money: (minor: number) => string;
}

interface Panel {
  readonly name: string;
  readonly of: (d: Row) => number | null;
  readonly show: (v: number) => string;
  /** A scale that always stands: shares from nothing to all. */
  readonly fixed?: readonly [number, number];
}

/** More than these are a smear; the older ones stay in the table. */
export const mostShown = 26;

const words: Readonly<Record<Row['decision'], string>> = {
  accepted: 'accepted',
  'accepted with deviation': 'with deviation',
  refused: 'refused',
};

const panelsFor = ({ units, money }: SupplierTrendOptions): readonly Panel[] => [
  {
    name: 'points met, of 100',
    of: (d) => (d.pointsAsked === 0 ? null : (100 * d.pointsMet) / d.pointsAsked),
    show: (v) => `${plainNumber(v, 0)} %`,
    fixed: [0, 100],
  },
  {
    name: `warmest on arrival, ${usualUnit('temperature', units)}`,
    of: (d) =>
      d.warmestC === null ? null : inUnit(d.warmestC, 'temperature', usualUnit('temperature', units)),
    show: (v) => plainNumber(v, 1),
  },
  {
    name: 'price of a kilogram',
    of: (d) => d.costPerKg,
    show: (v) => money(Math.round(v)),
  },
  {
    name: 'became parts that are used, of 100',
    of: (d) => d.usedPct,
    show: (v) => `${plainNumber(v, 0)} %`,
    fixed: [0, 100],
  },
];

const label = (
  x: number,
  y: number,
  text: string,
  ink: Ink,
  anchor: 'start' | 'middle' | 'end',
  size = 12,
): Mark => ({
  kind: 'text',
  x,
  y,
  text,
  size,
  ink,
  anchor,
});

/** Dot: accepted; triangle: with deviation; cross: refused. A shape each, never a colour alone. */
function markOf(decision: Row['decision'], x: number, y: number): Mark[] {
  const r = 4.5;
  if (decision === 'accepted') return [{ kind: 'circle', x, y, r, fill: 'ink' }];
  if (decision === 'accepted with deviation')
    return [
      {
        kind: 'polygon',
        points: [
          [x, y - r - 1],
          [x + r + 1, y + r],
          [x - r - 1, y + r],
        ],
        fill: 'paper',
        stroke: { ink: 'ember', width: 2 },
      },
    ];
  const arm = (dx: number): Mark => ({
    kind: 'polyline',
    points: [
      [x - dx, y - r],
      [x + dx, y + r],
    ],
    stroke: { ink: 'rust', width: 2.5 },
  });
  return [arm(r), arm(-r)];
}

function scaleOf(values: readonly number[], fixed: Panel['fixed']): readonly [number, number] {
  if (fixed !== undefined) return fixed;
  const low = Math.min(...values);
  const high = Math.max(...values);
  const step = niceStep(Math.max(high - low, Math.abs(high) * 0.1, 1) / 2);
  return [Math.floor(low / step - 0.2) * step, Math.ceil(high / step + 0.2) * step];
}

function panelMarks(
  panel: Panel,
  rows: readonly Row[],
  box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
  day: (instant: string) => string,
): Mark[] {
  const [left, right] = [box.x + 54, box.x + box.width - 10];
  const [top, bottom] = [box.y + 30, box.y + box.height - 26];
  const values = rows.map(panel.of);
  const known = values.filter((v): v is number => v !== null);
  const marks: Mark[] = [label(box.x, box.y + 14, panel.name, 'ink', 'start', 14)];
  if (known.length === 0) {
    marks.push(label(box.x, box.y + 38, 'Not known for any of them yet.', 'faded', 'start', 13));
    return marks;
  }
  const [low, high] = scaleOf(known, panel.fixed);
  const y = (v: number) => bottom - ((bottom - top) * (v - low)) / (high - low);
  const gap = (right - left) / rows.length;
  const x = (i: number) => left + gap * (i + 0.5);
  for (const v of [low, (low + high) / 2, high]) {
    marks.push({
      kind: 'polyline',
      points: [
        [left, y(v)],
        [right, y(v)],
      ],
      stroke: { ink: 'bone', width: 1 },
    });
    marks.push(label(left - 6, y(v) + 4, panel.show(v), 'faded', 'end'));
  }
  // A line only between neighbours that are both known: nothing is drawn across what nobody measured.
  rows.forEach((_, i) => {
    const [a, b] = [values[i], values[i + 1]];
    if (a !== null && a !== undefined && b !== null && b !== undefined)
      marks.push({
        kind: 'polyline',
        points: [
          [x(i), y(a)],
          [x(i + 1), y(b)],
        ],
        stroke: { ink: 'faded', width: 1 },
      });
  });
  rows.forEach((row, i) => {
    const v = values[i];
    if (v !== null && v !== undefined) marks.push(...markOf(row.decision, x(i), y(v)));
  });
  const every = Math.max(1, Math.ceil(62 / gap));
  rows.forEach((row, i) => {
    if ((rows.length - 1 - i) % every === 0)
      marks.push(
        label(
          Math.min(x(i), right - 22),
          box.y + box.height - 8,
          day(row.arrivedAt).replace(/ \d{4}$/, ''),
          'faded',
          'middle',
        ),
      );
  });
  return marks;
}

/** Points met, warmth, price and use, delivery by delivery. Unknown is a gap, never a nought. */
export function supplierTrendScene(all: readonly Row[], options: SupplierTrendOptions): Scene {
  const { width, units, day, money } = options;
  const rows = all.slice(-mostShown);
  const columns = width >= 640 ? 2 : 1;
  const gap = 28;
  const panelWidth = (width - gap * (columns - 1)) / columns;
  const panelHeight = 158;
  const panels = panelsFor(options);
  const marks = panels.flatMap((panel, i) =>
    panelMarks(
      panel,
      rows,
      {
        x: (i % columns) * (panelWidth + gap),
        y: Math.floor(i / columns) * panelHeight,
        width: panelWidth,
        height: panelHeight,
      },
      day,
    ),
  );
  const older = all.length - rows.length;
  return {
    width,
    height: Math.ceil(panels.length / columns) * panelHeight,
    title: `${all.length} ${all.length === 1 ? 'delivery' : 'deliveries'}: points met, warmest on arrival, price and what was used${older > 0 ? `; the newest ${rows.length} are drawn` : ''}`,
    marks,
    table: {
      head: ['Day', 'Decided', 'Points met', 'Warmest', 'Weight', 'A kilogram', 'Used'],
      rows: [...all]
        .reverse()
        .map((d) => [
          day(d.arrivedAt),
          words[d.decision],
          d.pointsAsked === 0 ? 'nothing was asked' : `${d.pointsMet} of ${d.pointsAsked}`,
          d.warmestC === null ? 'not measured' : formatQuantity(d.warmestC, 'temperature', units),
          formatQuantity(d.grams, 'mass', units),
          d.costPerKg === null ? 'not known' : money(Math.round(d.costPerKg)),
          d.usedPct === null ? 'not broken down' : `${plainNumber(d.usedPct, 1)} %`,
        ]),
    },
  };
}
