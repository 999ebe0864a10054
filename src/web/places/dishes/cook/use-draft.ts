import { useCallback, useEffect, useRef, useState } from 'react';
import { ChillStep, CookStep, FinishStep } from '../../../../contract/steps.ts';
import { useSettle } from '../bench/settle.ts';
import type { Chill, Cook } from './programme.ts';

type Either = Cook | Chill | FinishStep;

const schemas = { cook: CookStep, chill: ChillStep, finish: FinishStep };

/** Could the method hold this step as it is? What it could not hold yet is kept on the screen until it is put right. */
export const couldBeKept = (step: Either): boolean => schemas[step.kind].safeParse(step).success;

/**
 * What somebody changed elsewhere (undo, the step's name) laid over what is being edited here: of each part, the change
 * from outside where there is one since the step was last told, else the part as it is being edited.
 */
export function merged<S extends Either>(draft: S, told: S, step: S): S {
  const differs = (key: keyof S) => JSON.stringify(step[key]) !== JSON.stringify(told[key]);
  const keys = [...new Set([...Object.keys(draft), ...Object.keys(step)])] as (keyof S)[];
  return Object.fromEntries(keys.map((key) => [key, differs(key) ? step[key] : draft[key]])) as unknown as S;
}

/** Changes the step from what it is at that moment. */
export type Edit<S> = (change: (step: S) => S) => void;

const HAND_RESTS_MS = 350;

/**
 * The step while it is being edited: the picture follows at once, the method is told when the hand rests, and only of
 * what it can hold.
 */
export function useDraft<S extends Either>(
  step: S,
  onChange: (step: S) => void,
): readonly [draft: S, edit: Edit<S>] {
  const [draft, setDraft] = useState(step);
  const now = useRef(step);
  const told = useRef(step);
  const timer = useRef<ReturnType<typeof setTimeout> | null>(null);
  const tell = useRef(onChange);
  tell.current = onChange;

  const put = useCallback((next: S) => {
    now.current = next;
    setDraft(next);
  }, []);
  const flush = useCallback(() => {
    if (timer.current === null) return;
    clearTimeout(timer.current);
    timer.current = null;
    if (!couldBeKept(now.current)) return;
    told.current = now.current;
    tell.current(now.current);
  }, []);

  useEffect(() => {
    if (step === told.current || JSON.stringify(step) === JSON.stringify(told.current)) return;
    put(step.id === told.current.id ? merged(now.current, told.current, step) : step);
    told.current = step;
  }, [step, put]);
  useEffect(() => flush, [flush]);
  useSettle(() => {
    flush();
    return couldBeKept(now.current)
      ? null
      : `${now.current.name}: something in it cannot be kept yet; see its panel`;
  });

  const edit = useCallback<Edit<S>>(
    (change) => {
      put(change(now.current));
      if (timer.current !== null) clearTimeout(timer.current);
      timer.current = setTimeout(flush, HAND_RESTS_MS);
    },
    [put, flush],
  );
  return [draft, edit];
}
