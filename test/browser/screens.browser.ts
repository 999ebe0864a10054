/** Every screen, full and empty, at the three widths and in both themes: it fits, and axe finds nothing serious. */
import type { Page } from '@playwright/test';
import type { BatchSummary, Dish, DishSummary, Kitchen } from '../../src/contract/records.ts';
import { accessible, expect, fits, test } from './stage.ts';

const widths = [
  { width: 1440, height: 1000 },
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
];

async function settled(page: Page): Promise<void> {
  await expect(page.locator('main h1').first()).toBeVisible();
  await expect(page.getByText(/^(Opening|Reading|Working it out)\b/)).toHaveCount(0, { timeout: 20_000 });
}

async function look(page: Page, url: string, where: string): Promise<void> {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    for (const size of widths) {
      await page.setViewportSize(size);
      if (colorScheme === 'light' && size.width === 1440) await page.goto(url);
      await settled(page);
      await fits(page, `${where}, ${size.width} px, ${colorScheme}`);
      if (size.width !== 1024) await accessible(page, `${where}, ${size.width} px, ${colorScheme}`);
    }
  }
}

/** The demo kitchen's screens in groups, so that they can be looked at side by side. */
const groups: Readonly<Record<string, readonly string[]>> = {
  'the door, and what comes in': [
    'animals',
    'animals/shelf',
    'animals/law',
    'animals/law/ask?species=goose&part=head',
    'animals/suppliers',
    'animals/deliveries',
    'animals/deliveries/take-in',
  ],
  'what is cut up': [
    'animals/breakdowns',
    'animals/breakdowns/start',
    'animals/breakdowns/import',
    'animals/yields',
  ],
  'the other places': [
    'dishes',
    'dishes/new',
    'dishes/ingredients',
    'dishes/rates',
    'week',
    'line',
    'proof',
    'proof/checks',
    'settings',
  ],
};

async function demo(page: Page, url: string) {
  const get = async <T>(route: string): Promise<T> =>
    (await page.request.get(`${url}/api${route}`)).json() as Promise<T>;
  const kitchen = (await get<Kitchen[]>('/kitchens')).find((k) => k.demo) as Kitchen;
  return { get, base: `/kitchens/${kitchen.id}`, at: `${url}/k/${kitchen.id}` };
}

for (const [name, places] of Object.entries(groups))
  test(`every screen of the demo kitchen: ${name}`, async ({ page, server }) => {
    test.setTimeout(300_000);
    const { at } = await demo(page, server.url);
    if (name.startsWith('the door')) await look(page, `${server.url}/`, 'the door');
    for (const place of places) await look(page, `${at}/${place}`, place);
  });

test('every screen of the demo kitchen: a dish, each of its steps, and its price', async ({
  page,
  server,
}) => {
  test.setTimeout(300_000);
  const { get, base, at } = await demo(page, server.url);
  const dishes = await get<DishSummary[]>(`${base}/dishes`);
  const signed = dishes.find((d) => d.stage === 'signed') as DishSummary;
  const idea = dishes.find((d) => d.stage === 'idea') as DishSummary;
  const dish = await get<Dish>(`${base}/dishes/${signed.id}`);
  await look(page, `${at}/dishes/${idea.id}`, 'an idea');
  await look(page, `${at}/dishes/${signed.id}/price`, 'its price');
  for (const step of dish.current.method) {
    await page.emulateMedia({ colorScheme: 'light' });
    await page.setViewportSize({ width: 390, height: 844 });
    await page.goto(`${at}/dishes/${dish.id}/steps/${step.id}`);
    await settled(page);
    await fits(page, `the step ${step.kind} on a phone`);
    await accessible(page, `the step ${step.kind} on a phone`);
  }
});

test('every screen of the demo kitchen: its batches', async ({ page, server }) => {
  test.setTimeout(300_000);
  const { get, base, at } = await demo(page, server.url);
  const batches = await get<BatchSummary[]>(`${base}/batches`);
  expect(batches.length).toBeGreaterThan(0);
  for (const batch of batches) await look(page, `${at}/line/${batch.id}`, `a batch that is ${batch.status}`);
});

test('an empty kitchen: every place says what it is for', async ({ page, server }) => {
  test.setTimeout(240_000);
  await page.goto(`${server.url}/`);
  await page.getByRole('button', { name: 'Set up my own kitchen' }).click();
  await page
    .getByRole('textbox', { name: /name of the kitchen|kitchen/i })
    .first()
    .fill('Behind the Weir');
  await page.getByRole('textbox', { name: /your name/i }).fill('Ida Quill');
  await page
    .getByRole('button', { name: /^(Set up|Open|Begin)/ })
    .last()
    .click();
  await page.waitForURL(/\/k\/[0-9a-f-]{36}\//);
  const at = page.url().replace(/(\/k\/[0-9a-f-]{36}).*/, '$1');
  await expect(page.getByText('invented data')).toHaveCount(0);
  for (const place of [
    'animals',
    'animals/shelf',
    'animals/breakdowns',
    'animals/breakdowns/start',
    'animals/yields',
    'animals/suppliers',
    'animals/deliveries',
    'animals/deliveries/take-in',
    'dishes',
    'week',
    'line',
    'proof',
  ]) {
    await look(page, `${at}/${place}`, `${place}, empty`);
    const words = (await page.locator('main').textContent()) ?? '';
    expect(words.length, `${place} says something`).toBeGreaterThan(60);
  }
});

test('what one screen records, another shows at once', async ({ page, context, server }) => {
  const kitchens = (await (await page.request.get(`${server.url}/api/kitchens`)).json()) as Kitchen[];
  const kitchen = kitchens.find((k) => k.demo) as Kitchen;
  const suppliers = `${server.url}/k/${kitchen.id}/animals/suppliers`;
  const other = await context.newPage();
  await other.goto(suppliers);
  await settled(other);
  const people = (await (
    await page.request.get(`${server.url}/api/kitchens/${kitchen.id}/people`)
  ).json()) as {
    id: string;
  }[];
  const made = await page.request.post(`${server.url}/api/kitchens/${kitchen.id}/suppliers`, {
    headers: { 'x-person': people[0]?.id as string, origin: server.url },
    data: { name: 'Far Bank Rabbits (invented)', note: '' },
  });
  expect(made.status()).toBe(200);
  await expect(other.getByText('Far Bank Rabbits (invented)')).toBeVisible();
});
