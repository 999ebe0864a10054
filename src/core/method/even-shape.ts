/** The even piece of the same length and volume, and the piece with a bulge where it is coldest. */
import type { Body, Place, ProfilePoint } from '../heat/types.ts';

type Revolved = Extract<Body, { shape: 'revolved' }>;

/**
 * Volume of a body of revolution [m³].
 * Equation: V = Σ π h (D₁² + D₁D₂ + D₂²) / 12 over the frusta between profile points.
 * Parameters: `profile` at least two points, `at` [m] increasing, `diameter` [m] ≥ 0.
 * Assumptions: straight between points.
 * Checked: a cylinder, a cone and two halves of a frustum against the whole.
 * @example profileVolume([{ at: 0, diameter: 0.1 }, { at: 0.1, diameter: 0.1 }]) // → 7.854e-4
 * Source: own-computation
 */
export function profileVolume(profile: readonly ProfilePoint[]): number {
  let volume = 0;
  for (let i = 1; i < profile.length; i++) {
    const a = profile[i - 1];
    const b = profile[i];
    volume += (Math.PI * (b.at - a.at) * (a.diameter ** 2 + a.diameter * b.diameter + b.diameter ** 2)) / 12;
  }
  return volume;
}

/**
 * Outer diameter at a distance along the axis [m].
 * Equation: straight between profile points, held beyond the ends.
 * Parameters: `profile` at least two points, `at` [m] increasing; `at` [m].
 * @example diameterAt([{ at: 0, diameter: 0.06 }, { at: 0.2, diameter: 0.04 }], 0.05) // → 0.055
 * Source: own-computation
 */
export function diameterAt(profile: readonly ProfilePoint[], at: number): number {
  const after = profile.findIndex((p) => p.at >= at);
  if (after < 0) return profile[profile.length - 1].diameter;
  if (after === 0) return profile[0].diameter;
  const a = profile[after - 1];
  const b = profile[after];
  return a.diameter + ((b.diameter - a.diameter) * (at - a.at)) / (b.at - a.at);
}

/**
 * The even piece: the same length and volume at one diameter throughout [diameter m].
 * Equation: D = √(4 V / (π L)).
 * Parameters: `body` of revolution with a profile of at least two points.
 * Assumptions: the layers keep their thickness.
 * Checked: its volume equals that of the body; an even body is its own even piece.
 * @example evenDiameter([{ at: 0, diameter: 0.06 }, { at: 0.2, diameter: 0.04 }]) // → 0.05033
 * Source: own-computation
 */
export function evenDiameter(profile: readonly ProfilePoint[]): number {
  const length = profile[profile.length - 1].at - profile[0].at;
  return Math.sqrt((4 * profileVolume(profile)) / (Math.PI * length));
}

/**
 * The even piece as a body [m], or null where there is nothing to even out: no point differs by more than 0.5 mm.
 * @example evenShape({ shape: 'sphere', diameter: 0.05, layers: [] }) // → null
 * Source: own-computation
 */
export function evenShape(body: Body): Revolved | null {
  if (body.shape !== 'revolved') return null;
  const { profile } = body;
  const diameter = evenDiameter(profile);
  const uneven = profile.some((p) => Math.abs(p.diameter - diameter) > 0.5e-3);
  if (!uneven) return null;
  return {
    ...body,
    profile: [
      { at: profile[0].at, diameter },
      { at: profile[profile.length - 1].at, diameter },
    ],
  };
}

/**
 * The body with a bulge of `delta` in its thickness where it is coldest [m].
 * Equation: revolved: D(z) + δ·max(0, 1 − |z − z₀|/D(z₀)); other shapes: their diameter, thickness or smaller side + δ.
 * Parameters: `delta` [m], small beside the body; `place` the cold spot.
 * Assumptions: a bulge about as long to either side as the piece is wide.
 * Checked: the volume grows with δ; δ = 0 gives the same body.
 * @example bulged({ shape: 'sphere', diameter: 0.05, layers: [] }, 0.002, { radius: 0 }).diameter // → 0.052
 * Source: own-computation
 */
export function bulged(body: Body, delta: number, place: Place): Body {
  switch (body.shape) {
    case 'cylinder':
    case 'sphere':
      return { ...body, diameter: body.diameter + delta };
    case 'slab':
      return { ...body, thickness: body.thickness + delta };
    case 'block':
      return body.width < body.height
        ? { ...body, width: body.width + delta }
        : { ...body, height: body.height + delta };
    case 'revolved': {
      const { profile } = body;
      const first = profile[0].at;
      const last = profile[profile.length - 1].at;
      const centre = Math.min(last, Math.max(first, place.at ?? (first + last) / 2));
      const reach = diameterAt(profile, centre);
      const knots = new Set(profile.map((p) => p.at));
      for (const z of [centre - reach, centre, centre + reach]) {
        const near = [...knots].some((k) => Math.abs(k - z) < 1e-4);
        if (z > first && z < last && !near) knots.add(z);
      }
      const swell = (z: number) => delta * Math.max(0, 1 - Math.abs(z - centre) / reach);
      return {
        ...body,
        profile: [...knots]
          .sort((a, b) => a - b)
          .map((at) => ({ at, diameter: diameterAt(profile, at) + swell(at) })),
      };
    }
  }
}
