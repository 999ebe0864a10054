/** *Make it…* off the page's own thread: the solver and the published table are loaded when it is first asked. */
import wasmUrl from 'highs/runtime?url';
import { makeIt } from '../../contract/make-it.ts';
import type { MakeQuestion } from '../../contract/make-it-question.ts';
import { loadSolver } from '../../contract/solver.ts';
import { ingredientById } from '../../core/properties/ingredients/table.ts';
import type { FromFormulate } from './formulate-messages.ts';

const scope = self as unknown as DedicatedWorkerGlobalScope;
const say = (message: FromFormulate) => scope.postMessage(message);

function tableFood(id: string) {
  const row = ingredientById(id);
  if (row === undefined) return undefined;
  const { name, nutrients, allergens } = row;
  return { kind: 'food' as const, id, name, nutrients, allergens, costPerKg: null };
}

async function answer(question: MakeQuestion): Promise<void> {
  try {
    say({ made: makeIt(question, tableFood, await loadSolver(wasmUrl)) });
  } catch (error) {
    say({ fault: error instanceof Error ? error.message : String(error) });
  }
}

scope.onmessage = ({ data }: MessageEvent<MakeQuestion>) => void answer(data);
