/** What a portion costs and must be sold for, and the rates that it rests on. */
import { accessible, atWork, expect, fits, test } from './stage.ts';

test('weights and price: from the bench to a menu price, and back when the part gets dearer', async ({
  page,
  server,
}) => {
  const { kitchen } = await atWork(page, server.url);
  await page.goto(`${server.url}/k/${kitchen.id}/dishes`);
  await page.getByRole('link', { name: /^Heart ballotine/ }).click();
  await page.getByRole('link', { name: 'Weights and price' }).click();
  await expect(page.getByRole('heading', { name: 'Weights and price' })).toBeVisible();
  const number = page.locator('.price-number');
  await expect(number).toHaveText(/£\d/);
  const before = await number.textContent();
  await page.getByRole('slider').fill('300');
  await expect(number).not.toHaveText(before ?? '');
  await page.getByRole('slider').fill('100');
  await expect(number).toHaveText(before ?? '');

  // A price that does not pay for its hands is said to lose, however good the margin on food looks.
  const asked = page.getByLabel(/^At a price of/);
  await asked.fill('1');
  await asked.press('Enter');
  await expect(page.getByText('It costs more than it brings')).toBeVisible();
  await asked.fill('60');
  await asked.press('Enter');
  await expect(page.getByText('It costs more than it brings')).toBeHidden();
  await expect(page.getByText(/portions pay for a service/)).toBeVisible();

  const weights = page.getByRole('region', { name: 'Weights by step' });
  await expect(weights.getByRole('row')).not.toHaveCount(0);
  await expect(weights.getByText(/weigh it once/).first()).toBeVisible();
  await accessible(page, 'weights and price');
  for (const width of [1440, 1024, 390]) {
    await page.setViewportSize({ width, height: 1000 });
    await expect(async () => fits(page, `weights and price at ${width} px`)).toPass({ timeout: 5_000 });
  }
});

test('rates: a new entry stands above the old one, which stays', async ({ page, server }) => {
  const { kitchen } = await atWork(page, server.url);
  await page.goto(`${server.url}/k/${kitchen.id}/dishes/rates`);
  const held = page.getByRole('listitem').filter({ hasText: '(holds today)' });
  await expect(held).toHaveCount(1);
  const entries = await page
    .getByRole('listitem')
    .filter({ hasText: /^From \d/ })
    .count();
  await page.getByLabel('Margin wanted, of the price without tax').fill('71');
  await page.getByLabel('Margin wanted, of the price without tax').press('Enter');
  await page.getByLabel('Note (may stay empty)').fill('Dearer gas.');
  await page.getByRole('button', { name: 'Keep these rates' }).click();
  await expect(page.getByRole('listitem').filter({ hasText: /^From \d/ })).toHaveCount(entries + 1);
  await expect(held).toHaveCount(1);
  await expect(held).toContainText('margin 71 %');
  await accessible(page, 'rates');
  await page.setViewportSize({ width: 390, height: 900 });
  await fits(page, 'rates at 390 px');
});
