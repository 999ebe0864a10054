import { beforeAll, expect, it } from 'vitest';
import { demoKitchen } from '../../demo/kitchen.ts';
import type { App } from '../../src/app/app.ts';
import { listAuthorityRequests } from '../../src/app/authority.ts';
import { getBatch, listBatches } from '../../src/app/batches.ts';
import { getBreakdown, listBreakdowns } from '../../src/app/breakdowns.ts';
import { listDeliveries } from '../../src/app/deliveries.ts';
import { layDemoIfEmpty, resetDemo } from '../../src/app/demo.ts';
import { getDish, listDishes } from '../../src/app/dishes.ts';
import { engineOver, perform } from '../../src/app/engine.ts';
import { listKitchens } from '../../src/app/kitchens.ts';
import { checkJournal, readJournal } from '../../src/app/proof.ts';
import { listShelf } from '../../src/app/shelf.ts';
import { listSpecifications } from '../../src/app/specifications.ts';
import { yields } from '../../src/app/yields.ts';
import { Breakdown } from '../../src/contract/breakdown.ts';
import { Batch, Dish, type Kitchen } from '../../src/contract/records.ts';
import { openKitchen } from './kitchen.ts';
import { eachStore } from './stores.ts';

eachStore('the demo kitchen', (making) => {
  const laidAt = new Date('2026-11-25T15:00:00Z');
  let app: App;
  let kitchen: Kitchen;
  beforeAll(async () => {
    const store = await making.fresh();
    app = { store, engine: engineOver(async (task) => perform(task)), version: '0.1.0', now: () => laidAt };
    // Three servers start on one empty store.
    const laid = await Promise.all([1, 2, 3].map(() => layDemoIfEmpty(app, demoKitchen)));
    expect(laid.filter((k) => k !== null)).toHaveLength(1);
    kitchen = laid.find((k) => k !== null)!;
  });

  it('is laid once, marked as a demo', async () => {
    expect(await listKitchens(app)).toEqual([kitchen]);
    expect(kitchen.demo).toBe(true);
  });

  it('obeys every rule: dishes as the contract has them, signed ones with evidence that holds', async () => {
    const dishes = await listDishes(app, kitchen.id);
    expect(dishes).toHaveLength(demoKitchen.dishes.length);
    for (const { id } of dishes) {
      const dish = Dish.parse(await getDish(app, kitchen.id, id));
      for (const version of dish.versions)
        if (version.status === 'signed') {
          expect(version.evidence!.verdicts.length, dish.name).toBeGreaterThan(0);
          expect(
            version.evidence!.verdicts.every((v) => v.passes && v.lethalityMin >= v.neededMin),
            dish.name,
          ).toBe(true);
        }
    }
    expect(dishes.filter((d) => d.signedVersion !== null).length).toBeGreaterThanOrEqual(3);
    const stopped = dishes.filter(
      (d) => d.law.status === 'by-product by default: ask' || d.law.status === 'prohibited',
    );
    expect(stopped.length).toBeGreaterThan(0);
    expect(stopped.every((d) => d.signedVersion === null)).toBe(true);
  });

  it('has batches of every kind, none closed as fit with anything in the way', async () => {
    const batches = await Promise.all(
      (await listBatches(app, kitchen.id)).map(async (b) =>
        Batch.parse(await getBatch(app, kitchen.id, b.id)),
      ),
    );
    expect(new Set(batches.map((b) => b.status))).toEqual(new Set(['open', 'closed', 'discarded']));
    for (const batch of batches.filter((b) => b.status === 'closed')) {
      expect(batch.logs.flatMap((l) => l.judgements).length, batch.code).toBeGreaterThan(0);
    }
  });

  it('has something to look at in every room of Animals', async () => {
    const specifications = await listSpecifications(app, kitchen.id);
    expect(specifications.map((s) => [s.versions.length, s.inForce])).toEqual([
      [2, 2],
      [2, 2],
      [2, 1],
    ]);
    const deliveries = await listDeliveries(app, kitchen.id);
    expect(deliveries.length).toBe(demoKitchen.animals.deliveries.length);
    expect(new Set(deliveries.map((d) => d.decision))).toEqual(
      new Set(['accepted', 'accepted with deviation', 'refused']),
    );
    const shelf = await listShelf(app, kitchen.id);
    for (const standing of ['ok', 'last day', 'past', 'not known'] as const)
      expect(
        shelf.some((l) => l.standing === standing),
        standing,
      ).toBe(true);
    expect(shelf.some((l) => l.frozenAt !== null)).toBe(true);
    expect(shelf.some((l) => l.thawedAt !== null)).toBe(true);
    expect(shelf.filter((l) => l.byProduct).every((l) => l.blocked !== null)).toBe(true);
    expect(shelf.some((l) => l.byProduct)).toBe(true);
    const breakdowns = await listBreakdowns(app, kitchen.id);
    expect(new Set(breakdowns.map((b) => b.species))).toEqual(new Set(['goose', 'pig', 'sheep', 'rabbit']));
    expect(breakdowns.some((b) => b.status === 'open')).toBe(true);
    for (const { id } of breakdowns.filter((b) => b.origin === 'here' && b.status === 'finished')) {
      const { standing, made } = Breakdown.parse(await getBreakdown(app, kitchen.id, id));
      // To the gram, and to the penny.
      expect(standing.outGrams + standing.unaccountedGrams).toBeCloseTo(standing.inGrams, 3);
      expect(made.reduce((sum, m) => sum + (m.cost ?? 0), 0)).toBe(standing.paid);
    }
    const geese = await yields(app, kitchen.id, { species: 'goose' });
    expect(geese.animals).toBe(48);
    expect(geese.learning.find((l) => l.part === 'neck skin')?.verdict).toBe('rising');
    const [question, ...others] = await listAuthorityRequests(app, kitchen.id);
    expect(others).toEqual([]);
    expect(question).toMatchObject({ species: 'goose', part: 'head', answers: [], lifts: false });
  });

  it('happened in order, and its journal holds', async () => {
    const lines = await readJournal(app, kitchen.id, { limit: 500 });
    const times = lines.map((l) => Date.parse(l.at)).reverse();
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(Math.max(...times)).toBeLessThanOrEqual(laidAt.getTime());
    expect(await checkJournal(app, kitchen.id)).toMatchObject({ holds: true, lines: lines.length });
  });

  it('is laid again as on the first day, also twice at once; own kitchens stay', async () => {
    const own = (await openKitchen(app)).kitchen;
    const [first, second] = await Promise.all([resetDemo(app, demoKitchen), resetDemo(app, demoKitchen)]);
    const now = await listKitchens(app);
    expect(now.map((k) => k.id)).toContain(own.id);
    expect(now.filter((k) => k.demo)).toHaveLength(1);
    expect([first!.id, second!.id]).toContain(now.find((k) => k.demo)!.id);
    expect((await listDishes(app, kitchen.id)).length).toBe(demoKitchen.dishes.length);
  });
});
