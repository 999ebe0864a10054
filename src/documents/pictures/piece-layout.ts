/** Where a section stands in its picture: one scale both ways, room for the ruler below and for the temperature scale beside it. */
import type { Point, Section } from './piece-section.ts';
import type { Ink, Mark } from './scene.ts';

export type LengthUnits = 'metric' | 'US';

export interface Layout {
  readonly width: number;
  readonly height: number;
  /** Picture units for each millimetre. */
  readonly perMm: number;
  /** The drawing's own rectangle within the picture. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: (mm: number) => number;
  readonly y: (mm: number) => number;
  readonly point: (p: Point) => Point;
  readonly back: (px: number, py: number) => Point;
}

export interface LayoutOptions {
  readonly width: number;
  /** The drawing is at most so high; the picture is higher by ruler and labels. */
  readonly maxHeight?: number;
  /** Room at the right for the temperature scale. */
  readonly scaleRoom?: number;
  /** Room above for a label. */
  readonly topRoom?: number;
  /** Half the height to leave room for [mm], where more than the section is drawn (a ghost outline). */
  readonly half?: number;
}

export const RULER_ROOM = 42;

export function layoutOf(section: Section, options: LayoutOptions): Layout {
  const scaleRoom = options.scaleRoom ?? 0;
  const topRoom = options.topRoom ?? 12;
  const side = 10;
  const half = Math.max(section.half, options.half ?? 0);
  const span = Math.max(1e-6, section.x1 - section.x0);
  const across = Math.max(20, options.width - 2 * side - scaleRoom);
  const maxHeight = options.maxHeight ?? 320;
  const perMm = Math.min(across / span, maxHeight / (2 * half));
  const drawn = span * perMm;
  const left = side + (across - drawn) / 2;
  const top = topRoom;
  const bottom = top + 2 * half * perMm;
  const x = (mm: number) => left + (mm - section.x0) * perMm;
  const y = (mm: number) => top + (half - mm) * perMm;
  return {
    width: options.width,
    height: bottom + RULER_ROOM,
    perMm,
    left,
    right: left + drawn,
    top,
    bottom,
    x,
    y,
    point: ([mx, my]) => [x(mx), y(my)],
    back: (px, py) => [section.x0 + (px - left) / perMm, half - (py - top) / perMm],
  };
}

/** The least of 1, 2, 5 × 10ⁿ that is at least so much. */
export function niceStep(atLeast: number): number {
  const power = 10 ** Math.floor(Math.log10(atLeast));
  for (const m of [1, 2, 5]) if (m * power >= atLeast * (1 - 1e-9)) return m * power;
  return 10 * power;
}

/** The ruler under a drawing: from 0 at its left end, in mm or inches. */
export function rulerMarks(layout: Layout, units: LengthUnits): Mark[] {
  const unit = units === 'US' ? 25.4 : 1;
  const length = (layout.right - layout.left) / layout.perMm / unit;
  const perUnit = layout.perMm * unit;
  const labelled = niceStep(Math.max(46 / perUnit, units === 'US' ? 0.5 : 1));
  const minor = units === 'US' ? Math.max(labelled / 4, 0.125) : labelled / 5;
  const y = layout.bottom + 12;
  const marks: Mark[] = [
    {
      kind: 'polyline',
      points: [
        [layout.left, y],
        [layout.right, y],
      ],
      stroke: { ink: 'ink', width: 1 },
    },
  ];
  const count = Math.floor(length / minor + 1e-6);
  for (let i = 0; i <= count; i++) {
    const at = i * minor;
    const x = layout.left + at * perUnit;
    const isLabelled = Math.abs(at / labelled - Math.round(at / labelled)) < 1e-6;
    const points: [number, number][] = [
      [x, y],
      [x, y + (isLabelled ? 8 : 4)],
    ];
    marks.push({ kind: 'polyline', points, stroke: { ink: 'ink', width: 1 } });
    if (!isLabelled) continue;
    const last = at + labelled > length + 1e-6;
    marks.push({
      kind: 'text',
      // The last one carries the unit and must not run over the edge.
      x: last ? Math.min(x, layout.width - 20) : x,
      y: y + 22,
      text: `${Math.round(at * 100) / 100}${last ? (units === 'US' ? ' in' : ' mm') : ''}`,
      size: 12,
      ink: 'ink',
      anchor: at === 0 && !last ? 'start' : 'middle',
    });
  }
  return marks;
}

/** The outline of a section; a slab goes on beyond what is drawn, so its ends stay open. */
export function outlineMarks(section: Section, layout: Layout, fill?: Ink): Mark[] {
  const points = section.outline.map(layout.point);
  const filled = fill === undefined ? {} : { fill };
  const stroke = { ink: 'ink', width: 1.4 } as const;
  if (section.shape !== 'slab') return [{ kind: 'polygon', points, ...filled, stroke }];
  const [a, b, c, d] = points;
  return [
    { kind: 'polygon', points, ...filled },
    { kind: 'polyline', points: [a!, b!], stroke },
    { kind: 'polyline', points: [c!, d!], stroke },
  ];
}
