/** The demo kitchen's Animals, put together. */
import type { DemoAnimals } from '../../src/app/demo-animals-shape.ts';
import { deliveries } from './deliveries.ts';
import { gooseBreakdowns, pastGeese } from './geese.ts';
import { moves } from './moves.ts';
import { tobin, wren } from './names.ts';
import { otherBreakdowns, pastOthers } from './others.ts';
import { gooseHeadQuestion } from './question.ts';
import { specifications } from './specifications.ts';
import { goose, lamb, nodesOf, pig, rabbit } from './trees.ts';

export const animals: DemoAnimals = {
  trees: [goose, pig, lamb, rabbit].map((animal, i) => ({
    species: animal.species,
    name: animal.tree,
    nodes: nodesOf(animal),
    by: i < 2 ? wren : tobin,
    at: { daysAgo: 16, clock: `14:${String(10 + i * 5)}` },
  })),
  specifications,
  deliveries,
  past: [pastGeese, ...pastOthers],
  breakdowns: [...gooseBreakdowns, ...otherBreakdowns],
  moves,
  questions: [gooseHeadQuestion],
};
