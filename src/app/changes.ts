/** Committed changes, heard by every server on the same store: the database passes them on, after the commit. */
import type { Change } from '../contract/operations.ts';
import type { Store } from '../store/store.ts';

export const channel = 'fifth_quarter_change';

export interface Changes {
  /** Calls `heard` for every committed change of a kitchen; answers how to stop. */
  follow(kitchenId: string, heard: (change: Change) => void): () => void;
  close(): Promise<void>;
}

export async function openChanges(store: Store): Promise<Changes> {
  const followers = new Map<string, Set<(change: Change) => void>>();
  const stop = await store.listen(channel, (payload) => {
    const { kitchenId, ...change } = JSON.parse(payload) as Change & { kitchenId: string };
    for (const heard of followers.get(kitchenId) ?? []) heard(change);
  });
  return {
    follow(kitchenId, heard) {
      const set = followers.get(kitchenId) ?? new Set();
      followers.set(kitchenId, set.add(heard));
      return () => {
        set.delete(heard);
        if (set.size === 0) followers.delete(kitchenId);
      };
    },
    close: stop,
  };
}
