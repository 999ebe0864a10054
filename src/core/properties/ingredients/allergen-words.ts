/** The fourteen and the nine: how each is called, which kinds have to be named, and which of one is which of the other. */
import type { Allergen, AllergenMark, AllergenMarks, UsAllergen } from '../food.ts';
import { usAllergens } from '../food.ts';
import { wordsOf } from './words.ts';

export interface AllergenWords {
  /** In a sentence: 'tree nuts'. */
  readonly name: string;
  /** Kinds that Annex II names, one of which has to stand in a list of ingredients. */
  readonly kinds: readonly string[];
  /** Foods whose name gives it away though it does not say the allergen. Common practice, and never all of them. */
  readonly tells: readonly string[];
}

/** Kinds as Annex II of Regulation (EU) 1169/2011 names them; names and tells are common practice, no source. */
export const allergenWords: Readonly<Record<Allergen, AllergenWords>> = {
  gluten: {
    name: 'cereals containing gluten',
    kinds: ['wheat', 'spelt', 'Khorasan wheat', 'rye', 'barley', 'oats'],
    tells: [
      'flour',
      'bread',
      'breadcrumb',
      'rusk',
      'semolina',
      'couscous',
      'bulgur',
      'pastry',
      'brioche',
      'seitan',
      'malt',
      'beer',
      'pasta',
      'durum',
      'panko',
      'oatmeal',
    ],
  },
  crustaceans: {
    name: 'crustaceans',
    kinds: [],
    tells: ['prawn', 'shrimp', 'crab', 'lobster', 'crayfish', 'langoustine', 'scampi'],
  },
  eggs: { name: 'eggs', kinds: [], tells: ['yolk', 'albumen', 'mayonnaise', 'meringue', 'brioche'] },
  fish: {
    name: 'fish',
    kinds: [],
    tells: [
      'anchovy',
      'cod',
      'salmon',
      'herring',
      'trout',
      'eel',
      'tuna',
      'isinglass',
      'roe',
      'worcestershire',
    ],
  },
  peanuts: { name: 'peanuts', kinds: [], tells: ['groundnut', 'arachide'] },
  soybeans: { name: 'soya', kinds: [], tells: ['tofu', 'miso', 'tamari', 'shoyu', 'edamame', 'tempeh'] },
  milk: {
    name: 'milk',
    kinds: [],
    tells: [
      'butter',
      'cream',
      'cheese',
      'yoghurt',
      'whey',
      'casein',
      'caseinate',
      'lactose',
      'ghee',
      'mascarpone',
      'parmesan',
      'buttermilk',
    ],
  },
  nuts: {
    name: 'tree nuts',
    kinds: [
      'almonds',
      'hazelnuts',
      'walnuts',
      'cashews',
      'pecan nuts',
      'Brazil nuts',
      'pistachio nuts',
      'macadamia nuts',
    ],
    tells: ['marzipan', 'praline', 'frangipane', 'filbert', 'nut'],
  },
  celery: { name: 'celery', kinds: [], tells: ['celeriac', 'stock', 'bouillon'] },
  mustard: { name: 'mustard', kinds: [], tells: ['piccalilli'] },
  sesame: { name: 'sesame', kinds: [], tells: ['tahini'] },
  sulphites: {
    name: 'sulphur dioxide and sulphites',
    kinds: [],
    tells: ['wine', 'sherry', 'madeira', 'port', 'marsala', 'vermouth', 'cider', 'sulphite'],
  },
  lupin: { name: 'lupin', kinds: [], tells: [] },
  molluscs: {
    name: 'molluscs',
    kinds: [],
    tells: ['mussel', 'oyster', 'scallop', 'squid', 'octopus', 'snail', 'clam', 'cuttlefish'],
  },
};

/** Cereals with gluten that the US counts as wheat. */
const wheats = new Set(['wheat', 'spelt', 'khorasan wheat', 'durum', 'emmer', 'einkorn']);

/**
 * What an allergen of the fourteen is among the nine of the US [-]; null where the US does not count it. Gluten is wheat
 * where its kind is wheat or is not said; rye, barley and oats are none. Celery, mustard, lupin, molluscs and sulphites are
 * none of the nine (sulphites are declared there by another rule). Source: from-memory
 * @example usAllergenOf({ allergen: 'gluten', as: 'barley' }) // → null
 */
export function usAllergenOf(mark: AllergenMark): UsAllergen | null {
  if (mark.allergen === 'gluten')
    return mark.as === undefined || wheats.has(mark.as.toLowerCase()) ? 'wheat' : null;
  const same: Partial<Record<Allergen, UsAllergen>> = {
    crustaceans: 'crustacean shellfish',
    eggs: 'eggs',
    fish: 'fish',
    peanuts: 'peanuts',
    soybeans: 'soybeans',
    milk: 'milk',
    nuts: 'tree nuts',
    sesame: 'sesame',
  };
  return same[mark.allergen] ?? null;
}

/**
 * The nine of the US that a row holds [-], in the order of the statute; null where nobody has said what it holds.
 * Parameters: marks of the fourteen; what only the US counts (pine nuts). Source: from-memory
 * @example usAllergensOfRow([{ allergen: 'milk' }], []).join() // → 'milk'
 */
export function usAllergensOfRow(
  marks: AllergenMarks,
  usOnly: readonly UsAllergen[],
): readonly UsAllergen[] | null {
  if (marks === null) return null;
  const found = new Set<UsAllergen | null>([...usOnly, ...marks.map(usAllergenOf)]);
  return usAllergens.filter((allergen) => found.has(allergen));
}

/**
 * Allergens that a name gives away, each to be looked up on the label [-]; a name that gives none away says nothing.
 * Assumptions: English; a suggestion, never an answer. Source: common-practice
 * @example allergensTold('rye bread')[0].as // → 'rye'
 */
export function allergensTold(name: string): AllergenMark[] {
  const words = wordsOf(name);
  const has = (phrase: string) => {
    const wanted = wordsOf(phrase);
    return words.some((_, i) => wanted.every((word, j) => words[i + j] === word));
  };
  return (Object.keys(allergenWords) as Allergen[]).flatMap((allergen): AllergenMark[] => {
    const { name: called, kinds, tells } = allergenWords[allergen];
    const named = kinds.filter((kind) => has(kind) || has(kind.replace(/ nuts$/, '')));
    // The longer name holds the shorter one: Khorasan wheat is not wheat besides.
    const longest = named.filter((kind) => !named.some((k) => k !== kind && k.toLowerCase().includes(kind)));
    if (longest.length > 0) return longest.map((as) => ({ allergen, as, checkLabel: true }));
    if (![allergen, called, ...tells].some(has)) return [];
    return [{ allergen, checkLabel: true }];
  });
}
