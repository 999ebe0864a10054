/** How much nitrite may go into meat, by place, product and way of curing, as the law of the place has been published. */
import type { Confidence } from '../sources.ts';

export const curingMethods = [
  'dry',
  'comminuted',
  'pumped',
  'immersion pick-up',
  'immersion to equilibrium',
] as const;
export type CuringMethod = (typeof curingMethods)[number];

export const nitritePlaces = ['GB', 'EU', 'US'] as const;
/** GB without Northern Ireland, for which no figure was found. */
export type NitritePlace = (typeof nitritePlaces)[number];

export const nitriteProducts = [
  'meat product',
  'sterilised meat product',
  'bacon',
  'raw meat preparation',
  'traditional cured product',
] as const;
export type NitriteProduct = (typeof nitriteProducts)[number];

export interface NitriteLimit {
  readonly place: NitritePlace;
  readonly product: NitriteProduct;
  readonly methods: readonly CuringMethod[];
  /** Most that may go in [mg/kg]; 0 where none may. */
  readonly most: number;
  /** What the milligrams are of: sodium nitrite, or the nitrite ion. */
  readonly as: 'NaNO2' | 'NO2';
  readonly type: 'statutory';
  readonly source: string;
  readonly confidence: Confidence;
  readonly note: string;
}

const eu: Pick<NitriteLimit, 'place' | 'methods' | 'as' | 'type' | 'source' | 'confidence'> = {
  place: 'EU',
  methods: curingMethods,
  as: 'NO2',
  type: 'statutory',
  source: 'eu-2023-2108',
  confidence: 'secondary',
};
const gb: typeof eu = { ...eu, place: 'GB', as: 'NaNO2', source: 'eu-1333-2008', confidence: 'read' };
const us: Omit<typeof eu, 'methods'> = {
  place: 'US',
  as: 'NaNO2',
  type: 'statutory',
  source: 'cfr-9-424-21',
  confidence: 'secondary',
};
const closedList =
  'raw preparations may hold nitrite only where they stand by name in a closed list; that brined or stuffed raw poultry is not on it is this program’s reading';
const immersed = ['pumped', 'immersion pick-up', 'immersion to equilibrium'] as const;
const residual = 'the residual limit of the finished product holds beside it and is not computed here';

export const nitriteLimits: readonly NitriteLimit[] = [
  {
    ...eu,
    product: 'meat product',
    most: 80,
    note: `from 9 October 2025; ${residual}: 25 to 50 mg/kg by category`,
  },
  {
    ...eu,
    product: 'sterilised meat product',
    most: 55,
    note: `from 9 October 2025, F0 over 3; ${residual}`,
  },
  {
    ...eu,
    product: 'raw meat preparation',
    most: 0,
    note: closedList,
    confidence: 'read',
    source: 'efsa-nitrites-2017',
  },
  { ...gb, product: 'meat product', most: 150, note: 'retained law of Great Britain; not Northern Ireland' },
  {
    ...gb,
    product: 'sterilised meat product',
    most: 100,
    note: 'retained law of Great Britain, F0 over 3; not Northern Ireland',
  },
  { ...gb, product: 'raw meat preparation', most: 0, note: closedList, source: 'efsa-nitrites-2017' },
  {
    ...us,
    product: 'meat product',
    methods: ['comminuted'],
    most: 156,
    note: 'a quarter of an ounce to 100 lb is 156.25',
  },
  {
    ...us,
    product: 'meat product',
    methods: immersed,
    most: 200,
    note: `at most 200 in the finished product`,
  },
  {
    ...us,
    product: 'meat product',
    methods: ['dry'],
    most: 625,
    note: 'at most 200 in the finished product',
  },
  {
    ...us,
    product: 'bacon',
    methods: immersed,
    most: 120,
    note: 'pumped with 550 mg/kg of erythorbate or ascorbate',
  },
  { ...us, product: 'bacon', methods: ['dry'], most: 200, note: 'dry-cured bacon' },
];

export const nitrateProducts = [
  'meat product, not heated',
  'meat product, heated',
  'raw meat preparation',
] as const;
export type NitrateProduct = (typeof nitrateProducts)[number];

export interface NitrateLimit {
  readonly place: NitritePlace;
  readonly product: NitrateProduct;
  /** Most that may go in, as sodium nitrate [mg/kg]; 0 where none may. */
  readonly most: number;
  readonly type: 'statutory';
  readonly source: string;
  readonly confidence: Confidence;
  readonly note: string;
}

/** The few limits of nitrate that were found; what is not here is not known, and not known is refused. */
export const nitrateLimits: readonly NitrateLimit[] = [
  {
    place: 'GB',
    product: 'meat product, not heated',
    most: 150,
    type: 'statutory',
    source: 'eu-1333-2008',
    confidence: 'read',
    note: 'as sodium nitrate; retained law of Great Britain; not Northern Ireland. Some cures by name have residual limits of their own',
  },
  ...(['GB', 'EU'] as const).map(
    (place): NitrateLimit => ({
      place,
      product: 'raw meat preparation',
      most: 0,
      type: 'statutory',
      source: 'efsa-nitrites-2017',
      confidence: 'assumption',
      note: 'read from the closed list for nitrite: this program’s reading that nitrate is not let in either',
    }),
  ),
];
