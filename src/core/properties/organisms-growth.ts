/**
 * How fast organisms grow, as published: a temperature form with its constants, the food it was measured in, and the lag
 * it is used with. An organism without a published rate here has growth limits only (`organisms-growth-limits.ts`).
 */
import type { Basis } from '../sources.ts';

/** Growth rate over temperature; rates are in ln units, µ [1/s], temperatures in °C. */
export type TemperatureForm =
  /** Cardinal temperatures and the rate at the best of them. */
  | {
      readonly form: 'cardinal';
      readonly min: number;
      readonly opt: number;
      readonly max: number;
      readonly muOpt: number;
    }
  /** µ = A (T − min)² (1 − e^(B (T − max))): the bracket is not squared. */
  | {
      readonly form: 'single bracket';
      readonly min: number;
      readonly max: number;
      /** [1/(s °C²)] */
      readonly A: number;
      /** [1/°C] */
      readonly B: number;
    }
  /** µ = rate ((T − min)/(at − min))² up to `opt`; above it, down the cardinal curve to `max`. */
  | {
      readonly form: 'square root';
      readonly min: number;
      readonly at: number;
      /** µ at `at` [1/s]. */
      readonly rate: number;
      readonly cardinal: { readonly min: number; readonly opt: number; readonly max: number };
    };

export interface Cardinal {
  readonly min: number;
  readonly opt: number;
  readonly max: number;
}

/** pH and water activity as factors of the rate, both 1 in the food that the rate was published for. */
export interface FoodEffect {
  /** Absent: no effect of pH has been published with the rate. */
  readonly pH?: Cardinal;
  /** `max` is 1. */
  readonly waterActivity: Cardinal;
  readonly food: { readonly pH: number; readonly waterActivity: number };
  readonly basis: readonly Basis[];
}

export interface GrowthSet {
  readonly id: string;
  readonly title: string;
  readonly temperature: TemperatureForm;
  /** Absent: no effect of pH or water activity on the rate has been published with it; only the limits of growth count. */
  readonly effect?: FoodEffect;
  /** Work to be done before growth begins, ln units: h0 = µ · lag. */
  readonly h0: number;
  readonly h0Basis: Basis;
  /** The most there can be [log10 cfu/g]. */
  readonly maxLog10: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly string[];
}

export interface GrowthOrganism {
  readonly id: string;
  readonly name: string;
  /** The first is used where none is named; none: limits only. */
  readonly sets: readonly GrowthSet[];
}

const perHour = (rate: number) => rate / 3600;
/** log10 a day as µ. */
const log10PerDay = (rate: number) => (rate * Math.LN10) / 86_400;

const overPredicts =
  'Beside four published cooling trials the roasted chicken set, with h0 5.8, gave 1 to 4.5 log more growth than was found. One log or more says: look into it. Less says nothing of the batch in hand.';
const sporesOnly =
  'Written for growth from spores that have lived through a cook, in a piece that is cooling.';

const listeriaEffect: FoodEffect = {
  pH: { min: 4.71, opt: 7.1, max: 9.61 },
  waterActivity: { min: 0.913, opt: 0.997, max: 1 },
  food: { pH: 6.2, waterActivity: 0.97 },
  basis: [
    {
      what: 'cardinal pH 4.71, 7.10, 9.61 and water activity 0.913, 0.997 as factors of the rate',
      source: 'augustin-2005',
      confidence: 'memory',
    },
    {
      what: 'the published rate is taken to hold at pH 6.2 and water activity 0.97: milder foods grow faster than published, harsher ones slower',
      source: 'own-assumption',
      confidence: 'assumption',
    },
  ],
};

