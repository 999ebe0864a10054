import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sources } from '../core/sources.ts';
import type { BreakdownOutcome, TreeNode } from './breakdown.ts';
import { isFifthQuarter } from './kept-of.ts';
import { publishedYield } from './published-yield.ts';
import { YieldsAnswer } from './yields.ts';
import { type FinishedBreakdown, yieldsFrom } from './yields-of.ts';

const node = (
  id: string,
  parent: string | null,
  becomes: TreeNode['becomes'],
  more: Partial<TreeNode> = {},
): TreeNode => ({
  id,
  parent,
  name: id,
  becomes,
  class: null,
  use: becomes === 'part' || becomes === 'step' ? 'menu' : 'thrown away',
  piecesPerAnimal: null,
  ...more,
});
const tree = [
  node('goose', null, 'step'),
  node('breast', 'goose', 'part'),
  node('neck', 'goose', 'step'),
  node('neck skin', 'neck', 'part'),
  node('neck bone', 'neck', 'bone'),
  node('drip', 'goose', 'drip'),
];

let made = 0;
/** Grams by place; a place that is not listed was not weighed. */
function cut(
  inGrams: number,
  grams: Record<string, number>,
  more: Partial<FinishedBreakdown> & Pick<Partial<BreakdownOutcome>, 'byAnimal'> = {},
): FinishedBreakdown {
  made += 1;
  const nodes = more.nodes ?? tree;
  const gramsOf = (n: TreeNode): number =>
    grams[n.id] ?? nodes.filter((m) => m.parent === n.id).reduce((sum, m) => sum + gramsOf(m), 0);
  const weighed = (n: TreeNode): boolean => {
    const pieces = nodes.filter((m) => m.parent === n.id);
    return grams[n.id] !== undefined || (pieces.length > 0 && pieces.every(weighed));
  };
  const leaves = nodes.filter((n) => n.becomes !== 'step');
  const out = leaves.reduce((sum, n) => sum + gramsOf(n), 0);
  const { byAnimal = null, ...rest } = more;
  return {
    id: `00000000-0000-7000-8000-${String(made).padStart(12, '0')}`,
    at: new Date(Date.UTC(2026, 0, made)).toISOString(),
    animals: 1,
    supplier: 'Low Marsh (invented)',
    cutter: 'Ida',
    nodes,
    outcome: {
      inGrams,
      outGrams: out,
      unaccountedGrams: inGrams - out,
      usedPct: 50,
      paid: null,
      costBy: 'weight',
      nodes: nodes.map((n) => ({
        node: n.id,
        name: n.name,
        becomes: n.becomes,
        grams: n.parent === null ? inGrams : gramsOf(n),
        weighed: n.parent === null || weighed(n),
        pieces: null,
        pct: 0,
        unaccountedGrams: 0,
        cost: null,
        lotId: null,
      })),
      byAnimal,
      warnings: [],
    },
    ...rest,
  };
}
const asked = { species: 'goose', valuePerKg: new Map<string, number>() };
const partOf = (answer: YieldsAnswer, name: string) => answer.parts.find((p) => p.part === name)!;

