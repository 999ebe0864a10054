/**
 * The job once through, as a chef does it: a new version of the trotter at the bench, a bulge seen and undone, a probe
 * log laid over the prediction, the version signed, a batch made by keypad, its core log judged, both papers printed.
 */
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import type { Page } from '@playwright/test';
import type { Batch, Kitchen } from '../../src/contract/records.ts';
import type { Ask } from '../../src/contract/steps.ts';
import { accessible, expect, fits, picture, test } from './stage.ts';

/** A logger's export as many write it: semicolons, decimal commas, a preamble, minutes elapsed. Invented for the test. */
const loggerFile = (): string => {
  const core = (min: number) => {
    if (min <= 8) return 6;
    if (min <= 40) return 6 + ((min - 8) / 32) * 70;
    if (min <= 46) return 76 + ((min - 40) / 6) * 3;
    return 3 + 76 * Math.exp(-(min - 46) / 22);
  };
  const rows = Array.from({ length: 111 }, (_, min) => {
    const shown = (c: number) => c.toFixed(1).replace('.', ',');
    return `${min};${shown(core(min))};${min < 36 ? '99,8' : '1,2'}`;
  });
  return ['Logger: steamer probe', 'Time (min);Core °C;Chamber °C', ...rows].join('\r\n');
};

const pdfText = (pdf: Buffer): string => {
  const file = path.join(fs.mkdtempSync('/tmp/fifth-quarter-paper-'), 'paper.pdf');
  fs.writeFileSync(file, pdf);
  return execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' });
};

/** A value that holds, or that a step without limits would see. */
const holding = (ask: Ask): number => {
  if (ask.low !== undefined && ask.high !== undefined) return (ask.low + ask.high) / 2;
  if (ask.low !== undefined) return ask.kind === 'temperature' ? ask.low + 2 : ask.low * 1.02;
  if (ask.high !== undefined) return ask.kind === 'temperature' ? ask.high - 1 : ask.high * 0.9;
  return ask.kind === 'temperature' ? 4 : ask.kind === 'count' ? 6 : 30;
};

async function record(page: Page, ask: Ask): Promise<void> {
  const item = page.locator('li.ask').filter({ has: page.locator('.ask-label', { hasText: ask.label }) });
  const head = item.locator('.ask-head');
  if ((await head.getAttribute('aria-expanded')) !== 'true') await head.click();
  if (ask.kind === 'tick') {
    await item.getByRole('button', { name: 'Done', exact: true }).click();
  } else if (ask.kind === 'note') {
    await item.getByRole('textbox').fill('As it should be.');
    await item.getByRole('button', { name: 'Keep', exact: true }).click();
  } else {
    const field = item.locator('input.pad-text');
    const unit = (await item.locator('.pad-unit').textContent())?.trim();
    const base = holding(ask);
    const value = unit === 'kg' ? base / 1000 : unit === 'h' ? base / 60 : base;
    await field.fill(String(Math.round(value * 1000) / 1000));
    await field.press('Enter');
    const asShown = item.getByRole('button', { name: /that is what it shows/ });
    await expect(asShown.or(item.locator('.ask-state strong'))).toBeVisible();
    if (await asShown.isVisible()) await asShown.click();
  }
}

