/** The demo kitchen's Animals as events: specifications, deliveries, breakdowns, what was done with lots, a question. */
import { eq } from 'drizzle-orm';
import { v7 as uuid } from 'uuid';
import { pointsOf } from '../contract/delivery-points.ts';
import type { Specification, SpecificationContent } from '../contract/specification.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, look } from './app.ts';
import { askAuthority } from './authority.ts';
import { finishBreakdown } from './breakdown-finish.ts';
import { addTree, importBreakdowns } from './breakdown-trees.ts';
import { startBreakdown, weigh } from './breakdowns.ts';
import { dayIn, plusDays } from './civil-day.ts';
import { takeDelivery } from './deliveries.ts';
import type {
  DemoAnimals,
  DemoBreakdown,
  DemoDelivery,
  DemoMove,
  DemoSpecification,
} from './demo-animals-shape.ts';
import type { DemoMoment } from './demo-shape.ts';
import { moveLot } from './shelf.ts';
import {
  addSpecification,
  answerSpecification,
  newSpecificationVersion,
  saveSpecification,
  sendSpecification,
} from './specifications.ts';

/** One thing that happened, at its moment. */
export interface Event {
  readonly at: Date;
  readonly happen: (app: App) => Promise<unknown>;
}

/** What has been laid so far, by name. */
export interface LaidAnimals {
  readonly zone: string;
  readonly moment: (m: DemoMoment, min?: number) => Date;
  readonly who: (name: string) => Actor;
  readonly supplier: (name: string) => string;
  readonly part: (species: string, name: string) => string;
  readonly dish: (name: string) => string;
  /** Ids of lots by code; what was cut of one, by its code and the part: `G-0208 neck skin`. Filled while laying. */
  readonly lots: Map<string, string>;
}

/** The moments of everything that happens here: the kitchen was there before the first of them. */
export const animalMoments = (animals: DemoAnimals): DemoMoment[] => [
  ...animals.trees.map((x) => x.at),
  ...animals.specifications.flatMap((s) => s.versions.map((v) => v.at)),
  ...animals.deliveries.map((x) => x.at),
  ...animals.past.map((x) => x.at),
  ...animals.breakdowns.map((x) => x.at),
];

export function animalEvents(laid: LaidAnimals, animals: DemoAnimals): Event[] {
  const { moment, who } = laid;
  const agreed = new Map<string, { id: string; content: SpecificationContent }>();
  return [
    ...animals.trees.map(({ by, at, ...tree }) => ({
      at: moment(at),
      happen: (app: App) => addTree(app, who(by), { ...tree, nodes: [...tree.nodes] }),
    })),
    ...animals.specifications.flatMap((s) => specificationEvents(laid, s, agreed)),
    ...animals.deliveries.map((d) => deliveryEvent(laid, d, agreed)),
    ...animals.past.map(({ species, supplier, note, rows, by, at }) => ({
      at: moment(at),
      happen: (app: App) =>
        importBreakdowns(app, who(by), {
          species,
          supplierId: supplier === null ? null : laid.supplier(supplier),
          note,
          rows: rows.map((row) => ({ ...row, at: moment(row.at).toISOString() })),
        }),
    })),
    ...animals.breakdowns.flatMap((b) => breakdownEvents(laid, b)),
    ...animals.moves.map((m) => moveEvent(laid, m)),
    ...animals.questions.map(({ dish, species, part, content, by, at }) => ({
      at: moment(at),
      happen: (app: App) => askAuthority(app, who(by), { dishId: laid.dish(dish), species, part, content }),
    })),
  ];
}

function lotNamed(laid: LaidAnimals, code: string): string {
  const id = laid.lots.get(code);
  if (id === undefined) throw new Error(`the demo kitchen names the lot ${code} before it is there`);
  return id;
}

/** 0 Monday … 6 Sunday. */
const weekday = (day: string) => (new Date(`${day}T12:00:00Z`).getUTCDay() + 6) % 7;

function specificationEvents(
  laid: LaidAnimals,
  s: DemoSpecification,
  agreed: Map<string, { id: string; content: SpecificationContent }>,
): Event[] {
  const { moment, who } = laid;
  let standing: Specification | undefined;
  const versionOf = (i: number) => {
    const version = standing?.versions[i];
    if (standing === undefined || version === undefined)
      throw new Error(`${s.name} has no version ${i + 1} yet`);
    return { specification: standing, version };
  };
  return s.versions.flatMap(({ content: { onTheDaysOf, ...words }, ...v }, i): Event[] => {
    const days = onTheDaysOf.map((daysAgo) => weekday(dayIn(laid.zone, moment({ daysAgo, clock: '12:00' }))));
    const content: SpecificationContent = { ...words, days };
    const events: Event[] = [
      {
        at: moment(v.at),
        happen: async (app) => {
          if (i === 0) {
            standing = await addSpecification(app, who(v.by), {
              supplierId: laid.supplier(s.supplier),
              species: s.species,
              name: s.name,
              content,
            });
            return;
          }
          const { specification } = versionOf(i - 1);
          standing = await newSpecificationVersion(app, who(v.by), specification.id, { reason: v.reason });
          const { version } = versionOf(i);
          standing = await saveSpecification(app, who(v.by), version.id, { rev: version.rev, content });
        },
      },
    ];
    const { sent } = v;
    if (sent !== undefined)
      events.push({
        at: moment(sent.at),
        happen: async (app) => {
          const { version } = versionOf(i);
          standing = await sendSpecification(app, who(sent.by), version.id, version.rev);
        },
      });
    for (const { by, at, ...answer } of v.answers ?? [])
      events.push({
        at: moment(at),
        happen: async (app) => {
          const { version } = versionOf(i);
          standing = await answerSpecification(app, who(by), version.id, {
            id: uuid(),
            ...answer,
            at: moment(at).toISOString(),
          });
          const inForce = standing.versions.find((x) => x.number === standing?.inForce);
          if (inForce !== undefined) agreed.set(s.name, { id: inForce.id, content: inForce.content });
        },
      });
    return events;
  });
}

