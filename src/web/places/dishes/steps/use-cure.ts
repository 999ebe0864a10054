/** The engine's answer to a cure as it stands: coarse at once, fine when the hand rests. */
import { useEffect, useRef, useState } from 'react';
import type { MethodCure } from '../../../../contract/method-cure.ts';
import type { Foreseen } from '../../../../core/salt/foresee.ts';
import { cureFaultWords } from '../../../../documents/salt-words.ts';
import { EngineRefusal, engineLane, type Lane, Stale } from '../../../workers/engine.ts';

export interface Curing {
  /** The last answer there was, and to what. */
  readonly answered: { readonly key: string; readonly cure: MethodCure; readonly foreseen: Foreseen } | null;
  /** Of the input as it is now. */
  readonly current: boolean;
  /** Why there is none. */
  readonly fault: string | null;
}

/** The hand has rested for so long [ms]. */
const SETTLE_MS = 300;

export function useCure(cure: MethodCure | null, wanted: number | undefined): Curing {
  const lane = useRef<Lane | null>(null);
  const [answered, setAnswered] = useState<Curing['answered']>(null);
  const [refused, setRefused] = useState<{ readonly key: string; readonly words: string } | null>(null);
  const key = cure === null ? null : JSON.stringify([cure, wanted ?? null]);
  const latest = useRef({ cure, wanted });
  latest.current = { cure, wanted };

  useEffect(
    () => () => {
      lane.current?.close();
      lane.current = null;
    },
    [],
  );

  useEffect(() => {
    const asked = latest.current;
    const here = asked.cure;
    if (key === null || here === null) return undefined;
    lane.current ??= engineLane();
    const engine = lane.current;
    let still = true;
    const ask = (detail: 'coarse' | 'fine') =>
      engine
        .ask({
          kind: 'cure',
          problem: { ...here.problem, detail, withoutNineTenths: true },
          wanted: asked.wanted,
        })
        .then(({ foreseen }) => {
          if (still) setAnswered({ key, cure: here, foreseen });
        })
        .catch((error: unknown) => {
          if (!still || error instanceof Stale) return;
          const words =
            error instanceof EngineRefusal
              ? cureFaultWords(error.fault)
              : error instanceof Error
                ? error.message
                : String(error);
          setRefused({ key, words });
        });
    void ask('coarse');
    const timer = setTimeout(() => void ask('fine'), SETTLE_MS);
    return () => {
      still = false;
      clearTimeout(timer);
    };
  }, [key]);

  return {
    answered,
    current: answered !== null && answered.key === key,
    fault: refused !== null && refused.key === key ? refused.words : null,
  };
}
