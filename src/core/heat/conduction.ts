/** Heat conduction on a mesh, in conservative form: d/dt Σ V·u(T) = flow through the mesh + flow through the surface. */
import { BandCholesky } from '../numerics/band.ts';
import type { Corners, StoredSystem } from '../numerics/esdirk.ts';
import { cellsOf } from './cells.ts';
import { cornersOf, iceShareOf } from './freezing-nodes.ts';
import { addCapacity, type Material } from './material.ts';
import type { Mesh } from './mesh.ts';
import { Nodal, type Run } from './nodal.ts';
import type { SurfaceLaw } from './surface.ts';

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
  /** What else crosses the surface; none where h·(medium − T) is all. */
  law: SurfaceLaw | undefined;
  /** How fast its heat falls at most as the surface warms, where the matrix was last made [W/(m² K)]. */
  steepest = 0;

  /** Where something freezes. */
  readonly corners?: Corners;
  /** How much of the water that is in what freezes is ice, 0 to 1; none where nothing freezes. */
  readonly iceShare: ((T: ArrayLike<number>) => number) | undefined;

  /** Per material: the nodes that have some of it, and how much. */
  private readonly nodes: Int32Array[];
  private readonly volumes: Float64Array[];
  /** Twelve numbers a quad (m11, m12, m22 at four corners), or one an interval. */
  private readonly metric: Float64Array;
  private readonly runs: readonly Run[];
  private readonly matrix: BandCholesky;
  private readonly nodal: Nodal;

  constructor(mesh: Mesh, materials: readonly Material[]) {
    const { nu, nv } = mesh;
    const n = nu * nv;
    this.n = n;
    this.mesh = mesh;
    this.materials = materials;
    const { volumes, areas, metric } = cellsOf(mesh, materials.length);
    this.metric = metric;
    this.volume = new Float64Array(n);
    for (const v of volumes) for (let i = 0; i < n; i++) this.volume[i] += v[i];
    this.nodes = volumes.map(placesAbove0);
    this.volumes = volumes.map((v, m) => Float64Array.from(this.nodes[m], (i) => v[i]));
    const shares = { materials, nodes: this.nodes, volumes: this.volumes };
    const corners = cornersOf(shares, n);
    if (corners !== undefined) this.corners = corners;
    this.iceShare = iceShareOf(shares);
    this.exposed = placesAbove0(areas);
    this.area = Float64Array.from(this.exposed, (i) => areas[i]);
    this.runs = runsOf(mesh);
    const parts = {
      n,
      materials,
      nodes: this.nodes,
      volumes: this.volumes,
      metric: nv === 1 ? new Float64Array(0) : metric,
      runs: nv === 1 ? [] : this.runs,
      row: nu,
    };
    this.matrix = new BandCholesky(n, nv === 1 ? 1 : nu + 1, Nodal.roomOf(parts));
    this.nodal = new Nodal(this.matrix, parts);
  }

  store(T: Float64Array, U: Float64Array): void {
    this.nodal.content(T);
    U.set(this.nodal.U);
  }

  evaluate(T: Float64Array, t: number, U: Float64Array, F: Float64Array): void {
    const { nodal, exposed, area, h } = this;
    nodal.content(T);
    const flow = nodal.F;
    flow.fill(0);
    const outside = this.mediumAt(t);
    if (this.law !== undefined) this.lawFlow(this.law, T, outside, flow);
    else for (let b = 0; b < exposed.length; b++) flow[exposed[b]] = h * area[b] * (outside - T[exposed[b]]);
    if (this.mesh.nv === 1) this.lineFlow(T, flow);
    else nodal.flow();
    U.set(nodal.U);
    F.set(flow);
  }

  /** Heat that comes in through the surface [W]. */
  intake(T: Float64Array, t: number): number {
    const { exposed, area, h } = this;
    const outside = this.mediumAt(t);
    if (this.law !== undefined) return this.lawFlow(this.law, T, outside);
    let q = 0;
    for (let b = 0; b < exposed.length; b++) q += h * area[b] * (outside - T[exposed[b]]);
    return q;
  }

  /** Heat that comes in by a law of the surface [W], in all and node by node. */
  private lawFlow(law: SurfaceLaw, T: Float64Array, outside: number, flow?: Float64Array): number {
    const { exposed, area } = this;
    law.surround(outside);
    let sum = 0;
    for (let b = 0; b < exposed.length; b++) {
      law.read(T[exposed[b]]);
      const q = area[b] * law.q;
      if (flow !== undefined) flow[exposed[b]] = q;
      sum += q;
    }
    return sum;
  }

  /** Volume of each material [m³, as `volume`]. */
  volumeOf(): number[] {
    return this.volumes.map((v) => v.reduce((sum, x) => sum + x, 0));
  }

  mediumAt(t: number): number {
    return this.medium.C + this.medium.slope * (t - this.medium.from);
  }

  private lineFlow(T: Float64Array, F: Float64Array): void {
    const { metric, nodal } = this;
    for (const run of this.runs) {
      const k = nodal.k[run.material];
      for (let i = run.node; i < run.node + run.count; i++) {
        const q = metric[i] * (k[i] + k[i + 1]) * (T[i + 1] - T[i]);
        F[i] += q;
        F[i + 1] -= q;
      }
    }
  }

  factorise(T: Float64Array, tau: number, capacity: Float64Array): boolean {
    capacity.fill(0);
    for (let m = 0; m < this.materials.length; m++)
      addCapacity(this.materials[m], this.nodes[m], this.volumes[m], T, capacity);
    const { matrix, nodal, exposed, area, h } = this;
    nodal.content(T);
    matrix.clear();
    const { a, width } = matrix;
    const diagonal = matrix.at(0, 0);
    for (let i = 0; i < this.n; i++) a[diagonal + i * width] = capacity[i] / tau;
    const { law } = this;
    this.steepest = 0;
    for (let b = 0; b < exposed.length; b++) {
      // The law stands in the surroundings that it was last asked about: those of this step or of the one before.
      law?.read(T[exposed[b]]);
      const fall = law?.fall ?? h;
      if (fall > this.steepest) this.steepest = fall;
      a[diagonal + exposed[b] * width] += fall * area[b];
    }
    for (const { material, quad, node, count } of this.runs)
      if (this.mesh.nv === 1) this.lineMatrix(nodal.k[material], node, count);
      else
        assembleAlong(
          this.metric,
          quad * 12,
          nodal.k[material],
          node,
          count,
          this.mesh.nu,
          a,
          diagonal,
          width,
        );
    return matrix.factorise();
  }

  private lineMatrix(k: Float64Array, first: number, count: number): void {
    const { matrix, metric } = this;
    const { a, width } = matrix;
    for (let i = first; i < first + count; i++) {
      const g = metric[i] * (k[i] + k[i + 1]);
      const d = matrix.at(i, i);
      a[d] += g;
      a[d + width] += g;
      a[d + width - 1] -= g;
    }
  }

  solve(x: Float64Array): void {
    this.matrix.solve(x);
  }
}

/** Places at which something is. */
const placesAbove0 = (x: Float64Array) => {
  const places: number[] = [];
  for (let i = 0; i < x.length; i++) if (x[i] > 0) places.push(i);
  return Int32Array.from(places);
};

/** Runs of quads, or of intervals, of one material. */
function runsOf(mesh: Mesh): Run[] {
  const { nu, nv, layerOf } = mesh;
  const runs: Run[] = [];
  for (let j = 0; j < Math.max(1, nv - 1); j++)
    for (let i = 0; i + 1 < nu; ) {
      const quad = j * (nu - 1) + i;
      const material = layerOf[quad];
      let count = 1;
      while (i + count + 1 < nu && layerOf[quad + count] === material) count++;
      runs.push({ material, quad, node: j * nu + i, count });
      i += count;
    }
  return runs;
}

/** A run's part of the matrix: entry (i, i) stands at diagonal + i·width, entries left of it before it. */
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
