/** The table of the law as it is looked through: by animal, part, place; pure. */
import {
  animalsOf,
  bookOf,
  type LawAnswer,
  type LawPlace,
  lawOf,
  type PartLaw,
  partsLaw,
} from '../../../../core/properties/parts-law.ts';
import { searchLaw } from '../../../../core/properties/parts-law-search.ts';
import { plain } from '../../../shell/find.ts';

export interface LawAsked {
  readonly place: LawPlace;
  /** The table's own animal, or ''. */
  readonly animal: string;
  readonly asked: string;
  readonly status: string;
}

export const animalsIn = (place: LawPlace): string[] => [
  ...new Set(partsLaw.filter((r) => r.books.includes(bookOf(place))).map((r) => r.species)),
];

const rowKey = (row: { readonly species: string; readonly names: readonly string[] }) =>
  `${row.species} ${row.names.join()}`;

/** The rows that are meant. Every word must occur in the animal's or a part's names. */
export function rowsFor({ place, animal, asked, status }: LawAsked): PartLaw[] {
  const words = plain(asked).split(/\s+/).filter(Boolean);
  // The trade's own words for a part (chitterlings, melt) stand for its rows.
  const meant = words.length === 0 ? [] : searchLaw(asked, place).hits.map((h) => rowKey(h));
  return partsLaw.filter((row) => {
    if (!row.books.includes(bookOf(place))) return false;
    if (animal !== '' && row.species !== animal && row.species !== 'any') return false;
    if (status !== '' && row.status !== status) return false;
    const text = plain(`${row.species} ${row.names.join(' ')}`);
    if (meant.includes(rowKey(row))) return true;
    return words.every((w) => text.includes(w) || animalsOf(w).includes(row.species as never));
  });
}

/** What the table says of a part of an animal by the names a kitchen uses; null while either is empty. */
export const answerFor = (species: string, part: string, place: LawPlace): LawAnswer | null =>
  species.trim() === '' || part.trim() === '' ? null : lawOf(species.trim(), part.trim(), place);

export const partText = (row: PartLaw): string =>
  row.names.includes('*') ? 'every part' : row.names.join(', ');
