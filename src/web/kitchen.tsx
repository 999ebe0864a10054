import { createContext, type ReactNode, useContext, useSyncExternalStore } from 'react';
import type { Kitchen } from '../contract/records.ts';

const Here = createContext<Kitchen | null>(null);
const listeners = new Set<() => void>();
const key = (kitchenId: string) => `fq.units.${kitchenId}`;

/** The units this device shows for a kitchen, where they differ from the kitchen's own. */
function shownUnits(kitchen: Kitchen): Kitchen['units'] {
  const kept = localStorage.getItem(key(kitchen.id));
  return kept === 'metric' || kept === 'US' ? kept : kitchen.units;
}

export function setShownUnits(kitchenId: string, units: Kitchen['units']): void {
  localStorage.setItem(key(kitchenId), units);
  for (const listener of listeners) listener();
}

export function KitchenProvider({
  kitchen,
  children,
}: {
  readonly kitchen: Kitchen;
  readonly children: ReactNode;
}) {
  const units = useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => shownUnits(kitchen),
  );
  return <Here value={units === kitchen.units ? kitchen : { ...kitchen, units }}>{children}</Here>;
}

/** The kitchen of this address, with the units that this device shows. */
export function useKitchen(): Kitchen {
  const kitchen = useContext(Here);
  if (kitchen === null) throw new Error('useKitchen outside a kitchen’s address');
  return kitchen;
}

/** The units to show; metric where no kitchen is open yet. */
export function useUnits(): Kitchen['units'] {
  return useContext(Here)?.units ?? 'metric';
}
