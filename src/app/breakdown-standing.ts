/** Where a breakdown stands, from its tree and its weighings: the balance, the shares, the money, what is still missing. */
import { type BreakdownOutcome, CostBy, type CostPreview, type TreeNode } from '../contract/breakdown.ts';
import { type AnimalWeights, balanceOfTree, type NodeWeight } from '../contract/breakdown-balance.ts';
import { type CostedNode, jointCost, type PieceMoney } from '../core/carcass/joint-cost.ts';
import type { BalancedNode } from '../core/carcass/mass-balance.ts';
import { Contradiction, OutOfRange } from '../core/errors.ts';
import { AppError } from './errors.ts';

export interface PartMoney {
  readonly name: string;
  readonly valuePerKg: number | null;
  readonly costShare: number | null;
}

const refuse = (path: string, found: string, allowed: string): never => {
  throw new AppError('invalid', `The tree does not hold together: ${found}.`, [{ path, found, allowed }]);
};

/** One root, every parent there, no ring, only what is cut on has parts of its own. */
export function checkTree(nodes: readonly TreeNode[]): void {
  const byId = new Map<string, TreeNode>();
  for (const [i, n] of nodes.entries()) {
    if (byId.has(n.id)) refuse(`nodes[${i}].id`, `${n.id} twice`, 'each id once');
    byId.set(n.id, n);
  }
  const roots = nodes.filter((n) => n.parent === null);
  if (roots.length !== 1) refuse('nodes', `${roots.length} beginnings`, 'one: the whole animal');
  for (const [i, n] of nodes.entries()) {
    const cut = nodes.some((m) => m.parent === n.id);
    if (cut && n.becomes !== 'step')
      refuse(`nodes[${i}].becomes`, `${n.name}, ${n.becomes}, is cut further`, 'step');
    if (!cut && n.becomes === 'step')
      refuse(`nodes[${i}].becomes`, `${n.name} is cut into nothing`, 'a part, or parts of it');
    const seen = new Set<string>();
    for (let at: TreeNode | undefined = n; at !== undefined && at.parent !== null; at = byId.get(at.parent)) {
      if (seen.has(at.id)) refuse(`nodes[${i}].parent`, `${n.name} comes from itself`, 'a tree');
      seen.add(at.id);
      if (!byId.has(at.parent)) refuse(`nodes[${i}].parent`, at.parent, 'the id of a node');
    }
    const twin = nodes.find(
      (m) =>
        m !== n &&
        m.becomes === 'part' &&
        n.becomes === 'part' &&
        m.name.toLowerCase() === n.name.toLowerCase(),
    );
    if (twin !== undefined) refuse(`nodes[${i}].name`, `${n.name} twice`, 'a name for each part');
  }
}

export interface StandingInput {
  readonly nodes: readonly TreeNode[];
  /** What went in by the lots' weights [g]. */
  readonly inGrams: number;
  readonly weights: ReadonlyMap<string, NodeWeight>;
  readonly paid: number | null;
  readonly costBy: CostBy;
  readonly money: readonly PartMoney[];
  readonly path?: string;
  readonly byAnimal?: AnimalWeights[] | null;
}

/** The outcome as it stands, and why it cannot be finished yet. Parts heavier than what they came from are refused. */
export function outcomeOf(input: StandingInput): { outcome: BreakdownOutcome; blocking: string[] } {
  const { nodes, weights } = input;
  const { root: balanced, byId: flat } = said(() => balanceOfTree(nodes, input.inGrams, weights), input.path);
  const missing = nodes.filter((n) => n.becomes !== 'step' && flat.get(n.id)?.mg === null);
  const needed = missing.filter((n) => n.becomes === 'part' || n.becomes === 'sold');
  const blocking = needed.map((n) => `${n.name} is not weighed; weigh it, or write 0.`);
  const costs = needed.length === 0 ? costsOf(input, balanced, flat) : { costs: null, warnings: [] };
  const inMg = balanced.mg ?? 0;
  const leaves = nodes.filter((n) => n.becomes !== 'step');
  const gramsOf = (id: string) => (flat.get(id)?.mg ?? 0) / 1000;
  const usedMg = leaves.reduce(
    (sum, n) =>
      sum +
      ((n.becomes === 'part' && n.use !== 'thrown away') || n.becomes === 'sold'
        ? (flat.get(n.id)?.mg ?? 0)
        : 0),
    0,
  );
  const outMg = leaves.reduce((sum, n) => sum + (flat.get(n.id)?.mg ?? 0), 0);
  return {
    blocking,
    outcome: {
      inGrams: inMg / 1000,
      outGrams: outMg / 1000,
      unaccountedGrams: (inMg - outMg) / 1000,
      usedPct: inMg === 0 ? 0 : (100 * usedMg) / inMg,
      paid: input.paid,
      costBy: input.costBy,
      nodes: nodes.map((n) => ({
        node: n.id,
        name: n.name,
        becomes: n.becomes,
        grams: gramsOf(n.id),
        weighed: typeof flat.get(n.id)?.mg === 'number',
        pieces: weights.get(n.id)?.pieces ?? null,
        pct: inMg === 0 ? 0 : (100 * (flat.get(n.id)?.mg ?? 0)) / inMg,
        unaccountedGrams: (flat.get(n.id)?.balance?.unaccounted ?? 0) / 1000,
        cost: costs.costs?.get(n.id) ?? null,
        lotId: null,
      })),
      byAnimal: input.byAnimal ?? null,
      warnings: costs.warnings,
    },
  };
}

