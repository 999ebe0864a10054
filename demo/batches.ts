/** Batches of the demo kitchen: one that held, one that did not and was thrown away, one going on today. All invented. */
import type { DemoBatch, DemoReading } from '../src/app/demo-shape.ts';
import { coldMix, coldRoom, coreLog, hotCore, liftOut } from './limits.ts';
import { trotterFails, trotterHolds } from './logs.ts';

/** `[step, ask, value, minutes after the start, who, note]`. */
type Line = readonly [
  step: string,
  ask: string,
  value: number | null,
  min: number,
  by: string,
  note?: string,
];

const readings = (lines: readonly Line[]): DemoReading[] =>
  lines.map(([step, ask, value, min, by, note]) => ({
    step,
    ask,
    value,
    min,
    by,
    ...(note === undefined ? {} : { note }),
  }));

const ines = 'Ines Tarrow';
const tobin = 'Tobin Rusk';
const wren = 'Wren Aldous';

const held: DemoBatch = {
  dish: 'Stuffed trotter, chestnut and juniper',
  pieces: 6,
  lots: ['P-0417', 'P-0419', 'D-1112', 'D-1121'],
  by: ines,
  at: { daysAgo: 8, clock: '14:00' },
  readings: [
    ...readings([
      ['Tunnel-bone the trotters', 'Trotters on arrival, between two of them', 2.1, 5, ines],
      ['Tunnel-bone the trotters', 'Six boned skins together', 1_012, 95, ines],
      ['Tunnel-bone the trotters', 'No holes, no bone splinters, no bristles', 1, 96, ines],
      ['Dry cure overnight', 'Salt weighed out', 18.2, 105, ines],
      ['Dry cure overnight', coldRoom.label, 3.4, 110, ines],
      ['Rinse, soften, dry', 'Skins when cooled', 6.2, 1_110, tobin],
      ['Hock and ear forcemeat', coldMix.label, 94, 1_165, tobin],
    ]),
    {
      step: 'Hock and ear forcemeat',
      ask: coldMix.label,
      value: 9.4,
      min: 1_166,
      by: tobin,
      note: 'Point forgotten.',
      corrects: 6,
    },
    ...readings([
      ['Hock and ear forcemeat', 'Forcemeat, all of it', 2_108, 1_170, tobin],
      ['Hock and ear forcemeat', 'A poached spoonful tasted: seasoning and set', 1, 1_180, wren],
      ['Fill from the toes up', 'One filled piece, toes and all', 503, 1_215, tobin],
      [
        'Fill from the toes up',
        'Thickest place, measured round the piece: where and how many millimetres',
        null,
        1_216,
        tobin,
        '46 mm from the hock end, 65 mm across.',
      ],
      ['Roll in film', 'No bubbles under the film', 1, 1_235, tobin],
      ['Steam', 'Core before it goes in', 5.8, 1_240, tobin],
      ['Steam', liftOut.label, 71.6, 1_278, tobin],
      ['Ice water', 'Core when lifted from the ice', 4.2, 1_378, tobin],
      ['Keep', coldRoom.label, 2.9, 1_385, tobin],
      ['Keep', 'Labelled: batch, use by, eggs, milk', 1, 1_386, tobin],
      ['Crisp in its own fat', hotCore.label, 79.1, 3_210, ines],
      ['Plate', 'Portion of trotter', 226, 3_222, ines],
    ]),
  ],
  logs: [
    {
      step: 'Steam',
      name: 'Trotter, fattest of six, core',
      text: trotterHolds,
      channel: 'Core',
      rules: ['gb-70c-2min'],
      by: tobin,
      min: 1_381,
    },
    {
      step: 'Ice water',
      name: 'Trotter, fattest of six, core in the ice',
      text: trotterHolds,
      channel: 'Core',
      rules: ['gb-chill-90min-8c'],
      by: tobin,
      min: 1_383,
    },
  ],
  close: {
    as: 'closed',
    note: 'All six served on the second evening. Halved clean, chestnuts in the middle.',
    by: wren,
    min: 3_260,
  },
};

const thrownAway: DemoBatch = {
  dish: 'Stuffed trotter, chestnut and juniper',
  pieces: 6,
  lots: ['P-0411', 'D-1121'],
  by: tobin,
  at: { daysAgo: 15, clock: '14:20' },
  readings: readings([
    ['Tunnel-bone the trotters', 'Trotters on arrival, between two of them', 2.7, 4, tobin],
    ['Tunnel-bone the trotters', 'Six boned skins together', 1_120, 105, tobin],
    ['Tunnel-bone the trotters', 'No holes, no bone splinters, no bristles', 1, 106, tobin],
    ['Dry cure overnight', 'Salt weighed out', 20, 112, tobin],
    ['Dry cure overnight', coldRoom.label, 3.1, 118, tobin],
    ['Rinse, soften, dry', 'Skins when cooled', 5.5, 1_100, ines],
    ['Hock and ear forcemeat', coldMix.label, 10.8, 1_150, ines],
    ['Hock and ear forcemeat', 'Forcemeat, all of it', 2_190, 1_156, ines],
    [
      'Fill from the toes up',
      'One filled piece, toes and all',
      688,
      1_200,
      ines,
      'Heavy: overfilled at the hock.',
    ],
    ['Roll in film', 'No bubbles under the film', 1, 1_222, ines],
    ['Steam', 'Core before it goes in', 3, 1_228, ines],
    ['Steam', liftOut.label, 49.2, 1_266, ines, 'Steamer never came above 96 °C.'],
  ]),
  logs: [
    {
      step: 'Steam',
      name: 'Trotter, overfilled, core',
      text: trotterFails,
      channel: 'Core',
      rules: ['gb-70c-2min'],
      by: ines,
      min: 1_310,
    },
  ],
  decisions: [
    {
      step: 'Steam',
      ask: coreLog.label,
      what: 'discarded',
      reason:
        'Already in the ice when the log was read: warm in the middle too long to cook again. Overfilled by 170 g a piece and the steamer low. Gauge ring ordered, steamer called in.',
      by: wren,
      min: 1_330,
    },
  ],
  close: {
    as: 'discarded',
    note: 'All six to the by-product bin, weighed and signed off.',
    by: wren,
    min: 1_345,
  },
};

const today: DemoBatch = {
  dish: 'Goose neck filled with its own liver',
  pieces: 12,
  lots: ['G-0208 neck skin', 'G-0208 liver', 'G-0209', 'G-0210', 'D-1120'],
  by: ines,
  at: { daysAgo: 0, clock: '07:40' },
  readings: readings([
    ['Free the neck skin', 'Geese on arrival, inside the neck flap', 3.1, 2, ines],
    ['Free the neck skin', 'Twelve skins together', 806, 62, ines],
    ['Free the neck skin', 'Glands, windpipe and crop all gone', 1, 63, ines],
    ['Short brine', coldRoom.label, 3.3, 75, ines],
  ]),
};

export const batches: readonly DemoBatch[] = [thrownAway, held, today];
