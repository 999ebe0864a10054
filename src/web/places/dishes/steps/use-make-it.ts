/** Asks for a mix made otherwise; one worker, kept while the panel stands, so that the solver is loaded once. */
import { useCallback, useEffect, useRef } from 'react';
import type { Made, MakeQuestion } from '../../../../contract/make-it-question.ts';
import type { FromFormulate } from '../../../workers/formulate-messages.ts';

export function useMakeIt(): (question: MakeQuestion) => Promise<Made> {
  const worker = useRef<Worker | null>(null);
  useEffect(
    () => () => {
      worker.current?.terminate();
      worker.current = null;
    },
    [],
  );
  return useCallback(
    (question) =>
      new Promise<Made>((resolve, reject) => {
        worker.current ??= new Worker(new URL('../../../workers/formulate.worker.ts', import.meta.url), {
          type: 'module',
        });
        const { current } = worker;
        current.onerror = (event) => {
          current.terminate();
          worker.current = null;
          reject(new Error(event.message || 'the solver could not be started'));
        };
        current.onmessage = ({ data }: MessageEvent<FromFormulate>) => {
          if ('made' in data) resolve(data.made);
          else reject(new Error(data.fault));
        };
        current.postMessage(question);
      }),
    [],
  );
}
