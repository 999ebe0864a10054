import type { DemoDish, DemoStep } from '../../src/app/demo-shape.ts';
import { blend } from '../composition.ts';
import { ingredient, line } from '../ingredients.ts';
import {
  chillLog,
  coldMix,
  coldRoom,
  coreLog,
  hotCore,
  liftOut,
  poultryArrival,
  ticked,
  weighed,
} from '../limits.ts';

/** Twelve necks. */
const filling = [
  line('Goose liver', 460),
  line('Goose meat', 420),
  line('Goose fat', 70),
  line('Egg white', 80),
  line('Whipping cream, 36 % fat', 110),
  line('Prunes, stoned', 60),
  line('Shallot', 45),
  line('Apple brandy', 20),
  line('Salt', 14),
  line('Black pepper', 3),
  line('Thyme, dried', 2),
];

const profile = [
  { atMm: 0, diameterMm: 40 },
  { atMm: 60, diameterMm: 36 },
  { atMm: 120, diameterMm: 31 },
  { atMm: 140, diameterMm: 28 },
];
const skinMm = 2.5;

const method: readonly DemoStep[] = [
  {
    kind: 'trim',
    name: 'Free the neck skin',
    how: 'Loosen the skin at the body end and roll it off the neck in one tube. Scrape off the glands and the loose fat, pull the last quills. Neck bones to stock.',
    handsMin: 60,
    asks: [
      poultryArrival('Geese on arrival, inside the neck flap'),
      weighed('Twelve skins together', 620, 980),
      ticked('Glands, windpipe and crop all gone'),
    ],
    part: 'neck skin',
    weightG: 2_050,
    yieldPct: 39,
  },
  {
    kind: 'cure',
    name: 'Short brine',
    how: 'Skins and trimmed liver into cold 5 % brine, weighted under. Two hours, no longer: thin skin goes salty fast.',
    handsMin: 10,
    asks: [coldRoom],
    by: 'brine',
    saltPct: 5,
    brinePerKg: 2,
    h: 2,
    mediumC: 3,
    piece: { shape: 'slab', acrossMm: 3, faces: 2, waterPct: 50 },
  },
  {
    kind: 'rinse and dry',
    name: 'Rinse and dry',
    how: 'Quick rinse, then dry on a cloth, skin stretched flat.',
    handsMin: 8,
    asks: [],
    rinseMin: 1,
    dryMin: 15,
  },
  {
    kind: 'mix',
    name: 'Liver and goose filling',
    how: 'Two thirds of the liver and all the meat to a smooth paste with the salt, ice cold; egg white, soft fat, cream. Fold in the rest of the liver in dice, prunes, shallot, brandy, pepper, thyme.',
    handsMin: 25,
    asks: [
      coldMix,
      weighed('Filling, all of it', 1_240, 1_330),
      ticked('A poached spoonful tasted, cooked through'),
    ],
    lines: filling,
    maxC: 12,
  },
  {
    kind: 'fill',
    name: 'Fill and sew',
    how: 'Sew the head end, fill from the body end to three quarters, sew. Roll to even it: it stays fatter at the body end.',
    handsMin: 40,
    asks: [weighed('One filled neck', 125, 160)],
    casing: 'Goose neck skin, brined',
    profile,
    skinMm,
    gramsPerPiece: 102,
    headSpacePct: 8,
  },
  {
    kind: 'wrap',
    name: 'Bag',
    how: 'One to a bag, air out, sealed flat.',
    handsMin: 12,
    asks: [ticked('Seals whole, no air against the skin')],
    material: 'Cooking bag, polyethylene',
    layers: 1,
    micrometres: 90,
    kWmK: 0.33,
  },
  {
    kind: 'cook',
    name: 'Water bath',
    how: 'Bath at 82 °C before they go in. Bags upright, water between them all. Probe through a patch into the fat end of one, tip on the axis.',
    handsMin: 10,
    asks: [coreLog, liftOut],
    body: {
      shape: 'revolved',
      lengthMm: 140,
      profile,
      layers: [
        { name: 'skin', thicknessMm: skinMm, composition: ingredient('Goose neck skin').composition! },
        { name: 'liver filling', composition: blend(filling).composition },
      ],
    },
    startC: 5,
    stages: [{ name: 'water bath', medium: 'water bath', mediumC: 82, until: { min: 23 } }],
    target: { referenceC: 70, zC: 7.5, min: 2 },
    rules: ['gb-70c-2min'],
  },
  {
    kind: 'chill',
    name: 'Ice water',
    how: 'Bags into ice and water at once; out at 4 °C.',
    handsMin: 5,
    asks: [chillLog],
    stages: [{ name: 'ice water', medium: 'ice water', mediumC: 1, until: { warmestC: 4 } }],
    rules: ['gb-chill-90min-8c'],
  },
  {
    kind: 'keep',
    name: 'Keep in the bag',
    how: 'In the bag, labelled with batch, day and allergens.',
    handsMin: 5,
    asks: [coldRoom, ticked('Labelled: batch, use by, eggs, milk')],
    maxC: 3,
    days: 5,
    packed: 'vacuum-packed',
  },
  {
    kind: 'finish',
    name: 'Brown in goose fat',
    how: 'Out of the bag, dry, roll in goose fat over a medium flame until brown all round, then a lid for the middle.',
    handsMin: 10,
    asks: [hotCore],
    by: 'pan, goose fat',
    mediumC: 165,
    min: 12,
    coreC: 75,
  },
  {
    kind: 'plate',
    name: 'Plate',
    how: 'Cut on the slant in three, over bitter leaves, the fat from the pan with cider vinegar.',
    handsMin: 3,
    asks: [],
    portionG: 125,
    portionsPerPiece: 1,
  },
];

export const gooseNeck: DemoDish = {
  name: 'Goose neck filled with its own liver',
  species: 'goose',
  part: 'neck skin',
  story:
    'The skin of the neck, sewn round the liver of the same bird with prunes: narrow, thin-skinned, quick.',
  versions: [
    {
      by: 'Wren Aldous',
      at: { daysAgo: 34, clock: '13:00' },
      reason: 'First method.',
      method,
      sign: { by: 'Wren Aldous', at: { daysAgo: 27, clock: '11:15' } },
    },
  ],
};
