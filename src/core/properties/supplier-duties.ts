/**
 * What the law asks of whoever supplies a part, line by line with its citation: what a specification may take for granted
 * and what it had better say. The words are this program's own; the plant's own approval and the official veterinarian
 * stand above them.
 */
import { animalsOf, bookOf, type LawPlace, namesOfPart, partsNamed } from './parts-law.ts';
import type { LawBook, LawConfidence, LawSpecies } from './parts-law-rows.ts';

export interface SupplierDuty {
  readonly about:
    | 'intention'
    | 'inspection'
    | 'age'
    | 'identity'
    | 'dressing'
    | 'blood'
    | 'temperature'
    | 'mark and label'
    | 'records'
    | 'tests';
  readonly text: string;
  readonly citation: string;
  readonly confidence: LawConfidence;
  readonly sources: readonly string[];
  readonly checked: string;
}

interface DutyRow extends SupplierDuty {
  readonly animals: readonly LawSpecies[];
  readonly books: readonly LawBook[];
  /** Left out: whatever the part. */
  readonly parts?: RegExp;
}

const checked = '2026-11-25';
const european = ['GB', 'EU/NI'] as const;
const american = ['US'] as const;
const hoofed = ['pig', 'cattle', 'sheep or goat', 'farmed deer'] as const;
const game = ['wild deer', 'wild boar', 'small wild game'] as const;
const farmed = [...hoofed, 'poultry', 'farmed rabbit'] as const;
const every = [...farmed, ...game, 'poultry slaughtered on the farm'] as const;
const mixed = 'partly read, partly from memory';

const offal =
  /\b(heart|liver|kidney|lung|lights|pluck|spleen|melt|stomach|maw|tripe|paunch|intestine|chitterling|casing|bladder|brain|tongue|testicle|fry|udder|blood|sweetbread|thymus|caul|oesophagus|gullet|rectum|offal|spinal cord)\b/;
const whole = /\b(whole animal|whole|carcass|side)\b/;

