/**
 * May this part be served here? Reported as the sources have it, never more: the word of the competent authority stands
 * above it, and a part or an animal that is not in the table is not known, which is not the same as allowed.
 */
import { anyAnimalLaw } from './parts-law-any.ts';
import { cattleLaw } from './parts-law-cattle.ts';
import { deerLaw, farmSlaughterLaw, smallGameLaw } from './parts-law-game.ts';
import { pigLaw } from './parts-law-pig.ts';
import { poultryLaw } from './parts-law-poultry.ts';
import { type LawBook, type LawSpecies, type LawWord, type PartLaw, uncooked } from './parts-law-rows.ts';
import { sheepLaw } from './parts-law-sheep.ts';
import { usLaw } from './parts-law-us.ts';
import { type Origin, type RiskAnswer, riskOf } from './risk-material.ts';

export type { LawBook, LawSpecies, LawWord, PartLaw } from './parts-law-rows.ts';
export type { Origin, RiskAnswer } from './risk-material.ts';
export type LawPlace = 'GB-ENG' | 'GB-SCT' | 'GB-WLS' | 'GB-NIR' | 'EU' | 'US';

export const partsLaw: readonly PartLaw[] = [
  ...anyAnimalLaw,
  ...pigLaw,
  ...poultryLaw,
  ...farmSlaughterLaw,
  ...cattleLaw,
  ...sheepLaw,
  ...deerLaw,
  ...smallGameLaw,
  ...usLaw,
];

type Animal = Exclude<LawSpecies, 'any'>;

