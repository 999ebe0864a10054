/** From what a batch costs to what a portion must be sold for. Money in minor units, not rounded until it is a price. */
import { OutOfRange } from '../errors.ts';

/** An amount that is not known to the penny: the low and the high end are as likely to be passed as the kitchen meant them to be. */
export interface Amount {
  readonly low: number;
  readonly usual: number;
  readonly high: number;
}

export type CostKind = 'part' | 'ingredient' | 'hands' | 'energy' | 'packaging' | 'overhead';

export interface CostLine {
  readonly name: string;
  readonly kind: CostKind;
  /** For the batch; null where nobody has said: the true cost is higher. */
  readonly cost: Amount | null;
}

const isAmount = (a: Amount, path: string) => {
  if (!(a.low >= 0 && a.low <= a.usual && a.usual <= a.high && a.high <= 1e13))
    throw new OutOfRange(path, `${a.low} … ${a.usual} … ${a.high}`, 'rising, from 0');
};

/**
 * What a portion costs, with how sure that is [minor units].
 * Equation: c = Σ Cᵢ / n; the ends by δ² = Σ (δCᵢ/n)² + (c δn/n)², each way by itself: costs that vary independently do not all turn out dear at once.
 * Parameters: lines of cost for the batch, low ≤ usual ≤ high, 0 or more; portions alike, more than 0.
 * Assumptions: independent of each other; a line without a cost counts as nothing and is named in `missing`.
 * Checked: one line only gives its own ends; exact lines and portions give no spread; linear in the batch (property).
 * @example costPerPortion([{ name: 'neck', kind: 'part', cost: { low: 90, usual: 100, high: 120 } }], { low: 10, usual: 10, high: 10 }).perPortion.high // → 12
 * Source: own-computation
 */
export function costPerPortion(
  lines: readonly CostLine[],
  portions: Amount,
): {
  readonly total: Amount;
  readonly perPortion: Amount;
  /** Of the usual cost of a portion, by kind [minor units]. */
  readonly byKind: Readonly<Record<CostKind, number>>;
  readonly missing: readonly string[];
} {
  if (!(portions.low > 0 && portions.low <= portions.usual && portions.usual <= portions.high))
    throw new OutOfRange(
      'portions',
      `${portions.low} … ${portions.usual} … ${portions.high}`,
      'rising, more than 0',
    );
  const byKind = { part: 0, ingredient: 0, hands: 0, energy: 0, packaging: 0, overhead: 0 };
  let usual = 0;
  let up = 0;
  let down = 0;
  const missing: string[] = [];
  lines.forEach((line, i) => {
    if (line.cost === null) {
      missing.push(line.name);
      return;
    }
    isAmount(line.cost, `lines[${i}].cost`);
    usual += line.cost.usual;
    up += (line.cost.high - line.cost.usual) ** 2;
    down += (line.cost.usual - line.cost.low) ** 2;
    byKind[line.kind] += line.cost.usual / portions.usual;
  });
  const each = usual / portions.usual;
  // Fewer portions make each dearer.
  const fewer = usual / portions.low - each;
  const more = each - usual / portions.high;
  return {
    total: { low: usual - Math.sqrt(down), usual, high: usual + Math.sqrt(up) },
    perPortion: {
      low: each - Math.hypot(Math.sqrt(down) / portions.usual, more),
      usual: each,
      high: each + Math.hypot(Math.sqrt(up) / portions.usual, fewer),
    },
    byKind,
    missing,
  };
}

export interface PriceRules {
  /** Of the price without tax, what is to be left, 0 to less than 1. */
  readonly margin: number;
  /** Tax on the price, 0–1. */
  readonly vat: number;
  readonly includesVat: boolean;
  /** Menu prices end on a multiple of this [minor units], 1 or more. */
  readonly step: number;
}

const checkRules = (rules: PriceRules) => {
  if (!(rules.margin >= 0 && rules.margin < 1))
    throw new OutOfRange('margin', String(rules.margin), '0 to less than 1');
  if (!(rules.vat >= 0 && rules.vat <= 1)) throw new OutOfRange('vat', String(rules.vat), '0 to 1');
  if (!(Number.isInteger(rules.step) && rules.step >= 1))
    throw new OutOfRange('step', String(rules.step), 'a whole number of minor units, 1 or more');
};

/**
 * The menu price that leaves the wanted margin [minor units, a multiple of the step].
 * Equation: net = c / (1 − g); quoted = net · (1 + v) where prices include tax; rounded up to the step.
 * Parameters: cost of a portion ≥ 0; margin 0 to < 1; tax 0–1; step a whole number ≥ 1.
 * Assumptions: the margin is of the price without tax; service is not the kitchen's and is left out.
 * Checked: the margin at that price is the wanted one or more (property); 3.00 at 70 % and 20 % tax is 12.00.
 * @example priceFor(300, { margin: 0.7, vat: 0.2, includesVat: true, step: 50 }) // → 1200
 * Source: own-computation
 */
