import { ingoingNitrite, ionOf, saltOfIon } from '../src/core/salt/nitrite.ts';
import type { Example, Row } from './case.ts';

const lb = 0.45359237;
const row = (quantity: string, expected: number, ours: number, source = 'cfr-9-424-21'): Row => ({
  quantity,
  source,
  confidence: 'secondary',
  expected,
  ours,
  tolerance: expected * 0.002,
  unit: 'mg/kg',
  why: 'the published limits are rounded to a whole milligram, the ion’s factor to two digits',
});

export const example: Example = {
  title: 'Nitrite that goes in, against the amounts the law states in words',
  story: `The American rule states its limits twice: as ounces to a hundred pounds of meat or pounds to a hundred gallons of pickle, and in
parts per million. The European rule states the ion, the older one the sodium salt. The one must follow from the other.
A hundred gallons of pickle are taken as a thousand pounds, as the rule’s arithmetic does (from memory).`,
  equation: 'ppm = nitrite·1e6/meat; pumped: nitrite·uptake·1e6/pickle; ion = salt·46.0055/68.9953',
  sources: ['cfr-9-424-21', 'fsis-7620-3', 'eu-2023-2108'],
  run: () => [
    row(
      'a quarter of an ounce to 100 lb, comminuted',
      156,
      ingoingNitrite({ method: 'comminuted', nitrite: lb / 64, meat: 100 * lb }),
    ),
    row('an ounce to 100 lb, dry', 625, ingoingNitrite({ method: 'dry', nitrite: lb / 16, meat: 100 * lb })),
    row(
      '2 lb in 1000 lb of pickle, pumped at 10 %',
      200,
      ingoingNitrite({ method: 'pumped', nitrite: 2 * lb, pickle: 1000 * lb, uptake: 0.1 }),
    ),
    row('the ion in 150 mg/kg of sodium nitrite', 100, ionOf('NaNO2', 150), 'eu-2023-2108'),
    row('sodium nitrite that holds 80 mg/kg of the ion', 120, saltOfIon('NaNO2', 80), 'eu-2023-2108'),
    ...(
      [
        ['sodium nitrite', 'NaNO2', 0.67],
        ['sodium nitrate', 'NaNO3', 0.73],
        ['potassium nitrate', 'KNO3', 0.61],
      ] as const
    ).map(
      ([name, salt, factor]): Row => ({
        quantity: `the ion in a gram of ${name}`,
        source: 'eu-2023-2108',
        confidence: 'secondary',
        expected: factor,
        ours: ionOf(salt, 1),
        tolerance: 0.005,
        unit: 'g',
        why: 'the factor is printed to two digits',
      }),
    ),
  ],
};
