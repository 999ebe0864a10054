/** The demo kitchen: laid through the ordinary verbs, so that it obeys every rule; all of it or nothing. */
import { and, eq, isNull } from 'drizzle-orm';
import { Temporal } from 'temporal-polyfill';
import { v7 as uuid } from 'uuid';
import type { Kitchen } from '../contract/records.ts';
import type { Method, Step } from '../contract/steps.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { addLot, addPart } from './animals.ts';
import { type Actor, type App, look, transact } from './app.ts';
import { closeBatch, startBatch } from './batches.ts';
import { dayIn } from './civil-day.ts';
import { animalEvents, animalMoments, type Event } from './demo-animals.ts';
import { pantryEvents } from './demo-pantry.ts';
import type { DemoBatch, DemoDish, DemoKitchen, DemoMoment, DemoStep } from './demo-shape.ts';
import { addDish, newVersion, saveVersion } from './dishes.ts';
import { addIngredient } from './ingredients.ts';
import { addPerson, createKitchen } from './kitchens.ts';
import { importLog } from './logs.ts';
import { decide, record } from './readings.ts';
import { signVersion } from './sign.ts';
import { addSupplier } from './suppliers.ts';
import { addTrial, closeTrial } from './trials.ts';

/** Lays the demo where there is no kitchen at all; several servers may start at once, one of them lays it. */
export async function layDemoIfEmpty(app: App, demo: DemoKitchen): Promise<Kitchen | null> {
  const any = await look(app, (db) => db.select({ id: t.kitchen.id }).from(t.kitchen).limit(1));
  if (any.length > 0) return null;
  return transact(app.store, async (tx) => {
    await oneAtATime(tx);
    const again = await tx.select({ id: t.kitchen.id }).from(t.kitchen).limit(1);
    return again.length > 0 ? null : layDemo({ ...app, within: tx }, demo);
  });
}

/** The demo as on its first day, in a kitchen of its own; the demo kitchens before it are put away, not deleted. */
export const resetDemo = (app: App, demo: DemoKitchen): Promise<Kitchen> =>
  transact(app.store, async (tx) => {
    await oneAtATime(tx);
    const before = and(eq(t.kitchen.demo, true), isNull(t.kitchen.putAwayAt));
    await tx.update(t.kitchen).set({ putAwayAt: app.now() }).where(before);
    return layDemo({ ...app, within: tx }, demo);
  });

/** Two servers, or two clicks, lay the demo one after the other; nobody else waits. */
const oneAtATime = (tx: Db) => tx.execute('SELECT pg_advisory_xact_lock(5412540326)');

interface Laying {
  readonly app: App & { readonly within: Db };
  readonly kitchenId: string;
  readonly people: Map<string, string>;
  readonly demo: DemoKitchen;
}

