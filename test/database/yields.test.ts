import { v7 as uuid } from 'uuid';
import { beforeAll, expect, it } from 'vitest';
import { addPart, changePart } from '../../src/app/animals.ts';
import { finishBreakdown } from '../../src/app/breakdown-finish.ts';
import { importBreakdowns } from '../../src/app/breakdown-trees.ts';
import { breakdownCosts, weigh } from '../../src/app/breakdowns.ts';
import { carcassBars, yields } from '../../src/app/yields.ts';
import type { BodyOf } from '../../src/contract/operations.ts';
import { CarcassBar, YieldsAnswer } from '../../src/contract/yields.ts';
import { cutUp, geeseInTheHouse } from './animals.ts';
import { appOn, openKitchen, type TestKitchen } from './kitchen.ts';
import { eachStore } from './stores.ts';

const past = (at: string, inGrams: number, breast: number): BodyOf<'importBreakdowns'>['rows'][number] => ({
  at,
  animals: 1,
  inGrams,
  parts: [
    { name: 'breast', grams: breast, becomes: 'part' },
    { name: 'feet', grams: 100, becomes: 'by-product' },
  ],
});

eachStore('yields', (making) => {
  let k: TestKitchen;
  beforeAll(async () => {
    k = await openKitchen(appOn(await making.fresh()));
    await addPart(k.app, k.actor, {
      species: 'goose',
      name: 'neck skin',
      sharePct: null,
      use: 'menu',
      valuePerKg: 300,
    });
    await addPart(k.app, k.actor, { species: 'hare', name: 'saddle', sharePct: 30, use: 'menu' });
  });

  it('reads what was weighed here and what was brought in, by day, supplier and cutter', async () => {
    const { lotId, supplier } = await geeseInTheHouse(k, { grams: 8_000, count: 2, cost: 8_000 });
    const begun = await cutUp(k, lotId, 8_000, 2);
    const line = (node: string, animal: number, grossGrams: number) => ({
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
    await weigh(k.app, k.actor, begun.id, {
      weighings: [
        [1, 4_000, 800],
        [2, 4_000, 880],
      ].flatMap(([animal, whole, breast]) => [
        line('whole', animal!, whole!),
        line('breast', animal!, breast!),
        line('legs', animal!, 700),
        line('neck skin', animal!, 90),
        line('neck bone', animal!, 110),
        line('fat', animal!, 200),
      ]),
    });
    const costs = await breakdownCosts(k.app, k.kitchen.id, begun.id);
    expect(costs.map((c) => c.by)).toEqual(['weight', 'value', 'shares']);
    for (const { nodes } of costs) expect(nodes.reduce((sum, n) => sum + (n.cost ?? 0), 0)).toBe(8_000);
    const done = await finishBreakdown(k.app, k.actor, begun.id, {
      as: 'finished',
      costBy: 'weight',
      note: '',
    });
    expect(done.standing.byAnimal).toHaveLength(2);
    expect(done.made.map((m) => m.lotId).sort()).toEqual(
      done.standing.nodes.flatMap((n) => n.lotId ?? []).sort(),
    );
    await importBreakdowns(k.app, k.actor, {
      species: 'goose',
      supplierId: null,
      note: '',
      rows: [past('2025-03-01T12:00:00.000Z', 4_000, 760), past('2025-03-08T12:00:00.000Z', 5_000, 1_000)],
    });
    const all = await yields(k.app, k.kitchen.id, { species: 'Goose', part: 'breast' });
    YieldsAnswer.parse(all);
    expect(all).toMatchObject({ breakdowns: 3, animals: 4 });
    const breast = all.parts.find((p) => p.part === 'breast')!;
    expect(breast).toMatchObject({ animals: 4, weighings: 4 });
    expect(breast.meanPct).toBeCloseTo((19 + 20 + 20 + 22) / 4, 9);
    expect(all.weighings.map((w) => w.pct)).toEqual([19, 20, 20, 22]);
    // Breast, legs and the neck as it was cut carry 8,000 by weight; what was brought in has no cost.
    expect(breast.costPerKg).toBeCloseTo(8_000 / ((1_680 + 1_400 + 400) / 1000), 0);
    expect(all.kept.kg).toBeCloseTo(0.18 + 0.4, 9);
    const here = await yields(k.app, k.kitchen.id, { species: 'goose', supplierId: supplier.id });
    expect(here).toMatchObject({ breakdowns: 1, animals: 2 });
    expect(here.groups.some((g) => g.by === 'supplier' && g.name === supplier.name)).toBe(true);
    const spring = await yields(k.app, k.kitchen.id, {
      species: 'goose',
      from: '2025-03-01',
      until: '2025-03-08',
    });
    expect(spring.breakdowns).toBe(2);
    expect(
      (await yields(k.app, k.kitchen.id, { species: 'goose', from: '2025-03-02', until: '2025-03-07' }))
        .breakdowns,
    ).toBe(0);
    expect((await yields(k.app, k.kitchen.id, { species: 'goose', cutterId: uuid() })).breakdowns).toBe(0);
    expect((await yields(k.app, k.kitchen.id, { species: 'yak' })).parts).toEqual([]);
  });

  it('brings nothing in twice: a row that is here already stops all of them', async () => {
    const rows = [past('2024-05-01T12:00:00.000Z', 3_000, 500), past('2024-05-02T12:00:00.000Z', 3_100, 510)];
    const bring = (list: typeof rows) =>
      importBreakdowns(k.app, k.actor, { species: 'duck', supplierId: null, note: '', rows: list });
    expect(await bring(rows)).toEqual({ imported: 2 });
    const more = past('2024-05-03T12:00:00.000Z', 3_000, 500);
    await expect(bring([more, rows[1]!])).rejects.toMatchObject({
      code: 'conflict',
      problems: [expect.objectContaining({ path: 'rows[1]' })],
    });
    expect((await yields(k.app, k.kitchen.id, { species: 'duck' })).breakdowns).toBe(2);
    expect(await bring([more])).toEqual({ imported: 1 });
    expect((await yields(k.app, k.kitchen.id, { species: 'duck', cutterId: k.person.id })).breakdowns).toBe(
      0,
    );
  });

  it('draws each animal from its latest breakdowns, or from named shares where it was never cut', async () => {
    const bars = await carcassBars(k.app, k.kitchen.id);
    for (const bar of bars) CarcassBar.parse(bar);
    const goose = bars.find((b) => b.species === 'goose')!;
    expect(goose).toMatchObject({ from: 'breakdowns', breakdowns: 3, animals: 4, pricedBreakdowns: 1 });
    // 2 geese of 4 kg here, one of 4 and one of 5 kg brought in.
    expect(goose.parts.find((p) => p.name === 'breast')?.sharePct).toBeCloseTo((100 * 3_440) / 17_000, 9);
    expect(goose.parts.find((p) => p.name === 'feet')).toMatchObject({ use: 'thrown away' });
    // What was brought in has no price: the money is of the one that was cut here, and is all of it.
    expect(goose.parts.reduce((sum, p) => sum + (p.moneyPct ?? 0), 0)).toBeCloseTo(100, 9);
    expect(bars.find((b) => b.species === 'hare')).toMatchObject({
      from: 'named shares',
      parts: [expect.objectContaining({ name: 'saddle', sharePct: 30, moneyPct: null })],
    });
  });

  it('what a part loses and the work it takes are changed one by one, and nothing else with them', async () => {
    const part = await addPart(k.app, k.actor, {
      species: 'pig',
      name: 'trotter',
      sharePct: 1.2,
      use: 'menu',
      valuePerKg: 150,
      lifeDays: 5,
    });
    const first = await changePart(k.app, k.actor, part.id, { trimPct: 30, labourMinPerKg: 45 });
    expect(first).toEqual({ ...part, trimPct: 30, labourMinPerKg: 45 });
    expect(await changePart(k.app, k.actor, part.id, { lifeDays: null })).toEqual({
      ...first,
      lifeDays: null,
    });
    await expect(changePart(k.app, k.actor, part.id, {})).rejects.toThrow(/Nothing is to be changed/);
  });
});
