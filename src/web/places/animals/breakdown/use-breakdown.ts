/** One breakdown on screen: what the server has, with what this device has not sent yet laid over it. */
import { useMemo } from 'react';
import { v7 as newId } from 'uuid';
import type { Breakdown, TreeNode, WeighingInput } from '../../../../contract/breakdown.ts';
import {
  balanceOfTree,
  type NodeWeight,
  standingLines,
  standingWeights,
} from '../../../../contract/breakdown-balance.ts';
import { OutOfRange } from '../../../../core/errors.ts';
import { type BalancePiece, balanceKindOf } from '../../../../documents/pictures/balance-bar.ts';
import { useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { whoSigns } from '../../../person.ts';
import { keepAndSend, useOutbox } from '../../line/outbox-driver.ts';

export interface Line extends WeighingInput {
  readonly by: string;
  readonly sending: 'sent' | 'waiting' | 'refused';
  readonly refusal: string | null;
}

export interface Live {
  readonly inGrams: number;
  readonly pieces: readonly BalancePiece[];
  readonly unaccountedGrams: number;
  /** Grams of each place; null where nobody weighed it. */
  readonly grams: ReadonlyMap<string, number | null>;
  /** What stands in the way, in words; null when it holds together. */
  readonly wrong: string | null;
}

export function useBreakdown(breakdownId: string) {
  const kitchen = useKitchen();
  const query = useOperation('breakdown', { params: { kitchenId: kitchen.id, breakdownId } });
  const outbox = useOutbox();
  const breakdown = query.data ?? null;
  const lines = useMemo(() => {
    if (breakdown === null) return [];
    const known = new Set(breakdown.weighings.map((w) => w.id));
    return [
      ...breakdown.weighings.map((w): Line => ({ ...w, sending: 'sent', refusal: null })),
      ...outbox.entries.flatMap((e): Line[] =>
        e.kind === 'weighing' && e.batchId === breakdownId && !known.has(e.id)
          ? [
              {
                ...e.weighing,
                by: e.personName,
                sending: e.refused === null ? 'waiting' : 'refused',
                refusal: e.refused,
              },
            ]
          : [],
      ),
    ];
  }, [breakdown, outbox.entries, breakdownId]);
  const standing = useMemo(() => standingLines(lines.filter((l) => l.sending !== 'refused')), [lines]);
  const live = useMemo(
    () => (breakdown === null ? null : liveOf(breakdown, standing)),
    [breakdown, standing],
  );
  return { kitchen, query, breakdown, lines, standing, live };
}

/** What went on the table by the lots [g]. */
export const lotsGrams = (b: Pick<Breakdown, 'lots'>): number => b.lots.reduce((sum, l) => sum + l.grams, 0);

/** The balance with these lines in it. */
export function liveOf(
  breakdown: Pick<Breakdown, 'nodes' | 'lots'>,
  standing: readonly WeighingInput[],
): Live {
  const weights = standingWeights(standing);
  const { nodes } = breakdown;
  const root = nodes.find((n) => n.parent === null);
  const inGrams = (root === undefined ? undefined : weights.get(root.id)?.grams) ?? lotsGrams(breakdown);
  let wrong: string | null = null;
  const grams = new Map<string, number | null>();
  try {
    const { byId } = balanceOfTree(nodes, lotsGrams(breakdown), weights);
    for (const [id, b] of byId) grams.set(id, b.mg === null ? null : b.mg / 1000);
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    wrong = tooHeavy(breakdown, weights);
    for (const n of nodes) grams.set(n.id, weights.get(n.id)?.grams ?? null);
  }
  const pieces = nodes.flatMap((n): BalancePiece[] => {
    const kind = balanceKindOf(n.becomes);
    const g = grams.get(n.id) ?? null;
    return kind === null || g === null ? [] : [{ kind, grams: g }];
  });
  const out = pieces.reduce((sum, p) => sum + p.grams, 0);
  const unaccountedGrams = Math.round((inGrams - out) * 1000) / 1000;
  return {
    inGrams,
    pieces: [...pieces, { kind: 'unaccounted', grams: Math.max(0, unaccountedGrams) }],
    unaccountedGrams,
    grams,
    wrong,
  };
}

/** Which piece its own pieces outweigh, in words. */
function tooHeavy(
  breakdown: Pick<Breakdown, 'nodes' | 'lots'>,
  weights: ReadonlyMap<string, NodeWeight>,
): string {
  const { nodes } = breakdown;
  const own = (n: TreeNode): number | null =>
    weights.get(n.id)?.grams ?? (n.parent === null ? lotsGrams(breakdown) : null);
  const known = (n: TreeNode): number =>
    own(n) ?? nodes.filter((m) => m.parent === n.id).reduce((sum, m) => sum + known(m), 0);
  for (const n of [...nodes].reverse()) {
    const whole = own(n);
    const pieces = nodes.filter((m) => m.parent === n.id).reduce((sum, m) => sum + known(m), 0);
    if (whole !== null && pieces > whole + nodes.length)
      return `${Number((pieces / 1000).toFixed(3))} kg of pieces would come from a ${n.name} of ${Number((whole / 1000).toFixed(3))} kg.`;
  }
  return 'the pieces would be heavier than what they came from.';
}

export interface Written {
  readonly node: string;
  readonly animal: number | null;
  readonly grossGrams: number;
  readonly tareGrams: number;
  readonly pieces: number | null;
  readonly corrects?: string;
  readonly takenBack?: boolean;
}

export const asWeighing = (w: Written): WeighingInput => ({
  id: newId(),
  node: w.node,
  animal: w.animal,
  grossGrams: w.grossGrams,
  tareGrams: w.tareGrams,
  pieces: w.pieces,
  corrects: w.corrects ?? null,
  takenBack: w.takenBack ?? false,
  at: new Date().toISOString(),
});

/** Keeps a weighing on this device and sends it; resolves when the device has it. */
export function useScale(breakdownId: string): (weighing: WeighingInput) => Promise<void> {
  const kitchen = useKitchen();
  const people = useOperation('people', { params: { kitchenId: kitchen.id } });
  return async (weighing) => {
    const personId = await whoSigns(kitchen.id);
    const personName = people.data?.find((p) => p.id === personId)?.name ?? 'the person at this device';
    keepAndSend(
      { kitchenId: kitchen.id, batchId: breakdownId, personId, personName },
      { kind: 'weighing', weighing },
    );
  };
}
