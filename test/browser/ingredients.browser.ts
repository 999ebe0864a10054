/** The pantry: an ingredient added from the published table, priced, its label looked at; and a mix scaled in the scale's steps. */
import type { Dish, DishSummary } from '../../src/contract/records.ts';
import { accessible, atWork, expect, fits, test } from './stage.ts';

test('an ingredient is added, priced and its label looked at; a mix is made for fewer pieces', async ({
  page,
  server,
}) => {
  const { get, kitchen, base, person } = await atWork(page, server.url);
  await page.goto(`${server.url}/k/${kitchen.id}/dishes`);
  await page.getByRole('link', { name: 'Ingredients' }).click();
  await page.getByRole('textbox', { name: 'Name' }).fill('Celeriac');
  await expect(page.getByLabel('It is, in the published table')).toContainText(/celeriac/i);
  await page.getByLabel('A pack costs (may stay empty)').fill('2.40');
  await page.getByLabel('A pack costs (may stay empty)').press('Enter');
  await page.getByRole('button', { name: 'Add it' }).click();
  await page.getByRole('textbox', { name: 'Find' }).fill('celeriac');
  const row = page.getByRole('row', { name: /Celeriac/ });
  await expect(row).toContainText('£2.40');
  await expect(row).toContainText('celery');
  await accessible(page, 'ingredients');
  await page.setViewportSize({ width: 390, height: 844 });
  await fits(page, 'ingredients at 390 px');
  await page.setViewportSize({ width: 1440, height: 1000 });

  await row.getByRole('link', { name: 'Celeriac' }).click();
  await page.getByLabel('A pack costs').fill('3');
  await page.getByLabel('A pack costs').press('Enter');
  await page.getByRole('button', { name: 'Keep this price' }).click();
  await expect(page.getByText('£3.00 a kilogram weighed in, today.')).toBeVisible();
  await expect(page.getByText('£2.40 for')).toBeVisible();
  await page.getByRole('textbox', { name: 'What was looked at' }).fill('Celeriac, loose (invented)');
  await page.getByRole('textbox', { name: 'Allergens it emphasises' }).fill('celery');
  await page.getByRole('button', { name: 'I looked at the label' }).click();
  await expect(page.getByText(/looked at the label of Celeriac, loose/)).toBeVisible();
  await accessible(page, 'one ingredient');
  await page.setViewportSize({ width: 390, height: 844 });
  await fits(page, 'one ingredient at 390 px');
  await page.setViewportSize({ width: 1440, height: 1000 });

  const found = (await get<DishSummary[]>(`${base}/dishes`)).find((d) =>
    d.name.startsWith('Stuffed trotter'),
  ) as DishSummary;
  await page.request.post(`${server.url}/api${base}/dishes/${found.id}/versions`, {
    headers: { 'X-Person': person },
    data: { reason: 'For three.' },
  });
  const dish = await get<Dish>(`${base}/dishes/${found.id}`);
  const mix = dish.current.method.find((s) => s.kind === 'mix');
  await page.goto(`${server.url}/k/${kitchen.id}/dishes/${dish.id}/steps/${mix?.id}`);
  await expect(page.getByRole('rowheader', { name: 'water to protein' })).toBeVisible();
  await expect(page.getByText(/by today’s prices/)).toBeVisible();
  await page.getByRole('button', { name: 'Make more or less of it…' }).click();
  const scale = page.getByRole('region', { name: 'More or less of it' });
  await scale.getByLabel(/^Pieces/).fill('3');
  await scale.getByLabel(/^Pieces/).press('Enter');
  await expect(scale.getByRole('row', { name: /Hock meat/ })).toContainText('490 g');
  await accessible(page, 'a mix for fewer');
  await scale.getByRole('button', { name: 'Write it so' }).click();
  await expect(page.getByLabel('Weight of Hock meat')).toHaveValue('490');

  await page.getByRole('button', { name: 'Paste a list…' }).click();
  const list = page.getByRole('dialog', { name: 'A list of ingredients' });
  await list
    .getByRole('textbox', { name: 'As you would write it' })
    .fill('200 g chicken liver\n2 egg whites\na few olives');
  await expect(list.getByText(/2 egg whites/).first()).toBeVisible();
  await expect(list.getByRole('paragraph').filter({ hasText: 'No weight, so not taken:' })).toContainText(
    'olives',
  );
  await accessible(page, 'a pasted list');
  await list.getByRole('button', { name: 'Take these 2 lines' }).click();
  await expect(page.getByLabel(/^Weight of .*chicken.*liver/i)).toHaveValue('200');
  await page.setViewportSize({ width: 390, height: 844 });
  await expect(async () => fits(page, 'the mix step at 390 px')).toPass({ timeout: 5_000 });
});
