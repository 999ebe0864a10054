/** What was decided on a delivery and what was found, in a word and a shape. Pure. */
import type { DeliveryCheck, DeliverySummary } from '../../../../contract/delivery.ts';
import type { VerdictState } from '../../../parts/verdict.tsx';

type Decided = Pick<DeliverySummary, 'decision' | 'pointsMet' | 'pointsAsked' | 'warmestC'>;

/** Accepted, with points that nobody looked at or without a temperature, is not shown as if all had been found well. */
export function decided(d: Decided): { readonly word: string; readonly state: VerdictState } {
  if (d.decision === 'refused') return { word: 'Refused', state: 'does not hold' };
  if (d.decision === 'accepted with deviation')
    return { word: 'Accepted with a deviation', state: 'not yet' };
  const open = d.pointsAsked - d.pointsMet;
  const unknown = [
    ...(open > 0 ? [`${open} ${open === 1 ? 'point' : 'points'} not looked at`] : []),
    ...(d.warmestC === null ? ['temperature not measured'] : []),
  ];
  if (unknown.length > 0) return { word: `Accepted, ${unknown.join(', ')}`, state: 'unknown' };
  return { word: 'Accepted', state: d.pointsAsked === 0 ? 'neutral' : 'holds' };
}

export const metState = (met: DeliveryCheck['met']): VerdictState =>
  met === 'met' ? 'holds' : met === 'not met' ? 'does not hold' : 'unknown';

export const pointsWords = (d: Pick<DeliverySummary, 'pointsMet' | 'pointsAsked'>): string =>
  d.pointsAsked === 0 ? 'nothing was asked in writing' : `${d.pointsMet} of ${d.pointsAsked} points met`;

/** `6 animals`, `1 piece`: what was counted stands beside the number. */
export const countWords = (kind: 'whole' | 'part' | 'other', count: number): string => {
  const one = kind === 'whole' ? 'animal' : 'piece';
  return `${count} ${count === 1 ? one : `${one}s`}`;
};
