/** Long tasks of the page's own thread while sliders of the cook step are dragged: built app, real server, headless Chromium. */
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { startServer, temporaryFolder } from '../test/durability/server.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const server = await startServer({ FQ_DATA: path.join(temporaryFolder(), 'data') }, [
  path.join(root, 'dist/server/main.js'),
]);
const browser = await chromium.launch({
  executablePath: process.env.FQ_CHROMIUM ?? '/usr/bin/chromium',
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
  ],
});
try {
  const page = await browser.newPage({ viewport: { width: 1440, height: 1000 } });
  const json = async (route: string) => (await page.request.get(`${server.url}/api${route}`)).json();
  const kitchen = (await json('/kitchens'))[0];
  const summary = (await json(`/kitchens/${kitchen.id}/dishes`)).find(
    (d: { stage: string; stepKinds: string[] }) => d.stage === 'in trial' && d.stepKinds.includes('cook'),
  );
  const dish = await json(`/kitchens/${kitchen.id}/dishes/${summary.id}`);
  const cook = dish.current.method.find((s: { kind: string }) => s.kind === 'cook');
  const [person] = await json(`/kitchens/${kitchen.id}/people`);
  await page.addInitScript(`
    localStorage.setItem(${JSON.stringify(`fq.person.${kitchen.id}`)}, ${JSON.stringify(person.id)});
    window.longTasks = [];
    new PerformanceObserver((list) => { for (const e of list.getEntries()) window.longTasks.push(e.duration); }).observe({ entryTypes: ['longtask'] });
  `);
  await page.goto(`${server.url}/k/${kitchen.id}/dishes/${dish.id}/steps/${cook.id}`);
  await page.locator('.cook-verdict').getByText('Predicted, not measured').waitFor();
  const sliders = page.locator('input[type=range]:not([disabled])');
  const count = await sliders.count();
  let moves = 0;
  let answered = 0;
  await page.waitForTimeout(1500);
  await page.evaluate('window.longTasks.length = 0');
  for (let s = 0; s < count; s++) {
    const box = await sliders.nth(s).boundingBox();
    if (!box) continue;
    await sliders.nth(s).scrollIntoViewIfNeeded();
    const now = (await sliders.nth(s).boundingBox()) as {
      x: number;
      y: number;
      width: number;
      height: number;
    };
    await page.mouse.move(now.x + now.width * 0.4, now.y + now.height / 2);
    const seen = new Set<string>();
    await page.mouse.down();
    for (let i = 0; i < 40; i++) {
      await page.mouse.move(now.x + now.width * (0.4 + 0.3 * Math.sin(i / 6)), now.y + now.height / 2);
      await page.waitForTimeout(25);
      if (i % 8 === 0) seen.add(await sliders.nth(s).inputValue());
      moves++;
    }
    await page.mouse.up();
    const label = await sliders.nth(s).getAttribute('aria-label');
    if (seen.size > 3) answered++;
    else console.log(`  slider ${s + 1} (${label}) stayed at ${[...seen].join(', ')}`);
    await page.waitForTimeout(300);
  }
  if (answered < count) throw new Error(`only ${answered} of ${count} sliders followed the hand`);
  const tasks = (await page.evaluate('window.longTasks')) as number[];
  console.log(
    `sliders (${os.cpus()[0]?.model}, ${os.cpus().length} cores, software-drawn Chromium ${browser.version()})`,
  );
  console.log(
    `  ${count} sliders of “${dish.name}”, ${moves} moves: ${tasks.length} tasks over 50 ms${tasks.length ? `, longest ${Math.max(...tasks).toFixed(0)} ms` : ''} (wanted 0)`,
  );
} finally {
  await browser.close();
  await server.stop();
}
