import { condensateFilm, type MediumName, media } from '../src/core/properties/media.ts';
import type { Example, Row } from './case.ts';

type Which = 'h' | 'low' | 'high';
/** What was published: one figure or the lowest and highest, of which medium of ours, and which of its figures is held against it. */
const published: readonly (readonly [
  quantity: string,
  source: string,
  expected: number | readonly [low: number, high: number],
  medium: MediumName,
  which: Which,
  tolerance: number,
  confidence?: 'memory',
])[] = [
  ['steam on food, 1991 to 1993: ours usually', 'pannu-castaigne-arul', [400, 12_000], 'steam', 'h', 0],
  ['the same: lowest of ours', 'pannu-castaigne-arul', 400, 'steam', 'low', 0],
  ['steam on food as customary: highest of ours', 'pannu-castaigne-arul', 5000, 'steam', 'high', 0],
  [
    'ham in a chiller, found by its mean and with what dries off: ours usually',
    'ryland-2006',
    [5.1, 9.11],
    'still fridge',
    'h',
    0,
  ],
  ['ham in a chiller as expected: lowest of ours', 'ryland-2006', [5, 20], 'still fridge', 'low', 0],
  ['the same: highest of ours', 'ryland-2006', [5, 20], 'still fridge', 'high', 0],
  ['turkey in a still oven, fitted: ours usually', 'chang-1998', 19.252, 'still oven', 'h', 1],
  ['cake in a tunnel oven at 186 to 225 °C: ours usually', 'baik-1999', [20, 48], 'fan oven', 'h', 0],
  [
    'potato in oil at 180 °C, before and after it bubbles: lowest of ours',
    'hubbard-farkas-1999',
    300,
    'frying oil',
    'low',
    50,
  ],
  ['the same where it bubbles most: highest of ours', 'hubbard-farkas-1999', 1100, 'frying oil', 'high', 0],
  [
    'frying at air pressure where it bubbles most: highest of ours',
    'mir-bel-2012',
    [800, 2000],
    'frying oil',
    'high',
    0,
  ],
  ['pork in oil of 90 to 110 °C: ours usually', 'sosa-morales-2006', [187.7, 226.1], 'confit fat', 'h', 0],
  ['apple in a slow stream of cold water: lowest of ours', 'singh-heldman', 50, 'cold water', 'low', 0],
  [
    'eggs in hot water, three problems: ours usually',
    'cengel-heat-transfer',
    [800, 1400],
    'simmering water',
    'h',
    0,
  ],
  ['eggs in boiling water: ours usually', 'cengel-heat-transfer', [800, 1400], 'boiling water', 'h', 0],
  ['pouches in a stirred bath: lowest of ours', 'baldwin-2012', [95, 155], 'water bath', 'low', 0, 'memory'],
];
const figures: Record<Which, string> = {
  h: 'what we use where nothing is said',
  low: 'the low end of our range',
  high: 'the high end of our range',
};

export const example: Example = {
  title: 'Coefficients of kitchen media, beside those that were published',
  story: `Where a step says only “steam” or “water bath”, a coefficient of a table is used, and what its range means in minutes is told. This holds the table's figures against
published ones. They scatter by more than ten to one for steam: agreement says that ours lie where others' do, not that yours do. A probe in your own machine says more.`,
  equation: 'q = h·(T_medium − T_surface)',
  sources: [
    'pannu-castaigne-arul',
    'ryland-2006',
    'chang-1998',
    'baik-1999',
    'hubbard-farkas-1999',
    'mir-bel-2012',
    'sosa-morales-2006',
    'singh-heldman',
    'cengel-heat-transfer',
    'baldwin-2012',
  ],
  run() {
    const rows = published.map(
      ([quantity, source, expected, medium, which, tolerance, confidence]): Row => ({
        quantity,
        source,
        confidence: confidence ?? 'secondary',
        expected: typeof expected === 'number' ? expected : { low: expected[0], high: expected[1] },
        ours: media[medium][which],
        tolerance,
        unit: 'W/(m² K)',
        why: `${figures[which]} for ${medium}`,
      }),
    );
    rows.push({
      quantity: 'film of water under steam, the customary figure for steam on food',
      source: 'pannu-castaigne-arul',
      confidence: 'secondary',
      expected: 5000,
      ours: condensateFilm.h,
      tolerance: 0,
      unit: 'W/(m² K)',
      why: 'the figure itself',
    });
    return rows;
  },
};
