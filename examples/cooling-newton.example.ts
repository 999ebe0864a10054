import { judge } from '../src/core/microbes/judge.ts';
import { findRule } from '../src/core/properties/rules.ts';
import type { Example, Row } from './case.ts';

const [low, high, perHour] = [2, 75, 1.2];
/** Newton cooling, read every minute. */
const log = Array.from({ length: 301 }, (_, i) => ({
  s: i * 60,
  C: low + (high - low) * Math.exp((-perHour * i) / 60),
}));

/** Exact time between two temperatures of the curve [min]. */
const between = (from: number, to: number) => (60 * Math.log((from - low) / (to - low))) / perHour;

function verdict(id: string) {
  const rule = findRule(id);
  if (rule === undefined) throw new RangeError(`no rule ${id}`);
  const [found] = judge(log, [rule]);
  if (found === undefined) throw new RangeError('no verdict');
  return found;
}

export const example: Example = {
  title: 'One cooling curve, three countries’ rules',
  story:
    'A piece falls from 75 °C towards 2 °C by Newton’s law, at 1.2 per hour, and a logger reads it every minute. The British benchmark of 90 min from 63 to 8 °C is missed by 26 min; the American limits for restaurants and for plants are both kept. 1 °C is never reached, and that is said instead of a number.',
  equation: 'T(t) = 2 + 73·e^(−1.2 t);  Δt = ln((T1 − 2)/(T2 − 2))/1.2 h',
  sources: ['gb-chilling-guidance', 'us-food-code', 'fsis-appendix-b', 'own-computation'],
  run(): Row[] {
    const timed = (quantity: string, id: string, part: number, from: number, to: number): Row => ({
      quantity,
      source: 'own-computation',
      confidence: 'computed',
      expected: between(from, to),
      ours: (verdict(id).parts[part]?.value ?? Number.NaN) / 60,
      tolerance: 0.2,
      unit: 'min',
      why: 'straight lines between readings a minute apart; the plant rule takes the printed °C or °F, whichever is met',
    });
    const says = (quantity: string, id: string, expected: boolean): Row => ({
      quantity,
      source: 'own-computation',
      confidence: 'computed',
      expected: expected ? 1 : 0,
      ours: verdict(id).passes === true ? 1 : 0,
      tolerance: 0,
      unit: '1: holds, 0: does not',
      why: 'a verdict is right or wrong',
    });
    const never = findRule('gb-chill-90min-8c');
    const toOne =
      never?.kind === 'cooling'
        ? judge(log, [{ ...never, limbs: [{ fromC: 63, toC: 1, s: 48 * 3600 }] }])[0]
        : undefined;
    const fromCook =
      never?.kind === 'cooling'
        ? judge(log, [{ ...never, limbs: [{ fromC: 75, toC: 8, s: 90 * 60 }] }])[0]
        : undefined;
    return [
      timed('63 → 8 °C', 'gb-chill-90min-8c', 0, 63, 8),
      says('within 90 min', 'gb-chill-90min-8c', false),
      {
        quantity: '75 → 8 °C, counted from the end of the cook',
        source: 'own-computation',
        confidence: 'computed',
        expected: between(75, 8),
        ours: (fromCook?.parts[0]?.value ?? Number.NaN) / 60,
        tolerance: 0.2,
        unit: 'min',
        why: 'straight lines between readings a minute apart',
      },
      {
        quantity: 'so counted, within 90 min',
        source: 'own-computation',
        confidence: 'computed',
        expected: 0,
        ours: fromCook?.passes === false ? 0 : 1,
        tolerance: 0,
        unit: '1: holds, 0: does not',
        why: 'a verdict is right or wrong',
      },
      timed('57 → 21 °C', 'us-food-code-cooling', 0, 57, 21),
      timed('57 → 5 °C', 'us-food-code-cooling', 1, 57, 5),
      says('within 2 h and 6 h', 'us-food-code-cooling', true),
      timed('130 → 80 °F', 'us-plant-cooling-option-1', 0, (130 - 32) / 1.8, (80 - 32) / 1.8),
      timed('80 → 40 °F', 'us-plant-cooling-option-1', 1, (80 - 32) / 1.8, (40 - 32) / 1.8),
      says('within 1.5 h and 5 h more', 'us-plant-cooling-option-1', true),
      {
        quantity: 'ever 1 °C: undecided, without a time',
        source: 'own-computation',
        confidence: 'computed',
        expected: 1,
        ours: toOne?.passes === null && toOne.parts[0]?.end === null ? 1 : 0,
        tolerance: 0,
        unit: '1: undecided',
        why: 'the curve never falls below 2 °C',
      },
    ];
  },
};
