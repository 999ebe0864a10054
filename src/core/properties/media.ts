/**
 * Surface coefficients of the media a kitchen cooks and chills in, as published: a default, the lowest and highest that
 * have been measured or are customary, and the temperatures at which the name makes sense.
 */
import { OutOfRange } from '../errors.ts';
import type { Confidence } from '../sources.ts';

export interface Medium {
  /** Surface coefficient [W/(m² K)], radiation included where there is any. */
  readonly h: number;
  readonly low: number;
  readonly high: number;
  /** Temperatures at which the medium is what its name says [°C]. */
  readonly coldest: number;
  readonly hottest: number;
  /** What is meant where no temperature is given [°C]; none where it must be given. */
  readonly usual?: number;
  readonly source: string;
  readonly confidence: Confidence;
  readonly note?: string;
  /** Air, steam and air: its coefficient without radiation and without vapour [W/(m² K)], for where those are computed by themselves. */
  readonly dry?: Dry;
  /** It boils: its temperature follows the pressure. */
  readonly boils?: true;
  /** What must be said of it beside its temperature. */
  readonly needs?: 'radiation' | 'ladle';
}

export interface Dry {
  readonly h: number;
  readonly low: number;
  readonly high: number;
  readonly source: string;
  readonly what: string;
}

/** Blown air across a cylinder of 40 mm, and still air round one; worked out with the correlations of `humid-air-convection.ts`. */
const blown = (h: number, low: number, high: number, what: string): Dry => ({
  h,
  low,
  high,
  source: 'churchill-bernstein-1977',
  what,
});
const still = (h: number, low: number, high: number, what: string): Dry => ({
  h,
  low,
  high,
  source: 'churchill-chu-1975',
  what,
});

/** Film of water that steam leaves on what it condenses on [W/(m² K)]: the customary figure for steam on food. */
export const condensateFilm = {
  h: 5000,
  low: 2000,
  high: 12_000,
  source: 'pannu-castaigne-arul',
  confidence: 'secondary' as Confidence,
} as const;

/** Share of black radiation that food and oven walls exchange [-]; handbooks give 0.9 and more for wet and fatty surfaces. */
export const foodEmissivity = {
  value: 0.9,
  source: 'from-memory',
  confidence: 'memory' as Confidence,
} as const;

/** Coefficient under ladled fat [W/(m² K)]: that of fat that does not bubble, up to that of frying. */
export const ladledFat = {
  h: 300,
  low: 150,
  high: 1000,
  source: 'own-assumption',
  confidence: 'assumption' as Confidence,
} as const;

