/** Places in a body as weighted sums of mesh nodes. */
import { OutOfRange } from '../errors.ts';
import type { Mesh } from './mesh.ts';
import type { Weights } from './record.ts';
import type { Place } from './types.ts';

const millimetre = 1e-3;
const slack = 1e-9;

/** Weights of the values at `xs` in their interpolating polynomial at `x` [-]. */
export function lagrange(xs: readonly number[], x: number): number[] {
  return xs.map((a) => xs.reduce((p, b) => (a === b ? p : (p * (x - b)) / (a - b)), 1));
}

/** Quadratic through three neighbours, or a straight line through two, at `x` among rising `xs`; never across a barrier. */
function lineWeights(
  xs: readonly number[],
  x: number,
  barriers: readonly number[],
  even: boolean,
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
  // At a middle that mirrors, the temperature is even in the distance: interpolated in its square.
  const mirrored = even && i[0] === 0;
  const at = i.map((a) => (mirrored ? xs[a] ** 2 : xs[a]));
  return { i, w: lagrange(at, mirrored ? x * x : x) };
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
    const { i, w } = lineWeights(xs, inside(value, 0, xs[nu - 1], `${path}.${key}`), interfaces, true);
    return { nodes: i, w };
  }
  if (shape === 'block') {
    const xs = along(nu, (i) => x[i]);
    const ys = along(nv, (j) => y[j * nu]);
    const px = inside(Math.abs(place.x ?? 0), 0, xs[nu - 1], `${path}.x`);
    const py = inside(Math.abs(place.y ?? 0), 0, ys[nv - 1], `${path}.y`);
    const barriersY = ys.flatMap((_, j) => (j > 0 && j + 1 < nv && crosses(mesh, j) ? [j] : []));
    return product(lineWeights(xs, px, interfaces, true), lineWeights(ys, py, barriersY, true), nu);
  }
  const stations = along(nv, (j) => x[j * nu]);
  const at = inside(place.at, stations[0], stations[nv - 1], `${path}.at`);
  let cell = 0;
  while (cell + 2 < nv && stations[cell + 1] <= at) cell++;
  const s = (at - stations[cell]) / (stations[cell + 1] - stations[cell]);
  // Mesh lines are straight between stations, so the radial line through `at` is the blend of its neighbours.
  const radii = along(nu, (i) => (1 - s) * y[cell * nu + i] + s * y[(cell + 1) * nu + i]);
  const radius = inside(place.radius, 0, radii[nu - 1], `${path}.radius`);
  return product(lineWeights(radii, radius, interfaces, true), lineWeights(stations, at, [], false), nu);
}

/** Whether the layer changes across row j of a block, at the middle [-]. */
export function crosses(mesh: Mesh, j: number): boolean {
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
