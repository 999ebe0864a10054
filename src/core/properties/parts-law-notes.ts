/**
 * What the law says of a part beyond whether it may be served at all: what may not be made of it, what must come off it,
 * what it is known to carry. Every note with its citation and how it is known; the words are this program's own.
 */
import { animalsOf, bookOf, type LawPlace, namesOfPart, partsNamed } from './parts-law.ts';
import type { LawBook, LawConfidence, LawSpecies } from './parts-law-rows.ts';

export interface LawNote {
  readonly about:
    | 'by-product'
    | 'minced meat'
    | 'meat products'
    | 'mechanically separated meat'
    | 'uncooked products'
    | 'sticking point'
    | 'glands'
    | 'heavy metals'
    | 'lead'
    | 'vitamin A'
    | 'Trichinella';
  readonly text: string;
  readonly citation: string;
  readonly confidence: LawConfidence;
  readonly sources: readonly string[];
  readonly checked: string;
}

interface NoteRow extends LawNote {
  readonly animals: readonly LawSpecies[];
  readonly books: readonly LawBook[];
  /** Only at these places; left out: wherever the book is read. */
  readonly places?: readonly LawPlace[];
  /** `*` is every part. */
  readonly parts: readonly string[];
}

const checked = '2026-11-25';
const european = ['GB', 'EU/NI'] as const;
const everywhere = ['GB', 'EU/NI', 'US'] as const;
const birds = ['poultry', 'poultry slaughtered on the farm', 'small wild game'] as const;
const hoofed = ['pig', 'cattle', 'sheep or goat', 'farmed deer', 'wild deer', 'wild boar'] as const;
const mammals = [...hoofed, 'farmed rabbit'] as const;
const shot = ['small wild game', 'wild deer', 'wild boar'] as const;
const every = [...mammals, ...birds] as const;

const products = 'Reg (EC) 853/2004 Annex III Section VI point 1';
const product = {
  about: 'meat products',
  citation: products,
  confidence: 'read',
  sources: ['eu-853-2004'],
  checked,
} as const;

