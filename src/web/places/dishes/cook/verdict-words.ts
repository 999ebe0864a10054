/** The verdict of a cook in a head chef's words. Nothing is rounded towards safety that is not there. */
import type { CookProblem, CookResult } from '../../../../core/heat/types.ts';
import type { Advice } from '../../../../core/method/advice.ts';
import { lessThanUsual } from '../../../../core/method/foreseen-rules.ts';
import type { ShapeCost } from '../../../../core/method/shape-cost.ts';
import type { CookVerdict, RestsOn } from '../../../../core/method/verdict.ts';
import { worth } from '../../../../documents/format.ts';
import { toUnit } from '../../../../documents/pictures/cut-through.ts';
import type { LengthUnits } from '../../../../documents/pictures/piece-layout.ts';
import type { VerdictState } from '../../../parts/verdict.tsx';
import { depthOf, lengthWords, placeWords, temperatureWords, timeWords } from '../../../pictures/words.ts';

export interface Told {
  readonly state: VerdictState;
  readonly word: string;
  readonly why: readonly string[];
}

/** Minutes had, rounded down. */
export const hadWords = (s: number, needed = 0): string => worth(s / 60, needed / 60);

/** Minutes wanting, rounded up. */
export function moreWords(s: number): string {
  const min = s / 60;
  return min > 10 ? `${Math.ceil(min - 1e-9)} min` : `${Math.ceil(min * 2 - 1e-9) / 2} min`;
}

