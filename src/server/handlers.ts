/** Every operation of the contract and what carries it out. One that is missing here does not compile. */
import { addLot, addPart, changePart, listLots, listParts } from '../app/animals.ts';
import type { App } from '../app/app.ts';
import {
  answerAuthority,
  askAuthority,
  getAuthorityRequest,
  listAuthorityRequests,
} from '../app/authority.ts';
import { closeBatch, getBatch, listBatches, startBatch } from '../app/batches.ts';
import { finishBreakdown } from '../app/breakdown-finish.ts';
import { addTree, importBreakdowns, listTrees } from '../app/breakdown-trees.ts';
import { breakdownCosts, getBreakdown, listBreakdowns, startBreakdown, weigh } from '../app/breakdowns.ts';
import { getDelivery, listDeliveries, supplierTrend, takeDelivery } from '../app/deliveries.ts';
import { dishNumbers } from '../app/dish-numbers.ts';
import { addDish, getDish, getVersion, listDishes, newVersion, saveVersion } from '../app/dishes.ts';
import { exportDish, exportRecipe, importDish } from '../app/exchange.ts';
import {
  addIngredient,
  changeIngredient,
  listIngredients,
  priceIngredient,
  putAwayIngredient,
} from '../app/ingredients.ts';
import { setRates } from '../app/kitchen-rates.ts';
import { addPerson, createKitchen, listKitchens, listPeople } from '../app/kitchens.ts';
import { declareRisk, lookAtLabel, withdrawRisk } from '../app/labels-and-risks.ts';
import { importLog, listLogs } from '../app/logs.ts';
import { addMachine, keepFit, listFits, listMachines } from '../app/machines.ts';
import { pantry } from '../app/pantry.ts';
import { addPhoto } from '../app/photos.ts';
import { checkJournal, readJournal } from '../app/proof.ts';
import { decide, record } from '../app/readings.ts';
import { getLot, listShelf, moveLot } from '../app/shelf.ts';
import { signVersion } from '../app/sign.ts';
import {
  addSpecification,
  answerSpecification,
  endSpecification,
  getSpecification,
  listSpecifications,
  newSpecificationVersion,
  saveSpecification,
  sendSpecification,
} from '../app/specifications.ts';
import { addSupplier, changeSupplier, listSuppliers, supplierHistory } from '../app/suppliers.ts';
import { addTrial, closeTrial, listTrials } from '../app/trials.ts';
import { carcassBars, yields } from '../app/yields.ts';
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
    changeSupplier: (call) => changeSupplier(app, actor(call), call.params.supplierId, call.body),
    supplierHistory: ({ params }) => supplierHistory(app, params.kitchenId, params.supplierId),
    parts: ({ params }) => listParts(app, params.kitchenId),
    addPart: (call) => addPart(app, actor(call), call.body),
    lots: ({ params }) => listLots(app, params.kitchenId),
    addLot: (call) => addLot(app, actor(call), call.body),
    changePart: (call) => changePart(app, actor(call), call.params.partId, call.body),
    specifications: ({ params }) => listSpecifications(app, params.kitchenId),
    specification: ({ params }) => getSpecification(app, params.kitchenId, params.specificationId),
    addSpecification: (call) => addSpecification(app, actor(call), call.body),
    saveSpecification: (call) => saveSpecification(app, actor(call), call.params.versionId, call.body),
    newSpecificationVersion: (call) =>
      newSpecificationVersion(app, actor(call), call.params.specificationId, call.body),
    sendSpecification: (call) => sendSpecification(app, actor(call), call.params.versionId, call.body.rev),
    answerSpecification: (call) => answerSpecification(app, actor(call), call.params.versionId, call.body),
    endSpecification: (call) => endSpecification(app, actor(call), call.params.specificationId),
    deliveries: ({ params }) => listDeliveries(app, params.kitchenId),
    delivery: ({ params }) => getDelivery(app, params.kitchenId, params.deliveryId),
    takeDelivery: (call) => takeDelivery(app, actor(call), call.body),
    supplierTrend: ({ params }) => supplierTrend(app, params.kitchenId, params.supplierId),
    addPhoto: (call) => addPhoto(app, actor(call), call.body),
    shelf: ({ params }) => listShelf(app, params.kitchenId),
    lot: ({ params }) => getLot(app, params.kitchenId, params.lotId),
    moveLot: (call) => moveLot(app, actor(call), call.params.lotId, call.body),
    trees: ({ params }) => listTrees(app, params.kitchenId),
    addTree: (call) => addTree(app, actor(call), call.body),
    breakdowns: ({ params }) => listBreakdowns(app, params.kitchenId),
    breakdown: ({ params }) => getBreakdown(app, params.kitchenId, params.breakdownId),
    breakdownCosts: ({ params }) => breakdownCosts(app, params.kitchenId, params.breakdownId),
    startBreakdown: (call) => startBreakdown(app, actor(call), call.body),
    weigh: (call) => weigh(app, actor(call), call.params.breakdownId, call.body),
    finishBreakdown: (call) => finishBreakdown(app, actor(call), call.params.breakdownId, call.body),
    importBreakdowns: (call) => importBreakdowns(app, actor(call), call.body),
    yields: ({ params, query }) => yields(app, params.kitchenId, query),
    carcassBars: ({ params }) => carcassBars(app, params.kitchenId),
    authorityRequests: ({ params }) => listAuthorityRequests(app, params.kitchenId),
    authorityRequest: ({ params }) => getAuthorityRequest(app, params.kitchenId, params.requestId),
    askAuthority: (call) => askAuthority(app, actor(call), call.body),
    answerAuthority: (call) => answerAuthority(app, actor(call), call.params.requestId, call.body),
    ingredients: ({ params }) => listIngredients(app, params.kitchenId),
    pantry: ({ params }) => pantry(app, params.kitchenId),
    dishNumbers: ({ params }) => dishNumbers(app, params.kitchenId),
    addIngredient: (call) => addIngredient(app, actor(call), call.body),
    changeIngredient: (call) => changeIngredient(app, actor(call), call.params.ingredientId, call.body),
    priceIngredient: (call) => priceIngredient(app, actor(call), call.params.ingredientId, call.body),
    lookAtLabel: (call) => lookAtLabel(app, actor(call), call.params.ingredientId, call.body),
    putAwayIngredient: (call) => putAwayIngredient(app, actor(call), call.params.ingredientId, call.body),
    setRates: (call) => setRates(app, actor(call), call.body),
    declareRisk: (call) => declareRisk(app, actor(call), call.body),
    withdrawRisk: (call) => withdrawRisk(app, actor(call), call.params.riskId, call.body),
    exportDish: ({ params, query }) => exportDish(app, params.kitchenId, params.dishId, query),
    exportRecipe: ({ params, query }) => exportRecipe(app, params.kitchenId, params.dishId, query),
    importDish: (call) => importDish(app, actor(call), call.body),
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
    fit: ({ body }) => app.engine.fit(body),
    machines: ({ params }) => listMachines(app, params.kitchenId),
    addMachine: (call) => addMachine(app, actor(call), call.body),
    machineFits: ({ params }) => listFits(app, params.kitchenId, params.machineId),
    keepFit: (call) => keepFit(app, actor(call), call.params.machineId, call.body),
  };
}
