/** Published yields of whole fish: 100 over the conversion factor to live weight. */
import type { YieldSpecies, YieldStudy } from './yields-rows.ts';

/** Conversion factors from the product to live weight. */
const factors: readonly (readonly [YieldSpecies, Readonly<Record<string, number>>])[] = [
  ['salmon', { fillet: 2.0, 'gutted, head on': 1.13 }],
  ['cod', { 'fillet, skin on': 2.45, 'fillet, skin off': 3.23, 'gutted, head off': 1.69 }],
  [
    'haddock',
    { 'fillet, skin on': 2.77, 'fillet, skin off': 2.91, 'gutted, head on': 1.14, 'gutted, head off': 1.61 },
  ],
  [
    'mackerel',
    { 'fillet, skin on': 1.95, 'fillet, skin off': 2.6, 'gutted, head on': 1.11, 'gutted, head off': 1.46 },
  ],
  ['herring', { 'fillet, skin on': 1.62, 'fillet, skin off': 2.17, 'gutted, head off': 1.52 }],
  ['flatfish', { 'fillet, skin on': 2.48, 'fillet, skin off': 2.61 }],
  ['sea bass', { 'gutted, head on': 1.12, 'gutted, head off': 1.79 }],
];

export const fishYields: readonly YieldStudy[] = factors.map(([species, products]) => ({
  id: `fao-${species.replace(' ', '-')}`,
  species,
  animals: `${species}, whole`,
  basis: 'live',
  source: 'fao-conversion-factors',
  evidence: 'table',
  confidence: 'secondary',
  note: 'which column a factor belongs to was inferred from the text of the table',
  rows: Object.entries(products).map(([part, factor]) => ({
    part,
    pct: Number((100 / factor).toFixed(1)),
    note: `conversion factor ${factor}`,
    // Each product is another way to cut the same fish.
    within: 'whole fish',
  })),
}));
