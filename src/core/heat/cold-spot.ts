/** The point that has received least lethality, between nodes where the mesh lets that be said. */
import type { Mesh } from './mesh.ts';
import { crosses, lagrange } from './place.ts';
import type { Weights } from './record.ts';
import type { Place } from './types.ts';

export interface ColdSpot {
  readonly node: number;
  readonly weights: Weights;
  readonly place: Place;
  /** In the mesh's own coordinates [m]. */
  readonly x: number;
  readonly y: number;
}

/** Distance from a node to the nearest exposed node [m]. */
function depthOf(mesh: Mesh, exposed: Int32Array, node: number): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (const e of exposed)
    nearest = Math.min(nearest, Math.hypot(mesh.x[e] - mesh.x[node], mesh.y[e] - mesh.y[node]));
  return nearest;
}

/** The node with least lethality; among equals the deepest. */
function leastNode(mesh: Mesh, exposed: Int32Array, P: Float64Array): number {
  let least = 0;
  for (let i = 1; i < P.length; i++) if (P[i] < P[least]) least = i;
  const limit = P[least] + Math.max(1e-300, 1e-9 * P[least]);
  let node = least;
  let deepest = -1;
  for (let i = 0; i < P.length; i++) {
    if (P[i] > limit) continue;
    const depth = depthOf(mesh, exposed, i);
    if (depth > deepest + 1e-12) {
      node = i;
      deepest = depth;
    }
  }
  return node;
}

/** Along one direction: offsets from the least node, their weights, and where between them the lowest point lies. */
interface Refined {
  readonly offsets: readonly number[];
  readonly w: readonly number[];
  readonly at: number;
}

/**
 * Lowest point of the parabola through log P at three nodes in a row, the least of them being number `own` (0 or 1). In a
 * direction that mirrors at its middle the parabola is in the square of the distance, as the field is even there.
 */
function refine(xs: readonly number[], P: readonly number[], own: 0 | 1, mirrored: boolean): Refined {
  const still: Refined = { offsets: [0], w: [1], at: xs[own] };
  const s = mirrored ? xs.map((x) => x * x) : xs;
  const f = P.map(Math.log10);
  const d1 = (f[1] - f[0]) / (s[1] - s[0]);
  const d2 = (f[2] - f[1]) / (s[2] - s[1]);
  const curvature = (d2 - d1) / (s[2] - s[0]);
  if (!(curvature > 0) || !Number.isFinite(curvature)) return still;
  const at = (s[0] + s[1]) / 2 - d1 / (2 * curvature);
  const low = own === 0 ? s[0] : (s[0] + s[1]) / 2;
  const high = own === 0 ? (s[0] + s[1]) / 2 : (s[1] + s[2]) / 2;
  if (!(at > low && at < high)) return still;
  return { offsets: [0, 1, 2].map((q) => q - own), w: lagrange(s, at), at: mirrored ? Math.sqrt(at) : at };
}

/**
 * The point that has received least lethality [m]; among equals the one furthest from a surface.
 *
 *     least node, then the lowest point of the parabola through log P at it and two neighbours, along either direction
 *
 * @param mesh of the body
 * @param exposed nodes on the surface
 * @param P lethality at every node [s at the reference]
 * Assumes log P smooth within a layer; on an interface or on a surface the node itself is taken.
 * Checked by refining the mesh. Source: own-computation
 */
export function coldSpotOf(mesh: Mesh, exposed: Int32Array, P: Float64Array): ColdSpot {
  const { nu, nv, x, y, interfaces, shape } = mesh;
  const node = leastNode(mesh, exposed, P);
  const i = node % nu;
  const j = (node - i) / nu;
  const across = shape === 'revolved' ? y : x;
  const along = shape === 'revolved' ? x : y;
  const row = (start: number, stride: number, coordinate: Float64Array, own: 0 | 1, mirrored: boolean) => {
    const nodes = [start, start + stride, start + 2 * stride];
    return refine(
      nodes.map((n) => coordinate[n]),
      nodes.map((n) => P[n]),
      own,
      mirrored,
    );
  };
  const still = (at: number): Refined => ({ offsets: [0], w: [1], at });
  const clear = (line: number) => !interfaces.includes(line);
  const u =
    P[node] > 0 && i + 2 < nu && i === 0 && clear(1)
      ? row(node, 1, across, 0, true)
      : P[node] > 0 && i > 0 && i + 1 < nu && clear(i)
        ? row(node - 1, 1, across, 1, true)
        : still(across[node]);
  const vFree = shape === 'revolved' || (nv > 1 && j > 0 && !crosses(mesh, j));
  const v =
    P[node] > 0 && j > 0 && j + 1 < nv && vFree
      ? row(node - nu, nu, along, 1, shape === 'block')
      : still(along[node]);
  const nodes: number[] = [];
  const w: number[] = [];
  for (let b = 0; b < v.w.length; b++)
    for (let a = 0; a < u.w.length; a++) {
      nodes.push(node + v.offsets[b] * nu + u.offsets[a]);
      w.push(u.w[a] * v.w[b]);
    }
  const weights = { nodes, w };
  if (shape === 'revolved') {
    // The radius was found on the node's own station; on a tapered body it moves with the surface.
    const surface = nu - 1 - i;
    const R = v.offsets.reduce((sum, o, b) => sum + v.w[b] * y[node + o * nu + surface], 0);
    const radius = (u.at * R) / y[node + surface];
    return { node, weights, place: { at: v.at, radius }, x: v.at, y: radius };
  }
  const place: Place =
    shape === 'block' ? { x: u.at, y: v.at } : shape === 'slab' ? { x: u.at } : { radius: u.at };
  return { node, weights, place, x: u.at, y: v.at };
}

/** The exposed node nearest to a cold spot, by its distance [m]; of two as near, the side rather than the end face. */
export function surfaceBeside(mesh: Mesh, exposed: Int32Array, spot: ColdSpot): number {
  const { x, y, nu } = mesh;
  let best = exposed[0];
  let nearest = Number.POSITIVE_INFINITY;
  for (const e of exposed) {
    const d = Math.hypot(x[e] - spot.x, y[e] - spot.y);
    if (d < nearest - 1e-9 || (d < nearest + 1e-9 && e % nu === nu - 1)) {
      best = e;
      nearest = Math.min(d, nearest);
    }
  }
  return best;
}
