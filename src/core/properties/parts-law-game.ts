/** Deer, wild boar, small wild game and farmed rabbit, and poultry that is slaughtered where it was kept. */
import { barred, both, carcass, checkedOn, mixed, passed } from './parts-law-rows.ts';

const hygiene = ['eu-853-2004'];
const largeGame = 'Reg (EC) 853/2004 Annex III Section IV Chapter II';
const smallGame = 'Reg (EC) 853/2004 Annex III Section IV Chapter III';
const haunches = [
  'haunch',
  'saddle',
  'loin',
  'fillet',
  'shoulder',
  'neck',
  'breast',
  'shank',
  'rib',
  'flank',
];

export const deerLaw = checkedOn('2026-11-25', [
  {
    species: 'farmed deer',
    names: haunches,
    books: both,
    status: 'food',
    condition: 'Meat of the carcass, from an animal passed at inspection.',
    citation: `${carcass}; Annex III Section III`,
    confidence: 'memory',
    sources: hygiene,
  },
  {
    species: 'farmed deer',
    names: ['offal', 'heart', 'liver', 'kidney', 'tongue', 'caul'],
    books: both,
    status: 'food on conditions',
    condition: `${passed} As the offal of domestic hoofed animals, under the same rules of dressing. At or below 3 °C.`,
    citation: 'Reg (EC) 853/2004 Annex III Section III, which applies Section I',
    confidence: 'memory',
    sources: hygiene,
  },
  {
    species: 'farmed deer',
    names: ['lung', 'pluck', 'stomach', 'spleen', 'testicle', 'foot'],
    books: both,
    status: 'food on conditions',
    uncookedRule: true,
    condition: `${passed} As the offal of domestic hoofed animals, under the same rules of dressing. At or below 3 °C.`,
    citation: 'Reg (EC) 853/2004 Annex III Section III, which applies Section I',
    confidence: 'memory',
    sources: hygiene,
  },
  {
    species: 'wild deer',
    names: haunches,
    books: both,
    status: 'food on conditions',
    condition:
      'Looked over by a trained person, with the numbered declaration; at or below 7 °C; skinned and inspected at an approved game establishment, or a small quantity straight from the hunter under local rules.',
    citation: `${largeGame} points 2–5; Article 1(3)(e)`,
    confidence: mixed,
    sources: hygiene,
  },
  {
    species: 'wild deer',
    names: ['heart', 'liver', 'kidney', 'pluck'],
    books: both,
    status: 'food on conditions',
    condition:
      'Viscera need not go with the body, so organs are food only if the trained person looked at them, they stayed marked as those of that body and the game establishment took them, or as a hunter’s small quantity under local rules. Body at or below 7 °C, offal at or below 3 °C.',
    citation: `${largeGame} points 2–5; Article 1(3)(e)`,
    confidence: mixed,
    sources: hygiene,
  },
  {
    species: 'wild deer',
    names: ['head', 'antler velvet', 'stomach', 'intestine', 'gralloch'],
    books: both,
    status: 'by-product by default: ask',
    condition:
      'Stomach and intestines come out on the hill and the head is mostly left: outside food unless the authority agrees.',
    citation: largeGame,
    confidence: mixed,
    sources: hygiene,
  },
  {
    species: 'wild boar',
    names: ['head', 'diaphragm', 'skirt', 'cheek', 'tongue'],
    books: both,
    status: 'food on conditions',
    condition:
      'Head (without tusks) and diaphragm go with the body and the animal is tested for Trichinella; food only after the test is negative.',
    citation: `${largeGame} point 4(a); Reg (EU) 2015/1375`,
    confidence: 'read',
    sources: [...hygiene, 'eu-2015-1375'],
  },
  {
    species: 'wild boar',
    names: haunches,
    books: both,
    status: 'food on conditions',
    condition:
      'Looked over by a trained person; at or below 7 °C; food only after the test for Trichinella is negative.',
    citation: `${largeGame}; Reg (EU) 2015/1375`,
    confidence: mixed,
    sources: [...hygiene, 'eu-2015-1375'],
  },
]);

export const smallGameLaw = checkedOn('2026-11-25', [
  {
    species: 'farmed rabbit',
    names: [
      'leg',
      'hind leg',
      'saddle',
      'shoulder',
      'forequarter',
      'loin',
      'flap',
      'foreleg',
      'neck and breast',
    ],
    books: both,
    status: 'food',
    condition: 'Meat of the carcass, from an animal passed at inspection.',
    citation: carcass,
    confidence: mixed,
    sources: hygiene,
  },
  {
    species: 'farmed rabbit',
    names: ['liver', 'heart', 'kidney'],
    books: both,
    status: 'food',
    condition: `${passed} At or below 4 °C.`,
    citation: 'Reg (EC) 853/2004 Annex III Section II',
    confidence: 'memory',
    sources: hygiene,
  },
  {
    species: 'small wild game',
    names: ['breast', 'leg', 'thigh', 'saddle', 'shoulder', 'carcass', 'neck'],
    books: both,
    status: 'food on conditions',
    condition:
      'Looked over by a trained person; at or below 4 °C; inspected at the game establishment, or a small quantity straight from the hunter under local rules. Beware of shot.',
    citation: `${smallGame}; Article 1(3)(e)`,
    confidence: mixed,
    sources: hygiene,
  },
  {
    species: 'small wild game',
    names: ['heart', 'liver', 'gizzard'],
    books: both,
    status: 'food on conditions',
    condition:
      'Looked over by a trained person; at or below 4 °C; drawn without undue delay at the game establishment; inspected; beware of lead shot.',
    citation: smallGame,
    confidence: 'read',
    sources: hygiene,
  },
  {
    species: 'small wild game',
    names: ['head', 'foot', 'intestine'],
    books: both,
    status: 'by-product by default: ask',
    condition:
      'Treated as the same parts of poultry, though the bar on heads is worded for poultry: ask the authority.',
    citation: barred,
    confidence: 'interpretation',
    sources: hygiene,
  },
]);

export const farmSlaughterLaw = checkedOn('2026-11-25', [
  {
    species: 'poultry slaughtered on the farm',
    names: [
      'carcass',
      'carcass and giblets',
      'giblet',
      'neck',
      'heart',
      'liver',
      'gizzard',
      'breast',
      'leg',
      'wing',
    ],
    books: both,
    status: 'food on conditions',
    condition:
      'Small quantities, fresh, straight from the farm to the eater or to a local shop or kitchen: no approval, but registered, run by a plan of hazards, killed by somebody certified, labelled with the farm’s name and address, with a weekly record of birds in and meat out kept for a year. What of them is no food, and shows no disease, is Category 3.',
    citation:
      'Reg (EC) 853/2004 Article 1(3)(d); Food Standards Scotland guidance; Reg (EC) 1069/2009 Article 10(c)',
    confidence: 'read',
    sources: [...hygiene, 'fss-farm-poultry', 'eu-1069-2009'],
  },
]);
