/**
 * Body-fitted meshes. Mesh lines stand on every layer interface and on every profile point; they crowd towards the
 * surface, the end faces and the interfaces. Lengths in metres.
 */
import { gradedLines } from './grading.ts';
import type { Body, FieldMesh, ProfilePoint } from './types.ts';

/** How fine: sizes as fractions of the half thickness (radius). */
export interface Fineness {
  readonly surface: number;
  readonly interface: number;
  readonly growth: number;
  readonly most: number;
  /** Across the long direction of a body of revolution or a flat block. */
  readonly end: number;
  readonly endGrowth: number;
  /** At a bend of the side. */
  readonly bend: number;
  readonly along: number;
  /** Fewest intervals in a layer. */
  readonly least: number;
  readonly refine: number;
}

/** Spacing that grows gently from the surface to the middle: chosen by scanning against the exact layered cylinder. */
export const fineMesh: Fineness = {
  surface: 0.022,
  interface: 0.03,
  growth: 0.05,
  most: 0.08,
  end: 0.02,
  endGrowth: 0.1,
  bend: 0.045,
  along: 0.25,
  least: 3,
  refine: 1,
};
export const coarseMesh: Fineness = {
  surface: 0.05,
  interface: 0.07,
  growth: 0.1,
  most: 0.15,
  end: 0.05,
  endGrowth: 0.25,
  bend: 0.2,
  along: 0.5,
  least: 2,
  refine: 1,
};
/** One direction only: lines are nearly free. */
export const fineLine: Fineness = {
  ...fineMesh,
  surface: 0.004,
  interface: 0.008,
  growth: 0.05,
  most: 0.016,
  least: 6,
};
export const coarseLine: Fineness = {
  ...coarseMesh,
  surface: 0.015,
  interface: 0.03,
  growth: 0.15,
  most: 0.06,
  least: 3,
};

export interface Mesh extends FieldMesh {
  /** Layer (0 outermost) of each interval or quad; quad (i, j) at j·(nu − 1) + i. */
  readonly layerOf: Uint8Array;
}

/** Depths below the surface of the interfaces, outermost first, and then the total depth [m]. */
function depths(body: Body, total: number): number[] {
  let d = 0;
  const places = [0];
  for (const layer of body.layers.slice(0, -1)) {
    d += layer.thickness ?? 0;
    places.push(d);
  }
  places.push(total);
  return places;
}

/** Depths of the mesh lines below a surface with these interfaces. */
function depthLines(places: readonly number[], fine: Fineness): number[] {
  const total = places[places.length - 1];
  const crowdings = [
    { at: 0, size: fine.surface * total },
    ...places.slice(1, -1).map((at) => ({ at, size: fine.interface * total })),
  ];
  return gradedLines(places, crowdings, fine.growth, fine.most * total, fine.refine, fine.least);
}

/** Index of the layer that holds a depth. */
function layerAt(places: readonly number[], depth: number): number {
  let layer = 0;
  while (layer + 2 < places.length && depth > places[layer + 1]) layer++;
  return layer;
}

/** Lines from the middle outwards, layer of each interval, and u-indices of interfaces, from depths. */
function fromTheMiddle(places: readonly number[], lines: readonly number[]) {
  const total = places[places.length - 1];
  const x = lines.map((d) => total - d).reverse();
  x[0] = 0;
  const layers = x.slice(1).map((outer, i) => layerAt(places, total - (outer + x[i]) / 2));
  const interfaces = layers.flatMap((layer, i) => (i > 0 && layers[i - 1] !== layer ? [i] : []));
  return { x, layers, interfaces };
}

/**
 * Outer radius of a profile at a distance along the axis [m], straight between points.
 * @param profile rising distances
 * @param at distance along the axis [m], held beyond the ends
 * @example radiusAt([{ at: 0, diameter: 0.04 }, { at: 0.1, diameter: 0.06 }], 0.05) // 0.025
 * Source: own-computation
 */
export function radiusAt(profile: readonly ProfilePoint[], at: number): number {
  const last = profile[profile.length - 1];
  if (at >= last.at) return last.diameter / 2;
  let i = 0;
  while (i + 2 < profile.length && profile[i + 1].at <= at) i++;
  const a = profile[i];
  const b = profile[i + 1];
  const s = Math.max(0, (at - a.at) / (b.at - a.at));
  return (a.diameter + s * (b.diameter - a.diameter)) / 2;
}

/** A bend of the side that is worth lines of its own [rad]. */
const sharp = 0.08;

