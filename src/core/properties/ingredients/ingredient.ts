/** What a row of the ingredient table is. Types only. */

import type { Confidence } from '../../sources.ts';
import type { AllergenMarks, Nutrients, UsAllergen } from '../food.ts';

/** How the composition was had. */
export type Had =
  /** The published row, as it stands. */
  | 'published'
  /** Reckoned from published rows; `equation` says how. */
  | 'derived'
  /** The published row of something near; `why` says of what. */
  | 'stand-in'
  /** What the substance is: water, a pure salt. */
  | 'by definition'
  /** No published row at hand: not known. */
  | 'none';

/** Animals by the word that their meat has in a list of ingredients. */
export type MeatSpecies = keyof typeof meatWords;
export const meatWords = {
  duck: 'duck',
  goose: 'goose',
  'guinea fowl': 'guinea fowl',
  pheasant: 'pheasant',
  quail: 'quail',
  pigeon: 'pigeon',
  grouse: 'grouse',
  chicken: 'chicken',
  turkey: 'turkey',
  pig: 'pork',
  lamb: 'lamb',
  beef: 'beef',
  veal: 'veal',
  deer: 'venison',
  elk: 'venison',
  'wild boar': 'wild boar',
  rabbit: 'rabbit',
  hare: 'hare',
  partridge: 'partridge',
  mutton: 'mutton',
} as const;

/**
 * What it is of the animal, in the sense of *meat* in Annex VII, part B, point 17 of Regulation (EU) 1169/2011. Only
 * `muscle` is meat: skeletal muscle with the fat and tissue on it, midriff and chewing muscle with it; heart, tongue, the
 * other muscles of the head, of hand and foot below the shank, and the tail are not, and stand as themselves.
 */
export type AnimalKind =
  | 'muscle'
  | 'fat'
  | 'skin'
  | 'named as itself'
  | 'mechanically separated'
  | 'made product';

export interface OfAnimal {
  readonly species: MeatSpecies;
  readonly kind: AnimalKind;
}

export interface Ingredient {
  /** 'duck-liver-raw' */
  readonly id: string;
  /** 'duck liver, raw' */
  readonly name: string;
  /** The trade's other words for it. */
  readonly also: readonly string[];
  readonly group: string;
  readonly nutrients: Nutrients;
  /** Carbohydrate as published, by difference, fibre in it, mass fraction. What there is to say where fibre is not known. */
  readonly carbohydrateWithFibre: number | null;
  /**
   * What the source leaves empty and follows from what the food is: alcohol in raw meat, fibre in animals, sugars where
   * there is no carbohydrate. Counted as 0, and named here.
   */
  readonly taken0: readonly (keyof Nutrients)[];
  /** As published, per 100 g of edible weight, by factors of the food's own; kJ is kcal × 4.184. */
  readonly energy: { readonly kJ: number; readonly kcal: number } | null;
  /** Of the weight as bought, what is thrown away, in the source's country [0–1]; and what that is. */
  readonly refuse: { readonly fraction: number; readonly what: string } | null;
  readonly had: Had;
  /** Key of the bibliography. */
  readonly source: string;
  /** Number of the published row; of the row that stands in; null where there is none. */
  readonly row: string | null;
  readonly confidence: Confidence;
  /** Of derived rows. */
  readonly equation: string | null;
  /** Who of the fourteen is in it; the union of what is sure and what a label decides. */
  readonly allergens: AllergenMarks;
  /** What only the US counts. */
  readonly usOnly: readonly UsAllergen[];
  /** Grams of one household measure: 'cup', 'cup chopped', 'tbsp', 'each', 'each large', 'clove', 'slice' … US volumes. */
  readonly measures: Readonly<Record<string, number>>;
  /** Whether these weights were published, or are common practice without a source. */
  readonly measuresFrom: 'source' | 'common practice';
  /** Of liquids, from the weight of a cup or spoon in the same source [kg/m³]; null otherwise. */
  readonly densityKgM3: number | null;
  readonly liquid: boolean;
  /** Null: not of a mammal or bird. */
  readonly animal: OfAnimal | null;
  /** Its word in a list of ingredients: species for meat, else its own name without how it was prepared. */
  readonly labelName: string;
  /** Not eaten (a fibrous casing): weighs, but is no ingredient. */
  readonly notEaten?: true;
  /** What has to be said beside it; '' where nothing has. */
  readonly note: string;
}

/** Volumes of the US household measures, exact by definition [ml]. */
export const measureMl = {
  tsp: 4.92892159375,
  tbsp: 14.78676478125,
  'fl oz': 29.5735295625,
  cup: 236.5882365,
  pint: 473.176473,
  quart: 946.352946,
} as const;
