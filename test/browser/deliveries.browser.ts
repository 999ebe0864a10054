/**
 * The other half of the job: asking a supplier in writing, sending it, being answered, and taking the delivery in at the
 * back door on a phone: a slip of the unit asked about, one point not met, accepted with its reason, lots on the shelf.
 */
import type { Delivery, SupplierTrend } from '../../src/contract/delivery.ts';
import type { Kitchen, Supplier } from '../../src/contract/records.ts';
import type { ShelfLot } from '../../src/contract/shelf.ts';
import type { Specification } from '../../src/contract/specification.ts';
import { accessible, expect, fits, test } from './stage.ts';

test('asked in writing, agreed, delivered, checked, on the shelf', async ({ page, server }) => {
  test.setTimeout(180_000);
  const get = async <T>(route: string): Promise<T> =>
    (await page.request.get(`${server.url}/api${route}`)).json() as Promise<T>;
  const kitchen = (await get<Kitchen[]>('/kitchens')).find((k) => k.demo) as Kitchen;
  const base = `/kitchens/${kitchen.id}`;
  const animals = `${server.url}/k/${kitchen.id}/animals`;
  const name = 'Necks of the Far Bank (invented)';
  const specifications = async () =>
    (await get<Specification[]>(`${base}/specifications`)).filter((s) => s.supplierName === name);
  const who = page.getByRole('dialog', { name: 'Who is working here?' });

  await test.step('a supplier, and a sheet begun from what is usual for the part', async () => {
    await page.goto(`${animals}/suppliers`);
    await page.getByRole('button', { name: 'Add a supplier' }).click();
    await page.getByRole('textbox', { name: 'Name' }).fill(name);
    await page.getByRole('button', { name: 'Write it down' }).click();
    await who.getByRole('button', { name: /Wren Aldous/ }).click();
    await page.getByRole('link', { name }).click();
    await page.getByRole('link', { name: 'Ask for something in writing' }).click();
    await page.getByRole('radio', { name: /Long goose necks/ }).check();
    await expect(page.getByText('Common practice, no source:')).toBeVisible();
    await accessible(page, 'beginning a specification');
    await page.getByRole('button', { name: 'Begin the sheet' }).click();
    await expect(page.getByRole('heading', { name: 'Version 1, not sent yet' })).toBeVisible();
  });

  await test.step('a line pasted as a list, a length drawn, saved by itself', async () => {
    await page.getByRole('textbox', { name: 'At least', exact: true }).fill('20 cm');
    await page.keyboard.press('Tab');
    await expect(page.locator('.piece-picture svg').first()).toContainText('at least 200 mm');
    await page
      .getByRole('textbox', { name: 'Refused if' })
      .or(page.getByLabel('Never taken, line 1'))
      .first()
      .click();
    await page.getByRole('button', { name: 'Add a reason to refuse' }).click();
    await page.keyboard.type('frozen before');
    await page.keyboard.press('Enter');
    await page.keyboard.type('wet');
    await page.keyboard.press('Tab');
    await expect(page.getByText('Saved', { exact: true })).toBeVisible();
    await expect
      .poll(async () => (await specifications())[0]?.versions[0]?.content.refusedIf.slice(-2))
      .toEqual(['frozen before', 'wet']);
    await accessible(page, 'the sheet');
    await page.setViewportSize({ width: 390, height: 844 });
    await fits(page, 'the sheet on a phone');
  });

  await test.step('sent, frozen, agreed', async () => {
    await page.getByRole('button', { name: 'Send version 1' }).click();
    await expect(page.getByText(/It never changes\s+again/)).toBeVisible();
    await page.getByRole('button', { name: 'Write down what they answered' }).click();
    await page.getByLabel('Answer', { exact: true }).selectOption('agreed');
    await page.getByRole('textbox', { name: 'Who said it' }).fill('the farmer (invented)');
    await page.getByRole('button', { name: 'Write it down' }).click();
    await expect(page.getByText('In force', { exact: true })).toBeVisible();
    await accessible(page, 'an agreed specification');
  });

  await test.step('a new version is told apart line by line', async () => {
    await page.getByRole('button', { name: 'New version because…' }).click();
    await page.getByRole('textbox', { name: 'Because' }).fill('Longer still.');
    await page.getByRole('button', { name: 'Begin version 2' }).click();
    await page.getByRole('textbox', { name: 'At least', exact: true }).fill('220');
    await page.keyboard.press('Tab');
    await expect(page.getByText('Saved', { exact: true })).toBeVisible();
    const row = page.locator('tr.compare-changed');
    await expect(row).toContainText('at least 200 mm');
    await expect(row).toContainText('at least 220 mm');
  });

  await test.step('at the door: the one in force comes up, a slip of the unit is asked about', async () => {
    const supplier = (await get<Supplier[]>(`${base}/suppliers`)).find((s) => s.name === name) as Supplier;
    await page.goto(`${animals}/suppliers/${supplier.id}`);
    await page.getByRole('link', { name: 'Take in a delivery' }).click();
    await expect(page.getByLabel('Checked against')).toHaveValue(
      (await specifications())[0]?.versions[0]?.id as string,
    );
    await page.getByRole('textbox', { name: 'Weight' }).fill('3*800');
    await page.getByRole('textbox', { name: 'How many' }).fill('8');
    await page.getByRole('textbox', { name: 'Temperature' }).fill('38');
    await page.keyboard.press('Tab');
    await expect(page.getByText(/38 °F would be 3\.3 °C/)).toBeVisible();
    await page.getByRole('button', { name: /It was °F/ }).click();
    await expect(page.getByText(/Within 4 °C or colder for poultry/)).toBeVisible();
    await accessible(page, 'taking in');
    await fits(page, 'taking in on a phone');
  });

  await test.step('what was typed survives a reload', async () => {
    await page
      .getByRole('group', { name: 'not: skin slit or torn' })
      .getByRole('radio', { name: 'not met', exact: true })
      .check();
    await page.reload();
    await expect(page.getByRole('textbox', { name: 'Weight' })).toHaveValue('2400');
    await expect(
      page
        .getByRole('group', { name: 'not: skin slit or torn' })
        .getByRole('radio', { name: 'not met', exact: true }),
    ).toBeChecked();
  });

  await test.step('a code that another lot has is told beside its field, and nothing is written', async () => {
    const taken = (await get<ShelfLot[]>(`${base}/shelf`))[0] as ShelfLot;
    const before = (await get<Delivery[]>(`${base}/deliveries`)).length;
    const code = page.getByRole('textbox', { name: 'Code' });
    const own = await code.inputValue();
    await code.fill(taken.code);
    await page.getByRole('textbox', { name: /Why it is taken/ }).fill('Two torn; they go into the stock.');
    await expect(page.getByRole('button', { name: 'Accept', exact: true })).toHaveCount(0);
    await page.getByRole('button', { name: 'Accept with a deviation' }).click();
    await expect(page.locator('.field', { has: code }).locator('.field-error')).toContainText(
      'another lot has',
    );
    expect((await get<Delivery[]>(`${base}/deliveries`)).length).toBe(before);
    await code.fill(own);
  });

  await test.step('a picture, made small; accepted with its reason; the lot is on the shelf', async () => {
    const png = Buffer.from(
      await page.evaluate(async () => {
        const canvas = document.createElement('canvas');
        canvas.width = 3_000;
        canvas.height = 2_000;
        canvas.getContext('2d')?.fillRect(0, 0, 1_500, 2_000);
        return canvas.toDataURL('image/png').split(',')[1] as string;
      }),
      'base64',
    );
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'crate.png', mimeType: 'image/png', buffer: png });
    await expect(page.getByRole('img', { name: '1 of 1' })).toBeVisible();
    await page.getByRole('button', { name: 'Accept with a deviation' }).click();
    await page.waitForURL(/\/deliveries\/[0-9a-f-]{36}$/);
    await expect(page.getByText('Accepted with a deviation')).toBeVisible();
    await accessible(page, 'a delivery');
    await fits(page, 'a delivery on a phone');
    const id = page.url().split('/').at(-1) as string;
    const taken = await get<Delivery>(`${base}/deliveries/${id}`);
    expect(taken.decision).toBe('accepted with deviation');
    expect(taken.checks.filter((c) => c.met === 'not met').map((c) => c.asked)).toEqual([
      'not: skin slit or torn',
    ]);
    expect(taken.lines[0]?.arrivalC).toBeCloseTo(3.33, 2);
    const lot = (await get<ShelfLot[]>(`${base}/shelf`)).find((l) => l.id === taken.lotIds[0]);
    expect(lot?.leftGrams).toBe(2_400);
    await expect.poll(async () => (await get<Delivery>(`${base}/deliveries/${id}`)).photos.length).toBe(1);
    const photoId = (await get<Delivery>(`${base}/deliveries/${id}`)).photos[0];
    const sent = await page.request.get(`${server.url}/api${base}/photos/${photoId}`);
    expect(sent.headers()['content-type']).toBe('image/jpeg');
    const size = await page.evaluate(async (src) => {
      const image = new Image();
      image.src = src;
      await image.decode();
      return [image.naturalWidth, image.naturalHeight];
    }, `${server.url}/api${base}/photos/${photoId}`);
    expect(size).toEqual([1_600, 1_067]);
    const trend = await get<SupplierTrend>(`${base}/suppliers/${taken.supplierId}/trend`);
    expect(trend.deliveries).toHaveLength(1);
    await page.getByRole('link', { name }).click();
    await expect(page.getByRole('heading', { name: 'Which way it goes' })).toBeVisible();
    await accessible(page, 'a supplier');
    await fits(page, 'a supplier on a phone');
  });
});
