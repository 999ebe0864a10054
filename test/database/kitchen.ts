/** A small kitchen for tests of the verbs: invented, cooked by the real engine, judged by the real rule book. */
import { v7 as uuid } from 'uuid';
import type { Actor, App } from '../../src/app/app.ts';
import { startBatch } from '../../src/app/batches.ts';
import { addDish } from '../../src/app/dishes.ts';
import { engineOver, perform } from '../../src/app/engine.ts';
import { createKitchen } from '../../src/app/kitchens.ts';
import { signVersion } from '../../src/app/sign.ts';
import type { Kitchen, Person, Reading } from '../../src/contract/records.ts';
import type { CookStep, Method, Step } from '../../src/contract/steps.ts';
import type { Store } from '../../src/store/store.ts';

/** A clock that moves a second at every look, so that no two moments are the same. */
export function appOn(store: Store, start = '2026-11-20T08:00:00.000Z'): App {
  let ms = Date.parse(start);
  return {
    store,
    engine: engineOver(async (task) => perform(task)),
    version: '0.1.0',
    now: () => {
      ms += 1_000;
      return new Date(ms);
    },
  };
}

export interface TestKitchen {
  readonly app: App;
  readonly kitchen: Kitchen;
  readonly person: Person;
  readonly actor: Actor;
}

export async function openKitchen(app: App, place: Kitchen['place'] = 'GB-ENG'): Promise<TestKitchen> {
  const { kitchen, person } = await createKitchen(app, {
    name: 'Test kitchen',
    place,
    zone: 'Europe/London',
    currency: 'GBP',
    units: 'metric',
    person: 'Petra Invented',
  });
  return { app, kitchen, person, actor: { kitchenId: kitchen.id, personId: person.id } };
}

export const muscle = { water: 0.74, protein: 0.21, fat: 0.04, carbohydrate: 0, fibre: 0, ash: 0.01 };

export const askIds = {
  arrival: uuid(),
  core: uuid(),
  weight: uuid(),
  note: uuid(),
  tick: uuid(),
  chill: uuid(),
};
export const stepIds = { trim: uuid(), cook: uuid(), chill: uuid() };

export const trimStep: Step = {
  kind: 'trim',
  id: stepIds.trim,
  name: 'Trim',
  how: 'Trim.',
  handsMin: 5,
  part: 'heart',
  weightG: 300,
  yieldPct: 90,
  asks: [
    {
      id: askIds.arrival,
      kind: 'temperature',
      label: 'Arrival',
      high: 3,
      critical: true,
      basis: 'Test limit.',
    },
    { id: askIds.weight, kind: 'weight', label: 'Weight', low: 200, high: 400 },
    { id: askIds.note, kind: 'note', label: 'Anything odd' },
    { id: askIds.tick, kind: 'tick', label: 'Clean' },
  ],
};

export const cookStep = (min: number, more: Partial<CookStep> = {}): CookStep => ({
  kind: 'cook',
  id: stepIds.cook,
  name: 'Steam',
  how: 'Steam.',
  handsMin: 2,
  asks: [{ id: askIds.core, kind: 'core log', label: 'Core while cooking', critical: true }],
  body: { shape: 'cylinder', diameterMm: 50, layers: [{ name: 'meat', composition: muscle }] },
  startC: 5,
  stages: [{ name: 'steam', mediumC: 100, hWm2K: 1000, until: { min } }],
  target: { referenceC: 70, zC: 7.5, min: 2 },
  rules: ['gb-70c-2min'],
  ...more,
});

/** Fifty minutes of steam for 50 mm: the coldest point has far more than 2 min at 70 °C. */
export const goodMethod = (): Method => [trimStep, cookStep(50)];

export async function signedDish(k: TestKitchen, method = goodMethod()) {
  const dish = await addDish(k.app, k.actor, {
    name: `Heart ${uuid().slice(-6)}`,
    species: 'pig',
    part: 'heart',
    story: '',
    method,
  });
  const version = await signVersion(k.app, k.actor, dish.current.id, 0);
  return { dish, version };
}

export async function openBatch(k: TestKitchen, versionId: string) {
  return startBatch(k.app, k.actor, { id: uuid(), versionId, pieces: 4, lotIds: [] });
}

export const reading = (more: Partial<Reading> = {}): Reading => ({
  id: uuid(),
  stepId: stepIds.trim,
  askId: askIds.arrival,
  kind: 'temperature',
  value: 2,
  note: '',
  at: '2026-11-20T08:30:00.000Z',
  corrects: null,
  ...more,
});

/** A core log in plain CSV: minutes and °C. */
export const coreLog = (points: readonly (readonly [number, number])[]) =>
  `time (min),core (°C)\n${points.map(([min, C]) => `${min},${C}`).join('\n')}\n`;

export const hotLog = coreLog([
  ...Array.from({ length: 31 }, (_, i) => [i, 5 + 2.5 * i] as const),
  [31, 80],
  [35, 80],
]);
export const coolLog = coreLog(Array.from({ length: 31 }, (_, i) => [i, 5 + 1.5 * i] as const));
