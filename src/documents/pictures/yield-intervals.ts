/**
 * Yields as a row for each part: a dot at the mean, a heavy line where the mean lies (95 in 100), a thin one where the
 * next animal falls, an open diamond at the published figure.
 */
import { plainNumber } from '../../core/units.ts';
import { niceStep } from './piece-layout.ts';
import type { Ink, Mark, Scene } from './scene.ts';
import { fitText } from './text-fit.ts';

export interface YieldRowShown {
  readonly part: string;
  readonly meanPct: number;
  readonly low95: number | null;
  readonly high95: number | null;
  readonly nextLow95: number | null;
  readonly nextHigh95: number | null;
  /** In % of the same whole; null where there is none to stand on this scale. */
  readonly publishedPct: number | null;
  readonly animals: number;
}

export interface YieldIntervalsOptions {
  readonly width: number;
}

const percent = (x: number | null) => (x === null ? 'not known' : `${plainNumber(x, x < 10 ? 2 : 1)} %`);
const between = (low: number | null, high: number | null) =>
  low === null || high === null ? 'not known yet' : `${percent(low)} to ${percent(high)}`;

const line = (x1: number, x2: number, y: number, ink: Ink, width: number): Mark => ({
  kind: 'polyline',
  points: [
    [x1, y],
    [x2, y],
  ],
  stroke: { ink, width },
});

/** One row a part, in the order given. */
export function yieldIntervalsScene(rows: readonly YieldRowShown[], { width }: YieldIntervalsOptions): Scene {
  const left = Math.min(150, Math.max(84, width * 0.24));
  const right = width - 14;
  const high = Math.max(
    1,
    ...rows.flatMap((r) => [r.meanPct, r.high95 ?? 0, r.nextHigh95 ?? 0, r.publishedPct ?? 0]),
  );
  const step = niceStep(high / Math.max(2, (right - left) / 90));
  const most = Math.min(100, Math.ceil(high / step) * step);
  const x = (pct: number) => left + ((right - left) * Math.min(most, Math.max(0, pct))) / most;
  const top = 24;
  const gap = 26;
  const marks: Mark[] = [];
  for (let v = 0; v <= most + 1e-9; v += step)
    marks.push(
      {
        kind: 'polyline',
        points: [
          [x(v), top - 8],
          [x(v), top + rows.length * gap - 8],
        ],
        stroke: { ink: 'bone', width: 1 },
      },
      {
        kind: 'text',
        x: x(v),
        y: top - 13,
        text: `${plainNumber(v, 1)} %`,
        size: 12,
        ink: 'faded',
        anchor: v === 0 ? 'start' : v > most - step / 2 ? 'end' : 'middle',
      },
    );
  rows.forEach((row, i) => {
    const y = top + i * gap + 6;
    marks.push({
      kind: 'text',
      x: 0,
      y: y + 4,
      text: fitText(row.part, left - 10, 13, 1)[0] ?? '',
      size: 13,
      ink: 'ink',
    });
    if (row.nextLow95 !== null && row.nextHigh95 !== null) {
      marks.push(line(x(row.nextLow95), x(row.nextHigh95), y, 'faded', 1));
      for (const end of [row.nextLow95, row.nextHigh95])
        marks.push({
          kind: 'polyline',
          points: [
            [x(end), y - 4],
            [x(end), y + 4],
          ],
          stroke: { ink: 'faded', width: 1 },
        });
    }
    if (row.low95 !== null && row.high95 !== null)
      marks.push(line(x(row.low95), Math.max(x(row.low95) + 1, x(row.high95)), y, 'ink', 5));
    if (row.publishedPct !== null) {
      const p = x(row.publishedPct);
      marks.push({
        kind: 'polygon',
        points: [
          [p, y - 7],
          [p + 7, y],
          [p, y + 7],
          [p - 7, y],
        ],
        stroke: { ink: 'slate', width: 2 },
      });
    }
    marks.push({
      kind: 'circle',
      x: x(row.meanPct),
      y,
      r: 5,
      fill: 'oxblood',
      stroke: { ink: 'paper', width: 1.5 },
    });
  });
  return {
    width,
    height: top + rows.length * gap,
    title: `What ${rows.length} parts give, in per cent of what went on the table`,
    marks,
    table: {
      head: ['Part', 'Animals', 'Mean', 'Mean, 95 in 100', 'Next animal, 95 in 100', 'Published'],
      rows: rows.map((r) => [
        r.part,
        String(r.animals),
        percent(r.meanPct),
        between(r.low95, r.high95),
        between(r.nextLow95, r.nextHigh95),
        r.publishedPct === null ? 'none of this whole' : percent(r.publishedPct),
      ]),
    },
  };
}
