/** Places, temperatures and times in words, for captions and readings. */
import type { Body, FieldMesh, Place } from '../../core/heat/types.ts';
import { degrees } from '../../documents/pictures/cut-through.ts';
import type { LengthUnits } from '../../documents/pictures/piece-layout.ts';

export const temperatureWords = degrees;

export const lengthWords = (m: number, units: LengthUnits): string =>
  units === 'US' ? `${(m / 0.0254).toFixed(2)} in` : `${Math.round(m * 1000)} mm`;

/** Where a place is: "96 mm along, 12 mm off the axis". */
export function placeWords(
  mesh: { readonly shape: Body['shape'] },
  place: Place,
  units: LengthUnits,
): string {
  const off = (m: number, none: string, from: string) =>
    m < 0.0005 ? none : `${lengthWords(m, units)} ${from}`;
  switch (mesh.shape) {
    case 'revolved':
      return `${lengthWords(place.at ?? 0, units)} along, ${off(place.radius ?? 0, 'on the axis', 'off the axis')}`;
    case 'cylinder':
      return off(place.radius ?? 0, 'on the axis', 'off the axis');
    case 'sphere':
      return off(place.radius ?? 0, 'in the middle', 'from the middle');
    case 'slab':
      return off(Math.abs(place.x ?? place.radius ?? 0), 'in the middle', 'from the middle');
    case 'block': {
      const x = Math.abs(place.x ?? 0);
      const y = Math.abs(place.y ?? 0);
      if (x < 0.0005 && y < 0.0005) return 'in the middle';
      return `${lengthWords(x, units)} to the side and ${lengthWords(y, units)} up from the middle`;
    }
  }
}

/** The distance across the piece [m], for how far a probe goes in. */
export function depthOf(mesh: FieldMesh, place: Place): number {
  const { nu, nv, x, y } = mesh;
  if (mesh.shape === 'revolved') {
    let nearest = 0;
    for (let j = 1; j < nv; j++)
      if (Math.abs(x[j * nu]! - (place.at ?? 0)) < Math.abs(x[nearest * nu]! - (place.at ?? 0))) nearest = j;
    return y[nearest * nu + nu - 1]! - (place.radius ?? 0);
  }
  if (mesh.shape === 'block')
    return Math.min(x[nu - 1]! - Math.abs(place.x ?? 0), y[nu * nv - 1]! - Math.abs(place.y ?? 0));
  return x[nu - 1]! - Math.abs(place.radius ?? place.x ?? 0);
}

/** Minutes and seconds as they are said: "12 min", "1 h 5 min", "40 s". */
export function timeWords(s: number): string {
  if (s < 59.5) return `${Math.round(s)} s`;
  const min = Math.round(s / 60);
  if (min < 100) return `${min} min`;
  return min % 60 === 0 ? `${min / 60} h` : `${Math.floor(min / 60)} h ${min % 60} min`;
}

/** A clock under a scrubber: "12:30", "1:05:00". */
export function clockWords(s: number): string {
  const whole = Math.round(s);
  const pad = (n: number) => String(n).padStart(2, '0');
  const h = Math.floor(whole / 3600);
  const rest = `${h > 0 ? pad(Math.floor(whole / 60) % 60) : Math.floor(whole / 60)}:${pad(whole % 60)}`;
  return h > 0 ? `${h}:${rest}` : rest;
}
