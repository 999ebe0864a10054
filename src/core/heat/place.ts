/** Places in a body as weighted sums of mesh nodes: probes, and the cold spot between nodes. */
import { OutOfRange } from '../errors.ts';
import type { Mesh } from './mesh.ts';
import type { Weights } from './record.ts';
import type { Place } from './types.ts';

const millimetre = 1e-3;
const slack = 1e-9;

/** Quadratic through three neighbours, or a straight line through two, at `x` among rising `xs`; never across a barrier. */
function lineWeights(
  xs: readonly number[],
  x: number,
  barriers: readonly number[],
): { i: number[]; w: number[] } {
  const n = xs.length;
  if (n === 1) return { i: [0], w: [1] };
  let cell = 0;
  while (cell + 2 < n && xs[cell + 1] <= x) cell++;
  // Third point on the nearer side, if it lies in the same layer.
  const inOneLayer = (lo: number, hi: number) => lo >= 0 && hi < n && !barriers.some((b) => b > lo && b < hi);
  const nearLow = x - xs[cell] < xs[cell + 1] - x;
  const options = nearLow ? [cell - 1, cell] : [cell, cell - 1];
  const first = options.find((lo) => inOneLayer(lo, lo + 2));
  const i = first === undefined ? [cell, cell + 1] : [first, first + 1, first + 2];
  const w = i.map((a) => i.reduce((p, b) => (a === b ? p : (p * (x - xs[b])) / (xs[a] - xs[b])), 1));
  return { i, w };
}

const mm = (metres: number) => `${Number((metres / millimetre).toFixed(3))} mm`;

function inside(value: number | undefined, low: number, high: number, path: string): number {
  const v = value ?? 0;
  if (!(v >= low - slack && v <= high + slack))
    throw new OutOfRange(path, mm(v), `inside the body, ${mm(low)} to ${mm(high)}`);
  return Math.min(high, Math.max(low, v));
}

/**
 * Weights of the nodes round a place; they sum to one [-].
 * @param mesh of the body
 * @param place distances [m]; block and slab from the middle, either side
 * @param path what to call the place in an error
 * Throws `OutOfRange` where the place lies outside the body. Quadratic within a layer, straight across an interface.
 * Checked by a test: reproduces quadratics of the mesh's own coordinates.
 * Source: own-computation
 */
export function weightsAt(mesh: Mesh, place: Place, path: string): Weights {
  const { shape, nu, nv, x, y, interfaces } = mesh;
  const along = (count: number, at: (i: number) => number) => Array.from({ length: count }, (_, i) => at(i));
  if (nv === 1) {
    const xs = along(nu, (i) => x[i]);
    const key = shape === 'slab' ? 'x' : 'radius';
    const value = shape === 'slab' ? Math.abs(place.x ?? 0) : place.radius;
    const { i, w } = lineWeights(xs, inside(value, 0, xs[nu - 1], `${path}.${key}`), interfaces);
    return { nodes: i, w };
  }
  if (shape === 'block') {
    const xs = along(nu, (i) => x[i]);
    const ys = along(nv, (j) => y[j * nu]);
    const px = inside(Math.abs(place.x ?? 0), 0, xs[nu - 1], `${path}.x`);
    const py = inside(Math.abs(place.y ?? 0), 0, ys[nv - 1], `${path}.y`);
    const barriersY = ys.flatMap((_, j) => (j > 0 && j + 1 < nv && crosses(mesh, j) ? [j] : []));
    return product(lineWeights(xs, px, interfaces), lineWeights(ys, py, barriersY), nu);
  }
  const stations = along(nv, (j) => x[j * nu]);
  const at = inside(place.at, stations[0], stations[nv - 1], `${path}.at`);
  let cell = 0;
  while (cell + 2 < nv && stations[cell + 1] <= at) cell++;
  const s = (at - stations[cell]) / (stations[cell + 1] - stations[cell]);
  // Mesh lines are straight between stations, so the radial line through `at` is the blend of its neighbours.
  const radii = along(nu, (i) => (1 - s) * y[cell * nu + i] + s * y[(cell + 1) * nu + i]);
  const radius = inside(place.radius, 0, radii[nu - 1], `${path}.radius`);
  return product(lineWeights(radii, radius, interfaces), lineWeights(stations, at, []), nu);
}

/** Whether the layer changes across row j of a block, at the middle. */
function crosses(mesh: Mesh, j: number): boolean {
  return mesh.layerOf[j * (mesh.nu - 1)] !== mesh.layerOf[(j - 1) * (mesh.nu - 1)];
}

function product(u: { i: number[]; w: number[] }, v: { i: number[]; w: number[] }, nu: number): Weights {
  const nodes: number[] = [];
  const w: number[] = [];
  for (let b = 0; b < v.i.length; b++)
    for (let a = 0; a < u.i.length; a++) {
      nodes.push(v.i[b] * nu + u.i[a]);
      w.push(u.w[a] * v.w[b]);
    }
  return { nodes, w };
}

