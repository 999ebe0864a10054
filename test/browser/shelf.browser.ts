/** The head of a goose from stopped to signed by the authority's word, and lots that may not be used. All invented. */
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import type { APIRequestContext, Page } from '@playwright/test';
import { v7 as uuid } from 'uuid';
import type { Dish, Kitchen, Lot, Part, Person } from '../../src/contract/records.ts';
import { cookStep, trimStep } from '../database/kitchen.ts';
import { accessible, expect, fits, test } from './stage.ts';

const pdfText = (pdf: Buffer): string => {
  const file = path.join(fs.mkdtempSync('/tmp/fifth-quarter-paper-'), 'paper.pdf');
  fs.writeFileSync(file, pdf);
  return execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).replace(/\s+/g, ' ');
};

async function openKitchen(request: APIRequestContext, url: string) {
  const send = async <T>(route: string, data: unknown, person?: string): Promise<T> => {
    const response = await request.post(`${url}/api${route}`, {
      data,
      headers: { origin: url, ...(person === undefined ? {} : { 'x-person': person }) },
    });
    expect(response.status(), await response.text()).toBe(200);
    return (await response.json()) as T;
  };
  const { kitchen, person } = await send<{ kitchen: Kitchen; person: Person }>('/kitchens', {
    name: 'Under the Bridge',
    place: 'GB-ENG',
    zone: 'Europe/London',
    currency: 'GBP',
    units: 'metric',
    person: 'Ida Quill',
  });
  const k = `/kitchens/${kitchen.id}`;
  const post = <T>(route: string, data: unknown) => send<T>(`${k}${route}`, data, person.id);
  const neck = await post<Part>('/parts', {
    species: 'goose',
    name: 'neck',
    sharePct: null,
    use: 'menu',
    class: 'poultry',
  });
  const lot = (code: string) =>
    post<Lot>('/lots', {
      code,
      what: 'Goose necks, long',
      partId: neck.id,
      supplierId: null,
      grams: 2_400,
      arrivedAt: new Date(Date.now() - 2 * 86_400_000).toISOString(),
      arrivalC: 3,
      note: '',
    });
  const move = (id: string, what: string, more: object) =>
    post(`/lots/${id}/moves`, {
      id: uuid(),
      what,
      grams: null,
      useBy: null,
      reason: 'for the test',
      at: new Date().toISOString(),
      ...more,
    });
  const dish = (name: string, part: string) =>
    post<Dish>('/dishes', {
      name,
      species: 'goose',
      part,
      story: '',
      method: [{ ...trimStep, part }, cookStep(50)],
    });
  const day = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
  return { kitchen, person, post, lot, move, dish, day };
}

const settled = (page: Page) =>
  expect(page.getByText(/^(Opening|Reading|Working it out|Fetching)/)).toHaveCount(0, { timeout: 60_000 });

async function looked(page: Page, where: string): Promise<void> {
  await settled(page);
  for (const width of [1440, 390]) {
    await page.setViewportSize({ width, height: 900 });
    await fits(page, `${where}, ${width} px`);
    await accessible(page, `${where}, ${width} px`);
  }
  await page.setViewportSize({ width: 1440, height: 1000 });
}

async function comeIn(page: Page, kitchen: Kitchen, person: Person): Promise<void> {
  await page.addInitScript(
    ([k, p]) => localStorage.setItem(`fq.person.${k}`, p as string),
    [kitchen.id, person.id],
  );
}