async function layDemo(app: App & { readonly within: Db }, demo: DemoKitchen): Promise<Kitchen> {
  const [chef, ...others] = demo.people;
  if (chef === undefined) throw new Error('the demo kitchen has nobody in it');
  const laidAt = app.now();
  const moment = (m: DemoMoment, min = 0) => momentOf(m, min, demo.kitchen.zone, laidAt);
  const moments = [
    ...demo.lots.map((lot) => moment(lot.at)),
    ...demo.dishes.flatMap((dish) => dish.versions.map((version) => moment(version.at))),
    ...demo.batches.map((batch) => moment(batch.at)),
    ...animalMoments(demo.animals).map((m) => moment(m)),
    ...[...demo.pantry.prices, ...demo.pantry.labels, ...demo.pantry.rates, ...demo.pantry.risks].map((e) =>
      moment(e.at),
    ),
  ];
  // The kitchen was set up an hour before the first thing that happened in it.
  const opened = new Date(Math.min(laidAt.getTime(), ...moments.map((m) => m.getTime() - 3_600_000)));
  const first = at(app, opened);
  const { kitchen, person } = await createKitchen(first, { ...demo.kitchen, person: chef.name }, true);
  const laying: Laying = { app, kitchenId: kitchen.id, people: new Map([[person.name, person.id]]), demo };
  for (const other of others)
    laying.people.set(other.name, (await addPerson(first, by(laying, chef.name), other)).id);
  const suppliers = new Map<string, string>();
  for (const supplier of demo.suppliers)
    suppliers.set(supplier.name, (await addSupplier(first, by(laying, chef.name), supplier)).id);
  const parts = new Map<string, string>();
  for (const part of demo.parts)
    parts.set(`${part.species} ${part.name}`, (await addPart(first, by(laying, chef.name), part)).id);
  const ingredients = new Map<string, string>();
  for (const ingredient of demo.ingredients)
    ingredients.set(ingredient.name, (await addIngredient(first, by(laying, chef.name), ingredient)).id);

  const lots = new Map<string, string>();
  const dishes = new Map<string, LaidDish>();
  const events: Event[] = [
    ...demo.lots.map(({ supplier, part, at: arrived, by: who, ...lot }) => ({
      at: moment(arrived),
      happen: async (then: App) => {
        const input = {
          ...lot,
          supplierId: supplier === null ? null : must(suppliers, supplier),
          partId: part === null ? null : must(parts, `${part.species} ${part.name}`),
          arrivedAt: moment(arrived).toISOString(),
        };
        lots.set(lot.code, (await addLot(then, by(laying, who), input)).id);
      },
    })),
    ...demo.dishes.flatMap((dish) => dishEvents(laying, dish, dishes, ingredients, moment)),
    ...animalEvents(
      {
        zone: demo.kitchen.zone,
        moment,
        who: (name) => by(laying, name),
        supplier: (name) => must(suppliers, name),
        part: (species, name) => must(parts, `${species} ${name}`),
        dish: (name) => must(dishes, name).id,
        lots,
      },
      demo.animals,
    ),
    ...pantryEvents(
      {
        moment,
        who: (name) => by(laying, name),
        supplier: (name) => must(suppliers, name),
        ingredient: (name) => must(ingredients, name),
        today: dayIn(demo.kitchen.zone, laidAt),
      },
      demo.pantry,
    ),
    ...demo.batches.flatMap((batch) => batchEvents(laying, batch, dishes, lots, moment)),
  ];
  // What happens at one moment happens in the order in which it is written down: sorting keeps that order.
  for (const event of [...events].sort((a, b) => a.at.getTime() - b.at.getTime()))
    await event.happen(at(app, event.at));
  return kitchen;
}

const at = (app: App, when: Date): App => ({ ...app, now: () => when });
const by = (laying: Laying, name: string): Actor => ({
  kitchenId: laying.kitchenId,
  personId: must(laying.people, name),
});

function must<V>(map: ReadonlyMap<string, V>, name: string): V {
  const value = map.get(name);
  if (value === undefined)
    throw new Error(`the demo kitchen names ${JSON.stringify(name)}, which it does not hold`);
  return value;
}

interface LaidDish {
  readonly id: string;
  /** The newest signed version and its method. */
  signed: { id: string; method: Method } | null;
  /** Ids of all versions, the first first. */
  readonly versions: string[];
}

type MomentOf = (m: DemoMoment, min?: number) => Date;

function dishEvents(
  laying: Laying,
  dish: DemoDish,
  dishes: Map<string, LaidDish>,
  ingredients: ReadonlyMap<string, string>,
  moment: MomentOf,
): Event[] {
  const events: Event[] = [];
  for (const [i, version] of dish.versions.entries()) {
    events.push({
      at: moment(version.at),
      happen: async (app) => {
        const method = version.method.map((step) => withIds(step, ingredients, dishes));
        const who = by(laying, version.by);
        if (i === 0) {
          const { name, species, part, story } = dish;
          const made = await addDish(app, who, { name, species, part, story, method });
          dishes.set(name, { id: made.id, signed: null, versions: [made.current.id] });
          return;
        }
        const laid = must(dishes, dish.name);
        const next = await newVersion(app, who, laid.id, { reason: version.reason });
        laid.versions.push(next.id);
        await saveVersion(app, who, next.id, { rev: next.rev, method });
      },
    });
    const { sign } = version;
    if (sign !== undefined)
      events.push({
        at: moment(sign.at),
        happen: async (app) => {
          const laid = must(dishes, dish.name);
          const id = laid.versions[i] as string;
          const signed = await signVersion(app, by(laying, sign.by), id, i === 0 ? 0 : 1);
          laid.signed = { id, method: signed.method };
        },
      });
  }
  for (const trial of dish.trials ?? []) {
    let id = '';
    events.push({
      at: moment(trial.at),
      happen: async (app) => {
        const laid = must(dishes, dish.name);
        const versionId = laid.versions[trial.version - 1];
        if (versionId === undefined) throw new Error(`${dish.name} has no version ${trial.version}`);
        id = (
          await addTrial(app, by(laying, trial.by), laid.id, {
            versionId,
            name: trial.name,
            expect: trial.expect,
          })
        ).id;
      },
    });
    const { conclusion } = trial;
    if (conclusion !== undefined)
      events.push({
        at: moment(conclusion.at),
        happen: (app) => closeTrial(app, by(laying, conclusion.by), id, { conclusion: conclusion.text }),
      });
  }
  return events;
}

