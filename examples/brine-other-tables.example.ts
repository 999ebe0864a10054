import { brineDensity, brineFreezing } from '../src/core/properties/brine.ts';
import type { Example, Row } from './case.ts';

/** Specific volume of sodium chloride solutions [cm³/g] at 0.1 MPa, by molality [mol/kg]. */
const molalities = [0.1, 0.25, 0.5, 0.75, 1, 2, 3, 4, 5];
const volumes: readonly (readonly [C: number, ...v: readonly number[]])[] = [
  [0, 0.995732, 0.989259, 0.978889, 0.968991, 0.959525, 0.925426, 0.896292, 0.870996, 0.848646],
  [10, 0.995998, 0.989781, 0.979804, 0.970256, 0.961101, 0.927905, 0.899262, 0.874201, 0.851958],
  [20, 0.99762, 0.991564, 0.981833, 0.972505, 0.963544, 0.930909, 0.902565, 0.877643, 0.855469],
  [30, 1.000279, 0.994319, 0.984735, 0.975539, 0.966694, 0.934382, 0.906194, 0.881334, 0.859185],
];
/** By how much the freezing point is lowered [K]. */
const lowered = [
  [0.1, 0.35],
  [0.25, 0.85],
  [0.5, 1.68],
  [0.75, 2.6],
] as const;
const percent = (m: number) => (100 * m * 0.0584428) / (1 + m * 0.0584428);

export const example: Example = {
  title: 'Brine by other people’s tables',
  story: `Density and freezing point of brine come from two tables. Here they are held against two others: specific volumes that were
fitted to all measurements known in 1982, and freezing points from the Smithsonian's tables, both read in a copy. Ours took from those volumes only how
its density bends with temperature, so that the rows of 20 °C stand apart from them and the rows of 0 and 30 °C show that the bend was carried over.`,
  equation: 'w = 100·m·M/(1 + m·M),  M = 0.0584428 kg/mol;  ρ = 1/v',
  sources: ['rogers-pitzer-1982', 'smithsonian-tables-1956'],
  run: (): Row[] => [
    ...volumes.flatMap(([C, ...v]) =>
      molalities.map(
        (m, i): Row => ({
          quantity: `density of ${percent(m).toFixed(2)} % brine at ${C} °C`,
          source: 'rogers-pitzer-1982',
          confidence: 'secondary',
          expected: 1000 / (v[i] ?? Number.NaN),
          ours: brineDensity(percent(m), C),
          tolerance: 1,
          unit: 'kg/m³',
          why: 'a thousandth: a hydrometer in a kitchen reads no finer',
        }),
      ),
    ),
    ...lowered.map(
      ([m, K]): Row => ({
        quantity: `freezing of ${percent(m).toFixed(2)} % brine`,
        source: 'smithsonian-tables-1956',
        confidence: 'secondary',
        expected: -K,
        ours: brineFreezing(percent(m)),
        tolerance: 0.05,
        unit: '°C',
        why: 'straight between rows of our table; the other prints two decimals',
        ...(m >= 0.5
          ? {
              differs: {
                by: m === 0.5 ? 0.055 : 0.127,
                why: 'the older table falls faster here than ours, which is Lange’s',
              },
            }
          : {}),
      }),
    ),
  ],
};
