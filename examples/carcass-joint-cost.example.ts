import {
  type CostedNode,
  type CostRule,
  jointCost,
  type PieceMoney,
} from '../src/core/carcass/joint-cost.ts';
import { type BreakdownNode, balanceOf } from '../src/core/carcass/mass-balance.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const part = (id: string, children?: readonly BreakdownNode[]): BreakdownNode => ({
  id,
  name: id,
  becomes: 'part',
  ...(children === undefined ? {} : { children }),
});
const goose = part('goose', [
  part('legs'),
  part('crown', [part('breasts'), { id: 'frame', name: 'frame', becomes: 'bone and waste' }]),
  part('neck'),
  part('feet'),
]);
const grams = { goose: 3700, legs: 803, crown: 2601, breasts: 1107, frame: 1490, neck: 213, feet: 51 };
/** Pence a kilogram; the frame costs money to be rid of. */
const money: Record<string, PieceMoney> = {
  legs: { pricePerKg: 1400 },
  breasts: { pricePerKg: 2500 },
  neck: { pricePerKg: 300 },
  feet: { pricePerKg: 0 },
  frame: { pricePerKg: -40 },
};
const rules: readonly CostRule[] = [
  { by: 'weight' },
  { by: 'value' },
  { by: 'shares', shares: { legs: 2, breasts: 7, neck: 1, feet: 0 } },
];

const flat = (node: CostedNode): CostedNode[] => [node, ...node.children.flatMap(flat)];

export const example: Example = {
  title: 'A goose for 42.37, shared out three ways',
  story:
    'One goose (invented) is weighed whole and cut; its frame costs money to be rid of. Its cost is carried to the parts by weight, by what they would bring and by the chef’s own shares. The other side does the same in exact fractions. Every rule sums to the penny, and the neck costs 2.46, 0.69 or 4.24: no rule is true, so the rule stands beside the figure.',
  equation:
    'cost of a part = (cost of its whole + disposal − credits) · w / Σ w, to whole pence by largest remainder',
  sources: ['own-computation'],
  run(): Row[] {
    const theirs = kept('carcass');
    const balanced = balanceOf(
      goose,
      Object.entries(grams).map(([node, g]) => ({ node, grams: g, accuracy: 0.5 })),
    );
    const row = (quantity: string, expected: number, ours: number, unit: string, why: string): Row => ({
      quantity,
      source: 'own-computation',
      expected,
      ours,
      tolerance: 0,
      unit,
      why,
      confidence: 'computed',
    });
    const rows = rules.flatMap((rule) => {
      const pieces = flat(jointCost(balanced, 4237, rule, money));
      const leaves = pieces.filter((p) => p.children.length === 0);
      return [
        ...pieces.map((p) =>
          row(
            `${rule.by} ${p.name}`,
            theirs(`${rule.by} ${p.name}`),
            p.cost,
            'pence',
            'whole pence: nothing to allow',
          ),
        ),
        row(
          `${rule.by}: all that is not cut on`,
          4237,
          leaves.reduce((sum, p) => sum + p.cost, 0),
          'pence',
          'closes to the penny',
        ),
      ];
    });
    return [
      row(
        'unaccounted for at the goose',
        3700 - 803 - 2601 - 213 - 51,
        (balanced.balance?.unaccounted ?? Number.NaN) / 1000,
        'g',
        'a sum of whole grams',
      ),
      ...rows,
    ];
  },
};
