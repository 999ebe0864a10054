import { coolingLag, coolingOf, coolingSlope } from '../src/core/heat/precooling.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const scipy = kept('conduction');
/** Published fits of the first root in ln Bi, for 0.1 < Bi ≤ 100, as a handbook prints them. */
const fits = {
  slab: [0.860972, 0.312133, 0.007986, -0.016192, -0.00119, 0.000581],
  cylinder: [1.257493, 0.487941, 0.025322, -0.026568, -0.002888, 0.001078],
} as const;
const fitted = (shape: keyof typeof fits, Bi: number) =>
  Math.LN10 / fits[shape].reduceRight((sum, a) => sum * Math.log(Bi) + a, 0) ** 2;

/** At Bi 20 the fits leave the root they were made for [of f·α/L²]. */
const off = { slab: -0.0256, cylinder: -0.0246 } as const;

export const example: Example = {
  title: 'The f and j of a hand method',
  story: `A hand method of cooling needs two numbers of a piece: in how many seconds what is left shrinks to a tenth, and how long the middle lags. We take
them from the exact first root. A handbook prints fits of that root instead; they agree where they are good, and at Bi 20, where they are known to leave
it, ours stays with the root.`,
  equation: 'f·α/L² = ln 10/ζ1²;  j = C1;  1/f = Σ 1/f_i, j = Π j_i',
  sources: ['ball-1923', 'lacroix-castaigne-1987'],
  run() {
    const rows: Row[] = [];
    for (const [shape, j] of [
      ['slab', 1.2732],
      ['cylinder', 1.602],
      ['sphere', 2],
    ] as const)
      rows.push(
        {
          quantity: `${shape}, surface at the medium: f·α/L²`,
          source: 'ball-1923',
          confidence: 'computed',
          expected: scipy(`f of a ${shape}`),
          ours: coolingSlope(shape, 1e6),
          tolerance: 3e-6,
          unit: '-',
          why: 'ours at Bi 1 000 000, theirs at none smaller than all',
        },
        {
          quantity: `${shape}, surface at the medium: j`,
          source: 'ball-1923',
          confidence: 'secondary',
          expected: j,
          ours: coolingLag(shape, 1e6),
          tolerance: 5e-5,
          unit: '-',
          why: 'printed to four decimals',
        },
      );
    rows.push({
      quantity: 'short cylinder of 40 × 120 mm: j',
      source: 'ball-1923',
      confidence: 'computed',
      expected: scipy('j of a short cylinder'),
      ours: coolingOf(
        [
          { shape: 'cylinder', half: 0.02 },
          { shape: 'slab', half: 0.06 },
        ],
        1e6,
        0.48,
        0.48 / 1050 / 3500,
      ).j,
      tolerance: 1e-4,
      unit: '-',
      why: 'the product of two coefficients',
    });
    for (const shape of ['slab', 'cylinder'] as const)
      for (const Bi of [0.5, 1, 2, 5, 20]) {
        const expected = fitted(shape, Bi);
        rows.push({
          quantity: `${shape}, Bi ${Bi}: f·α/L² by the published fit`,
          source: 'lacroix-castaigne-1987',
          confidence: 'secondary',
          expected,
          ours: coolingSlope(shape, Bi),
          tolerance: 0.004 * expected,
          unit: '-',
          why: 'the fit leaves the root by 0.14 % at most there, twice that for its square',
          ...(Bi === 20
            ? {
                differs: {
                  by: off[shape] * expected,
                  why: 'the fit leaves the exact root here; ours is the root',
                },
              }
            : {}),
        });
      }
    return rows;
  },
};
