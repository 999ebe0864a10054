/**
 * Heat conduction on a mesh, in conservative form: d/dt Σ V·u(T) = flow through the mesh + flow through the surface.
 *
 * Vertex-centred. A quad is split into four corner sub-volumes by the lines between the middles of its sides; the gradient in
 * a corner comes from the two sides that meet there, conductivity is that of the quad's own material at the corner's
 * temperature. On a rectangular mesh this is the usual finite-volume scheme; on a skewed one it stays symmetric and positive.
 */
import { BandCholesky } from '../numerics/band.ts';
import type { StoredSystem } from '../numerics/esdirk.ts';
import { addCapacity, addContent, type Material, readConductivity } from './material.ts';
import type { Mesh } from './mesh.ts';

type Point = readonly [x: number, r: number];

/** ∫ w dA over a polygon, where w is the distance from the axis (round) or 1. */
function moment(polygon: readonly Point[], round: boolean): number {
  let sum = 0;
  for (let i = 0; i < polygon.length; i++) {
    const [x0, r0] = polygon[i];
    const [x1, r1] = polygon[(i + 1) % polygon.length];
    const cross = x0 * r1 - x1 * r0;
    sum += round ? (cross * (r0 + r1)) / 6 : cross / 2;
  }
  return Math.abs(sum);
}

const middle = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

/** What the shape multiplies an interval's or a section's measure by to give that of the whole body. */
const whole = {
  revolved: 2 * Math.PI,
  cylinder: 2 * Math.PI,
  sphere: 4 * Math.PI,
  slab: 2,
  block: 4,
} as const;

export class Conduction implements StoredSystem {
  readonly n: number;
  readonly mesh: Mesh;
  readonly materials: readonly Material[];
  /** Volume of each node's cell [m³; per metre for cylinder and block, per m² for slab]. */
  readonly volume: Float64Array;
  /** Exposed nodes and their area [m²]. */
  readonly exposed: Int32Array;
  readonly area: Float64Array;
  /** Surface coefficient [W/(m² K)] and temperature of the medium, straight in time [°C; °C/s; s]. */
  h = 0;
  medium = { C: 0, slope: 0, from: 0 };

  /** Per material: the nodes that have some of it, and how much. */
  private readonly nodes: Int32Array[];
  private readonly volumes: Float64Array[];
  /** Per material: conductivity at its nodes. */
  private readonly k: Float64Array[];
  /** Twelve numbers a quad (m11, m12, m22 at four corners), or one an interval. */
  private readonly metric: Float64Array;
  /** Runs of quads or intervals of one material: material, first, how many, first node. */
  private readonly runs: Int32Array;
  private readonly matrix: BandCholesky;

  constructor(mesh: Mesh, materials: readonly Material[]) {
    const { nu, nv } = mesh;
    this.n = nu * nv;
    this.mesh = mesh;
    this.materials = materials;
    this.volume = new Float64Array(this.n);
    const perMaterial = materials.map(() => new Float64Array(this.n));
    const areas = new Float64Array(this.n);
    if (nv === 1) this.metric = this.layLine(perMaterial, areas);
    else this.metric = this.layQuads(perMaterial, areas);
    this.nodes = perMaterial.map((v) => Int32Array.from([...v.keys()].filter((i) => v[i] > 0)));
    this.volumes = perMaterial.map((v, m) => Float64Array.from(this.nodes[m], (i) => v[i]));
    for (const v of perMaterial) for (let i = 0; i < this.n; i++) this.volume[i] += v[i];
    this.k = materials.map(() => new Float64Array(this.n));
    this.exposed = Int32Array.from([...areas.keys()].filter((i) => areas[i] > 0));
    this.area = Float64Array.from(this.exposed, (i) => areas[i]);
    this.runs = this.findRuns();
    this.matrix = new BandCholesky(this.n, nv === 1 ? 1 : nu + 1);
  }

