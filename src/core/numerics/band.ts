/**
 * Symmetric positive definite systems whose entries lie within `band` places of the diagonal, factorised directly.
 * The lower triangle is stored by rows: row i holds columns i − band … i. `band` rows of zeros stand before the first,
 * so that no loop has to look for the edge of the matrix.
 */
export class BandCholesky {
  readonly n: number;
  readonly band: number;
  /** Entries a row. */
  readonly width: number;
  /** Lower triangle; entry (i, j) at `at(i, j)`. Filled by the caller, replaced by its Cholesky factor by `factorise`. */
  readonly a: Float64Array;
  private readonly inverseDiagonal: Float64Array;
  private readonly panel: Float64Array;
  private readonly x: Float64Array;
  private readonly offset: number;

  constructor(n: number, band: number) {
    this.n = n;
    // A multiple of four columns at a time is eliminated; a wider band of zeros costs less than a ragged edge.
    this.band = Math.max(4, band);
    this.width = this.band + 1;
    this.offset = this.band;
    const rows = n + this.band + 4;
    this.a = new Float64Array(rows * this.width);
    this.inverseDiagonal = new Float64Array(n + 4);
    this.panel = new Float64Array((this.band + 4) * 4);
    this.x = new Float64Array(rows);
  }

  /** Index in `a` of entry (i, j), i − band ≤ j ≤ i. */
  at(i: number, j: number): number {
    return (i + this.offset) * this.width + j - i + this.band;
  }

  clear(): void {
    this.a.fill(0);
  }

  /**
   * A = L Lᵀ in place, four columns at a time: the block on the diagonal, the panel below it, then the update of what
   * the panel touches. Returns false when the matrix is not positive definite (the factor is then unusable).
   */
  factorise(): boolean {
    const { n, band, width, a, panel, inverseDiagonal, offset } = this;
    for (let p = 0; p < n; p += 4) {
      const cols = Math.min(4, n - p);
      const last = Math.min(n - 1, p + band + cols - 1);
      // Diagonal block and panel, column by column.
      for (let c = 0; c < cols; c++) {
        const j = p + c;
        const rowJ = (j + offset) * width - j + band;
        let d = a[rowJ + j];
        for (let k = p; k < j; k++) d -= a[rowJ + k] * a[rowJ + k];
        if (!(d > 0) || d === Number.POSITIVE_INFINITY) return false;
        const root = Math.sqrt(d);
        const inverse = 1 / root;
        a[rowJ + j] = root;
        inverseDiagonal[j] = inverse;
        const below = Math.min(n - 1, p + cols - 1);
        for (let i = j + 1; i <= below; i++) {
          const rowI = (i + offset) * width - i + band;
          let s = a[rowI + j];
          for (let k = p; k < j; k++) s -= a[rowI + k] * a[rowJ + k];
          a[rowI + j] = s * inverse;
        }
      }
      const first = p + cols;
      if (first > last) continue;
      if (cols < 4) continue;
      const r1 = (p + 1 + offset) * width - (p + 1) + band + p;
      const r2 = (p + 2 + offset) * width - (p + 2) + band + p;
      const r3 = (p + 3 + offset) * width - (p + 3) + band + p;
      const l10 = a[r1];
      const l20 = a[r2];
      const l21 = a[r2 + 1];
      const l30 = a[r3];
      const l31 = a[r3 + 1];
      const l32 = a[r3 + 2];
      const d0 = inverseDiagonal[p];
      const d1 = inverseDiagonal[p + 1];
      const d2 = inverseDiagonal[p + 2];
      const d3 = inverseDiagonal[p + 3];
      for (let i = first; i <= last; i++) {
        const rowI = (i + offset) * width - i + band + p;
        const q = (i - first) * 4;
        // Row i starts at column i − band: what lies before it is not stored and is zero.
        const lead = i - band - p;
        const b0 = lead <= 0 ? a[rowI] * d0 : 0;
        const b1 = lead <= 1 ? (a[rowI + 1] - b0 * l10) * d1 : 0;
        const b2 = lead <= 2 ? (a[rowI + 2] - b0 * l20 - b1 * l21) * d2 : 0;
        const b3 = lead <= 3 ? (a[rowI + 3] - b0 * l30 - b1 * l31 - b2 * l32) * d3 : 0;
        if (lead <= 0) a[rowI] = b0;
        if (lead <= 1) a[rowI + 1] = b1;
        if (lead <= 2) a[rowI + 2] = b2;
        a[rowI + 3] = b3;
        panel[q] = b0;
        panel[q + 1] = b1;
        panel[q + 2] = b2;
        panel[q + 3] = b3;
      }
      // Update of the trailing triangle, two rows at a time.
      let i = first;
      for (; i < last; i += 2) {
        const q = (i - first) * 4;
        const a0 = panel[q];
        const a1 = panel[q + 1];
        const a2 = panel[q + 2];
        const a3 = panel[q + 3];
        const e0 = panel[q + 4];
        const e1 = panel[q + 5];
        const e2 = panel[q + 6];
        const e3 = panel[q + 7];
        let u = (i + offset) * width - i + band + first;
        let v = u + width - 1;
        let t = 0;
        const end = (i - first + 1) * 4;
        while (t < end) {
          const c0 = panel[t];
          const c1 = panel[t + 1];
          const c2 = panel[t + 2];
          const c3 = panel[t + 3];
          a[u] -= a0 * c0 + a1 * c1 + (a2 * c2 + a3 * c3);
          a[v] -= e0 * c0 + e1 * c1 + (e2 * c2 + e3 * c3);
          t += 4;
          u++;
          v++;
        }
        a[v] -= e0 * e0 + e1 * e1 + (e2 * e2 + e3 * e3);
      }
      if (i === last) {
        const q = (i - first) * 4;
        const a0 = panel[q];
        const a1 = panel[q + 1];
        const a2 = panel[q + 2];
        const a3 = panel[q + 3];
        let u = (i + offset) * width - i + band + first;
        for (let t = 0; t <= q; t += 4)
          a[u++] -= a0 * panel[t] + a1 * panel[t + 1] + (a2 * panel[t + 2] + a3 * panel[t + 3]);
      }
    }
    return true;
  }

