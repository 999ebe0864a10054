/** Rules of the European Union for keeping raw parts cold, and two international tables for one hazard each. */
import { minutes, type Rule } from './rule.ts';

const authority =
  'Advice, not a licence: the competent authority and a qualified person decide for your kitchen.';

function cold(id: string, title: string, appliesTo: string, C: number): Rule {
  return {
    id,
    kind: 'keep',
    title,
    place: 'European Union; retained in Great Britain',
    appliesTo,
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

export const otherRules: readonly Rule[] = [
  cold('eu-red-meat-7c', 'Red meat kept at 7 °C or below', 'carcasses and cuts of red meat', 7),
  cold('eu-offal-3c', 'Offal kept at 3 °C or below', 'offal', 3),
  cold('eu-poultry-4c', 'Poultry kept at 4 °C or below', 'poultry meat; also meat preparations', 4),
  cold('eu-minced-2c', 'Minced meat kept at 2 °C or below', 'minced meat and mechanically separated meat', 2),
  {
    id: 'woah-avian-influenza',
    kind: 'hold',
    title: 'Avian influenza virus in poultry meat: 60 °C for 507 s or its printed equals',
    place: 'international (animal-health code, trade)',
    appliesTo: 'poultry meat, this virus only; it says nothing about bacteria',
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
];
