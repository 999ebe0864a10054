/**
 * Solves a tridiagonal system in place by elimination without pivoting, which is stable where the diagonal dominates.
 * Row i is lower[i]·x[i−1] + diagonal[i]·x[i] + upper[i]·x[i+1] = x[i] before; `scratch` is as long as the system.
 */
export function solveTridiagonal(
  lower: Float64Array,
  diagonal: Float64Array,
  upper: Float64Array,
  x: Float64Array,
  scratch: Float64Array,
): void {
  const n = x.length;
  let pivot = diagonal[0];
  x[0] /= pivot;
  for (let i = 1; i < n; i++) {
    scratch[i] = upper[i - 1] / pivot;
    pivot = diagonal[i] - lower[i] * scratch[i];
    x[i] = (x[i] - lower[i] * x[i - 1]) / pivot;
  }
  for (let i = n - 2; i >= 0; i--) x[i] -= scratch[i + 1] * x[i + 1];
}
