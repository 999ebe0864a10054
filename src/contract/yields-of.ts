/** From finished breakdowns to yields: the engine's statistics, the published figure beside them, what was kept from the bin. */
import type { SharePrior } from '../core/carcass/yield-estimate.ts';
import { type Basis, cite } from '../core/sources.ts';
import type { BreakdownOutcome, TreeNode } from './breakdown.ts';
import type { AnimalInput, CarveInput } from './carve-input.ts';
import { usualPrecisionPct, yieldsOf } from './carve-yields.ts';
import { keptOf } from './kept-of.ts';
import { type PublishedYield, publishedYield } from './published-yield.ts';
import type { YieldPart, YieldsAnswer } from './yields.ts';

export interface FinishedBreakdown {
  readonly id: string;
  readonly at: string;
  readonly animals: number;
  readonly supplier: string | null;
  /** Null where nobody is named: what was brought in says nothing of whose hand it was. */
  readonly cutter: string | null;
  readonly nodes: readonly TreeNode[];
  readonly outcome: BreakdownOutcome;
}

export interface YieldsAsked {
  readonly species: string;
  readonly precisionPct?: number | undefined;
  readonly publishedAnimals?: number | undefined;
  readonly part?: string | undefined;
  /** What a kilogram is worth by the name of the part, lower case [minor units]. */
  readonly valuePerKg: ReadonlyMap<string, number>;
}

/** A kitchen's scale shows whole grams. */
const accuracyG = 1;

interface Weighed {
  readonly breakdown: FinishedBreakdown;
  readonly input: AnimalInput;
}

interface Place {
  readonly name: string;
  readonly node: TreeNode;
  readonly from: string | null;
}

/** The places of a tree that count as parts by their name: twice the same name is one part, a piece named as its whole is the whole. */
function placesOf(nodes: readonly TreeNode[]): Place[] {
  const byId = new Map(nodes.map((n) => [n.id, n]));
  const leaves = new Set(nodes.filter((n) => n.becomes !== 'step').map((n) => n.name.toLowerCase()));
  return nodes.flatMap((node): Place[] => {
    if (node.parent === null) return [];
    const name = node.name.toLowerCase();
    if (node.becomes === 'step' && leaves.has(name)) return [];
    const parent = byId.get(node.parent);
    const whole = parent === undefined || parent.parent === null ? null : parent.name.toLowerCase();
    return [{ name, node, from: whole === name ? null : whole }];
  });
}

/** Animal by animal where they were weighed so, all of them together where they were not. */
function animalsOf(breakdown: FinishedBreakdown, places: readonly Place[]): Weighed[] {
  const { outcome } = breakdown;
  const named = (gramsOf: (node: TreeNode) => number | null): AnimalInput['parts'] => {
    const found = new Map<string, { kg: number; from: string | null }>();
    for (const { name, node, from } of places) {
      const grams = gramsOf(node);
      if (grams === null) continue;
      const before = found.get(name);
      found.set(name, { kg: (before?.kg ?? 0) + grams / 1000, from: before?.from ?? from });
    }
    return [...found].map(([part, { kg, from }]) => ({ part, kg, ...(from === null ? {} : { from }) }));
  };
  const people = {
    ...(breakdown.supplier === null ? {} : { supplier: breakdown.supplier }),
    ...(breakdown.cutter === null ? {} : { cutter: breakdown.cutter }),
    costTotal: 0,
  };
  if (outcome.byAnimal !== null && outcome.byAnimal !== undefined)
    return outcome.byAnimal.map(({ animal, inGrams, grams }) => {
      // A piece that was cut on and never weighed whole is the sum of what came of it.
      const sum = (node: TreeNode): number | null => {
        const own = grams[node.id];
        if (own !== undefined) return own;
        const pieces = breakdown.nodes.filter((n) => n.parent === node.id).map(sum);
        return pieces.length === 0 || pieces.some((p) => p === null)
          ? null
          : pieces.reduce<number>((total, p) => total + (p ?? 0), 0);
      };
      return {
        breakdown,
        input: { ...people, name: String(animal), dressedKg: inGrams / 1000, parts: named(sum) },
      };
    });
  const byId = new Map(outcome.nodes.map((n) => [n.node, n]));
  return [
    {
      breakdown,
      input: {
        ...people,
        ...(breakdown.animals === 1 ? {} : { count: breakdown.animals }),
        dressedKg: outcome.inGrams / 1000,
        parts: named((node) => {
          const n = byId.get(node.id);
          return n === undefined || !n.weighed ? null : n.grams;
        }),
      },
    },
  ];
}

const round = (kg: number) => Math.round(kg * 1e6) / 1e6;

