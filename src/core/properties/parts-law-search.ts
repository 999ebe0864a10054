/**
 * The table of parts as a search field asks it: by animal, part, plural, another name in the trade, French or Italian
 * where the trade uses it. What is not found is not known, which is not the same as allowed.
 */
import {
  animalNames,
  animalsOf,
  bookOf,
  type LawAnswer,
  type LawPlace,
  lawOf,
  namesOfPart,
  type Origin,
  partsLaw,
} from './parts-law.ts';
import type { LawSpecies } from './parts-law-rows.ts';

/** Names the trade uses for a part; the words are common practice, no source. */
const tradeNames: Readonly<Record<string, readonly (readonly [name: string, animal?: LawSpecies])[]>> = {
  'ris de veau': [['sweetbread', 'cattle']],
  'ris d’agneau': [['sweetbread', 'sheep or goat']],
  animelles: [['testicle']],
  animelle: [['sweetbread']],
  rognon: [['kidney']],
  rognone: [['kidney']],
  foie: [['liver']],
  fegato: [['liver']],
  cervelle: [['brain']],
  cervella: [['brain']],
  gesier: [['gizzard', 'poultry']],
  'crete de coq': [['comb', 'poultry']],
  cockscomb: [['comb', 'poultry']],
  coxcomb: [['comb', 'poultry']],
  museau: [['snout', 'pig']],
  andouille: [['chitterling', 'pig']],
  andouillette: [['chitterling', 'pig']],
  crepine: [['caul', 'pig']],
  crepinette: [['caul', 'pig']],
  'lace fat': [['caul', 'pig']],
  couenne: [['rind', 'pig']],
  cotenna: [['rind', 'pig']],
  crackling: [['rind', 'pig']],
  scratching: [['rind', 'pig']],
  lardo: [['back fat', 'pig']],
  lard: [['leaf fat', 'pig']],
  guanciale: [['cheek', 'pig']],
  'bath chap': [['cheek', 'pig']],
  joue: [['cheek']],
  langue: [['tongue']],
  lingua: [['tongue']],
  'boudin noir': [['blood', 'pig']],
  'black pudding': [['blood', 'pig']],
  sanguinaccio: [['blood', 'pig']],
  'pied de cochon': [['trotter', 'pig']],
  zampone: [['trotter', 'pig']],
  'pied de veau': [['foot', 'cattle']],
  'tete de veau': [['calf head', 'cattle']],
  'tete de porc': [['head', 'pig']],
  'head cheese': [['head', 'pig']],
  brawn: [['head', 'pig']],
  trippa: [['tripe', 'cattle']],
  tripes: [['tripe', 'cattle']],
  lampredotto: [['abomasum', 'cattle']],
  bible: [['omasum', 'cattle']],
  'leaf tripe': [['omasum', 'cattle']],
  coratella: [['pluck', 'sheep or goat']],
  haggis: [
    ['paunch', 'sheep or goat'],
    ['pluck', 'sheep or goat'],
  ],
  'prairie oyster': [['testicle', 'cattle']],
  sweetmeat: [['testicle']],
  stones: [['testicle']],
  elder: [['udder', 'cattle']],
  lights: [['lung']],
  milt: [['spleen']],
  rate: [['spleen', 'pig']],
  milza: [['spleen', 'cattle']],
  moelle: [['marrow', 'cattle']],
  midollo: [['marrow', 'cattle']],
  onglet: [['skirt', 'cattle']],
  'hanger steak': [['skirt', 'cattle']],
  paw: [['foot', 'poultry']],
  'phoenix claw': [['foot', 'poultry']],
  'duck tongue': [['tongue', 'poultry']],
  'cou farci': [['neck skin', 'poultry']],
  schmaltz: [['fat', 'poultry']],
  pope: [['parson’s nose', 'poultry']],
  'pope’s nose': [['parson’s nose', 'poultry']],
  gut: [['intestine']],
  runners: [['casing']],
  natural: [['casing']],
  srm: [
    ['skull', 'cattle'],
    ['spinal cord', 'cattle'],
    ['backbone', 'cattle'],
  ],
};

export interface LawHit {
  readonly species: Exclude<LawSpecies, 'any'> | 'any';
  readonly part: string;
  /** Every name of its row. */
  readonly names: readonly string[];
  readonly law: LawAnswer;
}

export interface LawSearch {
  readonly hits: readonly LawHit[];
  /** What is said when nothing is found; null when something is. */
  readonly none: LawAnswer | null;
}

