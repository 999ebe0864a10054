/** Salt and shape on the bench: the front moves, the way to the salt wanted, nitrite refused, a bulge priced, the shape handed on. */
import type { Page } from '@playwright/test';
import { accessible, expect, fits, openDraft, test } from './stage.ts';

const expected = (page: Page) => page.getByRole('region', { name: 'What to expect' });

test('a brine: the front, the salt that is wanted, and nitrite that is refused', async ({ page, server }) => {
  await openDraft(page, server.url, /heart/i, 'cure');
  const panel = expected(page);
  await expect(panel.getByText(/^The middle has .* nine tenths of its way after/)).toBeVisible();
  const picture = page.getByRole('img', { name: /^Salt across the piece after/ });
  const atTheEnd = await picture.getAttribute('aria-label');
  const hours = page.getByRole('slider', { name: 'Hours of the cure' });
  await hours.focus();
  await hours.press('Home');
  await expect(picture).toHaveAttribute('aria-label', /after 0 min: /);
  await hours.press('End');
  await expect(picture).toHaveAttribute('aria-label', atTheEnd ?? '');

  await page.getByLabel('Salt wanted in the meat').fill('1.5');
  await page.getByLabel('Salt wanted in the meat').press('Enter');
  const weaker = panel.getByRole('button', { name: /^Make it/ }).last();
  await weaker.click();
  await expect(panel.getByText('For 1.5 % salt in the meat')).toBeVisible();
  await expect(page.getByLabel('Brine strength')).not.toHaveValue('4');
  await page.getByLabel('Read as').selectOption({ label: 'Salometer degrees' });
  const degrees = Number(await page.getByLabel('Brine strength').inputValue());
  expect(degrees).toBeGreaterThan(5);
  expect(degrees).toBeLessThan(20);

  await page.getByLabel('Some of the salt is curing salt with nitrite').check();
  await expect(panel.getByText('Nitrite within the law')).toBeVisible();
  await page.getByLabel('Curing salt', { exact: true }).fill('80');
  await page.getByLabel('Curing salt', { exact: true }).press('Enter');
  await expect(panel.getByText('Too much nitrite')).toBeVisible();
  await expect(panel.getByText(/Nothing is weighed out/)).toBeVisible();
  await accessible(page, 'a cure with too much nitrite');
  for (const width of [1440, 1024, 390]) {
    await page.setViewportSize({ width, height: 1000 });
    await fits(page, `cure at ${width} px`);
  }
});

test('a fill: what the bulge costs, too full, and the shape handed to the cook step and back', async ({
  page,
  server,
}) => {
  await openDraft(page, server.url, /trotter/i, 'fill');
  const panel = expected(page);
  await expect(panel.getByText(/^The [\d.]+ mm bulge at 45 mm costs \d+ min/)).toBeVisible({
    timeout: 60_000,
  });
  await expect(panel.getByText(/is reckoned for this shape/)).toBeVisible();
  const grams = page.getByLabel('Filling in a piece');
  await grams.fill('380');
  await grams.press('Enter');
  await expect(panel.getByText(/too much for this shape/)).toBeVisible();
  await expect(panel.getByText(/thicker than drawn at its thickest: about/)).toBeVisible({ timeout: 60_000 });
  await panel.getByRole('button', { name: /^Give .* this shape$/ }).click();
  await expect(panel.getByText(/is reckoned for this shape/)).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).last().click();
  await expect(panel.getByText(/is reckoned for another shape/)).toBeVisible();
  await accessible(page, 'a fill that is too full');
  for (const width of [1440, 1024, 390]) {
    await page.setViewportSize({ width, height: 1000 });
    await fits(page, `fill at ${width} px`);
  }
});