export const media = {
  steam: {
    h: 1000,
    low: 400,
    high: 5000,
    coldest: 90,
    hottest: 125,
    usual: 100,
    source: 'pannu-castaigne-arul',
    confidence: 'secondary',
    note: 'saturated steam with little air; published from 400 to 12 000, customary 5000',
    boils: true,
  },
  'low-temperature steam': {
    h: 400,
    low: 250,
    high: 900,
    coldest: 55,
    hottest: 98,
    source: 'own-computation',
    confidence: 'computed',
    note: 'steam and air saturated at that temperature: condensation through a film of air, 15 W/(m² K) dry',
    dry: blown(15, 8, 25, 'air at 0.25 to 2 m/s across a cylinder of 40 mm'),
  },
  'water bath': {
    h: 300,
    low: 95,
    high: 1000,
    coldest: 40,
    hottest: 99,
    source: 'baldwin-2012',
    confidence: 'memory',
    note: 'stirred; 95 to 155 were used for food in pouches',
  },
  'simmering water': {
    h: 1000,
    low: 300,
    high: 1400,
    coldest: 80,
    hottest: 99,
    usual: 95,
    source: 'cengel-heat-transfer',
    confidence: 'secondary',
  },
  'boiling water': {
    h: 1400,
    low: 1000,
    high: 2000,
    coldest: 85,
    hottest: 110,
    usual: 100,
    source: 'cengel-heat-transfer',
    confidence: 'secondary',
    boils: true,
  },
  'ice water': {
    h: 200,
    low: 100,
    high: 500,
    coldest: -1,
    hottest: 5,
    usual: 1,
    source: 'from-memory',
    confidence: 'memory',
    note: 'unstirred 100 to 200, stirred 300 to 500',
  },
  'cold water': {
    h: 200,
    low: 50,
    high: 500,
    coldest: 0,
    hottest: 30,
    source: 'singh-heldman',
    confidence: 'secondary',
    note: 'a slow stream 50',
  },
  'still fridge': {
    h: 9,
    low: 5,
    high: 15,
    coldest: -2,
    hottest: 12,
    usual: 3,
    source: 'ryland-2006',
    confidence: 'secondary',
    note: 'free convection and radiation; hams measured 5 to 9',
    dry: still(5, 3, 8, 'air that rises by itself round a cylinder of 40 mm'),
  },
  freezer: {
    h: 8,
    low: 4,
    high: 15,
    coldest: -45,
    hottest: 0,
    usual: -18,
    source: 'incropera-dewitt',
    confidence: 'computed',
    note: 'still air: free convection on a cylinder of 40 mm and radiation at −15 °C; where a fan blows, a blast chiller',
    dry: still(5, 3, 8, 'air that rises by itself round a cylinder of 40 mm'),
  },
  'blast chiller': {
    h: 28,
    low: 15,
    high: 50,
    coldest: -40,
    hottest: 5,
    usual: 0,
    source: 'incropera-dewitt',
    confidence: 'computed',
    note: 'air at 1 to 5 m/s across a cylinder of 40 mm, and some evaporation',
    dry: blown(24, 15, 40, 'air at 1 to 5 m/s across a cylinder of 40 mm'),
  },
  'still air': {
    h: 10,
    low: 5,
    high: 15,
    coldest: -20,
    hottest: 60,
    usual: 20,
    source: 'incropera-dewitt',
    confidence: 'computed',
    note: 'free convection on a cylinder of 40 mm, and radiation at emissivity 0.9',
    dry: still(5, 3, 8, 'air that rises by itself round a cylinder of 40 mm'),
  },
  'still oven': {
    h: 19,
    low: 12,
    high: 25,
    coldest: 60,
    hottest: 280,
    source: 'chang-1998',
    confidence: 'secondary',
    note: 'a drying surface stays cooler than this predicts',
    dry: still(8, 5, 12, 'air that rises by itself round a cylinder of 40 mm'),
  },
  'fan oven': {
    h: 30,
    low: 15,
    high: 50,
    coldest: 50,
    hottest: 280,
    source: 'baik-1999',
    confidence: 'secondary',
    note: 'a drying surface stays cooler than this predicts',
    dry: blown(20, 12, 35, 'air at 0.5 to 4 m/s across a cylinder of 40 mm'),
  },
  'frying oil': {
    h: 400,
    low: 250,
    high: 1100,
    coldest: 120,
    hottest: 200,
    usual: 180,
    source: 'hubbard-farkas-1999',
    confidence: 'secondary',
    note: 'rises to about 1000 while the surface bubbles; the crust is not modelled',
  },
  'confit fat': {
    h: 200,
    low: 180,
    high: 250,
    coldest: 60,
    hottest: 115,
    usual: 90,
    source: 'sosa-morales-2006',
    confidence: 'secondary',
    note: 'pork in oil at 90 to 110 °C measured 188 to 226',
  },
  'radiant grill': {
    h: 7,
    low: 4,
    high: 12,
    coldest: 0,
    hottest: 250,
    usual: 30,
    source: 'churchill-chu-1975',
    confidence: 'computed',
    note: 'the air round the piece; what the grill sends must be given, as absorbed heat or as the temperature of its source',
    dry: still(7, 4, 12, 'air that rises by itself round a cylinder of 40 mm'),
    needs: 'radiation',
  },
  'ladled fat': {
    h: 7,
    low: 4,
    high: 12,
    coldest: 0,
    hottest: 250,
    usual: 30,
    source: 'churchill-chu-1975',
    confidence: 'computed',
    note: 'the air between two ladles; the fat is averaged over time, and no measurement of it was found',
    dry: still(7, 4, 12, 'air that rises by itself round a cylinder of 40 mm'),
    needs: 'ladle',
  },
} as const satisfies Record<string, Medium>;

export type MediumName = keyof typeof media;

/**
 * A medium of the published table by its name; its coefficient is in [W/(m² K)].
 * Throws `OutOfRange` for an unknown name, naming those that are known.
 * @param name as in `media`
 * @param path what to call it in an error
 * Assumes the coefficient uniform over the surface and constant in time.
 * @example mediumNamed('steam').h // 1000
 * Source: pannu-castaigne-arul
 */
