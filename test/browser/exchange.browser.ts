/** A dish taken away as a file and brought in again; a recipe pasted; a file that is wrong. */
import fs from 'node:fs';
import { accessible, atWork, expect, fits, test } from './stage.ts';

test('a dish is taken away as a file and brought in again, read before it is kept', async ({
  page,
  server,
}) => {
  const { kitchen } = await atWork(page, server.url);
  await page.goto(`${server.url}/k/${kitchen.id}/dishes`);
  await page.getByRole('link', { name: 'Stuffed trotter, chestnut and juniper' }).click();
  await page.getByText('Take it away as a file').click();
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'All versions, for another kitchen' }).click();
  const download = await coming;
  expect(download.suggestedFilename()).toBe('stuffed-trotter-chestnut-and-juniper.dish.json');
  const text = fs.readFileSync(await download.path(), 'utf8');
  expect(JSON.parse(text)).toMatchObject({ format: 'fifth-quarter-dish', formatVersion: 1 });
  await accessible(page, 'taking a dish away');

  await page.goto(`${server.url}/k/${kitchen.id}/dishes/new`);
  const pasted = page.getByRole('textbox', { name: 'Or paste it' });
  const look = page.getByRole('button', { name: 'See what is in it' });
  await pasted.fill('{"format":"fifth-quarter-dish","formatVersion":7}');
  await look.click();
  await expect(page.getByText(/newer program/)).toBeVisible();

  await pasted.fill(
    '<script type="application/ld+json">{"@type":"Recipe","name":"<i>Invented</i> roll","recipeIngredient":["500 g pork shoulder","a breath of zzqx"],"recipeInstructions":"Roll it."}</script>',
  );
  await look.click();
  await expect(page.getByRole('textbox', { name: 'Name of the dish brought in' })).toHaveValue(
    'Invented roll',
  );
  await expect(page.getByText(/No step of heat or cold is laid out/)).toBeVisible();
  await accessible(page, 'a recipe understood');
  for (const width of [1440, 1024, 390]) {
    await page.setViewportSize({ width, height: 1000 });
    await expect(async () => fits(page, `bringing in at ${width} px`)).toPass({ timeout: 5_000 });
  }
  await page.setViewportSize({ width: 1440, height: 1000 });
  await page.getByRole('button', { name: 'Keep it as a draft' }).click();
  await expect(page.getByText('Which animal? The law is read by it.')).toBeVisible();

  await page.getByLabel('Choose a file to bring in').setInputFiles(await download.path());
  await look.click();
  await page.getByRole('textbox', { name: 'Name of the dish brought in' }).fill('Trotter, brought in');
  await page.getByRole('button', { name: 'Keep it as a draft' }).click();
  await expect(page.getByRole('heading', { name: 'Trotter, brought in', level: 1 })).toBeVisible();
  await expect(page.getByText(/Brought in from a dish file/)).toBeVisible();
});
