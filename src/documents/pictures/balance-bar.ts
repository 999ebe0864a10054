/**
 * The balance of a breakdown as one bar that closes: as long as what went in, filled from the left by what has come out,
 * what is in none of it dashed at the end.
 */
import type { TreeNode } from '../../contract/breakdown.ts';
import { formatQuantity, plainNumber, type UnitSystem } from '../../core/units.ts';
import { labelRows } from './carcass-bar.ts';
import type { Mark, Scene } from './scene.ts';
import { textWidth } from './text-fit.ts';

export type BalanceKind = 'parts' | 'sold' | 'drip' | 'bone' | 'bin' | 'by-product' | 'unaccounted';

export interface BalancePiece {
  readonly kind: BalanceKind;
  readonly grams: number;
}

const order: readonly BalanceKind[] = ['parts', 'sold', 'bone', 'drip', 'bin', 'by-product', 'unaccounted'];
const words: Readonly<Record<BalanceKind, string>> = {
  parts: 'parts',
  sold: 'sold',
  bone: 'bone',
  drip: 'drip',
  bin: 'thrown away',
  'by-product': 'by-product',
  unaccounted: 'not accounted for',
};

export const balanceKindOf = (becomes: TreeNode['becomes']): BalanceKind | null =>
  becomes === 'step' ? null : becomes === 'part' ? 'parts' : becomes;

/** What went in and what came out, in words: the same in the picture, beside it and for who cannot see it. */
export function balanceWords(inGrams: number, pieces: readonly BalancePiece[], units: UnitSystem): string {
  const known = inGrams === 0 ? '' : ` of ${formatQuantity(inGrams, 'mass', units)} in`;
  return pieces
    .filter((p) => Math.abs(p.grams) >= 0.5 || p.kind === 'unaccounted')
    .map((p, i) => `${formatQuantity(p.grams, 'mass', units)} ${words[p.kind]}${i === 0 ? known : ''}`)
    .join(', ');
}

function block(kind: BalanceKind, x: number, y: number, w: number, h: number): Mark {
  const points: [number, number][] = [
    [x, y],
    [x + w, y],
    [x + w, y + h],
    [x, y + h],
  ];
  if (kind === 'parts') return { kind: 'polygon', points, fill: 'ink', stroke: { ink: 'paper', width: 1 } };
  if (kind === 'sold') return { kind: 'polygon', points, fill: 'slate', stroke: { ink: 'paper', width: 1 } };
  if (kind === 'bone')
    return { kind: 'polygon', points, fill: 'ink', hatch: true, stroke: { ink: 'ink', width: 1 } };
  if (kind === 'drip')
    return { kind: 'polygon', points, fill: 'slate', hatch: true, stroke: { ink: 'slate', width: 1 } };
  if (kind === 'unaccounted')
    return { kind: 'polygon', points, stroke: { ink: 'ember', width: 1.5, dash: [4, 4] } };
  return { kind: 'polygon', points, stroke: { ink: 'ink', width: 1 } };
}

export interface BalanceBarOptions {
  readonly width: number;
  readonly height?: number;
  readonly units: UnitSystem;
}

/** The bar. What is heavier than what went in, within the scales, is no segment: it is said in words beside it. */
export function balanceBarScene(
  inGrams: number,
  pieces: readonly BalancePiece[],
  { width, height = 44, units }: BalanceBarOptions,
): Scene {
  const shown = order.flatMap((kind) => {
    const grams = pieces.filter((p) => p.kind === kind).reduce((sum, p) => sum + p.grams, 0);
    return grams > 0 ? [{ kind, grams }] : [];
  });
  const total = Math.max(
    inGrams,
    shown.reduce((sum, p) => sum + p.grams, 0),
    1,
  );
  const percent = (grams: number) => (inGrams > 0 ? ` ${plainNumber((100 * grams) / inGrams, 1)} %` : '');
  const size = 13;
  const top = 2;
  const marks: Mark[] = [];
  let x = 0;
  const middles = shown.map(({ kind, grams }) => {
    const w = (width * grams) / total;
    marks.push(block(kind, x, top, w, height));
    x += w;
    return x - w / 2;
  });
  const texts = shown.map(
    (p) => `${words[p.kind]} ${formatQuantity(p.grams, 'mass', units)}${percent(p.grams)}`,
  );
  const labels = labelRows(
    texts.map((t, i) => ({ at: middles[i]!, width: textWidth(t, size) })),
    width,
  );
  labels.forEach((label, i) => {
    const y = top + height + 18 + label.row * 18;
    marks.push({
      kind: 'polyline',
      points: [
        [middles[i]!, top + height],
        [Math.min(Math.max(middles[i]!, label.from + 2), label.to - 2), y - 11],
      ],
      stroke: { ink: 'faded', width: 0.75 },
    });
  });
  labels.forEach((label, i) => {
    const y = top + height + 18 + label.row * 18;
    // Paper behind the words, so that a line to a lower one does not strike them through.
    marks.push(
      {
        kind: 'polygon',
        points: [
          [label.from, y - 11],
          [label.to, y - 11],
          [label.to, y + 3],
          [label.from, y + 3],
        ],
        fill: 'paper',
      },
      { kind: 'text', x: label.from, y, text: texts[i]!, size, ink: 'ink' },
    );
  });
  const rows = labels.reduce((most, l) => Math.max(most, l.row + 1), 0);
  return {
    width,
    height: top + height + 10 + rows * 18,
    title: balanceWords(inGrams, shown, units),
    marks,
    table: {
      head: ['What', 'Weight', 'Of what went in'],
      rows: shown.map((p) => [
        words[p.kind],
        formatQuantity(p.grams, 'mass', units),
        percent(p.grams).trim(),
      ]),
    },
  };
}