const notes: readonly NoteRow[] = [
  {
    about: 'by-product',
    animals: every,
    books: european,
    parts: ['*'],
    text: 'Once it has been put aside, marked or booked as a by-product it is never food again, however fit. Say in writing, before the day of slaughter, that it is wanted as food.',
    citation:
      'Reg (EC) 1069/2009 Articles 2(1)(b), 3(1) and 4(1); FSA Manual for Official Controls chapter 2.8 section 1.1.4',
    confidence: 'partly read, partly from memory',
    sources: ['eu-1069-2009', 'fsa-manual-official-controls'],
    checked,
  },
  {
    ...product,
    animals: ['poultry', 'poultry slaughtered on the farm'],
    books: european,
    parts: [
      'head',
      'tongue',
      'brain',
      'eye',
      'oesophagus',
      'gullet',
      'crop',
      'intestine',
      'ovary',
      'oviduct',
      'testicle',
      'testis',
    ],
    text: 'Kept out of meat products: the head of poultry but for comb, ears, wattles and caruncles; its gullet, crop, intestines and genital organs.',
  },
  {
    ...product,
    animals: mammals,
    books: european,
    parts: ['uterus', 'vulva', 'penis', 'pizzle', 'ovary'],
    text: 'Kept out of meat products: genital organs of either sex but for testicles.',
  },
  {
    ...product,
    animals: every,
    books: european,
    parts: ['head', 'half head', 'ear', 'eye', 'eyelid', 'ear canal', 'horn', 'mask'],
    text: 'Kept out of meat products: eyes and eyelids, the inner ear canal and horn. Cut them away.',
  },
  {
    ...product,
    animals: every,
    books: european,
    parts: ['lung', 'lights', 'pluck', 'trachea', 'windpipe', 'larynx cartilage', 'lungs and windpipe'],
    text: 'Kept out of meat products: cartilage of larynx and windpipe and of the bronchi outside the lungs. Cut them away.',
  },
  {
    ...product,
    animals: mammals,
    books: european,
    parts: ['bladder', 'kidney', 'ureter', 'urethra'],
    text: 'Of the urinary organs only kidneys and bladder may go into meat products.',
  },
  {
    about: 'minced meat',
    animals: hoofed,
    books: european,
    parts: [
      'head',
      'half head',
      'head meat',
      'jowl',
      'snout',
      'skirt',
      'diaphragm',
      'foot',
      'trotter',
      'skin',
      'rind',
      'shank',
      'hock',
      'bone',
    ],
    text: 'Not into minced meat made for sale: scraps and scrapings of bone, skin, meat of the head other than the chewing muscle, the region of the ankle and wrist, diaphragm with its membrane on.',
    citation: 'Reg (EC) 853/2004 Annex III Section V Chapter II point 1',
    confidence: 'memory',
    sources: ['eu-853-2004'],
    checked,
  },
  {
    about: 'mechanically separated meat',
    animals: ['poultry', 'poultry slaughtered on the farm'],
    books: european,
    parts: ['foot', 'paw', 'neck skin', 'neck with skin', 'head'],
    text: 'Not for mechanical separation: feet, neck skin and heads of poultry.',
    citation: 'Reg (EC) 853/2004 Annex III Section V Chapter III point 1',
    confidence: 'read',
    sources: ['eu-853-2004'],
    checked,
  },
  {
    about: 'mechanically separated meat',
    animals: hoofed,
    books: european,
    parts: [
      'head',
      'half head',
      'foot',
      'trotter',
      'tail',
      'limb bone',
      'bone',
      'marrow bone',
      'shank',
      'shin bone',
    ],
    text: 'Not for mechanical separation: bones of head, feet and tail, and of the limbs.',
    citation: 'Reg (EC) 853/2004 Annex III Section V Chapter III point 1',
    confidence: 'memory',
    sources: ['eu-853-2004'],
    checked,
  },
  {
    about: 'uncooked products',
    animals: mammals,
    books: european,
    places: ['GB-ENG', 'GB-SCT', 'GB-WLS', 'GB-NIR'],
    parts: [
      'brain',
      'foot',
      'trotter',
      'hind trotter',
      'fore trotter',
      'intestine',
      'small intestine',
      'large intestine',
      'chitterling',
      'lung',
      'lights',
      'pluck',
      'oesophagus',
      'gullet',
      'rectum',
      'spinal cord',
      'spleen',
      'melt',
      'stomach',
      'maw',
      'tripe',
      'rumen',
      'reticulum',
      'omasum',
      'abomasum',
      'haggis bag',
      'heel',
      'elder',
      'paunch',
      'testicle',
      'fry',
      'udder',
    ],
    text: 'Not in anything with meat in it that is sold uncooked (intestine as the skin of a sausage apart). Cooked dishes are outside the rule.',
    citation:
      'Products Containing Meat etc. (England) Regulations 2014 (SI 2014/3001) reg. 5; parallel rules in Wales, Scotland and Northern Ireland (from memory)',
    confidence: 'partly read, partly from memory',
    sources: ['uk-si-2014-3001'],
    checked,
  },
  {
    about: 'sticking point',
    animals: [...hoofed, 'poultry'],
    books: european,
    parts: ['neck', 'collar', 'scrag', 'clod', 'neck and clod', 'jowl', 'head', 'hand', 'blood'],
    text: 'Trimmings from where the animal was stuck are unfit: they come off and are never food.',
    citation: 'Reg (EU) 2019/627 Article 45, after Reg (EC) 854/2004 Annex I Section II Chapter V point 1(d)',
    confidence: 'partly read, partly from memory',
    sources: ['eu-2019-627'],
    checked,
  },
  {
    about: 'glands',
    animals: hoofed,
    books: everywhere,
    parts: [
      'gullet',
      'oesophagus',
      'trachea',
      'windpipe',
      'larynx cartilage',
      'pluck',
      'neck',
      'thyroid',
      'thyroid gland',
      'laryngeal muscle',
      'lungs and windpipe',
    ],
    text: 'Thyroid glands lie on the windpipe beside the larynx. They come off whole: eaten, they have made people ill. In the US they and the muscles of the larynx are not saved for food.',
    citation: '9 CFR 310.15; the illness from memory',
    confidence: 'memory',
    sources: ['cfr-9-310'],
    checked,
  },
  {
    about: 'heavy metals',
    animals: hoofed,
    books: european,
    parts: ['liver', 'kidney', 'pluck'],
    text: 'Liver and kidneys of animals over two years old are unfit where heavy metals are general in the place they come from.',
    citation: 'Reg (EU) 2019/627 Article 45, after Reg (EC) 854/2004 Annex I Section II Chapter V point 1(k)',
    confidence: 'partly read, partly from memory',
    sources: ['eu-2019-627'],
    checked,
  },
  {
    about: 'lead',
    animals: shot,
    books: everywhere,
    parts: ['*'],
    text: 'If it was shot with lead, lead is left in it, also where no shot is found. People who eat such game often, children, and women who are or may become pregnant are told to eat little of it. Ask what it was shot with.',
    citation: 'Food Standards Agency, advice to frequent eaters of game shot with lead',
    confidence: 'memory',
    sources: ['fsa-lead-shot-game'],
    checked,
  },
  {
    about: 'vitamin A',
    animals: every,
    books: everywhere,
    parts: ['liver', 'pluck', 'giblet'],
    text: 'Liver holds much vitamin A: people who are or may become pregnant are told not to eat it, others not more than once a week. Say on the menu what it is.',
    citation: 'National Health Service, liver and vitamin A',
    confidence: 'memory',
    sources: ['nhs-vitamin-a-liver'],
    checked,
  },
  {
    about: 'Trichinella',
    animals: ['pig', 'wild boar'],
    books: european,
    parts: ['*'],
    text: 'Pigs and wild boar are tested for Trichinella, or come from holdings excused from the test, or were frozen by the rule. Ask which.',
    citation: 'Reg (EU) 2015/1375',
    confidence: 'memory',
    sources: ['eu-2015-1375'],
    checked,
  },
];

