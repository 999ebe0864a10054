/**
 * What a part of an animal costs, when only the animal had a price. No rule is true; each is a way of sharing out, and the
 * same animal is dear or cheap in its parts by the rule. What every rule keeps is the sum, to the penny, at every cut.
 */
import { Contradiction, OutOfRange } from '../errors.ts';
import type { BalancedNode } from './mass-balance.ts';
import { shareOut } from './share-out.ts';

export type CostRule =
  | { readonly by: 'weight' }
  /** By what the parts would bring, less what it takes to get them there. */
  | { readonly by: 'value' }
  /** By the chef's own shares, by id of the piece: any numbers ≥ 0, only their ratio counts. */
  | { readonly by: 'shares'; readonly shares: Readonly<Record<string, number>> };

/** What is known of a piece's money, by its id. */
export interface PieceMoney {
  /** What a kilogram would bring [minor units/kg]; below zero: what it costs to have it taken away. */
  readonly pricePerKg?: number;
  /** What it takes to make a kilogram ready to be sold [minor units/kg]. */
  readonly finishingPerKg?: number;
  /** Sold or rendered off: what it brings is taken off the cost of the rest, and it carries just that itself. */
  readonly credited?: boolean;
}

export interface CostedNode {
  readonly id: string;
  readonly name: string;
  /** null: drip or waste that nobody weighed; it costs nothing. */
  readonly mg: number | null;
  /** Whole minor units. Children sum to it exactly. */
  readonly cost: number;
  /** Before rounding to whole units [minor units/kg]; null where it weighs nothing. */
  readonly perKg: number | null;
  /** carries: by the rule. credited: what it brings (below zero: what it costs to be rid of). nothing: drip, bone and waste without a price. */
  readonly how: 'carries' | 'credited' | 'nothing';
  readonly children: readonly CostedNode[];
}

/** What a piece takes from the cost: a fixed amount, or a weight in the sharing out. */
type Claim = { readonly fixed: number; readonly exact: number } | { readonly weight: bigint };

/** Weights of the value rule are in mg × thousandths of a minor unit per kg; so many make one minor unit. */
const perMinor = 1_000_000_000n;

function thousandths(value: number, path: string, unit: string): bigint {
  const scaled = Math.round(value * 1000);
  if (!Number.isSafeInteger(scaled) || Math.abs(value) > 1e9)
    throw new OutOfRange(path, `${value} ${unit}`, `-1e9 to 1e9 ${unit}`);
  return BigInt(scaled);
}

/** Half away from zero. */
function rounded(value: bigint, by: bigint): number {
  const size = value < 0n ? -value : value;
  const whole = Number((2n * size + by) / (2n * by));
  return value < 0n ? 0 - whole : whole;
}

const fixedAt = (worth: bigint): Claim => ({
  fixed: rounded(worth, perMinor),
  exact: Number(worth) / Number(perMinor),
});

function together(claims: readonly Claim[]) {
  let fixed = 0;
  let exact = 0;
  const weights: bigint[] = [];
  for (const claim of claims)
    if ('weight' in claim) weights.push(claim.weight);
    else {
      fixed += claim.fixed;
      exact += claim.exact;
    }
  return { fixed, exact, weights };
}

class Claims {
  private readonly kept = new Map<string, Claim>();
  constructor(
    private readonly rule: CostRule,
    private readonly money: Readonly<Record<string, PieceMoney>>,
  ) {}

  of(node: BalancedNode, path: string): Claim {
    const known = this.kept.get(node.id);
    if (known !== undefined) return known;
    const claim = node.children.length === 0 ? this.leaf(node, path) : this.cut(node, path);
    this.kept.set(node.id, claim);
    return claim;
  }

  private worth(node: BalancedNode, path: string): bigint | null {
    const { pricePerKg, finishingPerKg = 0 } = this.money[node.id] ?? {};
    if (pricePerKg === undefined) return null;
    return (
      thousandths(pricePerKg, `${path} › pricePerKg`, 'minor units/kg') -
      thousandths(finishingPerKg, `${path} › finishingPerKg`, 'minor units/kg')
    );
  }

  private leaf(node: BalancedNode, path: string): Claim {
    const worth = this.worth(node, path);
    const lost = node.becomes !== 'part';
    if (lost && worth === null && this.money[node.id]?.credited !== true) return fixedAt(0n);
    if (node.mg === null)
      throw new Contradiction(path, 'a piece that was not weighed', 'a weight for every piece before cost');
    const credited = this.money[node.id]?.credited === true;
    if (credited && worth === null)
      throw new Contradiction(path, 'credited without a price', 'a price per kg, 0 for nothing');
    if (worth !== null && (lost || credited || worth < 0n)) return fixedAt(BigInt(node.mg) * worth);
    if (this.rule.by === 'weight') return { weight: BigInt(node.mg) };
    if (this.rule.by === 'shares') return { weight: this.share(node, path) };
    if (worth === null)
      throw new Contradiction(
        path,
        'no price, and cost goes by value',
        'a price per kg, 0 for what brings nothing',
      );
    return { weight: BigInt(node.mg) * worth };
  }

  private share(node: BalancedNode, path: string): bigint {
    const share = this.rule.by === 'shares' ? this.rule.shares[node.id] : undefined;
    if (share === undefined)
      throw new Contradiction(path, 'no share, and cost goes by the chef’s shares', 'a share, 0 for none');
    if (!(share >= 0)) throw new OutOfRange(`${path} › share`, `${share}`, '0 or more');
    return thousandths(share, `${path} › share`, '');
  }

