import type { DemoDish, DemoStep } from '../../src/app/demo-shape.ts';
import { ingredient, line } from '../ingredients.ts';
import { chillLog, coldRoom, coreLog, poultryArrival, weighed } from '../limits.ts';

const method: readonly DemoStep[] = [
  {
    kind: 'trim',
    name: 'Chop and roast',
    how: 'Backs, necks without skin and wing ends, chopped, roasted brown at 210 °C.',
    handsMin: 20,
    asks: [poultryArrival('Bones on arrival'), weighed('Bones, roasted')],
    part: 'neck meat and bone',
    weightG: 6_000,
    yieldPct: 80,
  },
  {
    kind: 'cook',
    name: 'Simmer',
    how: 'Cold water to cover, skim, then carrot, leek and celery. Five hours, barely moving. Strain through cloth.',
    handsMin: 20,
    asks: [coreLog],
    body: {
      shape: 'cylinder',
      diameterMm: 32,
      layers: [{ name: 'neck, as meat', composition: ingredient('Goose meat').composition! }],
    },
    startC: 20,
    stages: [{ name: 'simmer', medium: 'simmering water', mediumC: 95, until: { min: 300 } }],
    target: { referenceC: 70, zC: 7.5, min: 2 },
    rules: ['gb-70c-2min'],
  },
  {
    kind: 'mix',
    name: 'Strained',
    how: 'What came through the cloth, weighed: bones and vegetables stay behind, what they gave stays in it. Celery does too.',
    handsMin: 5,
    asks: [weighed('Stock, strained')],
    lines: [{ ...line('Strained stock', 7_000), allergens: ['celery'], pricePerKg: 0 }],
    maxC: 40,
  },
  {
    kind: 'chill',
    name: 'Chill the liquid',
    how: 'Liquid, not pieces: shallow trays of 40 mm in the blast chiller, stirred every ten minutes. Not predicted here; the probe in the deepest tray decides.',
    handsMin: 10,
    asks: [chillLog],
    stages: [],
    rules: ['gb-chill-90min-8c'],
  },
  {
    kind: 'keep',
    name: 'Keep',
    how: 'Fat left on as a lid, covered, labelled; the rest frozen the same day.',
    handsMin: 5,
    asks: [coldRoom],
    maxC: 3,
    days: 3,
    packed: 'open or covered',
  },
];

export const stock: DemoDish = {
  name: 'Goose stock',
  species: 'goose',
  part: 'neck meat and bone',
  story: 'What the six geese leave: backs, bare necks and wing ends, for everything else’s sauce.',
  versions: [{ by: 'Ines Tarrow', at: { daysAgo: 13, clock: '16:30' }, reason: 'First method.', method }],
  trials: [
    {
      version: 1,
      name: 'With and without the wing ends',
      expect: 'Wing ends for body; without them it does not set.',
      by: 'Ines Tarrow',
      at: { daysAgo: 10, clock: '09:00' },
    },
  ],
};
