/** A root that has been bracketed. */
export interface Root {
  readonly x: number;
  readonly status: 'converged' | 'not bracketed' | 'not converged';
  readonly iterations: number;
}

/**
 * Root of f between a and b where f changes sign, by bisection guarded regula falsi (Illinois). Never leaves the bracket.
 * @param tolerance width of the final bracket
 */
export function bracketedRoot(
  f: (x: number) => number,
  a: number,
  b: number,
  tolerance: number,
  most = 200,
): Root {
  let lo = a;
  let hi = b;
  let flo = f(lo);
  let fhi = f(hi);
  if (flo === 0) return { x: lo, status: 'converged', iterations: 0 };
  if (fhi === 0) return { x: hi, status: 'converged', iterations: 0 };
  if (!(flo * fhi < 0)) return { x: Number.NaN, status: 'not bracketed', iterations: 0 };
  let side = 0;
  for (let i = 1; i <= most; i++) {
    // Every third step halves the bracket, so that it shrinks whatever the shape of f.
    let x = i % 3 === 0 ? (lo + hi) / 2 : (lo * fhi - hi * flo) / (fhi - flo);
    if (!(x > Math.min(lo, hi) && x < Math.max(lo, hi))) x = (lo + hi) / 2;
    const fx = f(x);
    if (fx === 0 || Math.abs(hi - lo) <= tolerance) return { x, status: 'converged', iterations: i };
    if (fx * fhi < 0) {
      lo = hi;
      flo = fhi;
      side = 0;
    } else {
      if (side === 1) flo /= 2;
      side = 1;
    }
    hi = x;
    fhi = fx;
  }
  return { x: hi, status: 'not converged', iterations: most };
}
