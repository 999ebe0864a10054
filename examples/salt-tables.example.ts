import { saltOfSalometer } from '../src/core/properties/brine.ts';
import { brineReading, saltOfGravity } from '../src/core/properties/brine-readings.ts';
import { cureEquilibrium } from '../src/core/salt/equilibrium.ts';
import { ingoingNitrite, ionOf, saltOfIon } from '../src/core/salt/nitrite.ts';
import {
  middleInEndlessBath,
  type SaltShape,
  uptakeInEndlessBath,
  uptakeInLimitedBath,
} from '../src/core/salt/series.ts';
import { saltWaterActivity, waterPhaseSalt } from '../src/core/salt/water-activity.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const scipy = kept('salt');

const computed = { confidence: 'computed' } as const;
const six = 'printed to six digits';
const uptake: readonly (readonly [SaltShape, number])[] = [
  ['cylinder', 0.001],
  ['cylinder', 0.005],
  ['cylinder', 0.01],
  ['cylinder', 0.02],
  ['cylinder', 0.05],
  ['cylinder', 0.1],
  ['cylinder', 0.2],
  ['cylinder', 0.3],
  ['cylinder', 0.5],
  ['cylinder', 1],
  ['slab', 0.001],
  ['slab', 0.01],
  ['slab', 0.05],
  ['slab', 0.1],
  ['slab', 0.2],
  ['slab', 0.3],
  ['slab', 0.5],
  ['slab', 1],
  ['slab', 2],
];
const limited: readonly (readonly [SaltShape, number, number])[] = [
  ['cylinder', 1, 0.05],
  ['cylinder', 1, 0.1],
  ['cylinder', 1, 0.2],
  ['cylinder', 5, 0.05],
  ['cylinder', 5, 0.1],
  ['slab', 1, 0.1],
  ['slab', 5, 0.1],
];
/** Hours in an endless bath: shape, L [m], D [m²/s], uptake. */
const days: readonly (readonly [SaltShape, number, number, number])[] = [
  ['cylinder', 0.01, 1e-10, 0.570828],
  ['cylinder', 0.01, 2e-10, 0.744705],
  ['cylinder', 0.01, 5e-10, 0.94313],
  ['cylinder', 0.02, 2e-10, 0.423876],
  ['slab', 0.0025, 1e-10, 0.973243],
];
const balances = [
  [1, 6, 3.4137, 26.777],
  [2, 6, 4.3516, 34.468],
  [2, 8, 5.8021, 46.665],
  [0.5, 10, 3.9758, 31.368],
  [3, 3.5, 2.7943, 21.778],
] as const;
const activities = [0.5, 0.9, 1, 2, 3.5, 5, 8, 10, 15, 20, 26.4] as const;
/** Salt and water of a product, %: water-phase salt %, activity. */
const products = [
  [1.8, 70, 2.507, 0.9855],
  [2.5, 65, 3.7037, 0.9783],
  [3, 60, 4.7619, 0.9717],
] as const;
const molalities = [0.1, 0.5, 1, 2, 3, 4, 5, 6];

const exact = (quantity: string, expected: number, ours: number, tolerance: number): Row => ({
  quantity,
  source: 'fsis-7620-3',
  // The handbook's formulas are remembered.
  confidence: 'memory',
  expected,
  ours,
  tolerance,
  unit: 'mg/kg',
  why: 'arithmetic, the expected value rounded',
});
const ion = (quantity: string, expected: number, ours: number): Row => ({
  ...exact(quantity, expected, ours, 0.1),
  source: 'own-computation',
  confidence: 'computed',
});

