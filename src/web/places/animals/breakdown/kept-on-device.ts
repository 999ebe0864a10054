/** Small habits of this device at the scale: containers and their tare, the order of weighing. Losing them loses no record. */
import { useState } from 'react';
import type { Container, Way } from './weigh-order.ts';

function read<T>(key: string, fallback: T, is: (value: unknown) => value is T): T {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(key) ?? 'null');
    return is(value) ? value : fallback;
  } catch {
    return fallback;
  }
}

function write(key: string, value: unknown): void {
  try {
    localStorage.setItem(key, JSON.stringify(value));
  } catch {
    // A habit that this device will not keep is asked for again.
  }
}

const areContainers = (value: unknown): value is Container[] =>
  Array.isArray(value) &&
  value.every(
    (c: unknown) =>
      typeof c === 'object' &&
      c !== null &&
      typeof (c as Container).name === 'string' &&
      Number.isFinite((c as Container).grams),
  );

export function useContainers(kitchenId: string) {
  const key = `fq.tares.${kitchenId}`;
  const [containers, set] = useState(() => read<Container[]>(key, [], areContainers));
  const keep = (next: readonly Container[]) => {
    set([...next]);
    write(key, next);
  };
  return [containers, keep] as const;
}

interface Habit {
  readonly way: Way;
  readonly whole: boolean;
  readonly cuts: boolean;
}

const isHabit = (value: unknown): value is Habit =>
  typeof value === 'object' &&
  value !== null &&
  ['together', 'animal by animal', 'part by part'].includes((value as Habit).way) &&
  typeof (value as Habit).whole === 'boolean' &&
  typeof (value as Habit).cuts === 'boolean';

/** How this breakdown is weighed at this device. */
export function useHabit(breakdownId: string) {
  const key = `fq.weighing.${breakdownId}`;
  const [habit, set] = useState(() =>
    read<Habit>(key, { way: 'together', whole: false, cuts: false }, isHabit),
  );
  const keep = (change: Partial<Habit>) => {
    const next = { ...habit, ...change };
    set(next);
    write(key, next);
  };
  return [habit, keep] as const;
}
