import { v7 as uuid } from 'uuid';
import { beforeAll, expect, it } from 'vitest';
import { closeBatch, getBatch, startBatch } from '../../src/app/batches.ts';
import { takeDelivery } from '../../src/app/deliveries.ts';
import { checkJournal, readJournal } from '../../src/app/proof.ts';
import { getLot, moveLot } from '../../src/app/shelf.ts';
import { addSupplier } from '../../src/app/suppliers.ts';
import type { LotMoveInput } from '../../src/contract/shelf.ts';
import { delivery, deliveryLine } from './animals.ts';
import { appOn, openKitchen, signedDish, type TestKitchen } from './kitchen.ts';
import { eachStore } from './stores.ts';

const refused = (code: string, path?: string) =>
  expect.objectContaining({
    name: 'AppError',
    code,
    ...(path === undefined ? {} : { problems: expect.arrayContaining([expect.objectContaining({ path })]) }),
  });

eachStore('what a batch draws', (making) => {
  let k: TestKitchen;
  let versionId: string;
  beforeAll(async () => {
    k = await openKitchen(appOn(await making.fresh()));
    versionId = (await signedDish(k)).version.id;
  });

  const lotOf = async (more: object = {}) => {
    const supplier = await addSupplier(k.app, k.actor, { name: 'Farm (invented)', note: '' });
    const line = deliveryLine({
      kind: 'part',
      what: 'trotters',
      species: 'pig',
      class: 'red meat',
      grams: 4_000,
      useBy: '2026-11-27',
      ...more,
    });
    return (await takeDelivery(k.app, k.actor, delivery(supplier.id, null, [line]))).lotIds[0]!;
  };
  const left = async (lotId: string) => (await getLot(k.app, k.kitchen.id, lotId)).leftGrams;
  const start = (draws: { lotId: string; grams: number }[], lotIds: string[] = [], id: string = uuid()) =>
    startBatch(k.app, k.actor, { id, versionId, pieces: 6, lotIds, draws });
  const move = (lotId: string, what: LotMoveInput['what'], more: Partial<LotMoveInput> = {}) =>
    moveLot(k.app, k.actor, lotId, {
      id: uuid(),
      what,
      grams: null,
      useBy: null,
      reason: 'Because.',
      at: '2026-11-20T09:00:00.000Z',
      ...more,
    });

  it('leaves its lots as it starts, once however often it is sent, and stands in their trace', async () => {
    const [a, b] = [await lotOf(), await lotOf()];
    const id = uuid();
    const draws = [
      { lotId: a, grams: 4_000 },
      { lotId: b, grams: 310 },
    ];
    const batch = await start(draws, [b], id);
    expect(await start(draws, [b], id)).toEqual(batch);
    expect([await left(a), await left(b)]).toEqual([0, 3_690]);
    expect(batch.draws).toHaveLength(2);
    expect(batch.draws).toEqual(expect.arrayContaining(draws));
    const lot = await getLot(k.app, k.kitchen.id, b);
    expect(lot.batches).toEqual([expect.objectContaining({ id, open: true, grams: 310 })]);
    expect(lot.moves.at(-1)).toMatchObject({ what: 'drawn', grams: 310, batchId: id, leftGrams: 3_690 });
    const [line] = await readJournal(k.app, k.kitchen.id, { limit: 1 });
    expect(line?.summary).toContain('(310 g)');
    await expect(start([{ lotId: b, grams: 311 }], [a], id)).rejects.toEqual(refused('conflict'));
  });

  it('takes nothing at all where one of its lots cannot give', async () => {
    const [good, little, frozen, byProduct] = [
      await lotOf(),
      await lotOf({ grams: 100 }),
      await lotOf({ frozen: true, arrivalC: -19 }),
      await lotOf(),
    ];
    await move(byProduct, 'made a by-product');
    const with_ = (lotId: string) =>
      start([
        { lotId: good, grams: 1_000 },
        { lotId, grams: 101 },
      ]);
    await expect(with_(little)).rejects.toEqual(refused('invalid', 'draws[1].grams'));
    await expect(with_(frozen)).rejects.toEqual(refused('blocked', 'draws[1].lotId'));
    await expect(with_(byProduct)).rejects.toEqual(refused('blocked', 'draws[1].lotId'));
    await expect(with_(good)).rejects.toEqual(refused('invalid', 'draws[1].lotId'));
    await expect(with_(uuid())).rejects.toEqual(refused('invalid', 'draws[1].lotId'));
    const past = await lotOf({ useBy: '2026-11-19' });
    await expect(with_(past)).rejects.toEqual(refused('blocked', 'draws[1].lotId'));
    expect(await left(good)).toBe(4_000);
  });

  it('gives back by a line of its own, never more than it holds, and not once it is closed', async () => {
    const [lot, other] = [await lotOf(), await lotOf()];
    const batch = await start([{ lotId: lot, grams: 1_000 }]);
    const back = (grams: number, batchId: string | null = batch.id, lotId = lot) =>
      move(lotId, 'put back', { grams, batchId });
    await expect(back(1_001)).rejects.toEqual(refused('invalid', 'grams'));
    await expect(back(1, null)).rejects.toEqual(refused('invalid', 'batchId'));
    await expect(back(1, batch.id, other)).rejects.toEqual(refused('conflict', 'batchId'));
    await expect(back(1, uuid())).rejects.toEqual(refused('not_found'));
    await expect(move(lot, 'put back', { grams: 1, batchId: batch.id, reason: '' })).rejects.toEqual(
      refused('invalid', 'reason'),
    );
    await expect(move(lot, 'thrown away', { grams: 1, batchId: batch.id })).rejects.toEqual(
      refused('invalid', 'batchId'),
    );
    expect((await back(400)).leftGrams).toBe(3_400);
    await move(lot, 'drawn', { grams: 50, batchId: batch.id });
    expect((await getBatch(k.app, k.kitchen.id, batch.id)).draws).toEqual([{ lotId: lot, grams: 650 }]);
    expect((await back(650)).batches).toEqual([expect.objectContaining({ id: batch.id, grams: null })]);
    await expect(back(1)).rejects.toEqual(refused('invalid', 'grams'));
    await closeBatch(k.app, k.actor, batch.id, { as: 'discarded', note: 'Dropped.' });
    await expect(move(lot, 'drawn', { grams: 1, batchId: batch.id })).rejects.toEqual(refused('frozen'));
    expect(await checkJournal(k.app, k.kitchen.id)).toMatchObject({ holds: true });
  });
});
