/** The cut-through as a table, for who cannot see it: temperatures across the piece at a few sections. */
import type { CookResult, Frame, Place } from '../../core/heat/types.ts';
import { locate, valueAt } from './cut-through-field.ts';
import type { LengthUnits } from './piece-layout.ts';
import type { Scene } from './scene.ts';

type Row = readonly [where: string, Place];

const mm = (m: number, units: LengthUnits) =>
  units === 'US' ? `${(m * 39.3701).toFixed(2)} in` : `${(m * 1000).toFixed(0)} mm`;

/** The end of the mesh at the surface: its distance from the axis or the middle [m]. */
function surfaceRadius(result: CookResult, at: number): number {
  const { nu, nv, x, y } = result.mesh;
  let nearest = 0;
  for (let j = 1; j < nv; j++)
    if (Math.abs(x[j * nu + nu - 1]! - at) < Math.abs(x[nearest * nu + nu - 1]! - at)) nearest = j;
  return y[nearest * nu + nu - 1]!;
}

function places(result: CookResult, units: LengthUnits): Row[] {
  const { nu, nv, x, y, shape } = result.mesh;
  if (shape === 'revolved') {
    const length = x[(nv - 1) * nu]!;
    return [0.1, 0.25, 0.4, 0.5, 0.6, 0.75, 0.9].flatMap((share): Row[] => {
      const at = length * share;
      return [
        [`${mm(at, units)} along, on the axis`, { at, radius: 0 }],
        [`${mm(at, units)} along, half way out`, { at, radius: surfaceRadius(result, at) * 0.5 }],
      ];
    });
  }
  const outer = x[nu - 1]!;
  if (shape === 'block') {
    const high = y[nu * nv - 1]!;
    return [
      ['in the middle', { x: 0, y: 0 }],
      ['half way to the side', { x: outer / 2, y: 0 }],
      ['half way to the top', { x: 0, y: high / 2 }],
      ['half way to a corner', { x: outer / 2, y: high / 2 }],
      ['at the side', { x: outer * 0.999, y: 0 }],
      ['at a corner', { x: outer * 0.999, y: high * 0.999 }],
    ];
  }
  return [0, 0.25, 0.5, 0.75, 1].map((share): Row => {
    const d = outer * share;
    return [`${mm(d, units)} from the middle`, { radius: d, x: d }];
  });
}

const minutes = (s: number) => (s >= 6_000 ? 'over 100' : (s / 60).toFixed(2));

export function cutThroughTable(
  result: CookResult,
  frame: Frame,
  units: LengthUnits,
): NonNullable<Scene['table']> {
  const degree = (C: number) => (units === 'US' ? C * 1.8 + 32 : C).toFixed(1);
  const row = (where: string, C: number, lethality: number) => [where, degree(C), minutes(lethality)];
  const rows = places(result, units).flatMap(([where, place]) => {
    const found = locate(result.mesh, place);
    return found === null ? [] : [row(where, valueAt(frame.C, found), valueAt(frame.lethality, found))];
  });
  const spot = locate(result.mesh, result.coldSpot) ?? { nodes: [result.coldSpot.node], weights: [1] };
  return {
    head: ['Where', units === 'US' ? 'Temperature, °F' : 'Temperature, °C', 'Lethality so far, min'],
    rows: [row('coldest point', valueAt(frame.C, spot), valueAt(frame.lethality, spot)), ...rows],
  };
}