export interface ColdSpot {
  readonly node: number;
  readonly weights: Weights;
  readonly place: Place;
}

/** Distance from a node to the nearest exposed node [m]. */
function depthOf(mesh: Mesh, exposed: Int32Array, node: number): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (const e of exposed)
    nearest = Math.min(nearest, Math.hypot(mesh.x[e] - mesh.x[node], mesh.y[e] - mesh.y[node]));
  return nearest;
}

/** Lowest point of the parabola through three values, if it lies well within them. */
function vertex(x: readonly number[], f: readonly number[]): number | undefined {
  const [x0, x1, x2] = x;
  const d1 = (f[1] - f[0]) / (x1 - x0);
  const d2 = (f[2] - f[1]) / (x2 - x1);
  const curvature = (d2 - d1) / (x2 - x0);
  if (!(curvature > 0) || !Number.isFinite(curvature)) return undefined;
  const at = (x0 + x1) / 2 - d1 / (2 * curvature);
  return at > (x0 + x1) / 2 && at < (x1 + x2) / 2 ? at : undefined;
}

/**
 * The point that has received least lethality [m from the mesh's own origin]; among equals the one furthest from a surface.
 *
 *     least node, then the lowest point of the parabola through log P at it and its two neighbours, along either direction
 *
 * @param mesh of the body
 * @param exposed nodes on the surface
 * @param P lethality at every node [s at the reference]
 * Assumes log P smooth within a layer; on an interface, on a surface or on a line of symmetry the node itself is taken.
 * Checked by refining the mesh. Source: own-computation
 */
export function coldSpotOf(mesh: Mesh, exposed: Int32Array, P: Float64Array): ColdSpot {
  const { nu, nv, x, y, interfaces, shape } = mesh;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < P.length; i++) if (P[i] < least) least = P[i];
  const equal = least + Math.max(1e-300, 1e-9 * least);
  let node = -1;
  let deepest = -1;
  for (let i = 0; i < P.length; i++)
    if (P[i] <= equal) {
      const depth = depthOf(mesh, exposed, i);
      if (depth > deepest + 1e-12) {
        node = i;
        deepest = depth;
      }
    }
  const i = node % nu;
  const j = (node - i) / nu;
  const pick = (nodes: readonly number[], coordinate: readonly number[], barred: boolean) => {
    const at =
      barred || least <= 0
        ? undefined
        : vertex(
            coordinate,
            nodes.map((n) => Math.log10(P[n])),
          );
    if (at === undefined) return { i: [1], w: [1] };
    const w = [0, 1, 2].map((a) =>
      [0, 1, 2].reduce(
        (p, b) => (a === b ? p : (p * (at - coordinate[b])) / (coordinate[a] - coordinate[b])),
        1,
      ),
    );
    return { i: [0, 1, 2], w };
  };
  const uNodes = [node - 1, node, node + 1];
  const vNodes = [node - nu, node, node + nu];
  const uFree = i > 0 && i + 1 < nu && !interfaces.includes(i);
  const vFree = j > 0 && j + 1 < nv && (shape === 'revolved' || !crosses(mesh, j));
  const u = pick(uNodes, uFree ? uNodes.map((n) => (shape === 'revolved' ? y[n] : x[n])) : [0, 0, 0], !uFree);
  const v = pick(vNodes, vFree ? vNodes.map((n) => (shape === 'revolved' ? x[n] : y[n])) : [0, 0, 0], !vFree);
  const nodes: number[] = [];
  const w: number[] = [];
  for (let b = 0; b < v.i.length; b++)
    for (let a = 0; a < u.i.length; a++) {
      nodes.push(node + (v.i[b] - 1) * nu + (u.i[a] - 1));
      w.push(u.w[a] * v.w[b]);
    }
  const px = nodes.reduce((sum, n, q) => sum + w[q] * x[n], 0);
  const py = nodes.reduce((sum, n, q) => sum + w[q] * y[n], 0);
  const place: Place =
    shape === 'revolved'
      ? { at: px, radius: py }
      : shape === 'block'
        ? { x: px, y: py }
        : shape === 'slab'
          ? { x: px }
          : { radius: px };
  return { node, weights: { nodes, w }, place };
}

/** The exposed node nearest to a place given by its weights [m]. */
export function surfaceBeside(mesh: Mesh, exposed: Int32Array, spot: ColdSpot): number {
  const { x, y, nu } = mesh;
  const { nodes, w } = spot.weights;
  const px = nodes.reduce((sum, n, q) => sum + w[q] * x[n], 0);
  const py = nodes.reduce((sum, n, q) => sum + w[q] * y[n], 0);
  let best = exposed[0];
  let nearest = Number.POSITIVE_INFINITY;
  for (const e of exposed) {
    const d = Math.hypot(x[e] - px, y[e] - py);
    // Of two as near, the side rather than the end face.
    if (d < nearest - 1e-9 || (d < nearest + 1e-9 && e % nu === nu - 1)) {
      best = e;
      nearest = Math.min(d, nearest);
    }
  }
  return best;
}
