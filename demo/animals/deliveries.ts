/** Twelve weeks of deliveries to the demo kitchen, with what was not as asked, and one refused. All invented. */
import type { DemoDelivery, DemoDeliveryLine } from '../../src/app/demo-animals-shape.ts';
import { type GooseWeek, gooseWeeks } from './geese.ts';
import { estate, farm, geese, lambs, maud } from './names.ts';
import { bloodForFood, longCut, longNecks } from './specifications.ts';
import { animalsOf } from './weights.ts';

const line = (
  code: string,
  what: string,
  grams: number,
  arrivalC: number,
  more: Partial<DemoDeliveryLine>,
): DemoDeliveryLine => ({
  kind: 'part',
  what,
  species: null,
  part: null,
  class: null,
  count: null,
  grams,
  arrivalC,
  frozen: false,
  code,
  tradeLot: null,
  tags: [],
  ageMonthsAtMost: null,
  slaughteredDaysBefore: 2,
  useByDays: 6,
  cost: null,
  refused: false,
  note: '',
  ...more,
});

const pigPart = (
  code: string,
  what: string,
  part: string,
  grams: number,
  C: number,
  count: number,
  perKg: number,
) =>
  line(code, what, grams, C, {
    species: 'pig',
    part,
    class: part === 'blood' ? 'blood' : 'red meat',
    count: part === 'blood' ? null : count,
    ageMonthsAtMost: 7,
    cost: Math.round((grams * perKg) / 1000),
    ...(part === 'blood' ? { useByDays: 2, slaughteredDaysBefore: 1 } : {}),
  });

const trotters = (code: string, grams: number, C: number, note = '') => ({
  ...pigPart(code, 'Pig’s trotters, long cut, six', 'trotter', grams, C, 6, 260),
  note,
});

const wholePig = (code: string, grams: number, C: number): DemoDeliveryLine =>
  line(code, 'Pig, two sides with head and pluck', grams, C, {
    kind: 'whole',
    species: 'pig',
    class: 'red meat',
    count: 1,
    ageMonthsAtMost: 7,
    useByDays: 7,
    tradeLot: `SB ${code.slice(2)}`,
    tags: [`SB-${code.slice(2)}-1`],
    cost: Math.round((grams * 410) / 1000),
  });

const pigs = (
  daysAgo: number,
  clock: string,
  lines: readonly DemoDeliveryLine[],
  more: Partial<DemoDelivery> = {},
): DemoDelivery => ({
  supplier: farm,
  specification: longCut,
  by: maud,
  at: { daysAgo, clock },
  documents: 'Delivery note, food chain information',
  decision: 'accepted',
  reason: '',
  lines,
  ...more,
});

const birds = (w: Pick<GooseWeek, 'code' | 'birds'>, C: number): DemoDeliveryLine => {
  const grams = w.birds.reduce((a, b) => a + b, 0);
  return line(w.code, 'Geese, six, with head and feet', grams, C, {
    kind: 'whole',
    species: 'goose',
    class: 'poultry',
    count: w.birds.length,
    ageMonthsAtMost: 8,
    tradeLot: `MC ${w.code.slice(2)}`,
    tags: w.birds.map((_, i) => `MC-${w.code.slice(2)}-${i + 1}`),
    cost: Math.round((grams * 1_150) / 1000),
  });
};

const gooseDelivery = (
  daysAgo: number,
  clock: string,
  lines: readonly DemoDeliveryLine[],
  more: Partial<DemoDelivery> = {},
): DemoDelivery => ({
  supplier: geese,
  specification: longNecks,
  by: maud,
  at: { daysAgo, clock },
  documents: 'Delivery note',
  decision: 'accepted',
  reason: '',
  lines,
  ...more,
});

const arrival: Readonly<Record<string, number>> = {
  'G-0188': 3.4,
  'G-0190': 2.9,
  'G-0192': 3.6,
  'G-0194': 3.2,
  'G-0196': 2.6,
  'G-0200': 2.4,
  'G-0204': 2.8,
  'G-0208': 3.1,
};
const giblets = (code: string, what: string, part: string, grams: number, C: number, perKg: number) =>
  line(code, what, grams, C, {
    species: 'goose',
    part,
    class: 'offal',
    useByDays: 4,
    ageMonthsAtMost: 8,
    cost: Math.round((grams * perKg) / 1000),
  });
const extra: Readonly<Record<string, readonly DemoDeliveryLine[]>> = {
  'G-0204': [giblets('G-0206', 'Goose gizzards, twelve', 'gizzard', 1_000, 2.8, 480)],
  'G-0208': [
    giblets('G-0209', 'Goose livers, six', 'liver', 545, 2.6, 900),
    line('G-0210', 'Goose necks, six, skin whole', 1_030, 2.9, {
      species: 'goose',
      part: 'neck skin',
      class: 'poultry',
      useByDays: 4,
      ageMonthsAtMost: 8,
      cost: 670,
    }),
  ],
};
const deviations: Readonly<Record<string, Partial<DemoDelivery>>> = {
  'G-0194': {
    decision: 'accepted with deviation',
    reason: 'Two necks slit along their length: taken for stock, not to be filled. Farmer told.',
    missed: { 'refusedIf[0]': 'two of six slit' },
  },
  'G-0196': {
    decision: 'accepted with deviation',
    reason: 'A day’s use-by missing on one bag of giblets; read off the crate.',
    missed: { 'labelled[2]': 'missing on one bag' },
  },
};

