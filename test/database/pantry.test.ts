import { v7 as uuid } from 'uuid';
import { beforeAll, describe, expect, it } from 'vitest';
import { addPart, addSupplier, changePart } from '../../src/app/animals.ts';
import { dishNumbers } from '../../src/app/dish-numbers.ts';
import { addDish, getDish, newVersion, saveVersion } from '../../src/app/dishes.ts';
import {
  addIngredient,
  changeIngredient,
  listIngredients,
  priceIngredient,
  putAwayIngredient,
} from '../../src/app/ingredients.ts';
import { setRates } from '../../src/app/kitchen-rates.ts';
import { addPerson } from '../../src/app/kitchens.ts';
import { declareRisk, lookAtLabel, withdrawRisk } from '../../src/app/labels-and-risks.ts';
import { pantry } from '../../src/app/pantry.ts';
import { checkJournal, readJournal } from '../../src/app/proof.ts';
import { signVersion } from '../../src/app/sign.ts';
import type { BodyOf } from '../../src/contract/operations.ts';
import { Pantry } from '../../src/contract/pantry-answer.ts';
import { pantryOperations } from '../../src/contract/pantry-operations.ts';
import type { KitchenRates } from '../../src/contract/rates.ts';
import type { MixLine, Step } from '../../src/contract/steps.ts';
import type { Store } from '../../src/store/store.ts';
import { appOn, goodMethod, openKitchen, type TestKitchen } from './kitchen.ts';
import { eachStore } from './stores.ts';

const refused = (code: string) => expect.objectContaining({ name: 'AppError', code });

const mix = (lines: MixLine[], more: object = {}): Step => ({
  kind: 'mix',
  id: uuid(),
  name: `Mix ${uuid().slice(-6)}`,
  how: '',
  handsMin: 5,
  asks: [],
  lines,
  maxC: 12,
  ...more,
});
const of = (kind: 'ingredient' | 'part' | 'dish' | 'table', id: string) => ({ kind, id }) as const;
const line = (ingredient: string, g: number, to?: MixLine['of'], more: Partial<MixLine> = {}): MixLine => ({
  ingredient,
  g,
  ...(to === undefined ? {} : { of: to }),
  ...more,
});

const rates: KitchenRates = {
  from: '2026-11-01',
  labour: [{ grade: 'cook', perHour: 1_500 }],
  electricityPerKwh: 28,
  gasPerKwh: 7,
  machines: [{ use: 'steamer', fuel: 'electricity', efficiencyPct: 60 }],
  packagingPerPortion: 8,
  overheadPct: 10,
  fixedPerService: 40_000,
  vatPct: 20,
  pricesIncludeVat: true,
  servicePct: null,
  marginPct: 70,
  marginAfter: 'food',
  priceStep: 50,
};

