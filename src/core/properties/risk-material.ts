/**
 * Specified risk material: which tissues of cattle, sheep and goats are never food, from what age, and how far the standing
 * of the country of origin for BSE changes that. An age nobody has shown counts as over the limit.
 */
import type { LawBook, LawConfidence } from './parts-law-rows.ts';

export interface RiskRule {
  readonly species: 'cattle' | 'sheep or goat';
  /** Singular, lower case; a name that holds the tissue is here as well (a head holds the skull). */
  readonly names: readonly string[];
  readonly books: readonly LawBook[];
  /** Risk material from what age on [months]; null at every age. */
  readonly fromMonths: number | null;
  /** `over`: an animal of exactly that age is not yet; `at`: it is. */
  readonly side: 'over' | 'at';
  /** `still`: also from a country of negligible risk; `ask`: whether it is, is not settled; `not`: it is not. */
  readonly negligible: Readonly<Partial<Record<LawBook, 'still' | 'ask' | 'not'>>>;
  /** False where the list itself is not settled: then the part is stopped until the authority has said so. */
  readonly settled: boolean;
  readonly what: string;
  readonly citation: string;
  readonly confidence: LawConfidence;
  readonly sources: readonly string[];
  readonly checked: string;
}

const checked = '2026-11-25';
const annex = 'Reg (EC) 999/2001 Article 8 and Annex V';
const skull = ['head', 'half head', 'skull', 'brain', 'eye', 'spinal cord'];
const column = [
  'backbone',
  'vertebral column',
  'spine',
  'chine',
  'chine bone',
  'neck bone',
  't-bone',
  'dorsal root ganglion',
];

export const riskRules: readonly RiskRule[] = [
  {
    species: 'cattle',
    names: [...skull, 'calf head', 'calf brain'],
    books: ['GB', 'EU/NI'],
    fromMonths: 12,
    side: 'over',
    negligible: { GB: 'still', 'EU/NI': 'still' },
    settled: true,
    what: 'Skull (without the lower jaw) with brain and eyes, and spinal cord, of cattle over 12 months',
    citation: `${annex} point 1(a)(i)`,
    confidence: 'read',
    sources: ['eu-999-2001'],
    checked,
  },
  {
    species: 'cattle',
    names: column,
    books: ['GB', 'EU/NI'],
    fromMonths: 30,
    side: 'over',
    negligible: { GB: 'ask', 'EU/NI': 'not' },
    settled: true,
    what: 'Backbone (without the tail, the spines and the side wings of the vertebrae, the crest and wings of the sacrum) with its nerve knots, of cattle over 30 months',
    citation: `${annex} points 1(a)(ii) and 2`,
    confidence: 'read',
    sources: ['eu-999-2001'],
    checked,
  },
  {
    species: 'cattle',
    names: [
      'tonsil',
      'small intestine',
      'intestine',
      'large intestine',
      'ileum',
      'caecum',
      'mesentery',
      'mesentery fat',
      'ruffle',
    ],
    books: ['GB', 'EU/NI'],
    fromMonths: null,
    side: 'over',
    negligible: { GB: 'ask', 'EU/NI': 'not' },
    settled: true,
    what: 'Tonsils, the last four metres of small intestine, caecum and mesentery of cattle of every age',
    citation: `${annex} points 1(a)(iii) and 2`,
    confidence: 'read',
    sources: ['eu-999-2001'],
    checked,
  },
  {
    species: 'cattle',
    names: [...skull, 'trigeminal ganglion', ...column, 'calf head', 'calf brain'],
    books: ['US'],
    fromMonths: 30,
    side: 'at',
    negligible: { US: 'still' },
    settled: true,
    what: 'Skull, brain, eyes, trigeminal ganglia, spinal cord, backbone (without tail, side wings and wings of the sacrum) and its nerve knots, of cattle of 30 months and over',
    citation: '9 CFR 310.22(a)(1), (b)',
    confidence: 'read',
    sources: ['cfr-9-310'],
    checked,
  },
  {
    species: 'cattle',
    names: ['tonsil', 'ileum', 'distal ileum'],
    books: ['US'],
    fromMonths: null,
    side: 'over',
    negligible: { US: 'still' },
    settled: true,
    what: 'Tonsils and the far end of the small intestine of cattle of every age',
    citation: '9 CFR 310.22(a)(2)–(3)',
    confidence: 'read',
    sources: ['cfr-9-310'],
    checked,
  },
  {
    species: 'sheep or goat',
    names: [...skull, 'lamb head', 'lamb brain', 'kid head', 'kid brain'],
    books: ['GB', 'EU/NI'],
    fromMonths: 12,
    side: 'over',
    negligible: { GB: 'still', 'EU/NI': 'still' },
    settled: true,
    what: 'Skull with brain and eyes, and spinal cord, of sheep and goats over 12 months or with a permanent incisor through the gum',
    citation: `${annex} point 1(b)`,
    confidence: 'read',
    sources: ['eu-999-2001'],
    checked,
  },
  {
    species: 'sheep or goat',
    names: ['tonsil', 'spleen', 'melt', 'ileum'],
    books: ['GB', 'EU/NI'],
    fromMonths: null,
    side: 'over',
    negligible: { GB: 'still', 'EU/NI': 'still' },
    settled: false,
    what: 'Tonsils (over 12 months), spleen and ileum of sheep and goats stood in the list of 2018; a later amendment is remembered as taking them off. Not to be used until the official veterinarian has confirmed it',
    citation: `${annex} point 1(b); Reg (EU) 2018/969`,
    confidence: 'partly read, partly from memory',
    sources: ['eu-999-2001', 'eu-2018-969'],
    checked,
  },
];

