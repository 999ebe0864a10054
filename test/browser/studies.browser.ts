/** How large and how many the chill takes, and warming through in the same engine as the cook. */
import type { Page } from '@playwright/test';
import type { Dish, DishSummary, Kitchen, Person } from '../../src/contract/records.ts';
import type { StepKind } from '../../src/contract/steps.ts';
import { accessible, expect, fits, test } from './stage.ts';

/** A draft of a demo dish, opened at its first step of a kind. */
async function open(page: Page, url: string, name: RegExp, kind: StepKind): Promise<void> {
  const get = async <T>(route: string) => (await page.request.get(`${url}/api${route}`)).json() as Promise<T>;
  const kitchen = (await get<Kitchen[]>('/kitchens')).find((k) => k.demo) as Kitchen;
  const base = `/kitchens/${kitchen.id}`;
  const [person] = await get<Person[]>(`${base}/people`);
  const found = (await get<DishSummary[]>(`${base}/dishes`)).find((d) => name.test(d.name)) as DishSummary;
  const before = await get<Dish>(`${base}/dishes/${found.id}`);
  if (before.current.status === 'signed') {
    const made = await page.request.post(`${url}/api${base}/dishes/${found.id}/versions`, {
      headers: { 'X-Person': person?.id ?? '' },
      data: { reason: 'Looked at again.' },
    });
    expect(made.ok()).toBe(true);
  }
  const dish = await get<Dish>(`${base}/dishes/${found.id}`);
  const step = dish.current.method.find((s) => s.kind === kind);
  await page.addInitScript(
    ([key, id]) => localStorage.setItem(key ?? '', id ?? ''),
    [`fq.person.${kitchen.id}`, person?.id ?? ''],
  );
  await page.goto(`${url}/k/${kitchen.id}/dishes/${dish.id}/steps/${step?.id}`);
}

async function everyWidth(page: Page, where: string): Promise<void> {
  for (const width of [1440, 1024, 390]) {
    await page.setViewportSize({ width, height: 1000 });
    // The curves are drawn again when the window has come to rest.
    await expect(async () => fits(page, `${where} at ${width} px`)).toPass({ timeout: 5_000 });
  }
}

test('warming through: not known until it is worked out, then from the freezer, then cut smaller', async ({
  page,
  server,
}) => {
  await open(page, server.url, /trotter/i, 'finish');
  const panel = page.getByRole('region', { name: 'Warming through' });
  await expect(panel.getByText(/whether its middle gets hot is not known/)).toBeVisible();
  await panel.getByRole('button', { name: 'Work out the warming through' }).click();
  await expect(panel.getByText(/From “.*”: .* right through/)).toBeVisible();
  await expect(panel.getByText('Predicted, not measured.')).toBeVisible({ timeout: 60_000 });
  await panel.getByLabel('Goes in at').fill('-18');
  await panel.getByLabel('Goes in at').press('Enter');
  await panel.getByRole('button', { name: 'Thaw it in the fridge first' }).click();
  await expect(panel.getByText(/The ice has gone after/)).toBeVisible({ timeout: 60_000 });
  await expect(panel.getByRole('heading', { name: 'What may grow on the way' })).toBeVisible();
  await panel.getByRole('button', { name: 'It is cut smaller' }).click();
  await expect(panel.getByRole('heading', { name: 'The piece' })).toBeVisible();
  await accessible(page, 'warming through');
  await everyWidth(page, 'warming through');
  await panel.getByRole('button', { name: 'Do not work it out' }).click();
  await expect(panel.getByText(/whether its middle gets hot is not known/)).toBeVisible();
});

test('how large and how many the chill takes', async ({ page, server }) => {
  await open(page, server.url, /heart/i, 'chill');
  const panel = page.getByRole('region', { name: 'How large, how many' });
  await panel.getByRole('button', { expanded: false }).first().click();
  const fields = page.locator('#chill-size-fields');
  await fields.locator('button.button-strong').click();
  await expect(panel.getByLabel('How large and how many')).toBeVisible({ timeout: 120_000 });
  await accessible(page, 'how large, how many');
  await everyWidth(page, 'how large, how many');
});
