/**
 * Every operation of Animals in a kitchen of five years: 50,000 lots, 1,040 breakdowns (geese one by one, pigs, lambs and
 * rabbits together), on both stores. Times are of the verb and its JSON, at the server. All data invented.
 *
 *     npx tsx bench/animals.bench.ts [embedded|postgresql] [repeats]
 */
import { cpus, loadavg } from 'node:os';
import { eq } from 'drizzle-orm';
import { v7 as uuid } from 'uuid';
import { addSupplier, changePart, listLots, listParts, listSuppliers } from '../src/app/animals.ts';
import { askAuthority, listAuthorityRequests } from '../src/app/authority.ts';
import { finishBreakdown } from '../src/app/breakdown-finish.ts';
import { outcomeOf } from '../src/app/breakdown-standing.ts';
import { addTree, importBreakdowns, listTrees } from '../src/app/breakdown-trees.ts';
import {
  breakdownCosts,
  getBreakdown,
  listBreakdowns,
  startBreakdown,
  weigh,
} from '../src/app/breakdowns.ts';
import { getDelivery, listDeliveries, supplierTrend, takeDelivery } from '../src/app/deliveries.ts';
import { getLot, listShelf, moveLot } from '../src/app/shelf.ts';
import { listSpecifications } from '../src/app/specifications.ts';
import { carcassBars, yields } from '../src/app/yields.ts';
import type { TreeNode, WeighingInput } from '../src/contract/breakdown.ts';
import { animalByAnimal, standingWeights } from '../src/contract/breakdown-balance.ts';
import { lawful, startingNodes } from '../src/contract/tree-edit.ts';
import { openInMemory } from '../src/store/embedded.ts';
import { openPostgresql } from '../src/store/postgresql.ts';
import type { Store } from '../src/store/store.ts';
import * as t from '../src/store/tables.ts';
import { delivery, deliveryLine } from '../test/database/animals.ts';
import { startCluster } from '../test/database/cluster.ts';
import { appOn, openKitchen } from '../test/database/kitchen.ts';

const wanted = process.argv[2];
const repeats = Number(process.argv[3] ?? 7);
const weeks = 260;
const lotsInAll = 50_000;
const onTheShelf = 1_900;

let state = 11;
/** Even numbers from 0 to 1, from a seed. */
const even = () => {
  state = (state * 48_271) % 2_147_483_647;
  return state / 2_147_483_647;
};

const animals = [
  { species: 'goose', animals: 6, grams: 4_200, oneByOne: true },
  { species: 'pig', animals: 1, grams: 78_000, oneByOne: false },
  { species: 'lamb', animals: 2, grams: 19_000, oneByOne: false },
  { species: 'rabbit', animals: 8, grams: 1_300, oneByOne: false },
] as const;

const line = (node: string, animal: number | null, grossGrams: number): WeighingInput => ({
  id: uuid(),
  node,
  animal,
  grossGrams,
  tareGrams: 0,
  pieces: null,
  corrects: null,
  takenBack: false,
  at: '2026-11-20T10:00:00.000Z',
});

/** Shares that sum to 0.98 of the whole, one for each leaf. */
function sharesOf(nodes: readonly TreeNode[]): Map<string, number> {
  const leaves = nodes.filter((n) => n.becomes !== 'step');
  const raw = leaves.map((_, i) => 1 / (1 + i));
  const sum = raw.reduce((a, b) => a + b, 0);
  return new Map(leaves.map((n, i) => [n.id, (0.98 * raw[i]!) / sum]));
}

function weighings(
  nodes: readonly TreeNode[],
  count: number,
  grams: number,
  oneByOne: boolean,
): WeighingInput[] {
  const root = nodes.find((n) => n.parent === null)!;
  const shares = sharesOf(nodes);
  const of = (animal: number | null, whole: number) => [
    line(root.id, animal, whole),
    ...[...shares].map(([id, share]) => line(id, animal, Math.floor(whole * share * (0.9 + 0.1 * even())))),
  ];
  if (!oneByOne) return of(null, Math.round(grams * count * (0.95 + 0.1 * even())));
  return Array.from({ length: count }, (_, i) => of(i + 1, Math.round(grams * (0.9 + 0.2 * even())))).flat();
}

async function inChunks<T>(rows: readonly T[], write: (some: T[]) => Promise<unknown>): Promise<void> {
  for (let i = 0; i < rows.length; i += 500) await write(rows.slice(i, i + 500));
}

