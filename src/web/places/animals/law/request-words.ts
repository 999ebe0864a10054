/** How a question to the authority stands, in a word and a shape; pure. */
import type { AuthorityRequest } from '../../../../contract/authority.ts';
import type { VerdictState } from '../../../parts/verdict.tsx';
import { dayText } from '../shelf/civil.ts';

export function requestWords(request: Pick<AuthorityRequest, 'answers' | 'lifts'>): {
  readonly state: VerdictState;
  readonly word: string;
} {
  const last = request.answers.at(-1);
  if (last === undefined) return { state: 'unknown', word: 'Not answered yet: the stop stands' };
  if (request.lifts) {
    const until = last.until === null ? ', no end given' : ` until ${dayText(last.until)}`;
    return last.answer === 'agreed'
      ? { state: 'holds', word: `Agreed by ${last.authority}${until}` }
      : { state: 'not yet', word: `Agreed on conditions by ${last.authority}${until}` };
  }
  if (last.answer === 'refused') return { state: 'does not hold', word: `Refused by ${last.authority}` };
  if (last.answer === 'asked for more')
    return { state: 'not yet', word: `${last.authority} asked for more: the stop stands` };
  return { state: 'does not hold', word: 'Agreed once, but not today: the stop stands' };
}
