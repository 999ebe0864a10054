import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { EngineRefusal, Lane, Stale, type WorkerLike } from './engine.ts';
import type { FromWorker, Question, ToWorker } from './engine-messages.ts';

const question = (mode: 'coarse' | 'fine' = 'coarse') =>
  ({ kind: 'cook', problem: {}, mode, frames: 0 }) as unknown as Extract<Question, { kind: 'cook' }>;

class FakeWorker implements WorkerLike {
  onmessage: ((event: MessageEvent<FromWorker>) => void) | null = null;
  onerror: ((event: ErrorEvent) => void) | null = null;
  readonly heard: ToWorker[] = [];
  dead = false;
  postMessage(message: ToWorker) {
    this.heard.push(message);
  }
  terminate() {
    this.dead = true;
  }
  say(message: FromWorker) {
    this.onmessage?.({ data: message } as MessageEvent<FromWorker>);
  }
}

describe('Lane', () => {
  let workers: FakeWorker[];
  let lane: Lane;
  beforeEach(() => {
    vi.useFakeTimers();
    workers = [];
    lane = new Lane(() => {
      const worker = new FakeWorker();
      workers.push(worker);
      return worker;
    });
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  test('answers a question', async () => {
    const answer = lane.ask(question());
    workers[0]!.say({ id: 1, answer: { ms: 3 } });
    expect(await answer).toEqual({ ms: 3 });
  });

  test('of many questions asked while it works only the latest is run, the others are stale', async () => {
    const asked = [1, 2, 3, 4].map(() => lane.ask(question()));
    const told = asked.slice(0, 3).map((p) => p.catch((e: unknown) => e));
    workers[0]!.say({ id: 1, answer: 'late' });
    for (const e of await Promise.all(told)) expect(e).toBeInstanceOf(Stale);
    expect(workers[0]!.heard.filter((m) => 'ask' in m).map((m) => m.id)).toEqual([1, 4]);
    workers[0]!.say({ id: 4, answer: 'newest' });
    expect(await asked[3]).toBe('newest');
  });

  test('a run nobody waits for is told to stop, and its worker replaced when it does not listen', async () => {
    const first = lane.ask(question('fine')).catch((e: unknown) => e);
    const second = lane.ask(question('fine'));
    expect(workers[0]!.heard.at(-1)).toEqual({ id: 1, cancel: true });
    vi.advanceTimersByTime(1_000);
    expect(workers[0]!.dead).toBe(true);
    expect(workers[1]!.heard).toHaveLength(1);
    workers[1]!.say({ id: 2, answer: 'second' });
    expect(await second).toBe('second');
    expect(await first).toBeInstanceOf(Stale);
  });

  test('a worker that stops in time is kept', () => {
    lane.ask(question()).catch(() => undefined);
    lane.ask(question()).catch(() => undefined);
    workers[0]!.say({ id: 1, cancelled: true });
    vi.advanceTimersByTime(1_000);
    expect(workers[0]!.dead).toBe(false);
    expect(workers).toHaveLength(1);
  });

  test('a refusal carries where, what was found and what is allowed', async () => {
    const answer = lane.ask(question()).catch((e: unknown) => e);
    const fault = {
      name: 'OutOfRange',
      message: 'm',
      path: 'start',
      found: '400 °C',
      allowed: '−40 to 150 °C',
    };
    workers[0]!.say({ id: 1, fault });
    const error = await answer;
    expect(error).toBeInstanceOf(EngineRefusal);
    expect((error as EngineRefusal).fault).toEqual(fault);
  });

  test('a worker that cannot start says so and the next question gets a new one', async () => {
    const answer = lane.ask(question()).catch((e: unknown) => e);
    workers[0]!.onerror?.({ message: '' } as ErrorEvent);
    expect(String(await answer)).toMatch(/could not be started/);
    void lane.ask(question()).catch(() => undefined);
    expect(workers).toHaveLength(2);
  });
});
