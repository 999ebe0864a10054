/**
 * The order in which the law is asked, as yes-or-no questions: the first one that stops decides. For the page that says
 * why; what only somebody at the plant can know is asked back.
 */
import { type LawPlace, lawOf, type Origin, riskMaterial } from './parts-law.ts';
import type { LawConfidence } from './parts-law-rows.ts';

export interface LawQuestion {
  readonly id:
    | 'by-product'
    | 'risk'
    | 'inspection'
    | 'never'
    | 'barred'
    | 'wanted'
    | 'dressed'
    | 'cold'
    | 'made into';
  readonly question: string;
  /** The answer that stops. */
  readonly stopsOn: 'yes' | 'no';
  readonly outcome: string;
  readonly citation: string;
  readonly confidence: LawConfidence;
  readonly sources: readonly string[];
}

export const lawQuestions: readonly LawQuestion[] = [
  {
    id: 'by-product',
    question: 'Was it ever put aside, marked, booked or collected as a by-product?',
    stopsOn: 'yes',
    outcome: 'Never food again, however fit it is.',
    citation:
      'Reg (EC) 1069/2009 Articles 2(1)(b), 3(1) and 4(1); FSA Manual for Official Controls chapter 2.8 section 1.1.4',
    confidence: 'partly read, partly from memory',
    sources: ['eu-1069-2009', 'fsa-manual-official-controls'],
  },
  {
    id: 'risk',
    question:
      'Is it specified risk material, by animal, part, age and origin? An age nobody has shown counts as over.',
    stopsOn: 'yes',
    outcome: 'Never food.',
    citation: 'Reg (EC) 999/2001 Article 8 and Annex V; in the US 9 CFR 310.22',
    confidence: 'read',
    sources: ['eu-999-2001', 'cfr-9-310'],
  },
  {
    id: 'never',
    question: 'Do the texts name it as never food?',
    stopsOn: 'yes',
    outcome: 'Never food.',
    citation: 'Reg (EC) 1069/2009 Articles 8–10; Reg (EU) 2019/627 Article 45',
    confidence: 'partly read, partly from memory',
    sources: ['eu-1069-2009', 'eu-2019-627'],
  },
  {
    id: 'inspection',
    question: 'Was the animal inspected alive and this part after slaughter, and did both pass?',
    stopsOn: 'no',
    outcome: 'Unfit, hunted game apart, which has a trained person and rules of its own.',
    citation: 'Reg (EU) 2017/625 Article 18; Reg (EU) 2019/627 Articles 7–45',
    confidence: 'partly read, partly from memory',
    sources: ['eu-2019-627'],
  },
  {
    id: 'barred',
    question:
      'Do the texts count it a by-product by default, or keep it out of products, or is there no row for it?',
    stopsOn: 'yes',
    outcome: 'Stopped until the authority has agreed in writing.',
    citation: 'Reg (EC) 1069/2009 Article 10; Reg (EC) 853/2004 Annex III Section VI point 1',
    confidence: 'read',
    sources: ['eu-1069-2009', 'eu-853-2004'],
  },
  {
    id: 'wanted',
    question: 'Was it asked for as food, in writing, before the day of slaughter?',
    stopsOn: 'no',
    outcome: 'Then the plant classed it as a by-product, or may have: that does not come back.',
    citation: 'Follows from Reg (EC) 1069/2009 Articles 3(1) and 4(1)',
    confidence: 'interpretation',
    sources: ['eu-1069-2009'],
  },
  {
    id: 'dressed',
    question:
      'Is every condition of its row met and on paper: skinned or scalded, emptied, cleaned, age, test?',
    stopsOn: 'no',
    outcome: 'Not food until it is.',
    citation: 'Reg (EC) 853/2004 Annex III Sections I–IV',
    confidence: 'memory',
    sources: ['eu-853-2004'],
  },
  {
    id: 'cold',
    question: 'Was it kept at or below its limit from the chill on?',
    stopsOn: 'no',
    outcome: 'Refuse it, and ask.',
    citation: 'Reg (EC) 853/2004 Annex III Section I Chapters V and VII, Section II Chapters IV–V',
    confidence: 'memory',
    sources: ['eu-853-2004'],
  },
  {
    id: 'made into',
    question: 'May it go into what is made of it: uncooked, minced, a meat product, separated by machine?',
    stopsOn: 'no',
    outcome: 'It may be food and still not go into that product: see the notes of its row.',
    citation: 'Reg (EC) 853/2004 Annex III Sections V and VI; SI 2014/3001 reg. 5',
    confidence: 'partly read, partly from memory',
    sources: ['eu-853-2004', 'uk-si-2014-3001'],
  },
];

export interface AnsweredQuestion extends LawQuestion {
  /** `ask`: only somebody at the farm, the plant or the door knows. */
  readonly answer: 'yes' | 'no' | 'ask';
  readonly stops: boolean;
}

/**
 * The questions with what the table can answer of them [-], in their order; nothing after the first that stops is answered.
 * Equation: risk material, never food and barred from the table; the rest is asked back, never taken as fine.
 * Parameters: as for `lawOf`.
 * Assumes nothing of the plant: what it did is for its papers to say.
 * Checked against the answers of `lawOf`: it stops exactly where they stop.
 * @example lawPath('goose', 'head', 'GB-ENG').find((q) => q.stops).id // → 'barred'
 * @example lawPath('cow', 'brain', 'EU').find((q) => q.stops).id // → 'risk'
 * Source: eu-1069-2009, eu-999-2001
 */
export function lawPath(
  species: string,
  part: string,
  place: LawPlace,
  origin: Origin = {},
): AnsweredQuestion[] {
  const law = lawOf(species, part, place, origin);
  const risk = riskMaterial(species, part, place, origin);
  const barred = law.status === 'by-product by default: ask' || law.status === 'not known: ask';
  const known: Partial<Record<LawQuestion['id'], 'yes' | 'no'>> = {
    risk: risk.is === 'yes' ? 'yes' : 'no',
    never: law.status === 'prohibited' ? 'yes' : 'no',
    barred: barred ? 'yes' : 'no',
  };
  let stopped = false;
  return lawQuestions.map((q) => {
    const answer = stopped ? 'ask' : (known[q.id] ?? 'ask');
    const stops = answer === q.stopsOn;
    stopped ||= stops;
    return { ...q, answer, stops };
  });
}