test('a head is stopped, asked about, answered, signed; what is refused later stops it again', async ({
  page,
  server,
  request,
}) => {
  const { kitchen, person, post, dish } = await openKitchen(request, server.url);
  await comeIn(page, kitchen, person);
  const heads = await dish('Split heads', 'head');
  const at = `${server.url}/k/${kitchen.id}`;
  await page.goto(`${at}/dishes/${heads.id}`);
  const law = page.getByRole('region', { name: 'May it be served?' });
  await expect(law.getByText('A by-product unless it is allowed: ask first')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Sign this version' })).toHaveCount(0);
  await law.getByRole('link', { name: 'Ask the authority' }).click();

  await expect(page.getByRole('heading', { name: /Ask about head of goose, for Split heads/ })).toBeVisible({
    timeout: 60_000,
  });
  await expect(page.getByLabel('The process, a step a line')).toHaveValue(/1\. /);
  await expect(page.getByLabel('Predicted by the engine, a line each')).toHaveValue(
    /predicted to hold.*not measured/,
  );
  await page.getByLabel('From whom').fill('Low Marsh Geese (invented)');
  await looked(page, 'the question');
  await page.getByRole('button', { name: 'Keep and print' }).click();
  await expect(page.getByText('Not answered yet: the stop stands')).toBeVisible();
  const href = (await page.getByRole('link', { name: 'The letter (PDF)' }).getAttribute('href')) as string;
  const letter = await page.request.get(`${server.url}${href}`);
  expect(letter.headers()['content-type']).toBe('application/pdf');
  const text = pdfText(await letter.body());
  for (const word of ['Low Marsh Geese', '1069/2009', 'Split heads']) expect(text).toContain(word);

  await page.getByRole('button', { name: 'Write down the answer' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel('Answer', { exact: true }).selectOption('agreed on conditions');
  await dialog.getByLabel('Authority').fill('Weir council (invented)');
  await dialog.getByLabel('Who answered').fill('Officer Reed (invented)');
  await dialog.getByLabel('Reference').fill('W/77');
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await expect(dialog.getByText(/The conditions are empty/)).toBeVisible();
  await dialog.getByLabel('Conditions').fill('Singed clean, chilled on the day.');
  await dialog.getByLabel('Until').fill('2099-01-31');
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByText(/Agreed on conditions by Weir council/)).toBeVisible();
  await looked(page, 'the answered question');

  await page.getByRole('link', { name: 'Split heads' }).click();
  await expect(law.getByText(/By the authority’s word until 31 Jan 2099, on conditions/)).toBeVisible();
  await expect(law.getByText(/W\/77/)).toBeVisible();
  await page.getByRole('button', { name: 'Sign this version' }).click();
  await expect(page.getByText(/signed by the authority’s word/)).toBeVisible({ timeout: 60_000 });
  await looked(page, 'the dish signed by the authority’s word');
  const card = await page.request.get(
    `${server.url}/api/kitchens/${kitchen.id}/versions/${heads.current.id}/method-card.pdf`,
  );
  const onCard = pdfText(await card.body());
  for (const word of ['Weir council', 'W/77', '31 Jan 2099', 'Singed clean']) expect(onCard).toContain(word);

  // A later refusal ends it: no batch is started any more.
  const requestId = href.match(/authority-requests\/([^/]+)/)?.[1] as string;
  await post(`/authority-requests/${requestId}/answers`, {
    id: uuid(),
    answer: 'refused',
    authority: 'Weir council (invented)',
    saidBy: 'Officer Reed (invented)',
    reference: 'W/78',
    conditions: '',
    dated: new Date().toISOString().slice(0, 10),
    until: null,
  });
  await page.goto(`${at}/line/start?dish=${heads.id}`);
  await expect(page.getByText('The law stops this dish now')).toBeVisible();
  const refused = await page.request.post(`${server.url}/api/kitchens/${kitchen.id}/batches`, {
    headers: { 'x-person': person.id, origin: server.url },
    data: { id: uuid(), versionId: heads.current.id, pieces: 2, lotIds: [] },
  });
  expect(refused.status()).toBe(409);
});

test('the shelf: what runs out first, what may not be used and why', async ({ page, server, request }) => {
  const { kitchen, person, post, lot, move, dish, day } = await openKitchen(request, server.url);
  await comeIn(page, kitchen, person);
  const [good, past, , frozen, open] = await Promise.all(
    ['N-GOOD', 'N-PAST', 'N-BIN', 'N-COLD', 'N-OPEN'].map(lot),
  );
  await move(good!.id, 'use-by shortened', { useBy: day(2) });
  await move(past!.id, 'use-by shortened', { useBy: day(-1) });
  await move(frozen!.id, 'frozen', { useBy: day(90) });
  const necks = await dish('Stuffed necks', 'neck');
  await post(`/versions/${necks.current.id}/sign`, { rev: 0 });
  const at = `${server.url}/k/${kitchen.id}`;

  await page.goto(`${at}/animals/shelf`);
  const rows = page.locator('.shelf-lot');
  await expect(rows).toHaveCount(5);
  await expect(rows.first()).toContainText('N-PAST');
  await expect(rows.first()).toContainText('Past its last day');
  await expect(rows.nth(1)).toContainText('N-GOOD');
  await expect(rows.nth(1)).toContainText('Stuffed necks');
  await expect(rows.filter({ hasText: 'N-OPEN' })).toContainText('Last day not known');
  await looked(page, 'the shelf');
  await page.getByLabel('Find').fill('bin');
  await expect(rows).toHaveCount(1);

  // Made a by-product: asked twice, and then for good.
  await page.getByRole('link', { name: 'N-BIN' }).click();
  await looked(page, 'a lot');
  await page.getByRole('button', { name: 'Make it a by-product' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel('Why').fill('Fell on the floor.');
  await dialog.getByRole('button', { name: 'Go on' }).click();
  await expect(dialog.getByText('This cannot be undone.')).toBeVisible();
  await dialog.getByRole('button', { name: 'A by-product for good' }).click();
  await expect(page.getByText('Never food again. Keep it apart.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Draw from it' })).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Freeze it' })).toHaveCount(0);

  // What is past is not drawn, by screen or by hand.
  await page.goto(`${at}/animals/shelf/${past!.id}`);
  await expect(page.getByRole('button', { name: 'Throw away' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Draw from it' })).toHaveCount(0);
  const drawn = await page.request.post(`${server.url}/api/kitchens/${kitchen.id}/lots/${past!.id}/moves`, {
    headers: { 'x-person': person.id, origin: server.url },
    data: {
      id: uuid(),
      what: 'drawn',
      grams: 10,
      useBy: null,
      reason: '',
      at: new Date().toISOString(),
    },
  });
  expect(drawn.status()).toBe(409);

  // Drawn, thawed: what follows is said before it is done.
  await page.goto(`${at}/animals/shelf/${good!.id}`);
  await page.getByRole('button', { name: 'Draw from it' }).click();
  await dialog.getByLabel('How much').fill('0.4kg');
  await dialog.getByRole('button', { name: 'Draw from it' }).click();
  await expect(page.getByText('2 kg').first()).toBeVisible();
  await page.goto(`${at}/animals/shelf/${frozen!.id}`);
  await page.getByRole('button', { name: 'Thaw it' }).click();
  await expect(dialog.getByText('Once thawed it is never frozen again.')).toBeVisible();
  await dialog.getByRole('button', { name: 'Thaw it' }).click();
  await expect(page.getByText(/it is not frozen again/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Freeze it' })).toHaveCount(0);

  await page.goto(`${at}/line/start?dish=${necks.id}`);
  await expect(page.getByRole('checkbox', { name: /N-GOOD/ })).toBeVisible();
  await expect(page.getByRole('checkbox', { name: /N-OPEN/ })).toBeVisible();
  for (const code of ['N-BIN', 'N-PAST'])
    await expect(page.getByRole('checkbox', { name: new RegExp(code) })).toHaveCount(0);
  await page.getByText('2 lots that may not be used now').click();
  await expect(page.getByText(/N-BIN was treated as an animal by-product/)).toBeVisible();
  await expect(page.getByText(/N-PAST is past its last day/)).toBeVisible();
  await looked(page, 'starting a batch');
  expect(open!.code).toBe('N-OPEN');
});

test('May I serve it?: by animal, part and place; not known is never fine', async ({
  page,
  server,
  request,
}) => {
  const { kitchen, person } = await openKitchen(request, server.url);
  await comeIn(page, kitchen, person);
  await page.goto(`${server.url}/k/${kitchen.id}/animals/law`);
  await page.getByLabel('Animal', { exact: true }).fill('goose');
  await page.getByLabel('Part', { exact: true }).fill('pygostyle gland');
  const answer = page.getByRole('region', { name: 'May I serve it?' });
  await expect(answer.getByText('Not known: ask', { exact: true })).toBeVisible();
  await expect(answer.getByRole('link', { name: 'Ask the authority' })).toBeVisible();
  await page.getByLabel('Place', { exact: true }).selectOption('US');
  await expect(page.getByText('This is not your kitchen’s place.')).toBeVisible();
  await expect(answer.getByRole('link', { name: 'Ask the authority' })).toHaveCount(0);
  await page.getByLabel('Find').fill('lung');
  await expect(page.locator('.law-row').first()).toContainText('9 CFR');
  await expect(page.locator('.law-row').first()).toContainText('checked');
  await looked(page, 'May I serve it?');
  const words = (await page.locator('main').textContent()) ?? '';
  expect(words).not.toMatch(/\b(legal|legally|safe)\b/i);
});