export function priceFor(cost: number, rules: PriceRules): number {
  checkRules(rules);
  if (!(cost >= 0)) throw new OutOfRange('cost', String(cost), '0 or more');
  const quoted = (cost / (1 - rules.margin)) * (rules.includesVat ? 1 + rules.vat : 1);
  return Math.ceil(quoted / rules.step - 1e-9) * rules.step;
}

/**
 * What a price leaves of itself [-]; negative where it does not pay for the portion.
 * Equation: g = 1 − c / net; net = quoted / (1 + v) where prices include tax.
 * Parameters: quoted price > 0 [minor units]; cost of a portion ≥ 0; the rules as for `priceFor`.
 * Assumptions: as for `priceFor`.
 * Checked: with `priceFor`, by property.
 * @example marginAt(1200, 300, { margin: 0.7, vat: 0.2, includesVat: true, step: 50 }) // → 0.7
 * Source: own-computation
 */
export function marginAt(price: number, cost: number, rules: PriceRules): number {
  checkRules(rules);
  if (!(price > 0)) throw new OutOfRange('price', String(price), 'more than 0');
  return 1 - cost / netOf(price, rules);
}

/**
 * What is left of a quoted price when its tax is taken off [minor units].
 * Equation: net = quoted / (1 + v) where prices include tax, else the price itself.
 * Parameters: quoted price ≥ 0; tax 0–1. Assumptions: one rate on the whole price. Checked: by hand.
 * @example netOf(1200, { margin: 0, vat: 0.2, includesVat: true, step: 1 }) // → 1000
 * Source: own-computation
 */
export function netOf(price: number, rules: PriceRules): number {
  checkRules(rules);
  return rules.includesVat ? price / (1 + rules.vat) : price;
}

/**
 * Portions of a service that pay for what does not change with them [-, whole]; null where no number of them does.
 * Equation: n = ⌈F / (net − c)⌉.
 * Parameters: fixed cost of a service ≥ 0, net price of a portion, cost of a portion ≥ 0 [minor units].
 * Assumptions: every portion costs the same; only this dish is sold.
 * Checked: one portion fewer does not pay (property).
 * @example breakEven(20000, 1000, 300) // → 29
 * Source: own-computation
 */
export function breakEven(fixed: number, net: number, cost: number): number | null {
  if (!(fixed >= 0)) throw new OutOfRange('fixed', String(fixed), '0 or more');
  if (fixed === 0) return 0;
  return net - cost > 1e-9 ? Math.ceil(fixed / (net - cost) - 1e-9) : null;
}

/**
 * What the rest of an animal must earn, so that the whole of it leaves the wanted margin [minor units, without tax].
 * Equation: R = A / (1 − g) − s: sales that the animal must bring in, less those of this dish's portions out of it.
 * Parameters: paid for the animal ≥ 0; margin 0 to < 1; sales without tax of what this dish makes of one animal ≥ 0, of which only what pays for the part counts: other costs of the dish come off first.
 * Assumptions: the margin is after food; the animal's other costs are the other dishes'.
 * Checked: an animal of 42.00 at 70 % has to bring 140.00; a dish that brings 20.00 of it leaves 120.00.
 * @example restMustEarn(4200, 0.7, 2000) // → 12000
 * Source: own-computation
 */
export function restMustEarn(paid: number, margin: number, broughtIn: number): number {
  if (!(paid >= 0)) throw new OutOfRange('paid', String(paid), '0 or more');
  if (!(margin >= 0 && margin < 1)) throw new OutOfRange('margin', String(margin), '0 to less than 1');
  return Math.max(0, paid / (1 - margin) - broughtIn);
}

/**
 * How much dearer a portion gets when one thing gets dearer [minor units], and what its price must then be.
 * Equation: Δc = C · r / n.
 * Parameters: cost of that thing in the batch ≥ 0; rise r (0.1 is a tenth) −1 to 10; portions > 0.
 * Assumptions: as much of it is used as before.
 * Checked: by hand.
 * @example dearerBy(600, 0.1, 12) // → 5
 * Source: own-computation
 */
export function dearerBy(cost: number, rise: number, portions: number): number {
  if (!(cost >= 0)) throw new OutOfRange('cost', String(cost), '0 or more');
  if (!(rise >= -1 && rise <= 10)) throw new OutOfRange('rise', String(rise), '−1 to 10');
  if (!(portions > 0)) throw new OutOfRange('portions', String(portions), 'more than 0');
  return (cost * rise) / portions;
}