const duties: readonly DutyRow[] = [
  {
    about: 'intention',
    animals: every,
    books: european,
    text: 'Told in writing before the day of slaughter that this part is meant for food, and never once put aside, marked or collected as a by-product: that cannot be undone.',
    citation:
      'Reg (EC) 1069/2009 Articles 2(1)(b), 3(1) and 4(1); FSA Manual for Official Controls chapter 2.8',
    confidence: mixed,
    sources: ['eu-1069-2009', 'fsa-manual-official-controls'],
    checked,
  },
  {
    about: 'inspection',
    animals: farmed,
    books: european,
    text: 'Animal inspected before slaughter, carcass and this part inspected after it, and passed.',
    citation: 'Reg (EU) 2017/625 Article 18; Reg (EU) 2019/627 Articles 7–45',
    confidence: mixed,
    sources: ['eu-2019-627'],
    checked,
  },
  {
    about: 'inspection',
    animals: game,
    books: european,
    text: 'Looked over by a trained person soon after the kill, with a numbered declaration that goes with the body; then inspected at an approved game establishment, or sold as a hunter’s small quantity under local rules.',
    citation: 'Reg (EC) 853/2004 Annex III Section IV; Article 1(3)(e)',
    confidence: mixed,
    sources: ['eu-853-2004'],
    checked,
  },
  {
    about: 'inspection',
    animals: every,
    books: american,
    text: 'Inspected and passed at an official establishment, with the mark of inspection (or the state’s equal programme).',
    citation: '9 CFR parts 310 and 381',
    confidence: mixed,
    sources: ['cfr-9-310', 'cfr-9-381'],
    checked,
  },
  {
    about: 'age',
    animals: ['cattle'],
    books: european,
    parts:
      /\b(head|skull|brain|eye|cord|backbone|column|chine|bone|neck|rib|loin|sirloin|cheek|whole animal|carcass|side|quarter)\b/,
    text: 'Age shown by passport: 12 months for skull, brain, eyes and cord; 30 months for the backbone. Tonsils, the last four metres of gut, caecum and mesentery never, unless the origin frees them. Age not shown counts as over.',
    citation: 'Reg (EC) 999/2001 Article 8 and Annex V points 1(a) and 2',
    confidence: 'read',
    sources: ['eu-999-2001'],
    checked,
  },
  {
    about: 'age',
    animals: ['sheep or goat'],
    books: european,
    parts: /\b(head|skull|brain|eye|cord|cheek|tongue|whole animal|carcass|side)\b/,
    text: 'Age or teeth shown: 12 months or under and no permanent incisor through the gum, or the skull and cord stay out. Age not shown counts as over.',
    citation: 'Reg (EC) 999/2001 Article 8 and Annex V point 1(b)',
    confidence: 'read',
    sources: ['eu-999-2001'],
    checked,
  },
  {
    about: 'age',
    animals: ['cattle'],
    books: american,
    parts: /\b(head|skull|brain|eye|cord|backbone|column|bone|whole animal|carcass|side)\b/,
    text: 'Under 30 months by the plant’s records of age, or skull, brain, eyes, cord and backbone stay out; tonsils and the far end of the small intestine at every age.',
    citation: '9 CFR 310.22',
    confidence: 'read',
    sources: ['cfr-9-310'],
    checked,
  },
  {
    about: 'identity',
    animals: farmed,
    books: european,
    text: 'Told apart as a part of its own carcass until inspection has ended.',
    citation:
      'Reg (EC) 853/2004 Annex III Section I Chapter IV point 13 (hoofed animals); for poultry taken as the same',
    confidence: 'memory',
    sources: ['eu-853-2004'],
    checked,
  },
  {
    about: 'identity',
    animals: ['poultry'],
    books: american,
    parts: /\b(foot|feet|paw)/,
    text: 'Feet kept with, or traceable to, their own carcass through inspection.',
    citation: 'FSIS Directive 6210.2',
    confidence: 'read',
    sources: ['fsis-6210-2'],
    checked,
  },
  {
    about: 'dressing',
    animals: hoofed,
    books: european,
    parts: /\b(head|foot|feet|trotter|ear|snout|mask|muzzle|lip|heel)\b/,
    text: 'Heads and feet skinned, or scalded and dehaired, before they leave for the kitchen (visibly clean ones may go to an approved plant for that).',
    citation: 'Reg (EC) 853/2004 Annex III Section I Chapter IV point 18',
    confidence: 'memory',
    sources: ['eu-853-2004'],
    checked,
  },
  {
    about: 'dressing',
    animals: ['pig', 'cattle'],
    books: european,
    parts: /\b(head|half head|tongue)\b/,
    text: 'Tonsils taken out cleanly, after inspection.',
    citation: 'Reg (EC) 853/2004 Annex III Section I Chapter IV point 16',
    confidence: 'memory',
    sources: ['eu-853-2004'],
    checked,
  },
  {
    about: 'dressing',
    animals: hoofed,
    books: european,
    parts: /\b(stomach|maw|tripe|paunch|intestine|chitterling|casing|bladder|runner)\b/,
    text: 'Stomachs emptied and scalded or cleaned, intestines emptied and cleaned; then salted, heated or dried and kept from soiling.',
    citation: 'Reg (EC) 853/2004 Annex III Section I Chapter IV point 18 and Section XIII',
    confidence: mixed,
    sources: ['eu-853-2004'],
    checked,
  },
  {
    about: 'dressing',
    animals: ['sheep or goat', 'cattle'],
    books: european,
    parts: whole,
    text: 'Skinned whole; head and feet apart.',
    citation: 'Reg (EC) 853/2004 Annex III Section I Chapter IV points 8–9',
    confidence: 'memory',
    sources: ['eu-853-2004'],
    checked,
  },
  {
    about: 'dressing',
    animals: ['poultry'],
    books: european,
    parts: /\b(foot|feet|paw)\b/,
    text: 'Feet scalded, outer skin and claws off, washed; the procedure settled with the official veterinarian.',
    citation:
      'Reg (EC) 1069/2009 Article 10(b)(iii) names feet nobody wanted as a by-product; the rest is good practice from memory',
    confidence: mixed,
    sources: ['eu-1069-2009'],
    checked,
  },
  {
    about: 'blood',
    animals: [...hoofed, 'poultry'],
    books: european,
    parts: /\bblood\b/,
    text: 'Collected cleanly or in a closed system; held until every animal in the vessel has passed, for one that fails makes all of it unfit; only an authorised additive against clotting, named.',
    citation:
      'Reg (EC) 853/2004 Annex III Section I Chapter IV point 14 (hoofed animals; for poultry taken as the same)',
    confidence: 'memory',
    sources: ['eu-853-2004'],
    checked,
  },
  {
    about: 'blood',
    animals: hoofed,
    books: american,
    parts: /\bblood\b/,
    text: 'From inspected and passed animals at an official establishment, not defibrinated by hand, with permitted anticoagulants; the label says blood and the species.',
    citation: '9 CFR 310.20; 317.8(b)(31)',
    confidence: 'read',
    sources: ['cfr-9-310'],
    checked,
  },
  {
    about: 'temperature',
    animals: [...hoofed, 'wild deer', 'wild boar'],
    books: european,
    parts: offal,
    text: 'Offal at or below 3 °C from the chill on, also under way.',
    citation: 'Reg (EC) 853/2004 Annex III Section I Chapter VII',
    confidence: 'memory',
    sources: ['eu-853-2004'],
    checked,
  },
  {
    about: 'temperature',
    animals: [...hoofed, 'wild deer', 'wild boar'],
    books: european,
    parts: new RegExp(`^(?!.*${offal.source})`),
    text: 'At or below 7 °C throughout from the chill on, also under way; offal that comes with it at or below 3 °C.',
    citation: 'Reg (EC) 853/2004 Annex III Section I Chapters V and VII',
    confidence: 'memory',
    sources: ['eu-853-2004'],
    checked,
  },
  {
    about: 'temperature',
    animals: ['poultry', 'poultry slaughtered on the farm', 'farmed rabbit', 'small wild game'],
    books: european,
    text: 'At or below 4 °C as soon as may be after inspection and drawing, giblets as well, also under way.',
    citation: 'Reg (EC) 853/2004 Annex III Section II Chapters IV–V; Section IV Chapter III for small game',
    confidence: mixed,
    sources: ['eu-853-2004'],
    checked,
  },
  {
    about: 'tests',
    animals: ['pig', 'wild boar'],
    books: european,
    text: 'Tested for Trichinella and negative, or excused, or frozen by the rule; the paper says which.',
    citation: 'Reg (EU) 2015/1375',
    confidence: 'memory',
    sources: ['eu-2015-1375'],
    checked,
  },
  {
    about: 'mark and label',
    animals: [...farmed, ...game],
    books: european,
    text: 'Health or identification mark with the number of the approved house; lot; use-by date; and where packed for sale, where it was reared and slaughtered.',
    citation: 'Reg (EC) 853/2004 Article 5 and Annex II Section I; Reg (EU) 1169/2011',
    confidence: mixed,
    sources: ['eu-853-2004', 'eu-1169-2011'],
    checked,
  },
  {
    about: 'mark and label',
    animals: ['poultry slaughtered on the farm'],
    books: european,
    text: 'Labelled with the name and address of the farm; sold fresh in small quantities to the eater or a local kitchen; killed by somebody certified.',
    citation: 'Reg (EC) 853/2004 Article 1(3)(d); Food Standards Scotland guidance',
    confidence: 'read',
    sources: ['eu-853-2004', 'fss-farm-poultry'],
    checked,
  },
  {
    about: 'records',
    animals: every,
    books: european,
    text: 'With every consignment, kept up to date each day: what it is, how much, name and address of sender and receiver (and of owners, if others), lot, day of dispatch.',
    citation: 'Reg (EC) 178/2002 Article 18; Reg (EU) 931/2011 Article 3',
    confidence: 'read',
    sources: ['eu-931-2011'],
    checked,
  },
];

