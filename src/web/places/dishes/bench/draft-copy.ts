/** The copy of a draft that this device keeps until the server has acknowledged it. */
import type { Method } from '../../../../contract/steps.ts';
import type { Kept } from './autosave.ts';

const key = (versionId: string) => `fq.draft.${versionId}`;

export function keepDraft(versionId: string, kept: Kept<Method>): void {
  localStorage.setItem(key(versionId), JSON.stringify({ ...kept, at: new Date().toISOString() }));
}

export const dropDraft = (versionId: string): void => localStorage.removeItem(key(versionId));

export interface DraftCopy extends Kept<Method> {
  readonly at: string;
}

/** The copy, or null where there is none or it cannot be read. */
export function draftOf(versionId: string): DraftCopy | null {
  const text = localStorage.getItem(key(versionId));
  if (text === null) return null;
  try {
    const copy = JSON.parse(text) as Partial<DraftCopy>;
    return typeof copy.rev === 'number' && Array.isArray(copy.method) ? (copy as DraftCopy) : null;
  } catch {
    return null;
  }
}
