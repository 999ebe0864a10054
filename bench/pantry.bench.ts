/**
 * A price that changes shows everywhere: 2,000 dishes of 40 lines, half of them made of others to a depth of four, 300
 * ingredients with a history of prices, on both stores. Times are of the verbs and their JSON, at the server. All data invented.
 *
 *     npx tsx bench/pantry.bench.ts [embedded|postgresql] [repeats]
 */
import { cpus, loadavg } from 'node:os';
import { v7 as uuid } from 'uuid';
import { dishNumbers } from '../src/app/dish-numbers.ts';
import { saveVersion } from '../src/app/dishes.ts';
import { priceIngredient, stateOf } from '../src/app/ingredients.ts';
import { pantry } from '../src/app/pantry.ts';
import type { Method, MixLine } from '../src/contract/steps.ts';
import { ingredients as table } from '../src/core/properties/ingredients/table.ts';
import { openInMemory } from '../src/store/embedded.ts';
import { openPostgresql } from '../src/store/postgresql.ts';
import type { Store } from '../src/store/store.ts';
import * as t from '../src/store/tables.ts';
import { startCluster } from '../test/database/cluster.ts';
import { appOn, openKitchen } from '../test/database/kitchen.ts';

const wanted = process.argv[2];
const repeats = Number(process.argv[3] ?? 5);
const dishCount = 2_000;
const linesEach = 40;

/** Even numbers from 0 to 1, the same at every run. */
let state = 7;
const even = () => {
  state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
  return state / 2_147_483_648;
};

async function inChunks<R>(rows: readonly R[], write: (some: R[]) => Promise<unknown>, size = 200) {
  for (let i = 0; i < rows.length; i += size) await write(rows.slice(i, i + size) as R[]);
}

const methodOf = (lines: MixLine[]): Method => [
  { kind: 'mix', id: uuid(), name: 'Mix', how: '', handsMin: 20, asks: [], lines, maxC: 12 },
  {
    kind: 'plate',
    id: uuid(),
    name: 'Plate',
    how: '',
    handsMin: 1,
    asks: [],
    portionG: 120,
    portionsPerPiece: 1,
  },
];

async function fill(store: Store) {
  const k = await openKitchen(appOn(store));
  const { db } = store;
  const kitchenId = k.kitchen.id;
  const personId = k.person.id;
  const at = new Date('2026-01-01T09:00:00.000Z');
  const rows = table.slice(0, 300).map((row) => ({
    id: uuid(),
    kitchenId,
    name: row.name,
    source: '',
    createdAt: at,
    labelName: null,
    tableId: row.id,
    nutrients: {},
    allergens: null,
    trimPct: 5,
    densityKgM3: null,
    pieceG: null,
    madeOf: null,
    note: '',
    rev: 0,
    putAwayAt: null,
  }));
  await inChunks(rows, (some) => db.insert(t.ingredient).values(some));
  await inChunks(rows, (some) =>
    db.insert(t.ingredientChange).values(
      some.map((row) => ({
        id: uuid(),
        kitchenId,
        ingredientId: row.id,
        rev: 0,
        became: stateOf(row),
        reason: '',
        personId,
        recordedAt: at,
      })),
    ),
  );
  const prices = rows.flatMap((row) =>
    Array.from({ length: 10 }, (_, i) => ({
      id: uuid(),
      kitchenId,
      ingredientId: row.id,
      packG: 1_000,
      price: 100 + Math.round(900 * even()),
      supplierId: null,
      fromDay: `2026-0${1 + (i % 9)}-0${1 + (i % 9)}`,
      note: '',
      personId,
      recordedAt: at,
    })),
  );
  await inChunks(prices, (some) => db.insert(t.ingredientPrice).values(some));
  const ids = Array.from({ length: dishCount }, () => uuid());
  const methods = ids.map((_, n) => {
    // Level 0 is made of ingredients alone; each of the later levels takes two dishes of the levels below.
    const level = n < dishCount / 2 ? 0 : 1 + (n % 4);
    return methodOf(
      Array.from({ length: linesEach }, (_, i): MixLine => {
        if (level > 0 && i < 2) {
          const below =
            level === 1 ? Math.floor((even() * dishCount) / 2) : n - 1 - ((n - 1) % 4 === 3 ? 1 : 0);
          const sub = i === 0 ? Math.min(n - 1, Math.max(0, below)) : Math.floor((even() * dishCount) / 2);
          return { ingredient: `Dish ${sub}`, of: { kind: 'dish', id: ids[sub]! }, g: 100 };
        }
        const row = i === 2 ? rows[0]! : rows[Math.floor(even() * rows.length)]!;
        return {
          ingredient: row.name,
          of: { kind: 'ingredient', id: row.id },
          g: 10 + Math.round(490 * even()),
        };
      }),
    );
  });
  await inChunks(
    ids.map((id, n) => ({
      id,
      kitchenId,
      name: `Dish ${n}`,
      species: 'pig',
      part: 'heart',
      story: '',
      stage: 'idea',
      createdAt: at,
      updatedAt: at,
    })),
    (some) => db.insert(t.dish).values(some),
  );
  const versions = ids.map((dishId, n) => ({
    id: uuid(),
    kitchenId,
    dishId,
    number: 1,
    rev: 0,
    status: 'draft',
    reason: 'The first draft.',
    method: methods[n]!,
    createdAt: at,
    createdBy: personId,
    savedAt: at,
    savedBy: personId,
  }));
  await inChunks(versions, (some) => db.insert(t.version).values(some), 50);
  return { k, changed: rows[0]!.id, last: versions.at(-1)! };
}

