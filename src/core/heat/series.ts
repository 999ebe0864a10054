/**
 * The oracle: exact solutions of the simple shapes, from their infinite series, against which the engine is held.
 * θ = (T − T_medium)/(T_start − T_medium); Fo = α·t/L²; Bi = h·L/k; L the half thickness or the radius.
 */
import { OutOfRange } from '../errors.ts';
import { bracketedRoot } from '../numerics/roots.ts';
import { besselJ0, besselJ1, besselZero, erfcx } from '../numerics/special.ts';

export type Simple = 'slab' | 'cylinder' | 'sphere';

const mostTerms = 400;

function checkBiot(Bi: number): void {
  if (!(Bi >= 1e-4 && Bi <= 1e6)) throw new OutOfRange('Bi', String(Bi), '0.0001 to 1 000 000');
}

const condition = {
  slab: (Bi: number) => (z: number) => z * Math.sin(z) - Bi * Math.cos(z),
  cylinder: (Bi: number) => (z: number) => z * besselJ1(z) - Bi * besselJ0(z),
  sphere: (Bi: number) => (z: number) => (1 - Bi) * Math.sin(z) - z * Math.cos(z),
} as const;

function bracket(shape: Simple, n: number): readonly [number, number] {
  if (shape === 'slab') return [n * Math.PI, (n + 0.5) * Math.PI];
  if (shape === 'sphere') return [n === 0 ? 1e-9 : n * Math.PI, (n + 1) * Math.PI];
  return [n === 0 ? 0 : besselZero(1, n), besselZero(0, n + 1)];
}

/**
 * Eigenvalue of a simple shape [-].
 *
 *     slab ζ·tan ζ = Bi · cylinder ζ·J1(ζ) = Bi·J0(ζ) · sphere 1 − ζ·cot ζ = Bi
 *
 * @param shape slab, cylinder or sphere
 * @param Bi Biot number, 0.0001 to 1 000 000
 * @param n which, from 0
 * Assumes constant properties. Checked against the published tables of first eigenvalues, six figures.
 * @example eigenvalue('cylinder', 1, 0) // 1.255784
 * Source: incropera-dewitt
 */
export function eigenvalue(shape: Simple, Bi: number, n: number): number {
  checkBiot(Bi);
  const [a, b] = bracket(shape, n);
  return bracketedRoot(condition[shape](Bi), a, b, 1e-14).x;
}

/**
 * Coefficient of a term of the series at the centre [-].
 *
 *     slab 4·sin ζ/(2ζ + sin 2ζ) · cylinder 2·J1/[ζ(J0² + J1²)] · sphere 4(sin ζ − ζ·cos ζ)/(2ζ − sin 2ζ)
 *
 * @param shape slab, cylinder or sphere
 * @param z its eigenvalue
 * Checked against the published one-term tables, six figures.
 * @example coefficient('sphere', eigenvalue('sphere', 10, 0)) // 1.924909
 * Source: incropera-dewitt
 */
export function coefficient(shape: Simple, z: number): number {
  if (shape === 'slab') return (4 * Math.sin(z)) / (2 * z + Math.sin(2 * z));
  if (shape === 'sphere') return (4 * (Math.sin(z) - z * Math.cos(z))) / (2 * z - Math.sin(2 * z));
  const j0 = besselJ0(z);
  const j1 = besselJ1(z);
  return (2 * j1) / (z * (j0 * j0 + j1 * j1));
}

function mode(shape: Simple, z: number, x: number): number {
  if (shape === 'slab') return Math.cos(z * x);
  if (shape === 'cylinder') return besselJ0(z * x);
  return x === 0 ? 1 : Math.sin(z * x) / (z * x);
}

function modeMean(shape: Simple, z: number): number {
  if (shape === 'slab') return Math.sin(z) / z;
  if (shape === 'cylinder') return (2 * besselJ1(z)) / z;
  return (3 * (Math.sin(z) - z * Math.cos(z))) / z ** 3;
}

/** Eigenvalues and coefficients once, for many questions about one Biot number. */
export interface Series {
  readonly shape: Simple;
  readonly z: readonly number[];
  readonly c: readonly number[];
}

const known = new Map<string, Series>();

function seriesOf(shape: Simple, Bi: number): Series {
  const key = `${shape} ${Bi}`;
  let found = known.get(key);
  if (found === undefined) {
    const z = Array.from({ length: mostTerms }, (_, n) => eigenvalue(shape, Bi, n));
    found = { shape, z, c: z.map((e) => coefficient(shape, e)) };
    known.set(key, found);
  }
  return found;
}

