/** One version on the bench: its method, what was done to it, and whether that is saved. */
import { useCallback, useEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react';
import { problemsOf } from '../../../../contract/problem.ts';
import type { Version } from '../../../../contract/records.ts';
import { Method } from '../../../../contract/steps.ts';
import { call, Refusal, Unreachable } from '../../../api.ts';
import { NobodyChosen } from '../../../person.ts';
import { Autosave, type Kept, type Outcome, type SaveState } from './autosave.ts';
import { draftOf, dropDraft, keepDraft } from './draft-copy.ts';
import * as history from './history.ts';
import { same } from './same.ts';

export interface Bench {
  readonly method: Method;
  readonly readOnly: boolean;
  /** `about`: changes about the same field, one after another, are one step of undo. */
  readonly change: (next: Method | ((now: Method) => Method), about?: string) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly save: SaveState<Method>;
  readonly saveNow: () => Promise<void>;
  /** The server's count of saves, as last acknowledged. */
  readonly rev: () => number;
  /** Whether the server has acknowledged all there is, at this moment. */
  readonly isSaved: () => boolean;
  readonly keepMine: () => Promise<void>;
  readonly takeTheirs: () => void;
}

const PAUSE_MS = 1_500;

function check(method: Method) {
  const parsed = Method.safeParse(method);
  return parsed.success ? [] : problemsOf(parsed.error, method);
}

async function send(kitchenId: string, versionId: string, kept: Kept<Method>): Promise<Outcome<Method>> {
  const params = { kitchenId, versionId };
  try {
    const saved = await call('saveVersion', { params, body: { rev: kept.rev, method: kept.method } });
    return { kind: 'saved', rev: saved.rev };
  } catch (error) {
    if (error instanceof Unreachable) return { kind: 'unreachable', message: error.message };
    if (error instanceof NobodyChosen) return { kind: 'nobody', message: error.message };
    if (!(error instanceof Refusal)) return { kind: 'refused', message: String(error), problems: [] };
    if (error.status !== 409) return { kind: 'refused', message: error.message, problems: error.problems };
    try {
      const theirs = await call('version', { params });
      if (theirs.status === 'signed') return { kind: 'frozen', message: error.message };
      return { kind: 'conflict', message: error.message, theirs: { rev: theirs.rev, method: theirs.method } };
    } catch (again) {
      return { kind: 'unreachable', message: again instanceof Error ? again.message : String(again) };
    }
  }
}

export function useBench(kitchenId: string, version: Version): Bench {
  const readOnly = version.status === 'signed';
  const [saver] = useState(
    () =>
      new Autosave<Method>(
        {
          save: (kept) => send(kitchenId, version.id, kept),
          keep: (kept) => keepDraft(version.id, kept),
          drop: () => dropDraft(version.id),
          check,
          after: (ms, run) => {
            const timer = setTimeout(run, ms);
            return () => clearTimeout(timer);
          },
        },
        { rev: version.rev, method: version.method },
      ),
  );
  const [past, setPast] = useState(() => history.begin(version.method));
  const latest = useRef(past);
  const save = useSyncExternalStore(saver.subscribe, saver.snapshot);

  const put = useCallback(
    (next: history.History<Method>) => {
      latest.current = next;
      setPast(next);
      if (!readOnly) saver.change(next.present);
    },
    [saver, readOnly],
  );

  // Work that this device kept because the server never acknowledged it comes back to the bench.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the version is laid on the bench
  useEffect(() => {
    const copy = readOnly ? null : draftOf(version.id);
    if (copy === null) return;
    if (same(copy.method, version.method)) dropDraft(version.id);
    else {
      saver.startFrom(copy.rev);
      put(history.change(latest.current, copy.method));
    }
  }, [version.id]);

  // Somebody else saved while nothing waits here: theirs comes to the bench, and mine is one undo away.
  useEffect(() => {
    if (readOnly || version.rev <= saver.currentRev || saver.snapshot().status !== 'saved') return;
    const next = history.change(latest.current, version.method);
    saver.adopt({ rev: version.rev, method: version.method });
    latest.current = next;
    setPast(next);
  }, [version.rev, version.method, saver, readOnly]);

  // A pause ends a step of undo.
  useEffect(() => {
    if (past.about === null) return undefined;
    const timer = setTimeout(() => {
      latest.current = history.pause(latest.current);
      setPast(latest.current);
    }, PAUSE_MS);
    return () => clearTimeout(timer);
  }, [past]);

  useEffect(
    () => () => {
      void saver.flush();
    },
    [saver],
  );

  return useMemo<Bench>(
    () => ({
      method: past.present,
      readOnly,
      change: (next, about) => {
        if (readOnly) return;
        const made = typeof next === 'function' ? next(latest.current.present) : next;
        put(history.change(latest.current, made, about ?? null));
      },
      undo: () => put(history.undo(latest.current)),
      redo: () => put(history.redo(latest.current)),
      canUndo: past.past.length > 0,
      canRedo: past.future.length > 0,
      save,
      saveNow: () => saver.flush(),
      rev: () => saver.currentRev,
      isSaved: () => saver.snapshot().status === 'saved',
      keepMine: () => saver.keepMine(),
      takeTheirs: () => {
        const theirs = saver.takeTheirs();
        if (theirs === null) return;
        latest.current = history.change(latest.current, theirs);
        setPast(latest.current);
      },
    }),
    [past, readOnly, put, save, saver],
  );
}
