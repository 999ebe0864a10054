/** Eight weeks of geese: six birds a delivery, one delivery refused. All invented. */
import type { DemoBreakdown, DemoPastBreakdowns } from '../../src/app/demo-animals-shape.ts';
import { geese, ines, tobin } from './names.ts';
import { goose, nodesOf } from './trees.ts';
import { animalsOf, cutUp, learner, steady } from './weights.ts';

export interface GooseWeek {
  readonly daysAgo: number;
  readonly code: string;
  readonly birds: readonly number[];
  readonly cutter: string;
  /** Cut with this program, or before it, into a notebook. */
  readonly here: boolean;
}

const week = (daysAgo: number, code: string, cutter: string, here = false): GooseWeek => ({
  daysAgo,
  code,
  birds: animalsOf(6, 4_480, 240, daysAgo),
  cutter,
  here,
});

export const gooseWeeks: readonly GooseWeek[] = [
  week(57, 'G-0188', ines),
  week(50, 'G-0190', ines),
  week(43, 'G-0192', ines),
  week(36, 'G-0194', ines),
  week(29, 'G-0196', ines),
  week(15, 'G-0200', tobin, true),
  week(8, 'G-0204', ines, true),
  week(1, 'G-0208', tobin, true),
];

/** How many birds this hand had cut before that week. */
const before = (w: GooseWeek): number =>
  gooseWeeks
    .filter((x) => x.cutter === w.cutter && x.daysAgo > w.daysAgo)
    .reduce((n, x) => n + x.birds.length, 0);

const cut = (w: GooseWeek) =>
  w.birds.map((grams, i) => ({
    grams,
    parts: cutUp(goose, grams, w.daysAgo * 7 + i, w.cutter === tobin ? learner(before(w) + i + 1) : steady),
  }));

const becomes = new Map(goose.cuts.map(([name, , b]) => [name, b]));
/** The notebook had columns for what was kept or thrown away; it knew no steps. */
const notebook = (name: string): 'part' | 'by-product' =>
  becomes.get(name) === 'part' ? 'part' : 'by-product';

export const pastGeese: DemoPastBreakdowns = {
  species: 'goose',
  supplier: geese,
  by: ines,
  at: { daysAgo: 16, clock: '15:20' },
  note: 'From the notebook by the scale, bird by bird.',
  rows: gooseWeeks
    .filter((w) => !w.here)
    .flatMap((w) =>
      cut(w).map(({ grams, parts }, i) => ({
        at: { daysAgo: w.daysAgo, clock: `14:${String(5 + i * 8).padStart(2, '0')}` },
        animals: 1,
        inGrams: grams,
        parts: parts.map((p) => ({ ...p, becomes: notebook(p.name) })),
      })),
    ),
};

export const gooseBreakdowns: readonly DemoBreakdown[] = gooseWeeks
  .filter((w) => w.here)
  .map((w) => ({
    species: 'goose',
    lots: [{ code: w.code, grams: null }],
    animals: w.birds.length,
    nodes: nodesOf(goose),
    cutter: w.cutter,
    at: { daysAgo: w.daysAgo, clock: '13:30' },
    weighings: cut(w).flatMap(({ grams, parts }, i) => [
      { animal: i + 1, node: 'goose', grams },
      ...parts.map((p) => ({ animal: i + 1, node: p.name, grams: p.grams })),
    ]),
    finished: { min: 95, costBy: 'value', note: '' },
  }));