function sum(s: Series, Fo: number, of: (z: number) => number): number {
  let total = 0;
  for (let n = 0; n < s.z.length; n++) {
    const decay = s.z[n] * s.z[n] * Fo;
    if (decay > 60 && n > 0) break;
    total += s.c[n] * of(s.z[n]) * Math.exp(-decay);
  }
  return total;
}

/**
 * Temperature in a simple shape [-].
 *
 *     θ = Σ C_n·mode_n(x)·exp(−ζ_n²·Fo), at most 400 terms
 *
 * @param shape slab, cylinder or sphere
 * @param Bi Biot number, 0.0001 to 1 000 000
 * @param Fo Fourier number, above 1e-5
 * @param x place, 0 at the middle to 1 at the surface
 * Assumes constant properties, uniform start and a constant medium. Checked against published values.
 * @example theta('cylinder', 5, 0.2, 0) // 0.671418
 * Source: carslaw-jaeger-1959
 */
export function theta(shape: Simple, Bi: number, Fo: number, x: number): number {
  return sum(seriesOf(shape, Bi), Fo, (z) => mode(shape, z, x));
}

/**
 * Mean temperature over the volume of a simple shape [-].
 *
 *     θ_mean = Σ C_n·mean(mode_n)·exp(−ζ_n²·Fo)
 *
 * @param shape slab, cylinder or sphere
 * @param Bi Biot number, 0.0001 to 1 000 000
 * @param Fo Fourier number, above 1e-5
 * @example thetaMean('cylinder', 1, 0.5) // 0.447384
 * Source: carslaw-jaeger-1959
 */
export function thetaMean(shape: Simple, Bi: number, Fo: number): number {
  return sum(seriesOf(shape, Bi), Fo, (z) => modeMean(shape, z));
}

/**
 * Temperature in a finite cylinder, all its surface exposed [-].
 *
 *     θ = θ_cylinder(r, h·R/k, α·t/R²)·θ_slab(x, h·H/k, α·t/H²)
 *
 * @param R radius, H half length [m]
 * @param h surface coefficient [W/(m² K)], k conductivity [W/(m K)], alpha diffusivity [m²/s]
 * @param t time [s], r distance from the axis, x from the middle [m]
 * Assumes constant properties. Checked at long cylinders. Source: carslaw-jaeger-1959
 * @example finiteCylinder(0.02, 0.06, 1000, 0.48, 1.3061224e-7, 900, 0, 0) // 0.316283
 */
export function finiteCylinder(
  R: number,
  H: number,
  h: number,
  k: number,
  alpha: number,
  t: number,
  r: number,
  x: number,
): number {
  const round = theta('cylinder', (h * R) / k, (alpha * t) / R ** 2, r / R);
  return round * theta('slab', (h * H) / k, (alpha * t) / H ** 2, x / H);
}

/**
 * Temperature in a bar or a brick, all its surface exposed [-].
 *
 *     θ = Π θ_slab(x_i, h·L_i/k, α·t/L_i²)
 *
 * @param halves half thicknesses, two or three [m]
 * @param places from the middle [m], as many
 * @param h surface coefficient [W/(m² K)], k conductivity [W/(m K)], alpha diffusivity [m²/s], t time [s]
 * Assumes constant properties. Checked against a published ham of 102 × 165 × 279 mm. Source: carslaw-jaeger-1959
 * @example brick([0.05], [0], 10, 0.5, 1e-7, 12500) // 0.772526
 */
export function brick(
  halves: readonly number[],
  places: readonly number[],
  h: number,
  k: number,
  alpha: number,
  t: number,
): number {
  return halves.reduce(
    (product, L, i) => product * theta('slab', (h * L) / k, (alpha * t) / L ** 2, places[i] / L),
    1,
  );
}

/**
 * Temperature in a body so thick that its far side does not matter yet [-], 0 as it was, 1 as the medium.
 *
 *     1 − θ = erfc η − exp(h·x/k + h²αt/k²)·erfc(η + h√(αt)/k),  η = x/(2√(αt))
 *
 * @param x depth [m], t time [s], h surface coefficient [W/(m² K)], k conductivity [W/(m K)], alpha diffusivity [m²/s]
 * Assumes constant properties. Checked against values worked out from the published equation.
 * @example 5 + 175 * semiInfinite(0.001, 10, 400, 0.45, 1.3e-7) // 51.0588
 * Source: incropera-dewitt
 */
export function semiInfinite(x: number, t: number, h: number, k: number, alpha: number): number {
  const eta = x / (2 * Math.sqrt(alpha * t));
  const s = (h * Math.sqrt(alpha * t)) / k;
  // Both terms share exp(−η²): exp(hx/k + s²)·erfc(η + s) = exp(−η²)·erfcx(η + s).
  return Math.exp(-eta * eta) * (erfcx(eta) - erfcx(eta + s));
}