async function fiveYears(store: Store) {
  const k = await openKitchen(appOn(store, '2026-11-25T08:00:00.000Z'));
  const { db } = store;
  const kitchenId = k.kitchen.id;
  const personId = k.person.id;
  const supplier = await addSupplier(k.app, k.actor, { name: 'Low Marsh (invented)', note: '' });
  const lots: (typeof t.lot.$inferInsert)[] = [];
  const parents: (typeof t.lotParent.$inferInsert)[] = [];
  const moves: (typeof t.lotMove.$inferInsert)[] = [];
  const breakdowns: (typeof t.breakdown.$inferInsert)[] = [];
  const taken: (typeof t.breakdownLot.$inferInsert)[] = [];
  const scales: (typeof t.weighing.$inferInsert)[] = [];
  const deliveries: (typeof t.delivery.$inferInsert)[] = [];
  const began = Date.parse('2021-12-01T09:00:00.000Z');
  const day = (at: Date, more: number) =>
    new Date(at.getTime() + more * 86_400_000).toISOString().slice(0, 10);
  const lotBase = {
    kitchenId,
    supplierId: supplier.id,
    partId: null,
    arrivalC: 3,
    note: '',
    ageMonthsAtMost: 8,
    tradeLot: null,
    slaughteredOn: null,
    deliveryId: null,
    frozenAt: null,
    thawedAt: null,
    byProductAt: null,
    count: null,
  };
  let code = 0;
  const nodesOf = new Map(
    animals.map((a) => [a.species, lawful(startingNodes(a.species), a.species, 'GB-ENG')]),
  );
  const partIds = new Map<string, string>();
  const partRows: (typeof t.part.$inferInsert)[] = [];
  for (const { species } of animals)
    for (const n of nodesOf.get(species)!)
      if (n.becomes === 'part') {
        const id = uuid();
        partIds.set(`${species} ${n.name}`, id);
        partRows.push({
          id,
          kitchenId,
          species,
          name: n.name,
          sharePct: null,
          use: n.use,
          createdAt: new Date(began),
          class: n.class,
          lifeDays: 4,
          valuePerKg: Math.round(100 + 2_000 * even()),
          costShare: null,
          trimPct: null,
          cookingLossPct: null,
          labourMinPerKg: null,
          tableId: null,
        });
      }
  await inChunks(partRows, (some) => db.insert(t.part).values(some));
  for (let week = 0; week < weeks; week++)
    for (const animal of animals) {
      const at = new Date(began + week * 7 * 86_400_000);
      const nodes = nodesOf.get(animal.species)!;
      const lines = weighings(nodes, animal.animals, animal.grams, animal.oneByOne);
      const grams = lines.filter((l) => l.node === nodes[0]!.id).reduce((sum, l) => sum + l.grossGrams, 0);
      const deliveryId = uuid();
      const wholeId = uuid();
      deliveries.push({
        id: deliveryId,
        kitchenId,
        supplierId: supplier.id,
        specificationVersionId: null,
        arrivedAt: at,
        documents: '',
        lines: [],
        checks: [],
        decision: 'accepted',
        reason: '',
        pointsMet: 0,
        pointsAsked: 0,
        warmestC: 3,
        grams,
        cost: 20_000,
        personId,
        recordedAt: at,
      });
      const whole = {
        ...lotBase,
        id: wholeId,
        code: `W-${++code}`,
        what: `${animal.species}, whole`,
        grams,
        leftGrams: 0,
        arrivedAt: at,
        createdAt: at,
        kind: 'whole',
        species: animal.species,
        useBy: day(at, 8),
        cost: 20_000,
        deliveryId,
      };
      lots.push(whole);
      const id = uuid();
      const { outcome } = outcomeOf({
        nodes,
        inGrams: grams,
        weights: standingWeights(lines),
        byAnimal: animalByAnimal(nodes, animal.animals, lines),
        paid: 20_000,
        costBy: 'weight',
        money: [],
      });
      for (const n of outcome.nodes) {
        if (n.becomes !== 'part' || n.grams <= 0) continue;
        n.lotId = uuid();
        lots.push({
          ...lotBase,
          id: n.lotId,
          partId: partIds.get(`${animal.species} ${n.name}`) ?? null,
          code: `P-${++code}`,
          what: `${animal.species}, ${n.name}`,
          grams: n.grams,
          leftGrams: week >= weeks - 20 ? n.grams : 0,
          arrivedAt: at,
          createdAt: at,
          kind: 'part',
          species: animal.species,
          useBy: day(at, 4),
          cost: n.cost,
        });
        parents.push({ kitchenId, lotId: n.lotId, parentId: wholeId, breakdownId: id });
      }
      breakdowns.push({
        id,
        kitchenId,
        species: animal.species,
        supplierId: supplier.id,
        origin: 'here',
        animals: animal.animals,
        nodes,
        status: 'finished',
        startedAt: at,
        startedBy: personId,
        cutterId: personId,
        finishedAt: at,
        finishedBy: personId,
        note: '',
        outcome,
      });
      taken.push({ kitchenId, breakdownId: id, lotId: wholeId, grams });
      scales.push(...lines.map((l) => ({ ...l, kitchenId, breakdownId: id, at, personId, recordedAt: at })));
      moves.push({
        id: uuid(),
        kitchenId,
        lotId: wholeId,
        what: 'broken down',
        grams,
        leftGrams: 0,
        useBy: null,
        batchId: null,
        breakdownId: id,
        reason: '',
        at,
        personId,
        recordedAt: at,
      });
    }
  const shelved = lots.filter((l) => l.leftGrams > 0).length;
  for (let i = lots.length, left = Math.max(0, onTheShelf - shelved); i < lotsInAll; i++, left--) {
    const at = new Date(began + even() * weeks * 7 * 86_400_000);
    lots.push({
      ...lotBase,
      id: uuid(),
      code: `X-${++code}`,
      what: 'cream',
      grams: 5_000,
      leftGrams: left > 0 ? 5_000 : 0,
      arrivedAt: at,
      createdAt: at,
      kind: 'other',
      species: null,
      useBy: day(at, 20),
      cost: 900,
    });
  }
  await inChunks(deliveries, (some) => db.insert(t.delivery).values(some));
  await inChunks(lots, (some) => db.insert(t.lot).values(some));
  // A breakdown takes weighings while it is open.
  await inChunks(
    breakdowns.map((b) => ({ ...b, status: 'open', finishedAt: null, finishedBy: null, outcome: null })),
    (some) => db.insert(t.breakdown).values(some),
  );
  await inChunks(taken, (some) => db.insert(t.breakdownLot).values(some));
  await inChunks(parents, (some) => db.insert(t.lotParent).values(some));
  await inChunks(moves, (some) => db.insert(t.lotMove).values(some));
  await inChunks(scales, (some) => db.insert(t.weighing).values(some));
  for (const { id, status, finishedAt, finishedBy, outcome } of breakdowns)
    await db
      .update(t.breakdown)
      .set({ status, finishedAt, finishedBy, outcome })
      .where(eq(t.breakdown.id, id as string));
  const last = breakdowns.at(-4)!;
  return {
    k,
    supplier,
    goose: nodesOf.get('goose')!,
    partLot: parents.at(-1)!.lotId,
    wholeLot: parents.at(-1)!.parentId,
    breakdownId: last.id,
    deliveryId: deliveries.at(-1)!.id,
    partId: partRows[0]!.id,
    counts: `${lots.length} lots (${Math.max(shelved, onTheShelf)} with something left), ${breakdowns.length} breakdowns, ${scales.length} weighings, ${deliveries.length} deliveries`,
  };
}

