/** What the environment says about how to serve. */

import type { Where } from '../store/open.ts';
import { StoreProblem } from '../store/store.ts';

export interface Settings {
  readonly host: string;
  /** Ports to try, in order; the first that is free is taken. */
  readonly ports: readonly number[];
  readonly store: Where;
}

/** There is no log-in yet: whoever reaches the port can read and write everything. */
const loopback = new Set(['127.0.0.1', '::1', 'localhost']);

export function readSettings(env: Readonly<Record<string, string | undefined>>): Settings {
  const host = env.HOST ?? '127.0.0.1';
  if (!loopback.has(host))
    throw new StoreProblem(
      `HOST=${host} would let everybody on the network read and write this kitchen's records, and there is no log-in yet; leave HOST out, or set it to 127.0.0.1.`,
    );
  return {
    host,
    ports:
      env.PORT === undefined || env.PORT === ''
        ? Array.from({ length: 21 }, (_, i) => 3000 + i)
        : [portOf(env.PORT)],
    store: env.DATABASE_URL ? { url: env.DATABASE_URL } : { dataDir: env.FQ_DATA || './data' },
  };
}

function portOf(text: string): number {
  const port = Number(text);
  if (!/^\d+$/.test(text) || port > 65_535)
    throw new StoreProblem(
      `PORT=${text} is no port; give a whole number from 1 to 65535, or 0 for any free one.`,
    );
  return port;
}
