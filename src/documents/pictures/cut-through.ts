/**
 * The cut-through: a piece in section along its axis, to scale with its ruler, temperature as colour beside its scale,
 * the coldest point ringed, the line inside which it is not done yet, and the even shape it could have had as a ghost.
 */
import type { CookResult, FieldMesh, Frame } from '../../core/heat/types.ts';
import { evenDiameter } from '../../core/method/even-shape.ts';
import { levelLines, locate, patchesOf, valueAt } from './cut-through-field.ts';
import { cutThroughTable } from './cut-through-table.ts';
import {
  type Layout,
  type LengthUnits,
  layoutOf,
  niceStep,
  outlineMarks,
  rulerMarks,
} from './piece-layout.ts';
import { type Point, pointsOfPlace, rectangle, ring, type Section, sectionOfMesh } from './piece-section.ts';
import type { Mark, Scene } from './scene.ts';

/** The two ends of the temperature ramp [°C]. */
export interface Ramp {
  readonly low: number;
  readonly high: number;
}

export interface CutThroughOptions {
  readonly width: number;
  readonly maxHeight?: number;
  readonly units?: LengthUnits;
  readonly ramp?: Ramp;
  /** Lethality that the target asks [s]: draws the line inside which it has not been had yet. */
  readonly needed?: number;
  /** The even piece of the same length and volume, as a dashed outline. Default: drawn where the piece is not even. */
  readonly ghost?: boolean;
  /** false: only the marks over the cells; the screen paints the cells itself. */
  readonly cells?: boolean;
  /** Which temperature the ring is labelled with: the field's own there. Default true. */
  readonly label?: boolean;
  readonly title?: string;
}

const SCALE_ROOM = 78;

export const toUnit = (C: number, units: LengthUnits): number => (units === 'US' ? C * 1.8 + 32 : C);
export const degrees = (C: number, units: LengthUnits): string =>
  `${toUnit(C, units).toFixed(1)} ${units === 'US' ? '°F' : '°C'}`;

/** The ramp that spans everything a result comes to, from whole tens to whole tens of degrees Celsius. */
export function rampOf(result: CookResult): Ramp {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  const { coldest, warmest } = result.history;
  for (let i = 0; i < coldest.length; i++) {
    low = Math.min(low, coldest[i]!, warmest[i]!);
    high = Math.max(high, coldest[i]!, warmest[i]!);
  }
  if (!(low <= high)) return { low: 0, high: 100 };
  const ends = { low: Math.floor(low / 10) * 10, high: Math.ceil(high / 10) * 10 };
  return ends.high > ends.low ? ends : { low: ends.low, high: ends.low + 10 };
}

export const onRamp = (C: number, ramp: Ramp): number =>
  Math.min(1, Math.max(0, (C - ramp.low) / (ramp.high - ramp.low)));

/** Half the even piece's height [mm], where the mesh is of a piece that is not even. */
function ghostHalf(mesh: FieldMesh): number | null {
  if (mesh.shape !== 'revolved') return null;
  const { nu, nv, x, y } = mesh;
  const profile = Array.from({ length: nv }, (_, j) => ({
    at: x[j * nu + nu - 1]!,
    diameter: 2 * y[j * nu + nu - 1]!,
  }));
  const half = evenDiameter(profile) * 500;
  return profile.some((p) => Math.abs(p.diameter * 500 - half) > 0.3) ? half : null;
}

/** Section and layout of a result's piece: what the painted cells and the marks over them share. */
export function cutThroughLayout(
  mesh: FieldMesh,
  options: CutThroughOptions,
): { section: Section; layout: Layout; ghost: number | null } {
  const section = sectionOfMesh(mesh);
  const ghost = options.ghost === false ? null : ghostHalf(mesh);
  const layout = layoutOf(section, {
    width: options.width,
    scaleRoom: SCALE_ROOM,
    topRoom: options.label === false ? 12 : 30,
    ...(options.maxHeight === undefined ? {} : { maxHeight: options.maxHeight }),
    ...(ghost === null ? {} : { half: ghost }),
  });
  return { section, layout, ghost };
}

const STEPS = 72;
const quantised = (C: number, ramp: Ramp) => Math.round(onRamp(C, ramp) * STEPS) / STEPS;

