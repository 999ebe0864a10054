/** Suppliers and lots of the demo kitchen: all invented. */
import type { DemoKitchen } from '../src/app/demo-shape.ts';

export const suppliers: DemoKitchen['suppliers'] = [
  {
    name: 'Sallow Bank Farm (invented)',
    note: 'One pig a week, Tuesday before nine. Long-cut trotters with the hock skin on, head and pluck with it, blood by arrangement.',
  },
  {
    name: 'Marsh Cote Geese (invented)',
    note: 'Six geese, Thursday. Dry-plucked, necks long, giblets bagged and numbered to the bird.',
  },
  {
    name: 'High Fold Lambs (invented)',
    note: 'Hill lambs under twelve months; hearts and livers on request, two days’ notice.',
  },
  { name: 'Withy Estate (invented)', note: 'Farmed rabbits, skinned, with liver and kidneys.' },
  { name: 'Dry store and dairy (invented)', note: 'Everything else, three times a week.' },
];

/** `[code, supplier, part, what, grams, arrival °C, days ago, clock, note]`. */
type Row = readonly [
  code: string,
  supplier: string,
  part: readonly [species: string, name: string] | null,
  what: string,
  grams: number,
  arrivalC: number | null,
  daysAgo: number,
  clock: string,
  note: string,
];

const farm = 'Sallow Bank Farm (invented)';
const geese = 'Marsh Cote Geese (invented)';
const lambs = 'High Fold Lambs (invented)';
const estate = 'Withy Estate (invented)';
const store = 'Dry store and dairy (invented)';

const rows: readonly Row[] = [
  [
    'P-0411',
    farm,
    ['pig', 'trotter'],
    'Pig’s trotters, long cut, six',
    4_640,
    2.7,
    15,
    '08:30',
    'Heavy pig.',
  ],
  [
    'P-0417',
    farm,
    ['pig', 'trotter'],
    'Pig’s trotters, long cut, six',
    4_200,
    2.1,
    8,
    '08:35',
    'Clean, no bruising.',
  ],
  ['P-0418', farm, ['pig', 'ear'], 'Pig’s ears, four', 900, 2.6, 8, '08:40', ''],
  ['P-0419', farm, ['pig', 'hand and hock'], 'Hocks, two', 2_580, 2.9, 8, '08:45', ''],
  [
    'P-0421',
    farm,
    ['pig', 'trotter'],
    'Pig’s trotters, long cut, six',
    4_310,
    1.8,
    1,
    '08:20',
    'One with a nick at the hock.',
  ],
  ['P-0422', farm, ['pig', 'hand and hock'], 'Hocks, two', 2_640, 2.4, 1, '08:25', ''],
  ['P-0423', farm, ['pig', 'head'], 'Head, whole, scalded', 4_800, 2.9, 1, '08:30', ''],
  [
    'P-0424',
    farm,
    ['pig', 'blood'],
    'Blood, collected for food',
    1_560,
    2.2,
    1,
    '08:32',
    'Note of inspection with it.',
  ],
  ['G-0206', geese, ['goose', 'gizzard'], 'Goose gizzards, twelve', 1_000, 2.8, 9, '09:10', ''],
  [
    'G-0208',
    geese,
    ['goose', 'neck skin'],
    'Geese with necks, six; necks of six more',
    27_100,
    3.1,
    1,
    '09:05',
    'Giblets numbered to the bird.',
  ],
  ['G-0209', geese, ['goose', 'liver'], 'Goose livers, twelve', 1_080, 2.6, 1, '09:08', ''],
  ['L-0093', lambs, ['sheep', 'heart'], 'Lambs’ hearts, eight', 1_450, 2.2, 4, '10:05', ''],
  ['R-0051', estate, ['rabbit', 'saddle'], 'Rabbits, four', 5_200, 3.4, 2, '11:30', ''],
  ['D-1112', store, null, 'Whipping cream, 36 % fat, five litres', 5_050, 4.2, 9, '07:50', ''],
  ['D-1120', store, null, 'Whipping cream, 36 % fat, five litres', 5_050, 4.1, 2, '07:50', ''],
  ['D-1121', store, null, 'Chestnuts, steamed and peeled', 2_000, null, 24, '07:55', 'Shelf-stable pouches.'],
];

export const lots: DemoKitchen['lots'] = rows.map(
  ([code, supplier, part, what, grams, arrivalC, daysAgo, clock, note]) => ({
    code,
    supplier,
    part: part === null ? null : { species: part[0], name: part[1] },
    what,
    grams,
    arrivalC,
    at: { daysAgo, clock },
    by: 'Maud Pellow',
    note,
  }),
);
