/** Who is working at this device, one person for each kitchen; a write without one asks first. */
import { useSyncExternalStore } from 'react';

const key = (kitchenId: string) => `fq.person.${kitchenId}`;
const listeners = new Set<() => void>();
const announce = () => {
  for (const listener of listeners) listener();
};

interface Asking {
  readonly kitchenId: string;
  readonly answer: (personId: string | null) => void;
}
let asking: Asking | null = null;

export function currentPerson(kitchenId: string): string | null {
  return localStorage.getItem(key(kitchenId));
}

export function setPerson(kitchenId: string, personId: string | null): void {
  if (personId === null) localStorage.removeItem(key(kitchenId));
  else localStorage.setItem(key(kitchenId), personId);
  announce();
}

/** Thrown when nobody would say who they are; what was typed stays where it is. */
export class NobodyChosen extends Error {
  override readonly name = 'NobodyChosen';
  constructor() {
    super('Not sent: say who you are first. What you typed is still here.');
  }
}

let pending: Promise<string> | null = null;

/** The person who signs a write, asked for once when none has been chosen yet. */
export function whoSigns(kitchenId: string): Promise<string> {
  const known = currentPerson(kitchenId);
  if (known !== null) return Promise.resolve(known);
  pending ??= new Promise<string>((resolve, reject) => {
    asking = {
      kitchenId,
      answer: (personId) => {
        asking = null;
        pending = null;
        if (personId === null) reject(new NobodyChosen());
        else {
          setPerson(kitchenId, personId);
          resolve(personId);
        }
        announce();
      },
    };
    announce();
  });
  return pending;
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  window.addEventListener('storage', listener);
  return () => {
    listeners.delete(listener);
    window.removeEventListener('storage', listener);
  };
}

export function usePersonId(kitchenId: string): string | null {
  return useSyncExternalStore(subscribe, () => currentPerson(kitchenId));
}

/** The open question "who are you?", for the one dialog that asks it. */
export function useAsking(): Asking | null {
  return useSyncExternalStore(subscribe, () => asking);
}
