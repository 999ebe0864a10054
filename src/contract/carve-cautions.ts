/** What is said with every breakdown: what the figures rest on and what they do not say. */
import type { SharePrior } from '../core/carcass/yield-estimate.ts';
import { findYieldStudy } from '../core/properties/yields.ts';
import { type Basis, cite } from '../core/sources.ts';
import type { CarveAnswer } from './carve-answer.ts';
import { type CarveInput, has } from './carve-input.ts';
import { usualPrecisionPct } from './carve-yields.ts';

/** What the answer rests on. */
export function basisOf(input: CarveInput, priors: ReadonlyMap<string, SharePrior>): CarveAnswer['basis'] {
  const own = (what: string): Basis => ({ what, source: 'own-computation', confidence: 'computed' });
  const named = (key: 'supplier' | 'cutter') => input.animals.some((a) => a[key] !== undefined);
  const study = input.published === undefined ? undefined : findYieldStudy(input.published.study);
  const basis: Basis[] = [
    own('mass balance of every animal, to the milligram'),
    own('mean, standard deviation and Student’s 95 % interval of the mean share of dressed weight'),
    {
      what: 'centre, interval and next animal by log-ratio of a part against the rest; a zero stands for 0.65 of the least the scales show',
      source: 'aitchison-1986',
      confidence: 'memory',
    },
    {
      what: 'a zero’s stand-in',
      source: 'martin-fernandez-2003',
      confidence: 'memory',
    },
    {
      what: 'weighings that lie apart: modified z-score above 3.5, from five animals',
      source: 'iglewicz-hoaglin-1993',
      confidence: 'memory',
    },
    {
      what: 'joint cost by weight, by value or by own shares: each is a convention, none is true',
      source: 'common-practice',
      confidence: 'common practice',
    },
    input.precisionPct === undefined
      ? {
          what: `precision wanted: ± ${usualPrecisionPct} % of the mean, for want of another`,
          source: 'own-assumption',
          confidence: 'assumption',
        }
      : {
          what: `precision wanted: ± ${input.precisionPct} % of the mean`,
          source: 'user-input',
          confidence: 'assumption',
        },
  ];
  if (named('supplier') || named('cutter'))
    basis.push({
      what: 'suppliers and cutters against all others of the part',
      source: 'welch-1947',
      confidence: 'memory',
    });
  if (named('cutter'))
    basis.push({
      what: 'learning: change for each doubling of the animals cut, from five weighings',
      source: 'wright-1936',
      confidence: 'memory',
    });
  if (study !== undefined && priors.size > 0)
    basis.push({
      what: `published figures, % of the ${study.basis} weight, of ${study.animals}, counted as ${input.published!.animals} animals`,
      source: study.source,
      confidence: study.confidence,
    });
  if (priors.size > 0)
    basis.push({
      what: 'a published figure as so many animals of one’s own (normal and inverse gamma prior)',
      source: 'gelman-bda-2013',
      confidence: 'memory',
    });
  return basis.map((entry) => ({ ...entry, citation: cite(entry.source) }));
}

type Known = Pick<
  CarveAnswer,
  'animals' | 'parts' | 'unaccounted' | 'unaccountedPct' | 'apart' | 'groups' | 'cuts'
>;

/** More than this of the dressed weight gone is worth a look: drip and sawdust are less. */
const muchGone = 3;

/** The cautions for this breakdown, the ones that it calls for first. */
export function carveCautions(input: CarveInput, answer: Known, accuracyG: number): string[] {
  const cautions: string[] = [];
  const n = answer.animals;
  const lots = input.animals.length;
  const names = (list: readonly string[]) =>
    list.length > 6 ? `${list.slice(0, 6).join(', ')} and ${list.length - 6} more` : list.join(', ');
  if (lots === 1 && n > 1)
    cautions.push(
      `${n} animals in one weighing have a mean and no spread: weigh some one by one before you count on a yield.`,
    );
  else if (n === 1) cautions.push('One animal has no spread: weigh more before you count on a yield.');
  else if (lots < 5)
    cautions.push(
      `${lots} weighings: the spread itself is hardly known, so neither are the animals still to weigh.`,
    );
  const gone = answer.unaccounted.filter((u) => u.pct > muchGone);
  if (gone.length > 0)
    cautions.push(
      `More than ${muchGone} % of the dressed weight is in no part: ${names(gone.map((u) => u.animal))}. Weigh drip, bone and trim too, or look for what is missing.`,
    );
  const lost = answer.cuts.filter((c) => c.unaccountedPct > muchGone);
  if (lost.length > 0)
    cautions.push(
      `More than ${muchGone} % of it is in none of the pieces it was cut into: ${names(lost.map((c) => c.part))}.`,
    );
  const negative = answer.unaccounted.filter((u) => u.kg < 0);
  if (negative.length > 0)
    cautions.push(
      `Parts a little heavier than the whole, within ${accuracyG} g for each weighing: ${names(negative.map((u) => u.animal))}.`,
    );
  const some = answer.parts.filter((p) => p.animals < n).map((p) => p.part);
  if (some.length > 0)
    cautions.push(
      `Not weighed in every animal, and taken from those in which it was: ${names(some)}. List a part that was not there with 0 kg.`,
    );
  if (answer.parts.some((p) => p.low95 === 0))
    cautions.push(
      'An interval that reaches 0 says that the plain mean of so few animals is no guide; see byRatio.',
    );
  if (input.published !== undefined) {
    const study = findYieldStudy(input.published.study);
    if (study !== undefined && !input.species.toLowerCase().includes(study.species))
      cautions.push(
        `The published study is of another animal, by its name: ${study.species}, and not ${input.species}.`,
      );
    const without = answer.parts.filter((p) => p.byRatio.publishedPct === null).map((p) => p.part);
    if (without.length > 0)
      cautions.push(`The published study has no figure by the name of ${names(without)}.`);
    const other = answer.parts.filter((p) => p.byRatio.publishedFits === false).map((p) => p.part);
    if (other.length > 0)
      cautions.push(
        `The published figure is outside of what your own animals give for ${names(other)}: another cut, breed or age. Do not count it.`,
      );
  }
  if (answer.groups.some((g) => g.againstRest !== null && g.againstRest.verdict !== 'not shown'))
    cautions.push(
      'Suppliers or cutters that seem to differ: of twenty comparisons one does by chance, and parts share one animal. Look again with more.',
    );
  if (answer.apart.length > 0)
    cautions.push('Weighings that lie apart are in all figures. Look at them; correct by weighing again.');
  if (input.values !== undefined) {
    const noPrice = new Set([...(input.wasted ?? []), ...answer.cuts.map((c) => c.part)]);
    const without = answer.parts
      .map((p) => p.part)
      .filter((part) => !has(input.values, part) && !noPrice.has(part));
    if (without.length > 0)
      cautions.push(`Without a price, and taken as worth nothing by value: ${names(without)}.`);
  }
  const priced = Object.entries(input.values ?? {}).filter(([, v]) => v < 0);
  if (priced.length > 0)
    cautions.push(
      `What it costs to be rid of ${names(priced.map(([part]) => part))} is added to the cost of the rest, by every rule.`,
    );
  cautions.push(
    'A cost per kg is of the part as cut. What trimming, bone and cooking take, and the work in it, come on top.',
    'A yield depends on where the cut is made: write the cutting line down with the weight.',
    'Weights say nothing of whether a part may be served or is safe: the word of your local authority and of qualified people stands above this.',
  );
  return cautions;
}