/**
 * What else the law says of a part in a place [-]: notes in the order of the table, each with citation, how it is known and
 * the day it was checked; none for an animal that is not in the table.
 * Equation: the rows of that animal, law book and part; of several parts named together every note once.
 * Parameters: `species` and `part` as a kitchen writes them; `place` one of the six.
 * Assumes nothing about what is made of it: a note that bars minced meat stands for a roast as well.
 * Checked against the cited texts as far as `confidence` says.
 * @example lawNotes('pheasant', 'liver', 'GB-ENG').map((n) => n.about).join(', ') // → 'by-product, lead, vitamin A'
 * Source: eu-853-2004, eu-1069-2009
 */
export function lawNotes(species: string, part: string, place: LawPlace): LawNote[] {
  const animals = animalsOf(species);
  const book = bookOf(place);
  const names = new Set(
    [part, ...partsNamed(part)].flatMap((one) => {
      const own = namesOfPart(one, species);
      // "hind trotter", "lamb brain": the last word is the part.
      return [...own, ...own.map((n) => n.split(' ').at(-1) ?? n)];
    }),
  );
  return notes
    .filter(
      (n) =>
        animals.some((a) => n.animals.includes(a)) &&
        n.books.includes(book) &&
        (n.places === undefined || n.places.includes(place)) &&
        n.parts.some((p) => p === '*' || names.has(p)),
    )
    .map(({ about, text, citation, confidence, sources, checked: day }) => ({
      about,
      text,
      citation,
      confidence,
      sources,
      checked: day,
    }));
}
