/** A piece in its cure as the finite volumes need it: what is allowed, its cells, and what touches its surface. */
import { Contradiction, OutOfRange } from '../errors.ts';
import {
  brineFreezing,
  muscleDiffusivity,
  saltDiffusivity,
  saturatedBrine,
  skinDiffusivity,
} from '../properties/brine.ts';
import { type Cells, type Detail, layCells, type Surroundings } from './diffusion.ts';
import type { SaltShape } from './series.ts';

export interface CurePiece {
  readonly shape: SaltShape;
  /** Thickness of the slab or diameter [m]. */
  readonly size: number;
  /** Slab: faces that salt can enter by. */
  readonly exposedFaces: 1 | 2;
  /** [kg] */
  readonly mass: number;
  /** Mass fractions of the piece before the cure; of what lies under the skin where there is one. */
  readonly water: number;
  readonly salt: number;
  /** A layer outside that slows the salt [m, mass fraction, m²/s at 5 °C]. */
  readonly skin?: { readonly thickness: number; readonly water: number; readonly diffusivity?: number };
}

export type CureMedium =
  | { readonly kind: 'bath'; readonly mass: number; readonly salt: number }
  | { readonly kind: 'kept'; readonly salt: number }
  | { readonly kind: 'dry'; readonly salt: number }
  | { readonly kind: 'rest' };

export interface CureStage {
  readonly medium: CureMedium;
  /** [°C] */
  readonly temperature: number;
  /** [s] */
  readonly time: number;
}

export const inside = (path: string, x: number, low: number, high: number, unit = '') => {
  if (!(x >= low && x <= high)) throw new OutOfRange(path, `${x}${unit}`, `${low} to ${high}${unit}`);
};

/** Which of the published range of diffusivities: the usual, its lowest or its highest. */
export type Pace = 'usual' | 'slowest' | 'quickest';

export const toRatio = (w: number) => w / (1 - w);
export const toShare = (u: number) => u / (1 + u);

/**
 * Refuses a piece that cannot be reckoned with [m, kg, mass fractions].
 * Source: own-computation
 */
export function checkPiece(piece: CurePiece): void {
  inside('piece.size', piece.size, 1e-4, 2, ' m');
  inside('piece.mass', piece.mass, 1e-6, 1e4, ' kg');
  inside('piece.water', piece.water, 0.02, 1);
  inside('piece.salt', piece.salt, 0, 0.3);
  if (piece.water + piece.salt > 1)
    throw new Contradiction(
      'piece.water',
      `${piece.water} water and ${piece.salt} salt`,
      'together at most 1',
    );
  const { skin } = piece;
  if (skin === undefined) return;
  inside('piece.skin.water', skin.water, 0.02, 1);
  if (skin.diffusivity !== undefined)
    inside('piece.skin.diffusivity', skin.diffusivity, 1e-15, 2e-9, ' m²/s');
  inside('piece.skin.thickness', skin.thickness, 1e-5, extentOf(piece) * 0.95, ' m');
}

/**
 * Refuses a stage that cannot be reckoned with [°C, s, kg]: outside the range of the diffusivities, stronger than saturation, frozen.
 * Source: salt-solubility-table
 * Source: langes-handbook-5-13
 */
export function checkStage({ medium, temperature, time }: CureStage, path: string): void {
  inside(`${path}.temperature`, temperature, muscleDiffusivity.coldest, muscleDiffusivity.hottest, ' °C');
  inside(`${path}.time`, time, 1, 366 * 86_400, ' s');
  if (medium.kind === 'dry') inside(`${path}.medium.salt`, medium.salt, 0, 1e4, ' kg');
  if (medium.kind !== 'bath' && medium.kind !== 'kept') return;
  if (medium.kind === 'bath') inside(`${path}.medium.mass`, medium.mass, 1e-6, 1e6, ' kg');
  const most = saturatedBrine(temperature) / 100;
  if (!(medium.salt >= 0 && medium.salt <= most))
    throw new OutOfRange(
      `${path}.medium.salt`,
      String(medium.salt),
      `0 to ${most.toFixed(4)}, saturation at ${temperature} °C`,
    );
  if (temperature < 0 && medium.salt < 0.233 && brineFreezing(medium.salt * 100) > temperature)
    throw new Contradiction(
      `${path}.temperature`,
      `${temperature} °C`,
      `such a brine freezes at ${brineFreezing(medium.salt * 100).toFixed(2)} °C`,
    );
}

