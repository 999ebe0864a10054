import type { DemoAsk, DemoDish, DemoStep } from '../../src/app/demo-shape.ts';
import { blend } from '../composition.ts';
import { ingredient, line } from '../ingredients.ts';
import {
  chillLog,
  coldMix,
  coldRoom,
  coreLog,
  hotCore,
  liftOut,
  offalArrival,
  ticked,
  weighed,
} from '../limits.ts';

/** Six pieces. */
const forcemeat = [
  line('Hock meat', 980),
  line('Pig’s ear', 330),
  line('Back fat', 100),
  line('Egg white', 150),
  line('Whipping cream, 36 % fat', 210),
  line('Chestnuts, steamed and peeled', 230),
  line('Shallot', 55),
  line('Apple brandy', 26),
  line('Salt', 21),
  line('Black pepper', 4),
  line('Juniper berries', 4),
  line('Thyme, dried', 2),
];

const profile = [
  { atMm: 0, diameterMm: 60 },
  { atMm: 45, diameterMm: 66 },
  { atMm: 95, diameterMm: 60 },
  { atMm: 140, diameterMm: 50 },
  { atMm: 170, diameterMm: 42 },
];
const skinMm = 4;

const bulge: DemoAsk = {
  kind: 'note',
  label: 'Thickest place, measured round the piece: where and how many millimetres',
  basis: 'A piece fatter than drawn needs longer: say so before it goes in.',
};

function method(steamMin: number, chestnutsIn: string): readonly DemoStep[] {
  return [
    {
      kind: 'trim',
      name: 'Tunnel-bone the trotters',
      how: 'Singe and scrape. Cut round the hock end and turn the skin down like a stocking, knife against the bone, as far as the first toe joint; cut through it and leave the toes on. No holes: a hole lets the filling out and the steam in.',
      handsMin: 90,
      asks: [
        offalArrival('Trotters on arrival, between two of them'),
        weighed('Six boned skins together', 850, 1150),
        ticked('No holes, no bone splinters, no bristles'),
      ],
      part: 'trotter',
      weightG: 4_200,
      yieldPct: 24,
    },
    {
      kind: 'cure',
      name: 'Dry cure overnight',
      how: 'Rub the skins inside and out with 18 g salt and 4 g sugar for each kilogram, a crushed juniper berry to each. Lay flat in one layer, cover, cold room.',
      handsMin: 10,
      asks: [weighed('Salt weighed out', 16, 20), coldRoom],
      by: 'dry cure',
      saltPct: 1.8,
      h: 12,
      mediumC: 3,
      piece: { shape: 'slab', acrossMm: 4, faces: 2, waterPct: 60 },
    },
    {
      kind: 'rinse and dry',
      name: 'Rinse, soften, dry',
      how: 'Rinse. Simmer the skins in stock two hours, until a finger goes through; lift out flat, cool fast, dry inside and out. Patch a split with a scrap of skin.',
      handsMin: 20,
      asks: [
        {
          kind: 'temperature',
          label: 'Skins when cooled',
          high: 8,
          critical: true,
          basis: 'The kitchen’s own limit: no warm skin round raw forcemeat.',
        },
      ],
      rinseMin: 2,
      dryMin: 20,
    },
    {
      kind: 'mix',
      name: 'Hock and ear forcemeat',
      how: `Everything ice cold, bowl and blade too. Hock meat and fat to a smooth paste with the salt, then the egg white, then the cream in three goes. Fold in ear (simmered two hours, cooled, small dice), ${chestnutsIn}, sweated shallot, brandy, pepper, juniper and thyme. Poach and taste a spoonful before you fill.`,
      handsMin: 35,
      asks: [
        coldMix,
        weighed('Forcemeat, all of it', 2_050, 2_200),
        ticked('A poached spoonful tasted: seasoning and set'),
      ],
      lines: forcemeat,
      maxC: 12,
    },
    {
      kind: 'fill',
      name: 'Fill from the toes up',
      how: 'Piping bag, no air: toes first, hock end last. Stop a thumb short of the end and fold the flap over. Fat at the hock, slim at the toes, as drawn.',
      handsMin: 30,
      asks: [weighed('One filled piece, toes and all', 480, 530), bulge],
      casing: 'Boned, dry-cured trotter skin',
      profile,
      skinMm,
      gramsPerPiece: 335,
      headSpacePct: 4,
    },
    {
      kind: 'wrap',
      name: 'Roll in film',
      how: 'Five turns of film meant for cooking, pulled tight, ends tied. Prick any bubble and go round once more: trapped air is slower than all the film.',
      handsMin: 15,
      asks: [ticked('No bubbles under the film')],
      material: 'Film for cooking, PVC-free',
      layers: 5,
      micrometres: 10,
      kWmK: 0.3,
    },
    {
      kind: 'cook',
      name: 'Steam',
      how: `Full steam before they go in, pieces apart, nothing stacked. Probe from the hock end along the axis, tip 60 mm in. ${steamMin} minutes, out, and let drain 3 minutes.`,
      handsMin: 10,
      asks: [
        {
          kind: 'temperature',
          label: 'Core before it goes in',
          high: 8,
          basis: 'The time was reckoned from 6 °C; colder is slower.',
        },
        coreLog,
        liftOut,
      ],
      body: {
        shape: 'revolved',
        lengthMm: 170,
        profile,
        layers: [
          {
            name: 'skin',
            thicknessMm: skinMm,
            composition: ingredient('Trotter skin, softened').composition!,
          },
          { name: 'forcemeat', composition: blend(forcemeat).composition },
        ],
      },
      startC: 6,
      stages: [
        { name: 'steam', medium: 'steam', mediumC: 100, until: { min: steamMin } },
        { name: 'drain', medium: 'still air', mediumC: 22, until: { min: 3 } },
      ],
      target: { referenceC: 70, zC: 7.5, min: 2 },
      rules: ['gb-70c-2min'],
    },
    {
      kind: 'chill',
      name: 'Ice water',
      how: 'Straight into ice and water, more ice than water, stirred now and then. Leave the probe where it is until it reads 5 °C.',
      handsMin: 10,
      asks: [
        chillLog,
        {
          kind: 'temperature',
          label: 'Core when lifted from the ice',
          high: 5,
          basis: 'The kitchen’s own limit.',
        },
      ],
      stages: [{ name: 'ice water', medium: 'ice water', mediumC: 1, until: { warmestC: 5 } }],
      rules: ['gb-chill-90min-8c'],
    },
    {
      kind: 'keep',
      name: 'Keep',
      how: 'In its film, labelled with batch, day and allergens. Raw never above it.',
      handsMin: 5,
      asks: [coldRoom, ticked('Labelled: batch, use by, eggs, milk')],
      maxC: 3,
      days: 5,
      packed: 'open or covered',
    },
    {
      kind: 'finish',
      name: 'Crisp in its own fat',
      how: 'Unwrap, dry, halve along the length. Cut side up in rendered trotter fat at 170 °C under a lid, then over high heat until the skin blisters. Probe the thick end.',
      handsMin: 12,
      asks: [hotCore],
      by: 'shallow fat, lid on then off',
      mediumC: 170,
      min: 14,
      coreC: 75,
    },
    {
      kind: 'plate',
      name: 'Plate',
      how: 'Half a trotter, skin up, on lentils with mustard and the pan’s juices; pickled quince beside it.',
      handsMin: 3,
      asks: [weighed('Portion of trotter', 205, 245)],
      portionG: 225,
      portionsPerPiece: 2,
    },
  ];
}

