/** How a table of published yields is written: studies, each of one kind of animal, with its rows in per cent of one whole. */
import type { Confidence } from '../sources.ts';

export type YieldSpecies =
  | 'chicken'
  | 'spent hen'
  | 'duck'
  | 'goose'
  | 'turkey'
  | 'guinea fowl'
  | 'pheasant'
  | 'quail'
  | 'pigeon'
  | 'pig'
  | 'lamb'
  | 'beef'
  | 'rabbit'
  | 'deer'
  | 'salmon'
  | 'cod'
  | 'haddock'
  | 'mackerel'
  | 'herring'
  | 'flatfish'
  | 'sea bass';

/** What is 100 %. dressed: as the study's `animals` say, with or without neck and giblets. */
export type YieldBasis = 'live' | 'dressed' | 'chilled';

export interface YieldRow {
  readonly part: string;
  readonly pct: number;
  /** What is 100 % for this row, where it is a part: the skin of the neck, in % of the neck. */
  readonly of?: string;
  /** The plus-minus as printed, in per cent of the same whole. Only an SD says how animals differ. */
  readonly spread?: { readonly value: number; readonly as: 'SD' | 'not said' };
  /** Grams of boneless part from a pound of bird and the fraction of bone in it, added (or, sign −1, taken off). */
  readonly raw?: readonly { readonly gPerLb: number; readonly bone: number; readonly sign?: -1 }[];
  /** Already inside another row: left out of sums. */
  readonly within?: string;
  readonly note?: string;
}

export interface YieldStudy {
  /** kebab-case, unique. */
  readonly id: string;
  readonly species: YieldSpecies;
  readonly animals: string;
  readonly basis: YieldBasis;
  /** Animals measured, where the source says. */
  readonly n?: number;
  readonly source: string;
  /** table, abstract: printed there. derived: computed from printed weights. brochure: rounded, of low grade. */
  readonly evidence: 'table' | 'abstract' | 'derived' | 'brochure';
  readonly confidence: Confidence;
  readonly note?: string;
  readonly rows: readonly YieldRow[];
}

export const sd = (value: number) => ({ spread: { value, as: 'SD' as const } });
/** A plus-minus of which the source does not say whether it is of the animals or of their mean. */
export const plusMinus = (value: number) => ({ spread: { value, as: 'not said' as const } });