  /** Solves A x = b in place after `factorise`. */
  solve(b: Float64Array): void {
    const { n, band, width, a, inverseDiagonal, x, offset } = this;
    for (let i = 0; i < n; i++) x[i + offset] = b[i];
    // L y = b, two rows at a time.
    let i = 0;
    for (; i + 1 < n; i += 2) {
      // Row i covers x[i … i + band − 1] in padded places, row i + 1 one place further.
      let u = (i + offset) * width + 1;
      let v = (i + 1 + offset) * width;
      let k = i + 1;
      let s0 = 0;
      let s1 = 0;
      let t0 = 0;
      let t1 = 0;
      const end = i + band - 1;
      const first = a[u - 1] * x[i];
      for (; k < end; k += 2) {
        const x0 = x[k];
        const x1 = x[k + 1];
        s0 += a[u] * x0;
        s1 += a[u + 1] * x1;
        t0 += a[v] * x0;
        t1 += a[v + 1] * x1;
        u += 2;
        v += 2;
      }
      for (; k < i + band; k++) {
        s0 += a[u++] * x[k];
        t0 += a[v++] * x[k];
      }
      const y = (x[i + offset] - (s0 + s1) - first) * inverseDiagonal[i];
      x[i + offset] = y;
      x[i + 1 + offset] = (x[i + 1 + offset] - (t0 + t1) - a[v] * y) * inverseDiagonal[i + 1];
    }
    if (i < n) {
      const u = (i + offset) * width;
      let s = 0;
      for (let k = 0; k < band; k++) s += a[u + k] * x[i + k];
      x[i + offset] = (x[i + offset] - s) * inverseDiagonal[i];
    }
    // Lᵀ x = y, two rows at a time from the end.
    i = n - 1;
    for (; i > 0; i -= 2) {
      const hi = x[i + offset] * inverseDiagonal[i];
      x[i + offset] = hi;
      let u = (i - 1 + offset) * width;
      let v = (i + offset) * width;
      const lo = (x[i - 1 + offset] - a[v + band - 1] * hi) * inverseDiagonal[i - 1];
      x[i - 1 + offset] = lo;
      let k = i - 1;
      x[k] -= a[u++] * lo;
      k++;
      const end = i + band - 1;
      for (; k + 1 < end; k += 2) {
        x[k] -= a[u] * lo + a[v] * hi;
        x[k + 1] -= a[u + 1] * lo + a[v + 1] * hi;
        u += 2;
        v += 2;
      }
      for (; k < end; k++) x[k] -= a[u++] * lo + a[v++] * hi;
    }
    if (i === 0) x[offset] *= inverseDiagonal[0];
    for (let j = 0; j < n; j++) b[j] = x[j + offset];
  }
}
