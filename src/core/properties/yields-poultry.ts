/** Published yields of chicken, spent hen, turkey, guinea fowl and small birds. */
import { plusMinus, type YieldStudy } from './yields-rows.ts';

const sr28 = {
  basis: 'dressed',
  source: 'usda-sr28-2015',
  evidence: 'derived',
  confidence: 'computed',
} as const;
const within = (part: string) => ({ within: part });

export const poultryYields: readonly YieldStudy[] = [
  {
    ...sr28,
    id: 'us-broiler-cuts',
    species: 'chicken',
    animals: 'broilers, ready to cook with neck and giblets, cut up bone-in with skin',
    rows: [
      { part: 'breast', pct: 24.0, raw: [{ gPerLb: 87, bone: 0.2 }] },
      {
        part: 'legs',
        pct: 31.0,
        raw: [
          { gPerLb: 160, bone: 0.35 },
          { gPerLb: 59, bone: 0.44, sign: -1 },
        ],
      },
      {
        part: 'wings',
        pct: 11.5,
        raw: [
          { gPerLb: 116, bone: 0.28 },
          { gPerLb: 87, bone: 0.2, sign: -1 },
        ],
      },
      { part: 'back', pct: 23.2, raw: [{ gPerLb: 59, bone: 0.44 }] },
      { part: 'neck', pct: 5.2, raw: [{ gPerLb: 15, bone: 0.36 }] },
      { part: 'giblets', pct: 5.1, raw: [{ gPerLb: 23, bone: 0 }] },
      { part: 'neck meat', pct: 1.3, raw: [{ gPerLb: 6, bone: 0 }], ...within('neck') },
      { part: 'neck skin and fat', pct: 2.0, ...within('neck'), note: '39 % of the neck' },
      { part: 'neck bone', pct: 1.9, ...within('neck'), note: '36 % of the neck' },
      { part: 'heart', pct: 0.4, raw: [{ gPerLb: 1.8, bone: 0 }], ...within('giblets') },
    ],
  },
  {
    ...sr28,
    id: 'us-broiler-tissues',
    species: 'chicken',
    animals: 'broilers, ready to cook with neck and giblets, by tissue of the carcass',
    rows: [
      { part: 'meat', pct: 43.4, raw: [{ gPerLb: 197, bone: 0 }] },
      { part: 'skin', pct: 10.4, raw: [{ gPerLb: 47, bone: 0 }] },
      { part: 'separable fat', pct: 7.1 },
      { part: 'bone', pct: 28.6, note: '32 % of the carcass' },
      { part: 'neck', pct: 5.2, raw: [{ gPerLb: 15, bone: 0.36 }] },
      { part: 'giblets', pct: 5.1, raw: [{ gPerLb: 23, bone: 0 }] },
    ],
  },
  {
    ...sr28,
    id: 'us-roasting-chicken',
    species: 'chicken',
    animals: 'roasting chickens, ready to cook with giblets, by tissue',
    note: 'the neck cannot be told apart',
    rows: [
      { part: 'meat', pct: 46.1 },
      { part: 'bone', pct: 25.3 },
      { part: 'skin', pct: 12.6 },
      { part: 'separable fat', pct: 6.3 },
      { part: 'giblets', pct: 5.5 },
    ],
  },
  {
    ...sr28,
    id: 'us-stewing-hen',
    species: 'spent hen',
    animals: 'stewing hens, ready to cook with neck and giblets, by tissue of the carcass',
    rows: [
      { part: 'meat', pct: 42.8 },
      { part: 'skin', pct: 10.2, note: '12 % of the carcass' },
      { part: 'separable fat', pct: 6.8, note: '8 % of the carcass' },
      { part: 'bone', pct: 25.6, note: '30 % of the carcass' },
      { part: 'giblets', pct: 6.2, raw: [{ gPerLb: 28, bone: 0 }] },
      { part: 'neck', pct: 8.5, note: 'by difference: uncertain' },
    ],
  },
  ...(
    [
      ['cage-hens-40wk', 'caged, 40 weeks', 26.1, 0.51, 51.7, 1.35],
      ['free-range-hens-53wk', 'free range, 53 weeks', 28.3, 0.28, 47.3, 0.94],
    ] as const
  ).map(
    ([id, animals, breast, breastOff, meat, meatOff]): YieldStudy => ({
      id,
      species: 'spent hen',
      animals: `laying hens at the end of lay, ${animals}`,
      basis: 'chilled',
      n: 30,
      source: 'spent-laying-hens-abstract',
      evidence: 'abstract',
      confidence: 'read',
      note: 'which value is of which system was inferred from the order in the abstract',
      rows: [
        { part: 'breast', pct: breast, ...plusMinus(breastOff) },
        { part: 'breast meat', pct: meat, of: 'breast', ...plusMinus(meatOff) },
      ],
    }),
  ),
  {
    ...sr28,
    id: 'us-turkey-cuts',
    species: 'turkey',
    animals: 'turkeys of all classes, ready to cook with neck and giblets, bone-in with skin',
    rows: [
      { part: 'breast', pct: 35.8, raw: [{ gPerLb: 146, bone: 0.1 }] },
      { part: 'legs', pct: 27.9, raw: [{ gPerLb: 105, bone: 0.17 }] },
      { part: 'wings', pct: 10.9, raw: [{ gPerLb: 33, bone: 0.33 }] },
    ],
  },
  {
    id: 'turkey-9kg',
    species: 'turkey',
    animals: 'turkeys of 9.25 kg live, eviscerated, control group',
    basis: 'dressed',
    source: 'fies-2020-turkey',
    evidence: 'table',
    confidence: 'read',
    rows: [
      { part: 'breast', pct: 37.37 },
      { part: 'back', pct: 20.96 },
      { part: 'thighs', pct: 16.6 },
      { part: 'drumsticks', pct: 11.51 },
      { part: 'wings', pct: 11.45 },
      { part: 'neck', pct: 2.11 },
    ],
  },
  {
    id: 'turkey-9kg-live',
    species: 'turkey',
    animals: 'turkeys of 9.25 kg live, control group',
    basis: 'live',
    source: 'fies-2020-turkey',
    evidence: 'table',
    confidence: 'read',
    rows: [{ part: 'eviscerated carcass', pct: 76.71 }],
  },
  {
    id: 'helmeted-guinea-fowl',
    species: 'guinea fowl',
    animals: 'grey-breasted helmeted guinea fowl, dressed',
    basis: 'dressed',
    source: 'trop-agric-guinea-fowl',
    evidence: 'abstract',
    confidence: 'read',
    note: 'printed as approximate',
    rows: [
      { part: 'breast', pct: 37 },
      { part: 'thighs', pct: 17 },
      { part: 'wings', pct: 14 },
      { part: 'drumsticks', pct: 13 },
      { part: 'ribs', pct: 10 },
      { part: 'back', pct: 9 },
    ],
  },
  {
    id: 'grey-guinea-fowl-romania',
    species: 'guinea fowl',
    animals: 'grey guinea fowl, carcass with head and feet',
    basis: 'dressed',
    n: 50,
    source: 'rosca-usturoi-guinea-fowl',
    evidence: 'abstract',
    confidence: 'read',
    note: 'each figure is of the better sex, so the rows do not close',
    rows: [
      { part: 'breast', pct: 28.44, note: 'females' },
      { part: 'thighs', pct: 14.09, note: 'females' },
      { part: 'drumsticks', pct: 12.08, note: 'males' },
      { part: 'wings', pct: 12.27, note: 'males' },
      { part: 'back', pct: 27.51, note: 'males' },
      { part: 'head', pct: 5.12, note: 'males' },
      { part: 'feet', pct: 3.23, note: 'males' },
    ],
  },
  ...(
    [
      ['us-guinea-hen', 'guinea fowl', 'guinea hens', { 'meat and skin': 79.1, meat: 60.6, bone: 16.2 }],
      [
        'us-pheasant',
        'pheasant',
        'pheasants',
        { 'meat and skin': 81.8, 'breast meat': 37.3, 'leg meat': 21.8, bone: 13.3 },
      ],
      ['us-quail', 'quail', 'quail', { 'meat and skin': 89.3, 'breast meat': 45.9, bone: 9.9 }],
      ['us-squab', 'pigeon', 'squabs', { 'meat and skin': 65.5, bone: 19.6 }],
    ] as const
  ).map(
    ([id, species, animals, parts]): YieldStudy => ({
      ...sr28,
      id,
      species,
      animals: `${animals}, ready to cook`,
      note: 'the share of bone looks low: treat with care',
      rows: Object.entries(parts).map(([part, pct]) => ({
        part,
        pct,
        ...(part === 'meat and skin' || part === 'bone' ? {} : within('meat and skin')),
      })),
    }),
  ),
];
