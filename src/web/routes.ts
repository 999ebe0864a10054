/**
 * Method and path of every operation, without their schemas: the first screen does not load a validator to ask for a
 * list. The compiler holds each line to the contract, letter for letter, and refuses a missing one.
 */
import type { OperationName, Operations } from '../contract/operations.ts';

type Route<N extends OperationName> = Pick<
  Operations[N],
  Extract<keyof Operations[N], 'method' | 'path' | 'signed'>
>;

export const routes: { readonly [N in OperationName]: Route<N> } = {
  health: { method: 'GET', path: '/api/health' },
  kitchens: { method: 'GET', path: '/api/kitchens' },
  createKitchen: { method: 'POST', path: '/api/kitchens' },
  resetDemo: { method: 'POST', path: '/api/demo/reset' },
  people: { method: 'GET', path: '/api/kitchens/:kitchenId/people' },
  addPerson: { method: 'POST', path: '/api/kitchens/:kitchenId/people', signed: true },
  suppliers: { method: 'GET', path: '/api/kitchens/:kitchenId/suppliers' },
  addSupplier: { method: 'POST', path: '/api/kitchens/:kitchenId/suppliers', signed: true },
  parts: { method: 'GET', path: '/api/kitchens/:kitchenId/parts' },
  addPart: { method: 'POST', path: '/api/kitchens/:kitchenId/parts', signed: true },
  lots: { method: 'GET', path: '/api/kitchens/:kitchenId/lots' },
  addLot: { method: 'POST', path: '/api/kitchens/:kitchenId/lots', signed: true },
  ingredients: { method: 'GET', path: '/api/kitchens/:kitchenId/ingredients' },
  addIngredient: { method: 'POST', path: '/api/kitchens/:kitchenId/ingredients', signed: true },
  dishes: { method: 'GET', path: '/api/kitchens/:kitchenId/dishes' },
  addDish: { method: 'POST', path: '/api/kitchens/:kitchenId/dishes', signed: true },
  dish: { method: 'GET', path: '/api/kitchens/:kitchenId/dishes/:dishId' },
  version: { method: 'GET', path: '/api/kitchens/:kitchenId/versions/:versionId' },
  saveVersion: { method: 'PUT', path: '/api/kitchens/:kitchenId/versions/:versionId', signed: true },
  newVersion: { method: 'POST', path: '/api/kitchens/:kitchenId/dishes/:dishId/versions', signed: true },
  signVersion: { method: 'POST', path: '/api/kitchens/:kitchenId/versions/:versionId/sign', signed: true },
  trials: { method: 'GET', path: '/api/kitchens/:kitchenId/dishes/:dishId/trials' },
  addTrial: { method: 'POST', path: '/api/kitchens/:kitchenId/dishes/:dishId/trials', signed: true },
  closeTrial: { method: 'POST', path: '/api/kitchens/:kitchenId/trials/:trialId/close', signed: true },
  batches: { method: 'GET', path: '/api/kitchens/:kitchenId/batches' },
  startBatch: { method: 'POST', path: '/api/kitchens/:kitchenId/batches', signed: true },
  batch: { method: 'GET', path: '/api/kitchens/:kitchenId/batches/:batchId' },
  record: { method: 'POST', path: '/api/kitchens/:kitchenId/batches/:batchId/readings', signed: true },
  decide: { method: 'POST', path: '/api/kitchens/:kitchenId/batches/:batchId/decisions', signed: true },
  closeBatch: { method: 'POST', path: '/api/kitchens/:kitchenId/batches/:batchId/close', signed: true },
  importLog: { method: 'POST', path: '/api/kitchens/:kitchenId/logs', signed: true },
  logs: { method: 'GET', path: '/api/kitchens/:kitchenId/logs' },
  journal: { method: 'GET', path: '/api/kitchens/:kitchenId/journal' },
  checkJournal: { method: 'GET', path: '/api/kitchens/:kitchenId/journal/check' },
  judge: { method: 'POST', path: '/api/judge' },
  cook: { method: 'POST', path: '/api/cook' },
};