export const trotter: DemoDish = {
  name: 'Stuffed trotter, chestnut and juniper',
  species: 'pig',
  part: 'trotter',
  story:
    'The foot of the pig, boned out whole, cured, filled with its own hock and ear, and crisped until the skin blisters.',
  versions: [
    {
      by: 'Wren Aldous',
      at: { daysAgo: 40, clock: '14:10' },
      reason: 'First method.',
      method: method(40, 'chestnuts, chopped'),
      sign: { by: 'Wren Aldous', at: { daysAgo: 38, clock: '10:30' } },
    },
    {
      by: 'Wren Aldous',
      at: { daysAgo: 21, clock: '15:20' },
      reason:
        'Chestnuts whole: chopped ones vanished into the paste. Three minutes less steam after the probe logs of version 1.',
      method: method(37, 'chestnuts, whole'),
      sign: { by: 'Wren Aldous', at: { daysAgo: 20, clock: '09:45' } },
    },
  ],
  trials: [
    {
      version: 1,
      name: 'Chestnuts whole against chopped',
      expect: 'Whole ones show in the slice and break the softness; chopped ones only sweeten.',
      by: 'Wren Aldous',
      at: { daysAgo: 30, clock: '11:00' },
      conclusion: {
        text: 'Whole. Four of five at the table picked it without being told which was which. Push them to the middle or they tear the skin when halved.',
        by: 'Wren Aldous',
        at: { daysAgo: 22, clock: '16:40' },
      },
    },
    {
      version: 2,
      name: 'Brandy burnt off or raw',
      expect: 'Burnt off is rounder; raw keeps the apple but may taste of spirit at the fat end.',
      by: 'Ines Tarrow',
      at: { daysAgo: 6, clock: '10:15' },
    },
  ],
};
