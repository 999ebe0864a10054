/** The yields of `carve`: parts, groups, learning and what lies apart, in % of the dressed weight. */
import { qt } from 'lib-r-math.js';
import { centreOf, closed, logOdds, zerosReplaced } from '../core/carcass/log-ratio.ts';
import {
  animalsForPrecision,
  meanShare,
  type SharePrior,
  type StudentQuantile,
  shareEstimate,
} from '../core/carcass/yield-estimate.ts';
import { outliersOf } from '../core/carcass/yield-outliers.ts';
import { learningTrend, yieldDifference } from '../core/carcass/yield-trend.ts';
import { findYieldStudy, yieldStudies } from '../core/properties/yields.ts';
import type { CarveAnswer, PartAnswer } from './carve-answer.ts';
import type { AnimalInput, CarveInput } from './carve-input.ts';
import { wholesOf } from './carve-tree.ts';
import { nearNames } from './near-names.ts';
import { InputProblems } from './problem.ts';

const student: StudentQuantile = (p, df) => qt(p, df);
const pct = (x: number) => x * 100;
/** A small change of the log-odds, at a share. */
const inPct = (z: number, share: number) => pct(z * share * (1 - share));
const pctOrNull = (x: number | null) => (x === null ? null : x * 100);

/** A learning curve from fewer than this says too little to be shown. */
const fewestForLearning = 5;
/** ± 5 % of itself, where nothing is said. */
export const usualPrecisionPct = 5;

interface Seen {
  readonly index: number;
  readonly share: number;
  /** Cut together. */
  readonly animals: number;
  readonly least: number;
  readonly animal: AnimalInput;
}

/** The published figures to count, by part. Throws `InputProblems` for a study that the table does not hold. */
export function priorsOf({ published }: CarveInput): ReadonlyMap<string, SharePrior> {
  if (published === undefined) return new Map();
  const study = findYieldStudy(published.study);
  if (study === undefined) {
    const dressed = yieldStudies.filter((s) => s.basis !== 'live').map((s) => s.id);
    const near = nearNames(published.study, dressed, 1);
    throw new InputProblems([
      {
        path: 'published.study',
        found: `an unknown study ${JSON.stringify(published.study)}`,
        allowed: `${near.length > 0 ? `perhaps ${near[0]}; ` : ''}one of ${dressed.join(', ')}`,
      },
    ]);
  }
  if (study.basis === 'live')
    throw new InputProblems([
      {
        path: 'published.study',
        found: `${JSON.stringify(study.id)}, whose figures are % of the live weight`,
        allowed: 'a study in % of the dressed or chilled weight',
      },
    ]);
  return new Map(
    study.rows
      .filter((row) => row.of === undefined && row.pct > 0 && row.pct < 100)
      .map((row) => [
        row.part,
        {
          share: row.pct / 100,
          ...(row.spread?.as === 'SD' ? { sd: row.spread.value / 100 } : {}),
          animals: published.animals,
        },
      ]),
  );
}

/** Whether the published figure lies where one's own next animal would fall; null where that is not known. */
function fits(seen: readonly Seen[], prior: SharePrior | undefined, least: number): boolean | null {
  if (prior === undefined) return null;
  const { nextLow, nextHigh } = shareEstimate(seen, student, undefined, least);
  if (nextLow === null || nextHigh === null) return null;
  return nextLow <= prior.share && prior.share <= nextHigh;
}

function partAnswer(
  part: string,
  seen: readonly Seen[],
  kgTotal: number,
  prior: SharePrior | undefined,
  precision: number,
  whole: { readonly from: string | null; readonly kg: number },
): PartAnswer {
  const { animals, mean, sd, low, high } = meanShare(seen, student);
  const least = seen.reduce((fewest, s) => Math.min(fewest, s.least), 1);
  const ratio = shareEstimate(seen, student, prior, least);
  const needed = sd === null ? null : animalsForPrecision(mean, sd, precision, student);
  return {
    part,
    from: whole.from,
    pctOfFrom: whole.from === null || whole.kg === 0 ? null : pct(kgTotal / whole.kg),
    animals,
    weighings: seen.length,
    kgTotal,
    meanPct: pct(mean),
    sdPct: pctOrNull(sd),
    low95: pctOrNull(low),
    high95: pctOrNull(high),
    animalsForPrecision: needed,
    moreAnimals: needed === null ? null : Math.max(0, needed - animals),
    byRatio: {
      centrePct: pct(ratio.centre),
      low95: pctOrNull(ratio.low),
      high95: pctOrNull(ratio.high),
      nextLow95: pctOrNull(ratio.nextLow),
      nextHigh95: pctOrNull(ratio.nextHigh),
      publishedPct: prior === undefined ? null : pct(prior.share),
      publishedAnimals: prior === undefined ? null : prior.animals,
      publishedFits: fits(seen, prior, least),
    },
  };
}

type Groups = CarveAnswer['groups'];

/** A group against all others of the part. Animals cut together hide their spread, so they are left out here. */
function againstRest(theirs: readonly Seen[], all: readonly Seen[]): Groups[number]['againstRest'] {
  const own = new Set(theirs);
  const single = (list: readonly Seen[]) => list.filter((s) => s.animals === 1);
  const odds = (list: readonly Seen[]) => list.map((s) => logOdds(s.share, s.least));
  const first = odds(single(theirs));
  const rest = odds(single(all.filter((s) => !own.has(s))));
  if (first.length < 2 || rest.length < 2) return null;
  if (new Set(first).size + new Set(rest).size === 2) return null;
  const { low, high, verdict } = yieldDifference(first, rest, student);
  const mean = all.reduce((sum, s) => sum + s.share, 0) / all.length;
  const words = { 'first more': 'more', 'second more': 'less', 'not shown': 'not shown' } as const;
  return { low95: inPct(low, mean), high95: inPct(high, mean), verdict: words[verdict] };
}

