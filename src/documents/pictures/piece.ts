/** The piece itself, drawn to scale with its ruler: outline, layers, and how thick it is where. */
import type { Body } from '../../core/heat/types.ts';
import { evenShape } from '../../core/method/even-shape.ts';
import { type LengthUnits, layoutOf, outlineMarks, rulerMarks } from './piece-layout.ts';
import { type Point, sectionOfBody } from './piece-section.ts';
import type { Mark, Scene } from './scene.ts';

export interface PieceOptions {
  readonly width: number;
  readonly maxHeight?: number;
  readonly units?: LengthUnits;
  /** Draw the even piece of the same length and volume as a dashed outline. */
  readonly ghost?: boolean;
  readonly title?: string;
}

const lengthText = (mm: number, units: LengthUnits) =>
  units === 'US' ? `${(mm / 25.4).toFixed(2)} in` : `${Math.round(mm * 10) / 10} mm`;

/** Where the thickness is written: at most so many places along the piece, ends and extremes first. */
function gauges(body: Body, room: number): { at: number; diameter: number }[] {
  if (body.shape !== 'revolved') return [];
  const { profile } = body;
  const thickest = profile.reduce((a, b) => (b.diameter > a.diameter ? b : a));
  const thinnest = profile.reduce((a, b) => (b.diameter < a.diameter ? b : a));
  const wanted = [thickest, thinnest, profile[0], profile.at(-1), ...profile].filter((p) => p !== undefined);
  const kept: { at: number; diameter: number }[] = [];
  for (const p of wanted) if (kept.every((k) => Math.abs(k.at - p.at) > room)) kept.push(p);
  return kept;
}

function sizes(body: Body, units: LengthUnits): string {
  switch (body.shape) {
    case 'cylinder':
    case 'sphere':
      return `⌀ ${lengthText(body.diameter * 1000, units)}`;
    case 'slab':
      return `${lengthText(body.thickness * 1000, units)} thick`;
    case 'block':
      return `${lengthText(body.width * 1000, units)} × ${lengthText(body.height * 1000, units)}`;
    case 'revolved':
      return `${lengthText(((body.profile.at(-1)?.at ?? 0) - (body.profile[0]?.at ?? 0)) * 1000, units)} long`;
  }
}

export function pieceScene(body: Body, options: PieceOptions): Scene {
  const units = options.units ?? 'metric';
  const section = sectionOfBody(body);
  const even = options.ghost === true ? evenShape(body) : null;
  const half = even === null ? section.half : (even.profile[0]?.diameter ?? 0) * 500;
  const layout = layoutOf(section, {
    width: options.width,
    topRoom: 26,
    half,
    ...(options.maxHeight === undefined ? {} : { maxHeight: options.maxHeight }),
  });
  const closed = body.shape !== 'slab' && body.shape !== 'revolved';
  const marks: Mark[] = [
    ...outlineMarks(section, layout, 'bone'),
    ...section.interfaces.map(
      (line): Mark => ({
        kind: closed ? 'polygon' : 'polyline',
        points: line.map(layout.point),
        stroke: { ink: 'oxblood', width: 1 },
      }),
    ),
  ];
  if (even !== null) {
    const points: Point[] = [
      [section.x0, half],
      [section.x1, half],
      [section.x1, -half],
      [section.x0, -half],
    ];
    marks.push({
      kind: 'polygon',
      points: points.map(layout.point),
      stroke: { ink: 'slate', width: 1.2, dash: [6, 4] },
    });
  }
  const room = 58 / layout.perMm / 1000;
  for (const gauge of gauges(body, room)) {
    const x = layout.x(gauge.at * 1000);
    const top = layout.y(gauge.diameter * 500);
    const bottom = layout.y(-gauge.diameter * 500);
    marks.push({
      kind: 'polyline',
      points: [
        [x, top],
        [x, bottom],
      ],
      stroke: { ink: 'faded', width: 0.8, dash: [2, 3] },
    });
    const anchor = x < layout.left + 20 ? 'start' : x > layout.right - 20 ? 'end' : 'middle';
    marks.push({
      kind: 'text',
      x,
      y: Math.max(12, top - 5),
      text: `⌀ ${lengthText(gauge.diameter * 1000, units)}`,
      size: 12,
      ink: 'ink',
      anchor,
    });
  }
  if (body.shape !== 'revolved')
    marks.push({
      kind: 'text',
      x: (layout.left + layout.right) / 2,
      y: 16,
      text: sizes(body, units),
      size: 12,
      ink: 'ink',
      anchor: 'middle',
    });
  marks.push(...rulerMarks(layout, units));
  return {
    width: layout.width,
    height: layout.height,
    title: options.title ?? `The piece in section, ${sizes(body, units)}`,
    marks,
    table: {
      head: ['Along', 'Diameter'],
      rows:
        body.shape === 'revolved'
          ? body.profile.map((p) => [lengthText(p.at * 1000, units), lengthText(p.diameter * 1000, units)])
          : [['all along', sizes(body, units)]],
    },
  };
}
