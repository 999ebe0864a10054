/** Published yields of ducks and geese. */
import { plusMinus, sd, type YieldStudy } from './yields-rows.ts';

const sr28 = {
  basis: 'dressed',
  source: 'usda-sr28-2015',
  evidence: 'derived',
  confidence: 'computed',
} as const;

const duckLines = (
  [
    ['pekin-fat-line', 'Pekin, a fat line', [11.96, 0.24], [9.51, 0.19], [3.17, 0.1], [40.06, 1.23]],
    ['pekin-lean-line', 'Pekin, another line', [13.62, 0.25], [9.52, 0.18], [2.93, 0.13], [36.22, 1.0]],
  ] as const
).map(
  ([id, animals, breast, leg, fat, skin]): YieldStudy => ({
    id,
    species: 'duck',
    animals: `${animals}, eviscerated`,
    basis: 'dressed',
    n: 8,
    source: 'genes-2024-pekin',
    evidence: 'table',
    confidence: 'read',
    rows: [
      { part: 'breast meat', pct: breast[0], ...plusMinus(breast[1]) },
      { part: 'leg meat', pct: leg[0], ...plusMinus(leg[1]) },
      { part: 'abdominal fat', pct: fat[0], ...plusMinus(fat[1]), within: 'skin and fat' },
      { part: 'skin and fat', pct: skin[0], ...plusMinus(skin[1]) },
    ],
  }),
);

const hybridGeese = (
  [
    ['xingguo-male', 'Xingguo grey ganders', [12.17, 0.56], [13.35, 1.52], [2.77, 0.65]],
    ['xingguo-female', 'Xingguo grey geese, female', [12.72, 1.25], [13.41, 0.88], [3.55, 1.21]],
    ['hybrid-goose-male', 'three-way hybrid ganders', [12.73, 1.47], [14.15, 1.66], [2.61, 0.87]],
    ['hybrid-goose-female', 'three-way hybrid geese, female', [12.28, 1.21], [13.23, 0.68], [2.51, 1.22]],
  ] as const
).map(
  ([id, animals, breast, leg, fat]): YieldStudy => ({
    id,
    species: 'goose',
    animals: `${animals}, eviscerated`,
    basis: 'dressed',
    n: 15,
    source: 'poultry-science-2023-xingguo',
    evidence: 'table',
    confidence: 'read',
    note: 'that the whole is the eviscerated weight is assumed, as is usual there',
    rows: [
      { part: 'breast meat', pct: breast[0], ...sd(breast[1]) },
      { part: 'leg meat', pct: leg[0], ...sd(leg[1]) },
      { part: 'abdominal fat', pct: fat[0], ...sd(fat[1]) },
    ],
  }),
);

const karsGeese = (
  [
    ['kars-ganders', 'ganders', 4841, [3137.1, 173.3, 62.5, 37.9, 173.9, 132.5]],
    ['kars-geese', 'geese, female', 4622.7, [2914.1, 165.5, 63.9, 32.9, 203.1, 114.1]],
  ] as const
).map(
  ([id, animals, live, grams]): YieldStudy => ({
    id,
    species: 'goose',
    animals: `native Kars ${animals}, ${(live / 1000).toFixed(2)} kg live`,
    basis: 'live',
    source: 'kars-native-geese',
    evidence: 'derived',
    confidence: 'computed',
    note: 'from printed mean weights',
    rows: ['carcass', 'gizzard', 'liver', 'heart', 'abdominal fat', 'feet'].map((part, i) => ({
      part,
      pct: Number(((100 * grams[i]!) / live).toFixed(2)),
      note: `${grams[i]} g of ${live} g`,
    })),
  }),
);