export const example: Example = {
  title: 'Salt by table: uptake, balance, water activity, salometer and nitrite',
  story: `The figures that a salting table would print, worked out apart from this program from the published equations, against what the
program's own functions give: how much of its salt a piece has taken up, where meat and brine end, what water activity salt
makes, what an instrument reads, and how much nitrite goes in.`,
  equation:
    'M_t/M_∞ = 1 − Σ w_n·exp(−q_n²·Fo); C = S/(S + W); ln a_w = −2·0.0180153·m·φ(m); °S = 100·w/26.395',
  sources: [
    'crank-1975',
    'pitzer-mayorga-1973',
    'salt-solubility-table',
    'brine-density-table',
    'fsis-7620-3',
  ],
  run(): Row[] {
    const crank = { source: 'crank-1975', ...computed, tolerance: 1e-6, unit: '-', why: six };
    const day = (L: number, D: number) => (86_400 * D) / L ** 2;
    return [
      ...uptake.map(([shape, Fo]) => ({
        quantity: `${shape}, endless bath, Fo ${Fo}`,
        expected: scipy(`${shape} endless ${Fo}`),
        ours: uptakeInEndlessBath(shape, Fo),
        ...crank,
      })),
      ...limited.map(([shape, alpha, Fo]) => ({
        quantity: `${shape}, α ${alpha}, Fo ${Fo}`,
        expected: scipy(`${shape} limited ${alpha} ${Fo}`),
        ours: uptakeInLimitedBath(shape, alpha, Fo),
        ...crank,
      })),
      ...days.map(([shape, L, D, expected]) => ({
        quantity: `${shape}, ${L * 1000} mm, D ${D} m²/s, 24 h`,
        expected,
        ours: uptakeInEndlessBath(shape, day(L, D)),
        ...crank,
      })),
      {
        quantity: 'middle of a cylinder of 20 mm, D 2e-10 m²/s, 24 h',
        expected: 0.415774,
        ours: middleInEndlessBath('cylinder', day(0.01, 2e-10)),
        ...crank,
      },
      ...balances.flatMap(([brine, pct, C, grams]): Row[] => {
        const rest = cureEquilibrium({ meat: 1, water: 0.7576, medium: brine, mediumSalt: pct / 100 });
        const common = { source: 'own-computation', ...computed, why: 'balance of mass, rounded' };
        return [
          {
            quantity: `meat in ${brine} times its weight of ${pct} %: water-phase salt`,
            expected: C,
            ours: rest.waterPhaseSalt * 100,
            tolerance: 1e-4,
            unit: '%',
            ...common,
          },
          {
            quantity: `the same: salt in a kilogram`,
            expected: grams,
            ours: rest.salt * 1000,
            tolerance: 1e-3,
            unit: 'g',
            ...common,
          },
        ];
      }),
      ...activities.map((pct) => ({
        quantity: `a_w of ${pct} % salt`,
        source: 'pitzer-mayorga-1973',
        ...computed,
        expected: scipy(`a_w ${pct} %`),
        ours: saltWaterActivity(pct / 100),
        tolerance: 1e-6,
        unit: '-',
        why: 'the same equation, typed in twice; against measurements it is good to 0.0007',
      })),
      ...molalities.map((m) => ({
        quantity: `a_w at ${m} mol/kg`,
        source: 'pitzer-mayorga-1973',
        ...computed,
        expected: scipy(`a_w ${m} mol`),
        ours: saltWaterActivity((m * 0.0584428) / (1 + m * 0.0584428)),
        tolerance: 1e-6,
        unit: '-',
        why: 'the same equation, typed in twice; against measurements it is good to 0.0007',
      })),
      ...products.flatMap(([salt, water, pct, a]): Row[] => {
        const w = waterPhaseSalt(salt / 100, water / 100);
        return [
          {
            quantity: `${salt} % salt, ${water} % water: water-phase salt`,
            source: 'own-computation',
            ...computed,
            expected: pct,
            ours: w * 100,
            tolerance: 1e-4,
            unit: '%',
            why: 'rounded',
          },
          {
            quantity: `the same: a_w`,
            source: 'pitzer-mayorga-1973',
            ...computed,
            expected: a,
            ours: saltWaterActivity(w),
            tolerance: 1e-3,
            unit: '-',
            why: 'the equation is good to 0.0007',
          },
        ];
      }),
      {
        quantity: 'poultry of 75 % water in as much water with 60 g of salt: water-phase salt',
        source: 'own-computation',
        ...computed,
        expected: 3.3149,
        ours:
          cureEquilibrium({ meat: 1, water: 0.75, medium: 1.06, mediumSalt: 0.06 / 1.06 }).waterPhaseSalt *
          100,
        tolerance: 1e-4,
        unit: '%',
        why: 'rounded',
      },
      {
        quantity: '20 degrees of the salometer',
        source: 'salt-solubility-table',
        ...computed,
        expected: 5.279,
        ours: saltOfSalometer(20),
        tolerance: 1e-3,
        unit: '%',
        why: 'rounded',
      },
      {
        quantity: 'specific gravity there',
        source: 'brine-density-table',
        ...computed,
        expected: 1.0383,
        ours: brineReading(saltOfSalometer(20)).gravity,
        tolerance: 0.002,
        unit: '-',
        why: 'straight between rows, a cubic in the expected value',
      },
      {
        quantity: 'and back',
        source: 'brine-density-table',
        ...computed,
        expected: 5.279,
        ours: saltOfGravity(1.0383),
        tolerance: 0.02,
        unit: '%',
        why: 'straight between rows, a cubic in the expected value',
      },
      {
        quantity: 'freezes at',
        source: 'langes-handbook-5-13',
        ...computed,
        expected: -3.16,
        ours: brineReading(saltOfSalometer(20)).comesOutC,
        tolerance: 0.05,
        unit: '°C',
        why: 'straight between rows, a quartic in the expected value',
      },
      {
        quantity: '95 degrees: salt comes out at',
        source: 'salt-solubility-table',
        ...computed,
        expected: -9.7,
        ours: brineReading(saltOfSalometer(95)).comesOutC,
        tolerance: 0.1,
        unit: '°C',
        why: 'printed to a tenth',
      },
      exact(
        '2.5 g of 6.25 % cure to a kilogram',
        156.25,
        ingoingNitrite({ method: 'dry', nitrite: 0.0025 * 0.0625, meat: 1 }),
        1e-9,
      ),
      ion('of it the ion', 104.19, ionOf('NaNO2', 156.25)),
      exact(
        '20 g/kg of a curing salt of 0.6 %: the ion',
        80.02,
        ionOf('NaNO2', ingoingNitrite({ method: 'dry', nitrite: 0.02 * 0.006, meat: 1 })),
        0.08,
      ),
      exact(
        'a kilogram in a kilogram of pickle with 0.30 g, to equilibrium',
        150,
        ingoingNitrite({ method: 'immersion to equilibrium', nitrite: 0.0003, meat: 1, pickle: 1 }),
        1e-9,
      ),
      ion('sodium nitrite that holds 55 mg/kg of the ion', 82.48, saltOfIon('NaNO2', 55)),
    ];
  },
};
