/** The inner loops over the nodes of a mesh: heat content, conductivity and flow, by the code of `conduction.wat` in the memory of a system. */
import type { BandCholesky } from '../numerics/band.ts';
import { double, exportsOf } from '../numerics/wasm.ts';
import code from './conduction.wat.ts';
import type { Material } from './material.ts';

interface NodalCode {
  content(
    table: number,
    low: number,
    perDegree: number,
    last: number,
    nodes: number,
    end: number,
    volumes: number,
    T: number,
    U: number,
    k: number,
  ): void;
  flow(runs: number, end: number, T: number, F: number, row: number): void;
}

let made: NodalCode | undefined;

/** Quads of one material in a row: the material, the first quad, the first node and how many. */
export interface Run {
  readonly material: number;
  readonly quad: number;
  readonly node: number;
  readonly count: number;
}

/** What a system is made of, as the code wants it. */
export interface NodalParts {
  readonly n: number;
  readonly materials: readonly Material[];
  /** Per material: the nodes that have some of it, and how much. */
  readonly nodes: readonly Int32Array[];
  readonly volumes: readonly Float64Array[];
  /** Quads only: twelve numbers each as in `Cells`, their runs, and the nodes in a row of the mesh. */
  readonly metric: Float64Array;
  readonly runs: readonly Run[];
  readonly row: number;
}

const even = (x: number) => 2 * Math.ceil(x / 2);
/** Order in which the code reads the metric of a quad: m12, m11, m22, of each the left pair of corners and then the right one. */
const metricOrder = [1, 7, 4, 10, 0, 6, 3, 9, 2, 8, 5, 11];

/** Doubles that a system needs beside its matrix. */
function roomOf({ n, materials, nodes, metric, runs }: NodalParts): number {
  let room = (3 + materials.length) * even(n + 1) + metric.length + 2 * runs.length;
  materials.forEach(({ table }, m) => {
    room += even(table.length) + 2 * even(nodes[m].length);
  });
  return room;
}

export class Nodal {
  static readonly roomOf = roomOf;
  /** Views of the memory: temperatures, heat content, flow, and conductivity by material. */
  readonly T: Float64Array;
  readonly U: Float64Array;
  readonly F: Float64Array;
  readonly k: readonly Float64Array[];
  private readonly matrix: BandCholesky;
  private readonly code: NodalCode;
  private readonly row: number;
  /** What does not change, to be laid down again after another system has had the memory. */
  private readonly image: Float64Array;
  private readonly imageAt: number;
  /** Byte addresses by material, and of the runs. */
  private readonly tables: number[] = [];
  private readonly materials: readonly Material[];
  private readonly nodes: number[] = [];
  private readonly ends: number[] = [];
  private readonly volumes: number[] = [];
  private readonly runs: number;
  private readonly runsEnd: number;

  constructor(matrix: BandCholesky, parts: NodalParts) {
    const { n, materials, metric, runs } = parts;
    this.matrix = matrix;
    this.materials = materials;
    made ??= exportsOf<NodalCode>(code, matrix.memory);
    this.code = made;
    this.row = parts.row * double;
    // One node more than there are, for lists of odd length.
    const length = even(n + 1);
    let at = matrix.spare;
    const field = () => {
      at += length;
      return matrix.a.subarray(at - length, at - length + n);
    };
    this.T = field();
    this.U = field();
    this.F = field();
    this.k = materials.map(field);
    this.imageAt = at;
    const image = new Float64Array(roomOf(parts) - (at - matrix.spare));
    const words = new Int32Array(image.buffer);
    this.image = image;
    const next = (size: number) => {
      at += even(size);
      return at - even(size);
    };
    materials.forEach(({ table }, m) => {
      const count = parts.nodes[m].length;
      const tableAt = next(table.length);
      const volumesAt = next(count);
      const nodesAt = next(count);
      image.set(table, tableAt - this.imageAt);
      image.set(parts.volumes[m], volumesAt - this.imageAt);
      const word = 2 * (nodesAt - this.imageAt);
      for (let i = 0; i < even(count); i++) words[word + i] = (i < count ? parts.nodes[m][i] : n) * double;
      this.tables.push(tableAt * double);
      this.volumes.push(volumesAt * double);
      this.nodes.push(nodesAt * double);
      this.ends.push(nodesAt * double + even(count) * 4);
    });
    const metricAt = next(metric.length);
    const to = metricAt - this.imageAt;
    for (let q = 0; q < metric.length; q += 12)
      for (let c = 0; c < 12; c++) image[to + q + c] = metric[q + metricOrder[c]];
    const runsAt = next(2 * runs.length);
    const word = 2 * (runsAt - this.imageAt);
    runs.forEach((run, r) => {
      words[word + 4 * r] = this.k[run.material].byteOffset;
      words[word + 4 * r + 1] = (metricAt + run.quad * 12) * double;
      words[word + 4 * r + 2] = run.node * double;
      words[word + 4 * r + 3] = run.count;
    });
    this.runs = runsAt * double;
    this.runsEnd = this.runs + runs.length * 16;
  }

  /** Heat content [J] into `U` and conductivities [W/(m K)] into `k` at these temperatures, which stay in `T`. */
  content(T: Float64Array): void {
    const { matrix, code, nodes, ends, volumes } = this;
    if (matrix.take()) matrix.a.set(this.image, this.imageAt);
    this.T.set(T);
    this.U.fill(0);
    for (let m = 0; m < nodes.length; m++) {
      const { low, step, cells } = this.materials[m];
      code.content(
        this.tables[m],
        low,
        1 / step,
        cells - 1,
        nodes[m],
        ends[m],
        volumes[m],
        this.T.byteOffset,
        this.U.byteOffset,
        this.k[m].byteOffset,
      );
    }
  }

  /** Adds to `F` what flows between the nodes of quads [W], at the temperatures and conductivities that `content` left. */
  flow(): void {
    this.code.flow(this.runs, this.runsEnd, this.T.byteOffset, this.F.byteOffset, this.row);
  }
}
