import type { DemoDish, DemoStep } from '../../src/app/demo-shape.ts';
import { sr28 } from '../composition.ts';
import { line } from '../ingredients.ts';
import { chillLog, coldRoom, coreLog, hotCore, liftOut, offalArrival, ticked, weighed } from '../limits.ts';

/** One tray. */
const batter = [
  line('Pig’s blood', 1_500),
  line('Back fat', 420),
  line('Pinhead oats', 260),
  line('Onion', 300),
  line('Whipping cream, 36 % fat', 200),
  line('Salt', 34),
  line('Black pepper', 6),
  line('Allspice, ground', 5),
];

/** Blood has no published composition at hand, so the mix has none: a finished blood sausage stands for it. */
const bloodSausage = sr28(
  '07005',
  { water: 47.3, protein: 14.6, fat: 34.5, carbohydrate: 1.29, ash: 2.31 },
  'blood sausage stands for the mix',
).composition;

const method: readonly DemoStep[] = [
  {
    kind: 'trim',
    name: 'Take in and strain the blood',
    how: 'Only blood collected for food from animals that passed, held until they all had. Strain through a fine sieve, stir, cold.',
    handsMin: 10,
    asks: [
      offalArrival('Blood on arrival, stirred'),
      ticked('Delivery note says collected for food, all animals passed'),
    ],
    part: 'blood',
    weightG: 1_560,
    yieldPct: 96,
  },
  {
    kind: 'mix',
    name: 'Mix the pudding',
    how: 'Fat in small dice, blanched and cold. Onion sweated and cold. Oats soaked overnight in the cream. Blood last, stirred and not beaten.',
    handsMin: 25,
    asks: [weighed('Mix for one tray', 2_600, 2_820)],
    lines: batter,
    maxC: 12,
  },
  {
    kind: 'cook',
    name: 'Set in the tray',
    how: 'Lined tray, 30 mm deep, film over. Steam oven at 92 °C, tray on the open rack so that the steam gets under it. Stir the tray once when the edge begins to set, or the oats sink.',
    handsMin: 10,
    asks: [coreLog, liftOut],
    body: { shape: 'slab', thicknessMm: 30, layers: [{ name: 'pudding', composition: bloodSausage }] },
    startC: 8,
    stages: [{ name: 'steam oven', mediumC: 92, hWm2K: 400, until: { min: 24 } }],
    target: { referenceC: 70, zC: 7.5, min: 2 },
    rules: ['gb-70c-2min'],
  },
  {
    kind: 'chill',
    name: 'Blast chiller',
    how: 'Straight in, tray on the rack, nothing above it, until the middle is at 6 °C.',
    handsMin: 3,
    asks: [chillLog],
    stages: [{ name: 'blast chiller', medium: 'blast chiller', mediumC: -5, until: { warmestC: 6 } }],
    rules: ['gb-chill-90min-8c'],
  },
  {
    kind: 'keep',
    name: 'Keep',
    how: 'Cut in bars, wrapped, labelled.',
    handsMin: 10,
    asks: [coldRoom, ticked('Labelled: batch, use by, gluten, milk')],
    maxC: 3,
    days: 5,
    packed: 'open or covered',
  },
  {
    kind: 'finish',
    name: 'Fry',
    how: 'Bars in a dry pan until crisp on both sides and hot through.',
    handsMin: 6,
    asks: [hotCore],
    by: 'dry pan',
    mediumC: 190,
    min: 6,
    coreC: 75,
  },
  {
    kind: 'plate',
    name: 'Plate',
    how: 'One bar, roast apple, a fried egg if it is lunch.',
    handsMin: 2,
    asks: [],
    portionG: 110,
    portionsPerPiece: 23,
  },
];

export const bloodPudding: DemoDish = {
  name: 'Blood pudding, oats and cream',
  species: 'pig',
  part: 'blood',
  story: 'A tray of the pig’s blood with oats: a slab, thin enough to cool in time.',
  versions: [{ by: 'Tobin Rusk', at: { daysAgo: 11, clock: '15:00' }, reason: 'First method.', method }],
  trials: [
    {
      version: 1,
      name: '30 mm against 40 mm tray',
      expect: 'At 30 mm it cools in time in the chiller; at 40 mm it may not.',
      by: 'Tobin Rusk',
      at: { daysAgo: 7, clock: '14:30' },
      conclusion: {
        text: '30 mm. The 40 mm tray took 20 minutes longer to set and was still at 11 °C after an hour and a half.',
        by: 'Wren Aldous',
        at: { daysAgo: 5, clock: '15:10' },
      },
    },
  ],
};
