/**
 * What a person can do right now, as one table: buttons, keys and the search all read it. A screen registers its
 * actions while it is open.
 */
import { useEffect, useRef, useSyncExternalStore } from 'react';

export interface Action {
  readonly id: string;
  /** As a button says it: "Add a dish". */
  readonly label: string;
  /** `/`, `mod+z`, `mod+shift+z`: mod is Ctrl, or Command on a Mac. */
  readonly keys?: readonly string[];
  readonly run: () => unknown;
  readonly enabled?: boolean;
  /** A key that works while somebody types in a field too. */
  readonly whileTyping?: boolean;
  /** Not offered in the search. */
  readonly hidden?: boolean;
}

const sets = new Map<number, readonly Action[]>();
const listeners = new Set<() => void>();
let all: readonly Action[] = [];
let count = 0;

function settle(): void {
  all = [...sets.entries()].sort(([a], [b]) => b - a).flatMap(([, actions]) => actions);
  for (const listener of listeners) listener();
}

/** Adds actions; the newest win where two claim a key. Returns how to take them away again. */
export function register(actions: readonly Action[]): () => void {
  count += 1;
  const id = count;
  sets.set(id, actions);
  settle();
  return () => {
    sets.delete(id);
    settle();
  };
}

/** A screen's actions, for as long as it is open. */
export function useActions(actions: readonly Action[]): void {
  const latest = useRef(actions);
  latest.current = actions;
  const shape = actions
    .map((a) => `${a.id}|${a.label}|${a.enabled ?? true}|${a.keys?.join(' ') ?? ''}`)
    .join('\n');
  // biome-ignore lint/correctness/useExhaustiveDependencies: `shape` says when the table changes; `latest` says what runs
  useEffect(
    () =>
      register(
        latest.current.map((a) => ({
          ...a,
          run: () => latest.current.find((now) => now.id === a.id)?.run(),
        })),
      ),
    [shape],
  );
}

export function useAllActions(): readonly Action[] {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => all,
  );
}

export interface KeyPress {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

/** The name of a key press in the table's own spelling. */
export function keyName(press: KeyPress): string {
  const mod = press.ctrlKey || press.metaKey ? 'mod+' : '';
  const alt = press.altKey ? 'alt+' : '';
  const named = press.key.length > 1 || mod !== '' || alt !== '';
  return `${mod}${alt}${press.shiftKey && named ? 'shift+' : ''}${press.key.toLowerCase()}`;
}

/** The action a key press means, or undefined. */
export function actionFor(
  press: KeyPress,
  typing: boolean,
  actions: readonly Action[] = all,
): Action | undefined {
  const name = keyName(press);
  return actions.find(
    (a) => a.keys?.includes(name) === true && a.enabled !== false && (!typing || a.whileTyping === true),
  );
}

function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (
    target.isContentEditable ||
    target instanceof HTMLTextAreaElement ||
    target instanceof HTMLSelectElement
  )
    return true;
  return (
    target instanceof HTMLInputElement && !['checkbox', 'radio', 'range', 'button'].includes(target.type)
  );
}

/** Hears the keys of the whole page. */
export function hearKeys(): () => void {
  const hear = (event: KeyboardEvent) => {
    if (event.defaultPrevented || document.querySelector('dialog[open]') !== null) return;
    const action = actionFor(event, isTyping(event.target));
    if (action === undefined) return;
    event.preventDefault();
    action.run();
  };
  document.addEventListener('keydown', hear);
  return () => document.removeEventListener('keydown', hear);
}