function groupsOf(part: string, seen: readonly Seen[]): Groups {
  return (['supplier', 'cutter'] as const).flatMap((by) => {
    const names = [...new Set(seen.flatMap(({ animal }) => animal[by] ?? []))];
    return names.map((name) => {
      const theirs = seen.filter(({ animal }) => animal[by] === name);
      const { animals, mean, sd, low, high } = meanShare(theirs, student);
      return {
        by,
        name,
        part,
        animals,
        meanPct: pct(mean),
        sdPct: pctOrNull(sd),
        low95: pctOrNull(low),
        high95: pctOrNull(high),
        againstRest: againstRest(theirs, seen),
      };
    });
  });
}

function learningOf(part: string, seen: readonly Seen[], animals: readonly AnimalInput[]) {
  const cutters = [...new Set(seen.flatMap(({ animal }) => animal.cutter ?? []))];
  return cutters.flatMap((cutter): CarveAnswer['learning'] => {
    // The count goes on over animals in which this part was not weighed.
    const count = new Map<number, number>();
    let cut = 0;
    animals.forEach((animal, index) => {
      if (animal.cutter !== cutter) return;
      // Of animals cut together, the one in the middle.
      count.set(index, cut + ((animal.count ?? 1) + 1) / 2);
      cut += animal.count ?? 1;
    });
    const theirs = seen.filter(({ animal }) => animal.cutter === cutter);
    if (theirs.length < fewestForLearning) return [];
    const mean = theirs.reduce((sum, s) => sum + s.share, 0) / theirs.length;
    const trend = learningTrend(
      theirs.map((s) => ({ animal: count.get(s.index) ?? 1, z: logOdds(s.share, s.least) })),
      student,
    );
    return [
      {
        cutter,
        part,
        animals: theirs.reduce((sum, s) => sum + s.animals, 0),
        perDoublingPct: inPct(trend.perDoubling, mean),
        low95: inPct(trend.low, mean),
        high95: inPct(trend.high, mean),
        verdict: trend.verdict,
      },
    ];
  });
}

/** The animal in the middle, with what is unaccounted for as a part of its own. */
function middleAnimal(animals: readonly AnimalInput[], names: readonly string[], least: readonly number[]) {
  const compositions = animals.flatMap((animal, i) => {
    const kg = new Map(animal.parts.map((p) => [p.part, p.kg] as const));
    if (names.some((name) => !kg.has(name))) return [];
    const listed = names.map((name) => kg.get(name)!);
    const rest = Math.max(0, animal.dressedKg - listed.reduce((a, b) => a + b, 0));
    if (listed.every((x) => x === 0)) return [];
    return [zerosReplaced(closed([...listed, rest]), Math.min(least[i]!, 0.1 / (names.length + 1)))];
  });
  if (compositions.length === 0) return null;
  const centre = centreOf(compositions);
  return {
    animals: compositions.length,
    shares: [...names, 'unaccounted'].map((part, i) => ({ part, pct: pct(centre[i]!) })),
  };
}

/** Everything that `carve` says of yields. */
export function yieldsOf(
  input: CarveInput,
  priors: ReadonlyMap<string, SharePrior>,
  accuracyG: number,
  nameOf: (animal: AnimalInput, index: number) => string,
): Pick<CarveAnswer, 'parts' | 'middleAnimal' | 'apart' | 'groups' | 'learning'> {
  const { animals } = input;
  // The least share that the scales would have shown; half a per cent at most, so that a zero stays a small share.
  const least = animals.map((a) => Math.min(0.005, Math.max(1e-6, accuracyG / 1000 / a.dressedKg)));
  const byPart = new Map<string, { seen: Seen[]; mg: number }>();
  animals.forEach((animal, index) => {
    for (const { part, kg } of animal.parts) {
      const entry = byPart.get(part) ?? { seen: [], mg: 0 };
      entry.seen.push({
        index,
        animal,
        animals: animal.count ?? 1,
        least: least[index]!,
        share: Math.min(1, kg / animal.dressedKg),
      });
      entry.mg += Math.round(kg * 1e6);
      byPart.set(part, entry);
    }
  });
  const all = [...byPart];
  const wholes = wholesOf(animals);
  const precision = (input.precisionPct ?? usualPrecisionPct) / 100;
  return {
    parts: all.map(([part, { seen, mg }]) => {
      const from = wholes.get(part) ?? null;
      const kg = from === null ? 0 : (byPart.get(from)?.mg ?? 0) / 1e6;
      return partAnswer(part, seen, mg / 1e6, priors.get(part), precision, { from, kg });
    }),
    middleAnimal: middleAnimal(
      animals,
      all.map(([part]) => part).filter((part) => wholes.get(part) === null),
      least,
    ),
    apart: all.flatMap(([part, { seen }]) =>
      outliersOf(seen.map((s) => logOdds(s.share, s.least))).map(({ index: i, score }) => {
        const { animal, index, share } = seen[i]!;
        return { animal: nameOf(animal, index), index, part, pct: pct(share), score };
      }),
    ),
    groups: all.flatMap(([part, { seen }]) => groupsOf(part, seen)),
    learning: all.flatMap(([part, { seen }]) => learningOf(part, seen, animals)),
  };
}
