/** One thread of the pool: does the engine's runs of one input. */
import { parentPort, workerData } from 'node:worker_threads';
import { InputProblems } from '../contract/problem.ts';
import { type SureTask, taskRunner } from '../contract/sure-tasks.ts';
import type { TaskAnswer } from './task-pool.ts';

let one: ((task: SureTask) => number[]) | null = null;

parentPort?.on('message', ({ id, tasks }: { id: number; tasks: readonly SureTask[] }) => {
  let answer: TaskAnswer;
  try {
    one ??= taskRunner(workerData);
    answer = { id, numbers: tasks.map(one) };
  } catch (error) {
    answer =
      error instanceof InputProblems
        ? { id, problems: error.problems }
        : { id, fault: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
  parentPort?.postMessage(answer);
});
