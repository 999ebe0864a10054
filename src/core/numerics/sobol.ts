/** Low-discrepancy points: Sobol's sequence with published direction numbers, scrambled so that its error can be told. */
import { OutOfRange } from '../errors.ts';

/**
 * Primitive polynomial (all coefficients, as bits) and first direction numbers of dimensions 2 to 21, from the authors'
 * file new-joe-kuo-6.21201. Dimension 1 is van der Corput's.
 */
const directions: readonly (readonly [polynomial: number, ...m: number[]])[] = [
  [3, 1],
  [7, 1, 3],
  [11, 1, 3, 1],
  [13, 1, 1, 1],
  [19, 1, 1, 3, 3],
  [25, 1, 3, 5, 13],
  [37, 1, 1, 5, 5, 17],
  [41, 1, 1, 5, 5, 5],
  [47, 1, 1, 7, 11, 19],
  [55, 1, 1, 5, 1, 1],
  [59, 1, 1, 1, 3, 11],
  [61, 1, 3, 5, 5, 31],
  [67, 1, 3, 3, 9, 7, 49],
  [91, 1, 1, 1, 15, 21, 21],
  [97, 1, 3, 1, 13, 27, 49],
  [103, 1, 1, 1, 15, 7, 5],
  [109, 1, 3, 1, 15, 13, 25],
  [115, 1, 1, 5, 5, 19, 61],
  [131, 1, 3, 7, 11, 23, 15, 103],
  [137, 1, 3, 7, 13, 13, 15, 69],
];

/** As many dimensions as the table has. */
export const sobolDimensions = directions.length + 1;

const bits = 32;

/** The 32 direction integers of one dimension, the first the highest bit. */
function directionIntegers(dimension: number): Uint32Array {
  const v = new Uint32Array(bits);
  if (dimension === 0) {
    for (let k = 0; k < bits; k++) v[k] = 2 ** (bits - 1 - k);
    return v;
  }
  const [polynomial, ...m] = directions[dimension - 1];
  const s = m.length;
  for (let k = 0; k < bits; k++) {
    if (k < s) {
      v[k] = m[k] * 2 ** (bits - 1 - k);
      continue;
    }
    let next = v[k - s] ^ (v[k - s] >>> s);
    for (let q = 1; q < s; q++) if ((polynomial >>> (s - q)) & 1) next ^= v[k - q];
    v[k] = next >>> 0;
  }
  return v;
}

function reversed(x: number): number {
  let y = x >>> 0;
  y = ((y >>> 1) & 0x55555555) | ((y & 0x55555555) << 1);
  y = ((y >>> 2) & 0x33333333) | ((y & 0x33333333) << 2);
  y = ((y >>> 4) & 0x0f0f0f0f) | ((y & 0x0f0f0f0f) << 4);
  y = ((y >>> 8) & 0x00ff00ff) | ((y & 0x00ff00ff) << 8);
  return ((y >>> 16) | (y << 16)) >>> 0;
}

/** Owen's nested uniform scramble by hashing: every bit is flipped by a hash of the bits above it. */
function scrambled(x: number, seed: number): number {
  let y = reversed(x);
  y = (y + seed) | 0;
  y ^= Math.imul(y, 0x6c50b47c);
  y ^= Math.imul(y, 0xb82f1e52);
  y ^= Math.imul(y, 0xc7afe638);
  y ^= Math.imul(y, 0x8d22f6e6);
  return reversed(y);
}

/** A number of 32 bits that depends on every bit of two others: a finaliser of the MurmurHash3 kind. */
export function mixed(a: number, b: number): number {
  let h = Math.imul(a ^ 0x9e3779b9, 0x85ebca6b) ^ Math.imul(b + 0x7f4a7c15, 0xc2b2ae35);
  h ^= h >>> 16;
  h = Math.imul(h, 0x85ebca6b);
  h ^= h >>> 13;
  h = Math.imul(h, 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

/**
 * The first points of Sobol's sequence [-], each with a coordinate in [0, 1) per dimension, in the order of the index itself.
 *
 *     x_i = XOR of the direction numbers of the bits of i; scrambled bit by bit where a seed is given
 *
 * @param count 0 to 2^31
 * @param dimensions 1 to 21
 * @param seed whole number; absent: the plain sequence, which begins with the origin
 * Scrambled points are moved to the middle of their 2^-32, so that none is 0. Any seed keeps the net's even spread.
 * Checked against the published first points, and that every dyadic interval of a scrambled net has its share.
 * @example sobol(4, 2)[3][1] // 0.75
 * Source: joe-kuo-2008
 * Source: burley-2020
 */
export function sobol(count: number, dimensions: number, seed?: number): Float64Array[] {
  if (!Number.isInteger(dimensions) || dimensions < 1 || dimensions > sobolDimensions)
    throw new OutOfRange('dimensions', String(dimensions), `1 to ${sobolDimensions}`);
  const v = Array.from({ length: dimensions }, (_, d) => directionIntegers(d));
  const seeds = v.map((_, d) => (seed === undefined ? 0 : mixed(seed, d)));
  return Array.from({ length: count }, (_, i) => {
    const point = new Float64Array(dimensions);
    for (let d = 0; d < dimensions; d++) {
      let x = 0;
      for (let k = 0, rest = i; rest !== 0; k++, rest >>>= 1) if (rest & 1) x ^= v[d][k];
      x >>>= 0;
      point[d] = seed === undefined ? x / 2 ** 32 : (scrambled(x, seeds[d]) + 0.5) / 2 ** 32;
    }
    return point;
  });
}
