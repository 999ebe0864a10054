/** A study of the programme while it stands: asked for, told how far it is, stopped, kept until another is asked for. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { beginStudy, type Study } from '../../../workers/study.ts';
import type { Answers, StudyKind } from '../../../workers/study-messages.ts';

export interface Studying<K extends StudyKind> {
  readonly answer: Answers[K] | null;
  /** Is the answer to the question as it stands now? */
  readonly current: boolean;
  /** 0 to 1 while it is worked on; null while nothing is. */
  readonly progress: number | null;
  readonly error: Error | null;
  readonly begin: () => void;
  readonly stop: () => void;
}

/** `input` as the command of the same name takes it; null while there is nothing to ask. */
export function useStudy<K extends StudyKind>(kind: K, input: unknown): Studying<K> {
  const key = JSON.stringify(input);
  const running = useRef<Study<K> | null>(null);
  const [answered, setAnswered] = useState<{ readonly key: string; readonly answer: Answers[K] } | null>(
    null,
  );
  const [progress, setProgress] = useState<number | null>(null);
  const [failed, setFailed] = useState<{ readonly key: string; readonly error: Error } | null>(null);

  const stop = useCallback(() => {
    running.current?.stop();
    running.current = null;
    setProgress(null);
  }, []);
  // What is worked on is of no use once the programme has changed, or the panel is gone.
  // biome-ignore lint/correctness/useExhaustiveDependencies: a change of the question stops what is worked on for the one before
  useEffect(() => stop, [key, stop]);

  const begin = useCallback(() => {
    stop();
    if (input === null) return;
    setFailed(null);
    setProgress(0);
    const study = beginStudy(kind, input, (done) => {
      if (running.current === study) setProgress(done);
    });
    running.current = study;
    study.answer
      .then((answer) => {
        if (running.current !== study) return;
        setAnswered({ key, answer });
        stop();
      })
      .catch((error: unknown) => {
        if (running.current !== study) return;
        setFailed({ key, error: error instanceof Error ? error : new Error(String(error)) });
        stop();
      });
  }, [kind, input, key, stop]);

  return {
    answer: answered?.answer ?? null,
    current: answered?.key === key,
    progress,
    error: failed !== null && failed.key === key ? failed.error : null,
    begin,
    stop,
  };
}
