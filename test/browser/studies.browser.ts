/** How large and how many the chill takes, and warming through in the same engine as the cook. */
import type { Page } from '@playwright/test';
import { accessible, expect, fits, openDraft, test } from './stage.ts';

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
  await openDraft(page, server.url, /trotter/i, 'finish');
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
  await openDraft(page, server.url, /heart/i, 'chill');
  const panel = page.getByRole('region', { name: 'How large, how many' });
  await panel.getByRole('button', { expanded: false }).first().click();
  const fields = page.locator('#chill-size-fields');
  await fields.locator('button.button-strong').click();
  await expect(panel.getByLabel('How large and how many')).toBeVisible({ timeout: 120_000 });
  await accessible(page, 'how large, how many');
  await everyWidth(page, 'how large, how many');
});
