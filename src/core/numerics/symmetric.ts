/** Eigenvalues and eigenvectors of a small symmetric matrix by Jacobi rotations. */

export interface Eigen {
  /** Rising. */
  readonly values: readonly number[];
  /** Unit vectors; `vectors[k]` belongs to `values[k]`. */
  readonly vectors: readonly (readonly number[])[];
}

/** Sweeps until what stands off the diagonal is nothing beside it; a handful of parameters takes five or six. */
export function symmetricEigen(matrix: readonly (readonly number[])[]): Eigen {
  const n = matrix.length;
  const a = matrix.map((row) => [...row]);
  const v: number[][] = a.map((_, i) => a.map((__, j) => (i === j ? 1 : 0)));
  for (let sweep = 0; sweep < 60; sweep++) {
    let off = 0;
    let on = 0;
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++) {
        if (i === j) on += a[i][i] ** 2;
        else off += a[i][j] ** 2;
      }
    if (off <= 1e-30 * on) break;
    for (let p = 0; p < n; p++)
      for (let q = p + 1; q < n; q++) {
        if (a[p][q] === 0) continue;
        const tau = (a[q][q] - a[p][p]) / (2 * a[p][q]);
        const t = (tau >= 0 ? 1 : -1) / (Math.abs(tau) + Math.hypot(1, tau));
        const c = 1 / Math.hypot(1, t);
        const s = t * c;
        for (let k = 0; k < n; k++) {
          const x = a[k][p];
          const y = a[k][q];
          a[k][p] = c * x - s * y;
          a[k][q] = s * x + c * y;
        }
        for (let k = 0; k < n; k++) {
          const x = a[p][k];
          const y = a[q][k];
          a[p][k] = c * x - s * y;
          a[q][k] = s * x + c * y;
          const w = v[k][p];
          const z = v[k][q];
          v[k][p] = c * w - s * z;
          v[k][q] = s * w + c * z;
        }
      }
  }
  const order = a.map((_, i) => i).sort((i, j) => a[i][i] - a[j][j]);
  return { values: order.map((i) => a[i][i]), vectors: order.map((i) => v.map((row) => row[i])) };
}
