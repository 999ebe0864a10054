import { v7 as uuid } from 'uuid';
import { beforeAll, expect, it } from 'vitest';
import { addDish, getDish, getVersion, listDishes, newVersion } from '../../src/app/dishes.ts';
import { exportDish, exportRecipe, importDish } from '../../src/app/exchange.ts';
import { addIngredient } from '../../src/app/ingredients.ts';
import { signVersion } from '../../src/app/sign.ts';
import { exchangeOperations } from '../../src/contract/exchange-operations.ts';
import type { Method, Step } from '../../src/contract/steps.ts';
import { appOn, goodMethod, openKitchen, type TestKitchen } from './kitchen.ts';
import { eachStore } from './stores.ts';

const refused = (name: string) => expect.objectContaining({ name });
const withoutIds = (method: Method) =>
  method.map(({ id: _, asks, ...s }) => ({ ...s, asks: asks.map(({ id: _ask, ...a }) => a) }));

eachStore('a dish taken away and brought in', (making) => {
  let k: TestKitchen;
  let other: TestKitchen;
  beforeAll(async () => {
    const app = appOn(await making.fresh());
    k = await openKitchen(app);
    other = await openKitchen(app, 'US');
  });
  const withCrumb = async () => {
    const crumb = await addIngredient(k.app, k.actor, {
      name: `Crumb ${uuid().slice(-6)}`,
      allergens: [{ allergen: 'gluten' }],
      labelName: null,
      tableId: null,
      nutrients: {},
      source: '',
      trimPct: 0,
      densityKgM3: null,
      pieceG: null,
      madeOf: null,
      note: '',
    });
    const mix: Step = {
      kind: 'mix',
      id: uuid(),
      name: 'Mix',
      how: 'Cold.',
      handsMin: 5,
      asks: [],
      lines: [{ ingredient: 'crumb', g: 100, of: { kind: 'ingredient', id: crumb.id }, pricePerKg: 777 }],
      maxC: 12,
    };
    const method = [mix, ...goodMethod()];
    return addDish(k.app, k.actor, {
      name: `Heart ${uuid().slice(-6)}`,
      species: 'pig',
      part: 'heart',
      story: 'Invented.',
      method,
    });
  };
  const count = async (t: TestKitchen) => (await listDishes(t.app, t.kitchen.id)).length;

  it('comes back into its own kitchen as the same dish, as a draft, with ids of its own and no price', async () => {
    const dish = await withCrumb();
    await signVersion(k.app, k.actor, dish.current.id, 0);
    const file = await exportDish(k.app, k.kitchen.id, dish.id, {});
    expect(exchangeOperations.exportDish.result.parse(file)).toEqual(file);
    const text = JSON.stringify(file);
    expect(text).not.toContain('pricePerKg');
    const { dish: back, read } = await importDish(k.app, k.actor, { text, keep: true });
    expect(back).toMatchObject({ name: dish.name, species: 'pig', part: 'heart', story: 'Invented.' });
    expect(back?.current).toMatchObject({ status: 'draft', signedBy: null, evidence: null, number: 1 });
    expect(withoutIds(back!.current.method)).toEqual(withoutIds(file.versions[0]!.method));
    expect(back!.current.method.map((s) => s.id)).not.toEqual(dish.current.method.map((s) => s.id));
    expect(read.said.join(' ')).toContain('nobody has signed it');
    expect((await getDish(k.app, k.kitchen.id, dish.id)).signedVersion).toBe(1);
  });

  it('is read without anything being kept until somebody says so', async () => {
    const dish = await withCrumb();
    const text = JSON.stringify(await exportDish(k.app, k.kitchen.id, dish.id, {}));
    const before = await count(k);
    const { dish: none, read } = await importDish(k.app, k.actor, { text, keep: false });
    expect(none).toBeNull();
    expect(read).toMatchObject({ from: 'dish file', name: dish.name, version: 1 });
    expect(await count(k)).toBe(before);
  });

  it('comes into another kitchen with its allergens on the line, pointing at nothing of the first', async () => {
    const dish = await withCrumb();
    const text = JSON.stringify(await exportDish(k.app, k.kitchen.id, dish.id, {}));
    const { dish: there } = await importDish(other.app, other.actor, { text, keep: true, name: 'Theirs' });
    expect(there?.name).toBe('Theirs');
    const mix = there!.current.method[0];
    expect(mix?.kind === 'mix' && mix.lines).toEqual([
      { ingredient: 'crumb', g: 100, allergens: ['gluten'] },
    ]);
  });

  it('has all its versions or the one that is named, and brings in the one that is named', async () => {
    const dish = await withCrumb();
    await signVersion(k.app, k.actor, dish.current.id, 0);
    const second = await newVersion(k.app, k.actor, dish.id, { reason: 'More.' });
    const all = await exportDish(k.app, k.kitchen.id, dish.id, {});
    expect(all.versions.map((v) => v.number)).toEqual([1, 2]);
    const one = await exportDish(k.app, k.kitchen.id, dish.id, { version: second.id });
    expect(one.versions.map((v) => [v.number, v.status])).toEqual([[2, 'draft']]);
    const text = JSON.stringify(all);
    const { read } = await importDish(k.app, k.actor, { text, keep: false, version: 1 });
    expect(read).toMatchObject({ version: 1, versions: [1, 2] });
    await expect(importDish(k.app, k.actor, { text, keep: true, version: 3 })).rejects.toEqual(
      refused('InputProblems'),
    );
    await expect(exportDish(other.app, other.kitchen.id, dish.id, {})).rejects.toEqual(refused('AppError'));
  });

  it('goes out as a recipe that says its allergens, and comes in as lines and words', async () => {
    const dish = await withCrumb();
    const recipe = await exportRecipe(k.app, k.kitchen.id, dish.id, {});
    expect(exchangeOperations.exportRecipe.result.parse(recipe)).toEqual(recipe);
    expect(recipe.recipeIngredient[0]).toBe('100 g crumb');
    expect(recipe.description).toContain('gluten');
    const text = `<html><script type="application/ld+json">${JSON.stringify(recipe)}</script></html>`;
    await expect(importDish(k.app, k.actor, { text, keep: true })).rejects.toEqual(refused('InputProblems'));
    const { dish: back, read } = await importDish(k.app, k.actor, {
      text,
      keep: true,
      species: 'pig',
      part: 'heart',
    });
    expect(read.ingredients.map((i) => i.text)).toEqual(['100 g crumb', '300 g heart, as bought']);
    const kept = await getVersion(k.app, k.kitchen.id, back!.current.id);
    expect(kept.status).toBe('draft');
    expect(kept.method.map((s) => s.kind)).toEqual(['mix']);
    expect(kept.method[0]?.how).toContain('Steam');
    expect(back?.story).toContain('gluten');
  });

  it('is refused whole when it is wrong, and nothing of it is kept', async () => {
    const dish = await withCrumb();
    const file = await exportDish(k.app, k.kitchen.id, dish.id, {});
    const before = await count(k);
    const texts = [
      JSON.stringify({ ...file, formatVersion: 9 }),
      JSON.stringify({ ...file, more: true }),
      JSON.stringify({ ...file, dish: { ...file.dish, story: 'a\0' } }),
      JSON.stringify(file).slice(0, -5),
      '[]',
      `${'['.repeat(90_000)}${']'.repeat(90_000)}`,
    ];
    for (const text of texts)
      await expect(importDish(k.app, k.actor, { text, keep: true })).rejects.toEqual(
        refused('InputProblems'),
      );
    const stranger = { kitchenId: k.kitchen.id, personId: other.person.id };
    await expect(importDish(k.app, stranger, { text: JSON.stringify(file), keep: true })).rejects.toEqual(
      refused('AppError'),
    );
    expect(await count(k)).toBe(before);
  });
});
