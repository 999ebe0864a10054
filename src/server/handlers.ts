/** Every operation of the contract and what carries it out. One that is missing here does not compile. */
import {
  addIngredient,
  addLot,
  addPart,
  addSupplier,
  listIngredients,
  listLots,
  listParts,
  listSuppliers,
} from '../app/animals.ts';
import type { App } from '../app/app.ts';
import { closeBatch, getBatch, listBatches, startBatch } from '../app/batches.ts';
import { addDish, getDish, getVersion, listDishes, newVersion, saveVersion } from '../app/dishes.ts';
import { addPerson, createKitchen, listKitchens, listPeople } from '../app/kitchens.ts';
import { importLog, listLogs } from '../app/logs.ts';
import { checkJournal, readJournal } from '../app/proof.ts';
import { decide, record } from '../app/readings.ts';
import { signVersion } from '../app/sign.ts';
import { addTrial, closeTrial, listTrials } from '../app/trials.ts';
import type { OperationName, ResultOf } from '../contract/operations.ts';
import type { Kitchen } from '../contract/records.ts';
import type { Call } from './call.ts';

export type Handlers = { readonly [N in OperationName]: (call: Call<N>) => Promise<ResultOf<N>> };

export interface Around {
  readonly app: App;
  readonly resetDemo: () => Promise<Kitchen>;
}

export function handlersOf({ app, resetDemo }: Around): Handlers {
  const actor = ({ params, personId }: { params: { kitchenId: string }; personId: string }) => ({
    kitchenId: params.kitchenId,
    personId,
  });
  return {
    health: async () => ({
      ok: true,
      version: app.version,
      store: app.store.kind,
      durable: app.store.durable,
    }),
    kitchens: () => listKitchens(app),
    createKitchen: ({ body }) => createKitchen(app, body),
    resetDemo,
    people: ({ params }) => listPeople(app, params.kitchenId),
    addPerson: (call) => addPerson(app, actor(call), call.body),
    suppliers: ({ params }) => listSuppliers(app, params.kitchenId),
    addSupplier: (call) => addSupplier(app, actor(call), call.body),
    parts: ({ params }) => listParts(app, params.kitchenId),
    addPart: (call) => addPart(app, actor(call), call.body),
    lots: ({ params }) => listLots(app, params.kitchenId),
    addLot: (call) => addLot(app, actor(call), call.body),
    ingredients: ({ params }) => listIngredients(app, params.kitchenId),
    addIngredient: (call) => addIngredient(app, actor(call), call.body),
    dishes: ({ params }) => listDishes(app, params.kitchenId),
    addDish: (call) => addDish(app, actor(call), call.body),
    dish: ({ params }) => getDish(app, params.kitchenId, params.dishId),
    version: ({ params }) => getVersion(app, params.kitchenId, params.versionId),
    saveVersion: (call) => saveVersion(app, actor(call), call.params.versionId, call.body),
    newVersion: (call) => newVersion(app, actor(call), call.params.dishId, call.body),
    signVersion: (call) => signVersion(app, actor(call), call.params.versionId, call.body.rev),
    trials: ({ params }) => listTrials(app, params.kitchenId, params.dishId),
    addTrial: (call) => addTrial(app, actor(call), call.params.dishId, call.body),
    closeTrial: (call) => closeTrial(app, actor(call), call.params.trialId, call.body),
    batches: ({ params }) => listBatches(app, params.kitchenId),
    startBatch: (call) => startBatch(app, actor(call), call.body),
    batch: ({ params }) => getBatch(app, params.kitchenId, params.batchId),
    record: (call) => record(app, actor(call), call.params.batchId, call.body),
    decide: (call) => decide(app, actor(call), call.params.batchId, call.body),
    closeBatch: (call) => closeBatch(app, actor(call), call.params.batchId, call.body),
    importLog: (call) => importLog(app, actor(call), call.body),
    logs: ({ params, query }) => listLogs(app, params.kitchenId, query.dishId),
    journal: ({ params, query }) => readJournal(app, params.kitchenId, query),
    checkJournal: ({ params }) => checkJournal(app, params.kitchenId),
    judge: ({ body }) => app.engine.judge(body),
    cook: ({ body }) => app.engine.cook(body),
  };
}
