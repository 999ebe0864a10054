/** Undo and redo without limit: every state that was ever left can be come back to. Pure. */
export interface History<T> {
  readonly past: readonly T[];
  readonly present: T;
  readonly future: readonly T[];
  /** What the last change was about; the next change about the same joins it. Null: the next change stands alone. */
  readonly about: string | null;
}

export const begin = <T>(present: T): History<T> => ({ past: [], present, future: [], about: null });

/** A change. Changes about the same thing, one after another, are one step of undo. */
export function change<T>(history: History<T>, next: T, about: string | null = null): History<T> {
  if (next === history.present) return history;
  const joins = about !== null && about === history.about && history.past.length > 0;
  return {
    past: joins ? history.past : [...history.past, history.present],
    present: next,
    future: [],
    about,
  };
}

/** After a pause the next change is a step of its own. */
export const pause = <T>(history: History<T>): History<T> =>
  history.about === null ? history : { ...history, about: null };

export function undo<T>(history: History<T>): History<T> {
  const before = history.past.at(-1);
  if (history.past.length === 0) return history;
  return {
    past: history.past.slice(0, -1),
    present: before as T,
    future: [history.present, ...history.future],
    about: null,
  };
}

export function redo<T>(history: History<T>): History<T> {
  if (history.future.length === 0) return history;
  return {
    past: [...history.past, history.present],
    present: history.future[0] as T,
    future: history.future.slice(1),
    about: null,
  };
}
