/** Freezing against parasites. It does not make meat free of bacteria, and it is not accepted for every animal. */
import type { Animal } from './product.ts';
import { britain, type FreezeRule, hours, type ProductTest, type RulePlace } from './rule.ts';

const authority =
  'Advice, not a licence: the competent authority and a qualified person decide for your kitchen.';
const bacteria =
  'Freezing kills the parasites named and no more: bacteria live through it and grow again when it thaws.';
const notGame =
  'Not accepted for wild boar, horse or game: species of the parasite found there live through freezing.';

const days = (n: number) => hours(24 * n);

interface Table {
  readonly id: string;
  readonly title: string;
  readonly place: string;
  readonly places: readonly RulePlace[];
  readonly appliesTo: string;
  readonly of: FreezeRule['of'];
  readonly product: ProductTest;
  readonly rows: readonly (readonly [C: number, s: number])[];
  readonly source: string;
  readonly type: FreezeRule['type'];
  readonly confidence: FreezeRule['confidence'];
  readonly cautions: readonly string[];
}

const table = ({ places, product, rows, cautions, ...rest }: Table): FreezeRule => ({
  ...rest,
  kind: 'freeze',
  scope: { places, steps: ['freeze'], role: 'beside', product },
  rows: rows.map(([C, s]) => ({ C, s, printed: `${String(C).replace('-', '−')} °C` })),
  cautions: [...cautions, bacteria, authority],
});

const pig: ProductTest = { animals: ['pig'], noneOf: ['wild boar', 'horse'] };
const eu = {
  place: 'European Union; retained in Great Britain',
  places: [...britain, 'EU'] as readonly RulePlace[],
  product: pig,
  source: 'eu-2015-1375',
  type: 'statutory',
  confidence: 'memory',
  cautions: [notGame, 'The figures are from memory of the annex; the carcass must also be tested or exempt.'],
} as const;
const us = {
  place: 'United States (former text of the code, since removed)',
  places: ['US'] as readonly RulePlace[],
  product: pig,
  source: 'us-9cfr-318-10',
  type: 'guidance',
  confidence: 'secondary',
  cautions: [notGame],
} as const;
const middle = 'the middle of the piece';
const air = 'the air of the freezer';
const fish: readonly Animal[] = ['fish'];

export const freezingRules: readonly FreezeRule[] = [
  table({
    ...eu,
    id: 'eu-trichinella-freezing-middle',
    title: 'Trichinella in pork: frozen at its middle, −18 °C for 106 h … −37 °C for half an hour',
    appliesTo: 'pork of domestic pigs, temperature measured in the middle of the piece',
    of: middle,
    rows: [
      [-18, hours(106)],
      [-21, hours(82)],
      [-23.5, hours(63)],
      [-26, hours(48)],
      [-29, hours(35)],
      [-32, hours(22)],
      [-35, hours(8)],
      [-37, hours(0.5)],
    ],
  }),
  table({
    ...eu,
    id: 'eu-trichinella-freezing-to-15cm',
    title: 'Trichinella in pork up to 15 cm thick: −15 °C for 20 days, −23 °C for 10, −29 °C for 6',
    appliesTo: 'pork of domestic pigs in pieces up to 15 cm thick, by the temperature of the freezer',
    of: air,
    rows: [
      [-15, days(20)],
      [-23, days(10)],
      [-29, days(6)],
    ],
  }),
  table({
    ...eu,
    id: 'eu-trichinella-freezing-to-50cm',
    title: 'Trichinella in pork 15 to 50 cm thick: −15 °C for 30 days, −23 °C for 20, −29 °C for 12',
    appliesTo: 'pork of domestic pigs in pieces 15 to 50 cm thick, by the temperature of the freezer',
    of: air,
    rows: [
      [-15, days(30)],
      [-23, days(20)],
      [-29, days(12)],
    ],
  }),
  table({
    ...us,
    id: 'us-trichinella-freezing-middle',
    title: 'Trichinella in pork: frozen at its middle, −17.8 °C for 106 h … −37.2 °C for half an hour',
    appliesTo: 'pork, temperature measured in the middle of the piece',
    of: middle,
    rows: [
      [-17.8, hours(106)],
      [-20.6, hours(82)],
      [-23.3, hours(63)],
      [-26.1, hours(48)],
      [-28.9, hours(35)],
      [-31.7, hours(22)],
      [-34.5, hours(8)],
      [-37.2, hours(0.5)],
    ],
  }),
  table({
    ...us,
    id: 'us-trichinella-freezing-to-6in',
    title: 'Trichinella in pork up to 6 in thick: 5 °F for 20 days, −10 °F for 10, −20 °F for 6',
    appliesTo: 'pork in pieces up to 6 in (15 cm) thick, by the temperature of the freezer',
    of: air,
    rows: [
      [-15, days(20)],
      [-23, days(10)],
      [-29, days(6)],
    ],
  }),
  table({
    ...us,
    id: 'us-trichinella-freezing-to-27in',
    title: 'Trichinella in pork 6 to 27 in thick: 5 °F for 30 days, −10 °F for 20, −20 °F for 12',
    appliesTo: 'pork in pieces 15 to 69 cm thick, by the temperature of the freezer',
    of: air,
    rows: [
      [-15, days(30)],
      [-23, days(20)],
      [-29, days(12)],
    ],
  }),
  table({
    id: 'eu-fish-parasites-freezing',
    title: 'Fish eaten raw or nearly so: −20 °C for 24 h in all parts, or −35 °C for 15 h',
    place: 'European Union; retained in Great Britain',
    places: [...britain, 'EU'],
    appliesTo: 'fish served raw, marinated, salted or not cooked through',
    of: middle,
    product: { animals: fish },
    rows: [
      [-20, hours(24)],
      [-35, hours(15)],
    ],
    source: 'eu-853-2004',
    type: 'statutory',
    confidence: 'memory',
    cautions: ['The figures are from memory of the regulation.'],
  }),
  table({
    id: 'study-toxoplasma-freezing',
    title: 'Toxoplasma cysts: −12 °C for 3 days, as studies found',
    place: 'single studies, no rule of any authority',
    places: [],
    appliesTo: 'meat, this parasite only',
    of: middle,
    product: { noneOf: ['fish'] },
    rows: [[-12, days(3)]],
    source: 'dubey-1990',
    type: 'model',
    confidence: 'memory',
    cautions: ['Reported as 2 to 3 days; the longer is asked here.'],
  }),
];
