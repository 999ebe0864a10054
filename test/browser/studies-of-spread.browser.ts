/** How sure and Gentlest, asked on the bench: progress, stopping, what the answer says, and what taking it writes. */
import type { Locator, Page } from '@playwright/test';
import { programmeOf } from '../../src/contract/method-cook.ts';
import type { Dish, DishSummary, Kitchen, Person } from '../../src/contract/records.ts';
import { rulesOfStep } from '../../src/contract/step-rules.ts';
import type { StepOf } from '../../src/contract/steps.ts';
import { passingTime } from '../../src/core/method/passing-time.ts';
import { findRule } from '../../src/core/properties/rules.ts';
import { accessible, expect, fits, test } from './stage.ts';

type CookStep = StepOf<'cook'>;

interface Bench {
  readonly dish: () => Promise<Dish>;
  readonly step: () => Promise<CookStep>;
}

/** A draft of a demo dish, opened at its cook step. */
async function open(page: Page, url: string, name: RegExp): Promise<Bench> {
  const get = async <T>(route: string) => (await page.request.get(`${url}/api${route}`)).json() as Promise<T>;
  const kitchen = (await get<Kitchen[]>('/kitchens')).find((k) => k.demo) as Kitchen;
  const base = `/kitchens/${kitchen.id}`;
  const [person] = await get<Person[]>(`${base}/people`);
  const found = (await get<DishSummary[]>(`${base}/dishes`)).find((d) => name.test(d.name)) as DishSummary;
  const dish = () => get<Dish>(`${base}/dishes/${found.id}`);
  if ((await dish()).current.status === 'signed') {
    const made = await page.request.post(`${url}/api${base}/dishes/${found.id}/versions`, {
      headers: { 'X-Person': person?.id ?? '' },
      data: { reason: 'Looked at again.' },
    });
    expect(made.ok()).toBe(true);
  }
  const step = async () =>
    (await dish()).current.method.find((s): s is CookStep => s.kind === 'cook') as CookStep;
  await page.addInitScript(
    ([key, id]) => localStorage.setItem(key ?? '', id ?? ''),
    [`fq.person.${kitchen.id}`, person?.id ?? ''],
  );
  await page.goto(`${url}/k/${kitchen.id}/dishes/${found.id}/steps/${(await step()).id}`);
  return { dish, step };
}

/** How long the first stage of the plain cook must last, by its target and its rules, asked of the engine here [min]. */
async function plainMinutes({ dish, step }: Bench): Promise<number> {
  const own = await step();
  const { problem } = programmeOf((await dish()).current.method, own.id);
  const rules = rulesOfStep(own).flatMap((id) => findRule(id) ?? []);
  return passingTime(problem, { stage: 0, rules }) / 60;
}

const textOf = async (place: Locator) => (await place.textContent()) ?? '';
const minutesIn = async (page: Page) =>
  Number.parseInt(await textOf(page.locator('#sure-fields .study-number')), 10);

async function everyWidth(page: Page, where: string): Promise<void> {
  for (const width of [1440, 1024, 390]) {
    await page.setViewportSize({ width, height: 1000 });
    await expect(async () => fits(page, `${where} at ${width} px`)).toPass({ timeout: 5_000 });
  }
  await page.setViewportSize({ width: 1440, height: 1000 });
}

test('how sure: progress, stopped, a quick look, what it says, and set', async ({ page, server }) => {
  const bench = await open(page, server.url, /trotter/i);
  await page.getByRole('button', { name: 'Say what strays, and find out' }).click();
  const fields = page.locator('#sure-fields');
  const ask = fields.getByRole('button', { name: 'How long, to be sure' });
  await expect(ask).toBeEnabled({ timeout: 60_000 });

  await fields.getByLabel('How closely to look').selectOption({ label: 'carefully: 4000 pieces' });
  await ask.click();
  const bar = fields.getByRole('progressbar');
  await expect(bar).toBeVisible();
  await expect.poll(() => bar.evaluate((p: HTMLProgressElement) => p.value)).toBeGreaterThan(0.01);
  await fields.getByRole('button', { name: 'Stop' }).click();
  await expect(bar).toHaveCount(0);
  await expect(ask).toBeVisible();
  // Nothing comes of what was stopped.
  await page.waitForTimeout(1_500);
  await expect(fields.locator('.study-number')).toHaveCount(0);

  await fields.getByLabel('How closely to look').selectOption({ label: 'a quick look: 100 pieces' });
  await ask.click();
  const answer = page.getByRole('region', { name: 'How long, to be sure' });
  await expect(answer.locator('.study-number')).toHaveText(/^\d+ min$/, { timeout: 60_000 });
  await expect(answer).toContainText('the worst of 24 pieces is safe 95 times in 100');
  await expect(answer.getByRole('heading', { name: 'What matters most' })).toBeVisible();
  await expect(answer.getByText('How well the piece conducts heat').first()).toBeAttached();
  await expect(answer).toContainText('Predicted, not measured: the probe decides.');
  await expect(answer.getByRole('note', { name: 'Caution' })).toContainText('food officers');
  await answer.getByText('What this rests on').click();
  await expect(answer).toContainText('Levy’s rule from those measured on lamb, offal and fat');
  const sure = await minutesIn(page);
  const plain = await plainMinutes(bench);
  expect(sure).toBeGreaterThan(plain + 1);
  await accessible(page, 'how sure');
  await everyWidth(page, 'how sure');

  const before = (await bench.step()).stages[0];
  await answer.getByRole('button', { name: `Set “${before?.name}” to ${sure} min` }).click();
  await expect(fields.getByText('Of the programme as it was')).toBeVisible();
  await expect.poll(async () => (await bench.step()).stages[0]?.until).toEqual({ min: sure });
  await page.getByRole('button', { name: 'Undo' }).first().click();
  await expect.poll(async () => (await bench.step()).stages[0]).toEqual(before);
});

