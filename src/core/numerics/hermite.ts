/** The cubic through two values and two slopes. `s` runs from 0 to 1 over a step of length `h`; slopes are per unit of time. */
export function hermite(s: number, h: number, y0: number, y1: number, d0: number, d1: number): number {
  const r = 1 - s;
  return y0 * (1 + 2 * s) * r * r + y1 * s * s * (3 - 2 * s) + h * s * r * (d0 * r - d1 * s);
}

/** Its integral over the whole step. */
export function hermiteIntegral(h: number, y0: number, y1: number, d0: number, d1: number): number {
  return (h / 2) * (y0 + y1) + ((h * h) / 12) * (d0 - d1);
}

/** Weights of y0, y1, d0, d1 at `s`, for evaluating many cubics over one step. */
export function hermiteWeights(s: number, h: number): readonly [number, number, number, number] {
  const r = 1 - s;
  return [(1 + 2 * s) * r * r, s * s * (3 - 2 * s), h * s * r * r, -h * s * s * r];
}