function deliveryEvent(
  laid: LaidAnimals,
  d: DemoDelivery,
  agreed: ReadonlyMap<string, { id: string; content: SpecificationContent }>,
): Event {
  const arrivedAt = laid.moment(d.at);
  const day = dayIn(laid.zone, arrivedAt);
  return {
    at: arrivedAt,
    happen: async (app) => {
      const version = d.specification === null ? undefined : agreed.get(d.specification);
      if (d.specification !== null && version === undefined)
        throw new Error(`${d.specification} is not agreed when a delivery is checked against it`);
      const seen = version === undefined ? [] : pointsOf(version.content).filter((p) => p.by === 'seen');
      for (const point of [...Object.keys(d.missed ?? {}), ...(d.notSeen ?? [])])
        if (!seen.some((p) => p.point === point)) throw new Error(`nobody looks at ${point}`);
      const { id } = await takeDelivery(app, laid.who(d.by), {
        id: uuid(),
        supplierId: laid.supplier(d.supplier),
        specificationVersionId: version?.id ?? null,
        arrivedAt: arrivedAt.toISOString(),
        documents: d.documents,
        decision: d.decision,
        reason: d.reason,
        checks: seen.map(({ point, asked }) => {
          const found = d.missed?.[point];
          if (found !== undefined) return { point, asked, met: 'not met', found };
          return { point, asked, met: d.notSeen?.includes(point) ? 'not looked at' : 'met', found: '' };
        }),
        lines: d.lines.map(({ part, slaughteredDaysBefore, useByDays, ...line }) => ({
          ...line,
          tags: [...line.tags],
          id: uuid(),
          partId: part === null || line.species === null ? null : laid.part(line.species, part),
          arrivalCMeant: false,
          slaughteredOn: slaughteredDaysBefore === null ? null : plusDays(day, -slaughteredDaysBefore),
          useBy: useByDays === null ? null : plusDays(day, useByDays),
        })),
      });
      const made = await look(app, (db) =>
        db.select({ id: t.lot.id, code: t.lot.code }).from(t.lot).where(eq(t.lot.deliveryId, id)),
      );
      for (const lot of made) laid.lots.set(lot.code, lot.id);
    },
  };
}

function breakdownEvents(laid: LaidAnimals, b: DemoBreakdown): Event[] {
  const id = uuid();
  const actor = laid.who(b.cutter);
  const { finished } = b;
  const end = finished?.min ?? 20;
  const events: Event[] = [
    {
      at: laid.moment(b.at),
      happen: async (app) =>
        startBreakdown(app, actor, {
          id,
          species: b.species,
          animals: b.animals,
          nodes: [...b.nodes],
          cutterId: actor.personId,
          lots: await Promise.all(
            b.lots.map(async ({ code, grams }) => {
              const lotId = lotNamed(laid, code);
              return { lotId, grams: grams ?? (await leftOf(app, lotId)) };
            }),
          ),
        }),
    },
    {
      at: laid.moment(b.at, end - 1),
      happen: (app) =>
        weigh(app, actor, id, {
          weighings: b.weighings.map(({ animal, node, grams }, i) => ({
            id: uuid(),
            node,
            animal,
            grossGrams: grams,
            tareGrams: 0,
            pieces: null,
            corrects: null,
            takenBack: false,
            at: laid.moment(b.at, ((i + 1) * (end - 1)) / b.weighings.length).toISOString(),
          })),
        }),
    },
  ];
  if (finished !== undefined)
    events.push({
      at: laid.moment(b.at, end),
      happen: async (app) => {
        const { costBy, note } = finished;
        const { standing } = await finishBreakdown(app, actor, id, { as: 'finished', costBy, note });
        for (const { name, lotId } of standing.nodes)
          if (lotId !== null) laid.lots.set(`${b.lots[0]?.code} ${name}`, lotId);
      },
    });
  return events;
}

const leftOf = (app: App, lotId: string): Promise<number> =>
  look(app, async (db) => {
    const [lot] = await db.select({ left: t.lot.leftGrams }).from(t.lot).where(eq(t.lot.id, lotId));
    return lot?.left ?? 0;
  });

function moveEvent(laid: LaidAnimals, m: DemoMove): Event {
  const when = laid.moment(m.at);
  return {
    at: when,
    happen: async (app) => {
      const lotId = lotNamed(laid, m.lot);
      const grams = m.grams === 'all' ? await leftOf(app, lotId) : m.grams;
      return moveLot(app, laid.who(m.by), lotId, {
        id: uuid(),
        what: m.what,
        grams,
        useBy: m.useByDays === null ? null : plusDays(dayIn(laid.zone, when), m.useByDays),
        reason: m.reason,
        at: when.toISOString(),
      });
    },
  };
}
