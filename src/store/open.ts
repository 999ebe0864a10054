import { openEmbedded } from './embedded.ts';
import { openPostgresql } from './postgresql.ts';
import type { Store } from './store.ts';

export type Where = { readonly dataDir: string } | { readonly url: string };

/**
 * Opens the store: embedded in a folder, or on a PostgreSQL server. Its tables are up to date when this returns, and a
 * commit is known to reach the disk; otherwise it throws a `StoreProblem` with one plain sentence.
 */
export function openStore(where: Where, program: string): Promise<Store> {
  return 'url' in where ? openPostgresql(where.url) : openEmbedded(where.dataDir, program);
}
