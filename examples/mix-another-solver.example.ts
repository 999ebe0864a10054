import { loadSolver } from '../src/contract/solver.ts';
import { formulate } from '../src/core/filling/formulate.ts';
import type { Example, Row } from './case.ts';
import { keptMixes } from './formulate-problems.ts';
import { kept } from './kept.ts';

export const example: Example = {
  title: 'Mixes made cheapest, leanest and least salty, beside another solver',
  story:
    'Fifty mixes of 5 to 21 invented foods, held to fat, protein, salt, water to protein and a share; thirty in any weight, twenty in steps of a scale and packs. A script writes each as a programme of its own and gives it to GLPK, in exact arithmetic where there are no whole numbers, to a gap of nothing where there are. Both must find the same value, or both that it is impossible. This is about the arithmetic: no food is like these.',
  equation: 'min Σ c·x,  L ≤ Σ a·x / Σ b·x ≤ H,  Σ x = total,  x a multiple of its step',
  sources: ['own-computation'],
  async run(): Promise<Row[]> {
    const theirs = kept('formulate');
    const solve = await loadSolver();
    return keptMixes().map((mix, k): Row => {
      const possible = theirs(`${k} possible`) === 1;
      const ours = formulate(mix, solve, { gap: 1e-9, seconds: 60 });
      const steps = mix.ingredients.some((c) => c.step !== undefined) ? ', in steps' : '';
      const common = { source: 'own-computation', confidence: 'computed' } as const;
      if (!possible)
        return {
          ...common,
          quantity: `mix ${k + 1}${steps}: impossible`,
          expected: 1,
          ours: ours.status === 'clash' ? 1 : 0,
          tolerance: 0,
          unit: '-',
          why: 'impossible by the other solver',
        };
      const expected = theirs(`${k} value`);
      const goal = mix.goals[0];
      return {
        ...common,
        quantity: `mix ${k + 1}${steps}`,
        expected,
        ours: ours.status === 'found' && ours.proven ? (ours.values[0] ?? Number.NaN) : Number.NaN,
        tolerance: 1e-6 * Math.max(1, Math.abs(expected)),
        unit: goal?.make === 'least' && goal.quantity.of === 'cost' ? 'minor units' : 'kg',
        why: 'the same problem by another method and program',
      };
    });
  },
};
