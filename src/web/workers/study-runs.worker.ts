/** Does the engine's runs of one study, a few at a time. */
import { InputProblems } from '../../contract/problem.ts';
import { type SureTask, taskRunner } from '../../contract/sure-tasks.ts';
import type { FromRuns, ToRuns } from './study-messages.ts';

const scope = self as unknown as DedicatedWorkerGlobalScope;
const say = (message: FromRuns) => scope.postMessage(message);
let input: unknown;
let one: ((task: SureTask) => number[]) | null = null;

scope.onmessage = ({ data }: MessageEvent<ToRuns>) => {
  if ('input' in data) {
    input = data.input;
    one = null;
    return;
  }
  const { id, tasks } = data;
  try {
    one ??= taskRunner(input);
    say({ id, numbers: tasks.map(one) });
  } catch (error) {
    if (error instanceof InputProblems) say({ id, problems: error.problems });
    else say({ id, fault: error instanceof Error ? error.message : String(error) });
  }
};
