/** How much a log says: the scatter of its residuals, and how many independent readings they are worth. */

export interface Noise {
  /** Standard deviation of a reading about the model [K]. */
  readonly sd: number;
  /** Correlation of a residual with the next; 0 where it is negative. */
  readonly autocorrelation: number;
  /** How many independent readings the log is worth. */
  readonly effective: number;
  /**
   * What a reading's variance [K²] comes to in a fitted value: widened for drift, and with the engine's own error, which no
   * number of readings averages out.
   */
  readonly variance: number;
}

/**
 * What the engine itself may be off, all along a log [K]: on a line of points, and on a mesh in two directions. Below a few of
 * it the residuals are the engine's and not the probe's.
 */
export const ownError = { line: 0.005, mesh: 0.01 } as const;

/**
 * Scatter of residuals [K] and the independent readings they are worth.
 *
 *     s² = Σe²/(n − p);  ρ = Σe_i·e_{i+1}/Σe²;  n_eff = n·(1 − ρ)/(1 + ρ);  variance = s²·n/n_eff + n·own²
 *
 * @param residuals measured − model [K], in order of time
 * @param fitted how many values were fitted
 * @param own what the engine itself may be off, all along the log [K]
 * @param given standard deviation of a reading where it is known [K]
 * Assumes residuals that forget at a steady rate (AR 1), read at even times, and a model that changes slowly beside them.
 * Checked by a test: coverage of the intervals on made-up logs with white and with drifting noise.
 * @example noiseOf([0.1, -0.1, 0.1, -0.1, 0.1, -0.1], 1, 0.005).effective // → 6
 * Source: bayley-hammersley-1946
 */
export function noiseOf(residuals: ArrayLike<number>, fitted: number, own: number, given?: number): Noise {
  const n = residuals.length;
  let square = 0;
  let next = 0;
  for (let i = 0; i < n; i++) {
    square += residuals[i] ** 2;
    if (i + 1 < n) next += residuals[i] * residuals[i + 1];
  }
  const rho = square > 0 ? Math.min(0.99, Math.max(0, next / square)) : 0;
  const autocorrelation = square / n < (4 * own) ** 2 ? 0 : rho;
  const widened = (1 + autocorrelation) / (1 - autocorrelation);
  const sd = given ?? Math.sqrt(square / Math.max(1, n - fitted));
  return {
    sd,
    autocorrelation,
    effective: n / widened,
    variance: sd ** 2 * widened + n * own ** 2,
  };
}
