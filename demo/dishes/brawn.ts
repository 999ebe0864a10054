import type { DemoDish, DemoStep } from '../../src/app/demo-shape.ts';
import { blend } from '../composition.ts';
import { ingredient, line } from '../ingredients.ts';
import { chillLog, coldRoom, coreLog, liftOut, offalArrival, ticked, weighed } from '../limits.ts';

/** One long mould of 450 mm. */
const picked = [
  line('Pig’s head meat', 820),
  line('Pig’s tongue', 180),
  line('Simmered trotter, picked', 220),
  line('Shallot', 60),
  line('Parsley', 45),
  line('Cider vinegar', 35),
  line('Salt', 9),
  line('Black pepper', 4),
  line('Allspice, ground', 2),
];

const headMeat = ingredient('Pig’s head meat').composition!;

const method: readonly DemoStep[] = [
  {
    kind: 'trim',
    name: 'Split and clean the head',
    how: 'Head split, brain and eyes out and away, ear canals cut out, tonsils gone, singed and scrubbed. Soak in cold water until it runs clear.',
    handsMin: 35,
    asks: [
      offalArrival('Head on arrival, deep in the cheek'),
      ticked('Eyes, ear canals, tonsils out; no bristles'),
    ],
    part: 'head',
    weightG: 4_800,
    yieldPct: 94,
  },
  {
    kind: 'cure',
    name: 'Brine two days',
    how: 'Cold 8 % brine, held under, cold room. Turn once a day.',
    handsMin: 10,
    asks: [coldRoom],
    by: 'brine',
    saltPct: 8,
    brinePerKg: 2,
    h: 48,
    mediumC: 3,
    piece: { shape: 'slab', acrossMm: 40, faces: 2, waterPct: 62 },
  },
  {
    kind: 'rinse and dry',
    name: 'Rinse',
    how: 'Rinse ten minutes under the tap, drain.',
    handsMin: 5,
    asks: [],
    rinseMin: 10,
    dryMin: 5,
  },
  {
    kind: 'cook',
    name: 'Simmer until it falls from the bone',
    how: 'Covered with water, trotters beside it, never boiling. It is safe long before it is soft: soft is when the jaw pulls out clean.',
    handsMin: 15,
    asks: [
      {
        kind: 'core log',
        label: 'Core of the thickest half, against the jaw',
        critical: true,
        basis: coreLog.basis!,
      },
      ticked('The jaw pulls out clean'),
    ],
    body: {
      shape: 'slab',
      thicknessMm: 90,
      layers: [{ name: 'half a head, as meat', composition: headMeat }],
    },
    startC: 5,
    stages: [{ name: 'simmer', medium: 'simmering water', mediumC: 94, until: { min: 210 } }],
    target: { referenceC: 70, zC: 7.5, min: 2 },
    rules: ['gb-70c-2min'],
  },
  {
    kind: 'mix',
    name: 'Pick, chop, season',
    how: 'While hot, gloves on. Meat and tongue in finger-ends, a little skin, no gristle, no bone splinter. Season harder than tastes right hot: cold dulls it. Liquor reduced and strained over to wet.',
    handsMin: 40,
    asks: [weighed('Seasoned meat for one mould', 1_320, 1_430), ticked('Felt through twice for bone')],
    lines: picked,
    maxC: 40,
  },
  {
    kind: 'wrap',
    name: 'Into the mould',
    how: 'Long mould of 60 by 50 mm lined with film, packed without holes, film over, lid on.',
    handsMin: 10,
    asks: [ticked('Packed without holes')],
    material: 'Film under a thin steel mould',
    layers: 2,
    micrometres: 20,
    kWmK: 0.3,
  },
  {
    kind: 'cook',
    name: 'Heat through again in the mould',
    how: 'Picking is handling: it is cooked again in the mould. Steam until the middle has had its time.',
    handsMin: 5,
    asks: [coreLog, liftOut],
    body: {
      shape: 'block',
      widthMm: 60,
      heightMm: 50,
      layers: [{ name: 'brawn', composition: blend(picked).composition }],
    },
    startC: 20,
    stages: [{ name: 'steam', medium: 'steam', mediumC: 100, until: { min: 28 } }],
    target: { referenceC: 70, zC: 7.5, min: 2 },
    rules: ['gb-70c-2min'],
  },
  {
    kind: 'chill',
    name: 'Ice water, mould and all',
    how: 'Mould up to its lid in ice and water, weight on top, until the middle is at 5 °C.',
    handsMin: 8,
    asks: [chillLog],
    stages: [{ name: 'ice water', medium: 'ice water', mediumC: 1, until: { warmestC: 5 } }],
    rules: ['gb-chill-90min-8c'],
  },
  {
    kind: 'keep',
    name: 'Keep',
    how: 'In the mould overnight to set, then turned out and wrapped.',
    handsMin: 5,
    asks: [coldRoom, ticked('Labelled: batch, use by')],
    maxC: 3,
    days: 5,
    packed: 'open or covered',
  },
  {
    kind: 'plate',
    name: 'Plate',
    how: 'Slices of 12 mm, cold, mustard, pickled onions, toast.',
    handsMin: 2,
    asks: [],
    portionG: 90,
    portionsPerPiece: 15,
  },
];

export const brawn: DemoDish = {
  name: 'Brawn with parsley and allspice',
  species: 'pig',
  part: 'head',
  story: 'The head, brined, simmered, picked and set in its own liquor in a narrow mould.',
  versions: [{ by: 'Ines Tarrow', at: { daysAgo: 15, clock: '09:30' }, reason: 'First method.', method }],
  trials: [
    {
      version: 1,
      name: 'Narrow mould against the old wide one',
      expect: 'The narrow one is cold in half the time and cuts as well.',
      by: 'Ines Tarrow',
      at: { daysAgo: 13, clock: '11:00' },
    },
  ],
};
