/** What every journey needs: the built server on a store that nobody else touches, a page that fails on any script error, axe. */
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import AxeBuilder from '@axe-core/playwright';
import { test as base, expect, type Page } from '@playwright/test';
import type { Dish, DishSummary, Kitchen, Person } from '../../src/contract/records.ts';
import type { StepKind } from '../../src/contract/steps.ts';
import { startCluster } from '../database/cluster.ts';
import { type Running, startServer, temporaryFolder } from '../durability/server.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** The handbook's pictures are taken here: kept with the results, and in docs/ when `FQ_PICTURES` asks for new ones. */
export async function picture(page: Page, name: string): Promise<void> {
  const folder = path.join(root, process.env.FQ_PICTURES ? 'docs/pictures' : 'test-results/pictures');
  fs.mkdirSync(folder, { recursive: true });
  await page.screenshot({ path: path.join(folder, `${name}.png`) });
}

/** A store with the demo kitchen laid in it, of which every test gets a copy of its own. */
interface Laid {
  /** What the server is to be started with, and what is done when it has stopped. */
  copy(): Promise<{ readonly env: Record<string, string>; readonly clear: () => void }>;
}

const main = [path.join(root, 'dist/server/main.js')];

/** The demo kitchen is laid by a server that stops again: a copy of a store must be taken at rest. */
async function lay(env: Record<string, string>): Promise<void> {
  const server = await startServer(env, main);
  const code = await server.stop();
  if (code !== 0) throw new Error(`the server that laid the demo ended with ${code}: ${server.said()}`);
}

export const test = base.extend<{ server: Running; noErrors: undefined }, { laid: Laid }>({
  laid: [
    // biome-ignore lint/correctness/noEmptyPattern: the runner reads the fixture's needs from the pattern
    async ({}, use, info) => {
      if (info.project.name === 'postgresql') {
        const cluster = await startCluster();
        try {
          const first = await cluster.createDatabase();
          await lay({ DATABASE_URL: first });
          await use({
            copy: async () => ({
              env: { DATABASE_URL: await cluster.createDatabase(new URL(first).pathname.slice(1)) },
              clear: () => {},
            }),
          });
        } finally {
          cluster.stop();
        }
        return;
      }
      const folder = temporaryFolder();
      const first = path.join(folder, 'laid');
      try {
        await lay({ FQ_DATA: first });
        let made = 0;
        await use({
          copy: async () => {
            const own = path.join(folder, `copy-${++made}`);
            await fs.promises.cp(first, own, { recursive: true });
            return { env: { FQ_DATA: own }, clear: () => fs.rmSync(own, { recursive: true, force: true }) };
          },
        });
      } finally {
        fs.rmSync(folder, { recursive: true, force: true });
      }
    },
    { scope: 'worker', timeout: 120_000 },
  ],
  /** A server of the test's own: nothing that another test did is in its store. */
  server: [
    async ({ laid }, use) => {
      const { env, clear } = await laid.copy();
      const server = await startServer(env, main);
      await use(server);
      await server.stop();
      clear();
    },
    { timeout: 60_000 },
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

/** The demo kitchen, at work as the first of its people, and its records as the server gives them. */
export async function atWork(page: Page, url: string) {
  const get = async <T>(route: string) => (await page.request.get(`${url}/api${route}`)).json() as Promise<T>;
  const kitchen = (await get<Kitchen[]>('/kitchens')).find((k) => k.demo) as Kitchen;
  const base = `/kitchens/${kitchen.id}`;
  const person = ((await get<Person[]>(`${base}/people`))[0] as Person).id;
  await page.addInitScript(
    ([key, id]) => localStorage.setItem(key ?? '', id ?? ''),
    [`fq.person.${kitchen.id}`, person],
  );
  return { get, kitchen, base, person };
}

/** A draft of a demo dish, opened at its first step of a kind. */
export async function openDraft(page: Page, url: string, name: RegExp, kind: StepKind): Promise<void> {
  const { get, kitchen, base, person } = await atWork(page, url);
  const found = (await get<DishSummary[]>(`${base}/dishes`)).find((d) => name.test(d.name)) as DishSummary;
  const before = await get<Dish>(`${base}/dishes/${found.id}`);
  if (before.current.status === 'signed') {
    const made = await page.request.post(`${url}/api${base}/dishes/${found.id}/versions`, {
      headers: { 'X-Person': person },
      data: { reason: 'Looked at again.' },
    });
    expect(made.ok()).toBe(true);
  }
  const dish = await get<Dish>(`${base}/dishes/${found.id}`);
  const step = dish.current.method.find((s) => s.kind === kind);
  await page.goto(`${url}/k/${kitchen.id}/dishes/${dish.id}/steps/${step?.id}`);
}