/** Minutes that could be spared, rounded down. */
export function spareWords(s: number): string {
  const min = s / 60;
  return min > 10 ? `${Math.floor(min + 1e-9)} min` : `${Math.floor(min * 2 + 1e-9) / 2} min`;
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

export const referenceWords = (C: number, units: LengthUnits): string =>
  `${Math.round(toUnit(C, units) * 10) / 10} ${units === 'US' ? '°F' : '°C'}`;

/** The large word of a cook that holds: plain only where the heat alone does it, with a little in hand. */
export const holdsWord: Readonly<Record<RestsOn, string>> = {
  'lift-out': 'Holds',
  barely: 'Only just holds',
  after: 'Holds only with what comes after',
};

interface Told0 {
  readonly verdict: CookVerdict;
  readonly problem: CookProblem;
  readonly result: CookResult;
  readonly units: LengthUnits;
  /** Not worked out yet: null. */
  readonly advice: Advice | null;
  /** Rules that the cook answers to and that the prediction does not meet. */
  readonly unmet?: readonly { readonly title: string; readonly why: string }[];
  /** The coarse engine's answer: said to be a first estimate, and never called held where it is close. */
  readonly coarse: boolean;
}

function carryOver({ verdict, result, units }: Told0): string[] {
  const { heatingStage, gotAtLiftOut, got, needed } = verdict;
  const after = result.stages[heatingStage + 1];
  const core = temperatureWords(verdict.coreAtLiftOut, units);
  if (after === undefined) return [`At lifting out the coldest point is at ${core}.`];
  const added = got - gotAtLiftOut;
  if (verdict.word !== 'short' && !verdict.holdsAtLiftOut)
    return [
      `${core} at lifting out alone would not: the carry-over after it adds ${hadWords(added, needed)}. Keep the programme as it is written; a faster chill takes that away.`,
    ];
  const rises = verdict.peak.C - verdict.coreAtLiftOut >= 0.3;
  return [
    `At lifting out the coldest point is at ${core} and has had ${hadWords(gotAtLiftOut, needed)}${rises ? `; it goes on to ${temperatureWords(verdict.peak.C, units)}` : ''}.`,
  ];
}

export function verdictWords(told: Told0): Told {
  const { verdict, problem, result, units, advice, coarse, unmet = [] } = told;
  const stage = problem.stages[verdict.heatingStage]?.name ?? 'the heat';
  const where = placeWords(result.mesh, verdict.coldSpot, units);
  const needs = `${Number((verdict.needed / 60).toPrecision(3))} min at ${referenceWords(problem.target.reference, units)}`;
  const has = `The coldest point, ${where}, has had ${hadWords(verdict.got, verdict.needed)}`;
  const had = `${has} of the ${needs} it needs`;
  const depth = depthOf(result.mesh, verdict.coldSpot);
  const probe = `Put the probe there: ${lengthWords(depth, units)} in from the ${result.mesh.shape === 'slab' ? 'top' : 'side'}.`;
  const late = verdict.notReached.map(
    (name) => `${capital(name)} never came to what ends it in the time it may take.`,
  );
  if (coarse && verdict.word !== 'short' && verdict.margin < 3)
    return {
      state: 'unknown',
      word: 'Close',
      why: ['Working it out exactly…', `${had}, by a first estimate.`],
    };
  if (verdict.word === 'unknown')
    return {
      state: 'unknown',
      word: 'Not known',
      why: [
        'The engine cannot answer for this programme.',
        ...verdict.doubts.map((d) => capital(`${d.what}.`)),
      ],
    };
  if (verdict.word === 'short') {
    const word =
      advice === null
        ? 'Not enough yet'
        : Number.isNaN(advice.more)
          ? 'Not this way'
          : `${capital(stage)}: ${moreWords(advice.more)} more`;
    const never =
      advice !== null && Number.isNaN(advice.more)
        ? [`Not even a day of “${stage}” would do it: it has to be hotter.`]
        : [];
    return { state: 'does not hold', word, why: [...never, `${had}.`, ...carryOver(told), probe, ...late] };
  }
  const own = lessThanUsual(problem.target) ? ['The target is your own, and less than 70 °C for 2 min.'] : [];
  if (unmet.length > 0)
    return {
      state: 'does not hold',
      word: 'Does not meet its rule',
      why: [
        ...unmet.map((rule) => `${rule.title}: ${rule.why}`),
        ...own,
        `${had}, but the rule counts in its own way.`,
        ...carryOver(told),
        probe,
        ...late,
      ],
    };
  const when =
    verdict.reachedAt === null
      ? ''
      : `, and has that after ${timeWords(Math.ceil(verdict.reachedAt / 60) * 60)}`;
  const after = result.stages.length > verdict.heatingStage + 1;
  const spare =
    advice !== null && advice.spare >= 30 && verdict.restsOn === 'lift-out'
      ? [
          after
            ? `With ${spareWords(advice.spare)} less of “${stage}” it would hold only with what comes after, and with nothing in hand.`
            : `With ${spareWords(advice.spare)} less of “${stage}” it would still hold, with nothing in hand.`,
        ]
      : [];
  const close =
    verdict.margin < 1.5 || verdict.restsOn === 'barely'
      ? ['There is little in hand: a slightly larger piece would not hold.']
      : [];
  const word = holdsWord[verdict.restsOn];
  return {
    state: verdict.restsOn === 'lift-out' ? 'holds' : 'not yet',
    word: coarse ? `${word}, by a first estimate` : word,
    why: [
      `${has}; it needs ${needs}${when}.`,
      ...own,
      ...carryOver(told),
      ...close,
      ...(coarse ? [] : spare),
      probe,
      ...late,
    ],
  };
}

/** What an even shape would save and what a bulge costs. */
export function shapeWords(cost: ShapeCost | null, stage: string, units: LengthUnits): string[] {
  if (cost === null) return [];
  const words: string[] = [];
  if (cost.even !== null && cost.even.saves > 15)
    words.push(
      `Filled evenly, ${lengthWords(cost.even.diameter, units)} throughout, the same piece would need ${spareWords(cost.even.saves)} less of “${stage}”.`,
    );
  if (cost.perMetre !== null && cost.perMetre > 0) {
    const step = units === 'US' ? 0.003175 : 0.001;
    const minutes = (cost.perMetre * step) / 60;
    const text = minutes >= 1 ? `${minutes.toFixed(1)} min` : `${Math.max(1, Math.round(minutes * 60))} s`;
    words.push(
      units === 'US'
        ? `Each eighth of an inch thicker at the coldest point costs ${text}.`
        : `Each millimetre thicker at the coldest point costs ${text}; a bulge of 6 mm, about ${moreWords(cost.perMetre * 0.006)}.`,
    );
  }
  return words;
}
