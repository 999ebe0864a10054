/** Two versions of a dish beside one another, and an older one brought back. */
import { accessible, atWork, expect, fits, test } from './stage.ts';

test('what changed between two versions, what it does to safety, and the older one brought back', async ({
  page,
  server,
}) => {
  const { kitchen } = await atWork(page, server.url);
  await page.goto(`${server.url}/k/${kitchen.id}/dishes`);
  await page.getByRole('link', { name: 'Stuffed trotter, chestnut and juniper' }).click();
  await page.getByRole('link', { name: 'What changed between 1 and 2' }).click();
  await expect(page.getByRole('heading', { name: 'Version 1 beside version 2' })).toBeVisible();
  await expect(page.getByRole('region', { name: /^Changes of Steam/ })).toBeVisible();
  // Each side is run by the engine; neither is called held before it has answered.
  await expect(page.getByText(/^Version 1: (?!working)/)).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText(/^Version 2: (?!working)/)).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText('Worth by the end')).toHaveCount(2);
  await accessible(page, 'two versions');
  for (const width of [1440, 1024, 390]) {
    await page.setViewportSize({ width, height: 1000 });
    await expect(async () => fits(page, `two versions at ${width} px`)).toPass({ timeout: 5_000 });
  }
  await page.setViewportSize({ width: 1440, height: 1000 });
  await page.goto(`${server.url}/k/${kitchen.id}/dishes`);
  await page.getByRole('link', { name: 'Stuffed trotter, chestnut and juniper' }).click();
  await page.getByRole('link', { name: 'Version 1', exact: true }).click();
  await page.getByRole('button', { name: 'New version because…' }).click();
  await expect(page.getByText(/copy of version 1, which is brought back this way/)).toBeVisible();
  await page.getByRole('textbox', { name: 'Because' }).fill('The first was juicier.');
  await page.getByRole('button', { name: /^Begin/ }).click();
  await expect(page.getByText('The first was juicier.')).toBeVisible();
  await expect(page.getByRole('link', { name: 'Version 2', exact: true })).toBeVisible();
});
