import { describe, expect, test } from 'vitest';
import { runJudge } from '../src/contract/judge.ts';
import { programmeOf } from '../src/contract/method-cook.ts';
import { pantryOperations } from '../src/contract/pantry-operations.ts';
import { readProbeLog } from '../src/contract/probe-log.ts';
import { Kitchen, Lot, PartInput, Person, SupplierInput } from '../src/contract/records.ts';
import { Step, stepKinds } from '../src/contract/steps.ts';
import { cook } from '../src/core/heat/cook.ts';
import type { CookResult } from '../src/core/heat/types.ts';
import { profileVolume } from '../src/core/method/even-shape.ts';
import { verdictOf } from '../src/core/method/verdict.ts';
import { lawOf } from '../src/core/properties/parts-law.ts';
import { at, layMethod, nextId, printedAt } from '../test/paper/lay.ts';
import { blend, rounded } from './composition.ts';
import { ingredient, ingredients, line } from './ingredients.ts';
import { demoKitchen } from './kitchen.ts';

const { dishes, batches, lots, parts, people, suppliers, animals } = demoKitchen;
/** Of what was taken in, and of what is cut from it. */
const codes = [
  ...lots.map((l) => l.code),
  ...animals.deliveries.flatMap((d) => d.lines.map((l) => l.code)),
  ...animals.breakdowns.flatMap((b) => b.nodes.map((n) => `${b.lots[0]?.code} ${n.name}`)),
];
const versions = dishes.flatMap((dish) => dish.versions.map((version) => ({ dish, version })));
const steps = versions.flatMap(({ version }) => version.method);