function costOf(
  breakdowns: readonly FinishedBreakdown[],
): ReadonlyMap<string, { cost: number; grams: number }> {
  const found = new Map<string, { cost: number; grams: number }>();
  for (const { outcome } of breakdowns)
    for (const n of outcome.nodes) {
      const carries = n.becomes === 'part' || n.becomes === 'step' || n.becomes === 'sold';
      if (!carries || n.cost === null || n.grams <= 0) continue;
      const before = found.get(n.name.toLowerCase()) ?? { cost: 0, grams: 0 };
      found.set(n.name.toLowerCase(), { cost: before.cost + n.cost, grams: before.grams + n.grams });
    }
  return found;
}

const priorOf = (published: PublishedYield, animals: number): SharePrior => ({
  share: published.row.pct / 100,
  ...(published.row.spread?.as === 'SD' ? { sd: published.row.spread.value / 100 } : {}),
  animals,
});

/** Breakdowns in the order in which they were made. */
export function yieldsFrom(breakdowns: readonly FinishedBreakdown[], asked: YieldsAsked): YieldsAnswer {
  const { species } = asked;
  const precisionPct = asked.precisionPct ?? usualPrecisionPct;
  // Yields need a whole that was weighed.
  const counted = breakdowns.filter((b) => b.outcome.inGrams > 0);
  const shown = new Map<string, { name: string; node: TreeNode }>();
  const weighed: Weighed[] = [];
  for (const breakdown of counted) {
    const places = placesOf(breakdown.nodes);
    for (const p of places) shown.set(p.name, { name: p.node.name, node: p.node });
    weighed.push(...animalsOf(breakdown, places));
  }
  const published = new Map(
    [...shown].flatMap(([key, { name }]) => {
      const found = publishedYield(species, name);
      return found === null ? [] : [[key, found] as const];
    }),
  );
  const count = asked.publishedAnimals ?? 0;
  const priors = new Map(
    count === 0
      ? []
      : [...published].flatMap(([key, p]) => (p.comparable ? [[key, priorOf(p, count)] as const] : [])),
  );
  const input: CarveInput = { species, animals: weighed.map((w) => w.input), precisionPct };
  const answer =
    weighed.length === 0
      ? { parts: [], apart: [], groups: [], learning: [] }
      : yieldsOf(input, priors, accuracyG, (_, i) => String(i));
  const costs = costOf(counted);
  const parts = answer.parts.map((p): YieldPart => {
    const { name, node } = shown.get(p.part) as { name: string; node: TreeNode };
    const figure = published.get(p.part);
    const cost = costs.get(p.part);
    const { nextLow95, nextHigh95 } = p.byRatio;
    return {
      part: name,
      becomes: node.becomes,
      use: node.use,
      animals: p.animals,
      weighings: p.weighings,
      kgTotal: round(p.kgTotal),
      meanPct: p.meanPct,
      sdPct: p.sdPct,
      low95: p.low95,
      high95: p.high95,
      animalsForPrecision: p.animalsForPrecision,
      moreAnimals: p.moreAnimals,
      centrePct: p.byRatio.centrePct,
      centreLow95: p.byRatio.low95,
      centreHigh95: p.byRatio.high95,
      nextLow95,
      nextHigh95,
      from: p.from === null ? null : (shown.get(p.from)?.name ?? p.from),
      pctOfFrom: p.from === null ? null : pctOfWhole(weighed, p.part, p.from),
      published:
        figure === undefined
          ? null
          : {
              pct: figure.row.pct,
              of: figure.of,
              animals: figure.study.animals,
              n: figure.study.n ?? null,
              source: figure.study.source,
              citation: cite(figure.study.source),
              confidence: figure.study.confidence,
              countedAs: priors.has(p.part) ? count : 0,
              fits: p.byRatio.publishedFits ?? fitsNext(figure, nextLow95, nextHigh95),
            },
      costPerKg: cost === undefined ? null : cost.cost / (cost.grams / 1000),
    };
  });
  const inGrams = counted.reduce((sum, b) => sum + b.outcome.inGrams, 0);
  const gone = counted.reduce((sum, b) => sum + b.outcome.unaccountedGrams, 0);
  const of = (index: number) => weighed[index] as Weighed;
  const several = (w: Weighed) => w.breakdown.outcome.byAnimal != null && w.breakdown.animals > 1;
  return {
    species,
    breakdowns: counted.length,
    animals: counted.reduce((sum, b) => sum + b.animals, 0),
    inKg: round(inGrams / 1000),
    unaccountedPct: inGrams === 0 ? null : (100 * gone) / inGrams,
    precisionPct,
    parts,
    apart: answer.apart.map(({ index, part, pct, score }) => ({
      breakdownId: of(index).breakdown.id,
      at: of(index).breakdown.at,
      who: `${species}${several(of(index)) ? ` ${of(index).input.name}` : ''}, ${of(index).breakdown.cutter === null ? 'brought in' : `cut by ${of(index).breakdown.cutter}`}`,
      part: shown.get(part)?.name ?? part,
      pct,
      score,
    })),
    groups: answer.groups.map((g) => ({
      by: g.by,
      name: g.name,
      part: shown.get(g.part)?.name ?? g.part,
      animals: g.animals,
      meanPct: g.meanPct,
      low95: g.low95,
      high95: g.high95,
      againstRest: g.againstRest?.verdict ?? null,
    })),
    learning: answer.learning.map((l) => ({ ...l, part: shown.get(l.part)?.name ?? l.part })),
    weighings: weighingsOf(weighed, asked.part),
    used: counted.map(({ id, at, animals, outcome }) => ({
      breakdownId: id,
      at,
      animals,
      usedPct: outcome.usedPct,
      unaccountedPct: outcome.inGrams === 0 ? 0 : (100 * outcome.unaccountedGrams) / outcome.inGrams,
    })),
    kept: keptOf(counted, species, asked.valuePerKg),
    cautions: cautionsOf(weighed, answer.apart.length, parts),
    basis: basisOf(priors.size, answer.learning.length),
  };
}

