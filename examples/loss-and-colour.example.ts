import { groundLoss, myoglobinLeft, myoglobinRate, waterHeld } from '../src/core/properties/cook-loss.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const python = kept('loss');
/** Cooking yield of ground chicken breast, per cent, by temperature at the end and salt 0 to 3 %. */
const yields = [
  [70, 93.2, 98.1, 98.5, 98.5],
  [75, 91.6, 97.6, 97.9, 98.8],
  [80, 88.4, 96.8, 96.7, 98.1],
  [85, 84.7, 95.3, 96.5, 96.2],
] as const;

export const example: Example = {
  title: 'Juice and red, by temperature',
  story: `How much water unsalted beef can hold, how fast its red turns, and what ground chicken lost in a bath with and without salt. The two equations were
worked out again in Python; their constants were read in copies. They are models of beef and of ground chicken, not of your dish, and pinkness is no sign
of anything in poultry.`,
  equation: 'c = 0.745 − 0.345/(1 + 30·e^(−0.25·(T − 52)));  k = 7.98e43·e^(−290 000/(8.314·T)) per minute',
  sources: ['van-der-sman-2007', 'geileskey-1998', 'bae-2018'],
  run: (): Row[] => [
    ...[20, 52, 60, 65, 70, 80].map(
      (C): Row => ({
        quantity: `water held by beef at ${C} °C`,
        source: 'van-der-sman-2007',
        confidence: 'secondary',
        expected: python(`held ${C}`),
        ours: waterHeld(C),
        tolerance: 1e-9,
        unit: 'kg/kg',
        why: 'the same equation, typed in twice',
      }),
    ),
    ...[55, 60, 63, 65, 70, 75].map(
      (C): Row => ({
        quantity: `red that turns at ${C} °C`,
        source: 'geileskey-1998',
        confidence: 'secondary',
        expected: python(`rate ${C}`),
        ours: 60 * myoglobinRate(C),
        tolerance: 1e-6 * python(`rate ${C}`),
        unit: '1/min',
        why: 'the same equation, typed in twice',
      }),
    ),
    ...[60, 65, 70, 75].map((C): Row => {
      const s = 60 * python(`minutes to 93 % at ${C}`);
      return {
        quantity: `red left after ${(s / 60).toFixed(1)} min at ${C} °C, where well done was found at 93 % turned`,
        source: 'geileskey-1998',
        confidence: 'secondary',
        expected: 0.07,
        ours: myoglobinLeft([0, s / 2, s], [C, C, C]),
        tolerance: 1e-6,
        unit: '-',
        why: 'a hold is the rate times its time',
      };
    }),
    ...yields.flatMap(([C, ...measured]) =>
      measured.map(
        (pct, salt): Row => ({
          quantity: `ground chicken, ${salt} % salt, to ${C} °C: loss`,
          source: 'bae-2018',
          confidence: 'read',
          expected: Number((100 - pct).toFixed(1)),
          ours: 100 * groundLoss(C, salt),
          tolerance: 0.05,
          unit: '%',
          why: 'a printed figure, taken over; the authors give 0.55 for its error',
        }),
      ),
    ),
  ],
};
