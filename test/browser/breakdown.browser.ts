/** Six geese into fourteen parts by keyboard alone, then what they cost, what they yield, and a phone without signal. */
import type { APIRequestContext, Page } from '@playwright/test';
import { v7 as uuid } from 'uuid';
import type { Breakdown, TreeNode } from '../../src/contract/breakdown.ts';
import type { Kitchen, Person, Supplier } from '../../src/contract/records.ts';
import type { ShelfLot } from '../../src/contract/shelf.ts';
import { accessible, expect, fits, test } from './stage.ts';

/** What six geese give here [g]; invented. */
const parts = {
  breast: 5_990,
  thighs: 2_740,
  drumsticks: 2_250,
  wings: 3_240,
  back: 4_240,
  'neck skin': 624,
  'neck meat': 499,
  'neck bone': 498,
  'loose fat': 1_750,
  liver: 500,
  heart: 249,
  gizzard: 873,
  feet: 748,
  drip: 250,
} as const;
const cutOf = (name: string): TreeNode['becomes'] =>
  name === 'drip' ? 'drip' : name === 'feet' ? 'by-product' : name === 'neck bone' ? 'bone' : 'part';
const place = (name: string, parent: string | null, becomes: TreeNode['becomes']): TreeNode => ({
  id: name,
  parent,
  name,
  becomes,
  class: null,
  use: becomes === 'part' || becomes === 'step' ? 'menu' : 'thrown away',
  piecesPerAnimal: null,
});
const tree: TreeNode[] = [
  place('goose', null, 'step'),
  ...Object.keys(parts).flatMap((name) => [
    ...(name === 'neck skin' ? [place('neck', 'goose', 'step')] : []),
    place(name, name.startsWith('neck') ? 'neck' : 'goose', cutOf(name)),
  ]),
];

async function kitchenWithGeese(request: APIRequestContext, url: string) {
  const send = async <T>(route: string, data: unknown, person?: string): Promise<T> => {
    const response = await request.post(`${url}/api${route}`, {
      data,
      headers: { origin: url, ...(person === undefined ? {} : { 'x-person': person }) },
    });
    expect(response.status(), await response.text()).toBe(200);
    return (await response.json()) as T;
  };
  const { kitchen, person } = await send<{ kitchen: Kitchen; person: Person }>('/kitchens', {
    name: 'Behind the Weir',
    place: 'GB-ENG',
    zone: 'Europe/London',
    currency: 'GBP',
    units: 'metric',
    person: 'Ida Quill',
  });
  const k = `/kitchens/${kitchen.id}`;
  const supplier = await send<Supplier>(
    `${k}/suppliers`,
    { name: 'Low Marsh Geese (invented)', note: '' },
    person.id,
  );
  for (const [name, valuePerKg] of [
    ['breast', 2_400],
    ['liver', 1_500],
    ['neck skin', 300],
  ] as const)
    await send(
      `${k}/parts`,
      { species: 'goose', name, sharePct: null, use: 'menu', class: 'poultry', valuePerKg, lifeDays: 3 },
      person.id,
    );
  const day = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
  const deliver = (code: string) =>
    send(
      `${k}/deliveries`,
      {
        id: uuid(),
        supplierId: supplier.id,
        specificationVersionId: null,
        arrivedAt: new Date().toISOString(),
        documents: '',
        checks: [],
        decision: 'accepted',
        reason: '',
        lines: [
          {
            id: uuid(),
            kind: 'whole',
            what: 'Geese, six',
            species: 'goose',
            partId: null,
            class: 'poultry',
            count: 6,
            grams: 25_200,
            arrivalC: 3,
            arrivalCMeant: false,
            frozen: false,
            code,
            tradeLot: null,
            tags: [],
            ageMonthsAtMost: 8,
            slaughteredOn: day(-2),
            useBy: day(7),
            cost: 25_200,
            refused: false,
            note: '',
          },
        ],
      },
      person.id,
    );
  await deliver('G-0301');
  await deliver('G-0302');
  await send(`${k}/trees`, { species: 'goose', name: 'Our geese', nodes: tree }, person.id);
  const read = async <T>(route: string): Promise<T> =>
    (await (await request.get(`${url}/api${k}${route}`)).json()) as T;
  return { kitchen, person, read };
}