/** Six birds too warm: none came in. */
const refused = gooseDelivery(
  22,
  '10:05',
  [birds({ code: 'G-0198', birds: animalsOf(6, 4_480, 240, 22) }, 7.6)],
  {
    decision: 'refused',
    reason:
      '7.6 °C between two birds, twice: the van’s cooling had stopped. All six sent back; farmer told at once.',
    notSeen: ['dimensions[0]'],
  },
);

const whole = (
  supplier: string,
  daysAgo: number,
  clock: string,
  lines: readonly DemoDeliveryLine[],
): DemoDelivery => ({
  supplier,
  specification: null,
  by: maud,
  at: { daysAgo, clock },
  documents: 'Delivery note',
  decision: 'accepted',
  reason: '',
  lines,
});

const lambsOf = (code: string, what: string, count: number, grams: number, C: number) =>
  line(code, what, grams, C, {
    kind: 'whole',
    species: 'sheep',
    class: 'red meat',
    count,
    ageMonthsAtMost: 10,
    useByDays: 7,
    tags: Array.from({ length: count }, (_, i) => `HF-${code.slice(2)}-${i + 1}`),
    cost: Math.round((grams * 890) / 1000),
  });

const rabbitsOf = (code: string, count: number, grams: number, C: number) =>
  line(code, `Rabbits, ${count === 4 ? 'four' : 'six'}`, grams, C, {
    kind: 'whole',
    species: 'rabbit',
    class: 'rabbit',
    count,
    useByDays: 5,
    cost: Math.round((grams * 980) / 1000),
  });

export const deliveries: readonly DemoDelivery[] = [
  pigs(78, '08:10', [wholePig('P-0380', 77_900, 3.1)]),
  pigs(57, '08:40', [wholePig('P-0390', 79_300, 3.4)], {
    decision: 'accepted with deviation',
    reason: 'Two of six cut at the hock, 190 mm: to the brawn. The slaughterman is told in writing.',
    missed: { 'dimensions[0]': 'two of six 190 mm' },
  }),
  pigs(36, '09:25', [wholePig('P-0400', 78_400, 2.8)], {
    decision: 'accepted with deviation',
    reason: 'Late: a puncture. Cold all the same.',
  }),
  pigs(15, '08:30', [trotters('P-0411', 4_640, 2.7, 'Heavy pig.'), wholePig('P-0410', 81_200, 3)]),
  pigs(8, '08:35', [
    trotters('P-0417', 4_200, 2.1, 'Clean, no bruising.'),
    pigPart('P-0418', 'Pig’s ears, four', 'ear', 900, 2.6, 4, 220),
    pigPart('P-0419', 'Hocks, two', 'hand and hock', 2_580, 2.9, 2, 420),
  ]),
  pigs(
    1,
    '08:20',
    [
      trotters('P-0421', 4_310, 1.8, 'One with a nick at the hock.'),
      pigPart('P-0422', 'Hocks, two', 'hand and hock', 2_640, 2.4, 2, 420),
      pigPart('P-0423', 'Head, whole, scalded', 'head', 4_800, 2.9, 1, 180),
      wholePig('P-0420', 78_200, 2.5),
    ],
    {
      decision: 'accepted with deviation',
      reason: 'One of six nicked at the hock: that one is cooked for the forcemeat, not filled.',
      missed: { 'refusedIf[0]': 'one of six' },
    },
  ),
  ...[['P-0415', 8, 1_480, 2.4] as const, ['P-0424', 1, 1_560, 2.2] as const].map(
    ([code, daysAgo, grams, C]) => ({
      ...pigs(daysAgo, '08:45', [pigPart(code, 'Blood, collected for food', 'blood', grams, C, 1, 180)]),
      specification: bloodForFood,
      documents: 'Delivery note, note of inspection',
    }),
  ),
  ...gooseWeeks.map((w) =>
    gooseDelivery(
      w.daysAgo,
      '09:05',
      [birds(w, arrival[w.code] ?? 3), ...(extra[w.code] ?? [])],
      deviations[w.code],
    ),
  ),
  refused,
  whole(lambs, 32, '10:20', [lambsOf('L-0081', 'Hill lamb with pluck', 1, 17_450, 3.8)]),
  whole(lambs, 9, '10:10', [lambsOf('L-0088', 'Hill lamb with pluck', 1, 17_640, 3.3)]),
  whole(lambs, 3, '10:05', [
    line('L-0093', 'Lambs’ hearts, eight', 1_450, 2.2, {
      species: 'sheep',
      part: 'heart',
      class: 'offal',
      count: 8,
      ageMonthsAtMost: 10,
      useByDays: 4,
      cost: 750,
    }),
  ]),
  whole(estate, 30, '11:20', [rabbitsOf('R-0044', 6, 7_900, 3.1)]),
  whole(estate, 2, '11:30', [rabbitsOf('R-0051', 4, 5_200, 3.4)]),
];