function listeria(id: string, title: string, at5: number): GrowthSet {
  return {
    id,
    title,
    temperature: {
      form: 'square root',
      min: -1.18,
      at: 5,
      rate: log10PerDay(at5),
      cardinal: { min: -1.72, opt: 37, max: 45.5 },
    },
    effect: listeriaEffect,
    h0: 0,
    h0Basis: {
      what: 'h0 0: no lag, as in the risk assessment',
      source: 'fda-fsis-listeria-2003',
      confidence: 'memory',
    },
    maxLog10: 8,
    basis: [
      {
        what: `mean rate at 5 °C ${at5} log10 a day, square root of the rate straight in temperature from −1.18 °C`,
        source: 'fda-fsis-listeria-2003',
        confidence: 'memory',
      },
      {
        what: 'above 37 °C down the curve of the cardinal temperatures −1.72, 37 and 45.5 °C',
        source: 'augustin-2005',
        confidence: 'memory',
      },
      {
        what: 'at most 8 log10 cfu/g',
        source: 'own-assumption',
        confidence: 'assumption',
      },
    ],
    cautions: [
      'A mean of many products: single ones grew several times faster or slower at 5 °C (0.035 to 0.556 log10 a day in smoked seafood).',
    ],
  };
}

const perfringensFood = (what: string): Basis => ({
  what,
  source: 'roasted-chicken-braised-beef-cooling',
  confidence: 'read',
});
const perfringensMost: Basis = {
  what: 'at most 8 log10 cfu/g',
  source: 'own-assumption',
  confidence: 'assumption',
};