test('from a part to a proven plate', async ({ page, server }, info) => {
  const get = async <T>(route: string): Promise<T> =>
    (await page.request.get(`${server.url}${route}`)).json() as Promise<T>;

  await test.step('the door and the dishes', async () => {
    await page.goto(`${server.url}/`);
    await accessible(page, 'the door');
    await page
      .getByRole('button', { name: /Look round/ })
      .or(page.getByRole('link', { name: /Look round/ }))
      .click();
    await page.waitForURL(/\/dishes$/);
    await expect(page.getByText('invented data').first()).toBeVisible();
    await accessible(page, 'dishes');
  });
  const kitchen = (await get<Kitchen[]>('/api/kitchens'))[0] as Kitchen;

  await test.step('a new version, with its reason and a name', async () => {
    await page.getByRole('link', { name: 'Stuffed trotter, chestnut and juniper' }).click();
    await page.getByRole('button', { name: 'New version because…' }).click();
    await page.getByRole('textbox', { name: 'Because' }).fill('A fatter hock end for the winter menu.');
    await page.getByRole('button', { name: /^Begin/ }).click();
    await page
      .getByRole('dialog', { name: 'Who is working here?' })
      .getByRole('button', { name: /Wren Aldous/ })
      .click();
    await expect(page.getByRole('heading', { name: 'Version 3' })).toBeVisible();
  });

  const verdict = page.locator('.cook-verdict');
  const thickest = page.getByRole('textbox', { name: 'Point 2, diameter' });
  await test.step('the cook step: a bulge, its verdict, undone', async () => {
    await page.getByRole('link', { name: /Step 7, Steam/ }).click();
    await expect(verdict.getByText('Holds', { exact: true })).toBeVisible();
    await expect(verdict).toContainText('Predicted, not measured');
    if (info.project.name === 'embedded') {
      await page
        .getByText(/^Step 7 of 11/)
        .evaluate((el) => window.scrollTo(0, el.getBoundingClientRect().top + window.scrollY - 16));
      await picture(page, 'bench');
    }
    await accessible(page, 'the cook step');
    await thickest.fill('104');
    await thickest.press('Tab');
    await expect(verdict.getByText(/Steam: .* more/i).first()).toBeVisible();
    await expect(verdict.getByText('Holds', { exact: true })).toBeHidden();
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(thickest).toHaveValue('66');
    await expect(verdict.getByText('Holds', { exact: true })).toBeVisible();
  });

  await test.step('a skin thicker than the piece is refused in plain words', async () => {
    const skin = page.getByRole('textbox', { name: 'Thickness' }).first();
    await skin.fill('40');
    await skin.press('Tab');
    await expect(verdict).toContainText('Cannot be worked out yet');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(verdict.getByText('Holds', { exact: true })).toBeVisible();
  });

  await test.step('a step added, named, and a change that stays', async () => {
    await thickest.fill('68');
    await thickest.press('Tab');
    await page
      .getByRole('textbox', { name: 'steam, how long' })
      .or(page.getByRole('textbox', { name: 'Minutes' }))
      .first()
      .fill('38');
    await page.keyboard.press('Tab');
    await expect(verdict.getByText('Holds', { exact: true })).toBeVisible();
    await expect(page.getByText(/^Saved/)).toBeVisible();
  });

  await test.step('a probe log laid over the prediction', async () => {
    await page.getByRole('button', { name: 'Bring in a probe log' }).click();
    const dialog = page.getByRole('region', { name: 'Measured' });
    await dialog
      .getByRole('textbox', { name: 'Or paste the readings' })
      .fill('Dear chef, the trotters were lovely.');
    await dialog.getByRole('button', { name: 'Read what I pasted' }).click();
    await expect(dialog.getByRole('button', { name: 'Keep this log' })).toBeHidden();
    await dialog.getByRole('button', { name: 'Take another file' }).click();
    await dialog.locator('input[type=file]').setInputFiles({
      name: 'steamer.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(loggerFile(), 'utf8'),
    });
    await expect(
      page
        .getByRole('region', { name: 'The log and what it shows' })
        .getByText(/70 °C for 2 minutes.*: holds/),
    ).toBeVisible();
    await accessible(page, 'the log as it was read');
    await dialog.getByRole('button', { name: 'Keep this log' }).click();
    await expect(page.getByRole('checkbox', { name: /steamer\.csv/ })).toBeVisible();
  });

  await test.step('signed', async () => {
    await page.getByRole('button', { name: 'Sign this version' }).click();
    await expect(page.getByText(/Signed by Wren Aldous/).first()).toBeVisible({ timeout: 30_000 });
    await page.setViewportSize({ width: 390, height: 844 });
    await fits(page, 'the bench on a phone');
  });

  await test.step('a batch, begun from the signed version on a phone', async () => {
    await page.getByRole('link', { name: 'Start a batch' }).first().click();
    await page.getByRole('textbox', { name: /Pieces/ }).fill('6');
    await page.keyboard.press('Enter');
    await page
      .getByRole('checkbox', { name: /trotter/i })
      .first()
      .check({ force: true });
    await page.getByRole('button', { name: /^Start 6 pieces/ }).click();
    await page.waitForURL(/\/line\/[0-9a-f-]{36}/);
    await accessible(page, 'a batch');
    await fits(page, 'a batch on a phone');
  });
  const batchId = /\/line\/([0-9a-f-]{36})/.exec(page.url())?.[1] as string;
  const batchRoute = `/api/kitchens/${kitchen.id}/batches/${batchId}`;
  const batch = await get<Batch>(batchRoute);
  expect(batch.versionNumber).toBe(3);

  await test.step('out of a critical limit: corrected by a new line, never overwritten', async () => {
    const first = batch.method[0]?.asks[0] as Ask;
    const item = page.locator('li.ask').first();
    await item.locator('input.pad-text').fill('9');
    await item.locator('input.pad-text').press('Enter');
    await expect(page.getByText(/out: what now|out of limit/).first()).toBeVisible();
    await accessible(page, 'out of limit');
    await item
      .getByRole('button', { name: /Correct/ })
      .first()
      .click();
    await item.getByRole('textbox', { name: 'Why it is wrong' }).fill('Read the room, not the meat.');
    await item.locator('input.pad-text').fill(String(holding(first)));
    await item.locator('input.pad-text').press('Enter');
    await expect.poll(async () => (await get<Batch>(batchRoute)).readings.length).toBe(2);
    expect((await get<Batch>(batchRoute)).readings.filter((r) => r.corrects !== null)).toHaveLength(1);
  });

  await test.step('every step recorded', async () => {
    for (const [i, step] of batch.method.entries()) {
      await page.goto(`${server.url}/k/${kitchen.id}/line/${batchId}/${i + 1}`);
      await expect(page.getByRole('heading', { level: 2, name: new RegExp(`^${i + 1}\\.`) })).toBeVisible();
      for (const [j, ask] of step.asks.entries()) {
        if ((i === 0 && j === 0) || ask.kind === 'core log') continue;
        const before = (await get<Batch>(batchRoute)).readings.length;
        await record(page, ask);
        await expect
          .poll(async () => (await get<Batch>(batchRoute)).readings.length, { message: ask.label })
          .toBe(before + 1);
      }
    }
  });

  await test.step('the core log, judged as it comes', async () => {
    for (const [i, step] of batch.method.entries()) {
      for (const ask of step.asks.filter((a) => a.kind === 'core log')) {
        await page.goto(`${server.url}/k/${kitchen.id}/line/${batchId}/${i + 1}`);
        const item = page
          .locator('li.ask')
          .filter({ has: page.locator('.ask-label', { hasText: ask.label }) });
        if ((await item.locator('.ask-head').getAttribute('aria-expanded')) !== 'true')
          await item.locator('.ask-head').click();
        await item.locator('summary', { hasText: 'From a probe’s own file' }).click();
        await item.locator('input[type=file]').setInputFiles({
          name: `core-${i + 1}.csv`,
          mimeType: 'text/csv',
          buffer: Buffer.from(loggerFile(), 'utf8'),
        });
        await page.getByRole('button', { name: 'Keep this log' }).click();
        await expect
          .poll(async () => (await get<Batch>(batchRoute)).logs.filter((l) => l.stepId === step.id).length)
          .toBeGreaterThan(0);
      }
    }
    expect((await get<Batch>(batchRoute)).blocking).toEqual([]);
  });

  await test.step('closed under a name', async () => {
    await page.goto(`${server.url}/k/${kitchen.id}/line/${batchId}`);
    await page.getByRole('button', { name: 'Close as fit to serve' }).click();
    await expect(page.getByText('Closed as fit to serve')).toBeVisible();
    const closed = await get<Batch>(batchRoute);
    expect(closed.status).toBe('closed');
    expect(closed.closedBy).toBe('Wren Aldous');
  });

  await test.step('the papers', async () => {
    const card = await page.request.get(
      `${server.url}/api/kitchens/${kitchen.id}/versions/${batch.versionId}/method-card.pdf`,
    );
    expect(card.status()).toBe(200);
    const cardText = pdfText(await card.body());
    expect(cardText).toContain('Stuffed trotter');
    expect(cardText).toMatch(/invented/i);
    expect(cardText).toMatch(/authority/i);
    const paper = await page.request.get(
      `${server.url}/api/kitchens/${kitchen.id}/batches/${batchId}/batch-record.pdf`,
    );
    expect(paper.status()).toBe(200);
    const paperText = pdfText(await paper.body());
    expect(paperText).toContain(batch.code);
    expect(paperText).toMatch(/Read\s/);
    expect(paperText).toContain('Corrected by line 2');
    expect(paperText).toContain('Wren Aldous');
    expect(paperText).toMatch(/authority/i);
  });

  await test.step('the journal holds', async () => {
    await page.setViewportSize({ width: 1440, height: 1000 });
    await page.goto(`${server.url}/k/${kitchen.id}/proof`);
    await accessible(page, 'proof');
    const check = await get<{ holds: boolean; lines: number }>(`/api/kitchens/${kitchen.id}/journal/check`);
    expect(check.holds).toBe(true);
    expect(check.lines).toBeGreaterThan(30);
  });
});
