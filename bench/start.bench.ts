/** From a clone to a usable page, and the second start: `npm start` on a copy of the committed tree, warm package cache. */
import { execFileSync, spawn } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'fifth-quarter-start-'));
const clone = path.join(folder, 'clone');
execFileSync('git', ['clone', '-q', root, clone]);

/** Seconds until the page and the dishes behind it answer; then the server is told to stop and must end by itself. */
async function start(): Promise<{ ready: number; stopped: number; code: number | null }> {
  const began = performance.now();
  const child = spawn('npm', ['start'], {
    cwd: clone,
    env: { ...process.env, PORT: '0' },
    stdio: ['ignore', 'pipe', 'inherit'],
    detached: true,
  });
  let said = '';
  child.stdout.on('data', (data: Buffer) => {
    said += data.toString();
  });
  const exited = new Promise<number | null>((resolve) => child.once('exit', (code) => resolve(code)));
  let url: string | undefined;
  while (url === undefined) {
    await new Promise((resolve) => setTimeout(resolve, 20));
    url = /is at (http:\S+)\//.exec(said)?.[1];
    if (child.exitCode !== null) throw new Error(`npm start ended with ${child.exitCode}: ${said}`);
    if (performance.now() - began > 300_000) throw new Error(`no server after 300 s: ${said}`);
  }
  const page = await (await fetch(`${url}/`)).text();
  if (!page.includes('<script')) throw new Error('the page has no script');
  const kitchens = (await (await fetch(`${url}/api/kitchens`)).json()) as { id: string }[];
  await (await fetch(`${url}/api/kitchens/${kitchens[0]?.id}/dishes`)).json();
  const ready = (performance.now() - began) / 1000;
  const told = performance.now();
  process.kill(-(child.pid as number), 'SIGINT');
  const code = await exited;
  return { ready, stopped: (performance.now() - told) / 1000, code };
}

const machine = `${os.cpus()[0]?.model}, ${os.cpus().length} cores, Node ${process.versions.node}`;
const first = await start();
const second = await start();
console.log(`start (${machine})`);
console.log(
  `  first: install, build, open the store, lay the demo: ${first.ready.toFixed(1)} s (wanted ≤ 90 s)`,
);
console.log(`  second: ${second.ready.toFixed(1)} s (wanted ≤ 5 s)`);
console.log(`  Ctrl-C to end: ${second.stopped.toFixed(2)} s, exit ${second.code}`);
fs.rmSync(folder, { recursive: true, force: true });
