/**
 * Symmetric positive definite systems whose entries lie within `band` places of the diagonal, factorised directly.
 * The lower triangle is stored by rows: row i holds columns i − band … i. `band` rows of zeros stand before the first,
 * so that no loop has to look for the edge of the matrix.
 *
 * All matrices share one workspace of fixed size, because a compiler that knows an array to be always the same one halves the
 * time of the inner loops (measured). So only one matrix is alive at a time: from `clear` over `factorise` to the last `solve`. Whoever
 * solves after another has begun is told so. The pages of the workspace that are never touched cost no memory.
 */
const cells = new Float64Array(2 ** 22);
const longest = 2 ** 17;
const x = new Float64Array(longest);
const inverseDiagonal = new Float64Array(longest);
const panel = new Float64Array(2 ** 14);
let owner: BandCholesky | undefined;

export class BandCholesky {
  readonly n: number;
  readonly band: number;
  /** Entries a row. */
  readonly width: number;
  /** Lower triangle; entry (i, j) at `at(i, j)`. Filled by the caller after `clear`, replaced by its Cholesky factor by `factorise`. */
  readonly a = cells;
  private readonly rows: number;
  private readonly offset: number;

  constructor(n: number, band: number) {
    this.n = n;
    // A multiple of four columns at a time is eliminated; a wider band of zeros costs less than a ragged edge.
    this.band = Math.max(4, band);
    this.width = this.band + 1;
    this.offset = this.band;
    this.rows = n + this.band + 4;
    if (this.rows * this.width > cells.length || this.rows > longest || 4 * this.band + 16 > panel.length)
      throw new RangeError(`a system of ${n} unknowns with a band of ${band} is too large: coarsen the mesh`);
  }

  /** Index in `a` of entry (i, j), i − band ≤ j ≤ i. */
  at(i: number, j: number): number {
    return (i + this.offset) * this.width + j - i + this.band;
  }

  /** Takes the workspace and empties it. */
  clear(): void {
    owner = this;
    cells.fill(0, 0, this.rows * this.width);
    x.fill(0, 0, this.band);
  }

  private holds(): void {
    if (owner !== this) throw new Error('another system has taken the workspace since this one was filled');
  }

  /**
   * A = L Lᵀ in place, four columns at a time: the block on the diagonal, the panel below it, then the update of what
   * the panel touches. Returns false when the matrix is not positive definite (the factor is then unusable).
   */
  factorise(): boolean {
    this.holds();
    const { n, band, width, offset } = this;
    const a = cells;
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
        const u = (i + offset) * width - i + band + first;
        const v = u + width - 1;
        const count = i - first + 1;
        // Arithmetic in 32-bit integers (| 0) spares the check for overflow at every entry.
        for (let j = 0; j < count; j = (j + 1) | 0) {
          const t = (4 * j) | 0;
          const c0 = panel[t];
          const c1 = panel[(t + 1) | 0];
          const c2 = panel[(t + 2) | 0];
          const c3 = panel[(t + 3) | 0];
          a[(u + j) | 0] -= a0 * c0 + a1 * c1 + (a2 * c2 + a3 * c3);
          a[(v + j) | 0] -= e0 * c0 + e1 * c1 + (e2 * c2 + e3 * c3);
        }
        a[v + count] -= e0 * e0 + e1 * e1 + (e2 * e2 + e3 * e3);
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
    this.holds();
    const { n, offset } = this;
    for (let i = 0; i < n; i++) x[i + offset] = b[i];
    const whole = n - (n % 4);
    for (let i = 0; i < whole; i += 4) this.forwardFour(i);
    for (let i = whole; i < n; i++) this.forwardOne(i);
    for (let i = n - 1; i >= whole; i--) this.backwardOne(i);
    for (let i = whole - 4; i >= 0; i -= 4) this.backwardFour(i);
    for (let i = 0; i < n; i++) b[i] = x[i + offset];
  }

  /** L y = b for rows i … i + 3: one pass over what they share, then the small triangle. Column c stands at x[c + band]. */
  private forwardFour(i: number): void {
    const { band, width } = this;
    const a = cells;
    // Where column i − band of each row would stand.
    const p = (i + band) * width;
    const q = p + width - 1;
    const r = q + width - 1;
    const s = r + width - 1;
    // The first columns of the upper rows lie before those of the lower.
    let f = a[p] * x[i] + a[p + 1] * x[i + 1] + a[p + 2] * x[i + 2];
    let g = a[q + 1] * x[i + 1] + a[q + 2] * x[i + 2];
    let h = a[r + 2] * x[i + 2];
    let e = 0;
    for (let k = 3; k < band; k = (k + 1) | 0) {
      const v = x[(i + k) | 0];
      f += a[(p + k) | 0] * v;
      g += a[(q + k) | 0] * v;
      h += a[(r + k) | 0] * v;
      e += a[(s + k) | 0] * v;
    }
    const end = i + band;
    const y0 = (x[end] - f) * inverseDiagonal[i];
    const y1 = (x[end + 1] - g - a[q + band] * y0) * inverseDiagonal[i + 1];
    const y2 = (x[end + 2] - h - a[r + band] * y0 - a[r + band + 1] * y1) * inverseDiagonal[i + 2];
    const t = e + a[s + band] * y0 + a[s + band + 1] * y1 + a[s + band + 2] * y2;
    x[end] = y0;
    x[end + 1] = y1;
    x[end + 2] = y2;
    x[end + 3] = (x[end + 3] - t) * inverseDiagonal[i + 3];
  }

  private forwardOne(i: number): void {
    const { band, width } = this;
    const a = cells;
    const p = (i + band) * width;
    let f = 0;
    for (let k = 0; k < band; k++) f += a[p + k] * x[i + k];
    x[i + band] = (x[i + band] - f) * inverseDiagonal[i];
  }

  private backwardOne(i: number): void {
    const { band, width } = this;
    const a = cells;
    const p = (i + band) * width;
    const y = x[i + band] * inverseDiagonal[i];
    x[i + band] = y;
    for (let k = 0; k < band; k++) x[i + k] -= a[p + k] * y;
  }

  /** Lᵀ x = y for rows i … i + 3: the small triangle from its end, then what they leave for the rows above. */
  private backwardFour(i: number): void {
    const { band, width } = this;
    const a = cells;
    const p = (i + band) * width;
    const q = p + width - 1;
    const r = q + width - 1;
    const s = r + width - 1;
    const at = i + band;
    const y3 = x[at + 3] * inverseDiagonal[i + 3];
    const y2 = (x[at + 2] - a[s + band + 2] * y3) * inverseDiagonal[i + 2];
    const y1 = (x[at + 1] - a[s + band + 1] * y3 - a[r + band + 1] * y2) * inverseDiagonal[i + 1];
    const y0 = (x[at] - a[s + band] * y3 - a[r + band] * y2 - a[q + band] * y1) * inverseDiagonal[i];
    x[at] = y0;
    x[at + 1] = y1;
    x[at + 2] = y2;
    x[at + 3] = y3;
    x[i] -= a[p] * y0;
    x[i + 1] -= a[p + 1] * y0 + a[q + 1] * y1;
    x[i + 2] -= a[p + 2] * y0 + a[q + 2] * y1 + a[r + 2] * y2;
    for (let k = 3; k < band; k = (k + 1) | 0)
      x[(i + k) | 0] -=
        a[(p + k) | 0] * y0 + a[(q + k) | 0] * y1 + (a[(r + k) | 0] * y2 + a[(s + k) | 0] * y3);
  }
}
