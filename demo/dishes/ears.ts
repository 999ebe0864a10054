import type { DemoDish, DemoStep } from '../../src/app/demo-shape.ts';
import { ingredient } from '../ingredients.ts';
import { chillLog, coldRoom, coreLog, offalArrival, ticked } from '../limits.ts';

const method: readonly DemoStep[] = [
  {
    kind: 'trim',
    name: 'Clean the ears',
    how: 'Singe, scrape, cut out the ear canal, scrub with salt.',
    handsMin: 20,
    asks: [offalArrival('Ears on arrival'), ticked('Ear canals out, no bristles')],
    part: 'ear',
    weightG: 900,
    yieldPct: 88,
  },
  {
    kind: 'cook',
    name: 'Simmer',
    how: 'Covered with water, carrot, leek and celery, a plate on top, until a finger goes through the gristle.',
    handsMin: 8,
    asks: [coreLog, ticked('A finger goes through the gristle')],
    body: {
      shape: 'slab',
      thicknessMm: 12,
      layers: [{ name: 'ear', composition: ingredient('Pig’s ear').composition! }],
    },
    startC: 5,
    stages: [{ name: 'simmer', medium: 'simmering water', mediumC: 94, until: { min: 150 } }],
    target: { referenceC: 70, zC: 7.5, min: 2 },
    rules: ['gb-70c-2min'],
  },
  {
    kind: 'chill',
    name: 'Ice water, then press',
    how: 'Into ice water; when cold, between two trays with a weight.',
    handsMin: 6,
    asks: [chillLog],
    stages: [{ name: 'ice water', medium: 'ice water', mediumC: 1, until: { warmestC: 4 } }],
    rules: ['gb-chill-90min-8c'],
  },
  {
    kind: 'keep',
    name: 'Keep',
    how: 'Pressed, covered, labelled.',
    handsMin: 4,
    asks: [coldRoom],
    maxC: 3,
    days: 4,
    packed: 'open or covered',
  },
  {
    kind: 'finish',
    name: 'Fry crisp',
    how: 'Ribbons of 3 mm, dusted with flour, oil at 180 °C in small lots: they spit. Salt at once.',
    handsMin: 8,
    asks: [
      {
        kind: 'temperature',
        label: 'Oil before each lot',
        low: 170,
        high: 185,
        basis: 'Common practice, no published source.',
      },
    ],
    by: 'deep fat',
    mediumC: 180,
    min: 3,
  },
  {
    kind: 'plate',
    name: 'Plate',
    how: 'A heap, smoked paprika, a wedge of something sour.',
    handsMin: 1,
    asks: [],
    portionG: 45,
    portionsPerPiece: 2,
  },
];

export const ears: DemoDish = {
  name: 'Crisp ears',
  species: 'pig',
  part: 'ear',
  story: 'Simmered soft, pressed, cut in ribbons and fried: the snack that pays for the head.',
  versions: [{ by: 'Tobin Rusk', at: { daysAgo: 8, clock: '17:00' }, reason: 'First method.', method }],
  trials: [
    {
      version: 1,
      name: 'Pressed overnight or two hours',
      expect: 'Overnight cuts cleaner ribbons.',
      by: 'Tobin Rusk',
      at: { daysAgo: 4, clock: '16:45' },
    },
  ],
};
