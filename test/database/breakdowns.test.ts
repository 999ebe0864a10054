import { sql } from 'drizzle-orm';
import { v7 as uuid } from 'uuid';
import { beforeAll, expect, it } from 'vitest';
import { addPart, listParts } from '../../src/app/animals.ts';
import { answerAuthority, askAuthority } from '../../src/app/authority.ts';
import { startBatch } from '../../src/app/batches.ts';
import { finishBreakdown } from '../../src/app/breakdown-finish.ts';
import { addTree, importBreakdowns, listTrees } from '../../src/app/breakdown-trees.ts';
import { getBreakdown, listBreakdowns, startBreakdown, weigh } from '../../src/app/breakdowns.ts';
import { addDish } from '../../src/app/dishes.ts';
import { checkJournal } from '../../src/app/proof.ts';
import { getLot, listShelf, moveLot } from '../../src/app/shelf.ts';
import { signVersion } from '../../src/app/sign.ts';
import type { Breakdown } from '../../src/contract/breakdown.ts';
import type { LotMoveInput } from '../../src/contract/shelf.ts';
import { cutUp, geeseInTheHouse, gooseTree } from './animals.ts';
import { appOn, goodMethod, openKitchen, signedDish, type TestKitchen } from './kitchen.ts';
import { eachStore } from './stores.ts';

const refused = (code: string, path?: RegExp) =>
  expect.objectContaining({
    name: 'AppError',
    code,
    ...(path === undefined
      ? {}
      : {
          problems: expect.arrayContaining([expect.objectContaining({ path: expect.stringMatching(path) })]),
        }),
  });