/**
 * What the law asks of whoever supplies a part in a place [-]: lines in the order in which the job goes, each with its
 * citation, how it is known and the day it was checked. Empty where the animal is not in the table: not known, not nothing.
 * Equation: the rows of that animal and law book whose parts the name speaks of; a whole animal is asked what its parts are.
 * Parameters: `species` and `part` as a kitchen writes them (`whole animal` too); `place` one of the six.
 * Assumes the usual way through an approved slaughterhouse, or the hunter's or farm's own way where the animal says so.
 * Checked against the cited texts as far as `confidence` says.
 * @example supplierDuties('pig', 'blood', 'GB-ENG').some((d) => d.about === 'blood') // → true
 * @example supplierDuties('emu', 'neck', 'GB-ENG').length // → 0
 * Source: eu-853-2004, eu-1069-2009, eu-2019-627, eu-931-2011
 */
export function supplierDuties(species: string, part: string, place: LawPlace): SupplierDuty[] {
  const animals = animalsOf(species);
  const book = bookOf(place);
  const names = [part.toLowerCase(), ...partsNamed(part).flatMap((one) => namesOfPart(one, species))];
  return duties
    .filter(
      (d) =>
        animals.some((a) => d.animals.includes(a)) &&
        d.books.includes(book) &&
        (d.parts === undefined || names.some((n) => d.parts?.test(n))),
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
