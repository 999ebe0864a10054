/** How long single pieces need, and the worst of a batch: two rows of columns over one line of minutes, with the time that is asked for. */
import type { SureAnswer } from '../../contract/sure.ts';
import type { Mark, Scene } from './scene.ts';
import { textWidth } from './text-fit.ts';

export interface SureStripOptions {
  readonly width?: number;
  /** How long the stage lasts as it is written [min]; null where it does not end by time. */
  readonly writtenMin: number | null;
}

const size = 14;

/** Whole minutes to write under the line: no more than fit. */
export function ticksFor(from: number, to: number, width: number): number[] {
  const step = [1, 2, 5, 10, 20, 30, 60, 120, 240].find((s) => ((to - from) / s) * 34 <= width) ?? 480;
  const ticks: number[] = [];
  for (let min = Math.ceil(from / step) * step; min <= to; min += step) ticks.push(min);
  return ticks;
}

const minuteText = (min: number) => `${Math.round(min * 10) / 10} min`;
const up = (min: number) => `${Math.ceil(min - 1e-9)} min`;

export function sureStripScene(answer: SureAnswer, { width = 640, writtenMin }: SureStripOptions): Scene {
  const { histogram, piece, worst } = answer.time;
  const asked = answer.minutesForConfidence;
  const ends = [histogram.fromMin, histogram.toMin, ...(asked === null ? [] : [asked])];
  const near =
    writtenMin !== null && writtenMin < histogram.toMin + 2 * (histogram.toMin - histogram.fromMin);
  if (near && writtenMin !== null) ends.push(writtenMin);
  const from = Math.floor(Math.min(...ends) - 0.5);
  const to = Math.ceil(Math.max(...ends) + 0.5);
  const x = (min: number) => ((min - from) / (to - from)) * width;
  const step = (histogram.toMin - histogram.fromMin) / histogram.piece.length;
  const rows = [
    { name: answer.pieces > 1 ? 'Single pieces' : 'Pieces', shares: histogram.piece, hatch: true },
    ...(answer.pieces > 1
      ? [{ name: `The worst of ${answer.pieces}`, shares: histogram.worst, hatch: false }]
      : []),
  ];
  const rowHeight = 74;
  const labels = 46;
  const marks: Mark[] = [];
  rows.forEach(({ name, shares, hatch }, r) => {
    const base = labels + (r + 1) * rowHeight;
    const tallest = Math.max(...shares, 1e-9);
    shares.forEach((share, i) => {
      if (share <= 0) return;
      const a = x(histogram.fromMin + i * step);
      const b = x(histogram.fromMin + (i + 1) * step);
      const h = (share / tallest) * (rowHeight - 24);
      marks.push({
        kind: 'polygon',
        points: [
          [a, base],
          [a, base - h],
          [b, base - h],
          [b, base],
        ],
        fill: 'slate',
        ...(hatch ? { hatch: true, stroke: { ink: 'slate', width: 1 } } : {}),
      });
    });
    marks.push({
      kind: 'polyline',
      points: [
        [0, base],
        [width, base],
      ],
      stroke: { ink: 'ink', width: 1 },
    });
    marks.push({
      kind: 'text',
      x: 0,
      y: base - rowHeight + 20,
      text: name,
      size,
      ink: 'ink',
      weight: 'strong',
    });
  });
  const bottom = labels + rows.length * rowHeight;
  for (const min of ticksFor(from, to, width)) {
    marks.push({
      kind: 'polyline',
      points: [
        [x(min), bottom],
        [x(min), bottom + 6],
      ],
      stroke: { ink: 'ink', width: 1 },
    });
    const anchor = x(min) < 12 ? 'start' : x(min) > width - 12 ? 'end' : 'middle';
    marks.push({ kind: 'text', x: x(min), y: bottom + 22, text: String(min), size, ink: 'ink', anchor });
  }
  marks.push({ kind: 'text', x: width, y: bottom + 40, text: 'minutes', size, ink: 'faded', anchor: 'end' });
  const line = (min: number, text: string, y: number, ink: 'oxblood' | 'ink', dash?: readonly number[]) => {
    marks.push({
      kind: 'polyline',
      points: [
        [x(min), y + 4],
        [x(min), bottom],
      ],
      stroke: { ink, width: 2, ...(dash === undefined ? {} : { dash }) },
    });
    const half = textWidth(text, size) / 2;
    const at = Math.max(half, Math.min(width - half, x(min)));
    marks.push({ kind: 'text', x: at, y, text, size, ink, anchor: 'middle', weight: 'strong' });
  };
  if (asked !== null) line(asked, `${timesWords(answer.confidence)}: ${up(asked)}`, 14, 'oxblood');
  if (near && writtenMin !== null)
    line(writtenMin, `as written: ${minuteText(writtenMin)}`, 34, 'ink', [5, 4]);
  const row = (name: string, q: typeof piece) => [
    name,
    minuteText(q.p05),
    minuteText(q.p50),
    minuteText(q.p95),
    minuteText(q.p99),
  ];
  return {
    width,
    height: bottom + 46,
    title: `How long pieces need: half of them ${minuteText(piece.p50)}${answer.pieces > 1 ? `, the worst of ${answer.pieces} half of the time ${minuteText(worst.p50)}` : ''}${asked === null ? '' : `; ${timesWords(answer.confidence)}, ${up(asked)}`}.`,
    marks,
    table: {
      head: ['Who', '5 in 100 need less than', 'half', '95 in 100', '99 in 100'],
      rows: [
        row('a piece', piece),
        ...(answer.pieces > 1 ? [row(`the worst of ${answer.pieces}`, worst)] : []),
      ],
    },
  };
}

