/** A mix made otherwise: asked for, read, taken, undone; what clashes is named; curing salt and layout hold. */
import type { Page } from '@playwright/test';
import type { Dish, DishSummary, Kitchen, Person } from '../../src/contract/records.ts';
import { accessible, expect, fits, picture, test } from './stage.ts';

/** A draft of a demo dish, opened at its first step of a kind. */
async function open(page: Page, url: string, name: RegExp, kind: 'mix'): Promise<void> {
  const get = async <T>(route: string) => (await page.request.get(`${url}/api${route}`)).json() as Promise<T>;
  const kitchen = (await get<Kitchen[]>('/kitchens')).find((k) => k.demo) as Kitchen;
  const base = `/kitchens/${kitchen.id}`;
  const people = await get<Person[]>(`${base}/people`);
  const found = (await get<DishSummary[]>(`${base}/dishes`)).find((d) => name.test(d.name)) as DishSummary;
  const person = people[0]?.id ?? '';
  const before = await get<Dish>(`${base}/dishes/${found.id}`);
  if (before.current.status === 'signed') {
    const made = await page.request.post(`${url}/api${base}/dishes/${found.id}/versions`, {
      headers: { 'X-Person': person },
      data: { reason: 'A mix made otherwise.' },
    });
    expect(made.ok()).toBe(true);
  }
  const dish = await get<Dish>(`${base}/dishes/${found.id}`);
  const step = dish.current.method.find((s) => s.kind === kind);
  await page.addInitScript(
    ([key, id]) => localStorage.setItem(key ?? '', id ?? ''),
    [`fq.person.${kitchen.id}`, person],
  );
  await page.goto(`${url}/k/${kitchen.id}/dishes/${dish.id}/steps/${step?.id}`);
}

test('a mix made cheaper, taken and undone; what is impossible is named', async ({ page, server }) => {
  test.setTimeout(180_000);
  await open(page, server.url, /neck/i, 'mix');
  const panel = page.getByRole('region', { name: 'Make it…' });
  await expect(panel).toBeVisible();
  await panel.getByRole('button', { name: 'cheaper' }).click();
  await expect(panel.getByRole('table')).toBeVisible({ timeout: 30_000 });
  await expect(panel.getByText(/stand above anything shown here|stands? above/)).toBeVisible();
  await accessible(page, 'make it: a proposal');
  for (const width of [1440, 1024, 390]) {
    await page.setViewportSize({ width, height: 900 });
    await fits(page, `make it at ${width} px`);
  }
  await page.setViewportSize({ width: 1440, height: 900 });
  await picture(page, 'make-it');
  const weight = page.getByLabel(/^Weight of/).first();
  const before = await weight.inputValue();
  await panel.getByRole('button', { name: 'Use this' }).click();
  await expect(weight).not.toHaveValue(before);
  await page.getByRole('button', { name: 'Undo' }).last().click();
  await expect(weight).toHaveValue(before);

  await panel.getByRole('button', { name: 'Limits it has to hold' }).click();
  await panel.getByLabel('protein, at least', { exact: true }).fill('60');
  await panel.getByLabel('protein, at least', { exact: true }).press('Enter');
  await panel.getByRole('button', { name: 'leaner' }).click();
  await expect(panel.getByText('Not possible')).toBeVisible({ timeout: 30_000 });
  await expect(panel.getByText(/protein at least 60 %/)).toBeVisible();
  await accessible(page, 'make it: impossible');
});
