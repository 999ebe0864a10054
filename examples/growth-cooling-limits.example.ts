import { growthAfter, growthAlong } from '../src/core/microbes/growth.ts';
import { integralFor } from '../src/core/microbes/shelf-life.ts';
import { findGrowthOrganism } from '../src/core/properties/organisms-growth.ts';
import type { Example, Row } from './case.ts';

const roasted = findGrowthOrganism('clostridium-perfringens')?.sets.find((s) => s.id === 'roasted-chicken');
const cured = findGrowthOrganism('clostridium-perfringens')?.sets.find((s) => s.id === 'cured-pork');
const conditions = { pH: 6.5, waterActivity: 0.99, startLog10: 2, maxLog10: 8 };

const option1 = [
  { s: 0, C: 54.4 },
  { s: 5400, C: 26.7 },
  { s: 23_400, C: 4.4 },
];
const foodCode = [
  { s: 0, C: 57 },
  { s: 7200, C: 21 },
  { s: 21_600, C: 5 },
];
const benchmark = [
  { s: 0, C: 63 },
  { s: 5400, C: 8 },
];
/** 51 to 11 °C in 8 h, the logarithm of the temperature falling in a straight line, read every minute. */
const fall = Array.from({ length: 481 }, (_, i) => ({ s: i * 60, C: 51 * (11 / 51) ** (i / 480) }));

export const example: Example = {
  title: 'How much Clostridium perfringens three cooling limits let grow',
  story:
    'The published rate in roasted chicken is added up along three cooling limits driven to their edge, and the lag is asked for that would leave exactly one log of growth. It differs nearly sevenfold: the lag decides, and it is no published number. With none, even the strictest of the three would let through 1.35 log. For cured pork the published form is run along the profile that a published model for cured beef was run along: 0.46 log with h0 4, where that model has 0.50 (upper limit 0.93). That is plausibility, not proof: another meat, another model.',
  equation: 'I = ∫ µ(T) dt;  Δ = log10(1 + e^(−h0)(e^I − 1));  h0 for one log = ln((e^I − 1)/9)',
  sources: [
    'roasted-chicken-braised-beef-cooling',
    'juneja-huang-thippareddi-2006',
    'juneja-cured-beef-cooling',
    'baranyi-roberts-1994',
    'own-computation',
  ],
  run(): Row[] {
    if (roasted === undefined || cured === undefined) throw new RangeError('no such set');
    const rows: Row[] = [];
    for (const [name, log, integral, h0] of [
      ['plant cooling option 1', option1, 7.96689, 5.769],
      ['restaurant limit, 57 to 21 to 5 °C', foodCode, 6.98736, 4.789],
      ['63 to 8 °C in 90 min', benchmark, 3.10859, 0.866],
    ] as const) {
      const ours = growthAlong(log, roasted, conditions).integral;
      rows.push({
        quantity: `${name}: ∫ µ dt`,
        source: 'own-computation',
        confidence: 'computed',
        expected: integral,
        ours,
        tolerance: 0.001 * integral,
        unit: 'ln units',
        why: 'worked out independently from the published constants, printed to six figures',
      });
      rows.push({
        quantity: `${name}: h0 that leaves one log`,
        source: 'own-computation',
        confidence: 'computed',
        expected: h0,
        ours: Math.log(Math.expm1(ours) / 9),
        tolerance: 0.001,
        unit: 'ln units',
        why: 'printed to three decimals',
      });
      rows.push({
        quantity: `${name}: that h0 gives one log again`,
        source: 'baranyi-roberts-1994',
        confidence: 'computed',
        expected: 1,
        ours: growthAfter(integralFor(1, h0), h0) / Math.LN10,
        tolerance: 1e-9,
        unit: 'log10',
        why: 'one formula is the inverse of the other',
      });
    }
    const along = (h0: number) => growthAlong(fall, cured, { ...conditions, h0 }).log10.at(-1)! - 2;
    rows.push({
      quantity: 'cured, 51 to 11 °C in 8 h, h0 4',
      source: 'own-computation',
      confidence: 'computed',
      expected: 0.4633,
      ours: along(4),
      tolerance: 0.002,
      unit: 'log10',
      why: 'solved independently as differential equations',
    });
    rows.push({
      quantity: 'cured, 51 to 11 °C in 8 h, h0 4, beside the published model for cured beef',
      source: 'juneja-cured-beef-cooling',
      confidence: 'read',
      expected: 0.5,
      ours: along(4),
      tolerance: 0.43,
      unit: 'log10',
      why: 'plausibility: inside that model’s own upper limit of 0.93 log, and as far below',
    });
    return rows;
  },
};