  private layLine(perMaterial: Float64Array[], areas: Float64Array): Float64Array {
    const { shape, nu, x, layerOf } = this.mesh;
    const f = whole[shape];
    const power = shape === 'sphere' ? 2 : shape === 'cylinder' ? 1 : 0;
    const upTo = (r: number) => r ** (power + 1) / (power + 1);
    const metric = new Float64Array(nu - 1);
    for (let i = 0; i + 1 < nu; i++) {
      const m = (x[i] + x[i + 1]) / 2;
      perMaterial[layerOf[i]][i] += f * (upTo(m) - upTo(x[i]));
      perMaterial[layerOf[i]][i + 1] += f * (upTo(x[i + 1]) - upTo(m));
      metric[i] = (f * m ** power) / (x[i + 1] - x[i]) / 2;
    }
    areas[nu - 1] = f * x[nu - 1] ** power;
    return metric;
  }

  private layQuads(perMaterial: Float64Array[], areas: Float64Array): Float64Array {
    const { shape, nu, nv, x, y, layerOf } = this.mesh;
    const f = whole[shape];
    const round = shape === 'revolved';
    const metric = new Float64Array((nu - 1) * (nv - 1) * 12);
    const at = (n: number): Point => [x[n], y[n]];
    for (let j = 0; j + 1 < nv; j++)
      for (let i = 0; i + 1 < nu; i++) {
        const q = j * (nu - 1) + i;
        const a = j * nu + i;
        const corners = [a, a + 1, a + nu, a + nu + 1] as const;
        const [pa, pb, pc, pd] = corners.map(at) as [Point, Point, Point, Point];
        const centre = middle(middle(pa, pb), middle(pc, pd));
        // Corner, its neighbour along u, its neighbour along v.
        const around = [
          [pa, pb, pc],
          [pb, pa, pd],
          [pc, pd, pa],
          [pd, pc, pb],
        ] as const;
        around.forEach(([p, pu, pv], c) => {
          const V = f * moment([p, middle(p, pu), centre, middle(p, pv)], round);
          perMaterial[layerOf[q]][corners[c]] += V;
          // Both sides taken in the direction of rising index, so that one difference serves both corners of a side.
          const su = c % 2 === 0 ? 1 : -1;
          const sv = c < 2 ? 1 : -1;
          const ux = su * (pu[0] - p[0]);
          const uy = su * (pu[1] - p[1]);
          const vx = sv * (pv[0] - p[0]);
          const vy = sv * (pv[1] - p[1]);
          const cross = ux * vy - uy * vx;
          const g = V / (cross * cross);
          metric[q * 12 + c * 3] = g * (vx * vx + vy * vy);
          metric[q * 12 + c * 3 + 1] = -g * (ux * vx + uy * vy);
          metric[q * 12 + c * 3 + 2] = g * (ux * ux + uy * uy);
        });
      }
    // Half of each exposed side belongs to either end.
    const expose = (a: number, b: number) => {
      const m = middle(at(a), at(b));
      for (const n of [a, b]) {
        const p = at(n);
        const length = Math.hypot(m[0] - p[0], m[1] - p[1]);
        areas[n] += f * length * (round ? (m[1] + p[1]) / 2 : 1);
      }
    };
    for (let j = 0; j + 1 < nv; j++) expose(j * nu + nu - 1, (j + 1) * nu + nu - 1);
    for (let i = 0; i + 1 < nu; i++) {
      expose((nv - 1) * nu + i, (nv - 1) * nu + i + 1);
      if (round) expose(i, i + 1);
    }
    return metric;
  }

  private findRuns(): Int32Array {
    const { nu, nv, layerOf } = this.mesh;
    const runs: number[] = [];
    for (let j = 0; j < Math.max(1, nv - 1); j++)
      for (let i = 0; i + 1 < nu; ) {
        const q = j * (nu - 1) + i;
        let length = 1;
        while (i + length + 1 < nu && layerOf[q + length] === layerOf[q]) length++;
        runs.push(layerOf[q], q, length, j * nu + i);
        i += length;
      }
    return Int32Array.from(runs);
  }

