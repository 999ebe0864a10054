/** What log after log has said of a machine: its surface coefficient with its interval, oldest first. */
import { niceStep } from './piece-layout.ts';
import type { Ink, Mark, Scene } from './scene.ts';

export interface TrendPoint {
  /** Written under it: the day. */
  readonly day: string;
  readonly value: number;
  readonly low95: number;
  readonly high95: number;
  /** Only known from below: drawn as an arrow. */
  readonly highOpen: boolean;
}

export interface TrendOptions {
  readonly width: number;
  readonly height?: number;
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

const stroke = (points: [number, number][], width = 2): Mark => ({
  kind: 'polyline',
  points,
  stroke: { ink: 'oxblood', width },
});

const round = (x: number) => String(Number(x.toPrecision(3)));

/** A post for each fit, in order; an arrow where the log puts no end to it. */
export function machineTrendScene(points: readonly TrendPoint[], options: TrendOptions): Scene {
  const { width, height = 170 } = options;
  const [left, right, top, bottom] = [52, width - 16, 22, height - 26];
  const ends = points.flatMap((p) => (p.highOpen ? [p.low95 * 1.3] : [p.high95]));
  const highest = Math.max(1, ...ends);
  const step = niceStep(highest / 3);
  const most = Math.ceil(highest / step) * step;
  const y = (v: number) => bottom - ((bottom - top) * v) / most;
  const gap = (right - left) / Math.max(1, points.length);
  const x = (i: number) => left + gap * (i + 0.5);
  const marks: Mark[] = [text(left, top - 8, 'W/(m² K)', 'faded', 'start')];
  for (let v = 0; v <= most + 1e-9; v += step) {
    marks.push({
      kind: 'polyline',
      points: [
        [left, y(v)],
        [right, y(v)],
      ],
      stroke: { ink: 'bone', width: 1 },
    });
    marks.push(text(left - 6, y(v) + 4, round(v), 'faded', 'end'));
  }
  const labelled = Math.max(1, Math.ceil(84 / gap));
  points.forEach((p, i) => {
    const px = x(i);
    const topEnd = p.highOpen ? Math.min(most, p.low95 * 1.3) : p.high95;
    marks.push(
      stroke([
        [px, y(p.low95)],
        [px, y(topEnd)],
      ]),
      stroke([
        [px - 5, y(p.low95)],
        [px + 5, y(p.low95)],
      ]),
    );
    if (p.highOpen)
      marks.push(
        stroke([
          [px - 5, y(topEnd) + 7],
          [px, y(topEnd)],
          [px + 5, y(topEnd) + 7],
        ]),
      );
    else
      marks.push(
        stroke([
          [px - 5, y(topEnd)],
          [px + 5, y(topEnd)],
        ]),
        { kind: 'circle', x: px, y: y(p.value), r: 4, fill: 'oxblood' },
      );
    if ((points.length - 1 - i) % labelled === 0) marks.push(text(px, height - 8, p.day, 'faded', 'middle'));
  });
  return {
    width,
    height,
    title: 'Surface coefficient, fit by fit, with its 95 % interval',
    marks,
    table: {
      head: ['Day', 'W/(m² K)', '95 in 100 between'],
      rows: points.map((p) => [
        p.day,
        p.highOpen ? 'not known above' : round(p.value),
        p.highOpen ? `at least ${round(p.low95)}` : `${round(p.low95)} and ${round(p.high95)}`,
      ]),
    },
  };
}
