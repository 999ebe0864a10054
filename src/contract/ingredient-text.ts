/**
 * A list of ingredients as a chef writes it, read into foods and weights. Every guess is shown as one; what is not
 * understood is handed back as it was typed, and nothing that was typed is dropped. Loads the table of ingredients: a
 * screen imports it when somebody pastes.
 */
import { findIngredient } from '../core/properties/ingredients/find.ts';
import type { Ingredient } from '../core/properties/ingredients/ingredient.ts';
import { indexNames, searchNames } from '../core/properties/ingredients/search.ts';
import { ingredientById } from '../core/properties/ingredients/table.ts';
import type { UnitSystem } from '../core/units.ts';
import { type Amount, bareWeight, pieceWord } from './ingredient-amount.ts';
import { type Parted, partsOf } from './ingredient-parts.ts';
import { type Sure, weigh } from './ingredient-weigh.ts';
import type { LineOf } from './pantry.ts';

/** A food of the kitchen's own that a line may mean: an ingredient, a part, a dish. */
export interface KnownFood {
  readonly of: LineOf;
  readonly name: string;
  readonly also?: readonly string[];
  /** Row that it rests on: its measures hold. */
  readonly tableId?: string | null;
  readonly pieceG?: number | null;
  readonly densityKgM3?: number | null;
}

export interface FoodGuess {
  readonly of: LineOf;
  readonly name: string;
  /** How well the name fits, 0–1. */
  readonly score: number;
}

export interface ReadIngredient {
  /** As it was typed. */
  readonly text: string;
  /** The name in it, and what else was said: 'pork shoulder', 'diced'. */
  readonly name: string;
  readonly note: string;
  /** What it is taken for; null where nothing is near enough. */
  readonly guess: FoodGuess | null;
  /** What else it may be, likeliest first. */
  readonly alternatives: readonly FoodGuess[];
  /** Weight [g]; null where none was said or nothing says what it weighs. */
  readonly g: number | null;
  /** Weights of a range's ends [g]; `g` is its middle. */
  readonly range: readonly [number, number] | null;
  /** Of the weight of the meat [%], where the amount was said so: then `g` is null. */
  readonly pctOfMeat: number | null;
  /** How the weight was had: '3 × 33 g, a large one, SR28 01124'. */
  readonly how: string;
  /** The lesser of the food's and the weight's. Only `sure` is taken without a look. */
  readonly sure: Sure | 'not understood';
  /** What is not understood, and what to write instead; '' where all is. */
  readonly why: string;
}

interface Candidate extends FoodGuess {
  readonly row: Ingredient | null;
  readonly known: KnownFood | null;
}

const whole = 0.96;

/** Looks a name up among the kitchen's own and in the table; the kitchen's own come first among equals. */
function finderOf(known: readonly KnownFood[]): (name: string) => Candidate[] {
  const own = indexNames(
    known.map((food, rank) => ({ id: String(rank), name: food.name, also: food.also ?? [], rank, food })),
  );
  return (name) => {
    const mine = searchNames(own, name, 6).map(({ item: { food }, score }) => ({
      of: food.of,
      name: food.name,
      score,
      row: food.tableId == null ? null : (ingredientById(food.tableId) ?? null),
      known: food,
    }));
    const published = findIngredient(name, 8).map(({ row, score }) => ({
      of: { kind: 'table', id: row.id } as const,
      name: row.name,
      score,
      row,
      known: null,
    }));
    return [...mine, ...published].sort(
      (a, b) => b.score + (b.known === null ? 0 : 0.02) - a.score - (a.known === null ? 0 : 0.02),
    );
  };
}

/** Said of how a food is cut or brought, not of which food it is. */
const prepared =
  /\b(?:finely|roughly|coarsely|thinly|freshly|very|well|hand|diced|chopped|sliced|cubed|peeled|picked|crushed|grated|melted|softened|cold|ice-cold|warm|hot|chilled|trimmed|boned|boneless|deboned|cut|shredded|squeezed|beaten|washed|rinsed|drained|strained|soaked|toasted|minced|ground|fresh|large|medium|small|leaves|leaf|extra|optional|good|best)\b/gi;

function named(find: (name: string) => Candidate[], name: string, note: string): Candidate[] {
  const asTyped = find(name);
  const bare = name.replaceAll(prepared, ' ').trim();
  const without = bare === name || bare === '' ? [] : find(bare);
  const best = (without[0]?.score ?? 0) > (asTyped[0]?.score ?? 0) ? without : asTyped;
  // Equals are told apart by what was said behind the comma: duck breast, roast.
  if (note === '' || best.length < 2 || best[0]!.score - best[1]!.score > 0.02) return best;
  const told = find(`${name} ${note}`)[0];
  const same = best.find(
    (c) =>
      told !== undefined &&
      JSON.stringify(c.of) === JSON.stringify(told.of) &&
      best[0]!.score - c.score <= 0.02,
  );
  return same === undefined ? best : [same, ...best.filter((c) => c !== same)];
}

const levels: readonly ReadIngredient['sure'][] = ['sure', 'likely', 'guess', 'not understood'];
const lesser = (...of: readonly ReadIngredient['sure'][]): ReadIngredient['sure'] =>
  levels[Math.max(...of.map((level) => levels.indexOf(level)))]!;

