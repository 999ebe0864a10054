/**
 * The balance of a breakdown: what went in is what came out, and what is missing is shown. Weighings are only added
 * to: a later one of the same piece stands, the earlier ones stay beside it.
 */
import { Contradiction, OutOfRange } from '../errors.ts';
import type { Becomes } from '../properties/breakdown-trees.ts';
import { gramsText, milligrams } from './weight.ts';

export type { Becomes };

/** A piece and what it is cut into. The root is an animal, or several cut together. */
export interface BreakdownNode {
  /** Unique in the tree. */
  readonly id: string;
  readonly name: string;
  readonly becomes: Becomes;
  readonly children?: readonly BreakdownNode[];
}

export interface Weighing {
  /** Id of the piece. */
  readonly node: string;
  /** Net weight [g], tare taken off, with at most three decimals. */
  readonly grams: number;
  /** The most that this scale is out by at this weight [g]. */
  readonly accuracy: number;
}

/** What went into a cut and what came out [mg]: in = parts + drip + waste + unaccounted, exactly. */
export interface Balance {
  readonly in: number;
  readonly parts: number;
  readonly drip: number;
  readonly waste: number;
  /** Below zero only by what the scales may be out by. */
  readonly unaccounted: number;
  /** The most that the scales together may be out by. */
  readonly tolerance: number;
  /** Names of what is not weighed yet: it is inside `unaccounted` as long as it is not. */
  readonly notWeighed: readonly string[];
}

export interface BalancedNode {
  readonly id: string;
  readonly name: string;
  readonly becomes: Becomes;
  /** The weight that stands [mg]: weighed, or the sum of what it was cut into; null where that is not known. */
  readonly mg: number | null;
  /** false: nobody weighed it whole, its weight is a sum and its own balance proves nothing. */
  readonly weighed: boolean;
  /** Earlier weighings that a later one replaced, first to last. */
  readonly superseded: readonly Weighing[];
  /** null for a piece that was not cut on. */
  readonly balance: Balance | null;
  readonly children: readonly BalancedNode[];
}

interface Weighed {
  readonly node: BalancedNode;
  /** What is known to be there [mg], at least; and what the scales may be out by in it. */
  readonly known: number;
  readonly accuracy: number;
}

/**
 * Balance of a breakdown at every cut [mg].
 * Equation: unaccounted = in − parts − drip − bone and waste, in whole milligrams, at every piece that was cut.
 * @param root the tree of pieces
 * @param weighings net weights [g, 0 to 10,000,000, ≤ 3 decimals], in the order they were made: the last of a piece stands
 * Assumes that tare was taken off. A piece never weighed whole weighs what its pieces weigh together; a piece not
 * weighed at all stays unknown. Pieces heavier together than what they came from are refused beyond what the scales may
 * be out by, all in the same direction (the sum of the accuracies, not their root mean square: an honest weighing is
 * never refused).
 * Checked: closes exactly at every node of random trees; by hand on a goose; a re-weighing keeps the earlier one.
 * @example balanceOf({ id: 'a', name: 'goose', becomes: 'part', children: [{ id: 'b', name: 'neck', becomes: 'part' }] }, [{ node: 'a', grams: 3700, accuracy: 1 }, { node: 'b', grams: 200, accuracy: 1 }]).balance.unaccounted // → 3500000
 * Source: own-computation (conservation of mass)
 */
export function balanceOf(root: BreakdownNode, weighings: readonly Weighing[]): BalancedNode {
  const byNode = new Map<string, Weighing[]>();
  const collect = (node: BreakdownNode): void => {
    if (byNode.has(node.id))
      throw new Contradiction(node.name, `the id ${JSON.stringify(node.id)} twice`, 'an id for each piece');
    byNode.set(node.id, []);
    node.children?.forEach(collect);
  };
  collect(root);
  weighings.forEach((weighing, index) => {
    const list = byNode.get(weighing.node);
    if (list === undefined)
      throw new OutOfRange(
        `weighings[${index}].node`,
        JSON.stringify(weighing.node),
        'a piece of this breakdown',
      );
    milligrams(weighing.grams, `weighings[${index}].grams`);
    milligrams(weighing.accuracy, `weighings[${index}].accuracy`);
    list.push(weighing);
  });
  return weigh(root, byNode, root.name).node;
}

function weigh(node: BreakdownNode, byNode: ReadonlyMap<string, Weighing[]>, path: string): Weighed {
  const made = byNode.get(node.id) ?? [];
  const last = made.at(-1);
  const cut = node.children ?? [];
  if (cut.length > 0 && node.becomes !== 'part')
    throw new Contradiction(path, `${node.becomes} that is cut on`, 'only a part is cut on');
  const children = cut.map((child) => weigh(child, byNode, `${path} › ${child.name}`));
  const known = children.reduce((sum, child) => sum + child.known, 0);
  const parts = children.reduce((sum, child) => sum + child.accuracy, 0);
  const own = last === undefined ? null : milligrams(last.grams, path);
  const allKnown = children.length > 0 && children.every((child) => child.node.mg !== null);
  const mg = own ?? (allKnown ? known : null);
  const accuracy = last === undefined ? parts : milligrams(last.accuracy, path);
  const balance =
    children.length === 0
      ? null
      : balanceAt(path, mg ?? known, children, own === null ? 0 : accuracy + parts);
  return {
    node: {
      id: node.id,
      name: node.name,
      becomes: node.becomes,
      mg,
      weighed: own !== null,
      superseded: made.slice(0, -1),
      balance,
      children: children.map((child) => child.node),
    },
    known: own ?? known,
    accuracy,
  };
}

function balanceAt(path: string, into: number, children: readonly Weighed[], tolerance: number): Balance {
  const of = (becomes: Becomes) =>
    children.filter(({ node }) => node.becomes === becomes).reduce((sum, { known }) => sum + known, 0);
  const [parts, drip, waste] = [of('part'), of('drip'), of('bone and waste')];
  const out = parts + drip + waste;
  const unaccounted = into - out;
  if (unaccounted < -tolerance)
    throw new OutOfRange(
      path,
      `pieces of ${gramsText(out)} together (${children.map(({ node, known }) => `${node.name} ${gramsText(known)}`).join(', ')})`,
      `at most ${gramsText(into)}, what it weighed, and ${gramsText(tolerance)} for the scales`,
    );
  return {
    in: into,
    parts,
    drip,
    waste,
    unaccounted,
    tolerance,
    notWeighed: children.filter(({ node }) => node.mg === null).map(({ node }) => node.name),
  };
}
