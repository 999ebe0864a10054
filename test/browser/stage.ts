/** What every journey needs: the built server on a store of its own, a page that fails on any script error, axe. */
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import AxeBuilder from '@axe-core/playwright';
import { test as base, expect, type Page } from '@playwright/test';
import { type Cluster, startCluster } from '../database/cluster.ts';
import { type Running, startServer, temporaryFolder } from '../durability/server.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** The handbook's pictures are taken here: kept with the results, and in docs/ when `FQ_PICTURES` asks for new ones. */
export async function picture(page: Page, name: string): Promise<void> {
  const folder = path.join(root, process.env.FQ_PICTURES ? 'docs/pictures' : 'test-results/pictures');
  fs.mkdirSync(folder, { recursive: true });
  await page.screenshot({ path: path.join(folder, `${name}.png`) });
}

interface Stage {
  server: Running;
}

export const test = base.extend<{ noErrors: undefined }, Stage>({
  server: [
    // biome-ignore lint/correctness/noEmptyPattern: the runner reads the fixture's needs from the pattern
    async ({}, use, info) => {
      const main = [path.join(root, 'dist/server/main.js')];
      let cluster: Cluster | undefined;
      let folder: string | undefined;
      const env: Record<string, string> = {};
      if (info.project.name === 'postgresql') {
        cluster = await startCluster();
        env.DATABASE_URL = await cluster.createDatabase();
      } else {
        folder = temporaryFolder();
        env.FQ_DATA = path.join(folder, 'data');
      }
      const server = await startServer(env, main);
      await use(server);
      await server.stop();
      cluster?.stop();
      if (folder) fs.rmSync(folder, { recursive: true, force: true });
    },
    { scope: 'worker', timeout: 120_000 },
  ],
  noErrors: [
    async ({ page }, use) => {
      const errors: string[] = [];
      page.on('pageerror', (e) => errors.push(e.message));
      await use(undefined);
      expect(errors, 'script errors on the page').toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };

/** Nothing serious for whoever uses a screen reader, a keyboard or has weak sight. */
export async function accessible(page: Page, where: string): Promise<void> {
  const found = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .analyze();
  expect(found.passes.length, `${where}: axe looked at something`).toBeGreaterThan(5);
  const serious = found.violations.filter((v) => v.impact === 'serious' || v.impact === 'critical');
  expect(
    serious.map((v) => `${v.id}: ${v.nodes.map((n) => n.target.join(' ')).join(', ')}`),
    where,
  ).toEqual([]);
}

/** Nothing runs out of the window sideways. */
export async function fits(page: Page, where: string): Promise<void> {
  const over = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(over, `${where}: wider than the window by`).toBeLessThanOrEqual(0);
}
