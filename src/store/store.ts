/** What every store is to the rest of the program, whichever database stands behind it. */
import type { PgDatabase, PgQueryResultHKT } from 'drizzle-orm/pg-core';
import type * as tables from './tables.ts';

/** One type for both databases, and for a transaction on either. */
export type Db = PgDatabase<PgQueryResultHKT, typeof tables>;

/** One connection of its own, for what a pool or an ORM cannot say: locks held over several statements, scripts. */
export interface Session {
  /** One statement with parameters. */
  query<Row>(text: string, values?: readonly unknown[]): Promise<Row[]>;
  /** Several statements without parameters. */
  script(text: string): Promise<void>;
}

export interface Store {
  readonly kind: 'embedded' | 'postgresql';
  /** This store has shown that a commit reaches the disk. */
  readonly durable: boolean;
  readonly db: Db;
  /** Calls `heard` for every NOTIFY on the channel, from this process or another; answers how to stop. */
  listen(channel: string, heard: (payload: string) => void): Promise<() => Promise<void>>;
  session<T>(work: (session: Session) => Promise<T>): Promise<T>;
  /** Writes everything down and lets go of the store. */
  close(): Promise<void>;
}

/** The store cannot be opened; the message is one plain sentence for whoever started the program. */
export class StoreProblem extends Error {
  override readonly name = 'StoreProblem';
}