function withIds(
  step: DemoStep,
  ingredients: ReadonlyMap<string, string>,
  dishes: ReadonlyMap<string, LaidDish>,
): Step {
  const asks = step.asks.map((ask) => ({ id: uuid(), ...ask }));
  if (step.kind !== 'mix') return { ...step, id: uuid(), asks } as Step;
  const lines = step.lines.map((line) => {
    const dish = dishes.get(line.ingredient);
    if (dish !== undefined) return { ...line, of: { kind: 'dish', id: dish.id } };
    const ingredientId = ingredients.get(line.ingredient);
    return ingredientId === undefined ? line : { ...line, ingredientId };
  });
  return { ...step, id: uuid(), asks, lines } as Step;
}

function batchEvents(
  laying: Laying,
  batch: DemoBatch,
  dishes: ReadonlyMap<string, LaidDish>,
  lots: ReadonlyMap<string, string>,
  moment: MomentOf,
): Event[] {
  const id = uuid();
  const readingIds = batch.readings.map(() => uuid());
  const find = (stepName: string, label: string | null) => {
    const step = must(dishes, batch.dish).signed?.method.find((s) => s.name === stepName);
    const ask = step?.asks.find((a) => a.label === label);
    if (step === undefined || (label !== null && ask === undefined))
      throw new Error(
        `${batch.dish} has no step ${JSON.stringify(stepName)} that asks for ${JSON.stringify(label)}`,
      );
    return { step, ask };
  };
  const events: Event[] = [
    {
      at: moment(batch.at),
      happen: (app) => {
        const { signed } = must(dishes, batch.dish);
        if (signed === null) throw new Error(`${batch.dish} is not signed when its batch starts`);
        const lotIds = batch.lots.map((code) => must(lots, code));
        return startBatch(app, by(laying, batch.by), {
          id,
          versionId: signed.id,
          pieces: batch.pieces,
          lotIds,
        });
      },
    },
  ];
  for (const [i, reading] of batch.readings.entries()) {
    const when = moment(batch.at, reading.min);
    events.push({
      at: when,
      happen: (app) => {
        const { step, ask } = find(reading.step, reading.ask);
        const kind = ask?.kind === 'core log' ? 'temperature' : (ask?.kind ?? 'note');
        const corrects = reading.corrects === undefined ? null : (readingIds[reading.corrects] ?? null);
        const line = {
          id: readingIds[i] as string,
          stepId: step.id,
          askId: ask?.id as string,
          kind,
          value: reading.value,
          note: reading.note ?? '',
          at: when.toISOString(),
          corrects,
        };
        return record(app, by(laying, reading.by), id, { readings: [line] });
      },
    });
  }
  for (const log of batch.logs ?? [])
    events.push({
      at: moment(batch.at, log.min),
      happen: (app) =>
        importLog(app, by(laying, log.by), {
          id: uuid(),
          batchId: id,
          trialId: null,
          dishId: null,
          stepId: find(log.step, null).step.id,
          name: log.name,
          text: log.text,
          channel: log.channel,
          correction: { zone: laying.demo.kitchen.zone },
          rules: [...log.rules],
        }),
    });
  for (const decision of batch.decisions ?? []) {
    const when = moment(batch.at, decision.min);
    events.push({
      at: when,
      happen: (app) => {
        const { step, ask } = find(decision.step, decision.ask);
        const { what, reason } = decision;
        return decide(app, by(laying, decision.by), id, {
          id: uuid(),
          stepId: step.id,
          askId: ask?.id ?? null,
          what,
          reason,
          at: when.toISOString(),
        });
      },
    });
  }
  const { close } = batch;
  if (close !== undefined)
    events.push({
      at: moment(batch.at, close.min),
      happen: (app) => closeBatch(app, by(laying, close.by), id, { as: close.as, note: close.note }),
    });
  return events;
}

/** The instant of a clock in a zone on a day counted back from the laying; never later than the laying. */
function momentOf(m: DemoMoment, min: number, zone: string, laidAt: Date): Date {
  if (!/^([01]\d|2[0-3]):[0-5]\d$/.test(m.clock))
    throw new Error(`the demo kitchen has no clock ${JSON.stringify(m.clock)}`);
  const day = Temporal.PlainDate.from(dayIn(zone, laidAt)).subtract({ days: m.daysAgo });
  const { epochMilliseconds } = day.toZonedDateTime({ timeZone: zone, plainTime: m.clock });
  return new Date(Math.min(epochMilliseconds + min * 60_000, laidAt.getTime()));
}
