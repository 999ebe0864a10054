/** How much, in a chef's words: 1½ kg, 1 lb 4 oz, 2-3, 2 × 105 g, three, a pinch, 18 g/kg. Reads; weighs nothing. */
import { smallAmounts } from '../core/properties/ingredients/kitchen-amounts.ts';
import { parseQuantity, toBase, type UnitSystem } from '../core/units.ts';

export type Spoon = 'tsp' | 'tbsp' | 'cup' | 'fl oz';

export type Amount =
  | {
      readonly kind: 'weight';
      readonly g: number /** A bare number, read in the kitchen's unit. */;
      readonly bare?: true;
    }
  | {
      readonly kind: 'volume';
      readonly n: number;
      readonly ml: number;
      readonly unit: string;
      readonly spoon: Spoon | null;
    }
  | { readonly kind: 'count'; readonly n: number; readonly unit: string | null; readonly size: string | null }
  | { readonly kind: 'small'; readonly n: number; readonly word: string }
  /** Of the weight of the meat. */
  | { readonly kind: 'share'; readonly pct: number };

export interface TakenAmount {
  readonly amount: Amount;
  /** From, to, where a range was typed: the amount is its middle, times so much. */
  readonly range: readonly [number, number] | null;
  readonly about: boolean;
  /** What stands behind it. */
  readonly rest: string;
}

export interface AmountProblem {
  readonly problem: string;
}

const words: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  twelve: 12,
  dozen: 12,
  half: 0.5,
};

const masses = new Set(
  'g gr gram grams gramme grammes kg kgs kilo kilos kilogram kilograms mg lb lbs pound pounds oz ozs ounce ounces'.split(
    ' ',
  ),
);

/** [ml, spoon]; US volumes exact by definition, metric spoons 5 and 15 ml. */
function volumeOf(word: string, system: UnitSystem): readonly [number, string, Spoon | null] | null {
  const us = system === 'US';
  switch (word) {
    case 'ml':
    case 'millilitre':
    case 'millilitres':
    case 'milliliter':
    case 'milliliters':
      return [1, 'ml', null];
    case 'cl':
      return [10, 'cl', null];
    case 'dl':
      return [100, 'dl', null];
    case 'l':
    case 'litre':
    case 'litres':
    case 'liter':
    case 'liters':
      return [1_000, 'l', null];
    case 'tsp':
    case 'tsps':
    case 'teaspoon':
    case 'teaspoons':
      return [us ? 4.92892159375 : 5, 'teaspoon', 'tsp'];
    case 'dessertspoon':
    case 'dessertspoons':
      return [10, 'dessertspoon', null];
    case 'tbsp':
    case 'tbsps':
    case 'tbs':
    case 'tablespoon':
    case 'tablespoons':
      return [us ? 14.78676478125 : 15, 'tablespoon', 'tbsp'];
    case 'cup':
    case 'cups':
      return [us ? 236.5882365 : 250, 'cup', 'cup'];
    case 'floz':
      return [us ? 29.5735295625 : 28.4130625, 'fluid ounce', us ? 'fl oz' : null];
    case 'pint':
    case 'pints':
    case 'pt':
      return [us ? 473.176473 : 568.26125, us ? 'US pint' : 'imperial pint', null];
    case 'quart':
    case 'quarts':
      return [us ? 946.352946 : 1_136.5225, us ? 'US quart' : 'imperial quart', null];
    default:
      return null;
  }
}

const pieces: Readonly<Record<string, string>> = {
  clove: 'clove',
  slice: 'slice',
  leaf: 'leaf',
  sprig: 'sprig',
  stalk: 'stalk',
  stick: 'stick',
  head: 'head',
  bulb: 'bulb',
  bunch: 'bunch',
  sheet: 'sheet',
  rasher: 'rasher',
  piece: 'each',
  tin: 'tin',
  can: 'tin',
  jar: 'jar',
  packet: 'packet',
  tub: 'tub',
  carton: 'carton',
  bottle: 'bottle',
  bag: 'bag',
  box: 'box',
};
const singular = (word: string): string =>
  word === 'leaves'
    ? 'leaf'
    : /(ches|shes|sses)$/.test(word)
      ? word.slice(0, -2)
      : word.endsWith('s') && !word.endsWith('ss')
        ? word.slice(0, -1)
        : word;

