/** Room and arithmetic for the vectors that a step works with, by the code of `vectors.wat`. */
import vectorCode from './vectors.wat.ts';
import { double, exportsOf, memoryOf } from './wasm.ts';

/** `out`, and what else is a vector, as byte addresses; `end` where `out` ends. */
interface VectorCode {
  combine(
    out: number,
    end: number,
    base: number,
    K: number,
    stride: number,
    count: number,
    weights: number,
  ): void;
  cubic(
    out: number,
    end: number,
    a: number,
    x: number,
    b: number,
    y: number,
    c: number,
    p: number,
    d: number,
    q: number,
    r: number,
  ): void;
  residual(out: number, end: number, a: number, b: number, c: number, w: number): void;
  difference(out: number, end: number, a: number, b: number, w: number): void;
  quotient(out: number, end: number, a: number, b: number): void;
  correct(out: number, end: number, d: number): number;
}

const room = 2 ** 21;
const mostWeights = 16;

let made: { readonly doubles: Float64Array; readonly code: VectorCode } | undefined;

function workspace() {
  if (made === undefined) {
    const memory = memoryOf(room * double);
    made = { doubles: new Float64Array(memory.buffer), code: exportsOf<VectorCode>(vectorCode, memory) };
  }
  return made;
}

/**
 * Vectors of `n` entries, all users' in the same place: what they hold lasts only as long as nobody else begins, that is, for one step.
 */
export class Vectors {
  readonly n: number;
  private readonly code: VectorCode;
  private readonly doubles: Float64Array;
  private readonly stride: number;
  private readonly bytes: number;
  private taken = mostWeights;

  constructor(n: number, count: number) {
    this.stride = 2 * Math.ceil(n / 2);
    this.bytes = this.stride * double;
    if (mostWeights + count * this.stride > room)
      throw new RangeError(`${n} unknowns are too many: coarsen the mesh`);
    const { doubles, code } = workspace();
    this.doubles = doubles;
    this.code = code;
    this.n = n;
  }

  /** The next vector. */
  next(): Float64Array {
    const at = this.taken;
    this.taken += this.stride;
    return this.doubles.subarray(at, at + this.n);
  }

  /** Empties them all. */
  begin(): void {
    this.doubles.fill(0, 0, this.taken);
  }

  /** out = base + Σ weights·K, over vectors that were taken one after another, the first of them `K`. */
  combine(out: Float64Array, base: Float64Array, K: Float64Array, weights: readonly number[]): void {
    const { code, bytes, doubles } = this;
    for (let j = 0; j < weights.length; j++) doubles[j] = weights[j];
    code.combine(
      out.byteOffset,
      out.byteOffset + bytes,
      base.byteOffset,
      K.byteOffset,
      bytes,
      weights.length,
      0,
    );
  }

  /** out = a·x + b·y + c·p + d·q/r. */
  cubic(
    out: Float64Array,
    [a, b, c, d]: readonly [number, number, number, number],
    x: Float64Array,
    y: Float64Array,
    p: Float64Array,
    q: Float64Array,
    r: Float64Array,
  ): void {
    const { byteOffset } = out;
    this.code.cubic(
      byteOffset,
      byteOffset + this.bytes,
      a,
      x.byteOffset,
      b,
      y.byteOffset,
      c,
      p.byteOffset,
      d,
      q.byteOffset,
      r.byteOffset,
    );
  }

  /** out = a − (b − c)·w. */
  residual(out: Float64Array, a: Float64Array, b: Float64Array, c: Float64Array, w: number): void {
    const { byteOffset } = out;
    this.code.residual(byteOffset, byteOffset + this.bytes, a.byteOffset, b.byteOffset, c.byteOffset, w);
  }

  /** out = (a − b)·w. */
  difference(out: Float64Array, a: Float64Array, b: Float64Array, w: number): void {
    this.code.difference(out.byteOffset, out.byteOffset + this.bytes, a.byteOffset, b.byteOffset, w);
  }

  /** out = a/b. */
  quotient(out: Float64Array, a: Float64Array, b: Float64Array): void {
    this.code.quotient(out.byteOffset, out.byteOffset + this.bytes, a.byteOffset, b.byteOffset);
  }

  /** out = out + d; returns the largest |d|, not a number where one of them is none. */
  correct(out: Float64Array, d: Float64Array): number {
    return this.code.correct(out.byteOffset, out.byteOffset + this.bytes, d.byteOffset);
  }
}
