import { getTableColumns } from 'drizzle-orm';
import { getTableConfig, type PgTable } from 'drizzle-orm/pg-core';
import { expect, it } from 'vitest';
import { migrate, readMigrations } from '../../src/store/migrate.ts';
import { StoreProblem } from '../../src/store/store.ts';
import * as tables from '../../src/store/tables.ts';
import { eachStore } from './stores.ts';

const all = readMigrations();

eachStore('migrate', (making) => {
  it('applies every file once', async () => {
    const [session] = await making.bare(1);
    expect(await migrate(session!, all)).toBe(all.length);
    expect(await migrate(session!, all)).toBe(0);
    expect(await session!.query('SELECT number FROM applied_migration')).toHaveLength(all.length);
  });

  it('applies what is missing to a store that was made before', async () => {
    const [session] = await making.bare(1);
    expect(await migrate(session!, all.slice(0, 2))).toBe(2);
    expect(await migrate(session!, all)).toBe(all.length - 2);
  });

  it('refuses a store made by a newer version and leaves it as it was', async () => {
    const [session] = await making.bare(1);
    await migrate(session!, all);
    await expect(migrate(session!, all.slice(0, -1))).rejects.toThrow(/newer version/);
    expect(await session!.query('SELECT 1 FROM applied_migration')).toHaveLength(all.length);
  });

  it('refuses a store whose tables were made by other SQL', async () => {
    const [session] = await making.bare(1);
    await migrate(session!, all);
    const edited = all.map((m, i) => (i === 1 ? { ...m, sha256: '0'.repeat(64) } : m));
    await expect(migrate(session!, edited)).rejects.toThrow(StoreProblem);
  });

  it('leaves nothing of a file that fails half-way', async () => {
    const [session] = await making.bare(1);
    const broken = {
      number: 2,
      name: '0002_broken.sql',
      sql: 'CREATE TABLE half (id integer); SELECT no_such_function();',
      sha256: 'x',
    };
    await expect(migrate(session!, [all[0]!, broken])).rejects.toThrow(/no_such_function/);
    expect(await session!.query("SELECT to_regclass('half') AS half")).toEqual([{ half: null }]);
    expect(await migrate(session!, all)).toBe(all.length - 1);
  });

  it('lets six simultaneous starts through, one of which does the work', async () => {
    const sessions = await making.bare(6);
    const done =
      making.kind === 'embedded' ? [] : await Promise.all(sessions.map((session) => migrate(session, all)));
    // One connection cannot wait for itself: the embedded database has one process, held by the lock on its folder.
    if (making.kind === 'embedded') for (const session of sessions) done.push(await migrate(session, all));
    expect([...done].sort((a, b) => b - a)).toEqual([all.length, 0, 0, 0, 0, 0]);
  });

  it('makes the tables that the queries expect: every column, its type and whether it may be empty', async () => {
    const [session] = await making.bare(1);
    await migrate(session!, all);
    const types: Record<string, string> = {
      uuid: 'uuid',
      text: 'text',
      boolean: 'boolean',
      integer: 'integer',
      bigint: 'bigint',
      jsonb: 'jsonb',
      'double precision': 'double precision',
      'timestamp with time zone': 'timestamp with time zone',
    };
    for (const table of Object.values(tables) as PgTable[]) {
      const { name } = getTableConfig(table);
      const rows = await session!.query<{ column_name: string; data_type: string; is_nullable: string }>(
        'SELECT column_name, data_type, is_nullable FROM information_schema.columns WHERE table_name = $1',
        [name],
      );
      const made = Object.fromEntries(
        rows.map((r) => [r.column_name, `${r.data_type}${r.is_nullable === 'YES' ? '' : ' not null'}`]),
      );
      const expected = Object.fromEntries(
        Object.values(getTableColumns(table)).map((c) => [
          c.name,
          `${types[c.getSQLType()] ?? c.getSQLType()}${c.notNull ? ' not null' : ''}`,
        ]),
      );
      expect(made, name).toEqual(expected);
    }
  });
});
