/** The bench from nothing: a dish in a kitchen of one's own, every kind of step laid, moved, taken out and brought back. */
import type { Page } from '@playwright/test';
import { stepKinds } from '../../src/contract/steps.ts';
import { accessible, expect, fits, test } from './stage.ts';

const steps = (page: Page) => page.getByRole('navigation', { name: 'Steps of the method' }).getByRole('link');
const names = async (page: Page): Promise<string[]> =>
  (await steps(page).evaluateAll((links) => links.map((l) => l.getAttribute('aria-label') ?? ''))).map(
    (label) => /^Step \d+, (.*?),/.exec(label)?.[1] ?? label,
  );

test('every kind of step is added, moved, taken out and brought back', async ({ page, server }) => {
  await page.goto(`${server.url}/`);
  await page.getByRole('button', { name: 'Set up my own kitchen' }).click();
  await page.getByRole('textbox', { name: 'Kitchen’s name' }).fill('Under the Tannery');
  await page.getByRole('textbox', { name: 'Your name' }).fill('Ida Quill');
  await page
    .getByRole('button', { name: /^(Set up|Open|Begin)/ })
    .last()
    .click();
  await page.waitForURL(/\/k\/[0-9a-f-]{36}\//);
  await page.goto(`${page.url().replace(/(\/k\/[0-9a-f-]{36}).*/, '$1')}/dishes/new`);
  await page.getByRole('textbox', { name: 'Name' }).fill('Lamb breast, rolled');
  await page
    .getByRole('textbox', { name: 'Animal' })
    .or(page.getByRole('combobox', { name: 'Animal' }))
    .fill('sheep');
  await page
    .getByRole('textbox', { name: 'Part' })
    .or(page.getByRole('combobox', { name: 'Part' }))
    .fill('web of the shoulder purse');
  await page.getByRole('radio', { name: /blank|nothing|empty/i }).check({ force: true });
  await page.locator('form').getByRole('button').last().click();
  await expect(page.getByRole('heading', { name: 'Lamb breast, rolled' })).toBeVisible();

  await test.step('all eleven kinds', async () => {
    for (const [i] of stepKinds.entries()) {
      await page
        .getByRole('button', { name: 'Add a step' })
        .or(page.getByRole('button', { name: /first step/i }))
        .first()
        .click();
      await page.getByRole('dialog', { name: 'Add a step' }).locator('button.kind').nth(i).click();
      await expect(steps(page)).toHaveCount(i + 1);
      await accessible(page, `the bench with ${stepKinds[i]}`);
    }
  });

  const whole = await names(page);
  expect(new Set(whole).size).toBe(stepKinds.length);

  await test.step('moved, taken out, undone, done again', async () => {
    await steps(page).nth(0).click();
    await page.getByRole('button', { name: 'Move later' }).click();
    expect(await names(page)).toEqual([whole[1], whole[0], ...whole.slice(2)]);
    await page.getByRole('button', { name: 'Remove', exact: true }).click();
    await expect(steps(page)).toHaveCount(whole.length - 1);
    await page.locator('#main').getByRole('button', { name: 'Undo' }).click();
    await page.locator('#main').getByRole('button', { name: 'Undo' }).click();
    expect(await names(page)).toEqual(whole);
    await page.getByRole('button', { name: 'Redo' }).click();
    expect(await names(page)).toEqual([whole[1], whole[0], ...whole.slice(2)]);
    await page.locator('#main').getByRole('button', { name: 'Undo' }).click();
  });

  await test.step('kept: the same after the page is opened again', async () => {
    await expect(page.getByText(/^Saved/)).toBeVisible();
    await page.reload();
    await expect(steps(page)).toHaveCount(whole.length);
    expect(await names(page)).toEqual(whole);
  });

  await test.step('not signed while nobody can say that it may be served', async () => {
    await expect(page.getByText(/Until then it cannot be signed/).first()).toBeVisible();
    await expect(page.getByRole('link', { name: 'Ask the authority' })).toBeVisible();
    await expect(page.getByRole('button', { name: 'Sign this version' })).toHaveCount(0);
    await page.setViewportSize({ width: 390, height: 844 });
    await fits(page, 'the bench on a phone');
  });
});