eachStore('the pantry', (making) => {
  let store: Store;
  let k: TestKitchen;
  let other: TestKitchen;
  const sql = (text: string) => store.session((s) => s.query<Record<string, unknown>>(text, []));
  const add = (name: string, more: Partial<BodyOf<'addIngredient'>> = {}) =>
    addIngredient(k.app, k.actor, { name, ...more });
  const dish = async (name: string, steps: Step[]) =>
    addDish(k.app, k.actor, { name, species: 'pig', part: 'heart', story: '', method: steps });
  const read = async () => Pantry.parse(await pantry(k.app, k.kitchen.id));
  const one = async (id: string) => (await read()).ingredients.find((i) => i.id === id)!;
  const numbers = async (id: string) => {
    const all = pantryOperations.dishNumbers.result.parse(await dishNumbers(k.app, k.kitchen.id));
    return all.find((d) => d.dishId === id)!;
  };

  beforeAll(async () => {
    store = await making.fresh();
    const app = appOn(store, '2026-11-20T08:00:00.000Z');
    k = await openKitchen(app);
    other = await openKitchen(app);
  });

  describe('ingredients', () => {
    it('say nothing that nobody has said: unknown is null, never nought', async () => {
      const bare = await add('Sorrel');
      expect(Object.values(bare.nutrients)).toEqual(Array(10).fill(null));
      expect(bare).toMatchObject({ allergens: null, costPerKg: null, priceId: null, prices: [], own: [] });
      const known = await add('Salt of the bay', { nutrients: { ash: 1, salt: 1 }, allergens: [] });
      expect(known.nutrients).toMatchObject({ ash: 1, salt: 1, water: null, alcohol: null });
      expect(known.own).toEqual(['ash', 'salt']);
      expect(known.allergens).toEqual([]);
    });

    it('refuse fractions that cannot be true together, by name, and a name twice', async () => {
      await expect(add('Too much', { nutrients: { water: 0.8, fat: 0.3 } })).rejects.toMatchObject({
        code: 'invalid',
        problems: [{ path: 'nutrients', found: expect.stringContaining('1.100') }],
      });
      await expect(add('Odd', { nutrients: { fat: 0.1, saturates: 0.2 } })).rejects.toMatchObject({
        problems: [{ path: 'nutrients.saturates', found: '0.2', allowed: expect.stringContaining('0.1') }],
      });
      await add('Once');
      await expect(add('Once')).rejects.toEqual(refused('conflict'));
      await addIngredient(other.app, other.actor, { name: 'Once' });
    });

    it('change one step at a time: of two people at once the second is told of the first', async () => {
      const { id } = await add('Cream', { allergens: [{ allergen: 'milk' }] });
      const ines = await addPerson(k.app, k.actor, { name: 'Ines Invented', role: 'cook' });
      const by = { ...k.actor, personId: ines.id };
      const change = (actor: typeof by, trimPct: number) =>
        changeIngredient(k.app, actor, id, { rev: 0, set: { trimPct } });
      const done = await Promise.allSettled([change(by, 5), change(k.actor, 7)]);
      expect(done.map((d) => d.status).sort()).toEqual(['fulfilled', 'rejected']);
      const lost = done.find((d) => d.status === 'rejected') as PromiseRejectedResult;
      expect(lost.reason).toMatchObject({
        code: 'conflict',
        problems: [{ path: 'rev', found: '0', allowed: '1' }],
      });
      expect(lost.reason.message).toMatch(/(Ines|Petra) Invented changed Cream/);
      const now = await one(id);
      expect(now.rev).toBe(1);
      expect(now.allergens).toEqual([{ allergen: 'milk' }]);
      await expect(changeIngredient(k.app, k.actor, id, { rev: 1, set: {} })).rejects.toEqual(
        refused('invalid'),
      );
      const [said] = await readJournal(k.app, k.kitchen.id, { limit: 1 });
      expect(said!.summary).toMatch(/^Ingredient Cream changed: trim % 0 → [57]\.$/);
    });

    it('keep every state they were in, and none of it can be rewritten', async () => {
      const { id } = await add('Verjuice', { source: 'Measured here.' });
      await changeIngredient(k.app, k.actor, id, { rev: 0, set: { densityKgM3: 1_020 }, reason: 'weighed' });
      const kept = await sql(
        `SELECT rev, became ->> 'densityKgM3' AS density, reason FROM ingredient_change WHERE ingredient_id = '${id}' ORDER BY rev`,
      );
      expect(kept).toEqual([
        { rev: 0, density: null, reason: '' },
        { rev: 1, density: '1020', reason: 'weighed' },
      ]);
      for (const text of [
        `UPDATE ingredient_change SET reason = 'x' WHERE ingredient_id = '${id}'`,
        `DELETE FROM ingredient_change WHERE ingredient_id = '${id}'`,
        `DELETE FROM ingredient WHERE id = '${id}'`,
        `UPDATE ingredient SET name = 'x' WHERE id = '${id}'`,
      ])
        await expect(sql(text), text).rejects.toThrow(/only added to|one step at a time/);
    });

    it('put away are not deleted: what uses them still reckons, and says so', async () => {
      const salt = await add('Grey salt', {
        nutrients: { ash: 1, salt: 1 },
        allergens: [],
        price: { packG: 1_000, price: 200 },
      });
      const made = await dish('Salted', [mix([line('Grey salt', 500, of('ingredient', salt.id))])]);
      const away = await putAwayIngredient(k.app, k.actor, salt.id, { rev: 0, away: true, reason: 'Gone.' });
      expect(away.putAway).toBe(true);
      expect((await listIngredients(k.app, k.kitchen.id)).map((i) => i.name)).not.toContain('Grey salt');
      expect(await numbers(made.id)).toMatchObject({ cost: 100, putAway: ['Grey salt'] });
      await expect(add('Grey salt')).rejects.toThrow(/put away; take it out again/);
      const back = await putAwayIngredient(k.app, k.actor, salt.id, { rev: 1, away: false, reason: '' });
      expect(back.putAway).toBe(false);
      expect((await numbers(made.id)).putAway).toEqual([]);
    });
  });

  describe('prices', () => {
    it('are by the pack, and a kilogram that is weighed in costs more than one that is bought', async () => {
      const made = await add('Leek', { trimPct: 20, price: { packG: 2_500, price: 500 } });
      expect(made.costPerKg).toBeCloseTo(500 / 2.5 / 0.8, 9);
      expect(made.prices).toMatchObject([
        { packG: 2_500, price: 500, from: '2026-11-20', by: 'Petra Invented' },
      ]);
      expect(made.priceId).toBe(made.prices[0]!.id);
    });

    it('are added to and never overwritten; of two from one day the later entry holds', async () => {
      const { id } = await add('Onion', { price: { packG: 1_000, price: 90, from: '2026-11-01' } });
      const price = (price: number, from: string, priceId = uuid()) =>
        priceIngredient(k.app, k.actor, id, { id: priceId, packG: 1_000, price, from });
      await price(110, '2026-11-10');
      expect((await price(120, '2026-11-10')).costPerKg).toBe(120);
      // Written down late, of an earlier day: it does not hold today.
      const all = await price(70, '2026-10-01');
      expect(all.costPerKg).toBe(120);
      expect(all.prices.map((p) => p.price)).toEqual([120, 110, 90, 70]);
      const again = uuid();
      await price(130, '2026-11-12', again);
      expect((await price(130, '2026-11-12', again)).prices).toHaveLength(5);
      await expect(price(131, '2026-11-12', again)).rejects.toEqual(refused('conflict'));
      for (const text of [
        'UPDATE ingredient_price SET price = 1',
        'DELETE FROM ingredient_price',
        'TRUNCATE ingredient_price',
      ])
        await expect(sql(text), text).rejects.toThrow(/only added to/);
    });

    it('from tomorrow do not hold today, by the calendar of the kitchen’s own zone', async () => {
      // Half past eleven in London on 20 November; in Auckland it is already the 21st.
      const late = { ...k.app, now: () => new Date('2026-11-20T23:30:00.000Z') };
      const { id } = await add('Rye flour', { price: { packG: 1_000, price: 150, from: '2026-11-01' } });
      await priceIngredient(k.app, k.actor, id, { id: uuid(), packG: 1_000, price: 180, from: '2026-11-21' });
      const at = async (now: string) =>
        (await pantry({ ...k.app, now: () => new Date(now) }, k.kitchen.id)).ingredients.find(
          (i) => i.id === id,
        )!;
      expect((await pantry(late, k.kitchen.id)).day).toBe('2026-11-20');
      expect((await at('2026-11-20T23:59:00.000Z')).costPerKg).toBe(150);
      expect((await at('2026-11-21T00:00:30.000Z')).costPerKg).toBe(180);
      expect((await at('2026-11-21T00:00:30.000Z')).prices).toHaveLength(2);
    });

    it('name what is wrong with them', async () => {
      const { id } = await add('Mace');
      const theirs = await addSupplier(other.app, other.actor, { name: 'Theirs', note: '' });
      await expect(
        priceIngredient(k.app, k.actor, id, { id: uuid(), packG: 30, price: 400, supplierId: theirs.id }),
      ).rejects.toMatchObject({ code: 'invalid', problems: [{ path: 'supplierId', found: theirs.id }] });
      await expect(
        priceIngredient(other.app, other.actor, id, { id: uuid(), packG: 30, price: 400 }),
      ).rejects.toEqual(refused('not_found'));
    });
  });

  describe('labels', () => {
    it('answer what was left to the label, and take nothing away that is known', async () => {
      const { id } = await add('Stock cube', {
        allergens: [{ allergen: 'celery' }, { allergen: 'gluten', as: 'wheat', checkLabel: true }],
      });
      const look = (more: Partial<BodyOf<'lookAtLabel'>> = {}) =>
        lookAtLabel(k.app, k.actor, id, {
          id: uuid(),
          product: 'Cubes, 60',
          supplierId: null,
          says: 'salt, MILK whey, onion',
          marks: [{ allergen: 'milk' }],
          mayContain: [{ allergen: 'eggs' }],
          at: '2026-11-20T08:00:00.000Z',
          ...more,
        });
      const seen = await look();
      expect(seen.allergens).toEqual([{ allergen: 'celery' }, { allergen: 'milk' }]);
      expect(seen).toMatchObject({
        lookCounts: true,
        mayContain: [{ allergen: 'eggs' }],
        looked: { product: 'Cubes, 60', by: 'Petra Invented', says: 'salt, MILK whey, onion' },
      });
      await expect(look({ at: '2027-01-01T00:00:00.000Z' })).rejects.toMatchObject({
        code: 'invalid',
        problems: [{ path: 'at' }],
      });
    });

    it('of another supplier’s product do not count: what is bought now has not been looked at', async () => {
      const [first, second] = [
        await addSupplier(k.app, k.actor, { name: 'First', note: '' }),
        await addSupplier(k.app, k.actor, { name: 'Second', note: '' }),
      ];
      const { id } = await add('Mustard', {
        allergens: [{ allergen: 'mustard' }, { allergen: 'sulphites', checkLabel: true }],
        price: { packG: 1_000, price: 500, supplierId: first.id },
      });
      const seen = await lookAtLabel(k.app, k.actor, id, {
        id: uuid(),
        product: 'Grain mustard',
        supplierId: first.id,
        says: '',
        marks: [{ allergen: 'mustard' }],
        mayContain: [],
        at: '2026-11-20T08:00:00.000Z',
      });
      expect(seen.allergens).toEqual([{ allergen: 'mustard' }]);
      const moved = await priceIngredient(k.app, k.actor, id, {
        id: uuid(),
        packG: 1_000,
        price: 450,
        supplierId: second.id,
      });
      expect(moved.lookCounts).toBe(false);
      expect(moved.allergens).toEqual([{ allergen: 'mustard' }, { allergen: 'sulphites', checkLabel: true }]);
    });
  });

  describe('rates and risks', () => {
    it('of rates the newest whose day has come holds; nothing is overwritten', async () => {
      expect((await read()).rates).toBeNull();
      const id = uuid();
      await setRates(k.app, k.actor, { ...rates, id, note: 'Autumn.' });
      expect((await setRates(k.app, k.actor, { ...rates, id, note: 'Autumn.' })).id).toBe(id);
      await expect(setRates(k.app, k.actor, { ...rates, vatPct: 5, id, note: '' })).rejects.toEqual(
        refused('conflict'),
      );
      await setRates(k.app, k.actor, { ...rates, from: '2027-04-01', vatPct: 15, id: uuid(), note: '' });
      const now = await read();
      expect(now.rates).toMatchObject({ id, vatPct: 20, from: '2026-11-01', by: 'Petra Invented' });
      expect(now.ratesHistory.map((r) => r.from)).toEqual(['2027-04-01', '2026-11-01']);
      await expect(
        setRates(k.app, k.actor, {
          ...rates,
          labour: [...rates.labour, { grade: 'cook', perHour: 1 }],
          id: uuid(),
          note: '',
        }),
      ).rejects.toMatchObject({ problems: [{ path: 'labour[1].grade' }] });
      await expect(sql('UPDATE kitchen_rates SET note = note')).rejects.toThrow(/only added to/);
    });

    it('a risk stands until it is ended with a reason; both stay', async () => {
      const id = uuid();
      const risk = await declareRisk(k.app, k.actor, {
        id,
        allergen: 'nuts',
        as: 'hazelnut',
        reason: 'One bench.',
      });
      expect(risk).toMatchObject({ allergen: 'nuts', as: 'hazelnut', dishId: null, ended: null });
      const ended = await withdrawRisk(k.app, k.actor, id, { reason: 'A bench of its own.' });
      expect(ended.ended).toMatchObject({ reason: 'A bench of its own.', by: 'Petra Invented' });
      expect((await withdrawRisk(k.app, k.actor, id, { reason: 'Again.' })).ended!.reason).toBe(
        'A bench of its own.',
      );
      expect((await read()).risks).toEqual([ended]);
      await expect(withdrawRisk(other.app, other.actor, id, { reason: 'x' })).rejects.toEqual(
        refused('not_found'),
      );
      await expect(
        declareRisk(k.app, k.actor, { id: uuid(), allergen: 'milk', dishId: uuid(), reason: 'x' }),
      ).rejects.toEqual(refused('not_found'));
    });
  });

  describe('dishes made of dishes', () => {
    it('a change of one price is in everything made of it, however deep, and nothing unknown is nought', async () => {
      const bone = await add('Bones', { allergens: [], price: { packG: 1_000, price: 100 } });
      const celery = await add('Celery', {
        allergens: [{ allergen: 'celery' }],
        price: { packG: 500, price: 100 },
      });
      const stock = await dish('Stock base', [
        mix([
          line('Bones', 3_000, of('ingredient', bone.id)),
          line('Celery', 1_000, of('ingredient', celery.id)),
        ]),
      ]);
      const glaze = await dish('Glaze', [
        mix([line('Stock', 4_000, of('dish', stock.id), { reduced: { toPct: 50 } })]),
      ]);
      const pie = await dish('Pie', [
        mix([
          line('Glaze', 500, of('dish', glaze.id)),
          line('Salt', 10, undefined, { pricePerKg: 60, allergens: [] }),
        ]),
      ]);
      // 3 kg of bones and 1 kg of celery are 500; cooked down to 2 kg they still are.
      expect((await numbers(stock.id)).costPerKg).toBeCloseTo(125, 9);
      expect((await numbers(glaze.id)).costPerKg).toBeCloseTo(250, 9);
      const before = await numbers(pie.id);
      expect(before.cost).toBeCloseTo(125 + 0.6, 9);
      expect(before.allergens).toEqual([
        {
          allergen: 'celery',
          certain: true,
          kinds: [],
          kindNotSaid: true,
          via: [['Glaze', 'Stock', 'Celery']],
          moreWays: 0,
        },
      ]);
      expect(before.compositionNotSaid).toEqual(expect.arrayContaining(['Bones', 'Celery', 'Salt']));
      await priceIngredient(k.app, k.actor, bone.id, { id: uuid(), packG: 1_000, price: 200 });
      expect((await numbers(pie.id)).cost).toBeCloseTo(200 + 0.6, 9);
      // What has no price makes the sum a least, not a total.
      const unpriced = await add('Truffle');
      const rich = await dish('Rich pie', [
        mix([line('Pie', 100, of('dish', pie.id)), line('Truffle', 5, of('ingredient', unpriced.id))]),
      ]);
      const said = await numbers(rich.id);
      expect(said).toMatchObject({ cost: null, costPerKg: null, priceNotSaid: ['Truffle'] });
      expect(said.atLeast).toBeGreaterThan(0);
      expect(said.allergensNotSaid).toEqual(['Truffle']);
    });

    it('a circle is refused when it is saved, naming the way round; also where two drafts make one together', async () => {
      const salt = await add('Rock salt', { price: { packG: 1_000, price: 50 } });
      const start = () => [mix([line('Rock salt', 10, of('ingredient', salt.id))])];
      const a = await dish('Alpha', start());
      const b = await dish('Beta', [mix([line('Alpha', 10, of('dish', a.id))])]);
      const c = await dish('Gamma', [mix([line('Beta', 10, of('dish', b.id))])]);
      const save = (to: string) =>
        saveVersion(k.app, k.actor, a.current.id, {
          rev: 0,
          method: [mix([line('x', 1), line('y', 5, of('dish', to))])],
        });
      await expect(save(c.id)).rejects.toMatchObject({
        code: 'invalid',
        problems: [{ path: 'method[0].lines[1].of', found: 'Alpha → Gamma → Beta → Alpha' }],
      });
      await expect(save(a.id)).rejects.toMatchObject({ problems: [{ found: 'Alpha → Alpha' }] });
      expect((await getDish(k.app, k.kitchen.id, a.id)).current.rev).toBe(0);

      // Both signed without the other; then each takes the other in a draft.
      const signed = async (name: string) => {
        const d = await dish(name, [...goodMethod(), ...start()]);
        await signVersion(k.app, k.actor, d.current.id, 0);
        return d;
      };
      const [d, e] = [await signed('Delta'), await signed('Epsilon')];
      const take = async (into: string, from: string) => {
        const next = await newVersion(k.app, k.actor, into, { reason: 'Takes the other.' });
        const method = [...goodMethod(), mix([line('other', 10, of('dish', from))])];
        return saveVersion(k.app, k.actor, next.id, { rev: 0, method });
      };
      const first = await take(d.id, e.id);
      const second = await take(e.id, d.id);
      await signVersion(k.app, k.actor, first.id, 1);
      await expect(signVersion(k.app, k.actor, second.id, 1)).rejects.toThrow(/Epsilon → Delta → Epsilon/);
    });

    it('a line that points at what is not there is refused, by its place', async () => {
      const theirs = await addIngredient(other.app, other.actor, { name: 'Theirs alone' });
      for (const [kind, id] of [
        ['ingredient', theirs.id],
        ['ingredient', uuid()],
        ['part', uuid()],
        ['dish', uuid()],
        ['table', 'no-such-row-anywhere'],
      ] as const)
        await expect(
          dish('Points nowhere', [mix([line('a', 1), line('b', 1, of(kind, id))])]),
          kind,
        ).rejects.toMatchObject({
          code: 'invalid',
          problems: [{ path: 'method[0].lines[1].of', found: `${kind} ${id}, which is not there` }],
        });
      await expect(
        dish('Points nowhere', [mix([line('a', 1, undefined, { ingredientId: uuid() })])]),
      ).rejects.toEqual(refused('invalid'));
    });

    it('the version that counts is the newest signed one, and the newest where none is', async () => {
      const salt = await add('Flake salt', { allergens: [] });
      const method = [...goodMethod(), mix([line('Flake salt', 10, of('ingredient', salt.id))])];
      const d = await dish('Counted', method);
      const inPantry = async () => (await read()).dishes.find((x) => x.id === d.id)!;
      expect(await inPantry()).toMatchObject({ number: 1, signed: false });
      await signVersion(k.app, k.actor, d.current.id, 0);
      const next = await newVersion(k.app, k.actor, d.id, { reason: 'More.' });
      await saveVersion(k.app, k.actor, next.id, {
        rev: 0,
        method: [...goodMethod(), mix([line('Flake salt', 99, of('ingredient', salt.id))])],
      });
      expect(await inPantry()).toMatchObject({ number: 1, signed: true, lines: [{ g: 10 }] });
    });
  });

  it('parts cost what is entered until a breakdown says otherwise, dearer by what is trimmed away', async () => {
    const part = await addPart(k.app, k.actor, {
      species: 'pig',
      name: 'cheek',
      sharePct: null,
      use: 'menu',
      class: 'red meat',
      valuePerKg: 600,
    });
    const bare = await addPart(k.app, k.actor, {
      species: 'pig',
      name: 'oddment',
      sharePct: null,
      use: 'menu',
    });
    await changePart(k.app, k.actor, part.id, { trimPct: 25 });
    const { parts } = await read();
    expect(parts.find((p) => p.id === part.id)).toMatchObject({
      costPerKgAsCut: 600,
      costPerKg: 800,
      allergens: [],
      costBasis: expect.stringContaining('as entered'),
    });
    expect(parts.find((p) => p.id === bare.id)).toMatchObject({ costPerKg: null, costBasis: 'not known' });
    await expect(
      changePart(k.app, k.actor, part.id, { tableId: 'no-such-row-anywhere' }),
    ).rejects.toMatchObject({
      problems: [{ path: 'tableId' }],
    });
    const none = await changePart(k.app, k.actor, part.id, { tableId: 'none' });
    expect(none.tableId).toBe('none');
    expect((await read()).parts.find((p) => p.id === part.id)).toMatchObject({
      tableId: null,
      tableBy: null,
    });
  });

  it('all of it is told in the journal, and what was changed behind it shows', async () => {
    expect(await checkJournal(k.app, k.kitchen.id)).toMatchObject({ holds: true });
    const { id } = await add('Watched');
    await sql('ALTER TABLE ingredient DISABLE TRIGGER ingredient_rules');
    await sql(`UPDATE ingredient SET allergens = '[]' WHERE id = '${id}'`);
    await sql('ALTER TABLE ingredient ENABLE TRIGGER ingredient_rules');
    expect(await checkJournal(k.app, k.kitchen.id)).toMatchObject({ holds: false });
  });
});
