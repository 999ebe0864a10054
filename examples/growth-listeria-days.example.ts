import { timeToGrow } from '../src/core/microbes/shelf-life.ts';
import { findGrowthOrganism } from '../src/core/properties/organisms-growth.ts';
import type { Example, Row } from './case.ts';

const sets = findGrowthOrganism('listeria-monocytogenes')?.sets ?? [];
const deli = sets[0];
const food = { pH: 6.2, waterActivity: 0.97 };

export const example: Example = {
  title: 'Three degrees in the fridge: days for Listeria from 1 to 100 a gram',
  story:
    'The American risk assessment gives mean rates at 5 °C for cooked meats, pâté and smoked fish, and a square-root law for other temperatures. From one Listeria monocytogenes a gram to a hundred, without lag, it takes seven days at 5 °C in cooked meats, and three at 8 °C. Means of many products: a single one may be several times faster.',
  equation: 'r(T) = r5 ((T + 1.18)/6.18)²  [log10/day];  t = 2/r',
  sources: ['fda-fsis-listeria-2003'],
  run(): Row[] {
    if (deli === undefined) throw new RangeError('no set');
    const days = (C: number, log10: number) => (timeToGrow(deli, C, food, log10) ?? Number.NaN) / 86_400;
    const rates = [
      [2, 0.0747, 96.8],
      [4, 0.1981, 36.5],
      [5, 0.282, 25.6],
      [7, 0.4941, 14.6],
      [8, 0.6222, 11.6],
      [10, 0.9229, 7.8],
    ] as const;
    return [
      ...rates.map(
        ([C, rate]): Row => ({
          quantity: `rate at ${C} °C`,
          source: 'fda-fsis-listeria-2003',
          confidence: 'memory',
          expected: rate,
          ours: 1 / days(C, 1),
          tolerance: 0.002 * rate,
          unit: 'log10/day',
          why: 'worked out independently, printed to four decimals',
        }),
      ),
      ...rates.map(
        ([C, , doubling]): Row => ({
          quantity: `hours to double at ${C} °C`,
          source: 'fda-fsis-listeria-2003',
          confidence: 'memory',
          expected: doubling,
          ours: days(C, Math.log10(2)) * 24,
          tolerance: 0.1,
          unit: 'h',
          why: 'worked out independently, printed to a tenth',
        }),
      ),
      {
        quantity: '1 to 100 cfu/g at 5 °C',
        source: 'fda-fsis-listeria-2003',
        confidence: 'memory',
        expected: 7.092,
        ours: days(5, 2),
        tolerance: 0.007,
        unit: 'days',
        why: '0.1 %',
      },
      {
        quantity: '1 to 100 cfu/g at 8 °C',
        source: 'fda-fsis-listeria-2003',
        confidence: 'memory',
        expected: 3.214,
        ours: days(8, 2),
        tolerance: 0.0032,
        unit: 'days',
        why: '0.1 %',
      },
    ];
  },
};
