/** Prices as they moved, labels looked at, rates and risks of the demo kitchen: all of it invented, and no advice. */
import type { DemoPantry } from '../src/app/demo-shape.ts';
import { maud, store, wren } from './animals/names.ts';

/** `[ingredient, pack in g, pence, days ago that it was written down, first day that it holds, counted back]`. */
const prices = [
  ['Whipping cream, 36 % fat', 5_000, 2_750, 12, 12],
  ['Whipping cream, 36 % fat', 5_000, 2_820, 3, 3],
  ['Chestnuts, steamed and peeled', 400, 690, 9, 9],
  ['Egg white', 1_000, 690, 6, 6],
  ['Shallot', 1_000, 360, 8, 8],
  ['Apple brandy', 665, 1_950, 2, -5],
] as const;

export const pantry: DemoPantry = {
  prices: prices.map(([ingredient, packG, price, daysAgo, fromDaysAgo]) => ({
    ingredient,
    packG,
    price,
    supplier: store,
    by: maud,
    at: { daysAgo, clock: '10:20' },
    fromDaysAgo,
  })),
  labels: [
    {
      ingredient: 'White breadcrumbs',
      product: 'White sandwich loaf, sliced (invented)',
      supplier: store,
      says: 'WHEAT flour, water, yeast, salt, rapeseed oil, SOYA flour',
      marks: [{ allergen: 'gluten', as: 'wheat' }, { allergen: 'soybeans' }],
      mayContain: [{ allergen: 'milk' }],
      by: wren,
      at: { daysAgo: 11, clock: '09:10' },
    },
    {
      ingredient: 'Cider vinegar',
      product: 'Cider vinegar, five litres (invented)',
      supplier: store,
      says: 'Cider vinegar, preservative: potassium METABISULPHITE',
      marks: [{ allergen: 'sulphites' }],
      mayContain: [],
      by: wren,
      at: { daysAgo: 11, clock: '09:14' },
    },
  ],
  rates: [
    {
      by: wren,
      at: { daysAgo: 15, clock: '08:30' },
      fromDaysAgo: 15,
      note: 'Invented.',
      content: {
        labour: [
          { grade: 'cook', perHour: 1_580 },
          { grade: 'head chef', perHour: 2_350 },
        ],
        electricityPerKwh: 27.5,
        gasPerKwh: 7.2,
        machines: [
          { use: 'steamer', fuel: 'electricity', efficiencyPct: 55 },
          { use: 'oven', fuel: 'electricity', efficiencyPct: 30 },
          { use: 'hob', fuel: 'gas', efficiencyPct: 40 },
          { use: 'fryer', fuel: 'electricity', efficiencyPct: 60 },
          { use: 'water bath', fuel: 'electricity', efficiencyPct: 70 },
          { use: 'chiller', fuel: 'electricity', efficiencyPct: 200 },
          { use: 'freezer', fuel: 'electricity', efficiencyPct: 130 },
        ],
        packagingPerPortion: 6,
        overheadPct: 12,
        fixedPerService: 46_000,
        vatPct: 20,
        pricesIncludeVat: true,
        servicePct: 10,
        marginPct: 68,
        marginAfter: 'food',
        priceStep: 50,
      },
    },
  ],
  risks: [
    {
      allergen: 'nuts',
      as: 'hazelnut',
      reason: 'The pastry bench shares the stand mixer with the forcemeats (invented).',
      by: wren,
      at: { daysAgo: 14, clock: '11:00' },
    },
    {
      allergen: 'gluten',
      as: 'wheat',
      reason: 'Flour is weighed in the room where fillings are mixed (invented).',
      by: wren,
      at: { daysAgo: 14, clock: '11:02' },
    },
  ],
};
