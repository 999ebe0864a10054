import {
  brick,
  coefficient,
  eigenvalue,
  finiteCylinder,
  semiInfinite,
  theta,
  thetaMean,
} from '../src/core/heat/series.ts';
import { layeredCylinder, layeredRoots, stagedCylinder } from '../src/core/heat/series-composite.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const scipy = kept('conduction');
const shapes = ['slab', 'cylinder', 'sphere'] as const;

/** A textbook's table of the first root and its coefficient for slab, cylinder and sphere, four decimals, read in a copy. */
const printed: readonly (readonly [Bi: number, ...values: readonly number[]])[] = [
  [0.01, 0.0998, 1.0017, 0.1412, 1.0025, 0.173, 1.003],
  [0.1, 0.3111, 1.0161, 0.4417, 1.0246, 0.5423, 1.0298],
  [0.5, 0.6533, 1.0701, 0.9408, 1.1143, 1.1656, 1.1441],
  [1, 0.8603, 1.1191, 1.2558, 1.2071, 1.5708, 1.2732],
  [5, 1.3138, 1.2403, 1.9898, 1.5029, 2.5704, 1.787],
  [10, 1.4289, 1.262, 2.1795, 1.5677, 2.8363, 1.9249],
];
const food = { k: 0.48, rho: 1050, cp: 3500 };
const alpha = food.k / food.rho / food.cp;

const worst = (pairs: readonly (readonly [ours: number, theirs: number])[]) =>
  pairs.reduce((most, [a, b]) => (Math.abs(a - b) > most || Number.isNaN(a - b) ? Math.abs(a - b) : most), 0);