const plain = (text: string) =>
  text
    .toLowerCase()
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/[’‘`]/g, "'")
    .replace(/[^a-z0-9' /-]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

const trade = new Map(Object.entries(tradeNames).map(([name, parts]) => [plain(name), parts]));
const stems = (word: string) => [word, word.replace(/ies$/, 'y'), word.replace(/([^s])s$/, '$1')];

/** The animal a text begins or ends with, and what is left of it. */
function animalIn(text: string): { animals: ReturnType<typeof animalsOf>; rest: string } {
  const words = text.split(' ');
  for (let count = Math.min(5, words.length); count >= 1; count--)
    for (const [head, rest] of [
      [words.slice(0, count), words.slice(count)],
      [words.slice(-count), words.slice(0, -count)],
    ] as const) {
      const animals = animalsOf(head.join(' ').replace(/('s|s')$/, ''));
      if (animals.length > 0) return { animals, rest: rest.filter((w) => w !== 'of').join(' ') };
    }
  return { animals: [], rest: text };
}

/** 4 the very name, 3 begins so, 2 a word of it, 1 a part of a word; 0 nothing. */
function nearness(wanted: readonly string[], name: string): number {
  const it = plain(name);
  if (wanted.includes(it)) return 4;
  if (wanted.some((w) => w.length >= 2 && it.startsWith(w))) return 3;
  if (wanted.some((w) => w.length >= 2 && it.split(' ').some((word) => word.startsWith(w)))) return 2;
  return wanted.some((w) => w.length >= 4 && it.includes(w)) ? 1 : 0;
}

/**
 * Rows of the table for what somebody typed, the nearest first [-]; with none there is the answer `not known: ask`.
 * Equation: the very name before a beginning before a word before a piece of a word; the table's order among equals.
 * Parameters: `text` as typed, an animal, a part or both; `place` one of the six; `origin` as for `lawOf`.
 * Assumes that a word of the trade stands for the parts it is listed under.
 * Checked on names of the trade, on plurals and on words that are nothing.
 * @example searchLaw('goose heads', 'GB-ENG').hits[0].law.status // → 'by-product by default: ask'
 * @example searchLaw('unicorn horn', 'GB-ENG').none.status // → 'not known: ask'
 * Source: common-practice
 */
export function searchLaw(text: string, place: LawPlace, origin: Origin = {}): LawSearch {
  const asked = plain(text);
  const book = bookOf(place);
  const none = (species: string, part: string): LawSearch => ({
    hits: [],
    none: { ...lawOf('', part, place), reason: lawOf('', part, place).reason.replace(` of ${species}`, '') },
  });
  if (asked === '') return { hits: [], none: null };
  const byTrade = stems(asked).flatMap((s) => trade.get(s) ?? []);
  const { animals, rest } = byTrade.length > 0 ? { animals: [], rest: asked } : animalIn(asked);
  const wantedTrade = byTrade.length > 0 ? byTrade : stems(rest).flatMap((s) => trade.get(s) ?? []);
  const wanted = rest === '' ? [] : [...new Set([...stems(rest), ...namesOfPart(rest, '')].map(plain))];
  const scored = partsLaw
    .filter((row) => row.books.includes(book))
    .filter((row) => animals.length === 0 || row.species === 'any' || animals.includes(row.species))
    .flatMap((row, at) => {
      const all = row.names.includes('*');
      const own = row.names.map((name) => {
        const said = wantedTrade.some(([n, a]) => n === name && (a === undefined || a === row.species));
        return { name, near: said ? 5 : nearness(wanted, name) };
      });
      const best = own.reduce((a, b) => (b.near > a.near ? b : a));
      const listed = rest === '' && row.species !== 'any';
      const near = listed ? 1 : all && animals.length > 0 ? 1 : best.near;
      if (near === 0) return [];
      return [
        { row, at, near, part: all ? (rest === '' ? 'any part' : rest) : listed ? row.names[0] : best.name },
      ];
    })
    .sort((a, b) => b.near - a.near || a.at - b.at);
  if (scored.length === 0) return none('', text.trim());
  // A goose asked about as a goose answers by that name; a lamb's age goes with its name.
  const called = (species: LawSpecies) => {
    const typed =
      animals.length === 1 && animals[0] === species ? asked.slice(0, asked.length - rest.length) : '';
    const name = typed.replace(/('s|s')? *(of)? *$/, '').trim();
    return animalsOf(name).length === 1
      ? name
      : species === 'any'
        ? 'pig'
        : (animalNames[species][0] ?? species);
  };
  return {
    none: null,
    hits: scored.slice(0, 60).map(({ row, part }) => ({
      species: row.species,
      part: part ?? '',
      names: row.names,
      law: lawOf(called(row.species), part ?? '', place, origin),
    })),
  };
}