/** What a food is bought in: what it weighs stands in brackets or nowhere. */
export const isContainer = (unit: string): boolean =>
  ['tin', 'jar', 'packet', 'tub', 'carton', 'bottle', 'bag', 'box'].includes(unit);

/** The unit that a word is for pieces: cloves → clove; null where it is none. */
export const pieceWord = (word: string): string | null => pieces[singular(word.toLowerCase())] ?? null;

const vulgar = '½¼¾⅓⅔⅛⅜⅝⅞';
const number = new RegExp(
  `^(?:\\d+\\s+\\d+/\\d+|\\d+/\\d+|\\d+(?:[.,]\\d+)*\\s?[${vulgar}]|\\d+(?:[.,]\\d+)*|[.,]\\d+|[${vulgar}])`,
);

type Number_ = { readonly value: number; readonly rest: string } | AmountProblem;

function takeNumber(text: string): Number_ | null {
  const digits = number.exec(text)?.[0];
  if (digits === undefined) return null;
  const read = parseQuantity(digits, 'number', '');
  if (!read.ok) return { problem: read.message };
  const rest = text.slice(digits.length);
  const dozen = /^\s+dozen\b/i.exec(rest)?.[0] ?? '';
  return { value: read.value * (dozen === '' ? 1 : 12), rest: rest.slice(dozen.length) };
}

function takeWord(text: string): Number_ | null {
  const word = /^([a-z]+)(?=\s)/i.exec(text)?.[1]?.toLowerCase();
  const value = word === undefined || !Object.hasOwn(words, word) ? undefined : words[word];
  if (value === undefined) return null;
  let rest = text.slice(word!.length).trimStart();
  let times = 1;
  const next = /^([a-z]+)(?=\s)/i.exec(rest)?.[1]?.toLowerCase();
  if (
    (word === 'a' || word === 'half') &&
    next !== undefined &&
    ['dozen', 'half', 'a', 'an'].includes(next)
  ) {
    times = words[next]!;
    rest = rest.slice(next.length).trimStart();
  }
  if (/^(few|little|bit)\b/i.test(rest)) return null;
  return { value: value * times, rest };
}

const about = /^(?:about|approx(?:imately)?\.?|circa|ca\.?|roughly|around|[~≈])\s*/i;
const unitWord = /^(fl\.?\s*oz\.?|[a-z]+\.?|%)/i;

interface Unit {
  readonly of: (n: number) => Amount;
  readonly rest: string;
}

