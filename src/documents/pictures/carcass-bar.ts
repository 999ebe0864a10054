/**
 * The carcass bar: a whole animal as one bar, each part as long as its share of the weight: solid on the menu, hatched
 * in stock or staff food, empty where it is thrown away, dashed where nobody has weighed it.
 */
import type { Part } from '../../contract/records.ts';
import { plainNumber } from '../../core/units.ts';
import type { Mark, Scene } from './scene.ts';
import { textWidth } from './text-fit.ts';

export type CarcassPart = Pick<Part, 'name' | 'sharePct' | 'use'> & {
  /** Of the money paid [%]; left out or null where it is not known. */
  readonly moneyPct?: number | null;
};

export interface CarcassBarOptions {
  readonly width?: number;
}

interface Segment {
  readonly name: string;
  readonly share: number;
  readonly use: Part['use'] | 'not weighed';
}

const order: readonly Segment['use'][] = ['menu', 'kitchen', 'thrown away', 'not weighed'];
export const useWords: Record<Segment['use'], string> = {
  menu: 'on the menu',
  kitchen: 'in stock and staff food',
  'thrown away': 'thrown away',
  'not weighed': 'not accounted for',
};

const percent = (share: number) => `${plainNumber(share, share < 10 ? 1 : 0)} %`;

/** Segments in the order of the bar; the remainder to 100 % is a segment of its own, never spread over the others. */
export function carcassSegments(parts: readonly CarcassPart[]): {
  segments: Segment[];
  total: number;
  unknown: string[];
} {
  const known = parts.filter((p) => p.sharePct !== null && p.sharePct > 0);
  const total = known.reduce((sum, p) => sum + p.sharePct!, 0);
  const segments: Segment[] = known
    .map((p) => ({ name: p.name, share: p.sharePct!, use: p.use }))
    .sort((a, b) => order.indexOf(a.use) - order.indexOf(b.use) || b.share - a.share);
  if (total < 99.5 && known.length > 0)
    segments.push({ name: 'not accounted for', share: 100 - total, use: 'not weighed' });
  return { segments, total, unknown: parts.filter((p) => p.sharePct === null).map((p) => p.name) };
}

const rect = (x: number, y: number, w: number, h: number): [number, number][] => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];

function block(use: Segment['use'], x: number, y: number, w: number, h: number): Mark {
  const points = rect(x, y, w, h);
  if (use === 'menu') return { kind: 'polygon', points, fill: 'ink', stroke: { ink: 'paper', width: 1 } };
  if (use === 'kitchen')
    return { kind: 'polygon', points, fill: 'ink', hatch: true, stroke: { ink: 'ink', width: 1 } };
  if (use === 'thrown away') return { kind: 'polygon', points, stroke: { ink: 'ink', width: 1 } };
  return { kind: 'polygon', points, stroke: { ink: 'faded', width: 1, dash: [3, 3] } };
}

export interface Label {
  readonly from: number;
  readonly to: number;
  readonly row: number;
}

/** Rows for labels centred at `at` so that none overlaps another; pushed inside 0…width. */
export function labelRows(wanted: readonly { at: number; width: number }[], width: number, gap = 8): Label[] {
  const ends: number[] = [];
  return wanted.map(({ at, width: w }) => {
    const from = Math.max(0, Math.min(at - w / 2, width - w));
    let row = ends.findIndex((end) => from >= end + gap);
    if (row === -1) row = ends.length;
    ends[row] = from + w;
    return { from, to: from + w, row };
  });
}

function legend(segments: readonly Segment[], width: number): { marks: Mark[]; height: number } {
  const size = 13;
  const marks: Mark[] = [];
  let x = 0;
  let y = 14;
  for (const use of order) {
    const share = segments.filter((s) => s.use === use).reduce((sum, s) => sum + s.share, 0);
    if (share <= 0) continue;
    const text = `${percent(share)} ${useWords[use]}`;
    const needed = 24 + textWidth(text, size) + 20;
    if (x > 0 && x + needed > width) {
      x = 0;
      y += 20;
    }
    marks.push(block(use, x, y - 10, 18, 11), {
      kind: 'text',
      x: x + 24,
      y,
      text,
      size,
      ink: 'ink',
      weight: 'strong',
    });
    x += needed;
  }
  return { marks, height: y + 10 };
}

const moneyOf = (parts: readonly CarcassPart[], name: string): string => {
  const pct = parts.find((p) => p.name === name)?.moneyPct ?? null;
  return pct === null ? '' : percent(pct);
};