export interface Origin {
  /** The most the animals may be old [months]; null: nobody has shown it. Left out: only the part's name was asked about. */
  readonly ageMonths?: number | null;
  /** Does the country of origin stand at negligible risk of BSE? Not said is not negligible. */
  readonly negligible?: boolean | null;
}

/** `yes`: never food; `ask`: stopped until the authority has said so in writing; `no`: not on the list. */
export interface RiskAnswer {
  readonly is: 'yes' | 'ask' | 'no';
  readonly rule: RiskRule | null;
  readonly reason: string;
}

/**
 * Is a part specified risk material [-]? Names here are those of the table: one animal, one part, lower case, singular.
 * Equation: the rules of that animal, part and law book; over the age of the rule it is; an age not shown is over it.
 * Parameters: `species`, `name`, `book` as the table has them; `origin.ageMonths` the most the animal may be old (0 to 600
 * months); `origin.negligible` the standing of its country. An age that is no number, or below nothing, is not known.
 * Assumes the lists of the cited texts; the list for Great Britain is kept whole although the country's standing changed in
 * 2025, because no text was found that shortens it.
 * Checked on both sides of each limit: 12 months is not over 12, 30 months is 30 or over.
 * @example riskOf('cattle', 'brain', 'GB', { ageMonths: 13 }).is // → 'yes'
 * @example riskOf('cattle', 'brain', 'US', { ageMonths: 13 }).is // → 'no'
 * Source: eu-999-2001, cfr-9-310
 */
export function riskOf(species: string, name: string, book: LawBook, origin: Origin = {}): RiskAnswer {
  const rule = riskRules.find(
    (r) => r.species === species && r.books.includes(book) && r.names.includes(name),
  );
  if (rule === undefined)
    return { is: 'no', rule: null, reason: 'Not on the list of specified risk material.' };
  const age = origin.ageMonths;
  const known = typeof age === 'number' && Number.isFinite(age) && age >= 0;
  const { fromMonths } = rule;
  const over = fromMonths === null || !known || (rule.side === 'over' ? age > fromMonths : age >= fromMonths);
  if (!over)
    return {
      is: 'no',
      rule,
      reason: `At most ${age} months old, so not specified risk material. The evidence of age stays with the lot.`,
    };
  if (!rule.settled) return { is: 'ask', rule, reason: `${rule.what}.` };
  const standing = origin.negligible === true ? (rule.negligible[book] ?? 'still') : 'still';
  if (standing === 'not')
    return {
      is: 'no',
      rule,
      reason:
        'Not specified risk material from a country of negligible BSE risk; proof of origin stays with the lot.',
    };
  if (standing === 'ask')
    return {
      is: 'ask',
      rule,
      reason: `${rule.what}: specified risk material as the text for Great Britain stands. Whether a negligible BSE risk shortens the list there is not settled: ask the official veterinarian in writing.`,
    };
  const unknownAge =
    fromMonths !== null && !known ? ` The age is not shown, so it counts as over ${fromMonths} months.` : '';
  return { is: 'yes', rule, reason: `Specified risk material, never food: ${rule.what}.${unknownAge}` };
}