test('how sure: where nothing strays it is the plain cook', async ({ page, server }) => {
  const bench = await open(page, server.url, /heart/i);
  await page.getByRole('button', { name: 'Say what strays, and find out' }).click();
  const fields = page.locator('#sure-fields');
  const ask = fields.getByRole('button', { name: 'How long, to be sure' });
  await expect(ask).toBeEnabled({ timeout: 60_000 });
  const published = fields.getByRole('checkbox');
  if ((await published.count()) > 0) await published.first().uncheck();
  for (const field of await fields.getByRole('textbox').all()) {
    const label = (await field.getAttribute('aria-label')) ?? '';
    const id = await field.getAttribute('id');
    const text = label || (await textOf(page.locator(`label[for="${id}"]`)));
    if (/Pieces in the batch/.test(text)) continue;
    await field.fill('0');
    await field.press('Enter');
  }
  await ask.click();
  await expect(fields.locator('.study-number')).toHaveText(/^\d+ min$/, { timeout: 60_000 });
  expect(await minutesIn(page)).toBe(Math.ceil((await plainMinutes(bench)) - 1e-9));
  await expect(fields.getByRole('heading', { name: 'What matters most' })).toHaveCount(0);
});

test('gentlest: stopped, then a front to slide along, and one of it taken over', async ({ page, server }) => {
  const bench = await open(page, server.url, /trotter/i);
  const before = await bench.step();
  await page.getByRole('button', { name: 'Look for the gentlest' }).click();
  const fields = page.locator('#gentle-fields');
  const ask = fields.getByRole('button', { name: 'Find the gentlest' });
  await expect(ask).toBeEnabled({ timeout: 60_000 });
  await ask.click();
  await expect(fields.getByRole('progressbar')).toBeVisible();
  await fields.getByRole('button', { name: 'Stop' }).click();
  await expect(fields.getByRole('progressbar')).toHaveCount(0);
  await ask.click();
  const answer = page.getByRole('region', { name: 'The gentlest programmes' });
  const words = answer.locator('.study-number');
  await expect(words).toHaveText(/°C for [\d.]+\smin/, { timeout: 120_000 });
  await expect(answer).toContainText('The gentlest of what passes in that time.');
  await expect(answer.getByRole('note', { name: 'Caution' })).toContainText('the probe decides');
  const slide = answer.getByRole('slider');
  const last = Number(await slide.getAttribute('max'));
  expect(last, 'points of the front').toBeGreaterThan(4);
  const first = await textOf(words);
  const minutes = async () => Number.parseFloat(await textOf(answer.locator('.study-slide output')));
  const slow = await minutes();
  await slide.focus();
  await page.keyboard.press('End');
  await expect(words).not.toHaveText(first);
  expect(await minutes()).toBeLessThan(slow);
  await expect(slide).toHaveAttribute('aria-valuetext', /hotter than/);
  await page.keyboard.press('Home');
  await expect(words).toHaveText(first);
  await accessible(page, 'gentlest');
  await everyWidth(page, 'gentlest');

  const [C, min] = (first.match(/[\d.]+/g) ?? []).map(Number);
  await answer.getByRole('button', { name: 'Cook it this way' }).click();
  await expect
    .poll(async () => {
      const stage = (await bench.step()).stages[0];
      return [stage?.mediumC, stage?.until];
    })
    .toEqual([C, { min }]);
  // What was written holds by the plain engine: neither too short, nor much longer than it must be.
  const must = await plainMinutes(bench);
  expect(min).toBeGreaterThanOrEqual(must - 0.01);
  expect(min).toBeLessThan(must + 0.5);

  await page.getByRole('button', { name: 'Undo' }).first().click();
  await expect.poll(async () => (await bench.step()).stages[0]).toEqual(before.stages[0]);
});