const settled = (page: Page) => expect(page.getByText(/^(Opening|Reading|Working)/)).toHaveCount(0);

test('six geese into fourteen parts, at the scale and by the keys', async ({ page, server, request }) => {
  const { kitchen, person, read } = await kitchenWithGeese(request, server.url);
  await page.addInitScript(
    ([key, id]) => localStorage.setItem(key as string, id as string),
    [`fq.person.${kitchen.id}`, person.id],
  );
  const at = `${server.url}/k/${kitchen.id}/animals`;
  const breakdownId = () => page.url().split('/breakdowns/')[1]?.slice(0, 36) ?? '';
  const now = () => read<Breakdown>(`/breakdowns/${breakdownId()}`);

  await test.step('begun: a head is no part in GB and says by which law; the kitchen’s own way comes first', async () => {
    await page.goto(`${at}/breakdowns/start`);
    await page.getByRole('checkbox', { name: /G-0301/ }).check();
    await expect(page.getByLabel('How it is cut')).toContainText('Our geese');
    await page.getByLabel('How it is cut').selectOption('published');
    const head = page
      .getByRole('listitem')
      .filter({ has: page.getByRole('button', { name: 'head', exact: true }) });
    await expect(head).toContainText('by-product');
    await expect(head).toContainText(/853\/2004|1069\/2009/);
    await accessible(page, 'the beginning of a breakdown');
    await page.getByLabel('How it is cut').selectOption({ label: 'Our geese' });
    await page.getByRole('button', { name: 'To the scale' }).click();
    await page.waitForURL(/breakdowns\/[0-9a-f-]{36}$/);
    await settled(page);
  });

  await test.step('weighed by keyboard alone, at most six keystrokes a part', async () => {
    let most = 0;
    for (const [name, grams] of Object.entries(parts)) {
      await expect(page.getByRole('heading', { name: new RegExp(`^${name}$`, 'i') })).toBeVisible();
      const keys = [...String(grams), 'Enter'];
      most = Math.max(most, keys.length);
      for (const key of keys) await page.keyboard.press(key);
    }
    expect(most).toBeLessThanOrEqual(6);
    await expect(page.getByText('Everything is weighed.')).toBeVisible();
    await expect(page.getByText(/not sent yet/)).toHaveCount(0);
    const { weighings, standing } = await now();
    expect(weighings).toHaveLength(14);
    const out = Object.values(parts).reduce((sum, g) => sum + g, 0);
    expect(standing.unaccountedGrams).toBeCloseTo(25_200 - out, 6);
    await accessible(page, 'the scale');
  });

  await test.step('taken back with Ctrl+Z, a sum with a tare, weighed again: every line is kept', async () => {
    await page.keyboard.press('Control+z');
    await expect(page.getByRole('heading', { name: 'Drip' })).toBeVisible();
    await page.keyboard.type('412t');
    await expect(page.getByText(/412 g, is taken off/)).toBeVisible();
    await page.keyboard.type('400+262');
    await expect(page.getByText('662 g less Tray 1 412 g = 250 g')).toBeVisible();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'heart', exact: true }).click();
    await page.getByRole('button', { name: 'Weigh again' }).click();
    await page.keyboard.press('t');
    await page.keyboard.type('251');
    await page.keyboard.press('Enter');
    await expect(page.getByText(/not sent yet/)).toHaveCount(0);
    const { weighings, standing } = await now();
    expect(weighings).toHaveLength(17);
    const heart = weighings.filter((w) => w.node === 'heart');
    expect(heart.map((w) => w.grams)).toEqual([249, 251]);
    expect(heart[1]?.corrects).toBe(heart[0]?.id);
    expect(weighings.filter((w) => w.node === 'drip').map((w) => [w.grams, w.takenBack])).toEqual([
      [250, false],
      [250, true],
      [250, false],
    ]);
    expect(standing.nodes.find((n) => n.node === 'heart')?.grams).toBe(251);
  });

  await test.step('parts heavier than the goose are told at once and not written', async () => {
    await page.getByRole('button', { name: 'wings', exact: true }).click();
    await page.keyboard.type('99999');
    await page.keyboard.press('Enter');
    await expect(page.getByRole('alert').filter({ hasText: 'Not written' })).toContainText('25.2 kg');
    expect((await now()).weighings).toHaveLength(17);
  });

  await test.step('finished by value: paid to the penny, lots with a code and a last day', async () => {
    await page.goto(`${at}/breakdowns/${breakdownId()}/finish`);
    await settled(page);
    await expect(page.getByRole('columnheader', { name: 'By own shares' })).toBeVisible();
    await accessible(page, 'the end of a breakdown');
    await page.getByRole('radio', { name: /By weight/ }).check();
    await page.getByRole('button', { name: 'Finish by weight' }).click();
    await expect(page.getByText(/^Finished/).first()).toBeVisible();
    const done = await now();
    expect(done.status).toBe('finished');
    expect(done.made).toHaveLength(11);
    expect(done.made.reduce((sum, m) => sum + (m.cost ?? 0), 0)).toBe(25_200);
    expect(done.made.every((m) => m.useBy !== null)).toBe(true);
    for (const lot of done.made) await expect(page.getByText(lot.code).first()).toBeVisible();
    const shelf = await read<ShelfLot[]>('/shelf');
    expect(shelf.some((l) => l.code === 'G-0301')).toBe(false);
    expect(shelf.find((l) => l.partName === 'breast')?.leftGrams).toBe(parts.breast);
  });

  await test.step('what they yield, and a pasted table brings in more; a bad line stops all of it', async () => {
    await page.goto(`${at}/breakdowns/import`);
    await page.getByLabel('Animal').fill('goose');
    const table = page.getByLabel('The table');
    await table.fill('Date,Birds,Whole (kg),Breast (kg)\n01/03/2025,1,4.1,0.95\n08/03/2025,1,4.2,heavy');
    await expect(page.getByText('Line 3, Breast')).toBeVisible();
    await expect(page.getByRole('button', { name: /^Bring in/ })).toBeDisabled();
    await accessible(page, 'a pasted table with a bad line');
    await table.fill('Date,Birds,Whole (kg),Breast (kg)\n01/03/2025,1,4.1,0.95\n08/03/2025,1,4.2,1.01');
    await page.getByRole('button', { name: 'Bring in 2 breakdowns' }).click();
    await page.waitForURL(/animals\/yields/);
    await settled(page);
    await expect(page.getByText(/8 animals in 3 breakdowns/)).toBeVisible();
    const breast = page
      .getByRole('row')
      .filter({ has: page.getByRole('rowheader', { name: 'breast', exact: true }) });
    await expect(breast.first()).toContainText('of dressed weight');
    await page.getByLabel('Show the weighings of').selectOption('breast');
    await accessible(page, 'the yields');
    await page.goto(`${at}/parts`);
    await expect(page.getByText(/latest 3 breakdowns/)).toBeVisible();
  });
});

