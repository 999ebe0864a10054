import type { Specification } from '../../../../contract/specification.ts';
import { Verdict, type VerdictState } from '../../../parts/verdict.tsx';
import { standingOf } from './standing.ts';

const shapes: Record<ReturnType<typeof standingOf>['word'], VerdictState> = {
  'in force': 'holds',
  'asked again, the old one in force': 'not yet',
  'waits for an answer': 'not yet',
  'not sent yet': 'not yet',
  declined: 'does not hold',
  ended: 'neutral',
};

/** How far a specification is, in a word and a shape. */
export function StandingOf({ specification }: { readonly specification: Specification }) {
  const { word, why } = standingOf(specification);
  return (
    <Verdict state={shapes[word]} word={word.replace(/^./, (c) => c.toUpperCase())}>
      {why === '' ? undefined : <p>{why}</p>}
    </Verdict>
  );
}
