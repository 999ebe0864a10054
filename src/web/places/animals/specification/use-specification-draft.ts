/** One version of a specification as it is written: what stands in it, undo, and whether the server has it. */
import { useCallback, useEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react';
import { problemsOf } from '../../../../contract/problem.ts';
import { SpecificationContent, type SpecificationVersion } from '../../../../contract/specification.ts';
import { call, queryClient, Refusal, Unreachable } from '../../../api.ts';
import { NobodyChosen } from '../../../person.ts';
import { Autosave, type Kept, type Outcome, type SaveState } from '../../dishes/bench/autosave.ts';
import * as history from '../../dishes/bench/history.ts';
import { same } from '../../dishes/bench/same.ts';

export interface SpecificationDraft {
  readonly content: SpecificationContent;
  readonly readOnly: boolean;
  readonly change: (part: Partial<SpecificationContent>, about?: string) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly save: SaveState<SpecificationContent>;
  readonly saveNow: () => Promise<void>;
  readonly rev: () => number;
  readonly isSaved: () => boolean;
  readonly keepMine: () => Promise<void>;
  readonly takeTheirs: () => void;
}

const PAUSE_MS = 1_500;
const key = (versionId: string) => `fq.specification.${versionId}`;

function keptOn(versionId: string): Kept<SpecificationContent> | null {
  try {
    const copy = JSON.parse(localStorage.getItem(key(versionId)) ?? 'null') as Partial<
      Kept<SpecificationContent>
    > | null;
    return copy !== null && typeof copy.rev === 'number' && typeof copy.method === 'object'
      ? (copy as Kept<SpecificationContent>)
      : null;
  } catch {
    return null;
  }
}

/** A line just opened and still empty is no line yet. */
function withoutEmptyLines(content: SpecificationContent): SpecificationContent {
  const said = (lines: readonly string[]) => lines.filter((l) => l.trim() !== '');
  return {
    ...content,
    labelled: said(content.labelled),
    documents: said(content.documents),
    refusedIf: said(content.refusedIf),
  };
}

function check(typed: SpecificationContent) {
  const content = withoutEmptyLines(typed);
  const parsed = SpecificationContent.safeParse(content);
  return parsed.success ? [] : problemsOf(parsed.error, content);
}

async function send(
  kitchenId: string,
  version: SpecificationVersion,
  kept: Kept<SpecificationContent>,
): Promise<Outcome<SpecificationContent>> {
  const find = (versions: readonly SpecificationVersion[]) => versions.find((v) => v.id === version.id);
  try {
    const saved = await call('saveSpecification', {
      params: { kitchenId, versionId: version.id },
      body: { rev: kept.rev, content: withoutEmptyLines(kept.method) },
    });
    void queryClient.invalidateQueries({ queryKey: ['specifications'] });
    return { kind: 'saved', rev: find(saved.versions)?.rev ?? kept.rev + 1 };
  } catch (error) {
    if (error instanceof Unreachable) return { kind: 'unreachable', message: error.message };
    if (error instanceof NobodyChosen) return { kind: 'nobody', message: error.message };
    if (!(error instanceof Refusal)) return { kind: 'refused', message: String(error), problems: [] };
    if (error.status !== 409) return { kind: 'refused', message: error.message, problems: error.problems };
    try {
      const now = await call('specification', {
        params: { kitchenId, specificationId: version.specificationId },
      });
      const theirs = find(now.versions);
      if (theirs === undefined || theirs.status === 'sent') return { kind: 'frozen', message: error.message };
      return {
        kind: 'conflict',
        message: error.message,
        theirs: { rev: theirs.rev, method: theirs.content },
      };
    } catch (again) {
      return { kind: 'unreachable', message: again instanceof Error ? again.message : String(again) };
    }
  }
}

export function useSpecificationDraft(kitchenId: string, version: SpecificationVersion): SpecificationDraft {
  const readOnly = version.status === 'sent';
  const [saver] = useState(
    () =>
      new Autosave<SpecificationContent>(
        {
          save: (kept) => send(kitchenId, version, kept),
          keep: (kept) => {
            try {
              localStorage.setItem(key(version.id), JSON.stringify(kept));
            } catch {
              // A full device: the server still gets it, and the mark says when it has.
            }
          },
          drop: () => localStorage.removeItem(key(version.id)),
          check,
          after: (ms, run) => {
            const timer = setTimeout(run, ms);
            return () => clearTimeout(timer);
          },
        },
        { rev: version.rev, method: version.content },
      ),
  );
  const [past, setPast] = useState(() => history.begin(version.content));
  const latest = useRef(past);
  const save = useSyncExternalStore(saver.subscribe, saver.snapshot);
  const put = useCallback(
    (next: history.History<SpecificationContent>) => {
      latest.current = next;
      setPast(next);
      if (!readOnly) saver.change(next.present);
    },
    [saver, readOnly],
  );

  // Work that this device kept because the server never acknowledged it comes back.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the version is opened
  useEffect(() => {
    const copy = readOnly ? null : keptOn(version.id);
    if (copy === null) return;
    if (same(copy.method, version.content)) localStorage.removeItem(key(version.id));
    else {
      saver.startFrom(copy.rev);
      put(history.change(latest.current, copy.method));
    }
  }, [version.id]);

  // Somebody else saved while nothing waits here: theirs is shown, and mine is one undo away.
  useEffect(() => {
    if (readOnly || version.rev <= saver.currentRev || saver.snapshot().status !== 'saved') return;
    saver.adopt({ rev: version.rev, method: version.content });
    latest.current = history.change(latest.current, version.content);
    setPast(latest.current);
  }, [version.rev, version.content, saver, readOnly]);

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

  return useMemo<SpecificationDraft>(
    () => ({
      content: past.present,
      readOnly,
      change: (part, about) => {
        if (!readOnly)
          put(history.change(latest.current, { ...latest.current.present, ...part }, about ?? null));
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