test('a phone at the scale without signal: what is typed stays and is sent later', async ({
  page,
  server,
  request,
  context,
}) => {
  const { kitchen, person, read } = await kitchenWithGeese(request, server.url);
  await page.addInitScript(
    ([key, id]) => localStorage.setItem(key as string, id as string),
    [`fq.person.${kitchen.id}`, person.id],
  );
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto(`${server.url}/k/${kitchen.id}/animals/breakdowns/start`);
  await page.getByRole('checkbox', { name: /G-0301/ }).check();
  await page.getByRole('button', { name: 'To the scale' }).click();
  await page.waitForURL(/breakdowns\/[0-9a-f-]{36}$/);
  await settled(page);
  await fits(page, 'the scale on a phone');
  await accessible(page, 'the scale on a phone');
  const id = page.url().split('/breakdowns/')[1] ?? '';
  const press = (key: string) =>
    page.locator('.scale-keys').getByRole('button', { name: key, exact: true }).click();
  await context.setOffline(true);
  for (const key of ['5', '9', '9', '0']) await press(key);
  await page.getByRole('button', { name: 'Write and go on' }).click();
  await expect(page.getByRole('heading', { name: 'Thighs' })).toBeVisible();
  await expect(page.getByText(/1 line not sent yet/)).toBeVisible();
  expect((await read<Breakdown>(`/breakdowns/${id}`)).weighings).toHaveLength(0);
  await context.setOffline(false);
  await expect(page.getByText(/not sent yet/)).toHaveCount(0, { timeout: 30_000 });
  await expect
    .poll(async () => (await read<Breakdown>(`/breakdowns/${id}`)).weighings.map((w) => w.grams))
    .toEqual([5_990]);
});
