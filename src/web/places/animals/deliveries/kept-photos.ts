/** Pictures that this device holds until the kitchen's server has them: they survive a reload and a yard without signal. */
import { useCallback, useEffect, useState } from 'react';
import { call, queryClient } from '../../../api.ts';

export interface KeptPhoto {
  readonly id: string;
  readonly kitchenId: string;
  readonly deliveryId: string;
  readonly base64: string;
  readonly takenAt: string;
}

const store = 'photos';

function open(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open('fq-photos', 1);
    request.onupgradeneeded = () => request.result.createObjectStore(store, { keyPath: 'id' });
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error('This device keeps no pictures.'));
  });
}

async function inStore<T>(mode: IDBTransactionMode, run: (s: IDBObjectStore) => IDBRequest<T>): Promise<T> {
  const db = await open();
  try {
    return await new Promise<T>((resolve, reject) => {
      const transaction = db.transaction(store, mode);
      const request = run(transaction.objectStore(store));
      transaction.oncomplete = () => resolve(request.result);
      transaction.onerror = () => reject(transaction.error ?? new Error('The picture was not kept here.'));
      transaction.onabort = () => reject(transaction.error ?? new Error('The picture was not kept here.'));
    });
  } finally {
    db.close();
  }
}

const keep = (photo: KeptPhoto) => inStore('readwrite', (s) => s.put(photo));
const forget = (id: string) => inStore('readwrite', (s) => s.delete(id));
const all = () => inStore<KeptPhoto[]>('readonly', (s) => s.getAll());

/** The pictures of one delivery that are still only here. */
export function useKeptPhotos(kitchenId: string, deliveryId: string) {
  const [photos, set] = useState<readonly KeptPhoto[]>([]);
  const [read, setRead] = useState(false);
  useEffect(() => {
    let gone = false;
    all()
      .then((list) => {
        if (!gone) set(list.filter((p) => p.kitchenId === kitchenId && p.deliveryId === deliveryId));
      })
      // A device that keeps no pictures has none kept.
      .catch(() => undefined)
      .finally(() => {
        if (!gone) setRead(true);
      });
    return () => {
      gone = true;
    };
  }, [kitchenId, deliveryId]);
  const add = useCallback(async (photo: KeptPhoto) => {
    await keep(photo);
    set((now) => [...now, photo]);
  }, []);
  const remove = useCallback(async (id: string) => {
    await forget(id);
    set((now) => now.filter((p) => p.id !== id));
  }, []);
  /** Sends them one after another; each is let go only when the server has it. */
  const sendAll = useCallback(async () => {
    for (const photo of photos) {
      await call('addPhoto', {
        params: { kitchenId },
        body: {
          id: photo.id,
          subject: 'delivery',
          subjectId: photo.deliveryId,
          mime: 'image/jpeg',
          base64: photo.base64,
          caption: '',
          takenAt: photo.takenAt,
        },
      });
      await forget(photo.id);
      set((now) => now.filter((p) => p.id !== photo.id));
    }
    await queryClient.invalidateQueries({ queryKey: ['delivery'] });
  }, [photos, kitchenId]);
  return { photos, read, add, remove, sendAll };
}
