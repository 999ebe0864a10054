/**
 * What is still in somebody's hands: a panel that tells the method only when the hand rests registers how to tell it now.
 * Before a version is signed everything is told, and what cannot be kept stops the signature: what is signed is what
 * stands on the screen.
 */
import { useEffect, useRef } from 'react';

/** Tells what is still being edited; the reason where it cannot be kept, else null. */
export type Settle = () => string | null;

const settles = new Set<Settle>();

export function register(settle: Settle): () => void {
  settles.add(settle);
  return () => {
    settles.delete(settle);
  };
}

/** Everything told; the reasons why something could not be kept. */
export const settleAll = (): string[] => [...settles].map((settle) => settle()).filter((r) => r !== null);

export function useSettle(settle: Settle): void {
  const latest = useRef(settle);
  latest.current = settle;
  useEffect(() => register(() => latest.current()), []);
}
