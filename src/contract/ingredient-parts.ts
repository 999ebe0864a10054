/** Parts a pasted list into its items, and each item into amount, name and note. Drops nothing but what parts them. */
import type { UnitSystem } from '../core/units.ts';
import { type Amount, isContainer, takeAmount } from './ingredient-amount.ts';

export interface Parted {
  readonly text: string;
  readonly name: string;
  readonly note: string;
  readonly amount: Amount | null;
  readonly amountText: string;
  readonly range: readonly [number, number] | null;
  readonly about: boolean;
  /** Why the amount cannot be read; ''. */
  readonly problem: string;
}

type IsFood = (name: string) => boolean;
type Bare = (n: number, system: UnitSystem) => Amount;

const noAmount = { amount: null, amountText: '', range: null, about: false, problem: '' } as const;

const begins = (text: string, system: UnitSystem): boolean => takeAmount(text, system) !== null;

/** An amount that ends a text: 'salt 18 g/kg', 'cream: 200 ml'. */
function amountAtEnd(text: string, system: UnitSystem, bare: Bare) {
  for (const found of text.matchAll(/(?<=^|[\s:=–—(-])(?=[\d½¼¾⅓⅔⅛~≈])/g)) {
    const at = found.index;
    if (at === 0) continue;
    const taken = takeAmount(text.slice(at), system);
    if (taken === null) continue;
    const name = text.slice(0, at).replace(/[\s:=–—-]+$/, '');
    if (name === '') continue;
    if ('problem' in taken) return { ...noAmount, name, problem: taken.problem };
    if (taken.rest !== '') continue;
    const { amount } = taken;
    const last =
      amount.kind === 'count' && amount.unit === null && amount.size === null
        ? bare(amount.n, system)
        : amount;
    return {
      ...noAmount,
      name,
      amount: last,
      amountText: text.slice(at),
      range: taken.range,
      about: taken.about,
    };
  }
  return null;
}

/** Cuts what stands in brackets out of a text. */
function outOfBrackets(text: string): { readonly text: string; readonly inside: readonly string[] } {
  const inside: string[] = [];
  const rest = text.replaceAll(/\(([^()]*)\)|\[([^[\]]*)\]/g, (_, round: string, square: string) => {
    inside.push((round ?? square).trim());
    return ' ';
  });
  return { text: rest.replaceAll(/\s+/g, ' ').trim(), inside: inside.filter((note) => note !== '') };
}

/** A weight in brackets says what a piece or a tin weighs: 2 onions (about 300 g). */
function weightInside(inside: readonly string[], system: UnitSystem) {
  for (const note of inside) {
    const taken = takeAmount(note, system);
    if (taken === null || 'problem' in taken || taken.amount.kind !== 'weight') continue;
    if (/^(?:each|a piece|apiece)\b/i.test(taken.rest)) return { taken, each: true };
    if (taken.rest === '' || /^(?:in all|total|drained|net)\b/i.test(taken.rest))
      return { taken, each: false };
  }
  return null;
}

/** 'to taste': said in place of an amount. */
const noneSaid = /[\s,]*\b(?:to taste|as needed|as required|q\.?\s?s\.?)[\s.]*$/i;

/** 'juice of 1 lemon' is 1 of lemon juice. */
const juice = /^(?:the\s+)?(?:(?:finely\s+)?grated\s+)?(juice|zest|rind|peel)\s+of\s+(?=\S)/i;

function parted(text: string, system: UnitSystem, bare: Bare): Parted {
  const { text: whole, inside } = outOfBrackets(text);
  const taste = noneSaid.exec(whole)?.[0] ?? '';
  const squeezed = juice.exec(whole);
  const open = whole.slice(squeezed?.[0].length ?? 0, whole.length - taste.length);
  const cut = commaOf(open);
  const main = (cut === -1 ? open : open.slice(0, cut)).trim();
  const behind = cut === -1 ? '' : open.slice(cut + 1).trim();
  const taken = takeAmount(main, system);
  const start =
    taken === null
      ? null
      : 'problem' in taken
        ? { ...noAmount, name: main, problem: taken.problem }
        : {
            ...noAmount,
            name: taken.rest,
            amount: taken.amount,
            amountText: main.slice(0, main.length - taken.rest.length),
            range: taken.range,
            about: taken.about,
          };
  const read = start ??
    amountAtEnd(main, system, bare) ??
    trailing(main, behind, system) ?? { ...noAmount, name: main };
  const weight = weightInside(inside, system);
  const note = [behind, ...inside, taste.replace(/^[\s,]+/, '')].filter(Boolean).join(', ');
  const called = read.name.replace(/[\s:;,.–—-]+$/, '').trim();
  const made = {
    ...read,
    text,
    name: squeezed === null ? called : `${singular(called)} ${squeezed[1]}`,
    note,
  };
  if (weight === null || made.amount?.kind === 'weight' || weight.taken.amount.kind !== 'weight') return made;
  const { amount } = made;
  const each = weight.each || (amount?.kind === 'count' && isContainer(amount.unit ?? ''));
  const times = each && amount?.kind === 'count' ? amount.n : 1;
  return { ...made, amount: { kind: 'weight', g: weight.taken.amount.g * times }, range: null, about: true };
}

const singular = (name: string): string => name.replace(/(?<=[a-z])s$/i, '');

/** 'salt, 10 g': the amount stands behind the comma. */
function trailing(main: string, behind: string, system: UnitSystem) {
  const taken = takeAmount(behind, system);
  if (taken === null) return null;
  if ('problem' in taken) return { ...noAmount, name: main, problem: taken.problem };
  if (taken.rest !== '') return null;
  return {
    ...noAmount,
    name: main,
    amount: taken.amount,
    amountText: behind,
    range: taken.range,
    about: taken.about,
  };
}

/** First comma that is not within a number. */
const commaOf = (text: string): number => text.search(/,(?!\d)|(?<!\d),/);

/** Where commas of a line part items: before an amount, before a food named alone, before 'name amount'. */
function commaItems(line: string, system: UnitSystem, isFood: IsFood, bare: Bare): string[] {
  const pieces = line.split(/(?<!\d),|,(?!\d)/);
  const items: string[] = [];
  for (const piece of pieces) {
    const text = piece.trim();
    const last = items.at(-1);
    if (last === undefined) {
      items.push(piece);
      continue;
    }
    const complete = parted(last.trim(), system, bare).amount !== null;
    const own =
      (begins(text, system) && !(!complete && onlyAmount(text, system))) ||
      (complete && amountAtEnd(text, system, bare) !== null) ||
      juice.test(text) ||
      (text !== '' && isFood(text.replace(noneSaid, '')));
    // A bracket that is still open holds its comma.
    const open = (last.match(/[([]/g)?.length ?? 0) > (last.match(/[)\]]/g)?.length ?? 0);
    if (own && !open) items.push(piece);
    else items[items.length - 1] = `${last},${piece}`;
  }
  return items;
}

function onlyAmount(text: string, system: UnitSystem): boolean {
  const taken = takeAmount(text, system);
  return taken !== null && !('problem' in taken) && taken.rest === '';
}

/** 'salt and pepper': two foods named side by side without an amount. */
function pairOf(item: string, system: UnitSystem, isFood: IsFood): string[] {
  if (begins(item.trim(), system) || isFood(item.trim())) return [item];
  const at = /\s+(?:and|&|\+)\s+/i.exec(item);
  if (at === null) return [item];
  const left = item.slice(0, at.index);
  const right = item.slice(at.index + at[0].length);
  // The word between them stays with the second, so that nothing typed is lost.
  return isFood(left.trim()) && isFood(right.replace(noneSaid, '').trim())
    ? [left, item.slice(at.index)]
    : [item];
}

/** A row of a spreadsheet: a name and a weight, each in its cell. */
function tableRow(line: string, system: UnitSystem, bare: Bare): Parted | null {
  const tabs = line.includes('\t');
  const cells = line.split(tabs ? '\t' : ';').map((cell) => cell.trim());
  const full = cells.filter((cell) => cell !== '');
  if (!tabs && full.length !== 2) return null;
  const amounts = full.map((cell) => takeAmount(cell, system));
  const problem = amounts.find((a) => a !== null && 'problem' in a);
  const at = amounts.findIndex((a) => a !== null && !('problem' in a) && a.rest === '');
  const nameAt = full.findIndex((_, i) => i !== at && amounts[i] === null);
  if (nameAt === -1 || (at === -1 && problem === undefined)) return null;
  const name = full[nameAt]!;
  const note = full.filter((_, i) => i !== at && i !== nameAt).join(', ');
  if (at === -1)
    return { ...noAmount, text: line.trim(), name, note, problem: (problem as { problem: string }).problem };
  const taken = amounts[at] as Exclude<(typeof amounts)[number], null | { problem: string }>;
  const { amount } = taken;
  return {
    ...noAmount,
    text: line.trim(),
    name,
    note,
    amount:
      amount.kind === 'count' && amount.unit === null && amount.size === null
        ? bare(amount.n, system)
        : amount,
    amountText: full[at]!,
    range: taken.range,
    about: taken.about,
  };
}

/** The items of a pasted list. Everything typed stands in the text of one of them, but separators and bullets. */
export function partsOf(text: string, system: UnitSystem, isFood: IsFood, bare: Bare): Parted[] {
  return text.split(/\r\n|[\r\n\u2028\u2029]/).flatMap((raw) => {
    const line = raw.replace(/^\s*[-–—*•·▪◦‣]+(?=\s)/, '');
    if (line.trim() === '') return [];
    if (/[\t;]/.test(line)) {
      const row = tableRow(line, system, bare);
      if (row !== null) return [row];
    }
    return line
      .split(/[;\t•▪◦‣]/)
      .flatMap((part) => commaItems(part, system, isFood, bare))
      .flatMap((item) => pairOf(item, system, isFood))
      .map((item) => item.trim())
      .filter((item) => item !== '')
      .map((item) => {
        const joined = /^(?:and|&|\+)\s+/i.exec(item)?.[0] ?? '';
        return { ...parted(item.slice(joined.length), system, bare), text: item };
      });
  });
}