async function run(kind: string, store: Store): Promise<void> {
  const { k, changed, last } = await fill(store);
  const numbers = async () => {
    const at = performance.now();
    const all = await dishNumbers(k.app, k.kitchen.id);
    const bytes = JSON.stringify(all).length;
    return { ms: performance.now() - at, all, bytes };
  };
  console.log(
    `The pantry, ${kind}: ${dishCount} dishes of ${linesEach} lines; load ${loadavg()[0]?.toFixed(1)}`,
  );
  const middle = (times: number[]) => times.sort((a, b) => a - b)[times.length >> 1] ?? 0;
  const say = (what: string, times: number[], more = '') =>
    console.log(
      `  ${what.padEnd(58)} ${middle([...times])
        .toFixed(0)
        .padStart(5)} ms, slowest ${Math.max(...times)
        .toFixed(0)
        .padStart(5)} ms${more}`,
    );
  const first = await numbers();
  say('dishNumbers, the first after the start', [first.ms], `, ${(first.bytes / 1000).toFixed(0)} kB`);
  const through: number[] = [];
  const price: number[] = [];
  let before = first.all;
  for (let i = 0; i < repeats; i++) {
    const at = performance.now();
    await priceIngredient(k.app, k.actor, changed, { id: uuid(), packG: 1_000, price: 5_000 + 1_000 * i });
    price.push(performance.now() - at);
    const after = await numbers();
    through.push(performance.now() - at);
    const same = after.all.filter((d, n) => d.atLeast === before[n]!.atLeast && d.atLeast > 0);
    if (same.length > 0) throw new Error(`${same.length} dishes do not show the price that changed`);
    before = after.all;
  }
  say('priceIngredient', price);
  say('a price changes and all 2,000 dishes show it', through, `, ${before.length} dishes changed`);
  const whole: number[] = [];
  let bytes = 0;
  for (let i = 0; i < repeats; i++) {
    const at = performance.now();
    bytes = JSON.stringify(await pantry(k.app, k.kitchen.id)).length;
    whole.push(performance.now() - at);
  }
  say('pantry, all of it', whole, `, ${(bytes / 1e6).toFixed(1)} MB`);
  const saves: number[] = [];
  for (let i = 0; i < repeats; i++) {
    const at = performance.now();
    await saveVersion(k.app, k.actor, last.id, { rev: i, method: last.method });
    saves.push(performance.now() - at);
  }
  say('saveVersion of the deepest dish, asked for a circle', saves);
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
