import { useCallback, useEffect, useRef, useState } from 'react';
import { ChillStep, CookStep } from '../../../../contract/steps.ts';
import type { Chill, Cook } from './programme.ts';

type Either = Cook | Chill;

/** Could the method hold this step as it is? A step with a 400 °C oven of zero layers is kept here until it is right. */
export const couldBeKept = (step: Either): boolean =>
  (step.kind === 'cook' ? CookStep : ChillStep).safeParse(step).success;

const HAND_RESTS_MS = 350;

/**
 * The step while it is being edited: the picture follows at once, the method is told when the hand rests, and only of
 * what it can hold. A change from outside (undo, another version) takes its place.
 */
export function useDraft<S extends Either>(
  step: S,
  onChange: (step: S) => void,
): readonly [draft: S, edit: (next: S) => void] {
  const [draft, setDraft] = useState(step);
  const told = useRef(step);
  const pending = useRef<{ readonly step: S; readonly timer: ReturnType<typeof setTimeout> } | null>(null);
  const tell = useRef(onChange);
  tell.current = onChange;

  const flush = useCallback(() => {
    const waiting = pending.current;
    if (waiting === null) return;
    clearTimeout(waiting.timer);
    pending.current = null;
    if (!couldBeKept(waiting.step)) return;
    told.current = waiting.step;
    tell.current(waiting.step);
  }, []);

  useEffect(() => {
    if (step === told.current || JSON.stringify(step) === JSON.stringify(told.current)) return;
    if (pending.current !== null) clearTimeout(pending.current.timer);
    pending.current = null;
    told.current = step;
    setDraft(step);
  }, [step]);
  useEffect(() => flush, [flush]);

  const edit = useCallback(
    (next: S) => {
      setDraft(next);
      if (pending.current !== null) clearTimeout(pending.current.timer);
      pending.current = { step: next, timer: setTimeout(flush, HAND_RESTS_MS) };
    },
    [flush],
  );
  return [draft, edit];
}