function cellMarks(
  mesh: FieldMesh,
  C: ArrayLike<number>,
  ramp: Ramp,
  section: Section,
  layout: Layout,
): Mark[] {
  const marks: Mark[] = [];
  const draw = (points: readonly Point[], value: number) => {
    const ink = { ramp: value };
    marks.push({
      kind: 'polygon',
      points: points.map(layout.point),
      fill: ink,
      stroke: { ink, width: 0.9 },
    });
  };
  if (mesh.nv === 1) {
    const outer = mesh.x[mesh.nu - 1]!;
    const layers = 80;
    let last = Number.NaN;
    for (let n = layers; n >= 1; n--) {
      const r = (outer * n) / layers;
      const found = locate(mesh, { radius: (outer * (n - 0.5)) / layers, x: (outer * (n - 0.5)) / layers });
      const value = found === null ? 0 : quantised(valueAt(C, found), ramp);
      if (value === last) continue;
      last = value;
      draw(mesh.shape === 'slab' ? rectangle(section.x1, r * 1000) : ring(r * 1000), value);
    }
    return marks;
  }
  const sides: readonly Point[] =
    mesh.shape === 'block'
      ? [
          [1, 1],
          [-1, 1],
          [1, -1],
          [-1, -1],
        ]
      : [
          [1, 1],
          [1, -1],
        ];
  for (const patch of patchesOf(mesh, C, (a, b) => quantised(a, ramp) === quantised(b, ramp)))
    for (const [sx, sy] of sides)
      draw(
        patch.points.map(([x, y]): Point => [sx * x, sy * y]),
        quantised(patch.value, ramp),
      );
  return marks;
}

/** A line that can be seen on any colour of the ramp: a pale one under a dark one. */
function haloed(points: readonly Point[], width: number, dash?: readonly number[], closed = false): Mark[] {
  const kind = closed ? 'polygon' : 'polyline';
  return [
    { kind, points, stroke: { ink: { ramp: 1 }, width: width + 2 } },
    { kind, points, stroke: { ink: { ramp: 0 }, width, ...(dash === undefined ? {} : { dash }) } },
  ];
}

/** The line inside which the lethality asked has not been had yet. */
function frontMarks(
  mesh: FieldMesh,
  lethality: ArrayLike<number>,
  needed: number,
  section: Section,
  layout: Layout,
): Mark[] {
  const log = Float64Array.from({ length: lethality.length }, (_, i) =>
    Math.log(Math.max(lethality[i]!, 1e-9)),
  );
  const lines = levelLines(mesh, log, Math.log(needed));
  const draw = (points: readonly Point[], closed = false) =>
    haloed(points.map(layout.point), 1.6, undefined, closed);
  if (mesh.nv === 1)
    return lines.flatMap(([p]) => {
      const r = p![0];
      if (mesh.shape !== 'slab') return draw(ring(r), true);
      return [r, -r].flatMap((y) =>
        draw([
          [section.x0, y],
          [section.x1, y],
        ]),
      );
    });
  const sides: readonly Point[] =
    mesh.shape === 'block'
      ? [
          [1, 1],
          [-1, 1],
          [1, -1],
          [-1, -1],
        ]
      : [
          [1, 1],
          [1, -1],
        ];
  const all = sides.flatMap(([sx, sy]) =>
    lines.map((l) => l.map(([x, y]): Point => layout.point([sx * x, sy * y]))),
  );
  // All pale lines first, so that no piece's halo covers its neighbour.
  return [
    ...all.map((points): Mark => ({ kind: 'polyline', points, stroke: { ink: { ramp: 1 }, width: 3.4 } })),
    ...all.map((points): Mark => ({ kind: 'polyline', points, stroke: { ink: { ramp: 0 }, width: 1.6 } })),
  ];
}

/** The temperature scale at the picture's right edge. */
function scaleMarks(layout: Layout, ramp: Ramp, units: LengthUnits): Mark[] {
  const x = layout.width - SCALE_ROOM + 14;
  const height = Math.max(96, layout.bottom - layout.top);
  const top = layout.top + (layout.bottom - layout.top - height) / 2;
  const low = Math.max(2, top);
  const steps = 48;
  const marks: Mark[] = [];
  const band = (from: number, to: number): Point[] => {
    const y = (u: number) => low + height * (1 - u);
    return [
      [x, y(from)],
      [x + 14, y(from)],
      [x + 14, y(to)],
      [x, y(to)],
    ];
  };
  for (let i = 0; i < steps; i++) {
    const ink = { ramp: (i + 0.5) / steps };
    marks.push({
      kind: 'polygon',
      points: band(i / steps, (i + 1) / steps),
      fill: ink,
      stroke: { ink, width: 0.3 },
    });
  }
  marks.push({ kind: 'polygon', points: band(0, 1), stroke: { ink: 'ink', width: 0.8 } });
  const from = toUnit(ramp.low, units);
  const to = toUnit(ramp.high, units);
  const step = niceStep(Math.max(1, ((to - from) * 22) / height));
  const highest = Math.floor((to + 1e-9) / step) * step;
  for (let v = Math.ceil(from / step) * step; v <= to + 1e-9; v += step) {
    const y = low + height * (1 - (v - from) / (to - from));
    marks.push({
      kind: 'polyline',
      points: [
        [x + 14, y],
        [x + 18, y],
      ],
      stroke: { ink: 'ink', width: 1 },
    });
    const text =
      v > highest - step / 2 ? `${Math.round(v)} ${units === 'US' ? '°F' : '°C'}` : `${Math.round(v)}°`;
    marks.push({ kind: 'text', x: x + 21, y: y + 4, text, size: 13, ink: 'ink' });
  }
  return marks;
}

