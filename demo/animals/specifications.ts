/** What the demo kitchen asks of its suppliers in writing, and what they answered. All invented. */
import type { DemoSpecification } from '../../src/app/demo-animals-shape.ts';
import { openSpecification } from '../../src/contract/specification-starts.ts';
import { farm, geese, lastCame, maud, wren } from './names.ts';

export const longCut = 'Pig, trotters cut long';
export const longNecks = 'Geese, long necks, skin whole';
export const bloodForFood = 'Pig’s blood for food';

type Content = DemoSpecification['versions'][number]['content'];

const { days: _days, ...open } = openSpecification;
const weekly: Content = {
  ...open,
  onTheDaysOf: [lastCame],
  labelled: ['lot', 'day of slaughter', 'use-by date', 'health mark'],
};

const trotters: Content = {
  ...weekly,
  what: 'whole animal',
  ageClass: 'bacon pig, about six months',
  ageMonthsAtMost: 8,
  skin: ['scalded', 'scraped', 'singed'],
  head: 'off, sent with it',
  feet: 'on',
  drawn: 'drawn, offal sent with it',
  cut: 'Hind trotters taken off above the hock with the skin left on all round, claws drawn. Ears and tongue left in the head.',
  dimensions: [{ name: 'trotter, from the toes to the cut', lowMm: 220, highMm: null }],
  chilledToC: 4,
  chilledWithinHours: 24,
  packed: 'trotters in a single layer, dry; pluck bagged apart',
  documents: ['food chain information, the farm’s copy'],
  from: '07:00',
  until: '09:00',
  arrivesAtMostC: 4,
  refusedIf: ['skin of a trotter nicked or torn', 'hair left between the toes'],
};

const goose: Content = {
  ...weekly,
  what: 'whole animal',
  ageClass: 'season’s birds, fully feathered',
  ageMonthsAtMost: 10,
  pieceGrams: { low: 3_500, high: 5_500 },
  bleeding: 'hung and bled out',
  skin: ['dry plucked', 'singed'],
  head: 'on',
  feet: 'on',
  drawn: 'drawn, offal sent with it',
  cut: 'Neck and its skin left long; vent cut small.',
  dimensions: [{ name: 'neck skin, from the head to the shoulder', lowMm: 170, highMm: null }],
  chilledToC: 4,
  chilledWithinHours: 24,
  packed: 'single layer in lined crates; liver, heart and gizzard bagged and numbered to the bird',
  from: '07:00',
  until: '11:00',
  arrivesAtMostC: 4,
  refusedIf: ['neck skin slit or torn', 'offal of one bird not told from another’s'],
};

const blood: Content = {
  ...weekly,
  what: 'blood',
  bleeding: 'collected with a clean hollow knife, nothing from the floor',
  blood: 'kept for us',
  bloodHow: 'Stirred at once; held back until every animal in the vessel has passed inspection.',
  chilledToC: 3,
  chilledWithinHours: 2,
  packed: 'closed food containers, full to the lid',
  labelled: [...weekly.labelled, 'the animals in each vessel', 'what was added against clotting'],
  documents: ['that every animal in the vessel passed inspection'],
  arrivesAtMostC: 3,
  refusedIf: ['clotted', 'off smell', 'seal broken'],
};

const at = (daysAgo: number, clock: string) => ({ daysAgo, clock });

export const specifications: readonly DemoSpecification[] = [
  {
    supplier: farm,
    species: 'pig',
    name: longCut,
    versions: [
      {
        by: wren,
        at: at(82, '16:00'),
        reason: '',
        content: trotters,
        sent: { by: maud, at: at(82, '16:40') },
        answers: [
          {
            by: maud,
            at: at(80, '10:15'),
            answer: 'agreed',
            saidBy: 'the farmer (invented)',
            note: 'By telephone.',
          },
        ],
      },
      {
        by: wren,
        at: at(54, '17:10'),
        reason: 'Two came cut at the hock: too short to fill. Now the length asked is what the dish needs.',
        content: {
          ...trotters,
          dimensions: [
            { name: 'trotter, from the toes to the cut', lowMm: 260, highMm: 340 },
            { name: 'trotter, across at the cut', lowMm: 60, highMm: null },
          ],
        },
        sent: { by: maud, at: at(54, '17:30') },
        answers: [
          {
            by: maud,
            at: at(52, '09:05'),
            answer: 'agreed with changes',
            saidBy: 'the slaughterman (invented)',
            note: 'Up to 320 mm; longer does not go through the scald.',
          },
        ],
      },
    ],
  },
  {
    supplier: geese,
    species: 'goose',
    name: longNecks,
    versions: [
      {
        by: wren,
        at: at(63, '15:00'),
        reason: '',
        content: goose,
        sent: { by: maud, at: at(63, '15:30') },
        answers: [
          {
            by: maud,
            at: at(61, '12:00'),
            answer: 'agreed',
            saidBy: 'the goose farmer (invented)',
            note: '',
          },
        ],
      },
      {
        by: wren,
        at: at(34, '14:20'),
        reason: 'Two necks came slit from bleeding.',
        content: {
          ...goose,
          bleeding: 'bled by a small cut close under the head, the neck skin not slit',
          dimensions: [{ name: 'neck skin, from the head to the shoulder', lowMm: 180, highMm: null }],
        },
        sent: { by: maud, at: at(34, '14:45') },
        answers: [
          {
            by: maud,
            at: at(33, '09:30'),
            answer: 'declined',
            saidBy: 'the goose farmer (invented)',
            note: 'Wants to try it on one bird first.',
          },
          {
            by: maud,
            at: at(31, '18:10'),
            answer: 'agreed with changes',
            saidBy: 'the goose farmer (invented)',
            note: 'From 175 mm on the small birds.',
          },
        ],
      },
    ],
  },
  {
    supplier: farm,
    species: 'pig',
    name: bloodForFood,
    versions: [
      {
        by: wren,
        at: at(40, '16:00'),
        reason: '',
        content: blood,
        sent: { by: maud, at: at(40, '16:20') },
        answers: [
          { by: maud, at: at(38, '11:00'), answer: 'agreed', saidBy: 'the farmer (invented)', note: '' },
        ],
      },
      {
        by: wren,
        at: at(6, '15:30'),
        reason: 'How much salt or citrate goes in has to stand on the label: the pudding is weighed by it.',
        content: { ...blood, note: 'Grams a litre of what is added against clotting.' },
        sent: { by: maud, at: at(6, '15:50') },
      },
    ],
  },
];
