/** Engine runs in threads, as many as there are processors for; what they say does not depend on how many they are. */
import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { InputProblems, type Problem } from '../contract/problem.ts';
import { portionFrom, type RunTasks, type SureTask } from '../contract/sure-tasks.ts';

export type TaskAnswer =
  | { readonly id: number; readonly numbers: readonly (readonly number[])[] }
  | { readonly id: number; readonly problems: readonly Problem[] }
  | { readonly id: number; readonly fault: string };

export interface TaskPool {
  readonly run: RunTasks;
  close(): Promise<void>;
}

/** Threads for the runs of one `sure`. */
export function openTaskPool(input: unknown, threads = Math.min(8, availableParallelism())): TaskPool {
  const workers = Array.from({ length: threads }, () => startWorker(input));
  let lastId = 0;
  const ask = (worker: Worker, tasks: readonly SureTask[]) =>
    new Promise<readonly (readonly number[])[]>((resolve, reject) => {
      const id = ++lastId;
      const done = (settle: () => void) => {
        worker.off('message', hear);
        worker.off('error', fail);
        settle();
      };
      const fail = (error: Error) => done(() => reject(error));
      const hear = (answer: TaskAnswer) => {
        if (answer.id !== id) return;
        done(() => {
          if ('numbers' in answer) resolve(answer.numbers);
          else if ('problems' in answer) reject(new InputProblems(answer.problems));
          else reject(new Error(answer.fault));
        });
      };
      worker.on('message', hear);
      worker.on('error', fail);
      worker.postMessage({ id, tasks });
    });
  return {
    run: async (tasks, onDone) => {
      const answers: (readonly number[])[] = [];
      let next = 0;
      await Promise.all(
        workers.map(async (worker) => {
          while (next < tasks.length) {
            const from = next;
            const portion = portionFrom(tasks, from);
            next += portion;
            const numbers = await ask(worker, tasks.slice(from, from + portion));
            numbers.forEach((n, i) => {
              answers[from + i] = n;
            });
            onDone?.(numbers.length);
          }
        }),
      );
      return answers;
    },
    close: async () => {
      await Promise.all(workers.map((worker) => worker.terminate()));
    },
  };
}

/** The bundle has the worker beside it; run from source, it needs the same loader as everything else. */
function startWorker(input: unknown): Worker {
  const built = new URL('./task-worker.js', import.meta.url);
  if (existsSync(built)) return new Worker(built, { workerData: input });
  const source = new URL('./task-worker.ts', import.meta.url).href;
  const loader = import.meta.resolve('tsx/esm/api');
  const bootstrap = `import { register } from ${JSON.stringify(loader)}; register(); await import(${JSON.stringify(source)});`;
  return new Worker(new URL(`data:text/javascript,${encodeURIComponent(bootstrap)}`), { workerData: input });
}