describe('the demo kitchen', () => {
  test('every record is one the contract accepts', () => {
    Kitchen.parse({ ...demoKitchen.kitchen, id: nextId(), demo: true, createdAt: printedAt });
    for (const row of people) Person.parse({ ...row, id: nextId() });
    for (const row of suppliers) SupplierInput.parse(row);
    for (const row of parts) PartInput.parse(row);
    for (const row of demoKitchen.ingredients) pantryOperations.addIngredient.body.parse(row);
    for (const { supplier: _s, part: _p, at: arrived, by: _b, ...row } of lots)
      Lot.parse({ ...row, id: nextId(), supplierId: null, partId: null, arrivedAt: at(arrived) });
    for (const { version } of versions) layMethod(version.method);
  });

  test('says of itself that it is invented', () => {
    expect(demoKitchen.kitchen.name).toContain('demo');
    for (const supplier of suppliers) expect(supplier.name).toContain('invented');
  });

  test('what is named is there: people, suppliers, parts, lots, steps, asks', () => {
    const names = new Set(people.map((p) => p.name));
    for (const lot of lots) {
      expect(names).toContain(lot.by);
      expect(suppliers.map((s) => s.name)).toContain(lot.supplier);
      if (lot.part !== null)
        expect(
          parts.some((p) => p.species === lot.part?.species && p.name === lot.part.name),
          lot.code,
        ).toBe(true);
    }
    for (const dish of dishes)
      expect(
        parts.some((p) => p.species === dish.species && p.name === dish.part),
        dish.name,
      ).toBe(true);
    for (const batch of batches) {
      const dish = dishes.find((d) => d.name === batch.dish);
      const method = dish?.versions.at(-1)?.method ?? [];
      expect(dish?.versions.at(-1)?.sign, batch.dish).toBeDefined();
      for (const code of batch.lots) expect(codes).toContain(code);
      batch.readings.forEach((reading, i) => {
        const asks = method.find((s) => s.name === reading.step)?.asks ?? [];
        expect(
          asks.map((a) => a.label),
          reading.step,
        ).toContain(reading.ask);
        expect(names).toContain(reading.by);
        if (reading.corrects !== undefined) {
          expect(reading.corrects).toBeLessThan(i);
          expect(batch.readings[reading.corrects]).toMatchObject({ step: reading.step, ask: reading.ask });
        }
      });
    }
  });

  test('step names differ within a method and ask labels within a step, for they are named by them', () => {
    for (const { version } of versions) {
      const stepNames = version.method.map((s) => s.name);
      expect(new Set(stepNames).size).toBe(stepNames.length);
      for (const step of version.method)
        expect(new Set(step.asks.map((a) => a.label)).size).toBe(step.asks.length);
    }
  });

  test('every kind of step and every shape of body is used', () => {
    expect(new Set(steps.map((s) => s.kind))).toEqual(new Set(stepKinds));
    const shapes = steps.flatMap((s) => (s.kind === 'cook' ? [s.body.shape] : []));
    expect(new Set(shapes)).toEqual(new Set(['revolved', 'cylinder', 'sphere', 'slab', 'block']));
    expect(Step.options).toHaveLength(new Set(steps.map((s) => s.kind)).size);
  });

  test('every critical limit says what it rests on', () => {
    for (const step of steps)
      for (const ask of step.asks) if (ask.critical === true) expect(ask.basis, ask.label).toBeTruthy();
  });

  test('what comes in names suppliers, specifications and parts that are there, and nothing weighs more than it came from', () => {
    const supplierNames = suppliers.map((s) => s.name);
    for (const s of animals.specifications) expect(supplierNames).toContain(s.supplier);
    for (const d of animals.deliveries) {
      expect(supplierNames).toContain(d.supplier);
      if (d.specification !== null)
        expect(animals.specifications.map((s) => s.name)).toContain(d.specification);
      for (const l of d.lines)
        if (l.part !== null)
          expect(
            parts.some((p) => p.species === l.species && p.name === l.part),
            l.code,
          ).toBe(true);
    }
    const once = animals.deliveries.flatMap((d) => d.lines.map((l) => l.code));
    expect(new Set(once).size).toBe(once.length);
    for (const { rows } of animals.past)
      for (const row of rows)
        expect(row.parts.reduce((sum, p) => sum + p.grams, 0)).toBeLessThanOrEqual(row.inGrams);
  });

  test('every part that is cut has a class, a life and a worth; a head of poultry and feet are none', () => {
    for (const { species, nodes } of animals.trees)
      for (const node of nodes.filter((n) => n.becomes === 'part')) {
        const part = parts.find((p) => p.species === species && p.name === node.name);
        expect(part, `${species} ${node.name}`).toMatchObject({
          class: node.class,
          lifeDays: expect.any(Number),
          valuePerKg: expect.any(Number),
        });
        expect(node.class).not.toBeNull();
      }
    const geese = animals.trees.find((t) => t.species === 'goose')?.nodes ?? [];
    expect(geese.find((n) => n.name === 'head')?.becomes).toBe('by-product');
    expect(geese.filter((n) => n.becomes !== 'step')).toHaveLength(14);
  });

  test('shares of an animal that has them sum to 100 %', () => {
    for (const species of ['pig', 'goose', 'rabbit']) {
      const sum = parts.filter((p) => p.species === species).reduce((s, p) => s + (p.sharePct ?? 0), 0);
      expect(Math.abs(sum - 100), species).toBeLessThan(0.1);
    }
  });

  test('compositions sum to 1, and every ingredient rests on a row of the published table, figures on none of its own', () => {
    for (const { name, nutrients } of ingredients) {
      const { composition } = ingredient(name);
      expect(nutrients, name).toBeUndefined();
      if (composition === null) continue;
      const sum = Object.values(composition).reduce((a, b) => a + b, 0);
      expect(sum, name).toBeCloseTo(1, 9);
    }
  });

  test('dishes are made of dishes to a depth of three, each laid before it is used', () => {
    const depthOf = (name: string): number => {
      const dish = dishes.find((d) => d.name === name);
      if (dish === undefined) return 0;
      const used = (dish.versions.at(-1)?.method ?? []).flatMap((s) => (s.kind === 'mix' ? s.lines : []));
      return 1 + Math.max(0, ...used.map((l) => depthOf(l.ingredient)));
    };
    expect(Math.max(...dishes.map((d) => depthOf(d.name)))).toBe(3);
  });

  test('blend weighs by grams and leaves out, and tells, what has no composition', () => {
    const half = blend([line('Egg white', 100), line('Goose fat', 300), line('Juniper berries', 7)]);
    const a = line('Egg white', 1).composition!;
    const b = line('Goose fat', 1).composition!;
    expect(half.composition.fat).toBeCloseTo(0.25 * a.fat + 0.75 * b.fat, 3);
    expect(half.leftOutG).toBe(7);
    expect(rounded({ water: 2, protein: 1, fat: 1, carbohydrate: 0, fibre: 0, ash: 0 }).water).toBeCloseTo(
      0.5,
      9,
    );
  });

  test('a filled piece holds what the fill step says it holds', () => {
    for (const step of steps) {
      if (step.kind !== 'fill') continue;
      const inside = step.profile.map((p) => ({
        at: p.atMm / 1e3,
        diameter: (p.diameterMm - 2 * step.skinMm) / 1e3,
      }));
      // Forcemeats weigh 1000 to 1100 kg/m³.
      const grams = profileVolume(inside) * 1050 * 1000;
      expect(
        Math.abs(step.gramsPerPiece / grams - 1),
        `${step.name}: holds ${grams.toFixed(0)} g`,
      ).toBeLessThan(0.1);
    }
  });
});

