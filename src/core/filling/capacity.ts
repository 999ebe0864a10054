/** How much a casing holds: volumes of bodies of revolution made of frusta. */
import { Contradiction, OutOfRange } from '../errors.ts';

export interface CasingPoint {
  /** Distance along the axis [m], rising from point to point. */
  readonly at: number;
  /** Outer diameter there [m]. */
  readonly diameter: number;
}

function check(profile: readonly CasingPoint[]): void {
  if (profile.length < 2) throw new OutOfRange('profile', `${profile.length} points`, 'at least 2 points');
  profile.forEach(({ at, diameter }, i) => {
    if (!Number.isFinite(at)) throw new OutOfRange(`profile[${i}].at`, String(at), 'a finite distance [m]');
    if (!(diameter >= 0) || !Number.isFinite(diameter))
      throw new OutOfRange(`profile[${i}].diameter`, `${diameter} m`, '0 m or more');
    const before = profile[i - 1];
    if (before !== undefined && at <= before.at)
      throw new OutOfRange(`profile[${i}].at`, `${at} m`, `more than ${before.at} m, the point before it`);
  });
}

/**
 * Volume of a body of revolution that is straight between its points [m³].
 * Equation: V = Σ π h (d₁² + d₁ d₂ + d₂²)/12, the exact volume of each frustum.
 * Parameters: profile of at least two points, at [m] strictly rising, diameter [m] ≥ 0.
 * Assumptions: round section, straight axis.
 * Checked: cylinder, cone and a sphere of many points against their closed forms.
 * @example volumeOf([{ at: 0, diameter: 0.04 }, { at: 0.1, diameter: 0.04 }]) // 0.000125664
 * Source: own-computation (elementary geometry).
 */
export function volumeOf(profile: readonly CasingPoint[]): number {
  check(profile);
  let volume = 0;
  for (let i = 1; i < profile.length; i += 1) {
    const a = profile[i - 1]!;
    const b = profile[i]!;
    volume +=
      (Math.PI *
        (b.at - a.at) *
        (a.diameter * a.diameter + a.diameter * b.diameter + b.diameter * b.diameter)) /
      12;
  }
  return volume;
}

export interface Capacity {
  /** Of the whole piece, skin included [m³]. */
  readonly outer: number;
  /** Inside the skin [m³]. */
  readonly inner: number;
  /** Of the filling that leaves the head space free [m³]. */
  readonly filling: number;
  /** Of that filling [kg]. */
  readonly mass: number;
}

/**
 * What one casing takes of a filling [kg and m³].
 * Equation: V_in = Σ π h (c₁² + c₁ c₂ + c₂²)/12 with c = d − 2 s; m = ρ V_in (1 − e).
 * Parameters: profile of the filled outside [m]; skin thickness s [m] ≥ 0; density ρ of the filling [kg/m³] > 0; head space e, fraction 0–1.
 * Assumptions: a skin of one thickness below the round side; open ends; the casing keeps the drawn shape when filled.
 * Checked: against a cylinder by hand; a skin takes away exactly the shell it is.
 * @example capacityOf({ profile: [{ at: 0, diameter: 0.05 }, { at: 0.1, diameter: 0.05 }], skin: 0, density: 1000, headSpace: 0 }).mass // 0.19635
 * Source: own-computation (elementary geometry).
 */
export function capacityOf(casing: {
  readonly profile: readonly CasingPoint[];
  readonly skin: number;
  readonly density: number;
  readonly headSpace: number;
}): Capacity {
  const { profile, skin, density, headSpace } = casing;
  if (!(skin >= 0)) throw new OutOfRange('skin', `${skin} m`, '0 m or more');
  if (!(density > 0)) throw new OutOfRange('density', `${density} kg/m³`, 'more than 0 kg/m³');
  if (!(headSpace >= 0 && headSpace <= 1)) throw new OutOfRange('headSpace', String(headSpace), '0 to 1');
  const outer = volumeOf(profile);
  const inside = profile.map(({ at, diameter }, i) => {
    const left = diameter - 2 * skin;
    if (left < 0)
      throw new Contradiction(
        `profile[${i}].diameter`,
        `${(diameter * 1000).toFixed(1)} mm across with a skin of ${(skin * 1000).toFixed(1)} mm`,
        'a skin thinner than half the diameter everywhere',
      );
    return { at, diameter: left };
  });
  const inner = volumeOf(inside);
  const filling = inner * (1 - headSpace);
  return { outer, inner, filling, mass: filling * density };
}
