/** The words of a list of ingredients: which of them are emphasised. Structure, never markup. */
import type { Allergen, AllergenMark } from './food.ts';

/** A stretch of text, in the type of the list or in the one that stands out. */
export interface Run {
  readonly text: string;
  readonly emphasised: boolean;
}

/** Words that name an allergen of Annex II where they stand in a name. */
const words: Readonly<Record<Allergen, RegExp>> = {
  gluten: /\b(wheat|rye|barley|oats?|spelt|khorasan|durum)\b/gi,
  crustaceans: /\bcrustaceans?\b/gi,
  eggs: /\beggs?\b/gi,
  fish: /\bfish\b/gi,
  peanuts: /\bpeanuts?\b/gi,
  soybeans: /\b(soya|soy|soybeans?)\b/gi,
  milk: /\bmilk\b/gi,
  nuts: /\b(almonds?|hazelnuts?|walnuts?|cashews?|pecans?|brazil nuts?|pistachios?|macadamias?)\b/gi,
  celery: /\b(celery|celeriac)\b/gi,
  mustard: /\bmustard\b/gi,
  sesame: /\bsesame\b/gi,
  sulphites: /\b(sulphites?|sulfites?|sulphur dioxide)\b/gi,
  lupin: /\blupin\b/gi,
  molluscs: /\bmolluscs?\b/gi,
};

/** How an allergen is named where the name of the food does not: the kind, else the word of the annex. */
const spoken: Readonly<Partial<Record<Allergen, string>>> = { eggs: 'egg', soybeans: 'soya' };

interface Span {
  readonly from: number;
  readonly to: number;
}

function spansOf(name: string, mark: AllergenMark): Span[] {
  const found = [...name.matchAll(words[mark.allergen])];
  if (mark.as !== undefined) {
    const at = name.toLowerCase().indexOf(mark.as.toLowerCase());
    if (at >= 0) return [{ from: at, to: at + mark.as.length }];
    // Its kind has to stand: another kind's word is not enough.
    if (mark.allergen === 'gluten' || mark.allergen === 'nuts') return [];
  }
  return found.map((m) => ({ from: m.index, to: m.index + m[0].length }));
}

/**
 * The name of an ingredient with its allergens emphasised [-], named after it in parentheses where the name does not.
 * Parameters: name as it stands in the list, its allergens. Assumptions: English words; a kind (wheat, hazelnut) is named by its
 * kind. Joining the runs gives the text. Checked: by hand, and by the property that no allergen goes without an emphasised word.
 * @example emphasised('double cream', [{ allergen: 'milk' }]).map((r) => r.text).join('') // → 'double cream (milk)'
 * Source: eu-1169-2011-labels
 */
export function emphasised(name: string, marks: readonly AllergenMark[]): Run[] {
  const spans: Span[] = [];
  const added: string[] = [];
  for (const mark of marks) {
    const own = spansOf(name, mark);
    spans.push(...own);
    const word = mark.as ?? spoken[mark.allergen] ?? mark.allergen;
    if (own.length === 0 && !added.includes(word)) added.push(word);
  }
  spans.sort((a, b) => a.from - b.from || b.to - a.to);
  const runs: Run[] = [];
  let at = 0;
  for (const { from, to } of spans) {
    if (from < at) continue;
    if (from > at) runs.push({ text: name.slice(at, from), emphasised: false });
    runs.push({ text: name.slice(from, to), emphasised: true });
    at = to;
  }
  if (at < name.length) runs.push({ text: name.slice(at), emphasised: false });
  added.forEach((word, i) => {
    runs.push({ text: i === 0 ? ' (' : ', ', emphasised: false }, { text: word, emphasised: true });
  });
  if (added.length > 0) runs.push({ text: ')', emphasised: false });
  return runs;
}

/** Joins neighbours of one type. Source: own-computation [-] */
export function joined(runs: readonly Run[]): Run[] {
  const out: Run[] = [];
  for (const run of runs) {
    const last = out.at(-1);
    if (run.text === '') continue;
    if (last !== undefined && last.emphasised === run.emphasised)
      out[out.length - 1] = { text: last.text + run.text, emphasised: run.emphasised };
    else out.push(run);
  }
  return out;
}
