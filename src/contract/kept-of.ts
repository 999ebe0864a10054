/** What was used of an animal and is no dressed meat: its weight, its worth, and the greenhouse gas that such parts stand for. */
import { keptFromBin } from '../core/carcass/kept-from-bin.ts';
import type { BreakdownOutcome, TreeNode } from './breakdown.ts';
import { animalOf } from './tree-edit.ts';
import type { YieldsAnswer } from './yields.ts';

const organs: readonly TreeNode['class'][] = ['offal', 'blood', 'fat and bone'];
const fifth =
  /\b(heads?|necks?|feet|foot|trotters?|hocks?|tails?|ears?|cheeks?|snouts?|jowls?|skins?|rinds?|combs?|wattles?|tongues?|caul|roe|bones?|fat|suet|giblets?|oysters|parson’s nose|wing tips?|collars?)\b/;

/** What a kitchen that sells only meat would have thrown away: head, neck, feet, tail, skin, offal, blood, fat and bone. */
export const isFifthQuarter = (name: string, limits: TreeNode['class']): boolean =>
  organs.includes(limits) || fifth.test(name.toLowerCase());

const round = (kg: number) => Math.round(kg * 1e6) / 1e6;

/** `valuePerKg`: what a kilogram is worth by the name of the part, lower case [minor units]. */
export function keptOf(
  breakdowns: readonly { readonly nodes: readonly TreeNode[]; readonly outcome: BreakdownOutcome }[],
  species: string,
  valuePerKg: ReadonlyMap<string, number>,
): YieldsAnswer['kept'] {
  const kg = new Map<string, number>();
  for (const { nodes, outcome } of breakdowns) {
    const byId = new Map(outcome.nodes.map((n) => [n.node, n]));
    for (const n of nodes) {
      const used = (n.becomes === 'part' && n.use !== 'thrown away') || n.becomes === 'sold';
      const grams = byId.get(n.id)?.grams ?? 0;
      if (used && grams > 0 && isFifthQuarter(n.name, n.class))
        kg.set(n.name.toLowerCase(), (kg.get(n.name.toLowerCase()) ?? 0) + grams / 1000);
    }
  }
  const total = round([...kg.values()].reduce((a, b) => a + b, 0));
  const priced = [...kg].filter(([name]) => valuePerKg.has(name));
  const gas = keptFromBin(animalOf(species), Math.min(total, 1e6));
  return {
    kg: total,
    parts: [...kg.keys()],
    worth:
      priced.length === 0
        ? null
        : Math.round(priced.reduce((sum, [name, x]) => sum + x * (valuePerKg.get(name) ?? 0), 0)),
    unpriced: [...kg.keys()].filter((name) => !valuePerKg.has(name)),
    kgCO2e: gas?.kgCO2e ?? null,
    perKg: gas?.perKg ?? null,
    meaning: gas?.meaning ?? null,
  };
}
