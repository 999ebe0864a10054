/** Rules of the European Union for keeping raw parts cold, and two international tables for one hazard each. */
import { type Animal, mammals, poultry } from './product.ts';
import { britain, minutes, type ProductTest, type Rule } from './rule.ts';

const authority =
  'Advice, not a licence: the competent authority and a qualified person decide for your kitchen.';

function cold(id: string, title: string, appliesTo: string, C: number, product: ProductTest): Rule {
  return {
    id,
    kind: 'keep',
    title,
    place: 'European Union; retained in Great Britain',
    appliesTo,
    scope: {
      places: [...britain, 'EU'],
      steps: ['keep'],
      role: 'beside',
      product: { cooked: false, ...product },
    },
    type: 'statutory',
    side: 'at most',
    C,
    spell: null,
    source: 'eu-853-2004',
    confidence: 'memory',
    cautions: [
      'Written for approved establishments; the figure is from memory of the regulation.',
      authority,
    ],
  };
}

/** Animals in whose muscle the parasite has been found. */
const trichinous: readonly Animal[] = ['pig', 'wild boar', 'horse'];

export const otherRules: readonly Rule[] = [
  cold('eu-red-meat-7c', 'Red meat kept at 7 °C or below', 'carcasses and cuts of red meat', 7, {
    animals: mammals,
    offal: false,
    noForms: ['minced'],
  }),
  cold('eu-offal-3c', 'Offal kept at 3 °C or below', 'offal', 3, { offal: true }),
  cold('eu-poultry-4c', 'Poultry kept at 4 °C or below', 'poultry meat', 4, { animals: poultry }),
  cold(
    'eu-preparations-4c',
    'Meat preparations kept at 4 °C or below',
    'raw meat that was seasoned, filled or had other food added to it',
    4,
    { forms: ['stuffed or rolled'] },
  ),
  cold(
    'eu-minced-2c',
    'Minced meat kept at 2 °C or below',
    'minced meat and mechanically separated meat',
    2,
    {
      forms: ['minced'],
    },
  ),
  cold('eu-frozen-18c', 'Frozen meat kept at −18 °C or below', 'meat that is stored frozen', -18, {}),
  {
    id: 'woah-avian-influenza',
    kind: 'hold',
    title: 'Avian influenza virus in poultry meat: 60 °C for 507 s or its printed equals',
    place: 'international (animal-health code, trade)',
    appliesTo: 'poultry meat, this virus only; it says nothing about bacteria',
    scope: { places: [], steps: ['cook'], role: 'beside', product: { animals: poultry } },
    type: 'guidance',
    rows: [
      { C: 60, s: 507, printed: '60 °C' },
      { C: 65, s: 42, printed: '65 °C' },
      { C: 70, s: 3.5, printed: '70 °C' },
      { C: 73.9, s: 0.51, printed: '73.9 °C' },
    ],
    source: 'woah-avian-influenza',
    confidence: 'memory',
    cautions: ['For one virus: the rules for bacteria ask for more and stand beside it.', authority],
  },
  {
    id: 'us-trichinella-heating',
    kind: 'hold',
    title: 'Trichinella in pork: 49.0 °C for 21 h … 60 °C for 1 min, or its printed equals',
    place: 'United States (former text of the code, since removed)',
    appliesTo: 'pork, this parasite only; it says nothing about bacteria',
    scope: {
      places: ['US'],
      steps: ['cook'],
      role: 'beside',
      product: { animals: trichinous },
    },
    type: 'guidance',
    rows: [
      [49.0, 21 * 60],
      [50.0, 9.5 * 60],
      [51.1, 4.5 * 60],
      [52.2, 2 * 60],
      [53.4, 60],
      [54.5, 30],
      [55.6, 15],
      [56.7, 6],
      [57.8, 3],
      [58.9, 2],
      [60.0, 1],
      [61.1, 1],
      [62.2, 0],
    ].map(([C, min]) => ({ C: C!, s: minutes(min!), printed: `${C} °C` })),
    source: 'us-9cfr-318-10',
    confidence: 'secondary',
    cautions: ['For one parasite: the rules for bacteria ask for more and stand beside it.', authority],
  },
  {
    id: 'study-hepatitis-e-71c-20min',
    kind: 'hold',
    title: 'Hepatitis E virus in pig liver: 71 °C for 20 minutes, as one study found',
    place: 'one study, no rule of any authority',
    appliesTo: 'pig liver and what is made with it, this virus only',
    scope: {
      places: [],
      steps: ['cook'],
      role: 'beside',
      product: { animals: ['pig', 'wild boar'], offal: true },
    },
    type: 'model',
    rows: [{ C: 71, s: minutes(20), printed: '71 °C' }],
    source: 'barnaud-2012',
    confidence: 'memory',
    cautions: [
      'One laboratory, one recipe of pâté: 70 °C for 2 min left some virus alive there. It is no rule, and shown beside the rules only.',
      authority,
    ],
  },
  {
    id: 'study-toxoplasma-heating',
    kind: 'hold',
    title: 'Toxoplasma cysts: 61 °C for 4 minutes, 64 °C for 3, 67 °C at once, as one study found',
    place: 'one study, no rule of any authority',
    appliesTo: 'meat, this parasite only',
    scope: { places: [], steps: ['cook'], role: 'beside', product: { animals: mammals } },
    type: 'model',
    rows: [
      { C: 61, s: minutes(4), printed: '61 °C' },
      { C: 64, s: minutes(3), printed: '64 °C' },
      { C: 67, s: 0, printed: '67 °C' },
    ],
    source: 'dubey-1990',
    confidence: 'memory',
    cautions: ['For one parasite: the rules for bacteria ask for more and stand beside it.', authority],
  },
];