/** What the parts would carry by each of the three rules, side by side. */
export const costPreviews = (input: Omit<StandingInput, 'costBy'>): CostPreview[] =>
  CostBy.options.map((by) => {
    const { outcome } = outcomeOf({ ...input, costBy: by });
    return {
      by,
      paid: outcome.paid,
      nodes: outcome.nodes
        .filter((n) => n.becomes === 'part' || n.becomes === 'sold')
        .map((n) => ({
          node: n.node,
          name: n.name,
          grams: n.grams,
          cost: n.cost,
          perKg: n.cost === null || n.grams <= 0 ? null : n.cost / (n.grams / 1000),
        })),
      warnings: outcome.warnings,
    };
  });

function costsOf(
  input: StandingInput,
  balanced: BalancedNode,
  flat: ReadonlyMap<string, BalancedNode>,
): { costs: ReadonlyMap<string, number> | null; warnings: string[] } {
  if (input.paid === null)
    return { costs: null, warnings: ['What was paid is not known: the parts carry no cost.'] };
  const moneyBy = new Map(input.money.map((m) => [m.name.toLowerCase(), m]));
  const leaves = input.nodes.filter((n) => n.becomes !== 'step');
  const carriers = leaves.filter((n) => n.becomes === 'part' && (flat.get(n.id)?.mg ?? 0) > 0);
  if (carriers.length === 0)
    return { costs: null, warnings: ['No part was weighed that could carry the cost.'] };
  const priceOf = (n: TreeNode) => moneyBy.get(n.name.toLowerCase())?.valuePerKg ?? null;
  const money: Record<string, PieceMoney> = {};
  const warnings: string[] = [];
  for (const n of leaves) {
    const price = priceOf(n);
    if (n.becomes === 'sold') money[n.id] = { pricePerKg: price ?? 0, credited: true };
    else if (n.becomes === 'part' && price !== null) money[n.id] = { pricePerKg: price };
    if (n.becomes === 'sold' && price === null)
      warnings.push(`${n.name} is sold, but nobody has said for how much: nothing is credited.`);
  }
  let by = input.costBy;
  if (by === 'value') {
    const unpriced = carriers.filter((n) => priceOf(n) === null);
    const worth = carriers.some((n) => (priceOf(n) ?? 0) > 0);
    if (unpriced.length > 0 || !worth) {
      warnings.push(
        `No value is known for ${unpriced.map((n) => n.name).join(', ') || 'any part'}: cost is carried by weight.`,
      );
      by = 'weight';
    }
  }
  const shares = Object.fromEntries(
    leaves.map((n) => [n.id, moneyBy.get(n.name.toLowerCase())?.costShare ?? 0]),
  );
  if (by === 'shares' && !carriers.some((n) => (shares[n.id] ?? 0) > 0)) {
    warnings.push('No shares are set: cost is carried by weight.');
    by = 'weight';
  }
  // What was not weighed and is no part weighs nothing here: it is inside what is unaccounted.
  const settled = (b: BalancedNode): BalancedNode => ({
    ...b,
    mg: b.mg ?? 0,
    children: b.children.map(settled),
  });
  const costed = said(
    () =>
      jointCost(settled(balanced), input.paid as number, by === 'shares' ? { by, shares } : { by }, money),
    input.path,
  );
  const costs = new Map<string, number>();
  const walk = (c: CostedNode): void => {
    costs.set(c.id, c.cost);
    c.children.forEach(walk);
  };
  walk(costed);
  if ([...costs.values()].some((c) => c < 0))
    warnings.push('What is sold brings more than was paid: a part carries less than nothing.');
  return { costs, warnings };
}

function said<T>(work: () => T, path = 'weighings'): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof OutOfRange || error instanceof Contradiction)) throw error;
    throw new AppError(
      'invalid',
      `The weights do not hold together: ${error.found}; allowed is ${error.allowed}.`,
      [{ path: `${path} (${error.path})`, found: error.found, allowed: error.allowed }],
    );
  }
}

/**
 * What a weight of a lot cost, in whole minor units: from the first gram to the last they sum to what was paid, because
 * each is the difference of two roundings.
 */
export function paidFor(
  lot: { readonly cost: number | null; readonly grams: number; readonly leftGrams: number },
  grams: number,
): number | null {
  if (lot.cost === null) return null;
  const gone = lot.grams - lot.leftGrams;
  const upTo = (g: number) => Math.round((lot.cost as number) * Math.min(1, g / lot.grams));
  return upTo(gone + grams) - upTo(gone);
}
