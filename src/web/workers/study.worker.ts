/** Studies a programme off the page's own thread: how sure its time is, or what would be gentlest. Its runs are shared out among a few workers of its own. */
import { runChill } from '../../contract/chill.ts';
import { runGentle } from '../../contract/gentle.ts';
import { InputProblems } from '../../contract/problem.ts';
import { runSure } from '../../contract/sure.ts';
import { portionFrom, type RunTasks, type SureTask } from '../../contract/sure-tasks.ts';
import type { FromRuns, FromStudy, StudyQuestion } from './study-messages.ts';

const scope = self as unknown as DedicatedWorkerGlobalScope;
const say = (message: FromStudy) => scope.postMessage(message);

const most = 4;

function openPool(input: unknown): RunTasks {
  const count = Math.max(1, Math.min(most, navigator.hardwareConcurrency));
  const workers = Array.from({ length: count }, () => {
    const worker = new Worker(new URL('./study-runs.worker.ts', import.meta.url), { type: 'module' });
    worker.postMessage({ input });
    return worker;
  });
  let lastId = 0;
  const ask = (worker: Worker, tasks: readonly SureTask[]) =>
    new Promise<readonly (readonly number[])[]>((resolve, reject) => {
      const id = ++lastId;
      worker.onerror = (event) => reject(new Error(event.message || 'the engine could not be started'));
      worker.onmessage = ({ data }: MessageEvent<FromRuns>) => {
        if (data.id !== id) return;
        if ('numbers' in data) resolve(data.numbers);
        else if ('problems' in data) reject(new InputProblems(data.problems));
        else reject(new Error(data.fault));
      };
      worker.postMessage({ id, tasks });
    });
  return async (tasks, onDone) => {
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
  };
}

async function study({ kind, input }: StudyQuestion): Promise<void> {
  let told = 0;
  const onProgress = (progress: number) => {
    if (progress - told < 0.01) return;
    told = progress;
    say({ progress });
  };
  try {
    const answer =
      kind === 'gentle'
        ? runGentle(input, { onProgress })
        : kind === 'chill'
          ? runChill(input, { onProgress })
          : await runSure(input, { run: openPool(input), onProgress });
    say({ answer });
  } catch (error) {
    if (error instanceof InputProblems) say({ problems: error.problems });
    else say({ fault: error instanceof Error ? error.message : String(error) });
  }
}

scope.onmessage = ({ data }: MessageEvent<StudyQuestion>) => void study(data);
