import {
  brineDensity,
  brineFreezing,
  brineGravity,
  saltDiffusivity,
  saturatedBrine,
  skinDiffusivity,
} from '../src/core/properties/brine.ts';
import { saltWaterActivity } from '../src/core/salt/water-activity.ts';
import type { Example, Row } from './case.ts';

/** Salt of the brine [%], density at 20 °C [kg/m³], its fall by the kelvin. */
const densities: readonly (readonly [number, number, number])[] = [
  [1, 1005.3, 0.22],
  [2, 1012.2, 0.24],
  [4, 1026.8, 0.28],
  [6, 1041.3, 0.31],
  [8, 1055.9, 0.34],
  [10, 1070.7, 0.37],
  [12, 1085.7, 0.39],
  [14, 1100.9, 0.42],
  [16, 1116.2, 0.44],
  [18, 1131.9, 0.47],
  [20, 1147.8, 0.49],
  [22, 1164.0, 0.51],
  [24, 1180.4, 0.53],
  [26, 1197.2, 0.55],
];
/** Salt [%], first ice [°C], specific gravity at 15 °C. */
const lange: readonly (readonly [number, number, number])[] = [
  [1, -0.58, 1.007],
  [2, -1.13, 1.014],
  [3, -1.72, 1.021],
  [4, -2.35, 1.028],
  [5, -2.97, 1.036],
  [6, -3.63, 1.043],
  [7, -4.32, 1.051],
  [8, -5.03, 1.059],
  [9, -5.77, 1.067],
  [15, -10.88, 1.112],
  [16, -11.9, 1.119],
  [17, -12.93, 1.127],
  [18, -14.03, 1.135],
  [19, -15.21, 1.143],
  [20, -16.46, 1.152],
  [21, -17.78, 1.159],
  [22, -19.19, 1.168],
  [23, -20.69, 1.176],
  [23.3, -21.1, 1.179],
];
/** Temperature [°C], salt of a saturated brine [%]. */
const saturated: readonly (readonly [number, number])[] = [
  [-21.11, 23.31],
  [-17.78, 23.83],
  [-12.22, 24.7],
  [-6.67, 25.53],
  [0, 26.29],
  [0.1, 26.31],
  [4.44, 26.33],
  [10, 26.36],
  [15.56, 26.395],
  [21.11, 26.45],
  [37.78, 26.68],
  [51.67, 26.92],
  [65.56, 27.21],
  [79.44, 27.62],
  [100, 28.12],
  [108.7, 28.46],
];
const largest = (differences: readonly number[]) =>
  differences.reduce((most, d) => (Math.abs(d) > most || Number.isNaN(d) ? Math.abs(d) : most), 0);

export const example: Example = {
  title: 'Brine, against the tables it rests on, typed anew',
  story: `The program reads brine from printed tables, straight between their rows. A wrong figure in one of them would go unseen, so they were typed a second time and are held
against what the program says; and one table against another: the gravities of the freezing table beside those worked out from the densities. Then what salt
does to water activity, and how fast it moves in meat, beside what was published.`,
  equation: 'ρ(T) = ρ20 − A·(T − 20 °C);  gravity at 60 °F = ρ/999.0',
  sources: [
    'brine-density-table',
    'langes-handbook-5-13',
    'salt-solubility-table',
    'usda-ars-water-activity',
    'pork-salting-2015',
    'fish-skin-salt-1992',
  ],
  run(): Row[] {
    const base = { confidence: 'secondary', expected: 0 } as const;
    return [
      {
        ...base,
        quantity: `density at 20 °C, ${densities.length} rows: largest difference`,
        source: 'brine-density-table',
        ours: largest(densities.map(([pct, rho]) => brineDensity(pct, 20) - rho)),
        tolerance: 1e-9,
        unit: 'kg/m³',
        why: 'the table itself',
      },
      {
        ...base,
        quantity: `its fall by the kelvin about 20 °C, ${densities.length} rows: largest difference`,
        source: 'brine-density-table',
        ours: largest(
          densities.map(([pct, , slope]) => (brineDensity(pct, 15) - brineDensity(pct, 25)) / 10 - slope),
        ),
        tolerance: 1e-9,
        unit: 'kg/(m³ K)',
        why: 'the table itself',
      },
      {
        ...base,
        quantity: `first ice, ${lange.length} rows: largest difference`,
        source: 'langes-handbook-5-13',
        ours: largest(lange.map(([pct, C]) => brineFreezing(pct) - C)),
        tolerance: 1e-9,
        unit: 'K',
        why: 'the table itself',
      },
      {
        ...base,
        quantity: `specific gravity, ${lange.length} rows, beside ours from the densities: largest difference`,
        source: 'langes-handbook-5-13',
        ours: largest(lange.map(([pct, , gravity]) => brineGravity(pct) - gravity)),
        tolerance: 0.002,
        unit: '-',
        why: 'another table, printed to a thousandth',
      },
      {
        ...base,
        quantity: `salt of a saturated brine, ${saturated.length} rows: largest difference`,
        source: 'salt-solubility-table',
        ours: largest(saturated.map(([C, pct]) => saturatedBrine(C) - pct)),
        tolerance: 1e-9,
        unit: '%',
        why: 'the table itself',
      },
      {
        quantity: 'water activity of 4.5 % brine',
        source: 'usda-ars-water-activity',
        confidence: 'secondary',
        expected: 0.974,
        ours: saltWaterActivity(0.045),
        tolerance: 0.001,
        unit: '-',
        why: 'printed to a thousandth',
      },
      {
        quantity: 'diffusivity of salt in pork loin at 5 °C',
        source: 'pork-salting-2015',
        confidence: 'secondary',
        expected: 1.9,
        ours: saltDiffusivity(5) * 1e10,
        tolerance: 0.28,
        unit: '1e-10 m²/s',
        why: 'what was measured, and its spread',
        differs: {
          by: 0.6,
          why: 'one study; ours stands in the middle of what was published for muscle at 2 to 7 °C, 1.5 to 4. Every answer tells the range: by the study a front takes a third longer',
          unsafe: true,
        },
      },
      {
        quantity: 'diffusivity of salt in skin with its fat, beside that of fish',
        source: 'fish-skin-salt-1992',
        confidence: 'secondary',
        expected: { low: 1e-4, high: 0.01 },
        ours: skinDiffusivity.at5C * 1e10,
        tolerance: 0,
        unit: '1e-10 m²/s',
        why: 'the range that was measured',
        differs: {
          by: 0.09,
          why: 'fish, skin side; nobody has published a bird’s. The range every answer tells begins at the fish’s upper end: by it skin is a wall, and what is salted from the skin side only may stay unsalted',
          unsafe: true,
        },
      },
    ];
  },
};
