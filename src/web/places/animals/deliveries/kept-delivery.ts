/** The delivery that is being taken in at this device: it survives a reload and a dead battery. One for each kitchen. */
import { useCallback, useRef, useState } from 'react';
import type { DeliveryDraft } from './delivery-draft.ts';

const key = (kitchenId: string) => `fq.delivery.${kitchenId}`;

/** The kept draft, or null where there is none or it cannot be read. */
export function readDelivery(text: string | null): DeliveryDraft | null {
  if (text === null) return null;
  try {
    const kept = JSON.parse(text) as Partial<DeliveryDraft> | null;
    return kept !== null &&
      typeof kept.id === 'string' &&
      typeof kept.supplierId === 'string' &&
      typeof kept.arrivedAt === 'string' &&
      Array.isArray(kept.lines) &&
      kept.lines.every((l) => typeof l === 'object' && l !== null && typeof l.code === 'string') &&
      typeof kept.marks === 'object' &&
      kept.marks !== null
      ? ({ documents: '', reason: '', ...kept } as DeliveryDraft)
      : null;
  } catch {
    return null;
  }
}

export interface KeptDelivery {
  readonly draft: DeliveryDraft;
  readonly change: (next: (now: DeliveryDraft) => DeliveryDraft) => void;
  readonly drop: () => void;
  /** False: this device would not keep it (full, or storage is switched off); it is lost on a reload. */
  readonly kept: boolean;
}

export function useKeptDelivery(kitchenId: string, fresh: () => DeliveryDraft): KeptDelivery {
  const [draft, set] = useState(() => readDelivery(localStorage.getItem(key(kitchenId))) ?? fresh());
  const [kept, setKept] = useState(true);
  const latest = useRef(draft);
  const change = useCallback(
    (next: (now: DeliveryDraft) => DeliveryDraft) => {
      latest.current = next(latest.current);
      set(latest.current);
      try {
        localStorage.setItem(key(kitchenId), JSON.stringify(latest.current));
        setKept(true);
      } catch {
        setKept(false);
      }
    },
    [kitchenId],
  );
  const drop = useCallback(() => localStorage.removeItem(key(kitchenId)), [kitchenId]);
  return { draft, change, drop, kept };
}