function sureOfName(found: readonly Candidate[]): ReadIngredient['sure'] {
  const [first, second] = found;
  if (first === undefined || first.score < 0.55) return 'not understood';
  if (first.score < whole) return 'guess';
  const tie = second !== undefined && second.score >= first.score - 0.005 && second.known === null;
  return tie && first.known === null ? 'likely' : 'sure';
}

/** Curing salts differ tenfold: none is taken by its name alone. */
const strengthOf = (found: Candidate | undefined): string =>
  found?.row?.id.startsWith('curing-salt-') && found.score < 1 && found.known === null
    ? 'curing salts differ tenfold in strength: choose the one on your packet'
    : '';

const weighableOf = (of: Candidate | null) => ({
  row: of?.row ?? null,
  pieceG: of?.known?.pieceG ?? null,
  densityKgM3: of?.known?.densityKgM3 ?? null,
});

const nothing = { g: null, range: null, pctOfMeat: null, how: '' } as const;

function weighed(amount: Amount, taken: Parted, first: Candidate | null) {
  if (amount.kind === 'share')
    return {
      ...nothing,
      pctOfMeat: amount.pct,
      how: `${Number(amount.pct.toPrecision(6))} % of the meat`,
      sure: 'sure' as const,
      why: '',
    };
  const found = weigh(amount, weighableOf(first), taken.note);
  if (found === null)
    return {
      ...nothing,
      sure: 'not understood' as const,
      why:
        first === null
          ? ''
          : `nothing says what ${taken.amountText.trim() || 'it'} of ${first.name} weighs: write it in g`,
    };
  if (taken.range === null)
    return {
      g: found.g,
      range: null,
      pctOfMeat: null,
      how: taken.about ? `about: ${found.how}` : found.how,
      sure: taken.about ? lesser(found.sure, 'likely') : found.sure,
      why: '',
    };
  const [low, high] = taken.range;
  const middle = (low + high) / 2;
  const end = (n: number) => Number(((found.g * n) / middle).toPrecision(6));
  return {
    g: found.g,
    range: [end(low), end(high)] as const,
    pctOfMeat: null,
    how: `the middle of ${low} to ${high}: ${found.how}`,
    sure: 'guess' as const,
    why: '',
  };
}

function readOne(taken: Parted, find: (name: string) => Candidate[]): ReadIngredient {
  let { name, amount } = taken;
  let found = name === '' ? [] : named(find, name, taken.note);
  // 3 garlic cloves: the last word is the unit, unless it is the food itself.
  const tail = /^(.+)\s+([a-z]+)$/i.exec(name);
  const unit = tail === null ? null : pieceWord(tail[2]!);
  if (amount?.kind === 'count' && amount.unit === null && unit !== null && unit !== 'each') {
    const short = named(find, tail![1]!, taken.note);
    if ((short[0]?.score ?? 0) >= Math.min(whole, (found[0]?.score ?? 0) - 0.03)) {
      found = short;
      name = tail![1]!;
      amount = { ...amount, unit };
    }
  }
  // Gelatine by the sheet is leaf gelatine: among those called so, the one that such an amount is said of.
  if (amount !== null && amount.kind !== 'share') {
    const said = amount;
    const fits = found.find((c) => c.score >= whole && weigh(said, weighableOf(c), taken.note) !== null);
    if (fits !== undefined) found = [fits, ...found.filter((c) => c !== fits)];
  }
  const cure = strengthOf(found[0]);
  const nameSure = lesser(sureOfName(found), cure === '' ? 'sure' : 'guess');
  const first = nameSure === 'not understood' ? null : found[0]!;
  const guessOf = ({ of, name: called, score }: Candidate): FoodGuess => ({ of, name: called, score });
  const base = {
    text: taken.text,
    name,
    note: taken.note,
    guess: first === null ? null : guessOf(first),
    alternatives: found.slice(first === null ? 0 : 1, 6).map(guessOf),
  };
  const noName =
    name === ''
      ? 'no food is named'
      : first === null
        ? `nothing is called “${name.slice(0, 60)}”: choose or write it`
        : '';
  if (taken.problem !== '') return { ...base, ...nothing, sure: 'not understood', why: taken.problem };
  if (amount === null)
    return {
      ...base,
      ...nothing,
      sure: lesser(nameSure, 'not understood'),
      why: [noName, cure, 'no amount is said'].filter(Boolean).join('; '),
    };
  const weight = weighed(amount, { ...taken, name, amount }, first);
  return {
    ...base,
    g: weight.g,
    range: weight.range,
    pctOfMeat: weight.pctOfMeat,
    how: weight.how,
    sure: lesser(nameSure, weight.sure),
    why: [noName, cure, weight.why].filter(Boolean).join('; '),
  };
}

/**
 * Reads a pasted list of ingredients. One item a line, or parted by semicolons, bullets, or commas before an amount; a
 * table from a spreadsheet too. Bare numbers of a table are in the kitchen's unit.
 * @example readIngredients('3 egg whites', { system: 'metric' })[0].g // 99
 */
export function readIngredients(
  text: string,
  { system, known = [] }: { readonly system: UnitSystem; readonly known?: readonly KnownFood[] },
): ReadIngredient[] {
  const find = finderOf(known);
  const isFood = (name: string) => (find(name)[0]?.score ?? 0) >= whole;
  return partsOf(text, system, isFood, bareWeight).map((taken) => readOne(taken, find));
}