const fitsNext = (p: PublishedYield, low: number | null, high: number | null): boolean | null =>
  !p.comparable || low === null || high === null ? null : low <= p.row.pct && p.row.pct <= high;

/** What a piece is of the whole it is cut from, over the animals in which both were weighed [%]. */
function pctOfWhole(weighed: readonly Weighed[], part: string, whole: string): number | null {
  let own = 0;
  let all = 0;
  for (const { input } of weighed) {
    const piece = input.parts.find((p) => p.part === part);
    const from = input.parts.find((p) => p.part === whole);
    if (piece === undefined || from === undefined) continue;
    own += piece.kg;
    all += from.kg;
  }
  return all === 0 ? null : (100 * own) / all;
}

function weighingsOf(weighed: readonly Weighed[], part: string | undefined): YieldsAnswer['weighings'] {
  if (part === undefined) return [];
  const wanted = part.toLowerCase();
  const cut = new Map<string, number>();
  return weighed.flatMap(({ breakdown, input }) => {
    const animals = input.count ?? 1;
    const cutter = breakdown.cutter ?? 'not known';
    const before = cut.get(cutter) ?? 0;
    cut.set(cutter, before + animals);
    const found = input.parts.find((p) => p.part === wanted);
    if (found === undefined) return [];
    return [
      {
        breakdownId: breakdown.id,
        at: breakdown.at,
        cutter,
        supplier: breakdown.supplier,
        // Of animals cut together, the one in the middle.
        count: before + (animals + 1) / 2,
        animals,
        pct: (100 * found.kg) / input.dressedKg,
      },
    ];
  });
}

function cautionsOf(weighed: readonly Weighed[], apart: number, parts: readonly YieldPart[]): string[] {
  const cautions: string[] = [];
  if (weighed.length > 0 && weighed.length < 5)
    cautions.push(
      `${weighed.length === 1 ? 'One weighing has no spread' : `${weighed.length} weighings: the spread itself is hardly known`}: weigh more before you count on a yield.`,
    );
  if (weighed.some((w) => (w.input.count ?? 1) > 1))
    cautions.push(
      'Animals weighed together have a mean and hide their spread: weigh some one by one where the spread matters.',
    );
  if (apart > 0)
    cautions.push(
      'Weighings that lie apart are in all figures. Look at them; nothing is left out by itself.',
    );
  const other = parts.filter((p) => p.published?.fits === false).map((p) => p.part);
  if (other.length > 0)
    cautions.push(
      `The published figure lies outside of what your own animals give for ${other.slice(0, 6).join(', ')}: another cut, breed or age. Do not count on it.`,
    );
  cautions.push(
    'A yield depends on where the cut is made, on breed, age and dressing. A published figure is of other animals, cut by others.',
    'Weights say nothing of whether a part may be served or is safe: the word of your local authority and of qualified people stands above this.',
  );
  return cautions;
}

function basisOf(priors: number, learning: number): Basis[] {
  return [
    {
      what: 'Mean share of what went on the table, its standard deviation between animals and Student’s 95 % interval',
      source: 'own-computation',
      confidence: 'computed',
    },
    {
      what: 'Where the next animal falls: by log-ratio of a part against the rest',
      source: 'aitchison-1986',
      confidence: 'memory',
    },
    {
      what: 'Weighings that lie apart: modified z-score above 3.5, from five',
      source: 'iglewicz-hoaglin-1993',
      confidence: 'memory',
    },
    ...(priors === 0
      ? []
      : [
          {
            what: 'A published figure as so many animals of one’s own',
            source: 'gelman-bda-2013',
            confidence: 'memory',
          } as const,
        ]),
    ...(learning === 0
      ? []
      : [
          {
            what: 'Learning: change for each doubling of the animals cut, from five weighings',
            source: 'wright-1936',
            confidence: 'memory',
          } as const,
        ]),
    {
      what: 'What counts as kept from the bin: used parts that are no dressed meat, by their name or class',
      source: 'own-assumption',
      confidence: 'assumption',
    },
    { what: 'Greenhouse gas of such parts, a proxy', source: 'agribalyse-3-1', confidence: 'read' },
  ];
}
