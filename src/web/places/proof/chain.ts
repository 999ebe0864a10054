import type { ResultOf } from '../../../contract/operations.ts';

/** The result of walking the chain, in words; a chain that is broken is never said softly. */
export function chainWords(check: ResultOf<'checkJournal'>): {
  readonly holds: boolean;
  readonly words: string;
} {
  const lines = `${check.lines} ${check.lines === 1 ? 'line' : 'lines'}`;
  if (check.lines === 0) return { holds: false, words: 'The journal is empty: there is nothing to check.' };
  if (check.holds && check.brokenAt === null)
    return {
      holds: true,
      words: `All ${lines} follow one another; none has been changed or taken out since it was written.`,
    };
  const where = check.brokenAt === null ? '' : ` at line ${check.brokenAt}`;
  return {
    holds: false,
    words: `The chain is broken${where}: a line or a record was changed or taken out after it was written. What was written before it still stands; do not rely on what follows until somebody has found out why.`,
  };
}
