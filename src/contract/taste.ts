/** `taste`: what a tasting shows, and how many tasters it takes, as the headless contract asks for it. */
import { pchisq } from 'lib-r-math.js';
import { z } from 'zod';
import { Contradiction, OutOfRange } from '../core/errors.ts';
import { type Basis, cite } from '../core/sources.ts';
import { binomialUpper } from '../core/tasting/binomial.ts';
import {
  assessorsFor,
  chanceOf,
  chanceOfAnswers,
  type DiscriminationTest,
  discriminators,
  minimumCorrect,
  powerOf,
  type Sides,
  shareFound,
} from '../core/tasting/discrimination.ts';
import { exactFriedman, friedman, pageTrend, rankDifference } from '../core/tasting/ranking.ts';
import { distanceShown } from '../core/tasting/thurstone.ts';
import { accept, InputProblems } from './problem.ts';
import { sayCounted, sayRanked, tasteCautions } from './taste-words.ts';

const Discrimination = z.enum(['triangle', 'duo-trio', 'paired']);
const Sided = z.union([z.literal(1), z.literal(2)]);
const share = (least: number, most: number) => z.number().min(least).max(most);

const Counted = z.strictObject({
  test: Discrimination,
  /** One answer from each. */
  assessors: z.int().min(1).max(5000),
  /** Right answers; in a paired test of two sides, the choices of one of the two. */
  correct: z.int().min(0).max(5000),
  /** Paired: 1 where it was said beforehand which would be chosen, else 2, which is also what is taken where nothing is said. */
  sided: Sided.optional(),
});
const Designed = z.strictObject({
  test: Discrimination,
  design: z.strictObject({
    /** Chance of finding a difference that is not there. */
    alpha: share(0.001, 0.5),
    /** Chance of missing one that is. */
    beta: share(0.001, 0.5),
    /** Share of tasters who really tell the samples apart. */
    pd: share(0.05, 1),
  }),
  sided: Sided.optional(),
});
const Ranked = z.strictObject({
  test: z.literal('ranking'),
  samples: z.array(z.string().min(1).max(80)).min(2).max(12),
  /** A row an assessor: the rank of each sample in the samples' order, 1 first; equal ones share the mean of their places. */
  rows: z
    .array(z.array(z.number().min(1).max(12)))
    .min(2)
    .max(500),
  /** The order expected before the tasting, the lowest rank first. */
  expected: z.array(z.string()).optional(),
});

export const TasteInput = z.union([Counted, Designed, Ranked]).superRefine((input, context) => {
  const complain = (path: (string | number)[], found: string, allowed: string) =>
    context.addIssue({ code: 'custom', path, message: allowed, params: { found } });
  if ('sided' in input && input.sided === 2 && input.test !== 'paired')
    complain(['sided'], '2', `1, or nothing: a ${input.test} test has one right answer`);
  if ('correct' in input && input.correct > input.assessors)
    complain(['correct'], `${input.correct}`, `at most ${input.assessors}, the assessors`);
  if (!('samples' in input)) return;
  input.samples.forEach((name, i) => {
    if (input.samples.indexOf(name) < i)
      complain(['samples', i], `${JSON.stringify(name)} a second time`, 'each once');
  });
  const { expected, samples } = input;
  if (expected !== undefined && [...expected].sort().join('\n') !== [...samples].sort().join('\n'))
    complain(['expected'], JSON.stringify(expected), 'every sample once, the lowest rank first');
});
export type TasteInput = z.infer<typeof TasteInput>;