eachStore('a breakdown and the shelf', (making) => {
  let k: TestKitchen;
  beforeAll(async () => {
    k = await openKitchen(appOn(await making.fresh()));
    for (const [name, valuePerKg, lifeDays] of [
      ['breast', 2_400, 4],
      ['legs', 1_100, 5],
      ['neck skin', 300, 3],
      ['fat', 200, null],
    ] as const)
      await addPart(k.app, k.actor, {
        species: 'goose',
        name,
        sharePct: null,
        use: 'menu',
        class: 'poultry',
        valuePerKg,
        lifeDays,
      });
  });
  const weighing = (node: string, grossGrams: number, more: object = {}) => ({
    id: uuid(),
    node,
    animal: null,
    grossGrams,
    tareGrams: 0,
    pieces: null,
    corrects: null,
    takenBack: false,
    at: '2026-11-20T10:00:00.000Z',
    ...more,
  });
  const put = (b: Breakdown, ...weighings: ReturnType<typeof weighing>[]) =>
    weigh(k.app, k.actor, b.id, { weighings });
  const finish = (b: Breakdown, costBy: 'weight' | 'value' | 'shares' = 'value') =>
    finishBreakdown(k.app, k.actor, b.id, { as: 'finished', costBy, note: '' });
  const move = (lotId: string, what: LotMoveInput['what'], more: Partial<LotMoveInput> = {}) =>
    moveLot(k.app, k.actor, lotId, {
      id: uuid(),
      what,
      grams: null,
      useBy: null,
      reason: '',
      at: '2026-11-20T12:00:00.000Z',
      ...more,
    });

  it('closes to the gram and to the penny, and its parts are lots with their trace', async () => {
    const { lotId } = await geeseInTheHouse(k);
    const begun = await cutUp(k, lotId);
    expect(begun.blocking.join(' ')).toMatch(/breast is not weighed/);
    await expect(finish(begun)).rejects.toEqual(refused('blocked'));
    await put(
      begun,
      weighing('breast', 6_200, { tareGrams: 800 }),
      weighing('legs', 3_800, { pieces: 12 }),
      weighing('neck', 1_290),
      weighing('neck skin', 500),
      weighing('neck bone', 780),
      weighing('feet', 750),
    );
    const whole = await put(begun, weighing('fat', 1_234.5));
    const { standing } = whole;
    expect(whole.blocking).toEqual([]);
    // In = out + unaccounted, to the gram, at every place that was cut.
    expect(standing.outGrams + standing.unaccountedGrams).toBeCloseTo(standing.inGrams, 6);
    expect(standing.nodes.find((n) => n.node === 'neck')).toMatchObject({
      grams: 1_290,
      unaccountedGrams: 10,
    });
    const done = await finish(begun);
    expect(done.status).toBe('finished');
    const leaves = done.standing.nodes.filter(
      (n) => gooseTree.find((g) => g.id === n.node)?.becomes !== 'step',
    );
    expect(leaves.reduce((sum, n) => sum + (n.cost ?? 0), 0)).toBe(25_200);
    expect(done.standing.nodes.find((n) => n.node === 'fat')?.cost).toBe(Math.round((1_234.5 / 1000) * 200));
    const made = done.standing.nodes.filter((n) => n.lotId !== null);
    expect(made.map((n) => n.node)).toEqual(['breast', 'legs', 'neck skin']);
    const legs = await getLot(k.app, k.kitchen.id, made[1]!.lotId!);
    expect(legs).toMatchObject({
      leftGrams: 3_800,
      count: 12,
      species: 'goose',
      useBy: '2026-11-25',
      partName: 'legs',
    });
    expect(legs.ancestors.map((a) => a.id)).toEqual([lotId]);
    const parent = await getLot(k.app, k.kitchen.id, lotId);
    expect(parent).toMatchObject({ leftGrams: 0 });
    expect(parent.descendants).toHaveLength(3);
    expect(parent.moves.map((m) => m.what)).toEqual(['broken down']);
    await expect(put(begun, weighing('legs', 1))).rejects.toEqual(refused('frozen'));
  });

  it('refuses parts that are heavier than what they came from, and keeps nothing of it', async () => {
    const { lotId } = await geeseInTheHouse(k);
    const begun = await cutUp(k, lotId);
    await put(begun, weighing('breast', 6_000));
    await expect(put(begun, weighing('neck', 1_000), weighing('neck skin', 1_200))).rejects.toEqual(
      refused('invalid', /neck/),
    );
    await expect(put(begun, weighing('legs', 30_000))).rejects.toEqual(refused('invalid'));
    const after = await getBreakdown(k.app, k.kitchen.id, begun.id);
    expect(after.weighings).toHaveLength(1);
    await expect(put(begun, weighing('legs', 100, { tareGrams: 200 }))).rejects.toEqual(
      refused('invalid', /tare/),
    );
    await expect(put(begun, weighing('wings', 100))).rejects.toEqual(refused('invalid', /node/));
  });

  it('corrects by a new line, takes back by a new line, and counts each weighing once', async () => {
    const { lotId } = await geeseInTheHouse(k);
    const begun = await cutUp(k, lotId);
    const wrong = weighing('breast', 9_000);
    await put(begun, wrong, wrong);
    const right = await put(
      begun,
      weighing('breast', 6_100, { corrects: wrong.id }),
      weighing('breast', 200),
    );
    expect(right.standing.nodes.find((n) => n.node === 'breast')?.grams).toBe(6_300);
    const back = await put(
      begun,
      weighing('breast', 0, { corrects: right.weighings.at(-1)!.id, takenBack: true }),
    );
    expect(back.standing.nodes.find((n) => n.node === 'breast')?.grams).toBe(6_100);
    expect(back.weighings).toHaveLength(4);
    const given = await finishBreakdown(k.app, k.actor, begun.id, {
      as: 'given up',
      costBy: 'weight',
      note: 'Wrong lot.',
    });
    expect(given.status).toBe('given up');
    expect((await getLot(k.app, k.kitchen.id, lotId)).leftGrams).toBe(27_000);
  });

  it('carries what a lot cost to the last penny over several breakdowns', async () => {
    const { lotId } = await geeseInTheHouse(k, { cost: 10_001 });
    let paid = 0;
    for (const grams of [7_000, 9_001, 10_999]) {
      const b = await cutUp(k, lotId, grams, 2);
      await put(b, ...['breast', 'legs', 'neck skin', 'fat'].map((n) => weighing(n, 1_000)));
      const done = await finish(b, 'weight');
      paid += done.standing.paid ?? 0;
    }
    expect(paid).toBe(10_001);
    await expect(cutUp(k, lotId, 1, 1)).rejects.toEqual(refused('blocked'));
  });

  it('does not promise one lot to two breakdowns', async () => {
    const { lotId } = await geeseInTheHouse(k);
    await cutUp(k, lotId, 20_000, 4);
    await expect(cutUp(k, lotId, 8_000, 2)).rejects.toEqual(refused('invalid', /lots\[0\]\.grams/));
  });

  it('never offers as a part what the law prohibits', async () => {
    const { lotId } = await geeseInTheHouse(k);
    const start = (...more: typeof gooseTree) =>
      startBreakdown(k.app, k.actor, {
        id: uuid(),
        species: 'goose',
        animals: 1,
        nodes: [...gooseTree, ...more],
        lots: [{ lotId, grams: 10 }],
        cutterId: null,
      });
    const feathers = { ...gooseTree[1]!, id: 'feathers', name: 'feathers' };
    await expect(start(feathers)).rejects.toEqual(refused('invalid', /nodes\[8\]\.becomes/));
    await expect(start({ ...feathers, name: 'odd', parent: 'nowhere' })).rejects.toEqual(
      refused('invalid', /parent/),
    );
    await expect(start({ ...gooseTree[0]!, id: 'again' })).rejects.toEqual(refused('invalid', /nodes/));
    expect((await start({ ...feathers, becomes: 'by-product' })).status).toBe('open');
  });

  it('keeps trees, and past breakdowns for the yields alone', async () => {
    const tree = { species: 'goose', name: 'ours', nodes: gooseTree };
    await addTree(k.app, k.actor, tree);
    await addTree(k.app, k.actor, tree);
    expect(await listTrees(k.app, k.kitchen.id)).toHaveLength(1);
    const before = (await listShelf(k.app, k.kitchen.id)).length;
    const rows = [
      {
        at: '2026-01-10T10:00:00.000Z',
        animals: 6,
        inGrams: 24_000,
        parts: [{ name: 'breast', grams: 5_000, becomes: 'part' as const }],
      },
    ];
    await importBreakdowns(k.app, k.actor, {
      species: 'goose',
      supplierId: null,
      note: 'the old book',
      rows,
    });
    const heavy = [{ ...rows[0]!, parts: [{ ...rows[0]!.parts[0]!, grams: 25_000 }] }];
    await expect(
      importBreakdowns(k.app, k.actor, {
        species: 'goose',
        supplierId: null,
        note: '',
        rows: [...rows, ...heavy],
      }),
    ).rejects.toEqual(refused('invalid', /rows\[1\]/));
    const imported = (await listBreakdowns(k.app, k.kitchen.id)).filter((b) => b.origin === 'imported');
    expect(imported).toHaveLength(1);
    expect(imported[0]).toMatchObject({ inGrams: 24_000, animals: 6 });
    expect(await listShelf(k.app, k.kitchen.id)).toHaveLength(before);
  });

  it('draws nothing past its day, frozen, or more than there is; freezes once', async () => {
    const { lotId } = await geeseInTheHouse(k);
    await expect(move(lotId, 'drawn', { grams: 27_001 })).rejects.toEqual(refused('invalid', /grams/));
    expect(await move(lotId, 'drawn', { grams: 2_000 })).toMatchObject({ leftGrams: 25_000, blocked: null });
    await expect(move(lotId, 'frozen')).rejects.toEqual(refused('invalid', /useBy/));
    expect((await move(lotId, 'frozen', { useBy: '2027-02-01' })).blocked).toMatch(/frozen/);
    await expect(move(lotId, 'drawn', { grams: 1 })).rejects.toEqual(refused('blocked'));
    await expect(move(lotId, 'thawed', { useBy: '2027-03-01' })).rejects.toEqual(refused('invalid', /useBy/));
    await move(lotId, 'thawed', { useBy: '2026-11-22' });
    await expect(move(lotId, 'frozen', { useBy: '2027-02-01' })).rejects.toEqual(refused('blocked'));
    await expect(move(lotId, 'use-by shortened', { useBy: '2026-11-23' })).rejects.toEqual(
      refused('invalid', /useBy/),
    );
    const past = await move(lotId, 'use-by shortened', { useBy: '2026-11-19' });
    expect(past.standing).toBe('past');
    await expect(move(lotId, 'drawn', { grams: 1 })).rejects.toEqual(refused('blocked'));
    await expect(cutUp(k, lotId, 100, 1)).rejects.toEqual(refused('blocked'));
    const { version } = await signedDish(k);
    const batch = () =>
      startBatch(k.app, k.actor, { id: uuid(), versionId: version.id, pieces: 1, lotIds: [lotId] });
    await expect(batch()).rejects.toEqual(refused('blocked', /lotIds\[0\]/));
    await expect(move(lotId, 'thrown away', { grams: 25_000 })).rejects.toEqual(refused('invalid', /reason/));
    expect((await move(lotId, 'thrown away', { grams: 25_000, reason: 'Past its day.' })).leftGrams).toBe(0);
  });

  it('never lets a by-product come back, nor what was cut of it', async () => {
    const { lotId } = await geeseInTheHouse(k);
    const b = await cutUp(k, lotId, 10_000, 2);
    await put(b, ...['breast', 'legs', 'neck skin', 'fat'].map((n) => weighing(n, 1_000)));
    const done = await finish(b, 'weight');
    const child = done.standing.nodes.find((n) => n.node === 'legs')!.lotId!;
    await move(lotId, 'made a by-product', { reason: 'Left in the by-product bin overnight.' });
    for (const id of [lotId, child]) {
      const lot = await getLot(k.app, k.kitchen.id, id);
      expect(lot.blocked).toMatch(/by-product/);
      await expect(move(id, 'drawn', { grams: 1 })).rejects.toEqual(refused('blocked'));
      await expect(move(id, 'frozen', { useBy: '2027-01-01' })).rejects.toEqual(refused('blocked'));
      await expect(cutUp(k, id, 1, 1)).rejects.toEqual(refused('blocked'));
      await expect(
        k.app.store.db.execute(sql`UPDATE lot SET by_product_at = NULL WHERE id = ${id}`),
      ).rejects.toThrow();
    }
    const shelf = await listShelf(k.app, k.kitchen.id);
    // What is food no more is still in the house: last, and with why.
    const food = shelf.filter((l) => !l.byProduct);
    expect(shelf.slice(food.length).map((l) => l.id)).toContain(lotId);
    for (const lot of shelf.slice(food.length)) expect(lot.blocked).toMatch(/by-product/);
    // What runs out first stands first.
    const days = food.flatMap((l) => (l.useBy === null ? [] : [l.useBy]));
    expect(days).toEqual([...days].sort());
  });

  it('stops poultry heads until the authority has answered, and not longer than it said', async () => {
    const dish = await addDish(k.app, k.actor, {
      name: 'Heads',
      species: 'goose',
      part: 'head',
      story: '',
      method: goodMethod(),
    });
    const sign = () => signVersion(k.app, k.actor, dish.current.id, 0);
    await expect(sign()).rejects.toThrow(/1069\/2009/);
    const asked = await askAuthority(k.app, k.actor, {
      dishId: dish.id,
      species: 'goose',
      part: 'head',
      content: {
        versionNumber: 1,
        supplier: 'a farm (invented)',
        specification: '',
        process: ['steamed 50 min'],
        predicted: [],
        measured: [],
        laboratory: '',
        question: 'May they be served?',
      },
    });
    expect(asked).toMatchObject({ lifts: false, content: { law: { status: 'by-product by default: ask' } } });
    const say = (answer: 'refused' | 'agreed' | 'agreed on conditions', until: string | null) =>
      answerAuthority(k.app, k.actor, asked.id, {
        id: uuid(),
        answer,
        authority: 'a council (invented)',
        saidBy: 'an officer (invented)',
        reference: 'R/1',
        conditions: '',
        dated: '2026-11-19',
        until,
      });
    expect((await say('refused', null)).lifts).toBe(false);
    expect((await say('agreed', '2026-11-19')).lifts).toBe(false);
    await expect(sign()).rejects.toEqual(refused('unlawful'));
    expect((await say('agreed on conditions', '2027-11-19')).lifts).toBe(true);
    expect((await sign()).status).toBe('signed');
  });

  it('says not known, never fine, of a part that is in no row', async () => {
    const dish = await addDish(k.app, k.actor, {
      name: 'Odd',
      species: 'goose',
      part: 'pygostyle gland',
      story: '',
      method: goodMethod(),
    });
    expect(dish.law.status).toBe('not known: ask');
    await expect(signVersion(k.app, k.actor, dish.current.id, 0)).rejects.toEqual(refused('unlawful'));
  });

  it('stands in the journal, and the parts it made stand in the list', async () => {
    expect(await checkJournal(k.app, k.kitchen.id)).toMatchObject({ holds: true });
    expect((await listParts(k.app, k.kitchen.id)).map((p) => p.name)).toContain('legs');
  });
});
