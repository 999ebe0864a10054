/**
 * Animals once through, by the keys alone: asked in writing, agreed, six geese delivered and checked, cut into fourteen
 * parts, what they yield, the shelf, a batch of one of the parts, and back from that batch to the geese.
 */
import type { Locator, Page } from '@playwright/test';
import type { Breakdown } from '../../src/contract/breakdown.ts';
import type { Delivery } from '../../src/contract/delivery.ts';
import type { Batch, Kitchen, Person } from '../../src/contract/records.ts';
import type { ShelfLot, ShelfLotDetail } from '../../src/contract/shelf.ts';
import type { Specification } from '../../src/contract/specification.ts';
import type { YieldsAnswer } from '../../src/contract/yields.ts';
import { expect, test } from './stage.ts';

/** What six geese of 4.5 kg give here [g]; invented. */
const grams: Readonly<Record<string, number>> = {
  breast: 6_820,
  thighs: 2_330,
  drumsticks: 2_400,
  wings: 3_560,
  back: 4_960,
  'neck skin': 645,
  'neck meat and bone': 915,
  'loose fat': 1_340,
  liver: 508,
  heart: 238,
  gizzard: 912,
  feet: 780,
  head: 1_255,
  drip: 90,
};

/** Nothing but keys: every press is counted. */
class Keys {
  pressed = 0;
  private readonly page: Page;
  constructor(page: Page) {
    this.page = page;
  }
  async press(key: string): Promise<void> {
    this.pressed++;
    await this.page.keyboard.press(key);
  }
  async type(text: string): Promise<void> {
    for (const key of text) {
      this.pressed++;
      await this.page.keyboard.type(key);
    }
  }
  /** Tab until the focus is there: what cannot be reached so is a fault. */
  async reach(target: Locator, way: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
    await expect(target).toBeVisible();
    const there = () => target.evaluate((element) => element === document.activeElement);
    for (let i = 0; i < 250; i++) {
      if (await there()) return;
      await this.press(way);
    }
    throw new Error(`the keyboard does not reach ${target}`);
  }
  async open(target: Locator): Promise<void> {
    await this.reach(target);
    await this.press('Enter');
  }
  async fill(target: Locator, text: string): Promise<void> {
    await this.reach(target);
    await this.press('Control+a');
    await this.type(text);
  }
}

