import type { Agreement } from '../../../contract/agreement.ts';
import type { Dish, DishSummary, LawStatus } from '../../../contract/records.ts';
import type { VerdictState } from '../../parts/verdict.tsx';

export const stageWords: Record<DishSummary['stage'], string> = {
  idea: 'Idea',
  'in trial': 'In trial',
  signed: 'Signed',
  retired: 'Retired',
};

interface LawWords {
  readonly state: VerdictState;
  readonly word: string;
  /** What to do; null where nothing is in the way. */
  readonly todo: string | null;
  /** A version cannot be signed while this stands. */
  readonly stops: boolean;
}

/** The law's answer for a part, in words; only `food` is drawn as holding, and an unknown is never fine. */
export function lawWords(law: LawStatus): LawWords {
  switch (law.status) {
    case 'food':
      return { state: 'holds', word: 'May be served', todo: null, stops: false };
    case 'food on conditions':
      return {
        state: 'not yet',
        word: 'May be served on conditions',
        todo: 'Meet each condition, and keep what shows it.',
        stops: false,
      };
    case 'by-product by default: ask':
      return {
        state: 'does not hold',
        word: 'A by-product unless it is allowed: ask first',
        todo: 'Write to your local authority, with the part, the animal, the slaughterhouse and what you mean to do, and keep the answer. Until then it cannot be signed.',
        stops: true,
      };
    case 'prohibited':
      return {
        state: 'does not hold',
        word: 'May not be served',
        todo: 'It cannot be signed. Use another part.',
        stops: true,
      };
    case 'not known: ask':
      return {
        state: 'unknown',
        word: 'Not known: ask',
        todo: 'This program does not know the law for this part here. Ask your local authority, and keep the answer. Until then it cannot be signed.',
        stops: true,
      };
  }
}

const day = (civil: string) =>
  new Intl.DateTimeFormat('en-GB', {
    timeZone: 'UTC',
    day: 'numeric',
    month: 'short',
    year: 'numeric',
  }).format(new Date(`${civil}T00:00:00Z`));

/** By whose word a stop is lifted, and until when. */
export const agreedWords = (agreed: Agreement): string =>
  `${agreed.authority}, by ${agreed.saidBy}, ${day(agreed.dated)}, reference ${agreed.reference}, ${agreed.until === null ? 'no end given' : `until ${day(agreed.until)}`}.${agreed.conditions === '' ? '' : ` On conditions: ${agreed.conditions}`}`;

/** The law’s answer for a part, or the authority’s own word where it has lifted the stop. */
export function lawWordsOf(law: LawStatus, agreed: Agreement | null): LawWords {
  const words = lawWords(law);
  if (!words.stops || agreed === null) return words;
  const until = agreed.until === null ? '' : ` until ${day(agreed.until)}`;
  return agreed.answer === 'agreed'
    ? { state: 'holds', word: `By the authority’s word${until}`, todo: null, stops: false }
    : {
        state: 'not yet',
        word: `By the authority’s word${until}, on conditions`,
        todo: 'Meet each condition, and keep what shows it.',
        stops: false,
      };
}

/** The parts of a dish that stop it today. */
export const stoppedParts = (dish: Pick<Dish, 'partsUsed'>): Dish['partsUsed'] =>
  dish.partsUsed.filter((u) => u.stops && u.agreed === null);
