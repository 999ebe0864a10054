/** Finds foods by name: whole names first, then the words of a name, begun words and words with a slip in them. Pure. */
import { editDistance } from '../../numerics/edit-distance.ts';
import { wordsOf } from './words.ts';

export interface Named {
  readonly id: string;
  readonly name: string;
  readonly also: readonly string[];
  /** Smaller comes first among equals: raw before cooked, published before what stands in. */
  readonly rank: number;
}

/** How a name was found. 'whole': as it is called, or one of its other names. 'words': some of its words. 'near': with a slip. */
export type FoundBy = 'whole' | 'words' | 'near';

export interface Hit<T extends Named> {
  readonly item: T;
  /** 1: the very name; falling with what is missing and what is too much. */
  readonly score: number;
  readonly by: FoundBy;
}

interface Phrase {
  readonly item: number;
  /** In the order in which they stand. */
  readonly words: readonly number[];
  /** How many of them name the food itself: those before the first comma. */
  readonly head: number;
  readonly own: boolean;
}

export interface NameIndex<T extends Named> {
  readonly items: readonly T[];
  readonly phrases: readonly Phrase[];
  readonly vocabulary: readonly string[];
  readonly wordIds: ReadonlyMap<string, number>;
  /** Word → phrases with it. */
  readonly inPhrases: readonly (readonly number[])[];
  /** How much a word tells: rare ones more. */
  readonly weight: readonly number[];
}

/** States of a food say less than what it is. */
const states = new Set(
  [
    'raw',
    'fresh',
    'dried',
    'dry',
    'ground',
    'roast',
    'meat',
    'only',
    'whole',
    'lean',
    'fat',
    'skin',
    'with',
  ].map((word) => wordsOf(word)[0] ?? word),
);

/** Prepares names for searching [-]. Parameters: foods, each with its names. Source: own-computation */
export function indexNames<T extends Named>(items: readonly T[]): NameIndex<T> {
  const vocabulary: string[] = [];
  const wordIds = new Map<string, number>();
  const inPhrases: number[][] = [];
  const phrases: Phrase[] = [];
  const idOf = (word: string): number => {
    const known = wordIds.get(word);
    if (known !== undefined) return known;
    wordIds.set(word, vocabulary.length);
    vocabulary.push(word);
    inPhrases.push([]);
    return vocabulary.length - 1;
  };
  const add = (item: number, text: string, own: boolean): void => {
    const words = [...new Set(wordsOf(text).map(idOf))];
    if (words.length === 0) return;
    const head = new Set(wordsOf(text.split(',')[0]!)).size;
    for (const word of words) inPhrases[word]!.push(phrases.length);
    phrases.push({ item, words, head: head === 0 ? words.length : head, own });
  };
  items.forEach((item, i) => {
    add(i, item.name, true);
    for (const other of item.also) add(i, other, false);
  });
  const weight = vocabulary.map(
    (word, i) => Math.log(1 + phrases.length / inPhrases[i]!.length) * (states.has(word) ? 0.4 : 1),
  );
  return { items, phrases, vocabulary, wordIds, inPhrases, weight };
}

interface Match {
  readonly word: number;
  readonly credit: number;
}

/** Words of the vocabulary that a typed word may mean. */
function matches(index: NameIndex<Named>, typed: string): Match[] {
  const exact = index.wordIds.get(typed);
  if (exact !== undefined) return [{ word: exact, credit: 1 }];
  const most = typed.length >= 7 ? 2 : typed.length >= 3 ? 1 : 0;
  return index.vocabulary.flatMap((word, i) => {
    if (typed.length >= 2 && word.startsWith(typed)) return [{ word: i, credit: 0.85 }];
    if (most === 0 || word.length < 3 || /\d/.test(word)) return [];
    // In a short word, a slip in its first letter makes another word.
    if (typed.length === 3 && word[0] !== typed[0]) return [];
    const apart = editDistance(typed, word, most);
    return apart > most ? [] : [{ word: i, credit: 0.8 - 0.1 * apart }];
  });
}