test('from what is asked of a farm to a batch, and back to the geese, by keyboard', async ({
  page,
  server,
}) => {
  test.setTimeout(400_000);
  const get = async <T>(route: string): Promise<T> =>
    (await page.request.get(`${server.url}/api${route}`)).json() as Promise<T>;
  const kitchen = (await get<Kitchen[]>('/kitchens')).find((k) => k.demo) as Kitchen;
  const base = `/kitchens/${kitchen.id}`;
  const people = await get<Person[]>(`${base}/people`);
  const wren = people.find((p) => p.role === 'head chef') as Person;
  await page.addInitScript(
    ([key, id]) => localStorage.setItem(key as string, id as string),
    [`fq.person.${kitchen.id}`, wren.id],
  );
  const keys = new Keys(page);
  const link = (name: string | RegExp) => page.getByRole('link', { name }).first();
  const button = (name: string | RegExp) => page.getByRole('button', { name }).first();
  const box = (name: string | RegExp) => page.getByRole('textbox', { name }).first();
  const farm = 'Geese of the Upper Weir (invented)';

  await test.step('a specification is begun, sent and agreed', async () => {
    await page.goto(`${server.url}/k/${kitchen.id}/animals/suppliers`);
    await keys.open(button('Add a supplier'));
    await keys.fill(box('Name'), farm);
    await keys.open(button('Write it down'));
    await keys.open(link(farm));
    await keys.open(link('Ask for something in writing'));
    const start = page.getByRole('radio', { name: /^Whole geese/ });
    await keys.reach(page.getByRole('radio').first());
    await keys.press('Space');
    for (let i = 0; i < 12 && !(await start.isChecked()); i++) await keys.press('ArrowDown');
    await expect(start).toBeChecked();
    await keys.open(button('Begin the sheet'));
    await keys.open(button('Send version 1'));
    await keys.open(button('Write down what they answered'));
    await keys.reach(page.getByLabel('Answer', { exact: true }));
    await keys.type('agreed');
    await keys.fill(box('Who said it'), 'the farmer (invented)');
    await keys.open(button('Write it down'));
    await expect(page.getByText('In force', { exact: true })).toBeVisible();
    const made = (await get<Specification[]>(`${base}/specifications`)).find((s) => s.supplierName === farm);
    expect(made?.inForce).toBe(1);
  });

  const lot = await test.step('six geese are delivered and checked point by point', async () => {
    await keys.open(link(farm));
    await keys.open(link('Take in a delivery'));
    await keys.fill(box('What came'), 'Geese, six');
    await keys.fill(box('Weight'), '27000');
    await keys.fill(box('How many animals'), '6');
    await keys.fill(box('Temperature'), '3');
    await keys.press('Tab');
    const points = page.locator('.points fieldset');
    const seen = await points.count();
    expect(seen).toBeGreaterThan(5);
    for (let i = 0; i < seen; i++) {
      const choices = points.nth(i).getByRole('radio');
      const met = points.nth(i).getByRole('radio', { name: 'met', exact: true });
      // A group is one stop of the Tab key, at what is marked; the arrows go round.
      await keys.reach(choices.last());
      for (let j = 0; j < 3 && !(await met.isChecked()); j++) await keys.press('ArrowDown');
      await expect(met).toBeChecked();
    }
    await keys.open(button(/^Accept$/));
    await page.waitForURL(/\/deliveries\/[0-9a-f-]{36}$/);
    const taken = await get<Delivery>(`${base}/deliveries/${page.url().split('/').at(-1)}`);
    expect(taken.decision).toBe('accepted');
    expect(taken.pointsMet).toBe(taken.pointsAsked);
    return taken.lotIds[0] as string;
  });
  const goose = await get<ShelfLotDetail>(`${base}/lots/${lot}`);

  const cut = await test.step('cut into fourteen parts, at most six keys a part', async () => {
    await keys.open(link('Break it down'));
    const way = page.getByLabel('How it is cut');
    await expect(way).toContainText('Geese, long necks');
    if ((await way.locator('option:checked').textContent()) !== 'Geese, long necks') {
      await keys.reach(way);
      await keys.type('Geese, long');
    }
    await keys.open(button('To the scale'));
    await page.waitForURL(/breakdowns\/[0-9a-f-]{36}$/);
    const id = page.url().split('/').at(-1) as string;
    let most = 0;
    for (const [name, weight] of Object.entries(grams)) {
      await expect(page.getByRole('heading', { name: new RegExp(`^${name}$`, 'i') })).toBeVisible();
      const before = keys.pressed;
      await keys.type(String(weight));
      await keys.press('Enter');
      most = Math.max(most, keys.pressed - before);
    }
    expect(most).toBeLessThanOrEqual(6);
    await expect(page.getByText(/^Everything is weighed/)).toBeVisible();
    await expect(page.getByText(/not sent yet/)).toHaveCount(0);
    await keys.open(link(/^Finish/));
    await keys.open(button(/^Finish by/));
    await expect(page.getByText(/^Finished/).first()).toBeVisible();
    const done = await get<Breakdown>(`${base}/breakdowns/${id}`);
    expect(done.weighings).toHaveLength(14);
    const out = Object.values(grams).reduce((sum, g) => sum + g, 0);
    expect(done.standing.unaccountedGrams).toBeCloseTo(27_000 - out, 6);
    expect(done.made).toHaveLength(11);
    return done;
  });

  await test.step('the yields count them', async () => {
    await keys.open(link('Yields'));
    await expect(page.getByRole('heading', { name: 'Animals' })).toBeVisible();
    const now = await get<YieldsAnswer>(`${base}/yields?species=goose`);
    expect(now.parts.find((p) => p.part === 'neck skin')?.weighings).toBeGreaterThan(1);
    expect(now.used.some((u) => u.breakdownId === cut.id)).toBe(true);
  });

  const skins = await test.step('the neck skins are on the shelf', async () => {
    await keys.open(link('Shelf'));
    const made = cut.made.find((m) => m.what.includes('neck skin'));
    await expect(page.getByText(made?.code ?? 'no lot').first()).toBeVisible();
    const shelf = await get<ShelfLot[]>(`${base}/shelf`);
    expect(shelf.find((l) => l.id === made?.lotId)?.leftGrams).toBe(grams['neck skin']);
    return made as Breakdown['made'][number];
  });

  const batch = await test.step('a batch is made of them', async () => {
    await page.goto(`${server.url}/k/${kitchen.id}/line/start`);
    const dish = page.getByLabel('Dish', { exact: true });
    await keys.reach(dish);
    await keys.type('Goose neck');
    await expect(dish.locator('option:checked')).toContainText('Goose neck');
    await keys.reach(page.locator('input.pad-text').first());
    await keys.type('6');
    await keys.press('Enter');
    const asShown = button(/that is what it shows/);
    if (await asShown.isVisible().catch(() => false)) await keys.open(asShown);
    await keys.reach(page.getByRole('checkbox', { name: new RegExp(skins.code) }));
    await keys.press('Space');
    await keys.open(button(/^Start 6 pieces/));
    await page.waitForURL(/\/line\/[0-9a-f-]{36}/);
    const id = page.url().match(/line\/([0-9a-f-]{36})/)?.[1] as string;
    const made = await get<Batch>(`${base}/batches/${id}`);
    expect(made.lots.map((l) => l.code)).toEqual([skins.code]);
    return made;
  });

  await test.step('and back: from the part to the geese, from the geese to the batch', async () => {
    const part = await get<ShelfLotDetail>(`${base}/lots/${skins.lotId}`);
    expect(part.batches.map((b) => b.code)).toEqual([batch.code]);
    await page.goto(`${server.url}/k/${kitchen.id}/animals/shelf/${skins.lotId}`);
    await expect(link(batch.code)).toBeVisible();
    await keys.open(page.getByRole('link', { name: goose.code, exact: true }).first());
    await page.waitForURL(new RegExp(lot));
    await expect(page.getByText(farm).first()).toBeVisible();
    await expect(link(skins.code)).toBeVisible();
    const whole = await get<ShelfLotDetail>(`${base}/lots/${lot}`);
    expect(whole.descendants.map((d) => d.code)).toContain(skins.code);
    expect(whole.leftGrams).toBe(0);
  });
  test.info().annotations.push({ type: 'keys', description: `${keys.pressed} in all` });
});