  private cut(node: BalancedNode, path: string): Claim {
    const claims = node.children.map((child) => this.of(child, `${path} › ${child.name}`));
    const { fixed, exact, weights: carriers } = together(claims);
    if (carriers.length === 0) return { fixed, exact };
    if (this.rule.by === 'weight') {
      if (node.mg === null)
        throw new Contradiction(path, 'a piece that was not weighed', 'a weight for every piece before cost');
      return { weight: BigInt(node.mg) };
    }
    const sum = carriers.reduce((total, w) => total + w, 0n);
    if (this.rule.by === 'shares')
      return { weight: this.rule.shares[node.id] === undefined ? sum : this.share(node, path) };
    const worth = sum + BigInt(fixed) * perMinor;
    return { weight: worth > 0n ? worth : 0n };
  }
}

/**
 * Cost of every piece of a breakdown, exact at every cut [minor units].
 * Equation: at every cut: cost of the piece − Σ credits + Σ costs of disposal, shared out by largest remainder over what
 * carries, in proportion to weight m, to net realisable value m (p − f), or to the chef's shares.
 * @param root a balanced breakdown, every part in it weighed
 * @param cost what it cost, whole minor units
 * @param rule weight, value or shares
 * @param money prices by id of the piece [minor units/kg, −1e9 to 1e9, to a thousandth]
 * Assumes that drip, bone, waste and what is missing cost nothing of their own: the parts carry it. A piece that is
 * credited, or costs money to be rid of, carries exactly what it brings. A part whose worth is 0 carries nothing by value.
 * A piece that is cut on is worth what its pieces are; by weight it counts as weighed whole.
 * Checked: children sum to their piece exactly at every cut of 10,000 random trees by all three rules; a goose by hand.
 * @example jointCost({ id: 'a', name: 'goose', becomes: 'part', mg: 3e6, weighed: true, superseded: [], balance: null, children: [] }, 4200, { by: 'weight' }).perKg // → 1400
 * Source: own-computation (allocation of joint cost; the three rules are common practice)
 */
export function jointCost(
  root: BalancedNode,
  cost: number,
  rule: CostRule,
  money: Readonly<Record<string, PieceMoney>> = {},
): CostedNode {
  if (!Number.isSafeInteger(cost)) throw new OutOfRange('cost', `${cost}`, 'a whole number of minor units');
  const claims = new Claims(rule, money);
  const spread = (
    node: BalancedNode,
    own: number,
    exact: number,
    path: string,
    how: CostedNode['how'],
  ): CostedNode => {
    const each = node.children.map((child) => claims.of(child, `${path} › ${child.name}`));
    const taken = together(each);
    const shared = node.children.length === 0 ? [] : shareOut(own - taken.fixed, taken.weights, path);
    const sum = Number(taken.weights.reduce((total, w) => total + w, 0n));
    const quota = (w: bigint) => (sum === 0 ? 0 : ((exact - taken.exact) * Number(w)) / sum);
    let next = 0;
    const children = node.children.map((child, i) => {
      const claim = each[i]!;
      const below = `${path} › ${child.name}`;
      if ('weight' in claim) return spread(child, shared[next++]!, quota(claim.weight), below, 'carries');
      const priced = money[child.id]?.pricePerKg !== undefined || child.children.length > 0;
      return spread(child, claim.fixed, claim.exact, below, priced ? 'credited' : 'nothing');
    });
    const { mg } = node;
    return {
      id: node.id,
      name: node.name,
      mg,
      cost: own,
      perKg: mg !== null && mg > 0 ? exact / (mg / 1e6) : null,
      how,
      children,
    };
  };
  claims.of(root, root.name);
  return spread(root, cost, cost, root.name, 'carries');
}

/** What is left of a part to serve, and the work it takes. */
export interface UsablePart {
  /** Cost of the part as cut [minor units], and its weight [kg]. */
  readonly cost: number;
  readonly kg: number;
  /** Fractions lost, 0 to 1, one after the other. */
  readonly trimLoss: number;
  readonly cookingLoss: number;
  /** Work on it [min] and what an hour of it costs [minor units/h]. */
  readonly labourMin: number;
  readonly labourPerHour: number;
}

/**
 * Cost of a kilogram that can be served, with the work in it [minor units/kg].
 * Equation: c = (C + L t/60)/(m (1 − trim)(1 − cooking)).
 * @param part cost [minor units], weight [kg, > 0], losses [0 to less than 1], work [min ≥ 0] and its price [minor units/h ≥ 0]
 * Assumes losses one after the other and work that is paid whether the part was free or not: a part that cost nothing
 * costs its labour.
 * Checked: by hand on a free neck.
 * @example usableCost({ cost: 0, kg: 0.2, trimLoss: 0.1, cookingLoss: 0.27, labourMin: 6, labourPerHour: 1500 }).perKg // → 1141.55
 * Source: own-computation
 */
export function usableCost(part: UsablePart): {
  readonly kg: number;
  readonly perKg: number;
  /** Of `perKg`, the work. */
  readonly labourPerKg: number;
} {
  const { cost, kg, trimLoss, cookingLoss, labourMin, labourPerHour } = part;
  if (!(kg > 0)) throw new OutOfRange('kg', `${kg} kg`, 'more than 0');
  for (const [name, loss] of Object.entries({ trimLoss, cookingLoss }))
    if (!(loss >= 0 && loss < 1)) throw new OutOfRange(name, `${loss}`, '0 to less than 1');
  for (const [name, value] of Object.entries({ labourMin, labourPerHour }))
    if (!(value >= 0)) throw new OutOfRange(name, `${value}`, '0 or more');
  const usable = kg * (1 - trimLoss) * (1 - cookingLoss);
  const labour = (labourPerHour * labourMin) / 60;
  return { kg: usable, perKg: (cost + labour) / usable, labourPerKg: labour / usable };
}
