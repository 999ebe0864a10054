/** Where the weights of a breakdown stand: the same counting at the scale, on the page, and on the server before it keeps them. */
import {
  type BalancedNode,
  type Becomes,
  type BreakdownNode,
  balanceOf,
} from '../core/carcass/mass-balance.ts';
import type { TreeNode, WeighingInput } from './breakdown.ts';

export interface NodeWeight {
  readonly grams: number;
  readonly pieces: number | null;
  readonly weighings: number;
}

/** A kitchen's scale shows whole grams, or is read so: each weighing may be out by this much [g]. */
const scale = 1;

/** The weighings that stand: neither corrected nor taken back. */
export function standingLines<W extends WeighingInput>(weighings: readonly W[]): W[] {
  const gone = new Set(weighings.flatMap((w) => (w.corrects === null ? [] : [w.corrects])));
  return weighings.filter((w) => !gone.has(w.id) && !w.takenBack);
}

/** What stands of the weighings: corrected and taken-back ones are left out, the rest of a part is summed. */
export function standingWeights(weighings: readonly WeighingInput[]): Map<string, NodeWeight> {
  const found = new Map<string, NodeWeight>();
  for (const w of standingLines(weighings)) {
    const before = found.get(w.node);
    const pieces = w.pieces === null ? (before?.pieces ?? null) : (before?.pieces ?? 0) + w.pieces;
    found.set(w.node, {
      // Tenths of a gram do not add up exactly in binary: a sum is brought back to the milligram.
      grams: Math.round(((before?.grams ?? 0) + w.grossGrams - w.tareGrams) * 1000) / 1000,
      pieces,
      weighings: (before?.weighings ?? 0) + 1,
    });
  }
  return found;
}

const becomesOf: Readonly<Record<TreeNode['becomes'], Becomes>> = {
  step: 'part',
  part: 'part',
  sold: 'part',
  drip: 'drip',
  bone: 'bone and waste',
  bin: 'bone and waste',
  'by-product': 'bone and waste',
};

/**
 * The balance at every cut. `inGrams`: what went in by the lots, where nobody weighed the whole on the table. Throws
 * `OutOfRange` where parts are heavier than what they came from.
 */
export function balanceOfTree(
  nodes: readonly TreeNode[],
  inGrams: number,
  weights: ReadonlyMap<string, NodeWeight>,
): { root: BalancedNode; byId: ReadonlyMap<string, BalancedNode> } {
  const root = nodes.find((n) => n.parent === null);
  if (root === undefined) throw new Error('a tree without a beginning');
  const build = (n: TreeNode): BreakdownNode => {
    const children = nodes.filter((m) => m.parent === n.id).map(build);
    return {
      id: n.id,
      name: n.name,
      becomes: becomesOf[n.becomes],
      ...(children.length > 0 ? { children } : {}),
    };
  };
  const weighings = nodes.flatMap((n) => {
    const w = weights.get(n.id);
    if (w !== undefined) return [{ node: n.id, grams: w.grams, accuracy: scale * w.weighings }];
    return n === root && inGrams > 0 ? [{ node: n.id, grams: inGrams, accuracy: scale }] : [];
  });
  const balanced = balanceOf(build(root), weighings);
  const byId = new Map<string, BalancedNode>();
  const walk = (b: BalancedNode): void => {
    byId.set(b.id, b);
    b.children.forEach(walk);
  };
  walk(balanced);
  return { root: balanced, byId };
}

export interface AnimalWeights {
  /** Counted from 1. */
  readonly animal: number;
  readonly inGrams: number;
  /** Of every place in the tree that was weighed for this animal [g]. */
  readonly grams: Readonly<Record<string, number>>;
}

/**
 * What each animal gave, where the animals were weighed one by one: the whole and every place that has a weight at all.
 * Null where anything was weighed together, or is missing for one of them.
 */
export function animalByAnimal(
  nodes: readonly TreeNode[],
  animals: number,
  weighings: readonly WeighingInput[],
): AnimalWeights[] | null {
  const lines = standingLines(weighings);
  const root = nodes.find((n) => n.parent === null)?.id;
  if (root === undefined || lines.some((w) => w.animal === null)) return null;
  const places = [...new Set(lines.map((w) => w.node))];
  if (!places.includes(root)) return null;
  const found: AnimalWeights[] = [];
  for (let animal = 1; animal <= animals; animal++) {
    const own = standingWeights(lines.filter((w) => w.animal === animal));
    if (places.some((p) => !own.has(p))) return null;
    found.push({
      animal,
      inGrams: own.get(root)?.grams ?? 0,
      grams: Object.fromEntries([...own].filter(([id]) => id !== root).map(([id, w]) => [id, w.grams])),
    });
  }
  return found.every((a) => a.inGrams > 0) ? found : null;
}

/** The whole weighed for some of the animals and not for all: a reason not to finish; null where all is well. */
export function wholeMissing(
  nodes: readonly TreeNode[],
  animals: number,
  weighings: readonly WeighingInput[],
): string | null {
  const root = nodes.find((n) => n.parent === null);
  const lines = standingLines(weighings).filter((w) => w.node === root?.id);
  if (root === undefined || lines.length === 0 || lines.some((w) => w.animal === null)) return null;
  const weighed = new Set(lines.map((w) => w.animal)).size;
  return weighed === animals
    ? null
    : `The whole ${root.name} is weighed for ${weighed} of ${animals} animals; weigh the others, or take those back.`;
}