function coldSpotMarks(
  result: CookResult,
  frame: Frame,
  layout: Layout,
  units: LengthUnits,
  label: boolean,
): Mark[] {
  const all = pointsOfPlace(result.mesh.shape, result.coldSpot).map(layout.point);
  // So near to the axis that its mirror image would overlap it: one ring is enough.
  const points = all.filter((p, i) =>
    all.slice(0, i).every((q) => Math.hypot(p[0] - q[0], p[1] - q[1]) > 18),
  );
  const marks = points.flatMap(([x, y]): Mark[] => [
    { kind: 'circle', x, y, r: 7, stroke: { ink: { ramp: 1 }, width: 4 } },
    { kind: 'circle', x, y, r: 7, stroke: { ink: { ramp: 0 }, width: 1.8 } },
  ]);
  const first = points[0];
  const found = locate(result.mesh, result.coldSpot);
  const C = found === null ? frame.C[result.coldSpot.node] : valueAt(frame.C, found);
  if (!label || first === undefined || C === undefined) return marks;
  const text = `coldest point ${degrees(C, units)}`;
  const reach = text.length * 3.5;
  const x = Math.min(layout.width - SCALE_ROOM - reach, Math.max(reach + 2, first[0]));
  const leader: Point[] = [
    [first[0], first[1] - 8],
    [first[0], Math.min(first[1] - 8, layout.top - 6)],
  ];
  return [
    ...haloed(leader, 1),
    ...marks,
    { kind: 'text', x, y: 16, text, size: 14, ink: 'ink', anchor: 'middle', weight: 'strong' },
  ];
}

/** The whole picture of a result at one of its frames. */
export function cutThroughScene(result: CookResult, frame: Frame, options: CutThroughOptions): Scene {
  const { mesh } = result;
  const units = options.units ?? 'metric';
  const ramp = options.ramp ?? rampOf(result);
  const { section, layout, ghost } = cutThroughLayout(mesh, options);
  const marks: Mark[] = options.cells === false ? [] : cellMarks(mesh, frame.C, ramp, section, layout);
  marks.push(...outlineMarks(section, layout));
  for (const line of section.interfaces)
    marks.push(
      ...haloed(line.map(layout.point), 0.9, undefined, mesh.shape !== 'revolved' && mesh.shape !== 'slab'),
    );
  if (ghost !== null) {
    const points = [
      [section.x0, ghost],
      [section.x1, ghost],
      [section.x1, -ghost],
      [section.x0, -ghost],
    ] as const;
    marks.push({
      kind: 'polygon',
      points: points.map(layout.point),
      stroke: { ink: 'slate', width: 1.2, dash: [6, 4] },
    });
  }
  const front =
    options.needed === undefined ? [] : frontMarks(mesh, frame.lethality, options.needed, section, layout);
  marks.push(...front);
  marks.push(...coldSpotMarks(result, frame, layout, units, options.label !== false));
  marks.push(...rulerMarks(layout, units), ...scaleMarks(layout, ramp, units));
  if (front.length > 0)
    marks.push({
      kind: 'text',
      x: Math.max(4, Math.min(layout.left, options.width - SCALE_ROOM - 262)),
      y: layout.height + 12,
      text: 'inside the dark line it has not had its time yet',
      size: 13,
      ink: 'ink',
    });
  const height = Math.max(layout.height + (options.needed === undefined ? 0 : 20), layout.top + 112);
  return {
    width: options.width,
    height,
    title:
      options.title ?? `The piece cut through after ${(frame.t / 60).toFixed(0)} min, temperature as colour`,
    marks,
    table: cutThroughTable(result, frame, units),
  };
}
