/** Weight through a method: a column for each step, as high as what comes out of it, pale between the least and the most. */
import { formatQuantity, type UnitSystem } from '../../core/units.ts';
import type { Mark, Scene } from './scene.ts';
import { fitText } from './text-fit.ts';

export interface WeightColumn {
  readonly name: string;
  /** What comes out of the step [kg]. */
  readonly low: number;
  readonly usual: number;
  readonly high: number;
  /** Every loss so far is known; else the column is dashed: it is too much. */
  readonly known: boolean;
}

export interface WeightFallOptions {
  readonly width: number;
  readonly height?: number;
  readonly units: UnitSystem;
}

/** Columns to one scale of weight, from 0. */
export function weightFallScene(
  columns: readonly WeightColumn[],
  { width, height = 210, units }: WeightFallOptions,
): Scene {
  const top = 18;
  const foot = height - 46;
  const most = Math.max(1e-9, ...columns.map((c) => c.high));
  const each = width / Math.max(1, columns.length);
  const bar = Math.min(64, each * 0.62);
  const y = (kg: number) => foot - ((foot - top) * kg) / most;
  const marks: Mark[] = [];
  columns.forEach((c, i) => {
    const x = each * i + (each - bar) / 2;
    const box = (a: number, b: number): [number, number][] => [
      [x, y(a)],
      [x + bar, y(a)],
      [x + bar, y(b)],
      [x, y(b)],
    ];
    if (c.high > c.low) marks.push({ kind: 'polygon', points: box(c.high, c.low), fill: 'bone' });
    marks.push(
      c.known
        ? { kind: 'polygon', points: box(c.low, 0), fill: 'slate' }
        : {
            kind: 'polygon',
            points: box(c.usual, 0),
            stroke: { ink: 'ember', width: 1.5, dash: [4, 4] },
          },
    );
    marks.push({
      kind: 'polyline',
      points: [
        [x, y(c.usual)],
        [x + bar, y(c.usual)],
      ],
      stroke: { ink: 'ink', width: 2 },
    });
    marks.push({
      kind: 'text',
      x: x + bar / 2,
      y: y(c.high) - 5,
      text: formatQuantity(c.usual * 1000, 'mass', units),
      size: 12,
      ink: 'ink',
      anchor: 'middle',
      weight: 'strong',
    });
    fitText(c.name, each - 4, 12, 2).forEach((line, j) => {
      marks.push({
        kind: 'text',
        x: x + bar / 2,
        y: foot + 15 + 14 * j,
        text: line,
        size: 12,
        ink: 'faded',
        anchor: 'middle',
      });
    });
  });
  marks.push({
    kind: 'polyline',
    points: [
      [0, foot],
      [width, foot],
    ],
    stroke: { ink: 'faded', width: 1 },
  });
  return {
    width,
    height,
    title: `Weight after each step: ${columns
      .map((c) => `${c.name} ${formatQuantity(c.usual * 1000, 'mass', units)}`)
      .join(', ')}.`,
    marks,
  };
}
