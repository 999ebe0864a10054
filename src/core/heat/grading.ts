/** Where mesh lines stand: close together where the temperature bends, far apart where it does not. */

/** A place from which the spacing grows: `size` [m] at `at` [m], growing by `growth` metres a metre (its own, or that of all). */
export interface Crowding {
  readonly at: number;
  readonly size: number;
  readonly growth?: number;
}

/**
 * Mesh lines through every fixed place, as distances [m].
 *
 *     spacing(x) = min(most, min over crowdings of size + growth·|x − at|); lines at equal ∫ dx/spacing between fixed places
 *
 * @param fixed places that must be lines, rising, at least two [m]
 * @param crowdings where lines crowd
 * @param growth how fast the spacing grows away from them [m/m]
 * @param most largest spacing [m]
 * @param refine multiplies the number of intervals between any two fixed places
 * @param least fewest intervals between two fixed places before refining
 * Checked by a test: fixed places are lines, lines rise, refining by two keeps every second line near its place.
 * @example gradedLines([0, 1], [], 0.1, 0.25, 1, 1).length // 5
 * Source: own-computation
 */
export function gradedLines(
  fixed: readonly number[],
  crowdings: readonly Crowding[],
  growth: number,
  most: number,
  refine: number,
  least: number,
): number[] {
  const spacing = (x: number) => {
    let s = most;
    for (const c of crowdings) s = Math.min(s, c.size + (c.growth ?? growth) * Math.abs(x - c.at));
    return s;
  };
  const lines = [fixed[0]];
  const finest = crowdings.reduce((s, c) => Math.min(s, c.size), most);
  for (let f = 0; f + 1 < fixed.length; f++) {
    const a = fixed[f];
    const length = fixed[f + 1] - a;
    const samples = Math.min(2048, Math.max(16, Math.ceil((2 * length) / finest)));
    const cumulative = new Float64Array(samples + 1);
    for (let i = 0; i < samples; i++)
      cumulative[i + 1] = cumulative[i] + length / samples / spacing(a + (length * (i + 0.5)) / samples);
    const total = cumulative[samples];
    const n = Math.max(1, Math.round(Math.max(least, Math.ceil(total - 0.2)) * refine));
    let i = 0;
    for (let k = 1; k < n; k++) {
      const wanted = (total * k) / n;
      while (cumulative[i + 1] < wanted) i++;
      const within = (wanted - cumulative[i]) / (cumulative[i + 1] - cumulative[i]);
      lines.push(a + (length * (i + within)) / samples);
    }
    lines.push(fixed[f + 1]);
  }
  return lines;
}
