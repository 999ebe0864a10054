import { v7 as uuid } from 'uuid';
import { beforeAll, expect, it } from 'vitest';
import { finishBreakdown } from '../../src/app/breakdown-finish.ts';
import { addTree } from '../../src/app/breakdown-trees.ts';
import { listBreakdowns, startBreakdown, weigh } from '../../src/app/breakdowns.ts';
import { takeDelivery } from '../../src/app/deliveries.ts';
import { getLot, listShelf } from '../../src/app/shelf.ts';
import { addSupplier } from '../../src/app/suppliers.ts';
import type { TreeNode } from '../../src/contract/breakdown.ts';
import type { LotOrigin } from '../../src/contract/lot-origin.ts';
import { delivery, deliveryLine } from './animals.ts';
import { appOn, openKitchen, type TestKitchen } from './kitchen.ts';
import { eachStore } from './stores.ts';

const node = (name: string, becomes: TreeNode['becomes'], parent: string | null = 'whole'): TreeNode => ({
  id: parent === null ? 'whole' : name,
  parent,
  name,
  becomes,
  class: null,
  use: becomes === 'part' ? 'menu' : 'thrown away',
  piecesPerAnimal: null,
});

eachStore('risk material in a breakdown', (making) => {
  let k: TestKitchen;
  beforeAll(async () => {
    k = await openKitchen(appOn(await making.fresh()));
  });

  const inTheHouse = async (species: string, ...ages: (number | null)[]) => {
    const supplier = await addSupplier(k.app, k.actor, {
      name: `Hill ${uuid().slice(-6)} (invented)`,
      note: '',
    });
    const lines = ages.map((ageMonthsAtMost) =>
      deliveryLine({ what: species, species, class: 'red meat', count: 1, grams: 20_000, ageMonthsAtMost }),
    );
    return (await takeDelivery(k.app, k.actor, delivery(supplier.id, null, lines))).lotIds;
  };
  const begin = (species: string, lotIds: readonly string[], nodes: TreeNode[]) =>
    startBreakdown(k.app, k.actor, {
      id: uuid(),
      species,
      animals: lotIds.length,
      nodes,
      lots: lotIds.map((lotId) => ({ lotId, grams: 20_000 })),
      cutterId: null,
    });
  const tree = (species: string, ...parts: string[]) => [
    node(species, 'step', null),
    ...parts.map((p) => node(p, 'part')),
  ];
  const stopped = (found: RegExp) =>
    expect.objectContaining({
      code: 'invalid',
      problems: expect.arrayContaining([
        expect.objectContaining({ path: 'nodes[1].becomes', found: expect.stringMatching(found) }),
      ]),
    });

  it('the head of a lamb of at most 12 months may be a part; one month more, or an age not on paper, and nothing is kept', async () => {
    const before = (await listBreakdowns(k.app, k.kitchen.id)).length;
    for (const ages of [[13], [null], [6, null], [6, 14]])
      await expect(
        begin('lamb', await inTheHouse('lamb', ...ages), tree('lamb', 'head', 'shoulder')),
      ).rejects.toEqual(stopped(/head of lamb.*prohibited.*999\/2001/));
    expect(await listBreakdowns(k.app, k.kitchen.id)).toHaveLength(before);
    const lots = await inTheHouse('lamb', 12);
    const begun = await begin('lamb', lots, tree('lamb', 'head', 'shoulder'));
    await weigh(k.app, k.actor, begun.id, {
      weighings: ['head', 'shoulder'].map((n, i) => ({
        id: uuid(),
        node: n,
        animal: null,
        grossGrams: 2_000 + 1_000 * i,
        tareGrams: 0,
        pieces: null,
        corrects: null,
        takenBack: false,
        at: '2026-11-20T10:00:00.000Z',
      })),
    });
    await finishBreakdown(k.app, k.actor, begun.id, { as: 'finished', costBy: 'weight', note: '' });
    const head = (await listShelf(k.app, k.kitchen.id)).find(
      (l) => l.species === 'lamb' && l.partName === 'head',
    );
    expect(head?.grams).toBe(2_000);
  });

  it('the backbone of a cow over 30 months never becomes a part, as a by-product it may be weighed', async () => {
    await expect(
      begin('beef', await inTheHouse('beef', 31), tree('beef', 'backbone', 'brisket')),
    ).rejects.toEqual(stopped(/backbone of beef.*prohibited/));
    const begun = await begin('beef', await inTheHouse('beef', 31), [
      ...tree('beef', 'brisket'),
      node('backbone', 'by-product'),
      node('spinal cord', 'by-product'),
    ]);
    expect(begun.nodes).toHaveLength(4);
    await begin('beef', await inTheHouse('beef', 30), tree('beef', 'backbone', 'brisket'));
  });

  it('a tree kept for later names no age: an old animal’s head is refused in it, a lamb’s is not', async () => {
    const keep = (species: string) =>
      addTree(k.app, k.actor, { species, name: uuid().slice(-8), nodes: tree(species, 'head', 'shoulder') });
    await expect(keep('mutton')).rejects.toEqual(stopped(/head of mutton/));
    await expect(keep('lamb')).resolves.toBeDefined();
  });

  it('where it was born and raised shortens the list only where it is shown for every lot, and what is cut carries it on', async () => {
    const eu = await openKitchen(k.app, 'EU');
    const supplier = await addSupplier(eu.app, eu.actor, { name: 'Grass (invented)', note: '' });
    const cow = (origin: LotOrigin | null) =>
      deliveryLine({
        what: 'cow',
        species: 'beef',
        class: 'red meat',
        count: 1,
        grams: 20_000,
        ageMonthsAtMost: 48,
        origin,
      });
    const take = async (...lines: ReturnType<typeof cow>[]) =>
      (await takeDelivery(eu.app, eu.actor, delivery(supplier.id, null, lines))).lotIds;
    const shown: LotOrigin = { bornIn: 'Ireland', raisedIn: 'Ireland', bse: 'negligible' };
    await expect(take(cow({ ...shown, bornIn: null }))).rejects.toEqual(
      expect.objectContaining({
        code: 'invalid',
        problems: [expect.objectContaining({ path: 'lines[0].origin.bornIn' })],
      }),
    );
    const cut = (lotIds: readonly string[]) =>
      startBreakdown(eu.app, eu.actor, {
        id: uuid(),
        species: 'beef',
        animals: lotIds.length,
        nodes: tree('beef', 'backbone', 'brisket'),
        lots: lotIds.map((lotId) => ({ lotId, grams: 20_000 })),
        cutterId: null,
      });
    for (const second of [null, { ...shown, bse: 'controlled' as const }])
      await expect(cut(await take(cow(shown), cow(second)))).rejects.toEqual(
        stopped(/backbone of beef.*prohibited/),
      );
    const begun = await cut(await take(cow(shown)));
    await weigh(eu.app, eu.actor, begun.id, {
      weighings: ['backbone', 'brisket'].map((n) => ({
        id: uuid(),
        node: n,
        animal: null,
        grossGrams: 10_000,
        tareGrams: 0,
        pieces: null,
        corrects: null,
        takenBack: false,
        at: '2026-11-20T10:00:00.000Z',
      })),
    });
    const done = await finishBreakdown(eu.app, eu.actor, begun.id, {
      as: 'finished',
      costBy: 'weight',
      note: '',
    });
    expect(await getLot(eu.app, eu.kitchen.id, done.made[0]!.lotId)).toMatchObject({
      ...shown,
      ageMonthsAtMost: 48,
    });
  });
});