function revolvedMesh(body: Extract<Body, { shape: 'revolved' }>, fine: Fineness): Mesh {
  const { profile } = body;
  const widest = Math.max(...profile.map((p) => p.diameter)) / 2;
  const ends = [profile[0].at, profile[profile.length - 1].at];
  // Where the side bends sharply the surface gets more (or less) heat than on either side, within a short distance.
  const bends = profile.slice(1, -1).filter((p, i) => {
    const before = profile[i];
    const after = profile[i + 2];
    const slope = (a: ProfilePoint, b: ProfilePoint) =>
      Math.atan2((b.diameter - a.diameter) / 2, b.at - a.at);
    return Math.abs(slope(before, p) - slope(p, after)) > sharp;
  });
  const crowd = [
    ...ends.map((at) => ({ at, size: fine.end * widest })),
    ...bends.map(({ at }) => ({ at, size: fine.bend * widest, growth: 2 * fine.endGrowth })),
  ];
  // A very long body does not need lines every quarter of its radius.
  const along = Math.max(fine.along * widest, (ends[1] - ends[0]) / 200);
  const stations = gradedLines(
    profile.map((p) => p.at),
    crowd,
    fine.endGrowth,
    along,
    fine.refine,
    1,
  );
  const places = depths(body, widest);
  const lines = depthLines(places, fine);
  const { layers, interfaces } = fromTheMiddle(places, lines);
  const nu = lines.length;
  const nv = stations.length;
  const x = new Float64Array(nu * nv);
  const y = new Float64Array(nu * nv);
  const layerOf = new Uint8Array((nu - 1) * (nv - 1));
  const inner = places[places.length - 2];
  for (let j = 0; j < nv; j++) {
    // A pointed end is cut where its radius is a thousandth of the widest.
    const R = Math.max(radiusAt(profile, stations[j]), 1e-3 * widest);
    for (let i = 0; i < nu; i++) {
      const depth = lines[nu - 1 - i];
      const r = depth <= inner ? R - depth : ((widest - depth) / (widest - inner)) * (R - inner);
      x[j * nu + i] = stations[j];
      y[j * nu + i] = i === 0 ? 0 : r;
    }
    if (j + 1 < nv) for (let i = 0; i + 1 < nu; i++) layerOf[j * (nu - 1) + i] = layers[i];
  }
  return { shape: 'revolved', nu, nv, x, y, interfaces, layerOf };
}

function blockMesh(body: Extract<Body, { shape: 'block' }>, fine: Fineness): Mesh {
  const half = [body.width / 2, body.height / 2];
  const short = Math.min(...half);
  const [across, up] = half.map((total) => {
    const places = depths(body, total);
    // Sizes at the surface are fractions of the shorter half; along a longer one they grow the faster the longer it is.
    const ratio = total / short;
    const scaled: Fineness = {
      ...fine,
      surface: fine.surface / ratio,
      interface: fine.interface / ratio,
      growth: Math.min(0.3, fine.growth * Math.max(1, ratio / 2)),
    };
    return fromTheMiddle(places, depthLines(places, scaled));
  });
  const nu = across.x.length;
  const nv = up.x.length;
  const x = new Float64Array(nu * nv);
  const y = new Float64Array(nu * nv);
  const layerOf = new Uint8Array((nu - 1) * (nv - 1));
  for (let j = 0; j < nv; j++)
    for (let i = 0; i < nu; i++) {
      x[j * nu + i] = across.x[i];
      y[j * nu + i] = up.x[j];
    }
  for (let j = 0; j + 1 < nv; j++)
    for (let i = 0; i + 1 < nu; i++) layerOf[j * (nu - 1) + i] = Math.min(across.layers[i], up.layers[j]);
  return { shape: 'block', nu, nv, x, y, interfaces: across.interfaces, layerOf };
}

/**
 * The mesh of a body; node coordinates in [m].
 * @param body checked: layers leave something inside them everywhere
 * @param fine sizes as fractions of the half thickness
 * Assumes the symmetry of the shape: a radius, a half thickness, a quarter of a block.
 * Checked by a test: lines on every interface and profile point, volumes sum to the body's.
 * Source: own-computation
 */
export function meshOf(body: Body, fine: Fineness): Mesh {
  if (body.shape === 'revolved') return revolvedMesh(body, fine);
  if (body.shape === 'block') return blockMesh(body, fine);
  const total = (body.shape === 'slab' ? body.thickness : body.diameter) / 2;
  const places = depths(body, total);
  const { x, layers, interfaces } = fromTheMiddle(places, depthLines(places, fine));
  return {
    shape: body.shape,
    nu: x.length,
    nv: 1,
    x: Float64Array.from(x),
    y: new Float64Array(x.length),
    interfaces,
    layerOf: Uint8Array.from(layers),
  };
}
