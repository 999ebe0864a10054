/**
 * What a mesh is made of: how much of each layer belongs to every node, what of it is exposed, and how sides and corners pass heat on.
 *
 * Vertex-centred. A quad is split into four corner sub-volumes by the lines between the middles of its sides; the gradient in
 * a corner comes from the two sides that meet there, conductivity is that of the quad's own material at the corner's
 * temperature. On a rectangular mesh this is the usual finite-volume scheme; on a skewed one it stays symmetric and positive.
 */
import type { Mesh } from './mesh.ts';

/** What the shape multiplies an interval's or a section's measure by to give that of the whole body. */
const whole = {
  revolved: 2 * Math.PI,
  cylinder: 2 * Math.PI,
  sphere: 4 * Math.PI,
  slab: 2,
  block: 4,
} as const;

export interface Cells {
  /** Per layer: the volume of it that each node has [m³; per metre for cylinder and block, per m² for slab]. */
  readonly volumes: readonly Float64Array[];
  /** Exposed area of each node [m², or as the volume]. */
  readonly areas: Float64Array;
  /** Twelve numbers a quad (m11, m12, m22 at four corners), or one an interval. */
  readonly metric: Float64Array;
}

/**
 * Volumes [m³], exposed areas [m²] and conductances for a conductivity of one [m] of a mesh's nodes, quads or intervals.
 *
 *     flow = k·V·(grad T)² at every corner, the gradient from the two sides that meet there
 *
 * @param mesh one row of nodes (intervals) or several (quads)
 * @param layers how many the body has
 * Assumes straight sides. Checked against the volume and the surface of frustum, bar and sphere, and by patch tests.
 * Source: own-computation
 */
export function cellsOf(mesh: Mesh, layers: number): Cells {
  const n = mesh.nu * mesh.nv;
  const volumes = Array.from({ length: layers }, () => new Float64Array(n));
  return mesh.nv === 1 ? lineCells(mesh, volumes) : quadCells(mesh, volumes);
}

function lineCells(mesh: Mesh, volumes: Float64Array[]): Cells {
  const { shape, nu, x, layerOf } = mesh;
  const f = whole[shape];
  const power = shape === 'sphere' ? 2 : shape === 'cylinder' ? 1 : 0;
  const upTo = (r: number) => r ** (power + 1) / (power + 1);
  const metric = new Float64Array(nu - 1);
  for (let i = 0; i + 1 < nu; i++) {
    const m = (x[i] + x[i + 1]) / 2;
    volumes[layerOf[i]][i] += f * (upTo(m) - upTo(x[i]));
    volumes[layerOf[i]][i + 1] += f * (upTo(x[i + 1]) - upTo(m));
    metric[i] = (f * m ** power) / (x[i + 1] - x[i]) / 2;
  }
  const areas = new Float64Array(nu);
  areas[nu - 1] = f * x[nu - 1] ** power;
  return { volumes, areas, metric };
}

/** What a side adds to ∫ w dA over the polygon it belongs to, w being the distance from the axis (round) or 1. */
function wedge(x0: number, y0: number, x1: number, y1: number, round: boolean): number {
  const cross = x0 * y1 - x1 * y0;
  return round ? (cross * (y0 + y1)) / 6 : cross / 2;
}

/** Corners of a quad in the order of its metric: each with its neighbour along u and along v, and the directions to them. */
const corners = [
  { own: 0, u: 1, v: 2, su: 1, sv: 1 },
  { own: 1, u: 0, v: 3, su: -1, sv: 1 },
  { own: 2, u: 3, v: 0, su: 1, sv: -1 },
  { own: 3, u: 2, v: 1, su: -1, sv: -1 },
] as const;

function quadCells(mesh: Mesh, volumes: Float64Array[]): Cells {
  const { shape, nu, nv, x, y, layerOf } = mesh;
  const f = whole[shape];
  const round = shape === 'revolved';
  const metric = new Float64Array((nu - 1) * (nv - 1) * 12);
  const nodes = [0, 0, 0, 0];
  for (let j = 0; j + 1 < nv; j++)
    for (let i = 0; i + 1 < nu; i++) {
      const q = j * (nu - 1) + i;
      const a = j * nu + i;
      nodes[0] = a;
      nodes[1] = a + 1;
      nodes[2] = a + nu;
      nodes[3] = a + nu + 1;
      const cx = ((x[a] + x[a + 1]) / 2 + (x[a + nu] + x[a + nu + 1]) / 2) / 2;
      const cy = ((y[a] + y[a + 1]) / 2 + (y[a + nu] + y[a + nu + 1]) / 2) / 2;
      for (let c = 0; c < 4; c++) {
        const { own, u, v, su, sv } = corners[c];
        const px = x[nodes[own]];
        const py = y[nodes[own]];
        // Both sides taken in the direction of rising index, so that one difference serves both corners of a side.
        const ux = su * (x[nodes[u]] - px);
        const uy = su * (y[nodes[u]] - py);
        const vx = sv * (x[nodes[v]] - px);
        const vy = sv * (y[nodes[v]] - py);
        // The sub-volume: own corner, middle of one side, centre, middle of the other.
        const mux = (px + x[nodes[u]]) / 2;
        const muy = (py + y[nodes[u]]) / 2;
        const mvx = (px + x[nodes[v]]) / 2;
        const mvy = (py + y[nodes[v]]) / 2;
        const V =
          f *
          Math.abs(
            wedge(px, py, mux, muy, round) +
              wedge(mux, muy, cx, cy, round) +
              wedge(cx, cy, mvx, mvy, round) +
              wedge(mvx, mvy, px, py, round),
          );
        volumes[layerOf[q]][nodes[own]] += V;
        const cross = ux * vy - uy * vx;
        const g = V / (cross * cross);
        const w = q * 12 + c * 3;
        metric[w] = g * (vx * vx + vy * vy);
        metric[w + 1] = -g * (ux * vx + uy * vy);
        metric[w + 2] = g * (ux * ux + uy * uy);
      }
    }
  const areas = new Float64Array(nu * nv);
  // Half of each exposed side belongs to either end.
  const expose = (a: number, b: number) => {
    const mx = (x[a] + x[b]) / 2;
    const my = (y[a] + y[b]) / 2;
    for (const n of [a, b]) {
      const length = Math.hypot(mx - x[n], my - y[n]);
      areas[n] += f * length * (round ? (my + y[n]) / 2 : 1);
    }
  };
  for (let j = 0; j + 1 < nv; j++) expose(j * nu + nu - 1, (j + 1) * nu + nu - 1);
  for (let i = 0; i + 1 < nu; i++) {
    expose((nv - 1) * nu + i, (nv - 1) * nu + i + 1);
    if (round) expose(i, i + 1);
  }
  return { volumes, areas, metric };
}
