/** What a food is, as a kitchen reckons with it: what is in it, what it may do to a guest, what it costs. Types only. */

/**
 * Mass fractions of the edible weight, 0–1. `null` is not known, which is never zero. Carbohydrate is without fibre; salt
 * is sodium × 2.5 and lies within ash; saturates lie within fat, sugars within carbohydrate. Water, protein, fat,
 * carbohydrate, fibre, ash and alcohol together close to 1.
 */
export interface Nutrients {
  readonly water: number | null;
  readonly protein: number | null;
  readonly fat: number | null;
  readonly saturates: number | null;
  readonly carbohydrate: number | null;
  readonly sugars: number | null;
  readonly fibre: number | null;
  readonly ash: number | null;
  readonly salt: number | null;
  readonly alcohol: number | null;
}
export type Nutrient = keyof Nutrients;
export const nutrients = [
  'water',
  'protein',
  'fat',
  'saturates',
  'carbohydrate',
  'sugars',
  'fibre',
  'ash',
  'salt',
  'alcohol',
] as const satisfies readonly Nutrient[];

/** The fourteen of Annex II of Regulation (EU) 1169/2011, which Great Britain keeps. */
export const allergens = [
  'gluten',
  'crustaceans',
  'eggs',
  'fish',
  'peanuts',
  'soybeans',
  'milk',
  'nuts',
  'celery',
  'mustard',
  'sesame',
  'sulphites',
  'lupin',
  'molluscs',
] as const;
export type Allergen = (typeof allergens)[number];

/** The nine of the US Federal Food, Drug, and Cosmetic Act, section 201(qq). */
export const usAllergens = [
  'milk',
  'eggs',
  'fish',
  'crustacean shellfish',
  'tree nuts',
  'wheat',
  'peanuts',
  'soybeans',
  'sesame',
] as const;
export type UsAllergen = (typeof usAllergens)[number];

/** One allergen of a food. */
export interface AllergenMark {
  readonly allergen: Allergen;
  /** The word for it in a list of ingredients where the law wants the kind: wheat, barley, hazelnut. Absent: its own name. */
  readonly as?: string | undefined;
  /** Varies from maker to maker: the label of what was bought decides. Counted as there until somebody has looked. */
  readonly checkLabel?: true | undefined;
}

/** Which allergens a food holds; `null` where nobody has said, which is never none. */
export type AllergenMarks = readonly AllergenMark[] | null;
