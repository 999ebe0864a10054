/** How a row of the parts table is written. Conditions are in this program's own words; the citation holds the law's. */

/** The law books the rows were taken from. England, Scotland and Wales read GB; Northern Ireland and the EU read EU/NI. */
export type LawBook = 'GB' | 'EU/NI' | 'US';

export type LawWord =
  | 'food'
  | 'food on conditions'
  | 'by-product by default: ask'
  | 'prohibited'
  | 'not known: ask';

/**
 * How the row is known: read in a stored copy of the law's text or of an authority's page, partly so, from memory, or this
 * program's own reading of a text.
 */
export type LawConfidence = 'read' | 'partly read, partly from memory' | 'memory' | 'interpretation';

export interface PartLaw {
  readonly species: LawSpecies;
  /** Every name the part goes by, singular, lower case; a name that is not here is not known. */
  readonly names: readonly string[];
  readonly books: readonly LawBook[];
  readonly status: LawWord;
  readonly condition: string;
  readonly citation: string;
  readonly confidence: LawConfidence;
  /** Keys of the bibliography. */
  readonly sources: readonly string[];
  /** The civil day on which the row was last held against what `confidence` says it rests on. */
  readonly checked: string;
  /** Falls under the UK's rule on uncooked products containing meat (mammals only). */
  readonly uncookedRule?: true;
}

/** A row as it is written down; the day stands once for a list. */
export type LawRow = Omit<PartLaw, 'checked'>;

/** A list of rows that were checked on the same day. */
export const checkedOn = (day: string, rows: readonly LawRow[]): readonly PartLaw[] =>
  rows.map((row) => ({ ...row, checked: day }));

export type LawSpecies =
  | 'pig'
  | 'poultry'
  | 'poultry slaughtered on the farm'
  | 'cattle'
  | 'sheep or goat'
  | 'farmed deer'
  | 'wild deer'
  | 'wild boar'
  | 'farmed rabbit'
  | 'small wild game'
  | 'any';

export const both = ['GB', 'EU/NI'] as const;
export const us = ['US'] as const;

export const passed =
  'From an animal passed at inspection, identifiable to it, and meant for food from the start.';
export const meat = 'Reg (EC) 853/2004 Annex I points 1.1, 1.11, 1.12';
export const carcass = 'Reg (EC) 853/2004 Annex I points 1.1, 1.9, 1.10';
export const barred = 'Reg (EC) 853/2004 Annex III Section VI point 1';
export const handled = 'Reg (EC) 853/2004 Annex III Section I Chapter IV point 18';
export const treated = 'Reg (EC) 853/2004 Annex III Section XIII';
export const notSeparated = 'Reg (EC) 853/2004 Annex III Section V Chapter III point 1';
export const poultryChapters = 'Reg (EC) 853/2004 Annex III Section II Chapters IV–V';
export const unfit = 'Reg (EU) 2019/627 Article 45';
export const tse = 'Reg (EC) 999/2001 Article 8 and Annex V point 1';
export const uncooked = 'Products Containing Meat etc. (England) Regulations 2014 (SI 2014/3001) reg. 5';

export const mixed = 'partly read, partly from memory';
