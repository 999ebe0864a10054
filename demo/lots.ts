/** Suppliers of the demo kitchen, and what came without being checked at the door: all invented. */
import type { DemoKitchen } from '../src/app/demo-shape.ts';
import { estate, farm, geese, lambs, maud, store } from './animals/names.ts';

export const suppliers: DemoKitchen['suppliers'] = [
  {
    name: farm,
    contact: 'The farmer, mornings before seven',
    approval: 'ZZ 0412 (invented)',
    note: 'One pig a week, before nine. Long-cut trotters with the hock skin on, head and pluck with it, blood by arrangement.',
  },
  {
    name: geese,
    contact: 'The goose farmer, after four',
    approval: 'ZZ 0377 (invented)',
    note: 'Six geese a week. Dry-plucked, necks long, giblets bagged and numbered to the bird.',
  },
  {
    name: lambs,
    contact: 'Leave word at the farm by Monday',
    note: 'Hill lambs under twelve months; hearts and livers on request, two days’ notice.',
  },
  { name: estate, note: 'Farmed rabbits, skinned, with liver and kidneys.' },
  { name: store, note: 'Everything else, three times a week.' },
];

/** `[code, what, grams, arrival °C, days ago, note]`. */
const rows = [
  ['D-1112', 'Whipping cream, 36 % fat, five litres', 5_050, 4.2, 9, ''],
  ['D-1120', 'Whipping cream, 36 % fat, five litres', 5_050, 4.1, 2, ''],
  ['D-1121', 'Chestnuts, steamed and peeled', 2_000, null, 24, 'Shelf-stable pouches.'],
] as const;

export const lots: DemoKitchen['lots'] = rows.map(([code, what, grams, arrivalC, daysAgo, note]) => ({
  code,
  supplier: store,
  part: null,
  what,
  grams,
  arrivalC,
  at: { daysAgo, clock: '07:50' },
  by: maud,
  note,
}));
