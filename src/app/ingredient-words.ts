/** What the journal says of a change of an ingredient. */
import type { AllergenMarkInput } from '../contract/pantry.ts';
import type { IngredientRow } from './pantry-ingredient.ts';

/** Money in minor units as the kitchen's currency writes it. */
export const moneyIn = (currency: string, minor: number): string => `${(minor / 100).toFixed(2)} ${currency}`;

const marks = (value: unknown): string => {
  const list = value as readonly AllergenMarkInput[] | null;
  if (list === null) return 'not said';
  if (list.length === 0) return 'none';
  return list
    .map((m) => `${m.as ?? m.allergen}${m.checkLabel === true ? ' (check the label)' : ''}`)
    .join(', ');
};

const fractions = (value: unknown): string => {
  const all = Object.entries(value as Record<string, number | null>);
  return all.length === 0 ? 'as the table' : all.map(([k, v]) => `${k} ${v ?? 'not known'}`).join(', ');
};

const plain = (value: unknown): string =>
  value === null || value === '' ? 'not said' : String(value).slice(0, 120);

const fields: readonly [keyof IngredientRow, string, (value: unknown) => string][] = [
  ['name', 'name', plain],
  ['labelName', 'name on the label', plain],
  ['tableId', 'row of the table', plain],
  ['nutrients', 'composition', fractions],
  ['source', 'source', plain],
  ['allergens', 'allergens', marks],
  ['trimPct', 'trim %', plain],
  ['densityKgM3', 'density', plain],
  ['pieceG', 'grams a piece', plain],
  ['madeOf', 'made of', plain],
  ['note', 'note', plain],
];

/** Each field that differs, before and after. */
export function changedWords(before: IngredientRow, after: IngredientRow): string {
  const words = fields.flatMap(([field, name, say]) => {
    const [was, is] = [say(before[field]), say(after[field])];
    return was === is ? [] : [`${name} ${was} → ${is}`];
  });
  return words.length === 0 ? 'as it was' : words.join('; ');
}