/** Way from the core or the closed face to the surface [m]. */
const extentOf = ({ shape, size, exposedFaces }: CurePiece): number =>
  shape === 'slab' && exposedFaces === 1 ? size : size / 2;

/**
 * Water of the whole piece, the skin by its share of the room [mass fraction].
 * Assumptions: skin and flesh are equally dense.
 * @example meanWater({ shape: 'slab', size: 0.02, exposedFaces: 1, mass: 1, water: 0.75, salt: 0, skin: { thickness: 0.002, water: 0.5 } }) // → 0.725
 * Source: own-computation
 */
export function meanWater(piece: CurePiece): number {
  const { skin, shape } = piece;
  if (skin === undefined) return piece.water;
  const extent = extentOf(piece);
  const power = shape === 'slab' ? 1 : shape === 'cylinder' ? 2 : 3;
  const under = (1 - skin.thickness / extent) ** power;
  return under * piece.water + (1 - under) * skin.water;
}

/**
 * Diffusivity of salt in the flesh at a temperature and pace [m²/s]; what was given holds at every temperature and pace.
 * Source: from-memory
 */
export function fleshDiffusivity(celsius: number, pace: Pace = 'usual', given?: number): number {
  const { at5C, low, high } = muscleDiffusivity;
  const factor = { usual: 1, slowest: low / at5C, quickest: high / at5C }[pace];
  return given ?? saltDiffusivity(celsius) * factor;
}

/**
 * Cells of a piece at a temperature and pace [m, kg, kg/s]; D of the flesh [m²/s].
 * Source: own-computation
 */
export function cellsOf(
  piece: CurePiece,
  D: number,
  temperature: number,
  pace: Pace = 'usual',
  detail: Detail = 'fine',
): Cells {
  const { skin, shape } = piece;
  const byTemperature = saltDiffusivity(temperature) / muscleDiffusivity.at5C;
  const published = {
    usual: skinDiffusivity.at5C,
    slowest: skinDiffusivity.low,
    quickest: skinDiffusivity.high,
  };
  const outside =
    skin === undefined
      ? []
      : [
          {
            thickness: skin.thickness,
            water: skin.water,
            diffusivity: skin.diffusivity ?? published[pace] * byTemperature,
          },
        ];
  const layers = [...outside, { water: piece.water, diffusivity: D }];
  return layCells(shape, extentOf(piece), piece.mass * meanWater(piece), layers, detail);
}

/**
 * What touches the surface, as the finite volumes take it [kg and kg/kg].
 * @example surroundings({ kind: 'kept', salt: 0.2 }, 5).ratio // → 0.25
 * Source: salt-solubility-table
 */
export function surroundings(medium: CureMedium, temperature: number): Surroundings {
  switch (medium.kind) {
    case 'bath':
      return { kind: 'bath', waterKg: medium.mass * (1 - medium.salt), ratio: toRatio(medium.salt) };
    case 'kept':
      return { kind: 'kept', ratio: toRatio(medium.salt) };
    case 'dry':
      return { kind: 'dry', stockKg: medium.salt, ratio: toRatio(saturatedBrine(temperature) / 100) };
    case 'rest':
      return { kind: 'rest' };
  }
}

/**
 * Salt per water of a piece when a stage has gone on for ever [kg/kg].
 * Parameters: water and salt of the piece [kg].
 * @example equilibriumRatio({ kind: 'bath', waterKg: 1, ratio: 0.1 }, 1, 0) // → 0.05
 * Source: own-computation
 */
export function equilibriumRatio(around: Surroundings, water: number, salt: number): number {
  switch (around.kind) {
    case 'bath':
      return (salt + around.waterKg * around.ratio) / (water + around.waterKg);
    case 'kept':
      return around.ratio;
    case 'dry':
      return Math.max(salt / water, Math.min(around.ratio, (salt + around.stockKg) / water));
    case 'rest':
      return salt / water;
  }
}
