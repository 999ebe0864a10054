/** The server's side of the engine thread: tasks one after another, a limit on how long each may take, and a new thread after a crash. */
import { existsSync } from 'node:fs';
import { Worker } from 'node:worker_threads';
import { type Engine, engineOver, type Task } from '../app/engine.ts';
import { type AppCode, AppError } from '../app/errors.ts';
import type { Problem } from '../contract/problem.ts';
import type { PrintTask } from './printing.ts';

export type ThreadTask = Task | PrintTask;

export type WorkerAnswer =
  | { readonly id: number; readonly ok: true; readonly value: unknown }
  | {
      readonly id: number;
      readonly ok: false;
      readonly refusal: { code: AppCode; message: string; problems: Problem[] };
    }
  | { readonly id: number; readonly ok: false; readonly fault: string };

interface Waiting {
  readonly task: ThreadTask;
  readonly resolve: (value: unknown) => void;
  readonly reject: (error: unknown) => void;
}

export interface EngineThread extends Engine {
  print(task: PrintTask): Promise<Uint8Array>;
  close(): Promise<void>;
}

export interface ThreadLimits {
  /** Longest time one task may take [ms]. */
  readonly taskMs: number;
  /** Most tasks that may wait. */
  readonly queue: number;
}

export function openEngineThread(limits: ThreadLimits = { taskMs: 60_000, queue: 64 }): EngineThread {
  const waiting: Waiting[] = [];
  let running: (Waiting & { id: number; timer: NodeJS.Timeout }) | null = null;
  let worker: Worker | null = null;
  let lastId = 0;
  let closed = false;

  const finish = (settle: (job: Waiting) => void) => {
    if (running === null) return;
    clearTimeout(running.timer);
    const job = running;
    running = null;
    settle(job);
    next();
  };
  const start = (): Worker => {
    const fresh = startWorker();
    fresh.unref();
    fresh.on('message', (answer: WorkerAnswer) => {
      if (answer.id !== running?.id) return;
      finish((job) => {
        if (answer.ok) job.resolve(answer.value);
        else if ('refusal' in answer)
          job.reject(new AppError(answer.refusal.code, answer.refusal.message, answer.refusal.problems));
        else job.reject(new Error(`in the engine thread: ${answer.fault}`));
      });
    });
    const gone = (error: unknown) => {
      if (worker !== fresh) return;
      worker = null;
      finish((job) => job.reject(error));
    };
    fresh.on('error', gone);
    fresh.on('exit', (code) => gone(new Error(`the engine thread ended with ${code}`)));
    return fresh;
  };
  const next = () => {
    if (running !== null || closed) return;
    const job = waiting.shift();
    if (job === undefined) return;
    const id = ++lastId;
    worker ??= start();
    const timer = setTimeout(() => {
      const late = worker;
      worker = null;
      void late?.terminate();
      finish((j) =>
        j.reject(
          new AppError(
            'unavailable',
            `The computation took longer than ${limits.taskMs / 1_000} s and was stopped; make the piece or the programme simpler.`,
          ),
        ),
      );
    }, limits.taskMs);
    running = { ...job, id, timer };
    worker.postMessage({ id, task: job.task });
  };
  const run = (task: ThreadTask) =>
    new Promise<unknown>((resolve, reject) => {
      if (closed) return reject(new AppError('unavailable', 'The server is stopping.'));
      if (waiting.length >= limits.queue)
        return reject(new AppError('busy', 'The engine is busy; try again in a moment.'));
      waiting.push({ task, resolve, reject });
      next();
    });
  return {
    ...engineOver(run),
    print: (task) => run(task) as Promise<Uint8Array>,
    close: async () => {
      closed = true;
      const stopping = new AppError('unavailable', 'The server is stopping.');
      for (const job of waiting.splice(0)) job.reject(stopping);
      finish((job) => job.reject(stopping));
      const last = worker;
      worker = null;
      await last?.terminate();
    },
  };
}

/** The bundle has the worker beside it; run from source, the worker needs the same loader as everything else. */
function startWorker(): Worker {
  const built = new URL('./engine-worker.js', import.meta.url);
  if (existsSync(built)) return new Worker(built);
  const source = new URL('./engine-worker.ts', import.meta.url).href;
  const loader = import.meta.resolve('tsx/esm/api');
  const bootstrap = `import { register } from ${JSON.stringify(loader)}; register(); await import(${JSON.stringify(source)});`;
  return new Worker(new URL(`data:text/javascript,${encodeURIComponent(bootstrap)}`));
}
