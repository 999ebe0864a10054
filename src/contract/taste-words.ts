/** What a tasting lets a kitchen say, and what it does not. */
import { type DiscriminationTest, type Sides, shareFound } from '../core/tasting/discrimination.ts';

export const tasteCautions: readonly string[] = [
  'Tell every taster beforehand the species, the part and the allergens, and let anyone leave without a reason.',
  'Nobody at risk tastes offal or blood that is not cooked through: the pregnant, the very young, the old, the ill.',
  'A tasting is food supplied to people: what is served must be safe first. No result here says anything about safety; your local authority’s word stands above it.',
];

export interface Said {
  readonly concluded: string[];
  readonly notConcluded: string[];
}

const pct = (x: number) => `${Math.round(100 * x)} %`;
const chanceWords = (p: number) =>
  p < 0.001 ? 'less than once in 1000' : `${Number((100 * p).toPrecision(2))} times in 100`;

/** Of a difference that was there, what this panel would have missed. */
function missed(test: DiscriminationTest, n: number, sides: Sides): string {
  const half = shareFound(test, n, 0.05, 0.5, sides);
  const often = shareFound(test, n, 0.05, 0.8, sides);
  if (half === null || often === null)
    return `With ${n} ${n === 1 ? 'taster' : 'tasters'} no answer whatever could have shown a difference at 5 %.`;
  return `No difference found is not the same as no difference: with ${n} tasters one that ${pct(half)} of people can taste is missed half the time, one that ${pct(often)} can taste one time in five.`;
}

export function sayCounted(
  test: DiscriminationTest,
  seen: { n: number; correct: number; sides: Sides; p: number; upperPd: number; tooFew: boolean },
): Said {
  const { n, correct, sides, p, upperPd, tooFew } = seen;
  const what = sides === 2 ? `${correct} of ${n} for one of the two` : `${correct} of ${n} right`;
  const often = `guessing alone gives ${sides === 2 ? 'a split as uneven' : 'as many or more'} ${chanceWords(p)}`;
  const notConcluded =
    p <= 0.05
      ? [
          'Not that guests would notice, or like one better; only that these tasters, on that day, told these samples apart.',
          ...(test === 'paired' ? [] : ['Not in what the samples differ.']),
        ]
      : [
          missed(test, n, sides),
          ...(sides === 1
            ? [
                `Not that the samples are alike: up to ${pct(Math.max(0, upperPd))} of tasters may tell them apart (95 %, one-sided). Alike enough may be said only of a share that was fixed before the tasting and lies above this.`,
              ]
            : []),
        ];
  return {
    concluded: [
      `${what}: ${often}. ${p <= 0.05 ? 'A difference was found.' : 'No difference was found.'}`,
      ...(tooFew
        ? [
            'So few right answers seldom come by guessing: look whether codes were swapped or the question was misread.',
          ]
        : []),
    ],
    notConcluded: [
      ...notConcluded,
      'All of it holds for one answer from each taster; the same people asked again are not more people.',
    ],
  };
}

export function sayRanked(seen: {
  p: number;
  differing: readonly string[];
  n: number;
  trendP?: number;
}): Said {
  const { p, differing, n, trendP } = seen;
  const found = p <= 0.05;
  return {
    concluded: [
      `Rank sums as far apart come by chance ${chanceWords(p)}. ${found ? 'The samples were not ranked alike.' : 'No difference in rank was found.'}`,
      ...(found && differing.length > 0
        ? [`Differing at 5 %, each pair by itself: ${differing.join('; ')}.`]
        : []),
      ...(trendP === undefined
        ? []
        : [`The order expected beforehand, or a clearer one, comes by chance ${chanceWords(trendP)}.`]),
    ],
    notConcluded: [
      ...(found
        ? ['Not by how much they differ: a rank says which came before which, not how far.']
        : [`No difference found is not the same as no difference: ${n} tasters see only large ones.`]),
      'Not that any sample is good: the best of bad ones is ranked first too.',
      'With several pairs some differ by chance; a pair counts only where the ranking as a whole differs.',
    ],
  };
}
