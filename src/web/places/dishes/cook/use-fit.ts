/** A fit in the engine's own thread: how far it is, stopped on demand, stale as soon as something else is asked. */
import { useCallback, useEffect, useRef, useState } from 'react';
import type { FitAnswer } from '../../../../contract/fit.ts';
import { engineLane, type Lane, Stale } from '../../../workers/engine.ts';

export interface Fitting {
  readonly state: 'idle' | 'working' | 'done' | 'failed';
  /** 0–1. */
  readonly share: number;
  readonly answer: FitAnswer | null;
  readonly failure: string | null;
  readonly begin: (input: unknown) => void;
  readonly stop: () => void;
}

const idle = { state: 'idle', share: 0, answer: null, failure: null } as const;

export function useFit(): Fitting {
  const lane = useRef<Lane | null>(null);
  const [now, setNow] = useState<Omit<Fitting, 'begin' | 'stop'>>(idle);
  useEffect(
    () => () => {
      lane.current?.close();
      lane.current = null;
    },
    [],
  );
  const begin = useCallback((input: unknown) => {
    lane.current ??= engineLane();
    setNow({ ...idle, state: 'working' });
    lane.current
      .ask({ kind: 'fit', input }, { onProgress: (share) => setNow({ ...idle, state: 'working', share }) })
      .then(({ fit }) => setNow({ ...idle, state: 'done', share: 1, answer: fit }))
      .catch((error: unknown) => {
        if (error instanceof Stale) return;
        setNow({ ...idle, state: 'failed', failure: error instanceof Error ? error.message : String(error) });
      });
  }, []);
  const stop = useCallback(() => {
    lane.current?.drop();
    setNow(idle);
  }, []);
  return { ...now, begin, stop };
}
