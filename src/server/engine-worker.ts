/** The engine in a thread of its own, so that a long computation does not keep anybody's reading from being written. */
import { parentPort } from 'node:worker_threads';
import { perform } from '../app/engine.ts';
import { AppError } from '../app/errors.ts';
import type { ThreadTask, WorkerAnswer } from './engine-thread.ts';

/** The typesetter is big and seldom wanted: it is loaded for the first page. */
async function carryOut(task: ThreadTask): Promise<unknown> {
  if (
    task.kind !== 'method card' &&
    task.kind !== 'batch record' &&
    task.kind !== 'specification' &&
    task.kind !== 'authority request'
  )
    return perform(task);
  const { print } = await import('./printing.ts');
  return print(task);
}

parentPort?.on('message', async ({ id, task }: { id: number; task: ThreadTask }) => {
  let answer: WorkerAnswer;
  try {
    answer = { id, ok: true, value: await carryOut(task) };
  } catch (error) {
    answer =
      error instanceof AppError
        ? {
            id,
            ok: false,
            refusal: { code: error.code, message: error.message, problems: [...error.problems] },
          }
        : { id, ok: false, fault: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
  parentPort?.postMessage(answer);
});
