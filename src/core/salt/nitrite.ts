/** Nitrite on its way into meat: how much goes in by each way of curing, and whether the law of the place lets it. */
import { OutOfRange } from '../errors.ts';
import {
  type CuringMethod,
  type NitrateLimit,
  type NitrateProduct,
  type NitriteLimit,
  type NitritePlace,
  type NitriteProduct,
  nitrateLimits,
  nitriteLimits,
} from '../properties/brine-nitrite.ts';

/** Share of the ion in the salt, by molar masses [g/mol]: NO2 46.0055, NO3 62.0049, Na 22.9898, K 39.0983. */
const ionShares = {
  NaNO2: 46.0055 / 68.9953,
  KNO2: 46.0055 / 85.1038,
  NaNO3: 62.0049 / 84.9947,
  KNO3: 62.0049 / 101.1032,
} as const;
export type CuringSalt = keyof typeof ionShares;

/**
 * Nitrite or nitrate ion in an amount of its salt [in the unit of that amount].
 * Equation: ion = salt · M_ion/M_salt. Parameters: the salt; its amount, mg/kg or g, ≥ 0. Assumptions: the pure salt.
 * Checked: published factors 0.67, 0.54, 0.73 and 0.61.
 * @example ionOf('NaNO2', 150) // → 100.02
 * @example ionOf('KNO3', 1) // → 0.6133
 * Source: own-computation
 */
export function ionOf(salt: CuringSalt, amount: number): number {
  return amount * ionShares[salt];
}

/**
 * Salt that holds an amount of nitrite or nitrate ion [in the unit of that amount].
 * Equation: salt = ion · M_salt/M_ion. Parameters, assumptions: as the other way.
 * Checked: 80 mg/kg of the ion are 119.98 mg/kg of sodium nitrite.
 * @example saltOfIon('NaNO2', 80) // → 119.98
 * Source: own-computation
 */
export function saltOfIon(salt: CuringSalt, ion: number): number {
  return ion / ionShares[salt];
}

export interface NitriteCure {
  readonly method: CuringMethod;
  /** Sodium nitrite in the cure or in the whole of the pickle [kg]. */
  readonly nitrite: number;
  /** Green weight of the meat [kg]; dry, comminuted, and immersion to equilibrium. */
  readonly meat?: number;
  /** Weight of the whole pickle [kg]; pumped and immersion. */
  readonly pickle?: number;
  /** Pickle that the meat takes up, of its green weight, fraction; pumped and pick-up. */
  readonly uptake?: number;
}

/**
 * Nitrite that goes into meat, as sodium nitrite to the green weight [mg/kg, ppm].
 * Equation: dry and comminuted n/meat; pumped and pick-up n·uptake/pickle; immersion to equilibrium n/(meat + pickle); all × 1e6.
 * Parameters: nitrite ≥ 0 kg, meat and pickle > 0 kg, uptake 0–1.
 * Assumptions: the green weight of the meat is the base. Formulas from memory of the handbook.
 * Checked: a quarter of an ounce to 100 lb 156.25, an ounce 625, 2 lb in 1000 lb of pickle pumped at 10 % 200.
 * @example ingoingNitrite({ method: 'comminuted', nitrite: 0.00015625, meat: 1 }) // → 156.25
 * @example ingoingNitrite({ method: 'pumped', nitrite: 2, pickle: 1000, uptake: 0.1 }) // → 200
 * Source: fsis-7620-3
 */
export function ingoingNitrite(cure: NitriteCure): number {
  const need = (key: 'nitrite' | 'meat' | 'pickle' | 'uptake', most: number, unit: string) => {
    const value = cure[key] ?? Number.NaN;
    const least = key === 'nitrite' || key === 'uptake' ? value >= 0 : value > 0;
    if (!(least && value <= most)) throw new OutOfRange(key, `${value}${unit}`, `0 to ${most}${unit}`);
    return value;
  };
  const nitrite = need('nitrite', 1e6, ' kg');
  switch (cure.method) {
    case 'dry':
    case 'comminuted':
      return (nitrite / need('meat', 1e6, ' kg')) * 1e6;
    case 'pumped':
    case 'immersion pick-up':
      return ((nitrite * need('uptake', 1, '')) / need('pickle', 1e6, ' kg')) * 1e6;
    case 'immersion to equilibrium':
      return (nitrite / (need('meat', 1e6, ' kg') + need('pickle', 1e6, ' kg'))) * 1e6;
  }
}

export interface NitriteVerdict {
  /** 'at the limit': over it by no more than two thousandths, the rounding of a conversion; 'not known': no figure, which is not leave. */
  readonly verdict: 'within' | 'at the limit' | 'over' | 'not known';
  /** In what the limit counts [mg/kg]; null where it is not known. */
  readonly amount: number | null;
  readonly limit: NitriteLimit | null;
}

/**
 * Whether the law of a place lets so much nitrite into such a product by such a way of curing [mg/kg against mg/kg].
 * Parameters: ppm, ingoing as sodium nitrite, ≥ 0 mg/kg.
 * Assumptions: only what goes in; what may be left in the finished product is another limit. No row: not known.
 * Checked: 20 g/kg of a curing salt of 0.6 % stand at the limit of 80 mg/kg of the ion.
 * @example judgeNitrite(200, 'GB', 'meat product', 'dry').verdict // → 'over'
 * Source: eu-1333-2008
 * Source: eu-2023-2108
 * Source: cfr-9-424-21
 */
export function judgeNitrite(
  ppm: number,
  place: NitritePlace,
  product: NitriteProduct,
  method: CuringMethod,
): NitriteVerdict {
  if (!(ppm >= 0)) throw new OutOfRange('ppm', `${ppm} mg/kg`, '0 mg/kg or more');
  const limit = nitriteLimits.find(
    (row) => row.place === place && row.product === product && row.methods.includes(method),
  );
  if (limit === undefined) return { verdict: 'not known', amount: null, limit: null };
  const amount = limit.as === 'NO2' ? ionOf('NaNO2', ppm) : ppm;
  const verdict = amount <= limit.most ? 'within' : amount <= limit.most * 1.002 ? 'at the limit' : 'over';
  return { verdict, amount, limit };
}

export interface NitrateVerdict {
  readonly verdict: 'within' | 'over' | 'not known';
  readonly limit: NitrateLimit | null;
}

/**
 * Whether the law of a place lets so much nitrate into such a product [mg/kg against mg/kg].
 * Parameters: ppm, ingoing as sodium nitrate to the green weight, ≥ 0 mg/kg (`ingoingNitrite` reckons it alike).
 * Assumptions: only what goes in. No row: not known, which is no leave; most places and products have none here.
 * Checked: on both sides of every row.
 * @example judgeNitrate(151, 'GB', 'meat product, not heated').verdict // → 'over'
 * @example judgeNitrate(10, 'EU', 'meat product, heated').verdict // → 'not known'
 * Source: eu-1333-2008
 */
export function judgeNitrate(ppm: number, place: NitritePlace, product: NitrateProduct): NitrateVerdict {
  if (!(ppm >= 0)) throw new OutOfRange('ppm', `${ppm} mg/kg`, '0 mg/kg or more');
  const limit = nitrateLimits.find((row) => row.place === place && row.product === product);
  if (limit === undefined) return { verdict: 'not known', limit: null };
  return { verdict: ppm <= limit.most ? 'within' : 'over', limit };
}