/** 0.95 → "95 times in 100". */
export function timesWords(confidence: number): string {
  const of =
    [10, 100, 1_000, 10_000].find((n) => Math.abs(confidence * n - Math.round(confidence * n)) < 1e-6) ??
    10_000;
  return `${Math.round(confidence * of)} times in ${of}`;
}

/** What matters most: a bar for each input, as long as its share, with what one step of it is worth in minutes. */
export function mattersScene(
  sensitivity: SureAnswer['sensitivity'],
  nameOf: (input: string) => string,
  width = 640,
): Scene {
  const rows = sensitivity.filter((s) => s.total >= 0.005).slice(0, 8);
  const height = 46;
  const marks = rows.flatMap((s, i): Mark[] => {
    const y = i * height;
    const end = Math.max(2, s.total * width);
    const words = `${Math.round(100 * s.total)} %`;
    const worth = `${Math.abs(s.minutesPerSd).toFixed(1)} min`;
    return [
      { kind: 'text', x: 0, y: y + 16, text: nameOf(s.input), size, ink: 'ink' },
      { kind: 'text', x: width, y: y + 16, text: `${words}, ± ${worth}`, size, ink: 'ink', anchor: 'end' },
      {
        kind: 'polygon',
        points: [
          [0, y + 23],
          [end, y + 23],
          [end, y + 34],
          [0, y + 34],
        ],
        fill: 'slate',
        ...(s.shared ? {} : { hatch: true, stroke: { ink: 'slate', width: 1 } }),
      },
    ];
  });
  return {
    width,
    height: Math.max(1, rows.length) * height,
    title: `What matters most: ${rows.map((s) => `${nameOf(s.input)} ${Math.round(100 * s.total)} %`).join(', ')}.`,
    marks,
    table: {
      head: ['What varies', 'share', 'give or take', 'one step is worth', 'whose'],
      rows: rows.map((s) => [
        nameOf(s.input),
        `${(100 * s.total).toFixed(1)} %`,
        `${(100 * s.totalSe).toFixed(1)}`,
        `${s.minutesPerSd.toFixed(2)} min`,
        s.shared ? 'the batch’s' : 'each piece’s own',
      ]),
    },
  };
}