export const growthOrganisms: readonly GrowthOrganism[] = [
  {
    id: 'clostridium-perfringens',
    name: 'Clostridium perfringens',
    sets: [
      {
        id: 'roasted-chicken',
        title: 'roasted chicken, cooling',
        temperature: { form: 'cardinal', min: 8.8, opt: 46.4, max: 51.5, muOpt: perHour(6.06) },
        h0: 5.8,
        h0Basis: {
          what: 'h0 5.8: with it this set gives just 1 log on the first of the American plant cooling options (54.4 to 26.7 °C in 1.5 h, to 4.4 °C in 5 h more), which is held to allow no more; 4 is stricter, 0 has no lag',
          source: 'own-computation',
          confidence: 'computed',
        },
        maxLog10: 8,
        basis: [
          perfringensFood('cardinal temperatures 8.8, 46.4 and 51.5 °C, best rate 6.06 ln cfu/g an hour'),
          perfringensMost,
        ],
        cautions: [overPredicts, sporesOnly],
      },
      {
        id: 'braised-beef',
        title: 'braised beef, cooling',
        temperature: { form: 'cardinal', min: 10.3, opt: 43.5, max: 53.4, muOpt: perHour(5.64) },
        h0: 5.8,
        h0Basis: {
          what: 'h0 5.8: taken over from the roasted chicken set, where it was calibrated; 4 is stricter, 0 has no lag',
          source: 'own-computation',
          confidence: 'computed',
        },
        maxLog10: 8,
        basis: [
          perfringensFood('cardinal temperatures 10.3, 43.5 and 53.4 °C, best rate 5.64 ln cfu/g an hour'),
          perfringensMost,
        ],
        cautions: [overPredicts, sporesOnly],
      },
      {
        id: 'cured-pork',
        title: 'cooked pork cured with nitrite, cooling',
        temperature: { form: 'single bracket', min: 13.5, max: 50.6, A: perHour(0.00243), B: 0.41 },
        h0: 4,
        h0Basis: {
          what: 'h0 4: with it this set gives 0.46 log from 51 to 11 °C in 8 h, where a published model for cured beef gives 0.50 (upper 0.93); 0 has no lag',
          source: 'own-computation',
          confidence: 'computed',
        },
        maxLog10: 8,
        basis: [
          {
            what: 'lowest and highest temperature of growth 13.5 and 50.6 °C',
            source: 'juneja-huang-thippareddi-2006',
            confidence: 'read',
          },
          {
            what: 'A 0.00243 and B 0.41, the rate taken to be in ln units an hour',
            source: 'juneja-huang-thippareddi-2006',
            confidence: 'secondary',
          },
          perfringensMost,
        ],
        cautions: [
          'For meat cured with nitrite only: where the nitrite is short or missing, growth is faster. Use roasted-chicken or braised-beef there.',
          'The unit of the published rate is not certain; it is read as ln units an hour.',
          sporesOnly,
        ],
      },
    ],
  },
  {
    id: 'listeria-monocytogenes',
    name: 'Listeria monocytogenes',
    sets: [
      listeria('deli-meat', 'cooked sliced meats', 0.282),
      listeria('pate', 'pâté and meat spreads', 0.252),
      listeria('smoked-seafood', 'smoked seafood', 0.15),
    ],
  },
  {
    id: 'salmonella',
    name: 'Salmonella',
    sets: [
      {
        id: 'chicken',
        title: 'raw chicken, measured from 10 to 45 °C',
        temperature: { form: 'single bracket', min: 3.35, max: 48.01, A: perHour(0.0019), B: 0.29 },
        h0: 0,
        h0Basis: {
          what: 'h0 0: no lag, for want of a published one',
          source: 'own-assumption',
          confidence: 'assumption',
        },
        maxLog10: 9,
        basis: [
          {
            what: 'µ = 0.0019 (T − 3.35)² (1 − e^(0.29 (T − 48.01))), the rate taken to be in ln units an hour',
            source: 'juneja-salmonella-chicken-2007',
            confidence: 'secondary',
          },
          { what: 'at most 9 log10 cfu/g', source: 'own-assumption', confidence: 'assumption' },
        ],
        cautions: [
          'The constants were read in a copy, where the unit is printed as log10 an hour; read so, numbers would double in 9 minutes at 37 °C, so they are taken as ln units (20 minutes).',
          'Below 10 and above 45 °C the published curve is drawn on beyond what was measured.',
        ],
      },
    ],
  },
  { id: 'bacillus-cereus', name: 'Bacillus cereus', sets: [] },
  { id: 'escherichia-coli', name: 'pathogenic Escherichia coli', sets: [] },
  {
    id: 'clostridium-botulinum-non-proteolytic',
    name: 'Clostridium botulinum, non-proteolytic (grows in the cold, without air)',
    sets: [],
  },
  {
    id: 'clostridium-botulinum-proteolytic',
    name: 'Clostridium botulinum, proteolytic (without air)',
    sets: [],
  },
  { id: 'yersinia-enterocolitica', name: 'Yersinia enterocolitica', sets: [] },
  { id: 'campylobacter', name: 'Campylobacter jejuni', sets: [] },
  { id: 'shigella', name: 'Shigella', sets: [] },
  {
    id: 'staphylococcus-aureus',
    name: 'Staphylococcus aureus',
    sets: [
      {
        id: 'strain-2064',
        title: 'one strain in laboratory media, 8 to 50 °C, water activity 0.83 to 0.999',
        temperature: { form: 'cardinal', min: 7.7, opt: 40.6, max: 46.7, muOpt: perHour(1.97) },
        effect: {
          waterActivity: { min: 0.808, opt: 0.994, max: 1 },
          food: { pH: 7, waterActivity: 0.994 },
          basis: [
            {
              what: 'cardinal water activity 0.808, 0.994 as a factor of the rate',
              source: 'medvedova-2019',
              confidence: 'read',
            },
          ],
        },
        h0: 0,
        h0Basis: {
          what: 'h0 0: no lag, for want of a published one',
          source: 'own-assumption',
          confidence: 'assumption',
        },
        maxLog10: 9,
        basis: [
          {
            what: 'cardinal temperatures 7.7, 40.6 and 46.7 °C, best rate 1.97 an hour, taken to be in ln units',
            source: 'medvedova-2019',
            confidence: 'read',
          },
          { what: 'at most 9 log10 cfu/g', source: 'own-assumption', confidence: 'assumption' },
        ],
        cautions: [
          'Its toxin is not destroyed by cooking, and is not counted here: once the number comes near 5 log10 cfu/g toxin must be expected, and no reheating removes it.',
          'Fitted to one strain; the fit misses its own data by 17.5 % on average.',
        ],
      },
    ],
  },
];

/** The organism of an id; undefined where there is none [-]. */
export function findGrowthOrganism(id: string): GrowthOrganism | undefined {
  return growthOrganisms.find((organism) => organism.id === id);
}
