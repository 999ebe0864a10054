/** The heat engine off the page's own thread: runs one question at a time and hears a cancel between two runs. */
import { cook } from '../../core/heat/cook.ts';
import { adviceFrom, heatingTimeSearch } from '../../core/method/advice.ts';
import { mediaRangeSearch } from '../../core/method/media-range.ts';
import { shapeCostSearch } from '../../core/method/shape-cost.ts';
import { foreseeCure } from '../../core/salt/foresee.ts';
import {
  buffersOf,
  type EngineFault,
  type FromWorker,
  type Question,
  type ToWorker,
} from './engine-messages.ts';

const scope = self as unknown as DedicatedWorkerGlobalScope;
const cancelled = new Set<number>();
const say = (message: FromWorker, transfer: Transferable[] = []) => scope.postMessage(message, transfer);

class Given extends Error {}

/** Lets waiting messages in. */
function breathe(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(0);
  });
}

async function through<T>(id: number, search: Generator<number, T>): Promise<T> {
  for (;;) {
    const step = search.next();
    if (step.done === true) return step.value;
    await breathe();
    if (cancelled.has(id)) throw new Given();
  }
}

async function answer(id: number, ask: Question): Promise<void> {
  const began = performance.now();
  if (ask.kind === 'cook') {
    let told = began;
    const result = cook(ask.problem, {
      mode: ask.mode,
      ...(ask.frames > 0 ? { frames: { count: ask.frames } } : {}),
      onProgress: (simulated) => {
        const now = performance.now();
        if (now - told > 100) {
          told = now;
          say({ id, progress: simulated });
        }
        return true;
      },
    });
    say({ id, answer: { result, ms: performance.now() - began } }, buffersOf(result));
    return;
  }
  if (ask.kind === 'cure') {
    const foreseen = foreseeCure(ask.problem, ask.wanted);
    say({ id, answer: { foreseen, ms: performance.now() - began } });
    return;
  }
  if (ask.kind === 'ranges') {
    const minutes = await through(id, mediaRangeSearch(ask.problem, ask.heatingStage, ask.ranges));
    say({ id, answer: { minutes, ms: performance.now() - began } });
    return;
  }
  if (ask.kind === 'fit') {
    // Statistics are loaded for who fits, not for every slider. The library's logger asks for its terminal at once, even where there is none.
    Object.assign(scope, { process: (scope as { process?: unknown }).process ?? {} });
    const { runFit } = await import('../../contract/fit.ts');
    const fit = runFit(ask.input, {
      onProgress: (_runs, share) => {
        say({ id, progress: share });
        return true;
      },
    });
    say({ id, answer: { fit, ms: performance.now() - began } });
    return;
  }
  const options = { mode: ask.mode, guess: ask.now };
  const heating = await through(id, heatingTimeSearch(ask.problem, ask.heatingStage, options));
  const advice = adviceFrom(heating, ask.now);
  say({ id, part: { advice, cost: null, ms: performance.now() - began } });
  const cost = await through(
    id,
    shapeCostSearch(ask.problem, ask.heatingStage, heating, ask.coldSpot, { mode: ask.mode }),
  );
  say({ id, answer: { advice, cost, ms: performance.now() - began } });
}

function faultOf(error: unknown): EngineFault {
  if (!(error instanceof Error)) return { name: 'Error', message: String(error) };
  const { name, message } = error;
  const told = error as Partial<Record<'path' | 'found' | 'allowed', unknown>>;
  const { path, found, allowed } = told;
  return typeof path === 'string' && typeof found === 'string' && typeof allowed === 'string'
    ? { name, message, path, found, allowed }
    : { name, message };
}

scope.onmessage = (event: MessageEvent<ToWorker>) => {
  const message = event.data;
  if ('cancel' in message) {
    cancelled.add(message.id);
    return;
  }
  const { id, ask } = message;
  answer(id, ask)
    .catch((error: unknown) =>
      say(error instanceof Given ? { id, cancelled: true } : { id, fault: faultOf(error) }),
    )
    .finally(() => cancelled.delete(id));
};
