/** A material that freezes as the textbooks' equations want it: at one temperature (within a twentieth of a kelvin), constant on either side. */
import { Conduction } from '../src/core/heat/conduction.ts';
import { March } from '../src/core/heat/march.ts';
import { type Material, stride } from '../src/core/heat/material.ts';
import { fineLine, meshOf } from '../src/core/heat/mesh.ts';
import type { Body } from '../src/core/heat/types.ts';

export interface SharpIce {
  readonly freezing: number;
  /** Heat of freezing [J/kg]. */
  readonly latent: number;
  readonly rho: number;
  readonly frozen: { readonly k: number; readonly cp: number };
  readonly unfrozen: { readonly k: number; readonly cp: number };
}

/** Width over which the ice forms [K]. */
const width = 0.05;

function materialOf({ freezing, latent, rho, frozen, unfrozen }: SharpIce): Material {
  const step = width / 2;
  const below = Math.round(80 / step);
  const cells = below + Math.round(60 / step);
  const low = freezing - below * step;
  const ice = (C: number) => Math.min(1, Math.max(0, (freezing - C) / width));
  const k = (C: number) => unfrozen.k + ice(C) * (frozen.k - unfrozen.k);
  const table = new Float64Array(cells * stride);
  let u = 0;
  for (let i = 0; i < cells; i++) {
    const C = low + i * step;
    const middle = C + step / 2;
    const share = ice(middle);
    const c =
      rho *
      (share === 0 ? unfrozen.cp : share === 1 ? frozen.cp : latent / width + (frozen.cp + unfrozen.cp) / 2);
    table.set([k(C), (k(C + step) - k(C)) / step, c, 0, u], i * stride);
    u += c * step;
  }
  return {
    name: 'sharp ice',
    low,
    step,
    cells,
    table,
    rho,
    composed: true,
    freezing: {
      freezing,
      water: 1,
      ice,
      apparentHeat: () => Number.NaN,
      heatBetween: () => Number.NaN,
      conductivity: k,
    },
  };
}

export interface Frozen {
  /** When its warmest point arrived, or when the time was over [s]. */
  readonly s: number;
  /** Heat that came in [J per what the body is counted in]. */
  readonly heat: number;
  /** Share of it that is ice. */
  readonly ice: number;
}

type Simple = Extract<Body, { shape: 'slab' | 'cylinder' | 'sphere' }>;

/** The engine's own march over a simple body of this material. */
export function marchSharp(
  ice: SharpIce,
  shape: Simple['shape'],
  half: number,
  h: number,
  start: number,
  medium: number,
  until: { readonly s: number } | { readonly warmest: number },
): Frozen {
  const layers = [{ name: 'x', material: { properties: { k: 1, rho: 1000, cp: 1000 } } }];
  const body: Body =
    shape === 'slab' ? { shape, thickness: 2 * half, layers } : { shape, diameter: 2 * half, layers };
  const conduction = new Conduction(meshOf(body, { ...fineLine, refine: 2 }), [materialOf(ice)]);
  const march = new March(
    conduction,
    start,
    { reference: 70, z: 7.5, s: 1 },
    { tolerance: 0.01, logTolerance: 0.05, keepLethality: false },
  );
  const end = march.run({
    name: 'x',
    medium,
    h,
    until:
      's' in until
        ? { kind: 'time', s: until.s }
        : { kind: 'warmest', C: until.warmest, atMost: 20 * 86_400 },
  });
  return { s: end.end, heat: march.supplied, ice: conduction.iceShare?.(end.T) ?? Number.NaN };
}
