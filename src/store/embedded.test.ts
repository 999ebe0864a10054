import { describe, expect, it } from 'vitest';
import { embeddedMajor, openInMemory } from './embedded.ts';

describe('openInMemory', () => {
  it('brings the major release of the database that data folders are stamped with', async () => {
    const store = await openInMemory();
    const [row] = await store.session((s) =>
      s.query<{ n: number }>("SELECT current_setting('server_version_num')::int AS n"),
    );
    expect(Math.floor((row?.n ?? 0) / 10_000)).toBe(embeddedMajor);
    await store.close();
  });
});
