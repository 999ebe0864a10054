/** Linear least squares by Householder's reflections. */

/**
 * The coefficients with the least sum of squared residuals [the unit of y over that of the column].
 *
 *     min |A·x − y|², by QR; a column that the others already hold gets 0
 *
 * @param rows of A, each of the same length n ≥ 1
 * @param y one per row; at least n rows
 * Checked: reproduces polynomials; residuals stand at right angles to every column.
 * @example leastSquares([[1, 0], [1, 1], [1, 2]], [1, 3, 5]) // [1, 2]
 * Source: golub-van-loan
 */
export function leastSquares(rows: readonly ArrayLike<number>[], y: ArrayLike<number>): Float64Array {
  const m = rows.length;
  const n = rows[0]?.length ?? 0;
  // Column by column, so that the inner loops run along memory.
  const A = Array.from({ length: n }, (_, c) => Float64Array.from(rows, (row) => row[c]));
  const b = Float64Array.from(y);
  const scale = A.map((column) => Math.sqrt(column.reduce((s, v) => s + v * v, 0)));
  const diagonal = new Float64Array(n);
  for (let c = 0; c < n; c++) {
    const v = A[c];
    let norm = 0;
    for (let i = c; i < m; i++) norm += v[i] * v[i];
    norm = Math.sqrt(norm);
    if (!(norm > 1e-11 * scale[c])) continue;
    const alpha = v[c] > 0 ? -norm : norm;
    diagonal[c] = alpha;
    v[c] -= alpha;
    let length = 0;
    for (let i = c; i < m; i++) length += v[i] * v[i];
    const reflect = (w: Float64Array) => {
      let dot = 0;
      for (let i = c; i < m; i++) dot += v[i] * w[i];
      const f = (2 * dot) / length;
      for (let i = c; i < m; i++) w[i] -= f * v[i];
    };
    for (let k = c + 1; k < n; k++) reflect(A[k]);
    reflect(b);
  }
  const x = new Float64Array(n);
  for (let c = n - 1; c >= 0; c--) {
    if (diagonal[c] === 0) continue;
    let sum = b[c];
    for (let k = c + 1; k < n; k++) sum -= A[k][c] * x[k];
    x[c] = sum / diagonal[c];
  }
  return x;
}
