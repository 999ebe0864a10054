/** The section of a piece as a drawing sees it: outline and layer interfaces in millimetres, y up, both sides of the axis. */
import type { Body, FieldMesh, Layer, Place } from '../../core/heat/types.ts';

export type Point = readonly [x: number, y: number];

export interface Section {
  readonly shape: Body['shape'];
  readonly x0: number;
  readonly x1: number;
  /** Half the height; the section reaches from −half to half. */
  readonly half: number;
  /** Closed, except that a slab goes on at both ends. */
  readonly outline: readonly Point[];
  readonly interfaces: readonly (readonly Point[])[];
}

const MM = 1000;
const AROUND = 96;

export const ring = (radius: number): Point[] =>
  Array.from({ length: AROUND }, (_, i) => {
    const angle = (2 * Math.PI * i) / AROUND;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });

export const rectangle = (x: number, y: number): Point[] => [
  [-x, y],
  [x, y],
  [x, -y],
  [-x, -y],
];

/** A slab goes on and on; so much of it is drawn to either side of the middle, for each half thickness. */
const SLAB_REACH = 2.4;

const mirrored = (upper: readonly Point[]): Point[] => [
  ...upper,
  ...[...upper].reverse().map(([x, y]): Point => [x, -y]),
];

const flipped = (line: readonly Point[]): Point[] => line.map(([x, y]) => [x, -y]);

function round(shape: 'cylinder' | 'sphere', radius: number, inner: readonly number[]): Section {
  return { shape, x0: -radius, x1: radius, half: radius, outline: ring(radius), interfaces: inner.map(ring) };
}

function slab(half: number, inner: readonly number[]): Section {
  const reach = SLAB_REACH * half;
  return {
    shape: 'slab',
    x0: -reach,
    x1: reach,
    half,
    outline: rectangle(reach, half),
    interfaces: inner.flatMap((y): Point[][] => {
      const line: Point[] = [
        [-reach, y],
        [reach, y],
      ];
      return [line, flipped(line)];
    }),
  };
}

function block(x: number, y: number, depths: readonly number[]): Section {
  return {
    shape: 'block',
    x0: -x,
    x1: x,
    half: y,
    outline: rectangle(x, y),
    interfaces: depths.filter((d) => d < Math.min(x, y)).map((d) => rectangle(x - d, y - d)),
  };
}

function revolved(upper: readonly Point[], inner: readonly (readonly Point[])[]): Section {
  return {
    shape: 'revolved',
    x0: upper[0]?.[0] ?? 0,
    x1: upper.at(-1)?.[0] ?? 0,
    half: Math.max(...upper.map(([, y]) => y)),
    outline: mirrored(upper),
    interfaces: inner.flatMap((line) => [line, flipped(line)]),
  };
}

/** Depths of the layer interfaces below the surface [mm], from the outside in. */
function depthsOf(layers: readonly Layer[]): number[] {
  const depths: number[] = [];
  let depth = 0;
  for (const layer of layers.slice(0, -1)) {
    depth += (layer.thickness ?? 0) * MM;
    depths.push(depth);
  }
  return depths;
}

/** The section of a body as it was described. */
export function sectionOfBody(body: Body): Section {
  const depths = depthsOf(body.layers);
  const below = (half: number) => depths.map((d) => half - d).filter((r) => r > 0);
  switch (body.shape) {
    case 'cylinder':
    case 'sphere':
      return round(body.shape, (body.diameter * MM) / 2, below((body.diameter * MM) / 2));
    case 'slab':
      return slab((body.thickness * MM) / 2, below((body.thickness * MM) / 2));
    case 'block':
      return block((body.width * MM) / 2, (body.height * MM) / 2, depths);
    case 'revolved': {
      const upper = body.profile.map((p): Point => [p.at * MM, (p.diameter * MM) / 2]);
      return revolved(
        upper,
        depths.map((d) => upper.map(([x, y]): Point => [x, Math.max(0, y - d)])),
      );
    }
  }
}

/** The section of a body as it was meshed and run. */
export function sectionOfMesh(mesh: FieldMesh): Section {
  const { nu, nv, x, y } = mesh;
  const radii = mesh.interfaces.map((i) => (x[i] ?? 0) * MM);
  const outer = (x[nu - 1] ?? 0) * MM;
  switch (mesh.shape) {
    case 'cylinder':
    case 'sphere':
      return round(mesh.shape, outer, radii);
    case 'slab':
      return slab(outer, radii);
    case 'block':
      return block(
        outer,
        (y[nu * nv - 1] ?? 0) * MM,
        radii.map((r) => outer - r).sort((a, b) => a - b),
      );
    case 'revolved': {
      const lineAt = (i: number) =>
        Array.from({ length: nv }, (_, j): Point => [(x[j * nu + i] ?? 0) * MM, (y[j * nu + i] ?? 0) * MM]);
      return revolved(lineAt(nu - 1), mesh.interfaces.map(lineAt));
    }
  }
}

/** Where a place of the engine lies in the section [mm]; a place off an axis of symmetry lies there more than once. */
export function pointsOfPlace(shape: Body['shape'], place: Place): Point[] {
  const r = (place.radius ?? 0) * MM;
  if (shape === 'block') {
    const px = (place.x ?? 0) * MM;
    const py = (place.y ?? 0) * MM;
    const xs = px > 0.05 ? [px, -px] : [0];
    const ys = py > 0.05 ? [py, -py] : [0];
    return xs.flatMap((a) => ys.map((b): Point => [a, b]));
  }
  const along = shape === 'revolved' ? (place.at ?? 0) * MM : 0;
  const off = shape === 'slab' ? Math.abs(place.x ?? place.radius ?? 0) * MM : r;
  return off > 0.05
    ? [
        [along, off],
        [along, -off],
      ]
    : [[along, 0]];
}

/** The place of the engine [m] that a point of the section [mm] shows. */
export function placeOfPoint(shape: Body['shape'], [x, y]: Point): Place {
  switch (shape) {
    case 'revolved':
      return { at: x / MM, radius: Math.abs(y) / MM };
    case 'cylinder':
    case 'sphere':
      return { radius: Math.hypot(x, y) / MM };
    case 'slab':
      return { x: Math.abs(y) / MM };
    case 'block':
      return { x: Math.abs(x) / MM, y: Math.abs(y) / MM };
  }
}
