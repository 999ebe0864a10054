/** What was decided on a delivery and what was found, in a word and a shape. Pure. */
import type { DeliveryCheck, DeliverySummary } from '../../../../contract/delivery.ts';
import type { VerdictState } from '../../../parts/verdict.tsx';

export function decided(decision: DeliverySummary['decision']): {
  readonly word: string;
  readonly state: VerdictState;
} {
  if (decision === 'accepted') return { word: 'Accepted', state: 'holds' };
  if (decision === 'refused') return { word: 'Refused', state: 'does not hold' };
  return { word: 'Accepted with a deviation', state: 'not yet' };
}

export const metState = (met: DeliveryCheck['met']): VerdictState =>
  met === 'met' ? 'holds' : met === 'not met' ? 'does not hold' : 'unknown';

export const pointsWords = (d: Pick<DeliverySummary, 'pointsMet' | 'pointsAsked'>): string =>
  d.pointsAsked === 0 ? 'nothing was asked in writing' : `${d.pointsMet} of ${d.pointsAsked} points met`;
