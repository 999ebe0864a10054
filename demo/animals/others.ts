/** Pigs, lambs and rabbits cut up, now and before. All invented. */
import type { DemoBreakdown, DemoPastBreakdowns } from '../../src/app/demo-animals-shape.ts';
import type { DemoMoment } from '../../src/app/demo-shape.ts';
import { estate, farm, ines, lambs, tobin } from './names.ts';
import { type Animal, idOf, lamb, nodesOf, pig, rabbit } from './trees.ts';
import { cutUp, wobble } from './weights.ts';

const cutHere = (
  animal: Animal,
  lot: { readonly code: string; readonly grams: number; readonly animals: number; readonly of?: number },
  cutter: string,
  at: DemoMoment,
  seed: number,
): DemoBreakdown => ({
  species: animal.species,
  lots: [{ code: lot.code, grams: lot.of ?? null }],
  animals: lot.animals,
  nodes: nodesOf(animal),
  cutter,
  at,
  weighings: cutUp(animal, lot.grams, seed).map((p) => ({
    animal: null,
    node: idOf(p.name),
    grams: p.grams,
  })),
  finished: { min: 70, costBy: 'weight', note: '' },
});

const past = (
  animal: Animal,
  supplier: string,
  by: string,
  clock: string,
  days: readonly number[],
  mean: number,
): DemoPastBreakdowns => ({
  species: animal.species,
  supplier,
  by,
  at: { daysAgo: 16, clock },
  note: 'From the notebook by the scale.',
  rows: days.map((daysAgo) => {
    const inGrams = Math.round(mean * (1 + 0.04 * wobble(daysAgo)));
    return {
      at: { daysAgo, clock: '14:10' },
      animals: 1,
      inGrams,
      parts: cutUp(animal, inGrams, daysAgo * 13).map((p) => ({
        ...p,
        becomes: animal.cuts.some(([name, , b]) => name === p.name && b === 'part') ? 'part' : 'by-product',
      })),
    };
  }),
});

export const pastOthers: readonly DemoPastBreakdowns[] = [
  past(pig, farm, ines, '15:22', [78, 57], 78_000),
  past(pig, farm, tobin, '15:42', [71, 64, 50, 36], 78_000),
  past(lamb, lambs, ines, '15:24', [60, 46, 32], 17_600),
  past(lamb, lambs, tobin, '15:44', [53, 39], 17_600),
  past(rabbit, estate, tobin, '15:46', [44, 43, 42, 37, 36, 30], 1_310),
];

const rabbits = cutHere(
  rabbit,
  { code: 'R-0051', grams: 2_600, animals: 2, of: 2_600 },
  tobin,
  { daysAgo: 0, clock: '08:10' },
  77,
);

export const otherBreakdowns: readonly DemoBreakdown[] = [
  cutHere(lamb, { code: 'L-0088', grams: 17_640, animals: 1 }, tobin, { daysAgo: 8, clock: '10:30' }, 3),
  cutHere(pig, { code: 'P-0420', grams: 78_200, animals: 1 }, ines, { daysAgo: 1, clock: '10:00' }, 5),
  cutHere(
    rabbit,
    { code: 'R-0051', grams: 2_600, animals: 2, of: 2_600 },
    ines,
    { daysAgo: 1, clock: '15:20' },
    76,
  ),
  // On the table now: legs and saddles are weighed, the rest is not.
  {
    species: rabbits.species,
    lots: rabbits.lots,
    animals: rabbits.animals,
    nodes: rabbits.nodes,
    cutter: rabbits.cutter,
    at: rabbits.at,
    weighings: rabbits.weighings.slice(0, 2),
  },
];
