/** Shares one after another as dots: over days, or over the animals that a cutter has cut; a series is named at its end. */
import { plainNumber } from '../../core/units.ts';
import { niceStep } from './piece-layout.ts';
import type { Ink, Mark, Scene } from './scene.ts';
import { fitText } from './text-fit.ts';

export interface ShareDot {
  readonly x: number;
  readonly pct: number;
  /** Which line it belongs to: the cutter, or ''. */
  readonly series: string;
  /** For the table: what the dot is. */
  readonly what: string;
}

export interface ShareDotsOptions {
  readonly width: number;
  readonly height?: number;
  readonly title: string;
  /** What stands under the ends of the horizontal axis. */
  readonly ends: readonly [string, string];
  readonly what: string;
  /** Joined by a line. */
  readonly joined?: boolean;
}

const inks: readonly Ink[] = ['oxblood', 'slate', 'herb', 'ember', 'ink'];

function dot(series: number, x: number, y: number, ink: Ink): Mark {
  if (series % 3 === 0) return { kind: 'circle', x, y, r: 4, fill: ink };
  if (series % 3 === 1) return { kind: 'circle', x, y, r: 3.5, stroke: { ink, width: 1.8 } };
  return {
    kind: 'polygon',
    points: [
      [x, y - 5],
      [x + 5, y + 4],
      [x - 5, y + 4],
    ],
    fill: ink,
  };
}

export function shareDotsScene(dots: readonly ShareDot[], options: ShareDotsOptions): Scene {
  const { width, height = 190 } = options;
  const names = [...new Set(dots.map((d) => d.series))];
  const [left, right, top, bottom] = [46, width - (names.length > 1 ? 110 : 16), 14, height - 26];
  const lowest = Math.min(...dots.map((d) => d.pct), 100);
  const highest = Math.max(...dots.map((d) => d.pct), 0);
  const step = niceStep(Math.max(0.1, (highest - lowest) / 3));
  const from = Math.max(0, Math.floor(lowest / step - 0.25) * step);
  const to = Math.max(from + step, Math.ceil(highest / step + 0.25) * step);
  const first = Math.min(...dots.map((d) => d.x));
  const span = Math.max(...dots.map((d) => d.x)) - first;
  const x = (v: number) => (span <= 0 ? (left + right) / 2 : left + ((right - left) * (v - first)) / span);
  const y = (pct: number) => bottom - ((bottom - top) * (pct - from)) / (to - from);
  const marks: Mark[] = [];
  const text = (
    at: [number, number],
    words: string,
    anchor: 'start' | 'middle' | 'end',
    ink: Ink = 'faded',
  ): Mark => ({
    kind: 'text',
    x: at[0],
    y: at[1],
    text: words,
    size: 12,
    ink,
    anchor,
  });
  for (let v = from; v <= to + 1e-9; v += step) {
    marks.push(
      {
        kind: 'polyline',
        points: [
          [left, y(v)],
          [right, y(v)],
        ],
        stroke: { ink: 'bone', width: 1 },
      },
      text([left - 6, y(v) + 4], `${plainNumber(v, 1)} %`, 'end'),
    );
  }
  const labelled: number[] = [];
  names.forEach((name, i) => {
    const ink = inks[i % inks.length] ?? 'ink';
    const own = dots.filter((d) => d.series === name);
    if (options.joined === true && own.length > 1)
      marks.push({
        kind: 'polyline',
        points: own.map((d) => [x(d.x), y(d.pct)] as const),
        stroke: { ink, width: 1 },
      });
    for (const d of own) marks.push(dot(i, x(d.x), y(d.pct), ink));
    const last = own.at(-1);
    if (names.length < 2 || last === undefined) return;
    // Names at the ends are pushed apart, so that none stands on another.
    let at = y(last.pct) + 4;
    while (labelled.some((l) => Math.abs(l - at) < 14)) at += 14;
    labelled.push(at);
    marks.push(
      dot(i, right + 10, at - 4, ink),
      text([right + 18, at], fitText(name, 90, 12, 1)[0] ?? '', 'start', 'ink'),
    );
  });
  marks.push(
    text([left, height - 6], options.ends[0], 'start'),
    text([right, height - 6], options.ends[1], 'end'),
  );
  return {
    width,
    height,
    title: options.title,
    marks,
    table: {
      head: [options.what, ...(names.length > 1 ? ['Who'] : []), 'Share'],
      rows: dots.map((d) => [d.what, ...(names.length > 1 ? [d.series] : []), `${plainNumber(d.pct, 2)} %`]),
    },
  };
}
