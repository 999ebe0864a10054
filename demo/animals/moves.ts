/** What was done with the lots of the demo kitchen: used, frozen, thawed, thrown away. All invented. */
import type { DemoMove } from '../../src/app/demo-animals-shape.ts';
import { gooseWeeks } from './geese.ts';
import { ines, maud, tobin, wren } from './names.ts';
import { type Cut, goose, lamb } from './trees.ts';

const used = (lot: string, daysAgo: number, clock: string, by: string, reason = ''): DemoMove => ({
  lot,
  what: 'drawn',
  grams: 'all',
  useByDays: null,
  reason,
  by,
  at: { daysAgo, clock },
});

/** Every part that becomes a lot, but those named. */
const rest = (cuts: readonly Cut[], ...but: readonly string[]) =>
  cuts.flatMap(([name, , becomes]) => (becomes === 'part' && !but.includes(name) ? [name] : []));

const notebook = 'Cut up; the weights are in the notebook.';
const before = [
  ...gooseWeeks.filter((w) => !w.here).map((w) => [w.code, w.daysAgo, w.cutter] as const),
  ['P-0380', 78, ines] as const,
  ['P-0390', 57, ines] as const,
  ['P-0400', 36, tobin] as const,
  ['P-0410', 14, ines] as const,
  ['L-0081', 32, ines] as const,
  ['R-0044', 30, tobin] as const,
];

export const moves: readonly DemoMove[] = [
  ...before.map(([lot, daysAgo, by]) => used(lot, daysAgo, '16:30', by, notebook)),
  used('P-0411', 15, '14:30', tobin, 'To the batch.'),
  used('P-0417', 8, '14:10', ines, 'To the batch.'),
  used('P-0419', 8, '14:12', ines, 'To the batch.'),
  ...rest(goose.cuts).map((part) => used(`G-0200 ${part}`, 13, '17:40', tobin, 'Sold, or to the stock.')),
  ...rest(goose.cuts, 'back', 'loose fat', 'wings').map((part) =>
    used(`G-0204 ${part}`, 6, '17:30', ines, 'Sold, or to the stock.'),
  ),
  {
    lot: 'G-0204 back',
    what: 'frozen',
    grams: null,
    useByDays: 90,
    reason: 'For stock.',
    by: ines,
    at: { daysAgo: 7, clock: '16:00' },
  },
  used('G-0204 loose fat', 5, '11:00', ines, 'Rendered.'),
  {
    lot: 'G-0204 wings',
    what: 'thrown away',
    grams: 'all',
    useByDays: null,
    reason: 'Forgotten behind the crates; past their last day.',
    by: wren,
    at: { daysAgo: 3, clock: '09:10' },
  },
  {
    lot: 'G-0206',
    what: 'frozen',
    grams: null,
    useByDays: 60,
    reason: 'Too many for one pot.',
    by: ines,
    at: { daysAgo: 8, clock: '11:00' },
  },
  {
    lot: 'G-0206',
    what: 'thawed',
    grams: null,
    useByDays: 2,
    reason: 'In the cold room overnight, for the gizzards in fat.',
    by: ines,
    at: { daysAgo: 1, clock: '18:00' },
  },
  {
    lot: 'P-0418',
    what: 'frozen',
    grams: null,
    useByDays: 60,
    reason: 'Kept until there are a dozen.',
    by: tobin,
    at: { daysAgo: 7, clock: '15:10' },
  },
  {
    lot: 'P-0415',
    what: 'made a by-product',
    grams: null,
    useByDays: null,
    reason: 'Cold room stood open over night, 11 °C in the vessel in the morning. To the collector.',
    by: wren,
    at: { daysAgo: 7, clock: '07:20' },
  },
  // The breast was left: it stands past its last day.
  ...rest(lamb.cuts, 'breast').map((part) => used(`L-0088 ${part}`, 6, '17:45', tobin, 'Sold.')),
  {
    lot: 'G-0208 breast',
    what: 'drawn',
    grams: 1_480,
    useByDays: null,
    reason: 'Staff meal and two covers.',
    by: ines,
    at: { daysAgo: 1, clock: '18:20' },
  },
  {
    lot: 'P-0424',
    what: 'weighed again',
    grams: 1_540,
    useByDays: null,
    reason: 'A little left in the vessel.',
    by: maud,
    at: { daysAgo: 1, clock: '16:00' },
  },
];
