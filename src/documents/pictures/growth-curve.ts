/** How much an organism would grow, with lag and without, against time, with the line of one log drawn across. */
import { number } from '../format.ts';
import { spread, thinned } from './curves.ts';
import { niceStep } from './piece-layout.ts';
import type { Point } from './piece-section.ts';
import type { Ink, Mark, Scene } from './scene.ts';

export interface GrowthLine {
  readonly name: string;
  readonly min: readonly number[];
  /** log10 above the start. */
  readonly increase: readonly number[];
  readonly ink: Ink;
  readonly dash?: readonly number[];
}

export interface GrowthCurveOptions {
  readonly width: number;
  readonly height?: number;
  readonly title: string;
  /** Drawn across, with its words [log10 above the start]. */
  readonly level: { readonly at: number; readonly words: string };
}

const text = (x: number, y: number, words: string, ink: Ink, anchor: 'start' | 'middle' | 'end'): Mark => ({
  kind: 'text',
  x,
  y,
  text: words,
  size: 12,
  ink,
  anchor,
});

/** Time on the axis: minutes, hours or days, whichever reads best. */
function clockOf(min: number): { readonly unit: string; readonly per: number } {
  if (min > 4 * 1440) return { unit: 'days', per: 1440 };
  return min > 180 ? { unit: 'h', per: 60 } : { unit: 'min', per: 1 };
}

/** Rounded up: no growth looks smaller than it is. */
const upTo = (x: number) => number(Math.ceil(x * 100 - 1e-9) / 100, 2);

export function growthCurveScene(lines: readonly GrowthLine[], options: GrowthCurveOptions): Scene {
  const { width, height = 220, title, level } = options;
  const [left, right, top, bottom] = [34, width < 420 ? 8 : 104, 12, 30];
  const end = Math.max(1, ...lines.map((l) => l.min.at(-1) ?? 0));
  const most = Math.max(level.at * 1.25, ...lines.map((l) => l.increase.at(-1) ?? 0)) * 1.06;
  const x = (min: number) => left + (min / end) * (width - left - right);
  const y = (log: number) => height - bottom - (log / most) * (height - top - bottom);
  const marks: Mark[] = [];
  const across = (log: number): readonly Point[] => [
    [left, y(log)],
    [width - right, y(log)],
  ];
  const step = niceStep(most / 4);
  for (let v = 0; v <= most; v += step) {
    marks.push({ kind: 'polyline', points: across(v), stroke: { ink: 'bone', width: 1 } });
    marks.push(text(left - 6, y(v) + 4, number(v, step < 1 ? 1 : 0), 'faded', 'end'));
  }
  const { unit, per } = clockOf(end);
  const tick = niceStep(end / per / (width < 420 ? 3 : 6));
  // The last stretch of the axis is left to its unit.
  for (let v = 0; x(v * per) <= width - right - 34; v += tick)
    marks.push(text(x(v * per), height - 10, number(v, tick < 1 ? 1 : 0), 'faded', 'middle'));
  marks.push(text(width - right, height - 10, unit, 'faded', 'end'));
  marks.push({
    kind: 'polyline',
    points: across(level.at),
    stroke: { ink: 'rust', width: 1.4, dash: [6, 4] },
  });
  marks.push(text(left + 4, y(level.at) - 5, level.words, 'rust', 'start'));
  const ends = spread(
    lines.map((l) => y(l.increase.at(-1) ?? 0)),
    15,
    top + 8,
    height - bottom,
  );
  lines.forEach(({ name, min, increase, ink, dash }, i) => {
    const points = min.map((m, k): Point => [x(m), y(increase[k] ?? 0)]);
    marks.push({
      kind: 'polyline',
      points: thinned(points),
      stroke: { ink, width: 2, ...(dash === undefined ? {} : { dash }) },
    });
    // Beside the end of its line where there is room, else above it.
    const words = `${name} ${upTo(increase.at(-1) ?? 0)}`;
    marks.push(
      right > 20
        ? text(width - right + 6, ends[i]! + 4, words, ink, 'start')
        : text(width - right - 2, ends[i]! - 5, words, ink, 'end'),
    );
  });
  return {
    width,
    height,
    title,
    marks,
    table: {
      head: ['Course', 'log10 above the start at the end', 'after'],
      rows: lines.map((l) => [
        l.name,
        upTo(l.increase.at(-1) ?? 0),
        `${number((l.min.at(-1) ?? 0) / per, 1)} ${unit}`,
      ]),
    },
  };
}