/** The unit that stands first in a text, if one does. */
function takeUnit(text: string, system: UnitSystem): Unit | null {
  const found = unitWord.exec(text)?.[0];
  if (found === undefined) return null;
  const word = found.toLowerCase().replaceAll(/[.\s]/g, '');
  const rest = text.slice(found.length);
  if (word === '%') {
    const of = /^\s*(?:of (?:the )?meat)?/i.exec(rest)![0];
    return { of: (pct) => ({ kind: 'share', pct }), rest: rest.slice(of.length) };
  }
  if (masses.has(word)) {
    const perKg = /^\s*(?:\/|per)\s*(?:kg|kilo(?:gram)?)\b(?:\s*of (?:the )?meat)?/i.exec(rest)?.[0];
    const g = (n: number) => weightOf(n, word);
    if (perKg !== undefined)
      return { of: (n) => ({ kind: 'share', pct: g(n) / 10 }), rest: rest.slice(perKg.length) };
    return { of: (n) => ({ kind: 'weight', g: g(n) }), rest };
  }
  const volume = volumeOf(word, system);
  if (volume !== null)
    return {
      of: (n) => ({ kind: 'volume', n, ml: n * volume[0], unit: volume[1], spoon: volume[2] }),
      rest,
    };
  const one = singular(word);
  if (Object.hasOwn(pieces, one) && rest.trim() !== '' && !/^\s*[,(]/.test(rest))
    return { of: (n) => ({ kind: 'count', n, unit: pieces[one]!, size: null }), rest };
  if (Object.hasOwn(smallAmounts, one) && rest.trim() !== '')
    return { of: (n) => ({ kind: 'small', n, word: one }), rest };
  return null;
}

function weightOf(n: number, unit: string): number {
  const read = parseQuantity(`1 ${unit}`, 'mass');
  return n * (read.ok ? read.value : Number.NaN);
}

const clean = (n: number): number => Math.round(n * 1e6) / 1e6;

/** Takes the amount that a text begins with; null where it begins with none. */
export function takeAmount(text: string, system: UnitSystem): TakenAmount | AmountProblem | null {
  const lead = about.exec(text)?.[0] ?? '';
  let rest = text.slice(lead.length);
  const small = /^(?:(?:a|an|one)\s+)?(?:good |generous |small |large |big )?([a-z]+)\b(?=\s)/i.exec(rest);
  const read = takeNumber(rest) ?? (smallFirst(small) ? null : takeWord(rest));
  if (read === null) {
    if (!smallFirst(small)) return null;
    return {
      amount: { kind: 'small', n: 1, word: singular(small![1]!.toLowerCase()) },
      range: null,
      about: true,
      rest: afterOf(rest.slice(small![0].length)),
    };
  }
  if ('problem' in read) return read;
  let { value } = read;
  rest = read.rest;
  let range: readonly [number, number] | null = null;
  const times = /^\s*[x×*]\s*(?=[\d½¼¾⅓⅔⅛.,])/i.exec(rest)?.[0];
  const upTo = /^\s*(?:-|–|—|to|or)\s*(?=[\d½¼¾⅓⅔⅛.,])/i.exec(rest)?.[0];
  if (times !== undefined || upTo !== undefined) {
    const second = takeNumber(rest.slice((times ?? upTo)!.length));
    if (second === null) return null;
    if ('problem' in second) return second;
    rest = second.rest;
    if (times !== undefined) value *= second.value;
    else if (second.value < value) return { problem: `${text.slice(0, 40)}: a range that runs backwards` };
    else {
      range = [value, second.value];
      value = (value + second.value) / 2;
    }
  }
  const size = /^\s*(extra large|large|medium|small|jumbo)(?=\s)/i.exec(rest);
  const unit = takeUnit((size === null ? rest : rest.slice(size[0].length)).trimStart(), system);
  const made: Amount =
    unit === null
      ? { kind: 'count', n: clean(value), unit: null, size: size?.[1]?.toLowerCase() ?? null }
      : unit.of(clean(value));
  const amount = made.kind === 'count' ? { ...made, size: size?.[1]?.toLowerCase() ?? null } : made;
  rest = unit === null ? (size === null ? rest : rest.slice(size[0].length)) : unit.rest;
  const more = amount.kind === 'weight' ? followed(rest, system) : null;
  if (more !== null && amount.kind === 'weight')
    return {
      amount: { kind: 'weight', g: amount.g + more.g },
      range: null,
      about: lead !== '',
      rest: afterOf(more.rest),
    };
  // Letters right behind the digits that are no unit: 7up, 3rd. No amount.
  if (unit === null && size === null && /^[a-z]/i.test(rest) && /\d$/.test(text.slice(0, -rest.length)))
    return null;
  return {
    amount,
    range,
    about: lead !== '',
    rest: afterOf(rest, amount.kind === 'weight' || amount.kind === 'volume'),
  };
}

const smallFirst = (found: RegExpExecArray | null): boolean =>
  found !== null && Object.hasOwn(smallAmounts, singular(found[1]!.toLowerCase()));

/** `1 lb 4 oz`: a smaller weight behind a larger one. */
function followed(text: string, system: UnitSystem): { readonly g: number; readonly rest: string } | null {
  const at = /^[ ]+(?=\d)/.exec(text)?.[0];
  if (at === undefined) return null;
  const second = takeNumber(text.slice(at.length));
  if (second === null || 'problem' in second) return null;
  const unit = takeUnit(second.rest.trimStart(), system);
  const amount = unit?.of(second.value);
  return amount?.kind === 'weight' ? { g: amount.g, rest: unit!.rest } : null;
}

/** 400 g tins of tomatoes: the tin says nothing more. */
const container = /^\s*(?:tins?|cans?|jars?|packets?|tubs?|cartons?|bottles?|bags?|boxes|box)\s+(?=\S)/i;
const afterOf = (text: string, weight = false): string =>
  (weight ? text.replace(container, '') : text).replace(/^\s*(?:of\b\s*(?:the\b)?)?\s*/i, '');

/** A number that stands alone in its cell, as a weight in the kitchen's unit. */
export function bareWeight(n: number, system: UnitSystem): Amount {
  return { kind: 'weight', g: clean(toBase(n, 'mass', system === 'US' ? 'oz' : 'g')), bare: true };
}
