/** Starts the server: opens the store, lays the demo in an empty one, listens, and stops cleanly when told to. */
import { readFileSync } from 'node:fs';
import type { Server } from 'node:http';
import path from 'node:path';
import { createAdaptorServer } from '@hono/node-server';
import { demoKitchen } from '../../demo/kitchen.ts';
import type { App } from '../app/app.ts';
import { openChanges } from '../app/changes.ts';
import { layDemoIfEmpty, resetDemo } from '../app/demo.ts';
import { openStore } from '../store/open.ts';
import { type Store, StoreProblem } from '../store/store.ts';
import { openEngineThread } from './engine-thread.ts';
import { openHttp } from './http.ts';
import { readSettings, type Settings } from './settings.ts';

/** Requests that are still running get this long to finish [ms]. */
const patience = 8_000;

const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as {
  version: string;
};

async function main(): Promise<void> {
  const settings = readSettings(process.env);
  const store = await openStore(settings.store, version);
  const engine = openEngineThread();
  const app: App = { store, engine, now: () => new Date(), version };
  const changes = await openChanges(store);
  if ((await layDemoIfEmpty(app, demoKitchen)) !== null)
    say('The demo kitchen is laid: invented data, for looking round.');
  const { http, live } = openHttp({
    app,
    changes,
    print: engine.print,
    resetDemo: () => resetDemo(app, demoKitchen),
  });
  const server = createAdaptorServer({ fetch: http.fetch }) as Server;
  const port = await listen(server, settings);
  let stopping = false;
  const stop = async () => {
    if (stopping) return;
    stopping = true;
    live.close();
    await closeServer(server);
    await engine.close();
    await changes.close();
    await store.close();
    process.exit(0);
  };
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => void stop().catch(fail));
  // Said last: whoever reads it may stop the server at once, and cleanly.
  say(`Fifth Quarter is at http://${settings.host === '::1' ? '[::1]' : settings.host}:${port}/`);
  say(whereOf(settings, store));
}

const whereOf = (settings: Settings, store: Store) =>
  'url' in settings.store
    ? 'Records are on the PostgreSQL server of DATABASE_URL.'
    : `Records are in ${path.resolve(settings.store.dataDir)}${store.durable ? ', each on disk before it is acknowledged' : ''}.`;

async function listen(server: Server, { host, ports }: Settings): Promise<number> {
  for (const [i, port] of ports.entries()) {
    try {
      await new Promise<void>((resolve, reject) => {
        server.once('error', reject);
        server.listen(port, host, () => {
          server.off('error', reject);
          resolve();
        });
      });
      const at = server.address();
      if (i > 0) say(`Port ${ports[0]} is taken; using ${port}.`);
      return typeof at === 'object' && at !== null ? at.port : port;
    } catch (error) {
      const { code, message } = error as NodeJS.ErrnoException;
      if (code === 'EADDRINUSE') continue;
      throw new StoreProblem(`The server cannot listen on ${host}, port ${port}: ${message}.`);
    }
  }
  throw new StoreProblem(
    ports.length === 1
      ? `Port ${ports[0]} is taken by another program; give another with PORT.`
      : `Ports ${ports[0]} to ${ports.at(-1)} are all taken; give another with PORT.`,
  );
}

function closeServer(server: Server): Promise<void> {
  return new Promise((resolve) => {
    const cut = setTimeout(() => server.closeAllConnections(), patience);
    server.close(() => {
      clearTimeout(cut);
      resolve();
    });
    server.closeIdleConnections();
  });
}

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}

function fail(error: unknown): void {
  if (error instanceof StoreProblem) process.stderr.write(`${error.message}\n`);
  else
    process.stderr.write(
      `Fifth Quarter did not start: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`,
    );
  process.exit(1);
}

main().catch(fail);
