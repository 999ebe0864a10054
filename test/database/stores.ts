/** One body of tests, run on the embedded database and on a PostgreSQL server. */
import { PGlite } from '@electric-sql/pglite';
import pg from 'pg';
import { afterAll, beforeAll, describe } from 'vitest';
import { openInMemory } from '../../src/store/embedded.ts';
import { openPostgresql } from '../../src/store/postgresql.ts';
import type { Session, Store } from '../../src/store/store.ts';
import { type Cluster, startCluster } from './cluster.ts';

export interface Making {
  readonly kind: Store['kind'];
  /** A store of its own, empty, its tables made. Closed when the tests are done. */
  fresh(): Promise<Store>;
  /** Connections to one database without any tables. */
  bare(connections: number): Promise<Session[]>;
}

export function eachStore(name: string, body: (making: Making) => void): void {
  describe(`${name} (embedded)`, () => {
    const closing: (() => Promise<void>)[] = [];
    let client: PGlite | undefined;
    afterAll(async () => {
      for (const close of closing) await close();
      await client?.close();
    });
    body({
      kind: 'embedded',
      fresh: async () => {
        const store = await openInMemory();
        closing.push(() => store.close());
        return store;
      },
      bare: async (connections) => {
        client ??= await PGlite.create();
        const one = client;
        await one.exec('ROLLBACK; DROP SCHEMA public CASCADE; CREATE SCHEMA public');
        // The embedded database has one connection; who asks for several gets it several times.
        const session: Session = {
          query: async <Row>(text: string, values: readonly unknown[] = []) =>
            (await one.query<Row>(text, [...values])).rows,
          script: async (text) => {
            await one.exec(text);
          },
        };
        return Array.from({ length: connections }, () => session);
      },
    });
  });

  describe(`${name} (PostgreSQL)`, () => {
    const closing: (() => Promise<void>)[] = [];
    let cluster: Cluster;
    beforeAll(async () => {
      cluster = await startCluster();
    });
    afterAll(async () => {
      for (const close of closing) await close();
      cluster?.stop();
    });
    body({
      kind: 'postgresql',
      fresh: async () => {
        const store = await openPostgresql(await cluster.createDatabase());
        closing.push(() => store.close());
        return store;
      },
      bare: async (connections) => {
        const url = await cluster.createDatabase();
        return Promise.all(
          Array.from({ length: connections }, async () => {
            const client = new pg.Client({ connectionString: url });
            await client.connect();
            closing.push(() => client.end());
            const session: Session = {
              query: async <Row>(text: string, values: readonly unknown[] = []) =>
                (await client.query(text, [...values])).rows as Row[],
              script: async (text) => {
                await client.query(text);
              },
            };
            return session;
          }),
        );
      },
    });
  });
}
