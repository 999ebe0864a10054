/**
 * What a food is, as far as the rules of the book ask: whose meat, what was done to it before it met the heat, how fat, how
 * cured, how packed. null: not known, and then the stricter answer counts.
 */
export type Animal =
  | 'chicken'
  | 'turkey'
  | 'other bird'
  | 'game bird'
  | 'cattle'
  | 'sheep or goat'
  | 'deer'
  | 'pig'
  | 'wild boar'
  | 'horse'
  | 'farmed rabbit'
  | 'small game'
  | 'fish';

export type Form = 'minced' | 'stuffed or rolled' | 'injected or tenderised';

export interface Product {
  /** Every animal in it; empty: not known. */
  readonly animals: readonly Animal[];
  readonly forms: Readonly<Record<Form, boolean | null>>;
  readonly fatPct: number | null;
  /** Nitrite put in, mg NaNO2 per kg. */
  readonly nitritePpm: number | null;
  readonly packed: 'air' | 'without air' | null;
  readonly cooked: boolean | null;
  readonly offal: boolean | null;
}

export const poultry: readonly Animal[] = ['chicken', 'turkey', 'other bird', 'game bird'];
export const ruminants: readonly Animal[] = ['cattle', 'sheep or goat', 'deer'];
export const wild: readonly Animal[] = ['game bird', 'deer', 'wild boar', 'small game'];
export const mammals: readonly Animal[] = [
  'cattle',
  'sheep or goat',
  'deer',
  'pig',
  'wild boar',
  'horse',
  'farmed rabbit',
  'small game',
];

const words: readonly (readonly [Animal, RegExp])[] = [
  ['chicken', /\b(chickens?|hens?|cockerels?|poussins?|capons?)\b/],
  ['turkey', /\bturkeys?\b/],
  ['game bird', /\b(wild duck|pheasants?|partridges?|grouse|wood pigeons?|woodcock|snipe)\b/],
  [
    'other bird',
    /\b(poultry|goose|geese|(?<!wild )ducks?|guinea fowls?|squabs?|pigeons?|quails?|ostrich|foie gras)\b/,
  ],
  ['cattle', /\b(cattle|beef|ox|oxen|cows?|calf|calves|veal|bulls?|bovine)\b/],
  ['sheep or goat', /\b(sheep|lambs?|mutton|hoggets?|goats?|kids?)\b/],
  ['deer', /\b(deer|venison|stag|roe|elk|moose)\b/],
  ['wild boar', /\bwild (boar|pig)s?\b/],
  ['pig', /\b(?<!wild )(pigs?|pork|hogs?|piglets?|bacon|ham|lardo|guanciale|pancetta|caul|back ?fat)\b/],
  ['horse', /\b(horses?|horse ?meat)\b/],
  ['small game', /\b(wild rabbits?|hares?)\b/],
  ['farmed rabbit', /\b(?<!wild )rabbits?\b/],
  ['fish', /\b(fish|cod|salmon|trout|mackerel|herring|anchov(y|ies)|tuna|eel|hake|pollock)\b/],
];

/** Animals that a text names [-], in the words of a kitchen; empty where it names none. Source: own-assumption */
export function animalsIn(text: string): Animal[] {
  const plain = text.toLowerCase().replace(/[’‘`']s?\b/g, '');
  return words.flatMap(([animal, pattern]) => (pattern.test(plain) ? [animal] : []));
}

const organs =
  /\b(livers?|hearts?|kidneys?|gizzards?|lungs?|lights|spleens?|melts?|brains?|tongues?|sweetbreads?|tripe|stomachs?|intestines?|chitterlings|blood|testis|testes|udders?|offal|haslet|faggots?)\b/;

/** Whether a part's name is that of an organ [-]. Source: own-assumption */
export function isOffal(part: string): boolean {
  return organs.test(part.toLowerCase());
}
