/** The store that needs no database server: PostgreSQL inside this process, on files in a folder of its own. */
import fs from 'node:fs';
import { PGlite } from '@electric-sql/pglite';
import { drizzle } from 'drizzle-orm/pglite';
import { DurableNodeFS, settleTree } from './durable-fs.ts';
import { lockFolder } from './folder-lock.ts';
import { migrate } from './migrate.ts';
import { beginFolder, databaseFolder, readFolder, stampFolder } from './stamp.ts';
import { type Db, type Session, type Store, StoreProblem } from './store.ts';
import * as tables from './tables.ts';

/** The major release of PostgreSQL inside the embedded database of this program. */
export const embeddedMajor = 18;

const checkpointEvery = 5 * 60_000;
const vacuumEvery = 60 * 60_000;

const sessionOn = (client: PGlite): Session => ({
  query: async <Row>(text: string, values: readonly unknown[] = []) =>
    (await client.query<Row>(text, [...values])).rows,
  script: async (text) => {
    await client.exec(text);
  },
});

/** Opens, or makes, the store in a folder; refuses to serve from one whose commits do not reach the disk. */
export async function openEmbedded(dataDir: string, program: string): Promise<Store> {
  // Read before anything is touched: what cannot be opened is left as it was.
  readFolder(dataDir, program, embeddedMajor);
  try {
    fs.mkdirSync(dataDir, { recursive: true, mode: 0o700 });
    fs.accessSync(dataDir, fs.constants.W_OK | fs.constants.X_OK);
  } catch (error) {
    throw new StoreProblem(`The data folder ${dataDir} cannot be written: ${(error as Error).message}.`);
  }
  const lock = await lockFolder(dataDir);
  try {
    // Read again under the lock: another process may have just made or left it.
    const found = readFolder(dataDir, program, embeddedMajor);
    fs.chmodSync(dataDir, 0o700);
    if (found.state !== 'made') beginFolder(dataDir);
    const files = new DurableNodeFS(databaseFolder(dataDir));
    const client = await start(files, dataDir, found.state === 'made');
    try {
      await migrate(sessionOn(client));
      await proveDurable(client, files);
      if (found.state !== 'made') {
        await client.exec('CHECKPOINT');
        settleTree(databaseFolder(dataDir));
      }
      if (found.state !== 'made' || found.stamp.program !== program)
        stampFolder(dataDir, { program, postgres: embeddedMajor });
    } catch (error) {
      await client.close();
      throw error;
    }
    return storeOn(client, true, () => lock.release());
  } catch (error) {
    await lock.release();
    throw error;
  }
}

/** A store that lives and dies with the process; for tests of what is not about files. */
export async function openInMemory(): Promise<Store> {
  const client = new PGlite({ relaxedDurability: false });
  await client.waitReady;
  await migrate(sessionOn(client));
  return storeOn(client, false, async () => {});
}

async function start(files: DurableNodeFS, dataDir: string, made: boolean): Promise<PGlite> {
  const startParams = [...PGlite.defaultStartParams.filter((p) => p !== '-F'), '-c', 'wal_sync_method=fsync'];
  try {
    const client = new PGlite({ fs: files, startParams });
    await client.waitReady;
    return client;
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error ?? 'it gave no reason');
    throw new StoreProblem(
      made
        ? `The database in ${dataDir} does not open (${why}); keep the folder as it is and open a copy of your last back-up.`
        : `The database in ${dataDir} could not be made (${why}); nothing was in it yet, so start again, or name another folder with FQ_DATA.`,
    );
  }
}

/** Commits one row and looks whether the disk was asked to keep it. */
async function proveDurable(client: PGlite, files: DurableNodeFS): Promise<void> {
  await client.exec('CREATE TABLE IF NOT EXISTS store_start (at timestamptz NOT NULL)');
  const before = files.syncs;
  await client.query('INSERT INTO store_start VALUES (now())');
  const { rows } = await client.query<{ fsync: string }>('SHOW fsync');
  if (files.syncs === before || rows[0]?.fsync !== 'on')
    throw new StoreProblem(
      'A test record was committed but the disk was never told to keep it; this program does not serve from a store that can lose acknowledged records.',
    );
}

function storeOn(client: PGlite, durable: boolean, release: () => Promise<void>): Store {
  const tend = async (statement: string) => {
    if (client.closed) return;
    try {
      await client.exec(statement);
    } catch (error) {
      process.stderr.write(`${statement} failed: ${(error as Error).message}\n`);
    }
  };
  // Nothing inside the embedded database does this by itself: without it files and recovery time grow for ever.
  const timers = [
    setInterval(() => void tend('CHECKPOINT'), checkpointEvery),
    setInterval(() => void tend('VACUUM'), vacuumEvery),
  ];
  for (const timer of timers) timer.unref();
  return {
    kind: 'embedded',
    durable,
    db: drizzle(client, { schema: tables }) as unknown as Db,
    listen: (channel, heard) => client.listen(channel, heard),
    session: (work) => work(sessionOn(client)),
    close: async () => {
      for (const timer of timers) clearInterval(timer);
      await tend('VACUUM');
      await tend('CHECKPOINT');
      await client.close();
      await release();
    },
  };
}