describe('the demo kitchen’s cooking', () => {
  const curve = (result: CookResult, column: Float64Array, from: number, to: number) =>
    [...result.history.t]
      .flatMap((s, i) => (s >= from && s <= to ? [{ min: s / 60, C: column[i]! }] : []))
      .filter((p, i, all) => i === 0 || p.min > all[i - 1]!.min);

  for (const { dish, version } of versions) {
    const method = layMethod(version.method);
    for (const step of method) {
      if (step.kind !== 'cook') continue;
      test(`${dish.name}: ${step.name} (${version.reason.slice(0, 20)})`, () => {
        const { problem, cookStages } = programmeOf(method, step.id);
        const result = cook(problem);
        const verdict = verdictOf(problem, result, cookStages);
        expect(verdict.word, verdict.doubts.map((d) => d.what).join()).toBe('holds');
        expect(verdict.notReached).toEqual([]);
        const end = result.stages.at(-1)!.end;
        const cooked = runJudge({ log: curve(result, result.history.coldSpot, 0, end), rules: step.rules });
        expect(cooked.map((v) => [v.rule, v.passes])).toEqual(step.rules.map((rule) => [rule, true]));
        const chill = method.slice(method.indexOf(step)).find((s) => s.kind === 'chill');
        if (result.stages.length === cookStages || chill?.kind !== 'chill') return;
        const lifted = result.stages[cookStages - 1]!.end;
        const chilled = runJudge({
          log: curve(result, result.history.warmest, lifted, end),
          rules: chill.rules,
        });
        expect(chilled.map((v) => [v.rule, v.passes])).toEqual(chill.rules.map((rule) => [rule, true]));
      });
    }
  }

  test('the kept batch’s logs pass and the discarded batch’s log fails', () => {
    const judged = batches.flatMap((batch) =>
      (batch.logs ?? []).map((log) => {
        const channel = readProbeLog(log.text).channels.find((c) => c.name === log.channel);
        const points = channel?.points.map((p) => ({ min: p.s / 60, C: p.C })) ?? [];
        return {
          as: batch.close?.as,
          passes: runJudge({ log: points, rules: log.rules }).map((v) => v.passes),
        };
      }),
    );
    expect(judged).toEqual([
      { as: 'discarded', passes: [false] },
      { as: 'closed', passes: [true] },
      { as: 'closed', passes: [true] },
    ]);
    expect(batches.find((b) => b.close?.as === 'discarded')?.decisions?.map((d) => d.what)).toContain(
      'discarded',
    );
  });

  test('the law lets every signed dish be served and stops the goose head', () => {
    const served = ['food', 'food on conditions'];
    for (const dish of dishes) {
      const { status } = lawOf(dish.species, dish.part, 'GB-ENG');
      if (dish.versions.some((v) => v.sign !== undefined)) expect(served, dish.name).toContain(status);
      if (dish.part === 'head' && dish.species === 'goose') expect(served).not.toContain(status);
    }
    expect(dishes.filter((d) => d.versions.some((v) => v.sign !== undefined))).toHaveLength(3);
  });
});
