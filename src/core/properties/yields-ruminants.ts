/** Published yields of lamb, beef, deer and rabbit. The British figures for lamb and beef are of one animal each. */
import { sd, type YieldStudy } from './yields-rows.ts';

const rabbits = (
  [
    ['rabbit-male', 'male', 2.46, [55.76, 50.77, 4.99], [30.52, 28.52, 21.88, 19.08]],
    ['rabbit-female', 'female', 2.47, [55.92, 51.52, 4.4], [30.67, 29.04, 21.94, 18.35]],
  ] as const
).flatMap(([id, sex, kg, live, cuts]): YieldStudy[] => {
  const same = {
    species: 'rabbit',
    n: 11,
    source: 'kuzelov-2011-rabbit',
    evidence: 'abstract',
    confidence: 'read',
  } as const;
  return [
    {
      ...same,
      id: `${id}-live`,
      animals: `farmed rabbits of 77 days, ${sex}, ${kg} kg`,
      basis: 'live',
      rows: [
        { part: 'carcass with head', pct: live[0] },
        { part: 'carcass without head', pct: live[1], within: 'carcass with head' },
        { part: 'head', pct: live[2], within: 'carcass with head', note: 'by difference' },
      ],
    },
    {
      ...same,
      id,
      animals: `farmed rabbits of 77 days, ${sex}, carcass with head`,
      basis: 'dressed',
      rows: ['hind legs', 'saddle', 'forelegs', 'neck and breast'].map((part, i) => ({
        part,
        pct: cuts[i]!,
      })),
    },
  ];
});

export const ruminantYields: readonly YieldStudy[] = [
  {
    id: 'ahdb-lamb',
    species: 'lamb',
    animals: 'one lamb of 40.05 kg',
    basis: 'live',
    n: 1,
    source: 'ahdb-lamb-yield-guide',
    evidence: 'table',
    confidence: 'read',
    rows: [
      { part: 'carcass', pct: 47.44, note: '100 less the fifth quarter' },
      { part: 'fleece and pelt', pct: 11.04 },
      { part: 'kidney knob and channel fat', pct: 1.62 },
      { part: 'caul fat', pct: 1.75 },
      { part: 'intestinal fat', pct: 1.35 },
      { part: 'kidneys', pct: 0.25 },
      { part: 'liver', pct: 1.72, note: 'with gall bladder' },
      { part: 'skirt', pct: 0.55 },
      { part: 'heart', pct: 0.55 },
      { part: 'stomachs', pct: 2.7 },
      { part: 'intestines', pct: 3.22 },
      { part: 'feet', pct: 1.95 },
      { part: 'tail', pct: 0.27 },
      { part: 'reproductive organs', pct: 0.35 },
      { part: 'head with tongue', pct: 4.08 },
      { part: 'lungs, trachea and sweetbreads', pct: 2.15 },
      { part: 'blood', pct: 4.6 },
      { part: 'pancreas', pct: 0.27 },
      { part: 'trim', pct: 1.47 },
      { part: 'gut contents', pct: 12.13 },
      { part: 'ileum', pct: 0.27 },
      { part: 'spleen', pct: 0.27 },
    ],
  },
  {
    id: 'british-lamb-survey',
    species: 'lamb',
    animals: 'British castrated lambs, side of 8.3 kg',
    basis: 'chilled',
    n: 421,
    source: 'kempster-lamb-survey',
    evidence: 'abstract',
    confidence: 'read',
    rows: [
      { part: 'subcutaneous fat', pct: 12.6, ...sd(3.2) },
      { part: 'lean', pct: 55.6, note: 'middle of group means from 54.5 to 56.7' },
    ],
  },
  {
    id: 'ahdb-beef',
    species: 'beef',
    animals: 'one steer of 600 kg',
    basis: 'live',
    n: 1,
    source: 'ahdb-beef-yield-guide',
    evidence: 'table',
    confidence: 'read',
    note: 'the fifth quarter is printed as 47.00; its rows sum to 47.02',
    rows: [
      { part: 'carcass', pct: 53 },
      { part: 'edible meat', pct: 40, within: 'carcass' },
      { part: 'bone, fat and drip', pct: 13, within: 'carcass' },
      { part: 'hide', pct: 7.08 },
      { part: 'lung fat', pct: 0.26 },
      { part: 'caul fat', pct: 2.42 },
      { part: 'kidney knob and channel fat', pct: 1.86 },
      { part: 'cod fat', pct: 0.75 },
      { part: 'skirt', pct: 0.21 },
      { part: 'tail', pct: 0.19 },
      { part: 'kidneys', pct: 0.19 },
      { part: 'heart', pct: 0.37 },
      { part: 'liver', pct: 1.31 },
      { part: 'tongue', pct: 0.37, note: 'with trimmings' },
      { part: 'head and cheek meat', pct: 0.35 },
      { part: 'lips', pct: 0.19 },
      { part: 'stomachs', pct: 2.61 },
      { part: 'feet', pct: 1.86 },
      { part: 'lungs', pct: 0.6 },
      { part: 'trachea and trim', pct: 0.19 },
      { part: 'pizzle and testicles', pct: 0.22 },
      { part: 'oesophagus', pct: 0.04 },
      { part: 'sweetbreads', pct: 0.06, note: 'thymus' },
      { part: 'spleen and pancreas', pct: 0.21 },
      { part: 'gall bladder', pct: 0.09 },
      { part: 'ears', pct: 0.21 },
      { part: 'mandible', pct: 0.26 },
      { part: 'remainder', pct: 1.21 },
      { part: 'blood', pct: 3.36 },
      { part: 'gut contents', pct: 14.33 },
      { part: 'remainder of the head', pct: 1.15 },
      { part: 'spinal cord', pct: 0.03 },
      { part: 'intestinal fat', pct: 2.24 },
      { part: 'intestines', pct: 2.8, note: 'with what is in them' },
    ],
  },
  ...rabbits,
  ...(
    [
      ['fallow-male', 'male, 47.4 kg', 61.5, 9.6],
      ['fallow-female', 'female, 41.9 kg', 59.0, 8.9],
    ] as const
  ).map(
    ([id, animals, carcass, offal]): YieldStudy => ({
      id,
      species: 'deer',
      animals: `wild fallow deer, ${animals}`,
      basis: 'live',
      source: 'fitzhenry-2019-fallow',
      evidence: 'abstract',
      confidence: 'read',
      rows: [
        { part: 'carcass', pct: carcass },
        { part: 'pluck', pct: offal, note: 'edible offal without stomach and intestines' },
      ],
    }),
  ),
];
