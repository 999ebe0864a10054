/** The page's side of a study: asks, hears how far it is, and can stop it. */
import type { Problem } from '../../contract/problem.ts';
import type { Answers, FromStudy, StudyKind } from './study-messages.ts';

/** What is wrong with the question, in the input's own terms. */
export class StudyProblems extends Error {
  override readonly name = 'StudyProblems';
  constructor(readonly problems: readonly Problem[]) {
    super(problems.map((p) => `${p.path}: ${p.found}. Allowed: ${p.allowed}`).join('\n'));
  }
}

export interface Study<K extends StudyKind> {
  readonly answer: Promise<Answers[K]>;
  /** Ends it and its workers; the answer then never comes. */
  readonly stop: () => void;
}

/** Begins a study in workers of its own. */
export function beginStudy<K extends StudyKind>(
  kind: K,
  input: unknown,
  onProgress: (done: number) => void,
): Study<K> {
  const worker = new Worker(new URL('./study.worker.ts', import.meta.url), { type: 'module' });
  const answer = new Promise<Answers[K]>((resolve, reject) => {
    const end = (settle: () => void) => {
      worker.terminate();
      settle();
    };
    worker.onerror = (event) =>
      end(() => reject(new Error(event.message || 'the engine could not be started')));
    worker.onmessage = ({ data }: MessageEvent<FromStudy>) => {
      if ('progress' in data) onProgress(data.progress);
      else if ('answer' in data) end(() => resolve(data.answer as Answers[K]));
      else if ('problems' in data) end(() => reject(new StudyProblems(data.problems)));
      else end(() => reject(new Error(data.fault)));
    };
    worker.postMessage({ kind, input });
  });
  return { answer, stop: () => worker.terminate() };
}