interface Common {
  readonly test: string;
  readonly concluded: string[];
  readonly notConcluded: string[];
  readonly basis: (Basis & { citation: string })[];
  readonly cautions: string[];
}
export interface CountedAnswer extends Common {
  readonly p: number;
  readonly significantAt05: boolean;
  readonly sided: Sides;
  /** Null: not even all right would do. */
  readonly minimumCorrect: number | null;
  readonly shareCorrect: number;
  /** Null: all were right, which no finite distance gives. Ends null: the tasting sets none. */
  readonly dPrime: number | null;
  readonly dPrimeLow95: number;
  readonly dPrimeHigh95: number | null;
  /** Share who tell the samples apart, with one-sided 95 % limits, normal and exact; null in a test of two sides. */
  readonly discriminators: ReturnType<typeof discriminators> | null;
  /** The share of tellers this panel finds half the time, and four times in five; null where it can find none. */
  readonly pdFoundHalf: number | null;
  readonly pdFound80: number | null;
}
export interface DesignAnswer extends Common {
  /** The first number that reaches the power, and the one from which it stays reached. */
  readonly assessors: number;
  readonly assessorsSteady: number;
  /** The first multiple of the orders of serving from there on: every order served equally often. */
  readonly assessorsBalanced: number;
  readonly minimumCorrect: number | null;
  readonly power: number;
}
export interface RankedAnswer extends Common {
  readonly p: number;
  readonly significantAt05: boolean;
  /** Whether p counts every order, or comes from the chi-square distribution. */
  readonly exact: boolean;
  readonly pChiSquare: number;
  /** Friedman's, ties allowed for; null where everybody put all equal. */
  readonly statistic: number | null;
  readonly statisticWithoutTies: number;
  readonly freedom: number;
  readonly rankSums: { sample: string; sum: number; mean: number }[];
  readonly leastDifference05: number;
  readonly pairs: { between: [string, string]; difference: number; differs05: boolean }[];
  readonly trend?: { L: number; p: number };
}
export type TasteAnswer = CountedAnswer | DesignAnswer | RankedAnswer;

const cited = (list: readonly Basis[]) => list.map((b) => ({ ...b, citation: cite(b.source) }));
const standard = (test: DiscriminationTest): Basis => ({
  what: `${test}: guessing alone is right ${test === 'triangle' ? '1 time in 3' : '1 time in 2'}; exact binomial tails`,
  source: test === 'duo-trio' ? 'iso-10399-table-a1' : test === 'triangle' ? 'iso-4120-2021' : 'from-memory',
  confidence: test === 'duo-trio' ? 'secondary' : 'memory',
});
const usualSides = (test: DiscriminationTest): Sides => (test === 'paired' ? 2 : 1);
const ordersOf: Record<DiscriminationTest, number> = { triangle: 6, 'duo-trio': 4, paired: 2 };

function count(input: z.infer<typeof Counted>): CountedAnswer {
  const { test, assessors: n } = input;
  const sided = input.sided ?? usualSides(test);
  const correct = sided === 2 ? Math.max(input.correct, n - input.correct) : input.correct;
  const p = chanceOfAnswers(test, n, correct, sided);
  const distance = distanceShown(test, n, correct);
  const told = discriminators(test, n, correct);
  const tooFew = sided === 1 && 1 - binomialUpper(n, correct + 1, chanceOf[test]) <= 0.05;
  return {
    test,
    p,
    significantAt05: p <= 0.05,
    sided,
    minimumCorrect: minimumCorrect(test, n, 0.05, sided),
    shareCorrect: correct / n,
    dPrime: distance.dPrime,
    dPrimeLow95: distance.low,
    dPrimeHigh95: distance.high,
    discriminators: sided === 2 ? null : told,
    pdFoundHalf: shareFound(test, n, 0.05, 0.5, sided),
    pdFound80: shareFound(test, n, 0.05, 0.8, sided),
    ...sayCounted(test, { n, correct, sides: sided, p, upperPd: told.exactHigh, tooFew }),
    basis: cited([
      standard(test),
      { what: 'distance d′ from the share of right answers', source: 'ennis-1993', confidence: 'memory' },
      {
        what: 'interval of d′: exact limits of the share',
        source: 'clopper-pearson-1934',
        confidence: 'memory',
      },
      ...(input.sided === undefined && test === 'paired'
        ? [
            {
              what: 'two sides, since none was said',
              source: 'own-assumption',
              confidence: 'assumption',
            } as const,
          ]
        : []),
    ]),
    cautions: [...tasteCautions],
  };
}

