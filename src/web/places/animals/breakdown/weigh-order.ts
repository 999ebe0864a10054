/** In which order the scale is read, and what a typed line means. Pure. */
import type { TreeNode } from '../../../../contract/breakdown.ts';
import { inUnit, parseQuantity, type UnitSystem, usualUnit } from '../../../../core/units.ts';

/** All animals of a part in one go; one animal from end to end; or a part of every animal before the next part. */
export type Way = 'together' | 'animal by animal' | 'part by part';

export interface Item {
  readonly key: string;
  readonly node: TreeNode;
  /** Counted from 1; null: all together. */
  readonly animal: number | null;
}

const item = (node: TreeNode, animal: number | null): Item => ({
  key: `${node.id}#${animal ?? ''}`,
  node,
  animal,
});

/** What is asked for, in order. Pieces that are cut on are asked only if wanted: their weight is the sum of what they give. */
export function itemsOf(
  nodes: readonly TreeNode[],
  animals: number,
  way: Way,
  wanted: { readonly whole: boolean; readonly cuts: boolean },
): Item[] {
  const asked = nodes.filter((n) =>
    n.parent === null ? wanted.whole : n.becomes === 'step' ? wanted.cuts : true,
  );
  if (way === 'together' || animals === 1) return asked.map((n) => item(n, null));
  const each = Array.from({ length: animals }, (_, i) => i + 1);
  return way === 'part by part'
    ? asked.flatMap((n) => each.map((a) => item(n, a)))
    : each.flatMap((a) => asked.map((n) => item(n, a)));
}

/** The next item that has no weight, after the one at hand and then from the top; null when all have one. */
export function nextOpen(
  items: readonly Item[],
  after: string | null,
  weighed: ReadonlySet<string>,
): string | null {
  const from = after === null ? -1 : items.findIndex((i) => i.key === after);
  const order = [...items.slice(from + 1), ...items.slice(0, Math.max(0, from + 1))];
  return order.find((i) => !weighed.has(i.key))?.key ?? null;
}

/** One up or down, stopping at the ends. */
export function beside(items: readonly Item[], at: string | null, by: -1 | 1): string | null {
  const i = items.findIndex((x) => x.key === at);
  return items[Math.min(items.length - 1, Math.max(0, i === -1 ? 0 : i + by))]?.key ?? null;
}

export type ReadWeight =
  | { readonly ok: true; readonly grossGrams: number; readonly sum: boolean }
  | { readonly ok: false; readonly message: string };

/** Sixty tonnes are not on a kitchen's table. */
const most = 10_000_000;

/** A weight as typed, arithmetic and units allowed, in grams to the tenth of a milligram. */
export function readWeight(text: string, system: UnitSystem): ReadWeight {
  const unit = usualUnit('mass', system);
  const parsed = parseQuantity(text.trim().replace(/[+\-−×÷*/.]$/, ''), 'mass', unit);
  if (!parsed.ok) return { ok: false, message: parsed.message };
  const grams = Number(parsed.value.toFixed(3));
  if (grams < 0) return { ok: false, message: 'Below nothing: check the sign.' };
  if (grams > most) return { ok: false, message: 'More than ten tonnes is not on this table.' };
  return { ok: true, grossGrams: grams, sum: /[0-9)]\s*[+\-−×÷*/]\s*[0-9(]/.test(text) };
}

/** Grams as they are typed in the kitchen's unit. */
export const asTyped = (grams: number, system: UnitSystem): string =>
  String(Number(inUnit(grams, 'mass', usualUnit('mass', system)).toFixed(2)));

export interface Container {
  readonly name: string;
  readonly grams: number;
}

/** The next held container: none, then each in turn. */
export const nextHeld = (containers: readonly Container[], held: number | null): number | null => {
  const next = held === null ? 0 : held + 1;
  return next < containers.length ? next : null;
};

/** A container of this weight is held from now on: the same one again, or a new one. */
export function holdTare(
  containers: readonly Container[],
  grams: number,
): { containers: readonly Container[]; held: number | null } {
  if (grams <= 0) return { containers, held: null };
  const there = containers.findIndex((c) => Math.abs(c.grams - grams) < 0.05);
  if (there !== -1) return { containers, held: there };
  const name = `Tray ${containers.length + 1}`;
  return { containers: [...containers, { name, grams }], held: containers.length };
}
