/**
 * The page's side of the engine. A lane is one worker that answers one question at a time: of questions asked while it
 * works only the latest waits, and what is no longer wanted is told to stop, or stopped when it does not listen.
 */
import type { AnswerTo, EngineFault, FromWorker, Question, ToWorker } from './engine-messages.ts';

/** A later question took the place of this one. */
export class Stale extends Error {
  override readonly name = 'Stale';
  constructor() {
    super('a later question took its place');
  }
}

/** The engine refused the question, or failed at it. */
export class EngineRefusal extends Error {
  override readonly name = 'EngineRefusal';
  constructor(readonly fault: EngineFault) {
    super(fault.message);
  }
}

export interface Listening<Q extends Question> {
  readonly onProgress?: (simulated: number) => void;
  /** A first part of the answer, while the rest is still worked out. */
  readonly onPart?: (part: AnswerTo<Q>) => void;
}

/** As much of a Worker as a lane needs. */
export interface WorkerLike {
  postMessage(message: ToWorker): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<FromWorker>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

interface Job {
  readonly id: number;
  readonly ask: Question;
  readonly listening: Listening<Question>;
  readonly resolve: (answer: unknown) => void;
  readonly reject: (error: Error) => void;
  wanted: boolean;
}

/** A run that nobody waits for any more may take so long to end by itself [ms] before its worker is replaced. */
const PATIENCE = 400;

export class Lane {
  private worker: WorkerLike | null = null;
  private running: Job | null = null;
  private waiting: Job | null = null;
  private count = 0;
  private patience: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly spawn: () => WorkerLike) {}

  /** Asks; whatever was asked before and is not answered yet is rejected as `Stale`. */
  ask<Q extends Question>(ask: Q, listening: Listening<Q> = {}): Promise<AnswerTo<Q>> {
    return new Promise<AnswerTo<Q>>((resolve, reject) => {
      this.drop();
      this.count += 1;
      this.waiting = {
        id: this.count,
        ask,
        listening: listening as Listening<Question>,
        resolve: resolve as (answer: unknown) => void,
        reject,
        wanted: true,
      };
      this.next();
    });
  }

  /** Nothing is wanted any more. */
  drop(): void {
    this.waiting?.reject(new Stale());
    this.waiting = null;
    const job = this.running;
    if (job?.wanted !== true) return;
    job.wanted = false;
    job.reject(new Stale());
    this.worker?.postMessage({ id: job.id, cancel: true });
    this.patience = setTimeout(() => {
      this.kill();
      this.next();
    }, PATIENCE);
  }

  /** Ends the worker. */
  close(): void {
    this.drop();
    this.kill();
  }

  private kill(): void {
    clearTimeout(this.patience);
    this.worker?.terminate();
    this.worker = null;
    this.running = null;
  }

  private next(): void {
    if (this.running !== null || this.waiting === null) return;
    this.running = this.waiting;
    this.waiting = null;
    this.worker ??= this.wake();
    this.worker.postMessage({ id: this.running.id, ask: this.running.ask });
  }

  private wake(): WorkerLike {
    const worker = this.spawn();
    worker.onmessage = (event) => this.hear(event.data);
    worker.onerror = (event) => {
      const job = this.running;
      this.kill();
      if (job?.wanted === true)
        job.reject(
          new EngineRefusal({ name: 'Error', message: event.message || 'the engine could not be started' }),
        );
      this.next();
    };
    return worker;
  }

  private hear(message: FromWorker): void {
    const job = this.running;
    if (job === null || message.id !== job.id) return;
    if ('progress' in message) {
      if (job.wanted) job.listening.onProgress?.(message.progress);
      return;
    }
    if ('part' in message) {
      if (job.wanted) job.listening.onPart?.(message.part as never);
      return;
    }
    clearTimeout(this.patience);
    this.running = null;
    if (job.wanted) {
      if ('answer' in message) job.resolve(message.answer);
      else if ('fault' in message) job.reject(new EngineRefusal(message.fault));
      else job.reject(new Stale());
    }
    this.next();
  }
}

/** A lane on the engine's own worker. */
export const engineLane = (): Lane =>
  new Lane(
    () => new Worker(new URL('./engine.worker.ts', import.meta.url), { type: 'module' }) as WorkerLike,
  );
