/**
 * Symmetric positive definite systems whose entries lie within `band` places of the diagonal, factorised directly by the code of `band.wat`,
 * two doubles to an instruction. There is no other code for the task, so that no digit hangs on what a machine offers.
 *
 * All systems share one memory of fixed size, so only one of them is alive at a time: from `clear` over `factorise` to the last
 * `solve`. Whoever solves after another has begun is told so.
 */
import bandCode from './band.wat.ts';
import { double, exportsOf, memoryOf } from './wasm.ts';

interface BandCode {
  factorise(a: number, inverses: number, panel: number, n: number, band: number): number;
  solve(a: number, inverses: number, x: number, n: number, band: number): void;
}

/** Doubles in the memory. */
const room = 6 * 2 ** 20;

interface Workspace {
  readonly memory: { readonly buffer: ArrayBuffer };
  readonly doubles: Float64Array;
  readonly code: BandCode;
}

/** Made when the first system is: an engine that only counts needs none of it. */
let workspace: Workspace | undefined;
let holder: BandCholesky | undefined;
let filled = false;

function workspaceMade(): Workspace {
  if (workspace === undefined) {
    const memory = memoryOf(room * double);
    workspace = {
      memory,
      doubles: new Float64Array(memory.buffer),
      code: exportsOf<BandCode>(bandCode, memory),
    };
  }
  return workspace;
}

const fours = (x: number) => 4 * Math.ceil(x / 4);

export class BandCholesky {
  readonly n: number;
  readonly band: number;
  /** From one diagonal entry to the next. */
  readonly width: number;
  /** Lower triangle; entry (i, j) at `at(i, j)`. Filled by the caller after `clear`, replaced by its Cholesky factor by `factorise`. */
  readonly a: Float64Array;
  readonly memory: { readonly buffer: ArrayBuffer };
  /** Where the room begins that the caller asked for beside the matrix, as an index in `a`; a multiple of four. */
  readonly spare: number;
  private readonly code: BandCode;
  /** Multiples of four: rows added to fill the last four have a one on the diagonal, columns added to the band are zeros. */
  private readonly rows: number;
  private readonly columns: number;
  private readonly inverses: number;
  private readonly panel: number;
  /** Where the unknowns begin; a band of zeros stands before them. */
  private readonly first: number;
  private readonly x: Float64Array;

  /** @param spare doubles that the caller wants for itself in the same memory, while it holds it */
  constructor(n: number, band: number, spare = 0) {
    this.n = n;
    this.band = band;
    this.rows = fours(n);
    this.columns = Math.max(4, fours(band));
    this.width = this.columns + 5;
    this.inverses = fours((this.rows + 1) * this.width);
    this.panel = this.inverses + 3 * this.rows;
    this.first = this.panel + 5 * this.columns;
    this.spare = this.first + this.rows;
    if (this.spare + spare > room)
      throw new RangeError(`a system of ${n} unknowns with a band of ${band} is too large: coarsen the mesh`);
    const { memory, doubles, code } = workspaceMade();
    this.memory = memory;
    this.a = doubles;
    this.code = code;
    this.x = doubles.subarray(this.first, this.first + n);
  }

  /** Index in `a` of entry (i, j), i − band ≤ j ≤ i. */
  at(i: number, j: number): number {
    return (i + 1) * (this.width - 1) + j;
  }

  /** Takes the memory; true where it has been another's, so that nothing of this system is left in it. */
  take(): boolean {
    if (holder === this) return false;
    holder = this;
    filled = false;
    return true;
  }

  /** Takes the memory and empties the matrix. */
  clear(): void {
    this.take();
    filled = true;
    const { a, n, rows, first, columns } = this;
    a.fill(0, 0, this.inverses);
    for (let i = n; i < rows; i++) a[this.at(i, i)] = 1;
    a.fill(0, first - columns, first + rows);
  }

  private holds(): void {
    if (holder !== this || !filled)
      throw new Error('another system has taken the workspace since this one was filled');
  }

  /** A = L Lᵀ in place. Returns false when the matrix is not positive definite (the factor is then unusable). */
  factorise(): boolean {
    this.holds();
    const { code, inverses, panel, rows, columns } = this;
    return code.factorise(this.at(0, 0) * double, inverses * double, panel * double, rows, columns) === 1;
  }

  /** Solves A x = b in place after `factorise`. */
  solve(b: Float64Array): void {
    this.holds();
    const { code, inverses, first, rows, columns, x } = this;
    x.set(b);
    code.solve(this.at(0, 0) * double, inverses * double, first * double, rows, columns);
    b.set(x);
  }
}