/** The same animal by money: what each part carries of what was paid. Null where that is not known. */
function moneyBar(
  parts: readonly CarcassPart[],
  width: number,
  top: number,
): { marks: Mark[]; height: number } | null {
  const carrying = parts
    .flatMap((p) => {
      const pct = p.moneyPct ?? 0;
      return pct > 0 ? [{ name: p.name, share: pct, use: p.use }] : [];
    })
    .sort((a, b) => order.indexOf(a.use) - order.indexOf(b.use) || b.share - a.share);
  const total = carrying.reduce((sum, p) => sum + p.share, 0);
  if (total <= 0) return null;
  const high = 22;
  const size = 12;
  const marks: Mark[] = [{ kind: 'text', x: 0, y: top - 6, text: 'by money', size, ink: 'faded' }];
  let x = 0;
  const middles = carrying.map((p) => {
    const w = (p.share / total) * width;
    marks.push(block(p.use, x, top, w, high));
    x += w;
    return x - w / 2;
  });
  const texts = carrying.map((p) => `${p.name} ${percent(p.share)}`);
  const labels = labelRows(
    texts.map((t, i) => ({ at: middles[i]!, width: textWidth(t, size) })),
    width,
  );
  const rowY = (label: Label) => top + high + 18 + label.row * 17;
  labels.forEach((label, i) => {
    const foot = Math.min(Math.max(middles[i]!, label.from + 2), label.to - 2);
    marks.push({
      kind: 'polyline',
      points: [
        [middles[i]!, top + high],
        [middles[i]!, top + high + 4],
        [foot, rowY(label) - 10],
      ],
      stroke: { ink: 'faded', width: 0.75 },
    });
  });
  labels.forEach((label, i) => {
    const y = rowY(label);
    marks.push(
      { kind: 'polygon', points: rect(label.from, y - 10, label.to - label.from, 13), fill: 'paper' },
      { kind: 'text', x: label.from, y, text: texts[i]!, size, ink: 'ink' },
    );
  });
  const rows = labels.reduce((most, l) => Math.max(most, l.row + 1), 0);
  return { marks, height: high + 12 + rows * 17 };
}

/** One animal as a bar. */
export function carcassBarScene(
  species: string,
  parts: readonly CarcassPart[],
  options: CarcassBarOptions = {},
): Scene {
  const width = options.width ?? 960;
  const { segments, total, unknown } = carcassSegments(parts);
  const scale = width / Math.max(100, total);
  const head = legend(segments, width);
  const top = head.height;
  const height = 40;
  const size = 12;
  const marks: Mark[] = [...head.marks];
  let x = 0;
  const middles = segments.map((s) => {
    const w = s.share * scale;
    marks.push(block(s.use, x, top, w, height));
    x += w;
    return x - w / 2;
  });
  const texts = segments.map((s) => `${s.name} ${percent(s.share)}`);
  const labels = labelRows(
    texts.map((t, i) => ({ at: middles[i]!, width: textWidth(t, size) })),
    width,
  );
  const rowY = (label: Label) => top + height + 18 + label.row * 17;
  labels.forEach((label, i) => {
    const foot = Math.min(Math.max(middles[i]!, label.from + 2), label.to - 2);
    const points = [
      [middles[i]!, top + height],
      [middles[i]!, top + height + 4],
      [foot, rowY(label) - 10],
    ] as const;
    marks.push({ kind: 'polyline', points, stroke: { ink: 'faded', width: 0.75 } });
  });
  labels.forEach((label, i) => {
    const y = rowY(label);
    // Paper behind the words, so that a line to a lower one does not strike them through.
    marks.push(
      { kind: 'polygon', points: rect(label.from, y - 10, label.to - label.from, 13), fill: 'paper' },
      { kind: 'text', x: label.from, y, text: texts[i]!, size, ink: 'ink' },
    );
  });
  const rows = labels.reduce((most, l) => Math.max(most, l.row + 1), 0);
  const foot = top + height + 12 + rows * 17;
  const money = moneyBar(parts, width, foot + 22);
  return {
    width,
    height: money === null ? foot : foot + 22 + money.height,
    title: `${species}: ${order
      .map(
        (use) => [use, segments.filter((s) => s.use === use).reduce((sum, s) => sum + s.share, 0)] as const,
      )
      .filter(([, share]) => share > 0)
      .map(([use, share]) => `${percent(share)} ${useWords[use]}`)
      .join(', ')}`,
    marks: money === null ? marks : [...marks, ...money.marks],
    table: {
      head: ['Part', 'Share', ...(money === null ? [] : ['Share of the money']), 'What becomes of it'],
      rows: [
        ...segments.map((s) => [
          s.name,
          percent(s.share),
          ...(money === null ? [] : [moneyOf(parts, s.name)]),
          useWords[s.use],
        ]),
        ...unknown.map((name) => [
          name,
          'not known',
          ...(money === null ? [] : [moneyOf(parts, name)]),
          useWords[parts.find((p) => p.name === name)!.use],
        ]),
      ],
    },
  };
}