interface Tally {
  readonly matched: Set<number>;
  /** How much less the words that fit could have told than what they were counted for. */
  spare: number;
  told: number;
  begun: boolean;
  near: boolean;
}

/**
 * The foods whose names fit a text, likeliest first [score 0–1].
 * Equation: score = told/asked·(0.75 + 0.25·share of the name's own words that were told), words weighted by ln(1 + N/n).
 * Parameters: an index; text as typed; most, how many. Assumptions: English, the order of words does not matter.
 * Checked: search.test.ts, every name of the table finds its own row first. Source: own-computation
 */
export function searchNames<T extends Named>(index: NameIndex<T>, text: string, most = 8): Hit<T>[] {
  const typed = [...new Set(wordsOf(text.slice(0, 200)))];
  if (typed.length === 0) return [];
  const tallies = new Map<number, Tally>();
  let asked = 0;
  for (const word of typed) {
    const may = matches(index, word);
    const weightOf = ({ word: w, credit }: Match) => index.weight[w]! * credit;
    const full = may.length === 0 ? unheard(index) : Math.max(...may.map(({ word: w }) => index.weight[w]!));
    asked += full;
    const best = new Map<number, Match>();
    for (const match of may)
      for (const phrase of index.inPhrases[match.word]!) {
        const had = best.get(phrase);
        if (had === undefined || weightOf(match) > weightOf(had)) best.set(phrase, match);
      }
    for (const [phrase, match] of best) {
      const tally = tallies.get(phrase) ?? {
        matched: new Set(),
        spare: 0,
        told: 0,
        begun: false,
        near: false,
      };
      tallies.set(phrase, tally);
      if (!tally.matched.has(match.word)) tally.told += weightOf(match);
      tally.matched.add(match.word);
      tally.spare += full - index.weight[match.word]!;
      tally.begun ||= match.credit < 1;
      tally.near ||= match.credit < 0.85;
    }
  }
  return rankHits(index, tallies, asked, typed.length, most);
}

/** What a word counts that no name has: as much as the rarest. */
const unheard = (index: NameIndex<Named>): number => Math.log(1 + index.phrases.length);

function rankHits<T extends Named>(
  index: NameIndex<T>,
  tallies: ReadonlyMap<number, Tally>,
  asked: number,
  typed: number,
  most: number,
): Hit<T>[] {
  const best = new Map<number, Hit<T>>();
  for (const [at, tally] of tallies) {
    const phrase = index.phrases[at]!;
    const total = (words: readonly number[]) => words.reduce((sum, w) => sum + index.weight[w]!, 0);
    const told = total(phrase.words.filter((w) => tally.matched.has(w)));
    const head = phrase.words.slice(0, phrase.head);
    const headTold = total(head.filter((w) => tally.matched.has(w))) / Math.max(1e-9, total(head));
    const allTold = told / Math.max(1e-9, total(phrase.words));
    const all = tally.matched.size === typed && !tally.begun;
    const whole = all && typed === phrase.words.length;
    const itself = all && typed === phrase.head && head.every((w) => tally.matched.has(w));
    const score = whole
      ? phrase.own
        ? 1
        : 0.98
      : itself && phrase.own
        ? 0.96
        : Math.min(0.95, (tally.told / (asked - tally.spare)) * (0.7 + 0.2 * headTold + 0.1 * allTold));
    const hit: Hit<T> = {
      item: index.items[phrase.item]!,
      score: Math.round(score * 1e4) / 1e4,
      by: score > 0.95 ? 'whole' : tally.near ? 'near' : 'words',
    };
    const had = best.get(phrase.item);
    if (had === undefined || hit.score > had.score) best.set(phrase.item, hit);
  }
  return [...best.values()]
    .filter((hit) => hit.score >= 0.3)
    .sort((a, b) => b.score - a.score || a.item.rank - b.item.rank)
    .slice(0, most);
}
