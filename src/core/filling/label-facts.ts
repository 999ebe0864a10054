/** What a list of ingredients has to know of a food besides its name, and the rules that it is written by. */
import type { Confidence } from '../sources.ts';

/** Groups of animals by the limits that their meat has. */
export type MeatGroup = 'pig' | 'bird or rabbit' | 'other mammal';

export interface LabelFacts {
  /** Its name in a list of ingredients; absent: its own. */
  readonly name?: string | undefined;
  /** Meat in the sense of the label: skeletal muscle with what is on it. Offal, heart, tongue, skin and fat are none and stand as themselves. */
  readonly meat?:
    | {
        /** The word for it in a list: pork, duck. */
        readonly word: string;
        readonly group: MeatGroup;
      }
    | undefined;
  /** Water as such; or what evaporates in the making: wine, spirits, vinegar. */
  readonly counts?: 'water' | 'volatile' | undefined;
  /** Bought ready-made: its own list, as its label has it. */
  readonly madeOf?: string | undefined;
  /** Weighs, and is not eaten: a fibrous casing, string. */
  readonly notEaten?: true | undefined;
  /** A mixture of herbs or of spices: under 2 % its brackets may be left out. */
  readonly seasoning?: true | undefined;
  /** A recipe without a name that a guest knows: its ingredients stand in the list of what it goes into. */
  readonly spreadOut?: true | undefined;
}

/** Most fat [mass fraction] and most collagen to protein [-] that still is meat; what is over is declared as fat and connective tissue. */
export const meatLimits: Readonly<
  Record<MeatGroup, { readonly fat: number; readonly collagenToProtein: number }>
> = {
  pig: { fat: 0.3, collagenToProtein: 0.25 },
  'bird or rabbit': { fat: 0.15, collagenToProtein: 0.1 },
  'other mammal': { fat: 0.25, collagenToProtein: 0.25 },
};

export type LabelPlace = 'GB' | 'EU' | 'US';

export interface LabelRule {
  readonly what: string;
  /** Article, annex, point. */
  readonly where: string;
  readonly source: string;
  readonly confidence: Confidence;
}

const eu = (what: string, where: string, confidence: Confidence = 'secondary'): LabelRule => ({
  what,
  where,
  source: 'eu-1169-2011-labels',
  confidence,
});

/** Every rule that the list is made by, or that leaves something to the kitchen. */
export const labelRules = {
  order: eu(
    'All ingredients stand in descending weight, as weighed when they are used.',
    'Article 18(1)',
    'memory',
  ),
  water: eu(
    'Added water and what evaporates stand by their weight in the finished food; added water is the finished weight less all other ingredients. Up to 5 % it need not stand, save in meat, meat preparations and unprocessed fish.',
    'Annex VII, part A, point 1',
  ),
  compound: eu(
    'A compound ingredient may stand by a name that law or custom gives it, by its whole weight, with its own list right after it.',
    'Annex VII, part E, point 1',
    'memory',
  ),
  seasoning: eu(
    'The list of a mixture of herbs or spices may be left out where it is under 2 % of the finished food, never its allergens.',
    'Annex VII, part E, point 2',
    'memory',
  ),
  meat: eu(
    'Meat is skeletal muscle with the fat and tissue on it, up to a limit of fat and of collagen; what is over is declared as fat and connective tissue. Offal, heart, tongue, the other muscles of the head, of foot and tail are named as themselves.',
    'Annex VII, part B, point 17',
  ),
  quantity: eu(
    'The quantity stands where an ingredient is in the name, is emphasised, or makes the food what it is: as used, of the finished food where water was lost; over 100 % as grams to 100 g.',
    'Article 22, Annex VIII',
  ),
  volatileQuantity: eu(
    'Of what evaporates, the quantity is that in the finished food.',
    'Annex VIII, point 3',
    'memory',
  ),
  allergens: eu(
    'What Annex II names stands in the list by that name, in type that differs from the rest.',
    'Article 21(1), Annex II',
  ),
  addedWater: eu(
    'Meat that looks like a cut, joint, slice, portion or carcase says in its name that water was added, where that is more than 5 %.',
    'Annex VI, part A, point 6',
    'memory',
  ),
  alcohol: eu(
    'The strength of more than 1.2 % by volume stands on drinks; a dish need not say it, though a guest may ask.',
    'Article 9(1)(k)',
    'memory',
  ),
  usOrder: {
    what: 'Ingredients stand by their common names in descending order of weight; those of an ingredient in parentheses after it.',
    where: '21 CFR 101.4',
    source: 'cfr-21-101-4',
    confidence: 'memory',
  },
  usAllergens: {
    what: 'The nine stand in parentheses in the list or in a statement that begins with Contains, right after it.',
    where: '21 USC 343(w)',
    source: 'fdca-201-qq',
    confidence: 'secondary',
  },
  usMeat: {
    what: 'Meat and poultry products answer to the Food Safety and Inspection Service, which has rules of its own for their names and standards.',
    where: '9 CFR 317 and 381',
    source: 'cfr-9-381',
    confidence: 'memory',
  },
} as const satisfies Readonly<Record<string, LabelRule>>;
export type LabelRuleName = keyof typeof labelRules;
