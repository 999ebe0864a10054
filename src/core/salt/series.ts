/** Salt into simple shapes as exact series: the oracle that the finite volumes are held to. */
import { OutOfRange } from '../errors.ts';
import { bracketedRoot } from '../numerics/roots.ts';
import { besselJ0, besselJ1, besselZero, erfcx } from '../numerics/special.ts';

export type SaltShape = 'slab' | 'cylinder' | 'sphere';

const most = 2000;

function checkFo(Fo: number): void {
  if (!(Fo >= 1e-5))
    throw new OutOfRange('Fo', String(Fo), 'at least 1e-5: earlier the series needs too many terms');
}

/** Σ of terms that fall with the square of their eigenvalue. */
function sum(Fo: number, term: (n: number) => { q: number; weight: number }): number {
  let total = 0;
  for (let n = 1; n <= most; n++) {
    const { q, weight } = term(n);
    const decay = Math.exp(-q * q * Fo);
    total += weight * decay;
    if (decay < 1e-17) break;
  }
  return total;
}

/**
 * Share of its final salt that a piece has taken up from a bath whose strength stays as it is [-].
 * Equation: M_t/M_∞ = 1 − Σ w_n exp(−q_n² Fo), Fo = D t/L²; slab q = (n − ½)π, w = 2/q²; cylinder J0(q) = 0, w = 4/q²; sphere q = nπ, w = 6/q².
 * Parameters: Fo ≥ 1e-5 with L the radius, the half thickness (both faces) or the thickness (one face).
 * Assumptions: uniform at the start, constant diffusivity, no resistance at the surface.
 * Checked: against values worked out beforehand for slab and cylinder, Fo 0.001 to 2.
 * @example uptakeInEndlessBath('cylinder', 0.01) // → 0.215474
 * @example uptakeInEndlessBath('slab', 0.1) // → 0.356823
 * Source: crank-1975
 */
export function uptakeInEndlessBath(shape: SaltShape, Fo: number): number {
  checkFo(Fo);
  return (
    1 -
    sum(Fo, (n) => {
      const q = shape === 'slab' ? (n - 0.5) * Math.PI : shape === 'sphere' ? n * Math.PI : besselZero(0, n);
      return { q, weight: (shape === 'slab' ? 2 : shape === 'sphere' ? 6 : 4) / (q * q) };
    })
  );
}

/** The n-th root q of the limited bath's condition: slab tan q = −αq, cylinder αq J0 + 2 J1 = 0, sphere tan q = 3q/(3 + αq²). */
function limitedRoot(shape: SaltShape, alpha: number, n: number): number {
  const tolerance = 1e-13 * n;
  if (shape === 'slab')
    return bracketedRoot(
      (q) => Math.sin(q) + alpha * q * Math.cos(q),
      (n - 0.5) * Math.PI,
      n * Math.PI,
      tolerance,
    ).x;
  if (shape === 'sphere')
    return bracketedRoot(
      (q) => (3 + alpha * q * q) * Math.sin(q) - 3 * q * Math.cos(q),
      n * Math.PI,
      (n + 0.5) * Math.PI,
      tolerance,
    ).x;
  return bracketedRoot(
    (q) => alpha * q * besselJ0(q) + 2 * besselJ1(q),
    besselZero(0, n),
    besselZero(1, n),
    tolerance,
  ).x;
}

/**
 * Share of its final salt that a piece has taken up from a bath that weakens as it gives salt [-].
 * Equation: M_t/M_∞ = 1 − Σ w_n exp(−q_n² Fo); slab w = 2α(1+α)/(1+α+α²q²), cylinder 4α(1+α)/(4+4α+α²q²), sphere 6α(1+α)/(9+9α+α²q²).
 * Parameters: alpha > 0, water of the bath over water of the piece; Fo ≥ 1e-5.
 * Assumptions: as for the endless bath, and a well stirred bath.
 * Checked: against values worked out beforehand for α = 1 and 5, and against the endless bath for a large α.
 * @example uptakeInLimitedBath('cylinder', 1, 0.1) // → 0.793010
 * @example uptakeInLimitedBath('slab', 5, 0.1) // → 0.405284
 * Source: crank-1975
 */
export function uptakeInLimitedBath(shape: SaltShape, alpha: number, Fo: number): number {
  checkFo(Fo);
  if (!(alpha > 0)) throw new OutOfRange('alpha', String(alpha), 'more than 0');
  const [a, b] = { slab: [2, 1], cylinder: [4, 4], sphere: [6, 9] }[shape] as [number, number];
  return (
    1 -
    sum(Fo, (n) => {
      const q = limitedRoot(shape, alpha, n);
      return { q, weight: (a * alpha * (1 + alpha)) / (b + b * alpha + (alpha * q) ** 2) };
    })
  );
}

/**
 * How far the middle of a piece has come towards a bath whose strength stays as it is, 0 at the start and 1 at the end [-].
 * Equation: 1 − Σ w_n exp(−q_n² Fo); slab w = −2(−1)ⁿ/q, cylinder w = 2/(q J1(q)), sphere w = −2(−1)ⁿ.
 * Parameters: Fo ≥ 1e-5. Assumptions: as for the uptake.
 * Checked: against a value worked out beforehand for the cylinder at Fo 0.1728.
 * @example middleInEndlessBath('cylinder', 0.1728) // → 0.415774
 * Source: crank-1975
 */
export function middleInEndlessBath(shape: SaltShape, Fo: number): number {
  checkFo(Fo);
  return (
    1 -
    sum(Fo, (n) => {
      const sign = n % 2 === 1 ? 1 : -1;
      if (shape === 'slab') return { q: (n - 0.5) * Math.PI, weight: (2 * sign) / ((n - 0.5) * Math.PI) };
      if (shape === 'sphere') return { q: n * Math.PI, weight: 2 * sign };
      const q = besselZero(0, n);
      return { q, weight: 2 / (q * besselJ1(q)) };
    })
  );
}

/**
 * How far a depth below a flat surface has come towards the bath while salt has not yet met the far side [-].
 * Equation: erfc(x/(2√(D t))).
 * Parameters: depth [m] ≥ 0, diffusivity [m²/s] > 0, time [s] > 0. Assumptions: a piece without end, an endless bath.
 * Checked: erfc(1) = 0.157299.
 * @example earlyDepth(0.002, 1e-10, 10000) // → 0.157299
 * Source: crank-1975
 */
export function earlyDepth(depth: number, diffusivity: number, time: number): number {
  const x = depth / (2 * Math.sqrt(diffusivity * time));
  return erfcx(x) * Math.exp(-x * x);
}
