/** A mix made otherwise: asked for, read, taken, undone; what clashes is named; curing salt and layout hold. */
import { accessible, expect, fits, openDraft, picture, test } from './stage.ts';

test('a mix made cheaper, taken and undone; what is impossible is named', async ({ page, server }) => {
  test.setTimeout(180_000);
  await openDraft(page, server.url, /neck/i, 'mix');
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
