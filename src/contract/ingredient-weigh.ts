/** What an amount of a food weighs, and how that was had. */
import type { Ingredient } from '../core/properties/ingredients/ingredient.ts';
import { measureMl } from '../core/properties/ingredients/ingredient.ts';
import { pieceWeights, smallAmounts } from '../core/properties/ingredients/kitchen-amounts.ts';
import type { Amount, Spoon } from './ingredient-amount.ts';

/** What is weighed: a row of the table, the kitchen's own ingredient, or nothing that is known. */
export interface Weighable {
  readonly row: Ingredient | null;
  /** The kitchen's own figures; they come first. */
  readonly pieceG: number | null;
  readonly densityKgM3: number | null;
}

export type Sure = 'sure' | 'likely' | 'guess';

export interface Weighed {
  readonly g: number;
  /** '3 × 33 g, a large one, SR28 01124' */
  readonly how: string;
  readonly sure: Sure;
}

const round = (g: number): number => Number(g.toPrecision(6));
const say = (n: number): string => String(Number(n.toPrecision(4)));

/** Where the density comes from. */
const sourceOf = (row: Ingredient): string =>
  row.had === 'stand-in'
    ? `SR28 ${row.row}, which stands in`
    : row.row === null
      ? 'as the published row it comes from'
      : `SR28 ${row.row}`;

/** Where the weight of a measure comes from. */
const measureSource = (row: Ingredient): string =>
  row.measuresFrom === 'source' ? sourceOf(row) : 'common practice';
const measureSure = (row: Ingredient): Sure => (row.measuresFrom === 'source' ? 'likely' : 'guess');

const spoken: Readonly<Record<string, string>> = {
  each: 'one',
  'each large': 'a large one',
  'each medium': 'a medium one',
  'each small': 'a small one',
  'each extra large': 'an extra large one',
  'each jumbo': 'a jumbo one',
  tsp: 'a teaspoon',
  tbsp: 'a tablespoon',
  cup: 'a cup',
  'fl oz': 'a fluid ounce',
};
const measureWords = (name: string): string => {
  if (spoken[name] !== undefined) return spoken[name];
  const [first = '', ...more] = name.split(' ');
  return `${spoken[first] ?? `a ${first}`}, ${more.join(' ')}`.replace(/, $/, '');
};

const times = (n: number, g: number, what: string, source: string): string =>
  `${say(n)} × ${say(g)} g, ${what}, ${source}`;

/** The measure of a row by its first words: 'cup' also finds 'cup chopped', told apart by the note. */
function measureOf(row: Ingredient, base: string, note: string): readonly [string, number] | null {
  const all = Object.entries(row.measures).filter(([name]) => name === base || name.startsWith(`${base} `));
  const told = all.find(
    ([name]) => name !== base && note.toLowerCase().includes(name.slice(base.length + 1)),
  );
  return told ?? all.find(([name]) => name === base) ?? all[0] ?? null;
}

const spoons: readonly Spoon[] = ['cup', 'tbsp', 'fl oz', 'tsp'];

function volume(amount: Amount & { kind: 'volume' }, of: Weighable, note: string): Weighed | null {
  const { ml, n, unit, spoon } = amount;
  if (of.densityKgM3 !== null)
    return {
      g: round((ml * of.densityKgM3) / 1_000),
      how: `${say(ml)} ml × ${say(of.densityKgM3 / 1_000)} g/ml, the kitchen’s own`,
      sure: 'sure',
    };
  const { row } = of;
  if (row === null) return null;
  if (spoon !== null && !row.liquid) {
    const found = measureOf(row, spoon, note);
    if (found !== null)
      return {
        g: round(n * found[1]),
        how: times(n, found[1], measureWords(found[0]), measureSource(row)),
        sure: measureSure(row),
      };
  }
  if (row.densityKgM3 !== null)
    return {
      g: round((ml * row.densityKgM3) / 1_000),
      how: `${unit === 'ml' ? '' : `${say(n)} ${unit}${n === 1 ? '' : 's'}, `}${say(ml)} ml × ${say(row.densityKgM3 / 1_000)} g/ml, ${sourceOf(row)}`,
      sure: row.had === 'published' ? 'sure' : 'likely',
    };
  for (const other of spoons) {
    const found = measureOf(row, other, note);
    if (found === null) continue;
    const perMl = found[1] / measureMl[other];
    return {
      g: round(ml * perMl),
      how: `${say(ml)} ml × ${say(perMl)} g/ml loose, from ${measureWords(found[0])}, ${measureSource(row)}`,
      sure: 'guess',
    };
  }
  return null;
}

function count(amount: Amount & { kind: 'count' }, of: Weighable): Weighed | null {
  const { n, size } = amount;
  const unit = amount.unit === 'each' ? null : amount.unit;
  if (unit === null && of.pieceG !== null)
    return { g: round(n * of.pieceG), how: times(n, of.pieceG, 'one', 'the kitchen’s own'), sure: 'sure' };
  const { row } = of;
  if (row === null) return null;
  const base = unit ?? 'each';
  const egg = /egg/.test(row.id);
  const wanted =
    size !== null
      ? [`${base} ${size}`]
      : egg
        ? [base, `${base} large`, `${base} medium`]
        : [base, `${base} medium`, `${base} large`, `${base} small`];
  // A stick of celery is a stalk; an egg yolk is one of it.
  if (unit === 'stick') wanted.push('stalk', 'stalk medium');
  for (const name of wanted) {
    const g = row.measures[name];
    if (g !== undefined)
      return {
        g: round(n * g),
        how: times(n, g, measureWords(name), measureSource(row)),
        sure: measureSure(row),
      };
    const practice = pieceWeights[row.id]?.[name];
    if (practice !== undefined)
      return {
        g: round(n * practice),
        how: times(n, practice, measureWords(name), 'common practice'),
        sure: 'guess',
      };
  }
  return unit === 'sprig' ? small({ kind: 'small', n, word: 'sprig' }, of) : null;
}

function small(amount: Amount & { kind: 'small' }, of: Weighable): Weighed | null {
  const { words, g, ml } = smallAmounts[amount.word]!;
  const density = of.densityKgM3 ?? of.row?.densityKgM3 ?? null;
  const n = amount.n === 1 ? '' : `${say(amount.n)} × `;
  if (ml !== null && density !== null)
    return {
      g: round((amount.n * ml * density) / 1_000),
      how: `${words}: ${n}${say(ml)} ml, common practice`,
      sure: 'guess',
    };
  if (g === null || of.row?.liquid === true) return null;
  return { g: round(amount.n * g), how: `${words}: ${n}${say(g)} g, common practice`, sure: 'guess' };
}

/** Weight [g] of an amount of a food, how it was had and how sure it is; null where nothing says what it weighs. */
export function weigh(amount: Amount, of: Weighable, note: string): Weighed | null {
  switch (amount.kind) {
    case 'weight':
      return amount.bare === true
        ? { g: round(amount.g), how: 'a number alone, read in the kitchen’s unit', sure: 'likely' }
        : { g: round(amount.g), how: 'as written', sure: 'sure' };
    case 'volume':
      return volume(amount, of, note);
    case 'count':
      return count(amount, of);
    case 'small':
      return small(amount, of);
    case 'share':
      return null;
  }
}
