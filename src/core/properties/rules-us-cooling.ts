/** Rules of the United States for cooling and keeping. */
import { mammals, poultry } from './product.ts';
import { fahrenheit, hours, minutes, type Rule } from './rule.ts';

/** Printed in both units; a reading that meets either meets the row. */
const from = (F: number, C: number) => Math.min(C, fahrenheit(F));
const to = (F: number, C: number) => Math.max(C, fahrenheit(F));

const authority =
  'Advice, not a licence: the state’s code, the inspector and a qualified person decide for your kitchen.';
const slowest = 'Holds only for the warmest point of the slowest piece.';

const retail = {
  place: 'United States, retail and restaurants (model code, as adopted by the state)',
  type: 'statutory',
  source: 'us-food-code',
  cautions: [slowest, authority],
} as const;

const plant = {
  kind: 'cooling',
  place: 'United States, inspected plants',
  type: 'guidance',
  source: 'fsis-appendix-b',
} as const;

export const usCoolingRules: readonly Rule[] = [
  {
    ...retail,
    id: 'us-food-code-cooling',
    kind: 'cooling',
    title: '57 to 21 °C within 2 hours, and to 5 °C within 6 hours in all',
    appliesTo: 'cooked food that is cooled',
    scope: { places: ['US'], steps: ['chill'], role: 'usual' },
    limbs: [
      { fromC: 57, toC: 21, s: hours(2) },
      { fromC: 57, toC: 5, s: hours(6) },
    ],
    confidence: 'secondary',
  },
  {
    ...retail,
    id: 'us-hot-hold-57c',
    kind: 'keep',
    title: 'Kept hot at 135 °F (57 °C) or above',
    appliesTo: 'food kept hot for service (whole roasts: 130 °F)',
    scope: { places: ['US'], steps: ['keep hot'], role: 'usual' },
    side: 'at least',
    C: 57,
    spell: null,
    confidence: 'memory',
  },
  {
    ...retail,
    id: 'us-cold-hold-5c',
    kind: 'keep',
    title: 'Kept cold at 41 °F (5 °C) or below',
    appliesTo: 'food that needs time and temperature control',
    scope: { places: ['US'], steps: ['keep'], role: 'usual' },
    side: 'at most',
    C: 5,
    spell: null,
    confidence: 'memory',
  },
  {
    ...retail,
    id: 'us-food-code-cooling-ambient',
    kind: 'cooling',
    title: 'Made from ingredients at room temperature: 5 °C within 4 hours',
    appliesTo: 'food made up from ingredients at room temperature and then chilled',
    scope: { places: ['US'], steps: ['chill'], role: 'beside', product: { cooked: false } },
    limbs: [{ fromC: 21, toC: 5, s: hours(4) }],
    confidence: 'secondary',
    cautions: [
      'The code names no starting temperature: 4 hours are counted here from 21 °C.',
      ...retail.cautions,
    ],
  },
  {
    ...retail,
    id: 'us-hot-hold-54c-roasts',
    kind: 'keep',
    title: 'Whole roasts kept hot at 130 °F (54 °C) or above',
    appliesTo: 'whole meat roasts that were cooked by the code’s table for roasts',
    scope: {
      places: ['US'],
      steps: ['keep hot'],
      role: 'instead',
      insteadOf: ['us-hot-hold-57c'],
      product: { animals: mammals, noneOf: poultry, noForms: ['minced', 'stuffed or rolled'] },
    },
    side: 'at least',
    C: 54.4,
    spell: null,
    confidence: 'memory',
  },
  {
    ...plant,
    id: 'us-plant-cooling-option-1',
    title: 'Cooling, first option: 130 to 80 °F within 1.5 hours, 80 to 40 °F within 5 more',
    appliesTo: 'any cooked meat or poultry, cured or not',
    scope: { places: ['US'], steps: ['chill'], role: 'instead', insteadOf: ['us-food-code-cooling'] },
    limbs: [
      { fromC: from(130, 54.4), toC: to(80, 26.7), s: hours(1.5) },
      { fromC: to(80, 26.7), toC: to(40, 4.4), s: hours(5) },
    ],
    confidence: 'secondary',
    cautions: [slowest, authority],
  },
  {
    ...plant,
    id: 'us-plant-cooling-option-2',
    title: 'Cooling, second option: 120 to 80 °F within 1 hour, 80 to 55 °F within 5 more, then to 40 °F',
    appliesTo: 'cooked meat or poultry whose chilling begins within 90 minutes of the end of cooking',
    scope: { places: ['US'], steps: ['chill'], role: 'instead', insteadOf: ['us-food-code-cooling'] },
    limbs: [
      { fromC: from(120, 48.9), toC: to(80, 26.7), s: hours(1) },
      { fromC: to(80, 26.7), toC: to(55, 12.8), s: hours(5) },
      { fromC: from(120, 48.9), toC: to(55, 12.8), s: hours(6) },
      { fromC: to(55, 12.8), toC: to(40, 4.4), s: null },
    ],
    startWithin: minutes(90),
    confidence: 'memory',
    cautions: [
      slowest,
      'The limits at 80 °F are from memory of the present edition; the older one gives 120 to 55 °F within 6 hours.',
      authority,
    ],
  },
  {
    ...plant,
    id: 'us-plant-cooling-cured',
    title: 'Cooling of cured meat: 130 to 80 °F within 5 hours, 80 to 45 °F within 10 more',
    appliesTo: 'cooked meat or poultry with at least 100 ppm nitrite put in',
    scope: {
      places: ['US'],
      steps: ['chill'],
      role: 'instead',
      insteadOf: ['us-food-code-cooling'],
      product: { nitritePpm: 100 },
    },
    limbs: [
      { fromC: from(130, 54.4), toC: to(80, 26.7), s: hours(5) },
      { fromC: to(80, 26.7), toC: to(45, 7.2), s: hours(10) },
    ],
    confidence: 'secondary',
    cautions: [
      'Only with at least 100 ppm of nitrite put in: a log cannot show that, the cure’s record must.',
      slowest,
      authority,
    ],
  },
];
