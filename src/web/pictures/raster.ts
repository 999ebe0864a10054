/**
 * Paints a field on a grid of pixels, fast enough for scrubbing: which nodes a pixel lies between is worked out once for
 * a mesh, so that a new time is one pass over the pixels. The grid covers one quadrant of the section and is mirrored.
 */
import type { FieldMesh } from '../../core/heat/types.ts';
import { rampBytes } from '../../documents/pictures/ramp.ts';

export interface Raster {
  /** Pixels of the whole picture. */
  readonly width: number;
  readonly height: number;
  readonly mirrorX: boolean;
  /** Pixels of the quadrant. */
  readonly across: number;
  readonly up: number;
  /** Three nodes and the weights of the second and third, for each pixel of the quadrant; node −1: outside. */
  readonly nodes: Int32Array;
  readonly weights: Float32Array;
}

const MM = 1000;

interface Grid {
  readonly across: number;
  readonly up: number;
  readonly nodes: Int32Array;
  readonly weights: Float32Array;
  /** Millimetres at the left edge, and for each pixel. */
  readonly x0: number;
  readonly perPixel: number;
}

function paintTriangle(grid: Grid, mesh: FieldMesh, a: number, b: number, c: number): void {
  const { x0, perPixel, across, up } = grid;
  const px = (n: number) => (mesh.x[n]! * MM - x0) / perPixel;
  const py = (n: number) => (mesh.y[n]! * MM) / perPixel;
  const ax = px(a);
  const ay = py(a);
  const abx = px(b) - ax;
  const aby = py(b) - ay;
  const acx = px(c) - ax;
  const acy = py(c) - ay;
  const area = abx * acy - acx * aby;
  if (Math.abs(area) < 1e-12) return;
  // A hair more than the triangle, so that no pixel between two of them is left out.
  const slack = -0.02;
  const left = Math.max(0, Math.floor(ax + Math.min(0, abx, acx) - 0.5));
  const right = Math.min(across - 1, Math.ceil(ax + Math.max(0, abx, acx)));
  const low = Math.max(0, Math.floor(ay + Math.min(0, aby, acy) - 0.5));
  const high = Math.min(up - 1, Math.ceil(ay + Math.max(0, aby, acy)));
  for (let row = low; row <= high; row++)
    for (let column = left; column <= right; column++) {
      const dx = column + 0.5 - ax;
      const dy = row + 0.5 - ay;
      const wb = (dx * acy - acx * dy) / area;
      const wc = (abx * dy - dx * aby) / area;
      if (wb < slack || wc < slack || wb + wc > 1 - slack) continue;
      const at = row * across + column;
      grid.nodes[3 * at] = a;
      grid.nodes[3 * at + 1] = b;
      grid.nodes[3 * at + 2] = c;
      grid.weights[2 * at] = wb;
      grid.weights[2 * at + 1] = wc;
    }
}

function paintDistances(grid: Grid, mesh: FieldMesh): void {
  const { across, up, perPixel } = grid;
  const { nu, x } = mesh;
  for (let row = 0; row < up; row++)
    for (let column = 0; column < across; column++) {
      const dx = mesh.shape === 'slab' ? 0 : (column + 0.5) * perPixel;
      const r = Math.hypot(dx, (row + 0.5) * perPixel) / MM;
      if (r > x[nu - 1]!) continue;
      let i = 0;
      let high = nu - 1;
      while (high - i > 1) {
        const middle = (i + high) >> 1;
        if (x[middle]! <= r) i = middle;
        else high = middle;
      }
      const at = row * across + column;
      grid.nodes[3 * at] = i;
      grid.nodes[3 * at + 1] = i + 1;
      grid.nodes[3 * at + 2] = i;
      grid.weights[2 * at] = (r - x[i]!) / (x[i + 1]! - x[i]!);
    }
}

/** The pixels of a section `x0`…`x1` by ±`half` [mm] at so many pixels a millimetre. */
export function rasterOf(mesh: FieldMesh, x0: number, x1: number, half: number, perMm: number): Raster {
  const mirrorX = mesh.shape !== 'revolved';
  const span = mirrorX ? x1 : x1 - x0;
  const across = Math.max(1, Math.round(span * perMm));
  const up = Math.max(1, Math.round(half * perMm));
  const nodes = new Int32Array(3 * across * up).fill(-1);
  const weights = new Float32Array(2 * across * up);
  const grid: Grid = { across, up, nodes, weights, x0: mirrorX ? 0 : x0, perPixel: span / across };
  if (mesh.nv === 1) paintDistances(grid, mesh);
  else {
    const { nu, nv } = mesh;
    for (let j = 0; j < nv - 1; j++)
      for (let i = 0; i < nu - 1; i++) {
        const a = j * nu + i;
        paintTriangle(grid, mesh, a, a + 1, a + nu + 1);
        paintTriangle(grid, mesh, a, a + nu + 1, a + nu);
      }
  }
  return { width: mirrorX ? 2 * across : across, height: 2 * up, mirrorX, across, up, nodes, weights };
}

/** The ramp as the pixels hold it: alpha, blue, green, red in one number (little endian, as every browser's device is). */
const colours = Uint32Array.from(
  { length: 256 },
  (_, i) =>
    ((255 << 24) | (rampBytes[3 * i + 2]! << 16) | (rampBytes[3 * i + 1]! << 8) | rampBytes[3 * i]!) >>> 0,
);

/** Fills the pixels with the field's colours; outside of the piece they stay clear. */
export function paint(
  raster: Raster,
  field: ArrayLike<number>,
  low: number,
  high: number,
  pixels: Uint32Array,
): void {
  const { across, up, width, mirrorX, nodes, weights } = raster;
  const scale = 255 / (high - low);
  for (let row = 0; row < up; row++) {
    const above = (up - 1 - row) * width;
    const below = (up + row) * width;
    for (let column = 0; column < across; column++) {
      const at = row * across + column;
      const a = nodes[3 * at]!;
      let colour = 0;
      if (a >= 0) {
        const wb = weights[2 * at]!;
        const wc = weights[2 * at + 1]!;
        const value =
          field[a]! * (1 - wb - wc) + field[nodes[3 * at + 1]!]! * wb + field[nodes[3 * at + 2]!]! * wc;
        const entry = (value - low) * scale + 0.5;
        colour = colours[entry > 255 ? 255 : entry > 0 ? entry | 0 : 0]!;
      }
      const right = mirrorX ? across + column : column;
      pixels[above + right] = colour;
      pixels[below + right] = colour;
      if (mirrorX) {
        pixels[above + across - 1 - column] = colour;
        pixels[below + across - 1 - column] = colour;
      }
    }
  }
}
