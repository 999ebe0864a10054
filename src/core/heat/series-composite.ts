/** Exact solutions for a cylinder that is moved from one medium to another, and for one inside a skin. */
import { bracketedRoot } from '../numerics/roots.ts';
import { besselJ0, besselJ1, besselY0, besselY1 } from '../numerics/special.ts';
import { coefficient, eigenvalue } from './series.ts';
import type { ConstantProperties } from './types.ts';

export interface ExactStage {
  /** Length [s], medium [°C], surface coefficient [W/(m² K)]. */
  readonly s: number;
  readonly medium: number;
  readonly h: number;
}

/**
 * Temperature in an infinite cylinder through stages [°C].
 *
 *     each stage's start is projected on the modes of that stage: ∫ r·J0(ar)·J0(br) dr = [a·J1(a)·J0(b) − b·J0(a)·J1(b)]/(a² − b²)
 *
 * @param R radius [m]
 * @param material constant properties
 * @param start uniform [°C]
 * @param stages in order
 * @param t time from the start [s], within the stages
 * @param r places, 0 at the axis to 1 at the surface
 * @param modes terms
 * Checked against values worked out independently with 200 modes. Source: carslaw-jaeger-1959
 */
export function stagedCylinder(
  R: number,
  material: ConstantProperties,
  start: number,
  stages: readonly ExactStage[],
  t: number,
  r: readonly number[],
  modes = 200,
): number[] {
  const alpha = material.k / (material.rho * material.cp);
  let z: number[] = [];
  let a: number[] = [];
  let medium = start;
  let left = t;
  for (const stage of stages) {
    const Bi = (stage.h * R) / material.k;
    const zNew = Array.from({ length: modes }, (_, n) => eigenvalue('cylinder', Bi, n));
    const aNew = zNew.map((m) => {
      let sum = (medium - stage.medium) * coefficient('cylinder', m);
      const j0 = besselJ0(m);
      const j1 = besselJ1(m);
      const norm = (j0 * j0 + j1 * j1) / 2;
      for (let n = 0; n < z.length; n++) {
        const overlap =
          Math.abs(z[n] - m) < 1e-12
            ? norm
            : (m * j1 * besselJ0(z[n]) - z[n] * j0 * besselJ1(z[n])) / (m * m - z[n] * z[n]);
        sum += (a[n] * overlap) / norm;
      }
      return sum;
    });
    const dt = Math.min(left, stage.s);
    z = zNew;
    a = aNew.map((c, n) => c * Math.exp((-z[n] * z[n] * alpha * dt) / (R * R)));
    medium = stage.medium;
    left -= dt;
    if (left <= 0) break;
  }
  return r.map((x) => z.reduce((sum, e, n) => sum + a[n] * besselJ0(e * x), medium));
}

/**
 * Temperature in an infinite cylinder of two layers in perfect contact, one medium [°C].
 *
 *     φ = J0(λr/√α1) inside, A·J0 + B·Y0 of λr/√α2 outside, matched in value and flow; k2·φ' + h·φ = 0 at the surface
 *
 * @param inner radius of the core [m], outer radius [m]
 * @param core properties, skin properties
 * @param h surface coefficient [W/(m² K)], medium [°C], start [°C]
 * @param t time [s], r places [m]
 * @param modes terms; found by scanning λ in steps of a twentieth of their mean distance
 * Checked against values worked out independently, and with both layers alike against the plain series. Source: carslaw-jaeger-1959
 */
export function layeredCylinder(
  inner: number,
  outer: number,
  core: ConstantProperties,
  skin: ConstantProperties,
  h: number,
  medium: number,
  start: number,
  t: number,
  r: readonly number[],
  modes = 60,
): number[] {
  const { roots, outside, phi } = layeredModes(inner, outer, core, skin, h, modes);
  const points = 400;
  const integral = (a: number, b: number, f: (x: number) => number) => {
    // Simpson's rule.
    let total = f(a) + f(b);
    for (let i = 1; i < points; i++) total += (i % 2 === 1 ? 4 : 2) * f(a + ((b - a) * i) / points);
    return (total * (b - a)) / points / 3;
  };
  const result = r.map(() => medium);
  for (const l of roots) {
    const decay = Math.exp(-l * l * t);
    if (decay < 1e-20) break;
    const c = outside(l);
    const weighted = (power: 1 | 2) =>
      core.rho * core.cp * integral(0, inner, (x) => x * phi(l, x, c) ** power) +
      skin.rho *
        skin.cp *
        integral(inner, outer, (x) => x * (x <= inner ? phi(l, inner, c) : phi(l, x, c)) ** power);
    const a = ((start - medium) * weighted(1)) / weighted(2);
    r.forEach((x, i) => {
      result[i] += a * decay * phi(l, x, c);
    });
  }
  return result;
}

/**
 * The first roots λ of a cylinder of two layers [1/√s]; each of its modes dies away as exp(−λ²·t).
 *
 *     k2·φ'(outer) + h·φ(outer) = 0, φ = J0(λr/√α1) inside, A·J0 + B·Y0 of λr/√α2 outside
 *
 * @param inner radius of the core [m], outer radius [m]
 * @param core properties, skin properties
 * @param h surface coefficient [W/(m² K)]
 * @param modes how many
 * Assumes perfect contact. Checked against roots found apart with scipy.
 * Source: carslaw-jaeger-1959
 */
export function layeredRoots(
  inner: number,
  outer: number,
  core: ConstantProperties,
  skin: ConstantProperties,
  h: number,
  modes: number,
): readonly number[] {
  return layeredModes(inner, outer, core, skin, h, modes).roots;
}

/** Roots, and the modes that belong to them. */
function layeredModes(
  inner: number,
  outer: number,
  core: ConstantProperties,
  skin: ConstantProperties,
  h: number,
  modes: number,
) {
  const s1 = Math.sqrt(core.k / (core.rho * core.cp));
  const s2 = Math.sqrt(skin.k / (skin.rho * skin.cp));
  const outside = (l: number) => {
    const u = (l * inner) / s2;
    const value = besselJ0((l * inner) / s1);
    // Flow into the skin, divided by the skin's own λ/√α.
    const slope = (-besselJ1((l * inner) / s1) * core.k * s2) / (skin.k * s1);
    const det = (-Math.PI * u) / 2;
    const A = det * (value * besselY1(u) + slope * besselY0(u));
    const B = -det * (slope * besselJ0(u) + value * besselJ1(u));
    return { A, B };
  };
  const phi = (l: number, radius: number, c = outside(l)) =>
    radius <= inner
      ? besselJ0((l * radius) / s1)
      : c.A * besselJ0((l * radius) / s2) + c.B * besselY0((l * radius) / s2);
  const atSurface = (l: number) => {
    const { A, B } = outside(l);
    const u = (l * outer) / s2;
    return (-skin.k * l * (A * besselJ1(u) + B * besselY1(u))) / s2 + h * (A * besselJ0(u) + B * besselY0(u));
  };
  const pitch = Math.PI / (inner / s1 + (outer - inner) / s2) / 20;
  const roots: number[] = [];
  for (let l = pitch * 1e-3; roots.length < modes; l += pitch)
    if (atSurface(l) * atSurface(l + pitch) < 0) roots.push(bracketedRoot(atSurface, l, l + pitch, 1e-15).x);
  return { roots, outside, phi };
}