export const waterfowlYields: readonly YieldStudy[] = [
  {
    ...sr28,
    id: 'us-duck',
    species: 'duck',
    animals: 'domestic ducks, ready to cook with neck and giblets, by tissue of the carcass',
    rows: [
      { part: 'meat', pct: 30.2, raw: [{ gPerLb: 137, bone: 0 }] },
      {
        part: 'skin and fat',
        pct: 33.1,
        raw: [
          { gPerLb: 287, bone: 0 },
          { gPerLb: 137, bone: 0, sign: -1 },
        ],
      },
      {
        part: 'bone',
        pct: 24.6,
        raw: [
          { gPerLb: 287, bone: 0.28 },
          { gPerLb: 287, bone: 0, sign: -1 },
        ],
      },
      { part: 'neck and giblets', pct: 12.1, note: 'by difference: uncertain' },
      { part: 'liver', pct: 2.2, within: 'neck and giblets' },
    ],
  },
  ...duckLines,
  {
    id: 'cherry-valley-42d',
    species: 'duck',
    animals: 'Pekin of 42 days, eviscerated',
    basis: 'dressed',
    source: 'j-poultry-sci-2018-ducks',
    evidence: 'table',
    confidence: 'read',
    note: 'what is 100 % for the cuts is not stated: the eviscerated weight is assumed',
    rows: [
      { part: 'breast meat', pct: 13.0 },
      { part: 'leg meat', pct: 11.1 },
      { part: 'abdominal fat', pct: 1.81 },
    ],
  },
  {
    id: 'small-meat-duck',
    species: 'duck',
    animals: 'small meat ducks, eviscerated',
    basis: 'dressed',
    source: 'small-meat-ducks-2023',
    evidence: 'table',
    confidence: 'read',
    note: 'that the whole is the eviscerated weight is assumed',
    rows: [
      { part: 'breast meat', pct: 8.36 },
      { part: 'leg meat', pct: 12.52 },
      { part: 'abdominal fat', pct: 1.81, within: 'skin and fat' },
      { part: 'gizzard', pct: 3.23 },
      { part: 'heart', pct: 0.485 },
      { part: 'liver', pct: 1.835 },
      { part: 'skin and fat', pct: 26.46 },
    ],
  },
  {
    id: 'muscovy-female-12wk',
    species: 'duck',
    animals: 'local Muscovy ducks of 12 weeks, female',
    basis: 'live',
    source: 'muscovy-2008',
    evidence: 'abstract',
    confidence: 'read',
    note: 'that the whole is the live weight is assumed',
    rows: [
      { part: 'ready-to-cook carcass', pct: 66.3 },
      { part: 'breast', pct: 13.6, within: 'ready-to-cook carcass' },
      { part: 'liver', pct: 2.8, within: 'ready-to-cook carcass' },
      { part: 'heart', pct: 1.5, within: 'ready-to-cook carcass' },
      { part: 'gizzard', pct: 3.8, within: 'ready-to-cook carcass' },
    ],
  },
  {
    ...sr28,
    id: 'us-goose',
    species: 'goose',
    animals: 'domestic geese, ready to cook with neck and giblets, by tissue of the carcass',
    rows: [
      { part: 'meat', pct: 40.8, raw: [{ gPerLb: 185, bone: 0 }] },
      {
        part: 'skin and fat',
        pct: 29.8,
        raw: [
          { gPerLb: 320, bone: 0 },
          { gPerLb: 185, bone: 0, sign: -1 },
        ],
      },
      {
        part: 'bone',
        pct: 16.5,
        raw: [
          { gPerLb: 320, bone: 0.19 },
          { gPerLb: 320, bone: 0, sign: -1 },
        ],
      },
      { part: 'neck and giblets', pct: 12.9, note: 'by difference: uncertain' },
      { part: 'liver', pct: 2.4, within: 'neck and giblets' },
    ],
  },
  {
    id: 'goose-india-dressed',
    species: 'goose',
    animals: 'adult local geese of 2.93 kg, dressed without giblets',
    basis: 'dressed',
    source: 'geese-india-2013',
    evidence: 'abstract',
    confidence: 'read',
    note: 'the neck is cut high: nearly twice the share of other studies',
    rows: [
      { part: 'breast', pct: 29.567, ...plusMinus(0.355) },
      { part: 'drumsticks', pct: 11.201, ...plusMinus(0.275) },
      { part: 'thighs', pct: 9.449, ...plusMinus(0.211) },
      { part: 'back', pct: 20.82, ...plusMinus(0.32) },
      { part: 'neck', pct: 10.587, ...plusMinus(0.201) },
      { part: 'wings', pct: 16.882, ...plusMinus(0.207) },
    ],
  },
  {
    id: 'goose-india-live',
    species: 'goose',
    animals: 'adult local geese of 2.93 kg',
    basis: 'live',
    source: 'geese-india-2013',
    evidence: 'abstract',
    confidence: 'read',
    rows: [
      { part: 'dressed carcass', pct: 67.711, ...plusMinus(0.48) },
      { part: 'blood', pct: 4.608, ...plusMinus(0.104) },
      { part: 'feathers', pct: 7.348, ...plusMinus(0.15) },
      { part: 'head', pct: 4.285, ...plusMinus(0.088) },
      { part: 'feet', pct: 2.791, ...plusMinus(0.058) },
      { part: 'neck', pct: 7.186, ...plusMinus(0.17), within: 'dressed carcass' },
    ],
  },
  {
    id: 'goose-assam-live',
    species: 'goose',
    animals: 'indigenous geese of 4.18 kg, 18 to 20 months',
    basis: 'live',
    n: 12,
    source: 'geese-assam-2020',
    evidence: 'abstract',
    confidence: 'read',
    rows: [
      { part: 'neck', pct: 4.23, note: '178 g' },
      { part: 'wings', pct: 7.65 },
      { part: 'back', pct: 15.84 },
      { part: 'breast', pct: 16.63 },
      { part: 'legs', pct: 8.63 },
      { part: 'abdominal fat', pct: 5.13 },
      { part: 'giblets', pct: 5.49, note: '229 g' },
      { part: 'blood', pct: 3.74, note: '156.5 g' },
      { part: 'head', pct: 3.53, note: '147.5 g of 4182.5 g' },
      { part: 'feet', pct: 2.68, note: '112 g of 4182.5 g' },
    ],
  },
  ...karsGeese,
  ...hybridGeese,
  {
    id: 'goose-turkey-tissues',
    species: 'goose',
    animals: 'domestic geese, carcass by tissue',
    basis: 'dressed',
    n: 33,
    source: 'guner-geese',
    evidence: 'abstract',
    confidence: 'read',
    note: 'middles of printed ranges: meat 54 to 58, bone 18 to 22, skin 24 to 28 (printed 24.28)',
    rows: [
      { part: 'meat', pct: 56 },
      { part: 'bone', pct: 20 },
      { part: 'skin', pct: 26 },
      { part: 'neck skin', pct: 39.24, of: 'neck' },
      { part: 'thigh meat', pct: 61.91, of: 'thighs' },
    ],
  },
];