  store(T: Float64Array, U: Float64Array): void {
    U.fill(0);
    for (let m = 0; m < this.materials.length; m++)
      addContent(this.materials[m].table, this.nodes[m], this.volumes[m], T, U);
  }

  evaluate(T: Float64Array, t: number, U: Float64Array, F: Float64Array): void {
    U.fill(0);
    for (let m = 0; m < this.materials.length; m++) {
      const { table } = this.materials[m];
      addContent(table, this.nodes[m], this.volumes[m], T, U);
      readConductivity(table, this.nodes[m], T, this.k[m]);
    }
    F.fill(0);
    const { exposed, area, h } = this;
    const outside = this.mediumAt(t);
    for (let b = 0; b < exposed.length; b++) F[exposed[b]] = h * area[b] * (outside - T[exposed[b]]);
    if (this.mesh.nv === 1) this.lineFlow(T, F);
    else this.quadFlow(T, F);
  }

  /** Heat that comes in through the surface [W]. */
  intake(T: Float64Array, t: number): number {
    const { exposed, area, h } = this;
    const outside = this.mediumAt(t);
    let q = 0;
    for (let b = 0; b < exposed.length; b++) q += h * area[b] * (outside - T[exposed[b]]);
    return q;
  }

  /** Volume of each material [m³, as `volume`]. */
  volumeOf(): number[] {
    return this.volumes.map((v) => v.reduce((sum, x) => sum + x, 0));
  }

  mediumAt(t: number): number {
    return this.medium.C + this.medium.slope * (t - this.medium.from);
  }

  private lineFlow(T: Float64Array, F: Float64Array): void {
    const { runs, metric } = this;
    for (let r = 0; r < runs.length; r += 4) {
      const k = this.k[runs[r]];
      const end = runs[r + 1] + runs[r + 2];
      for (let i = runs[r + 1]; i < end; i++) {
        const q = metric[i] * (k[i] + k[i + 1]) * (T[i + 1] - T[i]);
        F[i] += q;
        F[i + 1] -= q;
      }
    }
  }

  private quadFlow(T: Float64Array, F: Float64Array): void {
    const { runs, metric } = this;
    for (let r = 0; r < runs.length; r += 4)
      flowAlong(metric, runs[r + 1] * 12, this.k[runs[r]], runs[r + 3], runs[r + 2], this.mesh.nu, T, F);
  }

  factorise(T: Float64Array, tau: number, capacity: Float64Array): boolean {
    capacity.fill(0);
    for (let m = 0; m < this.materials.length; m++) {
      const { table } = this.materials[m];
      addCapacity(table, this.nodes[m], this.volumes[m], T, capacity);
      readConductivity(table, this.nodes[m], T, this.k[m]);
    }
    const { matrix, exposed, area, h } = this;
    matrix.clear();
    const { a, width } = matrix;
    const diagonal = matrix.at(0, 0);
    for (let i = 0; i < this.n; i++) a[diagonal + i * width] = capacity[i] / tau;
    for (let b = 0; b < exposed.length; b++) a[diagonal + exposed[b] * width] += h * area[b];
    if (this.mesh.nv === 1) this.lineMatrix(a, diagonal, width);
    else this.quadMatrix(a, diagonal, width);
    return matrix.factorise();
  }

  private lineMatrix(a: Float64Array, diagonal: number, width: number): void {
    const { runs, metric } = this;
    for (let r = 0; r < runs.length; r += 4) {
      const k = this.k[runs[r]];
      const end = runs[r + 1] + runs[r + 2];
      for (let i = runs[r + 1]; i < end; i++) {
        const g = metric[i] * (k[i] + k[i + 1]);
        const d = diagonal + i * width;
        a[d] += g;
        a[d + width] += g;
        a[d + width - 1] -= g;
      }
    }
  }

