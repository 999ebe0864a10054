/** Bessel functions of order 0 and 1 and the scaled complementary error function, to about eleven figures. */

const crossover = 14;
const euler = 0.5772156649015329;

/** J and Y of order n (0 or 1) by Hankel's asymptotic series, x > 14. */
function hankel(n: 0 | 1, x: number): readonly [j: number, y: number] {
  const mu = 4 * n * n;
  let term = 1;
  let p = 1;
  let q = 0;
  for (let k = 1; k < 60; k++) {
    const next = (term * (mu - (2 * k - 1) ** 2)) / (k * 8 * x);
    // The series diverges in the end: stop at its least term.
    if (Math.abs(next) >= Math.abs(term) || next === 0) break;
    term = next;
    const sign = k % 4 < 2 ? 1 : -1;
    if (k % 2 === 1) q += sign * term;
    else p += (k % 4 === 0 ? 1 : -1) * term;
    if (Math.abs(term) < 1e-18) break;
  }
  const chi = x - (n / 2 + 1 / 4) * Math.PI;
  const f = Math.sqrt(2 / (Math.PI * x));
  const c = Math.cos(chi);
  const s = Math.sin(chi);
  return [f * (p * c - q * s), f * (p * s + q * c)];
}

function series(n: 0 | 1, x: number): readonly [j: number, y: number] {
  const z = (x * x) / 4;
  let term = n === 0 ? 1 : x / 2;
  let j = term;
  // Digamma at k + 1 and n + k + 1, without Euler's constant.
  let psi1 = 0;
  let psi2 = n === 0 ? 0 : 1;
  let y = term * (psi1 + psi2);
  for (let k = 1; k < 100; k++) {
    term *= -z / (k * (k + n));
    psi1 += 1 / k;
    psi2 += 1 / (k + n);
    j += term;
    y += term * (psi1 + psi2);
    if (Math.abs(term) * (1 + psi1) < 1e-20) break;
  }
  const log = (2 / Math.PI) * (Math.log(x / 2) + euler) * j;
  const head = n === 0 ? 0 : 2 / (Math.PI * x);
  return [j, log - head - y / Math.PI];
}

const both = (n: 0 | 1, x: number) => (x > crossover ? hankel(n, x) : series(n, x));

export const besselJ0 = (x: number): number => (x === 0 ? 1 : both(0, Math.abs(x))[0]);
export const besselJ1 = (x: number): number => (x === 0 ? 0 : Math.sign(x) * both(1, Math.abs(x))[0]);
/** x > 0. */
export const besselY0 = (x: number): number => both(0, x)[1];
export const besselY1 = (x: number): number => both(1, x)[1];

/** The n-th positive zero (n ≥ 1) of J0 or J1, by Newton's method from McMahon's estimate. */
export function besselZero(order: 0 | 1, n: number): number {
  const beta = (n + order / 2 - 1 / 4) * Math.PI;
  let x = beta - (4 * order * order - 1) / (8 * beta);
  for (let i = 0; i < 20; i++) {
    const j0 = besselJ0(x);
    const j1 = besselJ1(x);
    const dx = order === 0 ? j0 / j1 : -j1 / (j0 - j1 / x);
    x += dx;
    if (Math.abs(dx) < 1e-13 * x) break;
  }
  return x;
}

/** exp(x²)·erfc(x), x ≥ 0. */
export function erfcx(x: number): number {
  if (x > 2) {
    // Continued fraction, from the tail.
    let f = 0;
    for (let k = 60; k >= 1; k--) f = k / 2 / (x + f);
    return 1 / (Math.sqrt(Math.PI) * (x + f));
  }
  let term = x;
  let sum = x;
  for (let k = 1; k < 100; k++) {
    term *= (2 * x * x) / (2 * k + 1);
    sum += term;
    if (term < 1e-18 * sum) break;
  }
  // erf(x) = 2/√π · e^(−x²) · Σ
  return Math.exp(x * x) - (2 / Math.sqrt(Math.PI)) * sum;
}
