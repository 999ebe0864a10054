/**
 * May this part be served here? Reported as the sources have it, never more: the word of the competent authority stands
 * above it, and a part or an animal that is not in the table is not known, which is not the same as allowed.
 */
import { anyAnimalLaw, rabbitLaw, sheepLaw } from './parts-law-others.ts';
import { pigLaw } from './parts-law-pig.ts';
import { poultryLaw } from './parts-law-poultry.ts';
import { type LawBook, type LawSpecies, type LawWord, type PartLaw, uncooked } from './parts-law-rows.ts';
import { usLaw } from './parts-law-us.ts';

export type { LawBook, LawWord, PartLaw } from './parts-law-rows.ts';
export type LawPlace = 'GB-ENG' | 'GB-SCT' | 'GB-WLS' | 'GB-NIR' | 'EU' | 'US';

export const partsLaw: readonly PartLaw[] = [
  ...anyAnimalLaw,
  ...pigLaw,
  ...poultryLaw,
  ...sheepLaw,
  ...rabbitLaw,
  ...usLaw,
];

const speciesNames: Readonly<Record<Exclude<LawSpecies, 'any'>, readonly string[]>> = {
  pig: ['pig', 'pork', 'hog', 'piglet', 'sucking pig', 'suckling pig'],
  poultry: ['poultry', 'goose', 'geese', 'duck', 'chicken', 'hen', 'cockerel', 'turkey', 'guinea fowl'],
  'sheep or goat': ['sheep', 'lamb', 'hogget', 'mutton', 'goat', 'kid', 'sheep/goat', 'sheep or goat'],
  'farmed rabbit': ['rabbit', 'farmed rabbit'],
  'small wild game': [
    'wild rabbit',
    'hare',
    'pheasant',
    'partridge',
    'wild duck',
    'pigeon',
    'wood pigeon',
    'grouse',
  ],
};

/** From the best to the worst; of several parts the worst decides. */
const order: readonly LawWord[] = [
  'food',
  'food on conditions',
  'by-product by default: ask',
  'not known: ask',
  'prohibited',
];

export interface LawAnswer {
  readonly status: LawWord;
  readonly part: string;
  readonly reason: string;
  readonly citation: string;
  readonly confidence: string;
}

const bookOf = (place: LawPlace): LawBook =>
  place === 'US' ? 'US' : place === 'EU' || place === 'GB-NIR' ? 'EU/NI' : 'GB';

const plain = (text: string) => text.toLowerCase().replace(/[’‘`]/g, "'").replace(/\s+/g, ' ').trim();

/**
 * The table's animal for a name as a kitchen writes it [-], null where the table has none.
 * @param name in any case, singular or plural
 * Checked on the animals of the demo kitchen and on names that are in no table.
 * @example lawSpeciesOf('Geese') // 'poultry'
 * Source: own-assumption
 */
export function lawSpeciesOf(name: string): Exclude<LawSpecies, 'any'> | null {
  const wanted = plain(name).replace(/s$/, '');
  for (const [species, names] of Object.entries(speciesNames))
    if (names.some((n) => n.replace(/s$/, '') === wanted)) return species as Exclude<LawSpecies, 'any'>;
  return null;
}

const plurals: Readonly<Record<string, string>> = {
  feet: 'foot',
  testes: 'testis',
  carcase: 'carcass',
  carcasses: 'carcass',
};

/** A part's name without its animal, its number and what is said in brackets: "Pig’s trotters (hind)" → "trotter". */
function namesOfPart(part: string, species: string): string[] {
  const animal = [species, ...Object.values(speciesNames).flat()].map(plain);
  let name = plain(part)
    .replace(/\([^)]*\)/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  const whole = name;
  for (const a of [...animal].sort((x, y) => y.length - x.length)) {
    const match = name.match(new RegExp(`^${a.replace(/[^a-z ]/g, '.')}('s|s'|s)? +(.*)$`));
    if (match?.[2] !== undefined) {
      name = match[2];
      break;
    }
  }
  const single = (text: string) => {
    const words = text.split(' ');
    const last = words.pop() ?? '';
    const one =
      plurals[last] ??
      (/ies$/.test(last)
        ? last.replace(/ies$/, 'y')
        : /[^s]s$/.test(last) && last !== 'caruncles'
          ? last.slice(0, -1)
          : last);
    return [...words, one === 'caruncles' ? 'caruncle' : one].join(' ');
  };
  return [...new Set([single(whole), whole, single(name), name])];
}

function rowOf(species: string, part: string, book: LawBook): PartLaw | null {
  const animal = lawSpeciesOf(species);
  const lamb = /^(lambs?|kids?)$/.test(plain(species));
  const names = namesOfPart(part, species);
  const wanted = lamb ? [...names.map((n) => `lamb ${n}`), ...names] : names;
  for (const name of wanted)
    for (const row of partsLaw)
      if (row.books.includes(book) && (row.species === 'any' || row.species === animal))
        if (row.names.includes(name) || row.names.includes('*')) return row;
  return null;
}

/**
 * What the sources say about serving a part of an animal in a place [no unit]: a word, its reason, its citation and how
 * the row is known.
 * Equation: the row of the table with that animal, part and law book; of several parts named together the worst; no row:
 * not known.
 * Parameters: `species` and `part` as a kitchen writes them (several parts parted by comma, "and" or "+"); `place` one of
 * the six.
 * Assumes that the part comes from an inspected animal and was meant for food from the start.
 * Checked against the cited texts as far as `confidence` says, no further.
 * @example lawOf('goose', 'head', 'GB-ENG').status // 'by-product by default: ask'
 * Source: eu-853-2004, eu-1069-2009, eu-999-2001, cfr-9-310, cfr-9-381
 */
export function lawOf(species: string, part: string, place: LawPlace): LawAnswer {
  const parts = part
    .split(/,|;|\+|&|\/|\band\b|\bwith\b(?! skin)/i)
    .map((p) => p.trim())
    .filter((p) => p !== '');
  const answers = (parts.length === 0 ? [part] : parts).map((one) => lawOfOne(species, one, place));
  const worst = answers.reduce((a, b) => (order.indexOf(b.status) > order.indexOf(a.status) ? b : a));
  if (answers.length === 1) return worst;
  return { ...worst, part, reason: `${worst.part}: ${worst.reason}` };
}

function lawOfOne(species: string, part: string, place: LawPlace): LawAnswer {
  const book = bookOf(place);
  const row = rowOf(species, part, book);
  if (row === null)
    return {
      status: 'not known: ask',
      part,
      reason: `Nothing is known here about the ${part} of ${species} under the law of ${place}. Ask the official veterinarian and your local authority before you buy it, and keep their answer.`,
      citation: 'none',
      confidence: 'not known',
    };
  const british = row.uncookedRule === true && place.startsWith('GB');
  const parallel = place === 'GB-ENG' ? '' : ' and its parallel here (from memory)';
  return {
    status: row.status,
    part,
    reason: british
      ? `${row.condition} May not be sold in an uncooked product that contains meat; cooked dishes are outside that rule.`
      : row.condition,
    citation: british ? `${row.citation}; ${uncooked}${parallel}` : row.citation,
    confidence: row.confidence,
  };
}
