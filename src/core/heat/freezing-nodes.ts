/** What freezing means for the nodes of a mesh: corners in their heat content, and how much of their water is ice. */
import type { Corners } from '../numerics/esdirk.ts';
import { addCapacity, type Material, stride } from './material.ts';

/** Materials of a mesh with the nodes that have some of each, and how much [m³]. */
export interface Shares {
  readonly materials: readonly Material[];
  readonly nodes: readonly Int32Array[];
  readonly volumes: readonly Float64Array[];
}

/** How far behind its first ice a node that passes it is stopped [K]. */
const behind = 1e-7;

/** Heat capacity of a material that does not freeze there, or above its first ice [J/(m³ K)]. */
function usualCapacity({ freezing, table, cells, low, step }: Material): number {
  const C = freezing === undefined ? 20 : freezing.freezing + 1;
  const cell = Math.min(cells - 1, Math.max(0, Math.floor((C - low) / step)));
  return table[cell * stride + 2];
}

/**
 * The corners that first ice puts into the heat content of the nodes of a mesh [J/K, °C], for the integrator; none where nothing freezes.
 *
 *     a node that a correction would take past its first ice is stopped just behind it
 *
 * @param shares what has how much of which material
 * @param n nodes of the mesh
 * Assumes that the heat content bends down (frozen) and is straight (unfrozen) on either side, where Newton's method finds its way.
 * Checked by freezing and thawing slabs, cylinders and spheres against other methods. Source: own-computation
 */
export function cornersOf({ materials, nodes, volumes }: Shares, n: number): Corners | undefined {
  if (materials.every((material) => material.freezing === undefined)) return undefined;
  const usual = new Float64Array(n);
  materials.forEach((material, m) => {
    const c = usualCapacity(material);
    nodes[m].forEach((i, q) => {
      usual[i] += volumes[m][q] * c;
    });
  });
  const from = new Float64Array(n);
  return {
    usual,
    correct(T, dT) {
      from.set(T);
      for (let i = 0; i < n; i++) T[i] += dT[i];
      materials.forEach(({ freezing }, m) => {
        if (freezing === undefined) return;
        const point = freezing.freezing;
        for (const i of nodes[m]) {
          if (from[i] > point + behind && T[i] < point - behind) T[i] = point - behind;
          else if (from[i] < point - behind && T[i] > point + behind) T[i] = point + behind;
        }
      });
    },
    capacityAt(T, capacity) {
      capacity.fill(0);
      materials.forEach((material, m) => {
        addCapacity(material, nodes[m], volumes[m], T, capacity);
      });
    },
  };
}

/**
 * How much of the water in a body is ice [-], 0 to 1, as a function of the nodes' temperatures [°C]; none where nothing freezes.
 *
 *     Σ ρ·V·x_ice(T)/Σ ρ·V·x_water over the layers that can freeze
 *
 * @param shares what has how much of which material
 * Assumes each node's volume at the node's temperature. Checked at the ends: none above the first ice, all that can freeze far below.
 * Source: miles-1974
 */
export function iceShareOf({
  materials,
  nodes,
  volumes,
}: Shares): ((T: ArrayLike<number>) => number) | undefined {
  if (materials.every((material) => material.freezing === undefined)) return undefined;
  let water = 0;
  materials.forEach(({ freezing, rho }, m) => {
    if (freezing === undefined) return;
    for (const v of volumes[m]) water += v * rho * freezing.water;
  });
  return (T) => {
    let ice = 0;
    materials.forEach(({ freezing, rho }, m) => {
      if (freezing === undefined) return;
      nodes[m].forEach((i, q) => {
        if (T[i] < freezing.freezing) ice += volumes[m][q] * rho * freezing.ice(T[i]);
      });
    });
    return ice / water;
  };
}