export function mediumNamed(name: string, path = 'medium'): Medium {
  if (!Object.hasOwn(media, name))
    throw new OutOfRange(path, JSON.stringify(name), `one of ${Object.keys(media).join(', ')}`);
  return media[name as MediumName];
}

/**
 * Refuses a temperature at which a named medium is not what its name says; gives the temperature back [°C].
 * @param name as in `media`
 * @param C temperature of the medium [°C]
 * @param path what to call it in an error
 * @example temperatureOf('steam', 100) // 100
 * Source: common-practice
 */
export function temperatureOf(name: string, C: number, path = 'medium'): number {
  const { coldest, hottest } = mediumNamed(name, path);
  if (!(C >= coldest && C <= hottest))
    throw new OutOfRange(path, `${name} at ${C} °C`, `${name} from ${coldest} to ${hottest} °C`);
  return C;
}

/** Conductivities of what is wrapped round food [W/(m K)], from memory of handbooks. */
export const wraps = {
  polyethylene: { k: 0.36, low: 0.33, high: 0.4, source: 'from-memory', confidence: 'memory' },
  'polyvinyl chloride': { k: 0.17, low: 0.16, high: 0.19, source: 'from-memory', confidence: 'memory' },
  'polyvinylidene chloride': { k: 0.13, low: 0.13, high: 0.13, source: 'from-memory', confidence: 'memory' },
  'stainless steel': { k: 15, low: 14, high: 17, source: 'from-memory', confidence: 'memory' },
  'glazed earthenware': { k: 1.0, low: 0.8, high: 1.3, source: 'from-memory', confidence: 'memory' },
  'trapped air': { k: 0.026, low: 0.024, high: 0.031, source: 'from-memory', confidence: 'memory' },
} as const satisfies Record<
  string,
  { k: number; low: number; high: number; source: string; confidence: Confidence }
>;

type WrapName = keyof typeof wraps;

/**
 * What is wrapped round food, by its name; its conductivity is in [W/(m K)].
 * Throws `OutOfRange` for an unknown name, naming those that are known.
 * @param name as in `wraps`
 * @param path what to call it in an error
 * @example wrapNamed('polyethylene').k // → 0.36
 * Source: from-memory
 */
export function wrapNamed(name: string, path = 'wrap'): (typeof wraps)[WrapName] {
  if (!Object.hasOwn(wraps, name))
    throw new OutOfRange(path, JSON.stringify(name), `one of ${Object.keys(wraps).join(', ')}`);
  return wraps[name as WrapName];
}

/**
 * Thermal resistance of layers of film, a mould wall or trapped air [m² K/W].
 *
 *     R = n·e/k
 *
 * @param thickness of one layer [m], > 0
 * @param k conductivity [W/(m K)], > 0
 * @param layers how many, ≥ 1
 * Assumes flat layers in contact; a tenth of a millimetre of trapped air outweighs ten layers of film.
 * Checked by hand.
 * @example filmResistance(10e-6, 0.3, 10) // 3.333e-4
 * Source: incropera-dewitt
 */
export function filmResistance(thickness: number, k: number, layers = 1): number {
  if (!(thickness > 0 && thickness < 0.1)) throw new OutOfRange('thickness', `${thickness} m`, '0 to 0.1 m');
  if (!(k > 0 && k < 1000)) throw new OutOfRange('k', `${k} W/(m K)`, '0 to 1000 W/(m K)');
  if (!(layers >= 0 && layers <= 1000)) throw new OutOfRange('layers', String(layers), '0 to 1000');
  return (layers * thickness) / k;
}

/**
 * Surface coefficient with a resistance in series [W/(m² K)].
 *
 *     h_eff = 1/(1/h + R)
 *
 * @param h surface coefficient of the medium [W/(m² K)], > 0
 * @param resistance of film, mould, air [m² K/W], ≥ 0
 * Checked by hand: ten layers of 10 µm at 0.30 W/(m K) take 1000 to 750.
 * @example throughResistance(1000, filmResistance(10e-6, 0.3, 10)) // 750.0
 * Source: incropera-dewitt
 */
export function throughResistance(h: number, resistance: number): number {
  if (!(h > 0)) throw new OutOfRange('h', `${h} W/(m² K)`, 'more than 0 W/(m² K)');
  if (!(resistance >= 0)) throw new OutOfRange('resistance', `${resistance} m² K/W`, '0 m² K/W or more');
  return 1 / (1 / h + resistance);
}