export const example: Example = {
  title: 'The exact solutions themselves',
  story: `Everything that follows is held against exact solutions, so these come first: the roots and coefficients of the series against a
textbook's table, and whole solutions against the same series summed apart with scipy: simple shapes, a short cylinder, a brick, a thick
body, a filling in its skin, and a piece moved from steam to air to ice.`,
  equation:
    'θ = Σ C_n·mode_n(x)·exp(−ζ_n²·Fo);  slab ζ·tan ζ = Bi, cylinder ζ·J1 = Bi·J0, sphere 1 − ζ·cot ζ = Bi',
  sources: ['cengel-heat-transfer', 'carslaw-jaeger-1959', 'incropera-dewitt'],
  run() {
    const rows: Row[] = [];
    for (const [Bi, ...values] of printed)
      shapes.forEach((shape, s) => {
        const root = eigenvalue(shape, Bi, 0);
        const pair = [
          ['first root', root],
          ['its coefficient', coefficient(shape, root)],
        ] as const;
        pair.forEach(([name, ours], i) => {
          rows.push({
            quantity: `${shape}, Bi ${Bi}: ${name}`,
            source: 'cengel-heat-transfer',
            confidence: 'secondary',
            expected: values[2 * s + i] ?? Number.NaN,
            ours,
            tolerance: 6e-5,
            unit: '-',
            why: 'printed to four decimals',
          });
        });
      });
    const scipys = (
      quantity: string,
      pairs: readonly (readonly [number, number])[],
      unit: string,
      tolerance: number,
    ) => {
      rows.push({
        quantity: `${quantity}: largest of ${pairs.length} differences`,
        source: 'carslaw-jaeger-1959',
        confidence: 'computed',
        expected: 0,
        ours: worst(pairs),
        tolerance,
        unit,
        why: 'two programs that sum the same series',
      });
    };
    const biots = [0.01, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100];
    for (const shape of shapes)
      scipys(
        `${shape}: roots and coefficients for twelve Biot numbers`,
        biots.flatMap((Bi) => {
          const root = eigenvalue(shape, Bi, 0);
          return [
            [root, scipy(`${shape} Bi ${Bi} root`)],
            [coefficient(shape, root), scipy(`${shape} Bi ${Bi} coefficient`)],
          ] as const;
        }),
        '-',
        1e-9,
      );
    scipys(
      'cylinder: the first six roots for Bi 1 and 10',
      [1, 10].flatMap((Bi) =>
        [0, 1, 2, 3, 4, 5].map(
          (n) => [eigenvalue('cylinder', Bi, n), scipy(`cylinder Bi ${Bi} root ${n + 1}`)] as const,
        ),
      ),
      '-',
      1e-9,
    );
    const places = [
      ['centre', 0],
      ['half', 0.5],
      ['surface', 1],
    ] as const;
    const questions = [
      [0.1, 0.2],
      [0.5, 0.2],
      [1, 0.1],
      [1, 0.2],
      [1, 0.5],
      [1, 1],
      [5, 0.1],
      [5, 0.2],
      [5, 0.5],
      [10, 0.1],
      [10, 0.2],
      [10, 0.5],
      [100, 0.2],
    ] as const;
    scipys(
      'cylinder: thirteen pairs of Bi and Fo, three places and the mean',
      questions.flatMap(([Bi, Fo]) => [
        ...places.map(
          ([name, x]) => [theta('cylinder', Bi, Fo, x), scipy(`cylinder Bi ${Bi} Fo ${Fo} ${name}`)] as const,
        ),
        [thetaMean('cylinder', Bi, Fo), scipy(`cylinder Bi ${Bi} Fo ${Fo} mean`)] as const,
      ]),
      '-',
      1e-9,
    );
    scipys(
      'cylinder whose surface is at the medium: the middle at six Fo',
      [0.05, 0.1, 0.2, 0.3, 0.5, 1].map(
        (Fo) => [theta('cylinder', 1e6, Fo, 0), scipy(`cylinder Bi inf Fo ${Fo} centre`)] as const,
      ),
      '-',
      1e-5,
    );
    const both = [
      ['slab', 1, 0.5],
      ['slab', 10, 0.5],
      ['sphere', 1, 0.5],
      ['sphere', 10, 0.2],
    ] as const;
    scipys(
      'slab and sphere: middle and surface',
      both.flatMap(([shape, Bi, Fo]) =>
        [0, 1].map(
          (x) =>
            [
              theta(shape, Bi, Fo, x),
              scipy(`${shape} Bi ${Bi} Fo ${Fo} ${x === 0 ? 'centre' : 'surface'}`),
            ] as const,
        ),
      ),
      '-',
      1e-9,
    );
    scipys(
      'short cylinder of 40 × 120 mm, middle, 5 into 100 °C',
      [100, 300, 1000, 5000].flatMap((h) =>
        (h === 5000 ? [600, 900] : [600, 1200]).map(
          (t) =>
            [
              100 - 95 * finiteCylinder(0.02, 0.06, h, food.k, alpha, t, 0, 0),
              scipy(`finite cylinder h ${h} ${t} s centre`),
            ] as const,
        ),
      ),
      'K',
      1e-6,
    );
    scipys(
      'brick of 102 × 165 × 279 mm at the time scipy finds for 10 °C',
      [
        [
          -1 + 71 * brick([0.051, 0.0825, 0.1395], [0, 0, 0], 48, 0.379, 0.379 / 1080 / 3740, scipy('ham')),
          10,
        ],
      ],
      'K',
      1e-6,
    );
    scipys(
      'thick body in oil at 180 °C, 0 to 3 mm deep, 5 to 30 s',
      [5, 10, 20, 30].flatMap((t) =>
        [0, 1, 2, 3].map(
          (mm) =>
            [5 + 175 * semiInfinite(mm / 1000, t, 400, 0.45, 1.3e-7), scipy(`oil ${mm} mm ${t} s`)] as const,
        ),
      ),
      'K',
      1e-6,
    );
    const core = { k: 0.48, rho: 1020, cp: 3470 };
    const skin = { k: 0.36, rho: 1000, cp: 3190 };
    const names = ['middle', '10 mm', 'under the skin', 'surface'];
    scipys(
      'filling in its skin, four places',
      (
        [
          [1000, [60, 120, 300, 600, 900]],
          [100, [300, 600, 1200]],
        ] as const
      ).flatMap(([h, times]) =>
        times.flatMap((t) =>
          layeredCylinder(0.015, 0.0175, core, skin, h, 100, 5, t, [0, 0.01, 0.015, 0.0175]).map(
            (C, i) => [C, scipy(`layered h ${h} ${t} s ${names[i]}`)] as const,
          ),
        ),
      ),
      'K',
      1e-5,
    );
    for (const h of [1000, 100]) {
      const roots = layeredRoots(0.015, 0.0175, core, skin, h, 3);
      scipys(
        `filling in its skin, h ${h}: the first three λ`,
        roots.map((root, n) => [root, scipy(`layered h ${h} lambda ${n + 1}`)] as const),
        '1/√s',
        1e-9,
      );
    }
    const stages = [
      { s: 900, medium: 100, h: 1000 },
      { s: 120, medium: 20, h: 10 },
      { s: 1200, medium: 0, h: 300 },
    ];
    scipys(
      'steam, air, ice: three places at eight times',
      [300, 600, 900, 960, 1020, 1420, 1820, 2220].flatMap((t) =>
        stagedCylinder(0.02, food, 5, stages, t, [0, 0.5, 1]).map(
          (C, i) => [C, scipy(`staged ${t} s ${['centre', 'half', 'surface'][i]}`)] as const,
        ),
      ),
      'K',
      1e-3,
    );
    return rows;
  },
};