/** The names a kitchen uses for the table's animals; a name may stand for two, and then the worse answer counts. */
export const animalNames: Readonly<Record<Animal, readonly string[]>> = {
  pig: ['pig', 'pork', 'hog', 'sow', 'piglet', 'sucking pig', 'suckling pig'],
  poultry: [
    'poultry',
    'goose',
    'geese',
    'gosling',
    'duck',
    'duckling',
    'chicken',
    'hen',
    'spent hen',
    'boiling fowl',
    'cock',
    'cockerel',
    'capon',
    'poussin',
    'turkey',
    'guinea fowl',
    'quail',
    'squab',
  ],
  'poultry slaughtered on the farm': [
    'poultry slaughtered on the farm',
    'poultry slaughtered on farm',
    'farm-killed poultry',
    'goose slaughtered on the farm',
    'duck slaughtered on the farm',
    'chicken slaughtered on the farm',
    'turkey slaughtered on the farm',
  ],
  cattle: [
    'cattle',
    'beef',
    'cow',
    'ox',
    'oxen',
    'bull',
    'bullock',
    'steer',
    'heifer',
    'calf',
    'calves',
    'veal',
    'bovine',
  ],
  'sheep or goat': [
    'sheep',
    'lamb',
    'hogget',
    'mutton',
    'ewe',
    'wether',
    'goat',
    'kid',
    'sheep/goat',
    'sheep or goat',
  ],
  'farmed deer': ['farmed deer', 'deer', 'venison', 'red deer', 'fallow deer', 'roe deer'],
  'wild deer': ['wild deer', 'deer', 'venison', 'red deer', 'fallow deer', 'roe deer', 'wild venison'],
  'wild boar': ['wild boar'],
  'farmed rabbit': ['rabbit', 'farmed rabbit'],
  'small wild game': [
    'small wild game',
    'wild rabbit',
    'hare',
    'pheasant',
    'partridge',
    'wild duck',
    'mallard',
    'pigeon',
    'wood pigeon',
    'grouse',
    'woodcock',
    'snipe',
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
  /** The day the row was last held against what its confidence says; null where there is no row. */
  readonly checked: string | null;
}

/** The law book that is read at a place. */
export const bookOf = (place: LawPlace): LawBook =>
  place === 'US' ? 'US' : place === 'EU' || place === 'GB-NIR' ? 'EU/NI' : 'GB';

const plain = (text: string) =>
  text
    .toLowerCase()
    .replace(/[’‘`]/g, "'")
    .replace(/\bcarcase/g, 'carcass')
    .replace(/\s+/g, ' ')
    .trim();

const singular = (name: string) => name.replace(/s$/, '');

/** Every animal of the table that a kitchen's name may stand for [-]. */
export function animalsOf(name: string): Animal[] {
  const wanted = singular(plain(name));
  if (wanted === '') return [];
  return (Object.entries(animalNames) as [Animal, readonly string[]][])
    .filter(([, names]) => names.some((n) => singular(n) === wanted))
    .map(([animal]) => animal);
}

/**
 * The table's animal for a name as a kitchen writes it [-], null where the table has none; the first where it may be two.
 * @param name in any case, singular or plural
 * Checked on the animals of the demo kitchen and on names that are in no table.
 * @example lawSpeciesOf('Geese') // → 'poultry'
 * Source: own-assumption
 */
export function lawSpeciesOf(name: string): Animal | null {
  return animalsOf(name)[0] ?? null;
}

const plurals: Readonly<Record<string, string>> = {
  feet: 'foot',
  testes: 'testis',
  carcase: 'carcass',
  carcasses: 'carcass',
  calves: 'calf',
};

/** A part's name without its animal, its number and what is said in brackets [-]: "Pig’s trotters (hind)" → "trotter". */
export function namesOfPart(part: string, species: string): string[] {
  const animal = [species, ...Object.values(animalNames).flat()].map(plain);
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

/** Names that say the animal is young, so that a part of it is not first of all a part of an old one. */
const young = /^(lambs?|kids?|calf|calves|veal)\b/;

function wantedNames(species: string, part: string): string[] {
  const names = namesOfPart(part, species);
  return young.test(plain(species)) ? [...names.map((n) => `lamb ${n}`), ...names] : names;
}

function rowOf(animal: Animal | null, wanted: readonly string[], book: LawBook): PartLaw | null {
  for (const name of wanted)
    for (const row of partsLaw)
      if (row.books.includes(book) && (row.species === 'any' || row.species === animal))
        if (row.names.includes(name) || row.names.includes('*')) return row;
  return null;
}

/** A lamb, kid or calf is called so because it is young: looked up by its name alone it is, given its age it is that age. */
const originOf = (species: string, part: string, origin: Origin): Origin =>
  origin.ageMonths === undefined && (young.test(plain(species)) || young.test(plain(part)))
    ? { ...origin, ageMonths: 12 }
    : origin;

const worseRisk: readonly RiskAnswer['is'][] = ['no', 'ask', 'yes'];

function riskFor(
  animal: Animal | null,
  wanted: readonly string[],
  book: LawBook,
  origin: Origin,
): RiskAnswer {
  const all = wanted.map((name) => riskOf(animal ?? '', name, book, origin));
  return all.reduce((a, b) =>
    worseRisk.indexOf(b.is) > worseRisk.indexOf(a.is) || (a.rule === null && b.rule !== null) ? b : a,
  );
}

/**
 * The parts that a text names one by one [-]: parted by comma, "and", "with" or "+".
 * @param text as a kitchen writes it; "neck with skin" is one part
 * Checked on the names of the demo kitchen's parts.
 * @example partsNamed('neck with skin, heart and liver').length // → 3
 * Source: own-assumption
 */
export function partsNamed(text: string): string[] {
  return text
    .split(/,|;|\+|&|\/|\band\b|\bwith\b(?! skin)/i)
    .map((p) => p.trim())
    .filter((p) => p !== '');
}

/** Part by part of what was named, unless the table knows the whole phrase. */
function partsIn(species: string, part: string, book: LawBook): string[] {
  const whole = wantedNames(species, part);
  if (animalsOf(species).some((a) => rowOf(a, whole, book) !== null && !isStar(a, book))) return [part];
  const parts = partsNamed(part);
  return parts.length === 0 ? [part] : parts;
}
const isStar = (animal: Animal, book: LawBook) =>
  partsLaw.some((r) => r.species === animal && r.books.includes(book) && r.names.includes('*'));

/**
 * Is a part specified risk material in a place [-]? `yes` is never food; `ask` is stopped until the authority has said so
 * in writing; of several parts or animals that a name may stand for the worst counts.
 * Equation: the list of that animal and law book; an age that nobody has shown is over its limit.
 * Parameters: `species` and `part` as a kitchen writes them; `place` one of the six; `origin` with the most the animal may
 * be old [months, 0 to 600] and whether its country stands at negligible risk of BSE (not said: it does not).
 * Assumes the lists of the cited texts and that a lamb, kid or calf is so called rightly where no age is asked for.
 * Checked at both sides of every limit.
 * @example riskMaterial('sheep', 'head', 'GB-ENG', { ageMonths: null }).is // → 'yes'
 * @example riskMaterial('beef', 'backbone', 'EU', { ageMonths: 48, negligible: true }).is // → 'no'
 * Source: eu-999-2001, cfr-9-310
 */
export function riskMaterial(
  species: string,
  part: string,
  place: LawPlace,
  origin: Origin = {},
): RiskAnswer {
  const book = bookOf(place);
  const animals = animalsOf(species);
  const all = partsIn(species, part, book).flatMap((one) =>
    (animals.length === 0 ? [null] : animals).map((a) =>
      riskFor(a, wantedNames(species, one), book, originOf(species, one, origin)),
    ),
  );
  return all.reduce((a, b) => (worseRisk.indexOf(b.is) > worseRisk.indexOf(a.is) ? b : a));
}

/**
 * What the sources say about serving a part of an animal in a place [-]: a word, its reason, its citation, how the row is
 * known and when it was checked.
 * Equation: specified risk material first; else the row of the table with that animal, part and law book; of several parts
 * named together, or animals the name may stand for, the worst; no row: not known.
 * Parameters: `species` and `part` as a kitchen writes them (several parts parted by comma, "and" or "+"); `place` one of
 * the six; `origin` as for `riskMaterial`, an age of null being one that nobody has shown.
 * Assumes that the part comes from an inspected animal and was meant for food from the start.
 * Checked against the cited texts as far as `confidence` says, no further.
 * @example lawOf('goose', 'head', 'GB-ENG').status // → 'by-product by default: ask'
 * @example lawOf('lamb', 'head', 'GB-ENG', { ageMonths: 13 }).status // → 'prohibited'
 * Source: eu-853-2004, eu-1069-2009, eu-999-2001, cfr-9-310, cfr-9-381
 */
export function lawOf(species: string, part: string, place: LawPlace, origin: Origin = {}): LawAnswer {
  const parts = partsIn(species, part, bookOf(place));
  const answers = parts.map((one) => lawOfOne(species, one, place, originOf(species, one, origin)));
  const worst = worstOf(answers);
  if (answers.length === 1) return worst;
  return { ...worst, part, reason: `${worst.part}: ${worst.reason}` };
}

const worstOf = (answers: readonly LawAnswer[]): LawAnswer =>
  answers.reduce((a, b) => (order.indexOf(b.status) > order.indexOf(a.status) ? b : a));

function lawOfOne(species: string, part: string, place: LawPlace, origin: Origin): LawAnswer {
  const animals = animalsOf(species);
  if (animals.length < 2) return lawOfAnimal(animals[0] ?? null, species, part, place, origin);
  const worst = worstOf(animals.map((a) => lawOfAnimal(a, species, part, place, origin)));
  return { ...worst, reason: `Taken as the stricter of ${animals.join(' and ')}: ${worst.reason}` };
}

function lawOfAnimal(
  animal: Animal | null,
  species: string,
  part: string,
  place: LawPlace,
  origin: Origin,
): LawAnswer {
  const book = bookOf(place);
  const wanted = wantedNames(species, part);
  const risk = riskFor(animal, wanted, book, origin);
  if (risk.is !== 'no' && risk.rule !== null)
    return {
      status: risk.is === 'yes' ? 'prohibited' : 'by-product by default: ask',
      part,
      reason: risk.reason,
      citation: risk.rule.citation,
      confidence: risk.rule.confidence,
      checked: risk.rule.checked,
    };
  const row = rowOf(animal, wanted, book);
  if (row === null)
    return {
      status: 'not known: ask',
      part,
      reason: `Nothing is known here about the ${part} of ${species} under the law of ${place}. Ask the official veterinarian and your local authority before you buy it, and keep their answer.`,
      citation: 'none',
      confidence: 'not known',
      checked: null,
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
    checked: row.checked,
  };
}
