import { v7 as uuid } from 'uuid';
import { beforeAll, expect, it } from 'vitest';
import { listLots } from '../../src/app/animals.ts';
import { listDeliveries, supplierTrend, takeDelivery } from '../../src/app/deliveries.ts';
import { addPhoto, getPhoto } from '../../src/app/photos.ts';
import { checkJournal } from '../../src/app/proof.ts';
import { getLot } from '../../src/app/shelf.ts';
import {
  addSpecification,
  answerSpecification,
  newSpecificationVersion,
  saveSpecification,
  sendSpecification,
} from '../../src/app/specifications.ts';
import { agreedSpecification, content, delivery, deliveryLine } from './animals.ts';
import { appOn, openKitchen, type TestKitchen } from './kitchen.ts';
import { eachStore } from './stores.ts';

const refused = (code: string, path?: string) =>
  expect.objectContaining({
    name: 'AppError',
    code,
    ...(path === undefined ? {} : { problems: expect.arrayContaining([expect.objectContaining({ path })]) }),
  });

eachStore('a specification and its deliveries', (making) => {
  let k: TestKitchen;
  beforeAll(async () => {
    k = await openKitchen(appOn(await making.fresh()));
  });
  const answer = (versionId: string, said: 'agreed' | 'declined') =>
    answerSpecification(k.app, k.actor, versionId, {
      id: uuid(),
      answer: said,
      saidBy: 'the farmer (invented)',
      note: '',
      at: '2026-11-12T09:00:00.000Z',
    });

  it('is a draft until it is sent, frozen then, in force once it is agreed to', async () => {
    const { supplier } = await agreedSpecification(k);
    const begun = await addSpecification(k.app, k.actor, {
      supplierId: supplier.id,
      species: 'pig',
      name: 'Heads',
      content: content({ what: 'head' }),
    });
    const [first] = begun.versions;
    const saved = await saveSpecification(k.app, k.actor, first!.id, {
      rev: 0,
      content: content({ what: 'head, whole' }),
    });
    expect(saved.versions[0]).toMatchObject({ rev: 1, content: { what: 'head, whole' } });
    await expect(
      saveSpecification(k.app, k.actor, first!.id, { rev: 0, content: content() }),
    ).rejects.toEqual(refused('conflict', 'rev'));
    await expect(answer(first!.id, 'agreed')).rejects.toEqual(refused('conflict'));
    expect((await sendSpecification(k.app, k.actor, first!.id, 1)).inForce).toBeNull();
    await expect(
      saveSpecification(k.app, k.actor, first!.id, { rev: 1, content: content() }),
    ).rejects.toEqual(refused('frozen'));
    expect((await answer(first!.id, 'agreed')).inForce).toBe(1);
    const next = await newSpecificationVersion(k.app, k.actor, begun.id, { reason: 'Colder.' });
    const second = next.versions[1]!;
    await sendSpecification(k.app, k.actor, second.id, 0);
    expect((await answer(second.id, 'declined')).inForce).toBe(1);
    expect((await answer(second.id, 'agreed')).inForce).toBe(2);
  });

  it('checks every point, and the figures decide what is measured whatever was ticked', async () => {
    const { supplier, versionId } = await agreedSpecification(k);
    const taken = await takeDelivery(
      k.app,
      k.actor,
      delivery(supplier.id, versionId, [deliveryLine()], {
        checks: [
          { point: 'skin', asked: 'as ticked', met: 'met', found: '' },
          { point: 'refusedIf[0]', asked: 'as ticked', met: 'met', found: '' },
        ],
      }),
    );
    const met = Object.fromEntries(taken.checks.map((c) => [c.point, c.met]));
    expect(met).toMatchObject({
      arrivesAtMostC: 'met',
      days: 'met',
      clock: 'met',
      pieceGrams: 'met',
      skin: 'met',
      head: 'not looked at',
    });
    expect(taken.pointsMet).toBe(6);
    const [lot] = await Promise.all(taken.lotIds.map((id) => getLot(k.app, k.kitchen.id, id)));
    expect(lot).toMatchObject({ leftGrams: 27_000, useBy: '2026-11-27', deliveryId: taken.id, cost: 25_200 });
    // Sent again it is one delivery.
    const again = await takeDelivery(k.app, k.actor, {
      ...delivery(supplier.id, versionId, []),
      id: taken.id,
    });
    expect(again.lotIds).toEqual(taken.lotIds);
  });

  it('does not accept without a word what is too warm for the law or not as asked', async () => {
    const { supplier, versionId } = await agreedSpecification(k, { arrivesAtMostC: 6 });
    const warm = (more: object) =>
      takeDelivery(k.app, k.actor, delivery(supplier.id, versionId, [deliveryLine({ arrivalC: 5 })], more));
    await expect(warm({})).rejects.toEqual(refused('invalid', 'decision'));
    await expect(warm({ decision: 'accepted with deviation' })).rejects.toEqual(refused('invalid', 'reason'));
    const kept = await warm({ decision: 'accepted with deviation', reason: 'Used today, cooked through.' });
    expect(kept.warmestC).toBe(5);
    await expect(
      takeDelivery(
        k.app,
        k.actor,
        delivery(supplier.id, versionId, [deliveryLine()], { arrivedAt: '2026-11-20T09:00:00.000Z' }),
      ),
    ).rejects.toEqual(refused('invalid', 'decision'));
  });

  it('asks again about a temperature in the wrong unit, and keeps nothing meanwhile', async () => {
    const { supplier, versionId } = await agreedSpecification(k);
    const lots = async () => (await listLots(k.app, k.kitchen.id)).length;
    const before = await lots();
    const input = delivery(supplier.id, versionId, [deliveryLine(), deliveryLine({ arrivalC: 38 })]);
    await expect(takeDelivery(k.app, k.actor, input)).rejects.toEqual(
      refused('invalid', 'lines[1].arrivalC'),
    );
    await expect(takeDelivery(k.app, k.actor, input)).rejects.toThrow(/another unit/);
    expect(await lots()).toBe(before);
  });

  it('refuses a version that another one took the place of, a tag twice, a code twice', async () => {
    const { supplier, specification, versionId } = await agreedSpecification(k);
    const next = await newSpecificationVersion(k.app, k.actor, specification.id, { reason: 'Longer necks.' });
    const second = next.versions[1]!.id;
    const against = (id: string, ...lines: ReturnType<typeof deliveryLine>[]) =>
      takeDelivery(k.app, k.actor, delivery(supplier.id, id, lines));
    await expect(against(second, deliveryLine())).rejects.toEqual(
      refused('conflict', 'specificationVersionId'),
    );
    await sendSpecification(k.app, k.actor, second, 0);
    await answer(second, 'agreed');
    await expect(against(versionId, deliveryLine())).rejects.toEqual(
      refused('conflict', 'specificationVersionId'),
    );
    const tagged = await against(second, deliveryLine({ tags: ['UK 0001', 'UK 0002'], code: 'TAGGED' }));
    expect((await getLot(k.app, k.kitchen.id, tagged.lotIds[0]!)).tags).toEqual(['UK 0001', 'UK 0002']);
    await expect(against(second, deliveryLine({ tags: ['UK 0002'] }))).rejects.toEqual(
      refused('invalid', 'lines[0].tags[0]'),
    );
    await expect(against(second, deliveryLine({ tags: ['A', 'A'] }))).rejects.toEqual(
      refused('invalid', 'lines[0].tags[1]'),
    );
    await expect(against(second, deliveryLine({ code: 'TAGGED' }))).rejects.toEqual(
      refused('invalid', 'lines[0].code'),
    );
    const other = await agreedSpecification(k);
    await expect(
      takeDelivery(k.app, k.actor, delivery(other.supplier.id, second, [deliveryLine()])),
    ).rejects.toEqual(refused('conflict'));
  });

  it('makes no lots of what is refused', async () => {
    const { supplier, versionId } = await agreedSpecification(k);
    const sent = await takeDelivery(
      k.app,
      k.actor,
      delivery(supplier.id, versionId, [deliveryLine({ arrivalC: 9 })], {
        decision: 'refused',
        reason: 'Warm.',
      }),
    );
    expect(sent.lotIds).toEqual([]);
    const partly = await takeDelivery(
      k.app,
      k.actor,
      delivery(supplier.id, versionId, [deliveryLine(), deliveryLine({ refused: true })]),
    );
    expect(partly.lotIds).toHaveLength(1);
    const trend = await supplierTrend(k.app, k.kitchen.id, supplier.id);
    expect(trend.deliveries.map((d) => d.decision)).toEqual(['refused', 'accepted']);
    expect(trend.deliveries[1]?.costPerKg).toBeCloseTo(50_400 / 54, 9);
    expect((await listDeliveries(k.app, k.kitchen.id))[0]).toMatchObject({ supplierName: supplier.name });
  });

  it('keeps a picture as it was sent, and only a picture', async () => {
    const { supplier, versionId } = await agreedSpecification(k);
    const taken = await takeDelivery(k.app, k.actor, delivery(supplier.id, versionId, [deliveryLine()]));
    const png = Buffer.from('89504e470d0a1a0a0000', 'hex');
    const photo = {
      id: uuid(),
      subject: 'delivery' as const,
      subjectId: taken.id,
      mime: 'image/png' as const,
      base64: png.toString('base64'),
      caption: 'Crate',
      takenAt: '2026-11-19T09:05:00.000Z',
    };
    await addPhoto(k.app, k.actor, photo);
    await addPhoto(k.app, k.actor, photo);
    expect(Buffer.from((await getPhoto(k.app, k.kitchen.id, photo.id)).bytes).equals(png)).toBe(true);
    await expect(
      addPhoto(k.app, k.actor, { ...photo, id: uuid(), base64: Buffer.from('<svg/>').toString('base64') }),
    ).rejects.toEqual(refused('invalid', 'base64'));
    await expect(addPhoto(k.app, k.actor, { ...photo, id: uuid(), subjectId: uuid() })).rejects.toEqual(
      refused('not_found'),
    );
  });

  it('stands in the journal, every record with its fingerprint', async () => {
    expect(await checkJournal(k.app, k.kitchen.id)).toMatchObject({ holds: true });
  });
});