async function run(kind: string, store: Store): Promise<void> {
  const made = await fiveYears(store);
  const { k, supplier, goose } = made;
  const id = k.kitchen.id;
  const supplierId = supplier.id;
  const deliver = async () => {
    const taken = await takeDelivery(
      k.app,
      k.actor,
      delivery(supplierId, null, [deliveryLine({ useBy: '2026-12-20' })]),
    );
    return taken.lotIds[0]!;
  };
  const begin = async () =>
    startBreakdown(k.app, k.actor, {
      id: uuid(),
      species: 'goose',
      animals: 6,
      nodes: goose,
      lots: [{ lotId: await deliver(), grams: 25_200 }],
      cutterId: null,
    });
  const lines = weighings(goose, 6, 4_200, false);
  const weighed = async () => {
    const b = await begin();
    await weigh(k.app, k.actor, b.id, { weighings: lines.map((l) => ({ ...l, id: uuid() })) });
    return b;
  };
  const open = await weighed();
  /** The days brought in: each its own, because the same row is not taken twice. */
  let past = Date.UTC(2020, 0, 1);
  /** Each with what has to be there first, which is not timed. */
  const verbs: [string, () => Promise<() => Promise<unknown>>][] = [
    ['suppliers', async () => () => listSuppliers(k.app, id)],
    ['parts', async () => () => listParts(k.app, id)],
    ['lots', async () => () => listLots(k.app, id)],
    ['specifications', async () => () => listSpecifications(k.app, id)],
    ['deliveries', async () => () => listDeliveries(k.app, id)],
    ['delivery', async () => () => getDelivery(k.app, id, made.deliveryId)],
    ['supplierTrend', async () => () => supplierTrend(k.app, id, supplierId)],
    ['shelf', async () => () => listShelf(k.app, id)],
    ['lot (a part)', async () => () => getLot(k.app, id, made.partLot)],
    ['lot (a whole animal)', async () => () => getLot(k.app, id, made.wholeLot)],
    ['trees', async () => () => listTrees(k.app, id)],
    ['breakdowns', async () => () => listBreakdowns(k.app, id)],
    ['breakdown (geese one by one)', async () => () => getBreakdown(k.app, id, made.breakdownId)],
    ['breakdownCosts', async () => () => breakdownCosts(k.app, id, open.id)],
    [
      'yields (1,560 geese one by one)',
      async () => () => yields(k.app, id, { species: 'goose', part: 'breast' }),
    ],
    [
      'yields (the same, published figures counted)',
      async () => () => yields(k.app, id, { species: 'goose', publishedAnimals: 5 }),
    ],
    ['yields (260 pigs)', async () => () => yields(k.app, id, { species: 'pig' })],
    [
      'yields (geese of a quarter)',
      async () => () => yields(k.app, id, { species: 'goose', from: '2026-08-20' }),
    ],
    ['carcassBars', async () => () => carcassBars(k.app, id)],
    ['authorityRequests', async () => () => listAuthorityRequests(k.app, id)],
    ['takeDelivery', async () => deliver],
    [
      'changePart',
      async () => () => changePart(k.app, k.actor, made.partId, { valuePerKg: Math.round(1_000 * even()) }),
    ],
    [
      'moveLot (drawn)',
      async () => () =>
        moveLot(k.app, k.actor, made.partLot, {
          id: uuid(),
          what: 'weighed again',
          grams: 10,
          useBy: null,
          reason: 'counted',
          at: '2026-11-25T08:00:00.000Z',
        }),
    ],
    ['addTree', async () => () => addTree(k.app, k.actor, { species: 'goose', name: 'Ours', nodes: goose })],
    [
      'startBreakdown',
      async () => {
        const lotId = await deliver();
        return () =>
          startBreakdown(k.app, k.actor, {
            id: uuid(),
            species: 'goose',
            animals: 6,
            nodes: goose,
            lots: [{ lotId, grams: 25_200 }],
            cutterId: null,
          });
      },
    ],
    [
      'weigh (one)',
      async () => {
        const b = await begin();
        return () => weigh(k.app, k.actor, b.id, { weighings: [line('breast', null, 1_000)] });
      },
    ],
    [
      'finishBreakdown',
      async () => {
        const b = await weighed();
        return () => finishBreakdown(k.app, k.actor, b.id, { as: 'finished', costBy: 'weight', note: '' });
      },
    ],
    [
      'importBreakdowns (50 rows)',
      async () => {
        const rows = Array.from({ length: 50 }, () => {
          past += 86_400_000;
          return {
            at: new Date(past).toISOString(),
            animals: 1,
            inGrams: 3_000,
            parts: [{ name: 'saddle', grams: 900, becomes: 'part' as const }],
          };
        });
        return () => importBreakdowns(k.app, k.actor, { species: 'hare', supplierId: null, note: '', rows });
      },
    ],
  ];
  await askAuthority(k.app, k.actor, {
    dishId: null,
    species: 'goose',
    part: 'head',
    content: {
      versionNumber: null,
      supplier: supplier.name,
      specification: '',
      process: [],
      predicted: [],
      measured: [],
      laboratory: '',
      question: 'May the heads be served?',
    },
  });
  console.log(`Animals, ${kind}: ${made.counts}; load ${loadavg()[0]?.toFixed(1)}`);
  for (const [name, ready] of verbs) {
    const times: number[] = [];
    let bytes = 0;
    for (let i = 0; i < repeats; i++) {
      const verb = await ready();
      const at = performance.now();
      bytes = JSON.stringify(await verb())?.length ?? 0;
      times.push(performance.now() - at);
    }
    times.sort((a, b) => a - b);
    const median = times[times.length >> 1] ?? 0;
    console.log(
      `  ${name.padEnd(46)} ${median.toFixed(0).padStart(5)} ms, slowest ${(times.at(-1) ?? 0).toFixed(0).padStart(5)} ms, ${(bytes / 1000).toFixed(0).padStart(6)} kB${median > 200 ? '   over 200 ms' : ''}`,
    );
  }
}

console.log(
  `${cpus()[0]?.model}, ${cpus().length} cores, Node ${process.versions.node}; medians of ${repeats}`,
);
if (wanted !== 'postgresql') {
  const store = await openInMemory();
  await run('embedded', store);
  await store.close();
}
if (wanted !== 'embedded') {
  const cluster = await startCluster();
  const store = await openPostgresql(await cluster.createDatabase());
  await run('PostgreSQL', store);
  await store.close();
  cluster.stop();
}