describe('yieldsFrom', () => {
  it('means, spread and interval by hand: 20 % and 24 % of two geese', () => {
    const answer = yieldsFrom([cut(4_000, { breast: 800 }), cut(5_000, { breast: 1_200 })], asked);
    const breast = partOf(answer, 'breast');
    expect(breast.meanPct).toBeCloseTo(22, 9);
    expect(breast.sdPct).toBeCloseTo(Math.sqrt(8), 9);
    // Student, one degree of freedom: 12.706 · 2.828/√2, held at 0.
    expect(breast.low95).toBe(0);
    expect(breast.high95).toBeCloseTo(22 + 12.7062 * 2, 3);
    expect(YieldsAnswer.parse(answer)).toEqual(answer);
  });
  it('what nobody weighed is no zero: it is not in the count', () => {
    const answer = yieldsFrom([cut(4_000, { breast: 800, drip: 40 }), cut(4_000, { breast: 840 })], asked);
    expect(partOf(answer, 'drip')).toMatchObject({ animals: 1, meanPct: 1 });
    expect(partOf(answer, 'breast').animals).toBe(2);
  });
  it('animals weighed one by one count one by one, together they count together', () => {
    const apart = cut(
      8_000,
      { breast: 1_700 },
      {
        animals: 2,
        byAnimal: [
          { animal: 1, inGrams: 4_000, grams: { breast: 800 } },
          { animal: 2, inGrams: 4_000, grams: { breast: 900 } },
        ],
      },
    );
    expect(partOf(yieldsFrom([apart], asked), 'breast')).toMatchObject({ animals: 2, weighings: 2 });
    const together = cut(8_000, { breast: 1_700 }, { animals: 2 });
    const one = partOf(yieldsFrom([together], asked), 'breast');
    expect(one).toMatchObject({ animals: 2, weighings: 1, sdPct: null, low95: null });
    expect(one.meanPct).toBeCloseTo(21.25, 9);
  });
  it('a piece is told in % of the animal and of what it is cut from', () => {
    const skin = partOf(yieldsFrom([cut(4_000, { 'neck skin': 90, 'neck bone': 110 })], asked), 'neck skin');
    expect(skin).toMatchObject({ from: 'neck', pctOfFrom: 45 });
    expect(skin.meanPct).toBeCloseTo(2.25, 9);
  });
  it('cut in one breakdown and left whole in another: both are told, nothing is refused', () => {
    const plain = [
      node('goose', null, 'step'),
      node('breast', 'goose', 'part'),
      node('neck', 'goose', 'part'),
    ];
    const answer = yieldsFrom(
      [cut(4_000, { 'neck skin': 90, 'neck bone': 110 }), cut(4_000, { neck: 220 }, { nodes: plain })],
      asked,
    );
    expect(partOf(answer, 'neck')).toMatchObject({ animals: 2 });
    expect(partOf(answer, 'neck').meanPct).toBeCloseTo(5.25, 9);
    expect(partOf(answer, 'neck skin').pctOfFrom).toBeCloseTo(45, 9);
  });
  it('a slip of the scale is told with its breakdown, and stays in', () => {
    const geese = [800, 810, 805, 795, 790, 1_900].map((breast) => cut(4_000, { breast }));
    const answer = yieldsFrom(geese, asked);
    expect(answer.apart).toEqual([
      expect.objectContaining({ breakdownId: geese[5]!.id, part: 'breast', pct: 47.5 }),
    ]);
    expect(partOf(answer, 'breast').animals).toBe(6);
  });
  it('a cutter who gets better is told from five weighings, one who does not is not', () => {
    const geese = [1, 2, 3, 4, 5, 6, 7, 8].map((i) =>
      cut(4_000, { breast: Math.round(760 + 40 * Math.log2(i)), drip: i % 2 === 0 ? 40 : 42 }),
    );
    const { learning } = yieldsFrom(geese, asked);
    expect(learning.find((l) => l.part === 'breast')).toMatchObject({ cutter: 'Ida', verdict: 'rising' });
    expect(learning.find((l) => l.part === 'drip')?.verdict).toBe('not shown');
    expect(yieldsFrom(geese.slice(0, 4), asked).learning).toEqual([]);
  });
  it('what was brought in says nothing of a hand', () => {
    const geese = [1, 2, 3, 4, 5, 6].map((i) => cut(4_000, { breast: 700 + 30 * i }, { cutter: null }));
    const answer = yieldsFrom(geese, { ...asked, part: 'breast' });
    expect(answer.learning).toEqual([]);
    expect(answer.groups.filter((g) => g.by === 'cutter')).toEqual([]);
    expect(answer.weighings.every((w) => w.cutter === 'not known')).toBe(true);
    expect(partOf(answer, 'breast').animals).toBe(6);
  });
  it('the published figure stands beside it, counts only when asked, and pulls the centre its way', () => {
    const geese = [0.24, 0.25, 0.26].map((share) => cut(4_000, { breast: 4_000 * share }));
    const alone = partOf(yieldsFrom(geese, asked), 'breast');
    const figure = publishedYield('goose', 'breast')!;
    expect(figure.comparable).toBe(true);
    expect(alone.published).toMatchObject({ pct: figure.row.pct, countedAs: 0 });
    const helped = partOf(yieldsFrom(geese, { ...asked, publishedAnimals: 20 }), 'breast');
    expect(helped.published?.countedAs).toBe(20);
    expect(Math.abs(helped.centrePct - figure.row.pct)).toBeLessThan(
      Math.abs(alone.centrePct - figure.row.pct),
    );
    expect(helped.meanPct).toBe(alone.meanPct);
  });
  it('a figure of the live weight is shown and never counted', () => {
    const feet = publishedYield('goose', 'feet')!;
    expect(feet.of).toBe('live weight');
    expect(feet.comparable).toBe(false);
  });
  it('the single weighings of a part, with how many its cutter had cut', () => {
    const { weighings } = yieldsFrom(
      [
        cut(4_000, { breast: 800 }),
        cut(8_000, { breast: 1_600 }, { animals: 2 }),
        cut(4_000, { breast: 820 }),
      ],
      { ...asked, part: 'Breast' },
    );
    expect(weighings.map((w) => w.count)).toEqual([1, 2.5, 4]);
    expect(weighings.map((w) => w.pct)).toEqual([20, 20, 20.5]);
  });
  it('kept from the bin: what is no dressed meat and was used, with its worth where that is known', () => {
    const { kept } = yieldsFrom([cut(4_000, { breast: 800, 'neck skin': 90, 'neck bone': 110 })], {
      ...asked,
      valuePerKg: new Map([['neck skin', 300]]),
    });
    expect(kept).toMatchObject({ kg: 0.09, parts: ['neck skin'], worth: 27, unpriced: [] });
    expect(kept.meaning).toMatch(/proxy/i);
    expect(yieldsFrom([cut(4_000, { 'neck skin': 90 })], asked).kept).toMatchObject({
      worth: null,
      unpriced: ['neck skin'],
    });
  });
  it('no weights, any weights: shares lie between 0 and 100 and every answer keeps its contract', () => {
    expect(YieldsAnswer.parse(yieldsFrom([], asked)).parts).toEqual([]);
    const grams = fc.integer({ min: 0, max: 1_000 });
    fc.assert(
      fc.property(fc.array(fc.tuple(grams, grams, grams), { minLength: 1, maxLength: 12 }), (list) => {
        const answer = yieldsFrom(
          list.map(([breast, skin, bone]) => cut(3_000, { breast, 'neck skin': skin, 'neck bone': bone })),
          asked,
        );
        YieldsAnswer.parse(answer);
        for (const p of answer.parts) {
          expect(p.meanPct).toBeGreaterThanOrEqual(0);
          expect(p.meanPct).toBeLessThanOrEqual(100);
        }
      }),
    );
  });
  it('everything that it rests on is in the bibliography', () => {
    const { basis } = yieldsFrom([cut(4_000, { breast: 800 })], { ...asked, publishedAnimals: 5 });
    for (const b of basis) expect(sources[b.source], b.source).toBeDefined();
  });
});

describe('isFifthQuarter', () => {
  it.each([
    ['neck skin', null, true],
    ['liver', 'offal', true],
    ['hind trotters', 'red meat', true],
    ['breast', 'poultry', false],
    ['loin', 'red meat', false],
    ['headless loin', 'red meat', false],
  ] as const)('%s (%s): %s', (name, limits, is) => expect(isFifthQuarter(name, limits)).toBe(is));
});