  private quadMatrix(a: Float64Array, diagonal: number, width: number): void {
    const { runs, metric } = this;
    for (let r = 0; r < runs.length; r += 4)
      assembleAlong(
        metric,
        runs[r + 1] * 12,
        this.k[runs[r]],
        runs[r + 3],
        runs[r + 2],
        this.mesh.nu,
        a,
        diagonal,
        width,
      );
  }

  solve(x: Float64Array): void {
    this.matrix.solve(x);
  }
}

/** Flow through a run of quads of one material: `w` in the metric, `a` the first node, `count` quads. */
function flowAlong(
  metric: Float64Array,
  from: number,
  k: Float64Array,
  first: number,
  count: number,
  nu: number,
  T: Float64Array,
  F: Float64Array,
): void {
  let w = from;

  let a = first;
  let c = a + nu;
  let Ta = T[a];
  let Tc = T[c];
  let ka = k[a];
  let kc = k[c];
  let left = Tc - Ta;
  const end = a + count;
  for (; a < end; a++, c++, w += 12) {
    const Tb = T[a + 1];
    const Td = T[c + 1];
    const kb = k[a + 1];
    const kd = k[c + 1];
    const below = Tb - Ta;
    const above = Td - Tc;
    const right = Td - Tb;
    const xa = ka * metric[w + 1];
    const xb = kb * metric[w + 4];
    const xc = kc * metric[w + 7];
    const xd = kd * metric[w + 10];
    const qBelow = below * (ka * metric[w] + kb * metric[w + 3]) + left * xa + right * xb;
    const qAbove = above * (kc * metric[w + 6] + kd * metric[w + 9]) + left * xc + right * xd;
    const qLeft = left * (ka * metric[w + 2] + kc * metric[w + 8]) + below * xa + above * xc;
    const qRight = right * (kb * metric[w + 5] + kd * metric[w + 11]) + below * xb + above * xd;
    F[a] += qBelow + qLeft;
    F[a + 1] += qRight - qBelow;
    F[c] += qAbove - qLeft;
    F[c + 1] -= qAbove + qRight;
    Ta = Tb;
    Tc = Td;
    ka = kb;
    kc = kd;
    left = right;
  }
}

/** The same run's part of the matrix: entry (i, i) stands at diagonal + i·width, entries left of it before it. */
function assembleAlong(
  metric: Float64Array,
  from: number,
  k: Float64Array,
  first: number,
  count: number,
  nu: number,
  a: Float64Array,
  diagonal: number,
  width: number,
): void {
  let w = from;

  for (let p = first; p < first + count; p++, w += 12) {
    const ka = k[p];
    const kb = k[p + 1];
    const kc = k[p + nu];
    const kd = k[p + nu + 1];
    const A1 = ka * metric[w] + kb * metric[w + 3];
    const A2 = kc * metric[w + 6] + kd * metric[w + 9];
    const B1 = ka * metric[w + 2] + kc * metric[w + 8];
    const B2 = kb * metric[w + 5] + kd * metric[w + 11];
    const xa = ka * metric[w + 1];
    const xb = kb * metric[w + 4];
    const xc = kc * metric[w + 7];
    const xd = kd * metric[w + 10];
    const rowA = diagonal + p * width;
    const rowB = rowA + width;
    const rowC = rowA + nu * width;
    const rowD = rowC + width;
    a[rowA] += A1 + B1 + 2 * xa;
    a[rowB] += A1 + B2 - 2 * xb;
    a[rowC] += A2 + B1 - 2 * xc;
    a[rowD] += A2 + B2 + 2 * xd;
    a[rowB - 1] += xb - xa - A1;
    a[rowC - nu] += xc - xa - B1;
    a[rowC - nu + 1] += xa + xd;
    a[rowD - nu - 1] -= xb + xc;
    a[rowD - nu] += xb - xd - B2;
    a[rowD - 1] += xc - xd - A2;
  }
}
