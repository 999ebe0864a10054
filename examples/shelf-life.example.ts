import { runKeep } from '../src/contract/keep.ts';
import { saltWaterActivity } from '../src/core/salt/water-activity.ts';
import type { Example, Row } from './case.ts';

/** So few at the start, and so much work before growth, that Listeria is not what decides. */
const fewListeria = { startLog10: -6, h0: 20 };
const base = { place: 'GB-ENG', ready: true, packed: 'vacuum', keptC: 5, ...fewListeria } as const;
/** Days; −1 where no life is given. */
const days = (more: object) => runKeep({ ...base, ...more }).days ?? -1;
const limit = (id: string, more: object) =>
  runKeep({ ...base, ...more }).limits.find((l) => l.id === id)?.days ?? -1;

export const example: Example = {
  title: 'How long a cooked piece may be kept: the earliest rule decides',
  story:
    'Without air and above 3 °C British guidance gives ten days, unless one of its controlling factors holds in every part; the American code gives seven days at 5 °C, the day of making being the first, and thirty at 1 °C under its scheme; cook-chill gives five. Beside them stands the time that Listeria takes from 1 to 100 a gram. 3.5 % salt in the water lifts the ten days, but it is water activity 0.980, not 0.97: two factors, each by itself.',
  equation: 'life = ⌊min over every rule that applies⌋',
  sources: [
    'fsa-vacuum-packing-2020',
    'us-food-code-keeping',
    'doh-cook-chill-1989',
    'fda-fsis-listeria-2003',
    'eu-2073-2005',
  ],
  run(): Row[] {
    const printed = { tolerance: 0, unit: 'days', why: 'a published number of days, taken over exactly' };
    const fsa = { ...printed, source: 'fsa-vacuum-packing-2020', confidence: 'secondary' } as const;
    const code = { ...printed, source: 'us-food-code-keeping', confidence: 'secondary' } as const;
    const ten = (more: object) => limit('gb-airless-10-days', more);
    const listeria = (more: object) =>
      limit('listeria-limit', {
        startLog10: 0,
        h0: 0,
        like: 'deli-meat',
        pH: 6.2,
        waterActivity: 0.97,
        ...more,
      });
    const published = {
      source: 'fda-fsis-listeria-2003',
      confidence: 'memory',
      unit: 'days',
      why: '0.1 %; the rate and its law are remembered',
    } as const;
    return [
      { ...fsa, quantity: 'vacuum-packed, 8 °C, no factor', expected: 10, ours: ten({ keptC: 8 }) },
      { ...fsa, quantity: 'vacuum-packed, 3 °C: not limited by it', expected: -1, ours: ten({ keptC: 3 }) },
      { ...fsa, quantity: 'pH 5.0: lifted', expected: -1, ours: ten({ pH: 5 }) },
      { ...fsa, quantity: 'pH 5.1: not', expected: 10, ours: ten({ pH: 5.1 }) },
      {
        ...fsa,
        quantity: '3.5 % salt in the water: lifted',
        expected: -1,
        ours: ten({ waterPhaseSaltPct: 3.5 }),
      },
      { ...fsa, quantity: '3.4 %: not', expected: 10, ours: ten({ waterPhaseSaltPct: 3.4 }) },
      { ...fsa, quantity: 'water activity 0.97: lifted', expected: -1, ours: ten({ waterActivity: 0.97 }) },
      { ...fsa, quantity: 'water activity 0.98: not', expected: 10, ours: ten({ waterActivity: 0.98 }) },
      {
        ...fsa,
        quantity: '90 °C for 10 min in the pack: lifted',
        expected: -1,
        ours: ten({ heatedInPack: true }),
      },
      { ...fsa, quantity: 'in air: not limited by it', expected: -1, ours: ten({ packed: 'air' }) },
      { ...code, quantity: 'United States, 5 °C', expected: 7, ours: days({ place: 'US' }) },
      {
        ...code,
        quantity: 'United States, 6 °C: no life',
        expected: -1,
        ours: days({ place: 'US', keptC: 6 }),
      },
      {
        ...code,
        quantity: 'United States, sealed at once, 1 °C',
        expected: 30,
        ours: days({ place: 'US', keptC: 1, scheme: 'sealed at once and kept at 1 °C' }),
      },
      {
        ...printed,
        source: 'doh-cook-chill-1989',
        confidence: 'memory',
        quantity: 'cook-chill, 3 °C',
        expected: 5,
        ours: days({ keptC: 3, scheme: 'cook-chill' }),
      },
      {
        ...published,
        quantity: 'Listeria from 1 to 100 a gram at 5 °C, as published',
        expected: 7.092,
        tolerance: 0.007,
        ours: listeria({ keptC: 5 }),
      },
      {
        ...published,
        quantity: 'the same at 8 °C',
        expected: 3.214,
        tolerance: 0.0032,
        ours: listeria({ keptC: 8 }),
      },
      {
        ...printed,
        source: 'eu-2073-2005',
        confidence: 'memory',
        quantity: 'pH 5.0 with water activity 0.94: Listeria is taken not to grow',
        expected: -1,
        ours: listeria({ pH: 5, waterActivity: 0.94 }),
      },
      {
        quantity: 'water activity at 3.5 % salt in the water',
        source: 'resnik-chirife-1988',
        confidence: 'computed',
        expected: 0.9796,
        ours: saltWaterActivity(0.035),
        tolerance: 0.001,
        unit: '-',
        why: 'the accuracy of the salt law at 25 °C',
      },
    ];
  },
};