function design(input: z.infer<typeof Designed>): DesignAnswer {
  const { test, design: asked } = input;
  const sided = input.sided ?? usualSides(test);
  const { first, steady } = assessorsFor(test, asked, sided);
  const power = powerOf(test, first, asked.pd, asked.alpha, sided);
  const balanced = Math.ceil(steady / ordersOf[test]) * ordersOf[test];
  const share = Math.round(100 * asked.pd);
  return {
    test,
    assessors: first,
    assessorsSteady: steady,
    assessorsBalanced: balanced,
    minimumCorrect: minimumCorrect(test, first, asked.alpha, sided),
    power,
    concluded: [
      `${first} tasters find a difference that ${share} % of people can taste ${Math.round(100 * power)} times in 100.`,
    ],
    notConcluded: [
      first === steady
        ? 'Nothing of a smaller difference.'
        : `One taster more does not always help: the fewest right answers go up by whole numbers, and only from ${steady} on does every larger panel do. Nothing of a smaller difference.`,
      'Tasters who stay away, and answers given twice by one person, are not counted in.',
    ],
    basis: cited([
      standard(test),
      {
        what: 'power counted for every number of tasters',
        source: 'own-computation',
        confidence: 'computed',
      },
    ]),
    cautions: [...tasteCautions],
  };
}

function rank(input: z.infer<typeof Ranked>): RankedAnswer {
  const { samples, rows, expected } = input;
  const totals = friedman(rows);
  const { sums, statistic } = totals;
  if (sums.length !== samples.length)
    throw new Contradiction('rows[0]', `${sums.length} ranks`, `${samples.length}, one a sample`);
  const freedom = samples.length - 1;
  const pChiSquare = statistic === null ? 1 : pchisq(statistic, freedom, 0, false);
  const exact = exactFriedman(rows);
  const p = exact ?? pChiSquare;
  const least = rankDifference(rows.length, samples.length, 0.05);
  const pairs = samples.flatMap((a, i) =>
    samples.slice(i + 1).map((b, k) => {
      const difference = sums[i + 1 + k]! - sums[i]!;
      const between: [string, string] = [a, b];
      return { between, difference, differs05: p <= 0.05 && Math.abs(difference) >= least };
    }),
  );
  const trend =
    expected === undefined
      ? null
      : pageTrend(rows.map((row) => expected.map((name) => row[samples.indexOf(name)]!)));
  return {
    test: 'ranking',
    p,
    significantAt05: p <= 0.05,
    exact: exact !== null,
    pChiSquare,
    statistic,
    statisticWithoutTies: totals.plain,
    freedom,
    rankSums: samples.map((sample, i) => ({ sample, sum: sums[i]!, mean: sums[i]! / rows.length })),
    leastDifference05: least,
    pairs,
    ...(trend === null ? {} : { trend }),
    ...sayRanked({
      p,
      n: rows.length,
      differing: pairs.filter((q) => q.differs05).map((q) => q.between.join(' and ')),
      ...(trend === null ? {} : { trendP: trend.p }),
    }),
    basis: cited([
      {
        what: `Friedman’s test, ties allowed for; p ${exact === null ? 'from the chi-square distribution, the table being too large to count' : 'counted over every order'}`,
        source: 'friedman-1937',
        confidence: 'memory',
      },
      {
        what: 'least difference of two rank sums, each pair by itself',
        source: 'iso-8587-2006',
        confidence: 'memory',
      },
      ...(trend === null
        ? []
        : [
            {
              what: 'Page’s L, counted over every order',
              source: 'page-1963',
              confidence: 'memory',
            } as const,
          ]),
    ]),
    cautions: [
      ...tasteCautions,
      ...(expected !== undefined && trend === null
        ? ['An expected order is judged for up to 7 samples only: not judged here.']
        : []),
    ],
  };
}

/** A tasting as the contract states it. Throws `InputProblems` for an input that it does not allow. */
export function runTaste(raw: unknown): TasteAnswer {
  const input = accept(TasteInput, raw);
  try {
    return 'rows' in input ? rank(input) : 'design' in input ? design(input) : count(input);
  } catch (error) {
    if (!(error instanceof OutOfRange || error instanceof Contradiction)) throw error;
    const path = error.path === 'pd' ? 'design.pd' : error.path;
    throw new InputProblems([{ path, found: error.found, allowed: error.allowed }]);
  }
}
